import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  boxBendingStress,
  boxSection,
  boxTorsionalRigidity,
  columnBuckling,
  rectangleTorsion,
  roundBendingStress,
  roundSection,
  roundTorsion,
  slopeLoadShare,
  thinWalledTorsion,
  wallBuckling,
} from '../../src/structures/index.js'
import torsion from '../oracles/structures-torsion.json' with { type: 'json' }

const range = (min: number, max: number) => fc.double({ min, max, noNaN: true })

describe('sections', () => {
  test('a box is what its walls add up to', () => {
    fc.assert(
      fc.property(range(0.01, 0.05), range(0.01, 0.05), range(0.02, 0.5), (width, depth, share) => {
        const wall = share * Math.min(width, depth)
        const { area, secondMoment, sidewaysSecondMoment } = boxSection.si({ width, depth, wall })
        // Two flanges and two webs, each about its own middle and carried to the axis of the box.
        const webs = depth - 2 * wall
        const flange = (width * wall ** 3) / 12 + width * wall * ((depth - wall) / 2) ** 2
        expect(area / (2 * width * wall + 2 * webs * wall)).toBeCloseTo(1, 9)
        expect(secondMoment / (2 * flange + (2 * wall * webs ** 3) / 12)).toBeCloseTo(1, 9)
        expect(boxSection.si({ width: depth, depth: width, wall }).secondMoment / sidewaysSecondMoment).toBeCloseTo(1, 12)
      }),
    )
  })

  test('a wall of half the smaller side is solid, a thicker one is refused', () => {
    const bar = { moment: '1 N m', width: '10 mm', depth: '10 mm' } as const
    expect(boxBendingStress({ ...bar, wall: '5 mm' }).secondMoment.in('mm^4')).toBeCloseTo(10_000 / 12, 8)
    expect(() => boxBendingStress({ ...bar, wall: '9 mm' })).toThrow("wall is '9 mm'; must be at most half of the smaller side")
    expect(() => boxSection({ width: '10 mm', depth: '20 mm', wall: '6 mm' })).toThrow('wall')
    expect(() => boxTorsionalRigidity({ width: '10 mm', depth: '10 mm', wall: '6 mm', modulus: '1 GPa', poissonRatio: 0.3 })).toThrow(
      'wall',
    )
  })

  test('a hole as wide as the bar is refused', () => {
    const hollow = { diameter: '10 mm', holeDiameter: '10 mm' } as const
    expect(() => roundSection(hollow)).toThrow("holeDiameter is '10 mm'; must be smaller than the outer diameter")
    expect(() => roundBendingStress({ moment: '1 N m', ...hollow })).toThrow('holeDiameter')
    expect(() => roundTorsion({ torque: '1 N m', ...hollow, length: '1 m', shearModulus: '1 GPa' })).toThrow('holeDiameter')
  })
})

describe('torsion', () => {
  test('a rectangle turned by a quarter is the same bar', () => {
    const bar = { torque: 1, length: 0.1, shearModulus: 1e9 }
    expect(rectangleTorsion.si({ ...bar, width: 0.02, depth: 0.01 })).toEqual(rectangleTorsion.si({ ...bar, width: 0.01, depth: 0.02 }))
  })

  test('a strip has a third of width times thickness cubed, and shear without ends', () => {
    const strip = rectangleTorsion.si({ torque: 1, width: 1, depth: 0.001, length: 1, shearModulus: 1e9 })
    expect(strip.torsionConstant / (1e-9 / 3)).toBeCloseTo(1, 2)
    expect(strip.shearStress / (3 / 1e-6)).toBeCloseTo(1, 2)
  })

  test('a thin round tube by its middle line is the tube by its diameters', () => {
    const [mean, wall] = [0.02, 0.0002]
    const thin = { enclosedArea: (Math.PI / 4) * mean ** 2, perimeter: Math.PI * mean, wall, torque: 1, shearModulus: 1e9 }
    const { shearStress, rigidity, meanShearStress } = thinWalledTorsion.si(thin)
    const tube = { torque: 1, diameter: mean + wall, holeDiameter: mean - wall, length: 1, shearModulus: 1e9 }
    expect(rigidity / roundTorsion.si(tube).stiffness).toBeCloseTo(1, 3)
    expect(meanShearStress / roundTorsion.si(tube).shearStress).toBeCloseTo(1, 1)
    expect(shearStress).toBeGreaterThan(meanShearStress)
  })

  test('thick walls: rigidity is low, surface shear is on the safe side', () => {
    for (const { width, wall, constant, peak } of torsion.boxes) {
      const x = { enclosedArea: (width - wall) * (1 - wall), perimeter: 2 * (width + 1 - 2 * wall), wall, torque: 1, shearModulus: 1 }
      const { torsionConstant, shearStress, meanShearStress } = thinWalledTorsion.si(x)
      const low = torsionConstant / (constant * width)
      expect(low).toBeLessThan(1)
      expect(low).toBeGreaterThan(wall <= 0.05 ? 0.975 : wall <= 0.1 ? 0.94 : 0.81)
      expect(shearStress / (peak / width)).toBeGreaterThan(0.999)
      expect(shearStress / (peak / width)).toBeLessThan(1.2)
      expect(meanShearStress).toBeLessThan(peak / width)
    }
  })

  test('a middle line shorter than a circle round its area cannot be', () => {
    const tube = { torque: '1 N m', enclosedArea: '100 mm^2', wall: '1 mm', shearModulus: '1 GPa' } as const
    expect(() => thinWalledTorsion({ ...tube, perimeter: '30 mm' })).toThrow("perimeter is '30 mm'; must be at least that of the circle")
    expect(thinWalledTorsion({ ...tube, perimeter: '40 mm' }).rigidity.si).toBeGreaterThan(0)
  })
})

describe('buckling', () => {
  const column = { force: 100, ends: 'bothPinned' as const, area: 1e-4, secondMoment: 1e-9, modulus: 2e9, yieldStrength: 40e6 }

  test('Johnson meets Euler at half the yield strength, with the same slope', () => {
    const at = (slenderness: number) => columnBuckling.si({ ...column, length: slenderness * Math.sqrt(1e-5) })
    const { transitionSlenderness } = at(1)
    const [below, above] = [at(transitionSlenderness * (1 - 1e-6)), at(transitionSlenderness * (1 + 1e-6))]
    expect([below.governedBy, above.governedBy]).toEqual(['johnson', 'euler'])
    expect(below.criticalForce / (column.area * column.yieldStrength)).toBeCloseTo(0.5, 5)
    expect(above.criticalForce / below.criticalForce).toBeCloseTo(1, 5)
    const slope = (x: number) => at(x * 1.0001).criticalForce - at(x).criticalForce
    expect(slope(transitionSlenderness * 1.0001) / slope(transitionSlenderness * 0.9998)).toBeCloseTo(1, 2)
  })

  test('never above the yield load nor above Euler, and less the longer', () => {
    fc.assert(
      fc.property(range(0.005, 1), (length) => {
        const { criticalForce, effectiveLength } = columnBuckling.si({ ...column, length })
        expect(criticalForce).toBeLessThanOrEqual(column.area * column.yieldStrength)
        expect(criticalForce).toBeLessThanOrEqual(
          ((Math.PI ** 2 * column.modulus * column.secondMoment) / effectiveLength ** 2) * (1 + 1e-12),
        )
        expect(columnBuckling.si({ ...column, length: 1.01 * length }).criticalForce).toBeLessThan(criticalForce)
      }),
    )
    expect(columnBuckling.si({ ...column, length: 0.1, force: 0 }).reserve).toBe(Number.POSITIVE_INFINITY)
  })

  test('a fixed and a pinned end: the effective length solves tan x = x', () => {
    const { effectiveLength } = columnBuckling.si({ ...column, ends: 'fixedAndPinned', length: 1 })
    const x = Math.PI / effectiveLength
    expect(Math.tan(x) / x).toBeCloseTo(1, 4)
  })

  test('the wall of a box buckles with the square of its thickness', () => {
    const wall = { width: 0.02, modulus: 2e9, poissonRatio: 0.38, edges: 'simplySupported', load: 'compression' } as const
    expect(wallBuckling.si({ ...wall, thickness: 0.002 }) / wallBuckling.si({ ...wall, thickness: 0.001 })).toBeCloseTo(4, 12)
    expect(wallBuckling({ width: '20 mm', thickness: '2.01 mm', modulus: '2 GPa', poissonRatio: 0.38 }).notes?.[0]?.text).toContain(
      'thin plate',
    )
    expect(wallBuckling({ width: '20 mm', thickness: '2 mm', modulus: '2 GPa', poissonRatio: 0.38 }).notes).toBeUndefined()
  })
})

test('load on a slope: the level share on the level, all of it where the robot tips, a note beyond', () => {
  fc.assert(
    fc.property(range(0.1, 1.3), range(0, 0.99), range(0, 1), (tipOverSlope, levelShare, part) => {
      expect(slopeLoadShare.si({ slope: 0, tipOverSlope, levelShare })).toBe(levelShare)
      expect(slopeLoadShare.si({ slope: tipOverSlope, tipOverSlope, levelShare })).toBeCloseTo(1, 12)
      const share = slopeLoadShare.si({ slope: part * tipOverSlope, tipOverSlope, levelShare })
      expect(share).toBeGreaterThanOrEqual(levelShare)
      expect(share).toBeLessThanOrEqual(1)
    }),
  )
  expect(slopeLoadShare({ slope: '30 deg', tipOverSlope: '29 deg' }).notes?.[0]?.text).toContain('does not tip')
  expect(slopeLoadShare({ slope: '29 deg', tipOverSlope: '29 deg' }).notes).toBeUndefined()
})

test('thin walls are noted where they are not', () => {
  const box = { width: '20 mm', depth: '40 mm', modulus: '2 GPa', poissonRatio: 0.38 } as const
  expect(boxTorsionalRigidity({ ...box, wall: '5 mm' }).notes).toBeUndefined()
  expect(boxTorsionalRigidity({ ...box, wall: '5.01 mm' }).notes?.[0]?.text).toContain('a quarter of the smaller side')
  const tube = { torque: '1 N m', enclosedArea: '900 mm^2', perimeter: '120 mm', shearModulus: '1 GPa' } as const
  expect(thinWalledTorsion({ ...tube, wall: '10 mm' }).rigidity.notes).toBeUndefined()
  expect(thinWalledTorsion({ ...tube, wall: '10.01 mm' }).rigidity.notes?.[0]?.text).toContain('a third of the mean width')
})
