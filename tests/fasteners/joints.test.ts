import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  frustumStiffness,
  jointLoads,
  loadFactor,
  memberCompliance,
  metricThread,
  preloadFromTorque,
  tighteningTorque,
} from '../../src/fasteners/index.js'

const near = (a: number, b: number, relative: number) =>
  expect(Math.abs(a - b), `${a} against ${b}`).toBeLessThanOrEqual(relative * Math.max(Math.abs(a), Math.abs(b)))
const range = (min: number, max: number) => fc.double({ min, max, noNaN: true })

describe('clamped joints', () => {
  test('the load factor goes from 0 to 1 with the softness of the parts', () => {
    expect(loadFactor.si({ boltCompliance: 1, memberCompliance: 0 })).toBe(0)
    near(loadFactor.si({ boltCompliance: 1e-12, memberCompliance: 1 }), 1, 1e-11)
  })

  test('bolt load is face load and outside load together, open or closed', () => {
    fc.assert(
      fc.property(range(0, 5000), range(0, 20000), range(0, 0.99), (clampLoad, externalLoad, factor) => {
        const { boltLoad, faceLoad } = jointLoads.si({ clampLoad, externalLoad, loadFactor: factor })
        near(boltLoad, faceLoad + externalLoad, 1e-12)
        expect(faceLoad).toBeGreaterThanOrEqual(0)
      }),
    )
  })

  const ends = { headBearing: 0.009, nutBearing: 0.009, end: 'nut' as const, halfAngle: Math.PI / 6 }

  test('a stack of one material is two frusta; cutting it into layers changes nothing', () => {
    fc.assert(
      fc.property(range(0.001, 0.03), range(0.05, 0.95), (thickness, cut) => {
        const layer = { modulus: 2e9, outerDiameter: 1, holeDiameter: 0.0045 }
        const whole = memberCompliance.si({ ...ends, layers: [{ ...layer, thickness }] })
        const layers = [
          { ...layer, thickness: cut * thickness },
          { ...layer, thickness: (1 - cut) * thickness },
        ]
        near(memberCompliance.si({ ...ends, layers }).compliance, whole.compliance, 1e-11)
        const half = { modulus: 2e9, thickness: thickness / 2, narrowDiameter: 0.009, holeDiameter: 0.0045, halfAngle: Math.PI / 6 }
        near(whole.compliance, 2 / frustumStiffness.si(half), 1e-11)
      }),
    )
  })

  test('a narrower boss is softer, and one narrower than the head is a sleeve', () => {
    const at = (outerDiameter: number) =>
      memberCompliance.si({ ...ends, layers: [{ thickness: 0.012, modulus: 2e9, outerDiameter, holeDiameter: 0.0045 }] }).compliance
    fc.assert(
      fc.property(range(0.005, 0.03), (d) => {
        expect(at(d * 1.05)).toBeLessThanOrEqual(at(d) * (1 + 1e-12))
      }),
    )
    near(at(0.008), (4 * 0.012) / (Math.PI * 2e9 * (0.008 ** 2 - 0.0045 ** 2)), 1e-12)
  })

  test('a layer narrower than the cone sends it on with its own diameter, from either side', () => {
    fc.assert(
      fc.property(range(0.0095, 0.02), range(0.02, 0.05), (narrow, thickness) => {
        const spacer = { thickness, modulus: 70e9, outerDiameter: narrow, holeDiameter: 0.0045 }
        const plate = { thickness: 0.004, modulus: 2e9, outerDiameter: 0.08, holeDiameter: 0.0045 }
        const tapped = { ...ends, end: 'tapped' as const }
        const behind = memberCompliance.si({ ...tapped, layers: [spacer, plate] }).layerCompliances[1]!
        near(behind, memberCompliance.si({ ...tapped, headBearing: narrow, layers: [plate] }).compliance, 1e-12)
        const down = memberCompliance.si({ ...ends, layers: [spacer, plate] }).layerCompliances
        const up = memberCompliance.si({ ...ends, layers: [plate, spacer] }).layerCompliances
        near(down[0]!, up[1]!, 1e-12)
        near(down[1]!, up[0]!, 1e-12)
      }),
    )
  })

  test("torque and preload are each other's way back", () => {
    const friction = range(0.01, 0.4)
    fc.assert(
      fc.property(
        fc.constantFrom(...metricThread.designations),
        range(1, 1e5),
        friction,
        friction,
        (name, preload, inThread, underHead) => {
          const thread = metricThread.si(name)
          const ring = { bearingDiameter: 2 * thread.diameter, holeDiameter: 1.1 * thread.diameter, prevailingTorque: 0.3 }
          const x = { thread, threadFriction: inThread, headFriction: underHead, ...ring }
          const { torque } = tighteningTorque.si({ ...x, preload })
          expect(Math.abs(preloadFromTorque.si({ ...x, torque }).preload - preload)).toBeLessThan(1e-9 * (preload + 1000))
        },
      ),
    )
  })
})
