// What every public call owes its caller, whatever it is given: a finite answer of the declared shape, or one named error, soon.
import { NoResultError, type Output, type OutputField } from '../../src/formula/index.js'
import { InputError, Quantity } from '../../src/units/index.js'

/** One broken promise. */
export interface Fault {
  /** The formula, function or document that broke it. */
  readonly where: string
  readonly what: string
  /** What repeats it. */
  readonly given: string
}

/** Longest error message: it is read in a terminal. */
const LONGEST_MESSAGE = 5000

/** Why an error is not one that a caller can act on; nothing where it is. */
export function errorFault(error: unknown): string | undefined {
  if (!(error instanceof Error)) return `threw ${typeof error} instead of an error`
  if (!(error instanceof InputError || error instanceof NoResultError)) return `threw ${error.name}: ${error.message.slice(0, 160)}`
  if (error.message.length > LONGEST_MESSAGE) return `its message has ${error.message.length} characters`
  if (/\b(undefined|NaN)\b/.test(spoken(error.message))) return `its message is unclear: ${error.message.slice(0, 400)}`
  if (error instanceof InputError && (error.issues.length === 0 || error.issues.some(({ accepts }) => accepts.trim() === '')))
    return 'its issues do not say what is accepted'
  return undefined
}

/** The message without what was given: in quotation marks, or after "is". */
const spoken = (message: string) =>
  message.replace(/'[^']*'/g, '').replace(/\bis (NaN|undefined|\[[^;]*|a list with [^;]*|an object with [^;]*)/g, '')

/** Why an answer is not of the declared shape; nothing where it is. */
export function answerFault(output: Output, answer: unknown): string | undefined {
  if (isOne(output)) return fieldFault('the result', output, answer)
  const names = Object.keys(output)
  const surplus = Object.keys(answer as object).filter((name) => !names.includes(name))
  if (surplus.length > 0) return `undeclared output ${surplus[0]}`
  for (const [name, field] of Object.entries(output)) {
    const fault = fieldFault(name, field as OutputField, (answer as Record<string, unknown>)[name])
    if (fault !== undefined) return fault
  }
  return undefined
}

const isOne = (output: Output): output is Extract<Output, string | { kind: unknown }> =>
  typeof output === 'string' || ('kind' in output && 'infinite' in output)

function fieldFault(name: string, field: OutputField, value: unknown): string | undefined {
  if (typeof field !== 'string' && 'oneOf' in field)
    return field.oneOf.includes(value as string) ? undefined : `${name} is the undeclared word ${String(value)}`
  if (typeof field !== 'string' && 'list' in field) {
    if (!Array.isArray(value)) return `${name} is not a list`
    return value.map((item) => fieldFault(name, field.list, item)).find((fault) => fault !== undefined)
  }
  if (!(value instanceof Quantity)) return `${name} is not a quantity`
  const kind = typeof field === 'string' ? field : field.kind
  if (value.kind !== kind) return `${name} is of the kind ${value.kind}, not ${kind}`
  const mayBeInfinite = typeof field !== 'string' && value.si === Number.POSITIVE_INFINITY
  return Number.isFinite(value.si) || mayBeInfinite ? undefined : `${name} is ${value.si}`
}

/** Processor time of this process, in milliseconds: another process on the machine does not count. */
const processorTime = () => process.cpuUsage().user / 1000

/** Processor time of `measure` on the idle machine that the limits were set on, in milliseconds. */
const USUAL = 15
/** How much slower a machine may be for the limits to stretch with it. */
const MOST_SLOWER = 3

/** How much slower this machine is now: a neighbour on the same core stretches processor time too. */
function slowness(): number {
  const measure = () => {
    const start = processorTime()
    const kept: { x: number }[] = []
    for (let i = 0; i < 400_000; i++) {
      kept.push({ x: Math.sqrt(i) + Math.exp(-i / 1e5) })
      if (kept.length > 1000) kept.length = 0
    }
    return processorTime() - start
  }
  const times = [measure(), measure(), measure(), measure(), measure()].sort((a, b) => a - b)
  return Math.min(MOST_SLOWER, Math.max(1, (times[2] as number) / USUAL))
}

/** How many calls ended in each way. */
export interface Tally {
  answers: number
  inputErrors: number
  noResults: number
}

export const tally: Tally = { answers: 0, inputErrors: 0, noResults: 0 }

/** Runs a call and judges it: the answer by `judge`, an error by its name and message, and the time. A slow call gets two more chances. */
export function faultOf(call: () => unknown, longest: number, judge: (answer: unknown) => string | undefined): string | undefined {
  let least = Number.POSITIVE_INFINITY
  for (let chance = 0; chance < 3; chance++) {
    const start = processorTime()
    const fault = outcome(call, judge)
    least = Math.min(least, processorTime() - start)
    if (fault !== undefined) return fault
    if (least <= longest) return undefined
  }
  if (least <= longest * slowness()) return undefined
  return `takes ${least.toFixed(0)} ms of processor time; at most ${longest} ms are allowed`
}

function outcome(call: () => unknown, judge: (answer: unknown) => string | undefined): string | undefined {
  let answer: unknown
  try {
    answer = call()
    tally.answers++
  } catch (error) {
    if (error instanceof InputError) tally.inputErrors++
    if (error instanceof NoResultError) tally.noResults++
    return errorFault(error)
  }
  return judge(answer)
}
