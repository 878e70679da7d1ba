import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  allMaterials,
  bearingDuty,
  buildAngleUtilisation,
  cellularBounds,
  cumulativeDamage,
  fastenerZone,
  fatigueFactor,
  goodmanSafetyFactor,
  interlayerUtilisation,
  layerStress,
  materialByName,
  moistureGrowth,
  pa6,
  partEnduranceLimit,
  pla,
  pom,
  pp,
  printLife,
  reversedStress,
  runningClearance,
  shellInfillBeam,
  slidingFriction,
  steelLife,
  uptakeTime,
  wallMoistureUptake,
  waterUptake,
} from '../../src/materials/index.js'

const near = (a: number, b: number, relative: number) => Math.abs(a - b) <= relative * Math.abs(b)
const share = fc.double({ min: 0.01, max: 0.99, noNaN: true })
const stress = fc.double({ min: -1e8, max: 1e8, noNaN: true })
const strength = fc.double({ min: 1e6, max: 1e8, noNaN: true })

describe('layers', () => {
  const state = fc.record({ xx: stress, yy: stress, zz: stress, xy: stress, yz: stress, zx: stress })
  const build = fc
    .tuple(
      ...([0, 1, 2].map(() => fc.double({ min: -1, max: 1, noNaN: true })) as [
        fc.Arbitrary<number>,
        fc.Arbitrary<number>,
        fc.Arbitrary<number>,
      ]),
    )
    .filter((n) => Math.hypot(...n) > 0.1)
  test('the trace and the square sum of the stresses are kept, whatever the build direction', () => {
    fc.assert(
      fc.property(state, build, (s, buildDirection) => {
        const y = layerStress.si({ ...s, buildDirection })
        const trace = s.xx + s.yy + s.zz
        const squares = s.xx ** 2 + s.yy ** 2 + s.zz ** 2 + 2 * (s.xy ** 2 + s.yz ** 2 + s.zx ** 2)
        const mine = y.normal ** 2 + y.inPlaneLargest ** 2 + y.inPlaneSmallest ** 2 + 2 * y.shear ** 2
        return (
          Math.abs(y.normal + y.inPlaneLargest + y.inPlaneSmallest - trace) <= 1e-6 * 1e8 &&
          Math.abs(mine - squares) <= 1e-9 * (squares + 1e12)
        )
      }),
    )
  })
  test('neither the length nor the sense of the build direction matters', () => {
    fc.assert(
      fc.property(state, build, fc.double({ min: -5, max: -0.1, noNaN: true }), (s, n, k) => {
        const a = layerStress.si({ ...s, buildDirection: n })
        const b = layerStress.si({ ...s, buildDirection: n.map((x) => k * x) })
        return Math.abs(a.normal - b.normal) < 1 && Math.abs(a.shear - b.shear) < 1
      }),
    )
  })
  test('compression across the layers never harms, tension always does', () => {
    fc.assert(
      fc.property(
        stress,
        fc.double({ min: 0, max: 1e8, noNaN: true }),
        strength,
        strength,
        (normal, shear, acrossStrength, shearStrength) => {
          const at = (n: number) => interlayerUtilisation.si({ normal: n, shear, acrossStrength, shearStrength }).utilisation
          return normal <= 0 ? at(normal) === at(0) : at(normal) >= at(0) && at(2 * normal) >= at(normal)
        },
      ),
    )
  })
  test('utilisation scales with the load and its reserve brings it to one', () => {
    const { reserve } = interlayerUtilisation({ normal: '5 MPa', shear: '3 MPa', acrossStrength: '20 MPa', shearStrength: '12 MPa' })
    const again = interlayerUtilisation({
      normal: [5 * reserve.si, 'MPa'],
      shear: [3 * reserve.si, 'MPa'],
      acrossStrength: '20 MPa',
      shearStrength: '12 MPa',
    })
    expect(again.utilisation.si).toBeCloseTo(1, 12)
    expect(interlayerUtilisation({ normal: '-1 MPa', shear: '0 MPa', acrossStrength: '20 MPa', shearStrength: '12 MPa' }).reserve.si).toBe(
      Number.POSITIVE_INFINITY,
    )
  })
  test('a bar built at an angle is what the stress tensor says', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: Math.PI / 2, noNaN: true }), stress, (angle, pull) => {
        const simple = buildAngleUtilisation.si({ stress: pull, angle, alongStrength: 5e7, acrossStrength: 2.5e7, shearStrength: 1.6e7 })
        const full = layerStress.si({ xx: pull, yy: 0, zz: 0, xy: 0, yz: 0, zx: 0, buildDirection: [Math.sin(angle), 0, Math.cos(angle)] })
        return Math.abs(simple.normal - full.normal) < 1e-3 && Math.abs(simple.shear - full.shear) < 1e-3
      }),
    )
  })
  test('no build direction is refused', () => {
    const none = { xx: '1 MPa', yy: '0 MPa', zz: '0 MPa', xy: '0 MPa', yz: '0 MPa', zx: '0 MPa' } as const
    expect(() => layerStress({ ...none, buildDirection: [0, 0, 0] })).toThrow('not all zero')
    expect(() => layerStress({ ...none, buildDirection: [0, 1, 0, 0] })).toThrow('three numbers')
  })
})

describe('infill and walls', () => {
  test('bounds are ordered and meet the solid', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 0.33, noNaN: true }), (relativeDensity) => {
        const y = cellularBounds.si({ relativeDensity, modulus: 1, strength: 1 })
        return y.modulusBending <= y.modulusStretching && y.modulusStretching <= y.modulusLimit && y.strengthBending <= y.strengthStretching
      }),
    )
    expect(cellularBounds({ relativeDensity: 0.5, modulus: '3 GPa', strength: '50 MPa' }).modulusBending.notes?.[0]?.text).toMatch('0.3')
  })
  test('a core as stiff as the walls is a solid bar; more wall and more core only stiffen', () => {
    const bar = { width: 0.01, height: 0.008, sideWall: 0.001, topWall: 0.0012, wallModulus: 2e9, relativeDensity: 0.3 }
    expect(shellInfillBeam.si({ ...bar, coreModulus: 2e9 }).bendingShare).toBeCloseTo(1, 14)
    fc.assert(
      fc.property(share, share, fc.double({ min: 0, max: 0.5, noNaN: true }), (thin, core, more) => {
        const at = (wall: number, coreModulus: number) =>
          shellInfillBeam.si({ ...bar, sideWall: wall * 0.005, topWall: wall * 0.004, coreModulus }).bendingRigidity
        const thick = thin + (1 - thin) * more
        return at(thick, core * 2e9) >= at(thin, core * 2e9) * (1 - 1e-12) && at(thin, core * 2e9) >= at(thin, 0)
      }),
    )
  })
  test('walls that overlap, and a core stiffer than the walls, are refused', () => {
    const bar = {
      width: '10 mm',
      height: '8 mm',
      sideWall: '6 mm',
      topWall: '1 mm',
      wallModulus: '2 GPa',
      coreModulus: '3 GPa',
      relativeDensity: 0.3,
    } as const
    expect(() => shellInfillBeam(bar)).toThrow(/half of the width[\s\S]*at most that of the walls/)
  })
  test('sparse infill round a fastener is refused until enough walls make it solid', () => {
    const zone = { holeDiameter: '4 mm', lineWidth: '0.45 mm', relativeDensity: 0.2 } as const
    const { wallsNeeded, state } = fastenerZone({ ...zone, wallCount: 2 })
    expect(state).toBe('refused')
    expect(fastenerZone({ ...zone, wallCount: wallsNeeded }).state).toBe('solid')
    expect(fastenerZone({ ...zone, wallCount: 2, relativeDensity: 0.75 }).state).toBe('denseInfill')
  })
})

describe('fatigue', () => {
  const rod = { tensileStrength: '900 MPa', finish: 'machined', diameter: '6 mm' } as const
  test('every factor only lowers the limit, and rougher is lower', () => {
    const limits = (['ground', 'machined', 'hotRolled', 'forged'] as const).map((finish) => partEnduranceLimit({ ...rod, finish }).limit.si)
    for (let i = 1; i < limits.length; i++) expect(limits[i]!).toBeLessThan(limits[i - 1]!)
    const { limit, specimen } = partEnduranceLimit(rod)
    expect(limit.si).toBeLessThan(specimen.si)
    expect(partEnduranceLimit({ ...rod, specimenLimit: '100 MPa' }).specimen.in('MPa')).toBe(100)
    expect(partEnduranceLimit({ ...rod, diameter: '1 mm' }).size.si).toBe(1)
    expect(partEnduranceLimit({ ...rod, diameter: '300 mm' }).limit.notes?.[0]?.text).toMatch('254')
  })
  test('a steady pull costs reserve, a steady push does not', () => {
    const s = { alternating: '100 MPa', enduranceLimit: '250 MPa', tensileStrength: '800 MPa', yieldStrength: '600 MPa' } as const
    expect(goodmanSafetyFactor({ ...s, mean: '-100 MPa' }).fatigue.si).toBe(goodmanSafetyFactor({ ...s, mean: '0 MPa' }).fatigue.si)
    expect(goodmanSafetyFactor({ ...s, mean: '200 MPa' }).fatigue.si).toBeLessThan(2.5)
    expect(goodmanSafetyFactor({ ...s, mean: '-480 MPa' }).governs).toBe('yield')
    expect(goodmanSafetyFactor({ ...s, alternating: '0 MPa', mean: '-1 MPa', yieldStrength: undefined }).factor.si).toBe(
      Number.POSITIVE_INFINITY,
    )
    expect(() => reversedStress({ alternating: '1 MPa', mean: '800 MPa', tensileStrength: '800 MPa' })).toThrow('first pull')
  })
  test('the line passes through a thousand and a million cycles, is endless below, and says where it does not hold', () => {
    const s = { tensileStrength: '800 MPa', enduranceLimit: '300 MPa' } as const
    expect(steelLife({ ...s, reversed: '720 MPa' }).cycles.si).toBeCloseTo(1000, 6)
    expect(steelLife({ ...s, reversed: [300.0000001, 'MPa'] }).cycles.si / 1e6).toBeCloseTo(1, 6)
    expect(steelLife({ ...s, reversed: '300 MPa' })).toMatchObject({ state: 'endless' })
    expect(steelLife({ ...s, reversed: '790 MPa' })).toMatchObject({ state: 'lowCycle' })
    expect(() => steelLife({ ...s, enduranceLimit: '730 MPa', reversed: '790 MPa' })).toThrow('thousand cycles')
  })
  test('the life of a print undoes its fatigue factor', () => {
    fc.assert(
      fc.property(share, fc.double({ min: 1, max: 1e7, noNaN: true }), (ratioAtMillion, cycles) => {
        const largest = fatigueFactor.si({ cycles, ratioAtMillion })
        return largest >= 1 || near(printLife.si({ largest, strength: 1, ratioAtMillion }).cycles, cycles, 1e-6)
      }),
    )
    expect(printLife({ largest: '30 MPa', strength: '20 MPa', ratioAtMillion: 0.2 })).toMatchObject({ state: 'atFirstLoad' })
  })
  test('damage adds up, whatever the order, and a row that does none repeats for ever', () => {
    const y = cumulativeDamage({ cycles: [10, 20], lives: [100, 50] })
    const turned = cumulativeDamage({ cycles: [20, 10], lives: [50, 100] })
    expect(y.damage.si).toBe(turned.damage.si)
    expect(cumulativeDamage({ cycles: [0], lives: [10] }).repeats.si).toBe(Number.POSITIVE_INFINITY)
    expect(cumulativeDamage({ cycles: [60], lives: [100], allowed: 0.5 }).state).toBe('fails')
    expect(() => cumulativeDamage({ cycles: [1, 2], lives: [10] })).toThrow('as many')
  })
})

describe('water and sliding', () => {
  test('uptake rises with time and uptakeTime undoes it', () => {
    fc.assert(
      fc.property(share, fc.double({ min: 1e-4, max: 0.02, noNaN: true }), (part, thickness) => {
        const time = uptakeTime.si({ share: part, thickness, diffusivity: 3e-12 })
        return near(waterUptake.si({ time, thickness, diffusivity: 3e-12 }), part, 1e-9)
      }),
    )
    fc.assert(
      fc.property(fc.double({ min: 0, max: 3, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true }), (t, more) => {
        const at = (time: number) => waterUptake.si({ time, thickness: 1, diffusivity: 1 })
        return at(t) <= at(t + more) + 1e-13 && at(t) <= 1
      }),
    )
  })
  test('growth by water undoes itself', () => {
    const grow = moistureGrowth({ length: '50 mm', before: '0.2 %', after: '3 %', swelling: 0.25 })
    const shrink = moistureGrowth({ length: '50 mm', before: '3 %', after: '0.2 %', swelling: 0.25 })
    expect(grow.si).toBe(-shrink.si)
  })
  const bush = {
    madeClearance: '0.1 mm',
    shaftDiameter: '10 mm',
    outerDiameter: '14 mm',
    poissonRatio: 0.4,
    bushingExpansion: '100 ppm/K',
    shaftExpansion: '12 ppm/K',
    swelling: 0.25,
  } as const
  test('a held bushing closes with heat and with water, a free one opens; cold loosens it from its housing', () => {
    const at = (rise: number, water: number, mounting: 'held' | 'free') =>
      runningClearance({ ...bush, bushingRise: [rise, 'K'], shaftRise: [rise, 'K'], water, mounting })
    expect(at(30, 0, 'held').clearance.si).toBeLessThan(at(10, 0, 'held').clearance.si)
    expect(at(0, 0.03, 'held').clearance.si).toBeLessThan(at(0, 0, 'held').clearance.si)
    expect(at(0, 0.03, 'free').clearance.si).toBeGreaterThan(at(0, 0, 'free').clearance.si)
    expect(at(60, 0.06, 'held').state).toBe('seizes')
    expect(at(-30, 0, 'held').boreChange.si).toBeCloseTo(at(-30, 0, 'free').boreChange.si, 15)
  })
  test('a bushing thinner than its shaft is refused; a stubby bearing carries a note', () => {
    expect(() => runningClearance({ ...bush, outerDiameter: '9 mm', bushingRise: '0 K', shaftRise: '0 K', mounting: 'held' })).toThrow(
      'outerDiameter',
    )
    const pin = { load: '50 N', diameter: '10 mm', speed: '60 rpm', friction: 0.3, limit: '0.05 MPa m/s' } as const
    expect(bearingDuty({ ...pin, length: '2 mm' }).duty.notes?.[0]?.text).toMatch('diameters')
    expect(bearingDuty({ ...pin, length: '10 mm', speed: '6000 rpm' }).state).toBe('exceeded')
  })
})

describe('queries of a material', () => {
  const polymers = allMaterials().filter(
    ({ moistureSwelling, moistureDiffusivity }) => moistureSwelling !== undefined && moistureDiffusivity !== undefined,
  )
  test('a damp wall: a soaked one has the shares of the table, and only gets weaker, softer and longer with time and humidity', () => {
    const soaked = wallMoistureUptake(pa6, { humidity: 1, time: '20 year', thickness: '2 mm' })
    expect(soaked.strengthShare.si).toBeCloseTo(pa6.strengthSaturatedRatio.si, 9)
    expect(soaked.modulusShare.si).toBeCloseTo(pa6.modulusSaturatedRatio.si, 9)
    expect(soaked.growth.si).toBeCloseTo(pa6.moistureSwelling.si * pa6.moistureSaturated.si, 12)
    const climate = fc.record({
      m: fc.constantFrom(...polymers),
      humidity: fc.double({ min: 0, max: 1, noNaN: true }),
      days: fc.double({ min: 0, max: 400, noNaN: true }),
    })
    fc.assert(
      fc.property(climate, fc.double({ min: 0, max: 1, noNaN: true }), ({ m, humidity, days }, more) => {
        const at = (h: number, d: number) => wallMoistureUptake(m, { humidity: h, time: [d, 'day'], thickness: '3 mm' })
        const now = at(humidity, days)
        return [at(humidity + (1 - humidity) * more, days), at(humidity, days + 100 * more)].every(
          (later) =>
            later.strengthShare.si <= now.strengthShare.si + 1e-12 &&
            later.modulusShare.si <= now.modulusShare.si + 1e-12 &&
            later.growth.si >= now.growth.si - 1e-12,
        )
      }),
    )
    expect(() => wallMoistureUptake(pa6, { humidity: 1.2, time: '-1 s', thickness: '2 mm' })).toThrow(/humidity[\s\S]*time/)
    expect(() => wallMoistureUptake(pp, { humidity: 0.5, time: '1 h', thickness: '2 mm' })).toThrow('moistureDiffusivity')
  })
  // Printed ABS, PC and PLA on a tribometer, dry, oiled and greased: 0.04 to 0.2 (Polymers 2023, 15:4112, abstract). ASA is close to ABS.
  test.each(['ABS', 'ASA', 'PC', 'PLA'])('dry %s on steel holds by no more than a tribometer measured on prints', (name) => {
    expect(slidingFriction(materialByName(name), { on: 'steel', surface: 'dry' }).forHolding.si).toBeLessThanOrEqual(0.15)
  })

  test('friction is an interval: low for holding, high for driving; an unknown pair is refused', () => {
    const { friction, forHolding, forDriving } = slidingFriction(pom, { on: 'steel', surface: 'dry' })
    expect([forHolding.si, forDriving.si]).toEqual([friction.low, friction.high])
    expect(slidingFriction(pom, { on: 'steel', surface: 'greased' }).forDriving.si).toBeLessThan(forDriving.si)
    expect(() => slidingFriction(pla, { on: 'itself', surface: 'dry' })).toThrow('frictionOnSelf')
    expect(() => slidingFriction(pom, { on: 'itself', surface: 'greased' })).toThrow('steel only')
    expect(() => slidingFriction(pom, { on: 'brass' as 'steel', surface: 'dry' })).toThrow('steel, itself')
    expect(() => slidingFriction(pom, undefined as never)).toThrow('must be an object')
  })
})
