import { solveDefiniteInPlace } from '../numeric/index.js'
import type { Local } from './unit-box.js'

/** A step and the multipliers of the constraints. */
export interface QuadraticStep {
  readonly step: Float64Array
  readonly multipliers: Float64Array
  /** Whether some multiplier stands at the penalty. */
  readonly pressed: boolean
}

/** Passes over all multipliers between two exact solutions for those that are free. */
const PASSES = 10
const ROUNDS = 60
/** Multipliers that move the step by less than this, as a share of the ranges, are settled. */
const SETTLED = 1e-13

/**
 * The step that makes the quadratic model of the goal least while the linear models of the constraints hold, within the unit box.
 *
 * Coordinate ascent over the multipliers: each is set so that its own constraint just holds, and now and then those between their limits are
 * solved together. Bounded by the penalty, the multipliers solve the programme with an exact penalty, which has a solution even where the linear
 * constraints have none.
 *
 * Ours: a general solver would need another matrix library, and these programmes have a handful of rows.
 *
 * Source: C. Hildreth, *Naval Res. Logist. Q.* 4 (1957) 79.
 */
export function stepOf(local: Local, u: Float64Array, hessian: Float64Array, penalty: number, margin: number): QuadraticStep | undefined {
  const dual = Dual.of(local, u, hessian, penalty, margin)
  if (dual === undefined) return undefined
  for (let round = 0; round < ROUNDS; round++) {
    let change = 0
    for (let pass = 0; pass < PASSES; pass++) change = dual.pass()
    if (change < SETTLED) break
    dual.solveFree()
  }
  const multipliers = dual.multipliers.subarray(0, local.values.length - 1)
  return { step: dual.step, multipliers, pressed: multipliers.some((each) => each >= penalty) }
}

/** The dual of a step: constraints, then the upper and the lower end of each variable. */
class Dual {
  readonly multipliers: Float64Array

  private constructor(
    private readonly rows: readonly Float64Array[],
    private readonly sides: readonly number[],
    private readonly caps: readonly number[],
    /** Change of the step with a unit of each multiplier. */
    private readonly pulls: readonly Float64Array[],
    readonly step: Float64Array,
  ) {
    this.multipliers = new Float64Array(rows.length)
  }

  static of({ values, slopes }: Local, u: Float64Array, hessian: Float64Array, penalty: number, margin: number): Dual | undefined {
    const unit = (i: number, sign: 1 | -1) => Float64Array.from(u, (_, k) => (k === i ? sign : 0))
    const rows = [...slopes.slice(1), ...Array.from(u, (_, i) => unit(i, 1)), ...Array.from(u, (_, i) => unit(i, -1))]
    const sides = [...Array.from(values.subarray(1), (c) => c + margin), ...Array.from(u, (x) => x - 1), ...Array.from(u, (x) => -x)]
    const caps = rows.map((_, j) => (j < values.length - 1 ? penalty : Number.POSITIVE_INFINITY))
    const step = solved(
      hessian,
      (slopes[0] as Float64Array).map((g) => -g),
    )
    const pulls = rows.map((row) => solved(hessian, row))
    if (step === undefined || pulls.includes(undefined)) return undefined
    return new Dual(rows, sides, caps, pulls as Float64Array[], step)
  }

  /** How far a constraint is exceeded after the step, to first order. */
  private excess(j: number): number {
    return dot(this.rows[j] as Float64Array, this.step) + (this.sides[j] as number)
  }

  private move(j: number, by: number): void {
    const pull = this.pulls[j] as Float64Array
    this.multipliers[j] = (this.multipliers[j] as number) + by
    for (let i = 0; i < this.step.length; i++) this.step[i] = (this.step[i] as number) - by * (pull[i] as number)
  }

  /** Sets every multiplier in turn; returns how far the step moved. */
  pass(): number {
    let change = 0
    for (let j = 0; j < this.rows.length; j++) {
      const size = dot(this.rows[j] as Float64Array, this.pulls[j] as Float64Array)
      if (!(size > 0)) continue
      const own = this.multipliers[j] as number
      const next = Math.min(Math.max(own + this.excess(j) / size, 0), this.caps[j] as number)
      if (next === own) continue
      this.move(j, next - own)
      this.multipliers[j] = next
      change = Math.max(change, Math.abs(next - own) * Math.sqrt(size))
    }
    return change
  }

  /** Solves for all multipliers between their limits together, as far as they stay there. */
  solveFree(): void {
    const free = this.rows.flatMap((_, j) =>
      (this.multipliers[j] as number) > 0 && (this.multipliers[j] as number) < (this.caps[j] as number) ? [j] : [],
    )
    const matrix = Float64Array.from(free.flatMap((j) => free.map((k) => dot(this.rows[j] as Float64Array, this.pulls[k] as Float64Array))))
    const change = solved(
      matrix,
      Float64Array.from(free, (j) => this.excess(j)),
    )
    if (change === undefined) return
    let part = 1
    free.forEach((j, k) => {
      const [own, by] = [this.multipliers[j] as number, change[k] as number]
      if (own + by < 0) part = Math.min(part, own / -by)
      else if (own + by > (this.caps[j] as number)) part = Math.min(part, ((this.caps[j] as number) - own) / by)
    })
    free.forEach((j, k) => {
      this.move(j, part * (change[k] as number))
    })
  }
}

/** The product of two vectors. */
export const dot = (a: Float64Array, b: Float64Array): number => a.reduce((sum, x, i) => sum + x * (b[i] as number), 0)

function solved(matrix: Float64Array, side: Float64Array): Float64Array | undefined {
  const x = side.slice()
  return solveDefiniteInPlace(matrix.slice(), x.length, x) ? x : undefined
}
