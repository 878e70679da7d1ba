import type { CheckResult } from '../check-result.js'
import { resultText, sign } from '../drawings/facts.js'
import { jointWords } from '../numbers.js'
import type { Assessment } from '../result.js'
import { type Picture, type Piece, plainWords, type Words } from './blocks.js'
import { rankOf } from './checks-section.js'
import { placeOf } from './content.js'

const HEAD = ['name', 'value', 'unit', 'source']

/**
 * Drawings as they stand in a report: values with their units, and the checks in their tables as numbers of the ranking, where each stands once.
 */
export const drawingPictures = (assessment: Assessment, drawings: readonly Picture[]): readonly Picture[] =>
  drawings.map((drawing) => {
    const { table } = drawing
    if (table === undefined || table.head.join() !== HEAD.join()) return drawing
    const taken = new Set<CheckResult>()
    const checks = table.rows.map((row) => {
      const check = checkOf(assessment, drawing.id, row, taken)
      if (check !== undefined) taken.add(check)
      return check
    })
    const sizes = table.rows.flatMap((row, i) => (checks[i] === undefined ? [sizeOf(row.map(plainWords))] : []))
    const named = checks.flatMap((check) => check ?? [])
    return {
      ...drawing,
      table: {
        head: ['name', 'value', 'source'],
        rows: named.length === 0 ? sizes : [...sizes, ['checks', ranks(assessment, named), 'result']],
      },
    }
  })

const sizeOf = ([name = '', value = '', unit = '', source = '']: readonly string[]): Words[] => [
  name,
  unit === '' ? value : `${value}${unit === '°' ? '' : ' '}${unit}`,
  source === 'document' ? 'given' : source,
]

/** Checks by their numbers, with their states. */
const ranks = (assessment: Assessment, checks: readonly CheckResult[]): Words =>
  checks.flatMap((check, i): Piece[] => {
    const rank = rankOf(assessment, check)
    return [...(i === 0 ? [] : [', ']), { text: rank, to: rank }, ` ${sign(check)}`]
  })

/** The check whose demand, capacity and reserve a row of a drawing repeats; of two that read alike, that of the joint which is drawn. */
function checkOf(
  { checks }: Assessment,
  id: string,
  [name = '', value = '']: readonly Words[],
  taken: ReadonlySet<CheckResult>,
): CheckResult | undefined {
  const [text, result] = [plainWords(name), plainWords(value)]
  const alike = checks.filter(
    (check) =>
      !taken.has(check) &&
      (text === `${check.part}: ${check.mode}` || text === `${placeOf(check)}: ${check.mode}`) &&
      result.startsWith(resultText(check)),
  )
  return (
    alike.find(({ joint }) => joint !== undefined && (id.endsWith(`-${joint}`) || text.includes(`, ${jointWords(joint)}:`))) ?? alike[0]
  )
}
