import { distance, type Point } from './geometry.js'

/** Steps in a unit of the page: lines end on a tenth of a unit, a fortieth of a millimetre on paper. */
const GRID = 10

/** A number of tenths as it is written in a path: `0.5` is `.5`. */
const tenths = (n: number): string => String(n / GRID).replace(/^(-?)0\./, '$1.')

/** Lines of fewer points than this are drawn through all of them. */
const KEEP_ALL_BELOW = 6
/** A line leaves out points that lie no farther from it than this, in units of the page: six hundredths of a millimetre on paper. */
const SIMPLIFY_TOLERANCE = 0.25

/** Points of a line that it needs: the others lie so near to it that nobody sees a difference (Douglas and Peucker). */
function needed(points: readonly Point[]): readonly Point[] {
  if (points.length < KEEP_ALL_BELOW) return points
  const kept = new Set([0, points.length - 1])
  const open: (readonly [number, number])[] = [[0, points.length - 1]]
  for (let piece = open.pop(); piece !== undefined; piece = open.pop()) {
    const [from, to] = piece
    let [farthest, most] = [0, SIMPLIFY_TOLERANCE]
    for (let i = from + 1; i < to; i++) {
      const off = offLine(points[i] as Point, points[from] as Point, points[to] as Point)
      if (off > most) [farthest, most] = [i, off]
    }
    if (farthest === 0) continue
    kept.add(farthest)
    open.push([from, farthest], [farthest, to])
  }
  return points.filter((_, i) => kept.has(i))
}

/** Distance of a point from a straight piece. */
function offLine(point: Point, from: Point, to: Point): number {
  const length = distance(from, to)
  if (length === 0) return distance(point, from)
  const [dx, dy] = [(to[0] - from[0]) / length, (to[1] - from[1]) / length]
  const along = Math.max(0, Math.min(length, (point[0] - from[0]) * dx + (point[1] - from[1]) * dy))
  return distance(point, [from[0] + along * dx, from[1] + along * dy])
}

/** A line of a path: through points, or from the last one back to the first as well. */
export interface PathLine {
  readonly points: readonly Point[]
  readonly closed?: boolean
}

/**
 * The `d` of a path through some lines of points. Its first point is absolute, every other one relative to the point before it; points lie on a grid, so
 * that rounding does not add up. A line of one point is a dot.
 */
export function pathData(lines: readonly PathLine[]): string {
  let [x, y] = [0, 0]
  let started = false
  return lines
    .map(({ points: all, closed = false }) => {
      const points = needed(all)
      let [text, open] = ['', '']
      points.forEach((point, i) => {
        const at = point.map((x) => Math.round(x * GRID)) as [number, number]
        const [dx, dy] = [at[0] - x, at[1] - y]
        const name = i > 0 ? (dy === 0 ? 'h' : dx === 0 ? 'v' : 'l') : started ? 'm' : 'M'
        if (i > 0 && dx === 0 && dy === 0 && points.length > 2) return
        const numbers = (name === 'h' ? [dx] : name === 'v' ? [dy] : [dx, dy]).map(tenths)
        const goesOn = name === 'l' && open === 'l'
        const pieces = numbers.map((number, k) => (number.startsWith('-') || (k === 0 && !goesOn) ? number : `,${number}`))
        text += `${goesOn ? '' : name}${pieces.join('')}`
        open = name
        ;[x, y] = at
        started = true
      })
      if (points.length === 1) return `${text}h0`
      // Closing a line leads back to its first point.
      if (closed && points[0] !== undefined) [x, y] = points[0].map((coordinate) => Math.round(coordinate * GRID)) as [number, number]
      return closed ? `${text}z` : text
    })
    .join('')
}
