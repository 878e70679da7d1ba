import { cordJoints, type DriveKind, type DrivenJoint, drivenBy, drivenJoints, hasCord, type Joint, jointOf } from '../numbers.js'
import { rodOf } from '../parts/transmission/through-hip/fields.js'
import type { Facts } from './facts.js'

/** Whether a joint is driven by cord. */
export const hasCordDrive = ({ leg }: Facts, joint: DrivenJoint): boolean => hasCord(leg.x, joint)

/** Whether a cord drives the sideways hip. */
export const hasSidewaysCord = ({ leg: { x } }: Facts): boolean => cordJoints(x).includes('sidewaysHip')

/** Whether a motor on a plate drives a joint through a kind of drive. */
export const isDriven = ({ leg: { x } }: Facts, joint: DrivenJoint, kind: DriveKind): boolean => drivenBy(x, kind).includes(joint)

/** Whether a rod drives the knee from a drum on the hip axis. */
export const hasRod = ({ leg }: Facts): boolean => rodOf(leg.x) !== undefined

/** Whether the knee is driven from a drum on the hip axis, through rod, belt or cord. */
export const isThroughHip = ({ leg: { x } }: Pick<Facts, 'leg'>): boolean => x.joints.knee.through !== undefined

/** Whether a joint turns on a pin in a boss. */
export const hasPin = ({ leg: { x } }: Facts, joint: Joint): boolean =>
  x.joints[joint].pin !== undefined && x.joints[joint].boss !== undefined

/** Whether a joint has a motor on a plate. */
export const hasMotor = ({ leg: { x } }: Facts, joint: DrivenJoint): boolean =>
  drivenJoints(x).includes(joint) && jointOf(x, joint).motor !== undefined && jointOf(x, joint).plate !== undefined

/** Whether the hip turns on a shaft. */
export const hasShaft = ({ leg: { x } }: Facts): boolean => x.joints.hip.shaft !== undefined

/** The group of bolts that holds the plate of the hip. */
export const stackGroup = ({ leg: { x } }: Facts): string | undefined => x.plates[x.joints.hip.plate ?? '']?.bolts

/** The group of bolts that holds the motor of a joint. */
export const motorGroup = ({ leg: { x } }: Facts, joint: DrivenJoint): string | undefined =>
  drivenJoints(x).includes(joint) ? jointOf(x, joint).motorBolts : undefined

/** Whether a group of bolts sits in that pattern. */
export const isPattern = ({ leg: { x } }: Facts, group: string, kind: 'rows' | 'circle'): boolean => x.bolts[group]?.pattern.kind === kind
