import { NoResultError } from '../formula/index.js'
import { InputError, Quantity } from '../units/index.js'
import type { DriveCoupling } from './coupling.js'
import type { FootPath } from './foot-path.js'
import type { ThreeJointLeg } from './leg.js'
import type { LegDynamicsKernel } from './leg-dynamics-kernel.js'
import { REACHED } from './leg-geometry-kernel.js'
import { withinTurns } from './leg-limits.js'

/** Force of the ground on the foot, N, at a part of the stance (0 touch-down, 1 lift-off), for a foot at a place in the leg's frame: writes x, y, z. */
export type GroundReactionSi = (out: Float64Array, stancePhase: number, foot: Float64Array) => void

/** Torque of springs in parallel with the drives, N m, on the joints at given angles (rad): writes sideways hip, hip, knee. Positive the way the angle grows. */
export type ParallelTorqueSi = (out: Float64Array, jointAngles: Float64Array) => void

/** Where along the stride a leg cannot follow. */
export interface StrideFailure {
  /** Time after touch-down, s. */
  readonly timeSi: number
  readonly reason: 'unreachable' | 'jointLimits' | 'singular' | 'driveApart'
  /** Target of the foot there, m. */
  readonly foot: readonly [number, number, number]
}

/** A leg, its foot path and its load. */
export interface StrideInputs {
  readonly leg: ThreeJointLeg
  readonly path: FootPath
  readonly branch: number
  /** Dynamics of the links without rotors. Default: the leg is weightless. */
  readonly dynamics?: LegDynamicsKernel | undefined
  readonly coupling: DriveCoupling
  readonly groundReaction: GroundReactionSi
  /** Springs in parallel with the drives: the drums hold what they do not. Default: none. */
  readonly parallelTorque?: ParallelTorqueSi | undefined
}

/** Vectors of one moment, in the order in which a row holds them after time, weight and stance. */
export const ROW_VECTORS = [
  'foot',
  'footVelocity',
  'footAcceleration',
  'groundReaction',
  'jointAngle',
  'jointRate',
  'jointAcceleration',
  'jointTorque',
  'actuatorAngle',
  'actuatorRate',
  'actuatorAcceleration',
  'actuatorTorque',
] as const

/** The place of a vector in a row. */
export const at = (name: (typeof ROW_VECTORS)[number]): number => 3 + 3 * ROW_VECTORS.indexOf(name)
/** Places of time, weight and stance in a row. */
export const [TIME, WEIGHT, STANCE] = [0, 1, 2] as const
/** Length of a row; the watched values follow. */
export const ROW_LENGTH = 3 + 3 * ROW_VECTORS.length

/** Quantities whose peaks are to be met: writes them behind a row. */
export interface Watch {
  readonly count: number
  readonly into: (row: Float64Array) => void
}

/** Follows a foot path with a leg: all that holds at one moment, as a row of numbers. */
export class StrideFollower {
  private readonly row: Float64Array
  /** Torques that the drives hold at the joints, and those that springs in parallel bear. */
  private readonly held = new Float64Array(3)
  private readonly borne = new Float64Array(3)
  private readonly vectors: { readonly [K in (typeof ROW_VECTORS)[number]]: Float64Array }

  constructor(
    private readonly inputs: StrideInputs,
    private readonly watch: Watch | undefined = undefined,
  ) {
    const row = new Float64Array(ROW_LENGTH + (watch?.count ?? 0))
    this.row = row
    this.vectors = Object.fromEntries(ROW_VECTORS.map((name) => [name, row.subarray(at(name), at(name) + 3)])) as never
  }

  /** Everything at a time after touch-down, or why the leg cannot follow there. Throws where the ground's force or the result is not finite. */
  rowAt(time: number, weight: number): Float64Array | StrideFailure {
    const { row } = this
    const { leg, path, branch, dynamics, coupling, groundReaction, parallelTorque } = this.inputs
    const { foot, footVelocity, footAcceleration, groundReaction: force } = this.vectors
    const { jointAngle: q, jointRate: w, jointAcceleration: a, jointTorque: torque } = this.vectors
    const stands = path.si.stateInto(row, at('foot'), time)
    row[TIME] = time
    row[WEIGHT] = weight
    row[STANCE] = stands ? 1 : 0
    const fail = (reason: StrideFailure['reason']): StrideFailure => ({ timeSi: time, reason, foot: [foot[0]!, foot[1]!, foot[2]!] })
    if (leg.si.jointAnglesInto(q, 0, foot[0]!, foot[1]!, foot[2]!, branch) !== REACHED) return fail('unreachable')
    for (let j = 0; j < 3; j++) {
      q[j] = withinTurns(q[j]!, leg.limitsSi[2 * j]!, leg.limitsSi[2 * j + 1]!)
      if (Number.isNaN(q[j])) return fail('jointLimits')
    }
    if (leg.si.singularityAt(q) !== 0) return fail('singular')
    if (!coupling.si.assemblesAt(q[2]!)) return fail('driveApart')
    leg.si.jointRatesInto(w, 0, q, footVelocity)
    withoutRounding(w)
    leg.si.jointAccelerationsInto(a, 0, q, w, footAcceleration)
    force.fill(0)
    if (stands) groundReaction(force, Math.min(1, Math.max(0, time / path.si.stanceTime)), foot)
    if (!Number.isFinite(force[0]! + force[1]! + force[2]!)) throw forceNotFinite(force, time)
    if (dynamics === undefined) leg.si.torqueFromFootPushInto(torque, 0, q[0]!, q[1]!, q[2]!, -force[0]!, -force[1]!, -force[2]!)
    else dynamics.torqueInto(torque, 0, q, w, a, force[0]!, force[1]!, force[2]!)
    coupling.si.actuatorAnglesInto(row, at('actuatorAngle'), q)
    coupling.si.actuatorRatesInto(row, at('actuatorRate'), q, w)
    coupling.si.actuatorAccelerationsInto(row, at('actuatorAcceleration'), q, w, a)
    coupling.si.actuatorTorquesInto(
      row,
      at('actuatorTorque'),
      q,
      parallelTorque === undefined ? torque : this.heldBeside(parallelTorque, q, torque),
    )
    this.watch?.into(row)
    // A number less itself is zero, unless it is infinite or not a number.
    let rest = 0
    for (let k = 0; k < row.length; k++) rest += row[k]! - row[k]!
    if (rest !== 0)
      throw new NoResultError(`kinematics.strideDemand: motion or torque is not a finite number at ${new Quantity(time, 'time')}`)
    return row.slice()
  }

  /** Joint torques less those of springs in parallel with the drives. */
  private heldBeside(parallelTorque: ParallelTorqueSi, q: Float64Array, torque: Float64Array): Float64Array {
    const { held, borne } = this
    borne.fill(0)
    parallelTorque(borne, q)
    for (let j = 0; j < 3; j++) held[j] = torque[j]! - borne[j]!
    return held
  }
}

/** Sets rates to zero that are rounding of the largest: their sign would decide whether a reduction drives or is driven. */
function withoutRounding(rates: Float64Array): void {
  const min = 1e-13 * Math.max(Math.abs(rates[0]!), Math.abs(rates[1]!), Math.abs(rates[2]!))
  for (let j = 0; j < 3; j++) if (Math.abs(rates[j]!) < min) rates[j] = 0
}

const forceNotFinite = (force: Float64Array, time: number): InputError =>
  new InputError('kinematics.strideDemand', [
    {
      path: 'groundReactionSi',
      given: `[${Array.from(force).join(', ')}] N at ${new Quantity(time, 'time')}`,
      accepts: 'must write three finite numbers',
    },
  ])
