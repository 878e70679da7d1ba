import { randomStream } from '../../numeric/index.js'
import type { Cell, End, Ends } from '../run/index.js'
import type { Comparison } from './compare.js'
import { type Corners, type Effect, type Group, ROUNDING } from './corners.js'

const DRAWS = 64
const SEED = 11
const ROUNDS = 4

/** How good a corner is: the least reserve, and where that is nothing, what the load cases have together. */
type Rank = readonly [least: number, together: number]
const better = ([least, together]: Rank, [other, others]: Rank): boolean =>
  least > other + ROUNDING || (least >= other - ROUNDING && together > others + ROUNDING)

/**
 * Highest least reserve that a search finds, from the corner where each leaf is at the end that alone is favourable. Two values may help only together, as
 * strength and design strain do: the search goes on leaf by leaf while the least reserve rises.
 */
export function bestFound(corners: Corners, { comparisons, reserve }: Group, effects: readonly Effect[], from: Ends): number {
  const alone = climb(corners, comparisons, effects, from)
  // Where a motor runs away in some load cases, those in which it settles show the way out.
  const together = corners.ends(helping(effects, comparisons.length))
  const found = corners.least(comparisons, together) > alone + ROUNDING ? climb(corners, comparisons, effects, together) : alone
  return found > Math.max(0, reserve) || effects.length === 0 ? found : Math.max(found, fromPlain(corners, comparisons, effects))
}

function climb(corners: Corners, comparisons: readonly Comparison[], effects: readonly Effect[], from: Ends): number {
  let at = from
  let reserves = corners.reserves(comparisons, at)
  let best = Math.min(...reserves)
  for (let round = 0, raised = true; raised && round < ROUNDS; round++) {
    raised = false
    for (const tried of corners.moved(() => at, effects)) {
      // Most leaves do not raise the load case that governs, and then none of the others need be evaluated.
      if (corners.one(comparisons[reserves.indexOf(best)] as Comparison, tried) <= best + ROUNDING) continue
      const found = corners.reserves(comparisons, tried)
      const least = Math.min(...found)
      if (least <= best + ROUNDING) continue
      at = tried
      reserves = found
      best = least
      raised = true
    }
  }
  return best
}

/**
 * The same where no value alone helps: nothing is left of a capacity, or a motor has no steady temperature. Load cases that still move show which way would
 * help; where none does, random corners are tried.
 */
function fromPlain(corners: Corners, comparisons: readonly Comparison[], effects: readonly Effect[]): number {
  const rankOf = (ends: Ends): Rank => {
    const reserves = corners.reserves(comparisons, ends)
    return [Math.min(...reserves), reserves.reduce((sum, one) => sum + Math.min(one, 1), 0)]
  }
  let at = corners.ends(helping(effects, comparisons.length))
  let best = rankOf(at)
  if (best[1] === 0) {
    const random = randomStream(SEED)
    for (let draw = 0; draw < DRAWS; draw++) {
      const tried = corners.ends(effects.map(({ cell }) => [cell, random.uniform() < 0.5 ? 'low' : 'high']))
      const rank = rankOf(tried)
      if (better(rank, best)) [at, best] = [tried, rank]
    }
  }
  for (let round = 0, raised = true; raised && round < ROUNDS; round++) {
    raised = false
    for (const tried of corners.moved(() => at, effects)) {
      const rank = rankOf(tried)
      if (better(rank, best)) [at, best, raised] = [tried, rank, true]
    }
  }
  return best[0]
}

/** Each leaf at the end that helps the load cases in which it moves anything, counted together. */
function* helping(effects: readonly Effect[], count: number): Generator<readonly [Cell, End]> {
  for (const { cell, reserves, low, high } of effects) {
    let gain = 0
    for (let i = 0; i < count; i++) {
      const [atLow, atHigh] = [reserves[low + i] as number, reserves[high + i] as number]
      if (atLow !== atHigh) gain += (atHigh - atLow) / Math.max(atHigh, atLow)
    }
    if (gain !== 0) yield [cell, gain > 0 ? 'high' : 'low']
  }
}
