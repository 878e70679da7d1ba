import { type Curve, type Drawing, Figure, type Plot, type Point, plain, plotBlock, type Row } from '../../drawing/index.js'
import type { CheckResult } from '../check-result.js'
import { type DrivenJoint, jointWords } from '../numbers.js'
import * as bolts from '../parts/bolts/fields.js'
import { heldFor } from '../parts/load/durations.js'
import { airTemperature } from '../parts/load/fields.js'
import { softening } from '../parts/materials/values.js'
import * as motor from '../parts/motors/fields.js'
import { heat } from '../parts/motors/heat.js'
import { allowableTemperature } from '../parts/plates/checks.js'
import * as plate from '../parts/plates/fields.js'
import { plateProfile } from '../parts/plates/profile.js'
import { type Facts, resultSentence } from './facts.js'
import { hasMotor, isPattern, motorGroup } from './present.js'
import { amount, answerOf, celsius, checked, length } from './words.js'

const CHECKS = ['motor.plate']
/** Faces nearer to each other than this part of the rise are drawn as one curve. */
const SAME_CURVE = 0.03
/** A limit above the air by more than this many times the highest rise of the plate is beyond the plot. */
const BEYOND_PLOT = 4

/** Radius of the bolts of a motor, mm; nothing where they are not on a circle. */
function boltRadius(facts: Facts, joint: DrivenJoint): number | undefined {
  const group = motorGroup(facts, joint)
  return group !== undefined && isPattern(facts, group, 'circle') ? facts.mm(bolts.circleDiameter, { boltGroup: group }) / 2 : undefined
}

/** The value of a curve at a place, on the straight line between its neighbours. */
function valueAt(points: readonly Point[], x: number): number {
  const i = Math.max(
    1,
    points.findIndex(([at]) => at >= x),
  )
  const [[x0, y0], [x1, y1]] = [points[i - 1]!, points[i]!]
  return y0 + ((y1 - y0) * (x - x0)) / (x1 - x0)
}

/** Failure of a plate above the limit of its material: a print softens, a metal loses the strength of its temper. */
const beyondLimit = (facts: Facts, at: { readonly joint: DrivenJoint }): 'softens' | 'weakens' =>
  facts.isMetal(facts.named('material', plate.material, at)) ? 'weakens' : 'softens'

/** Temperatures of a plate in degrees Celsius over its radius in millimetres. */
function profileOf(facts: Facts, at: { readonly joint: DrivenJoint }) {
  const { radii, motorFace, freeFace, ring } = facts.get(plateProfile, at)
  const course = (face: readonly number[]) => face.map((kelvin, i): Point => [1000 * radii[i]!, celsius(kelvin)])
  return { motorFace: course(motorFace), freeFace: course(freeFace), ring: celsius(ring) }
}

/** Text for a plate without a curve: its motor does not settle, or is as warm as the air. */
function withoutProfile(facts: Facts, figure: Figure, joint: DrivenJoint, worst: CheckResult, unsettled: string | undefined): Drawing {
  const why = unsettled === undefined ? 'The plate is as warm as the air' : `There is no steady temperature: ${unsettled}`
  return figure
    .text(`${worst.caseTitle}.`)
    .text(`${why}.`, unsettled === undefined ? 'ink' : 'bad')
    .say(`${worst.caseTitle}. ${why}.`, ...facts.checks(CHECKS, joint).slice(0, 1).map(resultSentence))
    .rows(...facts.checks(CHECKS, joint).map(checked))
    .done()
}

/** Whether a limit is too far above the hottest point of a plate to be drawn with it. */
const isBeyond = (allowed: number, face: readonly Point[], air: number) =>
  Number.isFinite(allowed) && allowed - air > BEYOND_PLOT * (Math.max(...face.map(([, y]) => y)) - air)

/** The plot of a plate: its faces, the limit of its material, the edge of the ring and its bolts. */
function plotOf(facts: Facts, at: { readonly joint: DrivenJoint }, air: number, allowed: number): Plot {
  const { motorFace, freeFace } = profileOf(facts, at)
  const outer = facts.mm(motor.mountOuterDiameter, at) / 2
  const bolt = boltRadius(facts, at.joint)
  const top = Math.max(...motorFace.map(([, y]) => y))
  const rim = motorFace.at(-1)![0]
  const oneFace = motorFace.every(([, y], i) => Math.abs(y - freeFace[i]![1]) < SAME_CURVE * (top - air))
  const shown = Number.isFinite(allowed) && !isBeyond(allowed, motorFace, air)
  const high = (shown ? Math.max(top, allowed) : top) + 3
  const upright = (x: number, label: string, labelAt: number): Curve => ({
    points: [
      [x, air],
      [x, high],
    ],
    line: 'axis',
    label: [label, `at ${plain(x, 3)} mm`],
    labelAt: [x, labelAt],
  })
  const limit: Curve = {
    points: [
      [0, allowed],
      [rim, allowed],
    ],
    line: 'bad',
    label: ['limit of the plate', `${plain(allowed, 3)} °C`],
    ink: 'bad',
  }
  const labelAt = (points: readonly Point[], part: number) => points[Math.floor(points.length * part)]!
  const curves: Curve[] = [
    { points: motorFace, line: 'force', label: oneFace ? 'both faces' : 'motor’s face', labelAt: labelAt(motorFace, 0.5), ink: 'force' },
    ...(oneFace
      ? []
      : [{ points: freeFace, line: 'moveSecond', label: 'free face', labelAt: labelAt(freeFace, 0.7), ink: 'move' } satisfies Curve]),
    ...(shown ? [limit] : []),
    upright(outer, 'edge of the ring', high),
    ...(bolt === undefined || bolt > rim ? [] : [upright(bolt, 'bolts', air)]),
  ]
  return { x: { title: 'radius, mm', from: 0, to: rim }, y: { title: '°C', from: air, to: high }, curves, height: 150 }
}

/** Temperature of the plate of a motor by radius, in the load case that is hottest for it, with the limit of its material. */
export function plateHeatDrawing(facts: Facts, joint: DrivenJoint): Drawing | undefined {
  if (!hasMotor(facts, joint)) return undefined
  const worst = facts.worst(CHECKS, joint)
  if (worst === undefined) return undefined
  const at = { ...facts.case(worst.case), joint }
  const state = facts.tried(heat, at)
  const air = celsius(facts.get(airTemperature, at))
  if (state === undefined) return undefined
  const body = facts.get(plate.hasSink, at) ? 'sink' : 'plate'
  const figure = new Figure({
    id: `plate-heat-${joint}`,
    title: `Temperature of the ${body} of the ${jointWords(joint)}’s motor by radius`,
    ...answerOf(`Plate of the ${jointWords(joint)}’s motor by radius`, worst),
  })
  if (state.unsettled !== undefined || !(celsius(state.mount) > air)) return withoutProfile(facts, figure, joint, worst, state.unsettled)
  const { motorFace, ring } = profileOf(facts, at)
  const soft = celsius(facts.calculation.get(softening, { material: facts.get(plate.material, at) } as never))
  // What the check allows: of a print less than its softening.
  const allowed = celsius(facts.get(allowableTemperature, at))
  const held = facts.tried(heldFor, at) !== undefined
  figure.text(
    `${worst.caseTitle}.${held ? ' Drawn as after a long time: while the motor is held, the plate is cooler far from it.' : ''} The radius is that of the round plate of equal area. The heat flow is assumed to be uniform over the ring of the motor; a metal base lowers the peak.`,
  )
  figure.block(`Temperature of the ${body}`, (y) => plotBlock(plotOf(facts, at, air, allowed), y))
  if (isBeyond(allowed, motorFace, air)) figure.text(`The limit of the plate is ${plain(allowed, 3)} °C, beyond the plot.`)
  const outer = facts.mm(motor.mountOuterDiameter, at) / 2
  const [edge, [rim, atRim]] = [valueAt(motorFace, outer), motorFace.at(-1)!]
  figure
    .say(
      `${worst.caseTitle}: ${plain(ring, 3)} °C in the mean under the motor, ${plain(edge, 3)} °C at the edge of the ring, ${plain(atRim, 3)} °C at the rim, in air of ${plain(air, 3)} °C.`,
      ...facts.checks(CHECKS, joint).slice(0, 1).map(resultSentence),
    )
    .rows(
      amount(`${body}, mean under the motor`, ring, '°C'),
      ...boltRows(facts, joint, body, motorFace),
      amount(`${body} at the edge of the ring`, edge, '°C'),
      length('radius of the edge of the ring', outer),
      amount(`${body} at the rim`, atRim, '°C'),
      length('radius of the rim', rim, 'geometry'),
      amount('air', air, '°C', 'document'),
      ...(Number.isFinite(allowed) ? [amount('limit of the plate', allowed, '°C')] : []),
      ...(Number.isFinite(soft) ? [amount(`the plate ${beyondLimit(facts, at)} above`, soft, '°C', 'standard')] : []),
      ...facts.checks(CHECKS, joint).map(checked),
    )
  return figure.done()
}

/** Rows of the bolts of a motor on a circle. */
function boltRows(facts: Facts, joint: DrivenJoint, body: string, motorFace: readonly Point[]): Row[] {
  const bolt = boltRadius(facts, joint)
  // Bolts in the corners of a plate may lie beyond the round plate of equal area.
  if (bolt === undefined || bolt > motorFace.at(-1)![0]) return []
  return [amount(`${body} at the bolts`, valueAt(motorFace, bolt), '°C'), length('radius of the bolts', bolt)]
}
