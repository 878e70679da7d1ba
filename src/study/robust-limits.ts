import type { Limit } from './constraints.js'

/** A result by its name: the number itself where the formula has one output. */
export const outputValue = (results: unknown, name: string): number =>
  name === 'result' ? (results as number) : ((results as Record<string, number> | undefined)?.[name] as number)

/** How far a value is beyond the nearer side of a limit; negative where it keeps both. A side without a limit is infinite and counts not at all. */
const beyond = ({ min, max }: Limit, y: number): number =>
  Math.max(Number.isFinite(min) ? min - y : Number.NEGATIVE_INFINITY, Number.isFinite(max) ? y - max : Number.NEGATIVE_INFINITY)

/** The results with every constrained output at its worst over several: the value that is farthest beyond one side of its limit, or nearest to one. */
export function worstOf(limits: readonly Limit[], all: readonly unknown[]): unknown {
  const [nominal] = all
  const worst = (limit: Limit) => {
    const { name } = limit
    const values = all.map((results) => (results === undefined ? Number.NaN : outputValue(results, name)))
    return values.some(Number.isNaN) ? Number.NaN : values.reduce((a, b) => (beyond(limit, b) > beyond(limit, a) ? b : a))
  }
  if (typeof nominal === 'number') return limits.length > 0 ? worst(limits[0] as Limit) : nominal
  return { ...(nominal as object), ...Object.fromEntries(limits.map((limit) => [limit.name, worst(limit)])) }
}
