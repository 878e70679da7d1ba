import type { LimitStates } from './limit-states.js'

/** The likeliest point of one failure that was found. */
export interface NearPoint {
  /** Number of the limit state. */
  readonly state: number
  readonly u: Float64Array
  /** Distance from the middle; negative where the middle itself fails. */
  readonly index: number
}

const STEP = 0.2
const MOST_POINTS = 10
const FARTHEST = 6.5
const ROUNDS = 8

/**
 * The likeliest points of the nearest failures. One gradient at the middle serves all limit states; those whose plane is near are then followed one by one by the
 * iteration of Hasofer, Lind, Rackwitz and Fiessler, with steps that are cut where they overshoot.
 */
export function nearPoints(states: LimitStates, most: number): NearPoint[] {
  const middle = new Float64Array(states.n)
  const at = states.at(middle)
  const slopes = gradients(states, middle, at)
  const planes = Array.from({ length: states.states }, (_, k) => {
    const slope = slopes[k] as Float64Array
    const size = Math.hypot(...slope)
    return { k, index: size > 0 && Number.isFinite(at[k] as number) ? (at[k] as number) / size : Number.POSITIVE_INFINITY, slope }
  })
    .filter(({ index }) => index < FARTHEST)
    .sort((a, b) => a.index - b.index)
  const points: NearPoint[] = []
  for (const { k, slope } of planes.slice(0, MOST_POINTS)) {
    if (states.count.evaluations + states.n > most) break
    const found = followed(states, k, slope, at[k] as number, most)
    if (found !== undefined && !points.some(({ u }) => near(u, found.u))) points.push(found)
  }
  return points
}

const near = (a: Float64Array, b: Float64Array) => Math.hypot(...a.map((x, i) => x - (b[i] as number))) < 0.3

function followed(states: LimitStates, k: number, firstSlope: Float64Array, first: number, most: number): NearPoint | undefined {
  let u = new Float64Array(states.n)
  let g = first
  let slope = firstSlope
  for (let round = 0; round < ROUNDS; round++) {
    const size2 = slope.reduce((a, x) => a + x * x, 0)
    if (size2 === 0) return undefined
    const along = slope.reduce((a, x, i) => a + x * (u[i] as number), 0)
    const goal = slope.map((x) => ((along - g) / size2) * x)
    const next = stepTo(states, k, u, goal, g)
    if (next === undefined) return undefined
    const moved = Math.hypot(...next.u.map((x, i) => x - (u[i] as number)))
    u = next.u
    g = next.values[k] as number
    if ((moved < 0.05 && Math.abs(g) < 0.02 * Math.abs(first)) || states.count.evaluations + states.n > most) break
    slope = gradients(states, u, next.values)[k] as Float64Array
  }
  return { state: k, u, index: Math.sign(first) * Math.hypot(...u) }
}

/** The goal, or a point on the way where the limit state is no farther from zero than before. */
function stepTo(states: LimitStates, k: number, from: Float64Array, goal: Float64Array, g: number) {
  for (let part = 1; part > 0.1; part /= 2) {
    const u = from.map((x, i) => x + part * ((goal[i] as number) - x))
    const values = states.at(u)
    if (Number.isFinite(values[k] as number) && Math.abs(values[k] as number) <= Math.abs(g) * 1.5) return { u, values }
  }
  return undefined
}

/** Slopes of all limit states by one-sided differences, which one run for each input gives for all at once. */
function gradients(states: LimitStates, u: Float64Array, at: Float64Array): Float64Array[] {
  const slopes = Array.from({ length: states.states }, () => new Float64Array(states.n))
  const moved = Float64Array.from(u)
  for (let i = 0; i < states.n; i++) {
    moved[i] = (u[i] as number) + STEP
    const values = states.at(moved)
    moved[i] = u[i] as number
    for (let k = 0; k < states.states; k++) {
      const slope = ((values[k] as number) - (at[k] as number)) / STEP
      ;(slopes[k] as Float64Array)[i] = Number.isFinite(slope) ? slope : 0
    }
  }
  return slopes
}
