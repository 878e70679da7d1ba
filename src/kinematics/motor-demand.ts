import type { Given, Inputs, Si } from '../formula/index.js'
import { Quantity } from '../units/index.js'
import { motorOperatingPoint, motorTorqueThroughReduction } from './reduction.js'
import type { StrideSamples } from './stride-samples.js'

/** The inputs of one drive. */
export const DRIVE = {
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

/** The reduction and motor of one drive; the torque constant and resistance are those of the equivalent direct-current motor, at its present temperature. */
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
  readonly cloud: { readonly speed: Float64Array; readonly torque: Float64Array }
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

/** Demand of torque and speed, sample by sample. @internal */
export function demandOf(torque: Float64Array, speed: Float64Array, weight: Float64Array): Demand {
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
    peakTorque: new Quantity(peakTorque, 'torque'),
    rmsTorque: new Quantity(Math.sqrt(squares / total), 'torque'),
    peakSpeed: new Quantity(peakSpeed, 'angularVelocity'),
    peakPowerOut: new Quantity(peakOut, 'power'),
    meanPowerOut: new Quantity(meanOut, 'power'),
    peakPowerIn: new Quantity(peakIn, 'power'),
    meanPowerIn: new Quantity(meanIn, 'power'),
  }
}

/** Demand on the motor of one joint's drive. @internal */
export function motorDemand(samples: StrideSamples, joint: number, drive: Si<typeof DRIVE>): MotorDemand {
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
    let [peakCurrent, squares, peakVoltage, loss, total] = [0, 0, 0, 0, 0]
    const supply = new Float64Array(count)
    for (let i = 0; i < count; i++) {
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
    electrical = {
      peakCurrent: new Quantity(peakCurrent, 'current'),
      rmsCurrent: new Quantity(Math.sqrt(squares / total), 'current'),
      peakVoltage: new Quantity(peakVoltage, 'voltage'),
      meanCopperLoss: new Quantity(loss / total, 'power'),
      meanElectricalPower: new Quantity(meanOut - meanIn, 'power'),
      peakPowerDrawn: new Quantity(peakOut, 'power'),
      meanPowerDrawn: new Quantity(meanOut, 'power'),
      peakPowerReturned: new Quantity(peakIn, 'power'),
      meanPowerReturned: new Quantity(meanIn, 'power'),
    }
  }
  return { ...demandOf(torque, speed, weight), electrical, cloud: { speed, torque } }
}
