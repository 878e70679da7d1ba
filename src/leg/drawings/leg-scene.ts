import type { CheckResult } from '../check-result.js'
import { JOINTS } from '../numbers.js'
import { from, to } from '../parts/joints/fields.js'
import { stance } from '../parts/load/stance.js'
import { uprightForces } from '../parts/motion/stride-moments.js'
import { driveMotion, jointMotion, stride } from '../parts/motion/values.js'
import { mass } from '../parts/robot/fields.js'
import { counterweightOf } from './counterweight.js'
import type { Facts } from './facts.js'
import { poseOfCase } from './leg-poses.js'
import { linkSizes, pointsOf } from './pose.js'
import { isThroughHip } from './present.js'
import { rodPose } from './rod.js'
import { alongLines, sceneAlong } from './scene-along.js'
import { sceneDrive } from './scene-drive.js'
import { springSizes } from './spring-sizes.js'

/** Part of the leg that a check belongs to. */
export type Spot =
  | 'hipDrive'
  | 'kneeDrive'
  | 'hip'
  | 'knee'
  | 'hipMotor'
  | 'kneeMotor'
  | 'hipSpring'
  | 'kneeSpring'
  | 'upper'
  | 'lower'
  | 'foot'
  | 'rod'
  | 'along'

/** Where a check belongs. */
export function spotOf({ id, joint }: CheckResult): Spot {
  const at = joint === 'knee' ? 'knee' : 'hip'
  if (/^(rod|rodPin)\./.test(id)) return 'rod'
  if (/^knee(Belt|Pulley|Cord|Drum|Anchor|Ferrule|Tensioner)\./.test(id)) return 'along'
  if (/^(cord|drum|anchor|tensioner|ferrule|belt|pulley|gear|gearbox|outputBearing)\./.test(id)) return `${at}Drive`
  if (/^(motor|controller|motorBolt|supply)\./.test(id)) return `${at}Motor`
  if (id.startsWith('spring.')) return `${at}Spring`
  if (id.startsWith('upperLink')) return 'upper'
  if (id.startsWith('lowerLink')) return 'lower'
  return /^(toe|ground|robot|leg\.reach)/.test(id) ? 'foot' : at
}

/** Everything that is drawn of a leg in a pose, mm. */
export function sceneOf(facts: Facts, check: CheckResult) {
  const names = facts.case(check.case)
  const links = linkSizes(facts)
  const hardest = facts.tried(stride, names)
  const { pose, assumed } = poseOfCase(facts, names, hardest)
  const st = facts.tried(stance, names)
  const up =
    st === undefined || hardest === undefined || st.legShare === 0
      ? 0
      : Math.max(...uprightForces({ ...st, mass: facts.get(mass) }, hardest.hardestPhase))
  const traction =
    st === undefined ? 0 : Math.abs(st.tractionLowest) > Math.abs(st.tractionHighest) ? st.tractionLowest : st.tractionHighest
  const joints = JOINTS.map((joint) => ({
    joint,
    limits: [facts.get(from, { joint }), facts.get(to, { joint })] as const,
    torque: facts.tried(jointMotion, { ...names, joint })?.torque,
    /** Torque at the drum: that of the joint, unless the knee is driven from the hip axis. */
    drumTorque: facts.tried(driveMotion, { ...names, joint })?.torque,
    drive: sceneDrive(facts, names, joint),
    spring: springSizes(facts, joint),
  }))
  const rod = rodPose(facts, pose)
  return {
    rod,
    weights: { upper: counterweightOf(facts, 'upper'), lower: counterweightOf(facts, 'lower') },
    along: sceneAlong(facts),
    alongText: alongLines(facts, names),
    throughHip: isThroughHip(facts),
    names,
    links,
    pose,
    assumed,
    ...pointsOf(links, pose),
    force: [traction * up, up] as const,
    joints,
  }
}
export type Scene = ReturnType<typeof sceneOf>
