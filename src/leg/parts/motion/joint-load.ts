import { rmsTorque } from '../../../thermal/index.js'

/** Torques below this are rounding errors and count as zero. */
export const clean = (torque: number): number => (Math.abs(torque) < 1e-12 ? 0 : torque)

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

  constructor(ways: number) {
    this.#shaft = []
    for (let way = 0; way < ways; way++) this.#shaft.push([])
  }

  /** Takes the torques of one moment, loaded in one of the ways. */
  bear(way: number, torque: number, shaftTorque: number): void {
    const held = clean(torque)
    const turned = clean(shaftTorque)
    if (Math.abs(held) > Math.abs(this.torque)) this.torque = held
    if (Math.abs(turned) > Math.abs(this.shaftTorque)) this.shaftTorque = turned
    this.#shaft[way]!.push(turned)
  }

  /** Takes angle and rate of one moment. */
  turn(angle: number, rate: number, loaded: boolean): void {
    const speed = Math.abs(rate)
    if (speed > this.speed) this.speed = speed
    if (loaded && speed > this.loadedSpeed) this.loadedSpeed = speed
    if (angle < this.lowest) this.lowest = angle
    if (angle > this.highest) this.highest = angle
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
