import { drumTorques, kneeDrumMotion } from '../../../kinematics/index.js'
import { clean } from './joint-load.js'
import type { DrumLoad, Rotors, ThroughDrive } from './through-drive.js'

/** Belt or cord from a pulley on the hip axis to the knee. */
export interface KneePulleys {
  /** Turns of the pulley on the hip axis for one of the knee, negative for a crossed cord. */
  readonly ratio: number
  /** Efficiency between them. */
  readonly efficiency: number
}

/** A knee that belt or cord drives from a pulley on the hip axis, its motor on the body: what the drums of hip and knee bear, moment by moment. */
export class PulleyDrive implements ThroughDrive {
  readonly hip: DrumLoad = { torque: 0, shaftTorque: 0 }
  readonly knee: DrumLoad = { torque: 0, shaftTorque: 0 }
  angle = 0
  rate = 0
  readonly pull = 0
  readonly push = 0
  readonly pin = 0
  readonly drives = true
  held = 0
  readonly #pulleys: KneePulleys
  readonly #rotors: Rotors

  constructor(pulleys: KneePulleys, rotors: Rotors) {
    this.#pulleys = pulleys
    this.#rotors = rotors
  }

  load(angles: ArrayLike<number>, rates: ArrayLike<number>, accelerations: ArrayLike<number>, torques: ArrayLike<number>): void {
    const { ratio: kneeRatio, efficiency } = this.#pulleys
    const [hipTorque, kneeTorque] = [torques[1] as number, torques[2] as number]
    if (Math.abs(kneeTorque) > Math.abs(this.held)) this.held = clean(kneeTorque)
    const heldWith = (torque: number) => drumTorques.si({ motorOn: 'body', kneeRatio, hipTorque, kneeTorque: torque })
    // Friction of the second stage takes from the knee's drum while it drives and from the knee while it is driven back; it reacts on the hip's drum.
    const [driving, driven] = [heldWith(kneeTorque / efficiency), heldWith(kneeTorque * efficiency)]
    const { rate, acceleration } = kneeDrumMotion.si({
      motorOn: 'body',
      kneeRatio,
      ratioSlope: 0,
      hipRate: rates[1] as number,
      kneeRate: rates[2] as number,
      hipAcceleration: accelerations[1] as number,
      kneeAcceleration: accelerations[2] as number,
    })
    this.angle = (angles[1] as number) + kneeRatio * (angles[2] as number)
    this.rate = rate
    this.hip.torque = Math.abs(driven.hip) > Math.abs(driving.hip) ? driven.hip : driving.hip
    this.hip.shaftTorque = this.hip.torque + this.#rotors.hipRotorInertia * (accelerations[1] as number)
    this.knee.torque = driving.knee
    this.knee.shaftTorque = driving.knee + this.#rotors.kneeRotorInertia * acceleration
  }
}
