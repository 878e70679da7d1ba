import type { Chart } from '../../chart/index.js'
import { reachChart, threeJointLeg } from '../../kinematics/index.js'
import { Quantity } from '../../units/index.js'
import type { LegModel } from '../leg-model.js'
import { gaitNamed } from '../numbers.js'
import { footPathOf } from '../parts/motion/stride-moments.js'

/** The foot path of the walk in the area that the foot reaches. */
export function reach(leg: LegModel): Chart {
  const { links, joints, robot } = leg.x
  const length = (x: number) => new Quantity(x, 'length')
  const range = ({ lowest, highest }: { lowest: number; highest: number }) => ({
    lowest: new Quantity(lowest, 'angle'),
    highest: new Quantity(highest, 'angle'),
  })
  const kinematic = threeJointLeg({
    hipOffset: length(links.hipOffset),
    upperLink: length(links.upper.length),
    lowerLink: length(links.lower.length),
    limits: {
      sidewaysHip: range(joints.sidewaysHip?.range ?? { lowest: -1e-6, highest: 1e-6 }),
      hip: range(joints.hip.range),
      knee: range(joints.knee.range),
    },
  })
  const walk = gaitNamed(leg.x, 'walk')
  return reachChart(
    kinematic,
    footPathOf({ ...walk, hipOffset: links.hipOffset, height: robot.standHeight }, walk.stepLength / walk.speed / walk.dutyFactor),
    'Foot path of the walk within reach',
  )
}
