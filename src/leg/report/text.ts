import type { Assessment } from '../result.js'
import { RANKED_HEAD, rankedRows } from './checks-section.js'
import { type ReportOptions, reportPage } from './report-page.js'
import { plainTable, textPage } from './text-blocks.js'

/** The assessment as a calculation sheet in plain text, with the same words as the HTML page. */
export const textReport = (assessment: Assessment, options: ReportOptions = {}): string =>
  textPage(reportPage(assessment, { steps: 'decisive', ...options }))

/** The ranked checks as a table of plain text for a terminal; the first `rows` of them. */
export function rankedTable(assessment: Assessment, rows = assessment.checks.length): string {
  const lines = rankedRows(assessment).slice(0, rows)
  const rest = assessment.checks.length - lines.length
  return [plainTable({ head: RANKED_HEAD, rows: lines }), ...(rest > 0 ? [`… and ${rest} more`] : [])].join('\n')
}
