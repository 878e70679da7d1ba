import { beltJumpTorque, slipTorque, toothBeltLength } from '../../capstan/index.js'
import type { LegModel } from '../leg-model.js'
import { type DrivenJoint, driveKindOf, driveOf, type Joint, partOf } from '../numbers.js'
import { benchDrive } from '../plans/bench.js'
import { frictionOf, pretensionOf, rigidityOf } from './cord-parameters.js'
import { beltFrictionOf, beltTensionOf, jointPitchRadius } from './drive-parameters.js'
import { type Accuracy, errorOf } from './instrument-errors.js'
import type { LogModel, Parameter } from './model.js'

/** What a drive slips or jumps by: friction and pretension, and its torque for both. */
interface Slip {
  readonly friction: Parameter
  readonly pretension: Parameter
  readonly torque: (friction: number, pretension: number) => number
}

/** A cord that friction alone holds, at mid travel. */
function ofCord(leg: LegModel, joint: Joint): Slip {
  const { pinionRadius, drumRadius, span, pinionWrap, drumWrap } = benchDrive(leg, joint)
  const { start: axialRigidity } = rigidityOf(leg, joint)
  const arcs = { axialRigidity, pinionRadius, drumRadius, span, pinionWrap, drumWrapTaut: drumWrap, drumWrapSlack: drumWrap }
  return {
    friction: frictionOf(leg, joint),
    pretension: pretensionOf(leg, joint),
    torque: (friction, pretension) => slipTorque.si({ ...arcs, friction, pretension }).torque,
  }
}

/** A belt whose teeth climb. */
function ofBelt(leg: LegModel, joint: DrivenJoint): Slip {
  const { belt: name, smallTeeth, largeTeeth, centreDistance } = driveOf(leg.x, joint, 'belt')
  const { pitch, flankAngle } = partOf(leg.x.belts, name, 'belt')
  const { smallWrap } = toothBeltLength.si({ smallTeeth, largeTeeth, pitch, centreDistance })
  const largeRadius = jointPitchRadius(leg.x, joint)
  return {
    friction: beltFrictionOf(leg, joint),
    pretension: beltTensionOf(leg, joint).pretension,
    torque: (friction, pretension) => beltJumpTorque.si({ pretension, largeRadius, smallWrap, flankAngle, friction }),
  }
}

const slipOf = (leg: LegModel, joint: DrivenJoint): Slip =>
  driveKindOf(leg.x, joint) === 'cord' ? ofCord(leg, joint as Joint) : ofBelt(leg, joint)

/** Torque at which a new drive of the specification slips or jumps on the stand. @internal */
export function slipTorqueOf(leg: LegModel, joint: DrivenJoint): number {
  const { friction, pretension, torque } = slipOf(leg, joint)
  return torque(friction.start, pretension.start)
}

/** Torques at which a cord slips on its pinion, or a belt jumps a tooth, motor held. @internal */
export function slipModel(leg: LegModel, log: string, joint: DrivenJoint, accuracy: Accuracy): LogModel {
  const { friction, pretension, torque } = slipOf(leg, joint)
  const gain = errorOf(log, 'slipTorque', 'torque gain', accuracy)
  return {
    log,
    parameters: [friction, pretension, gain],
    learns: [friction.id],
    channels: 1,
    predict: (at, rows) => {
      const one = torque(at(friction.id), at(pretension.id)) * (1 + at(gain.id))
      return rows.map(() => one)
    },
    measured: ([read]) => [Math.abs(read!)],
  }
}
