import type { LegNumbers } from '../leg-numbers.js'

const stepsOf = (path: string) => path.replaceAll(/\[(\d+)\]/g, '.$1').split('.')

/** The number at a path of a leg, or the leg with another one there. */
export function reached(x: LegNumbers, path: string): number | undefined
export function reached(x: LegNumbers, path: string, value: number): LegNumbers
export function reached(x: LegNumbers, path: string, value?: number): number | undefined | LegNumbers {
  const steps = stepsOf(path)
  if (value === undefined)
    return steps.reduce<unknown>((at, step) => (at as Record<string, unknown> | undefined)?.[step], x) as number | undefined
  const put = (at: unknown, [step, ...rest]: readonly string[]): unknown => {
    if (step === undefined) return value
    if (Array.isArray(at)) return at.with(Number(step), put(at[Number(step)], rest))
    return { ...(at as object), [step]: put((at as Record<string, unknown>)[step], rest) }
  }
  return put(x, steps) as LegNumbers
}

/** A result, or another one where it cannot be found. */
export function tried<T>(work: () => T, otherwise: T): T {
  try {
    return work()
  } catch {
    return otherwise
  }
}
