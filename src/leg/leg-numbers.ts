import type { Quantity } from '../units/index.js'
import type { LegData } from './document/fields.js'

/** The same data with every quantity as its SI number. */
export type SiOf<T> = T extends Quantity
  ? number
  : T extends string | number | boolean | undefined
    ? T
    : T extends readonly (infer E)[]
      ? SiOf<E>[]
      : { [K in keyof T]: SiOf<T[K]> }

/** A leg's data as SI numbers. */
export type LegNumbers = SiOf<LegData>
