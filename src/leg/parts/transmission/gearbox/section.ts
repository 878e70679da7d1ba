import type { Fields } from '../../../schema/index.js'
import { outputBearing } from '../output-bearing/section.js'

/** A bought gearbox between motor and joint, such as a planetary one, by the numbers of its sheet. */
export const gearboxDrive = {
  /** Turns of the motor for one of the joint. */
  ratio: { kind: 'ratio', min: 1, max: 400 },
  /** Whether the joint turns with the motor or against it. Default: with. */
  turns: { oneOf: ['with', 'against'], default: 'with', because: 'a planetary stage whose ring stands still' },
  /** Efficiency from motor shaft to joint. */
  efficiency: { kind: 'ratio', above: 0, max: 1, usual: [0.3, 1] },
  /** Angle through which the output turns freely with the input held. */
  backlash: { kind: 'angle', min: 0, max: '20 deg', usual: ['0.002 deg', '4 deg'] },
  /** Torsional stiffness at the output. Left out: no stiffness of the joint is calculated. */
  stiffness: {
    kind: 'torsionalStiffness',
    min: '0.01 N m/rad',
    max: '10000 kN m/rad',
    usual: ['1 N m/rad', '200 kN m/rad'],
    optional: true,
  },
  /** Torque at the output that it bears at all times. */
  ratedTorque: { kind: 'torque', min: '1 mN m', max: '10000 N m', usual: ['0.03 N m', '400 N m'] },
  /** Torque at the output that it bears for a moment. */
  peakTorque: { kind: 'torque', min: '1 mN m', max: '20000 N m', usual: ['0.05 N m', '800 N m'] },
  /** Highest speed of its input. */
  highestSpeed: { kind: 'angularVelocity', min: '10 rpm', max: '200000 rpm', usual: ['200 rpm', '40000 rpm'] },
  /** Inertia at its input. Default: 0 kg m^2. */
  inertia: {
    kind: 'momentOfInertia',
    min: 0,
    max: '0.1 kg m^2',
    usual: ['0.001 kg mm^2', '0.01 kg m^2'],
    default: '0 kg m^2',
    because: 'not stated: small compared with the rotor',
  },
  /** Mass of the gearbox. It sits on the plate of its motor. */
  mass: { kind: 'mass', min: '1 g', max: '50 kg', usual: ['5 g', '10 kg'] },
  ...outputBearing,
} as const satisfies Fields
