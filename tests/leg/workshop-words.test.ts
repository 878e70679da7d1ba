import { describe, expect, test } from 'vitest'
import { amountTexts } from '../../src/leg/assess/sentence.js'
import { legDrawings } from '../../src/leg/drawings/index.js'
import {
  assemblyPlan,
  assemblyText,
  assess,
  controlSheet,
  controlText,
  markdownReport,
  shoppingCsv,
  standPlan,
  standText,
} from '../../src/leg/index.js'
import { drivenBy, legNumbers } from '../../src/leg/numbers.js'
import { phrase, shown } from '../../src/leg/plans/sheet-units.js'
import { hasPrints, isPrinted } from '../../src/leg/printed.js'
import { beltOrCordOf } from '../../src/leg/second-stage.js'
import { Quantity, quantity } from '../../src/units/index.js'
import { printedLegs } from './printed-legs.js'

const around = (pattern: RegExp, text: string) => text.match(new RegExp(`.{0,50}(?:${pattern.source}).{0,30}`, 'g')) ?? []

describe.each(Object.entries(printedLegs))('the workshop sheets of a leg with %s', (_, of) => {
  const leg = of()
  const x = legNumbers(leg)
  const plan = assemblyPlan(leg)
  const [assembly, csv] = [assemblyText(plan), shoppingCsv(plan)]
  const [control, stand] = [controlText(controlSheet(leg)), standText(standPlan(leg))]
  const all = [assembly, csv, control, stand].join('\n')

  test('units have their signs, and a torque is in N m throughout', () => {
    expect(around(/\d deg\b|deg ?[cC]\b|\d (mohm|ohm)\b|\^[234]\b|\d N mm\b/, all.replaceAll(/\[[^\]\n]*\]/g, ''))).toEqual([])
    expect(all).toMatch(/\d°/)
  })

  test('a length from a tenth of a millimetre on is in millimetres, with no digits that nobody can make', () => {
    expect(around(/\b\d{3,}(\.\d+)? µm\b/, all)).toEqual([])
    // A hole of a press fit stands as the document gives it.
    expect(around(/\b\d+\.\d{3,} mm\b(?!²)/, assembly).filter((text) => !/hole|ISO 8734/.test(text))).toEqual([])
    expect(around(/Measure the finished cord .*\d\.\d mm/, assembly)).toEqual([])
  })

  test('the shopping list has the material of each part that is made, and what the steps use up', () => {
    const bought = (item: string) => plan.shopping.filter((one) => one.item === item)
    const material = x.links.upper.material
    if (material !== undefined) {
      const [line] = bought(isPrinted(x, material) ? 'filament' : 'stock').filter(
        ({ size, remark }) => size.startsWith(material) && remark.includes('upper link'),
      )
      expect(line?.remark).toContain('upper link')
    }
    const steps = [...plan.steps, ...plan.drives.flatMap(({ before, steps }) => [...before, ...steps])].join(' ')
    expect(steps.includes('thread lock') && bought('thread lock').length === 0).toBe(false)
    expect(bought('grease').length > 0).toBe(steps.includes('Grease the teeth'))
    for (const { item, quantity } of plan.shopping) expect(quantity, item).not.toBe('')
  })

  test('the upper link is called so', () => expect(around(/thigh/, all)).toEqual([]))

  test('a check has its part and mode, never its id', () => expect(around(/\([a-z]\w*\.[a-z]\w*\)/, all)).toEqual([]))

  test('nothing speaks of cords, belts or prints that the leg does not have', () => {
    const verdict = assess(leg)
    const report = markdownReport(verdict, { steps: 'decisive' })
    const assumed =
      report.slice(report.indexOf('## Cautions'), report.indexOf('## Checks, ')) +
      report.slice(report.indexOf('## Assumptions'), report.indexOf('## Assumptions') + 1500)
    const drawn = legDrawings(verdict, { only: ['year'] }).map(({ svg, description }) => `${description} ${svg}`)
    const words = [all, assumed, ...drawn].join('\n')
    const along = beltOrCordOf(x)?.kind
    if (drivenBy(x, 'cord').length === 0 && along !== 'cord') expect(around(/\bcords?\b/, words)).toEqual([])
    if (drivenBy(x, 'belt').length === 0 && along !== 'belt') expect(around(/(?<!cord or )\bbelts?\b/, words)).toEqual([])
    if (!hasPrints(x)) expect(around(/[Cc]reep|(?<!burn and to soften |damp )\bprints\b/, words)).toEqual([])
  })
})

test('a sentence prints its quantities as a workshop reads them', () => {
  const [low, high, damping, resistance] = [
    quantity('angle', '-70 deg'),
    quantity('angle', '45 deg'),
    '749.5 N mm s/rad',
    '30 mohm',
  ] as const
  expect(
    phrase`${low} to ${high}, ${quantity('torque', '300 N mm')}, ${quantity('torsionalDamping', damping)}, ${quantity('electricalResistance', resistance)}, ${3} of M4`,
  ).toBe('-70° to 45°, 0.3 N m, 0.7495 N m s/rad, 30 mΩ, 3 of M4')
  const lengths = (['300 um', '99.999 um', '99.9 um', '58 um', '0 mm', '14 mm', '-0.25 mm'] as const).map((one) =>
    shown(quantity('length', one)),
  )
  expect(lengths).toEqual(['0.3 mm', '0.1 mm', '99.9 µm', '58 µm', '0 mm', '14 mm', '-0.25 mm'])
  expect(shown(new Quantity(Number.POSITIVE_INFINITY, 'torque'))).toContain('Infinity')
  expect([shown(quantity('temperature', '20 degC')), shown('as it is')]).toEqual(['20 °C', 'as it is'])
})

test('a demand in micrometres stands in millimetres where its capacity has a thousand of them', () => {
  const texts = (a: `${number} um`, b: `${number} mm`) => amountTexts(quantity('length', a), quantity('length', b))
  expect(texts('135.8 um', '3 mm')).toEqual(['0.1358 mm', '3 mm'])
  expect(texts('135.8 um', '0.9 mm')).toEqual(['135.8 µm', '900 µm'])
  expect(amountTexts(quantity('force', '169.7 N'), quantity('force', '1838 N'))).toEqual(['169.7 N', '1838 N'])
})
