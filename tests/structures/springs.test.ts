import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { springAcrossJoint } from '../../src/kinematics/index.js'
import { springWire } from '../../src/materials/index.js'
import {
  extensionSpringForce,
  extensionSpringHook,
  helicalSpringRate,
  helicalSpringShear,
  torsionSpringRate,
  torsionSpringTorque,
  woundTorsionSpring,
} from '../../src/structures/index.js'

const range = (min: number, max: number) => fc.double({ min, max, noNaN: true })

describe('springs', () => {
  test('the energy of an extension spring is the integral of its pull over the joint', () => {
    fc.assert(
      fc.property(
        range(0.02, 0.06),
        range(-0.03, 0.03),
        range(0.02, 0.06),
        range(0.01, 0.03),
        range(-1, 1),
        (up, forward, down, ahead, q) => {
          const at = (jointAngle: number) => {
            const { length, arm } = springAcrossJoint.si({
              fixedUp: up,
              fixedForward: forward,
              movingDown: down,
              movingForward: ahead,
              jointAngle,
            })
            const { force, energy } = extensionSpringForce.si({ length, freeLength: 0.005, initialTension: 3, rate: 700 })
            return { energy, torque: -force * arm }
          }
          const h = 1e-4
          const work = (at(q + h).energy - at(q - h).energy) / (2 * h)
          expect(Math.abs(at(q).torque + work)).toBeLessThan(1e-5)
        },
      ),
    )
  })

  test('a torsion spring turns its joint back towards the free angle, from either side one way only', () => {
    fc.assert(
      fc.property(range(-2, 2), range(-2, 2), range(0.1, 5), (jointAngle, freeAngle, rate) => {
        const forward = torsionSpringTorque.si({ jointAngle, freeAngle, winds: 'growing', rate })
        const mirrored = torsionSpringTorque.si({ jointAngle: -jointAngle, freeAngle: -freeAngle, winds: 'falling', rate })
        expect(forward.torque + mirrored.torque).toBe(0)
        expect(forward.torque * (jointAngle - freeAngle)).toBeLessThanOrEqual(0)
        expect(forward.energy).toBe(mirrored.energy)
      }),
    )
  })

  test('more coils are softer, a thicker wire is stiffer and less stressed, a sharper bend more', () => {
    const coil = { wireDiameter: 1.5e-3, coilDiameter: 12e-3 }
    const rate = (activeCoils: number, wireDiameter = 1.5e-3) =>
      helicalSpringRate.si({ ...coil, wireDiameter, activeCoils, shearModulus: 81.5e9 })
    expect(rate(20)).toBeLessThan(rate(10))
    expect(rate(10, 2e-3)).toBeGreaterThan(rate(10))
    const shear = (wireDiameter: number) => helicalSpringShear.si({ force: 50, ...coil, wireDiameter }).shearStress
    expect(shear(2e-3)).toBeLessThan(shear(1.5e-3))
    const hook = (bendRadius: number) => extensionSpringHook.si({ force: 50, ...coil, hookRadius: 6e-3, bendRadius }).shearStress
    expect(hook(2e-3)).toBeGreaterThan(hook(4e-3))
    const legs = (length: number) => torsionSpringRate.si({ ...coil, bodyCoils: 5, legs: length, modulus: 206e9 }).rate
    expect(legs(0.05)).toBeLessThan(legs(0))
  })

  test('a wound coil closes on its pin; thinner wire is stronger', () => {
    const inner = (windup: number) =>
      woundTorsionSpring.si({ wireDiameter: 1.5e-3, coilDiameter: 12e-3, bodyCoils: 4, windup }).innerDiameter
    expect(inner(0)).toBeCloseTo(10.5e-3, 12)
    expect(inner(2)).toBeLessThan(inner(1))
    const strength = (wireDiameter: number) => springWire.si({ wire: 'musicWire', wireDiameter }).tensileStrength
    expect(strength(1e-3)).toBeGreaterThan(strength(2e-3))
  })

  test('what cannot be is rejected, and what nobody coils carries a note', () => {
    const rate = { activeCoils: 10, shearModulus: '80 GPa' } as const
    expect(() => helicalSpringRate({ wireDiameter: '4 mm', coilDiameter: '5 mm', ...rate })).toThrow(
      'must be more than one and a half times the wire diameter',
    )
    expect(() =>
      springAcrossJoint({ fixedUp: '0 mm', fixedForward: '0 mm', movingDown: '0 mm', movingForward: '0 mm', jointAngle: '0 deg' }),
    ).toThrow('must put the ends apart')
    const hook = { force: '1 N', wireDiameter: '2 mm', coilDiameter: '12 mm', hookRadius: '6 mm' } as const
    expect(() => extensionSpringHook({ ...hook, bendRadius: '1 mm' })).toThrow('bendRadius')
    expect(extensionSpringHook({ ...hook, bendRadius: '1.5 mm' }).shearStress.notes).toHaveLength(1)
    expect(helicalSpringRate({ wireDiameter: '1 mm', coilDiameter: '25 mm', ...rate }).notes).toHaveLength(1)
    expect(springWire({ wire: 'stainless', wireDiameter: '4 mm' }).modulus.notes).toHaveLength(1)
  })
})
