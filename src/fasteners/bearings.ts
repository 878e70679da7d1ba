import { formula } from '../formula/index.js'
import { linearTable, type Table } from '../numeric/index.js'
import { BALLS, DYNAMIC_RATING, RADIAL_LOAD } from './bearing-inputs.js'

const STATIC_RATING = {
  /** Static load rating. */
  staticRating: { kind: 'force', above: 0 },
} as const

/** f0 Fa/C0, then e and Y (normal internal clearance). */
const LOAD_RATIO = [0.172, 0.345, 0.689, 1.03, 1.38, 2.07, 3.45, 5.17, 6.89]
const E = [0.19, 0.22, 0.26, 0.28, 0.3, 0.34, 0.38, 0.42, 0.44]
const Y = [2.3, 1.99, 1.71, 1.55, 1.45, 1.31, 1.15, 1.04, 1]
let tables: { e: Table; y: Table } | undefined
const clampedRatio = (x: number) => Math.min(LOAD_RATIO[LOAD_RATIO.length - 1]!, Math.max(LOAD_RATIO[0]!, x))

/** The radial load under which a ball bearing reaches the same life as under its radial and axial load together. */
export const bearingEquivalentLoad = /* @__PURE__ */ formula('fasteners.bearingEquivalentLoad', {
  inputs: {
    ...RADIAL_LOAD,
    /** Axial load. */
    axialLoad: { kind: 'force', min: 0 },
    ...STATIC_RATING,
    /** Factor f0 of the bearing's sheet. */
    axialFactor: { kind: 'ratio', above: 0, default: 14 },
  },
  output: {
    /** Equivalent dynamic load. */
    dynamicLoad: 'force',
    /** Equivalent static load. */
    staticLoad: 'force',
    /** Whether the axial load counts. */
    axialCounts: { oneOf: ['axialCounts', 'radialOnly'] },
  },
  equation: ['staticLoad = max(radialLoad, 0.6 * radialLoad + 0.5 * axialLoad)'],
  assumes: [
    'single-row deep-groove ball bearing, normal clearance',
    'straight lines between the rows of the table, its end rows beyond: near the threshold the load jumps by about half a per cent',
  ],
  source: [
    { level: 'unverified', where: 'ISO 281:2007 table 3 (X, Y, e)' },
    { level: 'published', where: 'ISO 76 static equivalent load: max(Fr, 0.6 Fr + 0.5 Fa)' },
  ],
  valid: {
    'axial load at most half the static rating': ({ axialLoad, staticRating }) => axialLoad <= 0.5 * staticRating,
    'axial load at most a quarter of the static rating in bores up to 12 mm and light series': ({ axialLoad, staticRating }) =>
      axialLoad <= 0.25 * staticRating,
  },
  si: ({ radialLoad, axialLoad, staticRating, axialFactor }) => {
    tables ??= { e: linearTable(LOAD_RATIO, E), y: linearTable(LOAD_RATIO, Y) }
    const ratio = clampedRatio((axialFactor * axialLoad) / staticRating)
    const counts = axialLoad > tables.e(ratio) * radialLoad
    return {
      dynamicLoad: counts ? 0.56 * radialLoad + tables.y(ratio) * axialLoad : radialLoad,
      staticLoad: Math.max(radialLoad, 0.6 * radialLoad + 0.5 * axialLoad),
      axialCounts: counts ? ('axialCounts' as const) : ('radialOnly' as const),
    }
  },
})

const RELIABILITY = { '90 %': 1, '95 %': 0.64, '96 %': 0.55, '97 %': 0.47, '98 %': 0.37, '99 %': 0.25 } as const

/** Life of a ball bearing under a mean load, in turns. */
export const bearingLife = /* @__PURE__ */ formula('fasteners.bearingLife', {
  inputs: {
    ...DYNAMIC_RATING,
    /** Equivalent dynamic load (`bearingDutyLoad` for a changing one). */
    load: { kind: 'force', above: 0 },
    /** Share of bearings that reach the life. */
    reliability: { oneOf: ['90 %', '95 %', '96 %', '97 %', '98 %', '99 %'], default: '90 %' },
    /** Speed. */
    speed: { kind: 'angularVelocity', above: 0 },
  },
  output: {
    /** Life in turns. */
    turns: 'count',
    /** Life in time at that speed. */
    time: 'time',
  },
  equation: ['time == turns * 2 * pi / speed'],
  assumes: ['fatigue of the raceway: clean, lubricated, turning fully round'],
  source: [{ level: 'published', where: 'ISO 281:2007; reliability factors unverified' }],
  valid: { 'load at most half the dynamic rating': ({ load, dynamicRating }) => load <= 0.5 * dynamicRating },
  si: ({ dynamicRating, load, reliability, speed }) => {
    const turns = RELIABILITY[reliability] * 1e6 * (dynamicRating / load) ** 3
    return { turns, time: (turns * 2 * Math.PI) / speed }
  },
})

/** The constant load under which a ball bearing reaches the same life as under a cycle of loads: cubic mean over the turns at each. */
export const bearingDutyLoad = /* @__PURE__ */ formula('fasteners.bearingDutyLoad', {
  inputs: {
    /** Parts of the cycle. */
    parts: {
      list: {
        fields: {
          /** Equivalent load in this part. */
          load: { kind: 'force', min: 0 },
          /** Turns made in this part, or its share of the turns. */
          turns: { kind: 'ratio', above: 0 },
        },
      },
    },
  },
  /** Equivalent constant load. */
  output: 'force',
  assumes: ['damage adds linearly'],
  source: [{ level: 'published', where: 'any machine-design text: variable bearing loads; Shigley 9th ed., section 11-7' }],
  si: ({ parts }) => {
    let damage = 0
    let turns = 0
    for (const part of parts) {
      damage += part.turns * part.load ** 3
      turns += part.turns
    }
    return Math.cbrt(damage / turns)
  },
})

/** Life of a bearing in an oscillating joint: equivalent turns per swing, and whether the swing is so small that the balls wear dents in place. */
export const bearingOscillation = /* @__PURE__ */ formula('fasteners.bearingOscillation', {
  title: 'life of an oscillating bearing',
  inputs: {
    /** Swing to each side of the middle. */
    halfAmplitude: { kind: 'angle', above: 0, max: '180 deg' },
    ...BALLS,
  },
  output: {
    /** Turns equivalent to one full swing there and back. */
    turnsPerCycle: 'ratio',
    /** Angle between balls, as seen by the turning ring. */
    ballPitch: 'angle',
    /** Criterion that governs. */
    state: { oneOf: ['fatigueLife', 'falseBrinelling'] },
  },
  equation: ['turnsPerCycle = 4 * halfAmplitude / (2 * pi)', 'ballPitch = 4 * pi / balls'],
  assumes: ['travel of four half-amplitudes counted as turning', 'balls roll half as far as the ring turns'],
  source: [
    { level: 'computed', where: 'four half-amplitudes over one turn' },
    { level: 'unverified', where: 'Harris, Rolling Bearing Analysis: critical amplitude by ball pitch' },
  ],
  si: ({ halfAmplitude, balls }) => {
    const ballPitch = (2 * 2 * Math.PI) / balls
    return {
      turnsPerCycle: (4 * halfAmplitude) / (2 * Math.PI),
      ballPitch,
      state: 2 * halfAmplitude < ballPitch ? ('falseBrinelling' as const) : ('fatigueLife' as const),
    }
  },
})

/** Static safety of a ball bearing: whether a landing dents its raceways. */
export const bearingStaticSafety = /* @__PURE__ */ formula('fasteners.bearingStaticSafety', {
  inputs: {
    ...STATIC_RATING,
    /** Equivalent static load. */
    staticLoad: { kind: 'force', above: 0 },
    /** Duty. */
    duty: { oneOf: ['normal', 'shock', 'quiet'] },
  },
  output: {
    /** Static rating over load. */
    safety: 'ratio',
    /** Least static safety for that duty. */
    requiredSafety: 'ratio',
    /** Verdict. */
    state: { oneOf: ['enough', 'dents'] },
  },
  equation: ['safety = staticRating / staticLoad'],
  source: [{ level: 'published', where: 'ISO 76 practice: 1 normal, 1.5 shock, 2 quiet or oscillating (the last unverified)' }],
  si: ({ staticRating, staticLoad, duty }) => {
    const requiredSafety = duty === 'normal' ? 1 : duty === 'shock' ? 1.5 : 2
    const safety = staticRating / staticLoad
    return { safety, requiredSafety, state: safety >= requiredSafety ? ('enough' as const) : ('dents' as const) }
  },
})
