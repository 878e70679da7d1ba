/**
 * The calculation of a leg as values that read each other: what a value reads is its sheet, its cache key and what a changed field makes stale.
 *
 * @module
 */
export { Calculation, type CalculationOptions } from './calculation.js'
export { type Cell, FAILED, type Named } from './cell.js'
export type { Structure } from './instances.js'
export { closure, type Sheet, SheetMaker, type SheetStep } from './sheet.js'
export * from './value.js'
