import { add, type Point, polar } from '../../drawing/index.js'
import { fourBarKneePose } from '../../kinematics/index.js'
import { kneeLinkage } from '../parts/transmission/through-hip/fields.js'
import type { Facts } from './facts.js'
import { linkSizes, type Pose, pointsOf } from './pose.js'
import { hasRod } from './present.js'

/** Pins of the rod that drives the knee, the hip at the origin, mm; its angles as a builder measures them. */
export interface RodPose {
  readonly crankPin: Point
  readonly rockerPin: Point
  /** Angle of the crank from straight down, radians. */
  readonly crankAngle: number
  /** Acute angle between rod and rocker, radians. */
  readonly transmissionAngle: number
}

/** Where crank, rod and rocker are in a pose of the leg; absent without a rod, and where they do not reach each other. */
export function rodPose(facts: Facts, pose: Pose): RodPose | undefined {
  if (!hasRod(facts)) return undefined
  const linkage = kneeLinkage(facts.leg.x)
  const { crankAngle, rockerAngle, transmissionAngle, state } = fourBarKneePose.si({ ...linkage, kneeAngle: pose.knee })
  if (state === 'apart') return undefined
  // Angles of the linkage count from the direction hip to knee.
  const along = pose.hip - Math.PI / 2
  const { knee } = pointsOf(linkSizes(facts), pose)
  return {
    crankPin: polar([0, 0], 1000 * linkage.crank, along + crankAngle),
    rockerPin: add(knee, polar([0, 0], 1000 * linkage.rocker, along + rockerAngle)),
    crankAngle: pose.hip + crankAngle,
    transmissionAngle,
  }
}
