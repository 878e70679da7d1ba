/** A point: millimetres with y up in a view, units of the page with y down on the page. */
export type Point = readonly [x: number, y: number]

export const add = ([x, y]: Point, [dx, dy]: Point): Point => [x + dx, y + dy]
export const minus = ([x, y]: Point, [dx, dy]: Point): Point => [x - dx, y - dy]
export const times = ([x, y]: Point, factor: number): Point => [x * factor, y * factor]
export const distance = (a: Point, b: Point): number => Math.hypot(a[0] - b[0], a[1] - b[1])
/** The point at a distance and an angle from the x axis, counter-clockwise. */
export const polar = ([x, y]: Point, radius: number, angle: number): Point => [x + radius * Math.cos(angle), y + radius * Math.sin(angle)]
/** A point turned about the origin, counter-clockwise. */
export const turned = ([x, y]: Point, angle: number): Point => [
  x * Math.cos(angle) - y * Math.sin(angle),
  x * Math.sin(angle) + y * Math.cos(angle),
]
/** Corners of a rectangle, from its lower left one on. */
export const rectangle = (left: number, bottom: number, right: number, top: number): readonly Point[] => [
  [left, bottom],
  [right, bottom],
  [right, top],
  [left, top],
]

/** A circle. */
export interface Circle {
  readonly centre: Point
  readonly radius: number
}

/** Points along an arc, its ends included, not farther apart than a step in radians. */
export function arcPoints({ centre, radius }: Circle, from: number, to: number, step = Math.PI / 36): readonly Point[] {
  const count = Math.max(2, Math.ceil(Math.abs(to - from) / step))
  return Array.from({ length: count + 1 }, (_, i) => polar(centre, radius, from + ((to - from) * i) / count))
}

/**
 * The tangent that leaves the first circle on the given side and touches the second one: on its own side for an open span, on the other for a crossed
 * one. Side 1 is left of the line from the first centre to the second, −1 right. The centres must be farther apart than the span allows.
 */
export function tangent(first: Circle, second: Circle, side: 1 | -1, crossed: boolean): readonly [Point, Point] {
  const line = Math.atan2(second.centre[1] - first.centre[1], second.centre[0] - first.centre[0])
  const reach = first.radius + (crossed ? second.radius : -second.radius)
  const angle = Math.acos(reach / distance(first.centre, second.centre))
  const at = line + side * angle
  return [polar(first.centre, first.radius, at), polar(second.centre, second.radius, crossed ? at + Math.PI : at)]
}

/** Outline of a bar of two widths with round ends, as a link seen from the side. */
export function bar(from: Circle, to: Circle): readonly Point[] {
  const line = Math.atan2(to.centre[1] - from.centre[1], to.centre[0] - from.centre[0])
  const angle = Math.acos(Math.max(-1, Math.min(1, (from.radius - to.radius) / distance(from.centre, to.centre))))
  const step = Math.PI / 12
  return [...arcPoints(from, line + angle, line + 2 * Math.PI - angle, step), ...arcPoints(to, line - angle, line + angle, step)]
}

/** Left, bottom, right and top of points. */
export interface Box {
  readonly left: number
  readonly bottom: number
  readonly right: number
  readonly top: number
}

/** The box round points. */
export function boxOf(points: readonly Point[]): Box {
  let [left, bottom, right, top] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY]
  for (const [x, y] of points) {
    left = Math.min(left, x)
    right = Math.max(right, x)
    bottom = Math.min(bottom, y)
    top = Math.max(top, y)
  }
  return { left, bottom, right, top }
}

/** Whether two straight pieces cross inside both. */
export function crosses([a, b]: readonly [Point, Point], [c, d]: readonly [Point, Point]): boolean {
  const side = (p: Point, q: Point, r: Point) => (q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0])
  return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0
}
