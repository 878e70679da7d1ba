import type { Given, Inputs, Si } from '../formula/index.js'
import { motorTorqueThroughReduction } from './reduction.js'

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

/** A drive on SI numbers, with what a knee motor on the thigh adds. @internal */
export interface DriveSi extends Si<typeof DRIVE> {
  /** Sense in which the part that carries the motor turns with the rotor: 0 for a motor on the body. */
  readonly carrier: -1 | 0 | 1
  /** Moment of inertia times reduction of a rotor that this drive carries about its own axis, kg m²: its spin-up loads this drive. */
  readonly carried: number
}

/** Torque at the shaft of a joint's motor, from the torque, rate and acceleration of its drum and the accelerations of hip and knee drum. @internal */
export const shaftTorque = (drive: DriveSi, torque: number, rate: number, acceleration: number, hip: number, kneeDrum: number): number =>
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
