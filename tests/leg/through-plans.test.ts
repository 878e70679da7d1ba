import { describe, expect, test } from 'vitest'
import {
  assemblyPlan,
  assemblyText,
  assessRobot,
  controlSheet,
  controlText,
  learn,
  legUrdf,
  standPlan,
  strideTrajectory,
  withFields,
} from '../../src/leg/index.js'
import hand from '../oracles/leg-through.json' with { type: 'json' }
import { beltRevised, cordKnee } from './through-legs.js'

const legs = [
  ['belt', beltRevised, 48 / 40],
  ['crossed cord', cordKnee, -65.6 / 53.6],
] as const

describe.each(legs)('the control sheet of a knee behind a %s', (_, leg, ratio) => {
  const sheet = controlSheet(leg)

  test('the table turns drum and motor by the ratio, and the limits of the motor are the corners of hip and knee', () => {
    const { rows } = sheet.throughHip!
    for (const row of rows) {
      expect(row.drumAngle.si).toBeCloseTo(ratio * row.kneeAngle.si, 12)
      expect(row.ratio.si).toBeCloseTo(ratio, 12)
    }
    const turned = Math.abs(rows.at(-1)!.drumAngle.si - rows[0]!.drumAngle.si)
    const { hip, knee } = leg.joints
    expect(turned).toBeCloseTo(Math.abs(ratio) * (knee.range.highest.si - knee.range.lowest.si), 12)
    const [lowest, highest] = sheet.joints.knee.motorLimits
    const motor = (turned + hip.range.highest.si - hip.range.lowest.si) * sheet.joints.knee.ratio.si
    expect(Math.abs(highest.si - lowest.si)).toBeCloseTo(motor, 9)
  })

  test('its rules state the losses of the second stage', () => {
    expect(controlText(sheet)).toContain('along the upper link loses')
  })
})

test('the current limits protect the belt along the upper link, and a weaker one lowers them', () => {
  const limit = (leg: typeof beltRevised) => controlSheet(leg).joints.knee.currentLimits.find(({ what }) => what === 'absolute maximum')!
  const now = limit(beltRevised)
  expect(now.protects).toContain('tooth belt along the upper link: climbs out of the small pulley and jumps a tooth')
  const weaker = limit(withFields(beltRevised, { 'joints.knee.through.pretension': '600 N' }))
  expect(weaker.peakPhase.si).toBeLessThan(0.8 * now.peakPhase.si)
})

test('a crossed cord turns the knee against its drum, so that the sign test says the other way', () => {
  const moves = (leg: typeof beltRevised) => controlSheet(leg).commissioning.find((step) => step.startsWith('Sign of the knee'))!
  // The belts of the shingle carrier turn knee and motor the same way; both cords of the other leg cross.
  expect(moves(beltRevised)).toContain('folds backward')
  expect(moves(cordKnee)).toContain('folds backward')
})

describe('the assembly plan', () => {
  test('sets the belt along the upper link by the distance of hip and knee', () => {
    const plan = assemblyPlan(beltRevised)
    const work = plan.drives.find(({ kind }) => kind === 'beltAlongLink')!
    expect(work.joint).toBe('knee')
    const value = (what: string) => work.sizes.find((size) => size.what === what)!.value
    expect(value('belt')).toContain('124 teeth')
    expect(value('pulley on the hip axis')).toContain('40 teeth, pitch diameter 63.66 mm')
    expect(value('pulley on the knee')).toContain('48 teeth, pitch diameter 76.39 mm')
    expect(value('distance of hip and knee, tensioned')).toBe(`${(1000 * hand.axes.set).toPrecision(4)} mm`)
    expect(work.problems).toEqual([])
    expect(assemblyText(plan)).toContain('belt along the upper link of the knee')
    const beside = plan.shopping.filter(({ item }) => item !== 'filament' && item !== 'stock')
    expect(beside.filter(({ remark }) => remark.includes('upper link')).map(({ item }) => item)).toEqual(['tooth belt', 'pulley', 'pulley'])
    const short = assemblyPlan(withFields(beltRevised, { 'belts.link.teeth': 120 }))
    expect(short.problems.join()).toContain('a belt of 120 teeth along the upper link')
  })

  test('cuts, lays and tensions the cord along the upper link', () => {
    const plan = assemblyPlan(cordKnee)
    expect(plan.shopping.some(({ remark }) => remark.includes('drum of the cord along the upper link'))).toBe(true)
    // The drum on the hip axis is of the material of that on the knee, or of its own.
    const filament = (leg: typeof cordKnee, size: string) =>
      assemblyPlan(leg).shopping.find((line) => line.item === 'filament' && line.size === size)?.remark
    expect(filament(cordKnee, 'PC')).toContain('drum of that cord on the hip axis')
    const own = assemblyPlan(withFields(cordKnee, { 'joints.knee.through.hipDrum.material': 'aluminium 6061-T6' })).shopping
    expect(own.find(({ remark }) => remark.includes('drum of that cord on the hip axis'))).toMatchObject({
      item: 'stock',
      size: 'aluminium 6061-T6, round bar of 53.6 mm, 16 mm long',
    })
    expect(() => withFields(cordKnee, { 'joints.knee.through.hipDrum.material': 'unobtainium' })).toThrow(/hipDrum.material/)
    const work = plan.drives.find(({ kind }) => kind === 'cordAlongLink')!
    const value = (what: string) => work.sizes.find((size) => size.what === what)!.value
    expect(value('spans')).toBe('crossed')
    // Three turns, and what the crossed spans wrap around the drum on the hip axis: half a turn and twice their lean.
    const lean = Math.asin((0.0328 + 0.0268) / 0.165)
    expect(Number.parseFloat(value('turns on the drum on the hip axis'))).toBeCloseTo(3 + (Math.PI + 2 * lean) / (2 * Math.PI), 1)
    expect(work.steps[0]).toContain('75°')
    expect(work.problems.join()).toContain('tensioner of the cord along the upper link')
    // The cords of both drives stay what they are.
    expect(plan.windings.map(({ joint }) => joint)).toEqual(['hip', 'knee'])
  })
})

test('the stand takes belt or cord off the knee, and predicts the drive to the hip axis alone', () => {
  const of = (leg: typeof beltRevised) => standPlan(leg).measurements
  const knee = of(beltRevised).filter(({ joint }) => joint === 'knee')
  for (const id of ['windup', 'freePlay', 'efficiency'] as const)
    expect(knee.find((one) => one.id === id)!.how).toContain('Take the belt along the upper link off')
  const softer = of(withFields(beltRevised, { 'belts.link.axialRigidity': '100 kN' })).filter(({ joint }) => joint === 'knee')
  expect(softer.find(({ id }) => id === 'windup')!.predicted.si).toBe(knee.find(({ id }) => id === 'windup')!.predicted.si)
  expect(of(cordKnee).find(({ id, joint }) => id === 'windup' && joint === 'knee')!.how).toContain('Take the cord along the upper link off')
})

test('play that the stand reads with the belt along the link taken off becomes the clearance of the first belt', () => {
  const play = (2 * 0.08e-3) / ((120 * 5e-3) / (2 * Math.PI))
  const rows = [0, 1, 2, 3, 4, 5].map((i) => ((play * 180) / Math.PI) * (1 + 0.01 * Math.sin(13 * i)))
  const learnt = learn(beltRevised, { 'freePlay knee': `free play [deg]\n${rows.join('\n')}\n` }, { cases: ['stand'] })
  expect(learnt.moved.map(({ path }) => path)).toContain('belts.wide.clearance')
  expect(learnt.leg.belts.wide!.clearance.si / 0.08e-3).toBeCloseTo(1, 1)
})

test.each(legs)('robot, stride and URDF of a knee behind a %s', (_, leg, ratio) => {
  const robot = assessRobot(leg)
  expect(robot.landings.some(({ joint }) => joint === 'knee')).toBe(true)
  const { columns } = strideTrajectory(leg)
  const of = (name: string) => (columns.find((one) => one.name === name) as unknown as { values: Float64Array }).values
  const [hip, knee, drum] = [of('joint angle hip'), of('joint angle knee'), of('drum angle knee')]
  for (let i = 0; i < drum.length; i += 97) expect(drum[i]).toBeCloseTo(hip[i]! + ratio * knee[i]!, 9)
  // Power is the same in drums and joints, so that hip and knee torques follow.
  const text = legUrdf(leg)
  expect(text).toMatch(/a (belt|cord) drives the knee from the hip axis/)
  const speed = Number(/joint name="knee"[\s\S]*?velocity="([\d.]+)"/.exec(text)![1])
  const motor = leg.motors[leg.joints.knee.motor as string]!
  const turns = Math.abs(ratio) * controlSheet(leg).joints.knee.ratio.si
  expect(speed).toBeCloseTo((motor.speedConstant.si * leg.supply.voltage.si) / turns, 6)
})
