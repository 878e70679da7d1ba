import type { LegModel } from '../leg-model.js'
import { type DrivenJoint, driveOf, hasCord, type Joint } from '../numbers.js'
import { jointState, stageUnder } from '../what-if.js'
import { drumTorque } from '../workshop-lines.js'

/** Share of the torque that a belt or gearbox bears for a moment, for tests of the stand. */
const SHARE = 0.5

/** Torque of tests at the stand: of a cord half of what loosens its slack span, otherwise half of what the drive bears or what walking takes. */
export function windupTorque(leg: LegModel, joint: DrivenJoint): number {
  if (hasCord(leg.x, joint))
    return drumTorque.si({ pull: driveOf(leg.x, joint, 'cord').pretension, radius: leg.drives[joint as Joint].drumRadius })
  const air = leg.x.environment.assemblyTemperature
  const { blowTorque } = stageUnder(leg, { joint, torque: 0, stroke: 0, footForce: 0, air, age: 'new' })
  return blowTorque === undefined ? Math.abs(jointState(leg, 'walk', joint).drum.torque) : SHARE * blowTorque
}
