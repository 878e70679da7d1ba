import { refuse } from '../units/index.js'

/** Legs of a four-legged robot, in the order of the gaits' phases. */
export const FOUR_LEGS = ['leftFront', 'rightFront', 'leftHind', 'rightHind'] as const

/**
 * Phases of touch-down in the stride of the symmetric gaits of four legs, in the order of `FOUR_LEGS`: `walk` is the lateral sequence (left hind, left
 * front, right hind, right front), `diagonalWalk` the diagonal sequence (left hind, right front, right hind, left front); `trot` moves diagonal legs
 * together, `pace` those of a side, `bound` front and hind pairs.
 *
 * Source: M. Hildebrand, "Symmetrical gaits of horses", *Science* 150 (1965) 701, for the names; not opened.
 */
export const GAITS = {
  walk: [0.25, 0.75, 0, 0.5],
  diagonalWalk: [0.75, 0.25, 0, 0.5],
  trot: [0.5, 0, 0, 0.5],
  pace: [0, 0.5, 0, 0.5],
  bound: [0.5, 0.5, 0, 0],
} as const

/** Phases of touch-down, of a named gait or as given. */
export function phasesOf(
  where: string,
  named: keyof typeof GAITS | undefined,
  phases: readonly number[] | undefined,
  legs: number,
): readonly number[] {
  if ((named === undefined) === (phases === undefined)) refuse(where, 'gait', named, 'give either a named gait or the phases of the legs')
  if (named !== undefined && legs !== 4)
    refuse(where, 'feet', `${legs} feet`, `must be four for the gait '${named}'; give phases for others`)
  if (phases !== undefined && phases.length !== legs)
    refuse(where, 'phases', `${phases.length} phases`, `must be one for each of the ${legs} feet`)
  return phases ?? GAITS[named!]
}
