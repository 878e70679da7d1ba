import { courseNumbers, type Watch } from './network-course.js'
import type { NetworkNumbers } from './network-numbers.js'
import { courseShifts, displaced, halfWidth, shiftsAt, steadyShifts, unshifted } from './network-spread.js'
import { type SteadyNumbers, steadyNumbers } from './network-steady.js'

/** When the first of several limits is reached, and which. */
export interface Reach {
  /** Seconds; infinite when the steady state stays below all limits. */
  readonly time: number
  /** Index of the limit; -1 when none is reached, or the network ran away first. */
  readonly which: number
  /** Node temperatures then. */
  readonly y: Float64Array
}

/** The same with the ends of its 95 % band. */
export interface ReachBand extends Reach {
  readonly low: number
  readonly high: number
}

const FIRST_SPAN = 60
const SPANS = 40
/** Within this many kelvin of the steady state nothing more happens. */
const ARRIVED = 0.01

/** Follows a network from start temperatures until the first limit is reached, or until it is clear that none ever is. */
export function reach(n: NetworkNumbers, start: Float64Array, watch: readonly Watch[], steady: SteadyNumbers = steadyNumbers(n)): Reach {
  const first = watch.findIndex(({ of, limit }) => of(start) >= limit)
  if (first >= 0) return { time: 0, which: first, y: start }
  // From a hot start a limit may be passed even below it at rest, by heat that arrives from a hotter neighbour: follow the transient until nothing changes.
  const settles = steady.state === 'steady' && watch.every(({ of, limit }) => of(steady.T) < limit)
  let y = start
  let clock = 0
  let span = FIRST_SPAN
  for (let k = 0; k < SPANS; k++) {
    const { solution, state, end } = courseNumbers(n, y, span, { watch, stopAtLimit: true })
    y = end
    if (state !== 'finished') {
      const event = solution.events.at(-1)!
      return { time: clock + event.t, which: event.event - 1, y }
    }
    clock += span
    span *= 2
    if (settles && y.every((t, i) => Math.abs(t - steady.T[i]!) < ARRIVED)) break
  }
  return { time: Number.POSITIVE_INFINITY, which: -1, y }
}

/**
 * The time to the first limit with its 95 % band.
 *
 * The causes of scatter are moved together to the end of the band in the direction that heats the governing part most, and to the other end; both courses are followed
 * in full, so that an end may be infinite: then the limit is not reached there.
 */
export function reachWithBand(n: NetworkNumbers, start: Float64Array, watch: readonly Watch[]): ReachBand {
  const steady = steadyNumbers(n)
  const middle = reach(n, start, watch, steady)
  if (n.spreads.length === 0 || middle.time === 0 || watch.length === 0) return { ...middle, low: middle.time, high: middle.time }
  let shifts: Float64Array[]
  let of: Watch['of']
  if (middle.time === Number.POSITIVE_INFINITY) {
    shifts = steadyShifts(n, steady.T)
    const distance = (each: Watch) => (each.limit - each.of(steady.T)) / (halfWidth(shifts, each.of) || Number.MIN_VALUE)
    of = watch.reduce((best, each) => (distance(each) < distance(best) ? each : best)).of
  } else {
    const { solution } = courseNumbers(n, start, middle.time)
    shifts = shiftsAt(courseShifts(n, solution, unshifted(n)), solution.tEnd)
    of = watch[middle.which]?.of ?? hottest(middle.y)
  }
  return { ...middle, ...bandOf(n, start, watch, middle.time, shifts.map(of)) }
}

/** Times to the first limit with all causes at either end of the band, along what each shifts. */
export function bandOf(
  n: NetworkNumbers,
  start: Float64Array,
  watch: readonly Watch[],
  middle: number,
  shifts: readonly number[],
): { readonly low: number; readonly high: number } {
  const length = Math.hypot(...shifts)
  if (length === 0) return { low: middle, high: middle }
  const at = (sign: number) =>
    reach(
      displaced(
        n,
        shifts.map((shift) => (sign * shift) / length),
      ),
      start,
      watch,
    ).time
  return { low: Math.min(middle, at(1)), high: Math.max(middle, at(-1)) }
}

const hottest = (y: Float64Array): Watch['of'] => {
  const i = y.indexOf(y.reduce((max, t) => Math.max(max, t), Number.NEGATIVE_INFINITY))
  return (T) => T[i]!
}
