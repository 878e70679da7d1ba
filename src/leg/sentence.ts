import { type Kind, Quantity, significant } from '../units/index.js'
import type { Check } from './checks/check.js'
import type { Joint } from './numbers.js'

/** A demand or capacity as text. */
export const amountText = (amount: Quantity): string => (Number.isNaN(amount.si) ? 'not a number' : String(amount))

/** What was found, in plain words. */
export function sentenceOf(check: Check, joint: Joint, caseTitle: string, demand: number, capacity: number, reserve: number): string {
  const part = check.scope === 'joint' ? `${check.part} (${joint})` : check.part
  if (Number.isNaN(demand) || Number.isNaN(capacity)) {
    const unknown = Number.isNaN(demand) ? check.demandIs : check.capacityIs
    return `${caseTitle}: the ${part} counts as failed, because this cannot be calculated from these inputs: ${unknown}.`
  }
  const [d, c] = [amount(demand, check.kind), amount(capacity, check.kind)]
  const verdict =
    reserve < 1 ? `fails: it ${check.mode}` : reserve >= 1000 ? 'is far from it' : `holds, with a reserve of ${significant(reserve, 3)}`
  const outcome =
    reserve >= 1
      ? 'that is enough'
      : reserve < 0.001
        ? 'nothing is left to carry it'
        : `the demand is ${significant(1 / reserve, 3)} times the capacity`
  return `${caseTitle}: the ${part} ${verdict}. ${capital(check.demandIs)} is ${d}; ${check.capacityIs} is ${c}; ${outcome}.`
}

const amount = (x: number, kind: Kind) => amountText(new Quantity(x, kind))
const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1)
