import type { OdeSettings } from './ode-problem.js'

/** Buffers for `forwardDifferences`: `stage`, `rate` and `delta` of n numbers are overwritten, `jacobian` of n² is the result. */
interface Buffers {
  readonly stage: Float64Array
  readonly rate: Float64Array
  readonly delta: Float64Array
  readonly jacobian: Float64Array
}

/** Jacobian of the derivative at `y` by forward differences, row by row; returns the number of evaluations. */
export function forwardDifferences(s: OdeSettings, t: number, y: Float64Array, buffers: Buffers): number {
  const { n, derivative, relativeTolerance, absoluteTolerance } = s
  const { stage, rate, jacobian, delta: f0 } = buffers
  stage.set(y)
  // The stage derivative at hand solves the stage equation only to Newton's tolerance, which the differences would magnify.
  derivative(t, stage, f0)
  for (let j = 0; j < n; j++) {
    const yj = y[j]!
    // atol/rtol is the size below which a state hardly matters: differencing on less than that drowns in rounding.
    const size = 1.5e-8 * Math.max(Math.abs(yj), absoluteTolerance[j]! / Math.max(relativeTolerance, 1e-9), 1e-30)
    stage[j] = yj + size
    const exact = stage[j]! - yj
    derivative(t, stage, rate)
    for (let i = 0; i < n; i++) jacobian[i * n + j] = (rate[i]! - f0[i]!) / exact
    stage[j] = yj
  }
  return n + 1
}
