import { luFactor, luSolve, type OdeSolution } from '../numeric/index.js'
import { storageOf } from './network-algebraic.js'
import { flowOf, imbalance, lossAt, type NetworkNumbers, type Spread, slopes } from './network-numbers.js'

/** Writes the extra heat into each node when one cause of scatter stands at the end of its band; `into` is the net heat each takes up to warm. */
function pushOf(
  n: NetworkNumbers,
  T: Float64Array,
  { links, losses, capacities }: Spread,
  into: Float64Array | undefined,
  out: Float64Array,
): void {
  const size = n.names.length
  out.fill(0, 0, size)
  for (const loss of n.losses) if (losses[loss.node] !== 0) out[loss.node] = out[loss.node]! + losses[loss.node]! * lossAt(loss, T)
  n.links.forEach((link, i) => {
    if (links[i] === 0) return
    const heat = links[i]! * flowOf(link, T)
    if (link.a < size) out[link.a] = out[link.a]! - heat
    if (link.b < size) out[link.b] = out[link.b]! + heat
  })
  // A capacity that is larger warms more slowly, as if it were robbed of that part of its heat.
  if (into !== undefined) for (let i = 0; i < size; i++) out[i] = out[i]! - capacities[i]! * into[i]!
}

/** How far each cause moves the free temperatures of a steady state, kelvin at the end of its 95 % band; to first order. */
export function steadyShifts(n: NetworkNumbers, T: Float64Array): Float64Array[] {
  const size = n.names.length
  const matrix = new Float64Array(size * size)
  const pivots = new Int32Array(size)
  slopes(n, T, matrix)
  for (let i = 0; i < size * size; i++) matrix[i] = -matrix[i]!
  if (luFactor(matrix, size, pivots) === 0) return []
  return n.spreads.map((spread) => {
    const change = new Float64Array(size)
    pushOf(n, T, spread, undefined, change)
    luSolve(matrix, size, pivots, change)
    return change
  })
}

/** Half-width of a band from what each cause shifts: independent causes add in squares. */
export const halfWidth = (shifts: readonly Float64Array[], of: (shift: Float64Array) => number): number =>
  Math.sqrt(shifts.reduce((sum, shift) => sum + of(shift) ** 2, 0))

/** Half-widths of the 95 % bands of the free temperatures of a steady state. */
export function bandsAt(n: NetworkNumbers, T: Float64Array): Float64Array {
  const shifts = steadyShifts(n, T)
  return Float64Array.from(n.names, (_, i) => halfWidth(shifts, (shift) => shift[i]!))
}

/** Shift by each cause at the times of a transient: for each time, rows of kelvin by cause. */
export interface CourseShifts {
  readonly times: Float64Array
  readonly rows: readonly (readonly Float64Array[])[]
}

const GAMMA = 1 - Math.SQRT1_2

/**
 * Follows the first-order shifts of every cause along a solved transient, from given ones (none at a known start). Rows beyond the causes are shifts without a
 * cause of their own, such as of the start temperatures.
 *
 * Two-stage, second-order, L-stable steps (Alexander 1977) on the transient's own times: good to a percent of the band. A node without heat capacity follows
 * within the first step.
 */
export function courseShifts(n: NetworkNumbers, solution: OdeSolution, start: readonly Float64Array[]): CourseShifts {
  const size = n.names.length
  const T = new Float64Array(size + n.fixed.length)
  T.set(n.fixed, size)
  const rate = new Float64Array(size * size)
  const factors = new Float64Array(size * size)
  const pivots = new Int32Array(size)
  const net = new Float64Array(size)
  const y = new Float64Array(size)
  const push = new Float64Array(size)
  /** One stage: the rates of all rows with the temperatures of a time. */
  const stage = (time: number, h: number, base: readonly Float64Array[], out: readonly Float64Array[]) => {
    T.set(solution.at(time, y))
    slopes(n, T, rate)
    imbalance(n, T, net)
    for (let i = 0; i < size; i++)
      for (let j = 0; j < size; j++) factors[i * size + j] = (i === j ? n.capacities[i]! : 0) - GAMMA * h * rate[i * size + j]!
    luFactor(factors, size, pivots)
    base.forEach((row, k) => {
      const slope = out[k]!
      const spread = n.spreads[k]
      if (spread === undefined) push.fill(0)
      else pushOf(n, T, spread, net, push)
      for (let i = 0; i < size; i++) {
        let sum = push[i]!
        for (let j = 0; j < size; j++) sum += rate[i * size + j]! * row[j]!
        slope[i] = sum
      }
      luSolve(factors, size, pivots, slope)
    })
  }
  if (start.length === 0) return { times: solution.t, rows: Array.from(solution.t, () => []) }
  const zero = () => start.map(() => new Float64Array(size))
  const first = zero()
  const second = zero()
  const middle = zero()
  const step = (from: number, to: number, before: readonly Float64Array[]) => {
    const h = to - from
    stage(from + GAMMA * h, h, before, first)
    before.forEach((row, k) => {
      for (let i = 0; i < size; i++) middle[k]![i] = row[i]! + (1 - GAMMA) * h * first[k]![i]!
    })
    stage(to, h, middle, second)
    return before.map((row, k) => row.map((x, i) => x + h * ((1 - GAMMA) * first[k]![i]! + GAMMA * second[k]![i]!)))
  }
  T.set(solution.at(solution.t[0]!, y))
  slopes(n, T, rate)
  const quickest = 1 / Math.max(...storageOf(n).storing.map((i) => Math.abs(rate[i * size + i]!) / n.capacities[i]!))
  const times = [solution.t[0]!]
  const rows = [start]
  for (const to of stepEnds(solution.t, quickest)) {
    rows.push(step(times.at(-1)!, to, rows.at(-1)!))
    times.push(to)
  }
  return { times: Float64Array.from(times), rows }
}

/** A step of the shifts is at most this part of the time so far. */
const REACH = 0.3

/**
 * Ends of the steps of the shifts: those of the transient, and more between them. A transient that lies still has long steps, in which the shifts may still grow: they are
 * followed in steps that lengthen as the time does.
 */
function* stepEnds(times: Float64Array, quickest: number): Generator<number> {
  for (let s = 1; s < times.length; s++) {
    const [from, end] = [times[s - 1]!, times[s]!]
    const longest = REACH * (from - times[0]! + quickest)
    const parts = Math.max(1, Math.ceil(Math.log1p((REACH * (end - from)) / longest) / Math.log1p(REACH)))
    for (let part = 1; part < parts; part++) yield from + (longest / REACH) * ((1 + REACH) ** part - 1)
    yield end
  }
}

/** No shift yet of any cause. */
export const unshifted = (n: NetworkNumbers): Float64Array[] => n.spreads.map(() => new Float64Array(n.names.length))

/** Shifts at any time of a transient, on straight lines between its steps. */
export function shiftsAt({ times, rows }: CourseShifts, time: number): Float64Array[] {
  let low = 0
  let high = times.length - 1
  while (high - low > 1) {
    const middle = (low + high) >> 1
    if (times[middle]! <= time) low = middle
    else high = middle
  }
  const part = high === low ? 0 : (time - times[low]!) / (times[high]! - times[low]!)
  return rows[low]!.map((row, k) => row.map((x, i) => x + part * (rows[high]![k]![i]! - x)))
}

/** The network with its causes of scatter each at a part of its band: 1 is the 95 % end. */
export function displaced(n: NetworkNumbers, parts: ArrayLike<number>): NetworkNumbers {
  const factor = (of: 'links' | 'losses' | 'capacities', index: number) =>
    Math.exp(n.spreads.reduce((sum, spread, k) => sum + parts[k]! * spread[of][index]!, 0))
  return {
    ...n,
    links: n.links.map((link, i) => ({ ...link, factor: link.factor * factor('links', i) })),
    losses: n.losses.map((loss) => ({ ...loss, factor: loss.factor * factor('losses', loss.node) })),
    capacities: n.capacities.map((c, i) => c * factor('capacities', i)),
  }
}
