import { describe, expect, test } from 'vitest'
import { calculationOf, placeOf } from '../../src/leg/calculation.js'
import { assess, checkReserves, legNumbers, markdownReport, strideTrajectory, withFields } from '../../src/leg/index.js'
import { legModel } from '../../src/leg/leg-model.js'
import { kneeRotor, rotorAtJoint } from '../../src/leg/parts/motors/rotor.js'
import { contactRatio, mesh, pinionRootStress } from '../../src/leg/parts/transmission/gear/values.js'
import { freePlay, shaftForce } from '../../src/leg/parts/transmission/questions.js'
import { caseState } from '../../src/leg/what-if.js'
import hand from '../oracles/leg-gears.json' with { type: 'json' }
import { geared } from './gear-legs.js'

const off = (one: number, other: number) => Math.abs(one / other - 1)
const calculation = calculationOf(legNumbers(geared))
const at = (names: Parameters<typeof placeOf>[1]) => calculation.instances.implied(placeOf(calculation, { leg: 'leg', ...names })) as never

describe('against the equilibrium of pinion and wheel (oracles/leg-gears.py)', () => {
  test.each(['stand', 'dropEnd'] as const)('forces and motors: %s', (event) => {
    const where = at({ joint: 'knee', event, air: 'normal', age: 'new' })
    const found = hand[event]
    expect(off(calculation.get(mesh, where).normal, found.normal)).toBeLessThan(1e-9)
    expect(off(calculation.get(shaftForce, where), found.axis)).toBeLessThan(1e-9)
    expect(off(calculation.get(pinionRootStress, where), found.pinionRoot)).toBeLessThan(1e-9)
    const { hip, knee } = caseState(legModel(legNumbers(geared)), event === 'stand' ? 'stand' : 'landing').joints
    if (event === 'stand') {
      expect(off(hip.heat.motorTorque, found.hipMotor)).toBeLessThan(1e-9)
      expect(off(knee.heat.motorTorque, found.kneeMotor)).toBeLessThan(1e-9)
    }
  })

  test('contact ratio, free play, and inertia from kinetic energies', () => {
    const knee = at({ joint: 'knee' })
    expect(off(calculation.get(contactRatio, knee), hand.contactRatio)).toBeLessThan(1e-12)
    expect(off(calculation.get(freePlay, knee), hand.freePlay)).toBeLessThan(1e-12)
    const rotor = calculation.get(kneeRotor, knee)
    for (const part of ['hip', 'knee', 'coupling'] as const) expect(off(rotor[part], hand.rotor[part])).toBeLessThan(1e-12)
    expect(off(calculation.get(rotorAtJoint, at({ joint: 'hip' })), hand.hipInertia)).toBeLessThan(1e-12)
  })
})

test('power: motor torque times its speed is that of the joint over the efficiency, less what turns and drags', () => {
  const { knee } = caseState(legModel(legNumbers(geared)), 'walk').joints
  const { ratio, efficiency } = knee.transmission
  expect(knee.heat.motorSpeed).toBeCloseTo(knee.motion.speed * ratio, 12)
  const withoutDrag = Math.abs(knee.motion.shaftTorque) / (ratio * efficiency)
  expect(knee.heat.motorTorque).toBeGreaterThan(withoutDrag)
  expect(knee.heat.motorTorque * knee.heat.motorSpeed).toBeGreaterThan(Math.abs(knee.motion.torque) * knee.motion.speed)
})

test('the trajectory of a stride turns the motor of the knee against it, and that of the hip with it', () => {
  const rows = strideTrajectory(geared, { rate: '50 Hz' })
  const column = (name: string) => (rows.column(name) as { readonly values: Float64Array }).values
  for (const [joint, ratio] of [
    ['hip', 6],
    ['knee', -64 / 15],
  ] as const) {
    const [drum, motor] = [column(`drum angle ${joint}`), column(`motor angle ${joint}`)]
    expect(Math.max(...Array.from(drum, (x, i) => Math.abs(motor[i]! - ratio * x)))).toBeLessThan(1e-12)
    const [torque, atMotor] = [column(`drum torque ${joint}`), column(`motor torque ${joint}`)]
    // Power is the same on both sides, without friction.
    expect(Math.max(...Array.from(torque, (x, i) => Math.abs(atMotor[i]! * ratio - x)))).toBeLessThan(1e-12)
  }
})

describe('a leg with a gearbox and a pair of gears', () => {
  test('passes, and lists the flanks among the checks that are not made until their strength is given', () => {
    const verdict = assess(geared)
    expect(verdict.meetsTarget).toBe(true)
    expect(verdict.notEvaluated).toContainEqual({
      id: 'gear.contact',
      why: 'the pressure that the flanks bear (contactStrength of the drive) is not given',
    })
    const text = markdownReport(verdict)
    expect(text).toContain('free play of the drives')
    const known = assess(withFields(geared, { 'joints.knee.drive.contactStrength': '60 MPa' }), { cases: ['season'] })
    const contact = known.checks.find(({ id }) => id === 'gear.contact')!
    expect(contact.demand.in('MPa')).toBeGreaterThan(10)
    expect(contact.reserve).toBeGreaterThan(0)
  })

  test('a wheel that does not reduce is rejected', () => {
    expect(() => withFields(geared, { 'joints.knee.drive.wheelTeeth': 15 })).toThrow(
      /wheelTeeth is 15; must be more than pinionTeeth \(15\)/,
    )
  })

  test('a pinion of the motor that is hot from a walk is weaker in a drop', () => {
    const weak = withFields(geared, { 'joints.knee.drive.pinionMaterial': 'ASA', 'motors.pancake.windingToMount': '1 K/W' })
    const strength = (x: typeof geared) =>
      assess(x, { cases: ['hotDrop'] }).checks.find(({ id }) => id === 'gear.pinionBending')!.capacity.si
    const hotter = withFields(weak, { 'motors.pancake.terminalResistance': '0.6 ohm' })
    expect(strength(hotter)).toBeLessThan(strength(weak))
  })
})

describe('nothing bad raises a reserve', () => {
  const cases = ['stand', 'walk', 'hotTrot', 'hotDrop', 'stall', 'season'] as const
  const before = checkReserves(legNumbers(geared), cases)
  test.each([
    ['joints.knee.drive.faceWidth', '10 mm', 'gear.'],
    ['joints.knee.drive.module', '0.75 mm', 'gear.'],
    ['joints.knee.drive.wheelMaterial', 'TPU 95A', 'gear.wheel'],
    ['joints.knee.drive.efficiency', 0.8, ''],
    ['joints.hip.drive.efficiency', 0.8, ''],
    ['joints.hip.drive.ratedTorque', '2 N m', ''],
    ['joints.hip.drive.peakTorque', '5 N m', ''],
    ['joints.hip.drive.highestSpeed', '2500 rpm', ''],
    ['joints.hip.drive.radialLoad', '100 N', ''],
    ['joints.hip.drive.mass', '0.2 kg', ''],
    ['robot.mass', '2.6 kg', ''],
  ])('%s of %s', (path, worse, among) => {
    const after = checkReserves(legNumbers(withFields(geared, { [path]: worse })), cases)
    const rose = [...before].filter(([key, reserve]) => key.startsWith(among) && (after.get(key) as number) > reserve * (1 + 1e-9))
    expect(rose).toEqual([])
  })

  test('more backlash moves the foot farther', () => {
    const play = (backlash: string) =>
      assess(withFields(geared, { 'joints.knee.drive.backlash': backlash }), { cases: ['stand'] }).foot.error.together.worstCorner.si
    expect(play('0.2 mm')).toBeGreaterThan(play('0.1 mm'))
  })
})
