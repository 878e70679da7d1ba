import { type Point, plain, polar, type View } from '../../drawing/index.js'
import type { Scene, Spot } from './leg-scene.js'
import { spans } from './spans.js'

/** Draws belt or cord along the upper link, its pulleys and their tensions. */
export function drawAlong(view: View, { along, alongText, knee, joints }: Scene, heavy: boolean, spots: Map<Spot, Point>): void {
  if (along === undefined) return
  view.circle({ centre: [0, 0], radius: along.hip }, 'thin').circle({ centre: knee, radius: along.knee }, 'thin')
  const pulleys = { drum: along.knee, pinion: along.hip, spans: true, crossed: along.crossed }
  spans(view, pulleys, joints[1]?.torque ?? 0, [knee, [0, 0]], heavy)
  spots.set('along', [knee[0] / 2, knee[1] / 2])
  view.label(
    polar(knee, along.knee, -0.6),
    [`${along.kind === 'belt' ? 'pulley' : 'drum'} on the knee`, `Ø${plain(2 * along.knee, 3)}`, ...alongText],
    {
      ink: 'move',
    },
  )
}
