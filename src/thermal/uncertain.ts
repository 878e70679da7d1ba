import { Property } from '../formula/index.js'
import type { Kind, Note } from '../units/index.js'

const SOURCE = { level: 'computed', where: 'heat balance of the network' } as const

/** A result with the ends of its 95 % band and the notes of its network, SI. */
export const uncertain = <K extends Kind>(
  kind: K,
  x: number,
  low: number,
  high: number,
  notes: readonly Note[],
  what: string,
): Property<K> => new Property(x, kind, low, high, SOURCE, `${what}, 95 % band`, notes.length === 0 ? undefined : notes)

/** A temperature with the half-width of its band, kelvin. */
export const uncertainTemperature = (kelvin: number, half: number, notes: readonly Note[], what: string): Property<'temperature'> =>
  uncertain('temperature', kelvin, kelvin - half, kelvin + half, notes, what)
