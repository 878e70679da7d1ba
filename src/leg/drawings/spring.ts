import { type Drawing, Figure, plain, type Row } from '../../drawing/index.js'
import type { Joint } from '../numbers.js'
import { springChecks } from '../parts/springs/checks.js'
import { extensionFront, extensionPin, extensionSide } from './extension-spring.js'
import { type Facts, resultSentence } from './facts.js'
import { type ExtensionSizes, springSizes, type TorsionSizes } from './spring-sizes.js'
import { torsionFront, torsionSection } from './torsion-spring.js'
import { amount, angle, answerOf, checked, degrees, length, resultLines, word } from './words.js'

const CHECKS = springChecks.map(({ id }) => id)

/** The spring of a joint: on its lugs or pins over the travel, and in section. */
export function springDrawing(facts: Facts, joint: Joint): Drawing | undefined {
  const s = springSizes(facts, joint)
  if (s === undefined) return undefined
  const name = `${s.kind === 'torsion' ? 'Torsion' : 'Extension'} spring of the ${joint}`
  const figure = new Figure({
    id: `spring-${joint}`,
    title: `${name}, seen from the robot’s left and in section`,
    ...answerOf(name, facts.worst(CHECKS, joint)),
  })
  if (s.kind === 'torsion') torsion(figure, s, joint)
  else extension(figure, s, joint, facts.isMetal(s.holder))
  figure.results(resultLines(facts, CHECKS, joint))
  figure
    .say(...facts.checks(CHECKS, joint).slice(0, 1).map(resultSentence))
    .rows(
      word('wire', WIRES[s.wireKind]),
      length('wire diameter', s.wire),
      length('mean coil diameter', s.coil),
      length('outer diameter of the coil', s.coil + s.wire, 'geometry'),
      amount('coils', s.coils, '', 'document'),
      word('material of what holds it', s.holder),
      ...(s.kind === 'torsion' ? torsionRows(s, joint) : extensionRows(s, joint)),
      ...facts.checks(CHECKS, joint).map(checked),
    )
  return figure.done()
}

const WIRES = {
  hardDrawn: 'hard-drawn',
  oilTempered: 'oil-tempered',
  musicWire: 'music wire',
  stainless: 'stainless',
} as const satisfies { readonly [wire in TorsionSizes['wireKind']]: string }

/** Angles of the travel at which a torsion spring is wound least and most. */
const woundBetween = ({ travel: [low, high], turns }: TorsionSizes): readonly [number, number] => (turns > 0 ? [low, high] : [high, low])

function torsion(figure: Figure, s: TorsionSizes, joint: Joint): void {
  const [least, most] = woundBetween(s)
  figure.view(torsionFront(s, joint, [least, most]))
  const sense = s.turns > 0 ? 'counter-clockwise' : 'clockwise'
  const hand = s.turns > 0 ? 'left' : 'right'
  const way = `From the fixed leg on, the wire runs ${sense}, seen from the robot’s left: wound ${hand}-handed where the fixed leg is the nearer one. A ${s.winds} angle of the ${joint} winds it.`
  const preload = `At ${plain(degrees(least), 3)}° it turns the joint with ${plain(Math.abs(s.state(least).torque), 3)} N m, at ${plain(degrees(most), 3)}° with ${plain(Math.abs(s.state(most).torque), 3)} N m, ${s.turns > 0 ? 'to smaller' : 'to larger'} angles.`
  figure
    .text(
      'The link that turns is drawn straight down. Dash-two-dots: the moving leg at other angles. The part of a coil sets the angle between the legs. Thin outline: lugs, their height assumed.',
    )
    .text(way)
    .text(preload)
  figure.view(torsionSection(s))
  figure.say(way, preload)
}

function torsionRows(s: TorsionSizes, joint: Joint): Row[] {
  const [least, most] = woundBetween(s)
  const at = (angle_: number) => `${joint} at ${plain(degrees(angle_), 3)}°`
  const windups = [least, most].map((angle) => s.state(angle).windup) as [number, number]
  return [
    length('fixed leg, from the axis to where it presses', s.fixedLeg),
    length('moving leg, from the axis to where it presses', s.movingLeg),
    length('length of each leg on its lug', s.seat),
    angle('angle of the joint where the legs just touch', s.free),
    word('wound by', `a ${s.winds} angle`),
    ...(s.mandrel === undefined ? [] : [length('mandrel diameter', s.mandrel)]),
    length('body length, unloaded', s.bodyLength(0), 'geometry'),
    length('body length, wound most', s.bodyLength(windups[1]), 'geometry'),
    length('inner diameter, wound most', s.innerDiameter(windups[1]), 'geometry'),
    amount('rate', s.rate, 'N m/rad'),
    angle(`wound, ${at(least)}`, windups[0], 'geometry'),
    angle(`wound, ${at(most)}`, windups[1], 'geometry'),
    amount(`torque on the joint, ${at(least)}`, s.state(least).torque, 'N m'),
    amount(`torque on the joint, ${at(most)}`, s.state(most).torque, 'N m'),
  ]
}

function extension(figure: Figure, s: ExtensionSizes, joint: Joint, isMetal: boolean): void {
  const [low, high] = s.travel
  const pulls = [low, high].map((angle_) => s.state(angle_).force)
  figure.view(extensionFront(s, joint))
  const pull = `It pulls with ${plain(pulls[0]!, 3)} N at ${plain(degrees(low), 3)}° and with ${plain(pulls[1]!, 3)} N at ${plain(degrees(high), 3)}°; its coils open at ${plain(s.initialTension, 3)} N.`
  figure.text(
    'Both pins are placed from the axis: the fixed one with what carries the joint upright, the moving one with the joint straight.',
  )
  figure.text(pull)
  figure.view(extensionSide(s))
  figure.view(extensionPin(s, isMetal))
  figure.text('Thin outline: the holder, assumed. The pin sticks out by one wire beyond the hook.')
  figure.say(pull)
}

function extensionRows(s: ExtensionSizes, joint: Joint): Row[] {
  return [
    length('free length between the insides of the hooks', s.freeLength),
    amount('initial tension', s.initialTension, 'N', 'document'),
    amount('rate', s.rate / 1000, 'N/mm'),
    length('mean radius of the hooks', s.hook, s.hookGiven ? 'document' : 'assumed'),
    length('radius of the bend into the hook', s.bend, s.bendGiven ? 'document' : 'assumed'),
    length('fixed pin above the axis', s.fixed[1]),
    length('fixed pin in front of the axis', -s.fixed[0]),
    length('moving pin below the axis', -s.straight[1]),
    length('moving pin in front of the axis', -s.straight[0]),
    length('pin diameter', s.pin),
    length('depth of each pin in its holder', s.depth),
    length('from the holder to the middle of the hook', s.arm),
    ...s.travel.flatMap((angle_) => {
      const { length: long, arm, force } = s.state(angle_)
      const at = `${joint} at ${plain(degrees(angle_), 3)}°`
      return [
        length(`length, ${at}`, long, 'geometry'),
        amount(`pull, ${at}`, force, 'N'),
        length(`arm about the axis, ${at}`, Math.abs(arm), 'geometry'),
      ]
    }),
  ]
}
