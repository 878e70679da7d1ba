import type { In } from '../../src/units/index.js'

/** Texts read as a force, by the compiler (tests/types) and at run time (tests/units): one table for both. */
export const GOOD_FORCES = [
  '5 N',
  '-5 N',
  '+5 N',
  '5. N',
  '.5 N',
  '1e3 N',
  '1.5E-3 kN',
  '12 lbf',
  '0 N',
] as const satisfies readonly In<'force'>[]
