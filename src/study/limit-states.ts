import type { AnyFormula } from '../formula/index.js'
import { answering, requirementsOf, withValueAt } from './path.js'
import { outputValue } from './robust-limits.js'
import { type UncertainModel, valueAtScore } from './uncertain-model.js'

/** One way to fail: an output that must not fall below (side 1) or rise above (side -1) a limit. */
export interface Side {
  readonly name: string
  readonly side: 1 | -1
  readonly limit: number
  readonly words: string
}

/** Several limit states of one formula in independent standard normal scores, each positive where it holds. */
export interface LimitStates {
  readonly n: number
  readonly states: number
  readonly at: (u: ArrayLike<number>) => Float64Array
  readonly count: { evaluations: number; gaps: number }
}

/** The limit states of a formula. Where it has no answer all of them count as failed: minus infinity. */
export function limitStates(
  formula: AnyFormula,
  { varied, model }: UncertainModel,
  lower: Float64Array | undefined,
  sides: readonly Side[],
): LimitStates {
  const kernel = answering(formula.si as (x: unknown) => unknown)
  const requires = requirementsOf(formula)
  const n = varied.length
  const count = { evaluations: 0, gaps: 0 }
  const at = (u: ArrayLike<number>): Float64Array => {
    count.evaluations++
    let x: Record<string, unknown> = model.x
    varied.forEach((each, i) => {
      let score = u[i] as number
      if (lower !== undefined) {
        score = 0
        for (let j = 0; j <= i; j++) score += (lower[i * n + j] as number) * (u[j] as number)
      }
      x = withValueAt(x, each.path, valueAtScore(each, score))
    })
    const results = requires.every(({ holds }) => holds(x)) ? kernel(x) : undefined
    if (results === undefined) {
      count.gaps++
      return new Float64Array(sides.length).fill(Number.NEGATIVE_INFINITY)
    }
    return Float64Array.from(sides, ({ name, side, limit }) => {
      const value = side * (outputValue(results, name) - limit)
      return Number.isNaN(value) ? Number.NEGATIVE_INFINITY : value
    })
  }
  return { n, states: sides.length, at, count }
}
