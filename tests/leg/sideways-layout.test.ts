import { describe, expect, test } from 'vitest'
import { calculationOf, placeOf } from '../../src/leg/calculation.js'
import { assess, assessRobot, checkReserves, legNumbers, markdownReport, robotText, withFields } from '../../src/leg/index.js'
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
  })
})

describe('a robot whose sideways hips are driven', () => {
  const [robot, held4] = [assessRobot(driven), assessRobot(held)]
  const [g, offset] = [9.80665, 0.085]

  test('names the torque of the third motor of each leg', () => {
    expect(robotText(robot)).toMatch(
      /left front: peak force, motor torque hip, knee, sideways hip [\d.]+ N, [\d.]+ N m, [\d.]+ N m, [\d.]+ N m/,
    )
  })

  test('holds each leg sideways: half of the weight at its arm less the weight of the leg, by hand', () => {
    const weight = (['upper', 'lower'] as const).reduce((sum, link) => sum + calculation.get(body, at({ link })).mass * g, 0)
    const torque = offset * ((24 * g) / 2 - weight)
    for (const { motorTorque } of robot.gaits.walk.corners) {
      // The rest speeds the links up and down as they swing.
      expect(motorTorque.sidewaysHip!.si / (torque / (16 * 0.85))).toBeGreaterThan(0.8)
      expect(motorTorque.sidewaysHip!.si / (torque / (16 * 0.85))).toBeLessThan(1.05)
    }
    expect(held4.gaits.walk.corners[0]!.motorTorque.sidewaysHip).toBeUndefined()
  })

  test('draws and heats more by the third motors: walking, trotting and standing', () => {
    for (const id of ['walk', 'trot'] as const) {
      expect(robot.gaits[id].motorHeat.si).toBeGreaterThan(held4.gaits[id].motorHeat.si)
      expect(robot.gaits[id].meanPower.si).toBeGreaterThan(held4.gaits[id].meanPower.si)
    }
    expect(robot.stand.motorHeat.si).toBeGreaterThan(held4.stand.motorHeat.si)
  })

  test('steps to the side and turns, alike to the left and to the right', () => {
    const way = (options: Parameters<typeof assessRobot>[1]) => assessRobot(driven, options).gaits.walk
    const [left, right] = [way({ sideways: '0.05 m/s' }), way({ sideways: '-0.05 m/s' })]
    expect(left.feet.legs[0]!.heading.si).toBeCloseTo(Math.atan2(0.05, 0.25), 9)
    expect(left.feet.legs[0]!.stanceSweep.si / robot.gaits.walk.feet.legs[0]!.stanceSweep.si).toBeCloseTo(Math.hypot(1, 0.2), 9)
    // What the left legs do on the way to the left, the right ones do on the way to the right.
    expect(left.corners[0]!.motorTorque.sidewaysHip!.si).toBeCloseTo(right.corners[1]!.motorTorque.sidewaysHip!.si, 6)
    expect(left.meanPower.si).toBeCloseTo(right.meanPower.si, 3)
    const turning = way({ turnRate: '0.3 rad/s' })
    // Turning to the left, the front feet step to the left and the hind feet to the right.
    expect(turning.feet.legs[0]!.heading.si).toBeGreaterThan(0.1)
    expect(turning.feet.legs[2]!.heading.si).toBeLessThan(-0.1)
  })

  test('a leg without that motor does not step to the side', () => {
    expect(() => assessRobot(held, { sideways: '0.05 m/s' })).toThrow(/sideways is 0.05.*no motor drives the sideways hip/)
    expect(() => assessRobot(held, { turnRate: '0.1 rad/s' })).toThrow(/turnRate is 0.1.*no motor drives the sideways hip/)
  })
})
