/**
 * The table of kinds of quantity and the units each is read and written in.
 *
 * A kind is nominal: torque and energy share dimensions but not a kind, a temperature is not a difference, and a torque
 * constant says in its kind which current it is per. The first unit of every kind is its SI unit (factor 1).
 * A factor is the size of the unit in the SI unit; a pair is factor and offset (degrees Celsius and Fahrenheit).
 * Every factor is tested against mathjs, or against a named standard where mathjs lacks the unit.
 */

/**
 * Exponents of metre, kilogram, second, kelvin, ampere and mole, doubled (so that square roots stay exact) and packed base 64
 * into one number: a product of quantities adds two numbers.
 */
const dim = (m: number, kg = 0, s = 0, K = 0, A = 0, mol = 0) => 2 * (m + 64 * (kg + 64 * (s + 64 * (K + 64 * (A + 64 * mol)))))

const inch = 0.0254
const pound = 0.45359237
const g0 = 9.80665
const lbf = pound * g0
const psi = lbf / (inch * inch)
const degree = Math.PI / 180
const turn = 2 * Math.PI
const rpm = turn / 60

const ONE = { '1': 1, '%': 0.01, ppm: 1e-6 } as const
const LENGTH = { m: 1, µm: 1e-6, um: 1e-6, mm: 1e-3, cm: 1e-2, km: 1e3, nm: 1e-9, mil: inch / 1000, in: inch, ft: 12 * inch } as const
const AREA = { 'm^2': 1, 'mm^2': 1e-6, 'cm^2': 1e-4, 'um^2': 1e-12, 'in^2': inch ** 2 } as const
const VOLUME = { 'm^3': 1, 'mm^3': 1e-9, 'cm^3': 1e-6, 'nm^3': 1e-27, L: 1e-3, mL: 1e-6, 'in^3': inch ** 3 } as const
const FORCE = { N: 1, mN: 1e-3, kN: 1e3, MN: 1e6, kgf: g0, lbf, ozf: lbf / 16, kip: 1000 * lbf } as const
const TORQUE = {
  'N m': 1,
  'N mm': 1e-3,
  'mN m': 1e-3,
  'N cm': 1e-2,
  'kN m': 1e3,
  'kgf cm': g0 * 0.01,
  'lbf in': lbf * inch,
  'lbf ft': lbf * 12 * inch,
  'ozf in': (lbf / 16) * inch,
} as const
const STRESS = { Pa: 1, kPa: 1e3, MPa: 1e6, GPa: 1e9, 'N/mm^2': 1e6, bar: 1e5, mbar: 100, psi, ksi: 1000 * psi, Mpsi: 1e6 * psi } as const
const TEMPERATURE = { K: 1, degC: [1, 273.15], '°C': [1, 273.15], degF: [5 / 9, 459.67 * (5 / 9)] } as const
const DIFFUSIVITY = { 'm^2/s': 1, 'mm^2/s': 1e-6, 'cm^2/s': 1e-4 } as const
const CURRENT = { A: 1, mA: 1e-3, kA: 1e3 } as const
const TORQUE_CONSTANT = { 'N m/A': 1, 'mN m/A': 1e-3, 'N cm/A': 1e-2, 'ozf in/A': (lbf / 16) * inch } as const

const NONE = dim(0)
const ENERGY = dim(2, 1, -2)
const PRESSURE = dim(-1, 1, -2)
const KELVIN = dim(0, 0, 0, 1)
const TEMPERATURE_SHOWN = ['degC'] as const

/** Kinds of quantity: dimensions, the units text may use, and the units results are printed in (small to large). */
export const KINDS = {
  // numbers
  ratio: { dim: NONE, units: ONE, show: ['1'] },
  count: { dim: NONE, units: { '1': 1 }, show: ['1'] },
  strain: { dim: NONE, units: { '1': 1, '%': 0.01, ppm: 1e-6, 'mm/m': 1e-3, 'um/m': 1e-6 }, show: ['%'] },

  // space
  angle: {
    dim: NONE,
    units: { rad: 1, mrad: 1e-3, urad: 1e-6, deg: degree, turn, arcmin: degree / 60, arcsec: degree / 3600 },
    show: ['deg'],
  },
  length: { dim: dim(1), units: LENGTH, show: ['µm', 'mm', 'm'] },
  area: { dim: dim(2), units: AREA, show: ['mm^2'] },
  volume: { dim: dim(3), units: VOLUME, show: ['mm^3', 'cm^3'] },
  curvature: { dim: dim(-1), units: { '1/m': 1, '1/mm': 1e3 }, show: ['1/m'] },
  secondMomentOfArea: { dim: dim(4), units: { 'm^4': 1, 'mm^4': 1e-12, 'cm^4': 1e-8, 'in^4': inch ** 4 }, show: ['mm^4'] },
  sectionModulus: { dim: dim(3), units: { 'm^3': 1, 'mm^3': 1e-9, 'cm^3': 1e-6, 'in^3': inch ** 3 }, show: ['mm^3'] },

  // time and motion
  time: {
    dim: dim(0, 0, 1),
    units: { s: 1, us: 1e-6, ms: 1e-3, min: 60, h: 3600, day: 86400, week: 604800, year: 31557600 },
    show: ['us', 'ms', 's', 'min', 'h', 'day'],
  },
  frequency: { dim: dim(0, 0, -1), units: { Hz: 1, kHz: 1e3, MHz: 1e6 }, show: ['Hz', 'kHz'] },
  rate: {
    dim: dim(0, 0, -1),
    units: { '1/s': 1, '1/min': 1 / 60, '1/h': 1 / 3600, '1/day': 1 / 86400, '1/year': 1 / 31557600 },
    show: ['1/s'],
  },
  strainRate: {
    dim: dim(0, 0, -1),
    units: { '1/s': 1, '%/s': 0.01, '%/min': 0.01 / 60, '%/h': 0.01 / 3600, '%/day': 0.01 / 86400 },
    show: ['1/s'],
  },
  velocity: {
    dim: dim(1, 0, -1),
    units: {
      'm/s': 1,
      'mm/s': 1e-3,
      'km/h': 1 / 3.6,
      'm/min': 1 / 60,
      'mm/min': 1e-3 / 60,
      'in/s': inch,
      'ft/s': 12 * inch,
      'ft/min': (12 * inch) / 60,
    },
    show: ['mm/s', 'm/s'],
  },
  acceleration: { dim: dim(1, 0, -2), units: { 'm/s^2': 1, 'mm/s^2': 1e-3, gn: g0, 'ft/s^2': 12 * inch }, show: ['m/s^2'] },
  jerk: { dim: dim(1, 0, -3), units: { 'm/s^3': 1 }, show: ['m/s^3'] },
  angularVelocity: { dim: dim(0, 0, -1), units: { 'rad/s': 1, 'deg/s': degree, 'turn/s': turn, rpm }, show: ['rad/s'] },
  angularAcceleration: { dim: dim(0, 0, -2), units: { 'rad/s^2': 1, 'deg/s^2': degree }, show: ['rad/s^2'] },

  // mass
  mass: { dim: dim(0, 1), units: { kg: 1, mg: 1e-6, g: 1e-3, t: 1e3, lb: pound, oz: pound / 16 }, show: ['mg', 'g', 'kg'] },
  massPerLength: {
    dim: dim(-1, 1),
    units: { 'kg/m': 1, 'g/m': 1e-3, 'g/km': 1e-6, tex: 1e-6, dtex: 1e-7, 'lb/ft': pound / (12 * inch) },
    show: ['g/m', 'kg/m'],
  },
  density: { dim: dim(-3, 1), units: { 'kg/m^3': 1, 'g/cm^3': 1e3, 'lb/in^3': pound / inch ** 3 }, show: ['kg/m^3'] },
  momentOfInertia: {
    dim: dim(2, 1),
    units: { 'kg m^2': 1, 'kg mm^2': 1e-6, 'kg cm^2': 1e-4, 'g mm^2': 1e-9, 'g cm^2': 1e-7, 'lb in^2': pound * inch ** 2 },
    show: ['g mm^2', 'kg mm^2', 'kg m^2'],
  },
  impulse: { dim: dim(1, 1, -1), units: { 'N s': 1 }, show: ['N s'] },

  // force, torque and what carries them (pressure is a stress)
  force: { dim: dim(1, 1, -2), units: FORCE, show: ['mN', 'N', 'kN'] },
  forcePerLength: { dim: dim(0, 1, -2), units: { 'N/m': 1, 'N/mm': 1e3, 'kN/m': 1e3, 'lbf/in': lbf / inch }, show: ['N/mm'] },
  torque: { dim: ENERGY, units: TORQUE, show: ['N mm', 'N m', 'kN m'] },
  stress: { dim: PRESSURE, units: STRESS, show: ['Pa', 'kPa', 'MPa', 'GPa'] },
  stressRate: { dim: dim(-1, 1, -3), units: { 'Pa/s': 1, 'MPa/s': 1e6, 'MPa/min': 1e6 / 60 }, show: ['MPa/s'] },
  modulus: { dim: PRESSURE, units: STRESS, show: ['MPa', 'GPa'] },
  creepCompliance: { dim: dim(1, -1, 2), units: { '1/Pa': 1, '1/MPa': 1e-6, '1/GPa': 1e-9 }, show: ['1/GPa', '1/MPa'] },
  axialRigidity: { dim: dim(1, 1, -2), units: FORCE, show: ['N', 'kN'] },
  bendingRigidity: { dim: dim(3, 1, -2), units: { 'N m^2': 1, 'N mm^2': 1e-6, 'lbf in^2': lbf * inch ** 2 }, show: ['N mm^2', 'N m^2'] },
  foundationModulus: { dim: PRESSURE, units: { 'N/m^2': 1, 'N/mm^2': 1e6, MPa: 1e6 }, show: ['N/mm^2'] },
  linearStiffness: {
    dim: dim(0, 1, -2),
    units: { 'N/m': 1, 'N/mm': 1e3, 'kN/mm': 1e6, 'MN/m': 1e6, 'lbf/in': lbf / inch, 'Mlbf/in': (1e6 * lbf) / inch },
    show: ['N/m', 'N/mm', 'kN/mm'],
  },
  linearCompliance: { dim: dim(0, -1, 2), units: { 'm/N': 1, 'mm/N': 1e-3, 'um/N': 1e-6 }, show: ['um/N', 'mm/N'] },
  torsionalStiffness: {
    dim: ENERGY,
    units: {
      'N m/rad': 1,
      'kN m/rad': 1e3,
      'N mm/rad': 1e-3,
      'N m/deg': 1 / degree,
      'lbf in/rad': lbf * inch,
      'lbf in/deg': (lbf * inch) / degree,
    },
    show: ['N m/rad'],
  },
  torsionalCompliance: { dim: -ENERGY, units: { 'rad/(N m)': 1, 'mrad/(N m)': 1e-3, 'deg/(N m)': degree }, show: ['mrad/(N m)'] },
  linearDamping: { dim: dim(0, 1, -1), units: { 'N s/m': 1, 'N s/mm': 1e3 }, show: ['N s/m'] },
  torsionalDamping: { dim: dim(2, 1, -1), units: { 'N m s/rad': 1, 'N mm s/rad': 1e-3 }, show: ['N mm s/rad', 'N m s/rad'] },
  tenacity: { dim: dim(2, 0, -2), units: { 'N/(kg/m)': 1, 'N/tex': 1e6, 'cN/dtex': 1e5, 'cN/tex': 1e4 }, show: ['N/tex'] },

  // energy and power
  energy: {
    dim: ENERGY,
    units: { J: 1, mJ: 1e-3, uJ: 1e-6, kJ: 1e3, 'W h': 3600, eV: 1.602176634e-19, 'lbf ft': lbf * 12 * inch },
    show: ['uJ', 'mJ', 'J', 'kJ'],
  },
  power: { dim: dim(2, 1, -3), units: { W: 1, mW: 1e-3, kW: 1e3, hp: 550 * lbf * 12 * inch }, show: ['mW', 'W', 'kW'] },
  activationEnergy: { dim: dim(2, 1, -2, 0, 0, -1), units: { 'J/mol': 1, 'kJ/mol': 1e3 }, show: ['kJ/mol'] },
  pressureVelocity: { dim: dim(0, 1, -3), units: { 'Pa m/s': 1, 'MPa m/s': 1e6 }, show: ['MPa m/s'] },
  specificWearRate: { dim: dim(1, -1, 2), units: { 'm^3/(N m)': 1, 'mm^3/(N m)': 1e-9 }, show: ['mm^3/(N m)'] },

  // temperature; the temperatures of a polymer are kinds of their own, so that one cannot be passed for another
  temperature: { dim: KELVIN, units: TEMPERATURE, show: TEMPERATURE_SHOWN },
  glassTransitionTemperature: { dim: KELVIN, units: TEMPERATURE, show: TEMPERATURE_SHOWN },
  heatDeflectionTemperature045: { dim: KELVIN, units: TEMPERATURE, show: TEMPERATURE_SHOWN },
  heatDeflectionTemperature180: { dim: KELVIN, units: TEMPERATURE, show: TEMPERATURE_SHOWN },
  vicatTemperature: { dim: KELVIN, units: TEMPERATURE, show: TEMPERATURE_SHOWN },
  meltingTemperature: { dim: KELVIN, units: TEMPERATURE, show: TEMPERATURE_SHOWN },
  serviceTemperature: { dim: KELVIN, units: TEMPERATURE, show: TEMPERATURE_SHOWN },
  temperatureDifference: { dim: KELVIN, units: { K: 1, mK: 1e-3, degR: 5 / 9 }, show: ['K'] },
  temperatureRate: { dim: dim(0, 0, -1, 1), units: { 'K/s': 1, 'K/min': 1 / 60, 'K/h': 1 / 3600 }, show: ['K/min'] },
  thermalExpansion: { dim: -KELVIN, units: { '1/K': 1, 'ppm/K': 1e-6, '1/degR': 1.8 }, show: ['ppm/K'] },
  temperatureCoefficient: { dim: -KELVIN, units: { '1/K': 1, '%/K': 0.01 }, show: ['%/K'] },
  thermalConductivity: { dim: dim(1, 1, -3, -1), units: { 'W/(m K)': 1, 'mW/(m K)': 1e-3 }, show: ['W/(m K)'] },
  specificHeat: { dim: dim(2, 0, -2, -1), units: { 'J/(kg K)': 1, 'kJ/(kg K)': 1e3, 'J/(g K)': 1e3 }, show: ['J/(kg K)'] },
  heatCapacity: { dim: dim(2, 1, -2, -1), units: { 'J/K': 1, 'kJ/K': 1e3 }, show: ['J/K'] },
  thermalResistance: { dim: dim(-2, -1, 3, 1), units: { 'K/W': 1, 'mK/W': 1e-3 }, show: ['K/W'] },
  thermalConductance: { dim: dim(2, 1, -3, -1), units: { 'W/K': 1, 'mW/K': 1e-3 }, show: ['mW/K', 'W/K'] },
  heatTransferCoefficient: { dim: dim(0, 1, -3, -1), units: { 'W/(m^2 K)': 1 }, show: ['W/(m^2 K)'] },
  thermalContactResistance: { dim: dim(0, -1, 3, 1), units: { 'm^2 K/W': 1, 'mm^2 K/W': 1e-6 }, show: ['mm^2 K/W'] },
  heatFlux: { dim: dim(0, 1, -3), units: { 'W/m^2': 1, 'kW/m^2': 1e3 }, show: ['W/m^2'] },
  thermalDiffusivity: { dim: dim(2, 0, -1), units: DIFFUSIVITY, show: ['mm^2/s'] },
  massDiffusivity: { dim: dim(2, 0, -1), units: DIFFUSIVITY, show: ['m^2/s'] },
  kinematicViscosity: { dim: dim(2, 0, -1), units: DIFFUSIVITY, show: ['m^2/s'] },
  dynamicViscosity: { dim: dim(-1, 1, -1), units: { 'Pa s': 1, 'mPa s': 1e-3 }, show: ['Pa s'] },
  volumeFlow: { dim: dim(3, 0, -1), units: { 'm^3/s': 1, 'L/min': 1e-3 / 60, 'm^3/h': 1 / 3600 }, show: ['L/min'] },

  // electrical; a phase current says whether it is peak or rms, a torque constant which current it is per
  voltage: { dim: dim(2, 1, -3, 0, -1), units: { V: 1, mV: 1e-3, kV: 1e3 }, show: ['mV', 'V'] },
  current: { dim: dim(0, 0, 0, 0, 1), units: CURRENT, show: ['mA', 'A'] },
  peakPhaseCurrent: { dim: dim(0, 0, 0, 0, 1), units: CURRENT, show: ['mA', 'A'] },
  rmsPhaseCurrent: { dim: dim(0, 0, 0, 0, 1), units: CURRENT, show: ['mA', 'A'] },
  powerInvariantCurrent: { dim: dim(0, 0, 0, 0, 1), units: CURRENT, show: ['mA', 'A'] },
  charge: { dim: dim(0, 0, 1, 0, 1), units: { C: 1, nC: 1e-9, 'A h': 3600, 'mA h': 3.6 }, show: ['C'] },
  electricalResistance: { dim: dim(2, 1, -3, 0, -2), units: { ohm: 1, mohm: 1e-3, kohm: 1e3 }, show: ['mohm', 'ohm', 'kohm'] },
  resistancePerLength: { dim: dim(1, 1, -3, 0, -2), units: { 'ohm/m': 1, 'mohm/m': 1e-3, 'ohm/km': 1e-3 }, show: ['mohm/m'] },
  electricalResistivity: { dim: dim(3, 1, -3, 0, -2), units: { 'ohm m': 1, 'ohm mm^2/m': 1e-6 }, show: ['ohm mm^2/m'] },
  inductance: { dim: dim(2, 1, -2, 0, -2), units: { H: 1, mH: 1e-3, uH: 1e-6 }, show: ['uH', 'mH'] },
  fluxLinkage: { dim: dim(2, 1, -2, 0, -1), units: { Wb: 1, mWb: 1e-3 }, show: ['mWb'] },
  speedConstant: { dim: dim(-2, -1, 2, 0, 1), units: { 'rad/s/V': 1, 'rpm/V': rpm }, show: ['rpm/V'] },
  backEmfConstant: { dim: dim(2, 1, -2, 0, -1), units: { 'V s/rad': 1, 'mV s/rad': 1e-3, 'V/krpm': 1 / (1000 * rpm) }, show: ['V s/rad'] },
  torqueConstantPeakPhase: { dim: dim(2, 1, -2, 0, -1), units: TORQUE_CONSTANT, show: ['N m/A'] },
  torqueConstantRmsPhase: { dim: dim(2, 1, -2, 0, -1), units: TORQUE_CONSTANT, show: ['N m/A'] },
  torqueConstantPowerInvariant: { dim: dim(2, 1, -2, 0, -1), units: TORQUE_CONSTANT, show: ['N m/A'] },
  torqueConstantDc: { dim: dim(2, 1, -2, 0, -1), units: TORQUE_CONSTANT, show: ['N m/A'] },
  motorConstant: { dim: dim(1, 0.5, -0.5), units: { 'N m/W^0.5': 1, 'mN m/W^0.5': 1e-3 }, show: ['N m/W^0.5'] },

  // encoders
  countsPerAngle: { dim: NONE, units: { 'count/rad': 1, 'count/turn': 1 / turn, 'count/deg': 1 / degree }, show: ['count/deg'] },
} as const

/** The name of a kind of quantity. */
export type Kind = keyof typeof KINDS
/** The units in which a kind may be written. */
export type UnitOf<K extends Kind> = keyof (typeof KINDS)[K]['units'] & string

/** One row of the table, as the code that walks it sees it. */
export interface KindRow {
  readonly dim: number
  readonly units: Readonly<Record<string, number | readonly [number, number]>>
  readonly show: readonly string[]
}

/** The table with its names widened, for code that looks a kind up by text. */
export const TABLE: Readonly<Record<string, KindRow>> = KINDS

/** The SI unit of a kind (the first unit of its row). */
export const siUnit = (kind: Kind): string => Object.keys(KINDS[kind].units)[0] as string
