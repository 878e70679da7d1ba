import { fastenerZone } from '../../../materials/index.js'
import type { Of, Use } from '../../run/index.js'
import { infill, lineWidth, walls } from './fields.js'

/** Diameter round a hole that the print makes solid, and whether dense infill alone holds it. */
export interface SolidZone {
  readonly solid: number
  readonly byInfill: boolean
}

/** The solid zone round a hole, against the diameter that must be solid. */
export function solidZone(use: Use<never>, print: Of<'print'>, holeDiameter: number, neededDiameter: number): SolidZone {
  const relativeDensity = use.at(infill, { print })
  const { solidDiameter, state } = use.run(fastenerZone, {
    holeDiameter,
    wallCount: use.at(walls, { print }),
    lineWidth: use.at(lineWidth, { print }),
    relativeDensity,
    neededDiameter,
  })
  if (state === 'denseInfill') return { solid: neededDiameter, byInfill: true }
  return { solid: relativeDensity >= 1 && solidDiameter < neededDiameter ? neededDiameter : solidDiameter, byInfill: false }
}

/** Words of every check of a zone. */
export const ZONE = {
  mode: 'holds its fastener in sparse infill, where no strength can be stated',
  consequence: 'breaks',
  kind: 'length',
  when: ['asBuilt'],
  demandIs: 'the diameter that must be solid round the hole',
  capacityIs: 'the diameter that the walls round the hole make solid (or all of it, in infill of 70 % and more)',
  remedy: 'more walls, or set the zone of the fastener solid in the slicer',
  requiredReserve: 1,
} as const
/** What to know of a fastener that dense infill holds. */
export const BY_INFILL = 'held by dense infill, not by walls'
