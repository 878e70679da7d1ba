import { type Unit, unitNamed } from './unit-size.js'

const TEMPERATURE = 'degC; K, °C, degF'
const CURRENT = 'mA, A; kA'
const TORQUE_CONSTANT = 'N m/A; mN m/A, N cm/A, ozf in/A'

/**
 * The kinds of quantity and the units each is read in: first those that results are printed in, small to large, and after the semicolon
 * the others. A unit's size follows from its name.
 *
 * A kind is nominal: torque and energy share dimensions but not a kind, a temperature is not a difference, and a torque
 * constant has in its kind the current that it is per.
 */
const UNITS = {
  // numbers
  ratio: '1; %, ppm',
  count: '1',
  strain: '%; 1, ppm, mm/m, um/m',

  // space
  angle: 'deg; rad, mrad, urad, turn, arcmin, arcsec',
  length: 'µm, mm, m; um, cm, km, nm, mil, in, ft',
  area: 'mm^2; m^2, cm^2, um^2, in^2',
  volume: 'mm^3, cm^3; m^3, nm^3, L, mL, in^3',
  curvature: '1/m; 1/mm',
  inverseArea: '1/mm^2; 1/m^2',
  secondMomentOfArea: 'mm^4; m^4, cm^4, in^4',
  sectionModulus: 'mm^3; m^3, cm^3, in^3',

  // time and motion
  time: 'us, ms, s, min, h, day; week, year',
  frequency: 'Hz, kHz; MHz',
  rate: '1/s; 1/min, 1/h, 1/day, 1/year',
  strainRate: '1/s; %/s, %/min, %/h, %/day',
  velocity: 'mm/s, m/s; km/h, m/min, mm/min, in/s, ft/s, ft/min',
  acceleration: 'm/s^2; mm/s^2, gn, ft/s^2',
  jerk: 'm/s^3',
  angularVelocity: 'rad/s; deg/s, turn/s, rpm',
  angularAcceleration: 'rad/s^2; deg/s^2',

  // mass
  mass: 'mg, g, kg; t, lb, oz',
  massPerLength: 'g/m, kg/m; g/km, tex, dtex, lb/ft',
  density: 'kg/m^3; g/cm^3, lb/in^3',
  momentOfInertia: 'g mm^2, kg mm^2, kg m^2; kg cm^2, g cm^2, lb in^2',
  inertiaCoupling: 'g mm^2, kg mm^2, kg m^2; kg cm^2, g cm^2, lb in^2',
  impulse: 'N s',

  // force, torque and what carries them (pressure is a stress)
  force: 'mN, N, kN; MN, kgf, lbf, ozf, kip',
  forcePerLength: 'N/mm; N/m, kN/m, lbf/in',
  torque: 'N mm, N m, kN m; mN m, N cm, kgf cm, lbf in, lbf ft, ozf in',
  stress: 'Pa, kPa, MPa, GPa; N/mm^2, bar, mbar, psi, ksi, Mpsi',
  stressRate: 'MPa/s; Pa/s, MPa/min',
  modulus: 'MPa, GPa; Pa, kPa, N/mm^2, bar, mbar, psi, ksi, Mpsi',
  creepCompliance: '1/GPa, 1/MPa; 1/Pa',
  axialRigidity: 'N, kN; mN, MN, kgf, lbf, ozf, kip',
  bendingRigidity: 'N mm^2, N m^2; lbf in^2',
  foundationModulus: 'N/mm^2; N/m^2, MPa',
  linearStiffness: 'N/m, N/mm, kN/mm; kN/m, MN/m, lbf/in, Mlbf/in',
  linearCompliance: 'um/N, mm/N; m/N',
  torsionalStiffness: 'N m/rad; kN m/rad, N mm/rad, N m/deg, lbf in/rad, lbf in/deg',
  torsionalCompliance: 'mrad/(N m); rad/(N m), deg/(N m)',
  linearDamping: 'N s/m; N s/mm',
  torsionalDamping: 'N mm s/rad, N m s/rad',
  tenacity: 'N/tex; N/(kg/m), cN/dtex, cN/tex',

  // energy and power
  energy: 'uJ, mJ, J, kJ; W h, eV, lbf ft',
  energyPerDistance: 'J/m; kJ/km, W h/km',
  power: 'mW, W, kW; hp',
  activationEnergy: 'kJ/mol; J/mol',
  pressureVelocity: 'MPa m/s; Pa m/s',
  specificWearRate: 'mm^3/(N m); m^3/(N m)',

  // temperature; the temperatures of a polymer are kinds of their own, so that one cannot be passed for another
  temperature: TEMPERATURE,
  glassTransitionTemperature: TEMPERATURE,
  heatDeflectionTemperature045: TEMPERATURE,
  heatDeflectionTemperature180: TEMPERATURE,
  vicatTemperature: TEMPERATURE,
  meltingTemperature: TEMPERATURE,
  serviceTemperature: TEMPERATURE,
  temperatureDifference: 'K; mK, degR',
  temperatureRate: 'K/min; K/s, K/h',
  thermalExpansion: 'ppm/K; 1/K, 1/degR',
  temperatureCoefficient: '%/K; 1/K',
  thermalConductivity: 'W/(m K); mW/(m K)',
  specificHeat: 'J/(kg K); kJ/(kg K), J/(g K)',
  heatCapacity: 'J/K; kJ/K',
  thermalResistance: 'K/W; mK/W',
  thermalConductance: 'mW/K, W/K',
  heatTransferCoefficient: 'W/(m^2 K)',
  thermalContactResistance: 'mm^2 K/W; m^2 K/W',
  heatFlux: 'W/m^2; kW/m^2',
  thermalDiffusivity: 'mm^2/s; m^2/s, cm^2/s',
  massDiffusivity: 'm^2/s; mm^2/s, cm^2/s',
  kinematicViscosity: 'm^2/s; mm^2/s, cm^2/s',
  dynamicViscosity: 'Pa s; mPa s',
  volumeFlow: 'L/min; m^3/s, m^3/h',

  // electrical; the kind of a phase current is peak or rms, that of a torque constant has its current
  voltage: 'mV, V; kV',
  current: CURRENT,
  peakPhaseCurrent: CURRENT,
  rmsPhaseCurrent: CURRENT,
  powerInvariantCurrent: CURRENT,
  charge: 'C; nC, A h, mA h',
  electricalResistance: 'mohm, ohm, kohm',
  resistancePerLength: 'mohm/m; ohm/m, ohm/km',
  electricalResistivity: 'ohm mm^2/m; ohm m',
  inductance: 'uH, mH; H',
  capacitance: 'uF, mF; F, nF',
  fluxLinkage: 'mWb; Wb',
  magneticFluxDensity: 'uT, mT, T',
  speedConstant: 'rpm/V; rad/s/V',
  backEmfConstant: 'V s/rad; mV s/rad, V/krpm',
  torqueConstantPeakPhase: TORQUE_CONSTANT,
  torqueConstantRmsPhase: TORQUE_CONSTANT,
  torqueConstantPowerInvariant: TORQUE_CONSTANT,
  torqueConstantDc: TORQUE_CONSTANT,
  motorConstant: 'N m/W^0.5; mN m/W^0.5',

  // encoders
  countsPerAngle: 'count/deg; count/rad, count/turn',
} as const
/** The name of a kind of quantity. */
export type Kind = keyof typeof UNITS

/** The names that a text of the table lists. */
type Listed<Text> = Text extends `${infer Shown}; ${infer Others}`
  ? Listed<Shown> | Listed<Others>
  : Text extends `${infer First}, ${infer Others}`
    ? First | Listed<Others>
    : Text

/** The units in which a kind may be written. */
export type UnitOf<K extends Kind> = Listed<(typeof UNITS)[K]>

/** One kind: its units, and which of them results are printed in. */
export interface KindRow<K extends Kind = Kind> {
  /** Name of the kind, such as `force`. */
  readonly kind: K
  /** Packed dimensions. */
  readonly dim: number
  /** The names of its units: those of `show`, then the others. */
  readonly names: readonly UnitOf<K>[]
  /** The units results are printed in, small to large. */
  readonly show: readonly UnitOf<K>[]
  /** Lowest value there is, SI: absolute zero for temperatures, none for the other kinds. */
  readonly lowest: number
  /** Units in the order of `names`, each worked out when it is first used; see `unitAt`. */
  readonly unitCache: (Unit | undefined)[]
}

/** Rows already used: a program meets few of the kinds. */
const ROWS = /* @__PURE__ */ new Map<string, KindRow>()

/** The row of a kind; nothing where there is no such kind. */
export function kindRow<K extends Kind>(kind: K): KindRow<K>
export function kindRow(kind: string): KindRow | undefined
export function kindRow(kind: string): KindRow | undefined {
  let row = ROWS.get(kind)
  if (row === undefined && Object.hasOwn(UNITS, kind)) {
    const [show = [], others = []] = UNITS[kind as Kind].split('; ').map((names) => names.split(', '))
    const names = [...show, ...others]
    const first = unitNamed(names[0]!)
    // The scale that a temperature is printed in does not begin at absolute zero; that of a difference does.
    const lowest = first.zero === 0 ? Number.NEGATIVE_INFINITY : 0
    row = { kind, dim: first.dim, names, show, lowest, unitCache: [first] } as unknown as KindRow
    ROWS.set(kind, row)
  }
  return row
}

/** The unit at a place among a kind's names. */
export function unitAt({ names, unitCache }: KindRow, place: number): Unit {
  unitCache[place] ??= unitNamed(names[place]!)
  return unitCache[place]
}

/** The unit of a kind by its name; nothing where the kind has no such unit. */
export function unitOf(row: KindRow, name: unknown): Unit | undefined {
  const place = row.names.indexOf(name as UnitOf<Kind>)
  return place < 0 ? undefined : unitAt(row, place)
}

/** The names of all kinds. */
export const kindNames = (): readonly Kind[] => Object.keys(UNITS) as Kind[]

/** The names of a kind's units: those that results are printed in, then the others. */
export const unitNames = (kind: Kind): readonly string[] => kindRow(kind).names

/** The SI unit of a kind: the one of size 1. */
export function siUnit(kind: Kind): string {
  const row = kindRow(kind)
  return row.names.find((_, place) => unitAt(row, place).size === 1 && unitAt(row, place).zero === 0) as string
}
