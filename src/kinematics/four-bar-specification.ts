import type { Given, Inputs, Si } from '../formula/index.js'

export const SPECIFICATION = {
  /** Distance between the fixed pivots of crank and rocker. */
  ground: { kind: 'length', above: 0 },
  /** Length of the crank. */
  crank: { kind: 'length', above: 0 },
  /** Length of the coupler. */
  coupler: { kind: 'length', above: 0 },
  /** Length of the rocker. */
  rocker: { kind: 'length', above: 0 },
} as const satisfies Inputs

/** The four lengths of a four-bar linkage. */
export interface FourBarSpecification extends Given<typeof SPECIFICATION> {}

/** The lengths on SI numbers. */
export type FourBarSi = Si<typeof SPECIFICATION>
