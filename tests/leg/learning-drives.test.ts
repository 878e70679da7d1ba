import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { describeLeg, type Leg, learn, learntText, standPlan, standText } from '../../src/leg/index.js'
import { geared } from './gear-legs.js'
import { driven } from './sideways-legs.js'

const read = (name: string) => describeLeg(readFileSync(new URL(`../../examples/${name}-leg-revised.yaml`, import.meta.url), 'utf8'))
const [desk, orchard] = [read('desk'), read('orchard')]
const degree = Math.PI / 180

/** Scatter of readings, always the same: a sine of irregular step. */
const scatter = (i: number) => Math.sin(12.9898 * (i + 1)) * Math.SQRT2
const csv = (header: string, rows: readonly (readonly number[])[]) =>
  `${header}\n${rows.map((row) => row.map((x) => x.toPrecision(8)).join(',')).join('\n')}\n`
const moved = (leg: Leg, log: string, text: string, path: string) => {
  const learnt = learn(leg, { [log]: text }, { cases: ['stand'] })
  return { field: learnt.moved.find((one) => one.path === path)!, learnt }
}
/** Number of a field after learning, in SI. */
const fieldIn = (leg: Leg, path: string) => {
  const value = path.split('.').reduce<unknown>((at, step) => (at as Record<string, unknown>)[step], leg) as {
    si?: number
    typical?: number
  }
  return value.si ?? value.typical ?? Number(value)
}

describe('the plan for the test stand', () => {
  const made = new Map([orchard, geared, desk, driven].map((leg) => [leg, standPlan(leg)]))
  const plan = (leg: Leg) => made.get(leg)!
  const logsOf = (leg: Leg) => plan(leg).measurements.map(({ log }) => log)
  test('has the measurements of each kind of drive', () => {
    for (const joint of ['hip', 'knee'])
      for (const id of ['freePlay', 'efficiency', 'windup', 'beltPitch']) expect(logsOf(orchard)).toContain(`${id} ${joint}`)
    expect(
      logsOf(geared)
        .filter((log) => / /.test(log))
        .sort(),
    ).toEqual(['efficiency hip', 'efficiency knee', 'freePlay hip', 'freePlay knee', 'windup hip'])
    expect(logsOf(desk).filter((log) => / /.test(log))).toEqual([])
    expect(logsOf(driven)).toContain('freePlay sidewaysHip')
  })

  test('predicts play, pitch and current by hand, and says what to take off before a motor idles', () => {
    const of = (leg: Leg, log: string) => plan(leg).measurements.find((one) => one.log === log)!
    expect(of(geared, 'freePlay knee').predicted.si).toBeCloseTo((0.1e-3 * 2) / (0.8e-3 * 64), 9)
    expect(of(geared, 'freePlay hip').predicted.si).toBeCloseTo(0.3 * degree, 9)
    const week = of(orchard, 'beltPitch knee')
    expect(week.predicted.si).toBeLessThan(366.5)
    expect(week.band[0].si).toBeLessThan(week.predicted.si)
    expect(of(orchard, 'noLoad').how).toMatch(/without its belt/)
    expect(of(desk, 'torqueConstant').how).toMatch(/The joint is the rotor/)
    expect(standText(plan(orchard))).toMatch(/pitch \[Hz\]/)
  })
})

describe('learning', () => {
  test('play of gears becomes their backlash along the pitch circle', () => {
    const rows = [0, 1, 2, 3, 4, 5].map((i) => [0.35 + 0.005 * scatter(i)])
    const { field, learnt } = moved(geared, 'freePlay knee', csv('free play [deg]', rows), 'joints.knee.drive.backlash')
    expect(fieldIn(learnt.leg, 'joints.knee.drive.backlash') / (0.35 * degree * 0.0256)).toBeCloseTo(1, 1)
    expect(field.state).toBe('corrected')
    expect(field.interval!.join()).toMatch(/µm/)
  })

  test('play of a gearbox is its backlash, that of a belt the clearance of both pulleys', () => {
    const rows = (play: number) => [0, 1, 2, 3, 4].map((i) => [play + 0.003 * scatter(i)])
    const box = moved(geared, 'freePlay hip', csv('free play [deg]', rows(0.4)), 'joints.hip.drive.backlash')
    expect(fieldIn(box.learnt.leg, 'joints.hip.drive.backlash')).toBeCloseTo(0.4 * degree, 3)
    expect(box.field.interval!.join()).toMatch(/deg/)
    const belt = moved(orchard, 'freePlay hip', csv('free play [deg]', rows(0.09)), 'belts.wide.clearance')
    const radius = (108 * 5e-3) / (2 * Math.PI)
    expect(fieldIn(belt.learnt.leg, 'belts.wide.clearance') / ((0.09 * degree * radius) / 2)).toBeCloseTo(1, 1)
  })

  test('weights lifted and lowered tell the efficiency, whatever motor constant and drag are', () => {
    const [eta, perAmpere, drag] = [0.81, 0.25, 0.7]
    const rows = [0.3, 0.6, 0.9, 1.2, 1.5, 1.8].map((torque, i) => {
      const ampere = torque / perAmpere
      return [torque, ampere / eta + drag + 0.01 * scatter(i), ampere * eta - drag + 0.01 * scatter(i + 9)]
    })
    const log = csv('joint torque [N m],lifting current [A],lowering current [A]', rows)
    const { field, learnt } = moved(geared, 'efficiency hip', log, 'joints.hip.drive.efficiency')
    expect(fieldIn(learnt.leg, 'joints.hip.drive.efficiency')).toBeCloseTo(eta, 2)
    expect(field.interval!.map(Number)[0]).toBeLessThan(eta)
    expect(field.interval!.map(Number)[1]).toBeGreaterThan(eta)
    const swapped = csv(
      'joint torque [N m],lifting current [A],lowering current [A]',
      rows.map(([m, a, b]) => [m!, b!, a!]),
    )
    const wrong = moved(geared, 'efficiency hip', swapped, 'joints.hip.drive.efficiency')
    expect(wrong.field.state).toBe('notApplied')
    expect(wrong.field.why).toMatch(/are the columns swapped/)
  })

  test('a loop of torque and angle gives the stiffness of a gearbox beside its play', () => {
    const torques = [0, 0.5, 1, 1.5, 2, 2.5, 3, 2, 1, 0, -0.5, -1, -1.5, -2, -2.5, -3, -2, -1, 0]
    const rows = torques.map((m, i) => [m, (m / 220 + 0.15 * degree * Math.sign(m)) / degree + 0.002 * scatter(i)])
    const { field, learnt } = moved(geared, 'windup hip', csv('joint torque [N m],joint angle [deg]', rows), 'joints.hip.drive.stiffness')
    expect(fieldIn(learnt.leg, 'joints.hip.drive.stiffness') / 220).toBeGreaterThan(0.9)
    expect(fieldIn(learnt.leg, 'joints.hip.drive.stiffness') / 220).toBeLessThan(1.1)
    expect(field.interval!.join()).toMatch(/N m\/rad/)
  })

  test('the same of a belt gives its rigidity', () => {
    const radius = (108 * 5e-3) / (2 * Math.PI)
    const [rigidity, span] = [0.75 * orchard.belts.wide!.axialRigidity.si, 0.10884]
    const stiffness = (2 * rigidity * radius ** 2) / span
    const rows = Array.from({ length: 17 }, (_, i) => {
      const torque = i <= 8 ? 5 * i : 5 * (16 - i)
      return [torque, torque / stiffness / degree + (torque > 0 ? 0.0333 : 0) + 2e-5 * scatter(i)]
    })
    const { learnt } = moved(orchard, 'windup knee', csv('joint torque [N m],joint angle [deg]', rows), 'belts.wide.axialRigidity')
    expect(fieldIn(learnt.leg, 'belts.wide.axialRigidity') / rigidity).toBeGreaterThan(0.85)
    expect(fieldIn(learnt.leg, 'belts.wide.axialRigidity') / rigidity).toBeLessThan(1.15)
  })

  test('pitches over a month give the pretension that was set and the share that a year leaves', () => {
    const massPerLength = orchard.belts.wide!.massPerLength.si
    // Equal losses in each decade from one hour on, 25 % after a year (365.25 days: 3.943 decades).
    const decades = Math.log10(365.25 * 24)
    const rows = [0.0417, 0.17, 0.5, 1, 3, 7, 14, 21, 30].map((days, i) => {
      const left = 1 - (0.25 * Math.max(0, Math.log10(days * 24))) / decades
      return [days, Math.sqrt((640 * left) / massPerLength) / (2 * 0.10884) + 0.3 * scatter(i)]
    })
    const log = csv('time [day],pitch [Hz]', rows)
    const { learnt } = moved(orchard, 'beltPitch knee', log, 'joints.knee.drive.pretension')
    expect(fieldIn(learnt.leg, 'joints.knee.drive.pretension') / 640).toBeGreaterThan(0.97)
    expect(fieldIn(learnt.leg, 'joints.knee.drive.pretension') / 640).toBeLessThan(1.03)
    expect(fieldIn(learnt.leg, 'belts.wide.pretensionLeft')).toBeGreaterThan(0.7)
    expect(fieldIn(learnt.leg, 'belts.wide.pretensionLeft')).toBeLessThan(0.8)
    expect(learntText(learnt)).toMatch(/beltPitch knee/)
  })

  test('a log of a drive that the joint does not have is rejected with the names there are', () => {
    expect(() => learn(desk, { 'beltPitch hip': 'time [day],pitch [Hz]\n1,2\n' })).toThrow(/beltPitch hip/)
    expect(() => learn(orchard, { 'pretension hip': 'time [day],tension [N]\n1,2\n' })).toThrow(/beltPitch hip|freePlay hip/)
  })
})
