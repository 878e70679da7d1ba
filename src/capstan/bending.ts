import { formula } from '../formula/index.js'
import { CORD_DIAMETER, ROPE_GRADE } from './cord-inputs.js'

/** Ratio of pulley to cord diameter, at the cord's centre line, that bending life is judged by. */
export const bendRatio = /* @__PURE__ */ formula('capstan.bendRatio', {
  title: 'bending diameter over cord diameter',
  inputs: {
    /** Centre-line radius of the smaller pulley. */
    centreLineRadius: { kind: 'length', above: 0 },
    ...CORD_DIAMETER,
  },
  output: 'ratio',
  equation: ['result = 2 * centreLineRadius / cordDiameter'],
  source: [{ level: 'commonPractice', where: 'D/d of rope practice' }],
  si: ({ centreLineRadius, cordDiameter }) => (2 * centreLineRadius) / cordDiameter,
})

/**
 * Share of its strength that a cord keeps over a pulley: all of it down to a least bend ratio, less below. Both coefficients belong to a cord and
 * to tests of it; braids of UHMWPE are reported to keep all of it down to 8 or 10.
 */
export const bendEfficiency = /* @__PURE__ */ formula('capstan.bendEfficiency', {
  title: 'strength that a cord keeps over a pulley',
  inputs: {
    /** Pulley over cord diameter, at the cord's centre line. */
    bendRatio: { kind: 'ratio', above: 0 },
    /** Bend ratio from which the cord keeps its whole strength. */
    leastBendRatio: { kind: 'ratio', above: 0 },
    /** Power with which the strength falls below it; 1 is a straight line through zero. */
    exponent: { kind: 'ratio', above: 0, default: 1 },
  },
  /** Share kept; goes into `workingTension`. */
  output: 'ratio',
  equation: ['result = min(1, (bendRatio / leastBendRatio)^exponent)'],
  assumes: ['one static pull: wear and fatigue over the pulley come on top'],
  valid: { 'bend ratio of at least half the least one': ({ bendRatio, leastBendRatio }) => bendRatio >= 0.5 * leastBendRatio },
  source: [
    {
      level: 'assumption',
      where: 'a power law in place of curves that makers keep to themselves; replace it by a break test over your pinion',
    },
  ],
  si: ({ bendRatio, leastBendRatio, exponent }) => Math.min(1, (bendRatio / leastBendRatio) ** exponent),
})

/** Share of its strength that a steel wire rope keeps while bent at rest over a pin or pulley. */
export const wireRopeBendEfficiency = /* @__PURE__ */ formula('capstan.wireRopeBendEfficiency', {
  inputs: {
    /** Pulley over rope diameter. */
    bendRatio: { kind: 'ratio', min: 1 },
  },
  /** Share kept; goes into `workingTension`. */
  output: 'ratio',
  equation: ['result = 1 - 0.5 / sqrt(bendRatio)'],
  assumes: ['one static pull: a running rope loses more, and tires'],
  valid: { 'bend ratio of at most 40, as charted': ({ bendRatio }) => bendRatio <= 40 },
  source: [{ level: 'unverified', where: 'rigging handbooks, chart of sling efficiency over pins: 1 - 0.5/√(D/d)' }],
  si: ({ bendRatio }) => 1 - 0.5 / Math.sqrt(bendRatio),
})

/** Least bend ratio of a pulley for control cable at a working load: small loads may turn sharply. */
export const controlCableBendRatio = /* @__PURE__ */ formula('capstan.controlCableBendRatio', {
  inputs: {
    /** Working tension over breaking strength. */
    loadShare: { kind: 'ratio', min: 0, max: 0.2 },
  },
  /** Pulley over cable diameter, by straight lines between the printed 1, 10 and 20 %. */
  output: 'ratio',
  equation: ['result = loadShare <= 0.01 ? 10 : loadShare <= 0.1 ? 10 + (loadShare - 0.01) / 0.09 * 10 : 20 + (loadShare - 0.1) / 0.1 * 8'],
  source: [{ level: 'published', where: 'MIL-F-18372, pulley ratio against cable load (read from a page that lost the table lines)' }],
  si: ({ loadShare }) =>
    loadShare <= 0.01 ? 10 : loadShare <= 0.1 ? 10 + ((loadShare - 0.01) / 0.09) * 10 : 20 + ((loadShare - 0.1) / 0.1) * 8,
})

/** Bending stress in the wires of a rope laid over a pulley. */
export const wireBendingStress = /* @__PURE__ */ formula('capstan.wireBendingStress', {
  inputs: {
    /** Modulus of the wire. */
    modulus: { kind: 'modulus', above: 0 },
    /** Diameter of one wire. */
    wireDiameter: { kind: 'length', above: 0 },
    /** Diameter of the pulley at the cord's centre line. */
    pulleyDiameter: { kind: 'length', above: 0 },
  },
  output: 'stress',
  equation: ['result = modulus * wireDiameter / pulleyDiameter'],
  assumes: ['wires bend as single beams'],
  source: [{ level: 'unverified', where: 'Reuleaux: sigma = E d/D' }],
  si: ({ modulus, wireDiameter, pulleyDiameter }) => (modulus * wireDiameter) / pulleyDiameter,
})

/**
 * Bending cycles a wire rope survives over pulleys, by the regression form of rope research. Its coefficients belong to one construction
 * and one test programme: no coefficients are built in.
 */
export const bendingCycles = /* @__PURE__ */ formula('capstan.bendingCycles', {
  inputs: {
    /** Pulley over rope diameter. */
    bendRatio: { kind: 'ratio', min: 4 },
    /** Tension of the rope. */
    tension: { kind: 'force', above: 0 },
    /** Diameter of the rope. */
    ropeDiameter: { kind: 'length', above: 0 },
    ...ROPE_GRADE,
    /** Constant term. */
    b0: 'ratio',
    /** Factor of the load term. */
    b1: 'ratio',
    /** Factor of the bend ratio. */
    b2: 'ratio',
    /** Factor of load and bend ratio together. */
    b3: 'ratio',
    /** Product of the factors for diameter, length, core and so on. */
    corrections: { kind: 'ratio', above: 0, default: 1 },
  },
  /** Cycles, mean of the tests the coefficients came from. */
  output: 'count',
  equation: [
    'lgBend = log10(bendRatio)',
    'load = log10(tension / ropeDiameter^2 / (1 N / mm^2)) - 0.4 * log10(grade / (1770 N / mm^2))',
    'result = 10^(b0 + (b1 + b3 * lgBend) * load + b2 * lgBend) * corrections',
  ],
  source: [
    {
      level: 'unverified',
      where: 'Feyrer, Wire Ropes: endurance regression for bending over sheaves (unit tension 1 N/mm², wires 1770 N/mm²)',
    },
  ],
  si: ({ bendRatio, tension, ropeDiameter, grade, b0, b1, b2, b3, corrections }) => {
    const lgBend = Math.log10(bendRatio)
    const load = Math.log10(tension / (ropeDiameter * ropeDiameter) / 1e6) - 0.4 * Math.log10(grade / 1.77e9)
    return 10 ** (b0 + (b1 + b3 * lgBend) * load + b2 * lgBend) * corrections
  },
})
