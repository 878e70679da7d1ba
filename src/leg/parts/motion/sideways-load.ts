import { lateralFootForce } from '../../../kinematics/index.js'
import type { StrideInput } from './stride-moments.js'

/** The largest of what forces of the ground across the plane of the leg do to its links. */
export class SidewaysLoad {
  force = 0
  bending = 0
  twist = 0
  knee = 0
  hip = 0

  /** Takes the force across with one upright, at a knee angle. */
  take({ lateral, upperLink, lowerLink }: StrideInput, upright: number, kneeAngle: number): void {
    const force = lateral * upright
    if (!(force > 0)) return
    const { upperAtHip, upperAtKnee, upperTwist, kneeCouple, hipCouple } = lateralFootForce.si({ force, upperLink, lowerLink, kneeAngle })
    this.force = Math.max(this.force, force)
    this.bending = Math.max(this.bending, upperAtHip, upperAtKnee)
    this.twist = Math.max(this.twist, upperTwist)
    this.knee = Math.max(this.knee, kneeCouple)
    this.hip = Math.max(this.hip, hipCouple)
  }
}
