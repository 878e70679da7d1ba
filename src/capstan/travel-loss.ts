import type { CordDriveState } from './branch.js'
import { travelPath } from './travel-path.js'
import type { TravelEnd, TravelPoint } from './travel-point.js'

/** Points of a swing of torque, even in number. */
const POINTS_PER_SWING = 24
/** The tension of the wound cord settles within six cycles to a ten-thousandth, however short the wraps. */
const CYCLES = 8
/** Longest step of the joint, rad: a longer or a shorter one changes the loss by millionths. */
const RESOLUTION = 0.02

/**
 * Energy that friction takes in a settled cycle of a stroke under torque and a return under another one: the work of the
 * motor less the work at the joint. The stroke lies about mid travel and moves the joint against the torque.
 */
export function travelLoss(
  d: CordDriveState,
  torque: number,
  returnTorque: number,
  stroke: number,
): { readonly energy: number | undefined; readonly end: TravelEnd } {
  const from = (torque < 0 ? -1 : 1) * (stroke / 2)
  const angles = [from]
  const torques = [returnTorque]
  const swing = (angle: number, a: number, b: number) => {
    for (let i = 1; i <= POINTS_PER_SWING; i++) {
      angles.push(angle)
      torques.push(a + ((b - a) * i) / POINTS_PER_SWING)
    }
  }
  for (let i = 0; i < CYCLES; i++) {
    swing(from, returnTorque, torque)
    angles.push(-from)
    torques.push(torque)
    swing(-from, torque, returnTorque)
    angles.push(from)
    torques.push(returnTorque)
  }
  const { points, end } = travelPath(d, angles, torques, RESOLUTION)
  return { energy: end === 'followed' ? lastCycle(points, d.drumRadius / d.pinionRadius) : undefined, end }
}

/** Work lost in the last cycle of points: torque over the joint's angle less the pinion's share of it. */
function lastCycle(points: readonly TravelPoint[], ratio: number): number {
  const first = points.length - 2 * (POINTS_PER_SWING + 1) - 1
  const at = (i: number) => points[i] as TravelPoint
  const lag = (i: number) => at(i).jointAngle - at(i).pinionAngle / ratio
  let work = 0
  for (const start of [first, first + POINTS_PER_SWING + 1]) {
    // By parabolas over the torque while it swings, and by parts.
    for (let i = start; i < start + POINTS_PER_SWING; i += 2) {
      const swing = at(i + 2).torque - at(i).torque
      work += at(i + 2).torque * lag(i + 2) - at(i).torque * lag(i) - (swing / 6) * (lag(i) + 4 * lag(i + 1) + lag(i + 2))
    }
    const stroke = start + POINTS_PER_SWING
    work += at(stroke).torque * (lag(stroke + 1) - lag(stroke))
  }
  return work
}
