import { normalQuantile, type RandomStream, randomStream } from '../numeric/index.js'
import type { LimitState } from './limit-state.js'

/** A level that a run has passed: what its samples stayed below, and how far their moves reached in the end. */
interface PassedLevel {
  readonly threshold: number
  readonly reach: number
}

/** One run of subset simulation. */
export interface SubsetRun {
  /** The estimate; 0 where the last level was not near failure. */
  readonly probability: number
  /** Levels passed. */
  readonly levels: number
  /** The same one by one, for `repeatedRun`. */
  readonly passed: readonly PassedLevel[]
  /** Whether failure was reached. */
  readonly reached: boolean
  /** The failed sample nearest to the middle of all scores. */
  readonly nearest: Float64Array | undefined
  /** All failed samples of the last level. */
  readonly failed: readonly Float64Array[]
}

/** Share of the samples of a level that begin the next one. */
const SHARE = 0.1
/** Ten powers of ten each for two levels: beyond, chances mean nothing. */
export const MAX_LEVELS = 20
type Sampled = Pick<LimitState, 'n' | 'at'>
/** The share of accepted moves that mixes fastest, and how often the length of the moves is adapted in a level. */
const ACCEPTED = 0.44
const ADAPTATIONS = 10

interface Sample {
  readonly u: Float64Array
  readonly g: number
}

const keptOf = (samples: number) => Math.max(2, Math.round(SHARE * samples))
const normals = (n: number, random: RandomStream) => Float64Array.from({ length: n }, () => normalQuantile(random.uniform()))
const drawn = (state: Sampled, samples: number, random: RandomStream): Sample[] =>
  Array.from({ length: samples }, () => {
    const u = normals(state.n, random)
    return { u, g: state.at(u) }
  })

/**
 * The chance of failure by subset simulation: a chain of levels, each ten times as rare as the one before, sampled by Markov chains in standard normal
 * space whose moves adapt their length. For chances far below what plain draws meet.
 *
 * Its levels follow from its own samples, so that the product of their shares is too high on average: by k / (k − 1) in each level of k kept samples alone, since the chance below the k-th
 * smallest of n is a beta variable of mean inverse n / (k − 1). `repeatedRun` has no such bias.
 *
 * Source: S.-K. Au, J. L. Beck, *Probab. Eng. Mech.* 16 (2001) 263; I. Papaioannou, W. Betz, K. Zwirglmaier, D. Straub, *Probab. Eng. Mech.* 41
 * (2015) 89 (moves).
 */
export function subsetRun(state: Sampled, samples: number, seed: number, stream: number, mostLevels = MAX_LEVELS): SubsetRun {
  const random = randomStream(seed, stream)
  const kept = keptOf(samples)
  let level = drawn(state, samples, random)
  const passed: PassedLevel[] = []
  let reach = 0.6
  let before = 1
  for (let levels = 0; ; levels++) {
    level.sort((a, b) => a.g - b.g)
    const failed = level.filter(({ g }) => g <= 0)
    const threshold = (level[kept - 1] as Sample).g
    // Equal values all belong to the next level, which is then less rare; a plateau is no level at all.
    const below = level.filter(({ g }) => g <= threshold).length
    const ends = failed.length >= kept || below === samples
    if (ends || levels >= mostLevels) {
      const reached = ends && failed.length > 0
      return {
        probability: (before * failed.length) / samples,
        levels,
        passed,
        reached,
        nearest: nearestOf(failed),
        failed: failed.map(({ u }) => u),
      }
    }
    before *= below / samples
    const seeds = shuffled(level.slice(0, below), random).slice(0, kept)
    const next = chains(state, seeds, samples, threshold, reach, random)
    level = next.level
    reach = next.reach
    passed.push({ threshold, reach })
  }
}

/**
 * A run through the levels of another one, whose draws it does not share: thresholds and lengths of moves are then given. The product of the shares is the chance of failure on average, without any bias,
 * however few the samples. A level that no sample reaches makes it 0.
 *
 * Source: P. Del Moral, A. Doucet, A. Jasra, *J. R. Stat. Soc. B* 68 (2006) 411 (normalising constants of samplers with fixed levels); M. Amrein, H. R. Künsch, *ACM Trans. Model. Comput. Simul.*
 * 21 (2011) 13 (fixed effort splitting).
 */
export function repeatedRun(state: Sampled, passed: readonly PassedLevel[], samples: number, seed: number, stream: number): SubsetRun {
  const random = randomStream(seed, stream)
  let level = drawn(state, samples, random)
  let probability = 1
  for (const { threshold, reach } of passed) {
    const below = level.filter(({ g }) => g <= threshold)
    probability *= below.length / samples
    if (below.length === 0) break
    // As many chains of the same lengths whatever the level: lengths that follow from how many samples are below would tie the shares of two levels together.
    const order = shuffled(below, random)
    const seeds = Array.from({ length: keptOf(samples) }, (_, s) => order[s % order.length] as Sample)
    level = chains(state, seeds, samples, threshold, reach, random, false).level
  }
  const failed = probability > 0 ? level.filter(({ g }) => g <= 0) : []
  return {
    probability: (probability * failed.length) / samples,
    levels: passed.length,
    passed,
    reached: true,
    nearest: nearestOf(failed),
    failed: failed.map(({ u }) => u),
  }
}

function nearestOf(failed: readonly Sample[]): Float64Array | undefined {
  let best: Sample | undefined
  for (const each of failed)
    if (Number.isFinite(each.g) && (best === undefined || Math.hypot(...each.u) < Math.hypot(...best.u))) best = each
  return best?.u
}

/** Chains from the seeds that stay below a threshold, together as many samples as a level has. */
function chains(
  state: Sampled,
  seeds: readonly Sample[],
  samples: number,
  threshold: number,
  from: number,
  random: RandomStream,
  adapts = true,
) {
  const level: Sample[] = []
  let reach = from
  let [tried, accepted, adaptations] = [0, 0, 0]
  seeds.forEach((seed, s) => {
    const length = Math.floor(((s + 1) * samples) / seeds.length) - Math.floor((s * samples) / seeds.length)
    let own = seed
    for (let k = 0; k < length; k++) {
      const keep = Math.sqrt(1 - reach * reach)
      const u = own.u.map((x) => keep * x + reach * normalQuantile(random.uniform()))
      const g = state.at(u)
      tried++
      if (g <= threshold) {
        own = { u, g }
        accepted++
      }
      level.push(own)
    }
    if (adapts && (s + 1) * ADAPTATIONS >= (adaptations + 1) * seeds.length) {
      adaptations++
      reach = Math.min(0.999, reach * Math.exp((accepted / tried - ACCEPTED) / Math.sqrt(adaptations)))
      tried = 0
      accepted = 0
    }
  })
  return { level, reach }
}

function shuffled<T>(all: readonly T[], random: RandomStream): T[] {
  const order = [...all]
  for (let i = order.length - 1; i > 0; i--) {
    const k = random.integer(i + 1)
    ;[order[i], order[k]] = [order[k] as T, order[i] as T]
  }
  return order
}
