import { formula } from '../formula/index.js'
import { minimiseScalar } from '../numeric/index.js'
import { EMBEDDED_PIN } from './pin-inputs.js'

/**
 * A pin that sticks out of a soft bore and is loaded outside: pressure at the mouth and at the far end, and bending of the pin.
 *
 * The mouth sees several times the average pressure. The pin is rigid here; if it is long and slim take `embeddedPinElastic`.
 */
export const embeddedPin = /* @__PURE__ */ formula('fasteners.embeddedPin', {
  title: 'pin loaded outside a soft bore',
  inputs: {
    ...EMBEDDED_PIN,
  },
  output: {
    /** Average pressure, force over projected area. */
    averagePressure: 'stress',
    /** Projected pressure at the mouth. */
    mouthPressure: 'stress',
    /** Peak of the cosine distribution at the mouth, 4/π higher. */
    mouthPeakPressure: 'stress',
    /** Projected pressure at the far end, on the opposite side. */
    endPressure: 'stress',
    /** Depth where the pressure changes sides. */
    pivotDepth: 'length',
    /** Largest bending moment of the pin. */
    moment: 'torque',
    /** Depth of the largest moment. */
    momentDepth: 'length',
    /** Bending stress of the pin there. */
    bendingStress: 'stress',
  },
  equation: [
    'averagePressure = force / (diameter * depth)',
    'mouthPressure = force * (4 * depth + 6 * arm) / (depth^2 * diameter)',
    'mouthPeakPressure = 4 / pi * mouthPressure',
    'endPressure = force * (2 * depth + 6 * arm) / (depth^2 * diameter)',
  ],
  assumes: ['rigid pin', 'bore reacts in proportion to displacement, on both sides (press fit or bonded)'],
  source: [
    {
      level: 'computed',
      where: 'balance of force and moment with a linear reaction; rigid limit of Hetényi, Beams on Elastic Foundation, 1946',
    },
  ],
  si: ({ force, arm, depth, diameter }) => {
    const mouth = (force * (4 * depth + 6 * arm)) / (depth * depth)
    const end = (force * (2 * depth + 6 * arm)) / (depth * depth)
    const momentDepth = (depth * depth) / (3 * depth + 6 * arm)
    const moment = force * (arm + momentDepth) - (mouth * momentDepth ** 2) / 2 + ((mouth + end) * momentDepth ** 3) / (6 * depth)
    return {
      averagePressure: force / (diameter * depth),
      mouthPressure: mouth / diameter,
      mouthPeakPressure: ((4 / Math.PI) * mouth) / diameter,
      endPressure: end / diameter,
      pivotDepth: (depth * (4 * depth + 6 * arm)) / (6 * depth + 12 * arm),
      moment,
      momentDepth,
      bendingStress: (32 * moment) / (Math.PI * diameter ** 3),
    }
  },
})

/** Beyond this many characteristic lengths a longer pin changes nothing within rounding, and the hyperbolic functions would only overflow. */
const LONG_PIN = 30

/**
 * An embedded pin that bends: the same as `embeddedPin` on an elastic foundation, for any length and slimness.
 *
 * Below about one characteristic length it meets the rigid pin; beyond three, more depth no longer helps.
 */
export const embeddedPinElastic = /* @__PURE__ */ formula('fasteners.embeddedPinElastic', {
  inputs: {
    ...EMBEDDED_PIN,
    /** Modulus of the pin. */
    pinModulus: { kind: 'modulus', above: 0 },
    /** Force per length and displacement of the bore; about the modulus of the polymer. */
    foundationModulus: { kind: 'foundationModulus', above: 0 },
  },
  output: {
    /** Depth in characteristic lengths: rigid below 1, infinitely long above 3. */
    slenderness: 'ratio',
    /** Projected pressure at the mouth. */
    mouthPressure: 'stress',
    /** Peak of the cosine distribution at the mouth, 4/π higher. */
    mouthPeakPressure: 'stress',
    /** Projected pressure at the far end (positive: on the opposite side). */
    endPressure: 'stress',
    /** Sideways displacement of the pin at the mouth. */
    mouthDisplacement: 'length',
    /** Largest bending moment of the pin. */
    moment: 'torque',
    /** Bending stress of the pin there. */
    bendingStress: 'stress',
  },
  equation: [
    'inertia = pi * diameter^4 / 64',
    'slenderness = depth * (foundationModulus / (4 * pinModulus * inertia))^0.25',
    'mouthPeakPressure == 4 / pi * mouthPressure',
    'mouthDisplacement == mouthPressure * diameter / foundationModulus',
    'bendingStress == 32 * moment / (pi * diameter^3)',
  ],
  assumes: ['straight elastic pin', 'bore reacts in proportion to displacement, on both sides', 'both ends of the embedded length free'],
  source: [
    {
      level: 'published',
      where: 'Hetényi, Beams on Elastic Foundation, 1946, chapter III (finite beam, free ends, end force and end moment)',
    },
  ],
  si: ({ force, arm, depth, diameter, pinModulus, foundationModulus }) => {
    const inertia = (Math.PI * diameter ** 4) / 64
    const lambda = (foundationModulus / (4 * pinModulus * inertia)) ** 0.25
    const x = Math.min(lambda * depth, LONG_PIN)
    const sh = Math.sinh(x)
    const ch = Math.cosh(x)
    const sn = Math.sin(x)
    const cs = Math.cos(x)
    const below = sh * sh - sn * sn
    const bendingMoment = force * arm
    const mouth = (2 * lambda * (force * (sh * ch - sn * cs) + bendingMoment * lambda * (sh * sh + sn * sn))) / below
    const end = (2 * lambda * (force * (sn * ch - sh * cs) + bendingMoment * lambda * 2 * sh * sn)) / below
    const momentAt = (u: number) => {
      const v = x - u
      const byForce = (sh * Math.sin(u) * Math.sinh(v) - sn * Math.sinh(u) * Math.sin(v)) / below
      const byMoment =
        (sh * (Math.sinh(v) * Math.cos(u) + Math.cosh(v) * Math.sin(u)) - sn * (Math.sinh(u) * Math.cos(v) + Math.cosh(u) * Math.sin(v))) /
        below
      return (force / lambda) * byForce + bendingMoment * byMoment
    }
    const moment = -minimiseScalar((u) => -momentAt(u), 0, Math.min(x, Math.PI / 2)).value
    return {
      slenderness: lambda * depth,
      mouthPressure: mouth / diameter,
      mouthPeakPressure: ((4 / Math.PI) * mouth) / diameter,
      endPressure: end / diameter,
      mouthDisplacement: mouth / foundationModulus,
      moment,
      bendingStress: (32 * moment) / (Math.PI * diameter ** 3),
    }
  },
})
