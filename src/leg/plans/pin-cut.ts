import type { Quantity } from '../../units/index.js'
import type { Joint } from '../numbers.js'
import { length } from './bench.js'
import { pinsAround } from './catalogue-lengths.js'
import { phrase } from './sheet-units.js'

/** A pin to cut, or the length to order it in. */
export interface PinCut {
  /** Joint of the pin. */
  readonly joint: Joint
  /** Standard designation of the pin. */
  readonly size: string
  /** Both bosses, the lug and its gaps. */
  readonly length: Quantity<'length'>
  /** Length to buy: the next of the catalogue that sticks out, or a shorter one that leaves each boss nine tenths of its pin. */
  readonly catalogue: Quantity<'length'> | undefined
  /** Consequence for the bosses. */
  readonly fit: string
}

/** Share of a boss that its pin may leave empty. */
const EMPTY = 0.1

/** A pin for a gap between its bosses and its engagement in each, SI. @internal */
export function pinCut(joint: Joint, size: string, between: number, engagement: number): PinCut {
  const needed = between + 2 * engagement
  const { below, above } = pinsAround(needed)
  const short = below === undefined ? Number.POSITIVE_INFINITY : (needed - below) / 2
  const head = { joint, size, length: length(needed) }
  if (below !== undefined && short <= EMPTY * engagement)
    return { ...head, catalogue: length(below), fit: short < 1e-6 ? 'fills both bosses' : phrase`ends ${length(short)} inside each boss` }
  if (above === undefined) return { ...head, catalogue: undefined, fit: 'no such length is sold: cut a longer rod and chamfer it' }
  return {
    ...head,
    catalogue: length(above),
    fit: phrase`sticks out by ${length(above - needed)}: check that nothing passes there, or grind it off and chamfer it`,
  }
}
