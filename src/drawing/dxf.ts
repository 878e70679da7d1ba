import type { Drawing, Group, TitleBlock } from './drawing.js'
import { itemPairs, type Pair } from './dxf-entities.js'
import type { Point } from './geometry.js'
import type { Item, LineClass } from './items.js'
import { atFullSize, TITLE_UNIT, titleBlockItems } from './title-block.js'
import { MARGIN } from './view-layout.js'

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

/**
 * A drawing as DXF (release 12, ASCII), in millimetres at full size: every view that has a scale, below each other, with its dimensions as lines and
 * text, and the title block where the drawing has one. Outlines are polylines, closed where they are closed. Layers are named after what lines mean. Returns `undefined` for a chart: it has no view to
 * scale, and a file would be empty.
 */
export function toDxf({ groups, titleBlock }: Pick<Drawing, 'groups' | 'titleBlock'>): string | undefined {
  let shift = 0
  const entities = groups.flatMap((group) => {
    if (group.place === undefined) return []
    const { pairs, low, high } = viewPairs(group, shift)
    if (pairs.length === 0) return []
    shift -= high - low + 20
    return pairs
  })
  if (entities.length === 0) return undefined
  if (titleBlock !== undefined) entities.push(...titlePairs(titleBlock, shift))
  const pairs: Pair[] = [
    [999, 'millimetres'],
    ...section('HEADER', [
      [9, '$ACADVER'],
      [1, 'AC1009'],
      // Millimetres. Release 12 does not know these two, later programs read them.
      [9, '$INSUNITS'],
      [70, '4'],
      [9, '$MEASUREMENT'],
      [70, '1'],
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

/** The title block in millimetres, its upper edge at a height. */
const titlePairs = (titleBlock: TitleBlock, top: number): Pair[] =>
  titleBlockItems(atFullSize(titleBlock), 0).items.flatMap((item) =>
    itemPairs(item, ([x, y]) => [(x - MARGIN) * TITLE_UNIT, top - y * TITLE_UNIT], TITLE_UNIT),
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
