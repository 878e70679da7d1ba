import { loadPath } from '../capstan/index.js'
import type { LegModel } from './leg-model.js'
import { type DrivenJoint, driveOf } from './numbers.js'
import { benchDrive } from './plans/bench.js'

/** Joint angles over a history of torques, motor locked at mid travel, from the leg's pretension. @internal */
export function windups(leg: LegModel, joint: DrivenJoint, axialRigidity: number, torques: readonly number[]): number[] {
  const { pinionRadius, drumRadius, span, pinionWrap, drumWrap } = benchDrive(leg, joint)
  const { pretension, hold } = driveOf(leg.x, joint, 'cord')
  const { friction } = leg.drives[joint]
  const state = {
    axialRigidity,
    pretension,
    pinionRadius,
    drumRadius,
    span,
    pinionWrap,
    drumWrapTaut: drumWrap,
    drumWrapSlack: drumWrap,
    friction,
    hold,
  }
  return loadPath(state, 'torque', torques).map(({ windup }) => windup)
}
