import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  annularFin,
  barFin,
  bestFinSpacing,
  discSpreading,
  discSpreadingEstimate,
  halfSpaceSpreading,
  intermittentDuty,
  intermittentOverload,
  lumpedResponse,
  network,
  plateFinSink,
  ringOnPlate,
  ringSpreading,
  shortTimeDuty,
  shortTimeOverload,
  straightFin,
  thickBodyFlux,
  thickBodyStep,
  wallResponse,
} from '../../src/thermal/index.js'
import { InputError } from '../../src/units/index.js'

const oracle: {
  discs: { sourceRatio: number; thicknessRatio: number; biot: number; mean: number; centre: number }[]
  walls: { biot: number; fourier: number; middle: number; surface: number }[]
} = JSON.parse(readFileSync(new URL('../oracles/thermal-spreading.json', import.meta.url), 'utf8'))
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true })

describe('spreading', () => {
  test.each(oracle.discs)('disc $sourceRatio, thickness $thicknessRatio, Biot $biot, as scipy sums 60000 terms', (row) => {
    const { mean, centre } = discSpreading.si(row)
    expect(Math.abs(mean / row.mean - 1)).toBeLessThan(1e-5)
    expect(Math.abs(centre / row.centre - 1)).toBeLessThan(1e-5)
  })

  test('the closed form is off by what its page says, and by no more', () => {
    const errors = oracle.discs.map((row) => {
      const estimate = discSpreadingEstimate.si(row)
      return { mean: estimate.mean / row.mean - 1, peak: estimate.peak / row.centre - 1 }
    })
    const worst = (key: 'mean' | 'peak') => Math.max(...errors.map((each) => Math.abs(each[key])))
    expect(worst('mean')).toBeLessThan(0.155)
    expect(worst('peak')).toBeLessThan(0.62)
    // Not an idle warning: the default must not be this.
    expect(worst('mean')).toBeGreaterThan(0.1)
    expect(worst('peak')).toBeGreaterThan(0.35)
  })

  test('a small disc on a thick plate is the half-space', () => {
    const { mean, centre } = discSpreading.si({ sourceRatio: 0.01, thicknessRatio: 5, biot: 1 })
    const unit = halfSpaceSpreading.si({ radius: 1, conductivity: 1 })
    // The plate's rim takes off 1.4 source ratios.
    expect(Math.abs(mean / (Math.sqrt(Math.PI) * unit.isofluxMean) - 1)).toBeLessThan(0.016)
    expect(Math.abs(centre / (Math.sqrt(Math.PI) * unit.isofluxCentre) - 1)).toBeLessThan(0.016)
  })

  test('one face cooled: the ring series is the two-faced one with no film on the near face; a disc is a ring without a hole', () => {
    fc.assert(
      fc.property(between(0.1, 200), between(1e-3, 0.01), between(2, 80), (conductivity, thickness, coefficient) => {
        const x = { innerRadius: 0.006, outerRadius: 0.0175, plateRadius: 0.045, thickness, conductivity }
        const one = ringSpreading.si({ ...x, coefficient }).total
        const two = ringOnPlate.si({ ...x, motorFaceCoefficient: 0, freeFaceCoefficient: coefficient, underMotor: 'open' }).ring
        expect(Math.abs(one / two - 1)).toBeLessThan(1e-4)
        const disc = ringSpreading.si({ ...x, innerRadius: 0, coefficient }).spreading
        const { mean } = discSpreading.si({
          sourceRatio: 0.0175 / 0.045,
          thicknessRatio: thickness / 0.045,
          biot: (coefficient * 0.045) / conductivity,
        })
        expect(Math.abs(disc / (mean / (Math.sqrt(Math.PI) * conductivity * 0.0175)) - 1)).toBeLessThan(1e-9)
      }),
      { numRuns: 40 },
    )
  })
})

/** A bar as a chain of cells from its root: half cells of conduction at both ends, films on the cells. Independent of the closed forms. */
const chain = (cells: number, length: number, section: (x: number) => number, film: (x: number, dx: number) => number, k: number) => {
  const dx = length / cells
  const nodes: Record<string, object> = { root: { fixed: '0 degC' }, air: { fixed: '1 degC' } }
  const links = []
  for (let i = 0; i < cells; i++) {
    nodes[`c${i}`] = {}
    const area = section(i * dx)
    links.push({
      from: i === 0 ? 'root' : `c${i - 1}`,
      to: `c${i}`,
      conductance: [(k * area) / (i === 0 ? dx / 2 : dx), 'W/K'] as const,
    })
    links.push({ from: `c${i}`, to: 'air', conductance: [film((i + 0.5) * dx, dx), 'W/K'] as const })
  }
  const { flows } = network(nodes, links).steady()
  return -(flows[0]?.si as number)
}

describe('fins', () => {
  test('a bar of 200 cells sheds what the formula says', () => {
    const x = { length: 0.1, perimeter: 0.08, section: 2e-4, conductivity: 0.5, coefficient: 12 }
    const corrected = x.length + x.section / x.perimeter
    const cells = chain(
      200,
      corrected,
      () => x.section,
      (_, dx) => x.coefficient * x.perimeter * dx,
      x.conductivity,
    )
    expect(Math.abs(cells / barFin.si(x).conductance - 1)).toBeLessThan(2e-3)
  })

  test('an annular fin of 200 cells sheds what the Bessel functions say', () => {
    const x = { innerRadius: 0.0175, outerRadius: 0.045, thickness: 0.006, conductivity: 0.2, coefficient: 12.5 }
    const cells = chain(
      200,
      x.outerRadius - x.innerRadius,
      (r) => 2 * Math.PI * (x.innerRadius + r) * x.thickness,
      (r, dx) => 2 * x.coefficient * 2 * Math.PI * (x.innerRadius + r) * dx,
      x.conductivity,
    )
    expect(Math.abs(cells / annularFin.si(x).conductance - 1)).toBeLessThan(5e-3)
  })

  test('a wide annular fin is a straight one; a straight fin is a bar; a short fin is all root', () => {
    const fin = { thickness: 0.003, conductivity: 0.2, coefficient: 10 }
    const ring = annularFin.si({ ...fin, innerRadius: 50, outerRadius: 50.0215 })
    const straight = straightFin.si({ ...fin, length: 0.02, width: 2 * Math.PI * 50 })
    expect(Math.abs(ring.conductance / straight.conductance - 1)).toBeLessThan(1e-3)
    const bar = barFin.si({ ...fin, length: 0.02, perimeter: 2, section: 0.003 })
    expect(bar.efficiency).toBeCloseTo(straight.efficiency, 12)
    expect(straightFin.si({ ...fin, conductivity: 400, length: 1e-4, width: 1 }).efficiency).toBeCloseTo(1, 4)
  })

  test('efficiency lies between 0 and 1 and conductance grows with every one of its causes, however long the fin', () => {
    fc.assert(
      fc.property(between(0.002, 0.05), between(1.05, 60), between(2e-4, 0.02), between(0.1, 400), between(1, 500), (r, times, t, k, h) => {
        const at = (conductivity: number, coefficient: number, reach: number) =>
          annularFin.si({ innerRadius: r, outerRadius: r * reach, thickness: t, conductivity, coefficient })
        const base = at(k, h, times)
        expect(base.efficiency).toBeGreaterThan(0)
        expect(base.efficiency).toBeLessThanOrEqual(1 + 1e-9)
        for (const more of [at(1.05 * k, h, times), at(k, 1.05 * h, times), at(k, h, 1.05 * times)])
          expect(more.conductance).toBeGreaterThanOrEqual(base.conductance * (1 - 1e-9))
      }),
    )
  })

  test('thin fins shed most at the spacing that is called best', () => {
    const temperatures = { surfaceTemperature: 353.15, airTemperature: 303.15, pressure: 101325 }
    const { spacing } = bestFinSpacing.si({ height: 0.18, ...temperatures })
    const width = 2
    const at = (gap: number) => {
      const fins = Math.round(width / gap) + 1
      return plateFinSink.si({ width, height: 0.18, finLength: 0.02, finThickness: 1e-6, fins, conductivity: 1e9, ...temperatures })
    }
    const best = at(spacing).conductance
    for (const factor of [0.8, 0.9, 1.1, 1.25]) expect(at(spacing * factor).conductance).toBeLessThan(best)
  })

  test('a fin thinner than zero is refused by name', () => {
    const fin = { length: '20 mm', width: '50 mm', conductivity: '200 W/(m K)', coefficient: '10 W/(m^2 K)' } as const
    expect(() => straightFin({ ...fin, thickness: '-1 mm' })).toThrow(InputError)
    expect(() => straightFin({ ...fin, thickness: '-1 mm' })).toThrow('thickness')
    expect(() => straightFin({ ...fin, thickness: '0 mm' })).toThrow('thickness')
  })
})

describe('solids in time', () => {
  test.each(oracle.walls.filter(({ fourier }) => fourier >= 0.2))(
    'wall, Biot $biot, Fourier $fourier: one term errs by no more than it says',
    (row) => {
      const { middle, surface } = wallResponse.si(row)
      const late = row.fourier >= 0.5
      expect(Math.abs(middle / row.middle - 1)).toBeLessThan(late ? 1e-3 : 0.02)
      expect(Math.abs(surface / row.surface - 1)).toBeLessThan(late ? 1e-3 : 0.04)
    },
  )

  test('a wall of forty cells follows the exact series, and early times too', () => {
    // Half a wall of 10 mm: k 0.2, ρc 1.4e6, film for Biot 1 on the half thickness; starts 1 K above the air.
    const [cells, half, k, rhoC] = [40, 0.005, 0.2, 1.4e6]
    const dx = half / cells
    const nodes: Record<string, object> = { air: { fixed: '0 degC' } }
    const links = []
    for (let i = 0; i < cells; i++) {
      nodes[`c${i}`] = { capacity: [rhoC * dx, 'J/K'] }
      if (i > 0) links.push({ from: `c${i - 1}`, to: `c${i}`, conductance: [k / dx, 'W/K'] as const })
    }
    links.push({ from: `c${cells - 1}`, to: 'air', conductance: [1 / (dx / (2 * k) + half / k), 'W/K'] as const })
    const course = network(nodes, links).transient({ duration: [(2 * half ** 2 * rhoC) / k, 's'], initial: '1 degC' })
    for (const { fourier, middle } of oracle.walls.filter(({ biot }) => biot === 1)) {
      const at = course.at([(fourier * half ** 2 * rhoC) / k, 's'])
      expect(Math.abs((at.c0?.in('degC') as number) - middle), `Fourier ${fourier}`).toBeLessThan(5e-4)
    }
  })

  test('a thick body: the flux of a held surface and the rise under that flux agree in energy', () => {
    // Slope of the error function at the surface is 1/√(π α t); Duhamel: constant flux gives 2 q/k √(α t/π).
    const [diffusivity, k] = [1.23e-7, 0.2]
    const near = (depth: number, time: number) => thickBodyStep.si({ initial: 0, surface: 1, depth, time, diffusivity })
    const flux = (time: number) => (k * (1 - near(1e-8, time))) / 1e-8
    expect(flux(100)).toBeCloseTo(k / Math.sqrt(Math.PI * diffusivity * 100), 2)
    expect(thickBodyFlux.si({ flux: 1000, time: 100, conductivity: k, diffusivity })).toBeCloseTo(
      (2000 / k) * Math.sqrt((diffusivity * 100) / Math.PI),
      9,
    )
    expect(near(0, 10)).toBe(1)
    expect(near(1, 10)).toBeCloseTo(0, 12)
  })

  const body = (watts: number) =>
    network({ a: { capacity: '100 J/K', loss: [watts, 'W'] }, air: { fixed: '25 degC' } }, [
      { from: 'a', to: 'air', conductance: '0.25 W/K' },
    ])

  test('one body: network and closed form agree', () => {
    const course = body(10).transient({ duration: '20 min' })
    for (const time of [60, 300, 1200]) {
      const { temperature } = lumpedResponse.si({ initial: 298.15, final: 338.15, heatCapacity: 100, thermalResistance: 4, time })
      expect(course.at([time, 's']).a?.si).toBeCloseTo(temperature, 3)
    }
  })

  test('overload factors of S2 and S3 bring one body to its continuous rise, no more', () => {
    fc.assert(
      fc.property(between(60, 900), between(0.1, 0.9), (period, factor) => {
        const loadTime = factor * period
        const short = shortTimeOverload.si({ loadTime, timeConstant: 400 }).loss
        const s2 = shortTimeDuty({ load: body(10 * short), rest: body(0), loadTime: [loadTime, 's'] })
        expect(s2.peaks.a?.temperature.si).toBeCloseTo(338.15, 2)
        const intermittent = intermittentOverload.si({ loadTime, period, timeConstant: 400 }).loss
        const s3 = intermittentDuty({ load: body(10 * intermittent), rest: body(0), dutyFactor: factor, period: [period, 's'] })
        expect(s3.peaks.a?.temperature.si).toBeCloseTo(338.15, 2)
        expect(short).toBeGreaterThan(intermittent)
      }),
      { numRuns: 15 },
    )
  })
})
