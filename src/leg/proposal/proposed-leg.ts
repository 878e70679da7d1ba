import { assess } from '../assess/assess.js'
import type { Leg } from '../document/describe.js'
import type { LegSpecification } from '../document/fields.js'
import type { Assessment } from '../result.js'
import { legDocument, PROPOSAL_CASES } from './document.js'
import type { FoundLeg } from './front.js'
import type { LegGoals } from './goals.js'
import { Judge } from './judge.js'
import type { LegSizes } from './sizes.js'
import type { LegStock } from './stock.js'
import type { LegWishData } from './wish-fields.js'

/** A leg that was proposed: its document, the verdict on it, what it is good for and what bound it. */
export interface ProposedLeg {
  /** The goal that it is best at, such as `lightest`. */
  readonly title: string
  /** Entries of the builder's lists that it uses. */
  readonly stock: LegStock
  /** Sizes that the search ended with. */
  readonly sizes: LegSizes
  /** Mass, price and what else the proposals are compared by. */
  readonly goals: LegGoals
  /** The document of the leg, as `describeLeg` takes it. */
  readonly document: LegSpecification
  /** The leg of that document. */
  readonly leg: Leg
  /** The verdict on it. */
  readonly assessment: Assessment
  /** Checks that stop it from being better: those within a twentieth of the required reserve, the tightest first. */
  readonly boundBy: readonly string[]
}

const BOUND = 1.05

/** A leg as it is proposed; nothing where `assess` itself does not pass it. */
export function proposedLeg(wish: LegWishData, title: string, { stock, judged, goals }: FoundLeg, verdictOf = assess): ProposedLeg[] {
  const document = legDocument(wish, stock, judged.sizes)
  const leg = new Judge(wish, stock).leg(judged.sizes)
  const assessment = verdictOf(leg, { cases: PROPOSAL_CASES })
  // The verdict is by `assess` itself: a leg that it does not pass is no proposal, whatever the search made of it.
  if (!assessment.meetsTarget) return []
  const boundBy = assessment.checks
    .filter(({ reserve, requiredReserve }) => Number(reserve) < BOUND * requiredReserve)
    .map(
      ({ part, mode, joint, reserve }) =>
        `${part}${joint === undefined ? '' : ` (${joint})`}: ${mode}, reserve ${Number(reserve).toPrecision(3)}`,
    )
  return [{ title, stock, sizes: judged.sizes, goals, document, leg, assessment, boundBy }]
}
