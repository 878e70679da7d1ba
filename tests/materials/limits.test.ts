// Where notes and doubts begin, and what cannot be.
import { describe, expect, test } from 'vitest'
import { property } from '../../src/formula/index.js'
import { meanIntegral } from '../../src/materials/histories.js'
import {
  cellularBounds,
  doubtsAbout,
  fibreExpansion,
  findleyTimeToStrain,
  fitFindley,
  pla,
  printLife,
  shellInfillBeam,
  timeTemperatureShift,
  toleranceFactor,
  wlfShift,
} from '../../src/materials/index.js'

import { checkCurve } from '../../src/materials/temperature-curve.js'
import type { Issue } from '../../src/units/index.js'

interface Noted {
  readonly notes?: readonly { readonly text: string }[] | undefined
}
const notes = ({ notes }: Noted) => notes?.map(({ text }) => text).join() ?? ''

describe('validity', () => {
  test('the laws of cells hold up to a relative density of 0.3', () => {
    const at = (relativeDensity: number) => notes(cellularBounds({ relativeDensity, modulus: '2 GPa', strength: '40 MPa' }).modulusBending)
    expect(at(0.3)).toBe('')
    expect(at(0.301)).toContain('at most 0.3')
  })

  test('a shift across the glass transition has a note, one on either side of it has none', () => {
    const shift = (temperature: `${number} degC`, reference: `${number} degC`) =>
      notes(timeTemperatureShift({ temperature, reference, glassTransition: '100 degC', activationEnergy: '300 kJ/mol' } as never).shift)
    expect(shift('40 degC', '20 degC')).toBe('')
    expect(shift('130 degC', '110 degC')).toBe('')
    expect(shift('110 degC', '20 degC')).toContain('one side of the glass transition')
    expect(shift('20 degC', '110 degC')).toContain('one side of the glass transition')
  })

  test('a part that hardly feels its load lasts without end', () => {
    const idle = printLife({ largest: '0.1 MPa', strength: '60 MPa', ratioAtMillion: 0.9 })
    expect(idle.cycles.si).toBe(Number.POSITIVE_INFINITY)
    expect(notes(idle.cycles)).toContain('ten million cycles')
    const slow = findleyTimeToStrain({ strain: '5 %', stress: '0.1 MPa', modulus: '2 GPa', creepCoefficient: 0.01, creepExponent: 0.01 })
    expect(slow.time.si).toBe(Number.POSITIVE_INFINITY)
    expect(notes(slow.time)).toContain('at most ten years')
  })

  test('the law of Williams, Landel and Ferry ends 51.6 K below its reference', () => {
    expect(() => wlfShift({ temperature: '40 degC', reference: '100 degC' })).toThrow(
      /temperature is '40 degC'; must be less than c2 below the reference/,
    )
    expect(notes(wlfShift({ temperature: '60 degC', reference: '100 degC' }))).toContain('use arrheniusShift')
  })

  test('a filled polymer is at least as stiff as the share of its matrix', () => {
    const filled = (modulus: '2 GPa' | '1.5 GPa' | '1.2 GPa') =>
      fibreExpansion({
        ...{ volumeShare: 0.25, fibreExpansion: '0 ppm/K', matrixExpansion: '80 ppm/K', matrixModulus: '2 GPa' },
        modulus,
      } as never)
    // Three quarters of 2 GPa: then the fibres do nothing.
    expect(filled('1.5 GPa').in('ppm/K')).toBeCloseTo(80, 9)
    expect(filled('2 GPa').in('ppm/K')).toBeCloseTo(60, 9)
    expect(() => filled('1.2 GPa')).toThrow(/modulus is '1.2 GPa'; must be at least what the polymer alone gives/)
  })
})

test('a value is doubted on either side of what the table has', () => {
  const source = { level: 'assumption', where: 'a test of doubts' } as const
  const doubt = (typical: number) => {
    const value = [typical, 'g/cm^3'] as const
    return doubtsAbout(pla, { density: property('density', { typical: value, low: value, high: value, source }) as never })
  }
  const { low, high } = pla.density!
  expect(doubt(low / 1000)).toEqual([])
  expect(doubt(low / 1000 / 1.49)).toEqual([])
  expect(doubt((high / 1000) * 1.49)).toEqual([])
  expect(doubt(low / 1000 / 1.51)).toHaveLength(1)
  expect(doubt((high / 1000) * 1.51)[0]).toContain('far from')
})

test('a short piece of a history long ago keeps its digits', () => {
  const law = { compliance: (t: number) => t ** 0.3, integral: (t: number) => t ** 1.3 / 1.3 }
  // Of a piece of one second 1e9 s ago the compliance in its middle, to 1e-20 of it.
  expect(meanIntegral(law as never, 1e9 + 1, 1e9) / (1e9 + 0.5) ** 0.3).toBeCloseTo(1, 12)
  expect(meanIntegral(law as never, 3, 1)).toBeCloseTo((3 ** 1.3 - 1) / 1.3, 12)
})

test('what readings of one moment do not determine has no range', () => {
  const readings = Array.from({ length: 6 }, (_, i) => ({ time: '1 h', stress: '8 MPa', strain: 0.004 * (1 + 0.01 * (i % 2)) }) as const)
  const { parameters, notes: found } = fitFindley(readings)
  const open = Object.values(parameters).filter(({ conditions }) => conditions === 'not determined by the readings')
  expect(open.length).toBeGreaterThan(0)
  for (const { low, high, si } of open) expect([low, high]).toEqual([si, si])
  expect(found.map(({ text }) => text).join()).toContain('do not determine')
})

test.each([
  // Exact factors: chance of the share between both limits, integrated over the mean by scipy.
  [5, 0.9, 0.95, 4.29060407, 0.004],
  [5, 0.9, 0.99, 6.65492969, 0.007],
  [6, 0.99, 0.99, 8.29152979, 0.01],
  [5, 0.99, 0.95, 6.59797674, 0.015],
  [5, 0.999, 0.99, 12.92043249, 0.024],
])(
  'the factor of %i coupons, %d of the scatter at %d, is as near to the exact one as it says',
  (sampleSize, coverage, confidence, exact, within) => {
    const error = toleranceFactor.si({ sampleSize, coverage, confidence }) / exact - 1
    expect(Math.abs(error)).toBeLessThan(within)
  },
)

test('the section modulus of a box is that of every handbook, (b h³ − b₁ h₁³)/(6 h), and of a solid bar b h²/6', () => {
  const bar = { width: 0.02, height: 0.012, sideWall: 0.002, topWall: 0.0015, wallModulus: 2e9, relativeDensity: 0.3 }
  const box = (20 * 12 ** 3 - 16 * 9 ** 3) / (6 * 12)
  expect(shellInfillBeam.si({ ...bar, coreModulus: 0 }).sectionModulus * 1e9).toBeCloseTo(box, 9)
  expect(shellInfillBeam.si({ ...bar, coreModulus: 2e9 }).sectionModulus * 1e9).toBeCloseTo((20 * 12 ** 2) / 6, 9)
})

test('a curve over temperature rises in temperature, falls in every share, and keeps its three shares in order from 0 to 1', () => {
  type Point = readonly [celsius: number, low: number, typical: number, high: number]
  const bad = (...points: readonly Point[]) => {
    const issues: Issue[] = []
    checkCurve('strengthCurve', { points, source: { level: 'unverified', where: 'test' }, conditions: '' }, issues)
    return issues.map(({ path }) => path)
  }
  const first: Point = [23, 0.9, 0.95, 1]
  expect(bad(first, [50, 0.7, 0.8, 0.9], [80, 0.7, 0.8, 0.9])).toEqual([])
  for (const second of [
    [23, 0.7, 0.8, 0.9],
    [20, 0.7, 0.8, 0.9],
    [50, 0.91, 0.92, 0.93],
    [50, 0.7, 0.96, 0.97],
    [50, 0.8, 0.7, 0.9],
    [50, 0.7, 0.9, 0.8],
    [50, -0.1, 0.8, 0.9],
  ] as const)
    expect(bad(first, second), second.join()).toEqual(['strengthCurve.points[1]'])
  expect(bad([23, 0.9, 0.95, 0.96], [50, 0.9, 0.95, 0.97])).toEqual(['strengthCurve.points[1]'])
  expect(bad([23, 0.9, 0.95, 1.01])).toEqual(['strengthCurve.points[0]'])
  expect(() => checkCurve('x', undefined, [])).not.toThrow()
})
