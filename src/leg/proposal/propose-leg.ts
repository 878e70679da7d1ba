import { InputError, type Issue, show } from '../../units/index.js'
import { knownOptions } from '../options.js'
import { strengthOf } from './document-parts.js'
import type { Entry } from './entry.js'
import { type FoundLeg, frontOf, pickedFrom } from './front.js'
import type { LegGoals } from './goals.js'
import { Judge, type JudgedLeg } from './judge.js'
import { nearestLeg } from './nearest.js'
import { type ProposedLeg, proposedLeg } from './proposed-leg.js'
import { titleOf } from './reasons.js'
import type { LegRefusal } from './refusal.js'
import { mend, slim } from './search.js'
import { startOf } from './start.js'
import type { LegStock } from './stock.js'
import { describeWish } from './wish.js'
import type { LegWish, LegWishData } from './wish-fields.js'
import { type Kept, WorkPieces } from './work.js'

/** How a search for legs is run. */
export interface ProposeLegOptions {
  /** Legs judged for the wish: a cap that is never exceeded. Default 12 000: some minutes on one core. */
  readonly evaluations?: number
  /** Legs judged for the nearest wish, where none meets the one given: a cap likewise. Default four times `evaluations`. */
  readonly nearestEvaluations?: number
  /** Default 1. The same seed and wish give the same legs. */
  readonly seed?: number
  /** What was kept of an earlier run with the same wish, seed, evaluations and library: finished pieces of work are not done again. `onProgress` reports where it is of another. */
  readonly resume?: Kept
  /** Called after every finished piece of work with all that is finished: write it down to resume. */
  readonly onKept?: (kept: Kept) => void
  /** Called with what the search does, and how many of its evaluations are done. */
  readonly onProgress?: (text: string, evaluations: number, of: number) => void
}

/** Legs that meet a wish, or why none does. */
export interface LegProposals {
  readonly state: 'met' | 'refused'
  readonly wish: LegWishData
  readonly proposals: readonly ProposedLeg[]
  /** The trade-off front: none of these legs is better than another in everything. */
  readonly front: readonly (LegGoals & { readonly stock: LegStock })[]
  readonly refusal: LegRefusal | undefined
  readonly evaluations: number
  readonly message: string
}

/** Share of the evaluations for mending; what remains goes into the goals, or into the nearest wish. */
const MENDING = 0.6
/** Legs that a look at a stock takes at least: slopes of all sizes, and some steps along them. */
const MIN_EVALUATIONS = 55
/** Stocks that are sound before the search for more of them ends. */
const ENOUGH = 3
/**
 * Legs from a wish: a motor, a cord and polymers of the builder's lists, with sizes that the search finds, so that every check holds in every load case. The
 * answer is a few complete, different legs: the lightest, the thriftiest, the smallest print, the cheapest, the one with most reserve; each with its verdict by `assess` and with
 * what bound it. A wish that no leg meets is answered by the checks that the nearest leg breaks, by how much, and by the nearest wish that was met.
 *
 * The search is finite: a wish that it does not meet may be met by somebody who thinks. What it proposes is checked as a whole, by the same `assess` as any leg.
 *
 * Throws one `InputError` that lists every mistake of the wish, with line and column.
 */
export function proposeLeg(wish: LegWish | LegWishData | string, options: ProposeLegOptions = {}): LegProposals {
  knownOptions('proposeLeg', options, ['evaluations', 'nearestEvaluations', 'seed', 'resume', 'onKept', 'onProgress'])
  const { evaluations = 12_000, seed = 1 } = options
  const { nearestEvaluations = 4 * evaluations } = options
  checkNumbers(evaluations, nearestEvaluations, seed)
  const read = describeWish(wish)
  const work = new WorkPieces(JSON.stringify([read, nearestEvaluations]), evaluations, options)
  const mended = mendedStocks(read, seed, work)
  const sound = mended.filter(({ judged }) => judged.deficit === 0)
  const front = sound.length === 0 ? [] : frontOf(slimmed(sound, seed, work))
  const proposals = (front.length === 0 ? [] : pickedFrom(front)).flatMap(({ title, one }) => proposedLeg(read, title, one))
  // A leg that the search takes for sound counts only when the whole assessment agrees.
  if (proposals.length === 0) {
    const closest = mended[0] as Entry
    work.allow(nearestEvaluations)
    const refusal = nearestLeg(closest, seed, work)
    return { state: 'refused', wish: read, proposals: [], front: [], refusal, evaluations: work.used, message: refusal.message }
  }
  return {
    state: 'met',
    wish: read,
    proposals,
    front: front.map(({ goals, stock }) => ({ ...goals, stock })),
    refusal: undefined,
    evaluations: work.used,
    message: `${proposals.length === 1 ? 'One leg meets' : `${proposals.length} legs meet`} the wish, of ${work.used} that were judged. All checks pass.`,
  }
}

function checkNumbers(evaluations: number, nearestEvaluations: number, seed: number): void {
  const issues: Issue[] = []
  const whole = (path: string, value: number, min: number) => {
    if (!(Number.isSafeInteger(value) && value >= min))
      issues.push({ path, given: show(value), accepts: `must be a whole number of at least ${min}` })
  }
  whole('evaluations', evaluations, 100)
  whole('nearestEvaluations', nearestEvaluations, 0)
  whole('seed', seed, 0)
  if (issues.length > 0) throw new InputError('proposeLeg', issues)
}

/** Every motor with every cord and polymer; drums are printed from the strongest polymer at hand. */
function stocksOf(wish: LegWishData): LegStock[] {
  const plastics = Object.keys(wish.plastics)
  const drum = plastics.reduce((a, b) => (strengthOf(b) > strengthOf(a) ? b : a))
  return Object.keys(wish.motors).flatMap((motor) =>
    Object.keys(wish.cords).flatMap((cord) => plastics.map((frame) => ({ motor, cord, frame, drum }))),
  )
}

/** Mends a leg of every stock a little, then those that are nearest further, half as many each round. */
function mendedStocks(wish: LegWishData, seed: number, work: WorkPieces): Entry[] {
  const stocks = stocksOf(wish)
  const look = (entry: Pick<Entry, 'stock' | 'judge'>, start: JudgedLeg['sizes'], round: number, max: number): Entry => {
    const { motor, cord, frame } = entry.stock
    const judged = work.do(`mend ${round} ${Object.values(entry.stock).join(', ')}`, entry.judge, max, (budget) =>
      mend(entry.judge, start, seed + round, budget, (_, deficit, governing) =>
        work.tell(
          `${motor}, ${cord}, ${frame}: ${deficit === 0 ? 'all checks hold' : `${deficit.toPrecision(3)} missing`}; nearest to its limit: ${titleOf(governing)}`,
        ),
      ),
    )
    return { ...entry, judged }
  }
  const share = Math.floor((MENDING * work.evaluations) / (1 + Math.ceil(Math.log2(stocks.length))))
  const each = (entries: number) => Math.max(MIN_EVALUATIONS, Math.floor(share / entries))
  // Each stock that is looked at takes one leg at least.
  let entries = stocks.flatMap((stock) =>
    work.left < 1 ? [] : [look({ stock, judge: new Judge(wish, stock) }, startOf(wish, stock), 0, each(stocks.length))],
  )
  for (let round = 1; work.used < MENDING * work.evaluations; round++) {
    entries.sort((a, b) => a.judged.deficit - b.judged.deficit)
    const open = entries.filter(({ judged }) => judged.deficit > 0)
    const chosen = open.slice(0, Math.max(1, Math.ceil(stocks.length / 2 ** round)))
    if (chosen.length === 0 || entries.length - open.length >= ENOUGH) break
    const before = work.used
    entries = entries.map((entry) =>
      chosen.includes(entry) && work.left > 0 ? look(entry, entry.judged.sizes, round, each(chosen.length)) : entry,
    )
    if (work.used <= before + chosen.length) break
  }
  return entries.sort((a, b) => a.judged.deficit - b.judged.deficit)
}

/** Goals that a leg is made better at. */
const TRADES: readonly (keyof LegGoals)[] = ['mass', 'energyPerMetre', 'printVolume', 'cost', 'margin']

/** The sound legs made lighter, thriftier, smaller, cheaper, stronger: all that were met on the way. */
function slimmed(sound: readonly Entry[], seed: number, work: WorkPieces): FoundLeg[] {
  const few = sound.slice(0, 3)
  const each = Math.max(20, Math.floor((work.evaluations - work.used) / (few.length * TRADES.length)))
  return few.flatMap(({ stock, judge, judged }) => {
    const first: FoundLeg = { stock, judged, goals: judge.goals(judged) }
    return [
      first,
      ...TRADES.map((trade): FoundLeg => {
        const best = work.do(`slim ${trade} ${Object.values(stock).join(', ')}`, judge, each, (budget) =>
          slim(judge, judged, trade, seed, budget),
        )
        work.tell(`${stock.motor}, ${stock.cord}, ${stock.frame}: ${trade} done`)
        return { stock, judged: best, goals: judge.goals(best) }
      }),
    ]
  })
}
