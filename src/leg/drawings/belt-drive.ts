import { type Circle, type Drawing, Figure, type Point, plain, polar, tangent, View } from '../../drawing/index.js'
import { type DrivenJoint, driveOf, jointWords } from '../numbers.js'
import { canDiameter } from '../parts/motors/fields.js'
import { type BeltSetting, beltSetting } from '../plans/belt-setting.js'
import { type Facts, resultSentence } from './facts.js'
import { isDriven } from './present.js'
import { amount, answerOf, checked, length, resultLines } from './words.js'

const CHECKS = [
  'belt.jump',
  'belt.teeth',
  'belt.working',
  'belt.peak',
  'belt.bend',
  'belt.heat',
  'belt.adjustment',
  'pulley.shear',
  'pulley.bending',
  'pulley.fatigue',
]

/** A belt drive along its axes, to scale: both pulleys, the spans with their pitch, and how far the motor moves to tension it. */
export function beltDriveDrawing(facts: Facts, joint: DrivenJoint): Drawing | undefined {
  if (!isDriven(facts, joint, 'belt')) return undefined
  const s = beltSetting(facts.leg, joint)
  const { adjustment, centreDistance: stated, smallTeeth, largeTeeth } = driveOf(facts.leg.x, joint, 'belt')
  const name = jointWords(joint)
  const pitch = s.pitchAt(s.pretension)
  const figure = new Figure({
    id: `belt-drive-${joint}`,
    title: `Belt drive of the ${name}, along its axes`,
    ...answerOf(`Belt drive of the ${name}`, facts.worst(CHECKS, joint)),
  })
  figure.view(
    front(s, { can: facts.mm(canDiameter, { joint }), adjustment: 1000 * adjustment, stated: 1000 * stated }, [smallTeeth, largeTeeth]),
  )
  const way = `Move the motor in to ${plain(1000 * (stated - adjustment), 4)} mm to lay the belt on. It lies straight at ${plain(1000 * s.straight, 5)} mm, and has its tension at ${plain(1000 * s.set, 5)} mm.`
  const sound = `A plucked span of ${plain(1000 * s.span, 4)} mm sounds ${plain(pitch, 4)} Hz at ${plain(s.pretension, 4)} N. ${plain(s.sideForce, 3)} N across its middle deflect it by ${plain(1000 * s.deflection, 3)} mm.`
  figure.text('Pitch circles; dash-two-dots: the small pulley at both ends of its adjustment. The place of the motor is assumed.')
  figure.results([way, sound, ...resultLines(facts, CHECKS, joint)])
  figure
    .say(way, sound, ...facts.checks(CHECKS, joint).slice(0, 1).map(resultSentence))
    .rows(
      amount('teeth of the small pulley', smallTeeth, '', 'document'),
      amount('teeth of the large pulley', largeTeeth, '', 'document'),
      length('pitch diameter of the small pulley', 1000 * s.small, 'geometry'),
      length('pitch diameter of the large pulley', 1000 * s.large, 'geometry'),
      amount('teeth of the belt', s.belt.teeth, '', 'document'),
      length('length of the belt', 1000 * s.length, 'geometry'),
      length('width of the belt', 1000 * s.belt.width),
      length('distance of the axes, belt straight', 1000 * s.straight, 'geometry'),
      length('distance of the axes, tensioned', 1000 * s.set, 'geometry'),
      length('adjustment either way', 1000 * adjustment),
      length('free span', 1000 * s.span, 'geometry'),
      amount('tension of each span', s.pretension, 'N', 'document'),
      amount('pitch of a plucked span', pitch, 'Hz', 'geometry'),
      amount('force on each axis at rest', s.axisForce, 'N', 'geometry'),
      ...facts.checks(CHECKS, joint).map(checked),
    )
  return figure.done()
}

function front(
  s: BeltSetting,
  { can, adjustment, stated }: { readonly can: number; readonly adjustment: number; readonly stated: number },
  [smallTeeth, largeTeeth]: readonly [number, number],
): View {
  const view = new View('Along the axes, joint below, motor above', { height: 400, template: true })
  const at = (distance: number): Point => [0, distance]
  const set = 1000 * s.set
  const large: Circle = { centre: [0, 0], radius: 500 * s.large }
  const small: Circle = { centre: at(set), radius: 500 * s.small }
  view
    .circle(large, 'thick', 'tone')
    .centre(large, 1.05)
    .circle({ ...small, radius: can / 2 }, 'hidden')
    .circle(small, 'thick', 'tone')
  for (const end of [stated - adjustment, stated + adjustment]) view.circle({ ...small, centre: at(end) }, 'other')
  view.centre(small, 1.6)
  const spans = ([1, -1] as const).map((side) => tangent(large, small, side, false))
  for (const span of spans) view.line(span, 'move')
  const [[a, b]] = spans as [readonly [Point, Point]]
  return view
    .dimension(at(stated - adjustment), at(stated + adjustment), 'left', `±${plain(adjustment)}`)
    .dimension([0, 0], at(set), 'left')
    .label([can * 0.35, set + can * 0.35], `motor Ø${plain(can)}`)
    .label([small.radius * 0.7, set + small.radius * 0.7], [`${smallTeeth} teeth`, `pitch Ø${plain(2 * small.radius, 4)}`])
    .label(polar([0, 0], large.radius, Math.PI / 8), [`${largeTeeth} teeth`, `pitch Ø${plain(2 * large.radius, 4)}`])
    .label([-(a[0] + b[0]) / 2, (a[1] + b[1]) / 2], [`span ${plain(1000 * s.span, 4)}`, `${plain(s.pitchAt(s.pretension), 4)} Hz`], {
      ink: 'move',
    })
    .label(
      [large.radius * 0.4, -large.radius * 0.7],
      [`belt ${s.belt.teeth} teeth`, `of ${plain(1000 * s.belt.pitch)}, ${plain(1000 * s.belt.width)} wide`],
      { end: 'none' },
    )
}
