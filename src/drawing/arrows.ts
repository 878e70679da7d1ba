import { add, minus, type Point, polar, times } from './geometry.js'
import type { Item, LineClass } from './items.js'

const DIMENSION = { length: 7, angle: (20 * Math.PI) / 180 }
const FORCE = { length: 9, angle: (34 * Math.PI) / 180 }

const wings = (tip: Point, from: Point, { length, angle }: { length: number; angle: number }): readonly [Point, Point] => {
  const back = Math.atan2(from[1] - tip[1], from[0] - tip[0])
  const side = length / Math.cos(angle / 2)
  return [polar(tip, side, back - angle / 2), polar(tip, side, back + angle / 2)]
}

/** The closed head of a dimension or a leader. */
export function dimensionHead(tip: Point, from: Point): Item {
  const [left, right] = wings(tip, from, DIMENSION)
  return { kind: 'path', line: 'none', points: [tip, left, right], closed: true, fill: 'solid' }
}

/** A force: a line and a closed head, its tip where it acts. */
export function forceArrow(tip: Point, tail: Point, line: 'force' | 'bad' = 'force'): readonly Item[] {
  const [left, right] = wings(tip, tail, FORCE)
  const length = Math.hypot(tail[0] - tip[0], tail[1] - tip[1])
  // The line ends inside its head: a round end would blunt the tip.
  const neck = length < 1e-9 ? tip : add(tip, times(minus(tail, tip), Math.min(1, (FORCE.length - 3) / length)))
  return [
    { kind: 'path', line, points: [tail, neck] },
    { kind: 'path', line: 'none', points: [tip, left, right], closed: true, fill: line },
  ]
}

/** The open head of a motion. */
export function motionHead(tip: Point, from: Point, line: LineClass = 'move'): Item {
  const [left, right] = wings(tip, from, FORCE)
  return { kind: 'path', line, points: [left, tip, right] }
}
