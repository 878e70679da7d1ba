import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  allowableInterference,
  bossWallStress,
  clampLoadPowerLaw,
  embeddedPin,
  embeddedPinElastic,
  pressFit,
  pressFitOverTime,
} from '../../src/fasteners/index.js'
import { integrate } from '../../src/numeric/index.js'
import pins from '../oracles/fasteners-pins.json' with { type: 'json' }

const near = (a: number, b: number, relative: number) =>
  expect(Math.abs(a - b), `${a} against ${b}`).toBeLessThanOrEqual(relative * Math.max(Math.abs(a), Math.abs(b)))
const range = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const polymer = { modulus: 2e9, poissonRatio: 0.38 }
const steel = { modulus: 207e9, poissonRatio: 0.29 }

describe('press fit', () => {
  const fit = { diameter: 0.004, diametralInterference: 40e-6, bossDiameter: 0.012, pinBore: 0, boss: polymer, pin: steel }

  test('a pin without give leaves the boss to relax alone; one that gives keeps more', () => {
    const creep = (t: number) => 1 + 0.2 * (t / 3600) ** 0.3
    const at = (pinShare: number) => pressFitOverTime.si({ pressure: 10e6, pinShare, creep, times: [0, 3600, 3e7] })
    const rigid = at(0)
    const alone = { clampLoad: 10e6, elasticCompliance: 0, creepingCompliance: 1, creepCoefficient: 0.2, creepExponent: 0.3 }
    near(rigid.pressures[0]!, 10e6, 1e-12)
    near(rigid.pressures[2]!, clampLoadPowerLaw.si({ ...alone, time: 3e7 }).clampLoad, 3e-4)
    expect(rigid.lowest).toBe(rigid.pressures[2]!)
    near(at(1e-9).pressures[2]!, rigid.pressures[2]!, 1e-6)
    expect(at(0.3).pressures[2]!).toBeGreaterThan(rigid.pressures[2]! * 1.1)
  })

  test('a very thick wall is an endless one: p = δE/(d(1 + ν)) on a rigid pin', () => {
    const thick = pressFit.si({ ...fit, bossDiameter: 4, pin: { modulus: 1e20, poissonRatio: 0.3 } })
    near(thick.pressure, (40e-6 * 2e9) / (0.004 * 1.38), 3e-6)
    near(thick.boreHoopStress, thick.pressure, 3e-6)
  })

  test('the pin is compressed: by the pressure if solid, by more at the bore of a hollow one', () => {
    const solid = pressFit.si(fit)
    expect(solid.pressure).toBeGreaterThan(0)
    expect(solid.pinHoopStress).toBe(-solid.pressure)
    // At the bore of a hollow pin −2 p d²/(d² − b²): twice the pressure where the bore is a mere hole.
    const hollow = pressFit.si({ ...fit, pinBore: 0.002 })
    near(hollow.pinHoopStress, (-2 * hollow.pressure * 16) / 12, 1e-12)
    const pierced = pressFit.si({ ...fit, pinBore: 4e-7 })
    near(pierced.pinHoopStress, -2 * pierced.pressure, 1e-7)
  })

  test('a stiffer pin has a smaller share, down to none', () => {
    fc.assert(
      fc.property(range(1e9, 1e12), (modulus) => {
        const soft = pressFit.si({ ...fit, pin: { ...steel, modulus } })
        const stiff = pressFit.si({ ...fit, pin: { ...steel, modulus: 2 * modulus } })
        expect(stiff.pinShare).toBeLessThan(soft.pinShare)
        expect(stiff.pressure).toBeGreaterThan(soft.pressure)
      }),
    )
    expect(pressFit.si({ ...fit, pin: { ...steel, modulus: 1e20 } }).pinShare).toBeLessThan(1e-9)
  })

  test('the wall is in balance: hoop tension over the wall carries the pressure on the bore', () => {
    fc.assert(
      fc.property(range(1.05, 8), (width) => {
        const at = (radius: number) => bossWallStress.si({ pressure: 1, diameter: 2, bossDiameter: 2 * width, radius })
        near(
          integrate((r) => at(r).hoopStress, 1, width),
          1,
          1e-9,
        )
        near(at(1).radialStress, -1, 1e-12)
        expect(Math.abs(at(width).radialStress)).toBeLessThan(1e-12)
      }),
    )
  })

  test('the allowable interference, pressed in, gives just the allowable stress', () => {
    fc.assert(
      fc.property(range(1.2, 6), fc.constantFrom('hoop' as const, 'vonMises' as const, 'tresca' as const), (width, criterion) => {
        const common = { diameter: 0.004, bossDiameter: 0.004 * width, pinBore: 0, boss: polymer, pin: steel }
        const limits = { allowableInLayers: 20e6, allowableAcrossLayers: 8e6, criterion }
        const { diametralInterference } = allowableInterference.si({ ...common, ...limits, boreAxis: 'acrossLayers' })
        const made = pressFit.si({ ...common, diametralInterference })
        near({ hoop: made.boreHoopStress, vonMises: made.boreVonMises, tresca: made.boreTresca }[criterion], 20e6, 1e-12)
        const lying = allowableInterference.si({ ...common, ...limits, boreAxis: 'inLayers' })
        expect(lying.diametralInterference).toBeLessThanOrEqual(diametralInterference)
        expect(pressFit.si({ ...common, diametralInterference: lying.diametralInterference }).boreHoopStress).toBeLessThan(
          8e6 * (1 + 1e-12),
        )
      }),
    )
  })
})

describe('embedded pins against the beam equation', () => {
  test.each(pins)('arm $arm mm, depth $depth mm, foundation $foundation', ({ arm, depth, foundation, elastic, rigid }) => {
    const x = { force: 100, arm: arm / 1000, depth: depth / 1000, diameter: 0.004 }
    const soft = embeddedPinElastic.si({ ...x, pinModulus: 200e9, foundationModulus: foundation * 1e6 })
    near(soft.slenderness, elastic.slenderness, 1e-9)
    near(soft.mouthPressure, elastic.mouth * 1e6, 1e-7)
    // The far end of a long pin is a small difference of large parts in the solve.
    expect(Math.abs(soft.endPressure - elastic.end * 1e6)).toBeLessThan(1e-6 * elastic.mouth * 1e6)
    near(soft.moment, elastic.moment / 1000, 1e-6)
    const stiff = embeddedPin.si(x)
    near(stiff.mouthPressure, rigid.mouth * 1e6, 1e-9)
    near(stiff.endPressure, rigid.end * 1e6, 1e-9)
    near(stiff.moment, rigid.moment / 1000, 1e-6)
  })

  test('a stiff pin is a rigid one', () => {
    const x = { force: 100, arm: 0.005, depth: 0.01, diameter: 0.004 }
    const elastic = embeddedPinElastic.si({ ...x, pinModulus: 2e15, foundationModulus: 2e9 })
    near(elastic.mouthPressure, embeddedPin.si(x).mouthPressure, 1e-4)
    near(elastic.moment, embeddedPin.si(x).moment, 1e-4)
  })
})
