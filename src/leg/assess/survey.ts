import type { LegCalculation } from '../calculation.js'
import type { Cell, Ends, Range, Scenarios, Uncertain } from '../run/index.js'
import type { Comparison } from './compare.js'
import { Corners, cornerOf, type Effect, ROUNDING, reserveAt } from './corners.js'

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

/** The comparisons of one check and joint. */
export interface Group {
  readonly comparisons: readonly Comparison[]
  /** Least reserve at typical values. */
  readonly reserve: number
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
  surveyed(calculation, groups, (corners, { comparisons, reserve }, worst) => ({
    ...worst,
    best: Math.max(reserve, corners.least(comparisons, corner(worst.moves, 'high'))),
  }))

/** The same without the favourable ends. */
export const worstEnds = <G extends Group>(calculation: LegCalculation, groups: readonly G[]): Map<G, WorstEnd> =>
  surveyed(calculation, groups, (_, __, worst) => worst)

function surveyed<G extends Group, B>(
  calculation: LegCalculation,
  groups: readonly G[],
  of: (corners: Corners, group: G, worst: WorstEnd) => B,
): Map<G, B> {
  const leaves = uncertainOf(calculation)
  const scenarios = calculation.scenarios(leaves)
  const effects = effectsOf(calculation, scenarios, leaves, groups)
  const corners = new Corners(scenarios)
  const atCorner = corners.ofEach(groups, effects)
  return new Map(
    groups.map((group, i) => [group, of(corners, group, worstEndOf(corners, group, effects[i] as Effect[], atCorner[i] as number[]))]),
  )
}

/** The range of a check's reserve with only some of its uncertain values away from typical. */
export function rangesOver(calculation: LegCalculation, { comparisons, reserve }: Group, all: readonly Move[]) {
  const corners = new Corners(calculation.scenarios(all))
  return (moves: readonly Move[]): { worst: number; best: number } => ({
    worst: Math.min(reserve, corners.least(comparisons, corner(moves, 'low'))),
    best: Math.max(reserve, corners.least(comparisons, corner(moves, 'high'))),
  })
}

/** A comparison by the number of its group and its own. */
interface Place {
  readonly group: number
  readonly index: number
  readonly one: Comparison
}

/** How each leaf alone moves the comparisons of each group that it reaches. */
function effectsOf(calculation: LegCalculation, scenarios: Scenarios, leaves: readonly Uncertain[], groups: readonly Group[]): Effect[][] {
  const typical = groups.map(({ comparisons }) => comparisons.map((one) => reserveAt(calculation, one)))
  const touched = placesOf(scenarios, leaves, groups)
  const effects = groups.map((): Effect[] => [])
  for (const [number, { cell, range }] of leaves.entries()) {
    const places = touched[number] as readonly Place[]
    const at = (end: 'low' | 'high') => {
      const reader = scenarios.at(new Map([[cell, end]]))
      const found = new Map<number, number[]>()
      for (const { group, index, one } of places) {
        const reserves = found.get(group) ?? [...(typical[group] as number[])]
        reserves[index] = reserveAt(reader, one)
        found.set(group, reserves)
      }
      return found
    }
    const [low, high] = [at('low'), at('high')]
    for (const [group, reserves] of low) effects[group]?.push({ cell, range, low: reserves, high: high.get(group) as number[] })
  }
  return effects
}

/** The comparisons that each leaf may move. */
function placesOf(scenarios: Scenarios, leaves: readonly Uncertain[], groups: readonly Group[]): Place[][] {
  const touched = leaves.map((): Place[] => [])
  for (const [group, { comparisons }] of groups.entries())
    for (const [index, one] of comparisons.entries()) {
      const { demand, capacity, unless } = one
      for (const leaf of scenarios.reaching([demand, capacity, ...(unless === undefined ? [] : [unless])]))
        touched[leaf]?.push({ group, index, one })
    }
  return touched
}

function worstEndOf(corners: Corners, { comparisons, reserve }: Group, effects: readonly Effect[], atCorner: readonly number[]): WorstEnd {
  const moves = effects
    .map(({ cell, range, low, high }): Move => ({ cell, range, low: Math.min(...low), high: Math.min(...high) }))
    .filter(({ low, high }) => differs(reserve, low) || differs(reserve, high))
  let least = { reserve: Number.POSITIVE_INFINITY, index: 0 }
  for (const [index, found] of atCorner.entries()) if (found < least.reserve) least = { reserve: found, index }
  const one = comparisons[least.index] as Comparison
  const from = Math.min(least.reserve, reserve)
  const unfavourable = cornerOf(effects, least.index)
  const worst = corners.walk(
    one,
    effects.filter(({ cell }) => unfavourable.has(cell)),
    unfavourable,
    from,
  )
  const oneWay = moves.every(({ low, high }) => Math.max(low, high) >= reserve)
  return { worst, moves, monotone: oneWay && !differs(from, worst) && one.check.twoWay === undefined }
}

const differs = (reserve: number, to: number) => Math.abs(to - reserve) > ROUNDING * Math.max(1, reserve)

/** Each leaf at the end with the lower or the higher reserve. */
const corner = (moves: readonly Move[], end: 'low' | 'high'): Ends =>
  new Map(moves.map(({ cell, low, high }) => [cell, low < high === (end === 'low') ? 'low' : 'high']))
