import { formula } from '../formula/index.js'
import { POISSON_RATIO } from './material-inputs.js'

/** Buckling coefficient of a long plate by load and by how its long edges are held. */
const COEFFICIENT = {
  compression: { simplySupported: 4, clamped: 6.97, oneEdgeFree: 0.425 },
  bending: { simplySupported: 23.9, clamped: 39.6, oneEdgeFree: 0.85 },
} as const

/** Stress at which a flat wall buckles between its edges: the thin wall of a hollow link dents long before the link as a whole buckles. */
export const wallBuckling = /* @__PURE__ */ formula('structures.wallBuckling', {
  inputs: {
    /** Width of the flat wall between its edges. */
    width: { kind: 'length', above: 0 },
    /** Thickness of the wall. */
    thickness: { kind: 'length', above: 0 },
    /** Modulus along the wall, at its temperature and for the duration of the load. */
    modulus: { kind: 'modulus', above: 0 },
    ...POISSON_RATIO,
    /** How the two long edges are held: the walls of a box hold each other as simple supports; a flange has one free edge. */
    edges: { oneOf: ['simplySupported', 'clamped', 'oneEdgeFree'], default: 'simplySupported' },
    /** Uniform compression, or bending in the wall's own plane (its largest compression counts). */
    load: { oneOf: ['compression', 'bending'], default: 'compression' },
  },
  /** Compressive stress at which the wall buckles. */
  output: 'stress',
  assumes: [
    'flat, elastic, long wall',
    'no help from infill, which supports the wall',
    'a wall buckles gradually: a box carries somewhat more',
  ],
  source: [
    { level: 'published', where: 'Johnson, Aerospace Structures (LibreTexts), section 11.1: k π² E/(12 (1 − ν²)) (t/b)², k = 4' },
    { level: 'unverified', where: 'Timoshenko & Gere, Theory of Elastic Stability, tables of k (6.97, 0.425, 23.9, 39.6, 0.85)' },
  ],
  valid: { 'thickness at most a tenth of the width (thin plate)': ({ thickness, width }) => thickness <= 0.1 * width * (1 + 1e-9) },
  si: ({ width, thickness, modulus, poissonRatio, edges, load }) =>
    (COEFFICIENT[load][edges] * Math.PI ** 2 * modulus * (thickness / width) ** 2) / (12 * (1 - poissonRatio * poissonRatio)),
})
