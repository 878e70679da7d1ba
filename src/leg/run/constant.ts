import type { Source } from '../../formula/index.js'
import type { Kind } from '../../units/index.js'
import { Value } from './value.js'

/** Data of a constant. */
export interface Constant<K extends Kind> {
  /** Name for readers: a noun phrase without an article. */
  readonly title: string
  readonly kind: K
  readonly typical: number
  readonly low?: number
  readonly high?: number
  readonly source: Source
  /** The test that would replace it; needed with a range. */
  readonly measuredBy?: string
}

/** Makes a constant with its source, and its range where it is uncertain. It can only be read through `use`. */
export function constant<K extends Kind>(id: string, from: Constant<K>): Value<number, never> {
  const { title, kind, typical, low = typical, high = typical, source, measuredBy = '' } = from
  if (!(low <= typical && typical <= high)) throw new Error(`${id}: the typical value is outside its range`)
  if (low < high && measuredBy === '') throw new Error(`${id}: a constant with a range names the test that would replace it`)
  const range = low < high ? { low, high, source, measuredBy } : undefined
  return new Value<number, never>(id, [], undefined, { title, kind, read: () => typical, range: () => range, source })
}
