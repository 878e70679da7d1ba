import { formula } from '../formula/index.js'
import { airProperties } from './air.js'
import { AIR_PRESSURE, AIR_TEMPERATURE, PRANDTL, SURFACE_TEMPERATURE } from './film-inputs.js'

/** Mean Nusselt number of a flow along a flat plate, laminar or with transition at a Reynolds number of 5e5. */
export const nusseltFlatPlate = /* @__PURE__ */ formula('thermal.nusseltFlatPlate', {
  inputs: {
    /** Reynolds number on the length. */
    reynolds: { kind: 'ratio', min: 0 },
    ...PRANDTL,
  },
  output: {
    /** Mean over the length. */
    mean: 'ratio',
    /** At the trailing edge (laminar flow only; half the mean). */
    trailingEdge: 'ratio',
  },
  equation: [
    'mean = (reynolds <= 500000 ? 0.664 * sqrt(reynolds) : 0.037 * reynolds^0.8 - 871) * cbrt(prandtl)',
    'trailingEdge = 0.332 * sqrt(reynolds) * cbrt(prandtl)',
  ],
  assumes: ['isothermal plate, free stream without turbulence'],
  valid: {
    'Reynolds number up to 1e8': ({ reynolds }) => reynolds <= 1e8,
    'Prandtl number from 0.6': ({ prandtl }) => prandtl >= 0.6,
    'laminar, for the value at the trailing edge': ({ reynolds }) => reynolds <= 5e5,
  },
  source: [{ level: 'published', where: 'Incropera, Fundamentals of Heat and Mass Transfer, eqs 7.30 and 7.38' }],
  si: ({ reynolds, prandtl }) => {
    const laminar = Math.sqrt(reynolds)
    const p = Math.cbrt(prandtl)
    return { mean: (reynolds <= 5e5 ? 0.664 * laminar : 0.037 * reynolds ** 0.8 - 871) * p, trailingEdge: 0.332 * laminar * p }
  },
})

/** Mean Nusselt number of a flow across a cylinder. */
export const nusseltCylinderCrossflow = /* @__PURE__ */ formula('thermal.nusseltCylinderCrossflow', {
  inputs: {
    /** Reynolds number on the diameter. */
    reynolds: { kind: 'ratio', min: 0 },
    ...PRANDTL,
  },
  /** Mean Nusselt number on the diameter. */
  output: 'ratio',
  equation: [
    'result = 0.3 + 0.62 * sqrt(reynolds) * cbrt(prandtl) / (1 + (0.4 / prandtl)^(2 / 3))^(1 / 4) * (1 + (reynolds / 282000)^(5 / 8))^(4 / 5)',
  ],
  valid: { 'Reynolds times Prandtl number above 0.2': ({ reynolds, prandtl }) => reynolds * prandtl > 0.2 },
  source: [{ level: 'published', where: 'Churchill & Bernstein 1977 (Incropera, eq. 7.54); scatter about 15 %' }],
  si: ({ reynolds, prandtl }) =>
    0.3 +
    ((0.62 * Math.sqrt(reynolds) * Math.cbrt(prandtl)) / (1 + (0.4 / prandtl) ** (2 / 3)) ** 0.25) *
      (1 + (reynolds / 282000) ** (5 / 8)) ** 0.8,
})

/** Forced-convection coefficient in a stream of air, from speed, size and temperatures. */
export const forcedConvection = /* @__PURE__ */ formula('thermal.forcedConvection', {
  inputs: {
    /** Shape: a plate along the stream, or a cylinder across it. */
    surface: { oneOf: ['flatPlate', 'cylinder'] },
    /** Length along the stream, or diameter. */
    length: { kind: 'length', above: 0 },
    /** Speed of the air over the surface. */
    speed: { kind: 'velocity', min: 0 },
    ...SURFACE_TEMPERATURE,
    ...AIR_TEMPERATURE,
    ...AIR_PRESSURE,
  },
  output: {
    /** Mean heat transfer coefficient. */
    coefficient: 'heatTransferCoefficient',
    /** Nusselt number. */
    nusselt: 'ratio',
    /** Reynolds number. */
    reynolds: 'ratio',
  },
  assumes: ['properties at the film temperature'],
  valid: { 'plate: Reynolds number up to 1e8': (_, { reynolds }) => reynolds <= 1e8 },
  source: [{ level: 'published', where: 'Incropera, Fundamentals of Heat and Mass Transfer, ch. 7; Churchill & Bernstein 1977' }],
  si: ({ surface, length, speed, surfaceTemperature, airTemperature, pressure }) => {
    const { conductivity, viscosity, prandtl } = airProperties.si({ temperature: 0.5 * (surfaceTemperature + airTemperature), pressure })
    const reynolds = (speed * length) / viscosity
    const nusselt =
      surface === 'flatPlate' ? nusseltFlatPlate.si({ reynolds, prandtl }).mean : nusseltCylinderCrossflow.si({ reynolds, prandtl })
    return { coefficient: (nusselt * conductivity) / length, nusselt, reynolds }
  },
})

/** Nusselt number where a draught and buoyancy act together: cubes add when they help each other, subtract when they oppose. */
export const mixedConvection = /* @__PURE__ */ formula('thermal.mixedConvection', {
  inputs: {
    /** Nusselt number of the stream alone. */
    forced: { kind: 'ratio', min: 0 },
    /** Nusselt number of buoyancy alone. */
    natural: { kind: 'ratio', min: 0 },
    /** Whether buoyancy helps the stream. */
    direction: { oneOf: ['assisting', 'opposing'] },
  },
  /** Nusselt number. */
  output: 'ratio',
  source: [{ level: 'unverified', where: 'Incropera, Fundamentals of Heat and Mass Transfer, section 9.9, exponent 3' }],
  si: ({ forced, natural, direction }) => Math.cbrt(Math.abs(forced ** 3 + (direction === 'assisting' ? 1 : -1) * natural ** 3)),
})

/**
 * Nusselt number of a cylinder that turns about its axis in still air: an outrunner's can at speed.
 *
 * A leg that stands still has none of it, so ready-made networks omit it by default.
 */
export const nusseltRotatingCylinder = /* @__PURE__ */ formula('thermal.nusseltRotatingCylinder', {
  inputs: {
    /** Rotational Reynolds number: speed times diameter squared over twice the viscosity. */
    reynolds: { kind: 'ratio', min: 0 },
    ...PRANDTL,
  },
  /** Mean Nusselt number on the diameter. */
  output: 'ratio',
  equation: ['result = 0.133 * reynolds^(2 / 3) * prandtl^(1 / 3)'],
  valid: { 'rotational Reynolds number from 1e3 to 1e5': ({ reynolds }) => reynolds >= 1e3 && reynolds <= 1e5 },
  source: [
    {
      level: 'unverified',
      where: 'Becker 1963, International Journal of Heat and Mass Transfer 6, horizontal cylinder rotating in still air',
    },
  ],
  si: ({ reynolds, prandtl }) => 0.133 * reynolds ** (2 / 3) * Math.cbrt(prandtl),
})
