import type { Joint } from '../numbers.js'
import { jointRadius, otherRadius } from '../parts/transmission/belt/values.js'
import { arrangement } from '../parts/transmission/cord/fields.js'
import { drumRadius, pinionRadius } from '../parts/transmission/cord/radii.js'
import { beltOrCordOf, SECOND_STAGE } from '../second-stage.js'
import type { Facts, Names } from './facts.js'
import { spanLines } from './scene-drive.js'

/** Belt or cord from a pulley on the hip axis to the knee, mm. */
export interface SceneAlong {
  readonly kind: 'belt' | 'cord'
  /** Radii of the pulleys, to the pitch line of the belt or the centre line of the cord. */
  readonly hip: number
  readonly knee: number
  readonly crossed: boolean
}

const joint = SECOND_STAGE as Joint

/** Belt or cord along the upper link; absent without one. */
export function sceneAlong(facts: Facts): SceneAlong | undefined {
  const kind = beltOrCordOf(facts.leg.x)?.kind
  const at = { joint }
  if (kind === 'belt') return { kind, hip: facts.mm(otherRadius, at), knee: facts.mm(jointRadius, at), crossed: false }
  if (kind === undefined) return undefined
  return { kind, hip: facts.mm(pinionRadius, at), knee: facts.mm(drumRadius, at), crossed: facts.get(arrangement, at) === 'crossed' }
}

/** Tensions of its spans in a load case, where they can be calculated. */
export const alongLines = (facts: Facts, names: Names): readonly string[] => spanLines(facts, names, joint)
