import { normalCdf, type RandomStream } from '../numeric/index.js'
import { alike, COMMON, type NearPoint } from './near-points.js'

/** Share of the draws that are taken round the middle, so that failures near no point are met as well. */
const ROUND_THE_MIDDLE = 0.1
/** Share of the draws round points that is divided by the chance behind each; the rest is the same for each rare one, which is then met beside common ones. */
const BY_CHANCE = 0.4

/** Standard normal draws round several centres. Weighted back they count as draws round the middle. */
export class Mixture {
  readonly #centres: readonly Float64Array[]
  readonly #shares: readonly number[]

  /** Round the middle and the points found, of which those that are as good as one count once. */
  constructor(n: number, found: readonly NearPoint[]) {
    const points = found.filter(({ u }, i) => !found.slice(0, i).some((other) => alike(u, other.u)))
    const chances = points.map(({ index }) => Math.max(Number.MIN_VALUE, normalCdf(-index)))
    const sum = chances.reduce((a, b) => a + b, 0)
    const rare = points.filter(({ index }) => index >= COMMON).length
    const byChance = rare === 0 ? 1 : BY_CHANCE
    const share = ({ index }: NearPoint, i: number) =>
      (1 - ROUND_THE_MIDDLE) * ((byChance * (chances[i] as number)) / sum + (index >= COMMON ? (1 - byChance) / rare : 0))
    this.#centres = [new Float64Array(n), ...points.map(({ u }) => u)]
    this.#shares = points.length === 0 ? [1] : [ROUND_THE_MIDDLE, ...points.map(share)]
  }

  /** Puts one draw into `u`. */
  draw(random: RandomStream, u: Float64Array): void {
    const centre = this.#centres[this.#chosen(random.uniform())] as Float64Array
    for (let i = 0; i < u.length; i++) u[i] = (centre[i] as number) + random.normal(0, 1)
  }

  /** The largest weight that a draw can have: that of one of which the share round the middle alone tells. */
  get mostWeight(): number {
    return 1 / (this.#shares[0] as number)
  }

  /** Density of draws round the middle over that of the mixture; taken from exponents, which neither under- nor overflow together. */
  weight(u: Float64Array): number {
    let mixture = 0
    for (let j = 0; j < this.#centres.length; j++) {
      const c = this.#centres[j] as Float64Array
      let exponent = 0
      for (let i = 0; i < u.length; i++) exponent += (c[i] as number) * ((u[i] as number) - (c[i] as number) / 2)
      mixture += (this.#shares[j] as number) * Math.exp(exponent)
    }
    return 1 / mixture
  }

  #chosen(x: number): number {
    let left = x
    for (let j = 0; j < this.#shares.length - 1; j++) {
      left -= this.#shares[j] as number
      if (left < 0) return j
    }
    return this.#shares.length - 1
  }
}
