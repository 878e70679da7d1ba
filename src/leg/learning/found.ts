import { studentTQuantile } from '../../numeric/index.js'
import { ENOUGH_FREEDOM, type Fit, indexOf, type Part } from './fit.js'
import { fromCoordinate, type Parameter } from './model.js'

/** Half the interval over the value, beyond which a value counts as undetermined. */
const MAX_RELATIVE_WIDTH = 0.75
/** What an angle of either sign is known to without a log: its width counts over that. */
const ANGLE = Math.PI / 12

/** Estimate of one field from the logs. */
export interface FieldEstimate {
  readonly path: string
  readonly logs: readonly string[]
  readonly value: number
  /** Where the value lies with 95 % confidence, instruments counted; absent where the data do not determine it. */
  readonly interval: readonly [number, number] | undefined
  /** What the band of the field holds: the interval, single readings, and what one log cannot tell. */
  readonly spread: readonly [number, number]
  readonly readings: number
  /** Why it is undetermined, or its band is wider than its interval. */
  readonly why: string | undefined
  /** What the interval is wide by: the errors and fields that it rests on, largest share of its square first. */
  readonly shares: readonly Share[]
}

/** Part of the square of a standard error that comes from not knowing something else. */
export interface Share {
  readonly of: Parameter
  readonly share: number
  /** The interval over its present width, were that known exactly. */
  readonly narrowed: number
}

/** Fields that some logs tell together. */
export function estimatesIn(fit: Fit, parts: readonly Part[]): FieldEstimate[] {
  const paths = [...new Set(parts.flatMap(({ model }) => model.learns))]
  return paths.map((path) => estimateOne(fit, parts, path))
}

function estimateOne(fit: Fit, parts: readonly Part[], path: string): FieldEstimate {
  const i = indexOf(fit, path)
  const parameter = fit.parameters[i] as Parameter
  const telling = parts.filter(({ model }) => model.learns.includes(path))
  const readings = telling.reduce((sum, { kept }) => sum + kept.filter(Boolean).length, 0)
  const u = fit.solution.parameters[i] as number
  const value = fromCoordinate(parameter, u)
  const n = fit.parameters.length
  const variance = fit.solution.covariance[i * n + i] as number
  const shares = sharesOf(fit, i)
  const t = studentTQuantile(0.975, freedomOf(telling, readings, shares))
  const beyond = Math.hypot(...telling.map(({ model, rows }) => model.beyond?.(path, value, rows) ?? 0))
  const error = t * Math.sqrt(variance)
  const inValue = (away: number) => fromCoordinate(parameter, u + away)
  const ends = [inValue(-error), inValue(error)] as const
  const further = 1.96 * beyond
  const interval = [value - Math.hypot(value - ends[0], further), value + Math.hypot(ends[1] - value, further)] as const
  const base = { path, logs: telling.map(({ model }) => model.log), value, readings, shares }
  const half = (interval[1] - interval[0]) / 2
  const held = fit.solution.atLimit.includes(i)
  const size = parameter.low < 0 ? ANGLE : Math.abs(value)
  if (held || !(half < MAX_RELATIVE_WIDTH * size))
    return { ...base, interval: undefined, spread: [value, value], why: whyNot(fit, i, held, base.shares) }
  const [low, high] = wider(telling, path, value, interval)
  return { ...base, interval: clipped(interval, parameter), spread: clipped([low, high], parameter), why: whyWider(telling, path) }
}

/** Degrees of freedom of a standard error of which only a share comes from the scatter of the readings (Welch, Satterthwaite). */
function freedomOf(telling: readonly Part[], readings: number, shares: readonly Share[]): number {
  // Where readings are few, the usual scatter counts for those that lack.
  const least = telling.every(({ model }) => model.usual !== undefined) ? ENOUGH_FREEDOM : 1
  const spare = Math.max(least, readings - telling[0]!.model.learns.length)
  const freedom = telling.reduce((sum, part) => sum + (part.freedom ?? Number.POSITIVE_INFINITY), 0)
  const ofScatter = Math.max(0, 1 - shares.reduce((sum, { share }) => sum + share, 0))
  return ofScatter === 0 ? spare : Math.min(spare, Math.max(1, freedom / ofScatter ** 2))
}

const clipped = ([low, high]: readonly [number, number], { low: least, high: end, most = end }: Parameter): readonly [number, number] => [
  Math.min(Math.max(low, least), most),
  Math.min(high, most),
]

function whyNot({ parameters }: Fit, i: number, held: boolean, shares: readonly Share[]): string {
  if (held) return 'the readings drive it to the end of what is possible: they do not follow the model'
  const [first] = shares
  if (first !== undefined && first.share > 0.3) return `${first.of.what} hides it: ${first.of.cure ?? 'vary the load more'}`
  return `the readings hardly depend on ${(parameters[i] as Parameter).what}: a larger load, more time or more readings would tell`
}

const whyWider = (telling: readonly Part[], path: string): string | undefined =>
  telling.flatMap(({ model }) => model.atLeast?.[path]?.why ?? []).at(0)

/** A band over the interval, over where single readings lie, and over what one log cannot tell. */
function wider(telling: readonly Part[], path: string, value: number, interval: readonly [number, number]): readonly [number, number] {
  let [low, high] = interval
  for (const { model, rows, kept } of telling) {
    const share = model.atLeast?.[path]?.share ?? 0
    low = Math.min(low, value - Math.hypot(share * value, value - interval[0]))
    high = Math.max(high, value + Math.hypot(share * value, interval[1] - value))
    if (model.single === undefined) continue
    const single = rows.filter((_, i) => kept[i]).map(model.single)
    const n = single.length
    const mean = single.reduce((sum, x) => sum + x, 0) / n
    const deviation = Math.sqrt(single.reduce((sum, x) => sum + (x - mean) ** 2, 0) / Math.max(1, n - 1))
    // A single later reading lies within this of the mean, 95 times of 100.
    const reach = studentTQuantile(0.975, Math.max(1, n - 1)) * deviation * Math.sqrt(1 + 1 / n)
    low = Math.min(low, Math.max(value - Math.hypot(reach, value - interval[0]), value / 10))
    high = Math.max(high, value + Math.hypot(reach, interval[1] - value))
  }
  return [low, high]
}

/** What the error of a parameter comes from: errors of instruments and fields that are known from elsewhere. */
function sharesOf({ parameters, solution: { covariance } }: Fit, i: number): Share[] {
  const n = parameters.length
  const own = covariance[i * n + i] as number
  if (!(own > 0 && Number.isFinite(own))) return []
  return parameters
    .flatMap((of, k): Share[] => {
      if (k === i || of.deviation === undefined) return []
      const [shared, other] = [covariance[i * n + k] as number, covariance[k * n + k] as number]
      if (!(other > 0)) return []
      return [
        {
          of,
          share: shared ** 2 / (of.deviation ** 2 * own),
          narrowed: Math.sqrt(Math.max(0, 1 - shared ** 2 / (own * other))),
        },
      ]
    })
    .sort((a, b) => b.share - a.share)
}

/** Pairs of learnt fields that the logs tell only together. */
export function confounded(
  fit: Fit,
  paths: readonly string[],
): { readonly one: string; readonly other: string; readonly correlation: number }[] {
  const n = fit.parameters.length
  const { covariance } = fit.solution
  return paths.flatMap((path, a) =>
    paths.slice(a + 1).flatMap((other) => {
      const [i, k] = [indexOf(fit, path), indexOf(fit, other)]
      const correlation =
        (covariance[i * n + k] as number) / Math.sqrt((covariance[i * n + i] as number) * (covariance[k * n + k] as number))
      return Math.abs(correlation) > TOGETHER_CORRELATION ? [{ one: path, other, correlation }] : []
    }),
  )
}

const TOGETHER_CORRELATION = 0.9
