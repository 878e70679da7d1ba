import { type Flat, type Formula, type Given, type Inputs, type Output, type Result, readInputs } from '../formula/index.js'
import { type In, InputError, show } from '../units/index.js'
import type { AtFriction } from './drive-results.js'

const ENDS = { friction: { fields: { low: 'ratio', high: 'ratio' } } } as const

/**
 * Runs a formula that takes `friction` at both ends of an interval. Results are named for the end they belong to, since more friction
 * raises some results and lowers others. Throws an `InputError` for an interval upside down and for what the formula itself refuses.
 */
export function overFriction<I extends Inputs & { readonly friction: unknown }, O extends Output>(
  formula: Formula<I, O>,
  given: Flat<Omit<Given<I>, 'friction'>> & { readonly friction: { readonly low: In<'ratio'>; readonly high: In<'ratio'> } },
): AtFriction<Result<O>> {
  const { low, high } = given?.friction ?? {}
  const read = readInputs(formula.id, ENDS, { friction: { low, high } } as never).friction
  if (read.low > read.high)
    throw new InputError(formula.id, [
      { path: 'friction', given: `${show(low)} to ${show(high)}`, accepts: 'must have its low end at most its high end' },
    ])
  const at = (friction: In<'ratio'> | undefined) => formula({ ...given, friction } as unknown as Given<I>)
  return { atLowFriction: at(low), atHighFriction: at(high) }
}
