import type { In, Kind } from '../units/index.js'
import type { Source } from './provenance.js'
import type { Si, SiResult } from './values.js'

/** A limit: an SI number, or text of the kind so that messages speak the user's unit. */
export type Limit<K extends Kind> = number | In<K>

/** A number with a kind and limits. */
export type Scalar = {
  [K in Kind]: {
    /** Kind of the number, such as `force`. */
    readonly kind: K
    /** Lowest value accepted. */
    readonly min?: Limit<K>
    /** Highest value accepted. */
    readonly max?: Limit<K>
    /** The value must be greater than this. */
    readonly above?: Limit<K>
    /** The value must be less than this. */
    readonly below?: Limit<K>
    /** Only whole numbers. */
    readonly whole?: true
    /** The input may be absent. */
    readonly optional?: true
    /** Value of an absent input. */
    readonly default?: In<K>
  }
}[Kind]

/** What one input accepts: a kind alone, a number with limits, a choice of words, a list, a nested record, a curve, or true/false. */
export type Input =
  | Kind
  | Scalar
  | {
      /** The words accepted. */
      readonly oneOf: readonly string[]
      /** The input may be absent. */
      readonly optional?: true
      /** Word of an absent input. */
      readonly default?: string
    }
  | {
      /** Accepted values of each entry. */
      readonly list: Input
      /** Fewest entries. Default 1. */
      readonly least?: number
      /** The input may be absent. */
      readonly optional?: true
    }
  | {
      /** Inputs of a nested record, by name. */
      readonly fields: Inputs
      /** The input may be absent. */
      readonly optional?: true
    }
  | {
      /** Kinds of a curve: what it is given over, and its values. */
      readonly curve: readonly [Kind, Kind]
      /** The input may be absent. */
      readonly optional?: true
    }
  | {
      /** True or false. */
      readonly flag: true
      /** The input may be absent. */
      readonly optional?: true
      /** Value of an absent input. */
      readonly default?: boolean
    }

/** Inputs by name. */
export interface Inputs {
  readonly [name: string]: Input
}

/** One output: a kind, a kind that may be infinite, a list of a kind, or a word. */
export type OutputField =
  | Kind
  | { readonly kind: Kind; readonly infinite: true }
  | { readonly list: Kind }
  | { readonly oneOf: readonly string[] }

/** Output: one kind, or a record. */
export type Output =
  | Kind
  | {
      /** Kind of the result. */
      readonly kind: Kind
      /** The result may be infinite. */
      readonly infinite: true
    }
  | OutputRecord
/** Several outputs by name. */
export interface OutputRecord {
  readonly [name: string]: OutputField
}

/** A formula as it is written down: plain data and one kernel. */
export interface Definition<I extends Inputs, O extends Output, Y> {
  /** Title in the words of the trade, without a capital. Default: the words of the name. */
  readonly title?: string
  /** Inputs by name. */
  readonly inputs: I
  /** Kind of the result, or the results by name. */
  readonly output: O
  /**
   * The equations in the record's own names, in the notation of mathjs: assignments, to an output (`result` where there is one) or to a name of
   * their own, and what the results satisfy (`a == b`). Reference pages show them; a test evaluates them with units against the kernel.
   */
  readonly equation?: readonly string[]
  /** The assumptions of the derivation. */
  readonly assumes?: readonly string[]
  /** Where it is published; the first is the main one. */
  readonly source: readonly Source[]
  /**
   * Combinations of inputs that cannot be, by the input's path: what it accepts, and the test on SI inputs that must hold. A broken one
   * is bad input: an `InputError` that names that path.
   */
  readonly requires?: { readonly [path: string]: { readonly accepts: string; readonly holds: (x: Si<I>) => boolean } }
  /** Where the result can be trusted: a statement, and its test on SI inputs and outputs. A broken one becomes a note. */
  readonly valid?: { readonly [statement: string]: (x: Si<I>, y: SiResult<O>) => boolean }
  /** The kernel: SI numbers in and out, nothing checked. */
  readonly si: (x: Si<I>) => Y
}
