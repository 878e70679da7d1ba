/**
 * Legs and chains: position of the foot, demand on each motor, and error of the foot.
 *
 * Conventions, everywhere in this module:
 * - Frame: x forward, y left, z up. A leg's frame is on the axis of its sideways hip.
 * - Angles are right-handed: sideways hip (abduction) about +x, hip and knee about +y. All are zero with the leg straight down. A positive hip angle swings
 *   the foot backward. A positive knee angle folds the shank backward (the knee points forward).
 * - The hip offset is signed: positive for a leg whose plane is left of the axis of its sideways hip.
 * - `footPush` is the force of the foot on the ground, `groundReaction` the force of the ground on the foot: opposite vectors.
 * - Joint space is the angles of the joints; actuator space is the angles of the drives' output drums, after their reduction; motor space is before it.
 * - Torque is positive along its own angle. Mechanical power is positive when the motor drives; what the load drives back is given apart.
 * - `.si` forms and `…Into(out, offset, …)` functions take and give plain SI numbers, check nothing and allocate nothing: they are fit for a 1 kHz
 *   control loop in other people's tooling.
 *
 * Results are estimates for trained judgement. A walking leg pinches, a dropped or jumping robot injures, a motor under test runs hot:
 * guard the machine, keep clear of it when it is powered, and follow local rules and licensed practice.
 *
 * @module
 */

// Where the foot is

export * from './leg.js'
export type { LegBranch } from './leg-branches.js'
export * from './leg-geometry-kernel.js'
export type { GivenAngles, GivenPoint } from './leg-inputs.js'
export * from './leg-kernel.js'
export { type LimitsSi, withinTurns } from './leg-limits.js'
export * from './leg-reach.js'
export type { AtSingularity, Singularity } from './leg-singularity.js'
export { LEG_JOINTS, type LegJoint, type ThreeJointLegSpecification } from './leg-specification.js'
export type { PerJoint, Vector3 } from './vectors.js'

// Reach and what the foot can do

export * from './leg-capability.js'
export * from './manipulability.js'
export * from './workspace.js'
export * from './workspace-section.js'

// Torque, masses and dynamics

export type { EffectiveMass } from './effective-mass.js'
export * from './foot-forces.js'
export { LegDynamics, legDynamics } from './leg-dynamics.js'
export * from './leg-dynamics-kernel.js'
export type { LegMasses } from './leg-masses.js'
export * from './leg-torque-kernel.js'
export * from './two-link.js'

// How hip and knee are driven

export * from './coupling.js'
export { CouplingKernel } from './coupling-kernel.js'
export type { DriveTrainSpecification } from './drive-train.js'
export * from './four-bar.js'
export { crankFromRockerInto, rockerFromCrankInto } from './four-bar-angles.js'
export { fourBarClearance } from './four-bar-clearance.js'
export { fourBarDeadPoint, fourBarKneePose } from './four-bar-knee-pose.js'
export { fourBarDriveRatio } from './four-bar-rates.js'
export type { FourBarSi, FourBarSpecification } from './four-bar-specification.js'
export * from './knee-drive.js'
export * from './knee-drive-inertia.js'
export * from './reduction.js'
export * from './rod-force.js'
export * from './sideways-hip.js'
export * from './spring-across-joint.js'

// Foot paths and gaits

export * from './foot-path.js'
export { FootPathKernel } from './foot-path-kernel.js'
export * from './gait.js'
export { FOUR_LEGS, GAITS } from './gait-phases.js'
export type * from './gait-result.js'
export * from './joint-move.js'
export * from './stride-timing.js'
export { LIFT_SHAPES, type LiftShape, matchedSwingPeaks, restToRestPeaks, SWING_SHAPES, type SwingShape } from './swing.js'

// Demand over a stride

export type { Demand, MotorDemand } from './motor-demand.js'
export * from './stride-demand.js'
export type { GroundReactionSi, ParallelTorqueSi, StrideFailure } from './stride-follower.js'
export type { StrideParts } from './stride-inputs.js'
export type { StrideSamples } from './stride-samples.js'
export * from './stride-table.js'

// Standing, walking and landing

export * from './damped-landing.js'
export * from './floating-robot.js'
export type { FloatingRobotSpecification } from './floating-robot-masses.js'
export * from './jump-landing.js'
export * from './lateral-force.js'
export * from './rotor-blow.js'
export * from './stability.js'
export * from './stance-force.js'
export * from './standing-feet.js'
export * from './walking-shares.js'

// Error and stiffness of the foot

export * from './foot-error.js'
export * from './foot-stiffness.js'
export * from './toes.js'

// Encoders

export * from './encoder.js'
export * from './encoder-effects.js'
export * from './magnet-error.js'
export * from './shaft-magnet.js'

// Serial chains

export * from './chain.js'
export type { DenavitHartenbergChain, ScrewChain } from './chain-build.js'
export * from './chain-geometry-kernel.js'
export * from './chain-inverse.js'
export * from './chain-inverse-request.js'
export * from './chain-kernel.js'
export type { GivenJointValues, InverseAnswer, InverseTarget, JointEffort, JointValue, Pose, ToolPush } from './chain-values.js'

// Charts

export * from './charts.js'
