// The edges of what the formulas accept, and where their notes begin.
import { describe, expect, test } from 'vitest'
import {
  extensionSpringForce,
  extensionSpringHook,
  roundSection,
  roundTorsion,
  shaftOverhang,
  shearCoefficient,
  thinWalledTorsion,
  torsionSpringTorque,
} from '../../src/structures/index.js'

const notes = (answer: { readonly notes?: readonly { readonly text: string }[] | undefined }) =>
  answer.notes?.map(({ text }) => text).join() ?? ''

describe('tubes', () => {
  test('a tube of any wall is accepted', () => {
    const { area, secondMoment } = roundSection({ diameter: '10 mm', holeDiameter: '9.9 mm' })
    expect(area.in('mm^2')).toBeCloseTo((Math.PI / 4) * (100 - 98.01), 9)
    expect(secondMoment.in('mm^4')).toBeCloseTo((Math.PI / 64) * (1e4 - 9.9 ** 4), 8)
    expect(
      roundTorsion({ torque: '1 N m', diameter: '10 mm', holeDiameter: '6 mm', length: '1 m', shearModulus: '1 GPa' }).twist.si,
    ).toBeGreaterThan(0)
  })

  test('a shear coefficient needs a wall', () => {
    const tube = { outerDiameter: '10 mm', poissonRatio: 0.3 } as const
    expect(shearCoefficient({ ...tube, innerDiameter: '9.9 mm' }).si).toBeGreaterThan(0.5)
    for (const innerDiameter of ['10 mm', '12 mm'] as const)
      expect(() => shearCoefficient({ ...tube, innerDiameter })).toThrow('must be smaller than the outer diameter')
  })

  test('the middle line of a round tube is as long as a circle round its area', () => {
    const tube = { torque: '1 N m', enclosedArea: '314.159265358979 mm^2', wall: '1 mm', shearModulus: '1 GPa' } as const
    expect(thinWalledTorsion({ ...tube, perimeter: '62.8318530717959 mm' }).rigidity.si).toBeGreaterThan(0)
    expect(() => thinWalledTorsion({ ...tube, perimeter: '62.83185 mm' })).toThrow('perimeter')
  })
})

describe('overhang of a shaft', () => {
  const steel = { outerDiameter: '20 mm', innerDiameter: '8 mm', modulus: '3 GPa', shearModulus: '1.2 GPa' } as const
  const given = { load: '120 N', torque: '3 N m', span: '30 mm', between: steel } as const
  const long = { length: '15 mm', ...steel } as const

  test('the deflection is that of bending and of shear together', () => {
    const { deflection, bendingDeflection, shearDeflection } = shaftOverhang({ ...given, overhang: [long] })
    expect(deflection.si / (bendingDeflection.si + shearDeflection.si)).toBeCloseTo(1, 12)
    expect(shearDeflection.si).toBeGreaterThan(0.01 * deflection.si)
  })

  test('Poisson’s ratio may be from 0 to a half', () => {
    for (const shearModulus of ['1 GPa', '1.5 GPa'] as const)
      expect(
        shaftOverhang({ ...given, between: { ...steel, shearModulus }, overhang: [{ ...long, shearModulus }] }).slope.si,
      ).toBeGreaterThan(0)
    for (const shearModulus of ['0.99 GPa', '1.51 GPa'] as const) {
      expect(() => shaftOverhang({ ...given, between: { ...steel, shearModulus }, overhang: [long] })).toThrow(
        /between.*a third and a half/s,
      )
      expect(() => shaftOverhang({ ...given, overhang: [long, { ...long, shearModulus }] })).toThrow(/overhang.*a third and a half/s)
    }
  })

  test('every section needs a wall', () => {
    for (const innerDiameter of ['20 mm', '21 mm'] as const) {
      expect(() => shaftOverhang({ ...given, between: { ...steel, innerDiameter }, overhang: [long] })).toThrow(
        /between.*wider than its bore/s,
      )
      expect(() => shaftOverhang({ ...given, overhang: [long, { ...long, innerDiameter }] })).toThrow(/overhang.*wider than its bore/s)
    }
  })

  test('one stub of half its diameter among longer sections is noted', () => {
    const noteOf = (...lengths: readonly `${number} mm`[]) =>
      notes(shaftOverhang({ ...given, overhang: lengths.map((length) => ({ ...long, length })) }).deflection)
    expect(noteOf('15 mm', '11 mm')).toBe('')
    expect(noteOf('15 mm', '10 mm')).toContain('by an estimate only')
    expect(noteOf('9 mm', '15 mm')).toContain('by an estimate only')
  })
})

describe('springs', () => {
  test('an extension spring of its free length hangs loose, and pulls from there on with its initial tension', () => {
    const spring = { freeLength: 0.02, initialTension: 3, rate: 700 }
    for (const length of [0.019, 0.02])
      expect(extensionSpringForce.si({ ...spring, length })).toEqual({ force: 0, energy: 0, state: 'loose' })
    expect(extensionSpringForce.si({ ...spring, length: 0.02 + 1e-12 })).toMatchObject({ state: 'stretched' })
    expect(extensionSpringForce.si({ ...spring, length: 0.02 + 1e-12 }).force).toBeCloseTo(3, 8)
  })

  test('hook and bend are wider than the wire, and a bend of the wire’s diameter carries no note', () => {
    const hook = { force: '50 N', wireDiameter: '2 mm', coilDiameter: '12 mm', hookRadius: '6 mm', bendRadius: '2 mm' } as const
    expect(notes(extensionSpringHook(hook).shearStress)).toBe('')
    expect(notes(extensionSpringHook({ ...hook, bendRadius: '1.99 mm' }).shearStress)).toContain('a bend of at least the wire diameter')
    for (const radius of ['1 mm', '0.9 mm'] as const) {
      expect(() => extensionSpringHook({ ...hook, hookRadius: radius })).toThrow(/hookRadius .*half the wire diameter/)
      expect(() => extensionSpringHook({ ...hook, bendRadius: radius })).toThrow(/bendRadius .*half the wire diameter/)
    }
  })

  test('a torsion spring that its legs do not touch has no torque, of either sign', () => {
    for (const winds of ['growing', 'falling'] as const) {
      const { torque } = torsionSpringTorque.si({ jointAngle: winds === 'growing' ? -1 : 1, freeAngle: 0, winds, rate: 2 })
      expect(Object.is(torque, 0)).toBe(true)
    }
  })
})
