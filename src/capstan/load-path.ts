import type { CordDriveState } from './branch.js'
import { CordSides } from './cord-sides.js'
import { checkHistory, checkStep } from './history-limits.js'
import { SLACK_SHARE } from './holding.js'
import type { PathPoint } from './path-point.js'
import { solve } from './tension-root.js'

const MIN_TENSION_SHARE = 1e-9

/**
 * Follows a history of torque (or of angle) at one pose, motor locked, step by step: loading, unloading, reversal, gross slip. The wraps keep
 * their memory of earlier loads. Only the turning points matter, so a step of any length is exact. SI numbers.
 *
 * Steps of torque beyond slip stay at the slip torque; steps of angle slide on at it. Where a span of a clamped cord goes slack the other branch
 * carries alone. The slack cord keeps its memory, and its loose length is taken up again on the way back. Contact points are those of the
 * unloaded drive; `travelPath` lets the pinion turn under the cord.
 * Throws an `InputError` for a drive with a contact stiffness (the memory here is that of cord that sticks rigidly) or without friction, and for
 * angles of a drive with a compliant frame.
 */
export function loadPath(d: CordDriveState, drive: 'torque' | 'angle', steps: ArrayLike<number>): PathPoint[] {
  checkHistory('capstan.loadPath', d, drive === 'angle' ? 'rigidFrame' : 'anyFrame')
  const path = new LoadPath(d)
  const out = new Array<PathPoint>(steps.length)
  for (let i = 0; i < steps.length; i++) {
    const to = checkStep('capstan.loadPath', 'steps', i, steps[i] as number)
    out[i] = drive === 'torque' ? path.toTorque(to) : path.toAngle(to)
  }
  return out
}

/** The cord at one pose, led from load to load. Mutable, for the simulations only. */
export class LoadPath extends CordSides {
  private point(state: PathPoint['state']): PathPoint {
    const { d, Ta, Tb, windup, slipped } = this
    const looseLength = (this.looseA + this.looseB) / d.axialRigidity
    return { torque: d.drumRadius * (Ta - Tb), windup, tautTension: Ta, slackTension: Tb, slipped, looseLength, state }
  }

  toTorque(torque: number): PathPoint {
    const { d, slope } = this
    const pull = torque / d.drumRadius
    const min = MIN_TENSION_SHARE * d.pretension
    const low = Math.max(min, pull + min)
    const slack = this.looseA + this.looseB
    const f = (Ta: number) => this.both(Ta, Ta - pull) + slack
    // Both spans would lose tension at the low end unless the pull alone exceeds the tension of one of them.
    const maybeLoose = slack > 0 || pull > this.Ta || -pull > this.Tb
    if (maybeLoose) {
      const left = f(low)
      if (left > 0)
        return this.pinionB === undefined
          ? this.slide(Math.sign(pull))
          : this.hang(low, low - pull, pull > 0 ? 0 : left, pull > 0 ? left : 0)
    }
    const start = Math.max(low, this.Ta + 0.5 * (pull - (this.Ta - this.Tb)))
    const Ta = solve(f, slope, start, low, Number.POSITIVE_INFINITY)
    f(Ta)
    if (this.slides()) return this.slide(Math.sign(pull))
    return this.hang(Ta, Ta - pull, 0, 0)
  }

  /** Goes to span tensions whose probes are set, with the length that is then loose on either side. */
  private hang(Ta: number, Tb: number, looseA: number, looseB: number): PathPoint {
    this.windup += (this.gaveA + this.frameA(Ta, Tb) + this.looseA - looseA) / (this.d.axialRigidity * this.d.drumRadius)
    this.looseA = looseA
    this.looseB = looseB
    this.Ta = Ta
    this.Tb = Tb
    this.commit()
    return this.point(Math.min(Ta, Tb) < SLACK_SHARE * this.d.pretension ? 'slackSpan' : 'tight')
  }

  toAngle(angle: number): PathPoint {
    const { d, slope } = this
    const wound = (angle - this.windup - this.slipped) * d.drumRadius * d.axialRigidity
    const min = MIN_TENSION_SHARE * d.pretension
    const fa = (T: number) => this.sideA(T) - wound + this.looseA
    const fb = (T: number) => this.sideB(T) + wound + this.looseB
    const left = { a: fa(min), b: fb(min) }
    if (this.pinionB !== undefined || (left.a <= 0 && left.b <= 0)) {
      const Ta = left.a > 0 ? min : solve(fa, slope, this.Ta, min, Number.POSITIVE_INFINITY)
      const Tb = left.b > 0 ? min : solve(fb, slope, this.Tb, min, Number.POSITIVE_INFINITY)
      this.both(Ta, Tb)
      // The angle is the one given, to rounding.
      this.gaveA = wound - this.looseA + Math.max(0, left.a)
      if (!this.slides()) return this.hang(Ta, Tb, Math.max(0, left.a), Math.max(0, left.b))
    }
    this.slide(Math.sign(wound))
    // The pinion slides through the rest of the angle.
    this.slipped = angle - this.windup
    return this.point('slips')
  }

  /** Goes to the state in which the whole pinion slides, side A taut for sign +1. */
  private slide(sign: number): PathPoint {
    const { d, slope } = this
    const grip = Math.exp(sign * d.friction * d.pinionWrap)
    const f = (Ta: number) => {
      const a = this.sideA(Ta)
      const slopeA = slope.at
      const b = this.sideB(Ta / grip)
      slope.at = slopeA + slope.at / grip
      return a + b
    }
    const min = MIN_TENSION_SHARE * d.pretension
    // The ends' slip lines are one line here, so that the drums and spans decide with the pinion's whole integral.
    const pinionBefore = this.pinion.highIntegral - this.pinion.lowIntegral
    const whole = (Ta: number) => {
      const { drumA, drumB, probes } = this
      f(Ta)
      const line = (sign * (Ta - Ta / grip)) / d.friction
      const Tb = Ta / grip
      slope.at =
        this.spanA +
        2 * this.sum +
        (this.spanB + 2 * this.sum) / grip +
        d.drumRadius * (probes[0].slope + probes[2].slope / grip) +
        (d.pinionRadius * sign * (1 - 1 / grip)) / d.friction
      return (
        (this.spanA + 2 * this.sum) * (Ta - this.Ta) +
        (this.spanB + 2 * this.sum) * (Tb - this.Tb) +
        d.drumRadius * (probes[0].integral - drumA.highIntegral + probes[2].integral - drumB.highIntegral) +
        d.pinionRadius * (line - pinionBefore)
      )
    }
    const Ta = solve(whole, slope, Math.max(min, this.Ta), min * Math.max(1, grip), Number.POSITIVE_INFINITY)
    whole(Ta)
    const Tb = Ta / grip
    // Side A's share of the last of the windup: the pinion point that rested longest is where the two slips met.
    const a = this.probes[1]
    const b = this.probes[3]
    const meet = Math.min(
      Math.max(a.through ? b.boundary : b.through ? a.boundary : 0.5 * (a.boundary + b.boundary), this.pinion.low),
      this.pinion.high,
    )
    const onPinion =
      (sign * (Ta - Ta * Math.exp(-sign * d.friction * (meet - this.pinion.low)))) / d.friction -
      (this.pinion.integralTo(meet) - this.pinion.lowIntegral)
    this.windup +=
      (this.spanA * (Ta - this.Ta) +
        this.frameA(Ta, Tb) +
        d.drumRadius * (this.probes[0].integral - this.drumA.highIntegral) +
        d.pinionRadius * onPinion) /
      (d.axialRigidity * d.drumRadius)
    this.drumA.commit(1, this.drumA.high, Ta, this.probes[0])
    this.drumB.commit(1, this.drumB.high, Tb, this.probes[2])
    this.pinion.flatten(Ta, Tb)
    this.Ta = Ta
    this.Tb = Tb
    return this.point('slips')
  }
}
