import type { AnyFormula, Inputs, Output } from '../formula/index.js'
import { type In, InputError, type Issue, issue, type Kind, oneOfNames, Quantity, type UnitOf } from '../units/index.js'
import { columnOf, measuredOf, parameterOf } from './fit-columns.js'
import type { FitProblem, Parameter } from './fit-search.js'
import { type Model, modelOf } from './model.js'
import { checkShare, checkWhole } from './options.js'
import { type KindAt, planRecord, type ScalarOutput, type ScalarPath, scalarAt, withValueAt } from './path.js'
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
   * With fewer than twenty readings its intervals of 95 % held in 90 to 94 of 100 simulated logs. Default `squares`.
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

/** An input that was logged. */
interface Logging {
  readonly path: string
  readonly kind: Kind
  readonly values: Float64Array
}

const KNOWN = [
  'parameters',
  'data',
  'measured',
  'fixed',
  'deviation',
  'weights',
  'loss',
  'starts',
  'intervals',
  'confidence',
] as const satisfies readonly (keyof FitPlan<Inputs, Output>)[]

/** Reads a plan: the problem as plain numbers and the kind of the readings. Throws one `InputError` that lists every bad input. */
export function readFit(formula: AnyFormula, plan: FitPlan<Inputs, Output>): { readonly problem: FitProblem; readonly kind: Kind } {
  planRecord(formula.id, plan, KNOWN)
  const issues: Issue[] = []
  const { parameters: guesses = {}, data = {}, measured, fixed = {} } = plan as unknown as Readonly<Record<string, object | undefined>>
  const parameters = Object.entries(guesses).map(([path, guess]) => parameterOf(path, scalarAt(formula, path), guess, issues))
  const columns = Object.entries(data).map(([path, column]) => {
    const scalar = scalarAt(formula, path)
    return { path, kind: scalar.kind, values: columnOf(column, scalar, `data.${path}`, issues) }
  })
  const { output, readings } = measuredOf(formula, measured, issues)
  lengthIssues(parameters, columns, readings.length, issues)
  optionIssues(plan as never, readings.length, issues)
  const { deviation, weights, starts = 1, loss = 'squares' } = plan
  if (deviation !== undefined && (deviation.kind !== spreadKind(output.kind) || !(deviation.si > 0)))
    issues.push(issue('deviation', deviation, `must be a ${spreadKind(output.kind)} above zero`))
  let nominal: unknown = fixed
  for (const { path, kind, start } of parameters) nominal = withValueAt(nominal, path, new Quantity(start, kind))
  for (const { path, kind, values } of columns) nominal = withValueAt(nominal, path, new Quantity(values[0] ?? 0, kind))
  if (issues.length > 0) throw new InputError(formula.id, issues)
  const paths = [...parameters, ...columns].map(({ path }) => path)
  const model = modelOf(formula, nominal, paths, output, issues)
  if (issues.length > 0) throw new InputError(formula.id, issues)
  const problem: FitProblem = {
    id: formula.id,
    parameters,
    readings,
    predict: predictor(model, parameters.length, columns),
    weights: weights === undefined ? new Float64Array(readings.length).fill(1) : Float64Array.from(weights),
    sigma: deviation?.si,
    starts,
    loss,
  }
  return { problem, kind: output.kind }
}

const countOf = (count: number, of: string) => `${count} ${of}${count === 1 ? '' : 's'}`

function lengthIssues(parameters: readonly Parameter[], columns: readonly Logging[], readings: number, issues: Issue[]): void {
  if (parameters.length === 0) issues.push({ path: 'parameters', given: 'none', accepts: 'must name at least one input to find' })
  for (const { path } of parameters)
    if (columns.some((column) => column.path === path))
      issues.push({ path: `data.${path}`, given: 'logged', accepts: 'is also a parameter to find: it is one or the other' })
  for (const { path, values } of columns)
    if (values.length !== readings)
      issues.push({
        path: `data.${path}`,
        given: countOf(values.length, 'value'),
        accepts: `must have one value for each reading, ${readings} in all`,
      })
  if (readings < parameters.length && readings > 0)
    issues.push({
      path: 'measured',
      given: countOf(readings, 'reading'),
      accepts: `must be at least as many as the ${parameters.length} parameters`,
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

function optionIssues({ weights, loss, starts, intervals, confidence }: FitPlan<never, never>, readings: number, issues: Issue[]): void {
  if (confidence !== undefined) checkShare('confidence', confidence, issues)
  const choice = (path: string, given: unknown, options: readonly string[]) => {
    if (given !== undefined && !options.includes(given as string)) issues.push(issue(path, given, oneOfNames(options, given)))
  }
  choice('loss', loss, ['squares', 'huber'])
  choice('intervals', intervals, ['linear', 'profile'])
  if (loss === 'huber' && intervals === 'profile')
    issues.push({
      path: 'intervals',
      given: "'profile'",
      accepts: "must be 'linear' with the loss 'huber': profiles are of the sum of squares",
    })
  if (starts !== undefined) checkWhole('starts', starts, 1, MAX_STARTS, issues)
  if (weights === undefined) return
  const all = Array.from(typeof weights === 'object' && weights !== null ? weights : [])
  const bad = all.findIndex((weight) => !(typeof weight === 'number' && weight > 0 && weight < Number.POSITIVE_INFINITY))
  if (bad >= 0) issues.push(issue(`weights[${bad}]`, all[bad], 'must be a number above zero'))
  else if (all.length !== readings)
    issues.push({
      path: 'weights',
      given: countOf(all.length, 'value'),
      accepts: `must have one value for each reading, ${readings} in all`,
    })
}

const MAX_STARTS = 10_000
