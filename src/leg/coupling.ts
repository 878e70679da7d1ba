import { type DriveCoupling, driveCoupling, fourBarKneePose } from '../kinematics/index.js'
import { Quantity } from '../units/index.js'
import type { LegModel } from './leg-model.js'
import { kneeLinkage, rodOf } from './parts/transmission/through-hip/fields.js'
import { throughRatio } from './through-ratio.js'

const length = (x: number) => new Quantity(x, 'length')
const angle = (x: number) => new Quantity(x, 'angle')

/** How the drums of both drives turn with the joints; absent where each turns with its own. */
export function couplingOf({ x }: LegModel): DriveCoupling | undefined {
  const pulleys = throughRatio(x)
  if (pulleys !== undefined) return driveCoupling({ knee: 'cordFromHip', ratio: pulleys })
  const rod = rodOf(x)
  if (rod === undefined) return undefined
  const { lowest, highest } = x.joints.knee.range
  const rockerAngle = rod.rockerAngle + (lowest + highest) / 2
  const pose = fourBarKneePose.si({ ...kneeLinkage(x), kneeAngle: 0 })
  return driveCoupling({
    knee: 'fourBar',
    fourBar: {
      crank: length(rod.crank),
      coupler: length(rod.rod),
      rocker: length(rod.rocker),
      ground: length(x.links.upper.length),
      rockerAngleAtStraightKnee: angle(rod.rockerAngle),
      crankAngleAtStraightKnee: angle(pose.state === 'apart' ? rockerAngle : pose.crankAngle),
    },
  })
}
