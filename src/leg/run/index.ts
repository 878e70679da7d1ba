/**
 * The calculation of a leg as values that read each other: what a value reads is its sheet, its cache key and what a changed field makes stale.
 *
 * @module
 */
export { Calculation, type CalculationOptions } from './calculation.js'
export { type Cell, FAILED, KNOWN, type Named, type Where } from './cell.js'
export { constant } from './constant.js'
export type { End, Ends, Uncertain } from './ends.js'
export type { Structure } from './instances.js'
export { line } from './line.js'
export type { Link } from './links.js'
export type { Reader, Scenarios } from './scenarios.js'
export { closure, SheetBuilder as SheetMaker } from './sheet.js'
export type { Sheet, SheetLeaf, SheetStep } from './sheet-form.js'
export * from './value.js'
