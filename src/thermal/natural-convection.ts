import { formula } from '../formula/index.js'
import { rayleighNumber } from './air.js'
import { AIR_PRESSURE, AIR_TEMPERATURE, PRANDTL, SURFACE_TEMPERATURE } from './film-inputs.js'

const RAYLEIGH_ON_HEIGHT = {
  /** Rayleigh number on the height. */
  rayleigh: { kind: 'ratio', min: 0 },
} as const

const RAYLEIGH_ON_AREA = {
  /** Rayleigh number on area over perimeter. */
  rayleigh: { kind: 'ratio', min: 0 },
} as const

// Films are evaluated hundreds of times for one motor. Roots take a third of the time of powers.
const sixthRoot = (x: number): number => Math.cbrt(Math.sqrt(x))
/** 1 + x^(9/16), by which the correlations of Churchill and Chu hold for any Prandtl number. */
const prandtlShare = (x: number): number => {
  const root = Math.sqrt(Math.sqrt(Math.sqrt(Math.sqrt(x))))
  const square = root * root
  const fourth = square * square
  return 1 + fourth * fourth * root
}

/**
 * Nusselt number of free convection from a vertical plate, laminar to turbulent; also tall vertical cylinders, and plates tilted up to 60° if gravity's share is taken.
 *
 * Between laminar-only and all-range correlations lie up to 17 %: this is the all-range one.
 */
export const nusseltVerticalPlate = /* @__PURE__ */ formula('thermal.nusseltVerticalPlate', {
  inputs: {
    ...RAYLEIGH_ON_HEIGHT,
    ...PRANDTL,
  },
  /** Mean Nusselt number on the height. */
  output: 'ratio',
  equation: ['result = (0.825 + 0.387 * rayleigh^(1 / 6) / (1 + (0.492 / prandtl)^(9 / 16))^(8 / 27))^2'],
  assumes: ['isothermal surface in still air'],
  valid: { 'Rayleigh number up to 1e12': ({ rayleigh }) => rayleigh <= 1e12 },
  source: [
    {
      level: 'published',
      where: 'Churchill & Chu 1975, all Rayleigh numbers (Çengel, table 9-1; Incropera, eq. 9.26); scatter about 15 %',
    },
  ],
  si: ({ rayleigh, prandtl }) => {
    const root = 0.825 + (0.387 * sixthRoot(rayleigh)) / prandtlShare(0.492 / prandtl) ** (8 / 27)
    return root * root
  },
})

/** Nusselt number of free convection from a vertical plate, laminar only: closer than the all-range form below 1e9. */
export const nusseltVerticalPlateLaminar = /* @__PURE__ */ formula('thermal.nusseltVerticalPlateLaminar', {
  inputs: {
    ...RAYLEIGH_ON_HEIGHT,
    ...PRANDTL,
  },
  /** Mean Nusselt number on the height. */
  output: 'ratio',
  equation: ['result = 0.68 + 0.67 * rayleigh^(1 / 4) / (1 + (0.492 / prandtl)^(9 / 16))^(4 / 9)'],
  assumes: ['isothermal surface in still air', 'laminar boundary layer'],
  valid: { 'Rayleigh number up to 1e9': ({ rayleigh }) => rayleigh <= 1e9 },
  source: [{ level: 'published', where: 'Churchill & Chu 1975, laminar form (Incropera, eq. 9.27)' }],
  si: ({ rayleigh, prandtl }) => 0.68 + (0.67 * Math.sqrt(Math.sqrt(rayleigh))) / prandtlShare(0.492 / prandtl) ** (4 / 9),
})

/** Nusselt number of free convection round a long horizontal cylinder: a motor can lying on its side. */
export const nusseltHorizontalCylinder = /* @__PURE__ */ formula('thermal.nusseltHorizontalCylinder', {
  inputs: {
    /** Rayleigh number on the diameter. */
    rayleigh: { kind: 'ratio', min: 0 },
    ...PRANDTL,
  },
  /** Mean Nusselt number on the diameter. */
  output: 'ratio',
  equation: ['result = (0.6 + 0.387 * rayleigh^(1 / 6) / (1 + (0.559 / prandtl)^(9 / 16))^(8 / 27))^2'],
  assumes: ['isothermal surface in still air', 'long cylinder'],
  valid: { 'Rayleigh number up to 1e12': ({ rayleigh }) => rayleigh <= 1e12 },
  source: [{ level: 'published', where: 'Churchill & Chu 1975, horizontal cylinder (Çengel, table 9-1); scatter about 15 %' }],
  si: ({ rayleigh, prandtl }) => {
    const root = 0.6 + (0.387 * sixthRoot(rayleigh)) / prandtlShare(0.559 / prandtl) ** (8 / 27)
    return root * root
  },
})

/**
 * Nusselt number of free convection from a horizontal plate whose heat can rise: hot and facing up, or cold and facing down.
 *
 * The length is area over perimeter. Small boards (20 to 40 mm) fall below the range; there the value is the fourth-root law carried on, with a note.
 */
export const nusseltPlateUp = /* @__PURE__ */ formula('thermal.nusseltPlateUp', {
  inputs: {
    ...RAYLEIGH_ON_AREA,
  },
  /** Mean Nusselt number on area over perimeter. */
  output: 'ratio',
  equation: ['result = rayleigh < 10000000 ? 0.54 * rayleigh^(1 / 4) : 0.15 * rayleigh^(1 / 3)'],
  assumes: ['isothermal surface in still air, nothing above it'],
  valid: { 'Rayleigh number from 1e4 to 1e11': ({ rayleigh }) => rayleigh >= 1e4 && rayleigh <= 1e11 },
  source: [
    {
      level: 'published',
      where: 'Çengel, Heat and Mass Transfer, problem 9-41 (0.54); turbulent 0.15: Lloyd & Moran 1974 as in Incropera, eqs 9.30 and 9.31',
    },
  ],
  si: ({ rayleigh }) => (rayleigh < 1e7 ? 0.54 * Math.sqrt(Math.sqrt(rayleigh)) : 0.15 * Math.cbrt(rayleigh)),
})

/** Nusselt number of free convection from a horizontal plate whose heat is trapped: hot and facing down, or cold and facing up. */
export const nusseltPlateDown = /* @__PURE__ */ formula('thermal.nusseltPlateDown', {
  inputs: {
    ...RAYLEIGH_ON_AREA,
  },
  /** Mean Nusselt number on area over perimeter. */
  output: 'ratio',
  equation: ['result = 0.27 * rayleigh^(1 / 4)'],
  assumes: ['isothermal surface in still air, nothing below it'],
  valid: { 'Rayleigh number from 1e5 to 1e10': ({ rayleigh }) => rayleigh >= 1e5 && rayleigh <= 1e10 },
  source: [{ level: 'published', where: 'McAdams 1954 (Çengel, problem 9-41)' }],
  si: ({ rayleigh }) => 0.27 * Math.sqrt(Math.sqrt(rayleigh)),
})

/**
 * Free-convection coefficient of a surface in still air, from temperatures and size: one call for a hand calculation.
 *
 * Behaves at zero difference: the coefficient goes to its small conduction floor, or for horizontal plates to that of a difference of 1 mK.
 */
export const naturalConvection = /* @__PURE__ */ formula('thermal.naturalConvection', {
  inputs: {
    /** Shape and attitude: `plateUp` is a horizontal plate whose heat can rise, `plateDown` one whose heat is trapped. */
    surface: { oneOf: ['verticalPlate', 'horizontalCylinder', 'plateUp', 'plateDown', 'tiltedPlate'] },
    /** Height, diameter, or area over perimeter of a horizontal plate. */
    length: { kind: 'length', above: 0 },
    ...SURFACE_TEMPERATURE,
    ...AIR_TEMPERATURE,
    ...AIR_PRESSURE,
    /** Angle of a tilted plate from the vertical. */
    tilt: { kind: 'angle', min: 0, max: '90 deg', default: '0 deg' },
  },
  output: {
    /** Heat transfer coefficient. */
    coefficient: 'heatTransferCoefficient',
    /** Nusselt number. */
    nusselt: 'ratio',
    /** Rayleigh number. */
    rayleigh: 'ratio',
  },
  assumes: ['isothermal surface in still air, unobstructed', 'tilted: gravity along the plate, hot side below'],
  valid: {
    'tilt up to 60 degrees': ({ surface, tilt }) => surface !== 'tiltedPlate' || tilt <= 1.0472,
    'vertical plate and cylinder: Rayleigh number up to 1e12': ({ surface }, { rayleigh }) =>
      surface === 'plateUp' || surface === 'plateDown' || rayleigh <= 1e12,
    'plate up: Rayleigh number from 1e4 to 1e11': ({ surface }, { rayleigh }) =>
      surface !== 'plateUp' || (rayleigh >= 1e4 && rayleigh <= 1e11),
    'plate down: Rayleigh number from 1e5 to 1e10': ({ surface }, { rayleigh }) =>
      surface !== 'plateDown' || (rayleigh >= 1e5 && rayleigh <= 1e10),
  },
  source: [
    { level: 'published', where: 'Çengel, Heat and Mass Transfer, table 9-1: Churchill & Chu 1975, McAdams 1954; scatter 15 to 20 %' },
  ],
  si: ({ surface, length, surfaceTemperature, airTemperature, pressure, tilt }) => {
    // The fourth-root laws have an infinite slope at zero difference.
    const difference = surfaceTemperature - airTemperature
    const warm = airTemperature + Math.sign(difference || 1) * Math.max(Math.abs(difference), 1e-3)
    const { rayleigh: full, prandtl, conductivity } = rayleighNumber.si({ surface: warm, air: airTemperature, length, pressure })
    const rayleigh = surface === 'tiltedPlate' ? full * Math.cos(tilt) : full
    const nusselt =
      surface === 'horizontalCylinder'
        ? nusseltHorizontalCylinder.si({ rayleigh, prandtl })
        : surface === 'plateUp'
          ? nusseltPlateUp.si({ rayleigh })
          : surface === 'plateDown'
            ? nusseltPlateDown.si({ rayleigh })
            : nusseltVerticalPlate.si({ rayleigh, prandtl })
    return { coefficient: (nusselt * conductivity) / length, nusselt, rayleigh }
  },
})
