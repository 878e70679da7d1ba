import { readFileSync, writeFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { valuesPage } from '../../scripts/values-page.js'
import {
  allMaterials,
  allowableChart,
  allowableStress,
  asa,
  findleyLaw,
  isochronousChart,
  pc,
  pla,
  priorsOf,
  propertiesOf,
} from '../../src/materials/index.js'

type Layer = { readonly data: { readonly values: readonly Record<string, number | string>[] } }
const layers = (chart: { readonly [field: string]: unknown }) => chart.layer as readonly Layer[]

describe('charts', () => {
  test('allowable stress: an hour, a month and a year of three polymers, each with its band', () => {
    const conditions = { direction: 'alongLayers', moisture: 'dry', safetyFactor: 1.5 } as const
    const chart = allowableChart([pla, asa, pc], ['1 h', '30 day', '1 year'], conditions)
    const all = layers(chart)
    expect(all.length).toBe(9 + 1)
    const lines = all.at(-1)!.data.values
    expect(new Set(lines.map(({ series }) => series))).toEqual(
      new Set(['PLA', 'ASA', 'PC'].flatMap((m) => ['1 h', '30 days', '1 year'].map((t) => `${m}, ${t}`))),
    )
    const point = lines.find(({ series, x }) => series === 'PC, 1 year' && x === 60)!
    const { stress } = allowableStress(pc, { ...conditions, temperature: '60 degC', duration: '1 year' })
    expect(point.y).toBeCloseTo(stress.in('MPa'), 3)
    const band = all
      .slice(0, 9)
      .flatMap(({ data }) => data.values)
      .find(({ name, x }) => name === 'PC, 1 year' && x === 60)!
    expect(band.low).toBeCloseTo(stress.lowest.in('MPa'), 3)
    expect(band.high).toBeCloseTo(stress.highest.in('MPa'), 3)
    expect(chart.description).toMatch('PLA, 1 h')
    expect(() => allowableChart([pla], ['1 h'], conditions, { from: '60 degC', to: '20 degC' })).toThrow('range.to')
  })
  test('isochronous curves lie below one another with time', () => {
    const law = findleyLaw({ modulus: '2 GPa', creepCoefficient: 0.1, creepExponent: 0.2 })
    const values = layers(isochronousChart(law, ['1 h', '1000 h'], '15 MPa'))[0]!.data.values
    const at = (series: string) => values.filter((v) => v.series === series).at(-1)!
    expect(at('1 h').y).toBe(15)
    expect(at('1 h').x).toBeCloseTo(0.75 * 1.1, 4)
    expect(at('41.7 days').x as number).toBeGreaterThan(at('1 h').x as number)
    expect(() => isochronousChart(law, ['-1 h'], '15 MPa')).toThrow('times[0]')
  })
})

describe('page of values', () => {
  const file = new URL('../../docs/guide/material-values.md', import.meta.url)
  test('is what the tables say (LIMBWRIGHT_UPDATE=1 writes it anew)', () => {
    if (process.env.LIMBWRIGHT_UPDATE !== undefined) writeFileSync(file, valuesPage())
    expect(readFileSync(file, 'utf8')).toBe(valuesPage())
  })
  test('has a row for every value and says how many are priors', () => {
    const page = valuesPage()
    for (const m of allMaterials()) {
      const own = page.slice(page.indexOf(`\n## ${m.name}\n`)).split('\n## ')[1]!
      const rows = own
        .split('\n')
        .filter((line) => line.startsWith('| ') && !line.startsWith('| property') && !/^\| (strength|modulus) over temperature/.test(line))
      expect(rows.length, m.name).toBe(propertiesOf(m).length)
      expect(rows.filter((row) => row.includes(' (prior) ')).length, m.name).toBe(priorsOf(m).names.length)
    }
  })
})
