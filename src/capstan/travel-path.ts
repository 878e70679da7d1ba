import { refuse } from '../units/index.js'
import type { CordDriveState } from './branch.js'
import { checkHistory, checkStep } from './history-limits.js'
import { Loop } from './travel-loop.js'
import type { TravelEnd, TravelPoint } from './travel-point.js'

/** Result of a travel simulation, SI numbers. */
export interface TravelPath {
  /** One point per step. The last is the end of the travel, short of its step unless all steps were followed. */
  readonly points: readonly TravelPoint[]
  readonly end: TravelEnd
  /** Whether some cord element has stayed at rest on the pinion throughout. */
  readonly elementStays: boolean
  /** Least wrap left on either drum track. */
  readonly leastDrumWrap: number
}

/**
 * Follows the whole loop through a history of torque and of the angle of the joint (or, `by` the `motor`, of the pinion). Cord winds on with the
 * tension it has, rests, and leaves on the far side through a slip zone. Unstretched length is kept to rounding. SI numbers.
 * Strain is small: unstretched length is (1 − ε) times length. At one pose the tensions differ from those of `loadPath` by about the strain times
 * the change of tension, because the pinion here turns under the cord by the windup.
 *
 * The travel ends where the pinion slips, an anchor or clamp is unwound, or a span keeps less than 1 % of the pretension: slack cord leaves its
 * groove, which this model does not follow. The last point holds angle and torque of that end.
 *
 * `resolution` is the longest step of the joint. Only the tension of cord that winds on is sampled by it.
 * Throws an `InputError` for a drive with a contact stiffness, with a compliant frame or without friction, and for a resolution that is not above zero.
 */
export function travelPath(
  d: CordDriveState,
  angle: ArrayLike<number>,
  torque: ArrayLike<number>,
  resolution: number,
  by: 'joint' | 'motor' = 'joint',
): TravelPath {
  checkHistory('capstan.travelPath', d, 'rigidFrame')
  if (!(resolution > 0 && resolution < Number.POSITIVE_INFINITY))
    refuse('capstan.travelPath', 'resolution', resolution, 'must be finite and above 0')
  const loop = new Loop(d, by)
  const points: TravelPoint[] = []
  let end: TravelEnd = 'followed'
  for (let i = 0; i < angle.length; i++) {
    const to = checkStep('capstan.travelPath', 'angle', i, angle[i] as number)
    end = loop.moveTo(to, checkStep('capstan.travelPath', 'torque', i, torque[i] as number), resolution)
    points.push(loop.point())
    if (end !== 'followed') break
  }
  return { points, end, elementStays: staysThrough(d, points), leastDrumWrap: loop.leastDrumWrap }
}

/** Whether some cord element rested on the pinion all the way through the points given. */
export function staysThrough(d: CordDriveState, points: readonly TravelPoint[]): boolean {
  const low = points.reduce((max, p) => Math.max(max, p.restLow), Number.NEGATIVE_INFINITY)
  const high = points.reduce((min, p) => Math.min(min, p.restHigh), Number.POSITIVE_INFINITY)
  return d.hold === 'clampedMidPinion' || low < high
}
