import { KNEE_BACKWARD, LegKernel, REACHED } from '../../../kinematics/index.js'
import { springTorqueAt } from '../springs/law.js'
import { clean, JointLoad } from './joint-load.js'
import { linkDynamics } from './link-dynamics.js'
import { SidewaysLoad } from './sideways-load.js'
import { footPathOf, type Moment, momentsOf, rowsOf, type StrideInput, uprightForces } from './stride-moments.js'
import type { ThroughDrive } from './through-drive.js'
import { throughDriveOf } from './through-drive-of.js'

/** Lowest and highest traction: a torque is linear in the force along the ground, so its worst is at one of them. */
const ENDS = 2
/** Forces across the walk, over the upright one, of a leg that walks straight. */
const STRAIGHT = [0] as const

const angles = new Float64Array(3)
const rates = new Float64Array(3)
const accelerations = new Float64Array(3)
/** Joint torques of weight and inertia of the links, and with the force of the ground on the foot. */
const own = new Float64Array(3)
const torques = new Float64Array(3)
const jacobian = new Float64Array(9)
const state = new Float64Array(9)
const velocity = state.subarray(3, 6)
const acceleration = state.subarray(6, 9)
/** Joint torques less those of the springs beside the drives. */
const held = new Float64Array(3)

/** Adds to the torques of the links what joint torques hold against a force of the ground on the foot, which is linear in it. */
function underForce(along: number, across: number, upright: number): void {
  for (let j = 0; j < 3; j++) torques[j] = own[j]! - (jacobian[j]! * along + jacobian[j + 3]! * across + jacobian[j + 6]! * upright)
}

/** A leg in the moments of a stride, and the largest of what its parts bear. */
class Stride {
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
  hardest = { torque: -1, phase: 0.5, hip: 0, knee: 0 }
  readonly #kernel: LegKernel
  readonly #links: ReturnType<typeof linkDynamics>
  readonly #airborne: readonly number[]
  /** Whether springs bear part of what the joints hold. The drives then also hold the leg with its foot lifted, in one more way. */
  readonly #sprung: boolean

  constructor(readonly x: StrideInput) {
    const rows = rowsOf(x)
    this.#airborne = new Array<number>(rows).fill(0)
    this.#sprung = x.hipSpring !== undefined || x.kneeSpring !== undefined
    const load = () => new JointLoad(ENDS * rows + (this.#sprung ? 1 : 0))
    ;[this.hip, this.knee] = [load(), load()]
    this.#kernel = new LegKernel(x.hipOffset, x.upperLink, x.lowerLink)
    this.#links = linkDynamics(x, x.gravity)
    this.through = throughDriveOf(x)
    ;[this.hipDrum, this.kneeDrum] = this.through === undefined && !this.#sprung ? [this.hip, this.knee] : [load(), load()]
    const { moving, turns, period, moments } = momentsOf(x)
    const path = moving ? footPathOf(x, period).si : undefined
    if (path === undefined) state.fill(0).set([0, x.hipOffset, -x.height])
    for (const moment of moments) {
      path?.stateInto(state, 0, moment.time)
      this.#take(moment, turns)
    }
  }

  /** Takes the moment with the foot at `state`. */
  #take(moment: Moment, turns: boolean): void {
    if (!this.#pose(turns)) {
      this.reached = false
      return
    }
    const { x } = this
    this.#links.torqueInto(own, 0, angles, rates, accelerations, 0, 0, 0)
    this.#kernel.jacobianInto(jacobian, 0, angles[0]!, angles[1]!, angles[2]!)
    const forces = moment.stands ? uprightForces(x, moment.phase) : this.#airborne
    for (let row = 0; row < forces.length; row++) {
      const force = forces[row]!
      this.#bear(ENDS * row, x.tractionLowest * force, force, moment)
      this.#bear(ENDS * row + 1, x.tractionHighest * force, force, moment)
      this.vertical = Math.max(this.vertical, force)
      this.across.take(x, force, angles[2]!)
    }
    if (this.#sprung) this.#bear(ENDS * forces.length, 0, 0, moment)
    this.hip.turn(angles[1]!, rates[1]!, moment.stands)
    this.knee.turn(angles[2]!, rates[2]!, moment.stands)
    if (this.hipDrum !== this.hip) {
      this.hipDrum.turn(angles[1]!, rates[1]!, moment.stands)
      this.kneeDrum.turn(this.through?.angle ?? angles[2]!, this.through?.rate ?? rates[2]!, moment.stands)
    }
    this.durations.push(moment.lasts)
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

  /** The torques under a force of the ground on the foot, with the largest about the sideways-hip axis. */
  #hold(along: number, across: number, upright: number): void {
    underForce(along, across, upright)
    this.sideways = Math.max(this.sideways, Math.abs(clean(torques[0]!)))
  }

  /** Takes the torques under a force of the ground on a foot of one row, at one end of the traction. */
  #bear(way: number, along: number, force: number, { stands, phase }: Moment): void {
    const { x } = this
    for (const across of x.lateral > 0 ? [-x.lateral, x.lateral, 0] : STRAIGHT) this.#hold(along, across * force, force)
    const [hip, knee] = [torques[1]!, torques[2]!]
    const [atHip, atKnee] = [accelerations[1]!, accelerations[2]!]
    this.hip.bear(way, hip, hip + (x.hipRotorInertia + x.kneeRotorAtHip) * atHip + x.rotorCoupling * atKnee)
    this.knee.bear(way, knee, knee + x.rotorCoupling * atHip + x.kneeRotorInertia * atKnee)
    if (this.hipDrum !== this.hip) this.#drive(way, along, force)
    const largest = Math.max(Math.abs(hip), Math.abs(knee))
    if (stands && largest > this.hardest.torque) this.hardest = { torque: largest, phase, hip: angles[1]!, knee: angles[2]! }
  }

  /** Takes what the drives hold: the torques of the joints less those of springs, at the drums. */
  #drive(way: number, along: number, force: number): void {
    const { x, through } = this
    held[1] = torques[1]! - springTorqueAt(x.hipSpring, angles[1]!)
    held[2] = torques[2]! - springTorqueAt(x.kneeSpring, angles[2]!)
    if (through === undefined) {
      const [atHip, atKnee] = [accelerations[1]!, accelerations[2]!]
      this.hipDrum.bear(way, held[1]!, held[1]! + (x.hipRotorInertia + x.kneeRotorAtHip) * atHip + x.rotorCoupling * atKnee)
      this.kneeDrum.bear(way, held[2]!, held[2]! + x.rotorCoupling * atHip + x.kneeRotorInertia * atKnee)
      return
    }
    through.load(angles, rates, accelerations, held, along, force)
    this.hipDrum.bear(way, through.hip.torque, through.hip.shaftTorque)
    this.kneeDrum.bear(way, through.knee.torque, through.knee.shaftTorque)
  }
}

/** Forces and torques of a leg over a stride. */
export const strideLoadsOf = (x: StrideInput) => {
  const { hip, knee, hipDrum, kneeDrum, through, durations, vertical, across, hardest, ...found } = new Stride(x)
  return {
    vertical,
    forward: Math.hypot(Math.max(Math.abs(x.tractionLowest), Math.abs(x.tractionHighest)), x.lateral) * vertical,
    sidewaysTorque: found.sideways,
    farthest: found.farthest,
    reached: found.reached ? ('yes' as const) : ('no' as const),
    hipTorque: hip.torque,
    hipShaftTorque: hip.shaftTorque,
    hipShaftRms: hip.rms(durations),
    hipSpeed: hip.speed,
    hipLoadedSpeed: hip.loadedSpeed,
    hipLowest: hip.lowest,
    hipHighest: hip.highest,
    kneeTorque: knee.torque,
    kneeShaftTorque: knee.shaftTorque,
    kneeShaftRms: knee.rms(durations),
    kneeSpeed: knee.speed,
    kneeLoadedSpeed: knee.loadedSpeed,
    kneeLowest: knee.lowest,
    kneeHighest: knee.highest,
    hipDriveTorque: hipDrum.torque,
    hipDriveShaftTorque: hipDrum.shaftTorque,
    hipDriveShaftRms: hipDrum.rms(durations),
    kneeDriveTorque: kneeDrum.torque,
    kneeDriveShaftTorque: kneeDrum.shaftTorque,
    kneeDriveShaftRms: kneeDrum.rms(durations),
    kneeDriveSpeed: kneeDrum.speed,
    kneeDriveLoadedSpeed: kneeDrum.loadedSpeed,
    kneeDriveLowest: kneeDrum.lowest,
    kneeDriveHighest: kneeDrum.highest,
    kneeHeldTorque: through?.held ?? knee.torque,
    rodPull: through?.pull ?? 0,
    rodPush: through?.push ?? 0,
    kneePin: through?.pin ?? 0,
    lateralForce: across.force,
    upperSidewaysMoment: across.bending,
    upperTwist: across.twist,
    kneeCouple: across.knee,
    hipCouple: across.hip,
    kneeDriven: through === undefined || through.drives ? ('yes' as const) : ('no' as const),
    hardestPhase: hardest.phase,
    hardestHip: hardest.hip,
    hardestKnee: hardest.knee,
  }
}
