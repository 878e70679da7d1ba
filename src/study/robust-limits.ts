import type { Limit } from './constraints.js'

/** A result by its name: the number itself where the formula has one output. */
export const outputValue = (results: unknown, name: string): number =>
  name === 'result' ? (results as number) : ((results as Record<string, number> | undefined)?.[name] as number)

/** The results with every constrained output at its worst over several: the least where it has a lower limit, else the most. */
export function worstOf(limits: readonly Limit[], all: readonly unknown[]): unknown {
  const [nominal] = all
  const worst = ({ name, min }: Limit) => {
    const values = all.map((results) => (results === undefined ? Number.NaN : outputValue(results, name)))
    return values.some(Number.isNaN) ? Number.NaN : Number.isFinite(min) ? Math.min(...values) : Math.max(...values)
  }
  if (typeof nominal === 'number') return limits.length > 0 ? worst(limits[0] as Limit) : nominal
  return { ...(nominal as object), ...Object.fromEntries(limits.map((limit) => [limit.name, worst(limit)])) }
}
