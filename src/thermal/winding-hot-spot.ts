import { formula } from '../formula/index.js'
import { insulationClasses, insulationRises } from './tables.js'

/** Hottest rise over mean rise inside a body that heats itself uniformly: 3/2 in a layer, 2 in a round bundle. */
const HOTTEST_OVER_MEAN = { layer: 1.5, roundBundle: 2 } as const

/** Air over which the rises of the classes count, K. */
const AIR_OF_RISES = 313.15
/** Rounding of differences of temperatures, K. */
const ROUNDING = 1e-9

/**
 * Hottest spot of a winding, from the rise of its mean over its surface: a resistance measurement gives the mean, the insulation feels the spot.
 *
 * A class of insulation allows 5 to 15 K from mean to spot, the cooler classes the least. A slot filled loosely, or heated hard for a short time, has more.
 */
export const windingHotSpot = /* @__PURE__ */ formula('thermal.windingHotSpot', {
  inputs: {
    /** Copper loss of the part of the winding looked at. */
    loss: { kind: 'power', min: 0 },
    /** Resistance from the mean of that part to its surface. */
    meanToSurface: { kind: 'thermalResistance', min: 0 },
    /** Shape of the part: a layer cooled on one or both faces, or a round bundle cooled all round. */
    shape: { oneOf: ['layer', 'roundBundle'] },
    /** Thermal class of the insulation, by which the allowance is judged. */
    insulationClass: { oneOf: ['A', 'E', 'B', 'F', 'H'] },
  },
  output: {
    /** Rise of the mean over the surface. */
    meanRise: 'temperatureDifference',
    /** Rise of the hottest spot over the surface. */
    hottestRise: 'temperatureDifference',
    /** Hottest spot above the mean. */
    aboveMean: 'temperatureDifference',
    /** What the class allows from mean to hottest spot: its temperature less 40 °C and less its rise by resistance (`insulationClasses`, `insulationRises`). */
    allowance: 'temperatureDifference',
    /** Whether the class allows for what the spot is above the mean. */
    state: { oneOf: ['allowedFor', 'beyondAllowance'] },
  },
  assumes: ['loss and conductivity uniform over the part', 'steady', 'heat leaves through its cooled faces only'],
  source: [
    {
      level: 'unverified',
      where: 'Incropera and others, Fundamentals of Heat and Mass Transfer, ch. 3: wall and rod with uniform generation',
    },
    { level: 'published', where: 'IEC 60085, as reproduced by insulation suppliers: 5 to 15 K from mean to hottest spot' },
  ],
  si: ({ loss, meanToSurface, shape, insulationClass }) => {
    const meanRise = loss * meanToSurface
    const hottestRise = meanRise * HOTTEST_OVER_MEAN[shape]
    const aboveMean = hottestRise - meanRise
    const allowance = insulationClasses[insulationClass].si - AIR_OF_RISES - insulationRises[insulationClass].si
    return {
      meanRise,
      hottestRise,
      aboveMean,
      allowance,
      state: aboveMean <= allowance + ROUNDING ? ('allowedFor' as const) : ('beyondAllowance' as const),
    }
  },
})
