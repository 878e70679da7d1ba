import type { Formula, Inputs, Output } from '../formula/index.js'
import { parametersOf } from './fit-intervals.js'
import { type FitPlan, readFit } from './fit-plan.js'
import { FitResult } from './fit-result.js'
import { fitted } from './fit-search.js'
import { untyped } from './path.js'
import { residualChecks } from './residuals.js'

/**
 * Finds inputs of a formula from logged readings of its result: a friction from tensions, a creep rate from a year of pretension.
 *
 * Least squares by Levenberg and Marquardt's method within the limits of the record, or a robust loss. The answer carries confidence intervals, the parameters
 * that the data cannot separate, and checks of the residuals: unusual readings, runs, drift and normality are reported,
 * nothing is dropped. One start finds a local best: guess well, or take several `starts`. In a fit that has not settled no parameter counts as determined.
 *
 * Throws one `InputError` that lists every bad input (columns of unequal length, gaps in a column, units of another kind); a `NoResultError`
 * where the formula has no finite answer at the guess.
 *
 * Source: D. M. Bates, D. G. Watts, *Nonlinear Regression Analysis*, 1988, ch. 2 (linear intervals), 6.1 (profiles); P. J. Huber,
 * *Robust Statistics*, 1981, ch. 7 (loss and its errors).
 */
export function fit<I extends Inputs, O extends Output>(formula: Formula<I, O>, plan: NoInfer<FitPlan<I, O>>): FitResult {
  const { problem, kind } = readFit(untyped(formula), plan as never)
  const { confidence = 0.95, intervals = 'linear' } = plan
  const { readings, weights, sigma, loss } = problem
  const found = fitted(problem)
  // Measured minus fitted, as residuals are read.
  const residuals = readings.map((y, i) => y - found.predict(i))
  const scaled = residuals.map((r, i) => r * Math.sqrt(weights[i] as number))
  return new FitResult({
    formula: formula.id,
    parameters: parametersOf(found, confidence, intervals),
    kind,
    numbers: found.numbers,
    converged: found.converged,
    starts: found.starts,
    confidence,
    residuals,
    fittedValues: readings.map((y, i) => y - (residuals[i] as number)),
    checks: residualChecks(scaled, found.numbers.sigma, found.numbers.degreesOfFreedom, sigma !== undefined && loss === 'squares'),
  })
}
