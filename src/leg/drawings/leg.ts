import { type Drawing, Figure, plain } from '../../drawing/index.js'
import type { CheckResult } from '../check-result.js'
import { placeOf } from '../report/content.js'
import { capital, type Facts, resultSentence, sign } from './facts.js'
import { landingStrip, stanceStrip } from './leg-poses.js'
import { type Scene, sceneOf } from './leg-scene.js'
import { drawPose } from './leg-view.js'
import { amount, angle, checked, degrees, length } from './words.js'

/** The leg at the worst pose of a check, by default the governing one, with a strip of poses over stance and landing. */
export function legDrawing(facts: Facts, check: CheckResult = facts.assessment.governing): Drawing {
  const scene = sceneOf(facts, check)
  const part = capital(placeOf(check))
  const figure = new Figure({
    id: 'leg',
    title: 'Leg in its hardest pose, seen from the robot’s left',
    answer: `${sign(check)} ${part}: ${check.reserve < 1 ? 'fails' : check.reserve < check.requiredReserve ? 'nearest to its limit, below its required reserve' : 'nearest to its limit, and holds'}`,
    fails: check.reserve < 1,
  })
  figure.text(`${check.caseTitle}. Forward is to the left.`)
  if (scene.assumed)
    figure.text('No pose can be calculated for this load case. The leg is bent at will, and its angles and arms are no results.')
  const arms = drawPose(figure, scene, check, part)
  figure.text(
    `Foot force ${plain(Math.hypot(...scene.force), 3)} N. Dashed circles: motors${placeOfMotors(scene)}. Dash-two-dots: line of action and reach. Weight of the links counts in the torques.`,
  )
  stanceStrip(figure, facts)
  landingStrip(figure, facts)
  const { hip, knee } = scene.pose
  figure
    .say(
      resultSentence(check),
      `The hip stands at ${plain(degrees(hip), 3)}°, the knee at ${plain(degrees(knee), 3)}°. The force on the foot is ${plain(scene.force[1], 3)} N up and ${plain(scene.force[0], 3)} N forward; its arm is ${plain(arms.hip, 3)} mm about the hip and ${plain(arms.knee, 3)} mm about the knee.`,
    )
    .rows(
      length('upper link', scene.links.upper),
      length('lower link', scene.links.lower),
      length('depth of the upper link', scene.links.upperDepth),
      length('depth of the lower link', scene.links.lowerDepth),
      angle('hip angle', hip, 'result'),
      angle('knee angle', knee, 'result'),
      amount('foot force, up', scene.force[1], 'N'),
      amount('foot force, forward', scene.force[0], 'N'),
      length('arm of the foot force about the hip', arms.hip, 'geometry'),
      length('arm of the foot force about the knee', arms.knee, 'geometry'),
      ...scene.joints.flatMap(({ joint, limits, torque }) => [
        angle(`${joint}, lowest angle`, limits[0]),
        angle(`${joint}, highest angle`, limits[1]),
        ...(torque === undefined ? [] : [amount(`${joint}, largest torque`, torque, 'N m')]),
      ]),
      checked(check),
    )
  return figure.done()
}

/** Assumed places of the motors. One that turns a joint on its own axis has no other place. */
const placeOfMotors = ({ throughHip, joints }: Scene): string => {
  if (throughHip) return ', both at assumed places on the body'
  const hip = joints[0]?.drive
  return hip === undefined || hip.distance === 0 ? '' : ', the hip’s at an assumed place'
}
