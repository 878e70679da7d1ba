import { type AnyFormula, inputsInWords, outputsInWords } from '../formula/index.js'
import { InputError, refuse } from '../units/index.js'
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

const lines = (words: Readonly<Record<string, string>>) => Object.entries(words).map(([name, text]) => `${name}: ${text}`)

function pageOf({ id, def }: AnyFormula): string {
  const section = (title: string, lines: readonly string[]) => (lines.length === 0 ? [] : ['', title, ...lines.map((line) => `  ${line}`)])
  return [
    id,
    ...section('Inputs', lines(inputsInWords(def.inputs))),
    ...section('Output', lines(outputsInWords(def.output))),
    ...section('Equation', def.equation ?? []),
    ...section('Assumes', def.assumes ?? []),
    ...section('Valid where', Object.keys(def.valid ?? {})),
    ...section(
      'Sources',
      def.source.map(({ level, where }) => `${where} (${level})`),
    ),
  ].join('\n')
}
