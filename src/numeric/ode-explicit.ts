import { insideSegment, integrateSteps, type Stepper, startingStep } from './ode.js'
import { type OdeProblem, type OdeSettings, readProblem } from './ode-problem.js'
import type { OdeSolution } from './ode-solution.js'

// Dormand-Prince 5(4) with the interpolant of order 4.
const C = [0, 1 / 5, 3 / 10, 4 / 5, 8 / 9, 1, 1]
const A = [
  [],
  [1 / 5],
  [3 / 40, 9 / 40],
  [44 / 45, -56 / 15, 32 / 9],
  [19372 / 6561, -25360 / 2187, 64448 / 6561, -212 / 729],
  [9017 / 3168, -355 / 33, 46732 / 5247, 49 / 176, -5103 / 18656],
  [35 / 384, 0, 500 / 1113, 125 / 192, -2187 / 6784, 11 / 84],
]
const E = [-71 / 57600, 0, 71 / 16695, -71 / 1920, 17253 / 339200, -22 / 525, 1 / 40]
const P = [
  [1, -8048581381 / 2820520608, 8663915743 / 2820520608, -12715105075 / 11282082432],
  [0, 0, 0, 0],
  [0, 131558114200 / 32700410799, -68118460800 / 10900136933, 87487479700 / 32700410799],
  [0, -1754552775 / 470086768, 14199869525 / 1410260304, -10690763975 / 1880347072],
  [0, 127303824393 / 49829197408, -318862633887 / 49829197408, 701980252875 / 199316789632],
  [0, -282668133 / 205662961, 2019193451 / 616988883, -1453857185 / 822651844],
  [0, 40617522 / 29380423, -110615467 / 29380423, 69997945 / 29380423],
]

class DormandPrince implements Stepper {
  readonly degree = 4
  evaluations = 0
  private readonly k: Float64Array[]
  private readonly stage: Float64Array
  private previousError = 1e-4
  private justRejected = false

  constructor(private readonly s: OdeSettings) {
    this.k = Array.from({ length: 7 }, () => new Float64Array(s.n))
    this.stage = new Float64Array(s.n)
  }

  restart(t: number, y: Float64Array): void {
    this.s.derivative(t, y, this.k[0]!)
    this.evaluations++
    this.previousError = 1e-4
    this.justRejected = false
  }

  guessStep(t: number, y: Float64Array, tEnd: number): number {
    this.evaluations++
    return startingStep(this.s, t, y, this.k[0]!, tEnd, 5)
  }

  attempt(t: number, y: Float64Array, h: number, tEnd: number, yNew: Float64Array): number {
    const { n, derivative, relativeTolerance, absoluteTolerance } = this.s
    const { k, stage } = this
    for (let s = 1; s < 7; s++) {
      const row = A[s]!
      const out = s === 6 ? yNew : stage
      for (let i = 0; i < n; i++) {
        let sum = 0
        for (let j = 0; j < s; j++) sum += row[j]! * k[j]![i]!
        out[i] = y[i]! + h * sum
      }
      derivative(insideSegment(t + C[s]! * h, tEnd), out, k[s]!)
    }
    this.evaluations += 6
    let total = 0
    for (let i = 0; i < n; i++) {
      let sum = 0
      for (let j = 0; j < 7; j++) sum += E[j]! * k[j]![i]!
      const scale = absoluteTolerance[i]! + relativeTolerance * Math.max(Math.abs(y[i]!), Math.abs(yNew[i]!))
      const ratio = sum === 0 ? 0 : (h * sum) / scale
      total += ratio * ratio
    }
    return Math.sqrt(total / n)
  }

  nextFactor(error: number, accepted: boolean): number {
    if (!accepted) {
      this.justRejected = true
      return Number.isFinite(error) ? Math.max(0.2, 0.9 * error ** -0.2) : 0.2
    }
    // Proportional-integral control (Hairer, Nørsett, Wanner, sec. IV.2 of vol. II) damps the hunting of the step.
    const bounded = Math.max(error, 1e-8)
    const factor = 0.9 * bounded ** -0.17 * this.previousError ** 0.04
    this.previousError = Math.max(error, 1e-4)
    const max = this.justRejected ? 1 : 8
    this.justRejected = false
    return Math.min(max, Math.max(0.2, factor))
  }

  interpolant(_y: Float64Array, h: number, _yNew: Float64Array, out: Float64Array, offset: number): void {
    const { n } = this.s
    for (let d = 0; d < 4; d++) {
      for (let i = 0; i < n; i++) {
        let sum = 0
        for (let j = 0; j < 7; j++) sum += P[j]![d]! * this.k[j]![i]!
        out[offset + d * n + i] = h * sum
      }
    }
  }

  accept(): void {
    const last = this.k[6]!
    this.k[6] = this.k[0]!
    this.k[0] = last
  }
}

/**
 * Solves an initial-value problem that is not stiff: motions, trajectories, smooth histories.
 *
 * Dormand-Prince 5(4) with proportional-integral step control, an interpolant of order 4, located events and exact
 * stops at jumps. On a stiff problem (time constants that differ by more than about a thousand) it stays right but takes very many
 * steps: use `solveStiff`.
 *
 * @throws NumericError `badArgument` for a malformed problem, `noConvergence` when `maxSteps` is used up or the step
 * collapses, `notFinite` when the right-hand side is not finite.
 *
 * Source: J. R. Dormand, P. J. Prince, *J. Comput. Appl. Math.* 6 (1980) 19; L. F. Shampine, *Math. Comp.* 46 (1986) 135 (interpolant).
 */
export function solveNonStiff(problem: OdeProblem): OdeSolution {
  return integrateSteps('solveNonStiff', problem, new DormandPrince(readProblem('solveNonStiff', problem)))
}
