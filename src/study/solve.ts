import type { AnyFormula, Formula, Inputs, Output } from '../formula/index.js'
import { type In, InputError, type Issue, type Kind, Quantity } from '../units/index.js'
import { type Model, modelOf } from './model.js'
import { checkWhole } from './options.js'
import { type KindAt, planRecord, type ScalarPath, type Target, untyped, type Without, withValueAt } from './path.js'
import { type Solution, solution } from './solution.js'
import { rangeOf, type SearchRange, targetOf, type Wanted } from './solve-range.js'
import { scan } from './solve-scan.js'

/** How `solveFor` searches. */
export interface SolveOptions<K extends Kind> {
  /**
   * Search only between these two values. Default: between the input's own limits, and where it has none up to 1e15 of its SI unit. A range from
   * or over zero is searched by magnitude as well, from 1e-30 of the SI unit.
   */
  readonly between?: readonly [In<K>, In<K>]
  /** Parts into which a range is cut. Two solutions that cross the target in one part are missed. Default 400. */
  readonly samples?: number
}

/**
 * Finds the input that gives a target result, for any formula: `solveFor(slackTension, 'wrapAngle', { load: '500 N', friction: 0.2 }, '2 N')`.
 *
 * The range of the input is scanned in equal steps where it has two ends, and in steps of equal ratio where it spans magnitudes. Every
 * crossing is narrowed to full precision, at the edge of the formula's domain too. Results that only touch the target are found, and ranges of the input that
 * all give it are reported as intervals; jumps and poles are no solutions, nor are values that the formula itself rejects. A formula with several outputs takes
 * `{ name: value }` as the target.
 *
 * Throws an `InputError` for bad inputs, an unknown path, an unknown output, or a range beyond the input's limits. Where no value is found the
 * answer has `state: 'none'` and its message names what was searched.
 */
export function solveFor<I extends Inputs, O extends Output, const P extends ScalarPath<I>>(
  /** The formula, or a leg through `legFormula`. */
  formula: Formula<I, O>,
  /** The input to find, by its path. */
  path: P,
  /** All other inputs. */
  given: NoInfer<Without<I, P>>,
  /** The result to reach. */
  target: NoInfer<Target<O>>,
  /** Where to search, and in how many parts. */
  options: NoInfer<SolveOptions<KindAt<I, P>>> = {},
): Solution<KindAt<I, P>> {
  const any = untyped(formula)
  const wanted = targetOf(any, target)
  const { samples = 400, between } = planRecord('solveFor', options, ['between', 'samples'])
  const issues: Issue[] = []
  checkWhole('samples', samples, 1, MAX_SAMPLES, issues)
  if (issues.length > 0) throw new InputError('solveFor', issues)
  const range = rangeOf(any, path, between)
  const model = knownInputs(any, path, given, range, wanted)
  let min = Number.POSITIVE_INFINITY
  let max = Number.NEGATIVE_INFINITY
  const at = new Float64Array(1)
  const miss = (value: number) => {
    at[0] = value
    const result = model.at(at)
    if (result < min) min = result
    if (result > max) max = result
    return result - wanted.si
  }
  const found = scan(miss, range, samples, ROUNDING * Math.abs(wanted.si))
  return solution({ id: any.id, path, kind: range.kind as KindAt<I, P>, target: wanted, ...found, range, least: min, most: max })
}

const MAX_SAMPLES = 1e7
/** How far a result may be off by rounding, relative. */
const ROUNDING = 8 * 2 ** -52

/** The formula as a function of the input, the others checked as a call would check them. */
function knownInputs(formula: AnyFormula, path: string, given: unknown, { kind, lowest, highest }: SearchRange, output: Wanted): Model {
  const probe =
    lowest > 0 ? Math.sqrt(lowest) * Math.sqrt(highest) : highest < 0 ? -Math.sqrt(-lowest) * Math.sqrt(-highest) : lowest / 2 + highest / 2
  const issues: Issue[] = []
  const model = modelOf(formula, withValueAt(given, path, new Quantity(probe, kind)), [path], output, issues)
  if (issues.length > 0) throw new InputError(formula.id, issues)
  return model
}
