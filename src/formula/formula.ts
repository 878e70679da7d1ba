import { InputError, type Issue, issue, type Kind, type Note } from '../units/index.js'
import type { Definition, Inputs, Output } from './definition.js'
import { recordReader } from './reader.js'
import { NoResultError, type ToQuantities, toQuantities, ValidityError } from './result.js'
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

/**
 * Makes a formula from its record. The id is `module.exportName`.
 * Everything else follows from the record: the checked call, the kernel, validation, notes, the catalogue entry, the reference page.
 */
export function formula<const I extends Inputs, const O extends Output, const Y extends SiResult<O>>(
  id: string,
  def: Definition<I, O, Y>,
): Formula<I, O>
// The built files hand in a function that makes the record of its kernel: importing a module then makes no records.
export function formula(id: string, given: unknown, kernel?: Kernel): unknown {
  const si = kernel ?? (given as Made).si
  let def: Made | undefined
  const record = (): Made => {
    def ??= kernel ? (given as (si: Kernel) => Made)(kernel) : (given as Made)
    return def
  }
  // Made at the first call: most formulas of a program are never called with units.
  let load: ReturnType<typeof recordReader> | undefined
  let toResult: ToQuantities
  const call = (given: unknown, options?: CallOptions): unknown => {
    if (given === RECORD) return record()
    const { inputs, output, requires, valid } = record()
    if (load === undefined) {
      load = recordReader(inputs, true)
      toResult = toQuantities(id, output)
    }
    const issues: Issue[] = []
    const notes: Note[] = []
    const x = load(given, '', issues, notes)
    if (requires !== undefined && issues.length === 0) impossibleIn(requires, x, given, issues)
    if (issues.length > 0) throw new InputError(id, issues)
    const y = answer(id, si, x)
    for (const statement in valid) {
      if (valid[statement]?.(x, y)) continue
      if (options?.strict) throw new ValidityError(`${id}: outside validity: ${statement}`)
      notes.push({ formula: id, text: `outside validity: ${statement}` })
    }
    return toResult(y, notes.length === 0 ? undefined : notes)
  }
  return Object.defineProperty(Object.assign(call, { si, id }), 'def', RECORD)
}

type Kernel = (x: unknown) => unknown

/** A record of any inputs and outputs. */
interface Made {
  readonly si: Kernel
  readonly inputs: Inputs
  readonly output: Output
  readonly requires?: Requires
  readonly valid?: Readonly<Record<string, (x: unknown, y: unknown) => boolean>>
}

/** The property of every formula; one of its own for each would give each a shape of its own, and kernels were found more slowly. */
const RECORD = {
  enumerable: true,
  get(this: (given: unknown) => unknown): unknown {
    return this(RECORD)
  },
}

/** Runs a kernel. Where a routine within it fails, these inputs together have no answer. */
function answer(id: string, kernel: (x: unknown) => unknown, x: unknown): unknown {
  try {
    return kernel(x)
  } catch (error) {
    const { name, message } = error as Error
    if (name !== 'NumericError' && name !== 'RangeError') throw error
    // A routine explains itself; what the engine reports of its own numbers helps nobody.
    const reason = name === 'NumericError' ? ` (${message})` : ''
    throw new NoResultError(`${id}: no answer exists for these inputs together${reason}`, { cause: error })
  }
}

type Requires = Readonly<Record<string, { readonly accepts: string; readonly holds: (x: unknown) => boolean }>>

/** Inputs that are each acceptable but contradict each other, as issues. */
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
