import type { Drawing, Group } from './drawing.js'
import type { Point } from './geometry.js'
import type { Item, LineClass, TextItem } from './items.js'

/** Line types of the classes, and colours of the DXF palette that read on white and on black. */
const LAYERS: Readonly<Record<Exclude<LineClass, 'none'> | 'text', { readonly colour: number; readonly type: string }>> = {
  thick: { colour: 7, type: 'CONTINUOUS' },
  thin: { colour: 7, type: 'CONTINUOUS' },
  fine: { colour: 8, type: 'CONTINUOUS' },
  hidden: { colour: 8, type: 'HIDDEN' },
  axis: { colour: 8, type: 'CENTER' },
  other: { colour: 8, type: 'PHANTOM' },
  move: { colour: 3, type: 'CONTINUOUS' },
  moveSecond: { colour: 3, type: 'HIDDEN' },
  force: { colour: 5, type: 'CONTINUOUS' },
  bad: { colour: 1, type: 'CONTINUOUS' },
  badSecond: { colour: 1, type: 'HIDDEN' },
  text: { colour: 7, type: 'CONTINUOUS' },
}
/** Line types with their dashes and gaps, mm. */
const TYPES: Readonly<Record<string, readonly number[]>> = {
  CONTINUOUS: [],
  HIDDEN: [3, -1.5],
  CENTER: [7, -1.5, 1, -1.5],
  PHANTOM: [6, -1.5, 1, -1.5, 1, -1.5],
}

type Pair = readonly [code: number, value: string | number]

/**
 * A drawing as DXF (release 12, ASCII), in millimetres at full size: every view that has a scale, below each other, with its dimensions as lines and
 * text. Layers are named after what lines mean.
 */
export function toDxf({ groups }: Pick<Drawing, 'groups'>): string {
  let shift = 0
  const entities = groups.flatMap((group) => {
    if (group.place === undefined) return []
    const { pairs, low, high } = viewPairs(group, shift)
    shift -= high - low + 20
    return pairs
  })
  const pairs: Pair[] = [
    [999, 'millimetres'],
    ...section('HEADER', [
      [9, '$ACADVER'],
      [1, 'AC1009'],
    ]),
    ...section('TABLES', [...typeTable(), ...layerTable()]),
    ...section('ENTITIES', entities),
    [0, 'EOF'],
  ]
  return pairs.map(([code, value]) => `${String(code).padStart(3)}\n${typeof value === 'number' ? decimal(value) : value}\n`).join('')
}

const section = (name: string, pairs: readonly Pair[]): Pair[] => [[0, 'SECTION'], [2, name], ...pairs, [0, 'ENDSEC']]
const table = (name: string, count: number, pairs: readonly Pair[]): Pair[] => [
  [0, 'TABLE'],
  [2, name],
  [70, String(count)],
  ...pairs,
  [0, 'ENDTAB'],
]
const decimal = (x: number): string => (Math.abs(x) < 5e-7 ? '0.0' : x.toFixed(6))

const typeTable = (): Pair[] =>
  table(
    'LTYPE',
    Object.keys(TYPES).length,
    Object.entries(TYPES).flatMap(([name, dashes]): Pair[] => [
      [0, 'LTYPE'],
      [2, name],
      [70, '0'],
      [3, name.toLowerCase()],
      [72, '65'],
      [73, String(dashes.length)],
      [40, dashes.reduce((sum, dash) => sum + Math.abs(dash), 0)],
      ...dashes.map((dash): Pair => [49, dash]),
    ]),
  )

const layerTable = (): Pair[] =>
  table(
    'LAYER',
    Object.keys(LAYERS).length,
    Object.entries(LAYERS).flatMap(([name, { colour, type }]): Pair[] => [
      [0, 'LAYER'],
      [2, name],
      [70, '0'],
      [62, String(colour)],
      [6, type],
    ]),
  )

/** A view in millimetres, its highest point at a height. */
function viewPairs({ items, place }: Group, top: number) {
  const { scale, to } = place as NonNullable<Group['place']>
  const [ox, oy] = to([0, 0])
  const heights = items.flatMap(pointsOf).map(([, y]) => (oy - y) / scale)
  const [low, high] = [Math.min(...heights), Math.max(...heights)]
  const back = ([x, y]: Point): Point => [(x - ox) / scale, (oy - y) / scale + top - high]
  return { low, high, pairs: items.flatMap((item) => itemPairs(item, back, 1 / scale)) }
}

const pointsOf = (item: Item): readonly Point[] => {
  if (item.kind === 'path') return item.points
  if (item.kind === 'lines') return item.pieces.flat()
  if (item.kind === 'text') return [item.at]
  const [[x, y], r] = [item.centre, item.radius]
  return [
    [x - r, y - r],
    [x + r, y + r],
  ]
}

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

function itemPairs(item: Item, back: (point: Point) => Point, perUnit: number): Pair[] {
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
      const points = item.points.map(back)
      const ends = item.closed === true ? [...points, points[0]!] : points
      return ends.slice(1).flatMap((point, i) => line(layer, ends[i]!, point))
    }
  }
}

/** What a text of release 12 writes for letters beyond ASCII. */
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
