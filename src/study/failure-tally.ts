import { chiSquareQuantile } from '../numeric/index.js'
import type { Chance } from './failure-chances-result.js'

/** Sums of the weights of the draws that failed. */
export class Tally {
  #weight = 0
  #square = 0
  #count = 0
  #largest = 0

  /** Share of the chance that a single draw carries. */
  get largest(): number {
    return this.#weight === 0 ? 0 : this.#largest / this.#weight
  }

  add(weight: number): void {
    this.#weight += weight
    this.#square += weight * weight
    this.#largest = Math.max(this.#largest, weight)
    this.#count++
  }

  /** @param max the largest weight that a draw can have. */
  chance(draws: number, confidence: number, max: number): Chance {
    // No failure among the draws is no chance of zero: the largest chance that would have shown in this share of such runs.
    if (this.#count === 0)
      return { probability: 0, error: 0, interval: [0, Math.min(1, -max * Math.expm1(Math.log1p(-confidence) / draws))], failures: 0 }
    const probability = this.#weight / draws
    const error = Math.sqrt(Math.max(0, this.#square / draws - probability * probability) / draws)
    const interval = fewWeighted(probability, error * error, this.#largest / draws, (1 - confidence) / 2)
    return { probability, error, interval, failures: this.#count }
  }
}

/**
 * Interval of a sum of weights of few events, with a share of its confidence beyond each end: that of a count where all weights are alike, and wider upwards where a
 * further event of the largest weight would add much.
 *
 * Source: M. P. Fay, E. J. Feuer, *Stat. Med.* 16 (1997) 791.
 */
function fewWeighted(sum: number, variance: number, largest: number, beyond: number): readonly [number, number] {
  if (!(variance > 0)) return [sum, sum]
  const next = sum + largest
  const spread = variance + largest * largest
  const low = (variance / (2 * sum)) * chiSquareQuantile(beyond, (2 * sum * sum) / variance)
  const high = (spread / (2 * next)) * chiSquareQuantile(1 - beyond, (2 * next * next) / spread)
  return [Math.min(sum, low), Math.min(1, Math.max(sum, high))]
}

/** Effect of one score on the chance of failure. */
interface ScatterEffect {
  /** By how many percent the chance falls with each percent less scatter. */
  readonly fall: number
  /** Standard error of it. */
  readonly error: number
}

/**
 * How the chance depends on the scatter of each score: the derivative of its logarithm by that of the deviation, which is the mean square of the score in failed
 * draws, less one. Failures on both sides of the middle count alike.
 */
export class ScatterTally {
  readonly #second: Float64Array
  readonly #fourth: Float64Array
  #weight = 0
  #square = 0

  constructor(n: number) {
    this.#second = new Float64Array(n)
    this.#fourth = new Float64Array(n)
  }

  add(weight: number, u: Float64Array): void {
    this.#weight += weight
    this.#square += weight * weight
    for (let i = 0; i < u.length; i++) {
      const square = (u[i] as number) ** 2
      ;(this.#second[i] as number) += weight * square
      ;(this.#fourth[i] as number) += weight * square * square
    }
  }

  effects(): ScatterEffect[] {
    if (this.#weight === 0) return Array.from(this.#second, () => ({ fall: 0, error: Number.POSITIVE_INFINITY }))
    const draws = this.#weight ** 2 / this.#square
    return Array.from(this.#second, (sum, i) => {
      const mean = sum / this.#weight
      const spread = Math.max(0, (this.#fourth[i] as number) / this.#weight - mean * mean)
      return { fall: mean - 1, error: Math.sqrt(spread / draws) }
    })
  }
}
