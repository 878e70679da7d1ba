import type { PropertyRow } from '../record.js'
import {
  CRANK,
  CRAWFORD_STRAIN,
  CRYSTALLINE_SHIFT,
  DRY_ASSUMED,
  EMISSIVITY_TABLES,
  FATIGUE_PRACTICE,
  GREASE_PRACTICE,
  LAYER_CRITERIA,
  PLA_IMMERSED,
  PLASTIC_EMISSIVITIES,
  PLASTICS_PRACTICE,
  PRINT_TRIBOMETER,
  SHIFT_MEMORY,
  SWELLING_OF_FILLED,
} from '../sources.js'

// PropertyRows that several polymers share because nothing better is known of any of them.

export const AMORPHOUS_1000_HOURS: PropertyRow<'ratio'> = [0.55, 0.5, 0.6, '1', PLASTICS_PRACTICE, 'steady load, 23 °C']
export const AMORPHOUS_1_YEAR: PropertyRow<'ratio'> = [0.32, 0.25, 0.4, '1', PLASTICS_PRACTICE, 'steady load for a year or more, 23 °C']
export const CRYSTALLINE_1000_HOURS: PropertyRow<'ratio'> = [0.55, 0.5, 0.6, '1', PLASTICS_PRACTICE, 'steady load, 23 °C']
export const CRYSTALLINE_1_YEAR: PropertyRow<'ratio'> = [0.28, 0.2, 0.35, '1', PLASTICS_PRACTICE, 'steady load for a year or more, 23 °C']
export const POLYMER_FATIGUE: PropertyRow<'ratio'> = [
  0.22,
  0.15,
  0.3,
  '1',
  FATIGUE_PRACTICE,
  'largest stress at 1e6 cycles, R = 0.1, over tensile strength; no self-heating',
]
export const LAYER_SHEAR_RATIO: PropertyRow<'ratio'> = [
  0.577,
  0.5,
  1,
  '1',
  LAYER_CRITERIA,
  'shear strength between layers over tensile strength across them',
]
export const GLASSY_STRAIN_LIMIT: PropertyRow<'strain'> = [
  0.75,
  0.5,
  1,
  '%',
  CRAWFORD_STRAIN,
  'design strain, long load; middle of 0.5 to 1',
]
export const BRITTLE_STRAIN_LIMIT: PropertyRow<'strain'> = [0.5, 0.4, 1, '%', CRAWFORD_STRAIN, 'design strain, long load, brittle glass']
export const FIBRE_STRAIN_LIMIT: PropertyRow<'strain'> = [
  0.3,
  0.2,
  0.4,
  '%',
  PLASTICS_PRACTICE,
  'design strain of brittle short-fibre grades under long load',
]
export const TOUGH_STRAIN_LIMIT: PropertyRow<'strain'> = [
  1.5,
  1,
  2,
  '%',
  CRAWFORD_STRAIN,
  'design strain of tough semicrystalline polymers under long load',
]
export const GLASSY_ACTIVATION: PropertyRow<'activationEnergy'> = [
  150,
  100,
  250,
  'kJ/mol',
  SHIFT_MEMORY,
  'below the glass transition; a fitted number, the result is very sensitive to it',
]
export const CRYSTALLINE_ACTIVATION: PropertyRow<'activationEnergy'> = [
  30,
  0,
  80,
  'kJ/mol',
  CRYSTALLINE_SHIFT,
  'beyond what the curve of stiffness over temperature already holds',
]
export const GREASED_FRICTION: PropertyRow<'ratio'> = [0.12, 0.05, 0.2, '1', GREASE_PRACTICE, 'on steel, greased, renewed as worn']
export const PLASTIC_EMISSIVITY: PropertyRow<'ratio'> = [0.91, 0.85, 0.95, '1', PLASTIC_EMISSIVITIES, 'long-wave, unpainted plastic']
export const METAL_EMISSIVITY: PropertyRow<'ratio'> = [
  0.15,
  0.07,
  0.3,
  '1',
  EMISSIVITY_TABLES,
  'bright steel: polished 0.07, cold rolled 0.09, ground 0.24; oxide and paint raise it',
]
export const HARDLY_WET_STRENGTH: PropertyRow<'ratio'> = [0.97, 0.93, 1, '1', DRY_ASSUMED, 'equilibrium at 50 % humidity over dry']
export const HARDLY_WET_SATURATED: PropertyRow<'ratio'> = [0.94, 0.88, 1, '1', DRY_ASSUMED, 'soaked over dry']
/** Printed PLA in damp air and in water. */
export const PLA_DAMP: PropertyRow<'ratio'> = [0.98, 0.95, 1, '1', PLA_IMMERSED, 'the loss was negligible even in water; the range is ours']
export const PLA_SOAKED: PropertyRow<'ratio'> = [
  0.97,
  0.92,
  1,
  '1',
  PLA_IMMERSED,
  'the loss after 7 days at 21 °C was negligible; at 70 °C the print broke down; the range is ours',
]
/** Printed ABS, PC and PLA on steel with oil or grease. */
export const PRINT_LUBRICATED: PropertyRow<'ratio'> = [
  0.1,
  0.04,
  0.2,
  '1',
  PRINT_TRIBOMETER,
  'printed ABS, PC and PLA, dry, oiled and greased together 0.04 to 0.2; printed ABS in oil 0.040 to 0.055',
]
export const PLASTIC_DIFFUSIVITY: PropertyRow<'massDiffusivity'> = [3e-12, 1e-12, 1e-11, 'm^2/s', CRANK, 'water, room temperature, solid']
/** Growth of a print with short fibres by the water it takes up. */
export const FILLED_SWELLING: PropertyRow<'ratio'> = [0.2, 0.05, 0.45, '1', SWELLING_OF_FILLED, 'linear strain per share of water by mass']
/** Conditions of values that polymers with short fibres share. */
export const EXPANSION_BY_FIBRES = 'along the roads; between straight long fibres and the stiffness of prints'
export const FLAT_FIBRES = 'flat fibres; PET with carbon fibre conducted more through a plate'
