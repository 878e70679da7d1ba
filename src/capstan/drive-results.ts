import { type Note, Quantity } from '../units/index.js'
import { type CordDriveState, mirrored } from './branch.js'
import { driveWindup, frictionlessWrapStiffness, spanStiffness } from './stiffness.js'
import { lowerDirection } from './travel-limits.js'

/** One result at either end of the friction interval. Which is the larger depends on the result: lost motion can even peak in between. */
export interface AtFriction<T> {
  /** The result at the low end of the friction interval. */
  readonly atLowFriction: T
  /** The result at the high end of the friction interval. */
  readonly atHighFriction: T
}

/** Windup at a torque, with bounds. */
export interface Windup {
  /** Angle of the joint against its unloaded place. */
  readonly windup: Quantity<'angle'>
  /** Slope of torque over angle. */
  readonly tangentStiffness: Quantity<'torsionalStiffness'>
  /** Torque over angle; zero once the pinion slips. */
  readonly secantStiffness: Quantity<'torsionalStiffness'>
  readonly tautTension: Quantity<'force'>
  readonly slackTension: Quantity<'force'>
  /** The torque, or the slip torque if that is less. */
  readonly torqueCarried: Quantity<'torque'>
  /** Both spans tight; one with less than 1 % of the pretension; or the pinion slips at less than this torque. */
  readonly state: 'tight' | 'slackSpan' | 'slips'
  /** Bounds the secant stiffness from below: all wrapped cord stretches freely. */
  readonly secantStiffnessAtLeast: Quantity<'torsionalStiffness'>
  /** Bounds tangent and secant stiffness from above: the wrapped cord is rigid. */
  readonly stiffnessAtMost: Quantity<'torsionalStiffness'>
}

/** A pose of the joint under a torque of one sign. */
export interface LoadedPose {
  /** Angle of the joint from mid travel; positive lengthens the drum arc of the span that positive torque tightens. */
  readonly jointAngle: Quantity<'angle'>
  /** Sign of the torque. */
  readonly direction: 'positive' | 'negative'
}

/** Torques at which a drive stops holding: at one pose, or the least over the travel, of either direction. */
export interface DriveLimits {
  /** The lower of slip and slack torque. */
  readonly holdingTorque: Quantity<'torque'>
  /** Torque at which the pinion slips under the cord. Absent for a clamped cord, which cannot slip. */
  readonly slipTorque: Quantity<'torque'> | undefined
  /** Torque at which a span keeps less than 1 % of the pretension. Absent where the pinion slips before. */
  readonly slackTorque: Quantity<'torque'> | undefined
  /** Which of the two comes first. */
  readonly limit: 'slips' | 'slackSpan'
  /** Pose and direction of the least; over the travel the mirror image is as low. */
  readonly pose: LoadedPose
}

/** Limits at an angle of the joint, in the direction in which they are lower there. */
export function limitsOf(d: CordDriveState, jointAngle: number, about: (peak: number) => readonly Note[] | undefined): DriveLimits {
  const { slip, slack, taut, direction } = lowerDirection(atAngle(d, jointAngle))
  const notes = about(taut)
  const torque = (t: number) => (Number.isFinite(t) ? new Quantity(t, 'torque', undefined, notes) : undefined)
  return {
    holdingTorque: new Quantity(Math.min(slip, slack), 'torque', undefined, notes),
    slipTorque: torque(slip),
    slackTorque: torque(slack),
    limit: slip <= slack ? 'slips' : 'slackSpan',
    pose: { jointAngle: new Quantity(jointAngle, 'angle'), direction },
  }
}

/** The least limits over the travel: at the one of its ends where they are lower. Equal ends are one and the same mirrored. */
export function travelLimitsOf(d: CordDriveState, travel: number, about: (peak: number) => readonly Note[] | undefined): DriveLimits {
  const [high, low] = [limitsOf(d, travel / 2, about), limitsOf(d, -travel / 2, about)]
  return low.holdingTorque.si < high.holdingTorque.si ? low : high
}

/** The pose of a drive at an angle of the joint from mid travel. */
export const atAngle = (d: CordDriveState, jointAngle: number): CordDriveState => ({
  ...d,
  drumWrapTaut: d.drumWrapTaut + jointAngle,
  drumWrapSlack: d.drumWrapSlack - jointAngle,
})

/** Windup at one pose under torque of either sign. */
export function windupOf(d: CordDriveState, torque: number, about: (peak: number) => readonly Note[] | undefined): Windup {
  // The formula knows a taut and a slack side: torque the other way swaps them.
  const seen = torque < 0 ? mirrored(d) : d
  const y = driveWindup.si({ ...seen, torque: Math.abs(torque), drumFriction: d.drumFriction, contactStiffness: d.contactStiffness })
  const sign = torque < 0 ? -1 : 1
  const notes = about(y.tautTension)
  const stiffness = (k: number) => new Quantity(k, 'torsionalStiffness', undefined, notes)
  return {
    windup: new Quantity(sign * y.windup, 'angle', undefined, notes),
    tangentStiffness: stiffness(y.tangentStiffness),
    secantStiffness: stiffness(y.secantStiffness),
    tautTension: new Quantity(y.tautTension, 'force', undefined, notes),
    slackTension: new Quantity(y.slackTension, 'force', undefined, notes),
    torqueCarried: new Quantity(sign * y.torqueCarried, 'torque', undefined, notes),
    state: y.state,
    secantStiffnessAtLeast: stiffness(frictionlessWrapStiffness.si(seen)),
    stiffnessAtMost: stiffness(spanStiffness.si({ ...d, microSlipLength: 0 })),
  }
}
