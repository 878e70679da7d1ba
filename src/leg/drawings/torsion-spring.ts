import { add, type Circle, type Point, plain, polar, rectangle, times, View } from '../../drawing/index.js'
import type { TorsionSizes } from './spring-sizes.js'
import { degrees } from './words.js'

/** Height of the lugs that the legs press on, in wires: the document does not give it. */
const LUG_HEIGHT = 2

/** The spring along its axis, what turns straight down where it is wound most: both legs on their lugs, and the moving leg free and wound least. */
export function torsionFront(s: TorsionSizes, joint: string, [least, most]: readonly [number, number]): View {
  const view = new View(`From the robot’s left, ${joint} at ${plain(degrees(most), 3)}°`, { height: 380, template: true })
  const coil: Circle = { centre: [0, 0], radius: s.coil / 2 }
  /** Directions are turned so that the leg of the link points straight down. */
  const turn = -Math.PI / 2 - s.movingAt(most)
  const fixed = s.fixedAt + turn
  const movingAt = (angle: number) => s.movingAt(angle) + turn
  for (const sign of [1, -1]) view.circle({ ...coil, radius: (s.coil + sign * s.wire) / 2 }, 'thick')
  view.circle(coil, 'axis').centre({ ...coil, radius: (s.coil + s.wire) / 2 }, 1.2)
  if (s.mandrel !== undefined) view.circle({ ...coil, radius: s.mandrel / 2 }, 'thick', 'tone')
  for (const angle of [s.free, least]) {
    const [start, end] = legOf(s, movingAt(angle), s.movingLeg, -s.turns)
    view.line([start, end], 'other')
  }
  for (const [at, long, side] of [
    [fixed, s.fixedLeg, s.turns],
    [movingAt(most), s.movingLeg, -s.turns],
  ] as const) {
    const [start] = legOf(s, at, long, side)
    const [along, across] = [polar([0, 0], 1, at), polar([0, 0], 1, at + (side * Math.PI) / 2)]
    const on = (x: number, y: number): Point => add(start, add(times(along, x), times(across, y)))
    const [from, to, w] = [long - s.seat / 2, long + s.seat / 2, s.wire / 2]
    view.area([on(0, -w), on(to, -w), on(to, w), on(0, w)], { fill: 'paper' })
    view.area([on(from, w), on(to, w), on(to, w * (1 + 2 * LUG_HEIGHT)), on(from, w * (1 + 2 * LUG_HEIGHT))], {
      line: 'thin',
      fill: 'tone',
    })
  }
  const [start, press] = legOf(s, movingAt(most), s.movingLeg, -s.turns)
  const [, fixedPress] = legOf(s, fixed, s.fixedLeg, s.turns)
  const at = (angle: number) => `${joint} at ${plain(degrees(angle), 3)}°`
  view
    .dimension([0, 0], press, 'left')
    .dimension([0, 0], [start[0], 0], 'above', plain(s.coil / 2))
    .label(fixedPress, ['fixed leg', `presses at ${plain(s.fixedLeg)}`])
    .label(press, ['moving leg', `wound ${plain(degrees(s.state(most).windup), 3)}°`])
    .label(legOf(s, movingAt(s.free), s.movingLeg, -s.turns)[1], [at(s.free), 'legs just touch'])
  if (Math.abs(least - s.free) > 1e-6)
    view.label(legOf(s, movingAt(least), s.movingLeg, -s.turns)[1], [at(least), `wound ${plain(degrees(s.state(least).windup), 3)}°`])
  return view.label(polar([0, 0], (s.coil + s.wire) / 2, 0.5), ['coil', `mean Ø${plain(s.coil)}`])
}

/** A leg that leaves the coil along its tangent: where it leaves, and where it presses. */
function legOf(s: TorsionSizes, at: number, long: number, side: number): readonly [Point, Point] {
  const start = polar([0, 0], s.coil / 2, at + (side * Math.PI) / 2)
  return [start, polar(start, long, at)]
}

/** Coils drawn at each end of a long spring; a shorter one shows them all. */
const END_COILS = 4
const MAX_COILS = 3 * END_COILS

/** The unloaded spring in section through its axis, on its mandrel. */
export function torsionSection(s: TorsionSizes): View {
  const view = new View('Section through the axis, unloaded', { height: 200 })
  const body = s.bodyLength(0)
  const [half, w] = [s.coil / 2, s.wire / 2]
  if (s.mandrel !== undefined) view.area(rectangle(-s.wire, -s.mandrel / 2, body + s.wire, s.mandrel / 2), { line: 'thin', fill: 'paper' })
  const count = Math.floor(s.coils + 1e-9)
  for (let i = 0; i <= count; i++) {
    if (count > MAX_COILS && i >= END_COILS && i <= count - END_COILS) continue
    view.circle({ centre: [w + i * s.wire, half], radius: w }, 'thick', 'tone')
    if (i + 0.5 <= s.coils + 1e-9) view.circle({ centre: [w + (i + 0.5) * s.wire, -half], radius: w }, 'thick', 'tone')
  }
  if (count > MAX_COILS)
    for (const y of [half + w, half - w, w - half, -half - w])
      view.line(
        [
          [END_COILS * s.wire, y],
          [(count - END_COILS + 1) * s.wire, y],
        ],
        'other',
      )
  view.line(
    [
      [-1.5 * s.wire, 0],
      [body + 1.5 * s.wire, 0],
    ],
    'axis',
  )
  view
    .dimension([0, half + w], [body, half + w], 'above')
    .dimension([w, -half], [w, half], 'left', undefined, 'Ø')
    .label([w + count * s.wire, half + w], [`wire Ø${plain(s.wire)}`, `${plain(s.coils)} coils`])
  if (s.mandrel !== undefined) view.label([body + s.wire, -s.mandrel / 4], `mandrel Ø${plain(s.mandrel)}`)
  return view
}
