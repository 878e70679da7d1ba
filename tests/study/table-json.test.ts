import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { slackTension } from '../../src/capstan/index.js'
import { sweep, Table } from '../../src/study/index.js'
import { kindNames, siUnit } from '../../src/units/index.js'

const made = sweep(slackTension, { over: { friction: [0.1, 0.2] }, fixed: { load: '500 N', wrapAngle: '3 turn' } })
const again = (table: Table) => Table.fromJSON(JSON.parse(JSON.stringify(table)))

const columnOf = (rows: number) =>
  fc.oneof(
    fc.record({ name: fc.string(), words: fc.array(fc.string(), { minLength: rows, maxLength: rows }) }),
    fc
      .record({ name: fc.string(), kind: fc.constantFrom(...kindNames()), values: fc.float64Array({ minLength: rows, maxLength: rows }) })
      // JSON has no negative zero.
      .map((column) => ({ ...column, unit: siUnit(column.kind), values: column.values.map((x) => x + 0) })),
  )
const tables = fc
  .integer({ min: 0, max: 6 })
  .chain((rows) => fc.tuple(fc.string(), fc.array(columnOf(rows), { maxLength: 5 }), fc.constant(rows)))

describe('a table as JSON', () => {
  test('comes back with every digit, also where a number is not finite', () => {
    fc.assert(
      fc.property(tables, ([id, columns, rows]) => {
        const table = new Table(id, columns, rows)
        expect(again(table)).toEqual(table)
        expect(again(table).toCSV()).toBe(table.toCSV())
      }),
    )
  })

  test('holds lists of plain numbers', () => {
    expect(JSON.parse(JSON.stringify(made)).columns[0]).toEqual({ name: 'friction', kind: 'ratio', unit: '1', values: [0.1, 0.2] })
    expect(again(made).in('result', 'N')).toEqual(made.in('result', 'N'))
  })

  const plain = () => JSON.parse(JSON.stringify(made))
  const changed = (change: (json: { id: unknown; rows: unknown; columns: Record<string, unknown>[] }) => void) => {
    const json = plain()
    change(json)
    return () => Table.fromJSON(json)
  }

  test('names the first entry that is not as it was written', () => {
    expect(() => Table.fromJSON('{}')).toThrow(/given is '\{\}'; must be what toJSON of a table returns/)
    expect(changed((json) => (json.id = 3))).toThrow(/id is 3; must be the name of the formula/)
    expect(changed((json) => (json.rows = 1.5))).toThrow(/rows is 1.5; must be the number of rows/)
    expect(changed((json) => (json.rows = 3))).toThrow(/columns\[0\].values is .*; must be a list of 3 entries/)
    expect(changed((json) => (json.columns[1]!.kind = 'weight'))).toThrow(/columns\[1\].kind is 'weight'; must be a kind of quantity/)
    expect(changed((json) => (json.columns[1]!.unit = 'kN'))).toThrow(/columns\[1\].unit is 'kN'; must be the SI unit of its kind, N/)
    expect(changed((json) => (json.columns[1]!.values = [1, null]))).toThrow(/columns\[1\].values\[1\] is null; must be a number/)
    expect(changed((json) => (json.columns[1] = { name: 'state', words: ['taut', 2] }))).toThrow(
      /columns\[1\].words\[1\] is 2; must be a word/,
    )
    expect(changed((json) => delete json.columns[0]!.name)).toThrow(/columns\[0\].name is missing/)
    expect(changed((json) => (json.columns[0] = [] as never))).toThrow(/columns\[0\] is an empty list; must be a column/)
  })
})
