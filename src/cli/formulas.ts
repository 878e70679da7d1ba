import { type AnyFormula, inputsInWords, outputsInWords } from '../formula/index.js'
import { InputError } from '../units/index.js'
import { argumentsOf, rejectWords } from './arguments.js'
import { nearest, type Searched } from './nearest.js'
import summaries from './summaries.json' with { type: 'json' }
import { EXIT, type Exit, type Terminal } from './terminal.js'

const verb = 'formulas'

/** First sentence of every public function, formulas among them, by id. */
const SUMMARIES: ReadonlyMap<string, string> = new Map(Object.entries(summaries))

/**
 * Lists formulas and other functions whose summary, id, inputs or sources hold every word given. Where none does, those that hold the most are listed
 * under a line that states it. The id of one prints all of it.
 */
export async function formulas(terminal: Terminal, args: readonly string[]): Promise<Exit> {
  const given = argumentsOf(verb, args, {})
  const { catalogue } = await import('../catalogue/index.js')
  const [id] = given.words
  const whole = id !== undefined && SUMMARIES.has(id)
  const every = (text: string) => given.words.every((word) => text.toLowerCase().includes(word.toLowerCase()))
  const textOf = (each: string) => {
    const formula = catalogue.get(each)
    return `${each} ${SUMMARIES.get(each)} ${formula === undefined ? '' : moreOf(formula)}`
  }
  const exact = whole ? [id] : [...SUMMARIES.keys()].filter((each) => every(textOf(each)))
  const near =
    exact.length > 0
      ? undefined
      : nearest(
          given.words,
          [...SUMMARIES].map(([each, summary]) => searched(each, summary, catalogue.get(each))),
        )
  const ids = near?.ids ?? exact
  if (ids.length === 0)
    rejectWords(verb, given.words, 'must occur in the id, the summary, the inputs or the sources of a formula or function')
  const data = (each: string) => {
    const formula = catalogue.get(each)
    return formula === undefined ? { id: each, summary: SUMMARIES.get(each) } : asData(formula)
  }
  const lineIn = (each: string) => {
    const formula = catalogue.get(each)
    return formula === undefined ? `${each}: ${SUMMARIES.get(each)}` : lineOf(formula)
  }
  const [formula, ...more] = ids.flatMap((each) => catalogue.get(each) ?? [])
  if (given.flag('json')) terminal.out(JSON.stringify(ids.map(data), null, 2))
  else if (near !== undefined)
    terminal.out([`Nothing holds every one of these words. Nearest, by ${near.words.join(', ')}:`, '', ...ids.map(lineIn)].join('\n'))
  else if (whole) terminal.out(formula === undefined ? pageOfFunction(id) : pageOf(formula))
  else {
    const formulasFound = formula === undefined ? [] : [formula, ...more]
    terminal.out([...formulasFound.map(lineOf), ...linesOfOthers(ids.filter((each) => !catalogue.has(each)))].join('\n'))
  }
  return EXIT.holds
}

/** The formula of an id. Throws an `InputError` that names the nearest ids. */
export async function formulaNamed(of: string, id: string): Promise<AnyFormula> {
  const { formulaOf } = await import('../catalogue/index.js')
  try {
    return formulaOf(id)
  } catch (error) {
    const accepts = SUMMARIES.has(id) ? `${id} is a function, which programs call; it is no single formula` : (error as Error).message
    throw new InputError(of, [{ path: '', given: '', accepts }])
  }
}

const moreOf = ({ def }: AnyFormula) =>
  [...Object.keys(def.inputs), ...def.source.map(({ where }) => where), ...(def.assumes ?? [])].join(' ')
const searched = (id: string, summary: string, formula: AnyFormula | undefined): Searched => ({
  id,
  summary,
  // Authors of sources are no subject.
  more: formula === undefined ? '' : [...Object.keys(formula.def.inputs), ...(formula.def.assumes ?? [])].join(' '),
})

const lineOf = ({ id, def }: AnyFormula) => `${id}(${Object.keys(def.inputs).join(', ')}): ${SUMMARIES.get(id)}`

/** Functions that are no single formulas, below a heading of their own. */
const linesOfOthers = (ids: readonly string[]) =>
  ids.length === 0 ? [] : ['', 'Other functions, which programs import:', ...ids.map((id) => `${id}: ${SUMMARIES.get(id)}`)]

const asData = ({ id, def }: AnyFormula) => ({
  id,
  summary: SUMMARIES.get(id),
  inputs: def.inputs,
  output: def.output,
  equation: def.equation ?? [],
  assumes: def.assumes ?? [],
  valid: Object.keys(def.valid ?? {}),
  sources: def.source,
})

const lines = (words: Readonly<Record<string, string>>) => Object.entries(words).map(([name, text]) => `${name}: ${text}`)

/** A function that is no single formula: what it does, and how a program gets it. */
function pageOfFunction(id: string): string {
  const [module, name] = id.split('.') as [string, string]
  return [
    id,
    SUMMARIES.get(id),
    '',
    'A function, which programs import',
    `  import { ${name} } from 'limbwright/${module}'`,
    '  Its inputs and its result: hover over its name in an editor, or open its page of the reference.',
  ].join('\n')
}

function pageOf({ id, def }: AnyFormula): string {
  const section = (title: string, lines: readonly string[]) => (lines.length === 0 ? [] : ['', title, ...lines.map((line) => `  ${line}`)])
  return [
    id,
    SUMMARIES.get(id),
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
