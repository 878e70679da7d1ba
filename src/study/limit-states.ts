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
  /** Scores that are free: inputs of one draw share one. */
  readonly n: number
  /** Paths of the inputs of each score: the one that it belongs to, then those that follow it wholly. */
  readonly paths: readonly (readonly string[])[]
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
  const rows = lower === undefined ? undefined : rowsOf(lower, varied.length)
  const free = varied.map((_, i) => i).filter((i) => rows === undefined || (rows[i] as Float64Array)[i] !== 0)
  const count = { evaluations: 0, gaps: 0 }
  const at = (u: ArrayLike<number>): Float64Array => {
    count.evaluations++
    let x: Record<string, unknown> = model.x
    varied.forEach((each, i) => {
      let score = u[i] as number
      if (rows !== undefined) {
        score = 0
        for (let j = 0; j < free.length; j++) score += ((rows[i] as Float64Array)[free[j] as number] as number) * (u[j] as number)
      }
      x = withValueAt(x, each.path, valueAtScore(each, score))
    })
    const results = requires.every(({ holds }) => holds(x)) ? kernel(x) : undefined
    const margins = Float64Array.from(sides, ({ name, side, limit }) =>
      results === undefined ? Number.NaN : side * (outputValue(results, name) - limit),
    )
    if (!margins.some(Number.isNaN)) return margins
    count.gaps++
    return margins.map((margin) => (Number.isNaN(margin) ? Number.NEGATIVE_INFINITY : margin))
  }
  const paths = free.map((i) => [i, ...followersOf(i, rows)].map((k) => (varied[k] as { path: string }).path))
  return { n: free.length, paths, states: sides.length, at, count }
}

const rowsOf = (lower: Float64Array, n: number) => Array.from({ length: n }, (_, i) => lower.subarray(i * n, (i + 1) * n))

/** Inputs whose score is that of input i, or its opposite. */
const followersOf = (i: number, rows: readonly Float64Array[] | undefined): number[] =>
  (rows ?? []).flatMap((row, k) => (k !== i && Math.abs(row[i] as number) > 1 - 1e-9 ? [k] : []))
