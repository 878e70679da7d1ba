import { type Point, plain, rectangle, View } from '../../drawing/index.js'
import type { ExtensionSizes } from './spring-sizes.js'
import { degrees, layers, METAL } from './words.js'

/** Both ends from the axis of the joint, what carries it upright: the moving pin with the joint straight, and the spring at both ends of travel. */
export function extensionFront(s: ExtensionSizes, joint: string): View {
  const view = new View('From the robot’s left, forward is left', { height: 400, template: true })
  const { fixed, straight, travel } = s
  const axis = s.pin / 2
  view.centre({ centre: [0, 0], radius: axis }, 2.5)
  const [low, high] = travel.map((angle) => s.movingAt(angle)) as [Point, Point]
  view.line([fixed, low], 'other').line([fixed, high], 'axis')
  for (const [pin, line] of [
    [low, 'other'],
    [high, 'other'],
    [straight, 'thick'],
    [fixed, 'thick'],
  ] as const)
    view.circle({ centre: pin, radius: s.pin / 2 }, line, line === 'thick' ? 'paper' : undefined)
  const tall = ([, y]: Point) => Math.abs(y) > 1e-6
  const wide = ([x]: Point) => Math.abs(x) > 1e-6
  if (tall(fixed)) view.dimension([0, 0], fixed, 'left')
  if (wide(fixed)) view.dimension([0, 0], fixed, 'above')
  if (tall(straight)) view.dimension([0, 0], straight, 'left')
  if (wide(straight)) view.dimension([0, 0], straight, 'below')
  const at = (angle: number) => [`${joint} at ${plain(degrees(angle), 3)}°`, `${plain(s.state(angle).length, 4)} long`]
  return view
    .label([0, 0], `axis of the ${joint}`, { end: 'dot' })
    .label([fixed[0], fixed[1] + s.pin / 2], [`fixed pin Ø${plain(s.pin)}`])
    .label([straight[0] + s.pin / 2, straight[1]], [`moving pin Ø${plain(s.pin)}`, `${joint} straight`])
    .label(low, at(travel[0]))
    .label(high, at(travel[1]))
}

const END_COILS = 5
const MAX_COILS = 3 * END_COILS

/** The unloaded spring from the side. */
export function extensionSide(s: ExtensionSizes): View {
  const view = new View('Spring from the side, unloaded', { height: 170 })
  const [half, outer, w] = [s.freeLength / 2, (s.coil + s.wire) / 2, s.wire / 2]
  const body = Math.min(half - s.wire, ((s.coils + 1) * s.wire) / 2)
  for (const side of [1, -1]) {
    // The inside of each hook stands at the end of the free length.
    const centre: Point = [side * (half - (s.hook - w)), 0]
    for (const radius of [s.hook - w, s.hook + w]) if (radius > 0) view.circle({ centre, radius }, 'thick')
  }
  view.area(rectangle(-body, -outer, body, outer), { fill: 'paper' })
  const count = Math.floor(s.coils)
  const pitch = (2 * body) / (count + 1)
  for (let i = 1; i <= count; i++) {
    if (count > MAX_COILS && i > END_COILS && i <= count - END_COILS) continue
    const x = -body + i * pitch
    view.line(
      [
        [x - pitch / 4, -outer],
        [x + pitch / 4, outer],
      ],
      'thin',
    )
  }
  view.line(
    [
      [-half - s.wire - 3, 0],
      [half + s.wire + 3, 0],
    ],
    'axis',
  )
  return view
    .dimension([-half, 0], [half, 0], 'below')
    .dimension([-body, -outer + w], [-body, outer - w], 'left', undefined, 'Ø')
    .label([body * 0.8, outer], [`wire Ø${plain(s.wire)}`, `${plain(s.coils)} coils`])
    .label([half - (s.hook - w), s.hook + w], `hook R${plain(s.hook)}${s.hookGiven ? '' : ', assumed'}`)
    .label([body, -s.coil / 4], `bend R${plain(s.bend)}${s.bendGiven ? '' : ', assumed'}`)
}

/** A pin that the spring is hooked to, in section along the pin. */
export function extensionPin(s: ExtensionSizes, isMetal: boolean): View {
  const view = new View('A pin in its holder, section along the pin', { height: 190 })
  const [r, w] = [s.pin / 2, s.wire / 2]
  const [tall, end] = [2.2 * s.pin, s.arm + s.wire]
  view.area(rectangle(-s.depth - s.pin / 2, -tall / 2, 0, tall / 2), {
    line: 'thin',
    hatch: isMetal ? METAL : layers('upright', 6),
  })
  view.area(rectangle(-s.depth, -r, end, r), { fill: 'paper' })
  view.circle({ centre: [s.arm, -r - w], radius: w }, 'thick', 'tone')
  view.line(
    [
      [-s.depth - s.pin, 0],
      [end + 3, 0],
    ],
    'axis',
  )
  return view
    .dimension([-s.depth, -tall / 2], [0, -tall / 2], 'below')
    .dimension([0, -tall / 2], [s.arm, -r - s.wire], 'below')
    .dimension([-s.depth, -r], [-s.depth, r], 'left', undefined, 'Ø')
    .label([s.arm + w * 0.7, -r - s.wire], `hook, ${plain(s.mostForce, 3)} N at most`)
    .label([-s.depth * 0.3, tall * 0.4], s.holder, { end: 'dot' })
}
