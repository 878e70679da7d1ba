import { type RandomStream, randomStream } from '../numeric/index.js'
import type { LimitStates } from './limit-states.js'
import { Mixture } from './mixture.js'
import { alike, type Middle, mirrored, type NearPoint, nearPoints, pointFrom } from './near-points.js'
import { subsetRun } from './subset-simulation.js'

/** Where failures lie, as far as the search found them. */
export interface FailureZones {
  readonly points: readonly NearPoint[]
  /** The chance of any failure by the subset simulation that explored; nothing where it did not reach failure, or was not worth its runs. */
  readonly explored: number | undefined
}

/** Shares of the runs after which each step of the search ends at the latest. */
const ENDS = { slopes: 0.25, exploring: 0.5, covering: 0.6, trying: 0.7, mending: 0.75 }
/** Samples of a level of the exploring simulation: this share of the runs, and never fewer. */
const LEVEL = { share: 0.05, least: 100 }
/** Fewer levels reach common failures only, which the draws meet anyhow. */
const MIN_LEVELS = 3
/** A failed draw whose weight is this far above the chance lies where the mixture hardly draws. */
const FAR = 100
/** Draws of the trial of the mixture, as a share of the runs, and the shares of the sum of all and of one limit state above which one draw counts too much. */
const TRIAL = { share: 0.1, heavy: 0.05, heavyAlone: 0.2 }
const MAX_TRIES = 12

/** A failed draw, the limit state that is farthest behind its limit there, and the weight of the draw. */
interface Failed {
  readonly u: Float64Array
  readonly state: number
}

/**
 * Likely points of the failures: of those that are near by their slope at the middle, and of those that a subset simulation on the smallest of all margins
 * meets. From failed draws that lie far from all points the iteration begins again: it finds a second way of one failure, and one without a slope at the middle.
 * A trial of the draws round these points shows where one is still missing.
 */
export function failureZones(states: LimitStates, evaluations: number, seed: number): FailureZones {
  const end = (share: number) => Math.floor(share * evaluations)
  const u = new Float64Array(states.n)
  const middle: Middle = { u, at: states.at(u) }
  const near = nearPoints(states, middle, end(ENDS.slopes))
  const search = new Search(states, middle, near)
  const explored = explore(states, middle, { evaluations, end: end(ENDS.exploring), seed })
  if (explored !== undefined)
    search.cover((mixture) => explored.failed.filter(({ u }) => mixture.weight(u) > FAR * explored.probability), end(ENDS.covering))
  search.mirror(end(ENDS.covering))
  const random = randomStream(seed, 2)
  const draws = Math.min(end(TRIAL.share), end(ENDS.trying) - states.count.evaluations)
  search.cover((mixture) => heavy(states, middle, mixture, draws, random), end(ENDS.mending), 1)
  return { points: search.points, explored: explored?.probability }
}

/** Points that are added as failed draws are found that none of them covers. */
class Search {
  readonly points: NearPoint[]

  constructor(
    readonly states: LimitStates,
    readonly middle: Middle,
    near: readonly NearPoint[],
  ) {
    this.points = [...near]
  }

  /** Follows failed draws that are open until none is left, or no further point is found. */
  cover(open: (mixture: Mixture) => readonly Failed[], max: number, rounds = MAX_TRIES): void {
    const tried = new Set<Float64Array>()
    for (let round = 0; round < rounds && tried.size < MAX_TRIES; round++) {
      const left = open(new Mixture(this.states.n, this.points)).filter(({ u }) => !tried.has(u))
      if (left.length === 0) return
      // A round that evaluates once follows all that it found.
      for (const { u, state } of rounds === 1 ? left.slice(0, MAX_TRIES) : left.slice(0, 1)) {
        tried.add(u)
        this.#add(pointFrom(this.states, state, u, this.middle, max))
      }
    }
  }

  /** Adds what lies on the other side of each point, also of those that are added. */
  mirror(max: number): void {
    for (let i = 0; i < Math.min(MAX_TRIES, this.points.length); i++) {
      const point = this.points[i] as NearPoint
      if (point.followed) for (const other of mirrored(this.states, point, this.middle, max)) this.#add(other)
    }
  }

  #add(found: NearPoint | undefined): void {
    if (found !== undefined && !this.points.some(({ u }) => alike(u, found.u))) this.points.push(found)
  }
}

/** One subset simulation on the smallest of all margins, each as a share of what it is at the middle. */
function explore(states: LimitStates, middle: Middle, { evaluations, end, seed }: { evaluations: number; end: number; seed: number }) {
  const samples = Math.max(LEVEL.least, Math.floor(LEVEL.share * evaluations))
  const levels = Math.floor((end - states.count.evaluations) / samples)
  if (levels < MIN_LEVELS || !middle.at.every(Number.isFinite)) return undefined
  const worst = new WeakMap<object, number>()
  const at = (u: ArrayLike<number>): number => {
    const { least, state } = smallest(states.at(u), middle)
    worst.set(u, state)
    return least
  }
  const { reached, probability, failed } = subsetRun({ n: states.n, at }, samples, seed, 1, levels - 1)
  return reached ? { probability, failed: failed.map((u): Failed => ({ u, state: worst.get(u) as number })) } : undefined
}

function smallest(g: Float64Array, { at }: Middle): { least: number; state: number } {
  const shares = g.map((x, k) => x / ((at[k] as number) > 0 ? (at[k] as number) : 1))
  const min = Math.min(...shares)
  return { least: min, state: shares.indexOf(min) }
}

/**
 * Failed draws of a mixture that carry too much of the sum of all. After these come the ones that carry too much of the sum of one limit state, where the draws round the
 * middle alone reach: a rare failure whose point is missing, beside common ones.
 */
function heavy(states: LimitStates, middle: Middle, mixture: Mixture, draws: number, random: RandomStream): Failed[] {
  const failed: (Failed & { readonly g: Float64Array; readonly weight: number })[] = []
  const sums = new Float64Array(states.states)
  for (let d = 0; d < draws; d++) {
    const u = new Float64Array(states.n)
    mixture.draw(random, u)
    const g = states.at(u)
    const { least, state } = smallest(g, middle)
    if (least > 0) continue
    const weight = mixture.weight(u)
    failed.push({ u, state, g, weight })
    for (let k = 0; k < sums.length; k++) if (!((g[k] as number) > 0)) (sums[k] as number) += weight
  }
  failed.sort((a, b) => b.weight - a.weight)
  const sum = failed.reduce((a, { weight }) => a + weight, 0)
  const alone = failed.flatMap(({ u, g, weight }): Failed[] => {
    if (weight < mixture.mostWeight / 2) return []
    const state = sums.findIndex((all, k) => !((g[k] as number) > 0) && weight > TRIAL.heavyAlone * all)
    return state < 0 ? [] : [{ u, state }]
  })
  return [...failed.filter(({ weight }) => weight > TRIAL.heavy * sum), ...alone]
}
