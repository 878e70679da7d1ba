import { type Block, forceArrow, type Item, MARGIN, PAGE_WIDTH, type Point, plain, SMALL, textAt, textWidth } from '../../drawing/index.js'
import { type LinkSizes, type Pose, pointsOf, smallPose } from './pose.js'

/** One pose of a strip with the numbers below it. */
export interface StripPose {
  readonly pose: Pose
  /** Hip, crank pin, rocker pin and knee of a knee that a rod drives. */
  readonly rod?: readonly Point[]
  /** Force of the ground on the foot, N: forward and up. */
  readonly force: readonly [forward: number, up: number]
  readonly numbers: readonly string[]
}

const ROW_HEIGHT = 14
const FORCE_LENGTH = 30
const HEADROOM = 8

/** Poses side by side at one scale, each with its force and its numbers. */
export function stripBlock(sizes: LinkSizes, poses: readonly StripPose[], rows: readonly string[], top: number): Block {
  const names = Math.max(...rows.map((row) => textWidth(row, SMALL)))
  const left = MARGIN + names + 6
  const column = (PAGE_WIDTH - MARGIN - left) / poses.length
  const half = Math.max(sizes.upperDepth, sizes.lowerDepth) / 2
  const all = poses.map(({ pose }) => pointsOf(sizes, pose))
  const wide = Math.max(...all.map(({ knee, foot }) => Math.max(0, knee[0], foot[0]) - Math.min(0, knee[0], foot[0]) + 2 * half))
  const tall = Math.max(...all.map(({ foot, knee }) => Math.max(-foot[1], half - knee[1]) + half))
  const scale = Math.min((column - 6) / wide, 110 / tall)
  const ground = top + HEADROOM + tall * scale
  const strongest = Math.max(...poses.map(({ force }) => Math.hypot(...force)))
  const items: Item[] = [
    {
      kind: 'path',
      line: 'thick',
      points: [
        [left, ground],
        [PAGE_WIDTH - MARGIN, ground],
      ],
    },
  ]
  poses.forEach(({ pose, rod = [], force, numbers }, i) => {
    const { knee, foot } = all[i]!
    const middle = (Math.min(0, knee[0], foot[0]) + Math.max(0, knee[0], foot[0])) / 2
    const x = left + column * (i + 0.5) - middle * scale
    const to = ([px, py]: Point): Point => [x + px * scale, ground + (foot[1] - py) * scale]
    items.push(...smallPose(sizes, pose, rod, { to, scale }))
    const size = strongest > 0 ? FORCE_LENGTH / strongest : 0
    const tip = to(foot)
    if (Math.hypot(...force) > 0) items.push(...forceArrow(tip, [tip[0] + force[0] * size, tip[1] + force[1] * size]))
    items.push(
      ...numbers.map((text, k) =>
        textAt([left + column * (i + 0.5), ground + FORCE_LENGTH + 16 + ROW_HEIGHT * k], text, { anchor: 'middle' }),
      ),
    )
  })
  items.push(...rows.map((row, k) => textAt([MARGIN, ground + FORCE_LENGTH + 16 + ROW_HEIGHT * k], row)))
  return { items, height: ground - top + FORCE_LENGTH + 10 + ROW_HEIGHT * rows.length }
}

/** A number of a strip, narrow. */
export const short = (x: number): string => (Math.abs(x) < 5e-4 ? '0' : plain(x, 3))
