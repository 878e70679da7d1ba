import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { catalogue } from '../../src/catalogue/index.js'
import { type AnyFormula, formula, type Input, type Inputs, recordReader } from '../../src/formula/index.js'
import { type Issue, kindRow, readAny } from '../../src/units/index.js'
import { checksById } from '../published/evidence.js'
import { determined, disagreements } from './equations.js'

type Values = Record<string, unknown>

/** SI inputs of a formula's published cases. */
function publishedInputs({ id, def }: AnyFormula): Values[] {
  const read = recordReader(def.inputs, true)
  return (checksById.get(id) ?? []).flatMap(({ given }) => {
    if (given === undefined) return []
    const issues: Issue[] = []
    const x = read(given, '', issues) as Values
    return issues.length === 0 ? [x] : []
  })
}

/** A start for a formula whose published values are not cases of the formula alone: near one of every SI unit, temperatures near 300 K. */
function middling(inputs: Inputs): Values[] {
  const entries = Object.entries(inputs).map(([name, input]) => {
    const kind = typeof input === 'string' ? input : 'kind' in input ? input.kind : undefined
    return [name, kind === undefined ? undefined : kindRow(kind).lowest === 0 ? 300 : 1] as const
  })
  return entries.some(([, value]) => value === undefined) ? [] : [Object.fromEntries(entries)]
}

/** The same inputs, every number moved by a factor of its own and kept within its limits. */
function moved(inputs: Inputs, x: Values, factor: () => number): Values {
  return Object.fromEntries(Object.entries(inputs).map(([name, input]) => [name, movedOne(input, x[name], factor)]))
}

function movedOne(input: Input, x: unknown, factor: () => number): unknown {
  if (x === undefined) return undefined
  if (typeof input === 'string') return (x as number) * factor()
  if ('list' in input) return (x as unknown[]).map((item) => movedOne(input.list, item, factor))
  if ('fields' in input) return moved(input.fields, x as Values, factor)
  if (!('kind' in input)) return x
  if (input.whole) return x
  const row = kindRow(input.kind)
  const limit = (given: unknown, unset: number) => (given === undefined ? unset : typeof given === 'number' ? given : readAny(row, given))
  const next = (x as number) * factor()
  const allowed =
    next >= limit(input.min, -Infinity) &&
    next <= limit(input.max, Infinity) &&
    next > limit(input.above, -Infinity) &&
    next < limit(input.below, Infinity)
  return allowed ? next : x
}

const acceptable = ({ def }: AnyFormula, x: Values) => Object.values(def.requires ?? {}).every(({ holds }) => holds(x as never))

const written = [...catalogue].filter(([, { def }]) => def.equation !== undefined)

describe.each(written)('the equation of %s', (_, one) => {
  const published = publishedInputs(one)
  const cases = published.length > 0 ? published : middling(one.def.inputs)

  test('names a result', () => {
    expect(determined(one)).not.toEqual([])
  })

  test('gives what the kernel gives, in number and in dimension', () => {
    expect(cases.length, 'no published case has inputs to start from').toBeGreaterThan(0)
    let compared = 0
    fc.assert(
      fc.property(fc.constantFrom(...cases), fc.infiniteStream(fc.double({ min: 0.8, max: 1.25, noNaN: true })), (start, factors) => {
        const x = moved(one.def.inputs, start, () => factors.next().value as number)
        if (!acceptable(one, x)) return
        const y = one.si(x as never)
        compared++
        expect(disagreements(one, x, y)).toEqual([])
      }),
      { numRuns: 30 },
    )
    expect(compared, 'no moved case was acceptable').toBeGreaterThan(5)
  })
})

test('a wrong number, a wrong dimension and a wrong root are found', () => {
  const period = formula('test.period', {
    inputs: { mass: { kind: 'mass', above: 0 }, stiffness: { kind: 'linearStiffness', above: 0 } },
    output: 'time',
    equation: ['result = 2 * pi * sqrt(mass / stiffness)'],
    source: [{ level: 'assumption', where: 'test' }],
    si: ({ mass, stiffness }) => 2 * Math.PI * Math.sqrt(mass / stiffness),
  }) as unknown as AnyFormula
  const x = { mass: 2, stiffness: 50 }
  const y = period.si(x as never)
  expect(disagreements(period, x, y)).toEqual([])
  expect(disagreements(period, x, y, ['w = sqrt(stiffness / mass)', 'result * w == 2 * pi'])).toEqual([])
  expect(disagreements(period, x, y, ['result = pi * sqrt(mass / stiffness)'])[0]).toMatch(/is not/)
  expect(disagreements(period, x, y, ['result = 2 * pi * mass / stiffness'])[0]).toMatch(/unlike dimensions/)
  expect(disagreements(period, x, y, ['result^2 * stiffness == 4 * pi * mass'])[0]).toMatch(/is not/)
  expect(disagreements(period, x, y, ['sqrt(mass)'])[0]).toMatch(/neither/)
  expect(() => disagreements(period, x, y, ['result = 2 * pi * sqrt(mas / stiffness)'])).toThrow('mas')
  expect(() => disagreements(period, x, y, ['result = mass + stiffness'])).toThrow(/Units do not match/)
})
