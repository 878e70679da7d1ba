import { type Circle, type Drawing, Figure, type Point, plain, tangent, View } from '../../drawing/index.js'
import type { Joint } from '../numbers.js'
import { squeezeIds } from '../parts/links/squeeze.js'
import { alongAtRest, ratio, shaftForce, signedRatio, stiffnessAtRest } from '../parts/transmission/questions.js'
import { kneeBeltChecks, kneeCordChecks } from '../parts/transmission/through-hip/stage-checks.js'
import { SECOND_STAGE } from '../second-stage.js'
import { type Facts, resultSentence } from './facts.js'
import { linkSizes } from './pose.js'
import { type SceneAlong, sceneAlong } from './scene-along.js'
import { amount, answerOf, checked, length, resultLines, word } from './words.js'

const CHECKS = {
  belt: [...kneeBeltChecks.map(({ id }) => id), ...squeezeIds],
  cord: [...kneeCordChecks.map(({ id }) => id), ...squeezeIds],
} as const

/** Belt or cord that drives the knee from a pulley on the hip axis, to scale: both pulleys, spans, and what presses the upper link together. */
export function throughDriveDrawing(facts: Facts): Drawing | undefined {
  const s = sceneAlong(facts)
  if (s === undefined) return undefined
  const ids = CHECKS[s.kind]
  const name = `${s.kind === 'belt' ? 'Tooth belt' : 'Cord'} along the upper link`
  const link = linkSizes(facts).upper
  const at = { joint: SECOND_STAGE as Joint, event: 'stand', air: 'normal', age: 'new' }
  const [n, rest, force, stiff] = [
    facts.get(signedRatio, at),
    facts.get(alongAtRest, at) ?? 0,
    facts.get(shaftForce, at),
    facts.get(stiffnessAtRest, at) ?? 0,
  ]
  const figure = new Figure({ id: 'through-drive', title: `${name}, seen from the robot’s left`, ...answerOf(name, facts.worst(ids)) })
  figure.view(front(s, link))
  const turns = `The drum on the hip axis turns with the hip, and ${plain(facts.get(ratio, at), 4)} times as far as the knee${n < 0 ? ', against it' : ''}.`
  const squeeze = `Both spans press the upper link together with ${plain(rest, 4)} N at rest, on the shelf too.`
  figure.text('Pitch circles and centre lines; the drum that the motor turns on the hip axis is not drawn.').text(turns).text(squeeze)
  figure.results(resultLines(facts, ids))
  figure
    .say(turns, squeeze, ...facts.checks(ids).slice(0, 1).map(resultSentence))
    .rows(
      length('radius of the pulley on the hip axis', s.hip, 'geometry'),
      length('radius of the pulley on the knee', s.knee, 'geometry'),
      length('upper link, from hip to knee', link),
      word('spans', s.crossed ? 'crossed' : 'open'),
      amount('turns of the drum for one of the knee', n, '', 'geometry'),
      amount('force along the upper link at rest', rest, 'N'),
      amount('force on each pulley, standing', force, 'N'),
      amount('stiffness at the knee, drum held', stiff, 'N m/rad'),
      ...facts.checks(ids).map(checked),
    )
  return figure.done()
}

function front(s: SceneAlong, link: number): View {
  const view = new View('Hip above, knee below', { height: 380 })
  const hip: Circle = { centre: [0, 0], radius: s.hip }
  const knee: Circle = { centre: [0, -link], radius: s.knee }
  view.circle(hip, 'thick', 'tone').circle(knee, 'thick', 'tone').centre(hip, 1.1).centre(knee, 1.1)
  for (const side of [1, -1] as const) view.line(tangent(knee, hip, side, s.crossed), 'move')
  const beside = (centre: Point, radius: number): Point => [centre[0] + 0.7 * radius, centre[1] + 0.3 * radius]
  return view
    .line([hip.centre, knee.centre], 'axis')
    .dimension(hip.centre, knee.centre, 'left')
    .label(beside(hip.centre, s.hip), ['hip axis', `Ø${plain(2 * s.hip, 4)}`])
    .label(beside(knee.centre, s.knee), ['knee', `Ø${plain(2 * s.knee, 4)}`])
}
