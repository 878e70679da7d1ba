import { bar, type Circle, type Item, type Place, type Point, polar } from '../../drawing/index.js'
import { KNEE_BACKWARD, LegKernel } from '../../kinematics/index.js'
import * as links from '../parts/links/fields.js'
import { kneeSide } from '../parts/motion/values.js'
import type { Facts } from './facts.js'

/** A leg seen from the robot's left: forward is to the left, angles count counter-clockwise from straight down. */
export interface Pose {
  readonly hip: number
  readonly knee: number
}

/** Depth of a link from the side: that of its box, or its tube. */
const depthOf = (facts: Facts, link: 'upper' | 'lower'): number => {
  const { tube } = facts.leg.x.links[link].section
  return tube === undefined ? facts.mm(links.depth, { link }) : 1000 * tube
}

/** Sizes of the links, mm. */
export const linkSizes = (facts: Facts) => ({
  offset: facts.mm(links.hipOffset),
  upper: facts.mm(links.length, { link: 'upper' }),
  lower: facts.mm(links.length, { link: 'lower' }),
  upperDepth: depthOf(facts, 'upper'),
  lowerDepth: depthOf(facts, 'lower'),
})
export type LinkSizes = ReturnType<typeof linkSizes>

/** Where knee and foot are, the hip at the origin. */
export function pointsOf({ upper, lower }: LinkSizes, { hip, knee }: Pose): { readonly knee: Point; readonly foot: Point } {
  const at = polar([0, 0], upper, hip - Math.PI / 2)
  return { knee: at, foot: polar(at, lower, hip + knee - Math.PI / 2) }
}

/** The pose that puts the foot ahead of the hip and below it, mm; absent out of reach. */
export function poseAt(facts: Facts, ahead: number, below: number): Pose | undefined {
  const { offset, upper, lower } = linkSizes(facts)
  const out = new Float64Array(3)
  const side = facts.get(kneeSide) === 'backward' ? KNEE_BACKWARD : 0
  const found = new LegKernel(offset, upper, lower).jointAnglesInto(out, 0, ahead, offset, -below, side)
  return found === 0 && Number.isFinite(out[2]!) ? { hip: out[1]!, knee: out[2]! } : undefined
}

/** The two links of a pose as bars with their joints, and the rod of the knee where there is one, in units of a page, for small pictures. */
export function smallPose(
  sizes: LinkSizes,
  pose: Pose,
  rod: readonly Point[],
  { to, scale }: Pick<Place, 'to' | 'scale'>,
): readonly Item[] {
  const { knee, foot } = pointsOf(sizes, pose)
  const link = (a: Point, b: Point, depth: number): Item => {
    const ends = [a, b].map((centre): Circle => ({ centre, radius: depth / 2 })) as [Circle, Circle]
    return { kind: 'path', line: 'thin', points: bar(...ends).map(to), closed: true, fill: 'tone' }
  }
  return [
    link([0, 0], knee, sizes.upperDepth),
    link(knee, foot, sizes.lowerDepth),
    ...(rod.length === 0 ? [] : [{ kind: 'path', line: 'thin', points: rod.map(to) } as const]),
    ...[[0, 0] as Point, knee, foot].map(
      (centre): Item => ({ kind: 'circle', line: 'thin', centre: to(centre), radius: Math.max(1.2, 3 * scale), fill: 'paper' }),
    ),
  ]
}
