import type { EvidenceLevel } from '../../formula/index.js'
import type { BestMeasurement, CheckResult, RestsOn } from '../check-result.js'
import { type Cell, closure } from '../run/index.js'
import { nameOf } from './names.js'
import type { Band, Move } from './survey.js'

/** The share of a check that evidence of a level counts to. */
const SHARE: Readonly<Record<EvidenceLevel, keyof RestsOn>> = {
  measured: 'measured',
  published: 'published',
  standard: 'published',
  referenceLibrary: 'published',
  computed: 'published',
  unverified: 'unverified',
  commonPractice: 'assumed',
  arithmetic: 'assumed',
  assumption: 'assumed',
}

/** How far an uncertain value moves a reserve: the square of the logarithm between its ends, so that independent values add. */
function weightOf({ low, high }: Move): number {
  const [least, most] = [Math.min(low, high), Math.max(low, high)]
  // A value that takes a reserve to nothing moves it as far as one by a factor of a million.
  return most > 0 ? Math.log(most / Math.max(least, 1e-6 * most)) ** 2 : 0
}

function sharesOf(moves: readonly Move[]): RestsOn | undefined {
  const sums = { measured: 0, published: 0, unverified: 0, assumed: 0 }
  for (const move of moves) sums[SHARE[move.range.source.level]] += weightOf(move)
  const all = sums.measured + sums.published + sums.unverified + sums.assumed
  return all > 0
    ? { measured: sums.measured / all, published: sums.published / all, unverified: sums.unverified / all, assumed: sums.assumed / all }
    : undefined
}

/** What the two sides of a check rest on, by where the values come from that move its reserve. A value that both sides read counts to both. */
export function restsOn(demand: Cell, capacity: Cell, moves: readonly Move[]): CheckResult['restsOn'] {
  const side = (cell: Cell) => {
    const read = new Set(closure([cell]).filter(({ of }) => of.leaf !== undefined))
    return sharesOf(moves.filter((move) => read.has(move.cell)))
  }
  const [ofDemand, ofCapacity] = [side(demand), side(capacity)]
  return { ...(ofDemand === undefined ? {} : { demand: ofDemand }), ...(ofCapacity === undefined ? {} : { capacity: ofCapacity }) }
}

/** The measurement that leaves the narrowest range of a reserve, on a ratio scale. */
export function bestMeasurement(
  check: string,
  { worst, best, moves }: Band,
  rangeWithout: (moves: readonly Move[]) => { worst: number; best: number },
) {
  const tests = [...new Set(moves.map(({ range }) => range.measuredBy))].filter((test) => test.length > 0)
  const width = (range: { worst: number; best: number }) => Math.log(range.best / Math.max(range.worst, 1e-6 * range.best))
  const found = tests.map((test): BestMeasurement => {
    const rest = moves.filter(({ range }) => range.measuredBy !== test)
    const values = moves.filter(({ range }) => range.measuredBy === test).map(({ cell }) => nameOf(cell))
    return { check, test, values: [...new Set(values)], before: { worst, best }, after: rangeWithout(rest) }
  })
  const [first] = found.sort((a, b) => width(a.after) - width(b.after))
  return first !== undefined && width(first.after) < width(first.before) ? first : undefined
}
