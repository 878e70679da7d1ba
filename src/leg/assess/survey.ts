import type { LegCalculation } from '../calculation.js'
import type { Cell, Range } from '../run/index.js'
import { type Comparison, compare } from './compare.js'

/** One uncertain leaf, and the comparisons that rest on it. */
interface Uncertain {
  readonly cell: Cell
  readonly range: Range
}

/** How the reserve of a check moves with one uncertain leaf. */
export interface Move {
  readonly cell: Cell
  readonly range: Range
  /** Least reserve over the load cases with the leaf at its low and at its high end. */
  readonly low: number
  readonly high: number
}

/** The range of a check's reserve. */
export interface Band {
  /** Every leaf at the end that is unfavourable for this check. */
  readonly worst: number
  /** Every leaf at the end that is favourable. */
  readonly best: number
  readonly moves: readonly Move[]
  /**
   * Whether each leaf moves it one way, whatever the others are: then its worst end is the least of all values within the ranges. Otherwise it is
   * the least that was found.
   */
  readonly monotone: boolean
}

/** The comparisons of one check and joint. */
export interface Group {
  readonly comparisons: readonly Comparison[]
  /** Least reserve at typical values. */
  readonly reserve: number
}

/** The reserve of a comparison; none where the check does not apply. */
function reserveAt(calculation: LegCalculation, one: Comparison): number {
  const found = compare(calculation, one)
  return typeof found === 'string' ? Number.POSITIVE_INFINITY : found.reserve
}

/** Cells that a change of a leaf may reach. */
function reached(leaf: Cell): Set<Cell> {
  const seen = new Set<Cell>()
  const open = [leaf]
  for (let cell = open.pop(); cell !== undefined; cell = open.pop())
    for (const user of cell.users)
      if (!seen.has(user)) {
        seen.add(user)
        open.push(user)
      }
  return seen
}

/** Leaves with a range, and for each the groups that it may reach. */
function uncertainOf<G extends Group>(calculation: LegCalculation, groups: readonly G[]) {
  return calculation.instances.leaves.flatMap((cell) => {
    const range = calculation.rangeOf(cell)
    if (range === undefined || typeof cell.value !== 'number') return []
    const cells = reached(cell)
    const touched = groups.filter(({ comparisons }) =>
      comparisons.some(({ demand, capacity, unless }) =>
        [demand, capacity, unless].some((side) => side !== undefined && (side === cell || cells.has(side))),
      ),
    )
    return touched.length === 0 ? [] : [{ cell, range, touched }]
  })
}

/** Reserves of the comparisons of a group with one leaf at its low and at its high end. */
interface Effect extends Uncertain {
  readonly low: readonly number[]
  readonly high: readonly number[]
}

/**
 * Ranges of the reserves of some checks. Each uncertain leaf goes to its low and its high end alone, and back; then every comparison of a check is
 * evaluated with each leaf at the end that lowered (or raised) this comparison. From the least of these corners the check is walked leaf by leaf
 * until nothing gets worse: if it does, or if some leaf lowers it at both ends, the check is not monotone. The calculation is left at its typical
 * values.
 */
export function survey<G extends Group>(calculation: LegCalculation, groups: readonly G[]): Map<G, Band> {
  const effects = new Map<G, Effect[]>(groups.map((group) => [group, []]))
  for (const { cell, range, touched } of uncertainOf(calculation, groups)) {
    const at = (x: number) => {
      calculation.put(cell, x)
      return touched.map(({ comparisons }) => comparisons.map((one) => reserveAt(calculation, one)))
    }
    const [low, high] = [at(range.low), at(range.high)]
    calculation.restore(cell)
    for (const [i, group] of touched.entries())
      (effects.get(group) as Effect[]).push({ cell, range, low: low[i] as number[], high: high[i] as number[] })
  }
  const corners = new Corners(calculation)
  return new Map(groups.map((group) => [group, bandOf(corners, group, effects.get(group) as Effect[])] as const))
}

/** The range of a check's reserve with only some of its uncertain values away from typical. */
export function rangeOver(
  calculation: LegCalculation,
  { comparisons, reserve }: Group,
  moves: readonly Move[],
): { worst: number; best: number } {
  const corners = new Corners(calculation)
  return {
    worst: Math.min(reserve, corners.least(comparisons, corner(moves, 'low'))),
    best: Math.max(reserve, corners.least(comparisons, corner(moves, 'high'))),
  }
}

function bandOf(corners: Corners, { comparisons, reserve }: Group, effects: readonly Effect[]): Band {
  const moves = effects
    .map(({ cell, range, low, high }): Move => ({ cell, range, low: Math.min(...low), high: Math.min(...high) }))
    .filter(({ low, high }) => differs(reserve, low) || differs(reserve, high))
  let least = { reserve: Number.POSITIVE_INFINITY, index: 0 }
  for (const [index, one] of comparisons.entries()) {
    const found = corners.at(one, cornerOf(effects, index))
    if (found < least.reserve) least = { reserve: found, index }
  }
  const one = comparisons[least.index] as Comparison
  const from = Math.min(least.reserve, reserve)
  const unfavourable = cornerOf(effects, least.index)
  const worst = corners.walk(
    one,
    effects.filter(({ cell }) => unfavourable.has(cell)),
    unfavourable,
    from,
  )
  const best = Math.max(reserve, corners.least(comparisons, corner(moves, 'high')))
  const oneWay = moves.every(({ low, high }) => Math.max(low, high) >= reserve)
  return { worst, best, moves, monotone: oneWay && !differs(from, worst) && one.check.twoWay === undefined }
}

/** A change this small is rounding. */
const ROUNDING = 1e-9
const differs = (reserve: number, to: number) => Math.abs(to - reserve) > ROUNDING * Math.max(1, reserve)

type Corner = ReadonlyMap<Uncertain['cell'], number>

/** Each leaf at the end with the lower or the higher reserve. */
const corner = (moves: readonly Move[], end: 'low' | 'high'): Corner =>
  new Map(moves.map(({ cell, range, low, high }) => [cell, low < high === (end === 'low') ? range.low : range.high]))

/** Each leaf at the end that is unfavourable for one comparison; those that do not move it stay typical. */
const cornerOf = (effects: readonly Effect[], index: number): Corner =>
  new Map(
    effects.flatMap(({ cell, range, low, high }): [Uncertain['cell'], number][] => {
      const [atLow, atHigh] = [low[index] as number, high[index] as number]
      return atLow === atHigh ? [] : [[cell, atLow < atHigh ? range.low : range.high]]
    }),
  )

/** Evaluates comparisons with some leaves away from their typical values. */
class Corners {
  readonly #calculation: LegCalculation

  constructor(calculation: LegCalculation) {
    this.#calculation = calculation
  }

  least(comparisons: readonly Comparison[], ends: Corner): number {
    for (const [cell, x] of ends) this.#calculation.put(cell, x)
    const reserve = Math.min(...comparisons.map((one) => reserveAt(this.#calculation, one)))
    for (const cell of ends.keys()) this.#calculation.restore(cell)
    return reserve
  }

  at(one: Comparison, ends: Corner): number {
    return this.least([one], ends)
  }

  /** From a corner, leaf by leaf to its other end while that lowers the reserve. */
  walk(one: Comparison, leaves: readonly Uncertain[], from: Corner, reserve: number): number {
    let [best, at, better] = [reserve, new Map(from), true]
    for (let round = 0; better && round < 3; round++) {
      better = false
      for (const { cell, range } of leaves)
        for (const x of [range.low, range.high]) {
          if (at.get(cell) === x) continue
          const tried = new Map(at).set(cell, x)
          const found = this.at(one, tried)
          if (found >= best - ROUNDING) continue
          best = found
          at = tried
          better = true
        }
    }
    return best
  }
}
