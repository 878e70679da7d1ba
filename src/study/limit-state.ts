import { type UncertainModel, type Varied, valueAtScore } from './uncertain-model.js'

/** A limit state in independent standard normal scores: failure where the function is not above zero. */
export interface LimitState {
  readonly n: number
  /** Distance from the limit, positive where it holds. Where the formula has no answer it counts as failed: minus infinity. */
  readonly at: (u: ArrayLike<number>) => number
  /** The inputs at some scores, SI. */
  readonly inputs: (u: ArrayLike<number>) => Float64Array
  /** Runs of the formula so far, and those without an answer. */
  readonly count: { evaluations: number; gaps: number }
}

/** The limit state of a formula whose result must not fall below (side 1) or rise above (side -1) a limit. */
export function limitState({ varied, model }: UncertainModel, lower: Float64Array | undefined, limit: number, side: 1 | -1): LimitState {
  const n = varied.length
  const x = new Float64Array(n)
  const count = { evaluations: 0, gaps: 0 }
  const inputs = (u: ArrayLike<number>): Float64Array => {
    for (let i = 0; i < n; i++) {
      let score = u[i] as number
      if (lower !== undefined) {
        score = 0
        for (let j = 0; j <= i; j++) score += (lower[i * n + j] as number) * (u[j] as number)
      }
      x[i] = valueAtScore(varied[i] as Varied, score)
    }
    return x
  }
  const at = (u: ArrayLike<number>): number => {
    count.evaluations++
    const result = model.at(inputs(u))
    if (!Number.isNaN(result)) return side * (result - limit)
    count.gaps++
    return Number.NEGATIVE_INFINITY
  }
  return { n, at, inputs, count }
}
