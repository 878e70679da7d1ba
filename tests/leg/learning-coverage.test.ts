import { readFileSync, writeFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { describeLeg } from '../../src/leg/index.js'
import { estimate } from '../../src/leg/learning/estimate.js'
import type { MeasurementId } from '../../src/leg/learning/measurements.js'
import { benchLeg } from '../../src/leg/plans/bench.js'
import { FAULTS, type Fault, jointOf, standsOf } from './simulated-stands.js'

const leg = benchLeg(describeLeg(readFileSync(new URL('./legs/workbench.yaml', import.meta.url), 'utf8')))
/** LIMBWRIGHT_COVERAGE=1 runs fifty stands of each fault and writes the page of the guide. */
const WHOLE = process.env.LIMBWRIGHT_COVERAGE !== undefined
const countOf = ({ gross }: Fault) => (WHOLE ? 50 : gross === true ? 1 : 2)

interface Tally {
  readonly path: string
  covered: number
  missed: number
  open: number
  readonly widths: number[]
}

/** How often the interval of each field holds the value that a stand was made with; undetermined and refused logs claim nothing. */
function tally(fault: Fault): Tally[] {
  const all = new Map<string, Tally>()
  for (const { log, text, truth } of standsOf(leg, fault, countOf(fault), 2024)) {
    const { found } = estimate(leg, [{ log, id: log.split(' ')[0] as MeasurementId, joint: jointOf(log), text }], {})
    for (const [path, made] of Object.entries(truth)) {
      const one = all.get(path) ?? { path, covered: 0, missed: 0, open: 0, widths: [] }
      all.set(path, one)
      const interval = found.find((field) => field.path === path)?.interval
      if (interval === undefined) one.open++
      else {
        one.widths.push((interval[1] - interval[0]) / 2 / made)
        if (made >= interval[0] && made <= interval[1]) one.covered++
        else one.missed++
      }
    }
  }
  return [...all.values()]
}

const lines: string[] = []

describe.each(FAULTS)('$what', (fault) => {
  test('the interval holds the truth in nine of ten stands, or the log is not believed', { timeout: 3_600_000 }, () => {
    for (const { path, covered, missed, open, widths } of tally(fault)) {
      const half = widths.sort((a, b) => a - b)[widths.length >> 1]
      lines.push(
        `| ${fault.what} | \`${path}\` | ${covered} | ${missed} | ${open} | ${half === undefined ? '' : `${(100 * half).toFixed(1)} %`} |`,
      )
      if (fault.gross === true) expect({ path, covered, missed }).toEqual({ path, covered: 0, missed: 0 })
      else expect((covered + open) / countOf(fault), path).toBeGreaterThanOrEqual(WHOLE ? 0.9 : 0.5)
      // Claiming nothing is no way to be right: without a fault most stands must tell the field, save for a winding that hardly warms.
      if (fault.what.startsWith('nothing wrong')) expect(open / countOf(fault), path).toBeLessThanOrEqual(0.5)
    }
  })
})

test.runIf(WHOLE)('the page of the guide is written', () => {
  writeFileSync(
    new URL('../../docs/guide/stand-coverage.md', import.meta.url),
    `---
title: Coverage of the test stand
---

# Coverage of the test stand

Fifty simulated stands for each error. The estimator does not know the error. A field is *held* where its 95 % interval holds the value that the stand was
made with. It is *open* where the log is not believed or leaves the field undetermined. The last column is the median half-width of the interval.
\`LIMBWRIGHT_COVERAGE=1 npx vitest run tests/leg/learning-coverage.test.ts\` renews this page.

| error of the stand | field | held | missed | open | half-width |
|---|---|---|---|---|---|
${lines.join('\n')}
`,
  )
})
