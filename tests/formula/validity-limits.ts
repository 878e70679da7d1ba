// The limits of validity statements: a call just inside one carries no note of it, a call just outside does.
import { describe, expect, test } from 'vitest'
import { type AnyFormula, notesOf } from '../../src/formula/index.js'

type Given = Record<string, unknown>

/** A formula, the beginning of its statement, what holds it only just, and changes of which each breaks it only just. */
export type ValidityLimit = readonly [formula: unknown, statement: string, inside: Given, ...outside: readonly Given[]]

const isFormula = (value: unknown): value is AnyFormula => typeof value === 'function' && 'def' in value
const statementsOf = ({ def }: AnyFormula) => Object.keys(def.valid ?? {})

/** Tests the limits given, and that every statement of the module has one. */
export function testValidity(module: Record<string, unknown>, limits: readonly ValidityLimit[], others: readonly string[] = []): void {
  const known = limits.map(([formula, beginning, inside, ...outside]) => {
    const own = formula as AnyFormula
    const statement = statementsOf(own).find((one) => one.startsWith(beginning))
    return { formula: own, name: `${own.id}: ${statement ?? `no statement ${beginning}`}`, statement, inside, outside }
  })

  test('every statement of a validity range has its limit here', () => {
    const written = Object.values(module)
      .filter(isFormula)
      .flatMap((formula) => statementsOf(formula).map((statement) => `${formula.id}: ${statement}`))
    expect([...new Set(known.map(({ name }) => name)), ...others].sort()).toEqual(written.sort())
  })

  describe('a broken statement becomes a note, one that holds does not', () => {
    test.each(known.map((limit, i) => [limit.name, i] as const))('%s', (_, i) => {
      const { formula, statement, inside, outside } = known[i]!
      const noted = (given: Given) => {
        const result = (formula as unknown as (x: Given) => unknown)(given)
        return (notesOf(result) ?? notesOf({ result }) ?? []).some(({ text }) => text === `outside validity: ${statement}`)
      }
      expect(noted(inside)).toBe(false)
      for (const change of outside) expect([change, noted({ ...inside, ...change })]).toEqual([change, true])
    })
  })
}
