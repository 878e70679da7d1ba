import type { MaterialName } from '../../materials/index.js'
import type { In, Kind, Quantity } from '../../units/index.js'
import type { Band, OwnMaterial, Section, Table } from './field.js'

type Flat<T> = T extends infer U ? { [K in keyof U]: U[K] } : never
type May = { readonly optional: true } | { readonly default: unknown }

/** What may be written for a field. */
export type Given<F> = F extends { integer: true }
  ? number
  : F extends { kind: infer K extends Kind }
    ? In<K>
    : F extends { interval: infer K extends Kind }
      ?
          | readonly [In<K>, In<K>]
          | {
              /** Lower end of the interval. */
              readonly lowest: In<K>
              /** Upper end of the interval. */
              readonly highest: In<K>
            }
      : F extends { oneOf: readonly (infer T)[] }
        ? T
        : F extends { band: 'ratio' }
          ? readonly [number, number, number] | Band
          : F extends { flag: true }
            ? boolean
            : F extends { designation: 'propertyClass' }
              ? string | number
              : F extends { refersTo: 'materials' }
                ? MaterialName | (string & {})
                : F extends { text: true } | { designation: Table } | { refersTo: Section }
                  ? string
                  : F extends { tuple: infer S }
                    ? readonly Given<S[keyof S]>[] | GivenFields<S>
                    : F extends { list: infer E }
                      ? readonly Given<E>[]
                      : F extends { section: infer S }
                        ? GivenFields<S>
                        : F extends { dictionary: infer E }
                          ? { readonly [name: string]: Given<E> }
                          : F extends { variants: infer N extends string; of: infer V }
                            ? { [X in keyof V]: Flat<{ readonly [Y in N]: X } & GivenFields<V[X]>> }[keyof V]
                            : F extends { own: 'material' }
                              ? OwnMaterial
                              : never

/** What may be written for some fields. */
export type GivenFields<S> = Flat<
  { readonly [K in keyof S as S[K] extends May ? never : K]: Given<S[K]> } & {
    readonly [K in keyof S as S[K] extends May ? K : never]?: Given<S[K]> | undefined
  }
>

/** A field as it was read: quantities, words, numbers. */
export type Data<F> = F extends { integer: true }
  ? number
  : F extends { kind: infer K extends Kind }
    ? Quantity<K>
    : F extends { interval: infer K extends Kind }
      ? {
          /** Lower end of the interval. */
          readonly lowest: Quantity<K>
          /** Upper end of the interval. */
          readonly highest: Quantity<K>
        }
      : F extends { oneOf: readonly (infer T)[] }
        ? T
        : F extends { band: 'ratio' }
          ? Band
          : F extends { flag: true }
            ? boolean
            : F extends { text: true } | { designation: Table } | { refersTo: Section }
              ? string
              : F extends { tuple: infer S }
                ? DataFields<S>
                : F extends { list: infer E }
                  ? readonly Data<E>[]
                  : F extends { section: infer S }
                    ? DataFields<S>
                    : F extends { dictionary: infer E }
                      ? { readonly [name: string]: Data<E> }
                      : F extends { variants: infer N extends string; of: infer V }
                        ? { [X in keyof V]: Flat<{ readonly [Y in N]: X } & DataFields<V[X]>> }[keyof V]
                        : F extends { own: 'material' }
                          ? OwnMaterial
                          : never

/** Some fields as they were read. */
export type DataFields<S> = Flat<
  { readonly [K in keyof S as S[K] extends { optional: true } ? never : K]: Data<S[K]> } & {
    readonly [K in keyof S as S[K] extends { optional: true } ? K : never]?: Data<S[K]> | undefined
  }
>
