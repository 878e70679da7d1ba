import { type Note, Quantity } from '../units/index.js'
import type { CordDriveState } from './branch.js'
import { slackTorque, slipTorque } from './holding.js'
import { slackTorqueEstimate, slipTorqueEstimate } from './limits.js'
import { driveWindup, frictionlessWrapStiffness, spanStiffness } from './stiffness.js'

/** One result at either end of the friction interval. Which is the larger depends on the result: lost motion can even peak in between. */
export interface AtFriction<T> {
  readonly atLowFriction: T
  readonly atHighFriction: T
}

/** Windup at a torque, with bounds. */
export interface Windup {
  /** Angle of the joint against its unloaded place. */
  readonly windup: Quantity<'angle'>
  /** Slope of torque over angle. */
  readonly tangentStiffness: Quantity<'torsionalStiffness'>
  /** Torque over angle. */
  readonly secantStiffness: Quantity<'torsionalStiffness'>
  readonly tautTension: Quantity<'force'>
  readonly slackTension: Quantity<'force'>
  /** The torque, or the slip torque if that is less. */
  readonly torqueCarried: Quantity<'torque'>
  readonly state: 'tight' | 'slackSpan' | 'slips'
  /** Bounds the secant stiffness from below: all wrapped cord stretches freely. */
  readonly secantStiffnessAtLeast: Quantity<'torsionalStiffness'>
  /** Bounds tangent and secant stiffness from above: the wrapped cord gives nothing. */
  readonly stiffnessAtMost: Quantity<'torsionalStiffness'>
}

/** Torques at which a drive stops holding. */
export interface DriveLimits {
  /** Solved: the pinion slips under the cord. Absent for a clamped cord, which cannot. */
  readonly slipTorque: Quantity<'torque'> | undefined
  /** Estimate with equal span forces, lower than the solved one. */
  readonly slipEstimate: Quantity<'torque'> | undefined
  /** Solved: a span of a clamped cord goes loose. Absent for a cord held by friction alone, which slips before. */
  readonly slackTorque: Quantity<'torque'> | undefined
  /** Estimate with equal span forces of the torque at which a span goes loose if nothing slips. */
  readonly slackEstimate: Quantity<'torque'>
}

export function limitsOf(d: CordDriveState, about: (peak: number) => readonly Note[] | undefined): DriveLimits {
  const torque = (t: number, peak: number) => new Quantity(t, 'torque', undefined, about(peak))
  const slips = d.hold === 'frictionOnly'
  const solved = (slips ? slipTorque : slackTorque).si({ ...d, drumFriction: d.drumFriction })
  const limit = torque(solved.torque, solved.tautTension)
  return {
    slackTorque: slips ? undefined : limit,
    slipTorque: slips ? limit : undefined,
    slipEstimate: slips ? torque(slipTorqueEstimate.si(d), d.pretension) : undefined,
    slackEstimate: torque(slackTorqueEstimate.si(d), d.pretension),
  }
}

export function windupOf(d: CordDriveState, torque: number, about: (peak: number) => readonly Note[] | undefined): Windup {
  // The formula knows a taut and a slack side: torque the other way swaps them.
  const wraps = torque < 0 ? { drumWrapTaut: d.drumWrapSlack, drumWrapSlack: d.drumWrapTaut } : {}
  const y = driveWindup.si({ ...d, ...wraps, torque: Math.abs(torque), drumFriction: d.drumFriction, contactStiffness: d.contactStiffness })
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
    secantStiffnessAtLeast: stiffness(frictionlessWrapStiffness.si(d)),
    stiffnessAtMost: stiffness(spanStiffness.si({ ...d, microSlipLength: 0 })),
  }
}
