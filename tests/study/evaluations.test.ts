// The cap on runs of the formula is a cap: the kernel is counted, not what a search reports of itself.
import { describe, expect, test } from 'vitest'
import { formula } from '../../src/formula/index.js'
import { failureChances, normal, optimise } from '../../src/study/index.js'

let calls = 0
const counted = formula('test.counted', {
  inputs: { a: 'ratio', b: 'ratio', c: 'ratio', k: 'ratio' },
  output: { f: 'ratio', g: 'ratio', h: 'ratio' },
  source: [{ level: 'arithmetic', where: 'H. H. Rosenbrock 1960, with a bowl beside it' }],
  si: ({ a, b, c, k }) => {
    calls++
    return { f: 100 * (b - a * a) ** 2 + (1 - a) ** 2 + c * c + k, g: a + b - c, h: (a - 2) ** 2 + b * b }
  },
})
const vary = { a: { from: -2, to: 2 }, b: { from: -2, to: 2 }, c: { from: -1, to: 1 } }
const plans = {
  'one goal': { vary, goals: { minimise: 'f' }, fixed: { k: 0 } },
  'a limit of zero, whose size points must show': { vary, goals: { minimise: 'f' }, constraints: { g: { max: 0 } }, fixed: { k: 0 } },
  'an equation': { vary, goals: { minimise: 'f' }, constraints: { g: { equals: 0.5 } }, fixed: { k: 0 } },
  choices: { vary, choices: { of: { one: { k: 0 }, other: { k: 1 }, third: { k: 0.5 } } }, goals: { minimise: 'f' } },
  'two goals, with every point of the front': { vary, goals: [{ minimise: 'f' }, { minimise: 'h' }], fixed: { k: 0 } },
} as const

describe('optimise runs the formula no more often than its evaluations, and says how often', () => {
  test.each(Object.entries(plans))('%s', (_, plan) => {
    for (const evaluations of [240, 1001, 2500]) {
      calls = 0
      const found = optimise(counted, { ...plan, evaluations } as never)
      expect(calls).toBeLessThanOrEqual(evaluations)
      expect(found.evaluations).toBe(calls)
    }
  })

  test('too few for a limit of zero are rejected with what it takes', () => {
    const plan = { ...plans['a limit of zero, whose size points must show'], population: 40, evaluations: 100 }
    expect(() => optimise(counted, plan as never)).toThrow(/evaluations.*twice the population and 32 points.*112/)
  })
})

test('failureChances likewise', () => {
  const given = { a: normal(0, 1), b: normal(0, 1), c: normal(0, 1), k: 0 }
  for (const evaluations of [200, 1000, 5000]) {
    calls = 0
    const found = failureChances(counted, given, { limits: { g: { above: 6 } }, evaluations })
    expect(calls).toBeLessThanOrEqual(evaluations)
    expect(found.evaluations).toBe(calls)
  }
})
