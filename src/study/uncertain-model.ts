import { type AnyFormula, type Arg, type Input, type Inputs, isProperty, type Property, type Scalar } from '../formula/index.js'
import { normalCdf } from '../numeric/index.js'
import { type In, InputError, type Issue, issue, type Kind, Quantity } from '../units/index.js'
import { type DistributionOf, isDistribution, scatterOf } from './distribution.js'
import { limitsOf, type Model, modelOf, outputOf } from './model.js'
import { withValueAt } from './path.js'
import { type Scatter, triangularScatter, truncatedScatter } from './scatter.js'

/** One input that may be uncertain: a value, a property with its range, or a distribution. */
export type UncertainArg<S> = S extends Kind
  ? In<S> | DistributionOf<S>
  : S extends { kind: infer K extends Kind }
    ? In<K> | DistributionOf<K>
    : S extends { fields: infer F }
      ? Uncertain<F>
      : Arg<S>

type Skip = { optional: true } | { default: unknown }

/** A formula's argument in which numbers may be distributions; a property with a range counts as one. */
export type Uncertain<I> = [
  { readonly [N in keyof I as I[N] extends Skip ? never : N]: UncertainArg<I[N]> } & {
    readonly [N in keyof I as I[N] extends Skip ? N : never]?: UncertainArg<I[N]> | undefined
  },
][0] extends infer G
  ? { [N in keyof G]: G[N] }
  : never

/** An input that varies. */
export interface Varied {
  readonly path: string
  readonly kind: Kind
  /** The value as given, SI: a property's typical value, a distribution's mean. */
  readonly nominal: number
  readonly scatter: Scatter
  /** Whether the range came from a property's record. */
  readonly fromProperty: boolean
}

/** The most of a distribution that may lie outside its input's limits without being bad input. */
const MAX_CUT = 0.01

/** A formula with what is uncertain about its inputs. */
export interface UncertainModel {
  readonly varied: readonly Varied[]
  readonly model: Model
  /** The argument with every distribution replaced by its mean. */
  readonly nominal: Record<string, unknown>
  /** Remarks on what was done to the inputs. */
  readonly remarks: readonly string[]
}

/**
 * Finds what is uncertain in an argument: distributions, properties with a range (triangular over it), and omitted inputs whose default
 * is such a property.
 * Throws one `InputError` that lists every issue, nothing uncertain among them.
 */
export function uncertainModel(formula: AnyFormula, given: unknown, outputName: unknown, issues: Issue[] = []): UncertainModel {
  const output = outputOf(formula, outputName, issues)
  const remarks: string[] = []
  const varied: Varied[] = []
  let nominal = (given ?? {}) as Record<string, unknown>
  for (const { path, scalar, value, byDefault } of scalarsWithRanges(formula.def.inputs, given)) {
    const found = scatterAt(path, scalar, value, issues, remarks)
    if (byDefault) nominal = withValueAt(nominal, path, value)
    if (isDistribution(value)) nominal = withValueAt(nominal, path, new Quantity(found?.nominal ?? 1, scalar.kind))
    if (found !== undefined) varied.push(found)
  }
  const model = modelOf(
    formula,
    nominal,
    varied.map(({ path }) => path),
    output,
    issues,
  )
  if (issues.length === 0 && varied.length === 0)
    issues.push(
      issue('given', given, 'must hold something uncertain: a property with a range, or a distribution such as normal(0.2, 0.04)'),
    )
  if (issues.length > 0) throw new InputError(formula.id, issues)
  return { varied, model, nominal, remarks }
}

function scatterAt(path: string, scalar: Scalar, value: unknown, issues: Issue[], remarks: string[]): Varied | undefined {
  const { kind } = scalar
  if (!isDistribution(value)) {
    if (!hasRange(value) || value.kind !== kind) return undefined
    const scatter = triangularScatter(value.low, value.si, value.high, kind)
    return { path, kind, nominal: value.si, scatter, fromProperty: true }
  }
  const scatter = scatterOf(value, kind, path, issues)
  if (scatter === undefined) return undefined
  const { low, high } = limitsOf(scalar)
  const cut = scatter.below(low) + 1 - scatter.below(high)
  if (scatter.low >= low && scatter.high <= high) return { path, kind, nominal: scatter.mean, scatter, fromProperty: false }
  const ends = [
    Number.isFinite(low) && `at least ${new Quantity(low, kind)}`,
    Number.isFinite(high) && `at most ${new Quantity(high, kind)}`,
  ]
    .filter(Boolean)
    .join(' and ')
  if (cut > MAX_CUT || scatter.low > high || scatter.high < low) {
    issues.push({
      path,
      given: scatter.words,
      accepts: `must be ${ends}, where ${Number((100 * cut).toPrecision(2))} % of this distribution is not; cut it with truncated(…) or choose another`,
    })
    return undefined
  }
  if (cut > 1e-12) remarks.push(`${path}: the ${cut.toExponential(0)} of the distribution that is not ${ends} is cut off`)
  const kept = truncatedScatter(scatter, low, high, kind)
  return { path, kind, nominal: kept.mean, scatter: kept, fromProperty: false }
}

/** Every number given, with its record and its path. */
export function scalarsGiven(inputs: Inputs, given: unknown, prefix = ''): { path: string; scalar: Scalar; value: unknown }[] {
  if (typeof given !== 'object' || given === null) return []
  return Object.entries(inputs).flatMap(([name, input]: [string, Input]) => {
    const value = (given as Record<string, unknown>)[name]
    if (value === undefined) return []
    if (typeof input === 'string') return [{ path: prefix + name, scalar: { kind: input } as Scalar, value }]
    if ('kind' in input) return [{ path: prefix + name, scalar: input, value }]
    return 'fields' in input ? scalarsGiven(input.fields, value, `${prefix}${name}.`) : []
  })
}

/** The same, and every number left out whose default carries a range. */
export function scalarsWithRanges(inputs: Inputs, given: unknown): { path: string; scalar: Scalar; value: unknown; byDefault: boolean }[] {
  const found = scalarsGiven(inputs, given).map((entry) => ({ ...entry, byDefault: false }))
  const paths = new Set(found.map(({ path }) => path))
  const silent = scalarsByDefault(inputs).filter(({ path }) => !paths.has(path))
  return [...found, ...silent.map((entry) => ({ ...entry, byDefault: true }))]
}

function scalarsByDefault(inputs: Inputs, prefix = ''): { path: string; scalar: Scalar; value: Property }[] {
  return Object.entries(inputs).flatMap(([name, input]: [string, Input]) => {
    if (typeof input === 'string') return []
    if ('fields' in input) return scalarsByDefault(input.fields, `${prefix}${name}.`)
    return 'kind' in input && hasRange(input.default) ? [{ path: prefix + name, scalar: input, value: input.default }] : []
  })
}

/** Whether a value is a property that may lie elsewhere than at its typical value. */
export const hasRange = (value: unknown): value is Property => isProperty(value) && value.low < value.high

/** The value of an input at a normal score: where the same share of its distribution lies below. */
export function valueAtScore({ scatter }: Varied, score: number): number {
  return scatter.atScore?.(score) ?? scatter.quantile(Math.min(Math.max(normalCdf(score), Number.MIN_VALUE), 1 - 2 ** -53))
}
