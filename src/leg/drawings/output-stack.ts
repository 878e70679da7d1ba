import { type Drawing, Figure, plain, rectangle, View } from '../../drawing/index.js'
import type { LegNumbers } from '../leg-numbers.js'
import { boxOf, type DrivenJoint, driveKindOf, driveOf, type Joint, jointWords } from '../numbers.js'
import { pinionRadius } from '../parts/transmission/cord/radii.js'
import { SECOND_STAGE } from '../second-stage.js'
import { type Facts, resultSentence } from './facts.js'
import { motorSizes } from './motor.js'
import { isDriven } from './present.js'
import { answerOf, checked, layers, length, METAL, OTHER_METAL, resultLines, word } from './words.js'

const CHECKS = ['outputBearing.radial', 'outputBearing.tilt', 'gearbox.rated', 'gearbox.peak', 'gearbox.speed']
/** Length of a gearbox over its diameter, which no document gives. */
const GEARBOX_LENGTH_RATIO = 0.5

/** Motor, gearbox if there is one, and link along the axis of a joint that the output of its drive turns itself. */
export function outputStackDrawing(facts: Facts, joint: DrivenJoint): Drawing | undefined {
  const kind = driveKindOf(facts.leg.x, joint)
  if (kind !== 'direct' && kind !== 'gearbox') return undefined
  if (!isDriven(facts, joint, kind)) return undefined
  const { overhang, radialLoad, tiltingMoment } = driveOf(facts.leg.x, joint, kind)
  const name = jointWords(joint)
  const load = carriedOf(facts, joint)
  const carried = load.name
  const alone = radialLoad !== undefined && tiltingMoment !== undefined
  const figure = new Figure({
    id: `output-stack-${joint}`,
    title: `${kind === 'direct' ? 'Direct drive' : 'Gearbox'} of the ${name}, section along its axis`,
    ...answerOf(`Output of the ${name}`, facts.worst(CHECKS, joint)),
  })
  figure.view(section(facts, joint, { overhang: 1000 * overhang, gearbox: kind === 'gearbox', load }))
  const says = alone
    ? `The bearings of the output carry the ${carried === 'leg' ? 'leg' : `${carried} on the hip axis`}. They bear ${plain(radialLoad, 3)} N across the axis and ${plain(tiltingMoment, 3)} N m of tilting. The plane of the ${carried} is ${plain(1000 * overhang)} mm beside their middle.`
    : `A pin, a shaft or bearings carry the ${carried} as well: their axis and that of the output must be one.`
  figure.text(says)
  figure.text(
    `The middle of the output bearings is drawn in the middle of the ${kind === 'direct' ? 'motor' : 'gearbox'}${kind === 'gearbox' ? ', whose length is assumed' : ''}.`,
  )
  figure.results(resultLines(facts, CHECKS, joint))
  const s = motorSizes(facts, joint as 'hip')
  figure
    .say(says, ...facts.checks(CHECKS, joint).slice(0, 1).map(resultSentence))
    .rows(
      length('motor diameter', s.can),
      length('motor length', s.canLength),
      length('plate thickness', s.plate),
      word('plate material', s.material),
      length(`plane of the ${carried} beside the output bearings`, 1000 * overhang),
      ...facts.checks(CHECKS, joint).map(checked),
    )
  return figure.done()
}

/** Part that the output turns, mm: its thickness along the axis, and how far it stands out above and below it. */
interface Carried {
  readonly name: 'leg' | 'crank' | 'pulley' | 'drum'
  readonly thick: number
  readonly above: number
  readonly below: number
}
function carriedOf(facts: Facts, joint: DrivenJoint): Carried {
  const { x } = facts.leg
  const { through } = x.joints.knee
  if (joint === 'knee' && through !== undefined) {
    const at = { joint: SECOND_STAGE as Joint }
    if (through.kind === 'rod') {
      const [thick, half] = [1000 * through.diameter, 1000 * through.diameter]
      return { name: 'crank', thick, above: half, below: 1000 * through.crank + half }
    }
    if (through.kind === 'cord') {
      const radius = facts.mm(pinionRadius, at)
      return { name: 'drum', thick: 1000 * (through.hipDrum.length as number), above: radius, below: radius }
    }
    const belt = x.belts[through.belt] as LegNumbers['belts'][string]
    const radius = (500 * through.hipTeeth * belt.pitch) / Math.PI
    return { name: 'pulley', thick: 1000 * belt.width, above: radius, below: radius }
  }
  const { width, depth } = boxOf(x, joint === 'knee' ? 'lower' : 'upper')
  const tall = 1000 * depth
  const half = Math.max(tall, motorSizes(facts, joint as 'hip').can) / 2
  return { name: 'leg', thick: 1000 * width, above: half, below: half + tall }
}

/** The plate's face at 0; the motor stands on it, the gearbox and the link follow to the right. */
function section(
  facts: Facts,
  joint: DrivenJoint,
  { overhang, gearbox, load }: { overhang: number; gearbox: boolean; load: Carried },
): View {
  const view = new View('Section along the axis of the joint', { height: 250 })
  const s = motorSizes(facts, joint as 'hip')
  const boxLength = gearbox ? s.can * GEARBOX_LENGTH_RATIO : 0
  const end = s.canLength + boxLength
  const bearings = gearbox ? s.canLength + boxLength / 2 : s.canLength / 2
  const { thick, above, below } = load
  const plane = bearings + overhang
  view.area(rectangle(-s.plate, -s.height / 2, 0, s.height / 2), { hatch: s.metal ? METAL : layers('upright', 5) })
  view.area(rectangle(0, -s.can / 2, s.canLength, s.can / 2), { fill: 'tone' })
  if (gearbox) view.area(rectangle(s.canLength, -s.can / 2, end, s.can / 2), { hatch: OTHER_METAL })
  const from = Math.max(end, plane - thick / 2)
  if (from > end) view.area(rectangle(end, -s.can / 6, from, s.can / 6), { fill: 'paper' })
  view.area(rectangle(from, -below, from + thick, above), { hatch: layers('flat', 6) })
  view.line(
    [
      [-s.plate - 4, 0],
      [from + thick + 6, 0],
    ],
    'axis',
  )
  for (const x of [bearings, plane])
    view.line(
      [
        [x, -s.can * 0.6],
        [x, s.can * 0.6],
      ],
      'other',
    )
  return view
    .dimension([bearings, s.can * 0.6], [plane, s.can * 0.6], 'above')
    .dimension([0, -s.can / 2], [s.canLength, -s.can / 2], 'below')
    .dimension([-s.plate - 2, -s.can / 2], [-s.plate - 2, s.can / 2], 'left', `Ø${plain(s.can)}`)
    .label([bearings, s.can * 0.2], 'middle of the output bearings')
    .label([plane, -s.can * 0.2], `plane of the ${load.name}`)
    .label([s.canLength * 0.3, s.can * 0.4], 'motor', { end: 'dot' })
    .label([-s.plate / 2, -s.height * 0.4], `plate, ${s.material}`, { end: 'dot' })
    .label([from + thick * 0.6, -0.8 * below], load.name === 'leg' ? 'link' : load.name, { end: 'dot' })
}
