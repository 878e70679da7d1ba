import { formula, property } from '../formula/index.js'
import { chiSquareQuantile, normalCdf, studentTQuantile } from '../numeric/index.js'

/** Undersize and scatter of printed holes of 3 to 10 mm, until a coupon of your own replaces them. */
export const printedHolePrior = {
  /** Drawn diameter minus printed diameter, on average. */
  undersize: /* @__PURE__ */ property('length', {
    typical: '0.12 mm',
    low: '0.05 mm',
    high: '0.25 mm',
    source: { level: 'unverified', where: 'published metrology of fused-filament prints; no universal value is defensible' },
    conditions: 'holes of 3 to 10 mm, axis upright; print a coupon',
  }),
  /** Standard deviation between holes of one print. */
  scatter: /* @__PURE__ */ property('length', {
    typical: '0.05 mm',
    low: '0.03 mm',
    high: '0.08 mm',
    source: { level: 'unverified', where: 'published metrology of fused-filament prints' },
    conditions: 'one printer, one material; print a coupon',
  }),
}

/**
 * Probabilities that a pin is loose in its hole and that it splits the boss, when both diameters scatter.
 *
 * Loose means less interference than needed; split means more than the boss allows (`allowableInterference`).
 */
export const fitProbability = /* @__PURE__ */ formula('fasteners.fitProbability', {
  title: 'chance of a loose pin and of a split boss',
  inputs: {
    /** Mean pin diameter. */
    pinDiameter: { kind: 'length', above: 0 },
    /** Standard deviation of the pin; a sixth of the tolerance for machined pins. */
    pinScatter: { kind: 'length', min: 0 },
    /** Mean hole diameter as printed. */
    holeDiameter: { kind: 'length', above: 0 },
    /** Standard deviation of the hole. */
    holeScatter: { kind: 'length', above: 0 },
    /** Least interference that is needed. */
    neededInterference: { kind: 'length', default: '0 mm' },
    /** Largest allowable interference of the boss. */
    allowableInterference: { kind: 'length', above: 0 },
  },
  output: {
    /** Mean diametral interference. */
    mean: 'length',
    /** Standard deviation of the interference. */
    scatter: 'length',
    /** Probability of less interference than needed. */
    looseProbability: 'ratio',
    /** Probability of more interference than the boss allows. */
    splitProbability: 'ratio',
    /** Probability of a good fit. */
    goodProbability: 'ratio',
  },
  equation: ['mean = pinDiameter - holeDiameter', 'scatter = sqrt(pinScatter^2 + holeScatter^2)'],
  assumes: ['both diameters normally distributed and independent'],
  source: [{ level: 'published', where: 'Shigley 9th ed., section 1-10 and 20-3 (interference of normal variables)' }],
  requires: {
    allowableInterference: {
      accepts: 'must be larger than the interference needed',
      holds: ({ allowableInterference, neededInterference }) => allowableInterference > neededInterference,
    },
  },
  si: ({ pinDiameter, pinScatter, holeDiameter, holeScatter, neededInterference, allowableInterference }) => {
    const mean = pinDiameter - holeDiameter
    const scatter = Math.hypot(pinScatter, holeScatter)
    const looseProbability = normalCdf((neededInterference - mean) / scatter)
    const splitProbability = normalCdf((mean - allowableInterference) / scatter)
    const goodProbability = Math.max(0, 1 - looseProbability - splitProbability)
    return { mean, scatter, looseProbability, splitProbability, goodProbability }
  },
})

/** Mean and scatter of printed holes from a coupon you measured, with their confidence limits. They replace the prior. */
export const holeCoupon = /* @__PURE__ */ formula('fasteners.holeCoupon', {
  inputs: {
    /** Measured diameters of holes that were drawn alike, at least three. */
    diameters: { list: { kind: 'length', above: 0 }, least: 3 },
    /** Diameter they were drawn with. */
    drawn: { kind: 'length', above: 0 },
    /** Confidence of the limits. */
    confidence: { kind: 'ratio', above: 0, below: 1, default: 0.95 },
  },
  output: {
    /** Mean diameter. */
    mean: 'length',
    /** Drawn minus mean: add it to the drawing. */
    undersize: 'length',
    /** Standard deviation. */
    scatter: 'length',
    /** Half-width of the confidence interval of the mean. */
    meanUncertainty: 'length',
    /** Upper confidence limit of the standard deviation: a few holes determine it poorly. */
    scatterUpperLimit: 'length',
  },
  assumes: ['diameters normally distributed and independent'],
  source: [{ level: 'published', where: 'any statistics text: Student t interval of a mean, chi-square limit of a variance' }],
  si: ({ diameters, drawn, confidence }) => {
    const n = diameters.length
    let sum = 0
    for (const x of diameters) sum += x
    const mean = sum / n
    let squares = 0
    for (const x of diameters) squares += (x - mean) * (x - mean)
    const scatter = Math.sqrt(squares / (n - 1))
    return {
      mean,
      undersize: drawn - mean,
      scatter,
      meanUncertainty: (studentTQuantile(0.5 + confidence / 2, n - 1) * scatter) / Math.sqrt(n),
      scatterUpperLimit: Math.sqrt(squares / chiSquareQuantile(1 - confidence, n - 1)),
    }
  },
})
