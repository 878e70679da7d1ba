/**
 * Tools that work on any formula: solve for an input, sweep, sensitivity, uncertainty, optimise, fit.
 *
 * @module
 */

// Solving and sweeps

export type { Design, Range } from './design.js'
export { mergeSweep } from './merge-sweep.js'
export type { OptionsFor } from './model.js'
export { type KindAt, type ScalarOutput, type ScalarPath, scalarPaths, type Target, type Without } from './path.js'
export { type RunOptions, runSweep, type SweepJob, type SweepProgress, SweepStopped, sweepJob } from './run-sweep.js'
export { type Scenarios, scenarios } from './scenarios.js'
export type { Solution } from './solution.js'
export { type SolveOptions, solveFor } from './solve.js'
export { type Fixed, type Over, type SweepPlan, sweep } from './sweep.js'
export { SweepFileError } from './sweep-file.js'
export type { WorkerPlan } from './workers.js'

// Tables

export { type ArrowPackage, type Column, Table } from './table.js'
export type { TableChartOptions } from './table-chart.js'
export type { TableJSON } from './table-json.js'

// Sensitivity and uncertainty

export { type Bounds, type BoundsOptions, bounds, type Extreme } from './bounds.js'
export type { Trend } from './bounds-search.js'
export { type Distribution, type DistributionOf, lognormal, normal, type SpreadOf, triangular, truncated, uniform } from './distribution.js'
export { type SensitivityOptions, sensitivity } from './sensitivity.js'
export type { Sensitivities, Sensitivity } from './sensitivity-result.js'
export type { Uncertain, UncertainArg } from './uncertain-model.js'
export { type Correlation, type UncertaintyOptions, uncertainty } from './uncertainty.js'
export { type Contribution, type Estimate, type LinearUncertainty, type MonteCarloUncertainty, Uncertainty } from './uncertainty-result.js'
export { type Share, type VarianceOptions, type VarianceShare, type VarianceShares, varianceShares } from './variance.js'

// Chances of failure

export { type FailureChancesPlan, failureChances } from './failure-chances.js'
export { type Chance, FailureChances } from './failure-chances-result.js'
export { type FailureOptions, failureProbability } from './failure-probability.js'
export { type FirstOrderReliability, Reliability } from './failure-result.js'
export { leastShare, mostFailures } from './share-bound.js'

// Optima

export { optimise } from './optimise.js'
export type { Choice, Constraint, Constraints, Goal, OptimisePlan, VaryRange } from './optimise-plan.js'
export type { Agreement, Optimum, Point } from './optimum.js'
export { type RobustPlan, robustOptimum } from './robust-optimum.js'
export { type Held, RobustOptimum } from './robust-result.js'

// Fits to measurements

export { fit } from './fit.js'
export type { FitPlan, Guess, Logged, Measured } from './fit-plan.js'
export type { Confounded, FitResult, FittedParameter } from './fit-result.js'
export type { ResidualCheck } from './residuals.js'

// Approximations

export { type SurrogatePlan, surrogate } from './surrogate.js'
export { type Approximation, Surrogate } from './surrogate-result.js'
