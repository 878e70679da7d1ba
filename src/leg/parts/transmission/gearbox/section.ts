import type { Fields } from '../../../schema/index.js'
import { outputBearing } from '../output-bearing/section.js'

/** A bought gearbox between motor and joint, such as a planetary one, by the numbers of its sheet. */
export const gearboxDrive = {
  /** Turns of the motor for one of the joint. */
  ratio: { kind: 'ratio', min: 1, max: 400 },
  /** Whether the joint turns with the motor or against it. Default: with. */
  turns: { oneOf: ['with', 'against'], default: 'with', because: 'a planetary stage whose ring stands still' },
  /** Efficiency from motor shaft to joint. */
  efficiency: { kind: 'ratio', above: 0, max: 1 },
  /** Angle through which the output turns freely with the input held. */
  backlash: { kind: 'angle', min: 0, max: '20 deg' },
  /** Torsional stiffness at the output. Left out: no stiffness of the joint is calculated. */
  stiffness: { kind: 'torsionalStiffness', above: 0, optional: true },
  /** Torque at the output that it bears at all times. */
  ratedTorque: { kind: 'torque', above: 0 },
  /** Torque at the output that it bears for a moment. */
  peakTorque: { kind: 'torque', above: 0 },
  /** Highest speed of its input. */
  highestSpeed: { kind: 'angularVelocity', above: 0 },
  /** Inertia at its input. Default: 0 kg m^2. */
  inertia: { kind: 'momentOfInertia', min: 0, default: '0 kg m^2', because: 'not stated: small compared with the rotor' },
  /** Mass of the gearbox. It sits on the plate of its motor. */
  mass: { kind: 'mass', above: 0, max: '50 kg' },
  ...outputBearing,
} as const satisfies Fields
