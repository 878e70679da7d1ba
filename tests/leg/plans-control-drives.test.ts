import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { calculationOf, placeOf } from '../../src/leg/calculation.js'
import { controlSheet, controlText, describeLeg, withFields } from '../../src/leg/index.js'
import { blowTorque } from '../../src/leg/parts/transmission/questions.js'
import { benchLeg } from '../../src/leg/plans/bench.js'
import { coldTorqueConstants } from '../../src/leg/plans/control-magnets.js'
import { geared } from './gear-legs.js'
import { driven } from './sideways-legs.js'

const read = (name: string) => describeLeg(readFileSync(new URL(`../../examples/${name}-leg-revised.yaml`, import.meta.url), 'utf8'))
const [desk, orchard] = [read('desk'), read('orchard')]
const degree = Math.PI / 180

const sheetOf = (leg: typeof desk) => controlSheet(leg, { durations: ['1 s'] })
const [direct, belts, gears] = [desk, orchard, geared].map(sheetOf) as [
  ReturnType<typeof sheetOf>,
  ReturnType<typeof sheetOf>,
  ReturnType<typeof sheetOf>,
]

describe('belts', () => {
  const { hip, knee } = belts.joints
  test('ratio, limits and counts by hand', () => {
    expect(hip.drive).toBe('belt')
    expect([hip.ratio.si, hip.sign]).toEqual([108 / 18, 1])
    expect(knee.motorLimits.map((x) => x.in('deg'))).toEqual([expect.closeTo(6 * 20, 9), expect.closeTo(6 * 120, 9)])
    const counts = orchard.motors.outrunner!.encoderCounts
    expect(knee.countsPerAngle.in('count/deg')).toBeCloseTo((6 * counts) / 360, 9)
    expect(knee.driveLoss.si).toBeCloseTo(0.04, 12)
  })

  test('the play of both pulleys widens the tolerance of the homing run, and the stops are read beyond it', () => {
    // Clearance of 0.05 mm on each of two pulleys, at the pitch radius of 108 teeth.
    const radius = (108 * orchard.belts.wide!.pitch.si) / (2 * Math.PI)
    expect(knee.freePlay.si).toBeCloseTo((2 * orchard.belts.wide!.clearance.si) / radius, 12)
    const step = (2 * Math.PI) / (6 * orchard.motors.outrunner!.encoderCounts)
    const wound = knee.homing.jointTorque.si / knee.driveStiffness!.si
    // The spans share the pull at rest: one tightens as the other slackens.
    expect(knee.homing.tolerance.si).toBeCloseTo((2 * wound + knee.freePlay.si) / step + 1, 6)
    expect(knee.homing.writeAtStops[1].si).toBeCloseTo(6 * (120 * degree + wound + knee.freePlay.si / 2), 9)
    expect(knee.homing.procedure.join(' ')).toMatch(/each tooth turns the joint by 3.333°/)
  })

  test('the absolute maximum is the jump of the coldest and oldest belt, cold magnets giving the most torque', () => {
    const bench = benchLeg(orchard)
    const calculation = calculationOf(bench.x)
    const at = calculation.instances.implied(placeOf(calculation, { joint: 'knee', air: 'cold', age: 'year' })) as never
    const jump = calculation.get(blowTorque, at) as number
    const cold = bench.x.loadCases.airs.cold!.temperature
    const never = knee.currentLimits.at(-1)!
    expect(never.protects).toMatch(/^tooth belt: .* jumps a tooth$/)
    expect(never.condition).toMatch(/belt a year old/)
    expect(never.peakPhase.si * 6 * coldTorqueConstants(bench, 'knee', cold).typical).toBeCloseTo(jump, 3)
  })

  test('less pretension never allows more', () => {
    const loose = sheetOf(withFields(orchard, { 'joints.knee.drive.pretension': '500 N', 'joints.knee.drive.adjustment': '5 mm' }))
    expect(loose.joints.knee.currentLimits.at(-1)!.peakPhase.si).toBeLessThan(knee.currentLimits.at(-1)!.peakPhase.si)
  })
})

describe('a gearbox and a pair of gears', () => {
  const { hip, knee } = gears.joints
  test('the pair turns against its motor, the gearbox with it', () => {
    expect([hip.sign, knee.sign]).toEqual([1, -1])
    expect(knee.ratio.si).toBeCloseTo(64 / 15, 12)
    expect(knee.motorLimits[1].in('deg')).toBeCloseTo((-64 / 15) * 130, 9)
    expect(hip.driveStiffness!.si).toBe(300)
    expect(knee.driveStiffness).toBeUndefined()
    expect(knee.gains.motorLocked).toBeUndefined()
    expect(knee.gains.limitedBy).toBe('the rate of the control loop')
  })

  test('the inertia of the gears is in that of the joint', () => {
    const rotor = 12e-6 * (64 / 15) ** 2
    const disc = (density: number, teeth: number) => 0.5 * Math.PI * density * 0.011 * ((0.0008 * teeth) / 2) ** 4
    // Aluminium 6061 at 2700, polycarbonate at 1200 kg/m³.
    expect(knee.reflectedInertia.si).toBeCloseTo(rotor + disc(2700, 15) * (64 / 15) ** 2 + disc(1200, 64), 7)
  })

  test('the absolute maximum is the peak torque of the gearbox, losses not counted', () => {
    const bench = benchLeg(geared)
    const never = hip.currentLimits.at(-1)!
    expect(never.protects).toMatch(/^gearbox: breaks in a rare hard load$/)
    const most = Math.max(
      ...['cold', 'normal', 'hot'].map((air) => coldTorqueConstants(bench, 'hip', bench.x.loadCases.airs[air]!.temperature).typical),
    )
    expect(never.peakPhase.si * 6 * most).toBeCloseTo(6, 4)
  })

  test('a weaker wheel takes the limit of the knee down to its teeth', () => {
    const thin = sheetOf(withFields(geared, { 'joints.knee.drive.faceWidth': '3 mm' }))
    const never = thin.joints.knee.currentLimits.at(-1)!
    expect(never.protects).toMatch(/^tooth of the (wheel|pinion): breaks off at its root$/)
    expect(never.peakPhase.si).toBeLessThan(knee.currentLimits.at(-1)!.peakPhase.si)
  })

  test('the backlash is the tolerance of the homing run, and the wheel must not slip', () => {
    const radius = (0.0008 * 64) / 2
    const step = (2 * Math.PI) / ((64 / 15) * geared.motors.pancake!.encoderCounts)
    expect(knee.homing.tolerance.si).toBeCloseTo(1e-4 / radius / step + 1, 6)
    expect(knee.homing.procedure.join(' ')).toMatch(/the backlash has grown/)
    expect(hip.homing.procedure.join(' ')).toMatch(/the play of the gearbox has grown/)
  })
})

describe('direct drives', () => {
  const { hip } = direct.joints
  test('the joint is the rotor', () => {
    expect([hip.ratio.si, hip.sign, hip.driveLoss.si, hip.freePlay.si]).toEqual([1, 1, 0, 0])
    expect(hip.jointTorquePerPeakAmpere.si).toBeCloseTo(direct.motors.hip.torqueConstants.peakPhase.si, 12)
    expect(hip.homing.tolerance.si).toBe(1)
  })

  test('the pads of the stops take up the rotor over a degree', () => {
    const { speed, jointTorque } = hip.homing
    const energy = 0.5 * hip.reflectedInertia.si * speed.si ** 2
    expect(energy).toBeCloseTo(jointTorque.si * degree, 12)
    expect(hip.homing.procedure.join(' ')).toMatch(/pads that yield by a degree/)
  })

  test('the page has no cord', () => {
    expect(controlText(direct)).not.toMatch(/\bcord\b/)
    expect(controlText(belts)).not.toMatch(/\bcord\b/)
    expect(controlText(gears)).not.toMatch(/\b(cord|belt)\b/)
  })
})

describe('a driven sideways hip', () => {
  const sheet = sheetOf(driven)
  const sideways = sheet.joints.sidewaysHip!
  test('has its motor, limits, gains and homing run', () => {
    expect(sideways.drive).toBe('gearbox')
    expect(sideways.ratio.si).toBe(16)
    expect(sideways.motorLimits.map((x) => x.in('deg'))).toEqual([expect.closeTo(-320, 9), expect.closeTo(320, 9)])
    expect(sheet.motors.sidewaysHip!.polePairs!.si).toBe(driven.motors.outrunner!.polePairs)
    expect(sideways.signTest.moves).toBe('the foot swings to the left')
    expect(sideways.homing.procedure[0]).toMatch(/Home the sideways hip last/)
    expect(sheet.conventions.at(-1)).toMatch(/sideways hip/)
    expect(sheet.commissioning[1]).toContain('seen from the left of the robot, that of the sideways hip from its front.')
    expect(belts.commissioning.join()).not.toContain('sideways hip')
    expect(controlText(sheet)).toMatch(/\|sideways hip\|/)
  })

  test('its gravity is that of the links on their arms', () => {
    const { level, hanging } = sheet.gravity.sideways!
    const { thigh, shank } = sheet.gravity
    // Straight down, all that swings forward about the hip hangs below the sideways axis, too.
    expect(hanging.si).toBeCloseTo(thigh.si + shank.si, 9)
    // Both links with what they carry, beside the axis by the offset of the leg.
    const without = sheetOf(withFields(driven, { 'links.hipOffset': '0.0001 mm' }))
    expect(Math.abs(without.gravity.sideways!.level.si)).toBeLessThan(1e-4)
    expect(Math.abs(level.si)).toBeGreaterThan(0)
  })

  test('no other joint changes by it', () => {
    const { hip } = sheetOf(driven).joints
    expect(hip.ratio.si).toBe(belts.joints.hip.ratio.si)
    expect(hip.motorLimits.map((x) => x.si)).toEqual(belts.joints.hip.motorLimits.map((x) => x.si))
  })
})
