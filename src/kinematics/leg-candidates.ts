import type { LegGeometryKernel } from './leg-geometry-kernel.js'
import { type LimitsSi, withinTurns } from './leg-limits.js'

/** The poses that a search tries, each turned towards the point, and the best of them. */
export class PoseCandidates {
  /** Angles of the best pose so far. */
  readonly q: Float64Array = new Float64Array(3)
  /** The foot there. */
  readonly foot: Float64Array = new Float64Array(3)
  /** Distance of the foot from the point. */
  miss = Infinity
  protected readonly trial: Float64Array = new Float64Array(3)
  protected readonly improvement: number
  protected limits: LimitsSi = new Float64Array(6)
  protected x = 0
  protected y = 0
  protected z = 0
  protected radius = 0
  /** Direction of the point around the axis. */
  protected toY = 0
  protected toZ = -1

  constructor(protected readonly leg: LegGeometryKernel) {
    this.improvement = 1e-13 * (leg.upperLink + leg.lowerLink + Math.abs(leg.hipOffset))
  }

  protected consider(q1: number, q2: number, q3: number): void {
    const { trial } = this
    this.leg.footInto(trial, 0, q1, q2, q3)
    const miss = Math.hypot(trial[0]! - this.x, trial[1]! - this.y, trial[2]! - this.z)
    if (!(miss < this.miss - this.improvement)) return
    this.miss = miss
    this.q[0] = q1
    this.q[1] = q2
    this.q[2] = q3
    this.foot.set(trial)
  }

  protected hip(angle: number): number {
    return withinTurns(angle, this.limits[2]!, this.limits[3]!)
  }

  protected knee(angle: number): number {
    return withinTurns(angle, this.limits[4]!, this.limits[5]!)
  }

  /** Knee angles at which the knee itself no longer helps: straight, folded, and its two limits; not finite where there is none. */
  protected fixedKnee(k: number): number {
    return k === 0 ? this.knee(0) : k === 1 ? this.knee(Math.PI) : this.limits[k + 2]!
  }

  /** Turns the leg plane so that its foot is as near to the point as it can be around the axis. */
  protected turned(q2: number, q3: number): void {
    const { toY, toZ } = this
    const { hipOffset: d, upperLink: l1, lowerLink: l2 } = this.leg
    const Z = -l1 * Math.cos(q2) - l2 * Math.cos(q2 + q3)
    const free = d === 0 && Z === 0
    const q1 = free ? 0 : Math.atan2(toZ * d - toY * Z, toY * d + toZ * Z)
    this.consider(withinTurns(q1, this.limits[0]!, this.limits[1]!), q2, q3)
  }

  /** Both knee bends that put the foot at X, Z in the leg plane, with the sideways hip free (`q1` not a number) or held. */
  protected planarAt(q1: number, X: number, Z: number): void {
    const { upperLink: l1, lowerLink: l2 } = this.leg
    const distance = X * X + Z * Z
    const far = (l1 + l2) ** 2 - distance
    const near = distance - (l1 - l2) ** 2
    if (far < 0 || near < 0) return
    for (let bend = 1; bend >= -1; bend -= 2) {
      const bent = 2 * Math.atan2(bend * Math.sqrt(far), Math.sqrt(near))
      const q2 = this.hip(Math.atan2(-X, -Z) - Math.atan2(l2 * Math.sin(bent), l1 + l2 * Math.cos(bent)))
      const q3 = this.knee(bent)
      if (Number.isNaN(q1)) this.turned(q2, q3)
      else this.consider(q1, q2, q3)
    }
  }

  protected planar(X: number, Z: number): void {
    this.planarAt(Number.NaN, X, Z)
  }
}
