import { type Given, type Inputs, readInputs, type Si } from '../formula/index.js'
import { InputError, Quantity, show } from '../units/index.js'
import { DriveCoupling, driveCoupling } from './coupling.js'
import { FootPath } from './foot-path.js'
import { type LEG_JOINTS, ThreeJointLeg } from './leg.js'
import { LegDynamics } from './leg-dynamics.js'
import { FOOT_ABOVE, KNEE_BACKWARD } from './leg-kernel.js'
import { motorOperatingPoint, motorTorqueThroughReduction } from './reduction.js'
import { stanceForce } from './stance-force.js'
import { type GroundReactionSi, type StrideSamples, sampleStride } from './stride-samples.js'
import { type PerJoint, type Vector3, vectorOf } from './vectors.js'

const DRIVE = {
  ratio: { kind: 'ratio', above: 0 },
  efficiency: { kind: 'ratio', above: 0, max: 1, default: 1 },
  backEfficiency: { kind: 'ratio', min: 0, max: 1, default: 1 },
  rotorInertia: { kind: 'momentOfInertia', min: 0, default: '0 kg m^2' },
  motor: {
    fields: {
      torqueConstant: { kind: 'torqueConstantDc', above: 0 },
      resistance: { kind: 'electricalResistance', min: 0 },
      noLoadCurrent: { kind: 'current', min: 0, default: '0 A' },
    },
    optional: true,
  },
} as const satisfies Inputs
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
  drives: { fields: { abduction: { fields: DRIVE }, hip: { fields: DRIVE }, knee: { fields: DRIVE } } },
  kneeBend: { oneOf: ['forward', 'backward'], default: 'forward' },
  foot: { oneOf: ['below', 'above'], default: 'below' },
  samples: { kind: 'count', min: 16, max: 100_000, whole: true, default: 240 },
} as const satisfies Inputs

/** The reduction and motor of one drive; the torque constant and resistance are those of the equivalent direct-current motor, at its present temperature. */
export interface DriveSpecification extends Given<typeof DRIVE> {}

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

/** Torque, speed and power over a stride at one place: a joint, a drum or a motor's shaft. */
export interface Demand {
  /** Largest torque in size. */
  readonly peakTorque: Quantity<'torque'>
  /** Root mean square of the torque: what heats. */
  readonly rmsTorque: Quantity<'torque'>
  /** Largest speed in size. */
  readonly peakSpeed: Quantity<'angularVelocity'>
  /** Largest power given out while driving. */
  readonly peakPowerOut: Quantity<'power'>
  /** Mean over the stride of the power given out while driving. */
  readonly meanPowerOut: Quantity<'power'>
  /** Largest power taken in while the load drives. */
  readonly peakPowerIn: Quantity<'power'>
  /** Mean over the stride of the power taken in while the load drives; not subtracted from the power out. */
  readonly meanPowerIn: Quantity<'power'>
}

/** What a stride asks of a motor. */
export interface MotorDemand extends Demand {
  /** Electrical side; `undefined` where no motor constants were given. */
  readonly electrical:
    | {
        readonly peakCurrent: Quantity<'current'>
        readonly rmsCurrent: Quantity<'current'>
        readonly peakVoltage: Quantity<'voltage'>
        readonly meanCopperLoss: Quantity<'power'>
        /** Mean power from the supply, with what flows back taken off. */
        readonly meanElectricalPower: Quantity<'power'>
      }
    | undefined
  /** Speed and torque at the shaft, sample by sample, SI: the cloud to hold against the motor's limit. */
  readonly cloud: { readonly speed: Float64Array; readonly torque: Float64Array }
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
  for (const [name, value, type] of [
    ['leg', leg, ThreeJointLeg],
    ['path', path, FootPath],
    ['coupling', coupling, DriveCoupling],
    ['dynamics', dynamics ?? LegDynamics.prototype, LegDynamics],
  ] as const) {
    if (!(value instanceof type) && value !== type.prototype)
      throw new InputError(where, [{ path: name, given: show(value), accepts: `must be what kinematics makes it with` }])
  }
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
    groundReaction: groundReactionSi ?? reactionOf(spec.load!, path.dutyFactor, leg),
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
    abduction: one('abduction', 0),
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
function reactionOf(load: Si<typeof LOAD>, dutyFactor: number, leg: ThreeJointLeg): GroundReactionSi {
  const { hipOffset } = leg.si
  return (out, stancePhase, foot) => {
    const vertical = stanceForce.si({ ...load, dutyFactor, stancePhase })
    const below = Math.sqrt(Math.max(0, foot[1]! ** 2 + foot[2]! ** 2 - hipOffset ** 2))
    out[0] = load.foreAft === 'none' || below === 0 ? 0 : (-vertical * foot[0]!) / below
    out[1] = 0
    out[2] = vertical
  }
}

const every = (column: Float64Array, joint: number) => Float64Array.from({ length: column.length / 3 }, (_, i) => column[3 * i + joint]!)

function demandOf(torque: Float64Array, speed: Float64Array, weight: Float64Array): Demand {
  let peakTorque = 0
  let peakSpeed = 0
  let squares = 0
  let total = 0
  let out = 0
  let back = 0
  let peakOut = 0
  let peakIn = 0
  for (let i = 0; i < torque.length; i++) {
    const t = torque[i]!
    const power = t * speed[i]!
    peakTorque = Math.max(peakTorque, Math.abs(t))
    peakSpeed = Math.max(peakSpeed, Math.abs(speed[i]!))
    peakOut = Math.max(peakOut, power)
    peakIn = Math.max(peakIn, -power)
    squares += weight[i]! * t * t
    if (power > 0) out += weight[i]! * power
    else back -= weight[i]! * power
    total += weight[i]!
  }
  return {
    peakTorque: new Quantity(peakTorque, 'torque'),
    rmsTorque: new Quantity(Math.sqrt(squares / total), 'torque'),
    peakSpeed: new Quantity(peakSpeed, 'angularVelocity'),
    peakPowerOut: new Quantity(peakOut, 'power'),
    meanPowerOut: new Quantity(out / total, 'power'),
    peakPowerIn: new Quantity(peakIn, 'power'),
    meanPowerIn: new Quantity(back / total, 'power'),
  }
}

function motorDemand(samples: StrideSamples, joint: number, drive: Si<typeof DRIVE>): MotorDemand {
  const { count, weight, actuatorTorque, actuatorRate, actuatorAcceleration } = samples
  const torque = new Float64Array(count)
  const speed = new Float64Array(count)
  for (let i = 0; i < count; i++) {
    const at = 3 * i + joint
    speed[i] = actuatorRate[at]! * drive.ratio
    torque[i] = motorTorqueThroughReduction.si({
      outputTorque: actuatorTorque[at]!,
      outputSpeed: actuatorRate[at]!,
      outputAcceleration: actuatorAcceleration[at]!,
      ratio: drive.ratio,
      efficiency: drive.efficiency,
      backEfficiency: drive.backEfficiency,
      rotorInertia: drive.rotorInertia,
    })
  }
  const { motor } = drive
  let electrical: MotorDemand['electrical']
  if (motor !== undefined) {
    let [peakCurrent, squares, peakVoltage, loss, supply, total] = [0, 0, 0, 0, 0, 0]
    for (let i = 0; i < count; i++) {
      const point = motorOperatingPoint.si({ torque: torque[i]!, speed: speed[i]!, ...motor })
      const w = weight[i]!
      peakCurrent = Math.max(peakCurrent, Math.abs(point.current))
      peakVoltage = Math.max(peakVoltage, Math.abs(point.voltage))
      squares += w * point.current * point.current
      loss += w * point.copperLoss
      supply += w * point.electricalPower
      total += w
    }
    electrical = {
      peakCurrent: new Quantity(peakCurrent, 'current'),
      rmsCurrent: new Quantity(Math.sqrt(squares / total), 'current'),
      peakVoltage: new Quantity(peakVoltage, 'voltage'),
      meanCopperLoss: new Quantity(loss / total, 'power'),
      meanElectricalPower: new Quantity(supply / total, 'power'),
    }
  }
  return { ...demandOf(torque, speed, weight), electrical, cloud: { speed, torque } }
}
