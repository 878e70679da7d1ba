import { groove } from '../../capstan/index.js'
import { arcPoints, type Drawing, Figure, type Point, plain, View } from '../../drawing/index.js'
import { Quantity } from '../../units/index.js'
import { type DrivenJoint, jointWords } from '../numbers.js'
import * as cord from '../parts/transmission/cord/fields.js'
import { drumRadius, pinionRadius } from '../parts/transmission/cord/radii.js'
import { beltOrCordOf } from '../second-stage.js'
import { driveSizes, SECOND } from './drive-sizes.js'
import { grooveHands } from './drive-views.js'
import { capital, type Facts, resultSentence } from './facts.js'
import { hasCordDrive } from './present.js'
import { answerOf, checked, layers, length, METAL, resultLines, word } from './words.js'

const GROOVE_CHECKS = ['drum.groove', 'drum.hoop', 'drum.layers', 'drum.split', 'cord.bend']
const checksOf = (joint: DrivenJoint): readonly string[] =>
  joint === SECOND ? GROOVE_CHECKS.map((id) => `knee${capital(id)}`) : GROOVE_CHECKS
const DRAWN_TURNS = 2

/** Sizes of the grooves of a drive, mm. */
export const grooveSizes = (facts: Facts, joint: DrivenJoint) => {
  const at = { joint }
  const diameter = facts.get(cord.diameter, at)
  const { seatRadius, depth } = groove({ cordDiameter: new Quantity(diameter, 'length') })
  return {
    cord: 1000 * diameter,
    pitch: facts.mm(cord.drum.groovePitch, at),
    seat: 1000 * seatRadius.si,
    depth: 1000 * depth.si,
    drum: 2 * facts.mm(drumRadius, at),
    pinion: 2 * facts.mm(pinionRadius, at),
    bore: facts.mm(cord.drum.bore, at),
    drumLength: facts.mm(cord.drum.length, at),
    material: facts.named('material', cord.drum.material, at),
    metal: facts.isMetal(facts.named('material', cord.drum.material, at)),
  }
}
export type GrooveSizes = ReturnType<typeof grooveSizes>

/** Profile of the grooves of a drum, as a dimensioned section. */
export function grooveDrawing(facts: Facts, joint: DrivenJoint): Drawing | undefined {
  if (joint === SECOND ? beltOrCordOf(facts.leg.x)?.kind !== 'cord' : !hasCordDrive(facts, joint)) return undefined
  const s = grooveSizes(facts, joint)
  const [ids, of] = [checksOf(joint), joint === SECOND ? undefined : joint]
  const figure = new Figure({
    id: joint === SECOND ? 'groove-through' : `groove-${joint}`,
    title: `Grooves of the drum of the ${jointWords(joint)}, section along the axis`,
    ...answerOf(`Grooves and drum of the ${jointWords(joint)}`, facts.worst(ids, of)),
  })
  figure.view(profile(s))
  figure.text(
    `Seat of ${plain(s.seat / s.cord)} and depth of ${plain(s.depth / s.cord)} cord diameters, as for rope drums.${s.metal ? '' : ' Layers are assumed to cross the axis.'} The ${joint === SECOND ? 'hip drum' : 'pinion'} has the same grooves.`,
  )
  const drive = driveSizes(facts, joint)
  const hands = grooveHands(drive)
  figure.view(drumSection(s)).text(hands)
  figure.results(resultLines(facts, ids, of))
  figure
    .say(
      `Pitch ${plain(s.pitch)} mm, depth ${plain(s.depth)} mm, seat radius ${plain(s.seat)} mm for a cord of ${plain(s.cord)} mm. The bottom of the groove is at Ø${plain(s.drum - s.cord)} mm, the outside of the drum at Ø${plain(outside(s))} mm.`,
      hands,
      ...facts.checks(ids, of).slice(0, 1).map(resultSentence),
    )
    .rows(
      length('cord diameter', s.cord),
      length('groove pitch', s.pitch),
      length('seat radius', s.seat, 'standard'),
      length('groove depth', s.depth, 'standard'),
      length('drum, bottom of the groove', s.drum - s.cord, 'geometry'),
      length('drum, centre of the cord', s.drum, 'geometry'),
      length('drum, outside', outside(s), 'geometry'),
      length('drum length', s.drumLength),
      length('drum bore', s.bore),
      length(`${joint === SECOND ? 'hip drum' : 'pinion'}, bottom of the groove`, s.pinion - s.cord, 'geometry'),
      word('hand of the grooves of the drum', 'right', 'geometry'),
      word(`hand of the grooves of the ${drive.wound}`, drive.crossed ? 'left' : 'right', 'geometry'),
      length('branches apart along the axis at mid travel', drive.apart, 'geometry'),
      word('drum material', s.material),
      ...facts.checks(ids, of).map(checked),
    )
  return figure.done()
}

const outside = ({ drum, cord: d, depth }: GrooveSizes) => drum - d + 2 * depth

/** Outline of the grooves along the axis: the bottom of each at height 0. */
function grooves({ pitch, seat, depth }: GrooveSizes, from: number, to: number): readonly Point[] {
  const half = Math.min(pitch / 2, depth >= seat ? seat : Math.sqrt(depth * (2 * seat - depth)))
  const angle = Math.asin(Math.min(1, half / seat))
  const points: Point[] = [[from, depth]]
  const count = Math.floor((to - from) / pitch + 1e-9)
  const first = (from + to) / 2 - ((count - 1) / 2) * pitch
  for (let i = 0; i < count; i++)
    points.push(...arcPoints({ centre: [first + i * pitch, seat], radius: seat }, -Math.PI / 2 - angle, -Math.PI / 2 + angle))
  points.push([to, depth])
  return points
}

function profile(s: GrooveSizes): View {
  const { pitch, cord: d, seat, depth } = s
  const view = new View('Groove profile, section along the axis', { height: 150 })
  const [from, to] = [(-DRAWN_TURNS / 2) * pitch - pitch * 0.2, (DRAWN_TURNS / 2) * pitch + pitch * 0.2]
  const under = -1.1 * d
  view.area([...grooves(s, from, to), [to, under], [from, under]], { hatch: s.metal ? METAL : layers('upright', 7), line: 'none' })
  view
    .line(grooves(s, from, to))
    .line(
      [
        [from, depth],
        [from, under],
      ],
      'fine',
    )
    .line(
      [
        [to, depth],
        [to, under],
      ],
      'fine',
    )
  for (let i = 0; i < DRAWN_TURNS; i++) {
    const centre: Point = [(i - (DRAWN_TURNS - 1) / 2) * pitch, d / 2]
    view.circle({ centre, radius: d / 2 }, 'move').centre({ centre, radius: d / 2 }, 1.2)
  }
  return view
    .dimension([-pitch / 2, d / 2], [pitch / 2, d / 2], 'above')
    .dimension([from, 0], [from, depth], 'left')
    .label([pitch / 2 + seat * 0.5, seat - seat * 0.866], `seat R${plain(seat)}`)
    .label([pitch / 2 + d * 0.35, d * 0.85], `cord Ø${plain(d)}`, { ink: 'move' })
    .label([to - pitch * 0.3, under * 0.7], s.metal ? s.material : `${s.material}, printed`, { end: 'dot' })
}

function drumSection(s: GrooveSizes): View {
  const view = new View('Upper half of the drum, section along the axis', { height: 220 })
  const half = s.drumLength / 2
  const [bottom, bore] = [(s.drum - s.cord) / 2, s.bore / 2]
  const top = grooves(s, -half, half).map(([x, y]): Point => [x, y + bottom])
  view.area([...top, [half, bore], [-half, bore]], { hatch: s.metal ? METAL : layers('upright', 5) })
  view.line(
    [
      [-half - 3, 0],
      [half + 3, 0],
    ],
    'axis',
  )
  return view
    .dimension([-half, bore], [half, bore], 'above')
    .dimension([-half, 0], [-half, bore], 'left', `Ø${plain(s.bore)} / 2`)
    .dimension([-half, 0], [-half, bottom], 'left', `Ø${plain(s.drum - s.cord)} / 2`)
    .dimension([-half, 0], [-half, bottom + s.depth], 'left', `Ø${plain(outside(s))} / 2`)
    .label([0, (bottom + bore) / 2], `drum, ${s.material}`, { end: 'dot' })
    .label([half, 0], 'axis of the joint', { end: 'none' })
}
