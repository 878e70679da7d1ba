import type { EvidenceLevel } from '../../formula/index.js'
import type { MaterialName } from '../../materials/index.js'
import type { In, Kind } from '../../units/index.js'

/** Options of any field: whether it may be left out, the value assumed then, and why. */
interface Open {
  /** The field may be left out; nothing is assumed then. */
  readonly optional?: true
  /** Why the default is what it is. */
  readonly because?: string
  /** How well the default is known. Default: assumption. */
  readonly level?: EvidenceLevel
}

/** A quantity with limits, as text of its kind. */
type Scalar = {
  [K in Kind]: Open & {
    readonly kind: K
    readonly min?: In<K> | 0
    readonly max?: In<K>
    readonly above?: In<K> | 0
    readonly below?: In<K>
    /** Lowest and highest value of usual legs: one outside is accepted with a remark. 0 has none, for a field that may be 0. */
    readonly usual?: readonly [In<K>, In<K>]
    readonly default?: In<K>
  }
}[Kind]

/** A whole number within limits. */
type Integer = Open & {
  readonly integer: true
  readonly min: number
  readonly max: number
  readonly usual?: readonly [number, number]
  readonly default?: number
}

/** An interval of a kind, lowest and highest. */
type Interval = {
  [K in Kind]: Open & { readonly interval: K; readonly min?: In<K>; readonly max?: In<K>; readonly default?: readonly [In<K>, In<K>] }
}[Kind]

/** What a name in the document refers to: a section of the document with the same name. */
export type Section =
  | 'motors'
  | 'controllers'
  | 'plates'
  | 'cords'
  | 'belts'
  | 'pins'
  | 'bosses'
  | 'bolts'
  | 'bearings'
  | 'shafts'
  | 'ends'
  | 'prints'
  | 'gaits'
  | 'materials'

/** What a designation names: a row of a table of the library. */
export type Table = 'thread' | 'propertyClass' | 'pin' | 'bearing' | 'fibre'

/** One field of the document, as plain data. The reader, the JSON Schema, the list of defaults and the types all follow from it. */
export type Field =
  | Scalar
  | Integer
  | Interval
  /** One of some words. */
  | (Open & { readonly oneOf: readonly string[]; readonly default?: string })
  /** Low, typical and high value of a ratio. */
  | (Open & {
      readonly band: 'ratio'
      readonly max: number
      readonly usual?: readonly [number, number]
      readonly default?: readonly [number, number, number]
      readonly measuredBy?: string
    })
  | (Open & { readonly text: true })
  | (Open & { readonly flag: true; readonly default?: boolean })
  /** The name of a thing of the document. `also` lists words that are accepted instead of a name. */
  | (Open & { readonly refersTo: Section; readonly also?: readonly string[]; readonly default?: string })
  /** The name of a row of a table. */
  | (Open & { readonly designation: Table; readonly default?: string })
  /** Quantities in a fixed order, written as a list or by name. */
  | (Open & { readonly tuple: Fields })
  | (Open & { readonly list: Field; readonly least?: number; readonly most?: number })
  /** A section. `exactlyOne` lists groups of fields of which one must be given. With `default` it may be left out, and its own defaults hold. */
  | (Open & {
      readonly section: Fields
      readonly exactlyOne?: readonly (readonly string[])[]
      readonly default?: Readonly<Record<string, never>>
    })
  /** Sections or fields under names of the builder's own. Entries of `library` are there unless the document gives them. */
  | (Open & {
      readonly dictionary: Field
      readonly default?: Readonly<Record<string, never>>
      readonly library?: Readonly<Record<string, unknown>>
    })
  /** Variants of a section, by a word. */
  | (Open & { readonly variants: string; readonly of: { readonly [kind: string]: Fields } })
  /** A value that a reader of its own takes, such as a material of one's own. */
  | (Open & { readonly own: 'material' })

/** Fields by name. */
export interface Fields {
  readonly [name: string]: Field
}

/** A ratio given by its low, typical and high value: a friction coefficient is never one number. */
export interface Band {
  /** The lowest value to reckon with. */
  readonly low: number
  /** The usual value. */
  readonly typical: number
  /** The highest value to reckon with. */
  readonly high: number
}

/** One value of a material of one's own: a quantity, or a quantity with its range and source. */
export type OwnValue =
  | string
  | { readonly typical: string; readonly low: string; readonly high: string; readonly source?: string; readonly conditions?: string }

/** A material of one's own: one of the table, with measured values put in. */
export interface OwnMaterial {
  /** A material of the table, whose values hold where none is given. */
  readonly basedOn: MaterialName | (string & {})
  readonly [property: string]: OwnValue
}
