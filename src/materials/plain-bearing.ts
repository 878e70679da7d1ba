import { formula } from '../formula/index.js'

/**
 * Pressure times speed of a plain bearing, which limits its heat, with the friction torque and the heat that come of it.
 * Grease is a condition of the friction coefficient and of the limit, not a factor on the result: give the greased values for a greased bearing.
 */
export const bearingDuty = /* @__PURE__ */ formula('materials.bearingDuty', {
  inputs: {
    /** Load across the shaft. */
    load: { kind: 'force', min: 0 },
    /** Shaft diameter. */
    diameter: { kind: 'length', above: 0 },
    /** Length of the bearing. */
    length: { kind: 'length', above: 0 },
    /** Speed of the shaft; the mean of its size for a joint that swings. */
    speed: { kind: 'angularVelocity', min: 0 },
    /** Coefficient of friction. */
    friction: { kind: 'ratio', min: 0 },
    /** Largest pressure times speed allowed. */
    limit: { kind: 'pressureVelocity', above: 0 },
  },
  output: {
    /** Pressure on the projected area. */
    pressure: 'stress',
    /** Sliding speed. */
    velocity: 'velocity',
    /** Pressure times speed. */
    duty: 'pressureVelocity',
    /** Share of the limit used. */
    utilisation: 'ratio',
    /** Friction torque. */
    torque: 'torque',
    /** Heat made. */
    heat: 'power',
    /** Whether the limit is kept. */
    state: { oneOf: ['within', 'exceeded'] },
  },
  equation: [
    'pressure = load / (diameter * length)',
    'velocity = speed * diameter / 2',
    'duty = pressure * velocity',
    'utilisation = duty / limit',
    'torque = friction * load * diameter / 2',
    'heat = torque * speed',
  ],
  assumes: ['uniform pressure over the projected area', 'boundary lubrication or dry'],
  source: [{ level: 'commonPractice', where: 'plain bearings: load over diameter times length, times surface speed' }],
  valid: { 'length 0.5 to 2 diameters': ({ length, diameter }) => length >= 0.5 * diameter && length <= 2 * diameter },
  si: ({ load, diameter, length, speed, friction, limit }) => {
    const pressure = load / (diameter * length)
    const velocity = (speed * diameter) / 2
    const duty = pressure * velocity
    const torque = (friction * load * diameter) / 2
    return {
      pressure,
      velocity,
      duty,
      utilisation: duty / limit,
      torque,
      heat: torque * speed,
      state: duty <= limit ? 'within' : 'exceeded',
    }
  },
})

/** Depth worn off a bearing after a distance of sliding (Archard's law). */
export const wearDepth = /* @__PURE__ */ formula('materials.wearDepth', {
  inputs: {
    /** Specific wear rate: volume worn per load and distance. */
    specificWearRate: { kind: 'specificWearRate', min: 0 },
    /** Pressure on the projected area. */
    pressure: { kind: 'stress', min: 0 },
    /** Distance slid. */
    distance: { kind: 'length', min: 0 },
  },
  /** Depth worn. */
  output: 'length',
  equation: ['result = specificWearRate * pressure * distance'],
  assumes: ['steady wear after running in', 'within the limit of pressure times speed, beyond which wear runs away'],
  source: [{ level: 'unverified', where: 'Archard 1953' }],
  si: ({ specificWearRate, pressure, distance }) => specificWearRate * pressure * distance,
})

/**
 * Running clearance of a shaft in a polymer bushing when warm and damp.
 * A bushing pressed into a stiff housing cannot grow outward and closes on the shaft; a free one grows as a whole and its bore opens. A
 * clearance that comes out at or below zero means a shaft that seizes; `state` names it.
 */
export const runningClearance = /* @__PURE__ */ formula('materials.runningClearance', {
  inputs: {
    /** Diametral clearance as made, bushing in place, at the temperature and water content of making. */
    madeClearance: 'length',
    /** Shaft diameter. */
    shaftDiameter: { kind: 'length', above: 0 },
    /** Outer diameter of the bushing. */
    outerDiameter: { kind: 'length', above: 0 },
    /** Poisson's ratio of the bushing. */
    poissonRatio: { kind: 'ratio', min: 0, max: 0.5 },
    /** Expansion of the bushing. */
    bushingExpansion: { kind: 'thermalExpansion', min: 0 },
    /** Temperature rise of the bushing since making. */
    bushingRise: 'temperatureDifference',
    /** Expansion of the shaft. */
    shaftExpansion: { kind: 'thermalExpansion', min: 0 },
    /** Temperature rise of the shaft since making. */
    shaftRise: 'temperatureDifference',
    /** Water the bushing has taken up since making, by mass. */
    water: { kind: 'ratio', default: 0 },
    /** Linear strain of the bushing per share of water. */
    swelling: { kind: 'ratio', min: 0, default: 0 },
    /** Strain of the bore of the housing since making: its expansion times its rise. */
    housingStrain: { kind: 'strain', default: '0 %' },
    /** Whether the bushing is held all round by a stiff housing, or free. */
    mounting: { oneOf: ['held', 'free'] },
  },
  output: {
    /** Diametral clearance when running. */
    clearance: 'length',
    /** Change of the bore, closing negative. */
    boreChange: 'length',
    /** Change of the shaft. */
    shaftChange: 'length',
    /** Whether it runs free. */
    state: { oneOf: ['runs', 'seizes'] },
  },
  assumes: [
    'held: elastic ring, free along the shaft, in a housing that does not give and that it cannot pull on',
    'film of grease not counted',
  ],
  source: [{ level: 'commonPractice', where: 'Lamé ring with a free strain, plane stress, outer edge held, inner edge free' }],
  requires: {
    outerDiameter: {
      accepts: 'must be above shaft diameter and clearance together',
      holds: ({ outerDiameter, shaftDiameter, madeClearance }) => outerDiameter > shaftDiameter + Math.max(madeClearance, 0),
    },
  },
  si: ({
    madeClearance,
    shaftDiameter,
    outerDiameter,
    poissonRatio,
    bushingExpansion,
    bushingRise,
    shaftExpansion,
    shaftRise,
    water,
    swelling,
    housingStrain,
    mounting,
  }) => {
    const free = bushingExpansion * bushingRise + swelling * water
    const bore = shaftDiameter + madeClearance
    const k = (1 + poissonRatio) / (1 - poissonRatio)
    const pressed = mounting === 'held' && free > housingStrain
    const boreStrain = pressed ? free - ((free - housingStrain) * (1 + k)) / (1 + k * (bore / outerDiameter) ** 2) : free
    const boreChange = bore * boreStrain
    const shaftChange = shaftDiameter * shaftExpansion * shaftRise
    const clearance = madeClearance + boreChange - shaftChange
    return { clearance, boreChange, shaftChange, state: clearance > 0 ? 'runs' : 'seizes' }
  },
})
