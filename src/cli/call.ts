import type { AnyFormula } from '../formula/index.js'
import { type Note, Quantity, refuse } from '../units/index.js'
import { argumentsOf, assignments, rejectWords } from './arguments.js'
import { formulaNamed } from './formulas.js'
import { EXIT, type Exit, type Terminal } from './terminal.js'

const verb = 'call'

/** Calls one formula with inputs from the command line, or solves it for one of them. */
export async function call(terminal: Terminal, args: readonly string[]): Promise<Exit> {
  const given = argumentsOf(verb, args, { solve: { type: 'string' }, target: { type: 'string' } })
  const [id, ...words] = given.words
  if (id === undefined)
    rejectWords(verb, given.words, "must be the id of a formula and its inputs, such as capstan.slackTension load='500 N'")
  const formula = await formulaNamed(verb, id)
  const inputs = nested(assignments(verb, words))
  const [path, target] = [given.text('solve'), given.text('target')]
  if ((path === undefined) !== (target === undefined))
    refuse(verb, path === undefined ? '--solve' : '--target', undefined, 'must be given too: --solve names the input, --target the result')
  const result =
    path === undefined ? (formula as unknown as (x: object) => unknown)(inputs) : await solved(formula, path, inputs, target as string)
  terminal.out(given.flag('json') ? JSON.stringify(result, null, 2) : textOf(result))
  // Beside the result, also where that is read by a program: the JSON form of a quantity has no notes.
  for (const note of new Set(notesIn(result))) terminal.note(`note: ${note}`)
  return EXIT.holds
}

async function solved(formula: AnyFormula, path: string, inputs: object, target: string): Promise<unknown> {
  const { solveFor } = await import('../study/index.js')
  const outputs = Object.values(assignments(verb, target.includes('=') ? [target] : [`result=${target}`]))[0]
  const goal = target.includes('=') ? { [target.slice(0, target.indexOf('='))]: outputs } : outputs
  const { state, roots, intervals, message } = solveFor(formula as never, path as never, inputs as never, goal as never)
  return { [path]: roots, state, intervals, message }
}

/** `outer.modulus` and `loads[0]` as records and lists. */
function nested(flat: Readonly<Record<string, unknown>>): object {
  const whole: Record<string, unknown> = {}
  for (const [path, value] of Object.entries(flat)) {
    const steps = path.replaceAll(/\[(\d+)\]/g, '.$1').split('.')
    let at = whole
    steps.forEach((step, i) => {
      if (step === '__proto__') refuse(verb, path, value, 'must be the path of an input')
      if (i === steps.length - 1) at[step] = value
      else {
        at[step] ??= /^\d+$/.test(steps[i + 1] as string) ? [] : {}
        at = at[step] as Record<string, unknown>
      }
    })
  }
  return whole
}

function textOf(result: unknown): string {
  if (typeof result !== 'object' || result === null || result instanceof Quantity) return String(result)
  return Object.entries(result)
    .map(([name, value]) => `${name}: ${Array.isArray(value) ? `[${value.map(textOf).join(', ')}]` : String(value)}`)
    .join('\n')
}

const notesIn = (result: unknown): string[] =>
  result instanceof Quantity
    ? ((result as { notes?: readonly Note[] }).notes ?? []).map((note) => note.text)
    : typeof result === 'object' && result !== null
      ? Object.values(result).flatMap(notesIn)
      : []
