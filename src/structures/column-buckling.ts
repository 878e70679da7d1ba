import { formula } from '../formula/index.js'

/** Effective length over length by how the ends are held. */
const EFFECTIVE_LENGTH = { bothPinned: 1, fixedAndFree: 2, fixedAndPinned: 0.699155, bothFixed: 0.5 } as const

/**
 * Force at which a straight column buckles: Euler's load for a slender one, Johnson's parabola for a short one that yields as it buckles.
 *
 * Real ends are never quite fixed: for printed ends `'bothPinned'` is the safe choice where both are guided, `'fixedAndFree'` where one is not.
 */
export const columnBuckling = /* @__PURE__ */ formula('structures.columnBuckling', {
  inputs: {
    /** Compressive force. */
    force: { kind: 'force', min: 0 },
    /** Length of the column. */
    length: { kind: 'length', above: 0 },
    /** How the ends are held. */
    ends: { oneOf: ['bothPinned', 'fixedAndFree', 'fixedAndPinned', 'bothFixed'] },
    /** Area of the section. */
    area: { kind: 'area', above: 0 },
    /** Least second moment of area: a column buckles across its weak axis. */
    secondMoment: { kind: 'secondMomentOfArea', above: 0 },
    /** Modulus along the column, at its temperature and for the duration of the load. */
    modulus: { kind: 'modulus', above: 0 },
    /** Compressive yield strength. */
    yieldStrength: { kind: 'stress', above: 0 },
  },
  output: {
    /** Length of the column with pinned ends that buckles at the same force. */
    effectiveLength: 'length',
    /** Slenderness ratio: effective length over radius of gyration. */
    slenderness: 'ratio',
    /** Slenderness ratio above which Euler's load governs. */
    transitionSlenderness: 'ratio',
    /** Force at which the column buckles. */
    criticalForce: 'force',
    /** Critical force over force; infinite without a force. */
    reserve: { kind: 'ratio', infinite: true },
    /** Which formula governs. */
    governedBy: { oneOf: ['euler', 'johnson'] },
  },
  equation: [
    'slenderness == effectiveLength / sqrt(secondMoment / area)',
    'transitionSlenderness = pi * sqrt(2 * modulus / yieldStrength)',
  ],
  assumes: ['straight column, force along its axis: a crooked or eccentric one bends from the start', 'one section along its length'],
  source: [
    { level: 'published', where: 'Gere, Mechanics of Materials, sections 11.3 and 11.4 (Euler, effective lengths)' },
    { level: 'published', where: 'Mott, Machine Elements in Mechanical Design, ch. 6 (column constant, Johnson)' },
  ],
  si: ({ force, length, ends, area, secondMoment, modulus, yieldStrength }) => {
    const effectiveLength = EFFECTIVE_LENGTH[ends] * length
    const slenderness = effectiveLength / Math.sqrt(secondMoment / area)
    const transitionSlenderness = Math.PI * Math.sqrt((2 * modulus) / yieldStrength)
    const isEuler = slenderness > transitionSlenderness
    const criticalForce = isEuler
      ? (Math.PI ** 2 * modulus * secondMoment) / effectiveLength ** 2
      : area * yieldStrength * (1 - (slenderness / transitionSlenderness) ** 2 / 2)
    return {
      effectiveLength,
      slenderness,
      transitionSlenderness,
      criticalForce,
      reserve: force === 0 ? Number.POSITIVE_INFINITY : criticalForce / force,
      governedBy: isEuler ? ('euler' as const) : ('johnson' as const),
    }
  },
})
