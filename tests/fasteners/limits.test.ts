// The edges of what the formulas accept, and the words of their results on either side.
import { describe, expect, test } from 'vitest'
import {
  adhesiveTemperatureFactor,
  boltGroupShear,
  bossWallStress,
  clampLoadThroughHeat,
  eccentricJoint,
  embeddedPin,
  frictionDrive,
  frustumStiffness,
  memberCompliance,
  springWasher,
  threadGeometry,
  toleranceMonteCarlo,
} from '../../src/fasteners/index.js'

describe('states of a joint', () => {
  test('a bond counts as nothing from its glass transition on', () => {
    const at = (kelvin: number) => adhesiveTemperatureFactor.si({ temperature: 330 + kelvin, glassTransitionTemperature: 330 })
    expect(at(-0.001)).toMatchObject({ state: 'softening' })
    expect(at(-0.001).factor).toBeCloseTo(0.25, 4)
    for (const kelvin of [0, 5, 20]) expect(at(kelvin)).toEqual({ factor: 0, state: 'beyondGlassTransition' })
  })

  test('a spring washer is flat at its flat force', () => {
    const washer = { washerCompliance: 1e-6, flatForce: 500, boltCompliance: 1e-8 }
    expect(springWasher.si({ ...washer, clampLoad: 499 })).toEqual({ elasticCompliance: 1e-6 + 1e-8, state: 'springs' })
    expect(springWasher.si({ ...washer, clampLoad: 500 })).toEqual({ elasticCompliance: 1e-8, state: 'flattened' })
  })

  test('an eccentric joint gapes above its gap load', () => {
    const joint = {
      ...{ clampLoad: 900, loadAt: 0.02, boltAt: 0.001, edgeAt: 0.008, faceArea: 224e-6, faceSecondMoment: 4.7787e-9, grip: 0.008 },
      ...{ memberModulus: 2e9, memberCompliance: 0.008 / (2e9 * 224e-6), boltCompliance: 7e-9, boltDiameter: 0.00334, boltModulus: 207e9 },
    }
    const { gapLoad } = eccentricJoint.si({ ...joint, externalLoad: 0 })
    expect(gapLoad).toBeGreaterThan(0)
    expect(eccentricJoint.si({ ...joint, externalLoad: 0.999 * gapLoad }).state).toBe('closed')
    expect(eccentricJoint.si({ ...joint, externalLoad: 1.001 * gapLoad }).state).toBe('gaping')
  })
})

describe('what is accepted', () => {
  test('the speed of the creep clock is positive in every spell', () => {
    const spells = [
      { duration: '1 h', temperatureChange: '10 K' },
      { duration: '1 h', temperatureChange: '20 K' },
    ] as const
    const compliances = { elasticCompliance: '0.1 um/N', creepingCompliance: '1 um/N' } as const
    const joint = { clampLoad: '1 kN', ...compliances, mismatchPerKelvin: '0 um', spells, creep: () => 1 } as const
    const stops = (change: { readonly si: number }) => (change.si > 15 ? 0 : 1)
    expect(() => clampLoadThroughHeat({ ...joint, speedUp: stops, softening: () => 1 })).toThrow(/speedUp .*positive in every spell/)
    expect(() => clampLoadThroughHeat({ ...joint, speedUp: () => 1, softening: stops })).toThrow(/softening .*positive in every spell/)
  })

  test('a face or a cone is wider than its hole', () => {
    const cone = { modulus: '2 GPa', thickness: '5 mm', holeDiameter: '8 mm' } as const
    for (const wide of ['8 mm', '7 mm'] as const)
      expect(() => frustumStiffness({ ...cone, narrowDiameter: wide })).toThrow(/narrowDiameter .*larger than the hole/)
    expect(frustumStiffness({ ...cone, narrowDiameter: '8.1 mm' }).si).toBeGreaterThan(0)
    const face = { friction: 0.3, surface: 'printed', allowablePressure: '20 MPa', innerDiameter: '8 mm' } as const
    const drive = { clampLoad: '1 kN', path: 'inSeries', torque: '0.1 N m' } as const
    const faces = (outerDiameter: '8 mm' | '7 mm' | '20 mm') => [
      { ...face, outerDiameter: '20 mm' as const },
      { ...face, outerDiameter },
    ]
    for (const outerDiameter of ['8 mm', '7 mm'] as const)
      expect(() => frictionDrive({ ...drive, faces: faces(outerDiameter) })).toThrow(/faces .*wider than its bore/)
    expect(frictionDrive({ ...drive, faces: faces('20 mm') }).slipTorque.si).toBeGreaterThan(0)
  })

  test('a tapped layer needs no bearing of a nut', () => {
    const layer = { modulus: '2 GPa', thickness: '5 mm', outerDiameter: '30 mm', holeDiameter: '6 mm' } as const
    const stack = { layers: [layer], headBearing: '10 mm', nutBearing: '5 mm' } as const
    expect(() => memberCompliance(stack)).toThrow(/nutBearing|narrower than the cone/)
    expect(memberCompliance({ ...stack, end: 'tapped' }).compliance.si).toBeGreaterThan(0)
  })

  test('a stress in a boss is asked for in its wall', () => {
    const boss = { pressure: '5 MPa', diameter: '8 mm', bossDiameter: '16 mm' } as const
    for (const radius of ['4 mm', '8 mm'] as const) expect(bossWallStress({ ...boss, radius }).hoopStress.si).toBeGreaterThan(0)
    expect(bossWallStress({ ...boss, radius: '4 mm' }).radialStress.in('MPa')).toBeCloseTo(-5, 9)
    expect(bossWallStress({ ...boss, radius: '8 mm' }).radialStress.in('MPa')).toBeCloseTo(0, 9)
    for (const radius of ['3.99 mm', '8.01 mm'] as const) expect(() => bossWallStress({ ...boss, radius })).toThrow(/radius .*in the wall/)
  })

  test('a pitch is less than 0.8 of the diameter', () => {
    expect(threadGeometry({ diameter: '10 mm', pitch: '7.9 mm' }).minorDiameter.si).toBeGreaterThan(0)
    expect(() => threadGeometry({ diameter: '10 mm', pitch: '8.01 mm' })).toThrow(/pitch .*0\.8 of the diameter/)
  })
})

test('an unloaded pin turns about the depth that a loaded one does', () => {
  const pin = { arm: '4 mm', depth: '10 mm', diameter: '3 mm' } as const
  const idle = embeddedPin({ ...pin, force: '0 N' })
  expect(idle.mouthPressure.si).toBe(0)
  expect(idle.pivotDepth.si).toBe(embeddedPin({ ...pin, force: '1 N' }).pivotDepth.si)
})

test('a size without tolerance does not scatter, whatever its spread', () => {
  for (const spread of ['uniform', 'normal', 'triangular'] as const) {
    const fixed = { nominal: '10 mm', tolerance: '0 mm', spread } as const
    const { mean, scatter, tooLarge } = toleranceMonteCarlo({ parts: [fixed], least: '9 mm', largest: '11 mm', draws: 100 })
    expect([mean.in('mm'), scatter.si, tooLarge.si]).toEqual([10, 0, 0])
  }
})

test('a single bolt carries the whole force wherever it is, and an arm adds a note alone', () => {
  for (let i = 1; i <= 40; i++) {
    const bolt = { x: i * 0.0037, y: i * -0.0023, area: i * 1.3e-6 }
    for (const arm of [0, 0.01]) {
      const { largest } = boltGroupShear.si({ bolts: [bolt], forceX: 30, forceY: 40, atX: bolt.x + arm, atY: bolt.y, moment: 0 })
      expect(largest, `bolt ${i}, arm ${arm}`).toBeCloseTo(50, 9)
    }
  }
  const levered = boltGroupShear({
    bolts: [{ x: '12.3 mm', y: '7 mm', area: '5 mm^2' }],
    forceX: '0 N',
    forceY: '50 N',
    atX: '30 mm',
    atY: '7 mm',
  })
  expect(levered.largest.notes?.[0]?.text).toContain('a single bolt carries no moment')
})
