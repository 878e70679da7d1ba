import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { corrections } from '../../src/leg/learning/corrections.js'
import { drawOf, LEGS, PLAIN_LOGS, type PlainLog, type PlainStand } from './plain-stands.js'

type Shape = 'zero' | 'drift'
const STANDS = 8
const named = (name: string, leg: PlainLog['leg']) => PLAIN_LOGS.find((one) => one.log === name && one.leg === leg) as PlainLog
const said = ({ remarks }: ReturnType<typeof corrections>) =>
  remarks.find(({ message }) => message.includes('would follow the model much more closely'))?.message

/** The same log, one column of it off by an amount: in every row, or in the last row and less before. */
function spoilt({ text }: PlainStand, column: number, shape: Shape, amount: number): string {
  const [head, ...rows] = text.trim().split('\n') as [string, ...string[]]
  const off = (i: number) => (shape === 'zero' ? amount : (amount * i) / (rows.length - 1))
  return [
    head,
    ...rows.map((row, i) =>
      row
        .split(',')
        .map((x, c) => (c === column ? String(Number(x) + off(i)) : x))
        .join(','),
    ),
  ].join('\n')
}

describe('a column of a log that is off', () => {
  test.each([
    ['windup knee', 'cord', 1, 'drift', 0.1, /joint angle drifts, to 0\.\d+ deg too high in the last row/],
    ['windup knee', 'cord', 0, 'drift', 1, /joint torque drifts, to [\d.]+ N m too high in the last row/],
    ['windup knee', 'cord', 0, 'zero', 1.5, /joint torque reads [\d.]+ N m too high in every row/],
    ['cordFriction knee', 'cord', 0, 'zero', 2, /slack tension reads [\d.]+ N too high in every row/],
    ['weightTorque knee', 'balanced', 1, 'drift', 0.2, /torque without weight drifts, to 0\.\d+ N m too low in the last row/],
  ] as const)('%s of a %s leg, column %i, %s of %f', (log, leg, column, shape, amount, words) => {
    const kind = named(log, leg)
    const readings = Math.max(...kind.readings)
    let found = 0
    let held = 0
    let fields = 0
    for (let stand = 0; stand < STANDS; stand++) {
      const made = kind.make(drawOf(31, stand), readings)
      const result = corrections(LEGS[leg], { [log]: spoilt(made, column, shape, amount) })
      const remark = said(result)
      if (remark === undefined) continue
      if (words.test(remark)) found++
      for (const { path, interval } of result.found) {
        const truth = made.truth[path]
        if (truth === undefined || interval === undefined) continue
        fields++
        if (interval[0] <= truth && truth <= interval[1]) held++
      }
    }
    expect(found, 'stands whose remark names it').toBeGreaterThanOrEqual(STANDS - 2)
    // The interval holds what the log says with the error and without it.
    expect(held, 'fields whose interval holds the truth').toBeGreaterThanOrEqual(fields - 1)
  })

  test('temperatures are off by kelvin', () => {
    const text = readFileSync(new URL('../../examples/stand-logs/heating.csv', import.meta.url), 'utf8')
    const lines = text.trim().split('\n')
    const start = lines.findIndex((line) => /^\d/.test(line))
    const made = { text: lines.slice(start - 1).join('\n'), truth: {} }
    expect(said(corrections(LEGS.cord, { heating: made.text }))).toBeUndefined()
    const message = said(corrections(LEGS.cord, { heating: spoilt(made, 4, 'drift', 5) }))
    expect(message).toMatch(/air temperature drifts, to [\d.]+ K too high in the last row/)
  })
})

test('honest logs are hardly ever said to have a column that is off', () => {
  // Two in a thousand are expected; docs/guide/test-stand.md.
  const kinds = PLAIN_LOGS.filter(({ log }) => /^(cordFriction|pretension|springTorque|weightTorque|efficiency|noLoad|beltPitch)/.test(log))
  const remarks = kinds.flatMap(({ log, leg, readings, make }) =>
    Array.from({ length: 20 }, (_, stand) => said(corrections(LEGS[leg], { [log]: make(drawOf(97, stand), Math.max(...readings)).text }))),
  )
  expect(remarks).toHaveLength(140)
  expect(remarks.filter((remark) => remark !== undefined).length).toBeLessThanOrEqual(1)
})
