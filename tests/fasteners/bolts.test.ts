import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  bearingLifeFactor,
  boltShearTension,
  boltStrength,
  eccentricJoint,
  faceEmbeddings,
  jointLoads,
  loadFactor,
  metricFineThread,
  metricThread,
  propertyClass,
} from '../../src/fasteners/index.js'

const range = (min: number, max: number) => fc.double({ min, max, noNaN: true })

describe('fine threads', () => {
  // ISO 898-1, table of fine-pitch stress areas and proof loads (unverified).
  test.each([
    ['M8x1', 39.2],
    ['M10x1', 64.5],
    ['M10x1.25', 61.2],
    ['M12x1.25', 92.1],
    ['M12x1.5', 88.1],
  ] as const)('%s has %f mm² of stress area', (size, area) => {
    expect(metricFineThread(size).stressArea.in('mm^2')).toBeCloseTo(area, 1)
  })

  test('are wider at the root than the coarse thread, and named by size', () => {
    expect(metricFineThread.si('M8x1').rootArea).toBeGreaterThan(metricThread.si('M8').rootArea)
    expect(() => metricFineThread('M8x0.9')).toThrow(/near it are M8x1/)
    expect(metricFineThread('M8x1')).toBe(metricFineThread('M8x1'))
  })
})

test('soft and half-hard classes: tensile strength is a hundred times the first digit, yield its share', () => {
  for (const name of ['4.6', '4.8', '5.6', '5.8', '6.8', '8.8', '9.8'] as const) {
    const { proofStress, yieldStrength, tensileStrength } = propertyClass(name)
    const [tens, tenths] = name.split('.').map(Number) as [number, number]
    expect(Math.abs(tensileStrength.in('MPa') / (100 * tens) - 1)).toBeLessThanOrEqual(0.0501)
    expect(Math.abs(yieldStrength.in('MPa') / (tensileStrength.in('MPa') * (tenths / 10)) - 1)).toBeLessThanOrEqual(0.03)
    expect(proofStress.si / yieldStrength.si).toBeGreaterThan(0.89)
    expect(proofStress.si).toBeLessThan(yieldStrength.si)
  }
})

describe('eccentric joint', () => {
  const joint = {
    clampLoad: 900,
    externalLoad: 100,
    loadAt: 0,
    boltAt: 0,
    edgeAt: 0.008,
    faceArea: 224e-6,
    faceSecondMoment: 4.7787e-9,
    grip: 0.008,
    memberModulus: 2e9,
    memberCompliance: 0.008 / (2e9 * 224e-6),
    boltCompliance: 7e-9,
    boltDiameter: 0.00334,
    boltModulus: 207e9,
  }

  test('through the centroid it is the concentric joint, without bending', () => {
    const x = eccentricJoint.si(joint)
    const factor = loadFactor.si(joint)
    expect(x.loadFactor).toBeCloseTo(factor, 12)
    expect(x.gapLoad / jointLoads.si({ ...joint, loadFactor: factor }).separationLoad).toBeCloseTo(1, 12)
    expect([x.bendingStress, x.clampBendingStress, x.endRotation]).toEqual([0, 0, 0])
  })

  test('a bolt near the load opens the far edge, by its clamp load alone beyond the core of the face', () => {
    // The core of a rectangle reaches a sixth of its depth of 16 mm to either side.
    expect(eccentricJoint.si({ ...joint, boltAt: 0.0027, externalLoad: 0 })).toMatchObject({ gapLoad: 0, state: 'gaping' })
    expect(eccentricJoint.si({ ...joint, boltAt: -0.0027, externalLoad: 0 })).toMatchObject({ gapLoad: 0, state: 'gaping' })
    for (const boltAt of [0.0026, -0.0026]) expect(eccentricJoint.si({ ...joint, boltAt, externalLoad: 0 }).state).toBe('closed')
    // Load and bolt on one line through the centroid of the other half: what the face carries there, by force and moment.
    const near = { ...joint, loadAt: 0.001, boltAt: 0.002 }
    const { gapLoad, loadFactor: share } = eccentricJoint.si(near)
    const pressure = (y: number, load: number) =>
      (joint.clampLoad - (1 - share) * load) / joint.faceArea +
      (y * (joint.clampLoad * 0.002 - load * (0.001 - share * 0.002))) / joint.faceSecondMoment
    expect(pressure(-joint.edgeAt, gapLoad) * joint.faceArea).toBeCloseTo(0, 9)
    expect(pressure(joint.edgeAt, gapLoad)).toBeGreaterThan(0)
    // A longer far side opens earlier.
    expect(eccentricJoint.si({ ...near, farEdgeAt: 0.01 }).gapLoad).toBeLessThan(gapLoad)
  })

  test('a load further out from a bolt on its other side gapes earlier and bends the bolt more', () => {
    fc.assert(
      fc.property(range(0, 0.03), range(0.0005, 0.01), range(-0.003, 0), (loadAt, more, boltAt) => {
        const near = eccentricJoint.si({ ...joint, loadAt, boltAt })
        const far = eccentricJoint.si({ ...joint, loadAt: loadAt + more, boltAt })
        expect(far.gapLoad).toBeLessThanOrEqual(near.gapLoad)
        // Zero where tightening alone opens the edge, infinite where the load presses it.
        if (near.gapLoad > 0 && far.gapLoad < Number.POSITIVE_INFINITY) expect(far.gapLoad).toBeLessThan(near.gapLoad)
        expect(far.endRotation).toBeGreaterThan(near.endRotation)
      }),
    )
  })

  test('a bolt outside its face is refused', () => {
    expect(() =>
      eccentricJoint({
        clampLoad: '900 N',
        externalLoad: '100 N',
        loadAt: '10 mm',
        boltAt: '-9 mm',
        edgeAt: '8 mm',
        faceArea: '224 mm^2',
        faceSecondMoment: '4778 mm^4',
        grip: '8 mm',
        memberModulus: '2 GPa',
        memberCompliance: '0.018 um/N',
        boltCompliance: '0.007 um/N',
        boltDiameter: '3.3 mm',
        boltModulus: '207 GPa',
      }),
    ).toThrow("boltAt is '-9 mm'; must lie within the face")
  })
})

describe('shear and tension', () => {
  const thread = metricThread.si('M4')
  const bolt = propertyClass.si('8.8')

  test('each alone breaks the bolt at its own load', () => {
    const { breakingLoad, shankShearLoad } = boltStrength.si({ thread, bolt, shearRatio: 0.6 })
    const alone = (x: { shear: number; tension: number; plane: 'thread' | 'shank' }) =>
      boltShearTension.si({ thread, bolt, shearRatio: 0.6, ...x })
    expect(alone({ shear: shankShearLoad, tension: 0, plane: 'shank' })).toMatchObject({ ellipticUse: 1, straightLineUse: 1, reserve: 1 })
    expect(alone({ shear: 0, tension: breakingLoad, plane: 'thread' }).ellipticUse).toBe(1)
    expect(alone({ shear: 0, tension: 0.9 * breakingLoad, plane: 'thread' }).reserve).toBeCloseTo(1, 12)
    expect(alone({ shear: 0, tension: 0, plane: 'thread' }).reserve).toBe(Number.POSITIVE_INFINITY)
  })

  test('the straight line is never on the unsafe side of the ellipse', () => {
    fc.assert(
      fc.property(range(0, 5000), range(0, 8000), (shear, tension) => {
        const { reserve, ellipticUse } = boltShearTension.si({ thread, bolt, shearRatio: 0.6, plane: 'thread', shear, tension })
        // Below the smallest normal number the divisions lose their digits.
        expect(1 / reserve).toBeGreaterThanOrEqual(ellipticUse * (1 - 1e-12) - 1e-300)
      }),
    )
  })
})

test('a bearing full of mud lives a tenth, a clean and well oiled one longer than its rating; the curves join', () => {
  const x = { viscosity: 1e-4, meanDiameter: 0.016, speed: 10, cleanliness: 'normal' as const, fatigueLoadLimit: 60, load: 300 }
  expect(bearingLifeFactor.si({ ...x, cleanliness: 'verySevere' }).lifeFactor).toBeCloseTo(0.1, 12)
  expect(bearingLifeFactor.si({ ...x, viscosity: 1e-2, cleanliness: 'extreme' }).lifeFactor).toBeGreaterThan(10)
  const { referenceViscosity } = bearingLifeFactor.si(x)
  for (const kappa of [0.4, 1]) {
    const at = (ratio: number) => bearingLifeFactor.si({ ...x, viscosity: ratio * referenceViscosity }).lifeFactor
    expect(at(kappa * (1 + 1e-9)) / at(kappa * (1 - 1e-9))).toBeCloseTo(1, 3)
  }
  fc.assert(
    fc.property(range(1e-6, 1e-3), range(10, 1000), (viscosity, load) => {
      const { lifeFactor } = bearingLifeFactor.si({ ...x, viscosity, load })
      expect(lifeFactor).toBeGreaterThanOrEqual(0.1)
      expect(lifeFactor).toBeLessThanOrEqual(50)
      expect(bearingLifeFactor.si({ ...x, viscosity: 1.1 * viscosity, load }).lifeFactor).toBeGreaterThanOrEqual(lifeFactor * 0.999)
    }),
  )
})

test('a printed face embeds several times more than a metal one, and its range says how little is known', () => {
  const { metalFace, printedFace, metalThread } = faceEmbeddings
  expect(printedFace.si).toBeGreaterThan(2 * metalFace.si)
  expect(printedFace.high / printedFace.low).toBeGreaterThan(4)
  // Thread, head, nut and one joint between two metal parts: 8 to 11 µm in bolt practice.
  expect((metalThread.si + 3 * metalFace.si) * 1e6).toBeCloseTo(10.5, 6)
})
