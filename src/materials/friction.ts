import { type Property, readInputs } from '../formula/index.js'
import { InputError, type Quantity } from '../units/index.js'
import { type Material, requireProperty } from './record.js'

/** A pair of surfaces. */
export interface SlidingPair {
  /** Counterface: the material that it slides on. */
  readonly on: 'steel' | 'itself'
  /** Grease is a condition that must be renewed, not a property of the material. */
  readonly surface: 'dry' | 'greased'
}

/** A friction coefficient as the interval that it is. */
export interface SlidingFriction {
  /** The coefficient with its range. */
  readonly friction: Property<'ratio'>
  /** The low end: what a joint that holds by friction may count on. */
  readonly forHolding: Quantity<'ratio'>
  /** The high end: what a drive, an insertion or a bearing must overcome. */
  readonly forDriving: Quantity<'ratio'>
}

/**
 * The friction of a material on a partner, with the end to use for holding and the end to use for driving.
 * Throws an `InputError` for a pair that the table does not have: greased values are known on steel only.
 */
export function slidingFriction(material: Material, pair: SlidingPair): SlidingFriction {
  const where = 'slidingFriction'
  const { on, surface } = readInputs(where, { on: { oneOf: ['steel', 'itself'] }, surface: { oneOf: ['dry', 'greased'] } }, pair)
  if (on === 'itself' && surface === 'greased')
    throw new InputError(where, [
      { path: 'surface', given: "'greased' on itself", accepts: 'greased values are known on steel only; measure this pair' },
    ])
  const name = on === 'itself' ? 'frictionOnSelf' : surface === 'dry' ? 'frictionOnSteel' : 'frictionOnSteelGreased'
  const friction = requireProperty(where, material, name)
  return { friction, forHolding: friction.lowest, forDriving: friction.highest }
}
