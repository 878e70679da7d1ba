import { NOT_MONOTONE } from '../assess/results.js'
import { amountTexts } from '../assess/sentence.js'
import { LOAD_CASES } from '../cases/events.js'
import type { CheckResult } from '../check-result.js'
import { jointWords } from '../numbers.js'
import { CHECKS } from '../parts/index.js'
import type { Assessment } from '../result.js'
import { capital, listed, remarkWords } from './amounts.js'
import { type Block, type Piece, points, section, small, table, text, type Words } from './blocks.js'
import { bandText, EVIDENCE, placeOf, reserveText, restsText, standing } from './content.js'
import type { NumberedSheet } from './sheet-sections.js'

const BY_ID = new Map(CHECKS.map((check) => [check.id, check]))
/** From this many checks on, a list names their parts alone: of a drive that a leg does not have, how it could fail is of no use. */
const MANY = 5
/** Checks by their ids, in words: those of one part together. */
export function checksNamed(ids: readonly string[]): string {
  const modes = new Map<string, string[]>()
  for (const id of ids) {
    const { part, mode } = BY_ID.get(id) ?? { part: id, mode: '' }
    modes.set(part, [...(modes.get(part) ?? []), mode])
  }
  const named = [...modes].map(([part, own]) => {
    if (ids.length < MANY) return `${part} ${own.join(', or ')}`.trim()
    return own.length === 1 ? part : `${part} (${own.length} checks)`
  })
  return named.join('; ')
}

/** Where a check stands in the ranking, as its reference. */
export const rankOf = ({ checks }: Assessment, check: CheckResult): string => `K${checks.indexOf(check) + 1}`

const HEAD = ['no.', 'state', 'part', 'how it fails', 'load case', 'demand', 'capacity', 'reserve', 'required', 'range'] as const

/** The ranked checks as cells of words. */
export const rankedRows = (assessment: Assessment): Words[][] =>
  assessment.checks.map((check) => [
    [{ text: rankOf(assessment, check), to: rankOf(assessment, check) }],
    [{ text: standing(check), tone: standing(check) }],
    placeOf(check),
    check.mode,
    check.caseTitle,
    ...amountTexts(check.demand, check.capacity),
    reserveText(check.reserve),
    reserveText(check.requiredReserve),
    bandText(check),
  ])
/** Names of the columns of the ranked checks. */
export const RANKED_HEAD: readonly string[] = HEAD

/** Every check in its order. */
export const rankedSection = (assessment: Assessment): Block =>
  section('checks', 'Checks, nearest to its limit first', [
    text(
      `Checks are ordered by reserve over required reserve. Each number leads to the chain of the check.${assessment.checks.every(({ range }) => range.monotone) ? '' : ` Where the range says "least found", ${NOT_MONOTONE}.`}`,
    ),
    table('Every check with its reserve', HEAD, rankedRows(assessment)),
  ])

/** Each check as a chain of references, its joints together. */
export function chainsSection(assessment: Assessment, chosen: readonly CheckResult[], sheet: NumberedSheet): Block {
  const groups = new Map<string, CheckResult[]>()
  for (const check of chosen) groups.set(check.id, [...(groups.get(check.id) ?? []), check])
  return section('chains', 'Check by check', [
    text(
      `Demand and capacity lead to the steps that made them. A step names the steps before it. "Uncertain" lists where the uncertain values of a side come from, weighed by how far they move the reserve; shares below 5 % are not listed.${chosen.length === assessment.checks.length ? '' : ` This copy has the calculation of the ${chosen.length} checks nearest to their limit, and those of the other ${assessment.checks.length - chosen.length} are in the full report.`}`,
    ),
    ...[...groups.values()].map((checks) => chain(assessment, checks, sheet)),
  ])
}

function chain(assessment: Assessment, checks: readonly CheckResult[], sheet: NumberedSheet): Block {
  const [first] = checks as [CheckResult, ...CheckResult[]]
  const rule = CHECKS.find(({ id }) => id === first.id)?.rule
  const rests = restsText(first)
  return section(`check-${first.id.replaceAll('.', '-')}`, `${capital(first.part)}: ${first.mode}`, [
    text(`Demand: ${first.demandIs}. Capacity: ${first.capacityIs}. Remedy: ${first.remedy}.${rests === undefined ? '' : ` ${rests}`}`),
    ...(rule === undefined ? [] : [small(`Rule: ${remarkWords(rule.where)} (${EVIDENCE[rule.level] ?? rule.level}).`)]),
    points(checks.map((check) => chainLine(assessment, check, sheet))),
    ...notes(checks),
  ])
}

function chainLine(assessment: Assessment, check: CheckResult, sheet: NumberedSheet): Words {
  const rank = rankOf(assessment, check)
  const lead: Piece[] = [
    { text: rank, id: rank },
    ` ${check.joint === undefined ? '' : `${jointWords(check.joint)}, `}${lower(check.caseTitle)}: `,
  ]
  return [
    ...lead,
    'demand ',
    ...sheet.side(check, 'demand'),
    ', capacity ',
    ...sheet.side(check, 'capacity'),
    `, reserve ${reserveText(check.reserve)}.${othersText(check)}`,
  ]
}

/** The load case that is hardest after this one. */
const othersText = ({ otherCases: [next] }: CheckResult): string =>
  next === undefined ? '' : ` Next: ${lower(LOAD_CASES[next.case].title)} ${reserveText(next.reserve)}.`

/** Values outside a range of validity, and other remarks; a remark on both joints is printed once. */
function notes(checks: readonly CheckResult[]): Block[] {
  const joints = new Map<string, string[]>()
  for (const { notes: own, joint } of checks)
    for (const note of own.filter((text) => text !== NOT_MONOTONE))
      joints.set(note, [...(joints.get(note) ?? []), ...(joint === undefined ? [] : [jointWords(joint)])])
  return joints.size === 0
    ? []
    : [points([...joints].map(([note, of]) => `Note${of.length === 0 || of.length === checks.length ? '' : ` (${listed(of)})`}: ${note}.`))]
}

/** A title inside a sentence. */
export const lower = (title: string): string => title.charAt(0).toLowerCase() + title.slice(1)
