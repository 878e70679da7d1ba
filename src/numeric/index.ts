/**
 * Plain-number mathematics under everything else. It knows no units: arguments are numbers, times and states are whatever the caller means by them.
 *
 * Conventions: matrices are row-major `Float64Array`s; functions that fill a buffer take it as their last argument; a request that cannot be met
 * throws `NumericError` with the reason and the numbers, and nothing is clamped or answered with NaN. Random draws depend only on a seed and an index.
 *
 * Libraries and own routines:
 * - Random numbers are pure-rand's; decompositions of larger matrices are ml-matrix's, where the callers import it. `linear` and `orthogonal` hold
 *   what runs thousands of times on small matrices in the caller's buffers: ml-matrix took 5 to 20 times as long there.
 * - `definite` factors correlations that may depend on each other, and solves with one triangle alone. ml-matrix has neither.
 * - Roots, minima, quadrature and tables are ours: nothing that is kept has typed failures, domain edges, limits and restarts.
 * - Special functions and distributions are ours: the kept libraries bring 40 and more packages for these twenty functions. They are held to mpmath.
 * - Least squares is ours for limits, covariance and undetermined directions; it is held to certified regressions.
 * - Differential equations are ours for events and stiff networks. The explicit pair is of fifth order: to a tolerance of 1e-12 a method of
 *   eighth order would take a third of the evaluations.
 * - Sobol's sequence, hereditary equations and the Mittag-Leffler function have no kept library.
 *
 * Internal to the package: the other folders build on it, it is not a public entry point.
 */

export {
  besselI0Scaled,
  besselI1Scaled,
  besselJ0,
  besselJ1,
  besselJ1Zero,
  besselK0Scaled,
  besselK1Scaled,
} from './bessel.js'
export { regularisedBeta } from './beta.js'
export { chebyshev } from './chebyshev.js'
export { choleskyFactor, solveLower, solveLowerTransposed } from './definite.js'
export {
  chiSquareCdf,
  lognormalQuantile,
  normalCdf,
  normalPdf,
  normalQuantile,
  studentTCdf,
  triangularQuantile,
  truncatedNormalQuantile,
} from './distributions.js'
export { erf, erfc, erfcScaled } from './erf.js'
export { NumericError, type NumericFailure } from './error.js'
export { type Crossings, type FindRootsOptions, findRoots } from './find-roots.js'
export { gamma, lnGamma, reciprocalGamma, regularisedGammaP } from './gamma.js'
export { type GradedTimesOptions, gradedTimes, invertHereditary } from './hereditary.js'
export { type IntegrateOptions, integrate } from './integrate.js'
export { linearTable, monotoneTable, type Table } from './interpolate.js'
export { fitLeastSquares, type LeastSquaresFit, type Undetermined } from './levenberg.js'
export type { LeastSquaresProblem } from './levenberg-problem.js'
export { luFactor, luSolve, solveDefiniteInPlace, solveInPlace } from './linear.js'
export { type MinimiseOptions, type Minimum, minimise } from './minimise.js'
export { minimiseScalar, type ScalarMinimum, type ScalarMinimumOptions } from './minimise-scalar.js'
export { mittagLeffler } from './mittag-leffler.js'
export { solveNonStiff } from './ode-explicit.js'
export type { Derivative, OdeEvent, OdeProblem, StiffProblem } from './ode-problem.js'
export type { OdeEventRecord, OdeSolution } from './ode-solution.js'
export { solveStiff } from './ode-stiff.js'
export { householder, type SingularValues, singularValues } from './orthogonal.js'
export { chiSquareQuantile, studentTQuantile } from './quantiles.js'
export { type RandomStream, randomStream } from './random.js'
export { bracketRoot, type RootOptions, type ScalarFunction } from './root.js'
export { latinHypercube, type PointSequence, SOBOL_DIMENSIONS, sobolSequence } from './sampling.js'
