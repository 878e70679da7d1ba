import * as z from 'zod'
import { flag, maybe, q, silent, word } from './fields.js'
import { material } from './tables.js'

/** The motor of both drives. */
export const motor = z.strictObject({
  speedConstant: q('speedConstant', { above: 0 }, 'Speed constant Kv.'),
  speedConstantBasis: silent(
    word(
      ['spunPeakLineToLine', 'noLoadSixStep', 'catalogue'],
      'How Kv was found: peak line-to-line EMF of the spun motor, no-load speed over DC voltage in six-step drive, or a catalogue that does not say.',
    ),
    'catalogue',
    'not specified: the constant is known to some per cent only',
    'commonPractice',
  ),
  terminalResistance: q('electricalResistance', { above: 0 }, 'Resistance between two terminals at 20 degC.'),
  noLoadCurrent: silent(q('current', { min: 0 }, 'No-load current.'), '0.5 A', 'an outrunner of this size'),
  noLoadVoltage: silent(
    q('voltage', { above: 0 }, 'Voltage at which the no-load current was measured.'),
    '10 V',
    'the usual test voltage',
    'commonPractice',
  ),
  polePairs: maybe(q('count', { min: 1, max: 60 }, 'Pole pairs; needed with phaseInductance.')),
  phaseInductance: silent(
    q('inductance', { min: 0 }, 'Inductance of one phase: the voltage across it grows with speed.'),
    '0 H',
    'not specified: the voltage across the inductance is neglected',
  ),
  encoderCounts: silent(
    q('count', { min: 12, max: 16_777_216 }, 'Counts of the encoder per turn of the motor.'),
    16_384,
    'a magnetic encoder of 14 bits on the motor shaft',
    'commonPractice',
  ),
  encoderAccuracy: silent(
    q('angle', { min: 0 }, 'Worst error of the encoder over a turn of the motor.'),
    '0.5 deg',
    'a magnet over a sensor chip, mounted by hand',
    'commonPractice',
  ),
  rotorInertia: q('momentOfInertia', { above: 0 }, 'Moment of inertia of the rotor.'),
  mass: q('mass', { above: 0 }, 'Mass of the motor.'),
  specificHeat: silent(
    q('specificHeat', { above: 0 }, 'Specific heat of the motor as one body: what a stall of a stated time warms up.'),
    '450 J/(kg K)',
    'steel, copper and some aluminium together',
    'commonPractice',
  ),
  canDiameter: q('length', { above: 0 }, 'Outer diameter of the motor.'),
  canLength: q('length', { above: 0 }, 'Length of the motor without its shaft.'),
  mountInnerDiameter: q('length', { min: 0 }, 'Inner diameter of the ring of contact with the plate.'),
  mountOuterDiameter: q('length', { above: 0 }, 'Outer diameter of the ring of contact with the plate.'),
  windingToMount: silent(
    q('thermalResistance', { above: 0 }, 'Thermal resistance from winding to mounting face.'),
    '1.2 K/W',
    'an outrunner of this size; calibrate with one heating curve',
  ),
  mountToCan: silent(
    q('thermalResistance', { above: 0 }, 'Thermal resistance from stator to the rotating can through the air gap and bearings.'),
    '4 K/W',
    'an outrunner of this size; calibrate with one heating curve',
  ),
  canEmissivity: silent(
    q('ratio', { above: 0, max: 1 }, 'Emissivity of the can.'),
    0.8,
    'anodised or painted; tables disagree widely',
    'unverified',
  ),
  magnetSuffix: silent(
    word(['none', 'M', 'H', 'SH', 'UH', 'EH'], 'Temperature suffix of the magnet grade.'),
    'none',
    'the weakest grade, since catalogues rarely say',
  ),
  windingClass: silent(
    word(['A', 'E', 'B', 'F', 'H', 'N'], 'Thermal class of the winding insulation.'),
    'B',
    'a cautious class, since catalogues rarely say',
  ),
})

/** The printed plate the motor is bolted to. */
export const plate = z.strictObject({
  material: material('Polymer of the plate.'),
  thickness: q('length', { above: 0 }, 'Thickness of the plate.'),
  width: q('length', { above: 0 }, 'Width of the plate.'),
  height: q('length', { above: 0 }, 'Height of the plate.'),
  emissivity: silent(q('ratio', { above: 0, max: 1 }, 'Emissivity of the plate.'), 0.9, 'plastics generally 0.85 to 0.95', 'unverified'),
  contactConductance: silent(
    q('heatTransferCoefficient', { above: 0 }, 'Contact conductance between motor and plate.'),
    '1500 W/(m^2 K)',
    'dry metal on printed polymer, bolted',
  ),
})

/** A metal sink between motor and plate. */
export const sink = z.strictObject({
  material: material('Metal of the sink.'),
  thickness: q('length', { above: 0 }, 'Thickness of the sink.'),
  width: q('length', { above: 0 }, 'Width of the sink.'),
  height: q('length', { above: 0 }, 'Height of the sink.'),
  emissivity: silent(q('ratio', { above: 0, max: 1 }, 'Emissivity of the sink.'), 0.8, 'anodised aluminium', 'unverified'),
})

/** The motor controller. */
export const controller = z.strictObject({
  onResistance: silent(
    q('electricalResistance', { above: 0 }, 'On-resistance of one switch when hot.'),
    '4 mohm',
    'a small three-phase bridge',
  ),
  switchingLoss: silent(
    q('power', { min: 0 }, 'Loss besides conduction: switching, gate drive, logic.'),
    '0.6 W',
    'a small three-phase bridge',
  ),
  currentLimit: q('peakPhaseCurrent', { above: 0 }, 'Highest peak phase current it is set to deliver.'),
  temperatureLimit: silent(
    q('temperature', {}, 'Highest board temperature.'),
    '100 degC',
    'usual thermal throttling threshold',
    'commonPractice',
  ),
  toAir: silent(
    q('thermalResistance', { above: 0 }, 'Thermal resistance from board to air.'),
    '14 K/W',
    'a bare board of 40 mm square in still air',
  ),
})

/** Battery or mains supply. */
export const supply = z.strictObject({
  voltage: q('voltage', { above: 0 }, 'Open-circuit voltage at the state of charge you count on.'),
  internalResistance: silent(
    q('electricalResistance', { min: 0 }, 'Resistance of battery, fuse and leads.'),
    '60 mohm',
    'a small pack with its leads',
  ),
  currentLimit: q('current', { above: 0 }, 'Highest current of fuse, leads or pack.'),
  takesBack: silent(flag('Whether it accepts power that braking legs return.'), true, 'a battery does'),
})
