import { formula } from '../formula/index.js'
import { PIN_DIAMETER } from './pin-inputs.js'

/** Surface factor a·S^b with S in MPa. */
const SURFACES = { ground: [1.58, -0.085], machined: [4.51, -0.265], hotRolled: [57.7, -0.718], forged: [272, -0.995] } as const
/** Reliability factors for 8 % scatter of the endurance limit. */
const RELIABILITIES = { '50 %': 1, '90 %': 0.897, '95 %': 0.868, '99 %': 0.814, '99.9 %': 0.753 } as const

/** The endurance limit of a steel pin, from its tensile strength, surface, size and required reliability. */
export const pinEnduranceLimit = /* @__PURE__ */ formula('fasteners.pinEnduranceLimit', {
  inputs: {
    /** Tensile strength of the pin. */
    tensileStrength: { kind: 'stress', above: 0 },
    ...PIN_DIAMETER,
    /** Whether the load goes round the pin (a turning shaft) or always bends it the same way. */
    bending: { oneOf: ['rotating', 'fixedDirection'], default: 'fixedDirection' },
    /** Surface. */
    surface: { oneOf: ['ground', 'machined', 'hotRolled', 'forged'], default: 'ground' },
    /** Share of pins that must survive. */
    reliability: { oneOf: ['50 %', '90 %', '95 %', '99 %', '99.9 %'], default: '50 %' },
  },
  output: {
    /** Endurance limit of the pin. */
    enduranceLimit: 'stress',
    /** Endurance limit in shear, 0.577 of that. */
    shearEnduranceLimit: 'stress',
    /** Surface factor. */
    surfaceFactor: 'ratio',
    /** Size factor. */
    sizeFactor: 'ratio',
  },
  equation: ['shearEnduranceLimit == 0.577 * enduranceLimit'],
  assumes: [
    'steel',
    'bending',
    'no gain for pins thinner than the test bar of 7.62 mm',
    'no corrosion or fretting: an oscillating pin in a dry bore frets',
  ],
  source: [{ level: 'published', where: 'Shigley 8th/9th ed., section 6-9 (Marin factors); reliability factors of table 6-5 unverified' }],
  valid: { 'diameter up to 51 mm': ({ diameter }) => diameter <= 0.051 * (1 + 1e-9) },
  si: ({ tensileStrength, diameter, bending, surface, reliability }) => {
    const [a, b] = SURFACES[surface]
    const surfaceFactor = Math.min(1, a * (tensileStrength / 1e6) ** b)
    const effective = (bending === 'rotating' ? 1 : 0.37) * diameter
    const sizeFactor = Math.min(1, (effective / 7.62e-3) ** -0.107)
    const specimen = Math.min(0.5 * tensileStrength, 700e6)
    const enduranceLimit = surfaceFactor * sizeFactor * RELIABILITIES[reliability] * specimen
    return { enduranceLimit, shearEnduranceLimit: 0.577 * enduranceLimit, surfaceFactor, sizeFactor }
  },
})

/** Reserve against fatigue under a mean and an alternating stress (modified Goodman line); check the largest stress against the yield strength as well. */
export const goodmanReserve = /* @__PURE__ */ formula('fasteners.goodmanReserve', {
  title: 'Goodman reserve',
  inputs: {
    /** Largest stress of the cycle. */
    largestStress: 'stress',
    /** Smallest stress of the cycle (negative when reversed). */
    smallestStress: 'stress',
    /** Endurance limit. */
    enduranceLimit: { kind: 'stress', above: 0 },
    /** Tensile strength. */
    tensileStrength: { kind: 'stress', above: 0 },
  },
  output: {
    /** Alternating stress: half the range. */
    alternatingStress: 'stress',
    /** Mean stress. */
    meanStress: 'stress',
    /** Reserve on both stresses together; infinite at rest. */
    reserve: { kind: 'ratio', infinite: true },
  },
  equation: [
    'alternatingStress = (largestStress - smallestStress) / 2',
    'meanStress = (largestStress + smallestStress) / 2',
    'reserve = 1 / (alternatingStress / enduranceLimit + max(0 Pa, meanStress) / tensileStrength)',
  ],
  assumes: ['infinite life', 'a compressive mean stress counts as zero'],
  source: [{ level: 'published', where: 'Shigley 9th ed., section 6-12 (modified Goodman)' }],
  requires: {
    smallestStress: {
      accepts: 'must not exceed the largest',
      holds: ({ smallestStress, largestStress }) => smallestStress <= largestStress,
    },
  },
  si: ({ largestStress, smallestStress, enduranceLimit, tensileStrength }) => {
    const alternatingStress = (largestStress - smallestStress) / 2
    const meanStress = (largestStress + smallestStress) / 2
    const used = alternatingStress / enduranceLimit + Math.max(0, meanStress) / tensileStrength
    return { alternatingStress, meanStress, reserve: used === 0 ? Number.POSITIVE_INFINITY : 1 / used }
  },
})
