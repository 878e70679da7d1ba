import { FOUR_LEGS, type Gait, gait, twoFeetTipping } from '../../kinematics/index.js'
import { Quantity } from '../../units/index.js'
import { STANDARD_GRAVITY } from '../gravity.js'
import type { LegNumbers } from '../leg-numbers.js'
import { gaitNamed } from '../numbers.js'
import type { Corner } from './result.js'

const SAMPLES = 480

/** The four corners: place of each foot under the body at mid stance, seen from the middle of the hips, and part of the weight on the level. */
export function cornersOf({ robot, links }: LegNumbers) {
  const { hipSpacing, hipTrack, centreOfMassForward, centreOfMassLeft, hindLegs } = robot
  const width = hipTrack + 2 * links.hipOffset
  return FOUR_LEGS.map((corner: Corner) => {
    const [front, left] = [corner.endsWith('Front') ? 1 : -1, corner.startsWith('left') ? 1 : -1]
    return {
      corner,
      x: (front * hipSpacing) / 2,
      y: (left * width) / 2,
      mirrored: front < 0 && hindLegs === 'mirrored',
      share: 0.25 + (front * centreOfMassForward) / (2 * hipSpacing) + (left * centreOfMassLeft) / (2 * width),
    }
  })
}

/** Height of the centre of mass over the feet. */
export const centreHeightOf = ({ robot }: LegNumbers): number => robot.centreOfMassHeight ?? robot.standHeight

const length = (x: number) => new Quantity(x, 'length')

/** How the body moves besides forward: to the left, and turning to the left. */
export interface Sway {
  readonly sideways?: number
  readonly turnRate?: number
}

/** The feet along the stride of a gait. */
export function feetOf(x: LegNumbers, id: 'walk' | 'trot', { sideways = 0, turnRate = 0 }: Sway = {}): Gait {
  const { speed, stepLength, dutyFactor } = gaitNamed(x, id)
  const { mass, centreOfMassForward, centreOfMassLeft } = x.robot
  return gait({
    feet: cornersOf(x).map((corner) => ({ x: length(corner.x), y: length(corner.y) })),
    gait: id,
    dutyFactor,
    stridePeriod: new Quantity(stepLength / speed / dutyFactor, 'time'),
    forward: new Quantity(speed, 'velocity'),
    sideways: new Quantity(sideways, 'velocity'),
    turnRate: new Quantity(turnRate, 'angularVelocity'),
    mass: new Quantity(mass, 'mass'),
    centreOfMass: { x: length(centreOfMassForward), y: length(centreOfMassLeft), z: length(centreHeightOf(x)) },
    samples: SAMPLES,
  })
}

interface Edge {
  readonly one: number
  readonly other: number
  /** Part of the weight on the second foot, by the lever rule. */
  readonly along: number
  readonly off: number
}

/** The moments of a gait: legs that stand, where their feet are, and the two feet whose line is nearest to the weight. */
class Moments {
  readonly count: number
  readonly step: number

  constructor(
    private readonly x: LegNumbers,
    private readonly samples: Gait['samples'],
  ) {
    this.count = samples.count
    this.step = samples.time[1]! - samples.time[0]!
  }

  standing(i: number): number[] {
    const { legs, stands } = this.samples
    return Array.from({ length: legs }, (_, leg) => leg).filter((leg) => stands[legs * i + leg] === 1)
  }

  foot(i: number, leg: number): { readonly x: number; readonly y: number } {
    const { legs, footX, footY } = this.samples
    return { x: footX[legs * i + leg]!, y: footY[legs * i + leg]! }
  }

  /** Whether three or more feet hold the weight. */
  isHeld(i: number): boolean {
    return this.samples.margin[i]! >= 0
  }

  share(i: number, leg: number): number {
    return this.samples.share[this.samples.legs * i + leg]!
  }

  nearestEdge(i: number): Edge | undefined {
    const { centreOfMassForward: cx, centreOfMassLeft: cy } = this.x.robot
    const standing = this.standing(i)
    let best: Edge | undefined
    for (const [k, foot] of standing.entries())
      for (const other of standing.slice(k + 1)) {
        const [a, b] = [this.foot(i, foot), this.foot(i, other)]
        const [ux, uy] = [b.x - a.x, b.y - a.y]
        const along = Math.min(1, Math.max(0, ((cx - a.x) * ux + (cy - a.y) * uy) / (ux * ux + uy * uy)))
        const off = Math.hypot(cx - a.x - along * ux, cy - a.y - along * uy)
        if (best === undefined || off < best.off) best = { one: foot, other, along, off }
      }
    return best
  }
}

/**
 * Part of the weight on each leg, moment by moment of its stance, standing still at each: where no polygon of feet holds the weight, on the two feet
 * beside it.
 */
export function stanceShares(x: LegNumbers, { samples, legs }: Gait): number[][] {
  const moments = new Moments(x, samples)
  const shares = legs.map((): { since: number; share: number }[] => [])
  const take = (i: number, leg: number, share: number) =>
    shares[leg]!.push({ since: ((i + 0.5) / moments.count - legs[leg]!.phase + 1) % 1, share })
  for (let i = 0; i < moments.count; i++) {
    const standing = moments.standing(i)
    const edge = standing.some((leg) => !Number.isFinite(moments.share(i, leg))) ? moments.nearestEdge(i) : undefined
    for (const leg of standing)
      take(i, leg, edge === undefined ? moments.share(i, leg) : leg === edge.one ? 1 - edge.along : leg === edge.other ? edge.along : 0)
  }
  return shares.map((own) => own.sort((a, b) => a.since - b.since).map(({ share }) => share))
}

/**
 * Part of the stride in which no polygon of feet holds the weight. In the longest of these times the robot tips about the two feet beside it: how far, with
 * its mass in one point.
 */
export function tippingOf(x: LegNumbers, { samples }: Gait): { readonly share: number; readonly angle: number } {
  const moments = new Moments(x, samples)
  const { mass, centreOfMassForward: centreX, centreOfMassLeft: centreY } = x.robot
  const { count, step } = moments
  let [angle, run] = [0, 0]
  // Twice round, so that a time that runs over the stride's end counts whole.
  for (let k = 0; k < 2 * count; k++) {
    const i = k % count
    run = moments.isHeld(i) ? 0 : Math.min(run + 1, count)
    const edge = run === 0 ? undefined : moments.nearestEdge(i)
    if (edge === undefined) continue
    const [rear, front] = [moments.foot(i, edge.one), moments.foot(i, edge.other)]
    const tipped = twoFeetTipping.si({
      ...{ rearX: rear.x, rearY: rear.y, frontX: front.x, frontY: front.y, centreX, centreY },
      height: centreHeightOf(x),
      mass,
      inertia: 0,
      time: run * step,
      gravity: STANDARD_GRAVITY,
    })
    angle = Math.max(angle, Math.abs(tipped.angle))
  }
  const free = Array.from({ length: count }, (_, i) => i).filter((i) => !moments.isHeld(i))
  return { share: free.length / count, angle }
}
