import { formula } from '../formula/index.js'
import { EMISSIVITY } from './film-inputs.js'

/** A surface and what it sees. */
const RADIATING_SURFACE = {
  /** Temperature of the surface. */
  surface: { kind: 'temperature', above: 0 },
  /** Temperature of what it sees. */
  surroundings: { kind: 'temperature', min: 0 },
  /** Share of its view that sees them. */
  viewFactor: { kind: 'ratio', min: 0, max: 1, default: 1 },
} as const

/** Stefan–Boltzmann constant, W/(m² K⁴), exact since the SI of 2019. */
export const STEFAN_BOLTZMANN = 5.670374419e-8

/** Net heat flux radiated by a grey surface to surroundings at another temperature (a sky, a sunlit wall, the next motor). */
export const radiantFlux = /* @__PURE__ */ formula('thermal.radiantFlux', {
  inputs: {
    ...EMISSIVITY,
    ...RADIATING_SURFACE,
  },
  /** Net flux from the surface; negative when it gains. */
  output: 'heatFlux',
  equation: ['result = viewFactor * emissivity * 5.670374419e-8 W / (m^2 K^4) * (surface^4 - surroundings^4)'],
  assumes: ['grey surface', 'surroundings large, so that what returns does not count'],
  source: [{ level: 'published', where: 'Stefan–Boltzmann law; constant of CODATA 2018 (exact)' }],
  si: ({ emissivity, surface, surroundings, viewFactor }) =>
    viewFactor * emissivity * STEFAN_BOLTZMANN * (surface ** 4 - surroundings ** 4),
})

/** Radiation as a heat transfer coefficient: exact, not a linearisation, when both temperatures are the true ones. */
export const radiationCoefficient = /* @__PURE__ */ formula('thermal.radiationCoefficient', {
  inputs: {
    ...EMISSIVITY,
    ...RADIATING_SURFACE,
  },
  /** Coefficient on the difference of these two temperatures. */
  output: 'heatTransferCoefficient',
  equation: ['result = viewFactor * emissivity * 5.670374419e-8 W / (m^2 K^4) * (surface + surroundings) * (surface^2 + surroundings^2)'],
  assumes: ['grey surface', 'surroundings large, so that what returns does not count'],
  source: [{ level: 'published', where: 'Stefan–Boltzmann law, factored (Çengel, problem 3-94)' }],
  si: ({ emissivity, surface, surroundings, viewFactor }) =>
    viewFactor * emissivity * STEFAN_BOLTZMANN * (surface + surroundings) * (surface * surface + surroundings * surroundings),
})
