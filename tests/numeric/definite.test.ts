import fc from 'fast-check'
import { CholeskyDecomposition, Matrix, solve } from 'ml-matrix'
import { expect, test } from 'vitest'
import { choleskyFactor, solveLower, solveLowerTransposed } from '../../src/numeric/index.js'

const entry = fc.integer({ min: -1000, max: 1000 }).map((x) => x / 100)
const square = fc.integer({ min: 1, max: 7 }).chain((n) =>
  fc.record({
    n: fc.constant(n),
    half: fc.array(fc.array(entry, { minLength: n, maxLength: n }), { minLength: n, maxLength: n }),
    b: fc.array(entry, { minLength: n, maxLength: n }),
  }),
)

test('factors and solutions agree with ml-matrix, from the lower triangle alone', () => {
  fc.assert(
    fc.property(square, ({ n, half, b }) => {
      const definite = new Matrix(half).mmul(new Matrix(half).transpose()).add(Matrix.eye(n, n, 100))
      const triangle = Float64Array.from({ length: n * n }, (_, e) =>
        e % n <= Math.floor(e / n) ? definite.get(Math.floor(e / n), e % n) : Number.NaN,
      )
      const factor = choleskyFactor(triangle, n) as Float64Array
      const other = new CholeskyDecomposition(definite).lowerTriangularMatrix.to1DArray()
      for (let e = 0; e < n * n; e++) expect(factor[e]).toBeCloseTo(other[e] as number, 11)
      const x = solveLowerTransposed(factor, n, solveLower(factor, n, b))
      const known = solve(definite, Matrix.columnVector(b))
      for (let i = 0; i < n; i++) expect(x[i]).toBeCloseTo(known.get(i, 0), 12)
    }),
  )
})

test('a matrix that is not definite has no factor, but a semidefinite one has if that is allowed', () => {
  const tied = [1, 1, 1, 1]
  expect(choleskyFactor(tied, 2)).toBeUndefined()
  expect(choleskyFactor(tied, 2, 1e-12)).toEqual(Float64Array.of(1, 0, 1, 0))
  expect(solveLower(Float64Array.of(1, 0, 1, 0), 2, [3, 3])).toEqual(Float64Array.of(3, 0))
  expect(choleskyFactor([1, 1.1, 1.1, 1], 2, 1e-12)).toBeUndefined()
  // Zero on the diagonal, and not below it.
  expect(choleskyFactor([0, 1, 1, 1], 2, 1e-12)).toBeUndefined()
  expect(choleskyFactor([1, Number.NaN, Number.NaN, 1], 2, 1e-12)).toBeUndefined()
  expect(choleskyFactor([Number.NaN], 1)).toBeUndefined()
})
