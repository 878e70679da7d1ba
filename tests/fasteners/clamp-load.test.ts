import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { clampLoadOverTime, clampLoadPowerLaw, clampLoadThroughHeat, compressionSleeve } from '../../src/fasteners/index.js'

const near = (a: number, b: number, relative: number) =>
  expect(Math.abs(a - b), `${a} against ${b}`).toBeLessThanOrEqual(relative * Math.max(Math.abs(a), Math.abs(b)))
const range = (min: number, max: number) => fc.double({ min, max, noNaN: true })

describe('clamp load over time', () => {
  const joint = { clampLoad: 1000, elasticCompliance: 0.12e-6, embedding: 0, retightenings: undefined }
  const creep = (t: number) => 1 + 0.1 * (t / 3600) ** 0.25
  const times = Array.from({ length: 40 }, (_, i) => 10 * 1.45 ** i)

  test('falls and never rises', () => {
    fc.assert(
      fc.property(range(0.01, 0.5), range(0.1, 0.9), range(0, 2), (c, n, r) => {
        const creepingLayers = [{ compliance: 1e-6, creep: (t: number) => 1 + c * (t / 3.6e5) ** n }]
        const { clampLoads } = clampLoadOverTime.si({ ...joint, elasticCompliance: r * 1e-6, creepingLayers, times })
        for (let i = 1; i < clampLoads.length; i++) expect(clampLoads[i]!).toBeLessThanOrEqual(clampLoads[i - 1]! * (1 + 1e-9) + 1e-9)
      }),
      { numRuns: 15 },
    )
  })

  test('asked for a second and for a year at once, both are right', () => {
    fc.assert(
      fc.property(range(0.05, 0.6), range(0.1, 0.5), range(0, 1), (c, n, r) => {
        const times = [0.5, 2, 40, 3.15e7]
        const creepingLayers = [{ compliance: 1e-6, creep: (t: number) => 1 + c * (t / 3600) ** n }]
        const { clampLoads } = clampLoadOverTime.si({ ...joint, elasticCompliance: r * 1e-6, creepingLayers, times })
        const law = { clampLoad: 1000, elasticCompliance: r * 1e-6, creepingCompliance: 1e-6, creepCoefficient: c, creepExponent: n }
        times.forEach((time, i) => {
          near(clampLoads[i]!, clampLoadPowerLaw.si({ ...law, time }).clampLoad, 3e-4)
        })
      }),
      { numRuns: 25 },
    )
  })

  test('a solid with one retardation time relaxes by one exponential, however short the time', () => {
    fc.assert(
      fc.property(range(-1, 7), range(0.2, 3), (decade, give) => {
        const tau = 10 ** decade
        const creepingLayers = [{ compliance: 1e-6, creep: (t: number) => 1 + give * -Math.expm1(-t / tau) }]
        const times = [0.2 * tau, tau, 5 * tau]
        const { clampLoads } = clampLoadOverTime.si({ ...joint, elasticCompliance: 0, creepingLayers, times: [...times, 1e8] })
        const left = 1 / (1 + give)
        times.forEach((time, i) => {
          near(clampLoads[i]!, 1000 * (left + (1 - left) * Math.exp((-time * (1 + give)) / tau)), 1e-3)
        })
        near(clampLoads[3]!, 1000 * left, 1e-3)
      }),
      { numRuns: 25 },
    )
  })

  test('long after the turn or just after it, a retightening has lost what a fresh joint loses', () => {
    const elastic = { ...joint, creepingLayers: [{ compliance: 1e-6, creep: (t: number) => 1 + 0.3 * (t / 3600) ** 0.15 }] }
    const { clampLoads } = clampLoadOverTime.si({ ...elastic, retightenings: [86400], times: [86400, 86402, 3e7] })
    const old = clampLoadOverTime.si({ ...elastic, times: [86400, 86402] }).clampLoads
    const fresh = clampLoadOverTime.si({ ...elastic, times: [2] }).clampLoads[0]!
    near(clampLoads[0]! - clampLoads[1]!, old[0]! - old[1]! + (1 - fresh / 1000) * (1000 - old[0]!), 2e-3)
  })

  test('a softer elastic side keeps more: between relaxation and no loss', () => {
    const law = { clampLoad: 1, creepingCompliance: 1, creepCoefficient: 0.1, creepExponent: 0.25, time: 3e7 }
    const left = (r: number) => clampLoadPowerLaw.si({ ...law, elasticCompliance: r }).share
    expect(left(0)).toBeLessThan(left(0.12))
    expect(left(0.12)).toBeLessThan(left(5))
    expect(left(1e6)).toBeGreaterThan(0.99999)
  })

  test('turned back in between, the joint holds more at the end, and exactly its first load just then', () => {
    const creepingLayers = [{ compliance: 1e-6, creep }]
    const day = 86400
    const plain = clampLoadOverTime.si({ ...joint, creepingLayers, times: [day, 30 * day] }).clampLoads
    const turned = clampLoadOverTime.si({ ...joint, creepingLayers, retightenings: [day], times: [day, 30 * day] }).clampLoads
    near(turned[0]!, 1000, 1e-12)
    expect(turned[1]!).toBeGreaterThan(plain[1]!)
    expect(turned[1]!).toBeLessThan(1000)
  })

  test('retightenings may be listed in any order', () => {
    const creepingLayers = [{ compliance: 1e-6, creep }]
    const x = { ...joint, creepingLayers, times: [1e3, 2e4, 1e5, 1e6] }
    const inOrder = clampLoadOverTime.si({ ...x, retightenings: [3600, 36_000, 360_000] })
    expect(clampLoadOverTime.si({ ...x, retightenings: [360_000, 3600, 36_000] })).toEqual(inOrder)
    expect(inOrder.clampLoads[3]!).toBeGreaterThan(clampLoadOverTime.si({ ...x, retightenings: [3600] }).clampLoads[3]! * 1.02)
  })

  test('a hot spell ends below where a cool one ends: the ratchet', () => {
    const speedUp = (difference: number) => Math.exp(0.1 * difference)
    const softening = () => 1
    const x = {
      clampLoad: 1000,
      elasticCompliance: 0.12e-6,
      creepingCompliance: 1e-6,
      creep,
      speedUp,
      softening,
      mismatchPerKelvin: 0.5e-6,
    }
    const hot = { duration: 3600, temperatureChange: 30 }
    const cool = { duration: 3600, temperatureChange: 0 }
    const swung = clampLoadThroughHeat.si({ ...x, spells: [cool, hot, cool, hot, cool] })
    const calm = clampLoadThroughHeat.si({ ...x, spells: [cool, cool, cool, cool, cool] })
    expect(swung.startLoads[1]!).toBeGreaterThan(swung.endLoads[0]!)
    expect(swung.endLoads[2]!).toBeLessThan(calm.endLoads[2]!)
    expect(swung.endLoads[4]!).toBeLessThan(swung.endLoads[2]!)
  })

  test('cut into spells of one temperature, the decay is that of one spell and of the solver for curves', () => {
    const x = { clampLoad: 1000, elasticCompliance: 0.12e-6, creepingCompliance: 1e-6, creep, speedUp: () => 1, mismatchPerKelvin: 1e-6 }
    const spells = [1e3, 1e4, 2e5].map((duration) => ({ duration, temperatureChange: 0 }))
    const { endLoads } = clampLoadThroughHeat.si({ ...x, softening: () => 1, spells })
    const creepingLayers = [{ compliance: 1e-6, creep }]
    const { clampLoads } = clampLoadOverTime.si({ ...joint, creepingLayers, times: [1e3, 1.1e4, 2.11e5] })
    for (let i = 0; i < 3; i++) near(endLoads[i]!, clampLoads[i]!, 1e-4)
  })

  test('layers that soften more lose more while hot, and end lower when cold again', () => {
    const x = { clampLoad: 1000, elasticCompliance: 0.12e-6, creepingCompliance: 1e-6, creep, speedUp: () => 5, mismatchPerKelvin: 0 }
    const spells = [0, 30, 0].map((temperatureChange) => ({ duration: 3600, temperatureChange }))
    const at = (more: number) =>
      clampLoadThroughHeat.si({ ...x, speedUp: (d) => (d > 0 ? 5 : 1), softening: (d) => 1 + (more * d) / 30, spells })
    fc.assert(
      fc.property(range(0, 3), range(0.01, 1), (softer, more) => {
        const [less, soft] = [at(softer), at(softer + more)]
        expect(soft.startLoads[1]!).toBeLessThan(less.startLoads[1]!)
        expect(soft.endLoads[1]!).toBeLessThan(less.endLoads[1]!)
        expect(soft.endLoads[2]!).toBeLessThan(less.endLoads[2]!)
      }),
      { numRuns: 20 },
    )
  })

  test('sleeve and print carry the clamp load together', () => {
    fc.assert(
      fc.property(range(1, 5000), range(-1e-4, 1e-4), (clampLoad, shortfall) => {
        const x = { clampLoad, sleeveCompliance: 1e-8, printCompliance: 1e-7, shortfall }
        const { sleeveLoad, printLoad } = compressionSleeve.si(x)
        near(sleeveLoad + printLoad, clampLoad, 1e-12)
        expect(Math.min(sleeveLoad, printLoad)).toBeGreaterThanOrEqual(0)
      }),
    )
  })
})
