import { calculationOf, type LegCalculation, placeOf } from '../calculation.js'
import { appliesTo, type Check } from '../cases/check.js'
import type { LegModel } from '../leg-model.js'
import type { DrivenJoint } from '../numbers.js'
import { driveMotion, footForce, groundForce, jointMotion, pinLoad, stride, stroke } from '../parts/motion/values.js'
import { pretensionSet } from '../parts/transmission/cord/fields.js'
import { rodChecks } from '../parts/transmission/through-hip/checks.js'
import { kneeBeltChecks, kneeCordChecks } from '../parts/transmission/through-hip/stage-checks.js'
import { beltOrCordOf, SECOND_STAGE } from '../second-stage.js'
import { throughRatio } from '../through-ratio.js'
import { rodGeometry } from './rod-geometry.js'

/** The foot force never counts as acting on a shorter arm than this share of the standing height: a leg straight over its foot takes no torque at all. */
const MIN_ARM = 0.1

/** A drive that stands still under any torque, in one calculation for all corners. */
export interface Blocked {
  readonly leg: LegModel
  readonly joint: DrivenJoint
  readonly calculation: LegCalculation
  /** Its place at a landing. */
  readonly here: never
  /** Belt or cord from the hip axis to the knee. */
  readonly stage: SecondStage | undefined
  /** Checks of rod, belt or cord along the upper link. */
  readonly along: readonly Check[]
  /** Imposes a torque of its drum. */
  readonly load: (torque: number) => undefined
}

/** Makes the calculation of a drive that stands still, its foot force growing with the torque on the arm that it has in walking. @internal */
export function blocked(leg: LegModel, joint: DrivenJoint): Blocked {
  const calculation = calculationOf(leg.x)
  const walk = calculation.instances.implied(placeOf(calculation, { leg: 'leg', joint, event: 'walk' })) as never
  // At the drum of the drive: of a knee that a rod drives the pins bear what the rod adds, too.
  const drumTorque = Math.abs(calculation.get(driveMotion, walk).torque)
  const min = MIN_ARM * leg.x.robot.standHeight
  const forces = [footForce, groundForce, pinLoad].map((of) => [of, 1 / Math.max(drumTorque / calculation.get(of, walk), min)] as const)
  const here = calculation.instances.implied(placeOf(calculation, { leg: 'leg', joint, event: 'drop' })) as never
  const own = calculation.get(driveMotion, here)
  const rod = joint === 'knee' ? rodGeometry(leg.x) : undefined
  const loads = rod === undefined ? undefined : calculation.get(stride, here)
  const ofRod = rod?.most((knee) => rod.forcePerTorque(knee)) ?? 0
  calculation.pin(stroke, here, 0)
  const stage = joint === 'knee' ? secondStageAt(leg, calculation) : undefined
  const along = [...(rod === undefined ? [] : rodChecks), ...(stage?.checks ?? [])].filter((check) => appliesTo(check, 'drop'))
  const load = (torque: number) => {
    calculation.pin(jointMotion, here, { ...own, torque: torque * (stage?.ratio ?? 1) })
    calculation.pin(driveMotion, here, { ...own, torque })
    for (const [of, perTorque] of forces) calculation.pin(of, here, perTorque * torque)
    // A blocked knee may pull the rod or push it, at the angle where it bears most.
    if (loads !== undefined) calculation.pin(stride, here, { ...loads, rodPull: ofRod * torque, rodPush: ofRod * torque })
    return undefined
  }
  return { leg, joint, calculation, here, stage, along, load }
}

/** Belt or cord from the hip axis to the knee: its checks, and the torque of the knee for one at its drum. */
interface SecondStage {
  readonly ratio: number
  readonly checks: readonly Check[]
  /** Sets its pretension, a cord's, to a share of what the document says. */
  readonly set: (share: number) => void
}

function secondStageAt(leg: LegModel, calculation: LegCalculation): SecondStage | undefined {
  const through = beltOrCordOf(leg.x)
  if (through === undefined) return undefined
  const here = calculation.instances.implied(placeOf(calculation, { joint: SECOND_STAGE, event: 'drop' })) as never
  calculation.pin(stroke, here, 0)
  return {
    ratio: Math.abs(throughRatio(leg.x) ?? 1),
    checks: through.kind === 'belt' ? kneeBeltChecks : kneeCordChecks,
    set: (share) => {
      if (through.kind === 'cord') calculation.set(pretensionSet, here, share * through.pretension)
    },
  }
}
