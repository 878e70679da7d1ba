import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { fourBarKneePose } from '../../src/kinematics/index.js'
import {
  assemblyPlan,
  assemblyText,
  assess,
  controlSheet,
  controlText,
  describeLeg,
  htmlPlans,
  learn,
  legMotion,
  standPlan,
  strideTrajectory,
  withFields,
} from '../../src/leg/index.js'
import { kneeLinkage } from '../../src/leg/parts/transmission/through-hip/fields.js'
import { benchDrive, benchLeg } from '../../src/leg/plans/bench.js'
import { legInertia } from '../../src/leg/plans/control-gains.js'
import { RodGeometry } from '../../src/leg/plans/rod-geometry.js'
import { legInverse, poseOf } from '../../src/leg/pose.js'
import { windups } from '../../src/leg/windup.js'

const leg = describeLeg(readFileSync(new URL('../../examples/heath-leg-revised.yaml', import.meta.url), 'utf8'))
/** The same with crank and rod that make no parallelogram. */
const fourBar = withFields(leg, { 'joints.knee.through.crank': '38 mm', 'joints.knee.through.rod': '160 mm' })
const degree = Math.PI / 180
const sheet = controlSheet(leg)

describe('the linkage', () => {
  test.each([leg, fourBar])('a longer rod turns the knee as the closure of the four-bar says', (one) => {
    const { x } = benchLeg(one)
    const rod = new RodGeometry(x)
    const linkage = kneeLinkage(x)
    for (const knee of [30, 60, 90, 120].map((x) => x * degree)) {
      const { crankAngle } = rod.pose(knee)
      // With a rod that is a hundredth of a millimetre longer: the knee at which the crank stands as before.
      const crankAt = (angle: number) => fourBarKneePose.si({ ...linkage, coupler: linkage.coupler + 1e-5, kneeAngle: angle }).crankAngle
      let turned = knee
      for (let i = 0; i < 50; i++) turned -= (crankAt(turned) - crankAngle) / rod.ratio(turned)
      expect((turned - knee) / 1e-5).toBeCloseTo(rod.kneePerLength(knee), -1)
      expect((turned - knee) / 1e-5 / rod.kneePerLength(knee)).toBeCloseTo(1, 2)
    }
  })

  test('the drum turns with hip and knee: motor limits, homing and travel of the parallelogram by hand', () => {
    const turns = 101.6 / 16
    expect(sheet.joints.knee.motorLimits.map((one) => one.in('turn'))).toEqual([
      expect.closeTo((-turns * (-75 + 25)) / 360, 9),
      expect.closeTo((-turns * (45 + 125)) / 360, 9),
    ])
    expect(benchDrive(benchLeg(leg), 'knee').travel).toBeCloseTo((120 + 100) * degree, 9)
    const { homing } = sheet.joints.knee
    expect(homing.hipHeldAt!.in('deg')).toBeCloseTo(-15, 9)
    // Hip at -15: the drum stands at -15 + 25 and -15 + 125 degrees at the stops, wound up a little further at either.
    const [lower, upper] = homing.writeAtStops.map((one) => one.in('deg') / -turns) as [number, number]
    expect(lower).toBeLessThan(10)
    expect(lower).toBeGreaterThan(9)
    expect(upper).toBeGreaterThan(110)
    expect(upper).toBeLessThan(111)
    expect(homing.countsBetweenStops.si).toBeCloseTo((100 / 360) * turns * leg.motors.outrunner!.encoderCounts, 6)
    expect(homing.softMotorLimits).toBeUndefined()
    expect(homing.procedure[0]).toMatch(/Home the hip first/)
  })
})

describe('the control sheet', () => {
  test('standing: the hip drum is spared what the knee drum holds, in the coordinates of the motors', () => {
    const { hip, knee } = assess(leg, { cases: ['stand'] }).cases[0]!.joints
    expect(sheet.joints.hip.standTorque.si).toBeCloseTo(hip.torque.si - knee.torque.si, 9)
    expect(sheet.joints.knee.standTorque.si).toBeCloseTo(knee.torque.si, 9)
    // Foot under the hip: the hip joint holds next to nothing, its drive as much as that of the knee.
    expect(Math.abs(sheet.joints.hip.standTorque.si)).toBeGreaterThan(0.5 * Math.abs(sheet.joints.knee.standTorque.si))
  })

  test.each([leg, fourBar])('inertia at the drums is that of the kinetic energy', (one) => {
    const bench = benchLeg(one)
    const pose = poseOf(bench)
    const n = new RodGeometry(bench.x).ratio(pose[2])
    const row = (hip: number, knee: number) => {
      const out = new Float64Array(3)
      legInverse(bench, 0).torqueInto(out, 0, Float64Array.from(pose), new Float64Array(3), Float64Array.of(0, hip, knee), 0, 0, 0)
      return [out[1]!, out[2]!] as const
    }
    const [[hh, hk], [, kk]] = [row(1, 0), row(0, 1)]
    // A drum that turns by itself: rates of the joints from those of the drums, twice the energy at one radian a second.
    const energy = (hip: number, knee: number) => hip * hip * hh + 2 * hip * knee * hk + knee * knee * kk
    expect(legInertia(bench, 'hip')).toBeCloseTo(energy(1, -1 / n), 12)
    expect(legInertia(bench, 'knee')).toBeCloseTo(energy(0, 1 / n), 12)
  })

  test('the current limit of the knee protects the rod: a thin one that is pushed takes it down to its buckling', () => {
    const thin = withFields(leg, { 'joints.knee.through.diameter': '3.6 mm' })
    const never = controlSheet(thin).joints.knee.currentLimits.at(-1)!
    expect(never.protects).toMatch(/buckles when it is pushed$/)
    expect(never.peakPhase.si).toBeLessThan(sheet.joints.knee.currentLimits.at(-1)!.peakPhase.si)
    // Euler with both ends pinned; the crank bears most where it stands most aslant, 40 degrees from the rod.
    const inertia = (Math.PI * 0.0036 ** 4) / 64
    const most = ((Math.PI ** 2 * 68.9e9 * inertia) / 0.165 ** 2) * 0.034 * Math.sin(40 * degree)
    expect(never.jointTorque.si / most).toBeGreaterThan(0.9)
    expect(never.jointTorque.si / most).toBeLessThan(1.05)
  })

  test('the table of drum and motor, and its rules', () => {
    const { rows, rules } = controlSheet(fourBar).throughHip!
    expect(rows[0]!.kneeAngle.in('deg')).toBeCloseTo(25, 9)
    expect(rows.at(-1)!.kneeAngle.in('deg')).toBeCloseTo(125, 9)
    // The slope of the column of the drum is the ratio.
    for (let i = 1; i < rows.length - 1; i++) {
      const slope = (rows[i + 1]!.drumAngle.si - rows[i - 1]!.drumAngle.si) / (rows[i + 1]!.kneeAngle.si - rows[i - 1]!.kneeAngle.si)
      expect(slope / rows[i]!.ratio.si).toBeCloseTo(1, 1)
      expect(rows[i]!.motorAngle.si / rows[i]!.drumAngle.si).toBeCloseTo(-101.6 / 16, 9)
    }
    expect(rules.join()).toMatch(/hip less that of the drum of the knee/)
    expect(controlText(sheet)).toContain('Knee through the hip')
    expect(controlSheet(describeLeg(readFileSync(new URL('./legs/workbench.yaml', import.meta.url), 'utf8'))).throughHip).toBeUndefined()
  })

  test('an encoder error of the hip enters the knee', () => {
    const row = sheet.encoder[0]!
    expect(row.atJoint.knee.si).toBeCloseTo((2 * row.atMotor.si) / (101.6 / 16), 12)
    expect(row.atJoint.hip.si).toBeCloseTo(row.atMotor.si / (101.6 / 16), 12)
  })

  test('foot path and trajectory follow the drums', () => {
    expect(JSON.stringify(legMotion(leg).coupling)).not.toBe(JSON.stringify(legMotion(fourBar).coupling))
    const table = strideTrajectory(leg, { rate: '20 Hz' })
    const column = (name: string) =>
      table
        .toCSV()
        .split('\n')
        .slice(1, -1)
        .map((line) =>
          Number(
            line.split(',')[
              table
                .toCSV()
                .split('\n')[0]!
                .split(',')
                .findIndex((one) => one.startsWith(name))
            ],
          ),
        )
    const [hip, knee, drum, motor] = ['joint angle hip', 'joint angle knee', 'drum angle knee', 'motor angle knee'].map(column) as [
      number[],
      number[],
      number[],
      number[],
    ]
    for (const i of hip.keys()) {
      expect(drum[i]!).toBeCloseTo(hip[i]! + knee[i]!, 6)
      expect(motor[i]! / drum[i]!).toBeCloseTo(-101.6 / 16, 6)
    }
  })
})

describe('assembly', () => {
  const plan = assemblyPlan(leg)
  test('the rod has its length, its tolerance, its pins and its order of work', () => {
    const { rod } = plan
    // Half a degree of the knee over the arm of the rocker where it stands most aslant.
    expect(rod!.tolerance.in('mm')).toBeCloseTo(Math.floor(100 * 0.5 * degree * 34 * Math.sin(40 * degree)) / 100, 9)
    expect(rod!.betweenPins.in('mm')).toBe(165)
    expect(rod!.transmissionAngles.map((one) => one.in('deg'))).toEqual([expect.closeTo(40, 9), expect.closeTo(40, 9)])
    const text = assemblyText(plan)
    for (const part of ['pin to pin 165 mm', 'towards the front', 'Fingers out of the linkage', 'hip held at -15°'])
      expect(text).toContain(part)
    const order = plan.steps.map((step) => step.slice(0, 16))
    const at = (start: string) => order.findIndex((one) => one.startsWith(start))
    expect(at('Join crank')).toBeGreaterThan(at('Fit the hip'))
    expect(at('Lay the cord')).toBeGreaterThan(at('Before any cord'))
    expect(plan.shopping.map(({ item }) => item)).toEqual(
      expect.arrayContaining(['motor', 'controller', 'bar for the rod', 'bearing', 'nut', 'washer']),
    )
  })

  test('the frame of the knee drive is its plate on the body', () => {
    const cold = (material: string) => assemblyPlan(withFields(leg, { 'plates.kneePlate.material': material })).tensioners[1]!.end.si
    expect(cold('aluminium 6061-T6')).not.toBeCloseTo(cold('PC'), 6)
  })

  test('the workshop page holds all three sheets', () => {
    const page = htmlPlans(leg)
    for (const part of ['assembly plan', 'control sheet', 'plan for the test stand']) expect(page).toContain(part)
  })
})

describe('stand and learning', () => {
  test('the windup of the knee is measured at its drum, and learnt from there', () => {
    const measurement = standPlan(leg).measurements.find(({ log }) => log === 'windup knee')!
    expect(measurement.how).toMatch(/^Take the rod off/)
    expect(standPlan(leg).measurements.find(({ log }) => log === 'footDeflection')!.how).toMatch(/both motors/)
    const torques = [0, 2, 4, 6, 8, 10, 8, 6, 4, 2, 0]
    const angles = windups(benchLeg(leg), 'knee', 20e3, torques)
    const log = `joint torque [N m],joint angle [deg]\n${torques.map((x, i) => `${x},${angles[i]! / degree}`).join('\n')}\n`
    const { moved } = learn(leg, { 'windup knee': log }, { cases: ['walk'] })
    expect(moved[0]).toMatchObject({ path: 'cords.braid.axialRigidity', state: 'corrected' })
    expect(Number.parseFloat(moved[0]!.after)).toBeGreaterThan(19)
    expect(Number.parseFloat(moved[0]!.after)).toBeLessThan(21)
  })
})
