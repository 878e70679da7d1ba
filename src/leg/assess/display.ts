import type { CheckResult } from '../check-result.js'
import { legNumbers } from '../numbers.js'
import { cautionsOf } from '../report/cautions.js'
import { bandText, placeOf, reserveText, standing, verdictText } from '../report/content.js'
import { escaped } from '../report/html-parts.js'
import { rankedTable } from '../report/text.js'
import type { Assessment } from '../result.js'
import { amountTexts } from './sentence.js'

/** Checks that a notebook lists; the report holds all of them. */
const MAX_LISTED = 10

/** An assessment that notebooks show as its verdict in brief; plain data otherwise. */
export function displayed(assessment: Assessment): Assessment {
  return Object.defineProperty(assessment, Symbol.for('Jupyter.display'), {
    value: () => ({
      'text/html': verdictHtml(assessment),
      'text/plain': `${verdictText(assessment)}\n\n${rankedTable(assessment, MAX_LISTED)}`,
    }),
    enumerable: false,
  })
}

/** Verdict, weakest checks with a bar for each reserve, remedy and cautions as one piece of HTML of some kilobytes. */
function verdictHtml(assessment: Assessment): string {
  const { governing, checks } = assessment
  const titles = ['', 'part', 'how it fails', 'load case', 'demand', 'capacity', 'reserve', 'required', 'range', '']
  const head = titles.map((title) => `<th scope="col">${title}</th>`).join('')
  const rest = checks.length - MAX_LISTED
  return [
    `<p><strong>${escaped(verdictText(assessment))}</strong></p>`,
    `<p>${escaped(governing.sentence)} Remedy: ${escaped(governing.remedy)}.</p>`,
    `<table><caption>The weakest checks${rest > 0 ? `; ${rest} more are in the report` : ''}. The line in each bar is the required reserve.</caption><thead><tr>${head}</tr></thead>`,
    `<tbody>${checks.slice(0, MAX_LISTED).map(row).join('')}</tbody></table>`,
    `<details><summary>Cautions</summary><ul>${cautionsOf(legNumbers(assessment.leg))
      .map((text) => `<li>${escaped(text)}</li>`)
      .join('')}</ul></details>`,
  ].join('\n')
}

function row(check: CheckResult): string {
  const cells = [
    standing(check),
    placeOf(check),
    check.mode,
    check.caseTitle,
    ...amountTexts(check.demand, check.capacity),
    reserveText(check.reserve),
    reserveText(check.requiredReserve),
    bandText(check),
  ]
  return `<tr>${cells.map((text) => `<td>${escaped(text)}</td>`).join('')}<td>${bar(check)}</td></tr>`
}

/** Pixels of a bar for a reserve of 1; bars end at three times that. */
const BAR_UNIT = 40
const MAX_BAR = 3 * BAR_UNIT

/** The reserve as a bar; the number beside it says the same. */
function bar({ reserve, requiredReserve }: CheckResult): string {
  const at = (x: number) => Math.round(Math.min(MAX_BAR, Math.max(0, (Number.isNaN(x) ? 0 : x) * BAR_UNIT)))
  const colour = reserve < 1 ? '#D55E00' : reserve < requiredReserve ? '#E69F00' : '#009E73'
  const line = at(requiredReserve)
  return `<svg width="${MAX_BAR}" height="12" aria-hidden="true"><rect width="${at(reserve)}" height="12" fill="${colour}"/><path d="M${line} 0v12" stroke="currentColor" stroke-width="2"/></svg>`
}
