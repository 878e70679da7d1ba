import { NoValueError } from '../../no-value.js'
import type { DrivenJoint } from '../../numbers.js'
import { line, type Of, type Use, value } from '../../run/index.js'
import { stance } from '../load/stance.js'
import { isSprung } from '../springs/values.js'
import { linkage } from '../transmission/through-hip/fields.js'
import { isStage, isThroughHip } from '../transmission/through-hip/stage.js'
import type { strideLoads } from './stride.js'

import { stride, strideAlone } from './strides.js'

export { kneeSide, stride } from './strides.js'

/** Loads and motion of one joint in a stance. */
export interface JointMotion {
  readonly torque: number
  readonly shaftTorque: number
  readonly shaftRms: number
  readonly speed: number
  readonly loadedSpeed: number
  readonly lowest: number
  readonly highest: number
}
const STILL: JointMotion = { torque: 0, shaftTorque: 0, shaftRms: 0, speed: 0, loadedSpeed: 0, lowest: 0, highest: 0 }

/** Torques, speeds and angles of a joint in a stance. The sideways hip stands still, and holds its largest torque all the time. */
export const jointMotion = value('motion.joint', ['joint', 'stance'], (use, at): JointMotion => {
  if (use.nameOf('stance', at.stance) === 'unloaded') return STILL
  const s = use(stride)
  if (!Number.isFinite(s.hipLowest)) throw new NoValueError('the leg reaches no point of this stance within the length of its links')
  if (use.nameOf('joint', at.joint) === 'sidewaysHip')
    return { ...STILL, torque: s.sidewaysTorque, shaftTorque: s.sidewaysTorque, shaftRms: s.sidewaysTorque }
  return (use.nameOf('joint', at.joint) as DrivenJoint) === 'hip'
    ? {
        torque: s.hipTorque,
        shaftTorque: s.hipShaftTorque,
        shaftRms: s.hipShaftRms,
        speed: s.hipSpeed,
        loadedSpeed: s.hipLoadedSpeed,
        lowest: s.hipLowest,
        highest: s.hipHighest,
      }
    : {
        torque: s.kneeTorque,
        shaftTorque: s.kneeShaftTorque,
        shaftRms: s.kneeShaftRms,
        speed: s.kneeSpeed,
        loadedSpeed: s.kneeLoadedSpeed,
        lowest: s.kneeLowest,
        highest: s.kneeHighest,
      }
})

/** Loads and motion of the drum of a joint's drive in a stride. */
function atDrum(joint: DrivenJoint, own: JointMotion, s: ReturnType<(typeof strideLoads)['si']>): JointMotion {
  if (s.kneeDriven === 'no') throw new NoValueError('the rod of the knee is at a dead point in this stance, or its links do not reach')
  return joint === 'hip'
    ? { ...own, torque: s.hipDriveTorque, shaftTorque: s.hipDriveShaftTorque, shaftRms: s.hipDriveShaftRms }
    : {
        torque: s.kneeDriveTorque,
        shaftTorque: s.kneeDriveShaftTorque,
        shaftRms: s.kneeDriveShaftRms,
        speed: s.kneeDriveSpeed,
        loadedSpeed: s.kneeDriveLoadedSpeed,
        lowest: s.kneeDriveLowest,
        highest: s.kneeDriveHighest,
      }
}

/** What a stance means for belt or cord from the hip axis to the knee: the motion of the knee, and its torque less that of a spring there. */
function ofStage(use: Use<'stance'>): JointMotion {
  const knee = use.at(jointMotion, { joint: use.all('joint')[1] as Of<'joint'> })
  const leg = use.all('leg')[0] as Of<'leg'>
  if (!use.at(isSprung, { leg })) return knee
  const torque = use.at(stride, { leg }).kneeHeldTorque
  return { ...knee, torque, shaftTorque: torque }
}

/**
 * What a stance means for the drum of a joint's drive: that of the joint, unless the knee is driven through the hip, whose second stage moves the knee itself, or a spring stands beside the drive. On the
 * shelf the drive of a leg with springs is assumed to hold the leg in its standing pose against them.
 */
export const driveMotion = value('motion.drive', ['joint', 'stance'], (use, at): JointMotion => {
  if (isStage(use, at.joint)) return ofStage(use)
  const own = use(jointMotion)
  if (use.nameOf('joint', at.joint) === 'sidewaysHip') return own
  const aside = use.nameOf('stance', at.stance) === 'unloaded'
  if (use(isSprung)) {
    const drum = atDrum(use.nameOf('joint', at.joint) as DrivenJoint, own, use(stride))
    return aside ? { ...STILL, torque: drum.torque } : drum
  }
  if (!isThroughHip(use) || aside) return own
  return atDrum(use.nameOf('joint', at.joint) as DrivenJoint, own, use(stride))
})
/** The same with the springs broken. */
export const driveAlone = value('motion.driveAlone', ['joint', 'stance'], (use, at): JointMotion => {
  const own = use(jointMotion)
  return isThroughHip(use) ? atDrum(use.nameOf('joint', at.joint) as DrivenJoint, own, use(strideAlone)) : own
})

/** Torque at the drum of largest magnitude in an event, with its sign. */
export const driveTorque = value('motion.driveTorque', ['joint', 'event'], (use) => use(driveMotion).torque)

const magnitude = line('magnitude of a torque', { torque: 'torque' }, 'torque', '|torque|', ({ torque }) => Math.abs(torque))
/** Magnitude of the torque at the drum in an event. */
export const driveLoad = value('motion.driveLoad', ['joint', 'event'], (use) => use.run(magnitude, { torque: use(driveTorque) }))

/** Joint torque of largest magnitude in an event, with its sign. */
export const jointTorque = value('motion.jointTorque', ['joint', 'event'], (use) => use(jointMotion).torque)

const through = line('angle run through', { lowest: 'angle', highest: 'angle' }, 'angle', 'max(0, highest − lowest)', (x) =>
  Math.max(0, x.highest - x.lowest),
)
/** Angle that the drum of a joint's drive runs through under load. */
export const stroke = value('motion.stroke', ['joint', 'event'], (use) => {
  const { lowest, highest } = use(driveMotion)
  return use.run(through, { lowest, highest })
})

/** Largest force of the ground on the foot, across the ground. */
export const footForce = value('motion.footForce', ['leg', 'event'], (use) => (use(isLoaded) ? use(stride).vertical : 0))
/** Largest force of the ground on the foot in the plane of the leg. */
export const groundForce = value('motion.groundForce', ['leg', 'event'], (use) => (use(isLoaded) ? use(stride).ground : 0))
/** Force that the links pass through the pins of hip and knee: that of the ground, with a rod that of the knee pin, which the rod adds to. */
export const pinLoad = value('motion.pinLoad', ['leg', 'event'], (use) => {
  // On the shelf a rod holds the leg against its springs.
  if (use(linkage) === undefined || !(use(isLoaded) || use(isSprung))) return use(groundForce)
  return use(stride).kneePin
})
/** Magnitude of the torque of a joint. */
export const jointLoad = value('motion.jointLoad', ['joint', 'event'], (use) => use.run(magnitude, { torque: use(jointTorque) }))
/** Whether the foot bears load. */
export const isLoaded = value('motion.isLoaded', ['event'], (use) => use(stance).legShare > 0)
