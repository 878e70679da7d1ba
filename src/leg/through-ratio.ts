import { calculationOf, placeOf } from './calculation.js'
import type { LegNumbers } from './leg-numbers.js'
import { signedRatio } from './parts/transmission/questions.js'
import { beltOrCordOf, SECOND_STAGE } from './second-stage.js'

/** Turns of the pulley on the hip axis for one of the knee, negative for a crossed cord; absent where neither belt nor cord drives the knee from there. */
export function throughRatio(x: LegNumbers): number | undefined {
  if (beltOrCordOf(x) === undefined) return undefined
  const calculation = calculationOf(x)
  return calculation.get(signedRatio, calculation.instances.implied(placeOf(calculation, { joint: SECOND_STAGE })) as never)
}
