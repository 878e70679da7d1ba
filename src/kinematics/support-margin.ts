/** A point of the ground. */
interface Point {
  readonly x: number
  readonly y: number
}

type Numbers = ArrayLike<number>

/**
 * Writes the indices of the convex hull's corners, counter-clockwise, and returns how many they are (A. M. Andrew's monotone chain, 1979). Fewer than
 * three where the points are in one line. `corners` holds two for each point, `order` one.
 */
export function hullInto(corners: Int32Array, order: Int32Array, x: Numbers, y: Numbers, count: number): number {
  let min = 0
  for (let i = 0; i < count; i++) {
    let k = i
    for (; k > 0 && before(x, y, i, order[k - 1]!); k--) order[k] = order[k - 1]!
    order[k] = i
    min = Math.max(min, (x[i]! - x[0]!) ** 2 + (y[i]! - y[0]!) ** 2)
  }
  min *= 1e-12
  const lower = chainInto(corners, 0, order, 0, x, y, count, min)
  return lower + chainInto(corners, lower, order, 1, x, y, count, min)
}

/** Whether a point stands left of another, or under it. */
const before = (x: Numbers, y: Numbers, i: number, j: number): boolean => x[i]! < x[j]! || (x[i] === x[j] && y[i]! < y[j]!)

/** One side of the hull from a place in `corners` on, without its last corner: the lower one from the left, or the upper one from the right. */
function chainInto(
  corners: Int32Array,
  from: number,
  order: Int32Array,
  back: 0 | 1,
  x: Numbers,
  y: Numbers,
  count: number,
  min: number,
): number {
  let end = from
  for (let k = 0; k < count; k++) {
    const i = order[back === 1 ? count - 1 - k : k]!
    while (end >= from + 2 && !turnsLeft(x, y, corners[end - 2]!, corners[end - 1]!, i, min)) end--
    corners[end++] = i
  }
  return end - 1 - from
}

const turnsLeft = (x: Numbers, y: Numbers, a: number, b: number, c: number, min: number): boolean =>
  (x[b]! - x[a]!) * (y[c]! - y[a]!) - (y[b]! - y[a]!) * (x[c]! - x[a]!) > min

/** Indices of the convex hull's corners, counter-clockwise. */
export function convexHull(points: readonly Point[]): number[] {
  const many = points.length
  const corners = new Int32Array(2 * many)
  const [x, y] = [points.map((point) => point.x), points.map((point) => point.y)]
  const hull = [...corners.subarray(0, hullInto(corners, new Int32Array(many), x, y, many))]
  return hull.length < 3 ? [...new Set(hull)] : hull
}

/** Distance of a point inside an edge that runs counter-clockwise from a to b; negative outside. */
export const insideEdge = (a: Point, b: Point, p: Point): number =>
  ((b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x)) / Math.hypot(b.x - a.x, b.y - a.y)

/** Corners of the support polygon as edges, counter-clockwise. */
const edgesOf = (feet: readonly Point[]): (readonly [Point, Point])[] => {
  const corners = convexHull(feet)
  return corners.map((from, i) => [feet[from]!, feet[corners[(i + 1) % corners.length]!]!])
}

/** Least distance of a point inside the support polygon; with two feet minus its distance from the line between them, with fewer −∞. */
export function supportMargin(feet: readonly Point[], p: Point): number {
  if (feet.length < 2) return -Infinity
  const edges = edgesOf(feet)
  if (edges.length >= 3) return Math.min(...edges.map(([a, b]) => insideEdge(a, b, p)))
  const [a, b] = [feet[0]!, feet.at(-1)!]
  const length = (b.x - a.x) ** 2 + (b.y - a.y) ** 2
  const along = length === 0 ? 0 : Math.min(1, Math.max(0, ((p.x - a.x) * (b.x - a.x) + (p.y - a.y) * (b.y - a.y)) / length))
  return -Math.hypot(p.x - a.x - along * (b.x - a.x), p.y - a.y - along * (b.y - a.y))
}

/**
 * Least distance along a direction, forward or backward, from a point to the edge of the support polygon; negative where the point is outside on that
 * line, −∞ where the line misses the polygon.
 */
export function longitudinalMargin(feet: readonly Point[], p: Point, direction: number): number {
  const edges = edgesOf(feet)
  if (edges.length < 3) return -Infinity
  const [ux, uy] = [Math.cos(direction), Math.sin(direction)]
  // The line p + s u is inside between the last edge it enters by and the first it leaves by.
  let [enters, leaves] = [-Infinity, Infinity]
  for (const [a, b] of edges) {
    const inside = insideEdge(a, b, p)
    const rate = ((b.x - a.x) * uy - (b.y - a.y) * ux) / Math.hypot(b.x - a.x, b.y - a.y)
    if (Math.abs(rate) < 1e-15) {
      if (inside < 0) return -Infinity
    } else if (rate > 0) enters = Math.max(enters, -inside / rate)
    else leaves = Math.min(leaves, -inside / rate)
  }
  return enters > leaves ? -Infinity : Math.min(leaves, -enters)
}
