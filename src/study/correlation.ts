import { onlyKeys } from '../formula/index.js'
import { choleskyFactor } from '../numeric/index.js'
import { InputError, type Issue, issue, refuse } from '../units/index.js'

/** Pivot that rounding leaves of an input that others determine. */
const ROUNDING = 1e-12

/** A correlation matrix (row-major) and, where anything is correlated, its lower triangular factor. */
export interface CorrelationFactor {
  readonly matrix: Float64Array
  readonly lower: Float64Array | undefined
}

/**
 * The correlation matrix of inputs and its Cholesky factor.
 * Throws an `InputError` for unknown inputs, coefficients beyond ±1, and coefficients that cannot all hold at once.
 */
export function correlationFactor(
  paths: readonly string[],
  correlations: readonly { readonly between: readonly [string, string]; readonly coefficient: number }[],
  where: string,
): CorrelationFactor {
  const n = paths.length
  const matrix = new Float64Array(n * n)
  for (let i = 0; i < n; i++) matrix[i * n + i] = 1
  if (correlations.length === 0) return { matrix, lower: undefined }
  const issues: Issue[] = []
  if (!Array.isArray(correlations)) refuse(where, 'correlations', correlations, 'must be a list of { between, coefficient }')
  correlations.forEach((each: { readonly between: readonly [string, string]; readonly coefficient: number }, k) => {
    if (!onlyKeys(`correlations[${k}]`, each, ['between', 'coefficient'], issues)) return
    const { between, coefficient } = each
    const [i = -1, j = -1] = Array.isArray(between) ? between.map((path) => paths.indexOf(path)) : []
    if (i < 0 || j < 0 || i === j)
      issues.push(issue(`correlations[${k}].between`, between, `must be two of the uncertain inputs ${paths.join(', ')}`))
    else if (!(coefficient >= -1 && coefficient <= 1))
      issues.push(issue(`correlations[${k}].coefficient`, coefficient, 'must be a number from -1 to 1'))
    else {
      matrix[i * n + j] = coefficient
      matrix[j * n + i] = coefficient
    }
  })
  const lower = issues.length === 0 ? choleskyFactor(matrix, n, ROUNDING) : undefined
  if (issues.length === 0 && lower === undefined)
    issues.push({
      path: 'correlations',
      given: correlations.map(({ between, coefficient }) => `${between.join('–')} ${coefficient}`).join(', '),
      accepts: 'must be coefficients that can hold together (a positive semidefinite matrix)',
    })
  if (issues.length > 0) throw new InputError(where, issues)
  return { matrix, lower }
}

/** The lower factor of a correlation matrix whose inputs are put into another order. */
export function reordered(matrix: Float64Array, n: number, order: readonly number[]): Float64Array {
  const turned = Float64Array.from(order.flatMap((i) => order.map((j) => matrix[i * n + j] as number)))
  return choleskyFactor(turned, n, ROUNDING) as Float64Array
}
