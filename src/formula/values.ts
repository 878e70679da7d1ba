import type { In, Kind, Quantity } from '../units/index.js'

/** A function of one quantity: on quantities, or one that carries its SI form. */
export type Curve<X extends Kind, Y extends Kind> = ((x: Quantity<X>) => In<Y>) & { readonly si?: (x: number) => number }

/** A value that a caller gives for one input. */
export type Arg<S> = S extends Kind
  ? In<S>
  : S extends { kind: infer K extends Kind }
    ? In<K>
    : S extends { oneOf: readonly (infer T)[] }
      ? T
      : S extends { list: infer E }
        ? readonly Arg<E>[]
        : S extends { fields: infer F }
          ? Given<F>
          : S extends { curve: readonly [infer X extends Kind, infer Y extends Kind] }
            ? Curve<X, Y>
            : S extends { flag: true }
              ? boolean
              : never

type SiArg<S> = S extends Kind | { kind: Kind }
  ? number
  : S extends { oneOf: readonly (infer T)[] }
    ? T
    : S extends { list: infer E }
      ? readonly SiArg<E>[]
      : S extends { fields: infer F }
        ? Si<F>
        : S extends { curve: unknown }
          ? (x: number) => number
          : S extends { flag: true }
            ? boolean
            : never

type Skip = { optional: true } | { default: unknown }

/** The values that a caller gives for a record of inputs. */
export type Given<I> = [
  { [K in keyof I as I[K] extends Skip ? never : K]: Arg<I[K]> } & {
    [K in keyof I as I[K] extends Skip ? K : never]?: Arg<I[K]> | undefined
  },
][0] extends infer G
  ? { [K in keyof G]: G[K] }
  : never

/** The same record as SI numbers, as kernels receive it. Optional inputs may be left out. */
export type Si<I> = [
  { readonly [K in keyof I as I[K] extends { optional: true } ? never : K]: SiArg<I[K]> } & {
    readonly [K in keyof I as I[K] extends { optional: true } ? K : never]?: SiArg<I[K]> | undefined
  },
][0] extends infer G
  ? { [K in keyof G]: G[K] }
  : never

type Value<O> = O extends Kind
  ? Quantity<O>
  : O extends { kind: infer K extends Kind }
    ? Quantity<K>
    : O extends { list: infer K extends Kind }
      ? Quantity<K>[]
      : O extends { oneOf: readonly (infer T)[] }
        ? T
        : never

type SiValue<O> = O extends Kind | { kind: Kind }
  ? number
  : O extends { list: Kind }
    ? readonly number[]
    : O extends { oneOf: readonly (infer T)[] }
      ? T
      : never

/** Result of a checked call. */
export type Result<O> = O extends Kind | { kind: Kind; infinite: true } ? Value<O> : { readonly [K in keyof O]: Value<O[K]> }
/** Result of a kernel. */
export type SiResult<O> = O extends Kind | { kind: Kind; infinite: true } ? number : { readonly [K in keyof O]: SiValue<O[K]> }
/** Flattens a type so that hovers and messages show its fields. */
export type Flat<T> = T extends infer G ? { [K in keyof G]: G[K] } : never
