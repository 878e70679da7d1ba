import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { calculationOf, placeOf } from '../../src/leg/calculation.js'
import {
  assemblyPlan,
  assemblyText,
  assess,
  controlSheet,
  controlText,
  describeLeg,
  legDrawingNamed,
  legNumbers,
  withFields,
} from '../../src/leg/index.js'
import { springForce } from '../../src/leg/parts/springs/values.js'
import { force as outputForce, tilt as outputTilt } from '../../src/leg/parts/transmission/output-bearing/values.js'
import { motorForce, freePlay as ownPlay, stiffnessAtRest as ownStiffness } from '../../src/leg/parts/transmission/questions.js'
import { freePlay, stiffnessAtRest } from '../../src/leg/parts/transmission/through-hip/whole.js'
import { SECOND_STAGE } from '../../src/leg/second-stage.js'
import byRod from '../oracles/leg-rod.json' with { type: 'json' }
import hand from '../oracles/leg-through.json' with { type: 'json' }
import { TORSION } from './sprung-legs.js'
import { BOX, beltOnGearbox, rodOnGearbox } from './through-legs.js'

const off = (one: number, other: number) => Math.abs(one / other - 1)
type Names = Parameters<typeof placeOf>[1]
const calculated = (leg: typeof beltOnGearbox) => {
  const calculation = calculationOf(legNumbers(leg))
  const at = (names: Names) =>
    calculation.instances.implied(placeOf(calculation, { leg: 'leg', air: 'normal', age: 'new', ...names })) as never
  return { calculation, at }
}

describe('a motor or gearbox that turns pulley, drum or crank on the hip axis itself (oracles/leg-through.py, leg-rod.py)', () => {
  const outputs = (leg: typeof beltOnGearbox, event: string) => {
    const one = calculated(leg)
    const place = one.at({ joint: 'knee', event } as Names)
    return { ...one, force: one.calculation.get(outputForce, place), tilt: one.calculation.get(outputTilt, place), place }
  }
  test.each(['stand', 'dropEnd'] as const)('its bearings and bolts bear both branches of the belt: %s', (event) => {
    const leg = withFields(beltOnGearbox, { 'joints.knee.through.efficiency': 1 })
    const { force, tilt, calculation, place } = outputs(leg, event)
    expect(off(force, hand[event].pulley)).toBeLessThan(1e-9)
    expect(off(tilt, hand[event].pulley * 0.016)).toBeLessThan(1e-9)
    expect(off(calculation.get(motorForce, place), hand[event].pulley)).toBeLessThan(1e-9)
  })
  test.each(['drop', 'dropEnd'] as const)('those of a crank bear the rod: %s', (event) => {
    const { force, tilt } = outputs(rodOnGearbox, event)
    expect(off(force, byRod[event].rod)).toBeLessThan(1e-9)
    expect(off(tilt, byRod[event].rod * 0.016)).toBeLessThan(1e-9)
  })
  test('a bearing of its own under the crank spares them', () => {
    const drum = {
      offset: '14 mm',
      material: 'PC',
      bearing: { size: '12x28x8', pairSpacing: '15 mm', housingDiameter: '41 mm', seatInterference: '0.04 mm' },
    }
    const { notEvaluated } = assess(withFields(rodOnGearbox, { 'joints.knee.through.pivots': { drum } } as never), { cases: ['stand'] })
    expect(notEvaluated.find(({ id }) => id === 'outputBearing.radial')?.why).toBe('a ball bearing carries its drum')
  })
  test('gearbox and belt give in series', () => {
    const { calculation, at } = calculated(beltOnGearbox)
    const belt = calculation.get(ownStiffness, at({ joint: SECOND_STAGE }))!
    expect(off(1 / calculation.get(stiffnessAtRest, at({ joint: 'knee' }))!, 1 / 4000 + 1.2 ** 2 / belt)).toBeLessThan(1e-12)
    const play = calculation.get(freePlay, at({ joint: 'knee' })) - 1.2 * calculation.get(ownPlay, at({ joint: SECOND_STAGE }))
    expect(play).toBeCloseTo((0.15 * Math.PI) / 180, 12)
  })
  test('plans and drawing speak of what it turns, the control sheet of its ratio', () => {
    const assembly = assemblyText(assemblyPlan(beltOnGearbox))
    expect(assembly).toContain('Bolt the pulley on the hip axis on the face of the output, its middle plane no farther than 16 mm')
    expect(assembly).toContain('move the pulley on the hip axis, before what runs to the knee is laid on it')
    expect(controlText(controlSheet(rodOnGearbox))).toContain('Its motor turns -6 times as far')
    const drawing = legDrawingNamed(assess(rodOnGearbox, { cases: ['stand', 'drop'] }), 'output-stack-knee')
    expect(drawing?.svg).toContain('plane of the crank')
  })
  test('a rod beside the links tilts the drive that carries the hip by its force times its distance', () => {
    const carried = withFields(rodOnGearbox, {
      'joints.hip.drive': { ...BOX, radialLoad: '4 kN' },
      'joints.hip.shaft': undefined,
      'shafts.hipShaft': undefined,
      'cords.braid': undefined,
      'bearings.hipBearings': undefined,
    } as never)
    const tiltOf = (leg: typeof carried) => {
      const { calculation, at } = calculated(leg)
      return calculation.get(outputTilt, at({ joint: 'hip', event: 'drop' } as Names))
    }
    const beside = tiltOf(withFields(carried, { 'joints.knee.through.planeOffset': '-17 mm' }))
    expect(off(beside - tiltOf(carried), byRod.drop.rod * 0.017)).toBeLessThan(1e-9)
  })
  test('a stiffer pull or a longer overhang loads them more', () => {
    const tighter = outputs(withFields(beltOnGearbox, { 'joints.knee.through.pretension': '900 N' }), 'stand')
    expect(tighter.force).toBeGreaterThan(outputs(beltOnGearbox, 'stand').force)
    const farther = outputs(withFields(beltOnGearbox, { 'joints.knee.drive.overhang': '30 mm' }), 'stand')
    expect(off(farther.tilt, (outputs(beltOnGearbox, 'stand').tilt * 30) / 16)).toBeLessThan(1e-12)
  })
})

test('the spring of a joint that its motor carries presses on the bearings of the motor too', () => {
  const desk = describeLeg(readFileSync(new URL('../../examples/desk-leg-revised.yaml', import.meta.url), 'utf8'))
  const radial = (leg: typeof desk) =>
    assess(leg, { cases: ['drop'] }).checks.find(({ id, joint }) => id === 'outputBearing.radial' && joint === 'hip')!.demand.si
  const sprung = withFields(desk, {
    'joints.hip.spring': {
      ...TORSION,
      wireDiameter: '2 mm',
      coilDiameter: '20 mm',
      mandrel: undefined,
      seat: { material: 'PC', length: '20 mm' },
    },
  } as never)
  const calculation = calculationOf(legNumbers(sprung))
  const place = calculation.instances.implied(placeOf(calculation, { leg: 'leg', joint: 'hip' })) as never
  expect(off(radial(sprung) - radial(desk), calculation.get(springForce, place)!)).toBeLessThan(1e-9)
})
