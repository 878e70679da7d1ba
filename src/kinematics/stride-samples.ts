import { NoResultError } from '../formula/index.js'
import { InputError, Quantity } from '../units/index.js'
import type { DriveCoupling } from './coupling.js'
import type { FootPath } from './foot-path.js'
import type { ThreeJointLeg } from './leg.js'
import type { LegDynamics } from './leg-dynamics.js'
import { REACHED } from './leg-geometry-kernel.js'
import { withinTurns } from './leg-nearest.js'

/** Force of the ground on the foot, N, at a part of the stance (0 touch-down, 1 lift-off), for a foot at a place in the leg's frame: writes x, y, z. */
export type GroundReactionSi = (out: Float64Array, stancePhase: number, foot: Float64Array) => void

/** Where along the stride a leg cannot follow. */
export interface StrideFailure {
  /** Time after touch-down, s. */
  readonly timeSi: number
  readonly reason: 'unreachable' | 'jointLimits' | 'singular' | 'driveApart'
  /** The foot wanted there, m. */
  readonly foot: readonly [number, number, number]
}

/** One stride in numbers: columns of SI values, three to a sample (sideways hip, hip, knee) unless said otherwise. */
export interface StrideSamples {
  readonly count: number
  /** Time after touch-down (one a sample). */
  readonly time: Float64Array
  /** Time a sample stands for; zero for the ends of stance and swing, which count for peaks only (one a sample). */
  readonly weight: Float64Array
  /** 1 in stance, 0 in swing (one a sample). */
  readonly stance: Uint8Array
  /** Foot position x, y, z. */
  readonly foot: Float64Array
  readonly footVelocity: Float64Array
  /** Force of the ground on the foot x, y, z. */
  readonly groundReaction: Float64Array
  readonly jointAngle: Float64Array
  readonly jointRate: Float64Array
  readonly jointAcceleration: Float64Array
  readonly jointTorque: Float64Array
  readonly actuatorRate: Float64Array
  readonly actuatorAcceleration: Float64Array
  readonly actuatorTorque: Float64Array
}

/** What a stride is sampled from. */
export interface StrideInputs {
  readonly leg: ThreeJointLeg
  readonly path: FootPath
  readonly branch: number
  readonly dynamics?: LegDynamics | undefined
  readonly coupling: DriveCoupling
  readonly groundReaction: GroundReactionSi
  readonly samples: number
}

const JUST_INSIDE = 1e-9
const allFinite = (column: Float64Array, at: number) => Number.isFinite(column[at]! + column[at + 1]! + column[at + 2]!)

/** Times and weights: midpoints of equal cells within stance and within swing, and both ends of each with no weight. */
function sampleTimes(path: FootPath, samples: number): { time: number[]; weight: number[] } {
  const time: number[] = []
  const weight: number[] = []
  const stance = path.si.stanceTime
  const period = path.si.period
  for (const [from, to] of [
    [0, stance],
    [stance, period],
  ] as const) {
    const length = to - from
    if (length <= 0) continue
    const cells = Math.max(8, Math.round((samples * length) / period))
    const put = (t: number, w: number) => {
      time.push(t)
      weight.push(w)
    }
    put(from + length * JUST_INSIDE, 0)
    for (let i = 0; i < cells; i++) put(from + (length * (i + 0.5)) / cells, length / cells)
    put(to - length * JUST_INSIDE, 0)
  }
  return { time, weight }
}

/** Follows a foot path with a leg: joint and actuator motion and torque at each sample, or where the leg cannot follow. */
export function sampleStride({
  leg,
  path,
  branch,
  dynamics,
  coupling,
  groundReaction,
  samples,
}: StrideInputs): StrideSamples | StrideFailure {
  const { time, weight } = sampleTimes(path, samples)
  const count = time.length
  const column = () => new Float64Array(3 * count)
  const result = {
    count,
    time: Float64Array.from(time),
    weight: Float64Array.from(weight),
    stance: new Uint8Array(count),
    foot: column(),
    footVelocity: column(),
    groundReaction: column(),
    jointAngle: column(),
    jointRate: column(),
    jointAcceleration: column(),
    jointTorque: column(),
    actuatorRate: column(),
    actuatorAcceleration: column(),
    actuatorTorque: column(),
  }
  const state = new Float64Array(9)
  const position = state.subarray(0, 3)
  const velocity = state.subarray(3, 6)
  const acceleration = state.subarray(6, 9)
  const q = new Float64Array(3)
  const w = new Float64Array(3)
  const a = new Float64Array(3)
  const force = new Float64Array(3)
  const torque = new Float64Array(3)
  for (let i = 0; i < count; i++) {
    const at = 3 * i
    const t = time[i]!
    const stands = path.si.stateInto(state, 0, t)
    const fail = (reason: StrideFailure['reason']): StrideFailure => ({ timeSi: t, reason, foot: [state[0]!, state[1]!, state[2]!] })
    if (leg.si.jointAnglesInto(q, 0, state[0]!, state[1]!, state[2]!, branch) !== REACHED) return fail('unreachable')
    for (let j = 0; j < 3; j++) {
      q[j] = withinTurns(q[j]!, leg.limitsSi[2 * j]!, leg.limitsSi[2 * j + 1]!)
      if (Number.isNaN(q[j])) return fail('jointLimits')
    }
    if (leg.si.singularityAt(q) !== 0) return fail('singular')
    if (!coupling.si.assemblesAt(q[2]!)) return fail('driveApart')
    leg.si.jointRatesInto(w, 0, q, velocity)
    leg.si.jointAccelerationsInto(a, 0, q, w, acceleration)
    force.fill(0)
    if (stands) groundReaction(force, Math.min(1, Math.max(0, t / path.si.stanceTime)), position)
    if (!force.every(Number.isFinite))
      throw new InputError('kinematics.strideDemand', [
        {
          path: 'groundReactionSi',
          given: `[${Array.from(force).join(', ')}] N at ${new Quantity(t, 'time')}`,
          accepts: 'must write three finite numbers',
        },
      ])
    if (dynamics === undefined) leg.si.torqueFromFootPushInto(torque, 0, q[0]!, q[1]!, q[2]!, -force[0]!, -force[1]!, -force[2]!)
    else dynamics.si.torqueInto(torque, 0, q, w, a, force[0]!, force[1]!, force[2]!)
    result.stance[i] = stands ? 1 : 0
    result.foot.set(position, at)
    result.footVelocity.set(velocity, at)
    result.groundReaction.set(force, at)
    result.jointAngle.set(q, at)
    result.jointRate.set(w, at)
    result.jointAcceleration.set(a, at)
    result.jointTorque.set(torque, at)
    coupling.si.actuatorRatesInto(result.actuatorRate, at, q, w)
    coupling.si.actuatorAccelerationsInto(result.actuatorAcceleration, at, q, w, a)
    coupling.si.actuatorTorquesInto(result.actuatorTorque, at, q, torque)
    if (!allFinite(result.actuatorTorque, at) || !allFinite(result.actuatorAcceleration, at) || !allFinite(result.actuatorRate, at))
      throw new NoResultError(`kinematics.strideDemand: torque or motion of a drum is not a finite number at ${new Quantity(t, 'time')}`)
  }
  return result
}
