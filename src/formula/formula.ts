import { InputError, type Issue, issue, type Kind, kindRow, kindWords, type Note, Quantity } from '../units/index.js'
import type { Definition, Inputs, Output, OutputField, OutputRecord } from './definition.js'
import { recordReader } from './reader.js'
import type { Flat, Given, Result, Si, SiResult } from './values.js'

/** How a checked call behaves. */
export interface CallOptions {
  /** Throw a `ValidityError` where the result would carry a note of this formula's own. */
  readonly strict?: boolean
}

/**
 * A formula: called with units it checks everything and throws an `InputError` that lists every bad input; its `.si` kernel takes plain SI numbers
 * and checks nothing. The call has no summary of its own, so that an editor shows that of the formula.
 */
export interface Formula<I extends Inputs, O extends Output> {
  (
    /** The inputs with their units. Every bad one is listed in a single `InputError`. */
    given: Given<I>,
    /** How the call behaves outside the validity range. Default: the result carries a note. */
    options?: CallOptions,
  ): Result<O>
  /** The bare kernel: SI numbers in and out, nothing checked. */
  readonly si: (x: Flat<Si<I>>) => SiResult<O>
  /** Module and export name, such as `capstan.slackTension`. */
  readonly id: string
  /** The record it was made from. */
  readonly def: Definition<I, O, SiResult<O>>
}

/** A formula of any inputs and outputs, for code that walks them. */
export interface AnyFormula {
  (given: never, options?: CallOptions): unknown
  /** The bare kernel. */
  readonly si: (x: never) => unknown
  /** Module and export name. */
  readonly id: string
  /** The record it was made from. */
  readonly def: {
    /** Title in the words of the trade. */
    readonly title?: string
    /** Inputs by name. */
    readonly inputs: Inputs
    /** Kind of the result, or the results by name. */
    readonly output: Output
    /** The equation as text. */
    readonly equation?: readonly string[]
    /** Assumptions of the formula. */
    readonly assumes?: readonly string[]
    /** Where it comes from. */
    readonly source: Definition<Inputs, Kind, number>['source']
    /** Conditions on inputs that hold between them. */
    readonly requires?: { readonly [path: string]: { readonly accepts: string; readonly holds: (x: never) => boolean } }
    /** Range of validity, one statement each. */
    readonly valid?: { readonly [statement: string]: (x: never, y: never) => boolean }
  }
}

/** A strict call outside a formula's validity range. */
export class ValidityError extends Error {
  override get name() {
    return 'ValidityError'
  }
}

/** The inputs are each acceptable but the formula has no finite answer for them together. */
export class NoResultError extends Error {
  override get name() {
    return 'NoResultError'
  }
}

/**
 * Makes a formula from its record. The id is `module.exportName`.
 * Everything else follows from the record: the checked call, the kernel, validation, notes, the catalogue entry, the reference page.
 */
export function formula<const I extends Inputs, const O extends Output, const Y extends SiResult<O>>(
  id: string,
  def: Definition<I, O, Y>,
): Formula<I, O> {
  const { si, valid } = def
  const requires = def.requires as Requires | undefined
  const kernel = si as (x: unknown) => unknown
  const tests = valid as Readonly<Record<string, (x: unknown, y: unknown) => boolean>> | undefined
  // Made at the first call: most formulas of a program are never called with units.
  let load: ReturnType<typeof recordReader> | undefined
  let toResult: ToQuantities
  const call = (given: unknown, options?: CallOptions): unknown => {
    if (load === undefined) {
      load = recordReader(def.inputs, true)
      toResult = toQuantities(id, def.output)
    }
    const issues: Issue[] = []
    const notes: Note[] = []
    const x = load(given, '', issues, notes)
    if (requires !== undefined && issues.length === 0) impossibleIn(requires, x, given, issues)
    if (issues.length > 0) throw new InputError(id, issues)
    const y = answer(id, kernel, x)
    for (const statement in tests) {
      if (tests[statement]?.(x, y)) continue
      if (options?.strict) throw new ValidityError(`${id}: not within its validity range: ${statement}`)
      notes.push({ formula: id, text: `outside validity: ${statement}` })
    }
    return toResult(y, notes.length === 0 ? undefined : notes)
  }
  return Object.assign(call, { si, id, def }) as unknown as Formula<I, O>
}

/** Runs a kernel. Where a routine within it fails, these inputs together have no answer. */
function answer(id: string, kernel: (x: unknown) => unknown, x: unknown): unknown {
  try {
    return kernel(x)
  } catch (error) {
    const { name, message } = error as Error
    if (name !== 'NumericError' && name !== 'RangeError') throw error
    // A routine explains itself; what the engine says of its own numbers helps nobody.
    const reason = name === 'NumericError' ? ` (${message})` : ''
    throw new NoResultError(`${id}: no answer exists for these inputs together${reason}`, { cause: error })
  }
}

type Requires = Readonly<Record<string, { readonly accepts: string; readonly holds: (x: unknown) => boolean }>>

/** Inputs that are each acceptable but cannot stand together, as issues. */
function impossibleIn(requires: Requires, x: unknown, given: unknown, issues: Issue[]): void {
  for (const [path, { accepts, holds }] of Object.entries(requires)) {
    if (holds(x)) continue
    const value = path.split('.').reduce<unknown>((at, name) => (at as Record<string, unknown> | undefined)?.[name], given)
    issues.push(issue(path, value, accepts))
  }
}

/** The statements of a formula's validity range that inputs and result break. */
export function brokenStatements(formula: AnyFormula, x: unknown, y: unknown): string[] {
  const tests = formula.def.valid as Readonly<Record<string, (x: unknown, y: unknown) => boolean>> | undefined
  return tests === undefined ? [] : Object.keys(tests).filter((statement) => !tests[statement]?.(x, y))
}

const isSingle = (output: Output): output is Kind | { kind: Kind; infinite: true } =>
  typeof output === 'string' ||
  (typeof (output as { kind?: unknown }).kind === 'string' && (output as { infinite?: unknown }).infinite === true)

/** Makes SI results into quantities with their notes. */
type ToQuantities = (y: unknown, notes: readonly Note[] | undefined) => unknown

function toQuantities(id: string, output: Output): ToQuantities {
  if (isSingle(output)) return toQuantity(id, 'the result', output)
  const fields = Object.entries(output as OutputRecord).map(([name, field]) => [name, toQuantity(id, name, field)] as const)
  return (y, notes) => {
    const result: Record<string, unknown> = {}
    for (const [name, toField] of fields) result[name] = toField((y as Record<string, unknown>)[name], notes)
    return result
  }
}

function toQuantity(id: string, name: string, field: OutputField): ToQuantities {
  if (typeof field !== 'string' && 'oneOf' in field) return (y) => y
  if (typeof field !== 'string' && 'list' in field) {
    const item = toQuantity(id, name, field.list)
    return (y, notes) => Array.from(y as ArrayLike<number>, (x) => item(x, notes))
  }
  const kind = typeof field === 'string' ? field : field.kind
  const { dim } = kindRow(kind)
  const mayBeInfinite = typeof field !== 'string'
  const lowest = NEVER_NEGATIVE.includes(kind) ? 0 : kindRow(kind).lowest
  return (y, notes) => {
    if (!Number.isFinite(y) && !(mayBeInfinite && y === Number.POSITIVE_INFINITY))
      throw new NoResultError(`${id}: ${name} is ${String(y)} for these inputs; no finite answer exists in this combination`)
    const quantity = new Quantity(y as number, kind, dim, notes)
    if ((y as number) < lowest)
      throw new NoResultError(`${id}: ${name} is ${quantity} for these inputs; there is no such ${kindWords(kind)}`)
    return quantity
  }
}

/** Kinds without a sign: a negative one means that the inputs describe no real part. */
const NEVER_NEGATIVE: readonly Kind[] = [
  'area',
  'volume',
  'secondMomentOfArea',
  'sectionModulus',
  'mass',
  'massPerLength',
  'density',
  'momentOfInertia',
  'modulus',
  'axialRigidity',
  'bendingRigidity',
  'thermalConductivity',
  'specificHeat',
  'heatCapacity',
]
