import { createUnit, unit } from 'mathjs'
import { expect, test } from 'vitest'
import { dimensionsText } from '../../src/units/dimensions.js'
import { type Kind, kindNames, kindRow, siUnit, unitNames, unitOf } from '../../src/units/index.js'

// Definitions that mathjs lacks, from the SI Brochure (9th ed., 2019) and NIST SP 811 (2008) appendix B; composites of them are mathjs's work.
createUnit('turn', { definition: `${2 * Math.PI} rad` }) // SI Brochure: 1 revolution = 2 pi rad
createUnit('rpm', { definition: `${(2 * Math.PI) / 60} rad/s` }) // SP 811 B.8, "revolution per minute"
createUnit('krpm', { definition: `${(2000 * Math.PI) / 60} rad/s` })
createUnit('gn', { definition: '9.80665 m/s^2' }) // standard gravity, 3rd CGPM 1901
createUnit('ozf', { definition: '0.0625 lbf' }) // SP 811 B.8, "ounce-force"
createUnit('ksi', { definition: '1000 psi' })
createUnit('Mpsi', { definition: '1e6 psi' })
createUnit('Mlbf', { definition: '1e6 lbf' })
createUnit('tex', { definition: '1e-6 kg/m' }) // SP 811 B.8, "tex"
createUnit('dtex', { definition: '1e-7 kg/m' })

/** mathjs keeps these to fewer digits than their exact definition; the exact value is SP 811's. */
const EXACT: Readonly<Record<string, number>> = {
  psi: 4.4482216152605 / 0.0254 ** 2,
  ksi: 4448.2216152605 / 0.0254 ** 2,
  Mpsi: 4448221.6152605 / 0.0254 ** 2,
  kip: 4448.2216152605,
  hp: 745.6998715822702,
  eV: 1.602176634e-19, // SI Brochure 2019, exact
}

const spelled = (name: string) => name.replaceAll('µ', 'u').replaceAll('°C', 'degC').replaceAll('count/', '1/').replace(/%/g, '0.01')

/** A unit's size and offset in the SI unit, by mathjs or by definition. */
function outside(name: string, si: string): { factor: number; offset: number } {
  if (Object.hasOwn(EXACT, name)) return { factor: EXACT[name] as number, offset: 0 }
  const text = spelled(name)
  const number = /^(1|0\.01|ppm)(?:\/(.*))?$/.exec(text)
  const factorOf: Record<string, number> = { '1': 1, '0.01': 0.01, ppm: 1e-6 }
  if (number !== null) {
    const base = factorOf[number[1] as string] as number
    if (number[2] === undefined) return { factor: base, offset: 0 }
    const below = unit(1, number[2]).toSI()
    return { factor: base / (below.toJSON() as { value: number }).value, offset: 0 }
  }
  if (name === 'mm/m' || name === 'um/m') return { factor: name === 'mm/m' ? 1e-3 : 1e-6, offset: 0 }
  const target = spelled(si)
  const at = (x: number) => unit(x, text).toNumber(target)
  const offset = at(0)
  return { factor: at(1) - offset, offset }
}

const sizeOf = (kind: Kind, name: string) => unitOf(kindRow(kind), name)!

const rows = kindNames().flatMap((kind) => unitNames(kind).map((name) => [kind, name] as const))

test.each(rows)('%s in %s has the size of mathjs or of its definition', (kind, name) => {
  const { size, zero } = sizeOf(kind, name)
  const { factor, offset } = outside(name, siUnit(kind))
  expect(Math.abs(size / factor - 1)).toBeLessThan(1e-12)
  expect(Math.abs(zero - offset)).toBeLessThan(1e-9)
})

test('decimal multiples of an SI unit are exact', () => {
  const size = (kind: Kind, name: string) => sizeOf(kind, name).size
  expect(size('length', 'mm')).toBe(1e-3)
  expect(size('volume', 'nm^3')).toBe(1e-27)
  expect(size('density', 'g/cm^3')).toBe(1000)
  expect(size('momentOfInertia', 'g mm^2')).toBe(1e-9)
  expect(size('stress', 'MPa')).toBe(1e6)
  expect(size('linearStiffness', 'kN/mm')).toBe(1e6)
  expect(size('electricalResistivity', 'ohm mm^2/m')).toBe(1e-6)
  expect(size('tenacity', 'cN/dtex')).toBe(1e5)
  expect(size('strainRate', '%/h')).toBe(0.01 / 3600)
})

test('dimensions of every kind agree with those of all its units', () => {
  const BASE = ['m', 'kg', 's', 'K', 'A', 'mol']
  for (const kind of kindNames()) {
    for (const name of unitNames(kind)) expect(sizeOf(kind, name).dim, name).toBe(kindRow(kind).dim)
    const name = siUnit(kind)
    if (/^(1|count\/rad)$/.test(name)) {
      expect(kindRow(kind).dim, kind).toBe(0)
      continue
    }
    const inverse = /^1\/(.+)$/.exec(name)
    const json = unit(1, spelled(inverse?.[1] ?? name)) as unknown as { dimensions: number[] }
    // mathjs orders dimensions mass, length, time, current, temperature, luminous, amount, angle, bit
    const [kg = 0, m = 0, s = 0, A = 0, K = 0, , mol = 0] = json.dimensions
    const wanted = [m, kg, s, K, A, mol].map((x) => (inverse ? -x : x))
    const text =
      wanted
        .map((x, i) => (x === 0 ? '' : x === 1 ? BASE[i] : `${BASE[i]}^${x}`))
        .filter(Boolean)
        .join(' ') || '1'
    expect(dimensionsText(kindRow(kind).dim), kind).toBe(text)
  }
})

test('every kind has an SI unit, no unit twice, and prints in units that grow', () => {
  for (const kind of kindNames()) {
    const { show, names } = kindRow(kind)
    expect(sizeOf(kind, siUnit(kind)).size, kind).toBe(1)
    expect(new Set(names).size, kind).toBe(names.length)
    expect(unitNames(kind).slice(0, show.length)).toEqual(show)
    const sizes = show.map((name) => sizeOf(kind, name).size)
    expect(
      sizes.toSorted((a, b) => a - b),
      kind,
    ).toEqual(sizes)
  }
})
