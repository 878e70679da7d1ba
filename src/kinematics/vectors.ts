import { InputError, type Kind, type Note, Quantity, refuse } from '../units/index.js'

/** A vector in the leg's frame: x forward, y left, z up. */
export interface Vector3<K extends Kind> {
  /** Forward. */
  readonly x: Quantity<K>
  /** Left. */
  readonly y: Quantity<K>
  /** Up. */
  readonly z: Quantity<K>
}

/** One value per joint of the three-joint leg. */
export interface PerJoint<T> {
  /** The sideways hip: turns the whole leg about the forward axis. */
  readonly sidewaysHip: T
  /** The hip: swings the leg in its own plane. */
  readonly hip: T
  /** The knee. */
  readonly knee: T
}

/** Three numbers from `offset` on as a vector of quantities. */
export const vectorOf = <K extends Kind>(kind: K, si: ArrayLike<number>, offset = 0, notes?: readonly Note[]): Vector3<K> => ({
  x: new Quantity(si[offset]!, kind, undefined, notes),
  y: new Quantity(si[offset + 1]!, kind, undefined, notes),
  z: new Quantity(si[offset + 2]!, kind, undefined, notes),
})

/** Three numbers from `offset` on as one quantity per joint. */
export const perJointOf = <K extends Kind>(kind: K, si: ArrayLike<number>, offset = 0, notes?: readonly Note[]): PerJoint<Quantity<K>> => ({
  sidewaysHip: new Quantity(si[offset]!, kind, undefined, notes),
  hip: new Quantity(si[offset + 1]!, kind, undefined, notes),
  knee: new Quantity(si[offset + 2]!, kind, undefined, notes),
})

/** A row-major matrix as rows of quantities. */
export const rowsOf = <K extends Kind>(kind: K, si: ArrayLike<number>, columns: number): Quantity<K>[][] =>
  Array.from({ length: si.length / columns }, (_, i) => Array.from({ length: columns }, (_, j) => new Quantity(si[i * columns + j]!, kind)))

/** The inputs of a vector. */
export const xyz = <const K extends Kind>(kind: K) => ({
  /** Component along x, which points forward in a leg's frame. */
  x: kind,
  /** Component along y, which points to the left in a leg's frame. */
  y: kind,
  /** Component along z, which points upward in a leg's frame. */
  z: kind,
})

/** The inputs of one value per joint. */
export const perJoint = <const K extends Kind>(kind: K) => ({
  /** Value at the sideways hip, which turns about +x. */
  sidewaysHip: kind,
  /** Value at the hip, which turns about +y. */
  hip: kind,
  /** Value at the knee, which turns about +y. */
  knee: kind,
})

/** The error for a direction without a length. */
export const noDirection = (where: string, path = 'direction'): InputError =>
  new InputError(where, [{ path, given: 'a vector of no length', accepts: 'must point somewhere' }])

/** Throws for an argument that is no record: a call without its argument, in plain JavaScript. */
export function requireRecord(where: string, given: unknown, path = 'the argument'): void {
  if (typeof given !== 'object' || given === null) refuse(where, path, given, 'must be an object')
}

/** Throws for an argument that is not what `maker` makes. */
export function requireInstance(
  where: string,
  path: string,
  value: unknown,
  type: abstract new (...args: never[]) => object,
  maker: string,
): void {
  if (!(value instanceof type)) refuse(where, path, value, `must be made by ${maker}`)
}
