/** A point of the ground. */
interface Point {
  readonly x: number
  readonly y: number
}

/** Indices of the convex hull's corners, counter-clockwise (A. M. Andrew's monotone chain, 1979). */
export function convexHull(points: readonly Point[]): number[] {
  const order = points.map((_, i) => i).sort((i, j) => points[i]!.x - points[j]!.x || points[i]!.y - points[j]!.y)
  const size = Math.max(...points.map((p) => Math.hypot(p.x - points[0]!.x, p.y - points[0]!.y)))
  const turnsLeft = (a: number, b: number, c: number) => {
    const [p, q, r] = [points[a]!, points[b]!, points[c]!]
    return (q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x) > 1e-12 * size * size
  }
  const half = (ordered: readonly number[]) => {
    const chain: number[] = []
    for (const i of ordered) {
      while (chain.length >= 2 && !turnsLeft(chain.at(-2)!, chain.at(-1)!, i)) chain.pop()
      chain.push(i)
    }
    return chain.slice(0, -1)
  }
  const hull = [...half(order), ...half(order.toReversed())]
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
