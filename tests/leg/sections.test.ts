import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { assess, describeLeg } from '../../src/leg/index.js'
import { boxBendingStress, boxTorsionRigidity, roundBendingStress } from '../../src/leg/sections.js'

describe('sections of links and shafts', () => {
  // Gere & Goodno, Mechanics of Materials, hollow rectangle: (b h³ − b1 h1³) / 12; values computed by hand from it.
  test('hollow rectangle', () => {
    const { secondMoment, area, stress } = boxBendingStress({ moment: '10 N m', width: '20 mm', depth: '24 mm', wall: '2 mm' })
    expect(secondMoment.in('mm^4')).toBeCloseTo((20 * 24 ** 3 - 16 * 20 ** 3) / 12, 6)
    expect(area.in('mm^2')).toBeCloseTo(160, 9)
    expect(stress.in('MPa')).toBeCloseTo((10_000 * 12) / 12373.3333333, 6)
  })

  test('a wall of half the depth is a solid bar', () => {
    expect(boxBendingStress({ moment: '1 N m', width: '10 mm', depth: '10 mm', wall: '5 mm' }).secondMoment.in('mm^4')).toBeCloseTo(
      10_000 / 12,
      8,
    )
    expect(boxBendingStress({ moment: '1 N m', width: '10 mm', depth: '10 mm', wall: '9 mm' }).secondMoment.in('mm^4')).toBeCloseTo(
      10_000 / 12,
      8,
    )
  })

  // Shigley 9th ed., table A-8 and section 3-10: 32 M / π d³; 10 mm, 10 N m.
  test('round shaft, solid and hollow', () => {
    expect(roundBendingStress({ moment: '10 N m', diameter: '10 mm' }).in('MPa')).toBeCloseTo(101.859, 3)
    const hollow = roundBendingStress({ moment: '10 N m', diameter: '10 mm', holeDiameter: '5 mm' }).si
    expect(hollow / roundBendingStress({ moment: '10 N m', diameter: '10 mm' }).si).toBeCloseTo(16 / 15, 12)
  })

  // Bredt: square tube of mean side b and wall t has J = t b³.
  test('twist of a thin square tube', () => {
    const rigidity = boxTorsionRigidity({ width: '21 mm', depth: '21 mm', wall: '1 mm', modulus: '2.6 GPa', poissonRatio: 0.3 })
    expect(rigidity.in('N m^2')).toBeCloseTo(1e9 * 1e-3 * 0.02 ** 3, 9)
  })
})

describe('the foot', () => {
  const leg = describeLeg(readFileSync(new URL('../../examples/mudflat-leg-revised.yaml', import.meta.url), 'utf8'))
  const { foot } = assess(leg, { cases: ['walk'] })

  test('deflection under the standing load is load over guided stiffness at least, and nothing is infinite', () => {
    const weight = (10.5 * 9.80665) / 4
    expect(foot.deflection?.z.si).toBeGreaterThan(0)
    // The free stiffness is the softest way to push: the foot under load moves by its diagonal and more.
    // Stiffness is that of the loaded leg, which its load has softened a little; the deflection is of the whole load.
    expect(((foot.deflection?.z.si as number) * (foot.stiffness?.z.si as number)) / weight).toBeGreaterThan(0.98)
    expect(((foot.deflection?.z.si as number) * (foot.stiffness?.z.si as number)) / weight).toBeLessThan(1)
    expect(foot.usableBandwidth.si).toBeLessThan(foot.resonance.hip.motorLocked.si)
    expect(foot.resonance.knee.motorFree.si).toBeGreaterThan(foot.resonance.knee.motorLocked.si)
  })

  test('a stiffer cord makes a stiffer foot with less error', () => {
    const stiff = describeLeg({ ...leg, cords: { braid: { ...leg.cords.braid, axialRigidity: '48 kN' } } } as never)
    const better = assess(stiff, { cases: ['walk'] }).foot
    expect(better.stiffness?.z.si).toBeGreaterThan(foot.stiffness?.z.si as number)
    expect(better.error.together.rss.si).toBeLessThan(foot.error.together.rss.si)
  })
})
