// Steps of learning by themselves: how a log is read, which law of a decay is taken, what a display of an instrument does to a reading, what is planned.
import { describe, expect, test } from 'vitest'
import { corrections } from '../../src/leg/learning/corrections.js'
import { INSTRUMENTS } from '../../src/leg/learning/instruments.js'
import { readLog } from '../../src/leg/learning/logs.js'
import { COLUMNS, type MeasurementId } from '../../src/leg/learning/measurements.js'
import { modelOf } from '../../src/leg/learning/models.js'
import { nextMeasurements } from '../../src/leg/learning/next.js'
import { plannedRows } from '../../src/leg/learning/planned.js'
import { roundedBand } from '../../src/leg/learning/rounded.js'
import { benchLeg } from '../../src/leg/plans/bench.js'
import { LEGS } from './plain-stands.js'

const csv = (head: string, rows: readonly (readonly (number | string)[])[]) => `${head}\n${rows.map((row) => row.join(',')).join('\n')}\n`
const [cord, belt] = [benchLeg(LEGS.cord), benchLeg(LEGS.belt)]

describe('a log', () => {
  const rows = (text: string) => readLog('pretension knee', text, COLUMNS.pretension)
  test('says how its cells are separated only where that is not by commas', () => {
    const [plain, semicolons, decimals, tabs] = [
      rows('time [day],tension [N]\n1,280.5\n2,279\n'),
      rows('time [day];tension [N]\n1;280.5\n2;279\n'),
      rows('time [day];tension [N]\n1;280,5\n2;279\n'),
      rows('time [day]\ttension [N]\n1\t280.5\n2\t279\n'),
    ]
    expect(plain.remarks).toEqual([])
    expect([semicolons, decimals, tabs].map(({ remarks }) => remarks.map(({ what, line, message }) => [what, line, message]))).toEqual([
      [['format', 1, 'cells are separated by semicolons']],
      [['format', 1, 'cells are separated by semicolons, with a decimal comma']],
      [['format', 1, 'cells are separated by tabs']],
    ])
    for (const log of [semicolons, decimals, tabs]) expect(log.rows).toEqual(plain.rows)
  })
})

describe('the decay of a tension', () => {
  // Times spread evenly over the decades of a month, so that the laws differ.
  const days = [0.042, 0.1, 0.25, 0.5, 1, 3, 7, 14, 21, 30]
  const HOURS = 8766
  const log = (left: (day: number) => number, at = days) =>
    csv(
      'time [day],tension [N]',
      at.map((day, i) => [day, (280 * left(day) + 0.05 * (i % 2)).toFixed(2)]),
    )
  const power = (year: number) => (day: number) => year ** (Math.log(Math.max(1, 24 * day)) / Math.log(HOURS))
  const learnt = (text: string) => corrections(LEGS.cord, { 'pretension knee': text })
  const left = ({ found }: ReturnType<typeof learnt>) => found.find(({ path }) => path === 'cords.braid.pretensionLeft')!
  const said = ({ remarks }: ReturnType<typeof learnt>) => remarks.map(({ message }) => message)

  test.each([0.7, 0.8])('by a power law that leaves %s is read by that law, and the other is not offered', (year) => {
    const found = learnt(log(power(year)))
    expect(left(found).value / year).toBeCloseTo(1, 2)
    expect(said(found).filter((text) => text.includes('equal losses per decade'))).toEqual([])
  })

  test('in two stages is said to be so from ten readings on; with fewer its later half is no log', () => {
    // A cord that beds in on the first day and hardly relaxes afterwards.
    const stages = (day: number) => (day < 1.5 ? 1 - 0.06 * Math.log10(24 * Math.max(day, 1 / 24)) : 0.917 - 0.002 * Math.log10(day))
    const ten = said(learnt(log(stages)))
    expect(ten.filter((text) => /later half of the readings gives .*relaxes in stages/.test(text)).length).toBeGreaterThan(0)
    const eight = said(learnt(log(stages, [0.042, 0.1, 0.5, 1, 3, 7, 14, 30])))
    expect(eight.filter((text) => text.includes('later half'))).toEqual([])
  })

  test('that follows one law has no remark without words', () => {
    const found = learnt(log(power(0.8)))
    for (const text of said(found)) expect(text).toMatch(/\w+ \w+/)
    expect(said(found).filter((text) => text.includes('in stages'))).toEqual([])
  })

  test('of the other joint’s cord is said to be of the other joint', () => {
    // The hip's cord of this leg has another pretension than that of the knee.
    const other = { ...LEGS.cord, joints: { ...LEGS.cord.joints } }
    const [hip, knee] = (['hip', 'knee'] as const).map(
      (joint) => (other.joints[joint].drive as unknown as { pretension: { si: number } }).pretension.si,
    )
    const from = hip! < knee! ? 'hip' : 'knee'
    const text = csv(
      'time [day],tension [N]',
      days.map((day) => [day, (Math.max(hip!, knee!) * power(0.8)(day)).toFixed(2)]),
    )
    const { moved, remarks } = corrections(LEGS.cord, { [`pretension ${from}`]: text })
    const told = JSON.stringify([moved.map(({ explanations }) => explanations), remarks])
    expect(hip).not.toBe(knee)
    expect(told).toContain('the log is of the other joint')
  })
})

describe('an instrument that reads two per cent high', () => {
  const accuracy = (id: MeasurementId) => Object.fromEntries(Object.keys(INSTRUMENTS[id]).map((name) => [name, 0.01]))
  test.each([
    ['slipTorque', cord, 'torque gain'],
    ['slipTorque', belt, 'torque gain'],
    ['pretension', cord, 'force gain'],
  ] as const)('shows two per cent more: %s', (id, leg, name) => {
    const model = modelOf(leg, `${id} knee`, id, 'knee', accuracy(id))!
    const { rows } = plannedRows(leg, id, 'knee', model)
    const start = new Map(model.parameters.map((one) => [one.id, one.start]))
    const gain = model.parameters.find((one) => one.id === `${id} knee: ${name}`)!
    const read = (of: number) => Array.from(model.predict((key) => (key === gain.id ? of : start.get(key)!), rows))
    expect(rows.length).toBeGreaterThanOrEqual(5)
    for (const [i, high] of read(0.02).entries()) expect(high / read(0)[i]!).toBeCloseTo(1.02, 12)
  })
})

describe('what to measure next', () => {
  const ofJoints = ['windup', 'pretension', 'pullOut', 'freePlay', 'cordFriction'].flatMap((id) => [`${id} hip`, `${id} knee`])
  const todo = (...done: string[]) => nextMeasurements(cord, [], [...ofJoints, ...done], ['stand']).map((one) => one.todo)
  test('are the logs of motors that are not there; one that was measured at one joint is not asked for again', () => {
    expect(new Set(todo())).toEqual(new Set(['log torqueConstant', 'log noLoad', 'log heating']))
    expect(new Set(todo('noLoad knee', 'heating'))).toEqual(new Set(['log torqueConstant']))
  })
  test('is nothing that is known already', () => {
    const first = nextMeasurements(cord, [], [], ['stand']).map((one) => one.todo)
    expect(new Set(first).size).toBe(first.length)
    for (const one of first) expect(ofJoints.map((log) => `log ${log}`)).toContain(one)
    for (const one of first) expect(todo()).not.toContain(one)
  })
})

test('what an error of a thousand leaves is rounded to hundreds', () => {
  const interval = [22_300, 26_300] as const
  expect(roundedBand({ value: 24_317.2, interval, spread: [22_251, 26_349] } as never)).toEqual([22_200, 24_300, 26_400])
})
