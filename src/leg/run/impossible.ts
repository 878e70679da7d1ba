import { type AnyFormula, type Input, titleInWords } from '../../formula/index.js'
import { kindWords } from '../../units/index.js'
import { NoValueError } from '../no-value.js'

/** What the inputs of a formula must be together, and those that may not be below zero. */
interface Bounds {
  readonly together: readonly { readonly path: string; readonly accepts: string; readonly holds: (x: never) => boolean }[]
  readonly notNegative: readonly string[]
}

const known = new WeakMap<AnyFormula, Bounds>()

/**
 * Throws where a formula cannot have an answer for its inputs, such as an edge nearer than the rim of its hole: its kernel, which checks nothing, would
 * return a number, and a shear stress below zero would count as plenty of reserve. What reads it fails.
 */
export function rejectImpossible(formula: AnyFormula, x: unknown): void {
  const { together, notNegative } = known.get(formula) ?? boundsOf(formula)
  for (const { path, accepts, holds } of together)
    if (!holds(x as never)) throw new NoValueError(`${titleInWords(formula)}: ${kindWords(path)} ${accepts}`)
  const given = x as Readonly<Record<string, unknown>>
  for (const name of notNegative)
    if ((given[name] as number) < 0) throw new NoValueError(`${titleInWords(formula)}: ${kindWords(name)} must not be below zero`)
}

function boundsOf(formula: AnyFormula): Bounds {
  const { inputs, requires } = formula.def
  const bounds = {
    together: Object.entries(requires ?? {}).map(([path, limit]) => ({ path, ...limit })),
    notNegative: Object.keys(inputs).filter((name) => isNotNegative(inputs[name] as Input)),
  }
  known.set(formula, bounds)
  return bounds
}

/** Whether an input is a number that its formula takes from zero up. */
function isNotNegative(input: Input): boolean {
  if (typeof input === 'string' || !('kind' in input)) return false
  const min = input.above ?? input.min
  return typeof min === 'number' && min >= 0
}
