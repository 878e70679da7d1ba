import { kindWords, show } from '../units/index.js'
import type { Input, Inputs, Output, OutputField, OutputRecord } from './definition.js'
import type { AnyFormula } from './formula.js'

/** Title of a formula, as a reader sees it: its own one, or its name in words. */
export const titleInWords = ({ id, def: { title } }: Pick<AnyFormula, 'id' | 'def'>): string =>
  title ?? kindWords(id.slice(id.indexOf('.') + 1))

/** What each input of a formula accepts, in words, by its path: kind or words, limits, default. Inputs of records and lists follow theirs. */
export function inputsInWords(inputs: Inputs): Readonly<Record<string, string>> {
  return Object.fromEntries(rowsOf(inputs, ''))
}

/** What a formula returns, in words, by name; a single output is `result`. */
export function outputsInWords(output: Output): Readonly<Record<string, string>> {
  const single = typeof output === 'string' || (output as { infinite?: unknown }).infinite === true
  const fields = (single ? { result: output } : output) as OutputRecord
  return Object.fromEntries(Object.entries(fields).map(([name, field]) => [name, outputText(field)]))
}

function rowsOf(inputs: Inputs, prefix: string): [path: string, text: string][] {
  return Object.entries(inputs).flatMap(([name, input]): [string, string][] => {
    const inner = typeof input === 'object' && 'list' in input ? input.list : input
    const row: [string, string] = [prefix + name, inputText(input)]
    return typeof inner === 'object' && 'fields' in inner
      ? [row, ...rowsOf(inner.fields, `${prefix}${name}${inner === input ? '' : '[]'}.`)]
      : [row]
  })
}

/** What an input accepts, in words. */
function inputText(input: Input): string {
  if (typeof input === 'string') return input
  const open = 'default' in input && input.default !== undefined ? `, default ${plain(input.default)}` : input.optional ? ', optional' : ''
  if ('oneOf' in input) return `one of ${input.oneOf.join(', ')}${open}`
  if ('list' in input) return `list of ${inputText(input.list)}${open}`
  if ('fields' in input) return `record${open}`
  if ('curve' in input) return `curve of ${input.curve[1]} over ${input.curve[0]}${open}`
  if ('flag' in input) return `true or false${open}`
  const limits = [
    ['at least', input.min],
    ['above', input.above],
    ['at most', input.max],
    ['below', input.below],
  ].flatMap(([word, value]) => (value === undefined ? [] : [`, ${word} ${plain(value)}`]))
  return `${input.kind}${limits.join('')}${input.whole ? ', whole' : ''}${open}`
}

const plain = (value: unknown): string => (Array.isArray(value) ? value.join(' ') : typeof value === 'object' ? show(value) : String(value))

function outputText(field: OutputField): string {
  if (typeof field === 'string') return field
  if ('oneOf' in field) return `one of ${field.oneOf.join(', ')}`
  return 'list' in field ? `list of ${field.list}` : `${field.kind}, may be infinite`
}
