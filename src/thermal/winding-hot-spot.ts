import { formula } from '../formula/index.js'

/** Hottest rise over mean rise inside a body that heats itself uniformly: 3/2 in a layer, 2 in a round bundle. */
const HOTTEST_OVER_MEAN = { layer: 1.5, roundBundle: 2 } as const

/**
 * Hottest spot of a winding, from the rise of its mean over its surface: a resistance measurement gives the mean, the insulation feels the spot.
 *
 * The classes of insulation allow 5 to 15 K from mean to spot. A slot filled loosely, or heated hard for a short time, has more.
 */
export const windingHotSpot = /* @__PURE__ */ formula('thermal.windingHotSpot', {
  inputs: {
    /** Copper loss of the part of the winding looked at. */
    loss: { kind: 'power', min: 0 },
    /** Resistance from the mean of that part to its surface. */
    meanToSurface: { kind: 'thermalResistance', min: 0 },
    /** Shape of the part: a layer cooled on one or both faces, or a round bundle cooled all round. */
    shape: { oneOf: ['layer', 'roundBundle'] },
  },
  output: {
    /** Rise of the mean over the surface. */
    meanRise: 'temperatureDifference',
    /** Rise of the hottest spot over the surface. */
    hottestRise: 'temperatureDifference',
    /** Hottest spot above the mean. */
    aboveMean: 'temperatureDifference',
    /** Whether the classes of insulation allow for it: at most 15 K above the mean. */
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
  si: ({ loss, meanToSurface, shape }) => {
    const meanRise = loss * meanToSurface
    const hottestRise = meanRise * HOTTEST_OVER_MEAN[shape]
    const aboveMean = hottestRise - meanRise
    return { meanRise, hottestRise, aboveMean, state: aboveMean <= 15 ? ('allowedFor' as const) : ('beyondAllowance' as const) }
  },
})
