/**
 * From a leg's specification to its verdict: `npm run demo`.
 *
 * Reads the two designs of an invented walker beside this file, prints what gives first in each, and writes the calculation sheet of the
 * first as Markdown and as one HTML page. Run it from the repository, or copy it into a project that has limbwright installed.
 */
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { type Assessment, assess, describeLeg, htmlReport, markdownReport, rankedTable, reportPictures, verdictText } from 'limbwright/leg'

const here = (name: string) => new URL(name, import.meta.url)
const started = performance.now()
const progress = (text: string) => console.log(`[${((performance.now() - started) / 1000).toFixed(1)} s] ${text}`)

function look(file: string, rows: number): Assessment {
  progress(`reading ${file}`)
  const leg = describeLeg(readFileSync(here(file), 'utf8'))
  progress(`${leg.name}: ${leg.defaults.length} values left open and filled in; assessing`)
  const assessment = assess(leg)
  console.log(`\n${rankedTable(assessment, rows)}\n`)
  console.log(verdictText(assessment))
  console.log(assessment.governing.sentence)
  console.log(`What would help: ${assessment.governing.remedy}.\n`)
  return assessment
}

const first = look('mudflat-leg-first.yaml', 14)
const revised = look('mudflat-leg-revised.yaml', 8)

mkdirSync('out', { recursive: true })
for (const [file, content] of [
  ['out/leg-report.md', markdownReport(first)],
  ['out/leg-report.html', htmlReport(first, await reportPictures(first))],
  ['out/leg-report-revised.md', markdownReport(revised)],
  ['out/leg-report-revised.html', htmlReport(revised, await reportPictures(revised))],
] as const) {
  writeFileSync(file, content)
  progress(`wrote ${file} (${Math.round(content.length / 1024)} kB)`)
}
progress('done. Estimates for trained judgement: guard tensioned cords, mind pinch points, hot motors, batteries and dropped loads.')
