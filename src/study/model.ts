import { type AnyFormula, recordReader, type Scalar } from '../formula/index.js'
import { didYouMean, type Issue, issue, type Kind, read } from '../units/index.js'
import { answering, type Place, placeAt, requirementsOf, type ScalarOutput, scalarAt, scalarOutputs } from './path.js'

/** The options of a tool: where a formula has several outputs, one must be named. */
export type OptionsFor<O, T> = O extends Kind | { kind: Kind; infinite: true }
  ? [options?: T & { readonly output?: never }]
  : [options: T & { readonly output: ScalarOutput<O> }]

/** Options of a tool as they come: with the output where there is one to name. */
export type Named<T> = T & { readonly output?: string }

/** A formula as a function of a few of its inputs, on SI numbers: checked once, then plain. */
export interface Model {
  readonly id: string
  readonly output: { readonly name: string; readonly kind: Kind }
  /** The result for values of the inputs that vary, in their order; NaN where there is no finite answer or the inputs cannot stand together. */
  readonly at: (values: ArrayLike<number>) => number
  /** The whole SI argument, owned by the model; holds the values of the last call. */
  readonly x: Record<string, unknown>
}

/** The output a tool works on. Adds an issue where it is not named or unknown. */
export function outputOf(formula: AnyFormula, name: unknown, issues: Issue[], path = 'output'): { name: string; kind: Kind } {
  const outputs = scalarOutputs(formula.def.output)
  if (outputs.length === 1 && name === undefined) return outputs[0] as { name: string; kind: Kind }
  const found = outputs.find((output) => output.name === name)
  if (found !== undefined) return found
  const names = outputs.map((output) => output.name).filter(Boolean)
  const accepts = names.length === 0 ? 'must be left out: the formula has one result' : `must be one of ${names.join(', ')}`
  issues.push(issue(path, name, `${accepts}${typeof name === 'string' ? didYouMean(name, names) : ''}`))
  return { name: '', kind: 'ratio' }
}

/**
 * The function of the inputs at some paths. `given` holds a value at each of them; the others stay as given.
 * Adds issues for what a call would refuse.
 */
export function modelOf(
  formula: AnyFormula,
  given: unknown,
  paths: readonly string[],
  output: { name: string; kind: Kind },
  issues: Issue[],
): Model {
  const x = recordReader(formula.def.inputs, true)(given, '', issues) as Record<string, unknown>
  const kernel = answering(formula.si as (x: unknown) => unknown)
  const requires = requirementsOf(formula)
  // With bad input among what was given, records on the way may be missing; the model is then never evaluated.
  const places = issues.length > 0 ? [] : paths.map((path) => placeAt(x, path))
  const at = (values: ArrayLike<number>): number => {
    for (let i = 0; i < places.length; i++) {
      const { record, name } = places[i] as Place
      record[name] = values[i]
    }
    for (const { holds } of requires) if (!holds(x)) return Number.NaN
    const y = kernel(x)
    const value = output.name === '' ? (y as number) : (y as Record<string, number> | undefined)?.[output.name]
    return typeof value === 'number' && Number.isFinite(value) ? value : Number.NaN
  }
  return { id: formula.id, output, at, x }
}

/** Limits of a record's number, as SI: a value must lie strictly within an open one. */
export function limitsOf({ kind, min, max, above, below }: Scalar): { readonly low: number; readonly high: number } {
  const si = (limit: unknown) => (limit === undefined ? undefined : typeof limit === 'number' ? limit : read(kind, limit))
  return { low: si(min) ?? si(above) ?? Number.NEGATIVE_INFINITY, high: si(max) ?? si(below) ?? Number.POSITIVE_INFINITY }
}

/** The limits of the numbers at paths. */
export const limitsAt = (formula: AnyFormula, paths: readonly string[]) => paths.map((path) => limitsOf(scalarAt(formula, path)))

/** A slope, and a bound of how far it is off. */
export interface Slope {
  readonly slope: number
  readonly error: number
}

/**
 * The slope of a function of one number: fourth-order central differences, or a one-sided second-order difference where a limit of the input is nearer than
 * the step.
 *
 * The error is the difference to a rule of lower order from the same values, what a kink among them makes the slopes of both sides differ, and rounding. It is
 * more than the true one where the function is smooth.
 */
export function slope(f: (x: number) => number, x: number, step: number, { low, high }: Limits, here = f(x)): Slope {
  const rounding = (2 * Number.EPSILON * Math.abs(here)) / step
  if (x - 2 * step > low && x + 2 * step < high) {
    const [up, down, farUp, farDown] = [f(x + step), f(x - step), f(x + 2 * step), f(x - 2 * step)]
    const simple = (up - down) / (2 * step)
    const found = (4 * simple - (farUp - farDown) / (4 * step)) / 3
    // How far the slopes of both sides differ: in proportion to the step where there is no kink.
    const [near, far] = [(up - 2 * here + down) / step, (farUp - 2 * here + farDown) / (2 * step)]
    return { slope: found, error: Math.abs(found - simple) + Math.abs(far - 2 * near) + rounding }
  }
  const h = x + 2 * step < high ? step : -step
  const near = f(x + h)
  const found = (-3 * here + 4 * near - f(x + 2 * h)) / (2 * h)
  return { slope: found, error: Math.abs(found - (near - here) / h) + rounding }
}

interface Limits {
  readonly low: number
  readonly high: number
}
