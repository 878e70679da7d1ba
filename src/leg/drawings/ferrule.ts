import { type Drawing, Figure, plain, rectangle, View } from '../../drawing/index.js'
import { type DrivenJoint, jointWords } from '../numbers.js'
import { bond, bonded, ferruleThickness } from '../parts/transmission/cord/anchor.js'
import { diameter } from '../parts/transmission/cord/fields.js'
import { beltOrCordOf } from '../second-stage.js'
import { SECOND } from './drive-sizes.js'
import { type Facts, resultSentence } from './facts.js'
import { hasCordDrive } from './present.js'
import { answerOf, checked, length, METAL, resultLines, word } from './words.js'

const checksOf = (joint: DrivenJoint): readonly string[] => [joint === SECOND ? 'kneeFerrule.bond' : 'ferrule.bond']
const hasCord = (facts: Facts, joint: DrivenJoint) =>
  joint === SECOND ? beltOrCordOf(facts.leg.x)?.kind === 'cord' : hasCordDrive(facts, joint)

/** The bonded ferrule on a joint's cord, as a section; nothing where the cord ends otherwise. */
export function ferruleDrawing(facts: Facts, joint: DrivenJoint): Drawing | undefined {
  if (!hasCord(facts, joint) || !facts.get(bonded, { joint })) return undefined
  const cord = facts.mm(diameter, { joint })
  const [long, socket, wall] = [facts.mm(bond.length, { joint }), facts.mm(bond.socketDiameter, { joint }), facts.mm(ferruleThickness)]
  const locked = facts.get(bond.mechanicalLock, { joint })
  // The checks of the cord along the upper link belong to no joint.
  const [ids, of] = [checksOf(joint), joint === SECOND ? undefined : joint]
  const figure = new Figure({
    id: joint === SECOND ? 'ferrule-through' : `ferrule-${joint}`,
    title: `Bonded ferrule of the cord of the ${jointWords(joint)}, section along the cord`,
    ...answerOf(`Bonded ferrule of the ${jointWords(joint)}`, facts.worst(ids, of)),
  })
  figure.view(ferruleSection(cord, long, socket, wall))
  figure.text(
    locked
      ? 'A cone or a knot in the resin locks the cord as well.'
      : 'The bond alone holds: it must not be the only thing that keeps a part from flying off.',
  )
  figure.results(resultLines(facts, ids, of))
  return figure
    .say(
      `A ferrule with a bore of ${plain(socket)} mm is bonded over ${plain(long)} mm on a cord of ${plain(cord)} mm.`,
      ...facts.checks(ids, of).slice(0, 1).map(resultSentence),
    )
    .rows(
      length('bonded length', long),
      length('bore of the ferrule', socket),
      length('cord diameter', cord),
      length('wall of the ferrule', wall, 'assumed'),
      word('cone or knot in the resin', locked ? 'yes' : 'no'),
      ...facts.checks(ids, of).map(checked),
    )
    .done()
}

/** Ferrule, adhesive and cord cut along the cord, mm. */
function ferruleSection(cord: number, long: number, socket: number, wall: number): View {
  const outer = socket / 2 + wall
  const view = new View('Section along the cord', { height: 160 })
  for (const side of [1, -1] as const) {
    const band = (low: number, high: number) => (side === 1 ? rectangle(0, low, long, high) : rectangle(0, -high, long, -low))
    view.area(band(socket / 2, outer), { hatch: METAL })
    if (socket > cord) view.area(band(cord / 2, socket / 2), { hatch: { angle: 90, spacing: 3 }, line: 'fine' })
  }
  view.line(
    [
      [-long * 0.5, cord / 2],
      [long, cord / 2],
      [long, -cord / 2],
      [-long * 0.5, -cord / 2],
    ],
    'move',
  )
  view.line(
    [
      [-long * 0.55, 0],
      [long * 1.1, 0],
    ],
    'axis',
  )
  return view
    .dimension([0, -outer], [long, -outer], 'below')
    .dimension([0, -socket / 2], [0, socket / 2], 'left', undefined, 'Ø')
    .label([long * 0.7, outer], `ferrule, wall ${plain(wall)} assumed`)
    .label([long * 0.6, (cord + socket) / 4], 'adhesive', { end: 'dot' })
    .label([long * 0.5, -cord / 4], `cord Ø${plain(cord)}`, { end: 'dot', ink: 'move' })
}
