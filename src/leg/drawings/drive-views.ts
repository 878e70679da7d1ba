import { arcPoints, type Circle, motionHead, type Point, plain, polar, rectangle, tangent, View } from '../../drawing/index.js'
import type { DriveSizes } from './drive-sizes.js'
import { capital } from './facts.js'
import { degrees } from './words.js'

const BOTTOM = -Math.PI / 2
/** Angle between the two anchors, drawn inside the drum. */
const ANCHOR_SPACING = 0.24

/** Drum and pinion along their axes, the drum below. */
export function driveFront(s: DriveSizes): View {
  const view = new View(`${capital(s.seen)}, ${s.turning} at ${plain(degrees(s.middle))}°`, { height: 430, template: true })
  const drum: Circle = { centre: [0, 0], radius: s.drum }
  const pinion: Circle = { centre: [0, s.distance], radius: s.pinion }
  view
    .circle({ ...drum, radius: s.drumRim }, 'thick', 'tone')
    .circle({ ...drum, radius: s.bore / 2 })
    .centre({ ...drum, radius: s.drum }, 1.04)
  if (s.behind !== undefined) view.circle({ ...pinion, radius: s.behind.diameter / 2 }, 'hidden')
  view.circle({ ...pinion, radius: s.pinionRim }, 'thick', 'tone').centre(pinion, 1.6)
  const post = polar([0, 0], s.drum * 0.78, BOTTOM + ANCHOR_SPACING)
  const screw = polar([0, 0], s.drum * 0.78, BOTTOM - ANCHOR_SPACING)
  branch(view, s, drum, pinion, -1, post)
  branch(view, s, drum, pinion, 1, screw)
  view.circle({ centre: post, radius: s.post / 2 }, 'thick', 'solid')
  view.circle({ centre: screw, radius: s.post / 2 }, 'thick', 'paper')
  ends(view, s)
  const sense = (circle: Circle, radius: number, start: number, sweep: number) => {
    view.arc({ centre: circle.centre, radius }, start, start + sweep, 'move')
    const [before, tip] = arcPoints({ centre: circle.centre, radius }, start, start + sweep).slice(-2) as [Point, Point]
    view.mark(({ to: on }) => [motionHead(on(tip), on(before))], tip)
  }
  sense(drum, s.drum * 0.45, Math.PI * 0.3, Math.PI * 0.45)
  const round = Math.max(s.pinion * (s.wound === 'pinion' ? 1.9 : 1.35), 0.33 * (s.behind?.diameter ?? 0))
  if (s.crossed) sense(pinion, round, Math.PI * 0.75, -Math.PI * 0.5)
  else sense(pinion, round, Math.PI * 0.25, Math.PI * 0.5)
  const spanAt = (side: 1 | -1, share: number): Point => {
    const [a, b] = tangent(drum, pinion, side, s.crossed)
    return [a[0] + share * (b[0] - a[0]), a[1] + share * (b[1] - a[1])]
  }
  if (s.behind !== undefined) {
    const { diameter, name } = s.behind
    view.label([diameter * 0.35, s.distance + diameter * 0.357], `${name} Ø${plain(diameter)}`)
  }
  return view
    .dimension([0, 0], [0, s.distance], 'left')
    .label([s.pinion * 0.8, s.distance + s.pinion * 0.6], [`${s.wound} groove`, `Ø${plain(2 * s.pinion - s.cord)}`])
    .label(spanAt(-1, 0.55), `to ${plain(degrees(s.high), 3)}°`, { ink: 'move' })
    .label(spanAt(1, 0.25), `to ${plain(degrees(s.low), 3)}°`, { ink: 'move' })
    .label([s.drum * 0.85, s.drum * 0.527], [s.wound === 'pinion' ? 'drum groove' : 'knee drum groove', `Ø${plain(2 * s.drum - s.cord)}`])
    .label([-s.bore * 0.35, s.bore * 0.35], `bore Ø${plain(s.bore)}`)
    .label(post, `post Ø${plain(s.post)}`)
    .label(screw, 'tensioner')
}

/** Which way drum, pinion and cord turn, in words. */
export function windingSense(s: DriveSizes): string {
  const [drum, pinion] = ['counter-clockwise', s.crossed ? 'clockwise' : 'counter-clockwise']
  return `To larger angles the ${s.wound === 'pinion' ? 'drum' : 'knee drum'} turns ${drum} and the ${s.wound} ${pinion}, seen ${s.seen}. From the anchor on, the solid branch lies ${drum} on the ${s.wound === 'pinion' ? 'drum' : 'knee drum'} and ${pinion} on the ${s.wound}; the dashed one the other way round.`
}

/** Hands of the grooves, with which both exits walk the same way, and how far the tracks of the branches are apart on the drum. */
export function grooveHands(s: DriveSizes): string {
  const drum = s.wound === 'pinion' ? 'drum' : 'knee drum'
  const hands = s.crossed ? `right-handed on the ${drum} and left-handed on the ${s.wound}` : `right-handed on ${drum} and ${s.wound} alike`
  return `Spans that are ${s.crossed ? 'crossed' : 'open'} need grooves of ${s.crossed ? 'opposite hands' : 'the same hand'}, or the exits walk apart: ${hands}. Both hands reversed do as well, with the branches on the other sides. The branches leave the ${s.wound} ${plain(s.apart, 3)} mm apart along the axis: their tracks on the ${drum} are as far apart where they leave it at mid travel.`
}

/** One branch: from its anchor into the groove, along the drum, over the span, on to the pinion. */
function branch(view: View, s: DriveSizes, drum: Circle, pinion: Circle, side: 1 | -1, anchor: Point): void {
  const [start, end] = tangent(drum, pinion, side, s.crossed)
  const at = Math.atan2(start[1], start[0])
  const around = side === -1 ? arcPoints(drum, BOTTOM, at) : arcPoints(drum, BOTTOM + 2 * Math.PI, at < 0 ? at + 2 * Math.PI : at)
  const on = Math.atan2(end[1] - pinion.centre[1], end[0] - pinion.centre[0])
  const turn = (side === -1 ? 1 : -1) * (s.crossed ? -1 : 1)
  view.line([anchor, ...around, ...arcPoints(pinion, on, on + turn * Math.PI)], side === -1 ? 'move' : 'moveSecond')
}

/** Where the anchors stand at both ends of travel. */
function ends(view: View, s: DriveSizes): void {
  const left = s.branch - s.travel / 2
  const wrap = left >= 0 ? `${plain(degrees(left), 2)}° of wrap` : 'off the drum'
  for (const [joint, sign] of [
    [s.high, 1],
    [s.low, -1],
  ] as const) {
    const at = BOTTOM + (sign * s.travel) / 2
    view.line([polar([0, 0], s.drum * 0.6, at), polar([0, 0], s.drum * 1.1, at)], 'other')
    view.label(polar([0, 0], s.drum * 1.1, at), [`end at ${plain(degrees(joint), 3)}°`, wrap])
  }
}

/** The turns on the pinion, its axis across. */
export function pinionView(s: DriveSizes): View {
  const view = new View(`${capital(s.wound)} at mid travel, ${s.end} at the left`, { height: 220 })
  const [half, r] = [s.pinionLength / 2, s.pinionRim]
  view.area(rectangle(-half, -r, half, r), { fill: 'tone' })
  view.line(
    [
      [-half - 3, 0],
      [half + 3, 0],
    ],
    'axis',
  )
  const each = s.turns / 2
  // The nearer half of a left-handed groove leans to the right, that of a right-handed one to the left.
  const lean = (s.crossed ? 1 : -1) * (s.pitch / 4)
  for (const [sign, line] of [
    [1, 'move'],
    [-1, 'moveSecond'],
  ] as const) {
    const count = Math.ceil(each)
    for (let i = 0; i < count; i++) {
      const x = sign * (i + 0.5) * s.pitch
      if (Math.abs(x) < half)
        view.line(
          [
            [x - lean, -r],
            [x + lean, r],
          ],
          line,
        )
    }
  }
  const exit = each * s.pitch
  for (const sign of [1, -1])
    for (const end of [-1, 1]) {
      const x = sign * exit + (end * s.walk) / 2
      view.line(
        [
          [x, -r * 1.3],
          [x, r * 1.3],
        ],
        'other',
      )
    }
  if (s.clamped) view.area(rectangle(-s.cord / 2, -s.cord / 2, s.cord / 2, s.cord / 2), { fill: 'solid' })
  return view
    .dimension([-half, -r], [-half, r], 'left', undefined, 'Ø')
    .dimension([-half, -r], [half, -r], 'below')
    .dimension([exit - s.walk / 2, r * 1.3], [exit + s.walk / 2, r * 1.3], 'above')
    .label([0, 0], s.clamped ? 'clamp in the middle' : 'held by friction, no clamp', { end: s.clamped ? 'dot' : 'none' })
    .label([exit + s.walk / 2, r * 0.5], `${plain(each, 3)} turns to each side`, { ink: 'move' })
    .label([exit + s.walk / 2, -r], 'exit at the ends')
}
