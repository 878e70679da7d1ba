import type { AnyFormula } from '../formula/index.js'
import { randomStream } from '../numeric/index.js'
import type { Limit } from './constraints.js'
import { answering, requirementsOf, withValueAt } from './path.js'
import { outputValue } from './robust-limits.js'
import { type Varied, valueAtScore } from './uncertain-model.js'

/** Values of everything uncertain in one draw, in the order of the inputs that scatter. */
export type Scenario = Float64Array

/** A draw of all inputs that scatter, by seed and number: correlated normal scores, each taken to its own distribution. */
export function scenarioOf(varied: readonly Varied[], lower: Float64Array | undefined, seed: number, index: number): Scenario {
  const random = randomStream(seed, index)
  const n = varied.length
  const free = Float64Array.from({ length: n }, () => random.normal(0, 1))
  return Float64Array.from(varied, (each, i) => {
    if (lower === undefined) return valueAtScore(each, free[i] as number)
    let score = 0
    for (let j = 0; j <= i; j++) score += (lower[i * n + j] as number) * (free[j] as number)
    return valueAtScore(each, score)
  })
}

/** Results of a formula under a scenario; nothing where there is no answer. */
export function underScenario(formula: AnyFormula, varied: readonly Varied[]) {
  const kernel = answering(formula.si as (x: unknown) => unknown)
  const requires = requirementsOf(formula)
  return (x: Record<string, unknown>, scenario: Scenario): unknown => {
    let given = x
    varied.forEach(({ path }, i) => {
      given = withValueAt(given, path, scenario[i])
    })
    return requires.every(({ holds }) => holds(given)) ? kernel(given) : undefined
  }
}

/** How far the worst limit is exceeded by some results: above zero where one is broken, infinite without an answer. */
export function shortfall(limits: readonly Limit[], results: unknown): number {
  if (results === undefined) return Number.POSITIVE_INFINITY
  return limits.reduce((worst, limit) => {
    const y = outputValue(results, limit.name)
    // A side without a limit is infinite, and infinity over itself is no number.
    const over = (beyond: number, end: number) => (Number.isFinite(end) ? beyond / (Math.abs(end) || 1) : Number.NEGATIVE_INFINITY)
    const excess = Number.isNaN(y) ? Number.NaN : Math.max(over(limit.min - y, limit.min), over(y - limit.max, limit.max))
    return Number.isNaN(excess) ? Number.POSITIVE_INFINITY : Math.max(worst, excess)
  }, Number.NEGATIVE_INFINITY)
}
