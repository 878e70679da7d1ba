import { NoResultError } from '../formula/index.js'
import { fitLeastSquares, type LeastSquaresFit, NumericError, sobolSequence } from '../numeric/index.js'
import type { Kind } from '../units/index.js'

/** A parameter to find, SI. */
export interface Parameter {
  readonly path: string
  readonly kind: Kind
  readonly start: number
  readonly low: number
  readonly high: number
}

/** A fit as plain numbers. */
export interface FitProblem {
  readonly id: string
  readonly parameters: readonly Parameter[]
  readonly readings: Float64Array
  readonly predict: (p: ArrayLike<number>, i: number) => number
  readonly weights: Float64Array
  readonly sigma: number | undefined
  readonly starts: number
  readonly loss: 'squares' | 'huber'
}

/** Result of a search. */
export interface FitOutcome {
  readonly problem: FitProblem
  readonly numbers: LeastSquaresFit
  readonly converged: boolean
  /** How many starts had an answer, and how many of them ended at this fit. */
  readonly starts: { readonly tried: number; readonly agreeing: number }
  /** The weights as given. */
  readonly weights: Float64Array
  /** The fitted result of a reading. */
  readonly predict: (i: number) => number
}

/** Sums of squares that differ by less than this part are those of one fit. */
const ALIKE = 1e-6
/** Residuals below this part of the readings are rounding: the fit is exact. */
const EXACT = 1e-13

/** Finds the parameters from every start and returns the best fit. Throws a `NoResultError` where no start has a finite answer. */
export function fitted(problem: FitProblem): FitOutcome {
  const found = startsOf(problem).flatMap((start) => {
    const fit = solvedFrom(problem, start, problem.weights)
    return fit === undefined ? [] : [fit]
  })
  const best = found.reduce<LeastSquaresFit | undefined>((a, b) => (a === undefined || b.sumOfSquares < a.sumOfSquares ? b : a), undefined)
  if (best === undefined)
    throw new NoResultError(`${problem.id}: no finite answer exists at the first guess for some reading; choose another guess`)
  const like = found.filter(({ sumOfSquares }) => sumOfSquares <= best.sumOfSquares * (1 + ALIKE) + Number.MIN_VALUE)
  const numbers = like.find(({ ended }) => ended === 'converged') ?? best
  const size = problem.readings.reduce((max, y) => Math.max(max, Math.abs(y)), 0)
  const exact = Math.sqrt(numbers.sumOfSquares / problem.readings.length) <= EXACT * size
  const squares = { numbers, converged: exact || numbers.ended === 'converged' }
  const { numbers: final, converged } = problem.loss === 'huber' && !exact ? robust(problem, squares.numbers) : squares
  return {
    problem,
    numbers: final,
    converged,
    starts: { tried: found.length, agreeing: like.length },
    weights: problem.weights,
    predict: (i) => problem.predict(final.parameters, i),
  }
}

/** Least squares from one start, or at it where no iteration is allowed; nothing where there is no finite answer. */
export function solvedFrom(
  { parameters, readings, predict, sigma }: FitProblem,
  start: ArrayLike<number>,
  weights: ArrayLike<number>,
  change: { readonly held?: number; readonly sigma?: number; readonly maxIterations?: number } = {},
): LeastSquaresFit | undefined {
  const roots = Float64Array.from(weights, Math.sqrt)
  const limit = (side: 'low' | 'high') => parameters.map((parameter, k) => (k === change.held ? (start[k] as number) : parameter[side]))
  try {
    return fitLeastSquares({
      count: readings.length,
      start,
      lower: limit('low'),
      upper: limit('high'),
      residuals: (p, out) => {
        for (let i = 0; i < readings.length; i++) out[i] = (predict(p, i) - (readings[i] as number)) * (roots[i] as number)
      },
      sigma: change.sigma ?? sigma,
      maxIterations: change.maxIterations,
    })
  } catch (error) {
    if (!(error instanceof NumericError && error.reason === 'notFinite')) throw error
    return undefined
  }
}

/** Decades around a guess over which starts are spread where a parameter has no limits. */
const DECADES = 1.5
/** A range over this ratio is covered by magnitude. */
const WIDE = 100

/** The guess, then points of a space-filling sequence. */
function startsOf({ parameters, starts }: FitProblem): Float64Array[] {
  const guess = Float64Array.from(parameters, ({ start }) => start)
  const sequence = starts > 1 ? sobolSequence(parameters.length, 1) : undefined
  const others = Array.from({ length: starts - 1 }, (_, s) => {
    const place = (sequence as NonNullable<typeof sequence>).point(s)
    return Float64Array.from(parameters, (parameter, k) => startAt(parameter, place[k] as number))
  })
  return [guess, ...others]
}

function startAt({ start, low, high }: Parameter, place: number): number {
  if (Number.isFinite(low) && Number.isFinite(high)) {
    if (low > 0 && high > WIDE * low) return Math.min(Math.max(low * (high / low) ** place, low), high)
    return low + place * (high - low)
  }
  return Math.min(Math.max(start * 10 ** (DECADES * (2 * place - 1)), low), high)
}

/** Huber's constant: 95 % efficient where the scatter is normal after all. */
const HUBER = 1.345
/** The median of the size of normal residuals, in deviations. */
const NORMAL_MEDIAN = 0.6745
const ROUNDS = 100

/** Huber's loss by weights that are set anew from the residuals until the parameters rest; standard errors by Huber's formula. */
function robust(problem: FitProblem, from: LeastSquaresFit): Pick<FitOutcome, 'numbers' | 'converged'> {
  const { readings, predict, weights, sigma } = problem
  const n = readings.length
  let fit = from
  let converged = false
  const sizes = () => Float64Array.from(readings, (y, i) => Math.abs(predict(fit.parameters, i) - y) * Math.sqrt(weights[i] as number))
  const scaleOf = (all: Float64Array) => sigma ?? medianOf(all) / NORMAL_MEDIAN
  for (let round = 0; round < ROUNDS && !converged; round++) {
    const all = sizes()
    const scale = scaleOf(all)
    // More than half of the readings are met exactly.
    if (!(scale > 0)) break
    const next = solvedFrom(
      problem,
      fit.parameters,
      weights.map((w, i) => w * Math.min(1, (HUBER * scale) / (all[i] as number))),
    )
    if (next === undefined) break
    converged = next.parameters.every((p, k) => {
      const error = next.standardErrors[k] as number
      return (
        Math.abs(p - (fit.parameters[k] as number)) <=
        1e-8 * (Number.isFinite(error) && error > 0 ? error : Math.abs(p)) + 1e-15 * Math.abs(p)
      )
    })
    fit = next
  }
  const all = sizes()
  const scale = scaleOf(all)
  const plain = all.filter((r) => r <= HUBER * scale).length / n
  const freedom = Math.max(fit.degreesOfFreedom, 1)
  const square = all.reduce((sum, r) => sum + Math.min(r, HUBER * scale) ** 2, 0)
  const correction = 1 + (fit.rank * (1 - plain)) / (n * plain)
  const spread = plain > 0 ? (correction * Math.sqrt(square / freedom)) / plain : scale
  const numbers = solvedFrom(problem, fit.parameters, weights, { sigma: spread, maxIterations: 0 }) ?? fit
  // The residuals are judged by the scale, the errors by the spread.
  return { numbers: { ...numbers, sigma: scale > 0 ? scale : spread }, converged }
}

function medianOf(values: Float64Array): number {
  const sorted = values.slice().sort()
  const middle = sorted.length >> 1
  return sorted.length % 2 === 1 ? (sorted[middle] as number) : 0.5 * ((sorted[middle - 1] as number) + (sorted[middle] as number))
}
