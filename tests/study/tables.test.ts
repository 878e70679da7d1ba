// A table as charts, HTML, Markdown, CSV and Arrow: what is shown is what the columns hold.
import { describe, expect, test } from 'vitest'
import { slackTension } from '../../src/capstan/index.js'
import { formula } from '../../src/formula/index.js'
import { sweep, Table } from '../../src/study/index.js'
import { significant } from '../../src/units/index.js'

const table = sweep(slackTension, {
  over: { friction: [0.2, 0.1], wrapAngle: ['2 turn', '1 turn'] },
  fixed: { load: '1000 N' },
})
const hostile = new Table('a<b>&"c', [
  { name: 'state | <i>', words: ['a|b', '<script>', 'say "&"'] },
  { name: 'load', kind: 'force', unit: 'N', values: Float64Array.of(1, Number.NaN, Number.POSITIVE_INFINITY) },
], 3) // biome-ignore format: columns
interface Spec {
  title: { text: string } | string
  description: string
  layer: { data: { values: { series: string; x: number; y: number }[] }; encoding: { x: { title: string }; y: { title: string } } }[]
}
const spec = (chart: unknown) => JSON.parse(JSON.stringify(chart)) as Spec
const pointsOf = (chart: unknown) => {
  const lines = new Map<string, [number, number][]>()
  for (const { series, x, y } of spec(chart).layer[0]!.data.values) lines.set(series, [...(lines.get(series) ?? []), [x, y]])
  return Object.fromEntries(lines)
}

describe('a chart of a table', () => {
  test('draws one column over another in ascending order, in SI units', () => {
    const one = sweep(slackTension, { over: { friction: [0.3, 0.1, 0.2] }, fixed: { load: '1000 N', wrapAngle: '1 turn' } })
    const chart = one.chart('friction', 'result')
    expect(pointsOf(chart)).toEqual({ result: [0.1, 0.2, 0.3].map((friction) => [friction, 1000 * Math.exp(-2 * Math.PI * friction)]) })
    expect(spec(chart).layer[0]!.encoding.x.title).toBe('friction')
    expect(spec(chart).layer[0]!.encoding.y.title).toBe('result [N]')
    expect(JSON.stringify(spec(chart).title)).toContain('capstan.slackTension: result over friction')
    expect(spec(chart).description).toBe('result over friction, 3 rows of capstan.slackTension.')
  })

  test('has a line for each value of a third column, named with its unit', () => {
    const lines = pointsOf(
      table.chart('friction', 'result', { lines: 'wrapAngle', units: { wrapAngle: 'turn', result: 'kN', friction: '%' } }),
    )
    expect(Object.keys(lines).sort()).toEqual(['wrapAngle 1 turn', 'wrapAngle 2 turn'])
    for (const [name, turns] of [['wrapAngle 1 turn', 1], ['wrapAngle 2 turn', 2]] as const) // biome-ignore format: pairs
      expect(lines[name]).toEqual(
        [10, 20].map((percent) => [percent, expect.closeTo(Math.exp((-2 * Math.PI * turns * percent) / 100), 12)]),
      )
    expect(Object.keys(pointsOf(table.chart('friction', 'result', { lines: 'wrapAngle' }))).sort()).toEqual([
      'wrapAngle 12.57 rad',
      'wrapAngle 6.283 rad',
    ])
    // A plain number has no unit to name.
    expect(Object.keys(pointsOf(table.chart('wrapAngle', 'result', { lines: 'friction' }))).sort()).toEqual([
      'friction 0.1',
      'friction 0.2',
    ])
  })

  test('takes words for lines, a title of the caller, and leaves out rows without an answer', () => {
    const named = new Table('id', [
      { name: 'side', words: ['left', 'right', 'left', 'left'] },
      { name: 'a', kind: 'ratio', unit: '1', values: Float64Array.of(1, 2, 3, Number.NaN) },
      { name: 'b', kind: 'ratio', unit: '1', values: Float64Array.of(5, 6, Number.NaN, 7) },
    ], 4) // biome-ignore format: columns
    const chart = named.chart('a', 'b', { lines: 'side', title: 'Mine' })
    expect(pointsOf(chart)).toEqual({ left: [[1, 5]], right: [[2, 6]] })
    expect(JSON.stringify(spec(chart).title)).toContain('Mine')
  })

  test('of a column of words, an unknown column or option is an error that names it', () => {
    expect(() => hostile.chart('state | <i>', 'load')).toThrow("column 'state | <i>' holds words; an axis needs numbers")
    expect(() => table.chart('friction', 'load')).toThrow("no column 'load'; columns are friction, wrapAngle, result")
    expect(() => table.chart('friction', 'result', { line: 'wrapAngle' } as never)).toThrow('did you mean lines?')
    expect(() => table.chart('friction', 'result', { units: { result: 'mm' } })).toThrow('force')
    expect(() => hostile.in('state | <i>', 'N')).toThrow("column 'state | <i>' holds words")
  })
})

describe('a table as text', () => {
  const cells = (html: string, tag: string) => [...html.matchAll(new RegExp(`<${tag}>(.*?)</${tag}>`, 'g'))].map(([, text]) => text)

  test('HTML holds the heads and every cell, to four digits', () => {
    const html = table.toHtml()
    expect(cells(html, 'th')).toEqual(['friction [1]', 'wrapAngle [rad]', 'result [N]'])
    expect(cells(html, 'td')).toEqual(
      Array.from({ length: 4 }, (_, i) =>
        table.columns.map((column) => significant((column as { values: Float64Array }).values[i]!)),
      ).flat(),
    )
    expect(cells(html, 'tr')).toHaveLength(5)
    expect(html).not.toContain('caption')
  })

  test('no name and no word reaches HTML or Markdown unescaped', () => {
    const html = hostile.toHtml()
    expect(html).not.toMatch(/<script|<i>/)
    expect(cells(html, 'td').filter((_, i) => i % 2 === 0)).toEqual(['a|b', '&lt;script&gt;', 'say "&amp;"'])
    const lines = hostile.toMarkdown().split('\n')
    expect(lines.slice(0, 5).map((line) => line.split(/(?<!\\)\|/).length)).toEqual([4, 4, 4, 4, 4])
    expect(hostile.toCSV().split('\n')[3]).toBe('"say ""&""",Infinity')
  })

  test('the first rows are shown, and how many more there are', () => {
    expect(table.toHtml(4)).not.toContain('caption')
    expect(table.toHtml(3)).toContain('<caption>1 more row</caption>')
    expect(cells(table.toHtml(2), 'tr')).toHaveLength(3)
    expect(table.toHtml(1)).toContain('<caption>3 more rows</caption>')
    expect(table.toMarkdown(4)).not.toContain('more row')
    expect(table.toMarkdown(3).split('\n').slice(-2)).toEqual(['', '1 more row'])
    expect(hostile.toMarkdown(2)).toMatch(/1 more row\n\n2 rows without a finite answer$/)
    const long = new Table('id', [{ name: 'a', kind: 'ratio', unit: '1', values: new Float64Array(30) }], 30)
    expect(long.toMarkdown()).toMatch(/\n\n10 more rows$/)
    expect(long.toHtml()).toContain('10 more rows')
  })

  test('notebooks get both', () => {
    const shown = (table as unknown as Record<symbol, () => object>)[Symbol.for('Jupyter.display')]!()
    expect(shown).toEqual({ 'text/html': table.toHtml(), 'text/markdown': table.toMarkdown(), 'text/plain': table.toMarkdown() })
  })

  test('Arrow gets every column by its name and unit, words as a list of their own', () => {
    const made = hostile.toArrow({ tableFromArrays: (columns: never) => columns }) as Record<string, unknown>
    expect(Object.keys(made)).toEqual(['state | <i>', 'load [N]'])
    expect(made['load [N]']).toBe((hostile.columns[1] as { values: Float64Array }).values)
    expect(made['state | <i>']).toEqual(['a|b', '<script>', 'say "&"'])
    expect(made['state | <i>']).not.toBe((hostile.columns[0] as { words: readonly string[] }).words)
  })

  test('a single result that may be infinite is a column like any other', () => {
    const open = formula('test.open', {
      inputs: { a: 'ratio' },
      output: { kind: 'length', infinite: true },
      source: [{ level: 'unverified', where: 'test' }],
      si: ({ a }) => 1 / a,
    })
    const swept = sweep(open, { over: { a: [0, 2] } })
    expect(swept.columns.map(({ name }) => name)).toEqual(['a', 'result'])
    expect([...swept.in('result', 'm')]).toEqual([Number.POSITIVE_INFINITY, 0.5])
    expect(swept.gaps).toBe(1)
    // One output among several, with a record of its own.
    const several = formula('test.several', {
      inputs: { a: 'ratio' },
      output: { reach: { kind: 'length', infinite: true }, state: { oneOf: ['near', 'far'] }, all: { list: 'ratio' } },
      source: [{ level: 'unverified', where: 'test' }],
      si: ({ a }) => ({ reach: 1 / a, state: a > 1 ? ('near' as const) : ('far' as const), all: [a] }),
    })
    const columns = sweep(several, { over: { a: [1, 4] } })
    expect(columns.columns.map(({ name }) => name)).toEqual(['a', 'reach', 'state'])
    expect([...columns.in('reach', 'm')]).toEqual([1, 0.25])
    expect(columns.row(1)).toMatchObject({ state: 'near' })
  })
})
