import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { assess, describeLeg, standPlan, standText, withFields } from '../../src/leg/index.js'
import { corrections } from '../../src/leg/learning/corrections.js'
import { legNumbers } from '../../src/leg/numbers.js'
import { withNumber } from '../../src/leg/plans/information.js'
import { driveMeasurements } from '../../src/leg/plans/stand-drive.js'
import { geared } from './gear-legs.js'

const leg = describeLeg(readFileSync(new URL('./legs/workbench.yaml', import.meta.url), 'utf8'))
const plan = standPlan(leg)
const of = (log: string, from = plan) => from.measurements.find((one) => one.log === log)!

describe('predictions against calculations by hand', () => {
  test('friction: Euler and Eytelwein over half a turn, at the three frictions of the specification', () => {
    const { predicted, band } = of('cordFriction knee')
    expect([band[0], predicted, band[1]].map(({ si }) => si)).toEqual(
      [0.08, 0.14, 0.2].map((mu) => expect.closeTo(Math.exp(mu * Math.PI), 12)),
    )
  })

  test('pull-out: the share that a splice keeps of 2.3 kN', () => {
    const own = standPlan(withFields(leg, { 'drives.hip.endRetention': [0.7, 0.8, 0.9] }))
    const { predicted, band } = of('pullOut hip', own)
    expect([band[0], predicted, band[1]].map((x) => x.in('N' as never))).toEqual([1610, 1840, 2070].map((x) => expect.closeTo(x, 8)))
  })

  test('pretension after a week: the same loss in every decade of time from an hour to a year', () => {
    const a = (1 / 0.9 - 1) / Math.log10(365.25 * 24)
    expect(of('pretension hip').predicted.si).toBeCloseTo(185 / (1 + a * Math.log10(7 * 24)), 9)
  })

  test('windup: softer than free spans, stiffer than spans and arcs that stretch without friction', () => {
    const [R, r, C] = [0.0448, 0.008, 0.118]
    const theta = Math.PI + 2 * Math.asin((R + r) / C)
    const span = Math.sqrt(C * C - (R + r) ** 2)
    const at = (free: number) => (185 * R) / ((2 * 24e3 * R * R) / free)
    const { predicted } = of('windup knee')
    expect(predicted.si).toBeGreaterThan(at(span))
    expect(predicted.si).toBeLessThan(at(span + (r * (theta + 6 * Math.PI)) / 2 + (R * theta) / 2))
  })

  test('heating: a fifth more or less carried off moves the rise by less than that, since part of the way is metal and print', () => {
    const { predicted, band } = of('heating')
    expect(band[1].si / predicted.si).toBeGreaterThan(1.1)
    expect(band[1].si / predicted.si).toBeLessThan(1 / 0.8)
    expect(band[0].si / predicted.si).toBeGreaterThan(1 / 1.2)
    expect(band[0].si / predicted.si).toBeLessThan(0.95)
  })
})

test('the order is that of information for an hour of work, and what moves no check comes last', () => {
  const perHour = plan.measurements.map((one) => one.informationPerHour)
  expect(perHour).toEqual([...perHour].sort((a, b) => b - a))
  expect(plan.measurements.at(-1)!.information).toBe(0)
  expect(perHour[0]).toBeGreaterThan(0)
  for (const { information, informationPerHour, handsOn, elapsed, fixture, cost, caution } of plan.measurements) {
    expect(informationPerHour * handsOn.in('h')).toBeCloseTo(information, 12)
    expect(elapsed.si).toBeGreaterThanOrEqual(handsOn.si)
    expect(Math.min(fixture.length, cost.length, caution.length)).toBeGreaterThan(5)
  }
})

test('the torque of a motor: a sinusoidal motor with its catalogue constant, five per cent either way', () => {
  const { predicted, band } = of('torqueConstant')
  // Three halves of peak phase flux linkage: 1.5 / sqrt(3) of the line-to-line constant, at a quarter of 45 A.
  const torque = (1.5 / Math.sqrt(3) / 110) * (60 / (2 * Math.PI)) * 0.25 * 45
  expect(predicted.si).toBeCloseTo(torque, 9)
  expect(band[1].si / predicted.si).toBeCloseTo(1 / 0.95, 9)
  expect(of('noLoad').predicted.si).toBeCloseTo(0.6, 12)
})

test('a value that is known tells nothing', () => {
  const known = withFields(leg, { 'drives.hip.friction': [0.14, 0.14, 0.14], 'cords.braid.pretensionLeft': [0.9, 0.9, 0.9] })
  expect(of('cordFriction hip', standPlan(known)).information).toBe(0)
  expect(of('pretension hip', standPlan(known)).information).toBe(0)
  expect(of('pretension hip').information).toBeGreaterThan(0)
})

test('the check that moves most does move, as assess says', () => {
  const { moves, corrects } = of('pretension knee')
  const [id, joint] = moves!.split(' ') as [string, string?]
  const reserve = (share: number) =>
    assess(withFields(leg, { [corrects!]: [share, share, share] })).checks.find((one) => one.id === id && (one.joint ?? joint) === joint)!
      .reserve
  expect(reserve(0.96)).not.toBeCloseTo(reserve(0.8), 3)
})

test('every log starts with the header that learn reads', () => {
  for (const { csv, log } of plan.measurements) {
    expect(csv).toMatch(/\[.+\]/)
    expect(corrections(leg, { [log]: csv }).remarks).toContainEqual(expect.objectContaining({ what: 'few readings' }))
  }
})

test('the page carries cautions, steps and headers', () => {
  const text = standText(plan)
  for (const part of ['Caution', 'nobody in line', 'slack tension [N],taut tension [N],wrap angle [turn]', 'information'])
    expect(text).toContain(part)
})

test('a gearbox is wound up on the stand where its stiffness is stated, and only there', () => {
  const ids = (one: typeof geared) => driveMeasurements(one, legNumbers(one), 'hip').map(({ id }) => id)
  expect(ids(geared)).toContain('windup')
  expect(ids(withFields(geared, { 'joints.hip.drive.stiffness': undefined }))).not.toContain('windup')
})

test('a measured value that the document left out becomes a range without width, but for the rate of a spring', () => {
  const x = legNumbers(geared)
  expect(withNumber(x, 'robot.play', 3)).toMatchObject({ robot: { play: { low: 3, typical: 3, high: 3 } } })
  expect(withNumber(x, 'robot.rate', 3)).toMatchObject({ robot: { rate: 3 } })
  expect(withNumber(x, 'robot.mass', 3).robot.mass).toBe(3)
})
