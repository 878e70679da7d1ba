import { arcPoints, type Point, plain, View } from '../../drawing/index.js'
import type { ShaftSizes } from './shaft-sizes.js'

/** The shaft across its axis, where it has a flat. */
export function flatSection({ diameter, stack }: Pick<ShaftSizes, 'diameter' | 'stack'>): View | undefined {
  const flat = stack?.flat
  if (flat === undefined) return undefined
  const view = new View('Shaft across the axis, at its flat', { height: 180, template: true })
  const r = diameter / 2
  const left = r - flat.depth
  const half = Math.acos(left / r)
  const round = arcPoints({ centre: [0, 0], radius: r }, Math.PI / 2 + half, (5 * Math.PI) / 2 - half)
  const [from] = round as [Point]
  return view
    .area(round, { fill: 'tone' })
    .centre({ centre: [0, 0], radius: r }, 1.15)
    .dimension([-r, -r], [-r, left], 'left')
    .label([-from[0] * 0.6, left], [`flat ${plain(flat.depth)} deep,`, `${plain(flat.length)} long`])
    .label([0.7 * r, -0.7 * r], `shaft Ø${plain(diameter)}`)
}
