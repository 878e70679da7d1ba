import fc from 'fast-check'
import { Matrix, SingularValueDecomposition, solve } from 'ml-matrix'
import { describe, expect, test } from 'vitest'
import { householder, luFactor, luSolve, singularValues, solveDefiniteInPlace, solveInPlace } from '../../src/numeric/index.js'

// Nothing below 1e-100: the reference itself fails where squares underflow.
const entry = fc.double({ min: -10, max: 10, noNaN: true }).map((x) => (Math.abs(x) < 1e-100 ? 0 : x))

const square = fc.integer({ min: 1, max: 8 }).chain((n) =>
  fc.record({
    n: fc.constant(n),
    a: fc.array(entry, { minLength: n * n, maxLength: n * n }),
    b: fc.array(entry, { minLength: n, maxLength: n }),
  }),
)

const rows = (a: readonly number[], n: number) => Array.from({ length: n }, (_, i) => a.slice(i * n, i * n + n))

describe('symmetric positive definite systems', () => {
  test('agree with ml-matrix, from the upper triangle alone', () => {
    fc.assert(
      fc.property(square, ({ n, a, b }) => {
        const half = new Matrix(rows(a, n))
        const definite = half.mmul(half.transpose()).add(Matrix.eye(n))
        const upper = Float64Array.from({ length: n * n }, (_, e) =>
          e % n >= Math.floor(e / n) ? definite.get(Math.floor(e / n), e % n) : Number.NaN,
        )
        const x = Float64Array.from(b)
        expect(solveDefiniteInPlace(upper, n, x)).toBe(true)
        const other = solve(definite, Matrix.columnVector(b))
        const size = Math.max(...x.map(Math.abs), 1)
        const { condition } = new SingularValueDecomposition(definite)
        for (let i = 0; i < n; i++) expect(Math.abs(x[i]! - other.get(i, 0))).toBeLessThan(1e-14 * condition * size * 10 + 1e-13)
      }),
    )
  })

  test('an indefinite matrix is told, and the right-hand side left alone', () => {
    const b = Float64Array.of(1, 2)
    for (const matrix of [
      [1, 2, 2, 1],
      [-1, 0, 0, 1],
      [Number.NaN, 0, 0, 1],
    ])
      expect(solveDefiniteInPlace(Float64Array.from(matrix), 2, b)).toBe(false)
    expect([...b]).toEqual([1, 2])
  })
})

describe('LU in the caller’s buffers', () => {
  test('the solution satisfies the equations, and agrees with ml-matrix where that is well conditioned', () => {
    fc.assert(
      fc.property(square, ({ n, a, b }) => {
        const factors = Float64Array.from(a)
        const x = Float64Array.from(b)
        const svd = new SingularValueDecomposition(new Matrix(rows(a, n)))
        fc.pre(svd.condition < 1e8)
        expect(solveInPlace(factors, n, new Int32Array(n), x)).toBe(true)
        const size = Math.max(...x.map(Math.abs), 1)
        for (let i = 0; i < n; i++) {
          let sum = 0
          for (let j = 0; j < n; j++) sum += a[i * n + j]! * x[j]!
          // Partial pivoting leaves a residual of some units in the last place of the terms.
          expect(Math.abs(sum - b[i]!)).toBeLessThan(1e-12 * size)
        }
        const other = solve(new Matrix(rows(a, n)), Matrix.columnVector(b))
        for (let i = 0; i < n; i++) expect(Math.abs(x[i]! - other.get(i, 0))).toBeLessThan(1e-14 * svd.condition * size * 10 + 1e-13)
      }),
    )
  })

  test('one factorisation serves several right-hand sides in one array', () => {
    const a = Float64Array.of(0, 2, 1, 1)
    const pivots = new Int32Array(2)
    expect(luFactor(a, 2, pivots)).toBe(-1)
    const b = Float64Array.of(4, 3, 2, 5)
    luSolve(a, 2, pivots, b)
    luSolve(a, 2, pivots, b, 2)
    expect([...b]).toEqual([1, 2, 4, 1])
  })

  test('a singular matrix is told, and the right-hand side left alone', () => {
    const b = Float64Array.of(1, 2)
    expect(solveInPlace(Float64Array.of(1, 2, 2, 4), 2, new Int32Array(2), b)).toBe(false)
    expect([...b]).toEqual([1, 2])
    expect(solveInPlace(Float64Array.of(Number.NaN, 2, 2, 4), 2, new Int32Array(2), b)).toBe(false)
    expect(luFactor(Float64Array.of(0, 0, 0, 0), 2, new Int32Array(2))).toBe(0)
  })
})

describe('orthogonal factorisations', () => {
  test('householder: RᵀR is AᵀA, and the rotated column keeps its length', () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: -5, max: 5, noNaN: true }), { minLength: 12, maxLength: 12 }), (flat) => {
        const a = Float64Array.from(flat)
        const b = Float64Array.of(1, -2, 3, 0.5)
        const r = Float64Array.from(a)
        householder(r, 4, 3, b)
        for (let i = 0; i < 3; i++) {
          for (let j = 0; j < 3; j++) {
            let before = 0
            let after = 0
            for (let k = 0; k < 4; k++) {
              before += a[k * 3 + i]! * a[k * 3 + j]!
              after += r[k * 3 + i]! * r[k * 3 + j]!
            }
            expect(after).toBeCloseTo(before, 11)
            if (i > j) expect(r[i * 3 + j]).toBe(0)
          }
        }
        expect(Math.hypot(...b)).toBeCloseTo(Math.hypot(1, -2, 3, 0.5), 12)
      }),
    )
  })

  test('singular values agree with ml-matrix, and A v has the length σ', () => {
    fc.assert(
      fc.property(square, ({ n, a }) => {
        const { values, vectors } = singularValues(Float64Array.from(a), n)
        const sorted = [...values].sort((x, y) => y - x)
        const other = new SingularValueDecomposition(new Matrix(rows(a, n))).diagonal
        for (let i = 0; i < n; i++) expect(Math.abs(sorted[i]! - other[i]!)).toBeLessThan(1e-12 * (sorted[0]! + 1))
        for (let v = 0; v < n; v++) {
          let total = 0
          for (let i = 0; i < n; i++) {
            let sum = 0
            for (let j = 0; j < n; j++) sum += a[i * n + j]! * vectors[j * n + v]!
            total += sum * sum
          }
          expect(Math.abs(Math.sqrt(total) - values[v]!)).toBeLessThan(1e-12 * (sorted[0]! + 1))
        }
      }),
    )
  })

  test('small singular values keep their digits where the columns are of very different size', () => {
    const { values } = singularValues(Float64Array.of(1, 1e-12, 0, 1e-12), 2)
    // σ₁σ₂ is the determinant.
    expect(values[0]! * values[1]!).toBeCloseTo(1e-12, 24)
    expect(Math.min(...values) / 1e-12).toBeCloseTo(1, 10)
  })
})
