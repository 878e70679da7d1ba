import { CholeskyDecomposition, Matrix } from 'ml-matrix'
import type { LeastSquaresFit } from '../numeric/index.js'
import { Quantity } from '../units/index.js'
import type { Correction } from './calibration.js'
import type { Part, partsOf } from './calibration-part.js'
import type { Factors } from './network.js'

/** Standard deviations from the middle of a band to its 95 % end. */
export const END = 1.96

/** The factors of links and nodes that a fit of the causes means, with what is left of their scatter; the largest change first. */
export function correctionsOf(
  touched: ReturnType<typeof partsOf>,
  fit: LeastSquaresFit,
): { readonly factors: Factors; readonly corrections: Correction[] } {
  const count = fit.parameters.length
  // Column by column the independent causes of what is left.
  const left = lowerFactor(fit.covariance, count)
  const along = (shares: readonly number[], column: number) => shares.reduce((sum, share, i) => sum + share * left.get(i, column), 0)
  const columns = Array.from({ length: count }, (_, c) => c)
  const named = (parts: readonly Part[], value: (shares: readonly number[]) => number) =>
    Object.fromEntries(parts.map(({ name, shares }) => [name, value(shares)]))
  const logFactor = (shares: readonly number[]) => shares.reduce((sum, share, i) => sum + (share * fit.parameters[i]!) / END, 0)
  const factors: Factors = {
    links: named(touched.links, (shares) => Math.exp(logFactor(shares))),
    capacities: named(touched.capacities, (shares) => Math.exp(logFactor(shares))),
    spreads: columns.map((c) => ({
      links: named(touched.links, (shares) => along(shares, c)),
      capacities: named(touched.capacities, (shares) => along(shares, c)),
    })),
  }
  const ratio = (x: number) => new Quantity(x, 'ratio')
  const correction = ({ name, shares }: Part, of: Correction['of']): Correction => {
    const value = logFactor(shares)
    const half = Math.hypot(...columns.map((c) => along(shares, c)))
    const wide = Math.hypot(...shares)
    return {
      name,
      of,
      factor: ratio(Math.exp(value)),
      low: ratio(Math.exp(value - half)),
      high: ratio(Math.exp(value + half)),
      before: ratio(wide),
      informed: half < 0.9 * wide,
    }
  }
  const corrections = [
    ...touched.links.map((part) => correction(part, 'conductance')),
    ...touched.capacities.map((part) => correction(part, 'capacity')),
  ]
  return { factors, corrections: corrections.toSorted((a, b) => Math.abs(Math.log(b.factor.si)) - Math.abs(Math.log(a.factor.si))) }
}

/** Lower triangular factor of a covariance, made symmetric to the last digit first. */
function lowerFactor(covariance: Float64Array, size: number): Matrix {
  const symmetric = new Matrix(size, size)
  for (let i = 0; i < size; i++)
    for (let j = 0; j < size; j++) symmetric.set(i, j, (covariance[i * size + j]! + covariance[j * size + i]!) / 2)
  return new CholeskyDecomposition(symmetric).lowerTriangularMatrix
}
