import { type Kind, Quantity, significant } from '../../units/index.js'
import type { Check } from '../cases/check.js'
import { type DrivenJoint, jointWords } from '../numbers.js'
import type { DemandCapacity } from './compare.js'

/** A demand or capacity as text. */
export const amountText = (amount: Quantity): string => (Number.isNaN(amount.si) ? 'not a number' : String(amount))

/** The finding of a check, in plain words. */
export function sentenceOf(
  check: Check,
  joint: DrivenJoint,
  caseTitle: string,
  { demand, capacity, reserve, failure }: DemandCapacity,
): string {
  const part = check.scope === 'joint' ? `${check.part} (${jointWords(joint)})` : check.part
  if (failure !== undefined) {
    const unknown = Number.isNaN(demand) ? check.demandIs : check.capacityIs
    return `${caseTitle}: the ${part} counts as failed, because this cannot be calculated from these inputs: ${unknown} (${failure}).`
  }
  const [d, c] = [amount(demand, check.kind), amount(capacity, check.kind)]
  const verdict =
    reserve < 1
      ? `fails: it ${check.mode}`
      : reserve >= 1000
        ? 'is far from its limit'
        : `passes, with a reserve of ${significant(reserve, 3)}`
  const outcome =
    reserve >= 1
      ? 'the capacity is enough'
      : reserve < 0.001
        ? 'the capacity is less than a thousandth of the demand'
        : `the demand is ${significant(1 / reserve, 3)} times the capacity`
  return `${caseTitle}: the ${part} ${verdict}. ${capital(closed(check.demandIs))} is ${d}; ${closed(check.capacityIs)} is ${c}; ${outcome}.`
}

/** A phrase with a clause behind a comma ends that clause before the verb. */
const closed = (phrase: string): string => (phrase.includes(', ') ? `${phrase},` : phrase)
const amount = (x: number, kind: Kind) => amountText(new Quantity(x, kind))
const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1)
