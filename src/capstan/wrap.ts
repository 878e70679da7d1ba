import type { EndProbe } from './wrap-end.js'

/** Corners that a new profile has room for on either side; it grows, and most histories need few. */
const ROOM = 64

/** ∫ e^u over a width along which u runs linearly from the logarithm of T0 to that of T1. */
const area = (T0: number, T1: number, du: number, width: number) =>
  du > -1e-7 && du < 1e-7 ? 0.5 * (T0 + T1) * width : ((T1 - T0) * width) / du

/**
 * Tension stored along one wrap: the logarithm of tension as straight pieces over the pulley's own angle, with the running integral of
 * tension. A change of tension at an end slips inwards along a piece of slope ±friction until it meets what is stored; so a wrap
 * remembers its history of loads exactly. SI numbers; mutable, for the simulations only.
 */
export class Wrap {
  private theta = new Float64Array(2 * ROOM)
  private log = new Float64Array(2 * ROOM)
  private sum = new Float64Array(2 * ROOM)
  private head = ROOM
  private tail = ROOM + 1

  constructor(
    low: number,
    high: number,
    tension: number,
    private readonly friction: number,
  ) {
    this.theta[this.head] = low
    this.theta[this.tail] = high
    this.log[this.head] = Math.log(tension)
    this.log[this.tail] = Math.log(tension)
    this.sum[this.tail] = tension * (high - low)
  }

  get low(): number {
    return this.theta[this.head] as number
  }
  get high(): number {
    return this.theta[this.tail] as number
  }
  get lowIntegral(): number {
    return this.sum[this.head] as number
  }
  get highIntegral(): number {
    return this.sum[this.tail] as number
  }
  /** Tension at the low end. */
  get lowTension(): number {
    return Math.exp(this.log[this.head] as number)
  }

  /** Corners of the stored profile: angle and tension. */
  corners(): [number, number][] {
    const out: [number, number][] = []
    for (let i = this.head; i <= this.tail; i++) out.push([this.theta[i] as number, Math.exp(this.log[i] as number)])
    return out
  }

  /** Integral of tension up to an angle within the wrap. */
  integralTo(angle: number): number {
    let i = this.head
    while (i < this.tail - 1 && (this.theta[i + 1] as number) < angle) i++
    return this.within(i, i + 1, angle).integral
  }

  private within(i: number, j: number, angle: number): { integral: number; log: number } {
    const t0 = this.theta[i] as number
    const width = (this.theta[j] as number) - t0
    const u0 = this.log[i] as number
    const share = width === 0 ? 0 : (angle - t0) / width
    const u = u0 + ((this.log[j] as number) - u0) * share
    return { log: u, integral: (this.sum[i] as number) + area(Math.exp(u0), Math.exp(u), u - u0, angle - t0) }
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
      const du = u - stored
      if (Math.abs(du) <= mu * gained) {
        // Cord winds on with the tension it has and rests.
        const T0 = Math.exp(stored)
        out.integral = (sum[last] as number) + outward * area(T0, T, du, gained)
        out.slope = Math.abs(du) < 1e-4 ? gained * (0.5 - du / 6) : (gained * (du + Math.expm1(-du))) / (du * du)
        out.boundary = theta[last] as number
        out.boundaryIntegral = sum[last] as number
        out.boundaryLog = stored
        out.sense = 0
        out.through = false
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
      const at =
        i === end
          ? { integral: sum[end] as number, log: stored }
          : outward > 0
            ? this.within(i - 1, i, angle)
            : this.within(i, i + 1, angle)
      out.integral = at.integral
      out.slope = 0
      out.boundary = angle
      out.boundaryIntegral = at.integral
      out.boundaryLog = u
      out.sense = 0
      out.through = false
      return
    }
    // Signed height of the slip line over the stored profile, at the corner just outside and just inside.
    let outer = s * (u - stored)
    let outerAngle = gained < 0 ? angle : (theta[last] as number)
    if (gained > 0) outer = s * (u - s * mu * gained - stored)
    let j = gained < 0 ? i - outward : i - outward
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
    if (found) {
      const jt = theta[j] as number
      const share = inner === outer ? 0 : -inner / (outer - inner)
      const at = jt + (outerAngle - jt) * share
      const uAt = u - s * mu * Math.abs(angle - at)
      const Tj = Math.exp(log[j] as number)
      const TAt = Math.exp(uAt)
      out.boundary = at
      out.boundaryLog = uAt
      out.boundaryIntegral = (sum[j] as number) + outward * area(Tj, TAt, uAt - (log[j] as number), Math.abs(at - jt))
      out.through = false
      out.integral = out.boundaryIntegral + (outward * (s * (T - TAt))) / mu
      out.slope = (s * (1 - TAt / T)) / mu
    } else {
      const at = theta[end] as number
      const uAt = u - s * mu * Math.abs(angle - at)
      const TAt = Math.exp(uAt)
      out.boundary = at
      out.boundaryLog = uAt
      out.boundaryIntegral = sum[end] as number
      out.through = true
      out.integral = out.boundaryIntegral + (outward * (s * (T - TAt))) / mu
      out.slope = (s * (1 - TAt / T)) / mu
    }
    out.sense = s
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

  private push(outward: 1 | -1, angle: number, u: number, integral: number): void {
    if (this.head < 2 || this.tail > this.theta.length - 3) this.recentre()
    const i = outward > 0 ? ++this.tail : --this.head
    this.theta[i] = angle
    this.log[i] = u
    this.sum[i] = integral
  }

  private recentre(): void {
    const count = this.tail - this.head + 1
    const room = Math.max(this.theta.length, 4 * count)
    const start = (room - count) >> 1
    for (const name of ['theta', 'log', 'sum'] as const) {
      const next = new Float64Array(room)
      next.set(this[name].subarray(this.head, this.tail + 1), start)
      this[name] = next
    }
    this.head = start
    this.tail = start + count - 1
  }

  /** Replaces the whole profile by one slip line from end to end. */
  flatten(lowTension: number, highTension: number): void {
    const { theta, log, sum } = this
    const [a, b] = [this.low, this.high]
    this.head = ROOM
    this.tail = ROOM + 1
    theta[this.head] = a
    theta[this.tail] = b
    log[this.head] = Math.log(lowTension)
    log[this.tail] = Math.log(highTension)
    sum[this.head] = 0
    sum[this.tail] = area(lowTension, highTension, Math.log(highTension / lowTension), b - a)
  }
}
