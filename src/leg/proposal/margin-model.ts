import type { Judge, JudgedLeg } from './judge.js'
import { type LegSizes, movedBy, room, SIZES, WHOLE } from './sizes.js'

/** Target of a step. */
export interface Target {
  /** Logarithm of the margin that every check shall have. */
  readonly target: number
  /** Steps that one size may go at most. */
  readonly reach: number
  /** Relative change of a goal to be minimised, with a step of each size. */
  readonly goal?: Float64Array
}

/** Beyond this a margin is large, or nothing: its logarithm has no further meaning. */
const MAX_LACK = 8
/** A check that misses its margin counts with the square of what it lacks; a goal against it with this weight. */
const GOAL_WEIGHT = 0.01
/** Of steps that serve alike the shortest are taken. */
const SHORTNESS = { mending: 1e-4, goal: 1e-6 }
const SWEEPS = 60
const STILL = 1e-3

/** Logarithms of the margins of a leg. */
const logsOf = ({ margins }: JudgedLeg, keys: readonly string[]) =>
  Float64Array.from(keys, (key) => {
    const log = Math.log(margins.get(key) ?? Number.POSITIVE_INFINITY)
    return Math.min(MAX_LACK, Math.max(-MAX_LACK, log))
  })

/** On which side of a leg slopes are looked at: on one, by the sign of a step of each size, or on both. */
export type Sides = 'both' | ((place: number) => number)

/** Upwards, where there is room. */
export const upwards = () => 1

/** Legs that slopes take. */
export const legsFor = (sides: Sides): number => (sides === 'both' ? 2 : 1) * SIZES.length

/**
 * How the checks of a leg follow its sizes near a leg that was judged. The logarithm of each margin counts as linear in steps of the sizes. Most reserves are
 * products of powers. Heat bends many of them, so that a step down may lose what a step up does not win: slopes on both sides show this, for twice as many legs. Every further leg
 * that is judged corrects the slopes.
 */
export class MarginModel {
  /** The least lacking of the legs that were judged for the slopes, and the one that they belong to. */
  readonly best: JudgedLeg
  readonly #keys: readonly string[]
  /** For each size the change of every logarithm with a step up, and with one down. */
  readonly #up: readonly Float64Array[]
  readonly #down: readonly Float64Array[]

  constructor(judge: Judge, at: JudgedLeg, sides: Sides) {
    this.#keys = [...at.margins.keys()]
    const base = logsOf(at, this.#keys)
    let best = at
    const slope = (place: number, step: number): Float64Array | undefined => {
      const { least, most } = room(at.sizes, place)
      if (step < least || step > most) return undefined
      const tried = judge.judge(movedBy(at.sizes, (i) => (i === place ? step : 0)))
      if (tried.deficit < best.deficit) best = tried
      return tried.margins.size === 0 ? undefined : logsOf(tried, this.#keys).map((x, c) => (x - (base[c] as number)) / step)
    }
    const found = SIZES.map((_, j): [up: Float64Array, down: Float64Array] => {
      const first = sides === 'both' || sides(j) > 0 ? 1 : -1
      const one = slope(j, first)
      const other = one === undefined || sides === 'both' ? slope(j, -first) : undefined
      const [up, down] = first > 0 ? [one, other] : [other, one]
      const none = new Float64Array(base.length)
      return [Float64Array.from(up ?? down ?? none), Float64Array.from(down ?? up ?? none)]
    })
    this.#up = found.map(([up]) => up)
    this.#down = found.map(([, down]) => down)
    this.best = best
  }

  /** Slopes with a size on the side of a step. */
  #slope(place: number, step: number): Float64Array {
    return (step > 0 ? this.#up : this.#down)[place] as Float64Array
  }

  /** Change of the logarithm of a margin with steps. */
  #added(check: number, t: Float64Array): number {
    return t.reduce((sum, x, j) => (x === 0 ? sum : sum + (this.#slope(j, x)[check] as number) * x), 0)
  }

  /** Steps of the sizes that the model takes for best, none of them longer than the reach. Places in lists go by whole steps. */
  steps(from: JudgedLeg, aim: Target): Float64Array {
    const box = SIZES.map((_, j) => {
      const { least, most } = room(from.sizes, j)
      return [Math.max(least, -aim.reach), Math.min(most, aim.reach)] as [number, number]
    })
    const logs = logsOf(from, this.#keys)
    const t = this.#descend(logs, box, new Float64Array(SIZES.length), aim)
    for (const j of WHOLE) {
      t[j] = Math.round(t[j] as number)
      box[j] = [t[j] as number, t[j] as number]
    }
    return this.#descend(logs, box, t, aim)
  }

  /** Takes over what a leg that was judged after some steps shows: the least change of the slopes that agrees with it. */
  learn(from: JudgedLeg, to: JudgedLeg, t: Float64Array): void {
    const length = t.reduce((sum, x) => sum + x * x, 0)
    if (length === 0 || to.margins.size === 0) return
    const [before, after] = [logsOf(from, this.#keys), logsOf(to, this.#keys)]
    const missed = after.map((x, c) => x - (before[c] as number) - this.#added(c, t))
    t.forEach((x, j) => {
      if (x === 0) return
      const slope = this.#slope(j, x)
      for (let c = 0; c < missed.length; c++) slope[c] = (slope[c] as number) + ((missed[c] as number) * x) / length
    })
  }

  /** Size by size to the least of the squares of what is missing, within a box. Where margins bend downwards the sum is convex, so that this ends at its least. */
  #descend(logs: Float64Array, box: readonly [number, number][], t: Float64Array, { target, goal }: Target): Float64Array {
    const missing = logs.map((x, c) => target - x - this.#added(c, t))
    const near = this.#within(missing, box, t)
    const short = goal === undefined ? SHORTNESS.mending : SHORTNESS.goal
    for (let sweep = 0, moved = 1; sweep < SWEEPS && moved > STILL; sweep++) {
      moved = 0
      for (let j = 0; j < t.length; j++) {
        const own = t[j] as number
        const [low, high] = box[j] as [number, number]
        const better = (side: number): number => {
          const slope = this.#slope(j, side)
          let first = GOAL_WEIGHT * (goal?.[j] ?? 0) + short * own
          let second = short
          for (const c of near) {
            const lack = missing[c] as number
            if (lack <= 0) continue
            first -= lack * (slope[c] as number)
            second += (slope[c] as number) ** 2
          }
          const to = Math.min(high, Math.max(low, own - first / second))
          // A step that crosses where the slopes change ends there.
          return side > 0 ? Math.max(0, to) : Math.min(0, to)
        }
        const to = own === 0 ? better(1) || better(-1) : better(own)
        if (to === own) continue
        const slope = this.#slope(j, own === 0 ? to : own)
        t[j] = to
        moved = Math.max(moved, Math.abs(to - own))
        for (const c of near) missing[c] = (missing[c] as number) - (to - own) * (slope[c] as number)
      }
    }
    return t
  }

  /** Checks that may lack something within a box. */
  #within(missing: Float64Array, box: readonly [number, number][], t: Float64Array): number[] {
    return [...missing.keys()].filter((c) => {
      const worst = (j: number, to: number) => -(this.#slope(j, to)[c] as number) * to
      const now = this.#added(c, t)
      const most = box.reduce((sum, [low, high], j) => sum + Math.max(0, worst(j, low), worst(j, high)), (missing[c] as number) + now)
      return most > 0
    })
  }
}

/** The sizes after some steps. */
export const stepsTaken = (sizes: LegSizes, t: Float64Array): LegSizes => movedBy(sizes, (j) => t[j] as number)
