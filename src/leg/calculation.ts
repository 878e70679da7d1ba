import type { LegNumbers } from './leg-numbers.js'
import { structureOf } from './parts/structure.js'
import { ANSWERS } from './parts/transmission/answers.js'
import { Calculation, type CalculationOptions, type Index, type Named } from './run/index.js'

/** The calculation of a leg. */
export type LegCalculation = Calculation<LegNumbers>

/** Makes the calculation of a leg from its numbers. */
export const calculationOf = (x: LegNumbers, options: CalculationOptions = {}): LegCalculation =>
  new Calculation(structureOf(x), x, { answers: ANSWERS, ...options })

/** Handles of instances by name. */
export function placeOf({ instances }: LegCalculation, names: { readonly [X in Index]?: string }): Named {
  return Object.fromEntries(Object.entries(names).map(([index, name]) => [index, instances.handle(index as Index, name)]))
}
