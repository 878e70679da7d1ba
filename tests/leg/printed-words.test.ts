import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { leafName } from '../../src/leg/assess/names.js'
import { Facts } from '../../src/leg/drawings/facts.js'
import { legDrawings } from '../../src/leg/drawings/index.js'
import { assess, describeLeg, htmlReport, markdownReport } from '../../src/leg/index.js'
import { pretensionNeeded } from '../../src/leg/parts/transmission/cord/holding-checks.js'
import { amount, exactAmount, one, remarkWords } from '../../src/leg/report/amounts.js'
import { chartTable } from '../../src/leg/report/chart-table.js'
import { placesText } from '../../src/leg/report/places.js'
import { sensitivityChart } from '../../src/leg/report/sensitivity-chart.js'
import { readSheet } from './run/printed-reader.js'

const read = (name: string) => assess(describeLeg(readFileSync(new URL(`../../examples/${name}.yaml`, import.meta.url), 'utf8')))
const cord = read('mudflat-leg-revised')
const belt = read('orchard-leg-first')
const sheet = markdownReport(cord, { steps: 'all' })
const beltSheet = markdownReport(belt, { steps: 'all' })

describe('words and units of a sheet', () => {
  test('names of the code become words; units, symbols and designations stay', () => {
    expect(one('kept1000Hours')).toBe('kept 1000 hours')
    expect(one('kept1Year')).toBe('kept 1 year')
    expect(one('10x26x8')).toBe('10x26x8')
    expect(one('poissonRatio')).toBe('Poisson’s ratio')
    expect(one('vonMises')).toBe('von Mises')
    expect(one('johnson')).toBe('Johnson')
    expect(placesText([{ joint: 'throughHip' }])).toBe('stage along the upper link')
    expect(leafName('belt.scatter', { joint: 'throughHip' })).toBe('belt scatter (stage along the upper link)')
    expect(remarkWords('100 to 250 kJ/mol at 20 degC, dT/dx, as `wallBuckling` and pinBore')).toBe(
      '100 to 250 kJ/mol at 20 °C, dT/dx, as wall buckling and pin bore',
    )
  })

  test('units have their signs', () => {
    expect(exactAmount('electricalResistance', 0.075)).toBe('75 mΩ')
    expect(exactAmount('inductance', 4e-5)).toBe('40 µH')
    expect(amount('linearCompliance', 1.705e-8)).toBe('0.01705 µm/N')
    expect(amount('secondMomentOfArea', 1.237e-8)).toBe('12370 mm⁴')
    expect([amount('time', 0), exactAmount('time', 0), amount('time', 3.75e-4)]).toEqual(['0 s', '0 s', '375 µs'])
    for (const text of [sheet, beltSheet])
      expect(text.match(/.{20}(\d (mohm|ohm|deg|u[mH])\b|\bdeg ?[cC]\b|k j\b|\^4 ?[|,]).{0,20}/)).toBeNull()
  })

  test('no reason has a pronoun without a noun', () => {
    for (const text of [sheet, beltSheet]) {
      expect(text).toContain('drives the joint: ')
      expect(text.slice(text.indexOf('## Checks not evaluated'))).not.toMatch(/(drives|turns) it\b/)
    }
  })

  test('the foot deflects, and its links account for a part of that', () => {
    expect(sheet).toMatch(/, the foot deflects by \d.*m\. The links account for \d/)
    for (const text of [sheet, beltSheet]) expect(text).not.toMatch(/foot gives/)
  })

  test('a limit of validity that is broken is called so', () => {
    expect(sheet).toContain('drive windup is outside its validity: valid for cord strain of at most 2 %.')
  })

  test('no column of a table of steps is empty', () => {
    const tables = [sheet, beltSheet].flatMap((text) => text.split('\n### ').flatMap((part) => part.match(/^\|step\|.*(\n\|.*)+/gm) ?? []))
    expect(tables.length).toBeGreaterThan(100)
    for (const table of tables) {
      const [head = [], , ...rows] = table.split('\n').map((line) => line.slice(1, -1).split('|'))
      for (const [i, name] of head.entries())
        expect(
          rows.some((cells) => cells[i] !== ''),
          `${name} in ${table.slice(0, 80)}`,
        ).toBe(true)
    }
  })
})

describe('references of a sheet', () => {
  const { groups, values } = readSheet(sheet)
  const group = (title: string) => groups.find((each) => each.title === title)!

  test('a 1 that stands for no safety factor refers to nothing, and that of the fatigue to its step', () => {
    const { rows } = group('Derated strength')
    expect(rows.length).toBeGreaterThan(10)
    const fatigue = groups.indexOf(group('Fatigue factor')) + 1
    for (const { inputs } of rows) {
      expect(inputs.get('safety factor')).toMatchObject({ value: '1', ref: undefined })
      expect(inputs.get('fatigue')?.ref).toMatch(new RegExp(`^${fatigue}\\.`))
    }
  })

  test('a list of one number shows it, and the stage along the upper link has its name', () => {
    const through = markdownReport(read('shingle-leg-revised'), { steps: 'all' })
    expect(through).toMatch(/bare 350 g \\?\[.{1,60}, carried 68\.22 g/)
    expect(through).not.toMatch(/\b1 numbers|throughHip|through hip\b|both cords/)
    expect(through).toContain('No ball bearing is given at the hip pin and knee pin: ')
  })

  test('numbers of a list refer to their own fields; those of a table stand in one row', () => {
    const [first] = group('Grip').rows
    const [one, other] = [...(first!.inputs.get('thicknesses')?.value ?? '').matchAll(/(\d+ mm) \[(F\d+)\]/g)]
    expect([values.get(one![2]!), values.get(group('Grip').rows[0]!.inputs.get('thicknesses')!.ref!)]).toEqual([one![1], '7 mm'])
    expect(other).toBeUndefined()
    const curve = group('Tabulated strength factor').rows[0]!.inputs.get('shares')!
    expect(values.get(curve.ref!)).toBe(curve.value)
    expect(curve.value.split(', ').length).toBeGreaterThan(2)
  })
})

describe('numbers that stand in two places', () => {
  test('the tension that walking needs in the drawing of the year is that of the check', () => {
    const [year] = legDrawings(cord, { only: ['year'] })
    const facts = new Facts(cord)
    for (const joint of ['hip', 'knee'] as const) {
      const check = cord.checks.find(({ id, joint: of }) => id === 'cord.shelf' && of === joint)!
      expect(facts.get(pretensionNeeded, { joint })).toBeCloseTo(check.demand.si, 9)
      const row = year!.table.rows.find(([name]) => name === `pretension that the ${joint} needs to walk, also on the slope`)
      expect(Number(row![1])).toBeCloseTo(check.demand.si, 1)
    }
  })

  test('a bar of the sensitivities that is cut has its reserve beside it', () => {
    const boss = read('heath-leg-revised')
    const { rows } = chartTable(sensitivityChart(boss))
    const cut = rows.filter(([, reserve]) => Number(reserve) > 2.99 * boss.governing.reserve)
    expect(cut.length).toBeGreaterThan(0)
    for (const [, , label] of cut) expect(label).toMatch(/: (over 100|[\d.]+)$/)
    expect(sensitivityChart(boss).description).toContain('ends there, with its number beside it')
  })
})

test('a part of metal is drawn and described without layers', () => {
  const pin = (verdict: typeof cord) =>
    legDrawings(verdict, { only: ['pin-knee', 'bolt-stack', 'hip-shaft'] }).map(({ svg }) =>
      svg.replaceAll(/<style>.*<\/style>|<[^>]*>/gs, ' ').replaceAll(/\s+/g, ' '),
    )
  expect(pin(belt).join()).not.toMatch(/[Ll]ayers|print holds|drum/)
  expect(pin(cord).join()).toMatch(/Layers of the boss cross the pin.*print holds.*Layers of prints.*The drum is broken off/s)
})

test('on paper no word of the load cases breaks, and no heading of a table stands alone', () => {
  const html = htmlReport(cord)
  const print = html.slice(html.lastIndexOf('@media print'), html.indexOf('</style>'))
  expect(print).not.toContain('overflow-wrap: anywhere')
  expect(print).toMatch(/thead, caption, tr:has\(> th\[colspan\]\) \{ break-after: avoid; \}/)
  expect(print).toContain(':is(#chains, #steps) > p:not(:has(+ h3), :last-child) { break-after: avoid; }')
})
