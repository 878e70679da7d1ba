import { chiSquareCdf, normalCdf, studentTQuantile } from '../numeric/index.js'

/** One check of the residuals. */
export interface ResidualCheck {
  /** Name of the check. */
  readonly check: 'outliers' | 'runs' | 'serial correlation' | 'normality' | 'size'
  /** Whether the residuals look as independent normal scatter would, at 1 %. */
  readonly holds: boolean
  /** Chance of residuals at least this unusual if the model were right; not for outliers, which are listed. */
  readonly pValue: number | undefined
  /** Readings concerned, by index from 0. */
  readonly readings: readonly number[]
  /** The finding, in words. */
  readonly message: string
}

const UNUSUAL = 0.01

/**
 * Whether residuals look like independent normal scatter about zero, in the order of the readings.
 *
 * Sources: A. Wald, J. Wolfowitz, *Ann. Math. Stat.* 11 (1940) 147 (runs); J. Durbin, G. S. Watson, *Biometrika* 37 (1950) 409 (here by the large-sample
 * normal law of the first serial correlation); C. M. Jarque, A. K. Bera, *Econ. Lett.* 6 (1980) 255 (normality); Bonferroni's inequality (outliers).
 */
export function residualChecks(residuals: Float64Array, sigma: number, freedom: number, known: boolean): ResidualCheck[] {
  const n = residuals.length
  let square = 0
  for (const r of residuals) square += r * r
  // An exact fit has nothing but rounding to look at.
  if (freedom < 3 || !(sigma > 0) || square === 0) return []
  const checks: ResidualCheck[] = [outliers(residuals, sigma, freedom), runs(residuals), serial(residuals, square)]
  if (n >= 20) checks.push(normality(residuals))
  if (known) {
    const below = chiSquareCdf(square / sigma ** 2, freedom)
    const pValue = 1 - below
    checks.push({
      check: 'size',
      holds: pValue >= UNUSUAL,
      pValue,
      readings: [],
      message: `residuals are ${(Math.sqrt(square / freedom) / sigma).toPrecision(3)} times the deviation given (p = ${pValue.toPrecision(2)})${pValue < UNUSUAL ? ': the formula does not describe the readings, or they scatter more than the deviation given' : ''}`,
    })
  }
  return checks
}

function outliers(residuals: Float64Array, sigma: number, freedom: number): ResidualCheck {
  const limit = studentTQuantile(1 - UNUSUAL / (2 * residuals.length), freedom)
  const readings = Array.from(residuals, (r, i) => ({ i, size: Math.abs(r) / sigma }))
    .filter(({ size }) => size > limit)
    .map(({ i }) => i)
  return {
    check: 'outliers',
    holds: readings.length === 0,
    pValue: undefined,
    readings,
    message:
      readings.length === 0
        ? `no reading is further off than ${limit.toPrecision(3)} deviations`
        : `readings ${readings.join(', ')} (from 0) are further off than ${limit.toPrecision(3)} deviations; they are kept in the fit`,
  }
}

const twoSided = (z: number) => 2 * normalCdf(-Math.abs(z))

function runs(residuals: Float64Array): ResidualCheck {
  const signs = Array.from(residuals)
    .filter((r) => r !== 0)
    .map((r) => r > 0)
  const up = signs.filter(Boolean).length
  const down = signs.length - up
  const count = signs.reduce((sum, sign, i) => sum + (i === 0 || sign !== signs[i - 1] ? 1 : 0), 0)
  const total = up + down
  const expected = 1 + (2 * up * down) / total
  const variance = ((expected - 1) * (expected - 2)) / (total - 1)
  const pValue = variance > 0 ? twoSided((count - expected) / Math.sqrt(variance)) : 1
  return {
    check: 'runs',
    holds: pValue >= UNUSUAL,
    pValue,
    readings: [],
    message: `${count} runs of one sign, ${expected.toPrecision(3)} expected (p = ${pValue.toPrecision(2)})${pValue < UNUSUAL ? ': the fitted curve misses the shape of the readings, or they drift' : ''}`,
  }
}

function serial(residuals: Float64Array, square: number): ResidualCheck {
  const n = residuals.length
  let product = 0
  let steps = 0
  for (let i = 1; i < n; i++) {
    product += (residuals[i] as number) * (residuals[i - 1] as number)
    steps += ((residuals[i] as number) - (residuals[i - 1] as number)) ** 2
  }
  const pValue = twoSided((product / square) * Math.sqrt(n))
  return {
    check: 'serial correlation',
    holds: pValue >= UNUSUAL,
    pValue,
    readings: [],
    message: `Durbin-Watson ${(steps / square).toPrecision(3)}, 2 expected (p = ${pValue.toPrecision(2)})${pValue < UNUSUAL ? ': neighbouring readings are not independent, the intervals are too narrow' : ''}`,
  }
}

function normality(residuals: Float64Array): ResidualCheck {
  const n = residuals.length
  const mean = residuals.reduce((sum, r) => sum + r, 0) / n
  const moment = (k: number) => residuals.reduce((sum, r) => sum + (r - mean) ** k, 0) / n
  const m2 = moment(2)
  const skew = moment(3) / m2 ** 1.5
  const excess = moment(4) / m2 ** 2 - 3
  const statistic = (n / 6) * (skew ** 2 + excess ** 2 / 4)
  // The statistic is chi-square with two degrees of freedom in large samples.
  const pValue = Math.exp(-statistic / 2)
  return {
    check: 'normality',
    holds: pValue >= UNUSUAL,
    pValue,
    readings: [],
    message: `skewness ${skew.toPrecision(2)}, excess kurtosis ${excess.toPrecision(2)} (p = ${pValue.toPrecision(2)})${pValue < UNUSUAL ? ': the scatter is not normal' : ''}`,
  }
}
