import { formula } from '../formula/index.js'
import { clampLoadOverTime } from './clamp-load.js'
import { CREEP_RATIO, isCreepRatio } from './relaxation.js'

/**
 * Pressure of a press fit as its boss relaxes, at many times: the compliance of the pin (`pressFit` → pinShare) slows the loss a little.
 *
 * Start from the pressure at that temperature and moisture, with the interference (`interferenceChange`) and the modulus there. `pressFitHold` then
 * shows whether a positive retention is needed.
 */
export const pressFitOverTime = /* @__PURE__ */ formula('fasteners.pressFitOverTime', {
  inputs: {
    /** Pressure at assembly. */
    pressure: { kind: 'stress', min: 0 },
    /** Share of the interference taken up by squeezing the pin; zero for a rigid one. */
    pinShare: { kind: 'ratio', min: 0, below: 1, default: 0 },
    /** Creep compliance of the boss over its value at loading, by time: 1 at time 0. */
    creep: { curve: ['time', 'ratio'] },
    /** Times at which the pressure is calculated. */
    times: { list: { kind: 'time', min: 0 } },
  },
  output: {
    /** Pressures at those times. */
    pressures: { list: 'stress' },
    /** Lowest of them. */
    lowest: 'stress',
  },
  assumes: ["linear viscoelastic boss of constant Poisson's ratio", 'one temperature and moisture', 'elastic pin'],
  source: [
    {
      level: 'published',
      where: 'Christensen, Theory of Viscoelasticity, 2nd ed., ch. 1: Boltzmann superposition on the thick cylinders of fasteners.pressFit',
    },
  ],
  requires: {
    creep: {
      accepts: CREEP_RATIO,
      holds: ({ creep, times }) => isCreepRatio(creep, times),
    },
  },
  si: ({ pressure, pinShare, creep, times }) => {
    // The pin is to its boss what a bolt is to the layers it clamps.
    const { clampLoads, lowest } = clampLoadOverTime.si({
      clampLoad: 1,
      elasticCompliance: pinShare,
      creepingLayers: [{ compliance: 1 - pinShare, creep }],
      embedding: 0,
      times,
    })
    return { pressures: clampLoads.map((share) => pressure * share), lowest: pressure * lowest }
  },
})
