import type { LimitStates } from './limit-states.js'

/** A likely point of one failure. */
export interface NearPoint {
  /** Number of the limit state. */
  readonly state: number
  /** Where it is, in standard normal scores. */
  readonly u: Float64Array
  /** Distance from the middle; negative where the middle itself fails. */
  readonly index: number
  /** Whether the iteration went there; otherwise it is where the plane of the slopes at the middle is nearest. */
  readonly followed: boolean
}

const STEP = 0.2
const MAX_DISTANCE = 6.5
/** Points as far as this have draws of their own, whatever is nearer: a chance of one in a million. */
const COUNTED = 4.75
/** Points this much farther than the nearest one have draws too, where nothing is nearer. */
const BEHIND = 2.5
/** Failures nearer than this, likelier than one in nine, are met by any draws: their points are followed last. */
export const COMMON = 1.2
const ROUNDS = 8
/** A point whose distance from the limit is more than this share of that at the middle is no point of failure. */
const NEAR_THE_LIMIT = 0.2

/**
 * Likely points of the failures. One gradient at the middle gives a plane for each limit state, and the point of each that is nearest. The nearest of the rare ones are then
 * followed one by one by the iteration of Hasofer, Lind, Rackwitz and Fiessler, with steps that are cut where they overshoot. The others are sought along the slope alone.
 */
export function nearPoints(states: LimitStates, middle: Middle, max: number): NearPoint[] {
  const { u, at } = middle
  const slopes = gradients(states, u, at)
  const planes = Array.from({ length: states.states }, (_, k) => {
    const slope = slopes[k] as Float64Array
    const size = Math.hypot(...slope)
    return { k, index: size > 0 && Number.isFinite(at[k] as number) ? (at[k] as number) / size : Number.POSITIVE_INFINITY, slope }
  })
    .filter(({ index }) => Number.isFinite(index))
    .sort((a, b) => a.index - b.index)
  const reach = Math.max(COUNTED, (planes[0]?.index ?? 0) + BEHIND)
  const common = planes.filter(({ index }) => index < COMMON)
  return [...planes.slice(common.length), ...common].flatMap(({ k, index, slope }): NearPoint[] => {
    const first = at[k] as number
    if (index >= MAX_DISTANCE) {
      const found = beyond(states, k, slope, middle, max)
      return found === undefined ? [] : [found]
    }
    const affordable = states.count.evaluations + states.n <= max
    const found = affordable ? followed(states, k, { u, g: first, slope, first }, max) : undefined
    if (found !== undefined) return [found]
    if (index >= reach || states.count.evaluations >= 2 * max) return []
    const point = alongSlope(states, k, index, slope, first)
    return point === undefined ? [] : [point]
  })
}

/** Steps of the search along a slope. */
const SECANTS = 3

/** Where the slope at the middle meets the limit; nothing where the limit bends away from it, and draws there would be wasted. */
function alongSlope(states: LimitStates, k: number, index: number, slope: Float64Array, first: number): NearPoint | undefined {
  const size = Math.hypot(...slope)
  let [t, g, lastT, lastG] = [index, first, 0, first]
  for (let step = 0; step < SECANTS; step++) {
    const u = slope.map((x) => (-t * x) / size)
    g = states.at(u)[k] as number
    if (!Number.isFinite(g)) return undefined
    if (Math.abs(g) <= NEAR_THE_LIMIT * 0.25 * Math.abs(first)) return { state: k, u, index: t, followed: false }
    const next = t - (g * (t - lastT)) / (g - lastG)
    ;[lastT, lastG] = [t, g]
    if (!(Math.abs(next) < MAX_DISTANCE)) return undefined
    t = next
  }
  return Math.abs(g) <= NEAR_THE_LIMIT * Math.abs(first)
    ? { state: k, u: slope.map((x) => (-lastT * x) / size), index: lastT, followed: false }
    : undefined
}

/** One look along the slope of a plane that seems out of reach: where the limit bends down on the way, the slope at the middle does not tell. */
function beyond(states: LimitStates, k: number, slope: Float64Array, middle: Middle, max: number): NearPoint | undefined {
  if (states.count.evaluations >= max) return undefined
  const size = Math.hypot(...slope)
  const u = slope.map((x) => (-MAX_DISTANCE * x) / size)
  return (states.at(u)[k] as number) <= 0 ? pointFrom(states, k, u, middle, max) : undefined
}

/** The likeliest point of one failure, followed from a point that was met elsewhere, such as a failed draw. */
export function pointFrom(states: LimitStates, k: number, from: Float64Array, { at }: Middle, max: number): NearPoint | undefined {
  if (states.count.evaluations + 2 * (states.n + 1) > max) return undefined
  const values = states.at(from)
  const g = values[k] as number
  if (!Number.isFinite(g)) return undefined
  const slope = gradients(states, from, values)[k] as Float64Array
  return followed(states, k, { u: from, g, slope, first: at[k] as number }, max)
}

/** The middle of all scores with the values there. */
export interface Middle {
  readonly u: Float64Array
  readonly at: Float64Array
}

/** Whether two points are as good as one. */
export const alike = (a: Float64Array, b: Float64Array): boolean => Math.hypot(...a.map((x, i) => x - (b[i] as number))) < 0.3

/** A point counts as on the limit this near, as a share of the distance at the middle. */
const ON_THE_LIMIT = 0.1
/** Scores this small do not tell one side of the middle from the other. */
const SMALL_SCORE = 0.5

/** Points on the other side of the middle, in one score at a time, where the same failure is as near: for limits that are broken from both sides. */
export function mirrored(states: LimitStates, { state, u, index }: NearPoint, { at }: Middle, max: number): NearPoint[] {
  return [...u.keys()].flatMap((i): NearPoint[] => {
    if (Math.abs(u[i] as number) < SMALL_SCORE || states.count.evaluations >= max) return []
    const other = u.map((x, j) => (j === i ? -x : x))
    const g = states.at(other)[state] as number
    return g <= ON_THE_LIMIT * Math.abs(at[state] as number) ? [{ state, u: other, index, followed: true }] : []
  })
}

interface Start {
  readonly u: Float64Array
  readonly g: number
  readonly slope: Float64Array
  /** Distance from the limit at the middle. */
  readonly first: number
}

function followed(states: LimitStates, k: number, from: Start, max: number): NearPoint | undefined {
  let { u, g, slope } = from
  const { first } = from
  for (let round = 0; round < ROUNDS; round++) {
    const size2 = slope.reduce((a, x) => a + x * x, 0)
    if (size2 === 0) return undefined
    const along = slope.reduce((a, x, i) => a + x * (u[i] as number), 0)
    const goal = slope.map((x) => ((along - g) / size2) * x)
    // A failed draw is close to the limit, but far out: its first step may cross some of the way again.
    const allowed = Math.max(1.5 * Math.abs(g), round === 0 ? 0.3 * Math.abs(first) : 0)
    const next = stepTo(states, k, u, goal, allowed)
    if (next === undefined) return undefined
    const moved = Math.hypot(...next.u.map((x, i) => x - (u[i] as number)))
    u = next.u
    g = next.values[k] as number
    if ((moved < 0.05 && Math.abs(g) < 0.02 * Math.abs(first)) || states.count.evaluations + states.n > max) break
    slope = gradients(states, u, next.values)[k] as Float64Array
  }
  if (Math.abs(g) > NEAR_THE_LIMIT * Math.abs(first)) return undefined
  return { state: k, u, index: Math.sign(first) * Math.hypot(...u), followed: true }
}

/** The goal, or a point on the way where the limit state is no farther from zero than allowed. */
function stepTo(states: LimitStates, k: number, from: Float64Array, goal: Float64Array, allowed: number) {
  for (let part = 1; part > 0.1; part /= 2) {
    const u = from.map((x, i) => x + part * ((goal[i] as number) - x))
    const values = states.at(u)
    if (Number.isFinite(values[k] as number) && Math.abs(values[k] as number) <= allowed) return { u, values }
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
