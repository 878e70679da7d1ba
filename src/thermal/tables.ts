import { type Property, property, type Source } from '../formula/index.js'
import { type In, Quantity } from '../units/index.js'

const CLASSES: Source = { level: 'published', where: 'IEC 60085 thermal classes, as reproduced by insulation suppliers' }
const MAGNETS: Source = { level: 'published', where: 'neodymium grade tables; guide values: the true limit is the load line of the magnet' }
const MAGNETS_HIGH: Source = { level: 'unverified', where: 'neodymium grade tables, high-temperature suffixes' }

const limitAt = (celsius: number, source: Source, conditions: string, low = celsius, high = celsius): Property<'temperature'> =>
  property('temperature', { typical: [celsius, 'degC'], low: [low, 'degC'], high: [high, 'degC'], source, conditions })

/** Thermal classes of winding insulation: temperature of the hottest spot. */
export const insulationClasses = /* @__PURE__ */ (() => ({
  A: limitAt(105, CLASSES, 'hottest spot'),
  E: limitAt(120, CLASSES, 'hottest spot'),
  B: limitAt(130, CLASSES, 'hottest spot'),
  F: limitAt(155, CLASSES, 'hottest spot'),
  H: limitAt(180, CLASSES, 'hottest spot'),
  N: limitAt(200, CLASSES, 'hottest spot'),
}))()

const RISES: Source = { level: 'published', where: 'IEC 60034-1 limits of rise by resistance, as reproduced in a motor manual' }
const RISES_UNREAD: Source = { level: 'unverified', where: 'IEC 60034-1 limits of rise by resistance' }

const riseOf = (kelvin: number, source: Source): Property<'temperatureDifference'> =>
  property('temperatureDifference', {
    typical: [kelvin, 'K'],
    low: [kelvin, 'K'],
    high: [kelvin, 'K'],
    source,
    conditions: 'mean of the winding by resistance, over air of 40 °C',
  })

/**
 * Permitted rise of the mean of a winding, as measured by its resistance, over air of 40 °C. The classes of `insulationClasses` are for the hottest spot, 5 to 15 K above that mean: compare a
 * mean with these, a hottest spot with those.
 */
export const insulationRises = /* @__PURE__ */ (() => ({
  A: riseOf(60, RISES_UNREAD),
  E: riseOf(75, RISES_UNREAD),
  B: riseOf(80, RISES),
  F: riseOf(105, RISES),
  H: riseOf(125, RISES),
}))()

/** Highest temperatures of neodymium magnet grades by suffix: guides only, since the load line decides. */
export const magnetGrades = /* @__PURE__ */ (() => ({
  standard: limitAt(80, MAGNETS, 'no suffix', 60, 80),
  M: limitAt(100, MAGNETS, 'suffix M', 80, 100),
  H: limitAt(120, MAGNETS, 'suffix H', 100, 120),
  SH: limitAt(150, MAGNETS_HIGH, 'suffix SH', 130, 150),
  UH: limitAt(180, MAGNETS_HIGH, 'suffix UH', 160, 180),
  EH: limitAt(200, MAGNETS_HIGH, 'suffix EH', 180, 200),
}))()

const ADHESIVES: Source = { level: 'unverified', where: 'data sheets of adhesive families; strength falls long before the limit' }

/** Highest temperatures of adhesive families. */
export const adhesiveLimits = /* @__PURE__ */ (() => ({
  anaerobic: limitAt(150, { level: 'published', where: 'supplier overview: anaerobic standard 150 °C' }, 'standard grade', 120, 150),
  cyanoacrylate: limitAt(80, ADHESIVES, 'standard grade', 70, 80),
  epoxy: limitAt(80, ADHESIVES, 'two parts, cured at room temperature; its glass transition', 60, 120),
  acrylicTape: limitAt(80, ADHESIVES, 'foam tape', 70, 90),
}))()

const EMISSIVITY_WHERE = 'emissivity tables after Thome (EPFL) 2008 and of two infrared instrument manuals; they disagree, hence the range'
const emissivity = (
  typical: number,
  low: number,
  high: number,
  conditions: string,
  level: Source['level'] = 'published',
): Property<'ratio'> => property('ratio', { typical, low, high, source: { level, where: EMISSIVITY_WHERE }, conditions })

/** Emissivities of surfaces of a small robot, long-wave. */
export const emissivities = /* @__PURE__ */ (() => ({
  aluminiumPolished: emissivity(0.05, 0.04, 0.06, 'polished'),
  aluminiumSheet: emissivity(0.09, 0.07, 0.12, 'commercial sheet'),
  aluminiumOxidised: emissivity(0.25, 0.2, 0.33, 'heavily oxidised'),
  aluminiumAnodised: emissivity(0.8, 0.55, 0.97, 'anodised; tables disagree'),
  copperPolished: emissivity(0.03, 0.02, 0.05, 'polished'),
  copperOxidised: emissivity(0.6, 0.6, 0.88, 'oxidised'),
  steelPolished: emissivity(0.08, 0.07, 0.1, 'polished'),
  steelRolled: emissivity(0.8, 0.7, 0.9, 'cold rolled, 8 to 14 µm'),
  paint: emissivity(0.93, 0.89, 0.97, 'oil or gloss paint, any colour'),
  lacquer: emissivity(0.87, 0.8, 0.95, 'lacquer'),
  polymer: emissivity(0.9, 0.85, 0.95, 'printed polymer', 'unverified'),
}))()

/** A conductor of heat with what a network needs of it. */
export interface ThermalMaterial {
  readonly conductivity: Property<'thermalConductivity'>
  readonly density: Property<'density'>
  readonly specificHeat: Property<'specificHeat'>
}

const INCROPERA: Source = { level: 'unverified', where: 'Incropera, Fundamentals of Heat and Mass Transfer, table A.1' }
const PRINTED: Source = {
  level: 'published',
  where: 'guarded hot plate on printed polymers, Materials 2026, 19(13), 2793; AIP Conf. Proc. 2305, 020022: 0.12 to 0.27 W/(m K)',
}

const material = (
  source: Source,
  conditions: string,
  k: readonly [number, number, number],
  rho: readonly [number, number, number],
  c: readonly [number, number, number],
): ThermalMaterial => {
  const of = <K extends 'thermalConductivity' | 'density' | 'specificHeat'>(
    kind: K,
    [typical, low, high]: readonly [number, number, number],
  ) =>
    property(kind, {
      typical: new Quantity(typical, kind) as In<K>,
      low: new Quantity(low, kind) as In<K>,
      high: new Quantity(high, kind) as In<K>,
      source,
      conditions,
    } as never)
  return { conductivity: of('thermalConductivity', k), density: of('density', rho), specificHeat: of('specificHeat', c) }
}

const UNFILLED = 'solid print, no filler: conductivity of several polymers through the plate; density and specific heat of ABS and ASA'
const FILLED = 'PET with short carbon fibre, solid print, through the plate (across the layers); density and specific heat estimated'

/**
 * Materials of mounts, for heat only; a polymer's conductivity varies by a factor of two with infill and maker. Printed plates were measured through their
 * thickness; along the layers they conduct no worse. `printedCarbonFilled` is PET: take another filled polymer from its own data.
 */
export const thermalMaterials = /* @__PURE__ */ (() => ({
  copper: material(INCROPERA, 'pure', [401, 380, 401], [8933, 8900, 8940], [385, 383, 390]),
  aluminium6061: material(INCROPERA, 'wrought', [167, 150, 180], [2700, 2690, 2720], [896, 880, 910]),
  steel: material(INCROPERA, 'low carbon', [63.9, 45, 64], [7832, 7800, 7870], [434, 430, 470]),
  printedPolymer: material(PRINTED, UNFILLED, [0.2, 0.12, 0.27], [1070, 1000, 1280], [1300, 1200, 1600]),
  printedCarbonFilled: material(PRINTED, FILLED, [0.53, 0.4, 0.6], [1200, 1150, 1300], [1200, 1100, 1400]),
}))()

const BURN: Source = {
  level: 'published',
  where: 'burn thresholds of a burns institute, as quoted in a discussion of product safety; not compared with ISO 13732-1',
}

/** Surface temperatures at which a touch of about a second burns seriously, by surface: thresholds, not permissions. 20 K lower for parts that are held. */
export const touchThresholds = /* @__PURE__ */ (() => ({
  metal: limitAt(68, BURN, 'about one second', 60, 70),
  glass: limitAt(78, BURN, 'about one second', 70, 80),
  polymer: limitAt(93, BURN, 'about one second', 85, 93),
}))()
