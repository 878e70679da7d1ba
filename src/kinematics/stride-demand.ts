import { type Given, type Inputs, readInputs, type Si } from '../formula/index.js'
import { InputError, type Note, Quantity } from '../units/index.js'
import { DriveCoupling, driveCoupling } from './coupling.js'
import { FootPath, type PhaseSteps } from './foot-path.js'
import { LEG_JOINTS, ThreeJointLeg } from './leg.js'
import { LegDynamics } from './leg-dynamics.js'
import { FOOT_ABOVE, KNEE_BACKWARD } from './leg-geometry-kernel.js'
import { type Demand, DRIVE, type DriveSi, demandOf, MOTOR_WATCHED, type MotorDemand, motorDemand, watchMotor } from './motor-demand.js'
import { stanceForce } from './stance-force.js'
import { at, type GroundReactionSi, ROW_LENGTH, type StrideInputs, type Watch } from './stride-follower.js'
import { type StrideSamples, sampleStride } from './stride-samples.js'
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
  /** At the motors' shafts, through the reductions, rotors included; joints and drums are without rotors. */
  readonly motors: PerJoint<MotorDemand>
  /**
   * Steps of the foot's speed and acceleration at lift-off and touch-down. The blow of a step of speed is not in the peaks, which then carry a note.
   */
  readonly steps: PhaseSteps
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
 * Torque, speed and power of each joint, drum and motor over one stride: foot path and ground force, through inverse kinematics and dynamics, the coupling of the
 * drives, the reductions and the motor constants.
 *
 * Accuracy at the default `samples`, 240: peaks within 0.2 %, rms and means within 0.1 % of those of 40 000 samples, for duty factors from 0.3 to 0.95
 * and every swing. Each phase gets at least 120 samples however short it is, and more where a drum turns round and around the peaks.
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
  // A rotor on the thigh turns with the thigh as well: its spin-up takes torque from the hip, and the thigh's from the knee's motor.
  const { knee } = spec.drives
  const carrier = coupling.si.carried === 1 ? 0 : knee.rotorTurns === 'withDrum' ? 1 : -1
  const drives = each(
    (joint): DriveSi => ({
      ...spec.drives[joint],
      carrier: joint === 'knee' ? carrier : 0,
      carried: joint === 'hip' ? carrier * knee.rotorInertia * knee.ratio : 0,
    }),
  )
  const inputs: StrideInputs = {
    leg,
    path,
    branch: (spec.kneeBend === 'forward' ? 0 : KNEE_BACKWARD) + (spec.foot === 'below' ? 0 : FOOT_ABOVE),
    dynamics: dynamics?.withoutRotors,
    coupling,
    groundReaction: groundReactionSi ?? reactionOf(spec.load!, path.si.dutyFactor, leg, spec.foot),
  }
  const samples = sampleStride(inputs, { samples: spec.samples, watch: watchOf(drives) })
  if ('reason' in samples)
    return {
      walkable: false,
      reason: samples.reason,
      time: new Quantity(samples.timeSi, 'time'),
      foot: vectorOf('length', samples.foot),
    }
  const notes = notesOfSteps(path)
  const { weight, jointTorque, jointRate, actuatorTorque, actuatorRate } = samples
  return {
    walkable: true,
    joints: each((_, i) => demandOf(every(jointTorque, i), every(jointRate, i), weight, notes)),
    actuators: each((_, i) => demandOf(every(actuatorTorque, i), every(actuatorRate, i), weight, notes)),
    motors: each((joint, i) => motorDemand(samples, i, drives[joint], notes)),
    steps: path.steps,
    samples,
  }
}

const each = <T>(one: (joint: (typeof LEG_JOINTS)[number], i: number) => T): PerJoint<T> => ({
  sidewaysHip: one('sidewaysHip', 0),
  hip: one('hip', 1),
  knee: one('knee', 2),
})

/** Joint and drum torques, rates and powers, and all of the motors: the quantities whose peaks are reported. */
function watchOf(drives: PerJoint<DriveSi>): Watch {
  const places = [at('jointTorque'), at('jointRate'), at('actuatorTorque'), at('actuatorRate')] as const
  return {
    count: 18 + 3 * MOTOR_WATCHED,
    into: (row) => {
      let to = ROW_LENGTH
      for (let j = 0; j < 3; j++) {
        for (let k = 0; k < 4; k += 2) {
          const torque = row[places[k]! + j]!
          const rate = row[places[k + 1]! + j]!
          row[to++] = torque
          row[to++] = rate
          row[to++] = torque * rate
        }
        watchMotor(row, to, drives[LEG_JOINTS[j]!], j)
        to += MOTOR_WATCHED
      }
    },
  }
}

/** A step of the foot's speed smaller than this part of the speed of the swing is rounding. */
const STEPS = 1e-6

/** A note for a path whose foot changes speed at once. */
function notesOfSteps(path: FootPath): readonly Note[] | undefined {
  const { period, stanceTime, bodySpeed, dutyFactor } = path.si
  const scale = bodySpeed * (1 + (dutyFactor === 1 ? 0 : stanceTime / (period - stanceTime)))
  const { liftOff, touchDown } = path.steps
  const steps = [liftOff.speed, touchDown.speed]
  if (steps.every(({ si }) => si <= STEPS * scale)) return undefined
  const text = `foot speed steps by ${steps[0]} at lift-off and ${steps[1]} at touch-down: the blow of these steps is not in the peaks`
  return [{ formula: 'kinematics.strideDemand', text }]
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
