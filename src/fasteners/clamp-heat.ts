import { formula } from '../formula/index.js'
import { CLAMP_LOAD_AT_TIGHTENING, CREEPING_COMPLIANCE, ELASTIC_COMPLIANCE } from './bolt-inputs.js'
import { loadsThroughSpells } from './heat-history.js'
import { CREEP_RATIO, isCreepRatio } from './relaxation.js'

/**
 * Clamp load through warm and cold spells: heat raises it on polymer layers, which soften and creep faster, and cooling drops it below the start (ratchet).
 *
 * Softening lowers the load of a hot joint at once, and cooling restores that part. The creep meanwhile is a permanent loss. The effort grows with the square of
 * the number of spells, so describe a season by some dozens of typical spells. Loads after an opening are those of a joint that could pull.
 */
export const clampLoadThroughHeat = /* @__PURE__ */ formula('fasteners.clampLoadThroughHeat', {
  inputs: {
    ...CLAMP_LOAD_AT_TIGHTENING,
    ...ELASTIC_COMPLIANCE,
    ...CREEPING_COMPLIANCE,
    /** Creep compliance over its value at loading, by time at the temperature of tightening: 1 at time 0. */
    creep: { curve: ['time', 'ratio'] },
    /** How many times faster the layers creep when warmer than at tightening by this difference: 1 at no difference. */
    speedUp: { curve: ['temperatureDifference', 'ratio'] },
    /** Compliance at loading when warmer than at tightening by this difference, over the compliance at tightening: 1 at no difference, rising as the modulus falls. */
    softening: { curve: ['temperatureDifference', 'ratio'] },
    /** Growth of the layers minus growth of the bolt over the grip, per kelvin. */
    mismatchPerKelvin: { kind: 'length' },
    /** Spells in order, each at one temperature. */
    spells: {
      list: {
        fields: {
          /** How long. */
          duration: { kind: 'time', above: 0 },
          /** Temperature minus temperature of tightening. */
          temperatureChange: { kind: 'temperatureDifference' },
        },
      },
    },
  },
  output: {
    /** Clamp load right after each change of temperature. */
    startLoads: { list: 'force' },
    /** Clamp load at the end of each spell. */
    endLoads: { list: 'force' },
    /** Lowest of all. */
    lowest: 'force',
    /** Whether the joint stays clamped. */
    state: { oneOf: ['clamped', 'opens'] },
  },
  assumes: [
    'temperature speeds the creep clock, and softens the layers: they deflect and creep as under a load that is larger by the softening',
    'temperature changes at once and everywhere alike',
    'stays below the glass transition',
  ],
  source: [
    { level: 'published', where: 'Morland & Lee 1960 (reduced time); Boltzmann superposition' },
    {
      level: 'unverified',
      where: 'Schapery 1969, with equal factors of temperature on the load and on the strain at loading (g0 = g2, g1 = 1)',
    },
  ],
  requires: {
    creep: {
      accepts: CREEP_RATIO,
      holds: ({ creep, speedUp, spells }) =>
        isCreepRatio(creep, [spells.reduce((sum, { duration, temperatureChange }) => sum + duration * speedUp(temperatureChange), 0)]),
    },
    speedUp: {
      accepts: 'must be 1 at no temperature difference and positive in every spell',
      holds: ({ speedUp, spells }) =>
        Math.abs(speedUp(0) - 1) < 1e-6 && spells.every(({ temperatureChange }) => speedUp(temperatureChange) > 0),
    },
    softening: {
      accepts: 'must be 1 at no temperature difference and positive in every spell',
      holds: ({ softening, spells }) =>
        Math.abs(softening(0) - 1) < 1e-6 && spells.every(({ temperatureChange }) => softening(temperatureChange) > 0),
    },
  },
  si: ({ clampLoad, elasticCompliance, creepingCompliance, creep, speedUp, softening, mismatchPerKelvin, spells }) => {
    const { starts, ends } = loadsThroughSpells({
      clampLoad,
      elasticCompliance,
      creepingCompliance,
      creep,
      spells: spells.map(({ duration, temperatureChange }) => ({
        clock: duration * speedUp(temperatureChange),
        softening: softening(temperatureChange),
        growth: mismatchPerKelvin * temperatureChange,
      })),
    })
    const lowest = Math.min(clampLoad, ...starts, ...ends)
    return {
      startLoads: starts.map((load) => Math.max(0, load)),
      endLoads: ends.map((load) => Math.max(0, load)),
      lowest: Math.max(0, lowest),
      state: lowest > 0 ? ('clamped' as const) : ('opens' as const),
    }
  },
})
