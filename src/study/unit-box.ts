import { bestOf, type Candidate, type Problem } from './search-problem.js'

/** Half the step of a central difference, as a share of a variable's range. */
const STEP = 3e-6

/** Goal and constraints at a point, scaled, and their slopes row by row. */
export interface Local {
  readonly values: Float64Array
  readonly slopes: readonly Float64Array[]
}

/** The continuous variables of a problem as a unit box, with the best candidate met. */
export class UnitBox {
  readonly n: number
  readonly start: Float64Array
  best: Candidate
  used = 0
  private readonly free: number[]
  private scales: Float64Array

  constructor(
    private readonly problem: Problem,
    private readonly from: Candidate,
    private readonly evaluations: number,
  ) {
    const { low, high, choice } = problem
    this.free = choice.flatMap((is, i) => (is || !((high[i] as number) > (low[i] as number)) ? [] : [i]))
    this.n = this.free.length
    this.best = from
    this.scales = new Float64Array(1 + from.excess.length).fill(1)
    this.start = Float64Array.from(this.free, (i) =>
      Math.min(Math.max(((from.x[i] as number) - (low[i] as number)) / ((high[i] as number) - (low[i] as number)), 0), 1),
    )
  }

  allows(more: number): boolean {
    return this.used + more <= this.evaluations
  }

  private run(u: ArrayLike<number>): Candidate {
    const { low, high } = this.problem
    const x = this.from.x.slice()
    this.free.forEach((i, k) => {
      const part = u[k] as number
      x[i] = part === 1 ? (high[i] as number) : (low[i] as number) + part * ((high[i] as number) - (low[i] as number))
    })
    this.used++
    const found = this.problem.run(x)
    this.best = bestOf([this.best, found])
    return found
  }

  /** Goal and constraints, scaled; nothing where there is no answer. */
  values(u: ArrayLike<number>): Float64Array | undefined {
    const { goals, excess } = this.run(u)
    const values = Float64Array.from({ length: 1 + excess.length }, (_, j) => (j === 0 ? (goals[0] as number) : (excess[j - 1] as number)))
    for (let j = 0; j < values.length; j++) {
      values[j] = (values[j] as number) / (this.scales[j] as number)
      if (!Number.isFinite(values[j])) return undefined
    }
    return values
  }

  /** Values and slopes by central differences, one-sided beside a limit; nothing where a value is missing. */
  local(u: Float64Array): Local | undefined {
    if (!this.allows(2 * this.n + 1)) return undefined
    const values = this.values(u)
    if (values === undefined) return undefined
    const slopes = Array.from(values, () => new Float64Array(this.n))
    for (let i = 0; i < this.n; i++) {
      const own = u[i] as number
      const inside = own - STEP >= 0 && own + STEP <= 1
      const h = inside || own + STEP <= 1 ? STEP : -STEP
      const at = (part: number) => this.values(Float64Array.from(u, (x, k) => (k === i ? part : x)))
      const [a, b] = inside ? [at(own - STEP), at(own + STEP)] : [at(own + h), at(own + 2 * h)]
      if (a === undefined || b === undefined) return undefined
      for (let j = 0; j < values.length; j++) {
        const [v, va, vb] = [values[j] as number, a[j] as number, b[j] as number]
        ;(slopes[j] as Float64Array)[i] = inside ? (vb - va) / (2 * STEP) : (4 * va - vb - 3 * v) / (2 * h)
      }
    }
    return { values, slopes }
  }

  /** Scales goal and constraints by their largest slopes, and the values just worked out with them. */
  scaleBy({ values, slopes }: Local): void {
    slopes.forEach((row, j) => {
      const steepest = row.reduce((max, s) => Math.max(max, Math.abs(s)), 0)
      if (!(steepest > 0)) return
      this.scales[j] = steepest
      values[j] = (values[j] as number) / steepest
      for (let i = 0; i < row.length; i++) row[i] = (row[i] as number) / steepest
    })
  }

  /** Where the end breaks a constraint by rounding: the last point on the way to it that keeps all. */
  pullBack(end: Float64Array): void {
    if (this.best.violation > 0 || this.run(end).violation === 0) return
    const { low, high } = this.problem
    const feasible = Float64Array.from(
      this.free,
      (i) => ((this.best.x[i] as number) - (low[i] as number)) / ((high[i] as number) - (low[i] as number)),
    )
    let [good, bad] = [0, 1]
    for (let k = 0; k < 28; k++) {
      const middle = 0.5 * (good + bad)
      const { violation } = this.run(
        Float64Array.from(end, (x, i) => Math.min(Math.max((feasible[i] as number) + middle * (x - (feasible[i] as number)), 0), 1)),
      )
      if (violation === 0) good = middle
      else bad = middle
    }
  }
}
