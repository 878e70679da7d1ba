import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import {
  assemblyPlan,
  assemblyText,
  assess,
  describeLeg,
  legNumbers,
  markdownReport,
  shoppingCsv,
  standPlan,
  standText,
  withFields,
} from '../../src/leg/index.js'
import { hasPrints } from '../../src/leg/printed.js'
import { TORSION } from './sprung-legs.js'

const read = (name: string) => describeLeg(readFileSync(new URL(`../../examples/${name}.yaml`, import.meta.url), 'utf8'))
/** Its toes are printed, and nothing else. */
const metal = read('orchard-leg-revised')
/** Everything but its sinks is printed. */
const printed = read('mudflat-leg-first')

/** Sentences with a word of prints, but for cautions, fields of the default print, sources of tables, and the reasons of checks that do not apply. */
const ofPrints = (text: string) =>
  text
    // A reason that several fields have stands with the first of them.
    .replaceAll(/\|as (F\d+)\|(?=\n)/g, (_, first: string) => `|${new RegExp(`\\|${first}\\|[^|]*\\|[^|]*\\|([^|]*)\\|`).exec(text)?.[1]}|`)
    .replace(/\n## Checks not evaluated[\s\S]*/, '')
    .replace(/\n## (Sources)\n[\s\S]*?(?=\n## |$)/g, '')
    .replace(/\n## Calculation steps\n[\s\S]*?(?=\n## |$)/, '')
    .split('\n')
    .filter((line) => /\b(print|prints|printed|printer|layers)\b/i.test(line))
    .filter((line) => !/prints, default|not used: the part is of metal|toe|damp prints|printed on yours/.test(line))

describe('a leg of metal', () => {
  test('its report speaks of no prints', () => expect(ofPrints(markdownReport(assess(metal)))).toEqual([]))
  test('motors that soften prints are a caution of printed legs alone', () => {
    const cautions = (leg: typeof metal) => assemblyPlan(leg).cautions.join(' ')
    expect(cautions(metal)).not.toContain('prints')
    expect(cautions(printed)).toContain('soften prints')
  })
  test('its strength is measured on the stock that its parts are cut from', () => {
    const report = markdownReport(assess(read('shingle-leg-revised')))
    expect(report).toContain('pull five bars cut from the stock of the part')
    expect(report).not.toContain('from your printer')
  })
  test('nor do its workshop sheets', () => {
    expect(ofPrints(assemblyText(assemblyPlan(metal)))).toEqual([])
    expect(ofPrints(standText(standPlan(metal)))).toEqual([])
  })
  test('its groups of bolts have names in words, and it has no empty table of coupons', () => {
    const plan = assemblyPlan(metal)
    for (const text of [assemblyText(plan), shoppingCsv(plan)]) {
      expect(text).toContain('motor bolts')
      expect(text.match(/\b[a-z]+[A-Z][a-z]+\w*/g) ?? []).toEqual([])
    }
    expect(assemblyText(plan)).not.toContain('Coupons first')
  })
  test('pins that a vice cannot press in are pressed in with a press', () =>
    expect(assemblyPlan(metal).steps.join(' ')).toContain('a workshop press with a force gauge'))
})

test.each([
  ['pulley along the upper link', 'shingle-leg-revised', { 'joints.knee.through.material': 'PETG' }],
  ['holder of a spring', 'orchard-leg-revised', { 'joints.knee.spring': { ...TORSION, seat: { material: 'PETG', length: '40 mm' } } }],
])('a leg of metal with a printed %s has prints', (_, name, change) => {
  const leg = read(name)
  expect(hasPrints(legNumbers(leg))).toBe(false)
  expect(hasPrints(legNumbers(withFields(leg, change)))).toBe(true)
})

test('a printed leg keeps its advice', () => {
  const report = markdownReport(assess(printed))
  expect(report).toMatch(/print (it|the boss) standing/)
  const sheet = assemblyText(assemblyPlan(printed))
  for (const words of ['Print and break the coupons first', 'or the print turns white', 'print the boss again', 'boss of the hip alone'])
    expect(sheet).toContain(words)
  expect(standText(standPlan(printed))).toContain('Print six bosses')
})
