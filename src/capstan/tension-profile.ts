/** Corners that a new profile has room for on either side; it grows, and most histories need few. */
const INITIAL_CAPACITY = 64

/** ∫ e^u over a width along which u runs linearly from the logarithm of T0 to that of T1. */
export const area = (T0: number, T1: number, du: number, width: number) =>
  du > -1e-7 && du < 1e-7 ? 0.5 * (T0 + T1) * width : ((T1 - T0) * width) / du

/** Tension along one wrap, stored as corners with the running integral: a slip pushes corners at an end, and arrays grow as needed. */
export class TensionProfile {
  protected theta: Float64Array = new Float64Array(2 * INITIAL_CAPACITY)
  protected log: Float64Array = new Float64Array(2 * INITIAL_CAPACITY)
  protected sum: Float64Array = new Float64Array(2 * INITIAL_CAPACITY)
  protected head = INITIAL_CAPACITY
  protected tail = INITIAL_CAPACITY + 1

  constructor(low: number, high: number, tension: number) {
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

  /** Integral of tension up to an angle within the wrap. */
  integralTo(angle: number): number {
    let i = this.head
    while (i < this.tail - 1 && (this.theta[i + 1] as number) < angle) i++
    return this.within(i, i + 1, angle).integral
  }

  protected within(i: number, j: number, angle: number): { integral: number; log: number } {
    const t0 = this.theta[i] as number
    const width = (this.theta[j] as number) - t0
    const u0 = this.log[i] as number
    const share = width === 0 ? 0 : (angle - t0) / width
    const u = u0 + ((this.log[j] as number) - u0) * share
    return { log: u, integral: (this.sum[i] as number) + area(Math.exp(u0), Math.exp(u), u - u0, angle - t0) }
  }

  protected push(outward: 1 | -1, angle: number, u: number, integral: number): void {
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
    this.head = INITIAL_CAPACITY
    this.tail = INITIAL_CAPACITY + 1
    theta[this.head] = a
    theta[this.tail] = b
    log[this.head] = Math.log(lowTension)
    log[this.tail] = Math.log(highTension)
    sum[this.head] = 0
    sum[this.tail] = area(lowTension, highTension, Math.log(highTension / lowTension), b - a)
  }
}
