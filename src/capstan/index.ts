/**
 * Cord on drums: friction, stiffness, pretension, geometry, ends, cords.
 *
 * Conventions. Every radius named `centreLineRadius`, `pinionRadius` or `drumRadius` reaches the cord's centre line: groove-bottom radius
 * plus half the cord. The pinion sits on the motor, the drum on the joint; the ratio is drum over pinion. A wrap angle counts every turn
 * of contact. Torque and windup are at the joint, motor locked, unless a name contains `motor`. Taut is the span that torque tightens, slack
 * the other; pretension is the tension of both at rest. Friction is an interval in life: the low end decides holding, and both ends
 * decide lost motion. Strain is small: its square is dropped.
 *
 * @module
 */

// Friction on drums

export * from './friction.js'
export * from './friction-range.js'
export * from './grooves.js'
export * from './stiff-cord.js'

// Slip and slack

export { slackTorque, slipTorque } from './holding.js'
export * from './holding-chance.js'
export * from './limits.js'

// Stiffness and windup

export { arcCycleLoss, arcRecovery, arcWindup, microSlipLength } from './arc.js'
export type { CordDriveState, LoopCompliance } from './branch.js'
export * from './frame.js'
export * from './history-windup.js'
export { loadPath } from './load-path.js'
export type { PathPoint } from './path-point.js'
export * from './stiffness.js'

// The whole drive

export { type CordDrive, cordDrive } from './drive.js'
export type { LoadHistory, TravelResult } from './drive-histories.js'
export type { AtFriction, DriveLimits, LoadedPose, Windup } from './drive-results.js'
export type { CordDriveSpecification, FrictionRange } from './drive-specification.js'
export * from './knee-cord.js'

// Travel under load

export { pretensionForTorque, travelLimits } from './travel-limits.js'
export { type TravelPath, travelPath } from './travel-path.js'
export type { TravelEnd, TravelPoint } from './travel-point.js'
export type { AtPose, TravelSurvey } from './travel-survey.js'

// Losses and vibration

export type { CycleLosses, LossCycle, LossTerm } from './drive-losses.js'
export * from './dynamics.js'
export * from './losses.js'
export * from './stick-slip.js'

// Geometry and winding

export * from './geometry.js'
export * from './travel-range.js'
export * from './winding.js'

// Pretension

export * from './plucked-span.js'
export * from './take-up.js'

// Forces on drums and shafts

export * from './cord-pull.js'
export * from './drum-strength.js'
export * from './loads.js'

// Cords and their ends

export * from './bending.js'
export * from './cord.js'
export * from './cord-creep.js'
export * from './cord-ends.js'
export * from './cord-life.js'
export * from './cord-table.js'
export * from './steel-cable.js'

// Gears and belts

export * from './belt-teeth.js'
export * from './gear-setting.js'
export * from './gear-teeth.js'
export * from './spur-gears.js'
export * from './tooth-belts.js'

// Choosing a drive

export { type ComparedReductions, type ComparedTerm, compareReductions } from './compare.js'
export type { ReductionJob } from './compare-job.js'
export { beltBacklashPrior } from './compare-terms.js'
export { type DriveWish, type ProposedDrive, proposeDrive } from './propose.js'

// Charts

export * from './charts.js'
