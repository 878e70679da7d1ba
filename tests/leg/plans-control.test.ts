import { readFileSync } from 'node:fs'
import * as fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { slackTorque } from '../../src/capstan/index.js'
import { assess, controlSheet, controlText, describeLeg, withFields } from '../../src/leg/index.js'
import { benchDrive, benchLeg } from '../../src/leg/plans/bench.js'
import { InputError } from '../../src/units/index.js'

const read = (name: string) => describeLeg(readFileSync(new URL(`../../examples/${name}.yaml`, import.meta.url), 'utf8'))
const leg = read('mudflat-leg-revised')
const sheet = controlSheet(leg)
const { hip, knee } = sheet.joints

describe('against calculations by hand', () => {
  test('ratio, limits, counts and torque per ampere', () => {
    expect(hip.ratio.si).toBeCloseTo(49.6 / 8, 12)
    expect(hip.sign).toBe(-1)
    expect(hip.motorLimits.map((x) => x.in('turn'))).toEqual([expect.closeTo((85 * 6.2) / 360, 10), expect.closeTo((-45 * 6.2) / 360, 10)])
    expect(hip.countsPerAngle.in('count/deg')).toBeCloseTo((16384 * 6.2) / 360, 9)
    // Power balance of a sinusoidal motor: 3/2 · peak phase EMF · peak phase current, with peak phase EMF = line-to-line peak / √3.
    const kt = (1.5 / Math.sqrt(3) / 110) * (60 / (2 * Math.PI))
    expect(sheet.motor.torqueConstants.peakPhase.si).toBeCloseTo(kt, 12)
    expect(hip.jointTorquePerPeakAmpere.si).toBeCloseTo(kt * 6.2 * leg.drives.hip.efficiency.si, 12)
    expect(hip.jointTorquePerRmsAmpere.si / hip.jointTorquePerPeakAmpere.si).toBeCloseTo(Math.SQRT2, 12)
  })

  test('gravity terms of rods and the inertia of a rod about its end', () => {
    expect(sheet.gravity.thigh.si).toBeCloseTo((0.46 * 0.0825 + 0.16 * 0.165) * 9.80665, 12)
    expect(sheet.gravity.shank.si).toBeCloseTo(0.16 * 0.09 * 9.80665, 12)
    const load = (0.16 * 0.18 ** 2) / 3
    expect(knee.gains.inertia.si).toBeCloseTo(load + 96e-6 * 5.6 ** 2, 12)
    expect(knee.gains.motorLocked.si).toBeCloseTo(Math.sqrt(knee.driveStiffness.si / load) / (2 * Math.PI), 9)
    const w = 2 * Math.PI * knee.gains.bandwidth.si
    expect(knee.gains.stiffness.si).toBeCloseTo(knee.gains.inertia.si * w * w, 8)
    expect(knee.gains.motorStiffness.si * 5.6 ** 2).toBeCloseTo(knee.gains.stiffness.si, 9)
  })

  test('the knee may never pass the torque at which a span goes slack at an end of its travel', () => {
    const never = knee.currentLimits.at(-1)!
    const { pinionRadius, drumRadius, span, pinionWrap, drumWrap, travel } = benchDrive(benchLeg(leg), 'knee')
    const { cord, friction } = benchLeg(leg).drives.knee
    const x = { axialRigidity: cord.axialRigidity, pretension: 185, pinionRadius, drumRadius, span, pinionWrap, friction, slackShare: 0.01 }
    const end = { drumWrapTaut: drumWrap + travel / 2, drumWrapSlack: drumWrap - travel / 2, hold: 'clampedMidPinion' as const }
    expect(never.jointTorque.si).toBeCloseTo(slackTorque.si({ ...x, ...end }).torque, 6)
    expect(never.jointTorque.si).toBeGreaterThan(185 * 0.0448)
    expect(never.protects).toMatch(/cord.slack/)
  })

  test('homing counts are the travel times the counts of a degree', () => {
    expect(hip.homing.countsBetweenStops.si).toBeCloseTo((130 * 16384 * 6.2) / 360, 6)
    expect(hip.homing.tolerance.si).toBeGreaterThan(1)
    expect(hip.homing.smallestSlip.in('deg')).toBeLessThan(1)
  })
})

describe('current limits', () => {
  test('the continuous one leaves nothing over: a robot that stands on that torque in hot air has that check at 1', () => {
    const held = knee.currentLimits[0]!
    const inHotAir = { 'environment.normalAir': [leg.environment.hotAir.si, 'K'] }
    const asked = (kilograms: number) =>
      Math.abs(assess(withFields(leg, { 'robot.mass': [kilograms, 'kg'] }), { cases: ['stand'] }).cases[0]!.joints.knee.torque.si)
    // Torque is a straight line over the mass, less what the links weigh: a robot on that line asks just what may be held.
    const [little, much] = [asked(10), asked(20)]
    const mass = [10 + (10 * (held.jointTorque.si - little)) / (much - little), 'kg']
    const heavier = assess(withFields(leg, { ...inHotAir, 'robot.mass': mass }), { cases: ['stand'] })
    const id = /\((\S+)\)$/.exec(held.protects)![1]
    const check = heavier.checks.find((one) => one.id === id && (one.joint ?? 'knee') === 'knee')!
    expect(check.reserve).toBeCloseTo(1, 5)
  })

  test('a winding that sheds nothing allows the same I²t: a quarter of the time, twice the current', () => {
    const limits = controlSheet(leg, { durations: ['1 s', '4 s'], copperMass: '5 g' }).joints.knee.currentLimits
    const [short, long] = [limits[1]!, limits[2]!]
    expect(short.protects).toMatch(/motor.winding/)
    expect(long.protects).toMatch(/motor.winding/)
    expect(short.peakPhase.si / long.peakPhase.si).toBeCloseTo(2, 10)
  })

  test('hotter air never allows more, and every limit says what it protects', () => {
    const at = (air: number) => controlSheet(withFields(leg, { 'environment.hotAir': [air, 'degC'] })).joints.knee.currentLimits
    fc.assert(
      fc.property(fc.integer({ min: 10, max: 45 }), (air) => {
        const [cool, warm] = [at(air), at(air + 4)]
        expect(warm[0]!.jointTorque.si).toBeLessThanOrEqual(cool[0]!.jointTorque.si)
        expect(warm.every(({ protects }) => protects.length > 0)).toBe(true)
      }),
      { numRuns: 8 },
    )
  })

  test('a motor that walking leaves too hot has no pulse left, said plainly', () => {
    const hot = controlSheet(read('mudflat-leg-first')).joints.knee.currentLimits
    for (const limit of hot.slice(1, -1)) if (limit.peakPhase.si === 0) expect(limit.protects).toMatch(/already/)
    expect(hot.at(-1)!.peakPhase.si).toBeGreaterThan(1)
    expect(controlSheet(read('mudflat-leg-first')).joints.hip.currentLimits.at(-1)!.peakPhase.si).toBeGreaterThan(1)
  })
})

test('a slow loop takes the bandwidth down to a twentieth of its rate and says so', () => {
  const slow = controlSheet(leg, { loopRate: '100 Hz' }).joints.knee.gains
  expect(slow.bandwidth.si).toBeCloseTo(5, 10)
  expect(slow.limitedBy).toMatch(/rate/)
  expect(knee.gains.limitedBy).toMatch(/resonance/)
})

test('open spans keep the sign', () => {
  expect(controlSheet(withFields(leg, { 'drives.hip.arrangement': 'open' })).joints.hip.sign).toBe(1)
})

test('the page carries conventions, cautions and both joints', () => {
  const text = controlText(sheet)
  for (const part of ['Conventions', 'Cautions', 'what each protects', 'slipped cord', '-6.2']) expect(text).toContain(part)
})

test.each([
  [{ loopRate: '0 Hz' }, /loopRate/],
  [{ durations: ['10 min'] }, /durations\[0\]/],
  [{ copperMass: '3 kg' }, /below the mass of the motor/],
  [{ loopRate: '5 mm' }, /frequency/],
])('%j is refused', (options, message) => {
  expect(() => controlSheet(leg, options as never)).toThrow(message)
  expect(() => controlSheet(leg, options as never)).toThrow(InputError)
})
