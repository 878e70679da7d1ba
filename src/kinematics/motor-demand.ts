import type { Given, Inputs, Si } from '../formula/index.js'
import { type Note, Quantity } from '../units/index.js'
import { withLists } from './columns.js'
import { motorOperatingPoint, motorTorqueThroughReduction } from './reduction.js'
import { at } from './stride-follower.js'
import type { StrideSamples } from './stride-samples.js'

/** The inputs of one drive. */
export const DRIVE = {
  /** Turns of the motor for one turn of the drum. */
  ratio: { kind: 'ratio', above: 0 },
  /** Efficiency of the reduction while the motor drives. Default 1. */
  efficiency: { kind: 'ratio', above: 0, max: 1, default: 1 },
  /** Efficiency while the load drives the motor; 0 for a reduction that locks. Default 1. */
  backEfficiency: { kind: 'ratio', min: 0, max: 1, default: 1 },
  /** Moment of inertia of the rotor about its axis. Default 0. */
  rotorInertia: { kind: 'momentOfInertia', min: 0, default: '0 kg m^2' },
  /** Sense of the rotor against its drum; it counts for a knee motor on the thigh. Default withDrum. */
  rotorTurns: { oneOf: ['withDrum', 'againstDrum'], default: 'withDrum' },
  /** Constants of the motor, for currents and losses. Default: torque and speed alone. */
  motor: {
    fields: {
      /** Torque for each ampere of DC current, at the present temperature of the magnets. */
      torqueConstant: { kind: 'torqueConstantDc', above: 0 },
      /** Resistance between two terminals, at the present temperature of the winding. */
      resistance: { kind: 'electricalResistance', min: 0 },
      /** DC current of the free motor. Default 0. */
      noLoadCurrent: { kind: 'current', min: 0, default: '0 A' },
    },
    optional: true,
  },
} as const satisfies Inputs

/**
 * The reduction and motor of one drive. The torque constant and resistance are those of the equivalent direct-current motor, at its present temperature.
 * `rotorTurns` is the rotor's sense against its drum's (a crossed cord reverses it). It matters for a knee motor on the thigh only, whose rotor also
 * turns with the thigh. Default: withDrum.
 */
export interface DriveTrainSpecification extends Given<typeof DRIVE> {}

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

/** Demand of a stride on a motor. */
export interface MotorDemand extends Demand {
  /** Electrical side; `undefined` where no motor constants were given. */
  readonly electrical:
    | {
        /** Largest DC current in size. */
        readonly peakCurrent: Quantity<'current'>
        /** Root mean square of the DC current. */
        readonly rmsCurrent: Quantity<'current'>
        /** Largest voltage in size. */
        readonly peakVoltage: Quantity<'voltage'>
        /** Mean copper loss over the stride. */
        readonly meanCopperLoss: Quantity<'power'>
        /** Mean power from the supply, with what flows back taken off. */
        readonly meanElectricalPower: Quantity<'power'>
        /** Largest power drawn from the supply. */
        readonly peakPowerDrawn: Quantity<'power'>
        /** Mean over the stride of the power drawn while it is drawn: what a supply gives that cannot take power back. */
        readonly meanPowerDrawn: Quantity<'power'>
        /** Largest power that flows back: what the supply, or a braking resistor, must take. */
        readonly peakPowerReturned: Quantity<'power'>
        /** Mean over the stride of the power that flows back. */
        readonly meanPowerReturned: Quantity<'power'>
      }
    | undefined
  /** Speed and torque at the shaft, sample by sample, SI: the cloud to hold against the motor's limit. */
  readonly cloud: {
    /** Speed of the shaft, rad/s. */
    readonly speed: Float64Array
    /** Torque at the shaft, N m. */
    readonly torque: Float64Array
  }
}

/** A drive on SI numbers, with what a knee motor on the thigh adds. @internal */
export interface DriveSi extends Si<typeof DRIVE> {
  /** Sense in which the part that carries the motor turns with the rotor: 0 for a motor on the body. */
  readonly carrier: -1 | 0 | 1
  /** Moment of inertia times reduction of a rotor that this drive carries about its own axis, kg m²: its spin-up loads this drive. */
  readonly carried: number
}

/** Torque at the shaft of a joint's motor, from the torque, rate and acceleration of its drum and the accelerations of hip and knee drum. */
const shaftTorque = (drive: DriveSi, torque: number, rate: number, acceleration: number, hip: number, kneeDrum: number): number =>
  motorTorqueThroughReduction.si({
    outputTorque: torque + drive.carried * kneeDrum,
    outputSpeed: rate,
    outputAcceleration: acceleration,
    ratio: drive.ratio,
    efficiency: drive.efficiency,
    backEfficiency: drive.backEfficiency,
    rotorInertia: drive.rotorInertia,
    carrierAcceleration: drive.carrier * hip,
  })

/** Quantities of a drive's motor that `watchMotor` writes. @internal */
export const MOTOR_WATCHED = 5

/** Writes torque, power, current, voltage and electrical power of a motor behind a row of the stride. @internal */
export function watchMotor(row: Float64Array, offset: number, drive: DriveSi, joint: number): void {
  const rate = row[at('actuatorRate') + joint]!
  const accelerations = at('actuatorAcceleration')
  const torque = shaftTorque(
    drive,
    row[at('actuatorTorque') + joint]!,
    rate,
    row[accelerations + joint]!,
    row[at('jointAcceleration') + 1]!,
    row[accelerations + 2]!,
  )
  row[offset] = torque
  row[offset + 1] = torque * rate * drive.ratio
  if (drive.motor === undefined) return
  const { current, voltage, electricalPower } = motorOperatingPoint.si({ torque, speed: rate * drive.ratio, ...drive.motor })
  row[offset + 2] = current
  row[offset + 3] = voltage
  row[offset + 4] = electricalPower
}

/** Power out (positive) and in (negative, as a size), each by itself: peaks, and means over the stride. */
function flows(power: Float64Array, weight: Float64Array) {
  let [out, back, peakOut, peakIn, total] = [0, 0, 0, 0, 0]
  for (let i = 0; i < power.length; i++) {
    const p = power[i]!
    peakOut = Math.max(peakOut, p)
    peakIn = Math.max(peakIn, -p)
    if (p > 0) out += weight[i]! * p
    else back -= weight[i]! * p
    total += weight[i]!
  }
  return { meanOut: out / total, meanIn: back / total, peakOut, peakIn }
}

/** Demand of torque and speed, sample by sample; the notes go with the peaks. @internal */
export function demandOf(torque: Float64Array, speed: Float64Array, weight: Float64Array, notes: readonly Note[] | undefined): Demand {
  let [peakTorque, peakSpeed, squares, total] = [0, 0, 0, 0]
  for (let i = 0; i < torque.length; i++) {
    const t = torque[i]!
    peakTorque = Math.max(peakTorque, Math.abs(t))
    peakSpeed = Math.max(peakSpeed, Math.abs(speed[i]!))
    squares += weight[i]! * t * t
    total += weight[i]!
  }
  const { meanOut, meanIn, peakOut, peakIn } = flows(
    torque.map((t, i) => t * speed[i]!),
    weight,
  )
  return {
    peakTorque: new Quantity(peakTorque, 'torque', undefined, notes),
    rmsTorque: new Quantity(Math.sqrt(squares / total), 'torque'),
    peakSpeed: new Quantity(peakSpeed, 'angularVelocity'),
    peakPowerOut: new Quantity(peakOut, 'power', undefined, notes),
    meanPowerOut: new Quantity(meanOut, 'power'),
    peakPowerIn: new Quantity(peakIn, 'power', undefined, notes),
    meanPowerIn: new Quantity(meanIn, 'power'),
  }
}

/** Demand on the motor of one joint's drive. @internal */
export function motorDemand(samples: StrideSamples, joint: number, drive: DriveSi, notes: readonly Note[] | undefined): MotorDemand {
  const { count, weight, actuatorTorque, actuatorRate, actuatorAcceleration, jointAcceleration } = samples
  const torque = new Float64Array(count)
  const speed = new Float64Array(count)
  for (let i = 0; i < count; i++) {
    const k = 3 * i + joint
    speed[i] = actuatorRate[k]! * drive.ratio
    const [hip, knee] = [jointAcceleration[3 * i + 1]!, actuatorAcceleration[3 * i + 2]!]
    torque[i] = shaftTorque(drive, actuatorTorque[k]!, actuatorRate[k]!, actuatorAcceleration[k]!, hip, knee)
  }
  return {
    ...demandOf(torque, speed, weight, notes),
    electrical: drive.motor === undefined ? undefined : electricalDemand(drive.motor, torque, speed, weight, notes),
    cloud: withLists({ speed, torque }),
  }
}

/** Current, voltage and power of a motor, sample by sample. */
function electricalDemand(
  motor: NonNullable<DriveSi['motor']>,
  torque: Float64Array,
  speed: Float64Array,
  weight: Float64Array,
  notes: readonly Note[] | undefined,
): NonNullable<MotorDemand['electrical']> {
  let [peakCurrent, squares, peakVoltage, loss, total] = [0, 0, 0, 0, 0]
  const supply = new Float64Array(torque.length)
  for (let i = 0; i < torque.length; i++) {
    const point = motorOperatingPoint.si({ torque: torque[i]!, speed: speed[i]!, ...motor })
    const w = weight[i]!
    peakCurrent = Math.max(peakCurrent, Math.abs(point.current))
    peakVoltage = Math.max(peakVoltage, Math.abs(point.voltage))
    squares += w * point.current * point.current
    loss += w * point.copperLoss
    supply[i] = point.electricalPower
    total += w
  }
  const { meanOut, meanIn, peakOut, peakIn } = flows(supply, weight)
  return {
    peakCurrent: new Quantity(peakCurrent, 'current', undefined, notes),
    rmsCurrent: new Quantity(Math.sqrt(squares / total), 'current'),
    peakVoltage: new Quantity(peakVoltage, 'voltage', undefined, notes),
    meanCopperLoss: new Quantity(loss / total, 'power'),
    meanElectricalPower: new Quantity(meanOut - meanIn, 'power'),
    peakPowerDrawn: new Quantity(peakOut, 'power', undefined, notes),
    meanPowerDrawn: new Quantity(meanOut, 'power'),
    peakPowerReturned: new Quantity(peakIn, 'power', undefined, notes),
    meanPowerReturned: new Quantity(meanIn, 'power'),
  }
}
