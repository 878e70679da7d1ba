import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { bearingShoulder, clampedShaft, endCap, frictionFaceTorque, nutBearingArea } from '../../src/fasteners/index.js'

const range = (min: number, max: number) => fc.double({ min, max, noNaN: true })

describe('clamped shaft', () => {
  const loads = { clampLoad: '2 kN', friction: 0.15, moment: '6 N m', torque: '2.2 N m' } as const
  const spacer = { length: '20 mm', outerDiameter: '20 mm', innerDiameter: '8 mm', modulus: '70 GPa', shearModulus: '26 GPa' } as const
  const drum = { length: '30 mm', outerDiameter: '24 mm', innerDiameter: '10 mm', modulus: '2 GPa', shearModulus: '0.75 GPa' } as const

  test('is the same from either end', () => {
    // The ring in which they touch is 20 mm by 10 mm: 2000 (20² + 10²)/(8 × 20) mm and 0.15 × 2000 × 7.5 mm.
    for (const sections of [
      [spacer, drum],
      [drum, spacer],
    ]) {
      const { gapMoment, slipTorque, joints, drive } = clampedShaft({ sections, ...loads })
      expect(gapMoment.in('N m')).toBeCloseTo(6.25, 12)
      expect(slipTorque.in('N m')).toBeCloseTo(2.25, 12)
      expect([joints, drive]).toEqual(['closed', 'frictionDrives'])
    }
    const section = fc.record({
      length: range(0.002, 0.05),
      outerDiameter: range(0.011, 0.03),
      innerDiameter: range(0, 0.0109),
      modulus: range(1e9, 2e11),
      shearModulus: range(3e8, 8e10),
    })
    fc.assert(
      fc.property(fc.array(section, { minLength: 1, maxLength: 6 }), (sections) => {
        const x = { clampLoad: 2000, friction: 0.15, moment: 6, torque: 2.2 }
        const one = clampedShaft.si({ sections, ...x })
        const other = clampedShaft.si({ sections: [...sections].reverse(), ...x })
        expect(other.gapMoment).toBe(one.gapMoment)
        expect(other.slipTorque).toBe(one.slipTorque)
        expect(other.torsionalStiffness / one.torsionalStiffness).toBeCloseTo(1, 12)
        expect(other.bendingStiffness / one.bendingStiffness).toBeCloseTo(1, 12)
        expect([other.joints, other.drive]).toEqual([one.joints, one.drive])
      }),
    )
  })

  test('a single section has no joint to open or to slip', () => {
    const one = clampedShaft({ sections: [drum], ...loads })
    expect(one.gapMoment.si).toBe(Number.POSITIVE_INFINITY)
    expect(one.slipTorque.si).toBe(Number.POSITIVE_INFINITY)
    expect([one.joints, one.drive]).toEqual(['closed', 'frictionDrives'])
  })

  test('rings that miss each other hold nothing', () => {
    const sleeve = { ...drum, outerDiameter: '40 mm', innerDiameter: '30 mm' } as const
    expect(clampedShaft({ sections: [drum, sleeve], ...loads })).toMatchObject({ joints: 'gaping', drive: 'keyNeeded' })
    const ring = { clampLoad: 2000, friction: 0.15, outerDiameter: 0.02, innerDiameter: 0.01, pressure: 'worn' } as const
    expect(frictionFaceTorque.si(ring)).toBeCloseTo(2.25, 12)
  })
})

/** Bending stress at the clamped edge a of an annular plate with free edge b, inside or outside of it, under a ring load at r between them, over that of a strip of the same reach. */
function plateOverStrip(a: number, b: number, r: number, poisson: number): number {
  // Slope C1 r + C2/r, and beyond the load K (r ln(r/r0)/2 − r/4 + r0²/(4r)) more; moment D (slope' + ν slope/r).
  const slope = (a * Math.log(a / r)) / 2 - a / 4 + (r * r) / (4 * a)
  const bend = Math.log(a / r) / 2 + 1 / 4 - (r * r) / (4 * a * a)
  const free = (b * b * (1 + poisson)) / (1 - poisson)
  const c1 = -slope / (a + free / a)
  return (c1 * (1 - free / (a * a)) + bend) / ((a - r) / a)
}

test('the lip as a strip is within 3 % below and 13 % above the clamped annular plate', () => {
  fc.assert(
    fc.property(range(0.5, 0.98), range(0.05, 1), range(0, 0.45), (bore, covered, poisson) => {
      const contact = bore + (1 - bore) * covered
      const ratio = plateOverStrip(1, bore, (bore + contact) / 2, poisson)
      expect(ratio).toBeLessThan(poisson <= 0.38 ? 1.03 : 1.05)
      expect(ratio).toBeGreaterThan(0.87)
    }),
    { numRuns: 500 },
  )
  const lip = { thrust: '250 N', seatDiameter: '22 mm', contactDiameter: '21.4 mm', lipBore: '18.5 mm', thickness: '2.5 mm' } as const
  const strengths = { compressiveStrength: '25 MPa', shearStrength: '7 MPa', bendingStrength: '14 MPa' } as const
  const { bendingStress } = bearingShoulder({ ...lip, ...strengths })
  // The plate, by shooting through its differential equation: 3.603 MPa.
  expect(bendingStress.in('MPa') * plateOverStrip(11, 9.25, 9.975, 0.38)).toBeCloseTo(3.603, 3)
})

test('the overhang of a cap as a strip is from 3 % below to 50 % above the clamped ring plate under the pressure of the link', () => {
  const POINTS = 200
  fc.assert(
    fc.property(range(1, 2.5), range(0.02, 1), range(0, 0.45), (bore, covered, poisson) => {
      const cap = bore + (3 - bore) * covered
      const x = { thrust: 1, axleDiameter: 2, capDiameter: 2 * cap, capThickness: 1, linkBore: 2 * bore, linkWidth: 1, axleLength: 2 }
      // Rings of the pressed face, each by its share of the force, as a multiple of a strip that is loaded there: 3 F (r − a)/(π a t²).
      let plate = 0
      for (let i = 0; i < POINTS; i++) {
        const r = bore + ((cap - bore) * (i + 0.5)) / POINTS
        const share = (r * 2) / (POINTS * (cap + bore))
        plate += ((share * 3 * (r - 1)) / Math.PI) * plateOverStrip(1, cap, r, poisson)
      }
      const strip = endCap.si(x).bendingStress
      expect(strip / plate).toBeGreaterThan(0.97)
      expect(strip / plate).toBeLessThan(1.5)
    }),
    { numRuns: 300 },
  )
})

test('a bearing ring wider than the nut, or a hole as wide as that ring, is refused', () => {
  const nut = { acrossFlats: '7 mm', bearingDiameter: '5.9 mm', holeDiameter: '4.5 mm' } as const
  expect(nutBearingArea(nut).hexagonArea.si).toBeGreaterThan(nutBearingArea(nut).ringArea.si)
  const wider = { ...nut, bearingDiameter: '9 mm', holeDiameter: '8 mm' } as const
  expect(() => nutBearingArea(wider)).toThrow(
    "bearingDiameter is '9 mm'; must be larger than the hole and no larger than the width across flats",
  )
  expect(() => nutBearingArea({ ...nut, holeDiameter: '5.9 mm' })).toThrow('must be larger than the hole')
})
