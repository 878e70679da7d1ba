import { fitLeastSquares, studentTQuantile } from '../../numeric/index.js'
import { type Kind, Quantity, significant } from '../../units/index.js'
import type { Leg } from '../document/describe.js'
import { uprightCompliance } from '../foot-result.js'
import { legModel } from '../leg-model.js'
import { legNumbers } from '../numbers.js'
import { type LogRemark, ofLog } from './logs.js'
import type { Rows } from './model.js'
import { type SpikeOptions, withoutSpikes } from './spikes.js'

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

/** Readings of the deflection of the foot, and the gain of its instruments as a standard deviation. */
export interface FootLog {
  readonly log: string
  readonly rows: Rows
  readonly lines: readonly number[]
  readonly gain: number
}

/** The foot's compliance, measured against that of the corrected leg. */
export function compareFoot(
  leg: Leg,
  { log, rows, lines, gain }: FootLog,
  remarks: LogRemark[],
  options: SpikeOptions,
): ComparedLog | undefined {
  const x = legNumbers(leg)
  const [typical, ...ends] = ([undefined, 'pessimistic', 'optimistic'] as const).map((end) => uprightCompliance(legModel(x, end)))
  const [stiff, soft] = [Math.min(typical!, ...ends), Math.max(typical!, ...ends)]
  const slope = slopeOf({ log, rows, lines, gain }, remarks, options)
  const compliance = (y: number) => new Quantity(y, 'linearCompliance')
  if (slope !== undefined && Number.isFinite(stiff) && !(slope.value > stiff / FAR && slope.value < soft * FAR)) {
    const words = `vertical compliance of the foot comes out as ${compliance(slope.value)}, where ${compliance(typical!)} is expected`
    remarks.push(ofLog(log, 'implausible', `${words}: another unit, or swapped columns. The log is not compared`))
    return undefined
  }
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

/** A foot that gives this many times less or more than the leg lets it is no such reading. */
const FAR = 20

const FOOT_MEANS = {
  agrees: 'drives and links explain the deflection of the foot',
  above:
    'the foot deflects more than drives and links explain: look for play in pins and bearings, soft bosses, abduction of the hip, the frame',
  below: 'stiffer than the model: was the foot free to move across the push?',
  undetermined: 'the readings do not determine a slope: take more steps of load',
} as const

/** A straight line through readings, both columns over their largest values. */
const lineThrough = (points: Rows) =>
  fitLeastSquares({
    count: points.length,
    start: [0, 1],
    residuals: (p, out) => {
      for (const [i, [x, y]] of points.entries()) out[i] = p[0]! + p[1]! * x! - y!
    },
  })

/** Readings that lie farther than this share of the largest deflection off their line do not follow one: play and friction take some per cent. */
const MAX_AWAY = 0.08

/** No readings of a slope are closer than this share of their range. */
const CLOSEST = 0.002

/**
 * The slope of the second column over the first, whatever the zero of the instruments and the signs of both columns. Its interval has 95 % confidence,
 * the gain of the instruments counted; absent where the rows do not determine the slope.
 */
function slopeOf(
  { log, rows, lines, gain }: FootLog,
  remarks: LogRemark[],
  options: SpikeOptions,
): { value: number; interval: readonly [number, number] } | undefined {
  const [xs, ys] = [0, 1].map((column) => Math.max(...rows.map((row) => Math.abs(row[column]!)))) as [number, number]
  if (!(xs > 0 && ys > 0)) return undefined
  const points = rows.map(([x, y]) => [x! / xs, y! / ys])
  const [a, b] = lineThrough(points).parameters as unknown as [number, number]
  const deviations = points.map(([x, y]) => a + b * x! - y!)
  const all = rows.map(() => true)
  const kept = withoutSpikes(log, lines, all, [{ deviations, closest: CLOSEST, freedom: rows.length - 2 }], remarks, options)
  const { parameters, standardErrors, degreesOfFreedom, sigma: away } = lineThrough(points.filter((_, i) => kept[i]))
  if (away > MAX_AWAY)
    remarks.push(
      ofLog(
        log,
        'misfit',
        `readings lie ${significant(100 * away, 2)} % of the largest deflection off a straight line: did something slip, or was a unit or an instrument changed on the way?`,
      ),
    )
  const [slope, error] = [Math.abs(parameters[1]!), standardErrors[1]!]
  if (!Number.isFinite(error)) return undefined
  const reach = Math.hypot(studentTQuantile(0.975, Math.max(1, degreesOfFreedom)) * error, 1.96 * gain * slope)
  const [value, low, high] = [0, -reach, reach].map((away) => ((slope + away) * ys) / xs) as [number, number, number]
  return { value, interval: [low, high] }
}
