import { formula } from '../formula/index.js'
import { CLAMP_LOAD, CLAMP_LOAD_LEFT, FACE_FRICTION } from './bolt-inputs.js'
import { NOMINAL_DIAMETER, STRESS_AREA } from './thread-inputs.js'

const LOAD_FACTOR = {
  /** Load factor of the joint. */
  loadFactor: { kind: 'ratio', min: 0, below: 1 },
} as const

/** Loads of bolt and joint under an external tension, and the load at which the joint opens. */
export const jointLoads = /* @__PURE__ */ formula('fasteners.jointLoads', {
  inputs: {
    ...CLAMP_LOAD_LEFT,
    /** External tension per bolt. */
    externalLoad: { kind: 'force', min: 0 },
    ...LOAD_FACTOR,
  },
  output: {
    /** Tension of the bolt. */
    boltLoad: 'force',
    /** Force left between the parts. */
    faceLoad: 'force',
    /** External load at which the parts separate. */
    separationLoad: 'force',
    /** Whether the parts touch. */
    state: { oneOf: ['closed', 'open'] },
  },
  equation: [
    'separationLoad = clampLoad / (1 - loadFactor)',
    'boltLoad = externalLoad < separationLoad ? clampLoad + loadFactor * externalLoad : externalLoad',
    'faceLoad = externalLoad < separationLoad ? clampLoad - (1 - loadFactor) * externalLoad : 0 N',
  ],
  assumes: ['linear joint', 'load concentric with the bolt'],
  source: [{ level: 'published', where: 'Shigley 9th ed., section 8-7 and eq. 8-30' }],
  si: ({ clampLoad, externalLoad, loadFactor }) => {
    const separationLoad = clampLoad / (1 - loadFactor)
    const closed = externalLoad < separationLoad
    return {
      boltLoad: closed ? clampLoad + loadFactor * externalLoad : externalLoad,
      faceLoad: closed ? clampLoad - (1 - loadFactor) * externalLoad : 0,
      separationLoad,
      state: closed ? ('closed' as const) : ('open' as const),
    }
  },
})

/** The three usual reserves of a bolted joint: against yielding, against overload beyond the preload, against opening. */
export const jointReserves = /* @__PURE__ */ formula('fasteners.jointReserves', {
  title: 'reserves of a bolted joint',
  inputs: {
    ...CLAMP_LOAD,
    /** External tension per bolt. */
    externalLoad: { kind: 'force', above: 0 },
    /** Load factor of the joint. */
    loadFactor: { kind: 'ratio', above: 0, below: 1 },
    /** Proof load of the bolt. */
    proofLoad: { kind: 'force', above: 0 },
  },
  output: {
    /** Proof load over bolt load. */
    yieldReserve: 'ratio',
    /** External load that would reach the proof load, over the external load; negative when preload alone is above it. */
    overloadReserve: 'ratio',
    /** External load that would open the joint, over the external load. */
    separationReserve: 'ratio',
  },
  equation: [
    'yieldReserve = proofLoad / (clampLoad + loadFactor * externalLoad)',
    'overloadReserve = (proofLoad - clampLoad) / (loadFactor * externalLoad)',
    'separationReserve = clampLoad / ((1 - loadFactor) * externalLoad)',
  ],
  assumes: ['as jointLoads, joint closed'],
  source: [{ level: 'published', where: 'Shigley 9th ed., eq. 8-28, 8-29, 8-30' }],
  valid: { 'preload below the proof load': ({ clampLoad, proofLoad }) => clampLoad < proofLoad },
  si: ({ clampLoad, externalLoad, loadFactor, proofLoad }) => ({
    yieldReserve: proofLoad / (loadFactor * externalLoad + clampLoad),
    overloadReserve: (proofLoad - clampLoad) / (loadFactor * externalLoad),
    separationReserve: clampLoad / (externalLoad * (1 - loadFactor)),
  }),
})

/** The sideways force that clamped faces hold by friction. */
export const jointSlip = /* @__PURE__ */ formula('fasteners.jointSlip', {
  title: 'slip force of clamped faces',
  inputs: {
    /** Force between the faces that is left under load (`jointLoads`), all bolts together. */
    faceLoad: { kind: 'force', min: 0 },
    ...FACE_FRICTION,
    /** Faces that must slip together. */
    faces: { kind: 'count', min: 1, whole: true, default: 1 },
    /** Sideways force to hold. */
    shearForce: { kind: 'force', min: 0 },
  },
  output: {
    /** Sideways force at slip. */
    slipForce: 'force',
    /** Slip force over the force to hold; infinite without one. */
    reserve: { kind: 'ratio', infinite: true },
    /** Whether it holds. */
    state: { oneOf: ['holds', 'slips'] },
  },
  equation: ['slipForce = faceLoad * friction * faces', 'reserve = slipForce / shearForce'],
  assumes: ['Coulomb friction'],
  source: [{ level: 'published', where: 'any machine-design text: friction joint' }],
  si: ({ faceLoad, friction, faces, shearForce }) => {
    const slipForce = faceLoad * friction * faces
    return {
      slipForce,
      reserve: shearForce === 0 ? Number.POSITIVE_INFINITY : slipForce / shearForce,
      state: slipForce >= shearForce ? ('holds' as const) : ('slips' as const),
    }
  },
})

/** Fatigue of a preloaded bolt: alternating stress at the first engaged thread against the endurance limit of rolled threads. */
export const boltFatigue = /* @__PURE__ */ formula('fasteners.boltFatigue', {
  inputs: {
    /** Sizes of the thread, from `metricThread`. */
    thread: {
      fields: {
        ...NOMINAL_DIAMETER,
        ...STRESS_AREA,
      },
    },
    /** Largest external tension of the cycle. */
    largestLoad: { kind: 'force', min: 0 },
    /** Smallest external tension of the cycle. */
    smallestLoad: { kind: 'force', min: 0 },
    /** Clamp load: use the smallest of its life. */
    clampLoad: { kind: 'force', min: 0 },
    ...LOAD_FACTOR,
  },
  output: {
    /** Stress amplitude of the bolt. */
    amplitude: 'stress',
    /** Endurance limit of threads rolled before heat treatment, as amplitude. */
    allowableAmplitude: 'stress',
    /** Allowable over actual; infinite without a cycle. */
    reserve: { kind: 'ratio', infinite: true },
    /** Whether the joint opens in the cycle: the bolt then carries all of the load. */
    state: { oneOf: ['closed', 'opens'] },
  },
  assumes: ['no bending of the bolt: in an opening or bent joint the amplitude is higher', 'property class 8.8 or better'],
  source: [
    { level: 'published', where: 'Shigley 9th ed., section 8-11 (amplitude)' },
    { level: 'unverified', where: 'VDI 2230-1, 5.5.3: 0.85 (150 mm/d + 45) MPa' },
  ],
  requires: {
    smallestLoad: { accepts: 'must not exceed the largest', holds: ({ smallestLoad, largestLoad }) => smallestLoad <= largestLoad },
  },
  valid: { 'M6 and larger (the endurance rule is fitted there)': ({ thread }) => thread.diameter >= 0.006 },
  si: ({ thread, largestLoad, smallestLoad, clampLoad, loadFactor }) => {
    const high = jointLoads.si({ clampLoad, externalLoad: largestLoad, loadFactor })
    const low = jointLoads.si({ clampLoad, externalLoad: smallestLoad, loadFactor })
    const amplitude = (high.boltLoad - low.boltLoad) / (2 * thread.stressArea)
    const allowableAmplitude = 0.85e6 * (0.15 / thread.diameter + 45)
    return {
      amplitude,
      allowableAmplitude,
      reserve: amplitude === 0 ? Number.POSITIVE_INFINITY : allowableAmplitude / amplitude,
      state: high.state === 'closed' ? ('closed' as const) : ('opens' as const),
    }
  },
})
