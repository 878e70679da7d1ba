import type { Kind } from '../units/index.js'

/** One column of a table: numbers in the SI unit of a kind, or words. */
export type Column =
  | {
      /** Name of the column. */
      readonly name: string
      /** Kind of its numbers. */
      readonly kind: Kind
      /** SI unit of its numbers. */
      readonly unit: string
      /** Its numbers, row by row. */
      readonly values: Float64Array
    }
  | {
      /** Name of the column. */
      readonly name: string
      /** Its words, row by row. */
      readonly words: readonly string[]
    }
