/**
 * Tools that work on any formula: solve for an input, sweep, sensitivity, uncertainty, optimise, fit.
 *
 * @module
 */
export { type KindAt, type ScalarOutput, type ScalarPath, scalarPaths, type Target, type Without } from './path.js'
export { type Solution, type SolveOptions, solveFor } from './solve.js'
