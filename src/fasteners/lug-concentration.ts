import { formula } from '../formula/index.js'
import { LUG_HOLE } from './pin-inputs.js'

/** Polynomials of factor times ratio in the ratio of diameter to width, fitted to finite elements within 0.5 %. */
const POLYNOMIALS = {
  round: [0.84601917, 0.40483428, 3.4723967, -5.89269304, 6.10078571],
  square: [0.79458773, 0.86023643, -1.21063801, 2.33528145, -0.89287069],
} as const

/**
 * Ratio of the largest stress at a pin hole to the average over the net section. It governs in brittle prints and in fatigue.
 *
 * Use the factor in `lugNetSection`. For a given width the peak is least with a pin of about a third of the width (round end) or two fifths (square end).
 */
export const lugStressConcentration = /* @__PURE__ */ formula('fasteners.lugStressConcentration', {
  inputs: {
    /** Width of the lug across the load. */
    width: { kind: 'length', above: 0 },
    ...LUG_HOLE,
    /** End of the lug: round and concentric with the hole, or square and at least one width beyond the middle of the hole. */
    end: { oneOf: ['round', 'square'] },
  },
  output: {
    /** Largest stress over the average of the net section. */
    factor: 'ratio',
    /** Largest stress over the average pressure of the pin, force over diameter times thickness. */
    bearingFactor: 'ratio',
  },
  assumes: [
    'close pin that presses as a cosine over half of the hole: photoelastic charts of lugs lie 5 to 18 % higher, a loose pin higher still',
    'elastic plane lug, load along its middle',
  ],
  source: [
    { level: 'referenceLibrary', where: 'plane-stress finite elements' },
    {
      level: 'unverified',
      where: "Peterson's Stress Concentration Factors, chart of square-ended lugs: 12.882 − 52.714 x + 89.762 x² − 51.667 x³",
    },
  ],
  requires: { diameter: { accepts: 'must be smaller than the width', holds: ({ diameter, width }) => diameter < width } },
  valid: {
    'hole from 0.15 to 0.75 of the width': ({ diameter, width }) =>
      diameter >= 0.15 * width * (1 - 1e-9) && diameter <= 0.75 * width * (1 + 1e-9),
  },
  si: ({ width, diameter, end }) => {
    const x = diameter / width
    const [a, b, c, d, e] = POLYNOMIALS[end]
    const factor = (a + x * (b + x * (c + x * (d + x * e)))) / x
    return { factor, bearingFactor: (factor * x) / (1 - x) }
  },
})
