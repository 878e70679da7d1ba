import { formula } from '../formula/index.js'
import { AIR_PRESSURE } from './film-inputs.js'

/** Standard gravity, m/s². */
export const GRAVITY = 9.80665
/** Standard atmosphere, Pa. */
export const ATMOSPHERE = 101325

/** Conductivity, kinematic viscosity (at 1 atm) and Prandtl number of dry air. */
const conductivityOf = (t: number) => 2.36353e-2 + t * (7.5599e-5 - 2.4536e-8 * t)
const viscosityOf = (t: number) => 1.33822e-5 + t * (8.71667e-8 + 9.5569e-11 * t)
const prandtlOf = (t: number) => 0.736042 + t * (-2.80448e-4 + 3.43023e-7 * t)

/** Properties of dry air at a film temperature and pressure. */
export const airProperties = /* @__PURE__ */ formula('thermal.airProperties', {
  inputs: {
    /** Temperature: for a film, the mean of surface and free air. */
    temperature: { kind: 'temperature', min: '-60 degC', max: '400 degC' },
    ...AIR_PRESSURE,
  },
  output: {
    /** Conductivity. */
    conductivity: 'thermalConductivity',
    /** Kinematic viscosity. */
    viscosity: 'kinematicViscosity',
    /** Prandtl number. */
    prandtl: 'ratio',
    /** Density. */
    density: 'density',
  },
  equation: ['density = pressure / (287.055 J / (kg K) * temperature)'],
  assumes: ['dry air', 'conductivity, dynamic viscosity and Prandtl number independent of pressure'],
  valid: {
    'from −20 to 140 °C, where the fit keeps 0.13 %': ({ temperature }) => temperature >= 253.15 * (1 - 1e-9) && temperature <= 413.15,
  },
  source: [
    {
      level: 'computed',
      where: 'quadratics through Çengel, Heat Transfer, table A-15 (air at 1 atm), largest error 0.13 %; perfect gas of 287.055 J/(kg K)',
    },
  ],
  si: ({ temperature, pressure }) => {
    const t = temperature - 273.15
    return {
      conductivity: conductivityOf(t),
      viscosity: (viscosityOf(t) * ATMOSPHERE) / pressure,
      prandtl: prandtlOf(t),
      density: pressure / (287.055 * temperature),
    }
  },
})

/** Air pressure at an altitude: thin air cools less, laminar convection by its square root. */
export const pressureAtAltitude = /* @__PURE__ */ formula('thermal.pressureAtAltitude', {
  inputs: {
    /** Height above sea level. */
    altitude: { kind: 'length', min: '-500 m', max: '11 km' },
  },
  /** Pressure. */
  output: 'stress',
  equation: ['result = 101325 Pa * (1 - 0.0000225577 / m * altitude)^5.25588'],
  assumes: ['standard atmosphere: 15 °C and 1013.25 mbar at sea level'],
  source: [{ level: 'unverified', where: 'ISO 2533, standard atmosphere, troposphere' }],
  si: ({ altitude }) => ATMOSPHERE * (1 - 2.25577e-5 * altitude) ** 5.25588,
})

/**
 * Rayleigh number of free convection in air.
 *
 * The driving quantity of every natural-convection formula here: gravity times expansion times temperature difference times length cubed, over viscosity and diffusivity.
 */
export const rayleighNumber = /* @__PURE__ */ formula('thermal.rayleighNumber', {
  inputs: {
    /** Surface temperature. */
    surface: { kind: 'temperature', min: '-60 degC', max: '600 degC' },
    /** Temperature of the still air. */
    air: { kind: 'temperature', min: '-60 degC', max: '200 degC' },
    /** Characteristic length of the formula: height, diameter, or area over perimeter. */
    length: { kind: 'length', above: 0 },
    ...AIR_PRESSURE,
  },
  output: {
    /** Rayleigh number. */
    rayleigh: 'ratio',
    /** Prandtl number of the film. */
    prandtl: 'ratio',
    /** Conductivity of the film. */
    conductivity: 'thermalConductivity',
    /** Kinematic viscosity of the film. */
    viscosity: 'kinematicViscosity',
  },
  equation: ['rayleigh == 9.80665 m/s^2 * abs(surface - air) * length^3 * prandtl / ((surface + air) / 2 * viscosity^2)'],
  assumes: ['properties at the film temperature', 'expansion coefficient 1/T of the film'],
  source: [{ level: 'published', where: 'Çengel, Heat and Mass Transfer, ch. 9, Rayleigh number with film properties' }],
  si: ({ surface, air, length, pressure }) => {
    const film = 0.5 * (surface + air)
    const t = film - 273.15
    const viscosity = (viscosityOf(t) * ATMOSPHERE) / pressure
    const prandtl = prandtlOf(t)
    return {
      rayleigh: (GRAVITY * Math.abs(surface - air) * length * length * length * prandtl) / (film * viscosity * viscosity),
      prandtl,
      conductivity: conductivityOf(t),
      viscosity,
    }
  },
})
