import { formula } from '../formula/index.js'

const FILLER_RATIO = {
  /** Property of the filler over that of the polymer. */
  fillerRatio: { kind: 'ratio', min: 0 },
} as const

const FEAT =
  'test of the open library feat (doi 10.1080/15376494.2014.938792, p. 11): transverse modulus of a lamina by the Halpin-Tsai relation'

/** Share of a filled polymer's volume that is fibre, from the share of its mass. */
export const fibreVolumeShare = /* @__PURE__ */ formula('materials.fibreVolumeShare', {
  inputs: {
    /** Share of the mass that is fibre, as the name of a filament states it. */
    massShare: { kind: 'ratio', min: 0, max: 1 },
    /** Density of the fibre. */
    fibreDensity: { kind: 'density', above: 0 },
    /** Density of the polymer without fibre. */
    matrixDensity: { kind: 'density', above: 0 },
  },
  /** Share of the volume without voids. */
  output: 'ratio',
  equation: ['result = massShare / fibreDensity / (massShare / fibreDensity + (1 - massShare) / matrixDensity)'],
  assumes: ['no voids'],
  source: [{ level: 'commonPractice', where: 'volumes of the constituents add' }],
  si: ({ massShare, fibreDensity, matrixDensity }) => {
    const fibre = massShare / fibreDensity
    return fibre / (fibre + (1 - massShare) / matrixDensity)
  },
})

/**
 * A property of a filled polymer over that of the polymer, where filler and polymer share in it by their amounts (rule of mixtures).
 * By mass: specific heat, water taken up. By volume: Poisson's ratio; stiffness and conductivity along continuous fibres, which is an upper bound.
 */
export const ruleOfMixtures = /* @__PURE__ */ formula('materials.ruleOfMixtures', {
  inputs: {
    /** Share of the filler: of mass for properties per mass, else of volume. */
    share: { kind: 'ratio', min: 0, max: 1 },
    ...FILLER_RATIO,
  },
  /** Property of the mixture over that of the polymer. */
  output: 'ratio',
  equation: ['result = 1 - share + share * fillerRatio'],
  assumes: ['both constituents see the same strain or the same gradient'],
  source: [
    {
      level: 'published',
      where: 'worked example 14.5-1 of a course on engineering materials (epoxy with 60 % of glass: 43.2 GPa along the fibres)',
    },
  ],
  si: ({ share, fillerRatio }) => 1 - share + share * fillerRatio,
})

/**
 * A property of a filled polymer over that of the polymer by the relation of Halpin and Tsai, for stiffness and, in the same form, for conductivity.
 * The shape is twice the length over the diameter along short fibres, 2 for stiffness across them and for spheres, 1 for conductivity across fibres. A
 * filler that neither carries nor conducts (a void) has the ratio 0.
 */
export const halpinTsai = /* @__PURE__ */ formula('materials.halpinTsai', {
  inputs: {
    /** Share of the volume that is filler. */
    volumeShare: { kind: 'ratio', min: 0, max: 1 },
    ...FILLER_RATIO,
    /** Number for the shape of the filler and the direction. */
    shape: { kind: 'ratio', above: 0 },
  },
  /** Property of the mixture over that of the polymer. */
  output: 'ratio',
  equation: [
    'efficiency = (fillerRatio - 1) / (fillerRatio + shape)',
    'result = (1 + shape * efficiency * volumeShare) / (1 - efficiency * volumeShare)',
  ],
  assumes: ['filler bonded to the polymer', 'all fibres in one direction'],
  source: [
    { level: 'published', where: FEAT },
    { level: 'unverified', where: 'Halpin & Kardos 1976, Polymer Engineering & Science 16:344 (the relation and its shape numbers)' },
  ],
  valid: { 'a share of filler of at most one half of the volume': ({ volumeShare }) => volumeShare <= 0.5 },
  si: ({ volumeShare, fillerRatio, shape }) => {
    const efficiency = (fillerRatio - 1) / (fillerRatio + shape)
    return (1 + shape * efficiency * volumeShare) / (1 - efficiency * volumeShare)
  },
})

/**
 * Thermal expansion of a fibre-filled polymer along its fibres: polymer and fibre pull against each other, each with its share of the stiffness.
 * With the stiffness that the print has it also holds for fibres that are short and not quite straight.
 */
export const fibreExpansion = /* @__PURE__ */ formula('materials.fibreExpansion', {
  inputs: {
    /** Share of the volume that is fibre. */
    volumeShare: { kind: 'ratio', min: 0, max: 1 },
    /** Expansion of the fibre along itself. */
    fibreExpansion: { kind: 'thermalExpansion' },
    /** Expansion of the polymer. */
    matrixExpansion: { kind: 'thermalExpansion' },
    /** Modulus of the polymer. */
    matrixModulus: { kind: 'modulus', above: 0 },
    /** Modulus of the filled polymer in the direction. */
    modulus: { kind: 'modulus', above: 0 },
  },
  /** Expansion of the filled polymer in the direction. */
  output: 'thermalExpansion',
  equation: ['result = fibreExpansion + (matrixExpansion - fibreExpansion) * (1 - volumeShare) * matrixModulus / modulus'],
  assumes: ['no stress across the fibres', 'what is stiff beyond the polymer is the part of the fibres'],
  source: [
    {
      level: 'unverified',
      where: 'Schapery 1968, J. Composite Materials 2:380 (expansion along the fibres; its abstract was read, not the equation)',
    },
  ],
  requires: {
    modulus: {
      accepts: 'must be at least what the polymer alone gives, its share times its modulus',
      holds: ({ volumeShare, matrixModulus, modulus }) => modulus >= (1 - volumeShare) * matrixModulus * (1 - 1e-12),
    },
  },
  si: ({ volumeShare, fibreExpansion: fibre, matrixExpansion, matrixModulus, modulus }) =>
    fibre + ((matrixExpansion - fibre) * (1 - volumeShare) * matrixModulus) / modulus,
})
