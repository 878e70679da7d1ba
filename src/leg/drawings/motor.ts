import { type Drawing, Figure, plain, polar, rectangle, View } from '../../drawing/index.js'
import { type DrivenJoint, jointWords } from '../numbers.js'
import * as motor from '../parts/motors/fields.js'
import * as plate from '../parts/plates/fields.js'
import { boltCircle, drawHoles, holeWords } from './bolt-circle.js'
import { type Facts, resultSentence } from './facts.js'
import { onShaft } from './motor-shaft.js'
import { hasMotor } from './present.js'
import { answerOf, checked, layers, length, METAL, OTHER_METAL, resultLines, word } from './words.js'

const CHECKS = ['motor.plate', 'motor.winding', 'motor.magnet', 'motor.touch', 'motor.runaway', 'controller.heat', 'motor.current']

/** Sizes that no document gives, mm. */
const ASSUMED = { magnet: 6, magnetThickness: 2.5, encoderGap: 1, board: 40, boardThickness: 1.6, standOff: 4 }

/** Sizes of a motor on its plate, mm. */
export const motorSizes = (facts: Facts, joint: DrivenJoint) => {
  const at = { joint }
  const hasSink = facts.get(plate.hasSink, at)
  const optional = (x: number | undefined) => (x === undefined ? undefined : 1000 * x)
  return {
    can: facts.mm(motor.canDiameter, at),
    canLength: facts.mm(motor.canLength, at),
    ringInner: facts.mm(motor.mountInnerDiameter, at),
    ringOuter: facts.mm(motor.mountOuterDiameter, at),
    plate: facts.mm(plate.thickness, at),
    width: facts.mm(plate.width, at),
    height: facts.mm(plate.height, at),
    material: facts.named('material', plate.material, at),
    metal: facts.isMetal(facts.named('material', plate.material, at)),
    sink: hasSink ? optional(facts.get(plate.sink.thickness, at)) : undefined,
    sinkWidth: hasSink ? optional(facts.get(plate.sink.width, at)) : undefined,
    sinkHeight: hasSink ? optional(facts.get(plate.sink.height, at)) : undefined,
    sinkMaterial: hasSink ? facts.named('material', plate.sink.material, at) : undefined,
    onShaft: onShaft(facts, joint),
    holes: boltCircle(facts, joint),
  }
}
export type MotorSizes = ReturnType<typeof motorSizes>

/** Motor, sink, plate and controller along the motor's axis, with magnet and encoder. */
export function motorDrawing(facts: Facts, joint: DrivenJoint): Drawing | undefined {
  if (!hasMotor(facts, joint)) return undefined
  const s = motorSizes(facts, joint)
  const worst = facts.worst(CHECKS, joint)
  const figure = new Figure({
    id: `motor-${joint}`,
    title: `Motor of the ${jointWords(joint)} on its plate, section through the motor axis`,
    ...answerOf(`Motor mount of the ${jointWords(joint)}`, worst),
  })
  figure.view(section(s))
  figure.text(
    `Thin outlines: sizes assumed. The encoder reads a magnet of Ø${ASSUMED.magnet} × ${ASSUMED.magnetThickness} on the rear of the shaft across ${ASSUMED.encoderGap} mm: take the gap from the sheet of the encoder.${s.onShaft === undefined ? '' : ` ${s.onShaft.remark}`}`,
  )
  figure.view(face(s))
  figure.text(
    `The motor stands in the middle of the plate${s.holes === undefined ? '; no circle of bolts is given' : ', and its bolt circle is turned as assumed'}.`,
  )
  figure.results(resultLines(facts, CHECKS, joint))
  figure
    .say(
      `A motor of Ø${plain(s.can)} × ${plain(s.canLength)} mm is bolted by a ring of Ø${plain(s.ringOuter)} mm${s.sink === undefined ? '' : ` to a sink of ${plain(s.sink)} mm of ${s.sinkMaterial}`} on a plate of ${plain(s.plate)} mm of ${s.material}. Magnet and encoder face each other across ${ASSUMED.encoderGap} mm, which is assumed.`,
      ...facts.checks(CHECKS, joint).slice(0, 1).map(resultSentence),
    )
    .rows(
      length('motor diameter', s.can),
      length('motor length', s.canLength),
      length('inner diameter of the mounting ring', s.ringInner),
      length('outer diameter of the mounting ring', s.ringOuter),
      ...(s.holes === undefined
        ? []
        : [
            length('bolt circle', s.holes.circle),
            length(
              'holes of the plate for the bolts',
              s.holes.sleeve ?? s.holes.hole,
              s.holes.sleeve === undefined ? 'standard' : 'assumed',
            ),
          ]),
      length('plate thickness', s.plate),
      length('plate width', s.width),
      length('plate height', s.height),
      word('plate material', s.material),
      ...(s.sink === undefined ? [] : [length('sink thickness', s.sink), word('sink material', s.sinkMaterial ?? '')]),
      ...(s.onShaft === undefined ? [] : [length(s.onShaft.size, s.onShaft.diameter, 'geometry')]),
      length('magnet diameter', ASSUMED.magnet, 'assumed'),
      length('gap of the encoder', ASSUMED.encoderGap, 'assumed'),
      length('board size', ASSUMED.board, 'assumed'),
      ...facts.checks(CHECKS, joint).map(checked),
    )
  return figure.done()
}

/** The motor stands on the plate's face at 0; the plate and the controller are behind it, at negative x. */
function section(s: MotorSizes): View {
  const view = new View('Section through the motor axis', { height: 250 })
  const sink = s.sink ?? 0
  const back = -sink - s.plate
  const shaft = Math.min(s.ringInner / 2 || s.ringOuter / 4, (s.onShaft?.diameter ?? s.ringOuter) / 2) * 0.5
  const bore = Math.max(s.ringInner / 2, ASSUMED.magnet / 2 + 1)
  for (const side of [1, -1] as const) {
    const band = (from: number, to: number, low: number, high: number) =>
      side === 1 ? rectangle(from, low, to, high) : rectangle(from, -high, to, -low)
    if (s.sink !== undefined && s.sinkHeight !== undefined && s.sinkHeight / 2 > bore)
      view.area(band(-sink, 0, bore, s.sinkHeight / 2), { hatch: METAL })
    if (s.height / 2 > bore) view.area(band(back, -sink, bore, s.height / 2), { hatch: s.metal ? METAL : layers('upright', 5) })
    view.area(band(0, Math.min(3, s.canLength / 4), s.ringInner / 2, s.ringOuter / 2), { hatch: OTHER_METAL })
  }
  view.area(rectangle(Math.min(3, s.canLength / 4), -s.can / 2, s.canLength, s.can / 2), { fill: 'tone' })
  if (s.onShaft !== undefined) {
    const { diameter, length, label } = s.onShaft
    view.area(rectangle(s.canLength, -diameter / 2, s.canLength + length, diameter / 2), { fill: 'paper' })
    view.label([s.canLength + length * 0.6, diameter * 0.4], label, { end: 'dot' })
  }
  const magnet = back - 1
  view.area(rectangle(magnet, -shaft, Math.min(3, s.canLength / 4), shaft), { line: 'thin', fill: 'paper' })
  view.area(rectangle(magnet - ASSUMED.magnetThickness, -ASSUMED.magnet / 2, magnet, ASSUMED.magnet / 2), {
    line: 'thin',
    fill: 'solid',
  })
  const chip = magnet - ASSUMED.magnetThickness - ASSUMED.encoderGap
  view.area(rectangle(chip - 1, -2.5, chip, 2.5), { line: 'thin', fill: 'paper' })
  view.area(rectangle(chip - 1 - ASSUMED.boardThickness, -ASSUMED.board / 2, chip - 1, ASSUMED.board / 2), {
    line: 'thin',
    hatch: { angle: -45, spacing: 4 },
  })
  for (const side of [1, -1])
    view.line(
      [
        [chip - 1, side * (ASSUMED.board / 2 - 3)],
        [back, side * (ASSUMED.board / 2 - 3)],
      ],
      'thin',
    )
  view.line(
    [
      [chip - 5, 0],
      [s.canLength + (s.onShaft?.length ?? 0) + 3, 0],
    ],
    'axis',
  )
  return view
    .dimension([0, -s.can / 2], [s.canLength, -s.can / 2], 'below')
    .dimension([back, -s.height / 2], [-sink, -s.height / 2], 'below')
    .dimension([chip - 1 - ASSUMED.boardThickness, -s.can / 2], [chip - 1 - ASSUMED.boardThickness, s.can / 2], 'left', `Ø${plain(s.can)}`)
    .label([s.canLength * 0.7, s.can * 0.4], 'motor', { end: 'dot' })
    .label([back + s.plate / 2, -s.height * 0.42], `plate, ${s.material}`, { end: 'dot' })
    .label([magnet - ASSUMED.magnetThickness / 2, -ASSUMED.magnet / 2], `magnet, gap ${plain(ASSUMED.encoderGap)}`)
    .label([chip - 1 - ASSUMED.boardThickness / 2, -ASSUMED.board * 0.42], 'controller', { end: 'dot' })
    .label([-sink / 2, s.height * 0.4], s.sink === undefined ? 'no sink' : `sink ${plain(s.sink)}`, {
      end: s.sink === undefined ? 'none' : 'dot',
    })
}

function face(s: MotorSizes): View {
  const view = new View('Plate from the side of the motor', { height: 230, template: true })
  view.area(rectangle(-s.width / 2, -s.height / 2, s.width / 2, s.height / 2))
  if (s.sinkWidth !== undefined && s.sinkHeight !== undefined)
    view.area(rectangle(-s.sinkWidth / 2, -s.sinkHeight / 2, s.sinkWidth / 2, s.sinkHeight / 2), { line: 'hidden' })
  const ring = { centre: [0, 0], radius: s.ringOuter / 2 } as const
  view
    .circle(ring)
    .circle({ centre: [0, 0], radius: Math.max(s.ringInner / 2, 0.1) })
    .circle({ centre: [0, 0], radius: s.can / 2 }, 'other')
    .centre({ centre: [0, 0], radius: s.can / 2 })
  if (s.holes !== undefined) {
    drawHoles(view, s.holes)
    const { circle, count, hole, sleeve, place } = s.holes
    view.label(polar(place(count > 1 ? 1 : 0), (sleeve ?? hole) / 2, -0.4), [...holeWords(s.holes, plain), `on Ø${plain(circle)}`])
  }
  return view
    .dimension([-s.width / 2, -s.height / 2], [s.width / 2, -s.height / 2], 'below')
    .dimension([-s.width / 2, -s.height / 2], [-s.width / 2, s.height / 2], 'left')
    .label([s.can * 0.35, s.can * 0.357], `motor Ø${plain(s.can)}`)
    .label([s.ringOuter * 0.4, s.ringOuter * 0.3], `ring Ø${plain(s.ringOuter)}`)
    .label([s.ringInner * 0.4, -s.ringInner * 0.3], `opening Ø${plain(s.ringInner)}`)
}
