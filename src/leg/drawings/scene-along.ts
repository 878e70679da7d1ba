import { type Point, plain, polar, type View } from '../../drawing/index.js'
import type { Joint } from '../numbers.js'
import { jointRadius, otherRadius } from '../parts/transmission/belt/values.js'
import { arrangement } from '../parts/transmission/cord/fields.js'
import { drumRadius, pinionRadius } from '../parts/transmission/cord/radii.js'
import { beltOrCordOf, SECOND_STAGE } from '../second-stage.js'
import type { Facts, Names } from './facts.js'
import type { Scene, Spot } from './leg-scene.js'
import { spanLines } from './scene-drive.js'
import { spans } from './spans.js'

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

/** Draws belt or cord along the upper link, its pulleys and their tensions. */
export function drawAlong(view: View, { along, alongText, knee, joints }: Scene, heavy: boolean, spots: Map<Spot, Point>): void {
  if (along === undefined) return
  view.circle({ centre: [0, 0], radius: along.hip }, 'thin').circle({ centre: knee, radius: along.knee }, 'thin')
  const pulleys = { drum: along.knee, pinion: along.hip, spans: true, crossed: along.crossed }
  spans(view, pulleys, joints[1]?.torque ?? 0, [knee, [0, 0]], heavy)
  spots.set('along', [knee[0] / 2, knee[1] / 2])
  view.label(
    polar(knee, along.knee, -0.6),
    [`knee ${along.kind === 'belt' ? 'pulley' : 'drum'} Ø${plain(2 * along.knee, 3)}`, ...alongText],
    {
      ink: 'move',
    },
  )
}
