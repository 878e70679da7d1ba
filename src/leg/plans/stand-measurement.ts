import { type Kind, Quantity } from '../../units/index.js'
import type { Leg } from '../document/describe.js'
import { headerOf } from '../learning/logs.js'
import { COLUMNS, type MeasurementId } from '../learning/measurements.js'
import { type LegModel, legModel } from '../leg-model.js'
import type { LegNumbers } from '../leg-numbers.js'
import type { DrivenJoint } from '../numbers.js'
import { SECOND_STAGE } from '../second-stage.js'
import { driveWords } from './drive-facts.js'
import { informationOf } from './information.js'
import { EFFORT } from './stand-effort.js'

/** One measurement: what to do, what the model expects, how to log it. */
export interface StandMeasurement {
  /** Name of the measurement. */
  readonly id: MeasurementId
  /** The joint, or the stage along the upper link (`throughHip`); absent for what is measured once for the leg. */
  readonly joint: DrivenJoint | 'throughHip' | undefined
  /** The name under which `learn` takes its log. */
  readonly log: string
  /** The measured quantity. */
  readonly what: string
  /** How to measure it. */
  readonly how: string
  /** Hazards of the work. */
  readonly caution: string
  /** The quantity to compare with, what the model expects of it, and between what its uncertain values let it lie. */
  readonly predictedIs: string
  /** Readings that the model predicts. */
  readonly predicted: Quantity<Kind>
  /** Between what the uncertain values of the leg let it lie. */
  readonly band: readonly [Quantity<Kind>, Quantity<Kind>]
  /** The field it corrects; absent where it is only compared. */
  readonly corrects: string | undefined
  /**
   * Information about the verdict: the sum over all checks that come near their limit of how far the reserve moves (natural
   * logarithm) while the field runs through its range; and the check that moves most.
   */
  readonly information: number
  /** The check whose reserve it moves most. */
  readonly moves: string | undefined
  /** How to build it from what a home workshop has. */
  readonly fixture: string
  /** Time of somebody who works on it, and time until it is over. */
  readonly handsOn: Quantity<'time'>
  /** Time until the measurement is over. */
  readonly elapsed: Quantity<'time'>
  /** Purchases and consumables. */
  readonly cost: string
  /** Information for an hour of work. */
  readonly informationPerHour: number
  /** First lines of the CSV file: comments, then the header with units. */
  readonly csv: string
}

/** A leg's numbers with the field of a measurement at an end of its range. @internal */
export type Variation = (x: LegNumbers, which: 'low' | 'high') => LegNumbers

/** First lines of a log. @internal */
export function csvOf(leg: Leg, log: string, id: MeasurementId): string {
  return `# ${leg.name}\n# log: ${log}\n${headerOf(COLUMNS[id])}\n`
}

/** Effort of a measurement, and its information for an hour of work. @internal */
export function effortOf(id: MeasurementId, information: number) {
  const { fixture, handsOn, elapsed, cost } = EFFORT[id]
  return {
    fixture,
    handsOn: new Quantity(handsOn, 'time'),
    elapsed: new Quantity(elapsed, 'time'),
    cost,
    informationPerHour: information / (handsOn / 3600),
  }
}

/** A measurement whose prediction is a function of the numbers with the field low, as it is, and high. @internal */
export function measurement(
  leg: Leg,
  x: LegNumbers,
  head: { readonly joint: DrivenJoint | undefined } & Pick<
    StandMeasurement,
    'id' | 'what' | 'how' | 'caution' | 'predictedIs' | 'corrects'
  >,
  vary: Variation,
  predict: (leg: LegModel) => Quantity<Kind>,
): StandMeasurement {
  const log = head.joint === undefined ? head.id : `${head.id} ${head.joint}`
  const predicted = predict(legModel(x))
  const band = [predict(legModel(vary(x, 'low'))), predict(legModel(vary(x, 'high')))].sort((a, b) => a.si - b.si) as [
    Quantity<Kind>,
    Quantity<Kind>,
  ]
  const found = informationOf(vary(x, 'low'), vary(x, 'high'))
  return { ...head, log, predicted, band, ...found, ...effortOf(head.id, found.information), csv: csvOf(leg, log, head.id) }
}

/** First step where the knee is driven through the hip: its drive ends at a drum, a pulley or a wheel on the hip axis. @internal */
export function takenOff(x: LegNumbers, joint: DrivenJoint): string {
  const { through } = x.joints.knee
  if ((joint as string) === SECOND_STAGE)
    return `Hold the ${through?.kind === 'belt' ? 'pulley' : 'drum'} on the hip axis by a pin through it, and the upper link by a clamp, so that the knee alone turns: torque and angle of the log are those of the knee. `
  if (joint !== 'knee' || through === undefined) return ''
  const { output } = driveWords(x, joint)
  const what = through.kind === 'rod' ? 'rod' : `${through.kind} along the upper link`
  return `Take the ${what} off, so that the upper link hangs free, and bolt the lath to the ${output} on the hip axis: torque and angle of the log are those of the ${output}. `
}
