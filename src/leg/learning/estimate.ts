import { fitLeastSquares, studentTQuantile } from '../../numeric/index.js'
import type { LogRemark, ReadLog } from './logs.js'
import type { Estimate } from './measurements.js'

/** What may be done with readings far outside the scatter of the rest. */
export interface SpikeOptions {
  /** Readings far outside the scatter of the rest: left out of the fit (default) or kept in it. They are reported either way. */
  readonly spikes?: 'leaveOut' | 'keep'
}

/** Readings farther than this many robust deviations from the rest are spikes. */
const SPIKE = 6
/** The median of absolute deviations of a normal scatter, over its standard deviation. */
const MAD = 0.6744897501960817
/** Fewest whole rows for an estimate. */
export const LEAST_READINGS = 3

/** Half the interval over the value, beyond which a value counts as undetermined. */
const WIDEST = 0.75

/** Estimate of one field from a log. */
export interface Found {
  readonly path: string
  readonly value: number
  /** Where the value lies with 95 % confidence; absent where the data do not determine it. */
  readonly interval: readonly [number, number] | undefined
  /** Where single readings lie: what a band of the specification means. */
  readonly spread: readonly [number, number]
  /** Standard error of the value. */
  readonly error: number
  readonly readings: number
}

/** Rows whose residual is far outside the scatter of the rest, by index. */
function spikesOf(residuals: readonly number[]): number[] {
  const median = (list: readonly number[]) => {
    const sorted = [...list].sort((a, b) => a - b)
    const half = sorted.length >> 1
    return sorted.length % 2 === 1 ? sorted[half]! : (sorted[half - 1]! + sorted[half]!) / 2
  }
  const middle = median(residuals)
  const deviation = median(residuals.map((r) => Math.abs(r - middle))) / MAD
  // Readings that agree to rounding have no scatter to judge by.
  const floor = 1e-9 * Math.max(...residuals.map(Math.abs))
  return residuals.flatMap((r, i) => (Math.abs(r - middle) > SPIKE * Math.max(deviation, floor) ? [i] : []))
}

/** The rows without spikes, every spike reported. */
function withoutSpikes(log: string, read: ReadLog, residuals: readonly number[], remarks: LogRemark[], options: SpikeOptions) {
  const spikes = read.rows.length < 5 ? [] : spikesOf(residuals)
  const keep = options.spikes === 'keep'
  for (const i of spikes)
    remarks.push({
      log,
      line: read.lines[i],
      what: 'spike',
      message: `far outside the scatter of the other readings; ${keep ? 'kept' : 'left out'}`,
    })
  return keep ? read.rows : read.rows.filter((_, i) => !spikes.includes(i))
}

/** The mean of readings that scatter, and where single ones lie. */
export function scattered(
  log: string,
  read: ReadLog,
  { path, value, high }: Extract<Estimate, { kind: 'scatter' }>,
  remarks: LogRemark[],
  options: SpikeOptions,
): Found[] {
  const rows = withoutSpikes(log, read, read.rows.map(value), remarks, options)
  const values = rows.map(value)
  const usable = values.filter((x) => x > 0 && x <= high)
  if (usable.length < values.length)
    remarks.push({
      log,
      line: undefined,
      what: 'unreadable',
      message: `${values.length - usable.length} readings give a value outside 0 to ${high} for ${path} and are left out`,
    })
  const n = usable.length
  if (n < LEAST_READINGS) return []
  const mean = usable.reduce((sum, x) => sum + x, 0) / n
  const deviation = Math.sqrt(usable.reduce((sum, x) => sum + (x - mean) ** 2, 0) / (n - 1))
  const t = studentTQuantile(0.975, n - 1)
  const reach = (t * deviation) / Math.sqrt(n)
  // A single later reading lies within this of the mean, 95 times of 100.
  const single = t * deviation * Math.sqrt(1 + 1 / n)
  return [
    {
      path,
      value: mean,
      error: deviation / Math.sqrt(n),
      interval: [mean - reach, mean + reach],
      spread: [Math.max(mean - single, mean / 10), Math.min(mean + single, high)],
      readings: n,
    },
  ]
}

/** Parameters of a curve through all readings. */
export function fitted(
  log: string,
  read: ReadLog,
  { parameters, predict, measured }: Extract<Estimate, { kind: 'curve' }>,
  remarks: LogRemark[],
  options: SpikeOptions,
): Found[] {
  const solve = (keep: readonly boolean[]) => {
    const count = keep.filter(Boolean).length
    return fitLeastSquares({
      count,
      start: parameters.map(({ start }) => start),
      lower: parameters.map(({ low }) => low),
      upper: parameters.map(({ high }) => high),
      residuals: (p, out) => {
        let k = 0
        // A path through all rows: what a reading did to the cord stays done, whether it is believed or not.
        predict(p, read.rows).forEach((y, i) => {
          if (keep[i]) out[k++] = y - measured(read.rows[i]!)
        })
      },
    })
  }
  const all = read.rows.map(() => true)
  const first = solve(all)
  const kept = withoutSpikes(log, read, Array.from(first.residuals), remarks, options)
  const keep = read.rows.map((row) => kept.includes(row))
  if (kept.length < Math.max(LEAST_READINGS, parameters.length + 1)) {
    remarks.push({ log, line: undefined, what: 'few readings', message: `${kept.length} readings are left, too few to estimate a field` })
    return []
  }
  const found = kept.length === read.rows.length ? first : solve(keep)
  const t = studentTQuantile(0.975, Math.max(1, found.degreesOfFreedom))
  return parameters.flatMap(({ path, high }, i): Found[] => {
    if (path === undefined) return []
    const value = found.parameters[i]!
    const error = found.standardErrors[i]!
    const interval = [value - t * error, value + t * error] as const
    // Every field fitted here is positive: an interval nearly as wide as the value itself does not determine it.
    const told = t * error < WIDEST * value && !found.atLimit.includes(i)
    return [
      {
        path,
        value,
        error,
        interval: told ? interval : undefined,
        spread: told ? [Math.max(interval[0], value / 10), Math.min(interval[1], high)] : [value, value],
        readings: kept.length,
      },
    ]
  })
}

/**
 * The slope of the second column over the first, whatever the zero of the instruments. Its interval has 95 % confidence, and is there where the
 * rows determine the slope.
 */
export function slopeOf(rows: readonly (readonly number[])[]): { value: number; interval: readonly [number, number] } | undefined {
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
  const reach = studentTQuantile(0.975, Math.max(1, fit.degreesOfFreedom)) * error
  const [value, low, high] = [0, -reach, reach].map((away) => ((fit.parameters[1]! + away) * ys) / xs) as [number, number, number]
  return { value, interval: [low, high] }
}

/** Two estimates of one value as one: each weighs as the inverse square of its error; how many combined errors they lie apart. */
export function pooled(a: Found, b: Found): { one: Found; apart: number } {
  const [wa, wb] = [1 / a.error ** 2, 1 / b.error ** 2]
  const value = (wa * a.value + wb * b.value) / (wa + wb)
  const error = 1 / Math.sqrt(wa + wb)
  const t = studentTQuantile(0.975, a.readings + b.readings - 2)
  return {
    one: {
      path: a.path,
      value,
      error,
      interval: [value - t * error, value + t * error],
      spread: [Math.min(a.spread[0], b.spread[0]), Math.max(a.spread[1], b.spread[1])],
      readings: a.readings + b.readings,
    },
    apart: Math.abs(a.value - b.value) / Math.hypot(a.error, b.error),
  }
}
