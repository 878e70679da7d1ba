import {
  type AnyFormula,
  type Formula,
  type Given,
  type Input,
  type Inputs,
  NoResultError,
  type Output,
  type OutputRecord,
  requireKeys,
  type Scalar,
} from '../formula/index.js'
import { NumericError } from '../numeric/index.js'
import { type In, type Kind, oneOfNames, refuse } from '../units/index.js'

/** Dotted paths of the numbers among a formula's inputs, such as `'load'` or `'outer.modulus'`. */
export type ScalarPath<I> = {
  [N in keyof I & string]: I[N] extends Kind | { kind: Kind } ? N : I[N] extends { fields: infer F } ? `${N}.${ScalarPath<F>}` : never
}[keyof I & string]

/** The kind of the input at a path. */
export type KindAt<I, P> = P extends keyof I
  ? I[P] extends Kind
    ? I[P]
    : I[P] extends { kind: infer K extends Kind }
      ? K
      : KindBelow<I, P>
  : KindBelow<I, P>
/** The same within a record; names of a dictionary are any text, dots included. */
type KindBelow<I, P> = P extends `${infer Head}.${infer Rest}`
  ? Head extends keyof I
    ? I[Head] extends { fields: infer F }
      ? KindAt<F, Rest>
      : never
    : never
  : never

/** A formula's argument with the input at a path left open. */
export type Without<I, P> = P extends keyof I
  ? Omit<Given<I>, P>
  : P extends `${infer Head}.${infer Rest}`
    ? Head extends keyof I
      ? I[Head] extends { fields: infer F }
        ? Omit<Given<I>, Head> & { [H in Head]: Without<F, Rest> }
        : never
      : never
    : never

/** Names of a formula's outputs that are numbers. */
export type ScalarOutput<O> = { [N in keyof O & string]: O[N] extends Kind | { kind: Kind } ? N : never }[keyof O & string]

/** The target result: the value itself, or one named output's value where there are several. */
export type Target<O> = O extends Kind
  ? In<O>
  : O extends { kind: infer K extends Kind; infinite: true }
    ? In<K>
    : {
        [N in ScalarOutput<O>]: {
          readonly [M in N]: O[N] extends Kind ? In<O[N]> : O[N] extends { kind: infer K extends Kind } ? In<K> : never
        }
      }[ScalarOutput<O>]

/** The record of the number at a path. Throws an `InputError` that names the near path. */
export function scalarAt(formula: AnyFormula, path: string): Scalar {
  let inputs: Inputs | undefined = formula.def.inputs
  let found: Input | undefined
  for (const name of typeof path === 'string' ? path.split('.') : []) {
    found = inputs !== undefined && Object.hasOwn(inputs, name) ? inputs[name] : undefined
    inputs = typeof found === 'object' && 'fields' in found ? found.fields : undefined
  }
  if (typeof found === 'string') return { kind: found } as Scalar
  if (typeof found === 'object' && 'kind' in found) return found
  const paths = scalarPaths(formula.def.inputs)
  refuse(formula.id, 'path', path, oneOfNames(paths, path))
}

/** Dotted paths of all numbers among inputs. */
export function scalarPaths(inputs: Inputs): string[] {
  return Object.entries(inputs).flatMap(([name, input]) => {
    if (typeof input === 'string' || 'kind' in input) return [name]
    return 'fields' in input ? scalarPaths(input.fields).map((rest) => `${name}.${rest}`) : []
  })
}

/** The argument with a value put in at a path; the records on the way are copied, the rest is shared. */
export function withValueAt(given: unknown, path: string, value: unknown): Record<string, unknown> {
  const record = (given ?? {}) as Record<string, unknown>
  const dot = path.indexOf('.')
  if (dot < 0) return { ...record, [path]: value }
  const head = path.slice(0, dot)
  return { ...record, [head]: withValueAt(record[head], path.slice(dot + 1), value) }
}

/** Where a number of an SI record stands: the record within it, and the name there. */
export interface Place {
  readonly record: Record<string, unknown>
  readonly name: string
}

/** The place that a path leads to; it stays the same as long as the records on the way do. */
export function placeAt(x: Record<string, unknown>, path: string): Place {
  let record = x
  const names = path.split('.')
  for (let i = 0; i < names.length - 1; i++) record = record[names[i] as string] as Record<string, unknown>
  return { record, name: names.at(-1) as string }
}

/** Sets a number at a path of an SI record that belongs to the caller. */
export function setAt(x: Record<string, unknown>, path: string, value: number): void {
  const { record, name } = placeAt(x, path)
  record[name] = value
}

/** Name and kind of every number a formula gives; the name is empty for a single result. */
export function scalarOutputs(output: Output): { name: string; kind: Kind }[] {
  if (typeof output === 'string') return [{ name: '', kind: output }]
  if (typeof (output as { infinite?: unknown }).infinite === 'boolean') return [{ name: '', kind: (output as { kind: Kind }).kind }]
  return Object.entries(output as OutputRecord).flatMap(([name, field]) =>
    typeof field === 'string' ? [{ name, kind: field }] : 'kind' in field ? [{ name, kind: field.kind }] : [],
  )
}

/** Any formula as one whose types are not followed further. Throws an `InputError` for what is not a formula. */
export function untyped<I extends Inputs, O extends Output>(formula: Formula<I, O>): AnyFormula {
  if (typeof formula !== 'function' || !('def' in formula)) refuse('study', 'formula', formula, 'must be a formula, such as slackTension')
  return formula as unknown as AnyFormula
}

/** A plan or options, of whose fields each is known. Throws an `InputError` for anything else: a misspelt field would have no effect. */
export function planRecord<T extends object>(where: string, plan: T, known: readonly (keyof T & string)[]): T {
  if (typeof plan !== 'object' || plan === null) refuse(where, 'plan', plan, 'must be a record')
  requireKeys(where, '', plan, known)
  return plan
}

/** Combinations of inputs that a formula rules out: each must hold for an SI argument, or a checked call throws. */
export const requirementsOf = (formula: AnyFormula) =>
  Object.values(formula.def.requires ?? {}) as unknown as readonly { readonly holds: (x: unknown) => boolean }[]

/** Whether an error says that a formula has no answer at a point: a gap of a study, not its end. */
export const isNoAnswer = (error: unknown): boolean => error instanceof NumericError || error instanceof NoResultError

/** A kernel that gives nothing where it finds no answer. */
export const answering =
  (kernel: (x: unknown) => unknown) =>
  (x: unknown): unknown => {
    try {
      return kernel(x)
    } catch (error) {
      if (isNoAnswer(error)) return undefined
      throw error
    }
  }
