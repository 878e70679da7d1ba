import { type Point, plain, polar, type View } from '../../drawing/index.js'
import type { Scene } from './leg-scene.js'

/** Draws the counterweights of the links: discs beyond the upper joint of each. */
export function drawWeights(view: View, { weights, pose, knee, links }: Scene): void {
  for (const [weight, joint, along] of [
    [weights.upper, [0, 0], pose.hip],
    [weights.lower, knee, pose.hip + pose.knee],
  ] as const) {
    if (weight === undefined) continue
    const centre = polar(joint as Point, weight.beyond, along + Math.PI / 2)
    view
      .line([joint as Point, centre], 'thin')
      .circle({ centre, radius: weight.radius }, 'thin', 'tone')
      .circle({ centre, radius: links.lowerDepth / 12 }, 'thin', 'solid')
      .label(centre, ['counterweight', `${plain(weight.mass, 3)} kg at ${plain(weight.beyond)}`], { end: 'dot' })
  }
}
