import { formula } from '../formula/index.js'
import { GRIP } from './bolt-inputs.js'

/** Constants A and B of the exponential fit by material. */
const WILEMAN = {
  steel: [0.78715, 0.62873],
  aluminium: [0.7967, 0.63816],
  castIron: [0.77871, 0.61616],
  general: [0.78952, 0.62914],
} as const

/** Stiffness of clamped parts of one material by an exponential fit to finite-element results: a second opinion on the cones. */
export const memberStiffnessFit = /* @__PURE__ */ formula('fasteners.memberStiffnessFit', {
  inputs: {
    /** Modulus of the parts. */
    modulus: { kind: 'modulus', above: 0 },
    /** Bolt diameter. */
    diameter: { kind: 'length', above: 0 },
    ...GRIP,
    /** Whose constants to use. */
    material: { oneOf: ['steel', 'aluminium', 'castIron', 'general'], default: 'general' },
  },
  /** Stiffness. */
  output: 'linearStiffness',
  assumes: ['one material of ample width', 'washer face of 1.5 diameters'],
  source: [
    { level: 'published', where: 'Wileman, Choudhury, Green 1991, as Shigley 9th ed., eq. 8-23 and table 8-8 (aluminium unverified)' },
  ],
  valid: { 'grip from 0.5 to 10 diameters': ({ grip, diameter }) => grip >= 0.5 * diameter && grip <= 10 * diameter },
  si: ({ modulus, diameter, grip, material }) => {
    const [a, b] = WILEMAN[material]
    return modulus * diameter * a * Math.exp((b * diameter) / grip)
  },
})
