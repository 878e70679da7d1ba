import { NumericError } from './error.js'
import type { OdeEvent } from './ode-problem.js'
import type { OdeEventRecord, OdeSolution } from './ode-solution.js'
import { bracketRoot } from './root.js'

/** Evaluates one step's interpolant at θ from 0 to 1. */
function interpolate(
  y: Float64Array,
  yOffset: number,
  c: Float64Array,
  cOffset: number,
  degree: number,
  theta: number,
  out: Float64Array,
): void {
  const n = out.length
  for (let i = 0; i < n; i++) {
    let sum = 0
    for (let k = degree - 1; k >= 0; k--) sum = (sum + c[cOffset + k * n + i]!) * theta
    out[i] = y[yOffset + i]! + sum
  }
}

// A step is looked at in this many parts, so that a condition that rises and falls again within one step is still seen.
const PARTS = 4

/** Locates the events within a step, in order of time; returns the first terminal one. @internal */
export function watch(
  events: readonly OdeEvent[],
  signs: number[],
  happened: OdeEventRecord[],
  coefficients: Float64Array,
  degree: number,
  t: number,
  tNew: number,
  y: Float64Array,
  yNew: Float64Array,
): OdeEventRecord | undefined {
  const h = tNew - t
  const state = new Float64Array(y.length)
  const found: OdeEventRecord[] = []
  events.forEach((event, index) => {
    const valueAt = (theta: number): number => {
      if (theta === 1) return event.value(tNew, yNew)
      interpolate(y, 0, coefficients, 0, degree, theta, state)
      return event.value(t + theta * h, state)
    }
    let before = signs[index]!
    for (let part = 1; part <= PARTS; part++) {
      const value = valueAt(part / PARTS)
      if (Number.isNaN(value))
        throw new NumericError('solveOde', 'notFinite', 'an event function is not a number', { event: index, t: t + (part / PARTS) * h })
      const sign = Math.sign(value)
      if (sign === 0) continue
      const { direction = 'either' } = event
      if (before !== 0 && sign !== before && (direction === 'either' || (direction === 'rising') === sign > 0)) {
        // The last non-zero sign may lie parts back when a sample fell exactly on zero.
        let lo = (part - 1) / PARTS
        if (Math.sign(valueAt(lo)) === 0) lo = Math.max(0, lo - 1 / PARTS)
        const fLo = valueAt(lo)
        const theta = Math.sign(fLo) === before ? bracketRoot(valueAt, lo, part / PARTS, { xTolerance: 1e-13 }) : lo
        const where = new Float64Array(y.length)
        if (theta === 1) where.set(yNew)
        else interpolate(y, 0, coefficients, 0, degree, theta, where)
        found.push({ event: index, t: theta === 1 ? tNew : t + theta * h, y: where })
      }
      before = sign
    }
    signs[index] = before
  })
  found.sort((a, b) => a.t - b.t)
  for (const event of found) {
    happened.push(event)
    if (events[event.event]!.terminal) return event
  }
  return undefined
}

/** Steps kept in arrays that grow, and the solution made of them. @internal */
export class StepRecord {
  private t = new Float64Array(64)
  private h = new Float64Array(64)
  private y: Float64Array
  private c: Float64Array
  private count = 0

  constructor(
    private readonly n: number,
    private readonly degree: number,
  ) {
    this.y = new Float64Array(64 * n)
    this.c = new Float64Array(64 * n * degree)
  }

  first(t: number, y: Float64Array): void {
    this.t[0] = t
    this.y.set(y, 0)
    this.count = 1
  }

  step(t: number, y: Float64Array, tFrom: number, h: number, coefficients: Float64Array, dense: boolean): void {
    if (!dense) {
      this.t[1] = t
      this.y.set(y, this.n)
      this.count = 2
      return
    }
    if (this.count === this.t.length) this.grow()
    const { count, n, degree } = this
    this.t[count] = t
    this.h[count - 1] = h
    this.t[count - 1] = tFrom
    this.y.set(y, count * n)
    this.c.set(coefficients, (count - 1) * n * degree)
    this.count++
  }

  private grow(): void {
    const larger = (old: Float64Array) => {
      const bigger = new Float64Array(2 * old.length)
      bigger.set(old)
      return bigger
    }
    this.t = larger(this.t)
    this.h = larger(this.h)
    this.y = larger(this.y)
    this.c = larger(this.c)
  }

  finish(
    routine: string,
    events: readonly OdeEventRecord[],
    ended: 'end' | 'event',
    steps: number,
    rejected: number,
    evaluations: number,
    dense: boolean,
    start: number,
    tEnd: number,
  ): OdeSolution {
    const { n, degree, count } = this
    const t = this.t.slice(0, count)
    const y = this.y.slice(0, count * n)
    const h = dense ? this.h.slice(0, count - 1) : new Float64Array(0)
    const c = dense ? this.c.slice(0, (count - 1) * n * degree) : new Float64Array(0)
    const at = (when: number, out = new Float64Array(n)): Float64Array => {
      if (!dense)
        throw new NumericError(routine, 'badArgument', 'the solution was computed with dense: false and keeps only its end', { t: when })
      if (!(when >= start && when <= tEnd))
        throw new NumericError(routine, 'outOfRange', 'the time lies outside the solution', { t: when, start, end: tEnd })
      let lo = 0
      let hi = count - 1
      while (hi - lo > 1) {
        const middle = (lo + hi) >> 1
        if (t[middle]! <= when) lo = middle
        else hi = middle
      }
      if (when === t[hi]) {
        for (let i = 0; i < n; i++) out[i] = y[hi * n + i]!
        return out
      }
      interpolate(y, lo * n, c, lo * n * degree, degree, (when - t[lo]!) / h[lo]!, out)
      return out
    }
    return { t, y, size: n, tEnd, yEnd: y.slice((count - 1) * n), events, ended, steps, rejected, evaluations, at }
  }
}
