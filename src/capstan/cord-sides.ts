import { type CordDriveState, RIGID } from './branch.js'
import { Wrap } from './wrap.js'
import { type EndProbe, endProbe } from './wrap-end.js'

/** The cord at one pose: wraps with their memory, and the length that either side gives out at a trial tension. Mutable. */
export class CordSides {
  protected readonly drumA: Wrap
  protected readonly drumB: Wrap
  /** The whole pinion wrap, or with a clamp the half on side A; side B's half is `pinionB`. */
  protected readonly pinion: Wrap
  protected readonly pinionB: Wrap | undefined
  protected readonly probes: [EndProbe, EndProbe, EndProbe, EndProbe] = [endProbe(), endProbe(), endProbe(), endProbe()]
  protected readonly slope = { at: 0 }
  protected Ta: number
  protected Tb: number
  protected windup = 0
  /** Cord given out by side A at the last call of `both`. */
  protected gaveA = 0
  protected slipped = 0
  /** Loose length on either side times the rigidity. */
  protected looseA = 0
  protected looseB = 0
  /** Spans with their tensioners, and the compliance of the frame, as lengths of cord. */
  protected readonly spanA: number
  protected readonly spanB: number
  protected readonly sum: number
  protected readonly difference: number

  constructor(protected readonly d: CordDriveState) {
    const muDrum = d.drumFriction ?? d.friction
    this.drumA = new Wrap(0, d.drumWrapTaut, d.pretension, muDrum)
    this.drumB = new Wrap(0, d.drumWrapSlack, d.pretension, muDrum)
    const clamped = d.hold === 'clampedMidPinion'
    this.pinion = new Wrap(0, clamped ? d.pinionWrap / 2 : d.pinionWrap, d.pretension, d.friction)
    this.pinionB = clamped ? new Wrap(0, d.pinionWrap / 2, d.pretension, d.friction) : undefined
    this.Ta = d.pretension
    this.Tb = d.pretension
    const { sum, difference, tautSpan, slackSpan } = d.compliance ?? RIGID
    this.spanA = d.span + d.axialRigidity * tautSpan
    this.spanB = d.span + d.axialRigidity * slackSpan
    this.sum = d.axialRigidity * sum
    this.difference = d.axialRigidity * difference
  }

  /** Cord given out by side A since the last committed state, times the rigidity; its slope is left in `slope`. */
  protected sideA(T: number): number {
    const { d, drumA, pinion, probes } = this
    const [pd, pp] = probes
    drumA.probe(1, drumA.high, T, pd)
    // The clamp of a half wrap, and the resting middle of a whole one, lie at its high end.
    pinion.probe(-1, pinion.low, T, pp)
    this.slope.at = this.spanA + d.drumRadius * pd.slope + d.pinionRadius * pp.slope
    const onDrum = pd.integral - drumA.highIntegral
    const onPinion = pinion.lowIntegral - pp.integral
    return this.spanA * (T - this.Ta) + d.drumRadius * onDrum + d.pinionRadius * onPinion
  }

  protected sideB(T: number): number {
    const { d, drumB, probes } = this
    const [, , pd, pp] = probes
    drumB.probe(1, drumB.high, T, pd)
    const wrap = this.pinionB ?? this.pinion
    const outward = this.pinionB === undefined ? 1 : -1
    wrap.probe(outward, outward > 0 ? wrap.high : wrap.low, T, pp)
    this.slope.at = this.spanB + d.drumRadius * pd.slope + d.pinionRadius * pp.slope
    const onPinion = outward > 0 ? pp.integral - wrap.highIntegral : wrap.lowIntegral - pp.integral
    return this.spanB * (T - this.Tb) + d.drumRadius * (pd.integral - drumB.highIntegral) + d.pinionRadius * onPinion
  }

  protected both(Ta: number, Tb: number): number {
    this.gaveA = this.sideA(Ta)
    const slopeA = this.slope.at
    const b = this.sideB(Tb)
    this.slope.at += slopeA + 4 * this.sum
    return this.gaveA + b + 2 * this.sum * (Ta - this.Ta + Tb - this.Tb)
  }

  /** Cord that side A gains as the frame deflects, times the rigidity, since the last committed state. */
  protected frameA(Ta: number, Tb: number): number {
    return this.sum * (Ta - this.Ta + Tb - this.Tb) + this.difference * (Ta - this.Ta - Tb + this.Tb)
  }

  /** Whether the slip of the two ends has met: the pinion slides as a whole. */
  protected slides(): boolean {
    const [, a, , b] = this.probes
    return this.pinionB === undefined && (a.through || b.through || (a.sense !== 0 && b.sense !== 0 && a.boundary >= b.boundary))
  }

  protected commit(): void {
    const { drumA, drumB, pinion, pinionB, probes } = this
    drumA.commit(1, drumA.high, this.Ta, probes[0])
    drumB.commit(1, drumB.high, this.Tb, probes[2])
    pinion.commit(-1, pinion.low, this.Ta, probes[1])
    if (pinionB === undefined) pinion.commit(1, pinion.high, this.Tb, probes[3])
    else pinionB.commit(-1, pinionB.low, this.Tb, probes[3])
  }
}
