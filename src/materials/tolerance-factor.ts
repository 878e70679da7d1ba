import { formula } from '../formula/index.js'
import { chiSquareQuantile, normalQuantile } from '../numeric/index.js'

/**
 * How many standard deviations either side of the mean of a sample hold a share of all parts with a confidence (two-sided tolerance factor, normal
 * scatter). Small samples pay dearly: five coupons need twice the width of fifty.
 */
export const toleranceFactor = /* @__PURE__ */ formula('materials.toleranceFactor', {
  inputs: {
    /** Number of coupons. */
    sampleSize: { kind: 'count', min: 2 },
    /** Share of all parts that is to lie within. */
    coverage: { kind: 'ratio', above: 0, below: 1, default: 0.9 },
    /** Confidence in that. */
    confidence: { kind: 'ratio', above: 0, below: 1, default: 0.95 },
  },
  /** Factor on the sample's standard deviation. */
  output: 'ratio',
  assumes: [
    'normal scatter',
    'coupons drawn at random from what will be built',
    'Howe’s approximation, from five coupons and a confidence of 90 % on: within 1 % of the exact factor for 90 to 95 % of the scatter, 1.5 % for 99 %',
  ],
  source: [{ level: 'unverified', where: 'Howe 1969, as the NIST/SEMATECH e-Handbook of Statistical Methods gives it, section 7.2.6.3' }],
  valid: { 'at least five coupons': ({ sampleSize }) => sampleSize >= 5 },
  si: ({ sampleSize, coverage, confidence }) =>
    normalQuantile((1 + coverage) / 2) *
    Math.sqrt(((sampleSize - 1) * (1 + 1 / sampleSize)) / chiSquareQuantile(1 - confidence, sampleSize - 1)),
})
