import { area, TensionProfile } from './tension-profile.js'
import type { EndProbe } from './wrap-end.js'

/**
 * Tension stored along one wrap: the logarithm of tension as straight pieces over the pulley's own angle, with the running integral of
 * tension. A change of tension at an end slips inwards along a piece of slope ±friction until it meets what is stored; so a wrap
 * remembers its history of loads exactly. SI numbers; mutable, for the simulations only.
 */
export class Wrap extends TensionProfile {
  constructor(
    low: number,
    high: number,
    tension: number,
    private readonly friction: number,
  ) {
    super(low, high, tension)
  }

  /** State of an end (`outward` +1 the high one, −1 the low one) at angle and tension `T`. */
  probe(outward: 1 | -1, angle: number, T: number, out: EndProbe): void {
    const { theta, log, sum, friction: mu } = this
    const last = outward > 0 ? this.tail : this.head
    const end = outward > 0 ? this.head : this.tail
    const u = Math.log(T)
    const gained = outward * (angle - (theta[last] as number))
    let i = last
    let stored = log[last] as number
    if (gained > 0) {
      if (Math.abs(u - stored) <= mu * gained) {
        this.windOn(outward, gained, T, out)
        return
      }
    } else if (gained < 0) {
      while (i !== end && outward * (angle - (theta[i - outward] as number)) < 0) i -= outward
      if (i === end) stored = log[end] as number
      else {
        const j = i - outward
        const share = (angle - (theta[j] as number)) / ((theta[i] as number) - (theta[j] as number))
        stored = (log[j] as number) + ((log[i] as number) - (log[j] as number)) * share
      }
    }
    const s = u > stored ? 1 : u < stored ? -1 : 0
    if (s === 0) {
      const before = outward > 0 ? i - 1 : i
      this.rest(angle, u, i === end ? (sum[end] as number) : this.within(before, before + 1, angle).integral, out)
    } else this.slip(outward, s, angle, T, i, stored, gained, out)
  }

  /** Follows the slip line from an end inwards, past corner `i` of the profile, until it meets what is stored. */
  private slip(outward: 1 | -1, s: 1 | -1, angle: number, T: number, i: number, stored: number, gained: number, out: EndProbe): void {
    const { theta, log, sum, friction: mu } = this
    const last = outward > 0 ? this.tail : this.head
    const end = outward > 0 ? this.head : this.tail
    const u = Math.log(T)
    // Signed height of the slip line over the stored profile, at the corner just outside and just inside.
    let outer = s * (u - stored)
    let outerAngle = gained < 0 ? angle : (theta[last] as number)
    if (gained > 0) outer = s * (u - s * mu * gained - stored)
    let j = i - outward
    let inner = 0
    let found = false
    while (outward > 0 ? j >= end : j <= end) {
      const line = u - s * mu * Math.abs(angle - (theta[j] as number))
      inner = s * (line - (log[j] as number))
      if (inner <= 0) {
        found = true
        break
      }
      outer = inner
      outerAngle = theta[j] as number
      j -= outward
    }
    // Without a meeting the slip has run through to the other end.
    const k = found ? j : end
    const kt = theta[k] as number
    const share = inner === outer ? 0 : -inner / (outer - inner)
    const at = found ? kt + (outerAngle - kt) * share : kt
    const uAt = u - s * mu * Math.abs(angle - at)
    const TAt = Math.exp(uAt)
    out.boundary = at
    out.boundaryLog = uAt
    out.boundaryIntegral = sum[k] as number
    if (found) {
      const stretch = area(Math.exp(log[k] as number), TAt, uAt - (log[k] as number), Math.abs(at - kt))
      out.boundaryIntegral += outward * stretch
    }
    out.through = !found
    out.integral = out.boundaryIntegral + (outward * (s * (T - TAt))) / mu
    out.slope = (s * (1 - TAt / T)) / mu
    out.sense = s
  }

  /** Cord winds on with the tension it has and rests. */
  private windOn(outward: 1 | -1, gained: number, T: number, out: EndProbe): void {
    const last = outward > 0 ? this.tail : this.head
    const stored = this.log[last] as number
    const du = Math.log(T) - stored
    out.integral = (this.sum[last] as number) + outward * area(Math.exp(stored), T, du, gained)
    out.slope = Math.abs(du) < 1e-4 ? gained * (0.5 - du / 6) : (gained * (du + Math.expm1(-du))) / (du * du)
    out.boundary = this.theta[last] as number
    out.boundaryIntegral = this.sum[last] as number
    out.boundaryLog = stored
    out.sense = 0
    out.through = false
  }

  /** The end has the tension that is stored there: no slip. */
  private rest(angle: number, u: number, integral: number, out: EndProbe): void {
    out.integral = integral
    out.slope = 0
    out.boundary = angle
    out.boundaryIntegral = integral
    out.boundaryLog = u
    out.sense = 0
    out.through = false
  }

  /** Makes a probed end the stored state. */
  commit(outward: 1 | -1, angle: number, T: number, probe: EndProbe): void {
    const move = outward > 0 ? 'tail' : 'head'
    const end = outward > 0 ? this.head : this.tail
    if (probe.through) {
      this.log[end] = probe.boundaryLog
      this[move] = end
    } else {
      let i = this[move]
      while (i !== end && outward * ((this.theta[i] as number) - probe.boundary) > 0) i -= outward
      this[move] = i
      if (this.theta[i] !== probe.boundary) this.push(outward, probe.boundary, probe.boundaryLog, probe.boundaryIntegral)
    }
    // A push may have moved the arrays.
    if (this.theta[this[move]] !== angle) this.push(outward, angle, Math.log(T), probe.integral)
    else {
      this.log[this[move]] = Math.log(T)
      this.sum[this[move]] = probe.integral
    }
  }
}
