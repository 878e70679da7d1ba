import type { OdeSolution } from '../numeric/index.js'

/** A quantity followed along a transient besides the nodes, calculated from their temperatures. */
export type Probe = (y: ArrayLike<number>) => number

/** Extremes of each node, then of each probe, over a transient: true ones of the interpolant, not those of the steps. */
export interface Extremes {
  readonly highest: Float64Array
  readonly highestAt: Float64Array
  readonly lowest: Float64Array
  /** Integral over time. */
  readonly integral: Float64Array
}

/** Nodes and weights of Gauss's rule with three points on 0 to 1. */
export const GAUSS = [0.5 - Math.sqrt(0.15), 0.5, 0.5 + Math.sqrt(0.15)] as const
export const WEIGHT = [5 / 18, 8 / 18, 5 / 18] as const

/** Extremes and integrals of a transient. */
export function extremesOf(solution: OdeSolution, probes: readonly Probe[] = []): Extremes {
  const { size, t } = solution
  const count = size + probes.length
  const highest = new Float64Array(count).fill(Number.NEGATIVE_INFINITY)
  const lowest = new Float64Array(count).fill(Number.POSITIVE_INFINITY)
  const highestAt = new Float64Array(count)
  const integral = new Float64Array(count)
  const state = new Float64Array(size)
  const y = new Float64Array(count)
  const take = (time: number) => {
    y.set(solution.at(time, state))
    for (let p = 0; p < probes.length; p++) y[size + p] = probes[p]!(state)
    for (let i = 0; i < count; i++) {
      const x = y[i]!
      if (x > highest[i]!) {
        highest[i] = x
        highestAt[i] = time
      }
      if (x < lowest[i]!) lowest[i] = x
    }
  }
  take(t[0]!)
  for (let k = 1; k < t.length; k++) {
    const from = t[k - 1]!
    const span = t[k]! - from
    for (let p = 0; p < 3; p++) {
      take(from + span * GAUSS[p]!)
      for (let i = 0; i < count; i++) integral[i] = integral[i]! + span * WEIGHT[p]! * y[i]!
    }
    take(t[k]!)
  }
  for (let i = 0; i < count; i++) {
    const probe = probes[i - size]
    refine(solution, i, probe === undefined ? (row) => row[i]! : probe, highest, highestAt)
  }
  return { highest, highestAt, lowest, integral }
}

/** Sharpens a maximum found on samples by golden sections between its neighbouring steps. */
function refine(solution: OdeSolution, i: number, of: Probe, highest: Float64Array, highestAt: Float64Array): void {
  const { t } = solution
  const at = highestAt[i]!
  if (at <= t[0]! || at >= solution.tEnd) return
  let k = 1
  while (k < t.length - 1 && t[k]! < at) k++
  let lo = t[Math.max(0, k - 2)]!
  let hi = t[Math.min(t.length - 1, k + 1)]!
  const y = new Float64Array(solution.size)
  const value = (time: number) => of(solution.at(time, y))
  const golden = 0.6180339887498949
  let left = hi - golden * (hi - lo)
  let right = lo + golden * (hi - lo)
  let atLeft = value(left)
  let atRight = value(right)
  for (let step = 0; step < 30 && hi - lo > 1e-6 * solution.tEnd; step++) {
    if (atLeft < atRight) {
      lo = left
      left = right
      atLeft = atRight
      right = lo + golden * (hi - lo)
      atRight = value(right)
    } else {
      hi = right
      right = left
      atRight = atLeft
      left = hi - golden * (hi - lo)
      atLeft = value(left)
    }
  }
  const best = Math.max(atLeft, atRight)
  if (best > highest[i]!) {
    highest[i] = best
    highestAt[i] = atLeft > atRight ? left : right
  }
}
