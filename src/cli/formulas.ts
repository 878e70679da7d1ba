import type { AnyFormula, Input, Inputs, OutputField } from '../formula/index.js'
import { InputError, refuse, show } from '../units/index.js'
import { argumentsOf } from './arguments.js'
import { EXIT, type Exit, type Terminal } from './terminal.js'

const verb = 'formulas'

/** Lists formulas whose id, inputs or sources hold every word given; the id of one prints all of it. */
export async function formulas(terminal: Terminal, args: readonly string[]): Promise<Exit> {
  const given = argumentsOf(verb, args, {})
  const { catalogue } = await import('../catalogue/index.js')
  const [id] = given.words
  const exact = id === undefined ? undefined : catalogue.get(id)
  const found =
    exact === undefined ? [...catalogue.values()].filter((formula) => given.words.every((word) => holds(formula, word))) : [exact]
  if (found.length === 0) refuse(verb, 'words', given.words.join(' '), 'must occur in the id, the inputs or the sources of a formula')
  if (given.flag('json')) terminal.out(JSON.stringify(found.map(asData), null, 2))
  else if (exact !== undefined) terminal.out(pageOf(exact))
  else terminal.out(found.map(lineOf).join('\n'))
  return EXIT.holds
}

/** The formula of an id. Throws an `InputError` that names the nearest ids. */
export async function formulaNamed(of: string, id: string): Promise<AnyFormula> {
  const { formulaOf } = await import('../catalogue/index.js')
  try {
    return formulaOf(id)
  } catch (error) {
    throw new InputError(of, [{ path: '', given: '', accepts: (error as Error).message }])
  }
}

function holds({ id, def }: AnyFormula, word: string): boolean {
  const text = [id, ...Object.keys(def.inputs), ...def.source.map(({ where }) => where), ...(def.assumes ?? [])].join(' ')
  return text.toLowerCase().includes(word.toLowerCase())
}

const lineOf = ({ id, def }: AnyFormula) => `${id}(${Object.keys(def.inputs).join(', ')})`

const asData = ({ id, def }: AnyFormula) => ({
  id,
  inputs: def.inputs,
  output: def.output,
  equation: def.equation ?? [],
  assumes: def.assumes ?? [],
  valid: Object.keys(def.valid ?? {}),
  sources: def.source,
})

function pageOf({ id, def }: AnyFormula): string {
  const section = (title: string, lines: readonly string[]) => (lines.length === 0 ? [] : ['', title, ...lines.map((line) => `  ${line}`)])
  const outputs = typeof def.output === 'string' || isInfinite(def.output) ? { result: def.output } : def.output
  return [
    id,
    ...section('Inputs', inputLines(def.inputs, '')),
    ...section(
      'Output',
      Object.entries(outputs).map(([name, field]) => `${name}: ${outputText(field as OutputField)}`),
    ),
    ...section('Equation', def.equation ?? []),
    ...section('Assumes', def.assumes ?? []),
    ...section('Valid where', Object.keys(def.valid ?? {})),
    ...section(
      'Sources',
      def.source.map(({ level, where }) => `${where} (${level})`),
    ),
  ].join('\n')
}

const isInfinite = (output: unknown): output is OutputField => (output as { infinite?: unknown }).infinite === true

function inputLines(inputs: Inputs, prefix: string): string[] {
  return Object.entries(inputs).flatMap(([name, input]): string[] => {
    const inner = typeof input === 'object' && 'list' in input ? input.list : input
    const line = `${prefix}${name}: ${inputText(input)}`
    return typeof inner === 'object' && 'fields' in inner
      ? [line, ...inputLines(inner.fields, `${prefix}${name}${inner === input ? '' : '[]'}.`)]
      : [line]
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
