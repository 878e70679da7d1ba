import type { LegNumbers } from '../leg-numbers.js'
import { type DriveKind, type DrivenJoint, driveKindOf, drivenJoints, driveOf, JOINTS, type Joint } from '../numbers.js'
import { beltOrCordOf, SECOND_STAGE } from '../second-stage.js'
import { type MeasurementId, WHOLE } from './measurements.js'

/** Kinds of drive that a measurement is made of; absent where it is of the motor, of a spring or of the leg as a whole. */
const KINDS: { readonly [M in MeasurementId]?: readonly DriveKind[] } = {
  cordFriction: ['cord'],
  windup: ['cord', 'belt', 'gearbox'],
  pretension: ['cord'],
  pullOut: ['cord'],
  freePlay: ['belt', 'gear', 'gearbox'],
  efficiency: ['belt', 'gear', 'gearbox'],
  beltPitch: ['belt'],
  slipTorque: ['cord', 'belt'],
}

/** The link that a joint turns. */
const LINK_OF = { hip: 'upper', knee: 'lower' } as const
/** The counterweight of the link that a joint turns; absent where it has none. */
export const counterweightOf = ({ links }: LegNumbers, joint: Joint) => links[LINK_OF[joint]].counterweight
/** Path of that counterweight in the document. */
export const counterweightPath = (joint: Joint): string => `links.${LINK_OF[joint]}.counterweight`

/** The driven joints, and the second stage of a knee that belt or cord drives through the hip. */
export const drivesOf = (x: LegNumbers): readonly DrivenJoint[] =>
  beltOrCordOf(x) === undefined ? drivenJoints(x) : [...drivenJoints(x), SECOND_STAGE as DrivenJoint]

/** The joints that a measurement is made of. A gearbox whose sheet has no stiffness has none to correct, and a clamped cord does not slip. */
export const measuredJoints = (x: LegNumbers, id: MeasurementId): readonly DrivenJoint[] => {
  if (id === 'springTorque') return JOINTS.filter((joint) => x.joints[joint].spring !== undefined)
  if (id === 'weightTorque') return JOINTS.filter((joint) => counterweightOf(x, joint) !== undefined)
  return drivesOf(x).filter((joint) => {
    const kind = driveKindOf(x, joint)
    if (id === 'windup' && kind === 'gearbox') return driveOf(x, joint, 'gearbox').stiffness !== undefined
    if (id === 'slipTorque' && kind === 'cord') return driveOf(x, joint, 'cord').hold === 'frictionOnly'
    // The losses of a cord on its own drive are not learnt; those of a cord along the upper link are a number of the document.
    if (id === 'efficiency' && (joint as string) === SECOND_STAGE) return true
    return KINDS[id]?.includes(kind) === true
  })
}

/** Whether a measurement is of the leg as a whole, or of a motor that several joints have. */
export const isWhole = (id: MeasurementId): boolean => (WHOLE as readonly MeasurementId[]).includes(id)
