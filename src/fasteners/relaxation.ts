import { gradedTimes, invertHereditary, monotoneTable, type Table } from '../numeric/index.js'

/** The share of a clamped stack's compliance that creeps, and the creep curve it follows: compliance over compliance at loading. */
export interface CreepingShare {
  readonly share: number
  readonly creep: (time: number) => number
}

/** Form of a creep curve. */
export const CREEP_RATIO =
  'must be creep compliance over compliance at loading: 1 at time 0, from then on a number that is no smaller (a modulus that falls is its inverse)'
/** What a curve returns that is no creep ratio, at time 0 or at the times of interest: `NaN at 7200 s`. Absent where it is a creep ratio. */
export function creepFault(creep: (time: number) => number, times: readonly number[]): string | undefined {
  const returned = (time: number) => `${Number(creep(time).toPrecision(6))} at ${Number(time.toPrecision(6))} s`
  if (!(Math.abs(creep(0) - 1) < 1e-6)) return returned(0)
  const bad = times.find((time) => !(Number.isFinite(creep(time)) && creep(time) > 1 - 1e-6))
  return bad === undefined ? undefined : returned(bad)
}

/** Whether a curve is a creep ratio, at the times of interest. */
export const isCreepRatio = (creep: (time: number) => number, times: readonly number[]): boolean => creepFault(creep, times) === undefined

/** Where the table of a relaxation curve starts: in parts of its end (from a year down to about 3 s), and of the first time of interest. */
const FIRST_OF_END = 1e-7
const FIRST_OF_EARLIEST = 1 / 30
/** No earlier than this, in parts of the end. */
const MIN_SHARE_OF_END = 1e-14
/** Intervals of the coarse grid per factor of ten in time; the fine one has twice as many. */
const COARSE_PER_DECADE = 36 / 7

/**
 * What is left, over time, of a load that was set once and is held at constant length, by parts some of which creep: 1 at time 0.
 * Good from the time `earliest` to the time `end`.
 *
 * Exact linear viscoelasticity: the load F solves F(t)·e + Σ sᵢ[φᵢ(t) F(0) + ∫φᵢ(t − τ) dF(τ)] = F(0), with e the elastic share of the
 * compliance and sᵢ, φᵢ the creeping shares and their curves. Solved on two grids, one twice as fine: the error, which falls with the square of the interval, is extrapolated away.
 */
export function relaxationOf(
  elasticShare: number,
  creeping: readonly CreepingShare[],
  end: number,
  earliest: number,
): (time: number) => number {
  const first = Math.max(MIN_SHARE_OF_END * end, Math.min(FIRST_OF_END * end, FIRST_OF_EARLIEST * earliest))
  const count = Math.ceil(COARSE_PER_DECADE * Math.log10(end / first))
  const response = (elapsed: number) => {
    let sum = elasticShare
    for (const { share, creep } of creeping) sum += share * creep(elapsed)
    return sum
  }
  const solve = (times: Float64Array) => invertHereditary(times, response, new Float64Array(times.length).fill(response(0)))
  const times = gradedTimes(end, 2 * count + 1, { first })
  const kept = solve(times)
  const coarse = solve(gradedTimes(end, count + 1, { first }))
  const correction = coarse.map((value, i) => (i === 0 ? 0 : (kept[2 * i - 1]! - value) / 3))
  for (let i = 1; i < kept.length; i++) {
    const j = (i + 1) >> 1
    kept[i]! += i % 2 === 1 ? correction[j]! : (correction[j]! + correction[j + 1]!) / 2
  }
  // Over the logarithm of time the curve is smooth; before the first point it is a straight line from 1.
  const table: Table = monotoneTable(times.slice(1).map(Math.log), kept.slice(1))
  return (time) => {
    if (time <= 0) return 1
    if (time < first) return 1 + (kept[1]! - 1) * (time / first)
    return table(Math.min(table.high, Math.max(table.low, Math.log(time))))
  }
}
