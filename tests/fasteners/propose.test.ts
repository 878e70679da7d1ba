import * as fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  clevisPinBending,
  headBearing,
  jointLoads,
  jointSlip,
  lugTearOut,
  metricThread,
  pinBearing,
  pinShear,
  preloadFromTorque,
  proposeBolts,
  proposePin,
} from '../../src/fasteners/index.js'

const fork = {
  force: '250 N',
  widthSpace: '40 mm',
  eyeSpace: '20 mm',
  allowablePressure: '20 MPa',
  allowableTension: '12 MPa',
  allowableShear: '7 MPa',
} as const
const joint = { tension: '120 N', shear: '60 N', washerSpace: '12 mm', allowablePressure: '10 MPa' } as const

describe('pins for a wish', () => {
  test('hold every limit when their own functions work them out again', () => {
    let met = 0
    fc.assert(
      fc.property(fc.double({ min: 20, max: 900, noNaN: true }), fc.double({ min: 15, max: 60, noNaN: true }), (force, width) => {
        const { proposals } = proposePin({ ...fork, force: [force, 'N'], widthSpace: [width, 'mm'] })
        met += proposals.length
        for (const { design } of proposals) {
          const { diameter, cheekThickness, lugThickness, edgeDistance, eyeWidth } = design
          const across = { force: [force, 'N'], diameter } as const
          expect(clevisPinBending({ ...across, cheekThickness, lugThickness, gap: '0.3 mm' }).bendingStress.in('MPa')).toBeLessThan(
            1200.001,
          )
          expect(pinShear(across).peakStress.in('MPa')).toBeLessThan(720.001)
          expect(pinBearing({ ...across, thickness: lugThickness }).peakPressure.in('MPa')).toBeLessThan(16.001)
          expect(lugTearOut({ ...across, edgeDistance, thickness: lugThickness }).shearStress.in('MPa')).toBeLessThan(5.601)
          expect(2 * cheekThickness.in('mm') + lugThickness.in('mm') + 0.6).toBeLessThanOrEqual(width + 1e-9)
          expect(eyeWidth.in('mm')).toBeLessThanOrEqual(20 + 1e-9)
        }
      }),
      { numRuns: 20 },
    )
    expect(met).toBeGreaterThan(40)
  })

  test('a force that no pin carries in this space is refused with the nearest force', () => {
    const { state, refusal } = proposePin({ ...fork, force: '5 kN' })
    expect(state).toBe('refused')
    const force = refusal!.nearest.find(({ input }) => input === 'force')!.met!
    expect(proposePin({ ...fork, force: [force.si, 'N'] }).state).toBe('met')
    expect(proposePin({ ...fork, force: [1.01 * force.si, 'N'] }).state).toBe('refused')
  })
})

describe('bolts for a wish', () => {
  test('hold every limit when their own functions work them out again', () => {
    let met = 0
    fc.assert(
      fc.property(fc.double({ min: 0, max: 800, noNaN: true }), fc.double({ min: 0, max: 300, noNaN: true }), (tension, shear) => {
        const { proposals } = proposeBolts({ ...joint, tension: [tension, 'N'], shear: [shear, 'N'] })
        met += proposals.length
        for (const { design } of proposals) {
          const thread = metricThread(design.thread)
          const ring = { bearingDiameter: design.washerDiameter, holeDiameter: [1.1 * thread.diameter.in('mm'), 'mm'] } as const
          const { preload } = preloadFromTorque({
            torque: design.tighteningTorque,
            thread,
            threadFriction: 0.14,
            headFriction: 0.14,
            ...ring,
          })
          expect(preload.si).toBeCloseTo(design.preload.si, 6)
          expect(headBearing({ force: preload, ...ring, allowablePressure: '10 MPa' }).reserve.si).toBeGreaterThan(1.25 - 1e-9)
          const each = tension / design.count
          const loads = jointLoads({ clampLoad: [0.5 * preload.si, 'N'], externalLoad: [each, 'N'], loadFactor: 0.1 })
          expect(loads.separationLoad.si).toBeGreaterThanOrEqual(1.25 * each * (1 - 1e-9))
          const faceLoad = [design.count * loads.faceLoad.si, 'N'] as const
          expect(jointSlip({ faceLoad, friction: 0.2, shearForce: [shear, 'N'] }).slipForce.si).toBeGreaterThanOrEqual(
            1.25 * shear * (1 - 1e-9),
          )
          expect(design.washerDiameter.in('mm')).toBeLessThanOrEqual(12 + 1e-9)
        }
      }),
      { numRuns: 20 },
    )
    expect(met).toBeGreaterThan(40)
  })

  test('a soft part limits the preload, and the refusal says so', () => {
    const { state, refusal, message } = proposeBolts({ ...joint, tension: '4 kN' })
    expect(state).toBe('refused')
    expect(refusal!.broken.map(({ what }) => what)).toContain('tension of a bolt at which the joint opens')
    const pressure = refusal!.nearest.find(({ input }) => input === 'allowablePressure')!.met!
    expect(proposeBolts({ ...joint, tension: '4 kN', allowablePressure: [pressure.in('MPa'), 'MPa'] }).state).toBe('met')
    expect(message).toContain('allowablePressure')
  })

  test('more bolts at least than at most, and empty lists, are refused', () => {
    expect(() => proposeBolts({ ...joint, fewest: 8 })).toThrow(/most.*at least the fewest bolts, 8/)
    expect(() => proposeBolts({ ...joint, threads: [] })).toThrow(/threads/)
    expect(() => proposeBolts({ ...joint, classes: [] })).toThrow(/classes/)
  })

  test('threads and classes that are none are refused by name', () => {
    expect(() => proposeBolts({ ...joint, threads: ['M7' as never] })).toThrow(/M7/)
    expect(() => proposeBolts({ ...joint, classes: ['8.9' as never] })).toThrow(/8\.9/)
  })
})
