import { drumTorques, fourBarKneePose, kneeDrumMotion, kneePinForce, rodForce } from '../../../kinematics/index.js'
import { clean } from './joint-load.js'
import type { DrumLoad, Rotors, ThroughDrive } from './through-drive.js'

/** A four-bar between hip and knee, SI. */
export interface Linkage {
  readonly ground: number
  readonly crank: number
  readonly coupler: number
  readonly rocker: number
  readonly rockerAngleAtStraightKnee: number
  readonly crankSide: 'positive' | 'negative'
}

/** A knee that a rod drives from a drum on the hip axis, its motor on the body: what the drums, the rod and the knee pin bear, moment by moment. */
export class RodDrive implements ThroughDrive {
  readonly hip: DrumLoad = { torque: 0, shaftTorque: 0 }
  readonly knee: DrumLoad = { torque: 0, shaftTorque: 0 }
  angle = 0
  rate = 0
  pull = 0
  push = 0
  pin = 0
  drives = true
  held = 0
  readonly #linkage: Linkage
  readonly #rotors: Rotors

  constructor(linkage: Linkage, rotors: Rotors) {
    this.#linkage = linkage
    this.#rotors = rotors
  }

  load(
    angles: ArrayLike<number>,
    rates: ArrayLike<number>,
    accelerations: ArrayLike<number>,
    torques: ArrayLike<number>,
    groundForward: number,
    groundUpward: number,
  ): void {
    const { crank, rocker } = this.#linkage
    const [hipAngle, kneeAngle] = [angles[1] as number, angles[2] as number]
    const { crankAngle, couplerAngle, rockerAngle, ratio, ratioSlope, state } = fourBarKneePose.si({ ...this.#linkage, kneeAngle })
    if (state !== 'drives') {
      this.drives = false
      return
    }
    const [hipTorque, kneeTorque] = [torques[1] as number, torques[2] as number]
    if (Math.abs(kneeTorque) > Math.abs(this.held)) this.held = clean(kneeTorque)
    const held = drumTorques.si({ motorOn: 'body', kneeRatio: ratio, hipTorque, kneeTorque })
    const { rate, acceleration } = kneeDrumMotion.si({
      motorOn: 'body',
      kneeRatio: ratio,
      ratioSlope,
      hipRate: rates[1] as number,
      kneeRate: rates[2] as number,
      hipAcceleration: accelerations[1] as number,
      kneeAcceleration: accelerations[2] as number,
    })
    this.angle = hipAngle + crankAngle
    this.rate = rate
    this.hip.torque = held.hip
    this.hip.shaftTorque = held.hip + this.#rotors.hipRotorInertia * (accelerations[1] as number)
    this.knee.torque = held.knee
    this.knee.shaftTorque = held.knee + this.#rotors.kneeRotorInertia * acceleration
    const { force } = rodForce.si({ kneeTorque, crank, rocker, crankAngle, couplerAngle, rockerAngle })
    this.pull = Math.max(this.pull, force)
    this.push = Math.max(this.push, -force)
    const pin = kneePinForce.si({ groundForward, groundUpward, rodForce: force, hipAngle, couplerAngle })
    this.pin = Math.max(this.pin, pin.force)
  }
}
