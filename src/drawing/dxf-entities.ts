import { distance, type Point } from './geometry.js'
import type { Item, TextItem } from './items.js'

/** A group of DXF: its code and its value. */
export type Pair = readonly [code: number, value: string | number]

/** Two ends that lie nearer than this, mm, are one point. */
const SAME_POINT = 1e-6

const line = (layer: string, a: Point, b: Point): Pair[] => [
  [0, 'LINE'],
  [8, layer],
  [10, a[0]],
  [20, a[1]],
  [30, 0],
  [11, b[0]],
  [21, b[1]],
  [31, 0],
]

/** A closed line leads from its last point back to its first; a line that ends on its first point is closed as well. */
function polyline(layer: string, points: readonly Point[], closed: boolean): Pair[] {
  const [first, last] = [points[0], points.at(-1)]
  if (first === undefined || last === undefined || points.length < 2) return []
  const returns = points.length > 2 && distance(first, last) < SAME_POINT
  const corners = returns ? points.slice(0, -1) : points
  if (corners.length === 2) return line(layer, corners[0]!, corners[1]!)
  return [
    [0, 'POLYLINE'],
    [8, layer],
    [66, '1'],
    [10, 0],
    [20, 0],
    [30, 0],
    [70, closed || returns ? '1' : '0'],
    ...corners.flatMap(([x, y]): Pair[] => [
      [0, 'VERTEX'],
      [8, layer],
      [10, x],
      [20, y],
      [30, 0],
    ]),
    [0, 'SEQEND'],
    [8, layer],
  ]
}

/** Shapes of a view as entities of release 12. `back` leads from the page to millimetres; a unit of the page is `perUnit` millimetres. */
export function itemPairs(item: Item, back: (point: Point) => Point, perUnit: number): Pair[] {
  switch (item.kind) {
    case 'text':
      return textPairs(item, back, perUnit)
    case 'circle': {
      if (item.line === 'none') return []
      const [x, y] = back(item.centre)
      return [
        [0, 'CIRCLE'],
        [8, item.line],
        [10, x],
        [20, y],
        [30, 0],
        [40, item.radius * perUnit],
      ]
    }
    case 'lines':
      return item.pieces.flatMap(([a, b]) => line(item.line, back(a), back(b)))
    case 'path': {
      // A filled head without a line is drawn by its outline.
      const layer = item.line === 'none' ? (item.fill === 'solid' ? 'fine' : undefined) : item.line
      if (layer === undefined) return []
      return polyline(layer, item.points.map(back), item.closed === true)
    }
  }
}

/** Codes of release 12 for letters beyond ASCII. */
const LETTERS: Readonly<Record<string, string>> = {
  Ø: '%%c',
  '°': '%%d',
  '±': '%%p',
  '−': '-',
  '×': 'x',
  '–': '-',
  '’': "'",
  '·': '*',
  μ: 'u',
  '✓': 'ok',
  '✕': 'x',
}

function textPairs({ at, text, anchor, size, turned }: TextItem, back: (point: Point) => Point, perUnit: number): Pair[] {
  const [x, y] = back(at)
  const place = { start: 0, middle: 1, end: 2 }[anchor]
  return [
    [0, 'TEXT'],
    [8, 'text'],
    [10, x],
    [20, y],
    [30, 0],
    [40, 0.72 * size * perUnit],
    [1, [...text].map((letter) => LETTERS[letter] ?? (letter.charCodeAt(0) < 128 ? letter : '?')).join('')],
    [50, turned ? 90 : 0],
    [72, String(place)],
    ...(place === 0
      ? []
      : ([
          [11, x],
          [21, y],
          [31, 0],
        ] as const)),
  ]
}
