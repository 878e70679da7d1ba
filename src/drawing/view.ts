import { forceArrow } from './arrows.js'
import { wrapped } from './font.js'
import { add, arcPoints, type Circle, type Point, polar } from './geometry.js'
import { hatchLines } from './hatch.js'
import { type Fill, type Ink, type Item, type LineClass, SMALL } from './items.js'
import type { Label } from './labels.js'
import { plain } from './numbers.js'

/** The place of a view on the page. */
export interface Place {
  /** Units of the page in a millimetre. */
  readonly scale: number
  /** A point of the view on the page. */
  readonly to: (point: Point) => Point
}

/** A dimension of a view, in millimetres. */
export interface ViewDimension {
  readonly from: Point
  readonly to: Point
  readonly side: 'above' | 'below' | 'left' | 'right'
  readonly text: string
}

/** A label of a view, its anchor in millimetres. */
export interface ViewLabel extends Omit<Label, 'anchor'> {
  readonly anchor: Point
  readonly side: 'left' | 'right'
}

/** Options of a label. Default: right column, ink, an arrow on the edge that it names. */
export interface LabelOptions {
  readonly side?: 'left' | 'right'
  readonly ink?: Ink
  readonly end?: Label['end']
  readonly bold?: boolean
}

/** How an area is drawn. */
export interface AreaOptions {
  readonly line?: LineClass
  readonly fill?: Fill
  /** Hatch: angle in degrees and distance of its lines in units. */
  readonly hatch?: { readonly angle: number; readonly spacing: number }
  readonly holes?: readonly (readonly Point[])[]
}

/** Longest line of a label, in units. */
const LABEL_WIDTH = 118

/**
 * One view of a part: outlines in millimetres with y up, dimensions outside it, labels in columns beside it. The page chooses its scale from the
 * standard ones, the largest that leaves room for the labels.
 */
export class View {
  readonly dimensions: ViewDimension[] = []
  readonly labels: ViewLabel[] = []
  readonly #draw: ((place: Place) => readonly Item[])[] = []
  readonly #extent: { readonly at: Point; readonly off: Point }[] = []
  /** Longest and shortest force, for the bar of forces. */
  force: { readonly perUnit: number } | undefined

  constructor(
    readonly title: string,
    /** Greatest height in units; a scale for several views; a flat part for a template; labels as numbers with a legend below. */
    readonly options: { readonly height?: number; readonly scale?: number; readonly template?: boolean; readonly numbered?: boolean } = {},
  ) {}

  /** An outline; an area where it is closed. */
  area(points: readonly Point[], { line = 'thick', fill, hatch, holes = [] }: AreaOptions = {}): this {
    this.#take(points)
    const rings = [points, ...holes]
    // A whole area carries its fill and its outline in one path; one with holes is filled as a whole, and its holes are drawn on it.
    const own = fill === undefined ? {} : { fill }
    const whole = holes.length === 0
    this.#draw.push(({ to, scale }) => [
      ...(fill === undefined || whole ? [] : [{ kind: 'path', line: 'none', points: points.map(to), closed: true, fill } as const]),
      ...(whole ? [{ kind: 'path', line, points: points.map(to), closed: true, ...own } as const] : []),
      ...(hatch === undefined
        ? []
        : [
            {
              kind: 'lines',
              line: 'fine',
              pieces: hatchLines(rings, (hatch.angle * Math.PI) / 180, hatch.spacing / scale).map(([a, b]) => [to(a), to(b)] as const),
            } as const,
          ]),
      ...(whole ? [] : rings.map((ring) => ({ kind: 'path', line, points: ring.map(to), closed: true }) as const)),
    ])
    return this
  }

  /** A line through points. */
  line(points: readonly Point[], line: LineClass = 'thick'): this {
    this.#take(points)
    this.#draw.push(({ to }) => [{ kind: 'path', line, points: points.map(to) }])
    return this
  }

  /** A circle; its radius in millimetres. */
  circle({ centre, radius }: Circle, line: LineClass = 'thick', fill?: Fill): this {
    this.#take([add(centre, [-radius, -radius]), add(centre, [radius, radius])])
    this.#draw.push(({ to, scale }) => [
      { kind: 'circle', line, centre: to(centre), radius: radius * scale, ...(fill === undefined ? {} : { fill }) },
    ])
    return this
  }

  /** An arc, counter-clockwise where `to` is above `from`, in radians. */
  arc(circle: Circle, from: number, to: number, line: LineClass = 'thick'): this {
    return this.line(arcPoints(circle, from, to), line)
  }

  /** Something of a fixed size in units, such as a joint of a small pose. */
  mark(draw: (place: Place) => readonly Item[], at: Point, reach = 0): this {
    this.#extent.push({ at, off: [reach, reach] }, { at, off: [-reach, -reach] })
    this.#draw.push(draw)
    return this
  }

  /** Centre lines of a circle. */
  centre({ centre, radius }: Circle, beyond = 1.15): this {
    const reach = radius * beyond
    return this.line([add(centre, [-reach, 0]), add(centre, [reach, 0])], 'axis').line(
      [add(centre, [0, -reach]), add(centre, [0, reach])],
      'axis',
    )
  }

  /** A force with its tip on a point, from a direction in radians; its length follows the scale of forces. */
  arrow(tip: Point, toward: number, newton: number, perUnit: number, line: 'force' | 'bad' = 'force'): this {
    this.force = { perUnit }
    const length = newton / perUnit
    const back = polar([0, 0], -length, toward)
    this.#extent.push({ at: tip, off: back }, { at: tip, off: [0, 0] })
    this.#draw.push(({ to }) => {
      const at = to(tip)
      return forceArrow(at, add(at, [back[0], -back[1]]), line)
    })
    return this
  }

  /** A dimension. Its number is the distance along its axis unless a text is given. */
  dimension(from: Point, to: Point, side: ViewDimension['side'], text?: string, prefix = ''): this {
    const axis = side === 'above' || side === 'below' ? 0 : 1
    this.dimensions.push({ from, to, side, text: text ?? `${prefix}${plain(Math.abs(to[axis] - from[axis]))}` })
    return this
  }

  /** A label with its leader. Lines that are too long are broken between words. */
  label(
    anchor: Point,
    text: string | readonly string[],
    { side = 'right', ink = 'ink', end = 'arrow', bold = false }: LabelOptions = {},
  ): this {
    if (this.options.numbered === true) {
      const meaning = typeof text === 'string' ? text : text.join(', ')
      this.labels.push({ anchor, lines: [String(this.labels.length + 1)], side, ink, end, bold: true, meaning })
      return this
    }
    const lines = (typeof text === 'string' ? [text] : text).flatMap((line) => wrapped(line, LABEL_WIDTH, SMALL, bold))
    this.labels.push({ anchor, lines, side, ink, end, bold })
    return this
  }

  /** Left, right, top and bottom on the page about the origin of the view, at a scale. */
  boxAt(scale: number) {
    let [left, right, top, bottom] = [
      Number.POSITIVE_INFINITY,
      Number.NEGATIVE_INFINITY,
      Number.POSITIVE_INFINITY,
      Number.NEGATIVE_INFINITY,
    ]
    for (const { at, off } of this.#extent) {
      const [x, y] = [at[0] * scale + off[0], -at[1] * scale - off[1]]
      if (x < left) left = x
      if (x > right) right = x
      if (y < top) top = y
      if (y > bottom) bottom = y
    }
    return { left, right, top, bottom }
  }

  /** The shapes of the view, without dimensions and labels. */
  items(place: Place): readonly Item[] {
    return this.#draw.flatMap((draw) => draw(place))
  }

  #take(points: readonly Point[]): void {
    for (const at of points) this.#extent.push({ at, off: [0, 0] })
  }
}
