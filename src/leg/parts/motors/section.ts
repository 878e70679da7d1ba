import type { Fields } from '../../schema/index.js'

/** One kind of motor. */
export const motor = {
  /** Speed constant Kv. */
  speedConstant: { kind: 'speedConstant', min: '1 rpm/V', max: '20000 rpm/V', usual: ['8 rpm/V', '4000 rpm/V'] },
  /** How Kv was found: peak line-to-line EMF of the spun motor, no-load speed over DC voltage in six-step drive, or a catalogue that does not say. Default: catalogue. */
  speedConstantBasis: {
    oneOf: ['spunPeakLineToLine', 'noLoadSixStep', 'catalogue'],
    default: 'catalogue',
    because: 'not stated: the constant is known to some per cent only',
    level: 'commonPractice',
  },
  /** Resistance between two terminals at 20 °C. */
  terminalResistance: { kind: 'electricalResistance', min: '0.5 mohm', max: '500 ohm', usual: ['8 mohm', '20 ohm'] },
  /** No-load current. Default: 0.5 A. */
  noLoadCurrent: {
    kind: 'current',
    min: 0,
    max: '100 A',
    usual: ['0.02 A', '8 A'],
    default: '0.5 A',
    because: 'an outrunner of this size',
  },
  /** Voltage at which the no-load current was measured. Default: 10 V. */
  noLoadVoltage: {
    kind: 'voltage',
    min: '0.5 V',
    max: '500 V',
    usual: ['3 V', '60 V'],
    default: '10 V',
    because: 'the usual test voltage',
    level: 'commonPractice',
  },
  /** Pole pairs. Needed with phaseInductance. */
  polePairs: { integer: true, min: 1, max: 60, optional: true },
  /** Inductance of one phase, which takes its share of the voltage at speed. Default: 0 H. */
  phaseInductance: {
    kind: 'inductance',
    min: 0,
    max: '0.1 H',
    usual: ['2 uH', '10 mH'],
    default: '0 H',
    because: 'not stated: the voltage across the inductance is neglected',
  },
  /** Counts of the encoder per turn of the motor. Default: 16384. */
  encoderCounts: {
    integer: true,
    min: 12,
    max: 16_777_216,
    usual: [200, 1_100_000],
    default: 16_384,
    because: 'a magnetic encoder of 14 bits on the motor shaft',
    level: 'commonPractice',
  },
  /** Worst error of the encoder over a turn of the motor. Default: 0.5 deg. */
  encoderAccuracy: {
    kind: 'angle',
    min: 0,
    max: '45 deg',
    usual: ['0.002 deg', '4 deg'],
    default: '0.5 deg',
    because: 'a magnet over a sensor chip, mounted by hand',
    level: 'commonPractice',
  },
  /** Moment of inertia of the rotor. */
  rotorInertia: { kind: 'momentOfInertia', min: '0.001 kg mm^2', max: '0.1 kg m^2', usual: ['0.03 kg mm^2', '0.02 kg m^2'] },
  /** Mass of the motor. */
  mass: { kind: 'mass', min: '2 g', max: '20 kg', usual: ['8 g', '4 kg'] },
  /** Specific heat of the motor as one body: what a stall of a stated time warms up. Default: 450 J/(kg K). */
  specificHeat: {
    kind: 'specificHeat',
    min: '100 J/(kg K)',
    max: '2000 J/(kg K)',
    usual: ['300 J/(kg K)', '900 J/(kg K)'],
    default: '450 J/(kg K)',
    because: 'steel, copper and some aluminium together',
    level: 'commonPractice',
  },
  /** Outer diameter of the motor. */
  canDiameter: { kind: 'length', min: '4 mm', max: '500 mm', usual: ['10 mm', '160 mm'] },
  /** Length of the motor without its shaft. */
  canLength: { kind: 'length', min: '2 mm', max: '500 mm', usual: ['5 mm', '160 mm'] },
  /** Inner diameter of the ring of contact with the plate. */
  mountInnerDiameter: { kind: 'length', min: 0, max: '500 mm', usual: ['1.5 mm', '120 mm'] },
  /** Outer diameter of the ring of contact with the plate. */
  mountOuterDiameter: { kind: 'length', min: '2 mm', max: '500 mm', usual: ['5 mm', '160 mm'] },
  /** Depth of the tapped holes in its face. A longer screw damages the winding. */
  tapDepth: { kind: 'length', above: 0, max: '100 mm', usual: ['1.5 mm', '20 mm'], optional: true },
  /** Thermal resistance from winding to mounting face. Default: 1.2 K/W. */
  windingToMount: {
    kind: 'thermalResistance',
    min: '0.005 K/W',
    max: '100 K/W',
    usual: ['0.08 K/W', '10 K/W'],
    default: '1.2 K/W',
    because: 'an outrunner of this size; calibrate with one heating curve',
  },
  /** Thermal resistance from stator to the rotating can through air gap and bearings. Default: 4 K/W. */
  mountToCan: {
    kind: 'thermalResistance',
    min: '0.02 K/W',
    max: '200 K/W',
    usual: ['0.3 K/W', '25 K/W'],
    default: '4 K/W',
    because: 'an outrunner of this size; calibrate with one heating curve',
  },
  /** Emissivity of the can. Default: 0.8. */
  canEmissivity: {
    kind: 'ratio',
    above: 0,
    max: 1,
    usual: [0.03, 1],
    default: 0.8,
    because: 'anodised or painted; tables disagree widely',
    level: 'unverified',
  },
  /** Temperature suffix of the magnet grade. Default: none. */
  magnetSuffix: {
    oneOf: ['none', 'M', 'H', 'SH', 'UH', 'EH'],
    default: 'none',
    because: 'the weakest grade, since catalogues rarely state it',
  },
  /** Thermal class of the winding insulation. Default: B. */
  windingClass: { oneOf: ['A', 'E', 'B', 'F', 'H', 'N'], default: 'B', because: 'a cautious class, since catalogues rarely state it' },
} as const satisfies Fields
