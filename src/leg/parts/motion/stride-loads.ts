import { KNEE_BACKWARD, LegKernel, REACHED } from '../../../kinematics/index.js'
import { springTorqueAt } from '../springs/law.js'
import { clean, JointLoad, MOMENTARY } from './joint-load.js'
import { linkDynamics } from './link-dynamics.js'
import { SidewaysLoad } from './sideways-load.js'
import { atOnce, footPathOf, type Moment, momentsOf, rowsOf, type StrideInput, uprightForces } from './stride-moments.js'
import { takeSwingPeaks, type Watched } from './swing-peaks.js'
import type { ThroughDrive } from './through-drive.js'
import { throughDriveOf } from './through-drive-of.js'

/** Lowest and highest traction: a torque is linear in the force along the ground, so its worst is at one of them. */
const ENDS = 2
/** Forces across the walk, over the upright one, of a leg that walks straight. */
const STRAIGHT = [0] as const

const angles = new Float64Array(3)
const rates = new Float64Array(3)
const accelerations = new Float64Array(3)
/** Joint torques of weight and inertia of the links. */
const own = new Float64Array(3)
const jacobian = new Float64Array(9)
const state = new Float64Array(9)
const velocity = state.subarray(3, 6)
const acceleration = state.subarray(6, 9)
/** Joint torques less those of the springs beside the drives. */
const held = new Float64Array(3)

/** Torque of the links about a joint, with what the joint holds against a force of the ground on the foot: that is linear in the force. */
const underForce = (joint: 0 | 1 | 2, along: number, across: number, upright: number): number =>
  own[joint]! - (jacobian[joint]! * along + jacobian[joint + 3]! * across + jacobian[joint + 6]! * upright)

/** A leg in the moments of a stride, and the largest of what its parts bear. */
export class Stride {
  readonly hip: JointLoad
  readonly knee: JointLoad
  readonly hipDrum: JointLoad
  readonly kneeDrum: JointLoad
  readonly through: ThroughDrive | undefined
  readonly durations: number[] = []
  vertical = 0
  sideways = 0
  farthest = 0
  readonly across = new SidewaysLoad()
  reached = true
  readonly hardest = { torque: -1, phase: 0.5, hip: 0, knee: 0 }
  readonly #kernel: LegKernel
  readonly #links: ReturnType<typeof linkDynamics>
  readonly #airborne: readonly number[]
  /** Forces across the walk, over the upright one: none, or as far as it goes to both sides. */
  readonly #across: readonly number[]
  #sidewaysNow = 0
  readonly #sidewaysLoad: Watched = { now: () => [this.#sidewaysNow, -this.#sidewaysNow], most: () => this.sideways }
  /** Whether springs bear part of what the joints hold. The drives then also hold the leg with its foot lifted, in one more way. */
  readonly #sprung: boolean

  constructor(readonly x: StrideInput) {
    const rows = rowsOf(x)
    this.#airborne = new Array<number>(rows).fill(0)
    this.#across = x.lateral > 0 ? [-x.lateral, x.lateral] : STRAIGHT
    this.#sprung = x.hipSpring !== undefined || x.kneeSpring !== undefined
    const load = () => new JointLoad(ENDS * rows + (this.#sprung ? 1 : 0))
    ;[this.hip, this.knee] = [load(), load()]
    this.#kernel = new LegKernel(x.hipOffset, x.upperLink, x.lowerLink)
    this.#links = linkDynamics(x, x.gravity)
    this.through = throughDriveOf(x)
    ;[this.hipDrum, this.kneeDrum] = this.through === undefined && !this.#sprung ? [this.hip, this.knee] : [load(), load()]
    const { moving, turns, stanceTime, period, moments } = momentsOf(x)
    const path = moving ? footPathOf(x, period).si : undefined
    if (path === undefined) state.fill(0).set([0, x.hipOffset, -x.height])
    const take = (moment: Moment) => {
      const { stands, phase, parts } = moment
      const time = stands ? stanceTime : period - stanceTime
      path?.stateInto(state, 0, stands ? phase * time : stanceTime + phase * time)
      this.#take(moment, turns, time / parts)
    }
    // The drum of a hip without a spring does what the hip does.
    const loads = [
      ...new Set([this.hip, this.knee, ...(x.hipSpring === undefined ? [] : [this.hipDrum]), this.kneeDrum]),
      this.#sidewaysLoad,
    ]
    const swing = []
    for (const moment of moments) {
      take(moment)
      if (!moment.stands) swing.push({ phase: moment.phase, values: loads.map((load) => load.now()) })
    }
    // A peak that the leg does not reach is not looked for.
    if (this.reached) takeSwingPeaks(loads, swing, (phase) => take(atOnce(false, phase)))
  }

  /** Takes the moment with the foot at `state`. */
  #take(moment: Moment, turns: boolean, lasts: number): void {
    if (!this.#pose(turns)) {
      this.reached = false
      return
    }
    this.#links.torqueInto(own, 0, angles, rates, accelerations, 0, 0, 0)
    this.#kernel.jacobianInto(jacobian, 0, angles[0]!, angles[1]!, angles[2]!)
    if (moment.stands || lasts > 0) this.#load(moment, lasts > 0)
    // In the air all ways are one, and a moment of no length counts for the largest values alone.
    else this.#bear(MOMENTARY, 0, 0, moment)
    this.hip.turn(angles[1]!, rates[1]!, moment.stands)
    this.knee.turn(angles[2]!, rates[2]!, moment.stands)
    if (this.hipDrum !== this.hip) {
      this.hipDrum.turn(angles[1]!, rates[1]!, moment.stands)
      this.kneeDrum.turn(this.through?.angle ?? angles[2]!, this.through?.rate ?? rates[2]!, moment.stands)
    }
    if (lasts > 0) this.durations.push(lasts)
  }

  /** Takes the torques of a moment, loaded in each way. */
  #load(moment: Moment, lasts: boolean): void {
    const { x } = this
    const forces = moment.stands ? uprightForces(x, moment.phase) : this.#airborne
    const way = (k: number) => (lasts ? k : MOMENTARY)
    let largest = 0
    for (let row = 0; row < forces.length; row++) {
      const force = forces[row]!
      this.#bear(way(ENDS * row), x.tractionLowest * force, force, moment)
      this.#bear(way(ENDS * row + 1), x.tractionHighest * force, force, moment)
      largest = Math.max(largest, force)
    }
    this.vertical = Math.max(this.vertical, largest)
    this.across.take(x, largest, angles[2]!)
    if (this.#sprung) this.#bear(way(ENDS * forces.length), 0, 0, moment)
  }

  /** Angles, rates and accelerations of the joints at `state`; whether the leg reaches it. */
  #pose(turns: boolean): boolean {
    const { x } = this
    const kernel = this.#kernel
    const [px, py, pz] = [state[0]!, state[1]!, state[2]!]
    this.farthest = Math.max(this.farthest, Math.sqrt(Math.max(0, px * px + py * py + pz * pz - x.hipOffset * x.hipOffset)))
    if (kernel.jointAnglesInto(angles, 0, px, py, pz, x.knee === 'backward' ? KNEE_BACKWARD : 0) !== REACHED) return false
    // A stretched leg has no definite speeds; its links are then assumed to stand still.
    if (turns && kernel.singularityAt(angles) === 0) {
      kernel.jointRatesInto(rates, 0, angles, velocity)
      kernel.jointAccelerationsInto(accelerations, 0, angles, rates, acceleration)
    } else {
      rates.fill(0)
      accelerations.fill(0)
    }
    return true
  }

  /** Takes the torques under a force of the ground on a foot of one row, at one end of the traction. */
  #bear(way: number, along: number, force: number, { stands, phase }: Moment): void {
    for (const across of this.#across) {
      this.#sidewaysNow = clean(underForce(0, along, across * force, force))
      this.sideways = Math.max(this.sideways, Math.abs(this.#sidewaysNow))
    }
    const hip = underForce(1, along, 0, force)
    const knee = underForce(2, along, 0, force)
    this.#turnRotors(way, this.hip, this.knee, hip, knee)
    if (this.hipDrum !== this.hip) this.#drive(way, along, force, hip, knee)
    const largest = Math.max(Math.abs(hip), Math.abs(knee))
    const { hardest } = this
    if (!stands || !(largest > hardest.torque)) return
    hardest.torque = largest
    hardest.phase = phase
    hardest.hip = angles[1]!
    hardest.knee = angles[2]!
  }

  /** Takes what the drives hold: the torques of the joints less those of springs, at the drums. */
  #drive(way: number, along: number, force: number, hip: number, knee: number): void {
    const { x, through } = this
    held[1] = hip - springTorqueAt(x.hipSpring, angles[1]!)
    held[2] = knee - springTorqueAt(x.kneeSpring, angles[2]!)
    if (through === undefined) {
      this.#turnRotors(way, this.hipDrum, this.kneeDrum, held[1]!, held[2]!)
      return
    }
    through.load(angles, rates, accelerations, held, along, force)
    this.hipDrum.bear(way, through.hip.torque, through.hip.shaftTorque)
    this.kneeDrum.bear(way, through.knee.torque, through.knee.shaftTorque)
  }

  /** Takes two torques, which also turn the rotors of motors that sit on body and upper link. */
  #turnRotors(way: number, hipLoad: JointLoad, kneeLoad: JointLoad, hip: number, knee: number): void {
    const { hipRotorInertia, kneeRotorAtHip, rotorCoupling, kneeRotorInertia } = this.x
    const atHip = accelerations[1]!
    const atKnee = accelerations[2]!
    hipLoad.bear(way, hip, hip + (hipRotorInertia + kneeRotorAtHip) * atHip + rotorCoupling * atKnee)
    kneeLoad.bear(way, knee, knee + rotorCoupling * atHip + kneeRotorInertia * atKnee)
  }
}
