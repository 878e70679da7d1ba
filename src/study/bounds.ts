import { barChart, type Chart } from '../chart/index.js'
import { type Formula, type Inputs, NoResultError, type Output } from '../formula/index.js'
import { minimise, sobolSequence } from '../numeric/index.js'
import { InputError, type Issue, type Kind, Quantity, show } from '../units/index.js'
import { type OptionsFor, type Uncertain, uncertainModel, type Varied } from './model.js'
import { untyped } from './path.js'
import { markdownTable, Printable } from './show.js'

/** How extremes are searched. */
export interface BoundsOptions {
  /** Points inside the ranges at which the direction of every input is tested and from which the best are followed. Default 64. */
  readonly points?: number
  /** Default 1. */
  readonly seed?: number
}

/** How the result goes with one input over the ranges, as far as tested. */
export type Trend = 'rising' | 'falling' | 'mixed' | 'none'

/** One extreme and the inputs that give it. */
export interface Extreme {
  readonly value: Quantity<Kind>
  /** Inputs there, by path. */
  readonly at: Readonly<Record<string, Quantity<Kind>>>
  /** Whether every input stands at an end of its range. */
  readonly corner: boolean
}

/** The range of a result over ranges of its inputs. */
export class Bounds extends Printable {
  constructor(
    readonly formula: string,
    readonly low: Extreme,
    readonly high: Extreme,
    readonly inputs: readonly {
      readonly path: string
      readonly low: Quantity<Kind>
      readonly high: Quantity<Kind>
      readonly trend: Trend
    }[],
    /**
     * `monotone`: every input moved the result one way only at every point tested, so both extremes are corners.
     * `searched`: some input turns; the extremes are the best that corners and searches from inside found.
     */
    readonly state: 'monotone' | 'searched',
    /** How often the formula ran. */
    readonly evaluations: number,
    /** Points tested that have no finite answer. */
    readonly gaps: number,
  ) {
    super()
  }

  /** One sentence on how sure the bounds are. */
  get message(): string {
    const turning = this.inputs.filter(({ trend }) => trend === 'mixed').map(({ path }) => path)
    const how =
      this.state === 'monotone'
        ? 'monotone in every input at all points tested, so the extremes are at corners of the ranges'
        : `${turning.length > 0 ? `not monotone in ${turning.join(', ')}` : 'not tested everywhere'}: extremes found by search, not proven`
    return `${this.formula}: ${this.low.value} to ${this.high.value}; ${how}${this.gaps > 0 ? `; ${this.gaps} points have no finite answer` : ''}`
  }

  /** The range as one bar. */
  get chart(): Chart {
    const { kind } = this.low.value
    const unit = String(this.high.value).split(' ').slice(1).join(' ') || '1'
    const shown = (y: Quantity<Kind>) => (unit === '1' ? y.si : (y.in as (unit: string) => number)(unit))
    return barChart({
      title: `Bounds of ${this.formula}`,
      description: this.message,
      value: { title: kind, unit },
      bars: [
        { name: this.formula, from: shown(this.low.value), to: shown(this.high.value), label: `${this.low.value} to ${this.high.value}` },
      ],
    })
  }

  toMarkdown(): string {
    const at = ({ at: inputs }: Extreme, path: string) => String(inputs[path])
    return [
      this.message,
      markdownTable(
        ['input', 'from', 'to', 'result', 'at the lowest', 'at the highest'],
        this.inputs.map(({ path, low, high, trend }) => [path, String(low), String(high), trend, at(this.low, path), at(this.high, path)]),
      ),
    ].join('\n\n')
  }
}

/** Corners are all tried up to this many inputs; beyond, those that the trends point to, and neighbours by search. */
const MOST_FOR_CORNERS = 12

/**
 * The lowest and the highest result over ranges of the inputs: the worst case, where `uncertainty` gives the likely one.
 *
 * Ranges are the ends of properties and of bounded distributions (`uniform(low, high)`, `triangular`, `truncated`). All corners are tried (up to 12
 * inputs), then searches run from the best points inside. The result says whether it was monotone wherever tested; search
 * results are found, not proven.
 *
 * Throws one `InputError` that lists every bad input, an unbounded distribution among them; a `NoResultError` where no point has a finite answer.
 */
export function bounds<I extends Inputs, O extends Output>(
  formula: Formula<I, O>,
  given: NoInfer<Uncertain<I>>,
  ...[options]: OptionsFor<O, BoundsOptions>
): Bounds {
  const { points = 64, seed = 1, output } = (options ?? {}) as BoundsOptions & { output?: string }
  const issues: Issue[] = []
  if (!(Number.isInteger(points) && points >= 4))
    issues.push({ path: 'points', given: show(points), accepts: 'must be a whole number of at least 4' })
  if (!Number.isSafeInteger(seed)) issues.push({ path: 'seed', given: show(seed), accepts: 'must be a whole number' })
  const { varied, model } = uncertainModel(untyped(formula), given, output, issues)
  for (const { path, scatter } of varied)
    if (!Number.isFinite(scatter.low) || !Number.isFinite(scatter.high))
      issues.push({ path, given: scatter.words, accepts: 'must have two ends: use uniform(low, high), or cut it with truncated(…)' })
  if (issues.length > 0) throw new InputError(formula.id, issues)
  const search = new Search(varied, model.at)
  const trends = search.trends(points, seed)
  search.corners(trends)
  const monotone = search.gaps === 0 && trends.every((trend) => trend !== 'mixed')
  if (search.lowest === undefined || search.highest === undefined)
    throw new NoResultError(`${formula.id}: no finite answer exists in these ranges`)
  if (!monotone) search.inside()
  const { kind } = model.output
  const extreme = ({ y, x }: Found): Extreme => ({
    value: new Quantity(y, kind),
    at: Object.fromEntries(varied.map((input, i) => [input.path, new Quantity(x[i] as number, input.kind)])),
    corner: varied.every(({ scatter }, i) => x[i] === scatter.low || x[i] === scatter.high),
  })
  return new Bounds(
    formula.id,
    extreme(search.lowest),
    extreme(search.highest),
    varied.map(({ path, kind: of, scatter }, i) => ({
      path,
      low: new Quantity(scatter.low, of),
      high: new Quantity(scatter.high, of),
      trend: trends[i] as Trend,
    })),
    monotone ? 'monotone' : 'searched',
    search.evaluations,
    search.gaps,
  )
}

interface Found {
  readonly y: number
  readonly x: Float64Array
}

class Search {
  evaluations = 0
  gaps = 0
  lowest: Found | undefined
  highest: Found | undefined
  private readonly n: number
  private readonly tried: Found[] = []

  constructor(
    private readonly varied: readonly Varied[],
    private readonly model: (x: Float64Array) => number,
  ) {
    this.n = varied.length
  }

  private place(i: number, fraction: number): number {
    const { low, high } = (this.varied[i] as Varied).scatter
    return fraction === 0 ? low : fraction === 1 ? high : low + fraction * (high - low)
  }

  /** Runs the formula and keeps the extremes. */
  private run(x: Float64Array): number {
    this.evaluations++
    const y = this.model(x)
    if (Number.isNaN(y)) {
      this.gaps++
      return y
    }
    if (this.lowest === undefined || y < this.lowest.y) this.lowest = { y, x: x.slice() }
    if (this.highest === undefined || y > this.highest.y) this.highest = { y, x: x.slice() }
    return y
  }

  /** Along every input, five places through every point: which way the result goes. */
  trends(points: number, seed: number): Trend[] {
    const sequence = sobolSequence(this.n, seed)
    const u = new Float64Array(this.n)
    const x = new Float64Array(this.n)
    const up = new Array<boolean>(this.n).fill(false)
    const down = new Array<boolean>(this.n).fill(false)
    for (let p = 0; p < points; p++) {
      sequence.point(p, u)
      for (let i = 0; i < this.n; i++) x[i] = this.place(i, u[i] as number)
      const own = this.run(x)
      if (!Number.isNaN(own)) this.tried.push({ y: own, x: x.slice() })
      for (let i = 0; i < this.n; i++) {
        const kept = x[i] as number
        let before = Number.NaN
        for (const fraction of [0, 0.25, 0.5, 0.75, 1]) {
          x[i] = this.place(i, fraction)
          const y = this.run(x)
          // Differences within rounding are no direction.
          const level = 1e-12 * Math.max(Math.abs(y), Math.abs(before))
          if (y - before > level) up[i] = true
          if (before - y > level) down[i] = true
          before = y
        }
        x[i] = kept
      }
    }
    return up.map((rises, i) => (rises ? (down[i] ? 'mixed' : 'rising') : down[i] ? 'falling' : 'none'))
  }

  /** All corners, or, with many inputs, those of the known trends with every input that turns on either side. */
  corners(trends: readonly Trend[]): void {
    const x = new Float64Array(this.n)
    const all = this.n <= MOST_FOR_CORNERS
    const free = trends.flatMap((trend, i) => (all || trend === 'mixed' ? [i] : [])).slice(0, MOST_FOR_CORNERS)
    for (const highest of all ? [true] : [true, false]) {
      for (let i = 0; i < this.n; i++) x[i] = this.place(i, (trends[i] === 'rising') === highest ? 1 : 0)
      for (let bits = 0; bits < 2 ** free.length; bits++) {
        free.forEach((i, k) => {
          x[i] = this.place(i, (bits >> k) & 1)
        })
        this.run(x)
      }
    }
  }

  /** Searches from the extremes so far and from the best points inside. */
  inside(): void {
    const bySize = [...this.tried].sort((a, b) => a.y - b.y)
    for (const sign of [1, -1] as const) {
      const extreme = (sign === 1 ? this.lowest : this.highest) as Found
      const starts = [extreme, ...(sign === 1 ? bySize.slice(0, 4) : bySize.slice(-4))]
      for (const { x } of starts) {
        const u = Float64Array.from(x, (xi, i) => {
          const { low, high } = (this.varied[i] as Varied).scatter
          return Math.min(Math.max((xi - low) / (high - low), 0), 1)
        })
        const at = new Float64Array(this.n)
        const value = (fractions: Float64Array) => {
          for (let i = 0; i < this.n; i++) at[i] = this.place(i, fractions[i] as number)
          const y = this.run(at)
          return Number.isNaN(y) ? Number.POSITIVE_INFINITY : sign * y
        }
        if (!Number.isFinite(value(u))) continue
        minimise(value, u, {
          lower: new Float64Array(this.n),
          upper: new Float64Array(this.n).fill(1),
          step: new Float64Array(this.n).fill(0.2),
        })
      }
    }
  }
}
