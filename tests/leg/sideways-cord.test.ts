import { describe, expect, test } from 'vitest'
import { calculationOf, placeOf } from '../../src/leg/calculation.js'
import {
  assemblyPlan,
  assess,
  checkReserves,
  controlSheet,
  htmlReport,
  legDrawings,
  legNumbers,
  markdownReport,
  standPlan,
  withFields,
} from '../../src/leg/index.js'
import { ownLoad } from '../../src/leg/parts/ball-bearings/loads.js'
import { body } from '../../src/leg/parts/links/values.js'
import { stance } from '../../src/leg/parts/load/stance.js'
import { footForce, stride } from '../../src/leg/parts/motion/values.js'
import { windup } from '../../src/leg/parts/transmission/cord/values.js'
import { shaftForce } from '../../src/leg/parts/transmission/questions.js'
import { corded, driven, held } from './sideways-legs.js'

const verdict = assess(corded)
const calculation = calculationOf(legNumbers(corded))
const at = (names: Parameters<typeof placeOf>[1]) => calculation.instances.implied(placeOf(calculation, { leg: 'leg', ...names })) as never

describe('a cord at the sideways hip', () => {
  test('has every check that the cord of another joint has', () => {
    const other = assess(withFields(corded, { 'joints.hip.drive': corded.joints.sidewaysHip!.drive }), {
      cases: ['walk', 'coldDrop', 'shelf'],
    })
    const of = (joint: string) =>
      other.checks
        .filter((one) => one.joint === joint && /^(cord|tensioner|anchor|drum)\./.test(one.id))
        .map(({ id }) => id)
        .sort()
    expect(of('hip').length).toBeGreaterThan(12)
    expect(of('sidewaysHip')).toEqual(of('hip'))
  })

  test('winds up by the torque that holds the foot at its arm less the weight of the leg, by hand', () => {
    const { tautTension, slackTension } = calculation.get(windup, at({ joint: 'sidewaysHip', event: 'stand', air: 'normal', age: 'new' }))
    const [g, offset, radius] = [9.80665, 0.085, (0.11 + 0.0016) / 2]
    const weight = (['upper', 'lower'] as const).reduce((sum, link) => sum + calculation.get(body, at({ link })).mass * g, 0)
    // The torque about the axis is the difference of the tensions at the drum.
    expect(((tautTension - slackTension) * radius) / (offset * ((24 * g) / 4 - weight))).toBeCloseTo(1, 6)
  })

  test('the foot gives and errs to the side by its windup', () => {
    const line = verdict.foot.error.lines.find(({ name }) => /windup .*at walking torque/.test(name))!
    expect(Math.abs(line.worstPerAxis.y.si)).toBeGreaterThan(1e-4)
    const stiffer = assess(withFields(corded, { 'cords.braid.axialRigidity': '48 kN' }), { cases: ['walk'] })
    expect(stiffer.foot.stiffness!.y.si).toBeGreaterThan(verdict.foot.stiffness!.y.si)
  })

  test.each([
    ['joints.sidewaysHip.drive.pretension', '200 N', /cord\.(slack|shelf) sidewaysHip/],
    ['joints.sidewaysHip.drive.drum.grooveDiameter', '90 mm', /cord\.(slack|working|peak) sidewaysHip/],
    ['links.hipOffset', '100 mm', /cord\.slack sidewaysHip/],
  ])('%s of %s lowers what it must', (path, worse, keys) => {
    const cases = ['walk', 'walkAcrossHot', 'coldDrop', 'shelf'].filter((id) => verdict.cases.some((one) => one.id === id)) as never
    const [before, after] = [
      checkReserves(legNumbers(corded), cases),
      checkReserves(legNumbers(withFields(corded, { [path]: worse })), cases),
    ]
    const lowered = [...before].filter(([key, reserve]) => keys.test(key) && (after.get(key) as number) < reserve)
    expect(lowered.length).toBeGreaterThan(0)
  })

  test('plans, sheets and drawings follow, and name it in words', () => {
    const plan = assemblyPlan(corded)
    expect(plan.cuts.cords.map(({ joint }) => joint)).toEqual(['sidewaysHip'])
    expect(plan.steps.join(' ')).toMatch(/Lay the cord of the sideways hip with the joint held at .* \(seen from its front\)/)
    expect(standPlan(corded).measurements.map(({ log }) => log)).toEqual(
      expect.arrayContaining(['cordFriction sidewaysHip', 'windup sidewaysHip']),
    )
    expect(controlSheet(corded).joints.sidewaysHip).toBeDefined()
    const drawings = legDrawings(verdict, { style: 'page' })
    expect(drawings.map(({ id }) => id)).toEqual(expect.arrayContaining(['cord-drive-sidewaysHip', 'groove-sidewaysHip']))
    expect(drawings.find(({ id }) => id === 'cord-drive-sidewaysHip')!.title).toBe('Cord drive of the sideways hip, seen from its front')
    const words = (html: string) => html.replaceAll(/<(script|style)[\s\S]*?<\/\1>/g, ' ').replaceAll(/<[^>]*>/g, ' ')
    expect(words(htmlReport(verdict, { drawings })).match(/.{0,60}(?<![.-])\bsidewaysHip\b(?!\.).{0,30}/g) ?? []).toEqual([])
    expect(markdownReport(verdict)).toContain('sideways hip: walking needs')
  })
})

describe('the bearings of the sideways hip', () => {
  test('share the force of the foot, its moments and the pull of the cord, by hand', () => {
    const names = { event: 'slopeAcross', air: 'normal', age: 'new' } as const
    const { height, lateral, tractionLowest, tractionHighest } = calculation.get(stance, at(names))
    const upright = calculation.get(footForce, at(names))
    const pull = calculation.get(shaftForce, at({ ...names, joint: 'sidewaysHip' }))
    const ahead = Math.sqrt(calculation.get(stride, at(names)).farthest ** 2 - height ** 2)
    const along = upright * Math.max(Math.abs(tractionLowest), Math.abs(tractionHighest))
    const [spacing, overhang, offset] = [0.06, 0.03, 0.085]
    // Moments about the farther bearing, upright and sideways, over the distance of both.
    const lever = spacing + overhang + ahead
    const z = (upright * lever + along * height) / spacing
    const y = (upright * lateral * lever + along * offset) / spacing
    const load = Math.sqrt(z * z + y * y) + (pull * (spacing + overhang)) / spacing
    expect(lateral).toBeGreaterThan(0)
    expect(calculation.get(ownLoad, at({ ...names, pivot: 'sidewaysHip' })) / load).toBeCloseTo(1, 9)
  })

  test('are checked, and fail where they are too thin for the robot', () => {
    const thin = assess(withFields(driven, { 'bearings.side': { ...driven.bearings.side!, size: '12x21x5', own: undefined } }), {
      cases: ['trot'],
    })
    const found = thin.checks.find(({ id }) => id === 'sidewaysBearing.static')!
    expect(found.reserve).toBeLessThan(1)
    expect(found.sentence).toContain('bearing of the sideways hip')
    expect(thin.passes).toBe(false)
  })

  test.each([
    ['bearings.side.spacing', '40 mm'],
    ['bearings.side.overhang', '60 mm'],
    ['robot.mass', '26 kg'],
    ['gaits.walk.stepLength', '160 mm'],
    ['joints.sidewaysHip.drive.pretension', '400 N'],
  ])('%s of %s raises no reserve of theirs and lowers one', (path, worse) => {
    const cases = ['walk', 'drop'] as const
    const [before, after] = [
      checkReserves(legNumbers(corded), cases),
      checkReserves(legNumbers(withFields(corded, { [path]: worse })), cases),
    ]
    const own = [...before].filter(([key]) => key.startsWith('sidewaysBearing.'))
    expect(own.length).toBeGreaterThan(0)
    expect(own.filter(([key, reserve]) => (after.get(key) as number) > reserve * (1 + 1e-9))).toEqual([])
    expect(own.some(([key, reserve]) => (after.get(key) as number) < reserve * (1 - 1e-6))).toBe(true)
  })

  test('of a held sideways hip are not required, and checked where they are given', () => {
    expect(verdict.checks.map(({ id }) => id)).toContain('sidewaysBearing.static')
    const bare = assess(held, { cases: ['walk'] })
    expect(bare.notEvaluated).toContainEqual({ id: 'sidewaysBearing.static', why: 'no ball bearing is given at the sideways hip' })
  })
})
