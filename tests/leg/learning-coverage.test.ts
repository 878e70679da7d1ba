import { readFileSync, writeFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { describeLeg } from '../../src/leg/index.js'
import { corrections } from '../../src/leg/learning/corrections.js'
import { estimate } from '../../src/leg/learning/estimate.js'
import type { MeasurementId } from '../../src/leg/learning/measurements.js'
import { benchLeg } from '../../src/leg/plans/bench.js'
import { COMPARED, drawOf, LEGS, PLAIN_LOGS, type PlainLog } from './plain-stands.js'
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

/** How many stands of a log of some readings hold each value, by how much they are off, and how wide their intervals are. */
function plainTally({ leg: of, log, make }: PlainLog, readings: number, count: number) {
  const all = new Map<string, { path: string; made: number[]; off: number[]; widths: number[]; held: number; open: number }>()
  for (let i = 0; i < count; i++) {
    const { text, truth } = make(drawOf(31, i), readings)
    const { found, compared } = corrections(LEGS[of], { [log]: text })
    for (const [path, made] of Object.entries(truth)) {
      const one = all.get(path) ?? { path, made: [], off: [], widths: [], held: 0, open: 0 }
      all.set(path, one)
      const field = found.find((each) => each.path === path)
      const [value, interval] =
        path === COMPARED ? [compared[0]?.measured?.si, compared[0]?.interval?.map(({ si }) => si)] : [field?.value, field?.interval]
      if (value === undefined || interval === undefined) {
        one.open++
        continue
      }
      const [low, high] = interval as [number, number]
      one.made.push(Math.abs(made))
      one.off.push(value - made)
      one.widths.push((high - low) / 2)
      if (made >= low && made <= high) one.held++
    }
  }
  return [...all.values()]
}

/** Probability that at most so many of a count are held, each with 95 %. */
function atMost(held: number, count: number): number {
  let [term, sum] = [0.05 ** count, 0]
  for (let k = 0; k <= held; k++) {
    sum += term
    term *= ((count - k) / (k + 1)) * (0.95 / 0.05)
  }
  return sum
}
/** Counts that are met in fewer than one series of a hundred say that the interval is too narrow, or wider than it need be. */
const RARE = 0.01
const verdictOf = (held: number, count: number) =>
  atMost(held, count) < RARE ? 'fewer' : 1 - (held === 0 ? 0 : atMost(held - 1, count)) < RARE ? 'more' : 'as stated'
const median = (list: readonly number[]) => [...list].sort((a, b) => a - b)[list.length >> 1] ?? Number.NaN
const mean = (list: readonly number[]) => list.reduce((sum, x) => sum + x, 0) / list.length

const plainLines: string[] = []
const PLAIN_COUNT = WHOLE ? 100 : 8

describe('plain laws', () => {
  test.each(
    PLAIN_LOGS.flatMap((one) =>
      (WHOLE ? one.readings : [one.readings[0]!, one.readings.at(-1)!]).map((readings) => ({ ...one, readings })),
    ),
  )('$log, $readings readings: no interval holds clearly less than it says', { timeout: 3_600_000 }, ({ readings, ...one }) => {
    const tallied = plainTally(one as unknown as PlainLog, readings, one.log === 'windup knee' && !WHOLE ? 3 : PLAIN_COUNT)
    for (const { path, made, off, widths, held, open } of tallied) {
      const count = made.length
      const size = median(made)
      const percent = (x: number) => (count === 0 ? '' : `${(100 * x).toFixed(1)} %`)
      const says = count === 0 ? '' : verdictOf(held, count)
      plainLines.push(
        `| ${one.log.split(' ')[0]} | ${readings} | ${path === COMPARED ? 'what is compared' : `\`${path}\``} | ${held} | ${count - held} | ${open} | ${percent(median(widths) / size)} | ${percent(mean(off) / size)} | ${says} |`,
      )
      expect(atMost(held, count), path).toBeGreaterThan(WHOLE ? 0.001 : 1e-4)
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

## Every kind of reading

A hundred stands for each kind of log and number of readings. They are made from plain laws: Euler's ratio on the pinion, friction slip by slip along
each arc, straight lines. The model of the leg has no part in them. Instruments are off by what the guide says of them, readings scatter, and displays round.

The last column compares the count with 95 %. *Fewer* and *more* are counts that such an interval gives in fewer than one of a hundred series. Three
readings hold more often, because they hardly show their own scatter. A share after a year holds more often, because its interval includes two laws of decay.
The friction of a belt is open without \`beltPitch\`, because its pretension decides the torque. A frame only ever gives, so that the rigidity of a belt comes
out low by some per cent.

| log | readings | field | held | missed | open | half-width | bias | against 95 % |
|---|---|---|---|---|---|---|---|---|
${plainLines.join('\n')}
`,
  )
})
