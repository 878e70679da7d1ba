import type { RandomStream } from '../numeric/index.js'

/** Share of the variables that a trial takes from the difference: few, where variables act apart, or nearly all, where they act together. */
const FEW = 0.1
const NEARLY_ALL = 0.9
/** The rarer of the two keeps this share of the trials, so that it can come back. */
const MIN_RATE = 0.05
/** Weight of a generation's successes in the next. */
const MEMORY = 0.9

/**
 * Chooses for each trial of a front whether few or nearly all variables change, by which of the two has lately given better candidates.
 * Source: A. K. Qin, V. L. Huang, P. N. Suganthan, *IEEE Trans. Evol. Comput.* 13 (2009) 398 (strategies by their success).
 */
export class Crossover {
  private shareOfMany = 0.2
  private readonly won = [1, 1]
  private readonly tried = [10, 10]
  private chosen: number[] = []

  /** The share of the variables for the next trial. */
  next(random: RandomStream): number {
    const many = random.uniform() < this.shareOfMany
    this.chosen.push(many ? 1 : 0)
    return many ? NEARLY_ALL : FEW
  }

  /** Learns from a generation: which trials, in their order, were better than their parents. */
  learn(better: readonly boolean[]): void {
    for (const kind of [0, 1]) {
      this.won[kind] = MEMORY * (this.won[kind] as number)
      this.tried[kind] = MEMORY * (this.tried[kind] as number)
    }
    better.forEach((x, i) => {
      const kind = this.chosen[i] as number
      this.tried[kind] = (this.tried[kind] as number) + 1
      if (x) this.won[kind] = (this.won[kind] as number) + 1
    })
    this.chosen = []
    const [few, many] = [0, 1].map((kind) => ((this.won[kind] as number) / (this.tried[kind] as number)) ** 2) as [number, number]
    this.shareOfMany = Math.min(1 - MIN_RATE, Math.max(MIN_RATE, many / (few + many || 1)))
  }
}
