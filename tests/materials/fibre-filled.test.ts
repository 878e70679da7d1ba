import { describe, expect, test } from 'vitest'
import type { Property } from '../../src/formula/index.js'
import {
  additiveSwelling,
  fibreExpansion,
  fibreVolumeShare,
  halpinTsai,
  type Material,
  materialByName,
  ruleOfMixtures,
} from '../../src/materials/index.js'

// The values of filled prints whose source says "computed" are calculated here again, from fibre and unfilled polymer: they may not drift from either.

interface Fibre {
  readonly density: number
  readonly modulus: number
  readonly poissonRatio: number
  readonly specificHeat: number
  readonly conductivity: number
  readonly expansion: number
}
const CARBON: Fibre = { density: 1760, modulus: 230e9, poissonRatio: 0.2, specificHeat: 795, conductivity: 10.5, expansion: -0.41e-6 }
const GLASS: Fibre = { density: 2540, modulus: 72.4e9, poissonRatio: 0.2, specificHeat: 840, conductivity: 1.3, expansion: 5e-6 }

interface Range {
  readonly low: number
  readonly si: number
  readonly high: number
}
const range = (si: number, low: number, high: number): Range => ({ si, low, high })
/** PET is no print of the table: MatWeb's averages in open material cards, Crawford, and a copolyester of 2.4 GPa. */
const PET = {
  density: range(1340, 1340, 1340),
  modulus: range(2.4e9, 2.4e9, 2.4e9),
  poissonRatio: range(0.36, 0.35, 0.4),
  specificHeat: range(1070, 1000, 1200),
  thermalConductivity: range(0.19, 0.16, 0.2),
  thermalConductivityAcrossLayers: range(0.1425, 0.08, 0.2),
  thermalExpansion: range(72e-6, 60e-6, 90e-6),
  moistureSaturated: range(0.006, 0.0034, 0.009),
}
type Matrix = { readonly [P in keyof typeof PET]: Range }

/** Filled print, its polymer, its fibre, and the share of mass: typical, low, high. */
const CASES: readonly (readonly [name: string, matrix: string, fibre: Fibre, shares: readonly [number, number, number]])[] = [
  ['PLA-CF', 'PLA', CARBON, [0.15, 0.1, 0.2]],
  ['PETG-CF', 'PETG', CARBON, [0.15, 0.1, 0.2]],
  ['PET-CF', 'PET', CARBON, [0.15, 0.1, 0.2]],
  ['PET-GF', 'PET', GLASS, [0.15, 0.1, 0.3]],
  ['ABS-CF', 'ABS', CARBON, [0.15, 0.1, 0.2]],
  ['ABS-GF', 'ABS', GLASS, [0.12, 0.05, 0.3]],
  ['ASA-CF', 'ASA', CARBON, [0.15, 0.1, 0.2]],
  ['ASA-GF', 'ASA', GLASS, [0.15, 0.1, 0.3]],
  ['PA-CF', 'PA6', CARBON, [0.15, 0.1, 0.2]],
  ['PA6-GF', 'PA6', GLASS, [0.25, 0.15, 0.3]],
]

function calculated(filled: Material, matrix: Matrix, fibre: Fibre, [typical, least, most]: readonly [number, number, number]) {
  const volume = (massShare: number) => fibreVolumeShare.si({ massShare, fibreDensity: fibre.density, matrixDensity: matrix.density.si })
  const [share, little, much] = [volume(typical), volume(least), volume(most)]
  const mixed = (of: number, amount: number, filler: number) => of * ruleOfMixtures.si({ share: amount, fillerRatio: filler / of })
  const lower = (of: number, amount: number, shape: number) =>
    of * halpinTsai.si({ volumeShare: amount, fillerRatio: fibre.conductivity / of, shape })
  const { poissonRatio: nu, specificHeat: heat, thermalConductivity: k, thermalConductivityAcrossLayers: across } = matrix
  const upper = mixed(k.si, share, fibre.conductivity)
  const expansion = (amount: number, stiffness: number, of: number) => {
    const modulus = Math.max(stiffness, (1 - amount) * matrix.modulus.si)
    return fibreExpansion.si({
      volumeShare: amount,
      fibreExpansion: fibre.expansion,
      matrixExpansion: of,
      matrixModulus: matrix.modulus.si,
      modulus,
    })
  }
  const straight = (amount: number) => mixed(matrix.modulus.si, amount, fibre.modulus)
  const { si: stiff, low: soft } = filled.modulus as Property<'modulus'>
  const { thermalExpansion: alpha } = matrix
  return {
    poissonRatio: range(mixed(nu.si, share, 0.2), mixed(nu.low, much, 0.2), mixed(nu.high, little, 0.2)),
    specificHeat: range(
      mixed(heat.si, typical, fibre.specificHeat),
      mixed(heat.low, most, fibre.specificHeat),
      mixed(heat.high, least, fibre.specificHeat),
    ),
    thermalConductivity: range(2 / (1 / lower(k.si, share, 2) + 1 / upper), lower(k.low, little, 2), upper),
    thermalConductivityAcrossLayers: range(
      across.si * halpinTsai.si({ volumeShare: share, fillerRatio: fibre.conductivity / k.si, shape: 1 }),
      across.low,
      k.high * halpinTsai.si({ volumeShare: share, fillerRatio: fibre.conductivity / k.si, shape: 2 }),
    ),
    thermalExpansion: range(
      Math.sqrt(expansion(share, straight(share), alpha.si) * expansion(share, stiff, alpha.si)),
      expansion(much, straight(much), alpha.low),
      Math.min(alpha.high, expansion(little, soft, alpha.high)),
    ),
    moistureSaturated: range(
      matrix.moistureSaturated.si * (1 - typical),
      matrix.moistureSaturated.low * (1 - most),
      matrix.moistureSaturated.high * (1 - least),
    ),
  }
}

/** What is read and not calculated, or raised so that it does not contradict what is read. */
const NOT_CALCULATED = new Set(['PET-CF thermalConductivityAcrossLayers', 'ABS-GF moistureSaturated low'])

describe.each(CASES)('%s', (name, matrixName, fibre, shares) => {
  const filled = materialByName(name)
  const matrix = matrixName === 'PET' ? PET : (materialByName(matrixName) as unknown as Matrix)
  const rows = Object.entries(calculated(filled, matrix, fibre, shares)).filter(([property]) => {
    const { source } = (filled as unknown as Record<string, Property>)[property] as Property
    return source.level === 'computed' && source.where.startsWith('mixture relations') && !NOT_CALCULATED.has(`${name} ${property}`)
  })
  test('has calculated values', () => expect(rows.length).toBeGreaterThanOrEqual(4))
  test.each(rows)('%s is what fibre and polymer give', (property, expected) => {
    const value = (filled as unknown as Record<string, Property>)[property] as Property
    for (const end of ['si', 'low', 'high'] as const)
      if (!NOT_CALCULATED.has(`${name} ${property} ${end}`))
        // Rounded to two digits in the table.
        expect(Math.abs(value[end] / expected[end] - 1), `${end} ${value[end]} against ${expected[end]}`).toBeLessThan(0.05)
  })
})

test('unfilled prints conduct between half and all across their layers of what they do along them', () => {
  for (const name of ['PETG', 'ABS', 'ASA', 'PA6', 'PA12', 'PC', 'TPU 95A', 'TPU 85A', 'PP', 'PEEK']) {
    const { thermalConductivity: k, thermalConductivityAcrossLayers: across } = materialByName(name)
    expect(across!.si / k!.si, name).toBeCloseTo(0.75, 2)
    expect([across!.low / k!.low, across!.high / k!.high]).toEqual([expect.closeTo(0.5, 2), expect.closeTo(1, 9)])
  }
})

test('water swells an unfilled print by three quarters of its own volume, a filled one by half', () => {
  for (const name of ['PLA', 'PETG', 'ABS', 'ASA', 'PC', 'PA12', 'PP', 'POM', 'PEEK', 'TPU 95A', 'TPU 85A']) {
    const { density, moistureSwelling } = materialByName(name)
    const most = additiveSwelling.si({ density: density!.si })
    expect(moistureSwelling!.si / most, name).toBeCloseTo(0.75, 1)
    expect(moistureSwelling!.high / most, name).toBeCloseTo(1, 1)
  }
  for (const [name] of CASES.filter(([each]) => each !== 'PA-CF')) {
    const { density, moistureSwelling } = materialByName(name)
    // One row for all of them, whose densities differ by a quarter.
    const share = moistureSwelling!.si / additiveSwelling.si({ density: density!.si })
    expect(share > 0.42 && share < 0.57, `${name} ${share}`).toBe(true)
  }
})
