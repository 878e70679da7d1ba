import { fitLeastSquares, studentTQuantile } from '../../numeric/index.js'
import { type Kind, Quantity } from '../../units/index.js'
import type { Leg } from '../document/describe.js'
import { uprightCompliance } from '../foot-result.js'
import { legModel } from '../leg-model.js'
import { legNumbers } from '../numbers.js'
import type { ReadLog } from './logs.js'

/** A measurement that corrects no field, compared with the prediction of the corrected leg. */
export interface ComparedLog {
  /** Name of the log. */
  readonly log: string
  /** The measured quantity, in plain words. */
  readonly what: string
  /** Infinite where the model's drives hold no load in the standing pose. */
  readonly predicted: Quantity<Kind>
  /** What the uncertain values of the leg let it be. */
  readonly band: readonly [Quantity<Kind>, Quantity<Kind>]
  /** Measured, with its interval of 95 % confidence; absent where the readings do not determine it. */
  readonly measured: Quantity<Kind> | undefined
  /** Interval of 95 % confidence of the measured value; absent where the readings do not determine it. */
  readonly interval: readonly [Quantity<Kind>, Quantity<Kind>] | undefined
  /** `agrees` where interval and band overlap. */
  readonly state: 'agrees' | 'above' | 'below' | 'undetermined'
  /** Interpretation. */
  readonly means: string
}

/** The foot's compliance, measured against that of the corrected leg. */
export function compareFoot(leg: Leg, log: string, rows: ReadLog['rows'], gain: number): ComparedLog {
  const x = legNumbers(leg)
  const [typical, ...ends] = ([undefined, 'pessimistic', 'optimistic'] as const).map((end) => uprightCompliance(legModel(x, end)))
  const [stiff, soft] = [Math.min(typical!, ...ends), Math.max(typical!, ...ends)]
  const slope = slopeOf(
    rows.map(([push, give]) => [Math.abs(push!), Math.abs(give!)]),
    gain,
  )
  const compliance = (y: number) => new Quantity(y, 'linearCompliance')
  const state = slope === undefined ? 'undetermined' : slope.interval[0] > soft ? 'above' : slope.interval[1] < stiff ? 'below' : 'agrees'
  return {
    log,
    what: 'vertical compliance of the foot',
    predicted: compliance(typical!),
    band: [compliance(stiff), compliance(soft)],
    measured: slope && compliance(slope.value),
    interval: slope && [compliance(slope.interval[0]), compliance(slope.interval[1])],
    state,
    means: FOOT_MEANS[state],
  }
}

const FOOT_MEANS = {
  agrees: 'drives and links explain the deflection of the foot',
  above:
    'the foot deflects more than drives and links explain: look for play in pins and bearings, soft bosses, abduction of the hip, the frame',
  below: 'stiffer than the model: was the foot free to move across the push?',
  undetermined: 'the readings do not determine a slope: take more steps of load',
} as const

/**
 * The slope of the second column over the first, whatever the zero of the instruments. Its interval has 95 % confidence, the gain of the instruments
 * (as a standard deviation) counted; absent where the rows do not determine the slope.
 */
function slopeOf(rows: readonly (readonly number[])[], gain: number): { value: number; interval: readonly [number, number] } | undefined {
  const [xs, ys] = [0, 1].map((column) => Math.max(...rows.map((row) => Math.abs(row[column]!)))) as [number, number]
  if (!(xs > 0 && ys > 0)) return undefined
  const fit = fitLeastSquares({
    count: rows.length,
    start: [0, 1],
    residuals: (p, out) =>
      rows.forEach(([x, y], i) => {
        out[i] = p[0]! + (p[1]! * x!) / xs - y! / ys
      }),
  })
  const error = fit.standardErrors[1]!
  if (!Number.isFinite(error)) return undefined
  const reach = Math.hypot(studentTQuantile(0.975, Math.max(1, fit.degreesOfFreedom)) * error, 1.96 * gain * fit.parameters[1]!)
  const [value, low, high] = [0, -reach, reach].map((away) => ((fit.parameters[1]! + away) * ys) / xs) as [number, number, number]
  return { value, interval: [low, high] }
}
