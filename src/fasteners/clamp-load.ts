import { formula } from '../formula/index.js'
import { gamma, mittagLeffler } from '../numeric/index.js'
import { CLAMP_LOAD_AT_TIGHTENING, CREEPING_JOINT, ELASTIC_COMPLIANCE } from './bolt-inputs.js'
import { CREEP_RATIO, isCreepRatio, relaxationOf } from './relaxation.js'

/**
 * The clamp load that is left after a time, for parts that creep by a power law: exact, in closed form.
 *
 * The creep curve is 1 + coefficient × (time / one hour)^exponent. For any other curve take `clampLoadOverTime`.
 */
export const clampLoadPowerLaw = /* @__PURE__ */ formula('fasteners.clampLoadPowerLaw', {
  inputs: {
    ...CREEPING_JOINT,
    /** Creep after one hour, as a share of the strain at loading. */
    creepCoefficient: { kind: 'ratio', min: 0 },
    /** Exponent of time. */
    creepExponent: { kind: 'ratio', above: 0, max: 1 },
    /** Time. */
    time: { kind: 'time', min: 0 },
  },
  output: {
    /** Clamp load then. */
    clampLoad: 'force',
    /** Share that is left. */
    share: 'ratio',
  },
  assumes: ['linear viscoelastic', 'one temperature', 'length of grip constant but for the stretch of the bolt'],
  source: [
    {
      level: 'computed',
      where:
        'Laplace transform of the linear viscoelastic balance; Mittag-Leffler function, Podlubny, Fractional Differential Equations, 1999',
    },
  ],
  si: ({ clampLoad, elasticCompliance, creepingCompliance, creepCoefficient, creepExponent, time }) => {
    const grown = creepCoefficient * gamma(1 + creepExponent) * (time / 3600) ** creepExponent
    const share = mittagLeffler(creepExponent, 1, -grown / (1 + elasticCompliance / creepingCompliance))
    return { clampLoad: clampLoad * share, share }
  },
})

/**
 * The clamp load that is left by the quasi-elastic shortcut: as if the parts had had their crept modulus from the start.
 *
 * Quick and close. It neglects that creep slows down as the load falls, so the result is low by a few per cent.
 */
export const clampLoadQuasiElastic = /* @__PURE__ */ formula('fasteners.clampLoadQuasiElastic', {
  title: 'clamp load by the crept modulus',
  inputs: {
    ...CREEPING_JOINT,
    /** Creep compliance then over creep compliance at loading: 1 or more. */
    creepRatio: { kind: 'ratio', min: 1 },
  },
  output: {
    /** Clamp load then. */
    clampLoad: 'force',
    /** Share that is left. */
    share: 'ratio',
  },
  equation: [
    'share = (elasticCompliance + creepingCompliance) / (elasticCompliance + creepingCompliance * creepRatio)',
    'clampLoad = clampLoad * share',
  ],
  assumes: ['quasi-elastic: crept modulus in place of the history'],
  source: [{ level: 'published', where: 'quasi-elastic (pseudo-elastic) method, Crawford, Plastics Engineering 3rd ed., ch. 2' }],
  si: ({ clampLoad, elasticCompliance, creepingCompliance, creepRatio }) => {
    const share = (elasticCompliance + creepingCompliance) / (elasticCompliance + creepingCompliance * creepRatio)
    return { clampLoad: clampLoad * share, share }
  },
})

/**
 * Clamp load at many times for any creep curve: exact linear viscoelasticity, with embedding and retightening.
 *
 * Give the curve with its `.si` form (seconds to ratio) if possible, because the checked form costs about 20 times more.
 */
export const clampLoadOverTime = /* @__PURE__ */ formula('fasteners.clampLoadOverTime', {
  inputs: {
    ...CLAMP_LOAD_AT_TIGHTENING,
    ...ELASTIC_COMPLIANCE,
    /** Layers that creep. */
    creepingLayers: {
      list: {
        fields: {
          /** Compliance at loading. */
          compliance: { kind: 'linearCompliance', above: 0 },
          /** Creep compliance over its value at loading, by time: 1 at time 0. */
          creep: { curve: ['time', 'ratio'] },
        },
      },
    },
    /** Flattening of faces and threads soon after tightening. */
    embedding: { kind: 'length', min: 0, default: '0 mm' },
    /** Times at which the bolt is turned back to its first clamp load. */
    retightenings: { list: { kind: 'time', above: 0 }, least: 0, optional: true },
    /** Times at which the clamp load is calculated. */
    times: { list: { kind: 'time', min: 0 } },
  },
  output: {
    /** Clamp loads at those times; at the time of a retightening, after it. */
    clampLoads: { list: 'force' },
    /** Lowest of them. */
    lowest: 'force',
    /** Whether the joint stays clamped; once open it has no clamp load. */
    state: { oneOf: ['clamped', 'opens'] },
  },
  assumes: ['linear viscoelastic, no ageing', 'one temperature (`clampLoadThroughHeat` otherwise)', 'embedding at once'],
  source: [
    {
      level: 'published',
      where:
        'Christensen, Theory of Viscoelasticity, 2nd ed., ch. 1: Boltzmann superposition; load of a joint between creep and relaxation',
    },
  ],
  requires: {
    creepingLayers: {
      accepts: CREEP_RATIO,
      holds: ({ creepingLayers, times }) => creepingLayers.every(({ creep }) => isCreepRatio(creep, times)),
    },
  },
  si: ({ clampLoad, elasticCompliance, creepingLayers, embedding, retightenings, times }) => {
    let total = elasticCompliance
    for (const { compliance } of creepingLayers) total += compliance
    const creeping = creepingLayers.map(({ compliance, creep }) => ({ share: compliance / total, creep }))
    const turns = [...(retightenings ?? [])].sort((a, b) => a - b)
    let end = 1
    let earliest = Number.POSITIVE_INFINITY
    for (const time of times) {
      if (time > end) end = time
      for (const since of [0, ...turns]) if (time > since && time - since < earliest) earliest = time - since
    }
    const left = relaxationOf(elasticCompliance / total, creeping, end, earliest)
    const start = clampLoad - embedding / total
    const jumps: number[] = []
    const loadAt = (time: number, count: number) => {
      let load = start * left(time)
      for (let i = 0; i < count; i++) load += jumps[i]! * left(time - turns[i]!)
      return load
    }
    for (let i = 0; i < turns.length; i++) jumps.push(turns[i]! <= end ? clampLoad - loadAt(turns[i]!, i) : 0)
    let lowest = Number.POSITIVE_INFINITY
    const clampLoads = times.map((time) => {
      const load = loadAt(time, turns.filter((turn) => turn <= time).length)
      if (load < lowest) lowest = load
      return Math.max(0, load)
    })
    return { clampLoads, lowest: Math.max(0, lowest), state: lowest > 0 ? ('clamped' as const) : ('opens' as const) }
  },
})
