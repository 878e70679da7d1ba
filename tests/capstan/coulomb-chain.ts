import type { CordDriveState } from '../../src/capstan/index.js'

const MOST_ROUNDS = 4000

/**
 * The whole loop as a chain of springs and Coulomb contacts, driven by the displacement of the drum's rim: an independent second method.
 * Every contact node rests or slips; for a guess of which, the equations are linear and tridiagonal; the guess is mended until it holds.
 */
export class CoulombChain {
  private readonly h: number[] = []
  private readonly mu: number[] = []
  private readonly onDrum: boolean[] = []
  /** Of each contact node: its share of friction, whether it moves with the drum. */
  private readonly contact: Float64Array
  private readonly isDrum: readonly boolean[]
  private u: Float64Array
  /** Which nodes rest (0) and which slip, and to which side: the first guess of the next step. */
  private readonly state: Int8Array
  private rim = 0

  constructor(
    private readonly d: CordDriveState,
    perArc: number,
  ) {
    const arc = (radius: number, wrap: number, mu: number, drum: boolean) => {
      for (let i = 0; i < perArc; i++) {
        this.h.push((radius * wrap) / perArc)
        this.mu.push((mu * wrap) / perArc)
        this.onDrum.push(drum)
      }
    }
    // One spring per piece; the contact of a piece acts at the node behind it.
    arc(d.drumRadius, d.drumWrapTaut, d.drumFriction ?? d.friction, true)
    this.h.push(d.span)
    this.mu.push(0)
    this.onDrum.push(false)
    arc(d.pinionRadius, d.pinionWrap, d.friction, false)
    this.h.push(d.span)
    this.mu.push(0)
    this.onDrum.push(false)
    arc(d.drumRadius, d.drumWrapSlack, d.drumFriction ?? d.friction, true)
    this.u = new Float64Array(this.h.length - 1)
    this.state = new Int8Array(this.u.length)
    this.contact = this.u.map((_, i) => (this.mu[i] as number) * 0.5 + (this.mu[i + 1] as number) * 0.5)
    this.isDrum = Array.from(this.u, (_, i) => (this.onDrum[i] as boolean) || (this.onDrum[i + 1] as boolean))
  }

  /** Moves the rim of the drum and returns torque and span tensions. */
  moveRim(rim: number): { torque: number; Ta: number; Tb: number } {
    const { d, h, contact, isDrum, state } = this
    const n = h.length - 1
    const before = this.u
    const shift = rim - this.rim
    // Both anchors move with the drum: away from the pinion at the A end, towards it at the B end.
    const anchor = -rim
    let u = before
    for (let round = 0, changed = true; changed; round++) {
      if (round === MOST_ROUNDS) throw new Error(`the chain finds no rest at a rim of ${rim} m`)
      u = this.linear(state, before, shift, anchor)
      const T = this.tensions(u, anchor)
      changed = false
      for (let i = 0; i < n; i++) {
        const t0 = T[i] as number
        const t1 = T[i + 1] as number
        const pull = t1 - t0
        const limit = ((contact[i] as number) * (t0 + t1)) / 2
        const slid = (u[i] as number) - (before[i] as number) - (isDrum[i] ? -shift : 0)
        if (state[i] === 0 && Math.abs(pull) > limit * (1 + 1e-9)) {
          state[i] = pull > 0 ? 1 : -1
          changed = true
        } else if (state[i] !== 0 && slid * (state[i] as number) < -1e-18) {
          state[i] = 0
          changed = true
        }
      }
    }
    this.u = u
    this.rim = rim
    const T = this.tensions(u, anchor)
    const perDrum = (h.length - 2) / 3
    const Ta = T[perDrum] as number
    const Tb = T[2 * perDrum + 1] as number
    return { torque: d.drumRadius * (Ta - Tb), Ta, Tb }
  }

  private tensions(u: Float64Array, anchor: number): Float64Array {
    const n = u.length
    const { pretension, axialRigidity } = this.d
    const T = new Float64Array(n + 1)
    for (let i = 0; i <= n; i++) {
      const left = i === 0 ? anchor : (u[i - 1] as number)
      const right = i === n ? anchor : (u[i] as number)
      T[i] = pretension + (axialRigidity * (right - left)) / (this.h[i] as number)
    }
    return T
  }

  private linear(state: Int8Array, before: Float64Array, shift: number, anchor: number): Float64Array {
    const { contact, isDrum } = this
    const n = before.length
    const EA = this.d.axialRigidity
    const T0 = this.d.pretension
    const a = new Float64Array(n)
    const b = new Float64Array(n)
    const c = new Float64Array(n)
    const r = new Float64Array(n)
    for (let i = 0; i < n; i++) {
      if (state[i] === 0 && (contact[i] as number) > 0) {
        b[i] = 1
        r[i] = (before[i] as number) + (isDrum[i] ? -shift : 0)
        continue
      }
      // T1 (1 − s m/2) = T0 (1 + s m/2): slides towards larger tension.
      const m = ((contact[i] as number) * (state[i] as number)) / 2
      const k0 = ((1 + m) * EA) / (this.h[i] as number)
      const k1 = ((1 - m) * EA) / (this.h[i + 1] as number)
      a[i] = k0
      b[i] = -(k0 + k1)
      c[i] = k1
      r[i] = T0 * (1 + m) - T0 * (1 - m)
      if (i === 0) {
        r[i] = (r[i] as number) - k0 * anchor
        a[i] = 0
      }
      if (i === n - 1) {
        r[i] = (r[i] as number) - k1 * anchor
        c[i] = 0
      }
    }
    for (let i = 1; i < n; i++) {
      const f = (a[i] as number) / (b[i - 1] as number)
      b[i] = (b[i] as number) - f * (c[i - 1] as number)
      r[i] = (r[i] as number) - f * (r[i - 1] as number)
    }
    const u = new Float64Array(n)
    for (let i = n - 1; i >= 0; i--)
      u[i] = ((r[i] as number) - (i < n - 1 ? (c[i] as number) * (u[i + 1] as number) : 0)) / (b[i] as number)
    return u
  }
}
