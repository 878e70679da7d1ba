import { PoseCandidates } from './leg-candidates.js'
import { type LimitsSi, TURN } from './leg-limits.js'

const SCAN_POINTS = 96
/**
 * Search for the reachable point nearest to a point, with or without joint limits. Where the point itself can be reached the miss is zero to rounding.
 *
 * The nearest point is where every joint is either at a limit or no longer helps. All such poses are listed in closed form (one family, hip at a limit
 * with knee and sideways hip free, by bracketed roots) and the best is kept. Nothing is iterated from a guess. One search may not be shared between
 * threads: it keeps the best pose in fields of its own.
 */
export class NearestSearch extends PoseCandidates {
  /** Hip held at a limit, the knee tried there, and the slope of the squared distance over the knee's angle with the sideways hip free. */
  private heldHip = 0
  private triedKnee = 0
  private slope = 0

  /** Whether the point is on the axis of the sideways hip, so that every direction around it is as near. */
  get directionArbitrary(): boolean {
    return this.radius === 0
  }

  /** Searches; returns the miss, which is infinite (and nothing else changed) for a point that is not finite. */
  run(limits: LimitsSi, x: number, y: number, z: number): number {
    this.miss = Infinity
    const radius = Math.hypot(y, z)
    if (!Number.isFinite(x + radius)) return this.miss
    this.limits = limits
    this.x = x
    this.y = y
    this.z = z
    this.radius = radius
    this.toY = radius === 0 ? 0 : y / radius
    this.toZ = radius === 0 ? -1 : z / radius
    this.sidewaysFree()
    for (let end = 0; end < 2; end++) if (Number.isFinite(limits[end])) this.sidewaysHeld(limits[end]!)
    return this.miss
  }

  /** Sideways hip free. */
  private sidewaysFree(): void {
    const { x, radius, limits } = this
    const { hipOffset: d, upperLink: l1, lowerLink: l2 } = this.leg
    const below = radius * radius - d * d
    const Z = below > 0 ? Math.sqrt(below) : 0
    this.planar(x, -Z)
    if (Z > 0) this.planar(x, Z)
    for (let k = 0; k < 4; k++) {
      const q3 = this.fixedKnee(k)
      if (!Number.isFinite(q3)) continue
      const across = l2 * Math.sin(q3)
      const along = l1 + l2 * Math.cos(q3)
      const lean = Math.atan2(across, along)
      const stretch = Math.hypot(across, along, d) / Math.hypot(x, radius)
      const height = (radius * stretch) ** 2 - d * d
      if (Number.isFinite(stretch) && height >= 0) {
        const root = Math.sqrt(height)
        this.turned(this.hip(Math.atan2(-x * stretch, root) - lean), q3)
        this.turned(this.hip(Math.atan2(-x * stretch, -root) - lean), q3)
      }
      this.turned(this.hip(Math.atan2(-1, 0) - lean), q3)
      this.turned(this.hip(Math.atan2(1, 0) - lean), q3)
      for (let end = 2; end < 4; end++) if (Number.isFinite(limits[end])) this.turned(limits[end]!, q3)
    }
    for (let end = 2; end < 4; end++) if (Number.isFinite(limits[end])) this.stationaryKnees(limits[end]!)
  }

  /** Sideways hip at a limit: the plane problem of a point beside the leg. */
  private sidewaysHeld(q1: number): void {
    const { x, limits } = this
    const { upperLink: l1, lowerLink: l2 } = this.leg
    const Z = this.z * Math.cos(q1) - this.y * Math.sin(q1)
    this.planarAt(q1, x, Z)
    for (let k = 0; k < 4; k++) {
      const q3 = this.fixedKnee(k)
      if (!Number.isFinite(q3)) continue
      this.consider(q1, this.hip(Math.atan2(-x, -Z) - Math.atan2(l2 * Math.sin(q3), l1 + l2 * Math.cos(q3))), q3)
      for (let end = 2; end < 4; end++) if (Number.isFinite(limits[end])) this.consider(q1, limits[end]!, q3)
    }
    for (let end = 2; end < 4; end++) {
      const q2 = limits[end]!
      if (Number.isFinite(q2)) this.consider(q1, q2, this.knee(Math.atan2(-(x + l1 * Math.sin(q2)), -(Z + l1 * Math.cos(q2))) - q2))
    }
  }

  /** Knee angles at which, with the hip held and the sideways hip free, the foot is locally nearest to the point. */
  private stationaryKnees(q2: number): void {
    this.heldHip = q2
    const low = this.limits[4]!
    const high = this.limits[5]!
    // One turn at most, wherever the limits put it.
    const from = Number.isFinite(low) ? low : Number.isFinite(high) ? high - TURN : -Math.PI
    const to = Math.min(high, from + TURN)
    let before = from
    this.triedKnee = from
    this.slopeHere()
    let slopeBefore = this.slope
    for (let i = 1; i <= SCAN_POINTS; i++) {
      const here = from + ((to - from) * i) / SCAN_POINTS
      this.triedKnee = here
      this.slopeHere()
      const slope = this.slope
      if (slopeBefore <= 0 && slope >= 0 && slopeBefore < slope) {
        this.bisect(before, here)
        this.turned(q2, this.knee(this.triedKnee))
      }
      before = here
      slopeBefore = slope
    }
  }

  // Through fields: numbers passed to and from a function that is not inlined are each put on the heap.
  private slopeHere(): void {
    const { hipOffset: d, upperLink: l1, lowerLink: l2 } = this.leg
    const q2 = this.heldHip
    const s = l2 * Math.sin(q2 + this.triedKnee)
    const c = l2 * Math.cos(q2 + this.triedKnee)
    const Z = -l1 * Math.cos(q2) - c
    const rho = Math.sqrt(d * d + Z * Z)
    this.slope = -(-l1 * Math.sin(q2) - s - this.x) * c + (rho === 0 ? 0 : (1 - this.radius / rho) * Z * s)
  }

  /** Halves the part of a turn in which the slope rises through zero until no number is left between its ends. */
  private bisect(from: number, to: number): void {
    let low = from
    let high = to
    for (;;) {
      const middle = 0.5 * (low + high)
      if (!(middle > low && middle < high)) return
      this.triedKnee = middle
      this.slopeHere()
      if (this.slope < 0) low = middle
      else high = middle
    }
  }
}
