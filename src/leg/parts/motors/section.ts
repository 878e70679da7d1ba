import type { Fields } from '../../schema/index.js'

/** One kind of motor. */
export const motor = {
  /** Speed constant Kv. */
  speedConstant: { kind: 'speedConstant', above: 0 },
  /** How Kv was found: peak line-to-line EMF of the spun motor, no-load speed over DC voltage in six-step drive, or a catalogue that does not say. Default: catalogue. */
  speedConstantBasis: {
    oneOf: ['spunPeakLineToLine', 'noLoadSixStep', 'catalogue'],
    default: 'catalogue',
    because: 'not stated: the constant is known to some per cent only',
    level: 'commonPractice',
  },
  /** Resistance between two terminals at 20 °C. */
  terminalResistance: { kind: 'electricalResistance', above: 0 },
  /** No-load current. Default: 0.5 A. */
  noLoadCurrent: { kind: 'current', min: 0, default: '0.5 A', because: 'an outrunner of this size' },
  /** Voltage at which the no-load current was measured. Default: 10 V. */
  noLoadVoltage: { kind: 'voltage', above: 0, default: '10 V', because: 'the usual test voltage', level: 'commonPractice' },
  /** Pole pairs. Needed with phaseInductance. */
  polePairs: { integer: true, min: 1, max: 60, optional: true },
  /** Inductance of one phase, which takes its share of the voltage at speed. Default: 0 H. */
  phaseInductance: { kind: 'inductance', min: 0, default: '0 H', because: 'not stated: the voltage across the inductance is neglected' },
  /** Counts of the encoder per turn of the motor. Default: 16384. */
  encoderCounts: {
    integer: true,
    min: 12,
    max: 16_777_216,
    default: 16_384,
    because: 'a magnetic encoder of 14 bits on the motor shaft',
    level: 'commonPractice',
  },
  /** Worst error of the encoder over a turn of the motor. Default: 0.5 deg. */
  encoderAccuracy: {
    kind: 'angle',
    min: 0,
    default: '0.5 deg',
    because: 'a magnet over a sensor chip, mounted by hand',
    level: 'commonPractice',
  },
  /** Moment of inertia of the rotor. */
  rotorInertia: { kind: 'momentOfInertia', above: 0 },
  /** Mass of the motor. */
  mass: { kind: 'mass', above: 0, max: '50 kg' },
  /** Specific heat of the motor as one body: what a stall of a stated time warms up. Default: 450 J/(kg K). */
  specificHeat: {
    kind: 'specificHeat',
    above: 0,
    default: '450 J/(kg K)',
    because: 'steel, copper and some aluminium together',
    level: 'commonPractice',
  },
  /** Outer diameter of the motor. */
  canDiameter: { kind: 'length', above: 0, max: '500 mm' },
  /** Length of the motor without its shaft. */
  canLength: { kind: 'length', above: 0, max: '500 mm' },
  /** Inner diameter of the ring of contact with the plate. */
  mountInnerDiameter: { kind: 'length', min: 0, max: '500 mm' },
  /** Outer diameter of the ring of contact with the plate. */
  mountOuterDiameter: { kind: 'length', above: 0, max: '500 mm' },
  /** Depth of the tapped holes in its face. A longer screw damages the winding. */
  tapDepth: { kind: 'length', above: 0, max: '100 mm', optional: true },
  /** Thermal resistance from winding to mounting face. Default: 1.2 K/W. */
  windingToMount: {
    kind: 'thermalResistance',
    above: 0,
    default: '1.2 K/W',
    because: 'an outrunner of this size; calibrate with one heating curve',
  },
  /** Thermal resistance from stator to the rotating can through air gap and bearings. Default: 4 K/W. */
  mountToCan: {
    kind: 'thermalResistance',
    above: 0,
    default: '4 K/W',
    because: 'an outrunner of this size; calibrate with one heating curve',
  },
  /** Emissivity of the can. Default: 0.8. */
  canEmissivity: {
    kind: 'ratio',
    above: 0,
    max: 1,
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
