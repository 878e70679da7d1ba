import { Quantity, significant } from '../../units/index.js'
import type { Check } from '../cases/check.js'
import { type DrivenJoint, jointWords } from '../numbers.js'
import type { DemandCapacity } from './compare.js'

/** A unit as it is written by hand: `°C` for `degC`, `m/s²` for `m/s^2`. */
export const unitSigns = (text: string): string =>
  text
    .replaceAll('degC', '°C')
    .replaceAll(/(?<=\d) deg\b(?!\/)/g, '°')
    .replaceAll(/(?<=\d )mohm\b/g, 'mΩ')
    .replaceAll(/(?<=\d )ohm\b/g, 'Ω')
    .replaceAll(/(?<=\d )u(?=[mHFANVWs]\b)/g, 'µ')
    .replaceAll('^2', '²')
    .replaceAll('^3', '³')
    .replaceAll(/(?<=mm|m)\^4/g, '⁴')

/** Of two amounts in one unit, the larger is less than so many times the smaller. */
const MAX_RATIO = 1e4
/** Numbers from here on have more than four digits before their point. */
const MAX_WHOLE = 1e4
/** A thousand of these are one of the next unit, in which a builder reads them. */
const SMALL_UNIT = /^(?:[uµ][mAVWJs]|m[AVWJs]|N mm)$/
const THOUSAND = 1e3

/** Demand and capacity as text in one unit: that of the smaller one, or of the larger one where the larger would have more than four digits before its point, or a thousand of a small unit. */
export function amountTexts(demand: Quantity, capacity: Quantity): readonly [demand: string, capacity: string] {
  const both = [demand, capacity] as const
  const [large, small] = demand.si >= capacity.si ? both : ([capacity, demand] as const)
  const [own, other] = [small, large].map((text) => /^-?[\d.]+(?:e-?\d+)? (.+)$/.exec(String(text))?.[1])
  const unit = own !== undefined && large.in(own as never) < (SMALL_UNIT.test(own) ? THOUSAND : MAX_WHOLE) ? own : other
  const together = unit !== undefined && small.si > 0 && large.si < MAX_RATIO * small.si
  const [d, c] = both.map((text) =>
    Number.isNaN(text.si)
      ? 'not a number'
      : text.si === Number.POSITIVE_INFINITY
        ? 'infinite'
        : unitSigns(together ? `${significant(text.in(unit as never), 4)} ${unit}` : String(text)),
  ) as [string, string]
  return [d, c]
}

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
  const [d, c] = amountTexts(new Quantity(demand, check.kind), new Quantity(capacity, check.kind))
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

/** Words after which a clause runs to the end of its phrase. */
const TO_THE_END = /^(?:which|where|since|shear|on the shelf)/

/** A phrase that ends in a clause behind a comma ends that clause before the verb; commas in brackets, of a list, and in pairs do not count. */
function closed(phrase: string): string {
  const bare = phrase.replaceAll(/\([^)]*\)/g, '').replaceAll(/, (?:the )?(?!\w+ed )\w+ (?:and|or)\b/g, ' and')
  const clauses = bare.split(', ').slice(1)
  return clauses.length % 2 === 1 || bare.includes(': ') || TO_THE_END.test(clauses.at(-1) ?? '') ? `${phrase},` : phrase
}
const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1)
