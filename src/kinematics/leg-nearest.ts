import { bracketRoot } from '../numeric/index.js'
import type { LegKernel } from './leg-kernel.js'

/** Joint limits on SI numbers: lowest and highest of sideways hip, hip, knee in turn; ±∞ where there is none. */
export type LimitsSi = Float64Array

/** Where a leg comes nearest to a point it cannot reach. */
export interface NearestSi {
  /** Joint angles there, within the limits. */
  readonly q: Float64Array
  /** The foot there. */
  readonly foot: Float64Array
  /** Distance from the wanted point. */
  readonly miss: number
  /** Joint angles that stand at a limit: −1 at the lowest, +1 at the highest, 0 free. */
  readonly atLimit: readonly [number, number, number]
  /** The wanted point is on the sideways hip's axis, so that every direction around it is as near. */
  readonly directionArbitrary: boolean
}

const TURN = 2 * Math.PI
const SCAN = 96
const ON_LIMIT = 1e-12

/** The angle, give or take whole turns, that lies within limits and is smallest in size; NaN if none does. */
export function withinTurns(angle: number, lowest: number, highest: number): number {
  const wrapped = angle - TURN * Math.round(angle / TURN)
  // The turn that comes nearest to the limits' own place nearest zero, and its neighbours; the positive of two alike. A limit reached to rounding is reached.
  const least = Math.max(lowest, Math.min(0, highest))
  const turns = TURN * Math.round((least - wrapped) / TURN)
  let best = Number.NaN
  for (let k = 1; k >= -1; k--) {
    const shifted = wrapped + turns + k * TURN
    if (shifted < lowest - ON_LIMIT || shifted > highest + ON_LIMIT) continue
    if (!(Math.abs(shifted) >= Math.abs(best) - ON_LIMIT)) best = Math.min(highest, Math.max(lowest, shifted))
  }
  return best
}

/**
 * The reachable point nearest to a point, with or without joint limits. Where the point itself can be reached the miss is zero to rounding.
 *
 * The nearest point is where every joint is either at a limit or no longer helps; all such poses are listed in closed form
 * (one family, hip at a limit with knee and sideways hip free, by bracketed roots) and the best is taken. Nothing is iterated from a guess.
 */
export function nearestReachable(leg: LegKernel, limits: LimitsSi, x: number, y: number, z: number): NearestSi {
  const { hipOffset: d, upperLink: l1, lowerLink: l2 } = leg
  const radius = Math.hypot(y, z)
  const directionArbitrary = radius === 0
  const [toY, toZ] = directionArbitrary ? [0, -1] : [y / radius, z / radius]
  const [low1, high1, low2, high2, low3, high3] = limits as unknown as [number, number, number, number, number, number]
  const best = { miss: Infinity, q: new Float64Array(3), foot: new Float64Array(3) }
  const foot = new Float64Array(3)
  const improvement = 1e-13 * (l1 + l2 + Math.abs(d))

  const consider = (q1: number, q2: number, q3: number) => {
    if (Number.isNaN(q1 + q2 + q3)) return
    leg.footInto(foot, 0, q1, q2, q3)
    const miss = Math.hypot(foot[0]! - x, foot[1]! - y, foot[2]! - z)
    if (!(miss < best.miss - improvement)) return
    best.miss = miss
    best.q.set([q1, q2, q3])
    best.foot.set(foot)
  }
  const hip = (angle: number) => withinTurns(angle, low2, high2)
  const knee = (angle: number) => withinTurns(angle, low3, high3)
  /** Turns the leg plane so that its foot points as near the target as it can around the axis. */
  const turned = (q2: number, q3: number) => {
    if (Number.isNaN(q2 + q3)) return
    const Z = -l1 * Math.cos(q2) - l2 * Math.cos(q2 + q3)
    const free = d === 0 && Z === 0
    consider(withinTurns(free ? 0 : Math.atan2(toZ * d - toY * Z, toY * d + toZ * Z), low1, high1), q2, q3)
  }
  /** Both knee bends that put the foot at X, Z in the leg plane. */
  const planar = (X: number, Z: number, then: (q2: number, q3: number) => void) => {
    const distance = X * X + Z * Z
    const far = (l1 + l2) ** 2 - distance
    const near = distance - (l1 - l2) ** 2
    if (far < 0 || near < 0) return
    for (const bend of [1, -1]) {
      const q3 = 2 * Math.atan2(bend * Math.sqrt(far), Math.sqrt(near))
      then(hip(Math.atan2(-X, -Z) - Math.atan2(l2 * Math.sin(q3), l1 + l2 * Math.cos(q3))), knee(q3))
    }
  }

  // One turn at most, wherever the limits put it.
  const kneeFrom = Number.isFinite(low3) ? low3 : Number.isFinite(high3) ? high3 - TURN : -Math.PI
  const kneeTo = Math.min(high3, kneeFrom + TURN)

  const fixed1 = [low1, high1].filter(Number.isFinite)
  const fixed2 = [low2, high2].filter(Number.isFinite)
  const fixed3 = [knee(0), knee(Math.PI), low3, high3].filter(Number.isFinite)

  // Sideways hip free.
  const below = radius * radius - d * d
  for (const Z of below > 0 ? [-Math.sqrt(below), Math.sqrt(below)] : [0]) planar(x, Z, turned)
  for (const q3 of fixed3) {
    const across = l2 * Math.sin(q3)
    const along = l1 + l2 * Math.cos(q3)
    const lean = Math.atan2(across, along)
    const reach = Math.hypot(across, along)
    const stretch = Math.hypot(reach, d) / Math.hypot(x, radius)
    const height = (radius * stretch) ** 2 - d * d
    if (Number.isFinite(stretch) && height >= 0)
      for (const Z of [-Math.sqrt(height), Math.sqrt(height)]) turned(hip(Math.atan2(-x * stretch, -Z) - lean), q3)
    for (const X of [1, -1]) turned(hip(Math.atan2(-X, 0) - lean), q3)
    for (const q2 of fixed2) turned(q2, q3)
  }
  for (const q2 of fixed2) {
    for (const q3 of stationaryKnee(leg, q2, x, radius, kneeFrom, kneeTo)) turned(q2, knee(q3))
  }

  // Sideways hip at a limit: the plane problem of a point beside the leg.
  for (const q1 of fixed1) {
    const Z = z * Math.cos(q1) - y * Math.sin(q1)
    const at = (q2: number, q3: number) => consider(q1, q2, q3)
    planar(x, Z, at)
    for (const q3 of fixed3) {
      at(hip(Math.atan2(-x, -Z) - Math.atan2(l2 * Math.sin(q3), l1 + l2 * Math.cos(q3))), q3)
      for (const q2 of fixed2) at(q2, q3)
    }
    for (const q2 of fixed2) at(q2, knee(Math.atan2(-(x + l1 * Math.sin(q2)), -(Z + l1 * Math.cos(q2))) - q2))
  }

  const { q } = best
  const end = (i: number) => (Math.abs(q[i]! - limits[2 * i]!) <= ON_LIMIT ? -1 : Math.abs(q[i]! - limits[2 * i + 1]!) <= ON_LIMIT ? 1 : 0)
  return { q, foot: best.foot, miss: best.miss, atLimit: [end(0), end(1), end(2)], directionArbitrary }
}

/** Knee angles at which, with the hip held and the sideways hip free, the foot is locally nearest to a point at x and `radius` from the axis. */
function stationaryKnee(leg: LegKernel, q2: number, x: number, radius: number, from: number, to: number): number[] {
  const { hipOffset: d, upperLink: l1, lowerLink: l2 } = leg
  const kneeX = -l1 * Math.sin(q2)
  const kneeZ = -l1 * Math.cos(q2)
  const slope = (q3: number) => {
    const s = l2 * Math.sin(q2 + q3)
    const c = l2 * Math.cos(q2 + q3)
    const Z = kneeZ - c
    const rho = Math.hypot(d, Z)
    return -(kneeX - s - x) * c + (rho === 0 ? 0 : (1 - radius / rho) * Z * s)
  }
  const found: number[] = []
  let before = from
  let slopeBefore = slope(before)
  for (let i = 1; i <= SCAN; i++) {
    const here = from + ((to - from) * i) / SCAN
    const slopeHere = slope(here)
    if (slopeBefore <= 0 && slopeHere >= 0 && slopeBefore < slopeHere) found.push(bracketRoot(slope, before, here))
    before = here
    slopeBefore = slopeHere
  }
  return found
}
