import { formula } from '../formula/index.js'
import { BOLT_COMPLIANCE, MEMBER_COMPLIANCE } from './bolt-inputs.js'
import { NOMINAL_DIAMETER, ROOT_AREA, STRESS_AREA } from './thread-inputs.js'

/** A bolt within the grip. */
const SHANK_AND_THREAD = {
  /** Modulus of the bolt. */
  modulus: { kind: 'modulus', above: 0 },
  /** Plain shank within the grip. */
  shankLength: { kind: 'length', min: 0 },
  /** Free thread within the grip. */
  threadLength: { kind: 'length', min: 0 },
} as const

/** Stiffness of a bolt over its grip: plain shank and thread in series. */
export const boltStiffness = /* @__PURE__ */ formula('fasteners.boltStiffness', {
  inputs: {
    /** Nominal diameter: of the plain shank. */
    diameter: { kind: 'length', above: 0 },
    ...STRESS_AREA,
    ...SHANK_AND_THREAD,
  },
  /** Stiffness. */
  output: 'linearStiffness',
  equation: [
    'shankArea = pi / 4 * diameter^2',
    'result = shankArea * stressArea * modulus / (shankArea * threadLength + stressArea * shankLength)',
  ],
  assumes: ['head and engaged thread rigid: `boltCompliance` counts them'],
  source: [{ level: 'published', where: 'Shigley 9th ed., eq. 8-17' }],
  requires: {
    threadLength: {
      accepts: 'must not be zero together with the shank',
      holds: ({ shankLength, threadLength }) => shankLength + threadLength > 0,
    },
  },
  si: ({ diameter, stressArea, modulus, shankLength, threadLength }) => {
    const shankArea = (Math.PI / 4) * diameter * diameter
    return (shankArea * stressArea * modulus) / (shankArea * threadLength + stressArea * shankLength)
  },
})

/** Compliance of a bolt including its head, its engaged thread and its nut, which make up half of it on a short grip. */
export const boltCompliance = /* @__PURE__ */ formula('fasteners.boltCompliance', {
  inputs: {
    /** Sizes of the thread, from `metricThread`. */
    thread: {
      fields: {
        ...NOMINAL_DIAMETER,
        ...ROOT_AREA,
      },
    },
    ...SHANK_AND_THREAD,
    /** Head: hexagon 0.5 diameters, socket 0.4. */
    head: { oneOf: ['hexagon', 'socket'] },
    /** Mate of the thread: a nut, or a tapped part. */
    end: { oneOf: ['nut', 'tapped'] },
    /** Modulus of the tapped part; not used with a nut (which counts as the bolt's material). */
    tappedModulus: { kind: 'modulus', above: 0, optional: true },
  },
  /** Stretch per force. */
  output: 'linearCompliance',
  assumes: ['substitute lengths of head, engaged thread and nut'],
  source: [{ level: 'unverified', where: 'VDI 2230-1, section 5.1.1' }],
  requires: {
    tappedModulus: {
      accepts: 'must be given for a tapped part',
      holds: ({ end, tappedModulus }) => end === 'nut' || tappedModulus !== undefined,
    },
  },
  si: ({ thread, modulus, shankLength, threadLength, head, end, tappedModulus }) => {
    const d = thread.diameter
    const nominal = (Math.PI / 4) * d * d
    const tapped = end === 'tapped' ? (0.33 * d) / ((tappedModulus ?? modulus) * nominal) : (0.4 * d) / (modulus * nominal)
    return (
      ((head === 'socket' ? 0.4 : 0.5) * d + shankLength) / (modulus * nominal) +
      (threadLength + 0.5 * d) / (modulus * thread.rootArea) +
      tapped
    )
  },
})

/**
 * The share of an outside load that the bolt feels; the rest only relieves the clamped parts.
 *
 * About 0.2 in steel; near 0.9 where printed parts are clamped, so that preload hardly protects the screw against alternating load.
 */
export const loadFactor = /* @__PURE__ */ formula('fasteners.loadFactor', {
  title: 'load factor of a bolted joint',
  inputs: {
    ...BOLT_COMPLIANCE,
    ...MEMBER_COMPLIANCE,
  },
  /** Load factor, 0 to 1. */
  output: 'ratio',
  equation: ['result = memberCompliance / (boltCompliance + memberCompliance)'],
  assumes: ['outside load acts at the bearing faces'],
  source: [{ level: 'published', where: 'Shigley 9th ed., eq. 8-24 (stiffness constant of the joint)' }],
  si: ({ boltCompliance: bolt, memberCompliance: member }) => member / (bolt + member),
})
