import type { LegNumbers } from '../leg-numbers.js'
import { type DriveKind, type DrivenJoint, driveKindOf, drivenJoints, driveOf } from '../numbers.js'
import { type MeasurementId, WHOLE } from './measurements.js'

/** Kinds of drive that a measurement is made of; absent where it is of the motor or of the leg as a whole. */
const KINDS: { readonly [M in MeasurementId]?: readonly DriveKind[] } = {
  cordFriction: ['cord'],
  windup: ['cord', 'belt', 'gearbox'],
  pretension: ['cord'],
  pullOut: ['cord'],
  freePlay: ['belt', 'gear', 'gearbox'],
  efficiency: ['belt', 'gear', 'gearbox'],
  beltPitch: ['belt'],
}

/** The joints that a measurement is made of. A gearbox whose sheet has no stiffness has none to correct. */
export const measuredJoints = (x: LegNumbers, id: MeasurementId): readonly DrivenJoint[] =>
  drivenJoints(x).filter((joint) => {
    const kind = driveKindOf(x, joint)
    if (id === 'windup' && kind === 'gearbox') return driveOf(x, joint, 'gearbox').stiffness !== undefined
    return KINDS[id]?.includes(kind) === true
  })

/** Whether a measurement is of the leg as a whole, or of a motor that several joints have. */
export const isWhole = (id: MeasurementId): boolean => (WHOLE as readonly MeasurementId[]).includes(id)
