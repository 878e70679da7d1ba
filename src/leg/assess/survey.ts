import type { LegCalculation } from '../calculation.js'
import type { Cell, End, Range, Scenarios, Uncertain } from '../run/index.js'
import type { Comparison } from './compare.js'
import { Corners, cornerOf, type Effect, type Group, ROUNDING, reserveAt } from './corners.js'
import { bestFound } from './favourable.js'

/** How the reserve of a check moves with one uncertain leaf. */
export interface Move {
  readonly cell: Cell
  readonly range: Range
  /** Least reserve over the load cases with the leaf at its low and at its high end. */
  readonly low: number
  readonly high: number
}

/** The unfavourable end of a check's reserve. */
export interface WorstEnd {
  /** Every leaf at the end that is unfavourable for this check. */
  readonly worst: number
  readonly moves: readonly Move[]
  /**
   * Whether each leaf moves it one way, whatever the others are: then its worst end is the least of all values within the ranges. Otherwise it is
   * the least that was found.
   */
  readonly monotone: boolean
}

/** The range of a check's reserve. */
export interface Band extends WorstEnd {
  /** Every leaf at the end that is favourable. */
  readonly best: number
}

/** Leaves with a range. */
const uncertainOf = (calculation: LegCalculation): Uncertain[] =>
  calculation.instances.leaves.flatMap((cell) => {
    const range = calculation.rangeOf(cell)
    return range === undefined || typeof cell.value !== 'number' ? [] : [{ cell, range }]
  })

/**
 * Ranges of the reserves of some checks. Each uncertain leaf goes to its low and its high end alone; then every comparison of a check is evaluated
 * with each leaf at the end that lowered (or raised) this comparison. From the least of these corners the check is walked leaf by leaf until nothing
 * gets worse: if it does, or if some leaf lowers it at both ends, the check is not monotone. The calculation stays at its typical values.
 */
export const survey = <G extends Group>(calculation: LegCalculation, groups: readonly G[]): Map<G, Band> =>
  surveyed(calculation, groups, (corners, group, worst, effects) => {
    const best = bestFound(corners, group, effects, corners.ends(corner(worst.moves, 'high')))
    return { ...worst, best: Math.max(group.reserve, best) }
  })

/** The same without the favourable ends. */
export const worstEnds = <G extends Group>(calculation: LegCalculation, groups: readonly G[]): Map<G, WorstEnd> =>
  surveyed(calculation, groups, (_, __, worst) => worst)

function surveyed<G extends Group, B>(
  calculation: LegCalculation,
  groups: readonly G[],
  of: (corners: Corners, group: G, worst: WorstEnd, effects: readonly Effect[]) => B,
): Map<G, B> {
  const leaves = uncertainOf(calculation)
  const scenarios = calculation.scenarios(leaves)
  const effects = effectsOf(calculation, scenarios, leaves, groups)
  const corners = new Corners(scenarios)
  const atCorner = corners.ofEach(groups, effects)
  return new Map(
    groups.map((group, i) => {
      const own = effects[i] as Effect[]
      return [group, of(corners, group, worstEndOf(corners, group, own, atCorner[i] as number[]), own)]
    }),
  )
}

/** The range of a check's reserve with only some of its uncertain values away from typical. */
export function rangesOver(calculation: LegCalculation, { comparisons, reserve }: Group, all: readonly Move[]) {
  const corners = new Corners(calculation.scenarios(all))
  return (moves: readonly Move[]): { worst: number; best: number } => ({
    worst: Math.min(reserve, corners.least(comparisons, corners.ends(corner(moves, 'low')))),
    best: Math.max(reserve, corners.least(comparisons, corners.ends(corner(moves, 'high')))),
  })
}

/** How each leaf alone moves the comparisons of each group that it reaches. */
function effectsOf(calculation: LegCalculation, scenarios: Scenarios, leaves: readonly Uncertain[], groups: readonly Group[]): Effect[][] {
  const all = groups.flatMap(({ comparisons }) => comparisons)
  const typical = Float64Array.from(all, (comparison) => reserveAt(calculation, comparison))
  const touched = touchedBy(scenarios, leaves, all)
  // One table for all, since a list for each leaf and group would be thousands.
  const reserves = new Float64Array(2 * leaves.length * all.length)
  const at = (leaf: number, end: 'low' | 'high', row: number) => {
    reserves.set(typical, row)
    const reader = scenarios.at(scenarios.ends.of([[(leaves[leaf] as Uncertain).cell, end]]))
    for (const place of touched[leaf] as readonly number[]) reserves[row + place] = reserveAt(reader, all[place] as Comparison)
    return row
  }
  const rows = leaves.map((_, leaf) => [at(leaf, 'low', 2 * leaf * all.length), at(leaf, 'high', (2 * leaf + 1) * all.length)] as const)
  const met = leaves.map(() => 0)
  let to = 0
  return groups.map(({ comparisons: { length } }) => {
    const from = to
    to += length
    return leaves.flatMap(({ cell, range }, leaf): Effect[] => {
      const [places, first] = [touched[leaf] as readonly number[], met[leaf] as number]
      let i = first
      while (i < places.length && (places[i] as number) < to) i++
      met[leaf] = i
      const [low, high] = rows[leaf] as readonly [number, number]
      return i === first ? [] : [{ cell, range, reserves, low: low + from, high: high + from }]
    })
  })
}

/** The places of the comparisons that each leaf may move. */
function touchedBy(scenarios: Scenarios, leaves: readonly Uncertain[], all: readonly Comparison[]): number[][] {
  const touched = leaves.map((): number[] => [])
  for (const [place, { demand, capacity, unless }] of all.entries())
    for (const leaf of scenarios.reaching(unless === undefined ? [demand, capacity] : [demand, capacity, unless]))
      touched[leaf]?.push(place)
  return touched
}

function worstEndOf(corners: Corners, { comparisons, reserve }: Group, effects: readonly Effect[], atCorner: readonly number[]): WorstEnd {
  const moves = effects
    .map(({ cell, range, reserves, low, high }): Move => {
      const least = (from: number) => leastOf(reserves, from, from + comparisons.length)
      return { cell, range, low: least(low), high: least(high) }
    })
    .filter(({ low, high }) => differs(reserve, low) || differs(reserve, high))
  const index = atCorner.indexOf(leastOf(atCorner, 0, atCorner.length))
  const comparison = comparisons[index] as Comparison
  const from = Math.min(atCorner[index] as number, reserve)
  const unfavourable = new Map(cornerOf(effects, index))
  const worst = corners.walk(
    comparison,
    effects.filter(({ cell }) => unfavourable.has(cell)),
    corners.ends(unfavourable),
    from,
  )
  const oneWay = moves.every(({ low, high }) => Math.max(low, high) >= reserve)
  return { worst, moves, monotone: oneWay && !differs(from, worst) && comparison.check.twoWay === undefined }
}

function leastOf(numbers: ArrayLike<number>, from: number, to: number): number {
  let min = Number.POSITIVE_INFINITY
  for (let i = from; i < to; i++) min = Math.min(min, numbers[i] as number)
  return min
}

const differs = (reserve: number, to: number) => Math.abs(to - reserve) > ROUNDING * Math.max(1, reserve)

/** Each leaf at the end with the lower or the higher reserve. */
const corner = (moves: readonly Move[], end: End) =>
  moves.map(({ cell, low, high }) => [cell, low < high === (end === 'low') ? 'low' : 'high'] as const)
