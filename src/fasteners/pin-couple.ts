import { formula } from '../formula/index.js'
import { CHEEK_THICKNESS, PIN_DIAMETER } from './pin-inputs.js'

const GAP = {
  /** Gap between cheek and eye, each side. */
  gap: { kind: 'length', min: 0 },
} as const

/**
 * A couple that prises a clevis pin: the eye in the middle is pushed to the side at its far end and tilts on the pin, and the two cheeks hold it by forces
 * of opposite direction.
 *
 * Add it to what the force across the pin does (`clevisPinBending`, `pinBearing`): the direction of both is the same where a leg stands upright.
 */
export const pinCouple = /* @__PURE__ */ formula('fasteners.pinCouple', {
  title: 'couple on a clevis pin',
  inputs: {
    /** Couple about an axis square to the pin. */
    couple: { kind: 'torque', min: 0 },
    ...PIN_DIAMETER,
    ...CHEEK_THICKNESS,
    ...GAP,
    /** Thickness of the eye in the middle. */
    lugThickness: { kind: 'length', above: 0 },
  },
  output: {
    /** Force on each cheek, of opposite direction. */
    cheekForce: 'force',
    /** Projected pressure at the edges of the eye. */
    eyeEdgePressure: 'stress',
    /** Largest bending moment of the pin, inside the eye near its edge. */
    moment: 'torque',
    /** Bending stress of the pin there. */
    bendingStress: 'stress',
  },
  equation: [
    'span = lugThickness + 2 * gap + cheekThickness',
    'cheekForce = couple / span',
    'eyeEdgePressure = 6 * couple / (lugThickness^2 * diameter)',
    'place = sqrt(lugThickness^2 / 4 - lugThickness^3 / (6 * span))',
    'moment = cheekForce * (span / 2 - place) - couple / (2 * lugThickness^3) * (lugThickness^3 - 3 * lugThickness^2 * place + 4 * place^3)',
    'bendingStress = 32 * moment / (pi * diameter^3)',
  ],
  assumes: [
    'eye close on the pin, its pressure linear along it and on both sides; the side faces of the eye carry nothing',
    'forces in the middle of the cheeks, as in clevisPinBending',
  ],
  source: [
    { level: 'published', where: 'any strength-of-materials text: 6 M/b² of a strip under a couple, beam on two supports' },
    { level: 'computed', where: 'balance of the loaded pin, summed piece by piece' },
  ],
  si: ({ couple, diameter, cheekThickness, gap, lugThickness: w }) => {
    const span = w + 2 * gap + cheekThickness
    const cheekForce = couple / span
    const place = Math.sqrt((w * w) / 4 - w ** 3 / (6 * span))
    const moment = cheekForce * (span / 2 - place) - (couple / (2 * w ** 3)) * (w ** 3 - 3 * w * w * place + 4 * place ** 3)
    return {
      cheekForce,
      eyeEdgePressure: (6 * couple) / (w * w * diameter),
      moment,
      bendingStress: (32 * moment) / (Math.PI * diameter ** 3),
    }
  },
})

/** Play of a long link to the side on its pin, at a distance from the pin: the eye slides between the cheeks and tilts on the pin until its edges or its faces touch. */
export const clevisSidePlay = /* @__PURE__ */ formula('fasteners.clevisSidePlay', {
  inputs: {
    ...GAP,
    /** Hole of the eye over the pin, in diameter. */
    clearance: { kind: 'length', min: 0 },
    /** Thickness of the eye. */
    lugThickness: { kind: 'length', above: 0 },
    /** Diameter of the faces of eye and cheeks that touch. */
    faceDiameter: { kind: 'length', above: 0 },
    /** Distance of the far end of the link from the pin. */
    distance: { kind: 'length', min: 0 },
  },
  output: {
    /** Largest tilt to either side. */
    tilt: 'angle',
    /** Largest play to either side at the far end. */
    play: 'length',
  },
  equation: ['tilt = min(clearance / lugThickness, 2 * gap / faceDiameter)', 'play = gap + tilt * distance'],
  assumes: ['small tilt', 'gap and tilt used up together: an upper bound'],
  source: [{ level: 'commonPractice', where: 'play of a hinge: clearance over bearing length, times the arm' }],
  si: ({ gap, clearance, lugThickness, faceDiameter, distance }) => {
    const tilt = Math.min(clearance / lugThickness, (2 * gap) / faceDiameter)
    return { tilt, play: gap + tilt * distance }
  },
})
