import { describe, expect, test } from 'vitest'
import { assess, type CaseId, htmlReport, type Leg, markdownReport, withFields } from '../../src/leg/index.js'
import { besideLinks, singleBearings } from './rod-bearing-legs.js'

const CASES = ['drop', 'season'] as readonly CaseId[]
const pushed = (leg: Leg) => withFields(leg, { 'loadCases.events.drop.lateral': 0.25, 'gaits.walk.lateral': 0.15 })
const offset = (leg: Leg, planeOffset: string) => withFields(leg, { 'joints.knee.through.planeOffset': planeOffset })
const reserves = (leg: Leg) =>
  new Map(assess(leg, { cases: CASES }).checks.map((one) => [`${one.id} ${one.joint ?? ''}`.trim(), one.reserve]))

describe('a rod beside the links and a foot pushed to the side act together', () => {
  const near = reserves(offset(pushed(singleBearings), '1 mm'))
  const far = reserves(offset(pushed(singleBearings), '30 mm'))

  test.each([
    'pin.bending knee',
    'pin.fatigue knee',
    'pin.shear knee',
    'pin.eyeEdge knee',
    'boss.bearing knee',
    'boss.mouth knee',
    'boss.prised knee',
    'upperLink.sideways',
    'upperLink.sidewaysFatigue',
  ])('%s', (id) => {
    expect(near.get(id)).toBeDefined()
    expect(far.get(id)!).toBeLessThan(0.97 * near.get(id)!)
  })

  test('the rod alone tilts the knee on its pin and bends the upper link', () => {
    const { checks, notEvaluated } = assess(offset(singleBearings, '30 mm'), { cases: CASES })
    const ids = checks.map(({ id, joint }) => `${id} ${joint ?? ''}`.trim())
    expect(ids).toEqual(expect.arrayContaining(['boss.prised knee', 'pin.eyeEdge knee', 'upperLink.sidewaysFatigue']))
    expect(notEvaluated.find(({ id }) => id === 'lowerLink.sideways')?.why).toBe('no force pushes the foot sideways in these load cases')
  })
})

test('a knee on ball bearings moves the foot sideways by their play, worked by hand', () => {
  const { foot } = assess(besideLinks, { cases: ['slopeAcross'] })
  // A pair 13 mm apart, 8 µm of clearance, no play in the seat in ordinary air; 180 mm of lower link.
  expect(foot.sideways.play!.si).toBeCloseTo((8e-6 / 0.013) * 0.18, 12)
})

test('a pin without a boss has no check of a boss, and its leg has a report', () => {
  const leg = withFields(besideLinks, { 'joints.knee.boss': undefined, 'bosses.kneeBoss': undefined })
  const verdict = assess(leg, { cases: ['stand', 'drop'] })
  expect(verdict.checks.filter(({ id, joint }) => /^boss\./.test(id) && joint === 'knee')).toEqual([])
  expect(() => htmlReport(verdict)).not.toThrow()
})

test('bearings that do not fit in the eye of their link are rejected', () => {
  const apart = (pairSpacing: string) => withFields(besideLinks, { 'pins.jointPin.bearing.pairSpacing': pairSpacing })
  expect(() => apart('15 mm')).not.toThrow()
  expect(() => apart('16 mm')).toThrow(/pins.jointPin.lugThickness is 20 mm; must hold its ball bearings, which take 21 mm along the pin/)
})

test('no report names a size that the document rejects as the most that helps', () => {
  const hard = withFields(besideLinks, { 'loadCases.events.drop.lateral': 0.6 })
  const line = markdownReport(assess(hard, { cases: ['drop'] })).match(/bearing on the joint pin, knee, is dented by its load.*/)?.[0]
  // Of a change that suffices the size would stand bold.
  expect(line).toMatch(/\(fails\): [^*]+$/)
  expect(line).not.toContain('pair spacing')
})
