import { describe, expect, test } from 'vitest'
import { recordedOf } from '../../src/leg/assess/recorded.js'
import { assess, markdownReport } from '../../src/leg/index.js'
import { type Calculation, SheetMaker } from '../../src/leg/run/index.js'
import { printedLegs } from './printed-legs.js'

describe.each(Object.entries(printedLegs))('the sheet of a leg with %s', (_, of) => {
  const verdict = assess(of())
  const sheet = markdownReport(verdict, { steps: 'all' })
  const rows = sheet.match(/^\|[TC]\d+\|.*$/gm) ?? []

  test('values of tables and constants have titles of their own, no words of an id', () => {
    const { calculation, checks } = recordedOf(verdict)
    const cells = checks.flatMap(({ findings: [hardest] }) =>
      hardest === undefined ? [] : [hardest.comparison.demand, hardest.comparison.capacity],
    )
    const { leaves } = new SheetMaker(calculation as unknown as Calculation<never>).sheet(cells)
    const titles = leaves.flatMap(({ title }) => (title === undefined ? [] : [title.split('–')[0] as string]))
    expect(rows.length).toBeGreaterThan(40)
    const without = rows.filter((row) => !titles.some((title) => title !== '' && (row.split('|')[2] as string).startsWith(title)))
    expect(without).toEqual([])
  })

  test('formulas have titles that say what is calculated, no words of an id', () => {
    const titles = [...sheet.matchAll(/^### \d+ (.+)$/gm)].map(([, title]) => title as string)
    expect(titles.length).toBeGreaterThan(80)
    const short =
      /^(?:(?:Can|Mount|Plate) law|Plate store|Jump push|Take up|Cord to cut|(?:Cap|Rod) cocking|(?:Head|Pin) bearing|Motor (?:balance|stall)|Drum hoop|Supply sag|Load factor|Joint (?:slip|reserves)|Ring joint|.*endless.*|.*does the same harm)$/
    expect(titles.filter((title) => short.test(title))).toEqual([])
  })

  test('formulas of cord drives speak of the parts of the drives of this leg', () => {
    const { joints } = verdict.leg
    const kinds = [joints.hip.drive.kind, joints.knee.drive.kind, joints.knee.through?.kind]
    const steps = sheet.slice(sheet.indexOf('## Calculation steps'), sheet.indexOf('## Values of tables'))
    const foreign = [
      ...(kinds.includes('cord') ? [] : ['drum(?! on the hip axis)', 'cord(?! or belt)']),
      ...(kinds.includes('cord') || kinds.includes('gear') ? [] : ['pinion']),
    ]
    for (const word of foreign) expect(steps.match(new RegExp(`.{0,60}\\b${word}\\b.{0,40}`, 'g')) ?? []).toEqual([])
  })

  test('every source is a publication, a standard, a practice or a derivation, no file of this project', () => {
    const sources = sheet.slice(sheet.indexOf('\n## Sources'), sheet.indexOf('\n## Checks not evaluated'))
    expect(sources).toContain('|Q1|')
    expect(sources.match(/.*(tests\/|\.py|this library|mailing list|someone|the document).*/g) ?? []).toEqual([])
  })

  test('every value of a table and every constant cites a source or its fields', () => {
    for (const row of rows) expect(row.split('|')[4], row).toMatch(/\[Q\d+\]|^from \[F\d+\]|^as [TC]\d+$/)
  })
})
