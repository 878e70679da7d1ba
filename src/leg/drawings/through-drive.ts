import { type Drawing, Figure, plain } from '../../drawing/index.js'
import { squeezeIds } from '../parts/links/squeeze.js'
import { alongAtRest, ratio, shaftForce, signedRatio, stiffnessAtRest } from '../parts/transmission/questions.js'
import { kneeBeltChecks, kneeCordChecks } from '../parts/transmission/through-hip/stage-checks.js'
import { beltSetting } from '../plans/belt-setting.js'
import { cordCut } from '../plans/cord-cut.js'
import { beltOrCordOf, type ThroughBelt } from '../second-stage.js'
import { behindPinion, driveSizes, SECOND } from './drive-sizes.js'
import { driveFront, grooveHands, pinionView, windingSense } from './drive-views.js'
import { drumTravel } from './drum-travel.js'
import { type Facts, resultSentence } from './facts.js'
import { linkSizes } from './pose.js'
import { type SceneAlong, sceneAlong } from './scene-along.js'
import { tensionerBars } from './tensioner-bars.js'
import { beltAlongView } from './through-views.js'
import { amount, angle, answerOf, checked, degrees, length, resultLines, word } from './words.js'

const CHECKS = {
  belt: [...kneeBeltChecks.map(({ id }) => id), ...squeezeIds],
  cord: [...kneeCordChecks.map(({ id }) => id), ...squeezeIds],
} as const

/** Belt or cord that drives the knee from a pulley on the hip axis, to scale: both pulleys, spans, travel of the drum, and what presses the upper link together. */
export function throughDriveDrawing(facts: Facts): Drawing | undefined {
  const [s, through] = [sceneAlong(facts), beltOrCordOf(facts.leg.x)]
  if (s === undefined || through === undefined) return undefined
  const ids = CHECKS[s.kind]
  const name = `${s.kind === 'belt' ? 'Tooth belt' : 'Cord'} along the upper link`
  const link = linkSizes(facts).upper
  const at = { joint: SECOND, event: 'stand', air: 'normal', age: 'new' }
  const [n, rest, force, stiff] = [
    facts.get(signedRatio, at),
    facts.get(alongAtRest, at) ?? 0,
    facts.get(shaftForce, at),
    facts.get(stiffnessAtRest, at) ?? 0,
  ]
  const figure = new Figure({ id: 'through-drive', title: `${name}, seen from the robot’s left`, ...answerOf(name, facts.worst(ids)) })
  const said = through.kind === 'belt' ? belt(figure, facts, through, s, link) : cord(figure, facts)
  const turned = s.kind === 'belt' ? 'pulley' : 'drum'
  const times = plain(facts.get(ratio, at), 4)
  const turns = `The ${turned} on the hip axis turns with the hip, and ${times === '1' ? '' : `${times} times `}as far as the knee${n < 0 ? ', against it' : ''}.`
  const squeeze = `Both spans press the upper link together with ${plain(rest, 4)} N at rest, on the shelf too.`
  drumTravel(figure, facts, turned)
  figure.results([...said, turns, squeeze, ...resultLines(facts, ids)])
  figure
    .say(...said, turns, squeeze, ...facts.checks(ids).slice(0, 1).map(resultSentence))
    .rows(
      length(`radius of the ${turned} on the hip axis`, s.hip, 'geometry'),
      length(`radius of the ${turned} on the knee`, s.knee, 'geometry'),
      length('upper link, from hip to knee', link),
      word('spans', s.crossed ? 'crossed' : 'open'),
      amount(`turns of the ${turned} on the hip axis for one of the knee`, n, '', 'geometry'),
      amount('force along the upper link at rest', rest, 'N'),
      amount(`force on each ${turned}, standing`, force, 'N'),
      amount(`stiffness at the knee, ${turned} on the hip axis held`, stiff, 'N m/rad'),
      ...facts.checks(ids).map(checked),
    )
  return figure.done()
}

/** The dashed circle, where there is one. */
const dashed = (facts: Facts): string =>
  behindPinion(facts, SECOND) === undefined ? '' : ' Dashed circle: what the motor turns on the hip axis.'

function belt(
  figure: Figure,
  facts: Facts,
  { adjustment, hipTeeth, kneeTeeth }: ThroughBelt,
  s: SceneAlong,
  link: number,
): readonly string[] {
  const setting = beltSetting(facts.leg, SECOND)
  const { belt: own, pretension, set, straight } = setting
  const sizes = { hip: s.hip, knee: s.knee, link, adjustment: 1000 * adjustment, hipTeeth, kneeTeeth }
  figure.view(beltAlongView({ ...sizes, behind: behindPinion(facts, SECOND), setting }))
  const way = `Bring hip and knee together to ${plain(link - sizes.adjustment, 4)} mm to lay the belt on. It lies straight at ${plain(1000 * straight, 5)} mm, and has its tension of ${plain(pretension, 4)} N at ${plain(1000 * set, 5)} mm.`
  figure.text(`Pitch circles. Dash-two-dots: the knee pulley at both ends of its adjustment.${dashed(facts)}`)
  figure.rows(
    amount('teeth of the pulley on the hip axis', hipTeeth, '', 'document'),
    amount('teeth of the pulley on the knee', kneeTeeth, '', 'document'),
    amount('teeth of the belt', own.teeth, '', 'document'),
    length('pitch of the belt', 1000 * own.pitch),
    length('width of the belt', 1000 * own.width),
    length('length of the belt', 1000 * setting.length, 'geometry'),
    length('hip to knee, belt straight', 1000 * straight, 'geometry'),
    length('hip to knee, tensioned', 1000 * set, 'geometry'),
    length('adjustment either way', sizes.adjustment),
    length('free span', 1000 * setting.span, 'geometry'),
    amount('tension of each span', pretension, 'N', 'document'),
    amount('pitch of a plucked span', setting.pitchAt(pretension), 'Hz', 'geometry'),
  )
  return [way]
}

function cord(figure: Figure, facts: Facts): readonly string[] {
  const s = driveSizes(facts, SECOND)
  figure.view(driveFront(s))
  const sense = windingSense(s)
  figure.text(
    `The label of a span names the end of travel that it pulls to. Dash-two-dots: the anchors at the ends of travel.${dashed(facts)}`,
  )
  figure.view(pinionView(s))
  const exits = `The cord walks ${plain(s.walk, 3)} mm along the hip drum over the travel. If the grooves of the knee drum advance by one pitch a turn, it leaves its groove at ${plain(degrees(s.exit), 2)}° at both ends of travel.`
  tensionerBars(figure, facts, cordCut(facts.leg, SECOND, 0))
  figure.rows(
    length('cord diameter', s.cord),
    length('hip drum, bottom of the groove', 2 * s.pinion - s.cord, 'geometry'),
    length('knee drum, bottom of the groove', 2 * s.drum - s.cord, 'geometry'),
    amount('turns on the hip drum', s.turns, '', 'geometry'),
    length('length of the hip drum', s.pinionLength),
    length('groove pitch', s.pitch),
    length('bore of the knee drum', s.bore),
    word('cord on the hip drum', s.clamped ? 'clamped in the middle' : 'held by friction'),
    length('free span', s.span, 'geometry'),
    angle('wrap of each branch on the knee drum at mid travel', s.branch, 'geometry'),
    angle('least wrap at an end of travel', s.branch - s.travel / 2, 'geometry'),
    word('hand of the grooves of the knee drum', 'right', 'geometry'),
    word('hand of the grooves of the hip drum', s.crossed ? 'left' : 'right', 'geometry'),
    length('branches apart along the axis at mid travel', s.apart, 'geometry'),
    length('walk along the hip drum', s.walk, 'geometry'),
    angle('exit angle at the ends of travel', s.exit, 'geometry'),
    length('anchor post', s.post),
  )
  return [sense, grooveHands(s), exits]
}
