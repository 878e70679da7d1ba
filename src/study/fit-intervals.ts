import { bracketRoot, NumericError, normalQuantile, studentTQuantile } from '../numeric/index.js'
import { Quantity } from '../units/index.js'
import type { FittedParameter } from './fit-result.js'
import { type FitOutcome, type Parameter, solvedFrom } from './fit-search.js'
import { spreadKind } from './show.js'

/** Values, errors and intervals of the parameters of a fit. */
export function parametersOf(found: FitOutcome, confidence: number, intervals: 'linear' | 'profile'): FittedParameter[] {
  const { numbers, problem } = found
  const t = quantileOf(found, confidence)
  return problem.parameters.map(({ path, kind }, i) => {
    const value = numbers.parameters[i] as number
    const error = numbers.standardErrors[i] as number
    const state = stateOf(found, i)
    const known = state === 'determined' && Number.isFinite(t)
    const [low, high] = known && intervals === 'profile' ? profile(found, i, t) : [value - t * error, value + t * error]
    return {
      path,
      value: new Quantity(value, kind),
      state,
      standardError: state === 'determined' ? new Quantity(error, spreadKind(kind)) : undefined,
      interval: known ? ([new Quantity(low, kind), new Quantity(high, kind)] as const) : undefined,
    }
  })
}

/** How many standard errors a linear interval reaches to either side. */
function quantileOf({ numbers, problem }: FitOutcome, confidence: number): number {
  if (problem.sigma !== undefined) return normalQuantile(0.5 + confidence / 2)
  return numbers.degreesOfFreedom > 0 ? studentTQuantile(0.5 + confidence / 2, numbers.degreesOfFreedom) : Number.POSITIVE_INFINITY
}

function stateOf({ numbers, converged }: FitOutcome, i: number): FittedParameter['state'] {
  if (!converged) return 'unsettled'
  if (numbers.atLimit.includes(i)) return 'atLimit'
  return Number.isFinite(numbers.standardErrors[i]) ? 'determined' : 'undetermined'
}

/** The most doublings of an interval in search of its end. */
const WIDENINGS = 40

/** Where the sum of squares, the other parameters fitted anew, has grown by the square of `t` deviations; infinite or a limit where it never does. */
function profile(found: FitOutcome, i: number, t: number): readonly [number, number] {
  const { problem, numbers } = found
  const { low, high } = problem.parameters[i] as Parameter
  const value = numbers.parameters[i] as number
  const error = numbers.standardErrors[i] as number
  const end = (side: 1 | -1): number => {
    let others: Float64Array = numbers.parameters
    const beyond = (x: number): number => {
      const start = Float64Array.from(others, (p, k) => (k === i ? x : p))
      const fit = solvedFrom(problem, start, problem.weights, { held: i })
      if (fit === undefined) return Number.POSITIVE_INFINITY
      others = fit.parameters
      return Math.sqrt(Math.max(0, fit.sumOfSquares - numbers.sumOfSquares)) / numbers.sigma - t
    }
    const limit = side === 1 ? high : low
    let inner = value
    let reach = t * error
    for (let k = 0; k < WIDENINGS; k++) {
      const outer = side === 1 ? Math.min(value + reach, limit) : Math.max(value - reach, limit)
      if (beyond(outer) >= 0) {
        others = numbers.parameters
        return crossing(beyond, inner, outer, 1e-7 * error)
      }
      if (outer === limit) return limit
      inner = outer
      reach *= 2
    }
    return side * Number.POSITIVE_INFINITY
  }
  return [end(-1), end(1)]
}

function crossing(beyond: (x: number) => number, inner: number, outer: number, xTolerance: number): number {
  try {
    return bracketRoot((x) => Math.min(beyond(x), 1e6), inner, outer, { xTolerance })
  } catch (error) {
    if (!(error instanceof NumericError)) throw error
    return outer
  }
}
