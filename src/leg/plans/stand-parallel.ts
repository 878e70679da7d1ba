import type { Leg } from '../document/describe.js'
import { counterweightPath } from '../learning/measured-joints.js'
import type { LogModel } from '../learning/model.js'
import { springModel, weightModel } from '../learning/model-parallel.js'
import { slipTorqueOf } from '../learning/model-slip.js'
import { expectationOf } from '../learning/priors.js'
import { legModel } from '../leg-model.js'
import type { LegNumbers } from '../leg-numbers.js'
import { type DrivenJoint, driveKindOf, driveOf, type Joint, jointWords, partOf, rangeOf } from '../numbers.js'
import { drivePath } from '../second-stage.js'
import { torque } from './bench.js'
import { withNumber } from './information.js'
import { measurement, type StandMeasurement, takenOff } from './stand-measurement.js'

/** First reading that the model of a log predicts for a row, with nothing wrong. @internal */
export const predictedAt = ({ parameters, predict }: LogModel, row: readonly number[]): number => {
  const start = new Map(parameters.map((parameter) => [parameter.id, parameter.start]))
  return predict((id) => start.get(id) as number, [row])[0] as number
}
/** Instruments of those logs. @internal */
export const NOTHING_WRONG = { 'torque gain': 1, 'angle zero': 1, 'current gain': 1 }

/** Torque at which the cord of a joint slips, or its belt jumps. */
export function slip(leg: Leg, x: LegNumbers, joint: DrivenJoint): StandMeasurement {
  const cord = driveKindOf(x, joint) === 'cord'
  const path = cord ? `${drivePath(joint)}.friction` : `belts.${driveOf(x, joint, 'belt').belt}.friction`
  const { low, high } = cord ? driveOf(x, joint, 'cord').friction : partOf(x.belts, driveOf(x, joint, 'belt').belt, 'belt').friction
  const gives = cord ? 'slips' : 'jumps a tooth'
  return measurement(
    leg,
    x,
    {
      id: 'slipTorque',
      joint,
      what: `torque at which the ${cord ? 'cord' : 'belt'} of the ${jointWords(joint)} ${gives}`,
      how: `${takenOff(x, joint)}Lock the motor, set the pretension of the document, and load the joint at mid travel until the ${cord ? 'cord' : 'belt'} ${gives}. Five readings, both ways, the pretension set anew before each. Stop at the torque of the hardest landing: a drive that holds it need not be pulled through.`,
      caution: 'The joint gives at once: a stop behind the lath, eye protection, and nobody in line with it.',
      predictedIs: 'torque at the joint, motor locked, newly set',
      corrects: path,
    },
    (n, which) => withNumber(n, path, which === 'low' ? low : high),
    (prepared) => torque(slipTorqueOf(prepared, joint)),
  )
}

/** Torque of the spring of a joint over its angle. */
export function springTorque(leg: Leg, x: LegNumbers, joint: Joint): StandMeasurement {
  const path = `joints.${joint}.spring.rate`
  const expected = expectationOf(legModel(x), path)
  const { lowest, highest } = rangeOf(x, joint)
  const own = (n: LegNumbers, angle: number) => predictedAt(springModel(legModel(n), 'springTorque', joint, NOTHING_WRONG), [angle, 0, 0])
  const hardest = Math.abs(own(x, lowest)) > Math.abs(own(x, highest)) ? lowest : highest
  return measurement(
    leg,
    x,
    {
      id: 'springTorque',
      joint,
      what: `torque of the spring of the ${joint} over the angle`,
      how: 'Take the drive of the joint loose. Hold the joint at nine angles over its travel, and read the torque with which it pushes: positive the way the angle grows. Go through the angles upward, then downward, and enter both, so that friction and a drift of the scale cancel. Then take the spring off and read the same angles again. Each row has one angle and both torques.',
      caution: 'A wound spring throws the link: eye protection, the coil covered, and the lath held by two hands or a stop.',
      predictedIs: `torque of the spring at ${hardest === lowest ? 'the lowest' : 'the highest'} angle of the joint`,
      corrects: path,
    },
    (n, which) => withNumber(n, path, expected[which]),
    ({ x: n }) => torque(own(n, hardest)),
  )
}

const LEVEL = Math.PI / 2

/** Torque of a counterweight over the angle of its link. */
export function weightTorque(leg: Leg, x: LegNumbers, joint: Joint): StandMeasurement {
  const path = `${counterweightPath(joint)}.beyond`
  const expected = expectationOf(legModel(x), path)
  return measurement(
    leg,
    x,
    {
      id: 'weightTorque',
      joint,
      what: `torque of the counterweight at the ${joint} over the angle of its link`,
      how: 'Weigh the counterweight with its screws first and write its mass into the document. Take the drive of the joint loose. Hold the link at six angles from hanging straight down, positive the way the joint angle grows, and read the torque with which it pushes that way. Go through the angles upward, then downward, and enter both. Then take the counterweight off and read the same angles again.',
      caution: 'Without its counterweight the link falls: hold it before a screw is turned.',
      predictedIs: 'torque of the counterweight with its link level',
      corrects: path,
    },
    (n, which) => withNumber(n, path, expected[which]),
    (prepared) => torque(predictedAt(weightModel(prepared, 'weightTorque', joint, NOTHING_WRONG), [LEVEL, 0, 0])),
  )
}
