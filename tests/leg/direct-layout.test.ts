import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { calculationOf, placeOf } from '../../src/leg/calculation.js'
import { assess, checkReserves, describeLeg, htmlReport, legNumbers, withFields } from '../../src/leg/index.js'
import { legModel } from '../../src/leg/leg-model.js'
import { stride } from '../../src/leg/parts/motion/values.js'
import { kneeRotor } from '../../src/leg/parts/motors/rotor.js'
import { caseState } from '../../src/leg/what-if.js'
import hand from '../oracles/leg-direct.json' with { type: 'json' }

const read = (name: string) => describeLeg(readFileSync(new URL(`../../examples/desk-leg-${name}.yaml`, import.meta.url), 'utf8'))
const [first, revised] = [read('first'), read('revised')]
const off = (one: number, other: number) => Math.abs(one / other - 1)

describe('against the equilibrium of the two bodies (oracles/leg-direct.py)', () => {
  test.each(['stand', 'drop', 'dropEnd'] as const)('torques of hip and knee: %s', (stance) => {
    const calculation = calculationOf(legNumbers(revised))
    const found = calculation.get(stride, placeOf(calculation, { leg: 'leg', stance }) as never)
    expect(off(Math.abs(found.hipTorque), Math.abs(hand[stance].hip))).toBeLessThan(1e-9)
    expect(off(Math.abs(found.kneeTorque), Math.abs(hand[stance].knee))).toBeLessThan(1e-9)
  })

  test('a held motor holds the torque of its joint, and no less', () => {
    const { hip, knee } = caseState(legModel(legNumbers(revised)), 'stand').joints
    expect(off(hip.heat.motorTorque, Math.abs(hand.stand.hip))).toBeLessThan(1e-9)
    expect(off(knee.heat.motorTorque, Math.abs(hand.stand.knee))).toBeLessThan(1e-9)
  })

  test('the rotor of the knee turns with the lower link: its inertia couples hip and knee as its kinetic energy does', () => {
    const calculation = calculationOf(legNumbers(revised))
    const found = calculation.get(kneeRotor, placeOf(calculation, { joint: 'knee' }) as never)
    for (const part of ['hip', 'knee', 'coupling'] as const) expect(off(found[part], hand.rotor[part])).toBeLessThan(1e-12)
  })
})

test('power is the same in joint and motor: torque and speed are', () => {
  const { hip, knee } = caseState(legModel(legNumbers(revised)), 'walk').joints
  for (const { motion, heat } of [hip, knee]) {
    expect(heat.motorSpeed).toBe(motion.speed)
    expect(heat.motorTorque).toBeGreaterThan(Math.abs(motion.shaftTorque))
  }
})

describe('the desk walker', () => {
  test('the first design softens its plates and tilts its motors; the revised one passes', () => {
    const [one, other] = [assess(first), assess(revised)]
    expect(one.passes).toBe(false)
    expect(one.governing.id).toBe('outputBearing.tilt')
    expect(one.checks.filter(({ id, reserve }) => id === 'outputBearing.tilt' && reserve < 1).map(({ joint }) => joint)).toEqual([
      'hip',
      'knee',
    ])
    expect(other.meetsTarget).toBe(true)
    const reasons = new Map(other.notEvaluated.map(({ id, why }) => [id, why]))
    expect(reasons.get('cord.slack')).toBe('no cord drives the joint')
    expect(reasons.get('controller.delay')).toBe('no elastic part between rotor and joint is calculated')
    expect(htmlReport(other)).toContain('Leg in its hardest pose')
  })

  test('the errors of its encoders are not divided: at the foot they are the angle times its arms', () => {
    const { foot } = assess(revised, { cases: ['stand'] })
    const line = foot.error.lines.find(({ name }) => name === 'encoder accuracy over a turn')!
    const [hip, knee] = [0.162, 0.09]
    const accuracy = (0.05 * Math.PI) / 180
    // Farther than the hip error alone moves the foot, nearer than both together along their whole arms.
    expect(line.worstCorner.si).toBeGreaterThan(accuracy * hip)
    expect(line.worstCorner.si).toBeLessThan(accuracy * (hip + knee))
    expect(foot.resonance.hip).toBeUndefined()
    expect(foot.usableBandwidth).toBeUndefined()
    expect(foot.error.lines.map(({ name }) => name)).not.toContain('drum out of true')
  })

  test('the bearings of a motor that a leg hangs on must be known, and a pin takes their place', () => {
    expect(() => withFields(first, { 'joints.hip.drive': { kind: 'direct' } })).toThrow(
      /joints.hip.drive.radialLoad is missing; is needed because joints.hip has neither pin nor shaft/,
    )
    const { notEvaluated, checks } = assess(revised, { cases: ['stand'] })
    expect(checks.filter(({ id }) => id === 'outputBearing.radial').map(({ joint }) => joint)).toEqual(['hip'])
    expect(notEvaluated.map(({ id }) => id)).not.toContain('outputBearing.radial')
  })
})

describe('nothing bad raises a reserve', () => {
  const cases = ['stand', 'walk', 'hotTrot', 'hotDrop', 'stall'] as const
  const before = checkReserves(legNumbers(first), cases)
  test.each([
    ['joints.hip.drive.overhang', '16 mm'],
    ['joints.hip.drive.tiltingMoment', '0.2 N m'],
    ['joints.hip.drive.radialLoad', '35 N'],
    ['robot.mass', '2 kg'],
    ['motors.pancake.noLoadCurrent', '0.2 A'],
    // Of a measured no-load current, a larger resistance leaves less for drag, which eases the bolts a little.
    ['motors.pancake.terminalResistance', '0.8 ohm', 'motor.'],
    ['motors.pancake.windingToMount', '1.8 K/W'],
    // A thinner sink is lighter, too.
    ['plates.kneePlate.sink.thickness', '2.5 mm', 'motor.plate knee'],
    ['controllers.bridge.currentLimit', '15 A'],
    ['supply.internalResistance', '100 mohm'],
  ])('%s of %s', (path, worse, among = '') => {
    const after = checkReserves(legNumbers(withFields(first, { [path]: worse })), cases)
    const rose = [...before].filter(([key, reserve]) => (after.get(key) as number) > reserve * (1 + 1e-9)).map(([key]) => key)
    expect(rose.filter((key) => key.startsWith(among))).toEqual([])
  })
})
