import fc from 'fast-check'
import { expect, test } from 'vitest'
import {
  bearingCap,
  bearingShoulder,
  boltFatigue,
  drilledBolt,
  goodmanReserve,
  headBearing,
  jointSlip,
  metricThread,
  parallelKey,
  parallelKeySize,
  pressFitHold,
} from '../../src/fasteners/index.js'

const range = (min: number, max: number) => fc.double({ min, max, noNaN: true })

test('without a load the reserve is infinite, with the least load it is not', () => {
  const M6 = metricThread.si('M6')
  const M8 = metricThread.si('M8')
  const hub = { material: 'metal' as const, outerDiameter: 0.03, bearingStrength: 3e8, tensileStrength: 3e8 }
  const strengths = { outerYieldStrength: 640e6, innerYieldStrength: 640e6 }
  const lip = { seatDiameter: 0.022, contactDiameter: 0.021, lipBore: 0.019, thickness: 0.003 }
  const lipStrengths = { compressiveStrength: 4e7, shearStrength: 1e7, bendingStrength: 3e7 }
  const key = { direction: 'oneWay' as const, shaftDiameter: 0.01, length: 0.012, keys: 1, hub }
  const keyStrengths = { shaftBearingStrength: 3e8, keyShearStrength: 2e8 }
  const fit = { pressure: 5e6, diameter: 0.004, length: 0.01, friction: 0.2, requiredReserve: 2 }
  const of: Record<string, (load: number) => number> = {
    headBearing: (force) => headBearing.si({ force, bearingDiameter: 0.009, holeDiameter: 0.0045, allowablePressure: 2e7 }).reserve,
    jointSlip: (shearForce) => jointSlip.si({ faceLoad: 1000, friction: 0.2, faces: 1, shearForce }).reserve,
    boltFatigue: (largestLoad) => boltFatigue.si({ thread: M6, largestLoad, smallestLoad: 0, clampLoad: 1000, loadFactor: 0.5 }).reserve,
    drilledBolt: (tension) => drilledBolt.si({ outer: M8, inner: metricThread.si('M4'), ...strengths, tension, torque: 0 }).reserve,
    drilledBoltTwisted: (torque) => drilledBolt.si({ outer: M8, inner: metricThread.si('M4'), ...strengths, tension: 0, torque }).reserve,
    goodmanReserve: (largestStress) =>
      goodmanReserve.si({ largestStress, smallestStress: 0, enduranceLimit: 3e8, tensileStrength: 1e9 }).reserve,
    bearingShoulder: (thrust) => bearingShoulder.si({ thrust, clampLoad: 0, ...lip, ...lipStrengths }).reserve,
    bearingCap: (thrust) => bearingCap.si({ thrust, screws: 4, clampLoad: 100, loadFactor: 0.9, screwCapacity: 500 }).reserve,
    parallelKey: (torque) => parallelKey.si({ torque, ...key, ...parallelKeySize.si('3x3'), ...keyStrengths }).reserve,
    pressFitHold: (axialForce) => pressFitHold.si({ ...fit, axialForce, torque: 0 }).reserve,
  }
  for (const [name, reserve] of Object.entries(of)) {
    expect(reserve(0), name).toBe(Number.POSITIVE_INFINITY)
    expect(reserve(0.001), name).toBeLessThan(Number.POSITIVE_INFINITY)
    expect(reserve(0.002) / reserve(0.001), name).toBeCloseTo(0.5, 9)
  }
})

test('friction holds where its reserve is the one wanted, a fit that has let go never does', () => {
  const fit = { diameter: 0.004, length: 0.01, friction: 0.2, torque: 0.01 }
  fc.assert(
    fc.property(range(0, 2e7), range(0, 100), range(1, 4), (pressure, axialForce, requiredReserve) => {
      const { reserve, retention } = pressFitHold.si({ ...fit, pressure, axialForce, requiredReserve })
      expect(retention).toBe(reserve >= requiredReserve ? 'frictionHolds' : 'positiveRetentionNeeded')
    }),
  )
  const unloaded = { ...fit, torque: 0, axialForce: 0, requiredReserve: 2 }
  expect(pressFitHold.si({ ...unloaded, pressure: 0 }).retention).toBe('positiveRetentionNeeded')
  expect(pressFitHold.si({ ...unloaded, pressure: 1e6 }).retention).toBe('frictionHolds')
})
