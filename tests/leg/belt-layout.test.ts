import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { calculationOf, placeOf } from '../../src/leg/calculation.js'
import { assess, assessRobot, checkReserves, describeLeg, htmlReport, legNumbers, withFields } from '../../src/leg/index.js'
import { legModel } from '../../src/leg/leg-model.js'
import { driveLoad } from '../../src/leg/parts/motion/values.js'
import { kneeRotor } from '../../src/leg/parts/motors/rotor.js'
import { pretension, shaftForce, shift, spans, windup } from '../../src/leg/parts/transmission/belt/values.js'
import { stiffnessAtRest } from '../../src/leg/parts/transmission/questions.js'
import { caseState } from '../../src/leg/what-if.js'
import hand from '../oracles/leg-belts.json' with { type: 'json' }
import { geared } from './gear-legs.js'

const read = (name: string) => describeLeg(readFileSync(new URL(`../../examples/orchard-leg-${name}.yaml`, import.meta.url), 'utf8'))
const [first, revised] = [read('first'), read('revised')]
const off = (one: number, other: number) => Math.abs(one / other - 1)
const numbers = legNumbers(revised)
const placed = (calculation: ReturnType<typeof calculationOf>, names: Parameters<typeof placeOf>[1]) =>
  calculation.instances.implied(placeOf(calculation, { leg: 'leg', ...names })) as never

describe('against the equilibrium of pulleys and spans (oracles/leg-belts.py)', () => {
  const calculation = calculationOf(numbers)
  const at = (names: Parameters<typeof placeOf>[1]) => placed(calculation, { joint: 'knee', air: 'normal', age: 'new', ...names })

  test.each(['stand', 'dropEnd'] as const)('torques, tensions and the force on the axes: %s', (event) => {
    const found = hand[event]
    expect(off(calculation.get(driveLoad, at({ joint: 'hip', event })), found.hip)).toBeLessThan(1e-9)
    expect(off(calculation.get(driveLoad, at({ event })), found.knee)).toBeLessThan(1e-9)
    const { taut, slack } = calculation.get(spans, at({ event }))
    expect(off(taut, found.taut)).toBeLessThan(1e-9)
    expect(off(slack, found.slack)).toBeLessThan(1e-9)
    expect(off(calculation.get(shaftForce, at({ event })), found.axis)).toBeLessThan(1e-9)
    expect(off(calculation.get(windup, at({ event })), found.windup)).toBeLessThan(1e-9)
  })

  test('a span that hangs slack leaves the pull to the other', () => {
    const other = calculationOf(numbers)
    const where = placed(other, { joint: 'knee', event: 'stand', air: 'normal', age: 'new' })
    other.pin(driveLoad, where, 40)
    other.pin(pretension, where, 100)
    const { taut, slack } = other.get(spans, where)
    expect(off(taut, hand.overloaded.taut)).toBeLessThan(1e-9)
    expect(slack).toBe(0)
    expect(off(other.get(shaftForce, where), hand.overloaded.axis)).toBeLessThan(1e-9)
    expect(off(other.get(windup, where), hand.overloaded.windup)).toBeLessThan(1e-9)
  })

  test('pretension in the cold, stiffness, inertia and the shift of the axes', () => {
    expect(off(calculation.get(pretension, at({ air: 'cold' })), hand.cold)).toBeLessThan(1e-12)
    expect(off(calculation.get(stiffnessAtRest, at({})) as number, hand.stiffness)).toBeLessThan(1e-12)
    const rotor = calculation.get(kneeRotor, at({}))
    for (const part of ['hip', 'knee', 'coupling'] as const) expect(off(rotor[part], hand.rotor[part])).toBeLessThan(1e-12)
    // The slope of the length over the distance of the axes is that at the stated distance: a thousandth of the shift.
    expect(off(calculation.get(shift, at({})), hand.shift)).toBeLessThan(2e-3)
  })

  test('power is the same in joint and motor but for the efficiency of the belt', () => {
    const { knee } = caseState(legModel(numbers), 'stand').joints
    expect(off(knee.heat.motorTorque, hand.stand.kneeMotor)).toBeLessThan(1e-9)
    const walk = caseState(legModel(numbers), 'walk').joints.knee
    expect(off(walk.heat.motorSpeed, walk.motion.speed * 6)).toBeLessThan(1e-12)
  })
})

describe('the orchard carrier', () => {
  test('the first design jumps teeth in the cold; the revised one passes', () => {
    const [one, other] = [assess(first), assess(revised)]
    expect(one.passes).toBe(false)
    expect(one.governing.id).toBe('belt.jump')
    expect(one.governing.case).toBe('coldDrop')
    expect(other.meetsTarget).toBe(true)
    const page = htmlReport(other)
    expect(page).toContain('tooth belt')
    expect(page).toContain('Leg in its hardest pose')
    const { pretension: rest, tautTension, slackTension } = other.cases.find(({ id }) => id === 'walk')!.joints.knee
    expect((tautTension!.si + slackTension!.si) / 2).toBeCloseTo(rest!.si, 9)
  })

  test('a belt of another length runs out of adjustment, and pulleys that do not reduce are rejected', () => {
    const of = (teeth: number) =>
      assess(withFields(revised, { 'belts.wide.teeth': teeth }), { cases: ['stand'] }).checks.find(({ id }) => id === 'belt.adjustment')!
    expect(of(123).reserve).toBeGreaterThan(1)
    expect(of(125).reserve).toBeLessThan(1)
    expect(() => withFields(revised, { 'joints.knee.drive.smallTeeth': 108 })).toThrow(/largeTeeth is 108; must be more than smallTeeth/)
  })
})

test('the whole robot: a rotor that rests at touch-down loads its belt, a geared one its gearbox', () => {
  const belts = assessRobot(revised)
  expect(belts.landings.map(({ event, joint }) => `${event} ${joint}`)).toEqual(['hop hip', 'hop knee', 'drop hip', 'drop knee'])
  expect(belts.landings[0]!.beyond).toContain('belt jumps')
  const boxes = assessRobot(geared)
  expect(boxes.landings.map(({ joint, slackTorque }) => [joint, slackTorque.si])).toEqual([
    ['hip', 6],
    ['hip', 6],
  ])
})

describe('nothing bad raises a reserve', () => {
  const cases = ['stand', 'walk', 'hotTrot', 'coldDrop', 'stall', 'season'] as const
  const before = checkReserves(legNumbers(revised), cases)
  test.each([
    ['joints.knee.drive.efficiency', 0.85, ''],
    ['joints.knee.drive.adjustment', '1 mm', ''],
    ['belts.wide.toothForce', '150 N', ''],
    ['belts.wide.mostTeeth', 4, ''],
    ['belts.wide.allowableTension', '1.5 kN', ''],
    ['belts.wide.breakingStrength', '6 kN', ''],
    ['belts.wide.leastTeeth', 20, ''],
    ['belts.wide.highestTemperature', '70 degC', ''],
    ['belts.wide.flankAngle', '25 deg', ''],
    ['belts.wide.friction', { low: 0.05, typical: 0.1, high: 0.2 }, ''],
    ['belts.wide.toothHeight', '1.4 mm', ''],
    ['belts.wide.clearance', '0.1 mm', ''],
    // Less tension eases belt, shaft and pins.
    ['joints.knee.drive.pretension', '600 N', 'belt.jump'],
    ['belts.wide.pretensionLeft', { low: 0.5, typical: 0.7, high: 0.8 }, 'belt.jump'],
    ['loadCases.airs.cold.temperature', '-15 degC', 'belt.jump'],
    // More tension loads them.
    ['joints.hip.drive.pretension', '800 N', 'belt.working'],
    ['joints.hip.drive.pretension', '800 N', 'bearing.'],
    ['joints.hip.drive.pretension', '800 N', 'shaft.'],
    ['robot.mass', '25 kg', ''],
  ])('%s of %s', (path, worse, among) => {
    const after = checkReserves(legNumbers(withFields(revised, { [path]: worse })), cases)
    const rose = [...before].filter(([key, reserve]) => key.startsWith(among) && (after.get(key) as number) > reserve * (1 + 1e-9))
    expect(rose).toEqual([])
  })

  test('more clearance of the teeth and a softer belt move the foot farther', () => {
    const error = (change: Record<string, unknown>) =>
      assess(withFields(revised, change), { cases: ['stand'] }).foot.error.together.worstCorner.si
    const now = error({ 'belts.wide.clearance': '0.05 mm' })
    expect(error({ 'belts.wide.clearance': '0.1 mm' })).toBeGreaterThan(now)
    expect(error({ 'belts.wide.axialRigidity': '100 kN' })).toBeGreaterThan(now)
  })
})
