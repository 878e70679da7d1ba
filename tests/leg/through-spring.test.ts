import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { calculationOf, placeOf } from '../../src/leg/calculation.js'
import { assess, checkReserves, controlSheet, controlText, describeLeg, legNumbers, withFields } from '../../src/leg/index.js'
import { bendingMoment } from '../../src/leg/parts/links/loads.js'
import { driveTorque, pinLoad, stride } from '../../src/leg/parts/motion/values.js'
import { mostTorque } from '../../src/leg/parts/springs/values.js'
import { tensions } from '../../src/leg/parts/transmission/questions.js'
import { force as rodForce } from '../../src/leg/parts/transmission/through-hip/checks.js'
import { SECOND_STAGE } from '../../src/leg/second-stage.js'
import hand from '../oracles/leg-through.json' with { type: 'json' }
import { EXTENSION, TORSION } from './sprung-legs.js'
import { sprungBelt as belt, type beltRevised, cordKnee } from './through-legs.js'

const off = (one: number, other: number) => Math.abs(one / other - 1)
type Names = Parameters<typeof placeOf>[1]
const calculated = (leg: typeof beltRevised) => {
  const calculation = calculationOf(legNumbers(leg))
  const at = (names: Names) =>
    calculation.instances.implied(placeOf(calculation, { leg: 'leg', air: 'normal', age: 'new', ...names })) as never
  return { calculation, at }
}
const heath = describeLeg(readFileSync(new URL('../../examples/heath-leg-revised.yaml', import.meta.url), 'utf8'))
const rod = withFields(heath, { 'joints.knee.spring': { ...TORSION, seat: { material: 'PC', length: '40 mm' } } })
const cord = withFields(cordKnee, { 'joints.knee.spring': { ...EXTENSION, anchor: { ...EXTENSION.anchor, material: 'PC' } } })

describe('a spring at a knee that is driven through the hip', () => {
  // The rate of a spring at hand is the one of the document here.
  const { calculation, at } = calculated(withFields(belt, { 'joints.knee.through.efficiency': 1 }))
  test.each(['stand', 'dropEnd'] as const)(
    'drums and belt hold the rest, by the balance of each link (oracles/leg-through.py): %s',
    (event) => {
      // In a landing the spring may break; here it relieves, so that the leg without it is the harder one.
      const found = event === 'stand' ? hand.sprung.stand : hand.dropEnd
      if (event === 'dropEnd')
        for (const part of ['knee', 'kneeDrum', 'hipDrum', 'taut'] as const)
          expect(Math.abs(found[part])).toBeGreaterThan(Math.abs(hand.sprung.dropEnd[part]))
      const loads = calculation.get(stride, at({ stance: event }))
      expect(off(loads.kneeHeldTorque, found.knee)).toBeLessThan(1e-9)
      expect(off(loads.kneeDriveTorque, found.kneeDrum)).toBeLessThan(1e-9)
      expect(off(loads.hipDriveTorque, found.hipDrum)).toBeLessThan(1e-9)
      const stage = at({ joint: SECOND_STAGE, event })
      expect(off(calculation.get(driveTorque, stage), found.knee)).toBeLessThan(1e-9)
      expect(off(calculation.get(tensions, stage)!.taut, found.taut)).toBeLessThan(1e-9)
      // The joint bears the whole of it.
      expect(off(loads.kneeTorque, hand[event].knee)).toBeLessThan(1e-9)
    },
  )

  test('the upper link bears the spring at its end', () => {
    const spring = calculation.get(mostTorque, at({ joint: 'knee' }))!
    expect(off(spring, (2.5 * 110 * Math.PI) / 180)).toBeLessThan(1e-9)
    const moment = (event: string) => calculation.get(bendingMoment, at({ link: 'upper', event } as Names))
    expect(moment('stand')).toBe(spring)
    expect(off(moment('dropEnd'), Math.abs(hand.dropEnd.hipDrum))).toBeLessThan(1e-9)
  })

  test('a rod bears less under load, and is pulled or pushed by the spring on the shelf', () => {
    const [sprung, plain] = [calculated(rod), calculated(heath)]
    const forces = ({ calculation: one, at: where }: typeof sprung, event: string) => one.get(rodForce, where({ event } as Names))
    expect(forces(sprung, 'stand')).toBeLessThan(forces(plain, 'stand'))
    // In a landing the spring may break.
    expect(forces(sprung, 'dropEnd')).toBeGreaterThanOrEqual(forces(plain, 'dropEnd'))
    expect(forces(plain, 'shelf')).toBeLessThan(0.2 * forces(sprung, 'shelf'))
    const onShelf = ({ calculation: one, at: where }: typeof sprung) => one.get(pinLoad, where({ event: 'shelf' }))
    expect(onShelf(plain)).toBe(0)
    expect(onShelf(sprung)).toBeGreaterThan(0.9 * forces(sprung, 'shelf'))
  })

  test('whole legs are assessed, and the control sheet takes the spring off before the drums', () => {
    for (const leg of [belt, rod, cord]) {
      const { checks, notEvaluated } = assess(leg, { cases: ['stand', 'coldDrop', 'shelf'] })
      expect(checks.some(({ id }) => id.startsWith('spring.'))).toBe(true)
      expect(checks.filter(({ reserve }) => Number.isNaN(reserve))).toEqual([])
      expect(notEvaluated.some(({ why }) => /not calculated yet/.test(why))).toBe(false)
    }
    expect(controlText(controlSheet(belt))).toContain(
      'Take the torque of a spring, listed with the gravity of the joints, off that of its joint first.',
    )
  })

  test.each([
    ['robot.mass', '14 kg'],
    ['loadCases.events.drop.height', '120 mm'],
    ['joints.knee.spring.anchor.arm', '9 mm'],
  ])('nothing bad raises a reserve of spring or second stage: %s', (path, worse) => {
    const cases = ['stand', 'coldDrop', 'season', 'shelf'] as const
    const [before, after] = [cord, withFields(cord, { [path]: worse } as never)].map((leg) => checkReserves(legNumbers(leg), cases))
    const rose = [...before!].filter(
      ([key, reserve]) => /^(spring|knee(Cord|Drum|Anchor))/.test(key) && (after!.get(key) as number) > reserve * (1 + 1e-9),
    )
    expect(rose).toEqual([])
  })
})
