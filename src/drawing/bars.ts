import type { Block } from './figure.js'
import { textWidth } from './font.js'
import type { Point } from './geometry.js'
import { type Ink, type Item, type LineClass, SMALL, textAt } from './items.js'
import { MARGIN, PAGE_WIDTH } from './view-layout.js'

/** A bar with its name above it and its number at the right. */
export interface Bar {
  readonly name: string
  readonly from?: number
  readonly to: number
  /** Ends of its range, drawn as a line with ends. */
  readonly range?: readonly [low: number, high: number]
  readonly text: string
  readonly line?: LineClass
  readonly fill?: 'tone' | 'paper'
  readonly ink?: Ink
}

/** Bars below each other on one axis. */
export interface Bars {
  readonly bars: readonly Bar[]
  readonly from?: number
  readonly to: number
  /** Upright lines with a name, such as a limit. */
  readonly rules?: readonly BarRule[]
}

/** An upright line across bars. */
export interface BarRule {
  readonly at: number
  readonly name: string
  readonly line?: LineClass
  /** Its place at each bar. Default: the same place at all. */
  readonly each?: readonly number[]
}

const ROW = 32
const HEIGHT = 10
const NAME = 12
const RULE = 16

/** Bars below a height of the page. What is beyond the axis ends in an arrow. */
export function barBlock({ bars, from = 0, to, rules = [] }: Bars, top: number): Block {
  const numbers = Math.max(...bars.map(({ text }) => textWidth(text, SMALL)))
  const [left, right] = [MARGIN, PAGE_WIDTH - MARGIN - numbers - 8]
  const at = (x: number) => left + ((Math.min(to, Math.max(from, x)) - from) / (to - from)) * (right - left)
  const named = rules.filter(({ name }) => name !== '')
  const first = top + RULE * named.length
  const bottom = first + ROW * bars.length
  const items: Item[] = [
    ...named.map(({ at: x, name }, i) => {
      const end = at(x) + 4 + textWidth(name, SMALL) > PAGE_WIDTH - MARGIN
      return textAt([end ? at(x) - 3 : at(x) + 3, top + 11 + RULE * i], name, { anchor: end ? 'end' : 'start' })
    }),
    ...rules.map((rule): Item => {
      const start = top + RULE * Math.max(0, named.indexOf(rule)) + 2
      return { kind: 'lines', line: rule.line ?? 'axis', pieces: rulePieces(rule, bars, at, start, first) }
    }),
    ...bars.flatMap((bar, i) => barItems(bar, first + ROW * i, at, [from, to], right)),
  ]
  return { items, height: bottom - top + 4 }
}

/** Pieces of a rule: it is interrupted where the name of a bar is. */
function rulePieces(
  { at: place, each }: BarRule,
  bars: readonly Bar[],
  at: (x: number) => number,
  start: number,
  first: number,
): readonly (readonly [Point, Point])[] {
  const pieces: [Point, Point][] = []
  let [x, from] = [at(place), start]
  const to = (y: number) => {
    if (y - from > 1)
      pieces.push([
        [x, from],
        [x, y],
      ])
  }
  for (const [i, { name }] of bars.entries()) {
    const y = first + ROW * i
    const own = at(each?.[i] ?? place)
    const crossed = own < MARGIN + textWidth(name, SMALL) + 3
    if (own === x && !crossed) continue
    to(y + 1)
    x = own
    from = crossed ? y + NAME + 3 : y + 1
  }
  to(first + ROW * bars.length)
  return pieces
}

function barItems(bar: Bar, y: number, at: (x: number) => number, [low, high]: readonly [number, number], right: number): readonly Item[] {
  const { name, from = Math.max(0, low), to, range, text, line = 'thin', fill = 'tone', ink = 'ink' } = bar
  const [start, end] = [at(Math.min(from, to)), at(Math.max(from, to))]
  const box: Point[] = [
    [start, y + NAME + 4],
    [end, y + NAME + 4],
    [end, y + NAME + 4 + HEIGHT],
    [start, y + NAME + 4 + HEIGHT],
  ]
  const middle = y + NAME + 4 + HEIGHT / 2
  const beyond: Item[] =
    to > high
      ? [
          {
            kind: 'path',
            line: 'thin',
            points: [
              [end - 5, middle - 5],
              [end, middle],
              [end - 5, middle + 5],
            ],
          },
        ]
      : []
  return [
    textAt([MARGIN, y + NAME], name),
    { kind: 'path', line, points: box, closed: true, fill },
    ...beyond,
    ...(range === undefined ? [] : rangeItems([at(range[0]), at(range[1])], middle, range[1] > high)),
    textAt([right + 8, middle + 4], text, { ink }),
  ]
}

function rangeItems([a, b]: readonly [number, number], y: number, open: boolean): readonly Item[] {
  const end = (x: number) =>
    [
      [x, y - 4],
      [x, y + 4],
    ] as readonly [Point, Point]
  return [
    {
      kind: 'lines',
      line: 'thick',
      pieces: [
        [
          [a, y],
          [b, y],
        ],
        end(a),
        ...(open ? [] : [end(b)]),
      ],
    },
  ]
}
