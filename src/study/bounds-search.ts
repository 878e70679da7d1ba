import { minimise, sobolSequence } from '../numeric/index.js'
import type { Varied } from './uncertain-model.js'

/** How the result goes with one input over the ranges, as far as tested. */
export type Trend = 'rising' | 'falling' | 'mixed' | 'none'

/** Corners are all tried up to this many inputs; beyond, those that the trends point to, and neighbours by search. */
const MAX_CORNER_INPUTS = 12

/** A point and the result there. */
export interface BestPoint {
  readonly y: number
  readonly x: Float64Array
}

/** The search for the extremes of a result over ranges of its inputs. */
export class Search {
  evaluations = 0
  gaps = 0
  lowest: BestPoint | undefined
  highest: BestPoint | undefined
  private readonly n: number
  private readonly tried: BestPoint[] = []

  constructor(
    private readonly varied: readonly Varied[],
    private readonly model: (x: Float64Array) => number,
  ) {
    this.n = varied.length
  }

  private place(i: number, fraction: number): number {
    const { low, high } = (this.varied[i] as Varied).scatter
    return fraction === 0 ? low : fraction === 1 ? high : low + fraction * (high - low)
  }

  /** Runs the formula and keeps the extremes. */
  private run(x: Float64Array): number {
    this.evaluations++
    const y = this.model(x)
    if (Number.isNaN(y)) {
      this.gaps++
      return y
    }
    if (this.lowest === undefined || y < this.lowest.y) this.lowest = { y, x: x.slice() }
    if (this.highest === undefined || y > this.highest.y) this.highest = { y, x: x.slice() }
    return y
  }

  /** Along every input, five places through every point: which way the result goes. */
  trends(points: number, seed: number): Trend[] {
    const sequence = sobolSequence(this.n, seed)
    const u = new Float64Array(this.n)
    const x = new Float64Array(this.n)
    const up = new Array<boolean>(this.n).fill(false)
    const down = new Array<boolean>(this.n).fill(false)
    for (let p = 0; p < points; p++) {
      sequence.point(p, u)
      for (let i = 0; i < this.n; i++) x[i] = this.place(i, u[i] as number)
      const own = this.run(x)
      if (!Number.isNaN(own)) this.tried.push({ y: own, x: x.slice() })
      for (let i = 0; i < this.n; i++) {
        const kept = x[i] as number
        let before = Number.NaN
        for (const fraction of [0, 0.25, 0.5, 0.75, 1]) {
          x[i] = this.place(i, fraction)
          const y = this.run(x)
          // Differences within rounding are no direction.
          const level = 1e-12 * Math.max(Math.abs(y), Math.abs(before))
          if (y - before > level) up[i] = true
          if (before - y > level) down[i] = true
          before = y
        }
        x[i] = kept
      }
    }
    return up.map((rises, i) => (rises ? (down[i] ? 'mixed' : 'rising') : down[i] ? 'falling' : 'none'))
  }

  /** All corners, or, with many inputs, those of the known trends with every input that turns on either side. */
  corners(trends: readonly Trend[]): void {
    const x = new Float64Array(this.n)
    const all = this.n <= MAX_CORNER_INPUTS
    const free = trends.flatMap((trend, i) => (all || trend === 'mixed' ? [i] : [])).slice(0, MAX_CORNER_INPUTS)
    for (const highest of all ? [true] : [true, false]) {
      for (let i = 0; i < this.n; i++) x[i] = this.place(i, (trends[i] === 'rising') === highest ? 1 : 0)
      for (let bits = 0; bits < 2 ** free.length; bits++) {
        free.forEach((i, k) => {
          x[i] = this.place(i, (bits >> k) & 1)
        })
        this.run(x)
      }
    }
  }

  /** Searches from the extremes so far and from the best points inside. */
  inside(): void {
    const bySize = [...this.tried].sort((a, b) => a.y - b.y)
    for (const sign of [1, -1] as const) {
      const extreme = (sign === 1 ? this.lowest : this.highest) as BestPoint
      const starts = [extreme, ...(sign === 1 ? bySize.slice(0, 4) : bySize.slice(-4))]
      for (const { x } of starts) {
        const u = Float64Array.from(x, (xi, i) => {
          const { low, high } = (this.varied[i] as Varied).scatter
          return Math.min(Math.max((xi - low) / (high - low), 0), 1)
        })
        const at = new Float64Array(this.n)
        const value = (fractions: Float64Array) => {
          for (let i = 0; i < this.n; i++) at[i] = this.place(i, fractions[i] as number)
          const y = this.run(at)
          return Number.isNaN(y) ? Number.POSITIVE_INFINITY : sign * y
        }
        if (!Number.isFinite(value(u))) continue
        minimise(value, u, {
          lower: new Float64Array(this.n),
          upper: new Float64Array(this.n).fill(1),
          step: new Float64Array(this.n).fill(0.2),
        })
      }
    }
  }
}
