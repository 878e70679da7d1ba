import { add, distance, type LineClass, minus, type Point, plain, polar, times, turned, type View } from '../../drawing/index.js'
import type { ExtensionSizes, TorsionSizes } from './spring-sizes.js'

/** Draws the spring of a joint on the leg; `base` is the angle of what carries the joint. Returns its middle. */
export function drawSpring(
  view: View,
  spring: TorsionSizes | ExtensionSizes,
  { joint, centre, base, angle, line }: { joint: string; centre: Point; base: number; angle: number; line: LineClass },
): Point {
  return spring.kind === 'torsion'
    ? drawTorsion(view, spring, { joint, centre, base, angle, line })
    : drawExtension(view, spring, { joint, centre, base, angle, line })
}

interface Where {
  readonly joint: string
  readonly centre: Point
  readonly base: number
  readonly angle: number
  readonly line: LineClass
}

function drawTorsion(view: View, s: TorsionSizes, { joint, centre, base, angle, line }: Where): Point {
  const radius = s.coil / 2
  for (const r of [radius - s.wire / 2, radius + s.wire / 2]) view.circle({ centre, radius: r }, line === 'bad' ? 'bad' : 'thin')
  for (const [at, length, side] of [
    [base + s.fixedAt, s.fixedLeg, s.turns],
    [base + s.movingAt(angle), s.movingLeg, -s.turns],
  ] as const) {
    const start = polar(centre, radius, at + (side * Math.PI) / 2)
    view.line([start, polar(start, length, at)], line)
  }
  const { torque, windup } = s.state(angle)
  const fixed = polar(polar(centre, radius, base + s.fixedAt + (s.turns * Math.PI) / 2), 0.8 * s.fixedLeg, base + s.fixedAt)
  view.label(fixed, [`${joint} spring`, `wound ${plain((windup * 180) / Math.PI, 3)}°`, `${plain(torque, 3)} N m`])
  return fixed
}

const BENDS = 12

function drawExtension(view: View, s: ExtensionSizes, { joint, centre, base, angle, line }: Where): Point {
  const [fixed, moving] = [s.fixed, s.movingAt(angle)].map((end) => add(centre, turned(end, base))) as [Point, Point]
  const along = minus(moving, fixed)
  const length = distance(fixed, moving)
  const hooks = Math.min(0.35, s.coil / length)
  const across: Point = times([-along[1], along[0]], s.coil / 2 / length)
  const body = Array.from({ length: BENDS + 1 }, (_, i): Point => {
    const on = add(fixed, times(along, hooks + ((1 - 2 * hooks) * i) / BENDS))
    return i === 0 || i === BENDS ? on : add(on, times(across, i % 2 === 0 ? 1 : -1))
  })
  view.line([fixed, ...body, moving], line)
  for (const pin of [fixed, moving]) view.circle({ centre: pin, radius: s.pin / 2 }, line === 'bad' ? 'bad' : 'thick', 'paper')
  const middle = add(fixed, times(along, 0.5))
  const { force } = s.state(angle)
  view.label(middle, [`${joint} spring`, `${plain(length, 4)} long`, `${plain(force, 3)} N`])
  return middle
}
