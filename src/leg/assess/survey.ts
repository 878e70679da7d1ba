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
  /** Whether some leaf lowered it at both ends, so that a corner need not be the worst. */
  readonly monotone: boolean
}

/** The comparisons of one check and joint. */
export interface Group {
  readonly comparisons: readonly Comparison[]
  /** Least reserve at typical values. */
  readonly reserve: number
}

/** The least reserve of a group. */
function least(calculation: LegCalculation, { comparisons }: Group): number {
  let reserve = Number.POSITIVE_INFINITY
  for (const one of comparisons) {
    const found = compare(calculation, one)
    if (typeof found !== 'string' && found.reserve < reserve) reserve = found.reserve
  }
  return reserve
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

/**
 * Ranges of the reserves of some checks. Each uncertain leaf goes to its low and its high end alone, and back; then every check is evaluated with
 * each leaf at the end that lowered (or raised) it. A check whose leaves lower it at both ends, or whose range spans 1, is walked leaf by leaf
 * from its worst corner until nothing gets worse. The calculation is left at its typical values.
 */
export function survey<G extends Group>(calculation: LegCalculation, groups: readonly G[]): Map<G, Band> {
  const moves = new Map<G, Move[]>(groups.map((group) => [group, []]))
  for (const { cell, range, touched } of uncertainOf(calculation, groups)) {
    const at = (x: number) => {
      calculation.put(cell, x)
      return touched.map((group) => least(calculation, group))
    }
    const [low, high] = [at(range.low), at(range.high)]
    calculation.restore(cell)
    for (const [i, group] of touched.entries()) {
      const move = { cell, range, low: low[i] as number, high: high[i] as number }
      if (moved(group, move.low) || moved(group, move.high)) (moves.get(group) as Move[]).push(move)
    }
  }
  const corners = new Corners(calculation)
  return new Map(
    groups.map((group) => {
      const own = moves.get(group) as Move[]
      const monotone = own.every(({ low, high }) => Math.min(low, high) >= group.reserve || Math.max(low, high) >= group.reserve)
      const worst = corners.at(group, corner(own, 'low'))
      const best = corners.at(group, corner(own, 'high'))
      const walked = !monotone || (worst < 1 && best >= 1) ? corners.walk(group, own, corner(own, 'low'), worst) : worst
      return [group, { worst: Math.min(walked, group.reserve), best: Math.max(best, group.reserve), moves: own, monotone }] as const
    }),
  )
}

/** A change this small is rounding. */
const ROUNDING = 1e-9
const moved = ({ reserve }: Group, to: number) => Math.abs(to - reserve) > ROUNDING * Math.max(1, reserve)

type Corner = ReadonlyMap<Uncertain['cell'], number>

/** Each leaf at the end with the lower or the higher reserve. */
const corner = (moves: readonly Move[], wanted: 'low' | 'high'): Corner =>
  new Map(moves.map(({ cell, range, low, high }) => [cell, low < high === (wanted === 'low') ? range.low : range.high]))

/** Evaluates groups with some leaves away from their typical values. */
class Corners {
  readonly #calculation: LegCalculation

  constructor(calculation: LegCalculation) {
    this.#calculation = calculation
  }

  at(group: Group, wanted: Corner): number {
    for (const [cell, x] of wanted) this.#calculation.put(cell, x)
    const reserve = least(this.#calculation, group)
    for (const cell of wanted.keys()) this.#calculation.restore(cell)
    return reserve
  }

  /** From a corner, leaf by leaf to its other end or its typical value while that lowers the reserve. */
  walk(group: Group, moves: readonly Move[], from: Corner, reserve: number): number {
    let [best, at, better] = [reserve, new Map(from), true]
    for (let round = 0; better && round < 3; round++) {
      better = false
      for (const { cell, range } of moves)
        for (const x of [range.low, range.high]) {
          if (at.get(cell) === x) continue
          const tried = new Map(at).set(cell, x)
          const found = this.at(group, tried)
          if (found >= best - ROUNDING) continue
          best = found
          at = tried
          better = true
        }
    }
    return best
  }
}
