import { formula } from '../formula/index.js'
import { CHANGE_SINCE_ASSEMBLY, INTERFACE_DIAMETER } from './fit-inputs.js'

const BOSS_EXPANSION = {
  /** Thermal expansion of the boss around the bore. */
  bossExpansion: 'thermalExpansion',
} as const

/** Interference that remains when a fit gets warm or wet: a polymer boss grows more than a steel pin, so heat loosens it. */
export const interferenceChange = /* @__PURE__ */ formula('fasteners.interferenceChange', {
  title: 'interference after heat and moisture',
  inputs: {
    /** Diametral interference as assembled. */
    diametralInterference: 'length',
    ...INTERFACE_DIAMETER,
    ...BOSS_EXPANSION,
    /** Thermal expansion of the pin. */
    pinExpansion: 'thermalExpansion',
    ...CHANGE_SINCE_ASSEMBLY,
    /** Swelling strain of the boss by moisture absorbed since assembly. */
    swelling: { kind: 'strain', default: 0 },
  },
  output: {
    /** Diametral interference then; negative is clearance. */
    diametralInterference: 'length',
    /** Whether the pin is still tight. */
    state: { oneOf: ['tight', 'loose'] },
  },
  equation: ['diametralInterference = diametralInterference + diameter * ((pinExpansion - bossExpansion) * temperatureChange - swelling)'],
  assumes: ['boss and pin at one temperature', 'free growth: the bore grows as the solid it was cut from'],
  source: [{ level: 'published', where: 'any machine-design text, shrink fits' }],
  si: ({ diametralInterference, diameter, bossExpansion, pinExpansion, temperatureChange, swelling }) => {
    const left = diametralInterference + diameter * ((pinExpansion - bossExpansion) * temperatureChange - swelling)
    return { diametralInterference: left, state: left > 0 ? ('tight' as const) : ('loose' as const) }
  },
})

/** The change of temperature at which a press fit lets go (or the heating that makes a hole slip over its pin). */
export const releaseTemperature = /* @__PURE__ */ formula('fasteners.releaseTemperature', {
  inputs: {
    /** Diametral interference as assembled. */
    diametralInterference: { kind: 'length', min: 0 },
    ...INTERFACE_DIAMETER,
    ...BOSS_EXPANSION,
    /** Thermal expansion of the pin; zero when only the boss is heated. */
    pinExpansion: 'thermalExpansion',
  },
  output: {
    /** Size of the temperature change; infinite where both grow alike. */
    temperatureChange: { kind: 'temperatureDifference', infinite: true },
    /** Which way it lets go. */
    releases: { oneOf: ['onHeating', 'onCooling', 'never'] },
  },
  assumes: ['as interferenceChange', 'no relaxation: a warm polymer lets go earlier'],
  source: [{ level: 'published', where: 'any machine-design text, shrink fits' }],
  si: ({ diametralInterference, diameter, bossExpansion, pinExpansion }) => {
    const difference = bossExpansion - pinExpansion
    return {
      temperatureChange: difference === 0 ? Number.POSITIVE_INFINITY : diametralInterference / (diameter * Math.abs(difference)),
      releases: difference === 0 ? ('never' as const) : difference > 0 ? ('onHeating' as const) : ('onCooling' as const),
    }
  },
})

/** The interference lost when the peaks of two machined surfaces are flattened in pressing; a printed bore is sheared instead, so measure its loss. */
export const surfaceSmoothing = /* @__PURE__ */ formula('fasteners.surfaceSmoothing', {
  inputs: {
    /** Mean peak-to-valley height of the bore. */
    boreRoughness: { kind: 'length', min: 0 },
    /** Mean peak-to-valley height of the pin. */
    pinRoughness: { kind: 'length', min: 0 },
  },
  /** Loss of diametral interference. */
  output: 'length',
  equation: ['result = 0.8 * (boreRoughness + pinRoughness)'],
  assumes: ['metal on metal'],
  source: [{ level: 'unverified', where: 'DIN 7190-1:2017, smoothing of 0.8 of both roughness heights' }],
  si: ({ boreRoughness, pinRoughness }) => 0.8 * (boreRoughness + pinRoughness),
})
