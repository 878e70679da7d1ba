import { formula } from '../formula/index.js'
import { BOSS_DIAMETER } from './fit-inputs.js'
import { BOSS_HAS_WALL, PIN_HAS_WALL, PRESSED_PIN } from './pin-inputs.js'

/** Radial compliance factors of boss and pin: each divided by its modulus and summed, they turn pressure into relative interference. */
const bossFactor = (d: number, outer: number, poisson: number) => (outer * outer + d * d) / (outer * outer - d * d) + poisson
const pinFactor = (d: number, bore: number, poisson: number) => (d * d + bore * bore) / (d * d - bore * bore) - poisson

/**
 * Pressure and stresses of a pin pressed into a boss of another material (unlike thick cylinders).
 *
 * The interference is diametral: pin diameter minus hole diameter. For a boss that is not round take `effectiveBossDiameter`.
 */
export const pressFit = /* @__PURE__ */ formula('fasteners.pressFit', {
  inputs: {
    ...PRESSED_PIN,
    /** Pin diameter minus hole diameter before assembly. */
    diametralInterference: { kind: 'length', min: 0 },
  },
  output: {
    /** Pressure between pin and boss. */
    pressure: 'stress',
    /** Hoop tension of the boss at its bore, where it splits. */
    boreHoopStress: 'stress',
    /** Von Mises stress of the boss at its bore. */
    boreVonMises: 'stress',
    /** Tresca stress of the boss at its bore. */
    boreTresca: 'stress',
    /** Hoop tension at the outside of the boss. */
    outsideHoopStress: 'stress',
    /** Hoop stress of the pin, at its bore if hollow (negative: compression). */
    pinHoopStress: 'stress',
    /** Growth of the boss's outer diameter. */
    outsideGrowth: 'length',
    /** Share of the interference taken up by squeezing the pin. */
    pinShare: 'ratio',
  },
  equation: [
    'bossFactor = (bossDiameter^2 + diameter^2) / (bossDiameter^2 - diameter^2) + boss.poissonRatio',
    'pinFactor = (diameter^2 + pinBore^2) / (diameter^2 - pinBore^2) - pin.poissonRatio',
    'pressure = diametralInterference / (diameter * (bossFactor / boss.modulus + pinFactor / pin.modulus))',
    'boreHoopStress = pressure * (bossDiameter^2 + diameter^2) / (bossDiameter^2 - diameter^2)',
    'boreVonMises = sqrt(boreHoopStress^2 + boreHoopStress * pressure + pressure^2)',
    'boreTresca = boreHoopStress + pressure',
    'outsideHoopStress = 2 * pressure * diameter^2 / (bossDiameter^2 - diameter^2)',
    'outsideGrowth = bossDiameter * outsideHoopStress / boss.modulus',
    'pinShare = (pinFactor / pin.modulus) / (bossFactor / boss.modulus + pinFactor / pin.modulus)',
  ],
  assumes: [
    'plane stress, open ends',
    'pin and boss equally long; the edge of the boss sees more where the pin sticks out',
    'elastic, small strain',
  ],
  source: [{ level: 'published', where: 'Lamé; Shigley 9th ed., eq. 3-56 and 3-57 (radial form)' }],
  requires: {
    bossDiameter: BOSS_HAS_WALL,
    pinBore: PIN_HAS_WALL,
  },
  valid: {
    'interference below 2 % of the diameter': ({ diametralInterference, diameter }) => diametralInterference < 0.02 * diameter,
    'boss at least 1.2 times the bore': ({ bossDiameter, diameter }) => bossDiameter >= 1.2 * diameter,
  },
  si: ({ diameter, diametralInterference, bossDiameter, pinBore, boss, pin }) => {
    const pinCompliance = pinFactor(diameter, pinBore, pin.poissonRatio) / pin.modulus
    const compliance = bossFactor(diameter, bossDiameter, boss.poissonRatio) / boss.modulus + pinCompliance
    const pressure = diametralInterference / (diameter * compliance)
    const boreHoopStress = pressure * bossFactor(diameter, bossDiameter, 0)
    const outsideHoopStress = (2 * pressure * diameter * diameter) / (bossDiameter * bossDiameter - diameter * diameter)
    return {
      pressure,
      boreHoopStress,
      boreVonMises: Math.sqrt(boreHoopStress * boreHoopStress + boreHoopStress * pressure + pressure * pressure),
      boreTresca: boreHoopStress + pressure,
      outsideHoopStress,
      pinHoopStress: pinBore === 0 ? -pressure : (-2 * pressure * diameter * diameter) / (diameter * diameter - pinBore * pinBore),
      outsideGrowth: (bossDiameter * outsideHoopStress) / boss.modulus,
      pinShare: pinCompliance / compliance,
    }
  },
})

/** Hoop and radial stress anywhere in the wall of a boss under inner pressure. */
export const bossWallStress = /* @__PURE__ */ formula('fasteners.bossWallStress', {
  inputs: {
    /** Pressure at the bore. */
    pressure: { kind: 'stress', min: 0 },
    /** Bore diameter. */
    diameter: { kind: 'length', above: 0 },
    ...BOSS_DIAMETER,
    /** Radius at which the stresses are calculated. */
    radius: { kind: 'length', above: 0 },
  },
  output: {
    /** Hoop stress there (tension). */
    hoopStress: 'stress',
    /** Radial stress there (negative: compression). */
    radialStress: 'stress',
  },
  equation: [
    'base = pressure * diameter^2 / (bossDiameter^2 - diameter^2)',
    'hoopStress = base * (1 + bossDiameter^2 / (4 * radius^2))',
    'radialStress = base * (1 - bossDiameter^2 / (4 * radius^2))',
  ],
  assumes: ['plane stress', 'elastic'],
  source: [{ level: 'published', where: 'Lamé; Shigley 9th ed., eq. 3-50 with inner pressure only' }],
  requires: {
    bossDiameter: BOSS_HAS_WALL,
    radius: {
      accepts: 'must lie in the wall, between bore and outside',
      holds: ({ radius, diameter, bossDiameter }) => 2 * radius >= diameter * (1 - 1e-12) && 2 * radius <= bossDiameter * (1 + 1e-12),
    },
  },
  si: ({ pressure, diameter, bossDiameter, radius }) => {
    const base = (pressure * diameter * diameter) / (bossDiameter * bossDiameter - diameter * diameter)
    const ratio = (bossDiameter * bossDiameter) / (4 * radius * radius)
    return { hoopStress: base * (1 + ratio), radialStress: base * (1 - ratio) }
  },
})

/** Diameter of the round boss that is equivalent to a boss of any shape: twice the shortest distance from the bore's axis to a free surface. */
export const effectiveBossDiameter = /* @__PURE__ */ formula('fasteners.effectiveBossDiameter', {
  inputs: {
    /** Distances from the axis of the bore to each free surface: sides, end, neighbouring holes. */
    freeRadii: { list: { kind: 'length', above: 0 } },
  },
  /** Diameter to use for the boss: safe for strength, and a low estimate of the pressure. */
  output: 'length',
  assumes: ['the thinnest wall governs'],
  source: [{ level: 'commonPractice', where: 'inscribed cylinder as a bound for bosses that are not round' }],
  si: ({ freeRadii }) => {
    let min = Number.POSITIVE_INFINITY
    for (const radius of freeRadii) if (radius < min) min = radius
    return 2 * min
  },
})

/** The largest allowable interference of a boss, by the direction of its layers. */
export const allowableInterference = /* @__PURE__ */ formula('fasteners.allowableInterference', {
  inputs: {
    ...PRESSED_PIN,
    /** Allowable tension within the layers. */
    allowableInLayers: { kind: 'stress', above: 0 },
    /** Allowable tension across the layers. */
    allowableAcrossLayers: { kind: 'stress', above: 0 },
    /** How the bore lies: its axis across the layers (upright), or in them (lying), where hoop tension pulls layers apart at two places. */
    boreAxis: { oneOf: ['acrossLayers', 'inLayers'] },
    /** Stress at the bore that is compared with the allowable: hoop for brittle materials, von Mises or Tresca for ductile ones. */
    criterion: { oneOf: ['hoop', 'vonMises', 'tresca'], default: 'vonMises' },
  },
  output: {
    /** Largest diametral interference. */
    diametralInterference: 'length',
    /** Pressure at that interference. */
    pressure: 'stress',
    /** Which strength governs. */
    governedBy: { oneOf: ['inLayers', 'acrossLayers'] },
  },
  assumes: ['as pressFit', 'across the layers the hoop tension alone is compared with the allowable'],
  source: [{ level: 'computed', where: 'fasteners.pressFit solved for the interference' }],
  requires: {
    bossDiameter: BOSS_HAS_WALL,
    pinBore: PIN_HAS_WALL,
  },
  si: ({ diameter, bossDiameter, pinBore, boss, pin, allowableInLayers, allowableAcrossLayers, boreAxis, criterion }) => {
    const hoop = bossFactor(diameter, bossDiameter, 0)
    const factor = criterion === 'hoop' ? hoop : criterion === 'tresca' ? hoop + 1 : Math.sqrt(hoop * hoop + hoop + 1)
    const within = allowableInLayers / factor
    const across = boreAxis === 'inLayers' ? allowableAcrossLayers / hoop : Number.POSITIVE_INFINITY
    const pressure = Math.min(within, across)
    const compliance =
      bossFactor(diameter, bossDiameter, boss.poissonRatio) / boss.modulus + pinFactor(diameter, pinBore, pin.poissonRatio) / pin.modulus
    return {
      diametralInterference: pressure * diameter * compliance,
      pressure,
      governedBy: across < within ? ('acrossLayers' as const) : ('inLayers' as const),
    }
  },
})
