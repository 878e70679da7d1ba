import { leastShare, mostFailures, type Scenarios, scenarios } from '../../study/index.js'
import { InputError, type Issue, show } from '../../units/index.js'
import { legFormula } from '../as-formula.js'
import { assess } from '../assess/assess.js'
import { legCorrelations } from '../correlations.js'
import { knownOptions } from '../options.js'
import { legDocument, PROPOSAL_CASES } from './document.js'
import type { LegGoals } from './goals.js'
import { Judge, type JudgedLeg } from './judge.js'
import type { ProposedLeg } from './proposed-leg.js'
import { titleOf } from './reasons.js'
import { mend, slim } from './search.js'
import type { LegWishData } from './wish-fields.js'
import { type Kept, WorkPieces } from './work.js'

/** How surely a leg must hold, and how it is looked for. */
export interface RobustLegOptions {
  /** Share of all cases in which no check of the leg may fail. Default 0.9. */
  readonly chance?: number
  /** Confidence with which the draws show it. Default 0.95. */
  readonly confidence?: number
  /** Draws of each look, and of the last one, which is fresh. Default 120. */
  readonly draws?: number
  /** Rounds of mending at most. Default 8. */
  readonly rounds?: number
  /** Legs judged in each round, each under every draw that must hold, and half as many to make the leg lighter at the end: a cap. Default 400. */
  readonly evaluations?: number
  /** Default 1. */
  readonly seed?: number
  /** What was kept of an earlier run with the same leg and options: finished rounds are not done again. */
  readonly resume?: Kept
  /** Called after every finished round with all that is finished: write it down to resume. */
  readonly onKept?: (kept: Kept) => void
  /** Called with what the search does. */
  readonly onProgress?: (text: string) => void
}

/** How many draws a leg bore without a failure, and the lower bound of the share that it bears. */
export interface Borne {
  readonly borne: number
  readonly draws: number
  readonly least: number
}

/** A leg that bears its ranges, next to the one that holds at typical values: the price of robustness. */
export interface RobustLeg {
  /** `held`: fresh draws show the share. `notShown`: they do not. */
  readonly state: 'held' | 'notShown'
  readonly proposed: ProposedLeg
  readonly atTypical: Borne
  /** The robust leg, with its document and verdict. */
  readonly robust: ProposedLeg
  readonly atRobust: Borne
  /** Relative increase of each goal: 0.1 is a tenth more. */
  readonly price: { readonly [N in keyof LegGoals]: number }
  /** Checks that fail most often in the draws of the leg at typical values, in words, with their share. */
  readonly failures: readonly (readonly [check: string, share: number])[]
  readonly message: string
}

/**
 * Makes a proposed leg robust: no check fails, at a reserve of 1, in a stated share of all cases, when frictions, materials, prints and films scatter over their ranges; what is one draw is drawn once (`legCorrelations`). At typical
 * values every check keeps its required reserve as well. Each round mends the leg under the draws that it must bear and looks at many more; the share comes from fresh draws.
 *
 * The ranges are what is believed; nothing here makes them true. Throws one `InputError` that lists every bad option.
 */
export function robustLeg(wish: LegWishData, proposed: ProposedLeg, options: RobustLegOptions = {}): RobustLeg {
  return robustBy({ mend, slim, assess }, wish, proposed, options)
}

/** What looks for legs, and what judges the one that was found. */
interface Means {
  readonly mend: typeof mend
  readonly slim: typeof slim
  readonly assess: typeof assess
}

/** The same by given means. */
export function robustBy(by: Means, wish: LegWishData, proposed: ProposedLeg, options: RobustLegOptions): RobustLeg {
  knownOptions('robustLeg', options, ['chance', 'confidence', 'draws', 'rounds', 'evaluations', 'seed', 'resume', 'onKept', 'onProgress'])
  const { chance = 0.9, confidence = 0.95, draws = 120, rounds = 8, evaluations = 400, seed = 1, onProgress } = options
  const allowed = allowedOf({ chance, confidence, draws, rounds, evaluations, seed })
  const judge = new Judge(wish, proposed.stock)
  const work = new WorkPieces(JSON.stringify([wish, proposed.document, chance, confidence, draws]), evaluations, options)
  const formula = legFormula(proposed.leg)
  const correlations = legCorrelations(proposed.leg)
  const drawn = scenarios(formula, {}, { seed, correlations })
  const first = drawOutcomes(judge, proposed.sizes, drawn, draws)
  let best = judge.judge(proposed.sizes)
  let seen = first
  for (let round = 0; round < rounds; round++) {
    const failing = seen.filter(({ deficit }) => deficit > 0).sort((a, b) => b.deficit - a.deficit)
    onProgress?.(`round ${round}: ${failing.length} of ${draws} draws break a check`)
    if (failing.length <= aimedAt(allowed)) break
    judge.bear(drawn.draw((failing[aimedAt(allowed)] as IndexedOutcome).index))
    work.allow(evaluations)
    best = work.do(`round ${round}`, judge, evaluations, (max) => by.mend(judge, best.sizes, seed + round, max))
    seen = drawOutcomes(judge, best.sizes, drawn, draws)
  }
  work.allow(Math.floor(evaluations / 2))
  const slimmed = work.do('slim', judge, Math.floor(evaluations / 2), (max) => by.slim(judge, best, 'mass', seed, max))
  // A lighter leg bears the draws that it was held to; of the others it must break no more.
  const breaks = (all: readonly IndexedOutcome[]) => all.filter(({ deficit }) => deficit > 0).length
  if (breaks(drawOutcomes(judge, slimmed.sizes, drawn, draws)) <= Math.max(aimedAt(allowed), breaks(seen))) best = slimmed
  const fresh = scenarios(formula, {}, { seed: seed + 1, correlations })
  const borne = (sizes: JudgedLeg['sizes']): Borne => {
    const count = drawOutcomes(judge, sizes, fresh, draws).filter(({ deficit }) => deficit === 0).length
    return { borne: count, draws, least: leastShare(count, draws, confidence) }
  }
  const [atTypical, atRobust] = [borne(proposed.sizes), borne(best.sizes)]
  const robust = legOf(by, wish, judge, best, proposed)
  const price = costIncrease(proposed, robust)
  const state = atRobust.least >= chance && robust.assessment.meetsTarget ? 'held' : 'notShown'
  return {
    state,
    proposed,
    atTypical,
    robust,
    atRobust,
    price,
    failures: mostBroken(first),
    message: sentence(state, chance, atTypical, atRobust, price),
  }
}

const costIncrease = (before: ProposedLeg, after: ProposedLeg): RobustLeg['price'] =>
  Object.fromEntries(
    Object.entries(before.goals).map(([name, value]) => [name, after.goals[name as keyof LegGoals] / value - 1]),
  ) as RobustLeg['price']

type Numbers = Required<Omit<RobustLegOptions, 'resume' | 'onKept' | 'onProgress'>>

function allowedOf({ chance, confidence, draws, rounds, evaluations, seed }: Numbers): number {
  const issues: Issue[] = []
  const share = (path: string, x: number) => {
    if (!(x > 0 && x < 1)) issues.push({ path, given: show(x), accepts: 'must be a number between 0 and 1' })
  }
  share('chance', chance)
  share('confidence', confidence)
  const whole = (path: string, x: number, min: number) => {
    if (!(Number.isSafeInteger(x) && x >= min)) issues.push({ path, given: show(x), accepts: `must be a whole number of at least ${min}` })
  }
  whole('draws', draws, 10)
  whole('rounds', rounds, 0)
  whole('evaluations', evaluations, 1)
  whole('seed', seed, 0)
  const allowed = issues.length > 0 ? 0 : mostFailures(draws, chance, confidence)
  if (allowed < 0)
    issues.push({ path: 'draws', given: show(draws), accepts: `must be enough to show a share of ${chance} with confidence ${confidence}` })
  if (issues.length > 0) throw new InputError('robustLeg', issues)
  return allowed
}

/** Failures that are aimed at, fewer than are allowed, so that fresh draws show the share as well. */
const aimedAt = (allowed: number) => Math.max(0, Math.floor(allowed - 2 * Math.sqrt(2 * allowed)))

interface IndexedOutcome {
  readonly index: number
  readonly deficit: number
  readonly broken: readonly string[]
}

const drawOutcomes = (judge: Judge, sizes: JudgedLeg['sizes'], { draw }: Scenarios, draws: number): IndexedOutcome[] => {
  const leg = judge.leg(sizes)
  return Array.from({ length: draws }, (_, index) => ({ index, ...judge.under(leg, draw(index)) }))
}

function mostBroken(seen: readonly IndexedOutcome[]): (readonly [string, number])[] {
  const counts = new Map<string, number>()
  for (const { broken } of seen) for (const check of broken) counts.set(check, (counts.get(check) ?? 0) + 1)
  return [...counts].map(([check, count]) => [titleOf(check), count / seen.length] as const).sort((a, b) => b[1] - a[1])
}

function legOf({ assess }: Means, wish: LegWishData, judge: Judge, judged: JudgedLeg, { stock, title }: ProposedLeg): ProposedLeg {
  const leg = judge.leg(judged.sizes)
  return {
    title: `${title}, robust`,
    stock,
    sizes: judged.sizes,
    goals: judge.goals(judged),
    document: legDocument(wish, stock, judged.sizes),
    leg,
    assessment: assess(leg, { cases: PROPOSAL_CASES }),
    boundBy: [],
  }
}

function sentence(state: RobustLeg['state'], chance: number, before: Borne, after: Borne, price: RobustLeg['price']): string {
  const share = ({ borne, draws, least }: Borne) => `${borne} of ${draws} draws (at least ${Math.floor(100 * least)} %)`
  const more = (x: number) => `${x >= 0 ? '+' : ''}${(100 * x).toFixed(1)} %`
  return [
    `At typical values no check fails, but the leg bears only ${share(before)} of its ranges.`,
    `The robust leg bears ${share(after)}; ${state === 'held' ? `${100 * chance} % is shown` : `${100 * chance} % is not shown`}.`,
    `It costs: mass ${more(price.mass)}, energy per metre ${more(price.energyPerMetre)}, print volume ${more(price.printVolume)}, money ${more(price.cost)}.`,
  ].join(' ')
}
