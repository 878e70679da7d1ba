import type { Property } from '../formula/index.js'

/** One end of a range, or its typical value. */
export type RangeEnd = 'low' | 'typical' | 'high'

/** How the ranges of several values combine to the range of a result. */
export type RangeRule = 'jointScatter' | 'extremes'

/** A typical value with its range, in SI. */
export interface Spread {
  readonly low: number
  readonly typical: number
  readonly high: number
}

/** The value of a property at one end of its range, in SI. */
export const atEnd = (property: Property, end: RangeEnd): number => (end === 'typical' ? property.si : property[end])

/** The other end of a range. */
export const oppositeEnd = (end: RangeEnd): RangeEnd => (end === 'low' ? 'high' : end === 'high' ? 'low' : 'typical')

/** Chooses the end of the range of each named value. */
export type EndOf<K extends string> = (key: K) => RangeEnd

const typically = (): RangeEnd => 'typical'

/**
 * The range of a result whose inputs scatter independently of each other.
 *
 * Each input goes to both ends of its range alone. The relative changes downwards combine as the root of the sum of their squares, and so do those
 * upwards: ends that are quantiles of the inputs give about the same quantiles of the result. The rule `extremes` puts every input at its worst
 * (and at its best) end at once instead; the chance of that is small, and the range is wide.
 */
export function rangeOf<K extends string>(rule: RangeRule, keys: readonly K[], evaluate: (endOf: EndOf<K>) => number): Spread {
  const typical = evaluate(typically)
  if (rule === 'extremes')
    return {
      low: Math.min(
        typical,
        furthest(keys, evaluate, (one, other) => one < other),
      ),
      typical,
      high: Math.max(
        typical,
        furthest(keys, evaluate, (one, other) => one > other),
      ),
    }
  let down = 0
  let up = 0
  for (const key of keys) {
    const at = (end: RangeEnd) => evaluate((other) => (other === key ? end : 'typical'))
    const [low, high] = [at('low'), at('high')]
    down += change(typical, Math.min(typical, low, high)) ** 2
    up += change(typical, Math.max(typical, low, high)) ** 2
  }
  // From nothing a relative change cannot be stated: the changes themselves combine.
  return typical > 0
    ? { low: typical * Math.exp(-Math.sqrt(down)), typical, high: typical * Math.exp(Math.sqrt(up)) }
    : { low: typical - Math.sqrt(down), typical, high: typical + Math.sqrt(up) }
}

const change = (typical: number, other: number): number => (typical > 0 ? Math.log(other / typical) : other - typical)

/** The result with every value at the end that moves it furthest, found value by value; twice, because a value's worse end may depend on the others. */
function furthest<K extends string>(
  keys: readonly K[],
  evaluate: (endOf: EndOf<K>) => number,
  further: (one: number, other: number) => boolean,
): number {
  const ends: Partial<Record<K, RangeEnd>> = {}
  const endOf: EndOf<K> = (key) => ends[key] ?? 'typical'
  let best = evaluate(endOf)
  for (let round = 0; round < 2; round++)
    for (const key of keys)
      for (const end of ['low', 'high'] as const) {
        const before = ends[key]
        ends[key] = end
        const value = evaluate(endOf)
        if (further(value, best)) best = value
        else if (before === undefined) delete ends[key]
        else ends[key] = before
      }
  return best
}
