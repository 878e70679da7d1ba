import type { LegNumbers } from '../leg-numbers.js'
import { gaitNamed } from '../numbers.js'

/** Forces along the ground over the load on a foot, alike for all feet: forward, and to the left of the robot. */
export interface GroundWay {
  readonly traction: number
  readonly left: number
}

/**
 * Ways in which the ground holds the feet of a robot in a gait, as its load cases have it: pushing and braking as hard as they go, and pushed to either side, on a slope with
 * its lower side on the left uphill as well. At constant speed on firm level ground a stride needs no force along the ground on average: a foot brakes ahead of its hip and pushes
 * behind it, and feet of a diagonal pair do so together. Every instant of that lies between all feet pushing and all braking.
 */
export function groundWays(x: LegNumbers, id: 'walk' | 'trot', traction: number | undefined, slope: number): readonly GroundWay[] {
  const { traction: ends, lateral } = gaitNamed(x, id)
  const along = traction === undefined ? [ends.highest, ends.lowest] : [traction]
  const aside = lateral > 0 ? [-lateral, lateral] : [0]
  return [...new Set(along)].flatMap((traction) => aside.map((side) => ({ traction: traction, left: side - Math.tan(slope) })))
}
