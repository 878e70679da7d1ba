import type { Step } from '../../formula/index.js'
import { amountText } from '../assess/sentence.js'
import { LOAD_CASES } from '../cases/events.js'
import type { Assessment, CheckResult } from '../result.js'
import { chartTable } from './chart-table.js'
import { reportCharts } from './charts.js'
import {
  bandText,
  CAUTIONS,
  capital,
  EVIDENCE,
  footText,
  placeOf,
  priorsText,
  reserveText,
  standing,
  temperatureText,
  verdictText,
  words,
} from './content.js'
import { escaped, htmlDocument } from './html-parts.js'
import type { ReportPicture } from './pictures.js'

/**
 * The assessment as one self-contained HTML page: opens without network, prints, follows light and dark, works by keyboard and screen reader.
 * Hand it the pictures of `reportPictures`; without them, or where they could not be rendered, the charts are there as tables of their numbers.
 */
export function htmlReport(assessment: Assessment, pictures?: readonly ReportPicture[]): string {
  const { leg, checks, cases, governing } = assessment
  return htmlDocument(
    `${leg.name}: calculation sheet`,
    leg.remark,
    `<section aria-labelledby="verdict">
<h2 id="verdict">Verdict</h2>
<p class="verdict ${assessment.passes ? 'holds' : 'fails'}">${escaped(verdictText(assessment))}</p>
<p>${escaped(governing.sentence)}</p>
<p>Remedy: ${escaped(governing.remedy)}.</p>
<p>${escaped(priorsText(assessment))}</p>
</section>
<section aria-labelledby="cautions">
<h2 id="cautions">Cautions</h2>
<ul class="cautions">${CAUTIONS.map((caution) => `<li>${escaped(caution)}</li>`).join('')}</ul>
</section>
<section aria-labelledby="checks">
<h2 id="checks">Checks, nearest to its limit first</h2>
<p>Reserve is capacity over demand. Temperatures are compared as rises above the air. Checks are ordered by reserve over required reserve. The two ends of the range are the reserves with every uncertain value at its unfavourable end and at its favourable end.</p>
${htmlTable(
  'Every check with its reserve',
  ['standing', 'part', 'how it fails', 'load case', 'demand', 'capacity', 'reserve', 'required reserve', 'range'],
  checks.map((check, i) => [
    `<span class="${standing(check)}">${standing(check)}</span>`,
    `<a href="#check-${i}">${escaped(placeOf(check))}</a>`,
    escaped(check.mode),
    escaped(check.caseTitle),
    escaped(amountText(check.demand)),
    escaped(amountText(check.capacity)),
    reserveText(check.reserve),
    reserveText(check.requiredReserve),
    bandText(check),
  ]),
)}
</section>
<section aria-labelledby="charts">
<h2 id="charts">Charts</h2>
${chartsHtml(pictures ?? reportCharts(assessment).map((one) => ({ ...one, svg: undefined })))}
</section>
<section aria-labelledby="cases">
<h2 id="cases">Load cases</h2>
<dl>${cases.map((one) => `<dt>${escaped(one.title)}</dt><dd>${escaped(one.story)}</dd>`).join('')}</dl>
${htmlTable(
  'Loads of each joint in each load case',
  [
    'load case',
    'joint',
    'foot force',
    'air',
    'torque',
    'speed',
    'motor torque',
    'peak phase current',
    'pretension',
    'taut',
    'slack',
    'motor loss',
    'winding',
    'mount',
  ],
  cases.flatMap((one) =>
    (['hip', 'knee'] as const).map((joint) => {
      const j = one.joints[joint]
      return [
        one.title,
        joint,
        one.footForce,
        one.air,
        j.torque,
        j.speed,
        j.motorTorque,
        j.peakPhaseCurrent,
        j.pretension,
        j.tautTension,
        j.slackTension,
        j.motorLoss,
        temperatureText(j.windingTemperature),
        temperatureText(j.mountTemperature),
      ].map((x) => escaped(String(x)))
    }),
  ),
)}
${unsettledHtml(assessment)}
</section>
<section aria-labelledby="foot">
<h2 id="foot">The foot</h2>
<ul>${footText(assessment)
      .map((line) => `<li>${escaped(line)}</li>`)
      .join('')}</ul>
</section>
<section aria-labelledby="measure">
<h2 id="measure">What to measure first</h2>
<ul>${assessment.priors.tests.map(({ what, test, checks: names }) => `<li><strong>${escaped(capital(what))}</strong>: ${escaped(test)}. It decides ${escaped(names.join(', '))}.</li>`).join('')}</ul>
</section>
<section aria-labelledby="calculations">
<h2 id="calculations">Calculations</h2>
${checks.map(checkHtml).join('\n')}
</section>
<section aria-labelledby="open">
<h2 id="open">Assumed values</h2>
${htmlTable(
  'Assumed values and their reasons',
  ['field', 'value', 'reason', 'evidence'],
  leg.defaults.map(({ path, value, why }) => [path, value, why.where, EVIDENCE[why.level] ?? why.level].map(escaped)),
)}
${assessment.notEvaluated.length === 0 ? '' : `<h3>Checks not evaluated</h3><ul>${assessment.notEvaluated.map(({ id, why }) => `<li>${escaped(id)}: ${escaped(why)}</li>`).join('')}</ul>`}
</section>`,
  )
}

function chartsHtml(pictures: readonly ReportPicture[]): string {
  const note = pictures.every(({ svg }) => svg === undefined)
    ? '<p>The charts are not drawn in this copy of the report; the tables hold their numbers. (Pictures need the packages vega and vega-lite.)</p>'
    : ''
  return `${note}<div class="charts">${pictures.map(figure).join('\n')}</div>`
}

function figure({ id, chart, svg }: ReportPicture): string {
  const { head, rows } = chartTable(chart)
  const name = `chart-${id}`
  const picture = svg === undefined ? '' : svg.replace('<svg', `<svg role="img" aria-labelledby="${name}-title ${name}-text"`)
  return `<figure id="${name}" aria-labelledby="${name}-title">
<h3 id="${name}-title">${escaped(chart.title)}</h3>
<div class="wide picture">${picture}</div>
<figcaption id="${name}-text">${escaped(chart.description)}</figcaption>
<details><summary>Numbers of this chart</summary>${htmlTable(
    chart.title,
    head,
    rows.map((cells) => cells.map(escaped)),
  )}</details>
</figure>`
}

function unsettledHtml({ unsettled }: Assessment): string {
  if (unsettled.length === 0) return ''
  return `<h3>Load cases without a thermal steady state</h3><ul>${unsettled.map(({ case: id, joint, loop, why }) => `<li>${escaped(`${LOAD_CASES[id].title}, ${joint}: ${loop}. ${why}`)}</li>`).join('')}</ul>`
}

function checkHtml(check: CheckResult, i: number): string {
  const others =
    check.otherCases.length === 0
      ? ''
      : `<p>Reserves in other load cases: ${check.otherCases.map((one) => `${escaped(LOAD_CASES[one.case].title)} (${reserveText(one.reserve)})`).join('; ')}.</p>`
  return `<article id="check-${i}">
<h3>${escaped(capital(placeOf(check)))}: ${escaped(check.mode)}</h3>
<p>${escaped(check.sentence)}</p>${others}
<p>Remedy: ${escaped(check.remedy)}.</p>
${check.notes.length === 0 ? '' : `<ul class="notes">${check.notes.map((note) => `<li>Note: ${escaped(note)}.</li>`).join('')}</ul>`}
<details><summary>Calculation (${check.steps.length} steps) and sources</summary>
<ol class="chain">${check.steps.map(stepHtml).join('')}</ol>
<ul class="sources">${check.sources.map(({ level, where }) => `<li>${escaped(EVIDENCE[level] ?? level)}: ${escaped(where)}</li>`).join('')}</ul>
</details>
</article>`
}

function stepHtml(step: Step): string {
  const list = (record: Readonly<Record<string, string>>) =>
    Object.entries(record)
      .map(([name, text]) => `<span class="field">${escaped(words(name))}&nbsp;<b>${escaped(text)}</b></span>`)
      .join(' ')
  const assumes = step.assumes.length === 0 ? '' : `<br><small>Assumes: ${escaped(step.assumes.join('; '))}.</small>`
  const notes = step.notes.map((note) => `<br><strong>Outside: ${escaped(note)}.</strong>`).join('')
  return `<li><strong>${escaped(step.title)}</strong> <code>${escaped(step.formula)}</code><br>${list(step.inputs)} → ${list(step.results)}${assumes}${notes}</li>`
}

/** A table with a caption; cells are HTML. */
function htmlTable(caption: string, head: readonly string[], rows: readonly (readonly string[])[]): string {
  const body = rows.map((cells) => `<tr>${cells.map((text) => `<td>${text}</td>`).join('')}</tr>`).join('\n')
  return `<div class="wide" tabindex="0" role="region" aria-label="${escaped(caption)}"><table>
<caption>${escaped(caption)}</caption>
<thead><tr>${head.map((text) => `<th scope="col">${escaped(text)}</th>`).join('')}</tr></thead>
<tbody>${body}</tbody></table></div>`
}
