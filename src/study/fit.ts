import { type Formula, type Inputs, type Output, reader, type Scalar } from '../formula/index.js'
import { type In, InputError, type Issue, type Kind, oneOfNames, Quantity, show, type UnitOf } from '../units/index.js'
import { parametersOf } from './fit-intervals.js'
import { FitResult } from './fit-result.js'
import { fitted, type Parameter } from './fit-search.js'
import { limitsOf, type Model, modelOf, outputOf } from './model.js'
import { type KindAt, type ScalarOutput, type ScalarPath, scalarAt, untyped, withValueAt } from './path.js'
import { residualChecks } from './residuals.js'
import { spreadKind } from './show.js'
import type { Fixed } from './sweep.js'

/** A logged column: a list of quantities, or numbers with their unit. */
export type Logged<K extends Kind> = readonly In<K>[] | { readonly unit: UnitOf<K>; readonly values: ArrayLike<number> }

/** A parameter to find: a first guess, and limits where the record's own are too wide. */
export type Guess<K extends Kind> = In<K> | { readonly start: In<K>; readonly low?: In<K>; readonly high?: In<K> }

type OutputKind<O, N> = N extends keyof O ? (O[N] extends Kind ? O[N] : O[N] extends { kind: infer K extends Kind } ? K : never) : never

/** What was measured of a formula's result. */
export type Measured<O> = O extends Kind
  ? Logged<O>
  : O extends { kind: infer K extends Kind; infinite: true }
    ? Logged<K>
    : { readonly [N in ScalarOutput<O>]?: Logged<OutputKind<O, N>> }

/** A fit: what is looked for, what was logged, what is known. */
export interface FitPlan<I, O> {
  /** Inputs to find, by dotted path. */
  readonly parameters: { readonly [P in ScalarPath<I>]?: Guess<KindAt<I, P>> }
  /** Inputs that were logged, one value for each reading. */
  readonly data: { readonly [P in ScalarPath<I>]?: Logged<KindAt<I, P>> }
  /** The measured result; of a formula with several outputs, exactly one of them. */
  readonly measured: Measured<O>
  /** Inputs that are known and the same for all readings. */
  readonly fixed?: Fixed<I>
  /** Standard deviation of a reading of weight 1, where it is known (a quantity of the result's kind). Default: from the residuals. */
  readonly deviation?: Quantity<Kind>
  /** A weight above zero for each reading: the inverse of its variance, to any scale. Default: all alike. */
  readonly weights?: ArrayLike<number>
  /**
   * `squares`: least squares. `huber`: readings further off than 1.345 deviations pull only in proportion, so that a few bad ones hardly matter.
   * Default `squares`.
   */
  readonly loss?: 'squares' | 'huber'
  /** Number of starts: the guess, then others spread over the limits or, where there are none, over the magnitudes around the guess. Default 1. */
  readonly starts?: number
  /**
   * `linear`: from the linear approximation at the best fit, quick. `profile`: where the sum of squares, the other parameters fitted anew, has grown
   * to the limit; right for curved models too. Default `linear`.
   */
  readonly intervals?: 'linear' | 'profile'
  /** Confidence of the intervals. Default 0.95. */
  readonly confidence?: number
}

/**
 * Finds inputs of a formula from logged readings of its result: a friction from tensions, a creep rate from a year of pretension.
 *
 * Least squares by Levenberg and Marquardt's method within the limits of the record, or a robust loss. The answer carries confidence intervals, the parameters
 * that the data cannot tell apart, and checks of the residuals: unusual readings, runs, drift and normality are reported,
 * nothing is dropped. One start finds a local best: guess well, or take several `starts`. In a fit that has not settled no parameter counts as determined.
 *
 * Throws one `InputError` that lists every bad input (columns of unequal length, gaps in a column, units of another kind); a `NoResultError`
 * where the formula has no finite answer at the guess.
 *
 * Source: D. M. Bates, D. G. Watts, *Nonlinear Regression Analysis*, 1988, ch. 2 (linear intervals), 6.1 (profiles); P. J. Huber,
 * *Robust Statistics*, 1981, ch. 7 (loss and its errors).
 */
export function fit<I extends Inputs, O extends Output>(formula: Formula<I, O>, plan: NoInfer<FitPlan<I, O>>): FitResult {
  const any = untyped(formula)
  const { confidence = 0.95, deviation, weights, loss = 'squares', starts = 1, intervals = 'linear' } = plan
  const issues: Issue[] = []
  const given = plan as unknown as {
    parameters: Record<string, unknown>
    data: Record<string, unknown>
    measured: unknown
    fixed?: unknown
  }
  const parameters = Object.entries(given.parameters ?? {}).map(([path, guess]) => parameterOf(path, scalarAt(any, path), guess, issues))
  const columns = Object.entries(given.data ?? {}).map(([path, column]) => {
    const scalar = scalarAt(any, path)
    return { path, kind: scalar.kind, values: columnOf(column, scalar, `data.${path}`, issues) }
  })
  const { output, readings } = measuredOf(any, given.measured, issues)
  if (parameters.length === 0)
    issues.push({ path: 'parameters', given: show(plan.parameters), accepts: 'must name at least one input to find' })
  for (const { path } of parameters)
    if (columns.some((column) => column.path === path))
      issues.push({ path: `data.${path}`, given: 'logged', accepts: 'is also a parameter to find: it is one or the other' })
  for (const { path, values } of columns)
    if (values.length !== readings.length)
      issues.push({
        path: `data.${path}`,
        given: `${values.length} values`,
        accepts: `must have one value for each of ${readings.length} readings`,
      })
  if (readings.length < parameters.length && readings.length > 0)
    issues.push({
      path: 'measured',
      given: `${readings.length} readings`,
      accepts: `must be at least as many as the ${parameters.length} parameters`,
    })
  optionIssues(plan as never, readings.length, issues)
  if (!(confidence > 0 && confidence < 1))
    issues.push({ path: 'confidence', given: show(confidence), accepts: 'must be a number between 0 and 1' })
  if (deviation !== undefined && (deviation.kind !== spreadKind(output.kind) || !(deviation.si > 0)))
    issues.push({ path: 'deviation', given: show(deviation), accepts: `must be a ${spreadKind(output.kind)} above zero` })
  let nominal: unknown = given.fixed ?? {}
  for (const { path, kind, start } of parameters) nominal = withValueAt(nominal, path, new Quantity(start, kind))
  for (const { path, kind, values } of columns) nominal = withValueAt(nominal, path, new Quantity(values[0] ?? 0, kind))
  if (issues.length > 0) throw new InputError(formula.id, issues)
  const paths = [...parameters, ...columns].map(({ path }) => path)
  const model = modelOf(any, nominal, paths, output, issues)
  if (issues.length > 0) throw new InputError(formula.id, issues)

  const found = fitted({
    id: formula.id,
    parameters,
    readings,
    predict: predictor(model, parameters.length, columns),
    weights: weights === undefined ? new Float64Array(readings.length).fill(1) : Float64Array.from(weights),
    sigma: deviation?.si,
    starts,
    loss,
  })
  // Measured minus fitted, as residuals are read.
  const residuals = readings.map((y, i) => y - found.predict(i))
  const scaled = residuals.map((r, i) => r * Math.sqrt(found.weights[i] as number))
  return new FitResult({
    formula: formula.id,
    parameters: parametersOf(found, confidence, intervals),
    kind: output.kind,
    numbers: found.numbers,
    converged: found.converged,
    starts: found.starts,
    confidence,
    residuals,
    fittedValues: readings.map((y, i) => y - (residuals[i] as number)),
    checks: residualChecks(scaled, found.numbers.sigma, found.numbers.degreesOfFreedom, deviation !== undefined && loss === 'squares'),
  })
}

/** The result for parameters and the logged inputs of a reading. */
function predictor(model: Model, count: number, columns: readonly { readonly values: Float64Array }[]) {
  const x = new Float64Array(count + columns.length)
  return (p: ArrayLike<number>, i: number) => {
    for (let k = 0; k < count; k++) x[k] = p[k] as number
    for (let c = 0; c < columns.length; c++) x[count + c] = (columns[c] as { values: Float64Array }).values[i] as number
    return model.at(x)
  }
}

function optionIssues({ weights, loss, starts, intervals }: FitPlan<never, never>, readings: number, issues: Issue[]): void {
  const choice = (path: string, given: unknown, options: readonly string[]) => {
    if (given !== undefined && !options.includes(given as string))
      issues.push({ path, given: show(given), accepts: oneOfNames(options, given) })
  }
  choice('loss', loss, ['squares', 'huber'])
  choice('intervals', intervals, ['linear', 'profile'])
  if (loss === 'huber' && intervals === 'profile')
    issues.push({
      path: 'intervals',
      given: "'profile'",
      accepts: "must be 'linear' with the loss 'huber': profiles are of the sum of squares",
    })
  if (starts !== undefined && !(Number.isInteger(starts) && starts >= 1 && starts <= MOST_STARTS))
    issues.push({ path: 'starts', given: show(starts), accepts: `must be a whole number from 1 to ${MOST_STARTS}` })
  if (weights === undefined) return
  const all = Array.from(typeof weights === 'object' && weights !== null ? weights : [])
  const bad = all.findIndex((weight) => !(typeof weight === 'number' && weight > 0 && weight < Number.POSITIVE_INFINITY))
  if (bad >= 0) issues.push({ path: `weights[${bad}]`, given: show(all[bad]), accepts: 'must be a number above zero' })
  else if (all.length !== readings)
    issues.push({ path: 'weights', given: `${all.length} values`, accepts: `must have one value for each of ${readings} readings` })
}

const MOST_STARTS = 10_000

function parameterOf(path: string, scalar: Scalar, guess: unknown, issues: Issue[]): Parameter {
  const read = reader({ ...scalar, optional: undefined, default: undefined } as unknown as Scalar)
  const full =
    typeof guess === 'object' && guess !== null && 'start' in guess
      ? (guess as { start: unknown; low?: unknown; high?: unknown })
      : { start: guess }
  const number = (x: unknown, where: string) => read(x, `parameters.${path}${where}`, issues) as number
  const limits = limitsOf(scalar)
  const start = number(full.start, full === guess ? '.start' : '')
  const open = (limit: unknown, direction: 1 | -1, at: number) =>
    limit !== undefined && Number.isFinite(at)
      ? at + direction * Math.max(Number.MIN_VALUE, 1e-12 * Math.max(Math.abs(at), Math.abs(start)))
      : at
  // An open limit is left by a hair, so that the kernel is never run where its record forbids it.
  const low = full.low === undefined ? open(scalar.above, 1, limits.low) : number(full.low, '.low')
  const high = full.high === undefined ? open(scalar.below, -1, limits.high) : number(full.high, '.high')
  if (start < low || start > high)
    issues.push({ path: `parameters.${path}.start`, given: show(full.start), accepts: 'must lie between its low and high' })
  return { path, kind: scalar.kind, start, low, high }
}

function columnOf(given: unknown, scalar: Scalar, path: string, issues: Issue[]): Float64Array {
  const read = reader({ ...scalar, optional: undefined, default: undefined } as unknown as Scalar)
  if (Array.isArray(given)) return Float64Array.from(given, (x, i) => read(x, `${path}[${i}]`, issues) as number)
  const { unit, values } = (given ?? {}) as { unit?: unknown; values?: ArrayLike<unknown> }
  if (typeof unit !== 'string' || typeof values !== 'object' || values === null || typeof values.length !== 'number') {
    issues.push({ path, given: show(given), accepts: "must be a list of values, or { unit: 'N', values: [...] }" })
    return new Float64Array(0)
  }
  return Float64Array.from({ length: values.length }, (_, i) => read([values[i], unit], `${path}[${i}]`, issues) as number)
}

function measuredOf(formula: ReturnType<typeof untyped>, given: unknown, issues: Issue[]) {
  const isColumn = Array.isArray(given) || (typeof given === 'object' && given !== null && 'values' in given && 'unit' in given)
  const names = isColumn || typeof given !== 'object' || given === null ? [] : Object.keys(given)
  if (names.length > 1) issues.push({ path: 'measured', given: names.join(', '), accepts: 'must be one output: fit one at a time' })
  const output = outputOf(formula, names[0], issues, 'measured')
  const column = names[0] === undefined ? given : (given as Record<string, unknown>)[names[0]]
  const path = names[0] === undefined ? 'measured' : `measured.${names[0]}`
  return { output, readings: columnOf(column, { kind: output.kind } as Scalar, path, issues) }
}
