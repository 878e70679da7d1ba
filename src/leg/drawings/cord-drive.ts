import { type Drawing, Figure, plain } from '../../drawing/index.js'
import { type DrivenJoint, jointWords, seenFrom } from '../numbers.js'
import { cordCut } from '../plans/cord-cut.js'
import { driveSizes } from './drive-sizes.js'
import { driveFront, grooveHands, pinionView, windingSense } from './drive-views.js'
import { type Facts, resultSentence } from './facts.js'
import { hasCordDrive } from './present.js'
import { tensionerBars } from './tensioner-bars.js'
import { amount, angle, answerOf, checked, degrees, length, resultLines, word } from './words.js'

const CHECKS = [
  'cord.slack',
  'cord.slip',
  'cord.working',
  'cord.peak',
  'cord.bend',
  'cord.sustained',
  'cord.shelf',
  'cord.heat',
  'cord.registry',
  'cord.wrap',
  'cord.clamp',
  'tensioner.travel',
  'anchor.bearing',
  'anchor.tearOut',
]

/** A cord drive along its axes: how the cord lies, winds and is held. */
export function cordDriveDrawing(facts: Facts, joint: DrivenJoint): Drawing | undefined {
  if (!hasCordDrive(facts, joint)) return undefined
  const s = driveSizes(facts, joint)
  const worst = facts.worst(CHECKS, joint)
  const figure = new Figure({
    id: `cord-drive-${joint}`,
    title: `Cord drive of the ${jointWords(joint)}, seen ${seenFrom(joint)}`,
    ...answerOf(`Cord drive of the ${jointWords(joint)}`, worst),
  })
  figure.view(driveFront(s))
  const senses = windingSense(s)
  const hands = grooveHands(s)
  figure.text(
    `The label of a span names the end of travel that it pulls to. Dash-two-dots: the anchors at the ends of travel. How far the posts stand inside the rim is assumed.`,
  )
  if (s.turning === 'drum')
    figure.text('The drum turns on the hip axis and carries the crank of the rod. Its angles are those of the crank, from straight down.')
  if (joint === 'hip' || s.turning === 'drum') figure.text('The place of the pinion above the hip is assumed.')
  figure.view(pinionView(s))
  const exits = `The cord walks ${plain(s.walk, 3)} mm along the pinion over the travel. If the grooves of the drum advance by one pitch a turn, it leaves its groove at ${plain(degrees(s.exit), 2)}° at both ends of travel, square at mid travel; a lead of ${plain(s.lead, 3)} mm a turn of the drum would keep it square.`
  tensionerBars(figure, facts, cordCut(facts.leg, joint, 0))
  figure.results([senses, hands, exits, ...resultLines(facts, CHECKS, joint)])
  figure
    .say(senses, hands, exits, ...facts.checks(CHECKS, joint).slice(0, 1).map(resultSentence))
    .rows(
      length('drum, centre of the cord', 2 * s.drum, 'geometry'),
      length('pinion, centre of the cord', 2 * s.pinion, 'geometry'),
      length('centre distance', s.distance),
      length('cord diameter', s.cord),
      amount('ratio', s.ratio, '', 'geometry'),
      word('arrangement', s.crossed ? 'crossed' : 'open'),
      word('cord on the pinion', s.clamped ? 'clamped in the middle' : 'held by friction'),
      length('free span', s.span, 'geometry'),
      amount('turns on the pinion', s.turns, '', 'geometry'),
      angle(`lay the cord with the ${s.turning} at`, s.middle, 'geometry'),
      angle('wrap of each branch on the drum at mid travel', s.branch, 'geometry'),
      angle('least wrap at an end of travel', s.branch - s.travel / 2, 'geometry'),
      word('hand of the grooves of the drum', 'right', 'geometry'),
      word('hand of the grooves of the pinion', s.crossed ? 'left' : 'right', 'geometry'),
      length('branches apart along the axis at mid travel', s.apart, 'geometry'),
      length('walk along the pinion', s.walk, 'geometry'),
      angle('exit angle at the ends of travel', s.exit, 'geometry'),
      length('lead of the drum that keeps the spans square', s.lead, 'geometry'),
      length('anchor post', s.post),
      ...facts.checks(CHECKS, joint).map(checked),
    )
  return figure.done()
}
