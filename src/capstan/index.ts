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
export { arcCycleLoss, arcRecovery, arcWindup, microSlipLength } from './arc.js'
export * from './belt-and-gear.js'
export * from './bending.js'
export type { CordDriveState, LoopCompliance } from './branch.js'
export * from './charts.js'
export { type ComparedReductions, type ComparedTerm, compareReductions } from './compare.js'
export type { ReductionJob } from './compare-job.js'
export { beltBacklashPrior } from './compare-terms.js'
export * from './cord.js'
export * from './cord-ends.js'
export * from './cord-life.js'
export * from './cord-pull.js'
export * from './cord-table.js'
export { type CordDrive, cordDrive } from './drive.js'
export type { LoadHistory, TravelResult } from './drive-histories.js'
export type { CycleLosses, LossCycle, LossTerm } from './drive-losses.js'
export type { AtFriction, DriveLimits, LoadedPose, Windup } from './drive-results.js'
export type { CordDriveSpecification, FrictionRange } from './drive-specification.js'
export * from './drum-strength.js'
export * from './dynamics.js'
export * from './frame.js'
export * from './friction.js'
export * from './friction-range.js'
export * from './geometry.js'
export * from './grooves.js'
export * from './history-windup.js'
export { slackTorque, slipTorque } from './holding.js'
export * from './holding-chance.js'
export * from './knee-cord.js'
export * from './limits.js'
export { loadPath, type PathPoint } from './load-path.js'
export * from './loads.js'
export * from './losses.js'
export { type DriveWish, type ProposedDrive, proposeDrive } from './propose.js'
export * from './spur-gears.js'
export * from './steel-cable.js'
export * from './stick-slip.js'
export * from './stiff-cord.js'
export * from './stiffness.js'
export * from './take-up.js'
export * from './tooth-belts.js'
export { pretensionForTorque, travelLimits } from './travel-limits.js'
export type { TravelEnd, TravelPoint } from './travel-loop.js'
export { type TravelPath, travelPath } from './travel-path.js'
export * from './travel-range.js'
export type { AtPose, TravelSurvey } from './travel-survey.js'
export * from './winding.js'
