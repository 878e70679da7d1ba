import * as seated from '../parts/ball-bearings/fields.js'
import type { Pivot } from '../parts/ball-bearings/pivots.js'
import { housing } from '../parts/ball-bearings/seat.js'
import * as rodEnd from '../parts/transmission/rod-ends/fields.js'
import { rodOf } from '../parts/transmission/through-hip/fields.js'
import type { LegValues } from './leg-values.js'

/** Neighbour of a bearing on the same pin: the eye of the rod or the cheeks of the arm, mm. Its thickness comes from the pin in the document. */
function besideOf(facts: LegValues, pivot: Pivot, isInEye: boolean) {
  if (pivot === 'hip' || pivot === 'knee' || pivot === 'sidewaysHip') return undefined
  const { x } = facts.leg
  const pin = x.pins[rodOf(x)?.pin ?? '']
  const offset = facts.mm(seated.offset, { pivot })
  const [thickness, words] = isInEye
    ? [pin?.cheekThickness, 'arm that holds the pin']
    : [pin?.lugThickness, pivot === 'drum' ? 'rod' : 'eye of the rod']
  return {
    offset,
    thickness: thickness === undefined ? undefined : 1000 * thickness,
    words,
    both: isInEye && facts.get(rodEnd.cheeks, { pivot }) === 2,
  }
}

/** The ball bearing of a pin, of an end of the rod or of its drum in its seat, mm; absent where a plain pin turns. */
export function seatSizes(facts: LegValues, pivot: Pivot) {
  const at = { pivot }
  const found = seated.seatedOf(facts.leg.x, pivot)
  if (found === undefined) return undefined
  const { bearing, cap } = seated
  const isInEye = facts.get(seated.isInEye, at)
  const spacing = facts.get(seated.pairSpacing, at)
  const material = facts.named('material', seated.seatMaterial, at)
  return {
    bore: facts.mm(bearing.bore, at),
    outer: facts.mm(bearing.outerDiameter, at),
    width: facts.mm(bearing.width, at),
    spacing: spacing === undefined ? undefined : 1000 * spacing,
    housing: facts.mm(housing, at),
    /** Whether the document gives what is round the seat. */
    housingIs: facts.get(seated.isSideways, at) ? ('assumed' as const) : ('document' as const),
    interference: facts.mm(seated.seatInterference, at),
    retainedBy: facts.get(seated.retainedBy, at),
    material,
    metal: facts.isMetal(material),
    isInEye,
    /** Name of the part in its bore. */
    axle: pivot === 'drum' ? 'axle' : 'pin',
    beside: besideOf(facts, pivot, isInEye),
    cap:
      found.cap === undefined
        ? undefined
        : {
            thread: 1000 * facts.get(cap.thread, at).diameter,
            head: 1000 * facts.get(cap.head, at).headDiameter,
            torque: facts.get(cap.tighteningTorque, at),
            shoulder: facts.mm(cap.shoulderDiameter, at),
            rim: facts.mm(cap.rimDiameter, at),
            edge: facts.mm(cap.edgeDiameter, at),
          },
  }
}
export type SeatSizes = NonNullable<ReturnType<typeof seatSizes>>

/** Middles of the bearings along the axis. */
export const middlesOf = ({ spacing }: SeatSizes): readonly number[] => (spacing === undefined ? [0] : [-spacing / 2, spacing / 2])
