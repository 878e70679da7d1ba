import { type Given, type Inputs, readInputs } from '../formula/index.js'
import { type Note, Quantity } from '../units/index.js'
import { DRIVE, type DriveSi } from './drive-train.js'
import type { FootPath, PhaseSteps } from './foot-path.js'
import { LEG_JOINTS } from './leg-specification.js'
import { type Demand, demandOf, MOTOR_WATCHED, type MotorDemand, motorDemand, watchMotor } from './motor-demand.js'
import { at, ROW_LENGTH, type Watch } from './stride-follower.js'
import { partsOf, STRIDE, type StrideParts, strideInputs } from './stride-inputs.js'
import { type StrideSamples, sampleStride } from './stride-samples.js'
import { type PerJoint, type Vector3, vectorOf } from './vectors.js'

const SPECIFICATION = {
  ...STRIDE,
  /** Reduction and motor of each joint. */
  drives: {
    fields: {
      /** Drive of the sideways hip. */
      sidewaysHip: { fields: DRIVE },
      /** Drive of the hip. */
      hip: { fields: DRIVE },
      /** Drive of the knee. */
      knee: { fields: DRIVE },
    },
  },
  /** Samples of the stride, 16 to 100 000; each phase gets at least half the default. Default 240. */
  samples: { kind: 'count', min: 16, max: 100_000, whole: true, default: 240 },
} as const satisfies Inputs

/** Data of a stride. */
export interface StrideSpecification extends Given<typeof SPECIFICATION>, StrideParts {}

/** Demand of following the path. */
export interface Walkable {
  /** The leg can follow the path. */
  readonly walkable: true
  /** At the joints, before the coupling. */
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
  /** The target of the foot there; the leg's `jointAngles` gives the nearest point within reach. */
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
  const { parts, rest } = partsOf(where, given)
  const { path, coupling } = parts
  const spec = readInputs(where, SPECIFICATION, rest)
  const inputs = strideInputs(where, parts, spec)
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
const ROUNDING_STEP = 1e-6

/** A note for a path whose foot changes speed at once. */
function notesOfSteps(path: FootPath): readonly Note[] | undefined {
  const { period, stanceTime, bodySpeed, dutyFactor } = path.si
  const scale = bodySpeed * (1 + (dutyFactor === 1 ? 0 : stanceTime / (period - stanceTime)))
  const { liftOff, touchDown } = path.steps
  const steps = [liftOff.speed, touchDown.speed]
  if (steps.every(({ si }) => si <= ROUNDING_STEP * scale)) return undefined
  const text = `foot speed steps by ${steps[0]} at lift-off and ${steps[1]} at touch-down: the blow of these steps is not in the peaks`
  return [{ formula: 'kinematics.strideDemand', text }]
}

const every = (column: Float64Array, joint: number) => Float64Array.from({ length: column.length / 3 }, (_, i) => column[3 * i + joint]!)
