import { barChart, type Chart } from '../chart/index.js'
import { type Formula, type Inputs, NoResultError, type Output, type Scalar } from '../formula/index.js'
import { InputError, type Issue, type Kind, Quantity, show } from '../units/index.js'
import { isDistribution, scatterOf } from './distribution.js'
import { limitsOf, modelOf, type Named, type OptionsFor, outputOf, slope } from './model.js'
import { checkShare } from './options.js'
import { planRecord, type ScalarPath, scalarAt, untyped, withValueAt } from './path.js'
import type { Scatter } from './scatter.js'
import { markdownTable, Printable } from './show.js'
import { hasRange, scalarsWithRanges, type Uncertain } from './uncertain-model.js'

/** How local sensitivities are worked out. */
export interface SensitivityOptions<P extends string = string> {
  /** The inputs to look at. Default: every number given, and every one left out whose default carries a range. */
  readonly inputs?: readonly P[]
  /** Part of its value by which an input without a range is moved up and down. Default 0.1. */
  readonly swing?: number
}

/** What one input does to the result. */
export interface Sensitivity {
  /** Path of the input. */
  readonly path: string
  /** Its value. */
  readonly value: Quantity<Kind>
  /** Slope of the result over the input, SI. */
  readonly slope: number
  /**
   * How far the slope may be off, SI: the difference to a rule of lower order, what a kink near the value does, and rounding. Large beside the slope where the result has
   * a kink or is noisy.
   */
  readonly slopeError: number
  /**
   * Percent of change in the result for one percent in the input. Nothing where it says nothing: for a temperature, whose zero
   * is arbitrary to the eye, and where the result is zero.
   */
  readonly elasticity: number | undefined
  /** Where the input is moved to: the ends of its property's range, the 5 % and 95 % points of its distribution, or its value ∓ the swing. */
  readonly from: Quantity<Kind>
  /** Upper end of that move. */
  readonly to: Quantity<Kind>
  /** Where those ends come from. */
  readonly range: 'property' | 'distribution' | 'swing'
  /** The result at `from` and at `to`; undefined where the formula has no finite answer. */
  readonly atFrom: Quantity<Kind> | undefined
  /** The result at `to`; undefined where the formula has no finite answer. */
  readonly atTo: Quantity<Kind> | undefined
}

/** Local sensitivities, those that move the result most first. */
export class Sensitivities extends Printable {
  constructor(
    readonly formula: string,
    /** The result at the values given. */
    readonly value: Quantity<Kind>,
    readonly inputs: readonly Sensitivity[],
  ) {
    super()
  }

  /** A tornado: bars from the result at each input's low end to that at its high end. */
  get chart(): Chart {
    const { kind } = this.value
    const unit = String(new Quantity(0, kind)).split(' ').slice(1).join(' ') || '1'
    const shown = (y: Quantity<Kind>) => (unit === '1' ? y.si : (y.in as (unit: string) => number)(unit))
    const ends = this.inputs.filter(({ atFrom, atTo }) => atFrom !== undefined && atTo !== undefined)
    return barChart({
      title: `What moves ${this.formula}`,
      description: `Bars from the result with each input at its low end to that at its high end, widest first: ${ends
        .slice(0, 4)
        .map(({ path, atFrom, atTo }) => `${path} ${atFrom} to ${atTo}`)
        .join('; ')}.`,
      value: { title: 'result', unit },
      bars: ends.flatMap(({ path, from, to, atFrom, atTo }) => [
        { name: path, from: shown(this.value), to: shown(atFrom as Quantity<Kind>), group: 'low end of the input', label: String(from) },
        { name: path, from: shown(this.value), to: shown(atTo as Quantity<Kind>), group: 'high end of the input', label: String(to) },
      ]),
      rules: [{ name: String(this.value), at: shown(this.value) }],
    })
  }

  toMarkdown(): string {
    const or = (y: unknown) => (y === undefined ? 'no answer' : String(y))
    return [
      `**${this.formula}** = ${this.value}`,
      markdownTable(
        ['input', 'value', 'elasticity', 'moved from … to', 'by', 'result there'],
        this.inputs.map(({ path, value, elasticity, from, to, range, atFrom, atTo }) => [
          path,
          String(value),
          elasticity === undefined ? '–' : String(Number(elasticity.toPrecision(3))),
          `${from} … ${to}`,
          range,
          `${or(atFrom)} … ${or(atTo)}`,
        ]),
      ),
    ].join('\n\n')
  }
}

/**
 * What each input does to a result near the values given: slopes, elasticities, and the result at both ends of each input's range.
 *
 * One input is moved at a time; for interaction and wide ranges see `varianceShares`. An input without a range is moved by ±10 %, kept within its record's limits.
 * Throws one `InputError` that lists every bad input, a `NoResultError` where the result at the values given is not finite.
 */
export function sensitivity<I extends Inputs, O extends Output>(
  formula: Formula<I, O>,
  given: NoInfer<Uncertain<I>>,
  ...[options]: OptionsFor<O, SensitivityOptions<ScalarPath<I>>>
): Sensitivities {
  const any = untyped(formula)
  const {
    inputs,
    swing = 0.1,
    output: name,
  } = planRecord(any.id, (options ?? {}) as Named<SensitivityOptions>, ['inputs', 'swing', 'output'])
  const issues: Issue[] = []
  const output = outputOf(any, name, issues)
  checkShare('swing', swing, issues)
  let nominal = (given ?? {}) as Record<string, unknown>
  const found = scalarsWithRanges(any.def.inputs, given).map((entry) => {
    if (entry.byDefault) nominal = withValueAt(nominal, entry.path, entry.value)
    const scatter = isDistribution(entry.value) ? scatterOf(entry.value, entry.scalar.kind, entry.path, issues) : undefined
    if (isDistribution(entry.value)) nominal = withValueAt(nominal, entry.path, new Quantity(scatter?.median ?? 1, entry.scalar.kind))
    return { ...entry, scatter }
  })
  for (const path of inputs ?? []) {
    scalarAt(any, path)
    if (!found.some((entry) => entry.path === path)) issues.push({ path: 'inputs', given: show(path), accepts: 'must be given a value' })
  }
  const chosen = found.filter(({ path }) => inputs === undefined || inputs.includes(path))
  const paths = chosen.map(({ path }) => path)
  const model = modelOf(any, nominal, paths, output, issues)
  if (issues.length > 0) throw new InputError(formula.id, issues)
  const at = Float64Array.from(paths, (path) => valueAt(model.x, path))
  const value = model.at(at)
  if (Number.isNaN(value)) throw new NoResultError(`${formula.id}: no finite answer exists at the values given`)
  const rows = chosen.map((entry, i) => sensitivityOf(entry, i, at, value, swing, model.at, output.kind))
  const reach = ({ atFrom, atTo }: Sensitivity) => Math.max(Math.abs((atFrom?.si ?? value) - value), Math.abs((atTo?.si ?? value) - value))
  return new Sensitivities(
    formula.id,
    new Quantity(value, output.kind),
    rows.sort((a, b) => reach(b) - reach(a)),
  )
}

const valueAt = (x: Record<string, unknown>, path: string): number =>
  path.split('.').reduce<unknown>((at, name) => (at as Record<string, unknown>)[name], x) as number

interface Entry {
  readonly path: string
  readonly scalar: Scalar
  readonly value: unknown
  readonly scatter: Scatter | undefined
}

function sensitivityOf(
  { path, scalar, value: given, scatter }: Entry,
  index: number,
  at: Float64Array,
  value: number,
  swing: number,
  model: (x: Float64Array) => number,
  outputKind: Kind,
): Sensitivity {
  const { kind } = scalar
  const x = at[index] as number
  const limits = limitsOf(scalar)
  const f = (moved: number) => {
    const all = at.slice()
    all[index] = moved
    return model(all)
  }
  const [low, high, range] = ends(given, scatter, x, swing, limits)
  const step = 1e-3 * (Math.abs(x) || (high - low) / 2 || 1e-3)
  const effect = slope(f, x, step, limits, value)
  const says = kind !== 'temperature' && outputKind !== 'temperature' && value !== 0
  const result = (moved: number) => {
    const y = f(moved)
    return Number.isNaN(y) ? undefined : new Quantity(y, outputKind)
  }
  return {
    path,
    value: new Quantity(x, kind),
    slope: effect.slope,
    slopeError: effect.error,
    elasticity: says ? (effect.slope * x) / value : undefined,
    from: new Quantity(low, kind),
    to: new Quantity(high, kind),
    range,
    atFrom: result(low),
    atTo: result(high),
  }
}

function ends(given: unknown, scatter: Scatter | undefined, x: number, swing: number, limits: { low: number; high: number }) {
  if (scatter !== undefined)
    return [Math.max(scatter.quantile(0.05), limits.low), Math.min(scatter.quantile(0.95), limits.high), 'distribution'] as const
  if (hasRange(given)) return [given.low, given.high, 'property'] as const
  const by = Math.abs(x) * swing
  return [Math.max(x - by, limits.low), Math.min(x + by, limits.high), 'swing'] as const
}
