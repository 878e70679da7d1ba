import { formula } from '../formula/index.js'
import { POWER_LAW } from './creep-inputs.js'

/**
 * Creep strain after a row of constant loads, by strain hardening or time hardening.
 * Strain hardening carries on from the strain reached and is the better rule for unfilled plastics; time hardening carries on from the
 * time elapsed and is the lower bound when loads rise. Neither recovers when the load comes off.
 */
export const creepUnderSteps = /* @__PURE__ */ formula('materials.creepUnderSteps', {
  inputs: {
    /** Stress of each step. */
    stresses: { list: { kind: 'stress', min: 0 } },
    /** How long each step lasts. */
    durations: { list: { kind: 'time', min: 0 } },
    /** Which state variable the rate depends on. */
    rule: { oneOf: ['strainHardening', 'timeHardening'], default: 'strainHardening' },
    ...POWER_LAW,
  },
  output: {
    /** Creep strain at the end. */
    strain: 'strain',
    /** Creep strain after each step. */
    afterEach: { list: 'strain' },
  },
  assumes: ['Norton-Bailey law at constant temperature', 'no recovery'],
  source: [
    {
      level: 'published',
      where: 'Findley & Khosla 1955, abstract (superposition, strain and time hardening compared on unfilled plastics)',
    },
    { level: 'unverified', where: 'Kraus, Creep Analysis, 1980' },
  ],
  requires: {
    durations: { accepts: 'must be as many as stresses', holds: ({ stresses, durations }) => stresses.length === durations.length },
  },
  si: ({ stresses, durations, rule, referenceStrain, referenceStress, referenceTime, stressExponent, timeExponent }) => {
    const afterEach: number[] = []
    let strain = 0
    let elapsed = 0
    for (let i = 0; i < stresses.length; i++) {
      const step = durations[i] as number
      const size = referenceStrain * ((stresses[i] as number) / referenceStress) ** stressExponent
      if (size > 0 && rule === 'strainHardening') {
        const already = (strain / size) ** (1 / timeExponent)
        strain = size * (already + step / referenceTime) ** timeExponent
      } else {
        strain += size * (((elapsed + step) / referenceTime) ** timeExponent - (elapsed / referenceTime) ** timeExponent)
      }
      elapsed += step
      afterEach.push(strain)
    }
    return { strain, afterEach }
  },
})
