import type { LegModel } from './leg-model.js'
import { airNamed, type DrivenJoint } from './numbers.js'
import { airTemperature, stallTime, surroundings, wind } from './parts/load/fields.js'
import { driveMotion, type JointMotion } from './parts/motion/values.js'
import { heat } from './parts/motors/heat.js'
import { at, calculationFor } from './what-if.js'

/** A motor under an imposed motion. */
export interface HeatRequest {
  readonly joint: DrivenJoint
  readonly motion: JointMotion
  readonly air: number
  readonly wind: number
  readonly heating: 'held' | 'moving'
  /** How long it is held in a stall, warm from a walk in the same air; absent until temperatures are steady. */
  readonly heldFor?: number
}

/** Temperatures and currents of a motor under an imposed motion. */
export function heatAt(leg: LegModel, { joint, motion, air, wind: speed, heating, heldFor }: HeatRequest): typeof heat.holds {
  const calculation = calculationFor(leg)
  const event = heating === 'moving' ? 'walk' : heldFor === undefined ? 'stand' : 'stall'
  const { environment } = leg.x
  const hot = air === airNamed(leg.x, 'hot').temperature && speed === 0
  const where = at(calculation, { joint, event, air: hot ? 'hot' : 'normalStill' })
  const here = where as never
  const leaves = [
    [airTemperature, air],
    [wind, speed],
    [surroundings, environment.surroundings ?? air],
    ...(heldFor === undefined ? [] : [[stallTime, heldFor] as const]),
  ] as const
  for (const [leaf, x] of leaves) calculation.set(leaf as typeof airTemperature, here, x)
  calculation.pin(driveMotion, here, motion)
  try {
    return calculation.get(heat, here)
  } finally {
    calculation.unpin(driveMotion, here)
    for (const [leaf] of leaves) calculation.restore(calculation.cell(leaf as typeof airTemperature, here))
  }
}
