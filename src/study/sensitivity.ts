import { type Formula, type Inputs, NoResultError, type Output, type Scalar } from '../formula/index.js'
import { InputError, type Issue, issue, type Kind, Quantity } from '../units/index.js'
import { isDistribution, scatterOf } from './distribution.js'
import { limitsOf, modelOf, type Named, type OptionsFor, outputOf, slope } from './model.js'
import { checkShare } from './options.js'
import { planRecord, type ScalarPath, scalarAt, untyped, withValueAt } from './path.js'
import type { Scatter } from './scatter.js'
import { Sensitivities, type Sensitivity } from './sensitivity-result.js'
import { hasRange, scalarsWithRanges, type Uncertain } from './uncertain-model.js'

/** How local sensitivities are worked out. */
export interface SensitivityOptions<P extends string = string> {
  /** The inputs to look at. Default: every number given, and every one left out whose default carries a range. */
  readonly inputs?: readonly P[]
  /** Part of its value by which an input without a range is moved up and down. Default 0.1. */
  readonly swing?: number
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
    if (!found.some((entry) => entry.path === path)) issues.push(issue('inputs', path, 'must be given a value'))
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
