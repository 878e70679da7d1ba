import type { Figure, Point } from '../../drawing/index.js'
import { compare, comparisonAt } from '../assess/compare.js'
import { JOINTS } from '../numbers.js'
import { CHECKS } from '../parts/index.js'
import { stance } from '../parts/load/stance.js'
import { footForce, jointMotion } from '../parts/motion/values.js'
import type { Facts } from './facts.js'
import { linkSizes, type Pose, pointsOf, poseAt } from './pose.js'
import { hasCordDrive, hasMotor } from './present.js'
import { rodPose } from './rod.js'
import { type StripPose, short, stripBlock } from './strip.js'

const STANCE_POSES = 5
const LANDING_POSES = 4

/** Crank, rod and rocker of a pose as one line. */
function rodLine(facts: Facts, pose: Pose): readonly Point[] {
  const rod = rodPose(facts, pose)
  return rod === undefined ? [] : [[0, 0], rod.crankPin, rod.rockerPin, pointsOf(linkSizes(facts), pose).knee]
}

/** The stance of the walk in five poses, with the torques of the joints. */
export function stanceStrip(figure: Figure, facts: Facts): void {
  if (!JOINTS.every((joint) => hasMotor(facts, joint))) return
  const stride = facts.stride('walk')
  if (!stride.walkable) {
    figure.text('The leg cannot follow the foot path of the walk: no poses of the stance.')
    return
  }
  const { samples } = stride
  const standing = Array.from(samples.stance, (stands, i) => ({ stands, i })).filter(({ stands }) => stands === 1)
  const poses = Array.from({ length: STANCE_POSES }, (_, k): StripPose => {
    const { i } = standing[Math.round((k * (standing.length - 1)) / (STANCE_POSES - 1))]!
    const at = (column: Float64Array, axis: number) => column[3 * i + axis]!
    const pose = { hip: at(samples.jointAngle, 1), knee: at(samples.jointAngle, 2) }
    return {
      pose,
      rod: rodLine(facts, pose),
      force: [at(samples.groundReaction, 0), at(samples.groundReaction, 2)],
      numbers: [short(1000 * at(samples.foot, 0)), short(at(samples.jointTorque, 1)), short(at(samples.jointTorque, 2))],
    }
  })
  figure.block('Walk, from touch-down to lift-off', (y) => stripBlock(linkSizes(facts), poses, ['ahead, mm', 'hip, N m', 'knee, N m'], y))
  figure.rows(
    ...poses.map(
      ({ numbers: [ahead, hip, knee] }) => [`stance, foot ${ahead} mm ahead`, `hip ${hip}, knee ${knee}`, 'N m', 'result'] as const,
    ),
  )
}

/** The landing in four heights from touch-down to the most bent pose, with torque and reserve of the knee's drive. */
export function landingStrip(figure: Figure, facts: Facts): void {
  const { calculation } = facts
  const slack = hasCordDrive(facts, 'knee') ? CHECKS.find(({ id }) => id === 'cord.slack') : undefined
  const names = { event: 'dropEnd', air: 'normalStill', age: 'new', joint: 'knee' } as const
  const [first, last] = [facts.tried(stance, { event: 'drop' }), facts.tried(stance, { event: 'dropEnd' })]
  if (first === undefined || last === undefined) return
  const where = facts.where({ event: 'dropEnd' }) as never
  const poses = Array.from({ length: LANDING_POSES }, (_, k): StripPose | undefined => {
    const height = first.height + (k / (LANDING_POSES - 1)) * (last.height - first.height)
    const pose = poseAt(facts, 0, 1000 * height)
    if (pose === undefined) return undefined
    calculation.pin(stance, where, { ...last, height })
    try {
      const torque = facts.tried(jointMotion, names)?.torque
      const force = facts.tried(footForce, names) ?? 0
      const found = slack === undefined ? undefined : compare(calculation, comparisonAt(calculation, slack, 'knee', 'landing'))
      const reserve = typeof found === 'object' ? found.reserve : undefined
      const state = reserve === undefined ? '–' : `${short(Math.min(reserve, 100))}${reserve < 1 ? ' ✕' : ''}`
      return {
        pose,
        rod: rodLine(facts, pose),
        force: [0, force],
        numbers: [short(1000 * height), torque === undefined ? '–' : short(torque), ...(slack === undefined ? [] : [state])],
      }
    } finally {
      calculation.unpin(stance, where)
    }
  }).filter((pose) => pose !== undefined)
  if (poses.length === 0) return
  figure.block('Landing of the drop, from touch-down to the most bent pose', (y) =>
    stripBlock(linkSizes(facts), poses, ['hip at, mm', 'knee, N m', ...(slack === undefined ? [] : ['cord slack'])], y),
  )
  figure.rows(
    ...poses.map(
      ({ numbers: [height, torque, reserve] }) =>
        [
          `landing, hip ${height} mm high`,
          `knee ${torque} N m${reserve === undefined ? '' : `, reserve of the cord against slack ${reserve}`}`,
          '',
          'result',
        ] as const,
    ),
  )
}

/** The pose of a check's load case: the hardest of its stance, or standing. `assumed` where none can be calculated: then the leg is bent at will. */
export function poseOfCase(
  facts: Facts,
  names: { readonly event?: string },
  worst: { readonly hardestHip: number; readonly hardestKnee: number } | undefined,
): { readonly pose: Pose; readonly assumed: boolean } {
  if (worst !== undefined && Number.isFinite(worst.hardestKnee) && (worst.hardestHip !== 0 || worst.hardestKnee !== 0))
    return { pose: { hip: worst.hardestHip, knee: worst.hardestKnee }, assumed: false }
  const height = facts.tried(stance, names)?.height ?? facts.leg.x.robot.standHeight
  const pose = poseAt(facts, 0, 1000 * height)
  return pose === undefined ? { pose: { hip: -0.5, knee: 1 }, assumed: true } : { pose, assumed: false }
}
