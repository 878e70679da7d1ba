/**
 * Tools that work on any formula: solve for an input, sweep, sensitivity, uncertainty, optimise, fit.
 *
 * @module
 */

export type { Design, Range } from './design.js'
export { type KindAt, type ScalarOutput, type ScalarPath, scalarPaths, type Target, type Without } from './path.js'
export { type Solution, type SolveOptions, solveFor } from './solve.js'
export { type Fixed, type Over, type SweepPlan, sweep } from './sweep.js'
export { type Column, Table } from './table.js'
