import { type Given, type Inputs, readInputs, type Si } from '../formula/index.js'
import { InputError, Quantity } from '../units/index.js'
import { DriveCoupling, driveCoupling } from './coupling.js'
import { FootPath } from './foot-path.js'
import { type LEG_JOINTS, ThreeJointLeg } from './leg.js'
import { LegDynamics } from './leg-dynamics.js'
import { FOOT_ABOVE, KNEE_BACKWARD } from './leg-geometry-kernel.js'
import { type Demand, DRIVE, demandOf, type MotorDemand, motorDemand } from './motor-demand.js'
import { stanceForce } from './stance-force.js'
import { type GroundReactionSi, type StrideSamples, sampleStride } from './stride-samples.js'
import { mustBeMade, type PerJoint, type Vector3, vectorOf } from './vectors.js'

const LOAD = {
  mass: { kind: 'mass', above: 0 },
  legShare: { kind: 'ratio', min: 0, max: 1 },
  shape: { oneOf: ['halfSine', 'parabolic', 'rectangular', 'twoPeaked'], default: 'halfSine' },
  thirdHarmonic: { kind: 'ratio', min: -0.3333, max: 1, default: 0.4 },
  gravity: { kind: 'acceleration', above: 0, default: '9.80665 m/s^2' },
  foreAft: { oneOf: ['none', 'throughHip'], default: 'none' },
} as const satisfies Inputs
const SPECIFICATION = {
  load: { fields: LOAD, optional: true },
  drives: { fields: { sidewaysHip: { fields: DRIVE }, hip: { fields: DRIVE }, knee: { fields: DRIVE } } },
  kneeBend: { oneOf: ['forward', 'backward'], default: 'forward' },
  foot: { oneOf: ['below', 'above'], default: 'below' },
  samples: { kind: 'count', min: 16, max: 100_000, whole: true, default: 240 },
} as const satisfies Inputs

/** What a stride is made of. */
export interface StrideSpecification extends Given<typeof SPECIFICATION> {
  readonly leg: ThreeJointLeg
  readonly path: FootPath
  /** Masses of the leg; left out, the leg is weightless and only the ground's force is carried. */
  readonly dynamics?: LegDynamics
  /** How the knee is driven; left out, the motor is at the knee. */
  readonly coupling?: DriveCoupling
  /** Force of the ground in place of `load`, on plain SI numbers. */
  readonly groundReactionSi?: GroundReactionSi
}

/** The leg follows the path: what that asks. */
export interface Walkable {
  readonly walkable: true
  readonly joints: PerJoint<Demand>
  /** At the drums, after the coupling of hip and knee. */
  readonly actuators: PerJoint<Demand>
  /** At the motors' shafts, through the reductions, rotors included. */
  readonly motors: PerJoint<MotorDemand>
  /** Every sample on plain SI numbers. */
  readonly samples: StrideSamples
}

/** The leg cannot follow the path: where, and why. */
export interface NotWalkable {
  readonly walkable: false
  readonly reason: 'unreachable' | 'jointLimits' | 'singular' | 'driveApart'
  /** Time after touch-down. */
  readonly time: Quantity<'time'>
  /** The foot wanted there; ask the leg's `jointAngles` for the nearest it can do. */
  readonly foot: Vector3<'length'>
}

/**
 * What one stride asks of each joint, drum and motor: foot path and ground force, through inverse kinematics and dynamics, the coupling of the
 * drives, the reductions and the motor constants.
 *
 * Throws an `InputError` for a specification that cannot be read, or without `load` or `groundReactionSi`. A path the leg cannot follow
 * is a typed answer.
 */
export function strideDemand(given: StrideSpecification): Walkable | NotWalkable {
  const where = 'kinematics.strideDemand'
  const { leg, path, dynamics, coupling = driveCoupling({ knee: 'motorAtKnee' }), groundReactionSi, ...rest } = given
  mustBeMade(where, 'leg', leg, ThreeJointLeg, 'threeJointLeg')
  mustBeMade(where, 'path', path, FootPath, 'footPath')
  mustBeMade(where, 'coupling', coupling, DriveCoupling, 'driveCoupling')
  if (dynamics !== undefined) mustBeMade(where, 'dynamics', dynamics, LegDynamics, 'legDynamics')
  const spec = readInputs(where, SPECIFICATION, rest)
  if ((spec.load === undefined) === (groundReactionSi === undefined)) {
    throw new InputError(where, [
      { path: 'load', given: spec.load === undefined ? 'missing' : 'given twice', accepts: 'give either load or groundReactionSi' },
    ])
  }
  const samples = sampleStride({
    leg,
    path,
    branch: (spec.kneeBend === 'forward' ? 0 : KNEE_BACKWARD) + (spec.foot === 'below' ? 0 : FOOT_ABOVE),
    dynamics,
    coupling,
    groundReaction: groundReactionSi ?? reactionOf(spec.load!, path.si.dutyFactor, leg, spec.foot),
    samples: spec.samples,
  })
  if ('reason' in samples)
    return {
      walkable: false,
      reason: samples.reason,
      time: new Quantity(samples.timeSi, 'time'),
      foot: vectorOf('length', samples.foot),
    }
  const each = <T>(one: (joint: (typeof LEG_JOINTS)[number], i: number) => T): PerJoint<T> => ({
    sidewaysHip: one('sidewaysHip', 0),
    hip: one('hip', 1),
    knee: one('knee', 2),
  })
  const { weight, jointTorque, jointRate, actuatorTorque, actuatorRate } = samples
  return {
    walkable: true,
    joints: each((_, i) => demandOf(every(jointTorque, i), every(jointRate, i), weight)),
    actuators: each((_, i) => demandOf(every(actuatorTorque, i), every(actuatorRate, i), weight)),
    motors: each((joint, i) => motorDemand(samples, i, spec.drives[joint])),
    samples,
  }
}

/** The ground's force from a load: vertical by the stance's shape, and along x so that it passes through the hip axis where asked. */
function reactionOf(load: Si<typeof LOAD>, dutyFactor: number, leg: ThreeJointLeg, side: 'below' | 'above'): GroundReactionSi {
  const { hipOffset: d } = leg.si
  return (out, stancePhase, foot) => {
    const vertical = stanceForce.si({ ...load, dutyFactor, stancePhase })
    const [x, y, z] = foot as unknown as [number, number, number]
    const radius2 = y * y + z * z
    const height = Math.sqrt(Math.max(0, radius2 - d * d))
    const Z = side === 'below' ? -height : height
    // In the leg plane, which leans by the sideways hip, only the cosine of the upright force is upright.
    const cosine = (y * d + z * Z) / radius2
    out[0] = load.foreAft === 'none' || height === 0 ? 0 : (vertical * cosine * x) / Z
    out[1] = 0
    out[2] = vertical
  }
}

const every = (column: Float64Array, joint: number) => Float64Array.from({ length: column.length / 3 }, (_, i) => column[3 * i + joint]!)
