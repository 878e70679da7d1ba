import type { Given, Si } from '../formula/index.js'

/** A cord of the builder's stock. */
export const CORD = {
  /** Diameter under tension. */
  diameter: { kind: 'length', above: 0 },
  /** Breaking strength, straight and new. */
  breakingStrength: { kind: 'force', above: 0 },
  /** Axial rigidity of the bedded-in cord. */
  axialRigidity: { kind: 'axialRigidity', above: 0 },
  /** Friction on the pinion: low and high end. */
  friction: { fields: { low: { kind: 'ratio', above: 0 }, high: { kind: 'ratio', above: 0 } } },
  /** Least ratio of pulley to cord diameter. */
  leastBendRatio: { kind: 'ratio', min: 1, default: 8 },
  /** Factor between strength and highest working tension. */
  designFactor: { kind: 'ratio', min: 1, default: 5 },
  /** Share of the strength that the ends keep. */
  endEfficiency: { kind: 'ratio', above: 0, max: 1, default: 0.8 },
  /** Least share of the pretension left after the time on the shelf. */
  pretensionLeft: { kind: 'ratio', above: 0, max: 1, default: 0.75 },
  /** Expansion along the cord. */
  expansion: { kind: 'thermalExpansion', default: '0 1/K' },
  /** Constructional stretch that comes out while the cord beds in. */
  beddingStrain: { kind: 'strain', min: 0, default: '0.5 %' },
  /** Creep between two settings of the tensioner. */
  creepStrain: { kind: 'strain', min: 0, default: '0.2 %' },
} as const

/** What a drive shall do and where it must fit. */
export const WISH = {
  /** Reduction, drum over pinion. */
  ratio: { kind: 'ratio', above: 1 },
  /** Largest torque at the joint. */
  torque: { kind: 'torque', above: 0 },
  /** Travel of the joint from end to end. */
  travel: { kind: 'angle', above: 0 },
  /** Largest outer diameter of the drum, cord included. */
  drumSpace: { kind: 'length', above: 0 },
  /** Largest axial length of pinion and drum. */
  axialSpace: { kind: 'length', above: 0 },
  /** Largest centre distance. Default: no limit. */
  centreSpace: { kind: 'length', above: 0, default: '1 m' },
  /** Largest travel of the tensioner. Default: no limit. */
  tensionerSpace: { kind: 'length', above: 0, default: '1 m' },
  /** Largest force on the shaft of the motor. Default: no limit. */
  shaftForce: { kind: 'force', above: 0, default: '1 MN' },
  /** Whether the cord crosses between pinion and drum. Default crossed. */
  arrangement: { oneOf: ['crossed', 'open'], default: 'crossed' },
  /** How the pinion may hold its cord. Default: either way. */
  hold: { oneOf: ['clampedMidPinion', 'frictionOnly', 'either'], default: 'either' },
  /** Required reserve of the torque held over the torque needed. */
  requiredReserve: { kind: 'ratio', min: 1, default: 1.3 },
  /** Coldest temperature less the temperature at tensioning. Default 0. */
  coldest: { kind: 'temperatureDifference', max: '0 K', default: '0 K' },
  /** Warmest temperature less the temperature at tensioning. Default 0. */
  warmest: { kind: 'temperatureDifference', min: 0, default: '0 K' },
  /** Expansion of the frame that sets the centre distance. */
  frameExpansion: { kind: 'thermalExpansion', default: '0 1/K' },
} as const

/** A cord as it may be written. */
export type CordGiven = Given<typeof CORD>
/** A cord of the builder's stock. */
export type CordStock = Si<typeof CORD>
/** Task of a drive, and the space that it must fit, SI. */
export type DriveWishNumbers = Si<typeof WISH>
