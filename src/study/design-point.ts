import type { LimitState } from './limit-state.js'

/** The likeliest point of failure. */
export interface DesignPoint {
  /** Standard normal scores there. */
  readonly u: Float64Array
  /** Distance of the limit from the middle of all scores, negative where the middle itself fails. */
  readonly index: number
  /** Unit vector from the middle towards failure. */
  readonly direction: Float64Array
  readonly converged: boolean
}

/** Half the step of the central differences, in scores. */
const STEP = 1e-4
const STEPS = 60
/** How close the end lies to the limit and to its foot from the middle, in scores. */
const CLOSE = 1e-6

/**
 * The first-order reliability method: the point of the limit surface that is nearest to the middle of all scores, by the improved iteration of Hasofer, Lind,
 * Rackwitz and Fiessler. Undefined where the function has no finite slope on the way.
 *
 * Source: A. M. Hasofer, N. C. Lind, *J. Eng. Mech. Div. ASCE* 100 (1974) 111; Y. Zhang, A. Der Kiureghian, *Reliability and Optimization of
 * Structural Systems* (1995) 297 (line search).
 */
export function designPoint(state: LimitState, start: Float64Array): DesignPoint | undefined {
  const { n } = state
  let u = start.slice()
  let g = state.at(u)
  let converged = false
  let slope = slopeAt(state, u)
  for (let step = 0; step < STEPS && Number.isFinite(g) && isUseful(slope) && !converged; step++) {
    const size = Math.hypot(...slope)
    const along = dot(slope, u)
    const foot = Float64Array.from(slope, (s) => ((along - g) / (size * size)) * s)
    const move = foot.map((f, i) => f - (u[i] as number))
    converged = Math.abs(g) <= CLOSE * size && Math.hypot(...move) <= CLOSE * (1 + Math.hypot(...u))
    if (converged) break
    // A merit of distance and breach: full steps may go round in circles on curved surfaces.
    const weight = 2 * Math.max(Math.hypot(...u) / size, 0.5 * (Math.hypot(...foot) ** 2 / Math.max(Math.abs(g), 1e-12 * size)))
    const merit = (at: Float64Array, value: number) => 0.5 * dot(at, at) + weight * Math.abs(value)
    const before = merit(u, g)
    let next = u
    let value = g
    for (let t = 1; t > 1e-4; t *= 0.5) {
      next = u.map((x, i) => x + t * (move[i] as number))
      value = state.at(next)
      if (Number.isFinite(value) && merit(next, value) < before) break
    }
    if (!Number.isFinite(value)) break
    u = next
    g = value
    slope = slopeAt(state, u)
  }
  if (!isUseful(slope)) return undefined
  const size = Math.hypot(...slope)
  const direction = slope.map((s) => -s / size)
  return { u, index: dot(direction, u), direction, converged: converged && n > 0 }
}

const dot = (a: Float64Array, b: Float64Array): number => a.reduce((sum, x, i) => sum + x * (b[i] as number), 0)

const isUseful = (slope: Float64Array): boolean => slope.every(Number.isFinite) && slope.some((s) => s !== 0)

function slopeAt(state: LimitState, u: Float64Array): Float64Array {
  const moved = u.slice()
  return u.map((own, i) => {
    moved[i] = own + STEP
    const above = state.at(moved)
    moved[i] = own - STEP
    const below = state.at(moved)
    moved[i] = own
    return (above - below) / (2 * STEP)
  })
}
