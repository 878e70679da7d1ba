import { bare, type Evaluator } from '../formula/index.js'
import type { Prepared } from './numbers.js'

type Work<T> = (of: Evaluator, leg: Prepared) => T

let places = 0

/**
 * Work that several checks and load cases ask of one leg, done once for the leg where nothing is recorded.
 * Where a calculation sheet is kept everybody does it anew, so that no chain has a gap.
 */
export function oncePerLeg<T extends NonNullable<unknown>>(work: Work<T>): Work<T> {
  const place = places++
  return (of, leg) => {
    const { kept } = leg
    if (of !== bare || kept.leg !== leg) return work(of, leg)
    let known = kept.results[place] as T | undefined
    if (known === undefined) {
      known = work(of, leg)
      kept.results[place] = known
    }
    return known
  }
}

/** The same for each of some names, such as the joints. */
export function oncePerLegAnd<const N extends string, T extends NonNullable<unknown>>(
  names: readonly N[],
  work: (of: Evaluator, leg: Prepared, name: N) => T,
): (of: Evaluator, leg: Prepared, name: N) => T {
  const each = Object.fromEntries(names.map((name) => [name, oncePerLeg((of, leg) => work(of, leg, name))])) as Record<N, Work<T>>
  return (of, leg, name) => each[name](of, leg)
}
