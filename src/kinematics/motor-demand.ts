import { type Note, Quantity } from '../units/index.js'
import { withLists } from './columns.js'
import { type DriveSi, shaftTorque } from './drive-train.js'
import { motorOperatingPoint } from './reduction.js'
import { at } from './stride-follower.js'
import type { StrideSamples } from './stride-samples.js'

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
