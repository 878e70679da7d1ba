import { describe, expect, test } from 'vitest'
import { calculationOf, placeOf } from '../../src/leg/calculation.js'
import { assess, assessRobot, checkReserves, legNumbers, markdownReport, withFields } from '../../src/leg/index.js'
import { body } from '../../src/leg/parts/links/values.js'
import { driveLoad } from '../../src/leg/parts/motion/values.js'
import { heat } from '../../src/leg/parts/motors/heat.js'
import { sag } from '../../src/leg/parts/supply/values.js'
import { driven, held } from './sideways-legs.js'

const calculation = calculationOf(legNumbers(driven))
const at = (names: Parameters<typeof placeOf>[1]) => calculation.instances.implied(placeOf(calculation, { leg: 'leg', ...names })) as never

describe('a driven sideways hip', () => {
  test('holds the foot force at its arm less the weight of the leg, by hand', () => {
    const [g, offset] = [9.80665, 0.085]
    const weight = (['upper', 'lower'] as const).reduce((sum, link) => sum + calculation.get(body, at({ link })).mass * g, 0)
    const foot = (24 * g) / 4
    const torque = offset * (foot - weight)
    const where = at({ joint: 'sidewaysHip', event: 'stand', air: 'normal' })
    expect(Math.abs(calculation.get(driveLoad, where) / torque - 1)).toBeLessThan(1e-9)
    const { motorTorque, windingMean, winding, mount } = calculation.get(heat, where)
    expect(Math.abs(motorTorque / (torque / (16 * 0.85)) - 1)).toBeLessThan(1e-9)
    // It stands still, also while the leg walks: its hottest phase is the worst one.
    expect(winding - mount).toBeCloseTo(2 * (windingMean - mount), 6)
    const walking = calculation.get(heat, at({ joint: 'sidewaysHip', event: 'walk', air: 'normal' }))
    expect(walking.winding - walking.mount).toBeCloseTo(2 * (walking.windingMean - walking.mount), 6)
  })

  test('has the checks of its motor, controller, plate and gearbox instead of a torque limit', () => {
    const verdict = assess(driven)
    const own = verdict.checks.filter(({ joint }) => joint === 'sidewaysHip').map(({ id }) => id)
    for (const id of ['gearbox.rated', 'gearbox.peak', 'motor.winding', 'motor.plate', 'motor.current', 'controller.heat', 'leg.range'])
      expect(own).toContain(id)
    expect(own).not.toContain('controller.delay')
    expect(verdict.notEvaluated).toContainEqual({ id: 'sidewaysHip.hold', why: 'a motor of its own drives the sideways hip' })
    expect(verdict.checks.filter(({ reserve, requiredReserve }) => reserve < requiredReserve).map(({ sentence }) => sentence)).toEqual([])
    expect(verdict.checks.find(({ id, joint }) => id === 'gearbox.rated' && joint === 'sidewaysHip')!.sentence).toContain('(sideways hip)')
    expect(markdownReport(verdict)).toContain('gearbox, sideways hip')
  })

  test('draws on the supply, and every other number of the leg stays', () => {
    const other = calculationOf(legNumbers(held))
    const place = other.instances.implied(placeOf(other, { leg: 'leg', event: 'stand', air: 'normal' })) as never
    expect(calculation.get(sag, at({ event: 'stand', air: 'normal' })).current).toBeGreaterThan(other.get(sag, place).current)
    const [before, after] = [checkReserves(legNumbers(held), ['walk', 'hotDrop']), checkReserves(legNumbers(driven), ['walk', 'hotDrop'])]
    const moved = [...before].filter(([key, reserve]) => after.get(key) !== reserve && after.has(key)).map(([key]) => key)
    // The sagging supply slows the motors.
    expect(moved.filter((key) => !/^(supply|motor\.(speed|swing))/.test(key))).toEqual([])
  })

  test.each([
    ['joints.sidewaysHip.drive.ratedTorque', '24 N m'],
    ['joints.sidewaysHip.drive.efficiency', 0.6],
    ['links.hipOffset', '95 mm'],
    ['robot.mass', '25 kg'],
    ['plates.sidePlate.thickness', '4 mm'],
  ])('nothing bad raises a reserve: %s of %s', (path, worse) => {
    const cases = ['stand', 'walk', 'hotTrot', 'drop'] as const
    const before = checkReserves(legNumbers(driven), cases)
    const after = checkReserves(legNumbers(withFields(driven, { [path]: worse })), cases)
    const rose = [...before].filter(([key, reserve]) => key.endsWith('sidewaysHip') && (after.get(key) as number) > reserve * (1 + 1e-9))
    expect(rose).toEqual([])
  })

  test('what is not calculated is rejected: a cord, no bearings of its own, and the bus of the whole robot', () => {
    expect(() => assess(withFields(held, { 'joints.sidewaysHip.bearings': 'hipBearings' }))).not.toThrow()
    const { bearings: _, ...bare } = driven.joints.sidewaysHip!
    const { side: __, ...pairs } = driven.bearings
    expect(() => assess(withFields(driven, { 'joints.sidewaysHip': bare, bearings: pairs }))).toThrow(
      /joints.sidewaysHip.bearings .*must turn in bearings of its own/,
    )
    expect(() => assessRobot(driven)).toThrow(/joints.sidewaysHip.drive.kind .*must be held/)
  })
})
