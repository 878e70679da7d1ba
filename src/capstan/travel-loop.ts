import type { CordDriveState } from './branch.js'
import { SLACK_SHARE } from './holding.js'
import type { TravelEnd, TravelPoint } from './travel-point.js'
import { Wrap } from './wrap.js'
import { type EndProbe, endProbe } from './wrap-end.js'

const TOLERANCE = 1e-13
/** Share of a step at which an end is no longer looked for more closely. */
const FINEST = 1 / 1024

/** The whole loop at one moment of a travel: wraps with their memory, span tensions, angles. Mutable, for the simulation only. */
export class Loop {
  private readonly drumA: Wrap
  private readonly drumB: Wrap
  private readonly pinion: Wrap
  private readonly pinionB: Wrap | undefined
  private readonly probes: [EndProbe, EndProbe, EndProbe, EndProbe] = [endProbe(), endProbe(), endProbe(), endProbe()]
  private readonly half: number
  private Ta: number
  private Tb: number
  private q = 0
  private phi = 0
  private torque = 0
  private peak: number
  private least: number
  leastDrumWrap: number
  /** Pinion angles between which every point has rested since the last point. */
  private restLow: number
  private restHigh: number

  constructor(
    private readonly d: CordDriveState,
    private readonly by: 'joint' | 'motor',
  ) {
    const muDrum = d.drumFriction ?? d.friction
    this.drumA = new Wrap(0, d.drumWrapTaut, d.pretension, muDrum)
    this.drumB = new Wrap(0, d.drumWrapSlack, d.pretension, muDrum)
    const clamped = d.hold === 'clampedMidPinion'
    this.half = clamped ? d.pinionWrap / 2 : d.pinionWrap
    this.pinion = new Wrap(0, this.half, d.pretension, d.friction)
    this.pinionB = clamped ? new Wrap(0, this.half, d.pretension, d.friction) : undefined
    this.Ta = d.pretension
    this.Tb = d.pretension
    this.peak = d.pretension
    this.least = d.pretension
    this.leastDrumWrap = Math.min(d.drumWrapTaut, d.drumWrapSlack)
    this.restLow = 0
    this.restHigh = this.half
  }

  point(): TravelPoint {
    const point = {
      jointAngle: this.q,
      torque: this.torque,
      pinionAngle: this.phi,
      tautTension: this.Ta,
      slackTension: this.Tb,
      peakTension: this.peak,
      leastTension: this.least,
      restLow: this.restLow,
      restHigh: this.restHigh,
    }
    this.restLow = Number.NEGATIVE_INFINITY
    this.restHigh = Number.POSITIVE_INFINITY
    this.peak = Math.max(this.Ta, this.Tb)
    this.least = Math.min(this.Ta, this.Tb)
    return point
  }

  moveTo(angle: number, torque: number, resolution: number): TravelEnd {
    const { d } = this
    const ratio = d.drumRadius / d.pinionRadius
    const scale = this.by === 'joint' ? 1 : ratio
    // Cord that winds on and off the pinion within one step would leave no cord at rest to count from.
    const longest = scale * Math.min(resolution, (0.2 * this.half) / ratio)
    const [angle0, torque0] = [this.by === 'joint' ? this.q : this.phi, this.torque]
    const steps = Math.max(
      1,
      Math.ceil(Math.abs(angle - angle0) / longest),
      Math.ceil(Math.abs(torque - torque0) / (0.1 * d.pretension * d.drumRadius)),
    )
    for (let done = 0, size = 1; done < steps; ) {
      const next = Math.min(steps, done + size)
      const end = this.step(angle0 + ((angle - angle0) * next) / steps, torque0 + ((torque - torque0) * next) / steps)
      if (end === 'followed') {
        done = next
        if (Number.isInteger(done)) size = 1
      }
      // A step may only have been too long for the iteration; and an end must be found where it is, not a step before.
      else if (size <= FINEST) return end
      else size /= 2
    }
    return 'followed'
  }

  /** Change of unstretched length (times rigidity) on either side of a resting pinion point, and its slopes. */
  private residual(q: number, phi: number, Ta: number, Tb: number, rest: number, out: Residual): void {
    const { d, drumA, drumB, pinion, pinionB, probes } = this
    const [a, pa, b, pb] = probes
    const EA = d.axialRigidity
    drumA.probe(1, d.drumWrapTaut + q, Ta, a)
    drumB.probe(1, d.drumWrapSlack - q, Tb, b)
    pinion.probe(-1, phi, Ta, pa)
    // Side B's half behind a clamp is counted from its tangent point at the low end too, and turns the other way.
    if (pinionB === undefined) pinion.probe(1, this.half + phi, Tb, pb)
    else pinionB.probe(-1, -phi, Tb, pb)
    const at = pinionB === undefined ? rest : 0
    const restBefore = pinionB === undefined ? pinion.integralTo(at) : 0
    let restA = restBefore
    let restB = restBefore
    if (pinionB === undefined) {
      // Where a slip line has passed the resting point the point's tension is that line's.
      if (pa.boundary > at) restA = pa.boundaryIntegral - this.lineArea(pa, at, 1)
      if (pb.boundary < at) restB = pb.boundaryIntegral + this.lineArea(pb, at, -1)
    }
    const highA = pinionB === undefined ? restA : pinion.highIntegral
    const stretchA =
      d.span * (Ta - this.Ta) +
      d.drumRadius * (a.integral - drumA.highIntegral) +
      d.pinionRadius * (highA - pa.integral - ((pinionB === undefined ? restBefore : pinion.highIntegral) - pinion.lowIntegral))
    const stretchB =
      d.span * (Tb - this.Tb) +
      d.drumRadius * (b.integral - drumB.highIntegral) +
      d.pinionRadius *
        (pinionB === undefined ? pb.integral - restB - (pinion.highIntegral - restBefore) : pinionB.lowIntegral - pb.integral)
    const turned = EA * d.pinionRadius * (phi - this.phi)
    const wound = EA * d.drumRadius * (q - this.q)
    out.a = wound - turned - stretchA
    out.b = turned - wound - stretchB
    out.aByT = -(d.span + d.drumRadius * a.slope + d.pinionRadius * pa.slope)
    out.bByT = -(d.span + d.drumRadius * b.slope + d.pinionRadius * pb.slope)
    out.aByPhi = -d.pinionRadius * (EA - Ta)
    out.bByPhi = d.pinionRadius * (EA - Tb)
    out.aByQ = d.drumRadius * (EA - Ta)
    out.bByQ = -d.drumRadius * (EA - Tb)
  }

  /** ∫T along a slip line between a resting point that it has passed and its boundary. */
  private lineArea(probe: EndProbe, at: number, side: 1 | -1): number {
    const mu = this.d.friction
    const Tb = Math.exp(probe.boundaryLog)
    const T = Math.exp(probe.boundaryLog + probe.sense * mu * side * (probe.boundary - at))
    return probe.sense === 0 ? Tb * Math.abs(probe.boundary - at) : Math.abs(T - Tb) / mu
  }

  private unwound(q: number): boolean {
    return this.d.drumWrapTaut + q <= 0 || this.d.drumWrapSlack - q <= 0
  }

  private step(angle: number, torque: number): TravelEnd {
    const { d, probes } = this
    const byJoint = this.by === 'joint'
    const ratio = d.drumRadius / d.pinionRadius
    let q = byJoint ? angle : this.q + (angle - this.phi) / ratio
    if (this.unwound(q)) return 'anchorLeavesDrum'
    const pull = torque / d.drumRadius
    let Ta = this.Ta + 0.5 * (pull - (this.Ta - this.Tb))
    let phi = byJoint ? this.phi + (angle - this.q) * ratio : angle
    let Tb = Ta - pull
    if (Ta <= 0 || Tb <= 0) {
      const lift = Math.max(-Ta, -Tb) + 0.01 * d.pretension
      Ta += lift
      Tb += lift
    }
    const low = this.pinion.low
    const high = this.pinion.high
    let rest = Math.min(Math.max(0.5 * (low + high), phi), this.half + phi)
    const r = blank()
    for (let attempt = 0; attempt < 12; attempt++) {
      let settled = false
      for (let i = 0; i < 60; i++) {
        if (this.pinionB !== undefined && Math.abs(phi) >= this.half) return 'clampLeavesPinion'
        if (this.pinionB === undefined) rest = Math.min(Math.max(rest, phi, low), this.half + phi, high)
        this.residual(q, phi, Ta, Tb, rest, r)
        // The other angle is found along with the tension.
        const aByAngle = byJoint ? r.aByPhi : r.aByQ
        const bByAngle = byJoint ? r.bByPhi : r.bByQ
        const det = r.aByT * bByAngle - r.bByT * aByAngle
        let dT = -(r.a * bByAngle - r.b * aByAngle) / det
        let dAngle = -(r.aByT * r.b - r.bByT * r.a) / det
        const least = Math.min(Ta, Tb)
        // Tension may at most halve in one iteration.
        const damp = dT < -0.5 * least ? (-0.5 * least) / dT : 1
        dT *= damp
        dAngle *= damp
        Ta += dT
        Tb = Ta - pull
        if (byJoint) phi += dAngle
        else q += dAngle
        if (this.unwound(q)) return 'anchorLeavesDrum'
        if (Math.min(Ta, Tb) < 1e-7 * d.pretension) return this.pinionB === undefined ? 'slips' : 'slackSpan'
        if (Math.abs(dT) <= 1e-10 * Ta && Math.abs(dAngle) <= TOLERANCE * (1 + Math.abs(byJoint ? phi : q))) {
          settled = true
          break
        }
      }
      if (settled && Math.min(Ta, Tb) < SLACK_SHARE * d.pretension) return 'slackSpan'
      if (this.pinionB !== undefined) {
        if (!settled) return 'slackSpan'
        break
      }
      const [, pa, , pb] = probes
      if (settled && pa.boundary <= rest && pb.boundary >= rest) break
      // The resting point was swept: another may rest where the two slips leave room. Where they leave none the pinion slides.
      if (pa.boundary >= pb.boundary || attempt === 11) return 'slips'
      rest = 0.5 * (pa.boundary + pb.boundary)
    }
    this.commit(q, phi, Ta, Tb)
    this.torque = torque
    return 'followed'
  }

  private commit(q: number, phi: number, Ta: number, Tb: number): void {
    const { d, drumA, drumB, pinion, pinionB, probes } = this
    const [a, pa, b, pb] = probes
    drumA.commit(1, d.drumWrapTaut + q, Ta, a)
    drumB.commit(1, d.drumWrapSlack - q, Tb, b)
    if (pinionB !== undefined) {
      pinion.commit(-1, phi, Ta, pa)
      pinionB.commit(-1, -phi, Tb, pb)
    } else {
      pinion.commit(-1, phi, Ta, pa)
      pinion.commit(1, this.half + phi, Tb, pb)
      this.restLow = Math.max(this.restLow, pa.boundary)
      this.restHigh = Math.min(this.restHigh, pb.boundary)
    }
    this.q = q
    this.phi = phi
    this.Ta = Ta
    this.Tb = Tb
    this.peak = Math.max(this.peak, Ta, Tb)
    this.least = Math.min(this.least, Ta, Tb)
    this.leastDrumWrap = Math.min(this.leastDrumWrap, d.drumWrapTaut + q, d.drumWrapSlack - q)
  }
}

interface Residual {
  a: number
  b: number
  aByT: number
  bByT: number
  aByPhi: number
  bByPhi: number
  aByQ: number
  bByQ: number
}
const blank = (): Residual => ({ a: 0, b: 0, aByT: 0, bByT: 0, aByPhi: 0, bByPhi: 0, aByQ: 0, bByQ: 0 })
