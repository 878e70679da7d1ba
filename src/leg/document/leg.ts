import type { LegDefault } from '../schema/index.js'
import type { LegData } from './fields.js'

/**
 * One leg as it was read: every field of the document as a quantity, word or number, those that the document left open included.
 * It is plain data: change a field by describing a new leg (`{ ...leg, robot: { ...leg.robot, mass: '12 kg' } }` goes back in as it is).
 */
export type Leg = LegData & {
  /** What the document left open: where, which value is assumed, and why. */
  readonly defaults: readonly LegDefault[]
}
