import { type Kind, kindWords, Quantity } from '../units/index.js'
import type { Input, Inputs, Output, OutputField } from './definition.js'
import { type AnyFormula, brokenStatements, type Formula } from './formula.js'
import type { Source } from './provenance.js'
import type { Flat, Si, SiResult } from './values.js'
import { titleInWords } from './words.js'

/**
 * Runs one formula of a chain on SI numbers. A chain is written once over an evaluator: the bare one only calls the kernel,
 * a recorder's keeps every step.
 */
export type Evaluator = <I extends Inputs, O extends Output>(formula: Formula<I, O>, x: Flat<Si<I>>) => SiResult<O>

/** The evaluator that only calls the kernel. */
export const bare: Evaluator = (formula, x) => formula.si(x)

/** One line of a calculation sheet. */
export interface Step {
  /** The formula's id. */
  readonly formula: string
  /** Its title, or its name in words. */
  readonly title: string
  /** The equation, where the step is one line of arithmetic. */
  readonly equation?: string
  /** Inputs as text, by name. */
  readonly inputs: Readonly<Record<string, string>>
  /** Results as text, by name (`result` where there is one). */
  readonly results: Readonly<Record<string, string>>
  /** Assumptions of the formula. */
  readonly assumes: readonly string[]
  /** Statements of the validity range that are broken here. */
  readonly notes: readonly string[]
  /** Sources of the formula. */
  readonly source: readonly Source[]
}

/** Keeps every formula run through its `of`, in order. */
export interface Recorder {
  readonly of: Evaluator
  /** The calculation sheet so far. Texts are made by this call. */
  steps(): Step[]
}

/** Makes a recorder: use its `of` where a chain takes an evaluator, then read `steps()`. */
export function recorder(): Recorder {
  const log: { formula: AnyFormula; x: unknown; y: unknown }[] = []
  return {
    of: (formula, x) => {
      const y = formula.si(x)
      log.push({ formula: formula as unknown as AnyFormula, x, y })
      return y
    },
    steps: () => log.map(({ formula, x, y }) => stepOf(formula, x, y)),
  }
}

/** One run of a formula, on SI numbers, as a line of a calculation sheet. */
export function stepOf(formula: AnyFormula, x: unknown, y: unknown): Step {
  const { inputs, output, assumes = [], source } = formula.def
  const { equation } = formula as { readonly equation?: string }
  const given = x as Record<string, unknown>
  const shown: Record<string, string> = {}
  for (const name in inputs) if (given[name] !== undefined) shown[name] = inputText(inputs[name] as Input, given[name])
  const results: Record<string, string> = {}
  if (typeof output === 'string' || 'infinite' in output) results.result = fieldText(output as OutputField, y)
  else
    for (const name in output)
      results[name] = fieldText((output as Record<string, OutputField>)[name] as OutputField, (y as Record<string, unknown>)[name])
  return {
    formula: formula.id,
    title: titleInWords(formula),
    ...(equation === undefined ? {} : { equation }),
    inputs: shown,
    results,
    assumes,
    notes: brokenStatements(formula, x, y),
    source,
  }
}

const MAX_LISTED = 6
const listText = (items: readonly string[]) =>
  items.length > MAX_LISTED ? `${items.slice(0, MAX_LISTED).join(', ')}, … (${items.length})` : items.join(', ')
const quantityText = (kind: Kind, x: unknown) => String(new Quantity(x as number, kind))

function inputText(input: Input, x: unknown): string {
  if (typeof input === 'string') return quantityText(input, x)
  if ('kind' in input) return quantityText(input.kind, x)
  if ('list' in input) return listText((x as readonly unknown[]).map((item) => inputText(input.list, item)))
  if ('fields' in input) {
    const parts = Object.keys(input.fields).filter((name) => (x as Record<string, unknown>)[name] !== undefined)
    return parts.map((name) => `${name} ${inputText(input.fields[name] as Input, (x as Record<string, unknown>)[name])}`).join(', ')
  }
  if ('curve' in input) return `curve of ${kindWords(input.curve[1])} over ${kindWords(input.curve[0])}`
  return String(x)
}

function fieldText(field: OutputField, y: unknown): string {
  if (typeof field === 'string') return quantityText(field, y)
  if ('kind' in field) return quantityText(field.kind, y)
  if ('list' in field) return listText(Array.from(y as ArrayLike<number>, (item) => quantityText(field.list, item)))
  return String(y)
}
