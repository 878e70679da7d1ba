import { field, reference, word } from '../../../leaves.js'
import type { LegNumbers } from '../../../leg-numbers.js'
import { NoValueError } from '../../../no-value.js'
import { seatedOf } from '../../ball-bearings/fields.js'
import { PIVOT_WORDS, type Pivot } from '../../ball-bearings/pivots.js'
import { rodOf } from '../through-hip/fields.js'

/** One of the arms that the rod is pinned to. */
export type Arm = 'crank' | 'rocker'
const armIn = (x: LegNumbers, pivot: Pivot) => {
  const found = pivot === 'crank' || pivot === 'rocker' ? rodOf(x)?.pivots?.[pivot] : undefined
  if (found === undefined) throw new NoValueError(`nothing is given of the ${PIVOT_WORDS[pivot]}`)
  return found
}
/** Why nothing is known of an arm; absent where the document gives it. */
export const noArm = (x: LegNumbers, arm: Arm): string | undefined =>
  rodOf(x) === undefined
    ? 'no rod drives the knee'
    : rodOf(x)?.pivots?.[arm] === undefined
      ? `nothing is given of the ${PIVOT_WORDS[arm]}`
      : undefined

export const armMaterial = reference('rodEnd.material', ['pivot'], 'material', (x, { pivot }) => armIn(x, pivot).material)
/** Cheeks that hold the pin. */
export const cheeks = word('rodEnd.cheeks', ['pivot'], (x, { pivot }) => armIn(x, pivot).cheeks)
/** Whether a ball bearing sits in the arm; the pin is then held by the eye of the rod. */
export const hasBearing = word(
  'rodEnd.hasBearing',
  ['pivot'],
  (x, { pivot }) => seatedOf(x, pivot) !== undefined && armIn(x, pivot).bearingIn === 'arm',
)
/** Distance of the rod's plane from the middle of the bearing of the knee's drum; 0 where the document does not say. */
export const drumOffset = field('rodEnd.drumOffset', [], 'length', (x) => rodOf(x)?.pivots?.drum?.offset ?? 0)
