import type { CordDriveState } from './branch.js'
import { Wrap } from './wrap.js'
import { type EndProbe, endProbe } from './wrap-end.js'

/** The loop of cord at one moment of a travel: wraps with their memory, span tensions, angles, and what is out of balance in a trial state. Mutable. */
export class CordLoop {
  protected readonly drumA: Wrap
  protected readonly drumB: Wrap
  protected readonly pinion: Wrap
  protected readonly pinionB: Wrap | undefined
  protected readonly probes: [EndProbe, EndProbe, EndProbe, EndProbe] = [endProbe(), endProbe(), endProbe(), endProbe()]
  protected readonly half: number
  protected Ta: number
  protected Tb: number
  protected q = 0
  protected phi = 0
  protected torque = 0
  protected peak: number
  protected least: number
  leastDrumWrap: number
  /** Pinion angles between which every point has rested since the last point. */
  protected restLow: number
  protected restHigh: number

  constructor(
    protected readonly d: CordDriveState,
    protected readonly by: 'joint' | 'motor',
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

  /** Change of unstretched length (times rigidity) on either side of a resting pinion point, and its slopes. */
  protected residual(q: number, phi: number, Ta: number, Tb: number, rest: number, out: Residual): void {
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
  protected lineArea(probe: EndProbe, at: number, side: 1 | -1): number {
    const mu = this.d.friction
    const Tb = Math.exp(probe.boundaryLog)
    const T = Math.exp(probe.boundaryLog + probe.sense * mu * side * (probe.boundary - at))
    return probe.sense === 0 ? Tb * Math.abs(probe.boundary - at) : Math.abs(T - Tb) / mu
  }

  protected commit(q: number, phi: number, Ta: number, Tb: number): void {
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

/** Change of unstretched length (times rigidity) on either side, and its slopes. */
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

/** A record for `residual` to fill. */
export const blank = (): Residual => ({ a: 0, b: 0, aByT: 0, bByT: 0, aByPhi: 0, bByPhi: 0, aByQ: 0, bByQ: 0 })
