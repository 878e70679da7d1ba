import { blank, CordLoop } from './cord-loop.js'
import { SLACK_SHARE } from './holding.js'
import type { TravelEnd, TravelPoint } from './travel-point.js'

const TOLERANCE = 1e-13
/** Share of a step at which an end is no longer looked for more closely. */
const FINEST_STEP = 1 / 1024

/** A loop of cord that follows a travel step by step. Mutable, for the simulation only. */
export class Loop extends CordLoop {
  private readonly r = blank()
  /** State that is tried: angles of joint and pinion, span tensions, pinion point at rest. */
  private readonly trial = { q: 0, phi: 0, Ta: 0, Tb: 0, rest: 0 }

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
      else if (size <= FINEST_STEP) return end
      else size /= 2
    }
    return 'followed'
  }

  private unwound(q: number): boolean {
    return this.d.drumWrapTaut + q <= 0 || this.d.drumWrapSlack - q <= 0
  }

  /** A first trial of the next state: the angle that is not given by the ratio, the pull shared by both spans. */
  private guess(angle: number, pull: number): void {
    const { d, pinion, trial } = this
    const byJoint = this.by === 'joint'
    const ratio = d.drumRadius / d.pinionRadius
    trial.q = byJoint ? angle : this.q + (angle - this.phi) / ratio
    trial.phi = byJoint ? this.phi + (angle - this.q) * ratio : angle
    trial.Ta = this.Ta + 0.5 * (pull - (this.Ta - this.Tb))
    trial.Tb = trial.Ta - pull
    if (trial.Ta <= 0 || trial.Tb <= 0) {
      const lift = Math.max(-trial.Ta, -trial.Tb) + 0.01 * d.pretension
      trial.Ta += lift
      trial.Tb += lift
    }
    trial.rest = Math.min(Math.max(0.5 * (pinion.low + pinion.high), trial.phi), this.half + trial.phi)
  }

  private step(angle: number, torque: number): TravelEnd {
    const { d, pinionB, probes, trial } = this
    const pull = torque / d.drumRadius
    this.guess(angle, pull)
    if (this.unwound(trial.q)) return 'anchorLeavesDrum'
    for (let attempt = 0; attempt < 12; attempt++) {
      const ended = this.iterate(pull)
      if (ended !== 'settled' && ended !== 'open') return ended
      const settled = ended === 'settled'
      if (settled && Math.min(trial.Ta, trial.Tb) < SLACK_SHARE * d.pretension) return 'slackSpan'
      if (pinionB !== undefined) {
        if (!settled) return 'slackSpan'
        break
      }
      const [, pa, , pb] = probes
      if (settled && pa.boundary <= trial.rest && pb.boundary >= trial.rest) break
      // The resting point was swept: another may rest where the two slips leave room. Where they leave none the pinion slides.
      if (pa.boundary >= pb.boundary || attempt === 11) return 'slips'
      trial.rest = 0.5 * (pa.boundary + pb.boundary)
    }
    this.commit(trial.q, trial.phi, trial.Ta, trial.Tb)
    this.torque = torque
    return 'followed'
  }

  /** Finds tension and the angle that is not given from the trial state by Newton's iteration; `open` where it does not settle. */
  private iterate(pull: number): TravelEnd | 'settled' | 'open' {
    const { d, pinion, trial, r } = this
    const byJoint = this.by === 'joint'
    const clamped = this.pinionB !== undefined
    for (let i = 0; i < 60; i++) {
      if (clamped && Math.abs(trial.phi) >= this.half) return 'clampLeavesPinion'
      if (!clamped) trial.rest = Math.min(Math.max(trial.rest, trial.phi, pinion.low), this.half + trial.phi, pinion.high)
      this.residual(trial.q, trial.phi, trial.Ta, trial.Tb, trial.rest, r)
      // The other angle is found along with the tension.
      const aByAngle = byJoint ? r.aByPhi : r.aByQ
      const bByAngle = byJoint ? r.bByPhi : r.bByQ
      const det = r.aByT * bByAngle - r.bByT * aByAngle
      let dT = -(r.a * bByAngle - r.b * aByAngle) / det
      let dAngle = -(r.aByT * r.b - r.bByT * r.a) / det
      const min = Math.min(trial.Ta, trial.Tb)
      // Tension may at most halve in one iteration.
      const damp = dT < -0.5 * min ? (-0.5 * min) / dT : 1
      dT *= damp
      dAngle *= damp
      trial.Ta += dT
      trial.Tb = trial.Ta - pull
      if (byJoint) trial.phi += dAngle
      else trial.q += dAngle
      if (this.unwound(trial.q)) return 'anchorLeavesDrum'
      if (Math.min(trial.Ta, trial.Tb) < 1e-7 * d.pretension) return clamped ? 'slackSpan' : 'slips'
      const size = 1 + Math.abs(byJoint ? trial.phi : trial.q)
      if (Math.abs(dT) <= 1e-10 * trial.Ta && Math.abs(dAngle) <= TOLERANCE * size) return 'settled'
    }
    return 'open'
  }
}
