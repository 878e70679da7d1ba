import { amountText } from '../assess/sentence.js'
import type { Assessment } from '../result.js'
import { bandText, placeOf, reserveText, standing } from './content.js'

/** The ranked checks as a table of plain text for a terminal; the first `rows` of them. */
export function rankedTable({ checks }: Assessment, rows = checks.length): string {
  const head = ['', 'part', 'how it fails', 'load case', 'demand', 'capacity', 'reserve', 'required reserve', 'range']
  const lines = checks
    .slice(0, rows)
    .map((check) => [
      standing(check),
      placeOf(check),
      check.mode,
      check.caseTitle,
      amountText(check.demand),
      amountText(check.capacity),
      reserveText(check.reserve),
      reserveText(check.requiredReserve),
      bandText(check),
    ])
  const widths = head.map((title, i) => Math.max(title.length, ...lines.map((line) => (line[i] as string).length)))
  const row = (cells: readonly string[]) =>
    cells
      .map((text, i) => text.padEnd(widths[i] as number))
      .join('  ')
      .trimEnd()
  const rest = checks.length - lines.length
  return [row(head), row(widths.map((width) => '-'.repeat(width))), ...lines.map(row), ...(rest > 0 ? [`… and ${rest} more`] : [])].join(
    '\n',
  )
}
