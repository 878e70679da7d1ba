import { type Flat, type Formula, type Given, type Inputs, type Output, type Result, readInputs } from '../formula/index.js'
import { minimiseScalar } from '../numeric/index.js'
import { type In, InputError, type Kind, Quantity, refuse, show } from '../units/index.js'
import type { AtFriction } from './drive-results.js'
import { type FrictionRange, frictionRange, RANGE } from './drive-specification.js'

const ENDS = { friction: RANGE } as const

function readRange(where: string, given: FrictionRange | undefined) {
  const friction = frictionRange(given) ?? { low: undefined, high: undefined }
  const read = readInputs(where, ENDS, { friction } as never).friction
  if (read.low > read.high)
    throw new InputError(where, [
      { path: 'friction', given: `${show(friction.low)} to ${show(friction.high)}`, accepts: 'must have its low end at most its high end' },
    ])
  return { ...friction, read }
}

/**
 * Runs a formula that takes `friction` at both ends of an interval. Results are named for the end they belong to, since more friction
 * raises some results and lowers others. Throws an `InputError` for a low end above the high end and for input that the formula rejects.
 */
export function overFriction<I extends Inputs & { readonly friction: unknown }, O extends Output>(
  formula: Formula<I, O>,
  given: Flat<Omit<Given<I>, 'friction'>> & {
    /** Friction as one number, as the interval it lies in, or as a property. */
    readonly friction: FrictionRange
  },
): AtFriction<Result<O>> {
  const { low, high } = readRange(formula.id, given?.friction)
  const at = (friction: In<'ratio'> | undefined) => formula({ ...given, friction } as unknown as Given<I>)
  return { atLowFriction: at(low), atHighFriction: at(high) }
}

/** A result over a whole interval of friction, in order: the least and the most it can be, and the friction that makes it so. */
export interface FrictionBand<K extends Kind> {
  readonly least: Quantity<K>
  readonly leastAt: Quantity<'ratio'>
  readonly most: Quantity<K>
  readonly mostAt: Quantity<'ratio'>
}

const TRIAL_POINTS = 24

/**
 * The least and the most that one result can be while friction is anywhere in its interval, ends and inside: lost motion is often largest
 * between them. `of` gives the result at one coefficient. 25 coefficients are tried, then the neighbourhood of the best: a narrow peak may be missed.
 * Throws an `InputError` for a low end above the high end and where `of` has no result.
 */
export function frictionBand<K extends Kind>(friction: FrictionRange, of: (friction: number) => Quantity<K> | undefined): FrictionBand<K> {
  const where = 'capstan.frictionBand'
  const { low, high } = readRange(where, friction).read
  const result = (at: number) =>
    of(at) ?? refuse(where, 'of', of, `must return a result over the whole interval; it returns no result at a friction of ${at}`)
  const places = Array.from({ length: TRIAL_POINTS + 1 }, (_, i) => (i === TRIAL_POINTS ? high : low * (high / low) ** (i / TRIAL_POINTS)))
  const seen = places.map(result)
  const extreme = (sign: 1 | -1) => {
    const worth = (result: Quantity<K>) => sign * result.si
    const best = seen.reduce((top, result, i) => (worth(result) < worth(seen[top] as Quantity<K>) ? i : top), 0)
    const [from, to] = [places[Math.max(0, best - 1)] as number, places[Math.min(TRIAL_POINTS, best + 1)] as number]
    const at = from < to ? minimiseScalar((x) => worth(result(x)), from, to).x : from
    const found = result(at)
    return worth(found) < worth(seen[best] as Quantity<K>)
      ? { at, found }
      : { at: places[best] as number, found: seen[best] as Quantity<K> }
  }
  const [least, most] = [extreme(1), extreme(-1)]
  return { least: least.found, leastAt: new Quantity(least.at, 'ratio'), most: most.found, mostAt: new Quantity(most.at, 'ratio') }
}
