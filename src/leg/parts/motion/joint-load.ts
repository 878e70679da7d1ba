import { rmsTorque } from '../../../thermal/index.js'

/** Torques below this are rounding errors and count as zero. */
export const clean = (torque: number): number => (Math.abs(torque) < 1e-12 ? 0 : torque)

/** The way of a moment that the largest values alone count. */
export const MOMENTARY = -1

/** Loads of a joint, or of the drum of its drive, over a stride. */
export class JointLoad {
  /** Of largest magnitude, with its sign: without and with the inertia of the rotor. */
  torque = 0
  shaftTorque = 0
  speed = 0
  loadedSpeed = 0
  lowest = Number.POSITIVE_INFINITY
  highest = Number.NEGATIVE_INFINITY
  /** Motor torques moment by moment, of each way in which the leg may be loaded. */
  readonly #shaft: number[][]
  /** Torques, rate and angle of the last moment. */
  readonly #last = { torque: 0, shaftTorque: 0, rate: 0, angle: 0 }

  constructor(ways: number) {
    this.#shaft = []
    for (let way = 0; way < ways; way++) this.#shaft.push([])
  }

  /** Takes the torques of one moment, loaded in one of the ways; `MOMENTARY` for one that has no part in the mean. */
  bear(way: number, torque: number, shaftTorque: number): void {
    const held = clean(torque)
    const turned = clean(shaftTorque)
    if (Math.abs(held) > Math.abs(this.torque)) this.torque = held
    if (Math.abs(turned) > Math.abs(this.shaftTorque)) this.shaftTorque = turned
    if (way !== MOMENTARY) this.#shaft[way]!.push(turned)
    this.#last.torque = held
    this.#last.shaftTorque = turned
  }

  /** Takes angle and rate of one moment. */
  turn(angle: number, rate: number, loaded: boolean): void {
    const speed = Math.abs(rate)
    if (speed > this.speed) this.speed = speed
    if (loaded && speed > this.loadedSpeed) this.loadedSpeed = speed
    if (angle < this.lowest) this.lowest = angle
    if (angle > this.highest) this.highest = angle
    this.#last.rate = rate
    this.#last.angle = angle
  }

  /** Torques, rate and angle of the last moment, each of either sign: what is sought is the largest of each. */
  now(): readonly number[] {
    const { torque, shaftTorque, rate, angle } = this.#last
    return [torque, -torque, shaftTorque, -shaftTorque, rate, -rate, angle, -angle]
  }

  /** The largest so far of one of them. */
  most(quantity: number): number {
    if (quantity < 2) return Math.abs(this.torque)
    if (quantity < 4) return Math.abs(this.shaftTorque)
    if (quantity < 6) return this.speed
    return quantity === 6 ? this.highest : -this.lowest
  }

  /** Root mean square of the motor torques over moments that last so long, loaded in the worst way. */
  rms(durations: readonly number[]): number {
    if (durations.length === 0) return 0
    let largest = 0
    for (const torques of this.#shaft)
      largest = Math.max(largest, rmsTorque.si({ torques, durations, windingTimeConstant: undefined }).torque)
    return largest
  }
}
