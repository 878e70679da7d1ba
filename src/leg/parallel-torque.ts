import type { ParallelTorqueSi } from '../kinematics/index.js'
import { placeOf } from './calculation.js'
import type { LegModel } from './leg-model.js'
import { JOINTS, type Joint, rangeOf } from './numbers.js'
import { type SpringLaw, springTorqueAt } from './parts/springs/law.js'
import { springLaw } from './parts/springs/values.js'
import { calculationFor } from './what-if.js'

/** The spring in parallel with the drive of a joint; absent where there is none. */
export function springLawOf(leg: LegModel, joint: Joint): SpringLaw | undefined {
  const calculation = calculationFor(leg)
  return calculation.get(springLaw, calculation.instances.implied(placeOf(calculation, { joint })) as never)
}

/** Torques of the springs of a leg on its joints; absent where it has none. */
export function parallelTorqueOf(leg: LegModel): ParallelTorqueSi | undefined {
  const [hip, knee] = JOINTS.map((joint) => springLawOf(leg, joint))
  if (hip === undefined && knee === undefined) return undefined
  return (out, angles) => {
    out[1] = springTorqueAt(hip, angles[1] as number)
    out[2] = springTorqueAt(knee, angles[2] as number)
  }
}

/** Angles at which the torque of a spring is looked at between the limits of its joint: close enough for its largest to a thousandth. */
const ANGLES = 60

/** Largest torque of the spring of a joint over its travel, without sign; 0 without a spring. */
export function mostSpringTorque(leg: LegModel, joint: Joint): number {
  const law = springLawOf(leg, joint)
  if (law === undefined) return 0
  const { lowest, highest } = rangeOf(leg.x, joint)
  const at = (i: number) => Math.abs(springTorqueAt(law, lowest + ((highest - lowest) * i) / ANGLES))
  return Math.max(...Array.from({ length: ANGLES + 1 }, (_, i) => at(i)))
}
