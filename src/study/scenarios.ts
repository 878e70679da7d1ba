import type { Formula, Inputs, Output } from '../formula/index.js'
import { InputError, type Issue } from '../units/index.js'
import { namedOutputs } from './constraints.js'
import { correlationFactor } from './correlation.js'
import { checkSeed } from './options.js'
import { planRecord, untyped, withValueAt } from './path.js'
import { scenarioOf } from './scenario.js'
import { type Uncertain, uncertainModel } from './uncertain-model.js'
import type { Correlation } from './uncertainty.js'

/** Draws of everything uncertain about a formula. */
export interface Scenarios {
  /** Inputs that scatter. */
  readonly paths: readonly string[]
  /** The inputs of a draw as a record in SI numbers, for the formula's kernel: what is certain is not in it. */
  draw(index: number): Record<string, unknown>
}

/**
 * Draws of what is uncertain: distributions and properties with a range that are given, and inputs whose default carries a range. A draw depends on seed and number alone, so that
 * many designs can be held against the same draws.
 *
 * Throws one `InputError` that lists every bad input, nothing uncertain among them.
 */
export function scenarios<I extends Inputs, O extends Output>(
  formula: Formula<I, O>,
  given: NoInfer<Uncertain<I>>,
  options: {
    /** Seed of the draws. Default 1. */
    readonly seed?: number
    /** Inputs that scatter together. Default: none. */
    readonly correlations?: readonly Correlation<string>[]
  } = {},
): Scenarios {
  const any = untyped(formula)
  const { seed = 1, correlations = [] } = planRecord(any.id, options, ['seed', 'correlations'])
  const issues: Issue[] = []
  checkSeed(seed, issues)
  if (issues.length > 0) throw new InputError(any.id, issues)
  const [first] = namedOutputs(any)
  const { varied } = uncertainModel(any, given, first?.name === 'result' ? undefined : first?.name)
  const paths = varied.map(({ path }) => path)
  const { lower } = correlationFactor(paths, correlations, any.id)
  return {
    paths,
    draw: (index) => {
      const values = scenarioOf(varied, lower, seed, index)
      return paths.reduce<Record<string, unknown>>((all, path, i) => withValueAt(all, path, values[i]), {})
    },
  }
}
