import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  lapPeel,
  lapShear,
  lugNetSection,
  lugStressConcentration,
  measuredPullOut,
  metricThread,
  preloadFromTorque,
  snapHook,
  threadFormingScrew,
} from '../../src/fasteners/index.js'

const range = (min: number, max: number) => fc.double({ min, max, noNaN: true })

describe('peel of a single lap', () => {
  const lap = {
    force: 200,
    width: 0.02,
    overlap: 0.02,
    thickness: 0.003,
    modulus: 2.5e9,
    poissonRatio: 0.35,
    bondThickness: 0.2e-3,
    bondModulus: 2.5e9,
    shearModulus: 0.9e9,
    freeLength: undefined,
  }

  test('a long lap joins its closed form without a step', () => {
    const beta = (lap.bondModulus / (2 * lap.bondThickness * ((lap.modulus / (1 - 0.35 ** 2)) * lap.thickness ** 3)) / (1 / 12)) ** 0.25
    const at = (x: number) => lapPeel.si({ ...lap, overlap: (2 * x) / beta }).peelStress
    expect(at(40 * (1 + 1e-9)) / at(40 * (1 - 1e-9))).toBeCloseTo(1, 7)
    expect(at(30) / at(40)).toBeGreaterThan(0.99)
  })

  test('longer laps and shorter free parts peel less; peel is never below what no bending leaves', () => {
    fc.assert(
      fc.property(range(0.005, 0.05), range(0.005, 0.2), range(10, 3000), (overlap, freeLength, force) => {
        const x = lapPeel.si({ ...lap, overlap, freeLength, force })
        expect(x.momentFactor).toBeGreaterThan(0)
        expect(x.momentFactor).toBeLessThanOrEqual(1)
        expect(x.peelStress).toBeGreaterThan(0)
        expect(x.partStress).toBeGreaterThan(force / (lap.width * lap.thickness))
        expect(lapPeel.si({ ...lap, overlap: 1.2 * overlap, freeLength, force }).momentFactor).toBeLessThan(x.momentFactor)
        expect(lapPeel.si({ ...lap, overlap, freeLength: 1.2 * freeLength, force }).momentFactor).toBeGreaterThanOrEqual(x.momentFactor)
      }),
    )
  })

  test('bending makes the shear at the ends worse than lap shear alone says', () => {
    const part = { thickness: lap.thickness, modulus: lap.modulus, thermalExpansion: 0 }
    const { outerEndStress } = lapShear.si({ ...lap, lap: 'single', inner: part, outer: part, temperatureChange: 0, at: 0 })
    expect(lapPeel.si(lap).shearStress).toBeGreaterThan(1.3 * outerEndStress)
  })
})

describe('stress concentration of lugs', () => {
  test('falls with a wider pin at a square end, has a best width at a round one', () => {
    const at = (end: 'round' | 'square', x: number) => lugStressConcentration.si({ width: 1, diameter: x, end }).factor
    for (let x = 0.15; x < 0.74; x += 0.01) {
      expect(at('square', x + 0.01)).toBeLessThan(at('square', x))
      expect(at('round', x)).toBeGreaterThan(at('square', x))
    }
    // Peak stress for a given force and width: factor over (1 − x).
    const peak = (x: number) => at('round', x) / (1 - x)
    expect(peak(0.35)).toBeLessThan(Math.min(peak(0.2), peak(0.6)))
  })

  test('gives lugNetSection its factor', () => {
    const lug = { width: '20 mm', diameter: '8 mm' } as const
    const { factor } = lugStressConcentration({ ...lug, end: 'round' })
    const { averageStress, peakStress } = lugNetSection({ ...lug, force: '400 N', thickness: '10 mm', stressConcentration: factor })
    expect(peakStress.si / averageStress.si).toBeCloseTo(factor.si, 12)
    expect(() => lugStressConcentration({ width: '8 mm', diameter: '8 mm', end: 'round' })).toThrow(
      "diameter is '8 mm'; must be smaller than the width",
    )
  })
})

describe('thread-forming screws', () => {
  const screw = {
    thread: { diameter: 0.004, pitch: 0.0018, pitchDiameter: 0.0033 },
    pilotDiameter: 0.0032,
    engagement: 0.01,
    bossDiameter: 0.009,
    shearStrength: 18e6,
    formingTorque: 0.6,
    threadFriction: 0.25,
    headFriction: 0.2,
    bearingDiameter: 0.008,
    holeDiameter: 0.0045,
    share: 0.5,
  }

  test('the torque set clamps as a screw does whose forming torque prevails', () => {
    const { tighteningTorque, clampLoad } = threadFormingScrew.si(screw)
    const { preload } = preloadFromTorque.si({ ...screw, torque: tighteningTorque, prevailingTorque: screw.formingTorque })
    expect(preload / clampLoad).toBeCloseTo(1, 12)
  })

  test('forming and stripping close together leave no torque to set', () => {
    expect(threadFormingScrew.si({ ...screw, formingTorque: 4 }).state).toBe('tooNarrow')
    expect(threadFormingScrew.si({ ...screw, formingTorque: 0 })).toMatchObject({
      state: 'settable',
      torqueRatio: Number.POSITIVE_INFINITY,
    })
  })

  test('a hole wider than the screw, or a boss narrower, is refused', () => {
    const given = {
      thread: metricThread('M4'),
      pilotDiameter: '4 mm',
      engagement: '10 mm',
      bossDiameter: '4 mm',
      shearStrength: '18 MPa',
      formingTorque: '0.3 N m',
      threadFriction: 0.25,
      headFriction: 0.2,
      bearingDiameter: '8 mm',
      holeDiameter: '4.5 mm',
    } as const
    expect(() => threadFormingScrew(given)).toThrow("pilotDiameter is '4 mm'; must be smaller than the screw")
    expect(() => threadFormingScrew(given)).toThrow("bossDiameter is '4 mm'; must be larger than the screw")
  })
})

test('measured: an insert set with heat holds a tenth more than a printed thread, a wire insert two fifths more', () => {
  const { printedThread, heatSetInsert, wireInsert } = measuredPullOut
  expect(heatSetInsert.si / printedThread.si).toBeCloseTo(1.12, 2)
  expect(wireInsert.si / printedThread.si).toBeCloseTo(1.4, 2)
  for (const { low, high, si } of [printedThread, heatSetInsert, wireInsert]) expect(low < si && si < high).toBe(true)
})

describe('snap hooks', () => {
  const hook = {
    length: 0.02,
    thickness: 0.002,
    width: 0.008,
    shape: 'uniform' as const,
    undercut: 0.001,
    modulus: 2e9,
    allowableStrain: 0.02,
    friction: 0.3,
    entryAngle: 0.5,
    holdingAngle: 0.8,
  }

  test('a steeper holding face holds more, until it locks', () => {
    fc.assert(
      fc.property(range(0.1, 1.2), range(0.05, 0.3), (holdingAngle, more) => {
        const [flat, steep] = [snapHook.si({ ...hook, holdingAngle }), snapHook.si({ ...hook, holdingAngle: holdingAngle + more })]
        expect(steep.separationForce).toBeGreaterThanOrEqual(flat.separationForce)
      }),
    )
    expect(snapHook.si({ ...hook, holdingAngle: Math.PI / 2 }).separationForce).toBe(Number.POSITIVE_INFINITY)
    expect(snapHook.si({ ...hook, friction: 0, holdingAngle: Math.PI / 2 }).separationForce).toBe(Number.POSITIVE_INFINITY)
    expect(snapHook.si({ ...hook, friction: 2, entryAngle: 0.5 }).state).toBe('locks')
  })

  test('at the allowable undercut the reserve is one, a taper allows more', () => {
    const { allowableUndercut } = snapHook.si(hook)
    expect(snapHook.si({ ...hook, undercut: allowableUndercut }).reserve).toBeCloseTo(1, 12)
    expect(snapHook.si({ ...hook, undercut: 1.01 * allowableUndercut }).state).toBe('overstrained')
    expect(snapHook.si({ ...hook, shape: 'halfThickness' }).allowableUndercut / allowableUndercut).toBeCloseTo(1.6355, 4)
  })
})
