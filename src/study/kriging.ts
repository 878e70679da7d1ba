import { choleskyFactor, minimise, solveLower, solveLowerTransposed } from '../numeric/index.js'

/** A smooth function through points of the unit box, with its standard deviation between them. */
export interface Kriging {
  /** The function at a point, and its standard deviation there. */
  at(u: ArrayLike<number>): readonly [value: number, deviation: number]
}

/** Small enough to go through the points, large enough that points close together do no harm. */
const NUGGET = 1e-8
/** A deviation of this share of the mean is none: a function that stays the same is met by rounding alone. */
const ROUNDING = 1e-15
/** Least variance, so that a function that is zero at all points still has a deviation to scale. */
const MIN_VARIANCE = 1e-280
/** Logarithms of the least and largest length over which a value of the unit box matters. */
const LENGTHS = [Math.log(0.05), Math.log(20)] as const
const EVALUATIONS = 60

/**
 * A Gaussian process with a constant mean and the covariance of Matérn with 5/2, an own length for each variable, found by the largest likelihood.
 *
 * Source: C. E. Rasmussen, C. K. I. Williams, *Gaussian Processes for Machine Learning*, 2006, 2.2 (prediction), 4.2.1 (covariance), 5.4.1 (likelihood).
 */
export function kriging(points: readonly Float64Array[], values: ArrayLike<number>): Kriging {
  const d = (points[0] as Float64Array).length
  const start = new Float64Array(d).fill(Math.log(0.7))
  const lower = new Float64Array(d).fill(LENGTHS[0])
  const upper = new Float64Array(d).fill(LENGTHS[1])
  const fitness = (logs: Float64Array) => fitted(points, values, logs.map(Math.exp))?.unlikeliness ?? 1e12
  const { x } = minimise(fitness, start, {
    lower,
    upper,
    step: new Float64Array(d).fill(0.7),
    restarts: 0,
    xTolerance: 0.02,
    fTolerance: 1e-5,
    maxEvaluations: EVALUATIONS * d,
  })
  const lengths = x.map(Math.exp)
  const fit = fitted(points, values, lengths) as FittedModel
  const { lower: factor, weights, mean } = fit
  const variance = Math.max(fit.variance, (ROUNDING * mean) ** 2, MIN_VARIANCE)
  const n = points.length
  const k = new Float64Array(n)
  return {
    at: (u) => {
      let value = mean
      for (let i = 0; i < n; i++) {
        k[i] = covariance(points[i] as Float64Array, u, lengths)
        value += (k[i] as number) * (weights[i] as number)
      }
      const z = solveLower(factor, n, k)
      const left = z.reduce((sum, x) => sum - x * x, 1)
      return [value, Math.sqrt(variance * Math.max(NUGGET, left))]
    },
  }
}

/** Matérn's covariance with 5/2 at a distance in lengths. */
function covariance(a: ArrayLike<number>, b: ArrayLike<number>, lengths: ArrayLike<number>): number {
  let sum = 0
  for (let i = 0; i < lengths.length; i++) sum += (((a[i] as number) - (b[i] as number)) / (lengths[i] as number)) ** 2
  const r = Math.sqrt(5 * sum)
  return (1 + r + (r * r) / 3) * Math.exp(-r)
}

interface FittedModel {
  readonly lower: Float64Array
  readonly weights: Float64Array
  readonly mean: number
  readonly variance: number
  /** Negative logarithm of the likelihood, but for a constant. */
  readonly unlikeliness: number
}

function fitted(points: readonly Float64Array[], values: ArrayLike<number>, lengths: Float64Array): FittedModel | undefined {
  const n = points.length
  const lower = factorOf(points, lengths)
  if (lower === undefined) return undefined
  const ones = solveLower(lower, n, new Float64Array(n).fill(1))
  const y = solveLower(lower, n, values)
  const mean = dot(ones, y) / dot(ones, ones)
  const z = y.map((x, i) => x - mean * (ones[i] as number))
  const variance = dot(z, z) / n
  let logs = 0
  for (let i = 0; i < n; i++) logs += Math.log(lower[i * n + i] as number)
  return {
    lower,
    weights: solveLowerTransposed(lower, n, z),
    mean,
    variance,
    unlikeliness: (n / 2) * Math.log(Math.max(variance, Number.MIN_VALUE)) + logs,
  }
}

/** The lower factor of the covariance of the points; nothing where it is not positive definite. */
function factorOf(points: readonly Float64Array[], lengths: Float64Array): Float64Array | undefined {
  const n = points.length
  const matrix = new Float64Array(n * n)
  for (let i = 0; i < n; i++)
    for (let j = 0; j <= i; j++)
      matrix[i * n + j] = i === j ? 1 + NUGGET : covariance(points[i] as Float64Array, points[j] as Float64Array, lengths)
  return choleskyFactor(matrix, n)
}

const dot = (a: Float64Array, b: Float64Array) => a.reduce((sum, x, i) => sum + x * (b[i] as number), 0)
