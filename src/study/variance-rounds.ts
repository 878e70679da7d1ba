import { NoResultError } from '../formula/index.js'
import { normalQuantile, sobolSequence, solveLower } from '../numeric/index.js'
import { reordered } from './correlation.js'
import type { Model } from './model.js'
import { type Varied, valueAtScore } from './uncertain-model.js'

/** Results of one replicate. */
export interface Round {
  readonly mean: number
  readonly variance: number
  readonly first: Float64Array
  readonly total: Float64Array
  readonly gaps: number
}

/** One replicate: two independent halves A and B of a scrambled sequence, and A with one column of B. */
export function replicate(varied: readonly Varied[], model: Model, samples: number, seed: number): Round {
  const d = varied.length
  const points = sobolSequence(2 * d, seed)
  const u = new Float64Array(2 * d)
  const x = new Float64Array(d)
  const value = (i: number, from: number) => (varied[i] as Varied).scatter.quantile(u[from + i] as number)
  const yA: number[] = []
  const yB: number[] = []
  const yMixed: Float64Array[] = []
  for (let s = 0; s < samples; s++) {
    points.point(s, u)
    for (let i = 0; i < d; i++) x[i] = value(i, d)
    const b = model.at(x)
    for (let i = 0; i < d; i++) x[i] = value(i, 0)
    const a = model.at(x)
    const mixed = new Float64Array(d)
    for (let i = 0; i < d; i++) {
      const own = x[i] as number
      x[i] = value(i, d)
      mixed[i] = model.at(x)
      x[i] = own
    }
    if (Number.isNaN(a) || Number.isNaN(b) || mixed.some(Number.isNaN)) continue
    yA.push(a)
    yB.push(b)
    yMixed.push(mixed)
  }
  const n = yA.length
  rejectFewRuns(n, samples, model.id)
  const mean = (yA.reduce((sum, y) => sum + y, 0) + yB.reduce((sum, y) => sum + y, 0)) / (2 * n)
  let variance = 0
  for (let s = 0; s < n; s++) variance += ((yA[s] as number) - mean) ** 2 + ((yB[s] as number) - mean) ** 2
  variance /= 2 * n
  const first = new Float64Array(d)
  const total = new Float64Array(d)
  if (variance > 0)
    for (let s = 0; s < n; s++)
      for (let i = 0; i < d; i++) {
        const difference = ((yMixed[s] as Float64Array)[i] as number) - (yA[s] as number)
        // Centred on the mean: the same expectation, less noise.
        first[i] = (first[i] as number) + (((yB[s] as number) - mean) * difference) / (n * variance)
        total[i] = (total[i] as number) + difference ** 2 / (2 * n * variance)
      }
  return { mean, variance, first, total, gaps: samples - n }
}

function rejectFewRuns(good: number, samples: number, id: string): void {
  if (good < samples / 2)
    throw new NoResultError(`${id}: no finite answer exists for most points; the distributions reach where the formula does not hold`)
}

/**
 * One replicate for inputs that scatter together (a Gaussian copula): each base point again with one input kept and the others drawn anew given it,
 * and with one input drawn anew given the others.
 */
export function correlatedReplicate(
  varied: readonly Varied[],
  model: Model,
  samples: number,
  seed: number,
  matrix: Float64Array,
  lower: Float64Array,
): Round {
  const d = varied.length
  const others = varied.map((_, i) => varied.map((_v, k) => k).filter((k) => k !== i))
  const keptFirst = varied.map((_, i) => reordered(matrix, d, [i, ...(others[i] as number[])]))
  const keptLast = varied.map((_, i) => reordered(matrix, d, [...(others[i] as number[]), i]))
  const points = sobolSequence(2 * d, seed)
  const u = new Float64Array(2 * d)
  const x = new Float64Array(d)
  const run = (scores: ArrayLike<number>) => {
    for (let i = 0; i < d; i++) x[i] = valueAtScore(varied[i] as Varied, scores[i] as number)
    return model.at(x)
  }
  const rows: { base: number; kept: number[]; anew: number[] }[] = []
  for (let s = 0; s < samples; s++) {
    points.point(s, u)
    const score = Float64Array.from(u, normalQuantile)
    const own = product(lower, d, score)
    const base = run(own)
    const kept = varied.map((_, i) => {
      const order = [i, ...(others[i] as number[])]
      const fresh = Float64Array.from(order, (k, place) => (place === 0 ? (own[i] as number) : (score[d + k] as number)))
      return run(unordered(product(keptFirst[i] as Float64Array, d, fresh), order))
    })
    const anew = varied.map((_, i) => {
      const order = [...(others[i] as number[]), i]
      const known = solveLower(
        keptLast[i] as Float64Array,
        d,
        Float64Array.from(order, (k) => own[k] as number),
      )
      known[d - 1] = score[d + i] as number
      const scores = own.slice()
      scores[i] = product(keptLast[i] as Float64Array, d, known)[d - 1] as number
      return run(scores)
    })
    if (![base, ...kept, ...anew].some(Number.isNaN)) rows.push({ base, kept, anew })
  }
  const n = rows.length
  rejectFewRuns(n, samples, model.id)
  const mean = rows.reduce((sum, { base }) => sum + base / n, 0)
  const variance = rows.reduce((sum, { base }) => sum + (base - mean) ** 2 / n, 0)
  const average = (of: (row: (typeof rows)[number]) => number) =>
    variance > 0 ? rows.reduce((sum, row) => sum + of(row) / n, 0) / variance : 0
  return {
    mean,
    variance,
    first: Float64Array.from(varied, (_, i) => average(({ base, kept }) => (base - mean) * ((kept[i] as number) - mean))),
    total: Float64Array.from(varied, (_, i) => average(({ base, anew }) => (base - (anew[i] as number)) ** 2 / 2)),
    gaps: samples - n,
  }
}

/** A lower triangle times a vector. */
function product(lower: Float64Array, n: number, vector: ArrayLike<number>): Float64Array {
  return Float64Array.from({ length: n }, (_, i) => {
    let sum = 0
    for (let k = 0; k <= i; k++) sum += (lower[i * n + k] as number) * (vector[k] as number)
    return sum
  })
}

function unordered(vector: Float64Array, order: readonly number[]): Float64Array {
  const result = new Float64Array(vector.length)
  order.forEach((k, place) => {
    result[k] = vector[place] as number
  })
  return result
}
