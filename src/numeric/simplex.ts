/** What a simplex is moved over. @internal */
export interface SimplexSpace {
  readonly n: number
  readonly lower: Float64Array
  readonly upper: Float64Array
  readonly step: Float64Array
  readonly value: (x: Float64Array) => number
  readonly mayGoOn: () => boolean
}

/** A Nelder-Mead simplex within box limits, its points by ascending value. @internal */
export class Simplex {
  private readonly points: Float64Array[]
  private readonly values: number[]
  private readonly centre: Float64Array
  private trial: Float64Array
  private readonly expansion: number
  private readonly contraction: number
  private readonly shrinkage: number

  constructor(
    private readonly space: SimplexSpace,
    start: Float64Array,
    startValue: number,
    scale: number,
  ) {
    const { n, lower, upper, step, value } = space
    // One variable moves as two do.
    const m = Math.max(n, 2)
    this.expansion = 1 + 2 / m
    this.contraction = 0.75 - 1 / (2 * m)
    this.shrinkage = 1 - 1 / m
    this.centre = new Float64Array(n)
    this.trial = new Float64Array(n)
    this.points = [Float64Array.from(start)]
    this.values = [startValue]
    for (let i = 0; i < n; i++) {
      const x = Float64Array.from(start)
      const moved = x[i]! + scale * step[i]!
      // A start on its limit steps inwards.
      x[i] = moved <= upper[i]! && moved >= lower[i]! ? moved : Math.min(Math.max(x[i]! - scale * step[i]!, lower[i]!), upper[i]!)
      this.points.push(x)
      this.values.push(value(x))
    }
  }

  get best(): Float64Array {
    return this.points[0]!
  }

  get value(): number {
    return this.values[0]!
  }

  /** Moves until the simplex is small and its values alike; false when the evaluations ran out first. */
  contract(xTolerance: number, fTolerance: number): boolean {
    for (;;) {
      this.sort()
      const size = this.size()
      const spread = this.values[this.space.n]! - this.values[0]!
      if (size <= 1e-15 || (size <= xTolerance && spread <= fTolerance * Math.max(Math.abs(this.values[0]!), 1))) return true
      if (!this.space.mayGoOn()) return false
      this.move()
    }
  }

  private sort(): void {
    const { points, values } = this
    for (let i = 1; i < points.length; i++) {
      const p = points[i]!
      const v = values[i]!
      let j = i - 1
      for (; j >= 0 && values[j]! > v; j--) {
        points[j + 1] = points[j]!
        values[j + 1] = values[j]!
      }
      points[j + 1] = p
      values[j + 1] = v
    }
  }

  /** Largest distance from the best point, in steps. */
  private size(): number {
    const { n, step } = this.space
    let size = 0
    for (let i = 1; i <= n; i++)
      for (let k = 0; k < n; k++) if (step[k]! > 0) size = Math.max(size, Math.abs(this.points[i]![k]! - this.points[0]![k]!) / step[k]!)
    return size
  }

  /** Sets the trial on the line from the centre to the worst point; returns the value there. */
  private tryAt(factor: number): number {
    const { n, lower, upper, value } = this.space
    const worst = this.points[n]!
    for (let i = 0; i < n; i++)
      this.trial[i] = Math.min(Math.max(this.centre[i]! + factor * (worst[i]! - this.centre[i]!), lower[i]!), upper[i]!)
    return value(this.trial)
  }

  /** The trial replaces the worst point. */
  private accept(value: number): void {
    const { n } = this.space
    const worst = this.points[n]!
    this.points[n] = this.trial
    this.values[n] = value
    this.trial = worst
  }

  private move(): void {
    const { values } = this
    const { n } = this.space
    this.centre.fill(0)
    for (let i = 0; i < n; i++) for (let k = 0; k < n; k++) this.centre[k] = this.centre[k]! + this.points[i]![k]! / n
    const reflected = this.tryAt(-1)
    if (reflected < values[0]!) this.expand(reflected)
    else if (reflected < values[n - 1]!) this.accept(reflected)
    else {
      const contracted = this.tryAt(reflected < values[n]! ? -this.contraction : this.contraction)
      if (contracted < Math.min(reflected, values[n]!)) this.accept(contracted)
      else this.shrink()
    }
  }

  private expand(reflected: number): void {
    const kept = Float64Array.from(this.trial)
    const expanded = this.tryAt(-this.expansion)
    if (expanded < reflected) this.accept(expanded)
    else {
      this.trial.set(kept)
      this.accept(reflected)
    }
  }

  private shrink(): void {
    const { n, value } = this.space
    for (let i = 1; i <= n; i++) {
      const p = this.points[i]!
      for (let k = 0; k < n; k++) p[k] = this.points[0]![k]! + this.shrinkage * (p[k]! - this.points[0]![k]!)
      this.values[i] = value(p)
    }
  }
}
