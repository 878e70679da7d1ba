import { Quantity } from '../units/index.js'
import { invert3, quadratic3 } from './matrix3.js'

/** Effective mass along a direction; `undefined` where there is no bound to it. */
export interface EffectiveMass {
  /** The point may move across the direction too. */
  readonly free: Quantity<'mass'> | undefined
  /** The point is guided along the direction. */
  readonly constrained: Quantity<'mass'> | undefined
}

/** Effective mass from the mobility J M⁻¹ Jᵀ of a point (SI), along a unit vector. @internal */
export function effectiveMassOf(mobility: Float64Array, u: ArrayLike<number>): EffectiveMass {
  const along = quadratic3(mobility, u)
  const inertia = new Float64Array(9)
  return {
    free: along > 1e-14 * Math.max(...mobility.map(Math.abs)) ? new Quantity(1 / along, 'mass') : undefined,
    constrained: invert3(inertia, mobility) ? new Quantity(quadratic3(inertia, u), 'mass') : undefined,
  }
}
