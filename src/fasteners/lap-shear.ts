import { formula } from '../formula/index.js'
import { CHANGE_SINCE_CURE, LAP } from './bond-inputs.js'

/** x·coth(x), which is 1 at 0. */
const xCothX = (x: number): number => (x === 0 ? 1 : x / Math.tanh(x))

/**
 * Shear along a glued lap: it peaks at the ends, more so when the parts are soft or the bond stiff and long.
 *
 * `at` runs from the middle of the lap: negative towards the end where the inner part stops, positive towards the end where the outer
 * part stops. Pulled apart at both ends. A double lap has an outer part on each side.
 */
export const lapShear = /* @__PURE__ */ formula('fasteners.lapShear', {
  inputs: {
    /** Force of the joint. */
    force: 'force',
    ...LAP,
    ...CHANGE_SINCE_CURE,
    /** Place, from the middle. */
    at: { kind: 'length', default: '0 mm' },
  },
  output: {
    /** Average shear by the force. */
    averageStress: 'stress',
    /** Shear at that place, by force and temperature. */
    stress: 'stress',
    /** Shear at the end where the inner part stops. */
    innerEndStress: 'stress',
    /** Shear at the end where the outer part stops. */
    outerEndStress: 'stress',
    /** Part of the outer end's shear that comes from temperature. */
    thermalEndStress: 'stress',
    /** Length over which the shear falls away from an end; more than some three of them add nothing. */
    shearLagLength: 'length',
  },
  assumes: ['elastic', 'no bending and no peel (`lapPeel`): the true peak is higher', 'shear constant through the adhesive'],
  source: [
    {
      level: 'published',
      where: 'Volkersen 1938; Shigley 9th ed., section 9-9 and problem 9-35 of its double lap with temperature (unverified)',
    },
  ],
  requires: { at: { accepts: 'must lie within the lap', holds: ({ at, overlap }) => Math.abs(at) <= (overlap / 2) * (1 + 1e-12) } },
  si: ({ force, width, overlap, lap, inner, outer, bondThickness, shearModulus, temperatureChange, at }) => {
    const sides = lap === 'double' ? 2 : 1
    const innerRigidity = (inner.modulus * inner.thickness) / sides
    const outerRigidity = outer.modulus * outer.thickness
    const softness = 1 / innerRigidity + 1 / outerRigidity
    const w = Math.sqrt((shearModulus / bondThickness) * softness)
    const half = (w * overlap) / 2
    const averageStress = force / sides / (width * overlap)
    const even = averageStress * xCothX(half)
    const odd = averageStress * half * Math.tanh(half) * ((outerRigidity - innerRigidity) / (outerRigidity + innerRigidity))
    const thermal = (((inner.thermalExpansion - outer.thermalExpansion) * temperatureChange * w) / softness) * Math.tanh(half)
    const shape = Math.exp(Math.abs(w * at) - half)
    const fall = Math.exp(-2 * Math.abs(w * at))
    const cosh = (shape * (1 + fall)) / (1 + Math.exp(-2 * half))
    const sinh = half === 0 ? 0 : (Math.sign(at) * shape * (1 - fall)) / (1 - Math.exp(-2 * half))
    return {
      averageStress,
      stress: even * cosh + (odd + thermal) * sinh,
      innerEndStress: even - odd - thermal,
      outerEndStress: even + odd + thermal,
      thermalEndStress: thermal,
      shearLagLength: 1 / w,
    }
  },
})

/**
 * Strength of a glued lap: by its highest shear (brittle bond), by uniform shear (upper bound for a ductile bond), and by its highest shear for an infinitely long lap.
 *
 * With unlike parts or a change of temperature one end is worse. Both ends are checked.
 */
export const lapStrength = /* @__PURE__ */ formula('fasteners.lapStrength', {
  inputs: {
    ...LAP,
    /** Shear strength of the adhesive on these parts (`bondStrength`). */
    shearStrength: { kind: 'stress', above: 0 },
    ...CHANGE_SINCE_CURE,
  },
  output: {
    /** Force at which the highest shear meets the strength; zero where temperature alone breaks the bond. */
    elasticLimit: 'force',
    /** Force at which uniform shear meets the strength. */
    plasticLimit: 'force',
    /** The elastic limit of an infinitely long lap. */
    longLapLimit: 'force',
    /** Length over which the shear falls away from an end; a lap of three of them on each side is as strong as an infinitely long one. */
    shearLagLength: 'length',
    /** Whether temperature alone breaks the bond. */
    state: { oneOf: ['holds', 'brokenByTemperature'] },
  },
  assumes: ['as lapShear: no peel, so the true limit is lower', 'pull in one direction'],
  source: [{ level: 'computed', where: 'fasteners.lapShear solved for the force, at its length and at forty shear-lag lengths' }],
  si: ({ shearStrength, ...lap }) => {
    const limit = (overlap: number) => {
      const cold = lapShear.si({ ...lap, overlap, force: 1, temperatureChange: 0, at: 0 })
      const { thermalEndStress: thermal } = lapShear.si({ ...lap, overlap, force: 0, at: 0 })
      if (Math.abs(thermal) >= shearStrength) return 0
      return Math.min((shearStrength - thermal) / cold.outerEndStress, (shearStrength + thermal) / cold.innerEndStress)
    }
    const { averageStress, shearLagLength } = lapShear.si({ ...lap, force: 1, at: 0 })
    const elasticLimit = limit(lap.overlap)
    return {
      elasticLimit,
      plasticLimit: shearStrength / averageStress,
      longLapLimit: limit(40 * shearLagLength),
      shearLagLength,
      state: elasticLimit > 0 ? ('holds' as const) : ('brokenByTemperature' as const),
    }
  },
})
