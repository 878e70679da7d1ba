import { dot, stepOf } from './quadratic-step.js'
import type { Candidate, Problem } from './search-problem.js'
import { type Local, UnitBox } from './unit-box.js'

/** Constraints are kept by this scaled margin, so that the point reached keeps them in spite of rounding. */
const MARGIN = 1e-11
/** The most steps. */
const STEPS = 100
/** A step this short ends the descent, as a share of the ranges. */
const SHORT = 1e-11
/** The largest penalty on a broken constraint, in scaled units. */
const MAX_PENALTY = 1e6
/** Evaluations kept for the way back into the feasible region. */
const PULL = 30

/**
 * The local optimum of the first goal near a candidate, its choices held.
 *
 * Sequential quadratic programming within the ranges: slopes by central differences, a quasi-Newton matrix, constraints by an exact penalty, and a
 * quadratic programme for each step. Ends where the formula has no answer. The candidate returned is never worse than the one given.
 *
 * Ours: no library that is kept does this in plain numbers with limits and constraints.
 *
 * Source: J. Nocedal, S. J. Wright, *Numerical Optimization*, 2006, ch. 18 (18.1 to 18.5), 18.3 (damped update).
 */
export function descend(problem: Problem, from: Candidate, evaluations: number): { best: Candidate; used: number } {
  const box = new UnitBox(problem, from, evaluations - PULL)
  const { n } = box
  let u = box.start
  let here = n === 0 ? undefined : box.local(u)
  if (here === undefined) return { best: box.best, used: box.used }
  box.scaleBy(here)
  const hessian = new Float64Array(n * n)
  reset(hessian, n)
  let fresh = true
  let penalty = 10
  for (let step = 0; step < STEPS; step++) {
    let programme = stepOf(here, u, hessian, penalty, MARGIN)
    // Multipliers at the penalty: it is too small to keep the constraints.
    for (; programme?.pressed && penalty < MAX_PENALTY; penalty *= 10) programme = stepOf(here, u, hessian, 10 * penalty, MARGIN)
    if (programme === undefined || programme.step.every((p) => Math.abs(p) < SHORT)) break
    const next = lineSearch(box, u, here, programme.step, penalty)
    if (next === undefined) {
      // Once more from a plain start, as curvature gathered elsewhere may mislead.
      if (fresh) break
      reset(hessian, n)
      fresh = true
      continue
    }
    fresh = false
    const there = box.local(next)
    if (there === undefined) break
    penalty = Math.min(penalty, 100 * Math.max(1, ...programme.multipliers))
    const moved = next.map((x, i) => x - (u[i] as number))
    dampedUpdate(
      hessian,
      moved,
      lagrangianSlope(there, programme.multipliers, n).map(
        (y, i) => y - (lagrangianSlope(here as Local, programme.multipliers, n)[i] as number),
      ),
    )
    u = next
    here = there
  }
  box.pullBack(u)
  return { best: box.best, used: box.used }
}

const reset = (matrix: Float64Array, n: number): void => {
  for (let i = 0; i < matrix.length; i++) matrix[i] = i % (n + 1) === 0 ? 1 : 0
}

/** Goal plus penalty. */
const merit = (values: Float64Array, penalty: number): number =>
  values.reduce((sum, value, j) => (j === 0 ? value : sum + penalty * Math.max(0, value + MARGIN)), 0)

/** A point along a step, within the box, at which goal plus penalty have fallen enough; nothing where there is none. */
function lineSearch(
  box: UnitBox,
  u: Float64Array,
  { values, slopes }: Local,
  step: Float64Array,
  penalty: number,
): Float64Array | undefined {
  const before = merit(values, penalty)
  const fall = Math.min(dot(slopes[0] as Float64Array, step) - (before - (values[0] as number)), 0)
  const longest = step.reduce((max, s) => Math.max(max, Math.abs(s)), 0)
  for (let t = 1; t * longest > SHORT && box.allows(1); t *= 0.5) {
    const next = u.map((x, i) => Math.min(Math.max(x + t * (step[i] as number), 0), 1))
    const found = box.values(next)
    if (found !== undefined && merit(found, penalty) <= before + 1e-4 * t * fall) return next
  }
  return undefined
}

function lagrangianSlope({ slopes }: Local, multipliers: Float64Array, n: number): Float64Array {
  const slope = (slopes[0] as Float64Array).slice()
  multipliers.forEach((multiplier, j) => {
    for (let i = 0; i < n; i++) slope[i] = (slope[i] as number) + multiplier * ((slopes[j + 1] as Float64Array)[i] as number)
  })
  return slope
}

/** The damped update of the quasi-Newton matrix: it stays positive definite. */
export function dampedUpdate(b: Float64Array, s: Float64Array, y: Float64Array): void {
  const n = s.length
  const bs = s.map((_, i) => dot(b.subarray(i * n, (i + 1) * n), s))
  const sbs = dot(s, bs)
  if (!(sbs > 0)) return
  const sy = dot(s, y)
  const damping = sy >= 0.2 * sbs ? 1 : (0.8 * sbs) / (sbs - sy)
  const r = y.map((yi, i) => damping * yi + (1 - damping) * (bs[i] as number))
  const sr = dot(s, r)
  for (let i = 0; i < n; i++)
    for (let k = 0; k < n; k++)
      b[i * n + k] = (b[i * n + k] as number) - ((bs[i] as number) * (bs[k] as number)) / sbs + ((r[i] as number) * (r[k] as number)) / sr
}
