import { formula } from '../formula/index.js'
import { LETS_SCREW_TURN, turnsAgainst, WIDER_THAN_HOLE } from './screw-limits.js'
import { BEARING_RING, PITCH, PITCH_DIAMETER, PREVAILING_TORQUE, STRESS_AREA, THREAD, TURNED_BOLT } from './thread-inputs.js'
import { tighteningTorque } from './tightening.js'

const COS_30 = Math.sqrt(3) / 2

/** The preload from a wrench torque less a lock nut's prevailing torque; a state reports when no torque remains for the preload. */
export const preloadFromTorque = /* @__PURE__ */ formula('fasteners.preloadFromTorque', {
  inputs: {
    /** Torque on the wrench. */
    torque: { kind: 'torque', min: 0 },
    ...THREAD,
    ...TURNED_BOLT,
    ...PREVAILING_TORQUE,
  },
  output: {
    /** Preload; zero when the prevailing torque takes it all. */
    preload: 'force',
    /** Whether the torque gets past the prevailing torque. */
    state: { oneOf: ['tightened', 'prevailingTorqueNotOvercome'] },
  },
  assumes: ['as tighteningTorque'],
  source: [{ level: 'computed', where: 'fasteners.tighteningTorque solved for the preload' }],
  requires: {
    threadFriction: LETS_SCREW_TURN,
    bearingDiameter: WIDER_THAN_HOLE,
  },
  si: ({ torque, thread, threadFriction, headFriction, bearingDiameter, holeDiameter, prevailingTorque }) => {
    const atUnitPreload = { preload: 1, thread, threadFriction, headFriction, bearingDiameter, holeDiameter, prevailingTorque: 0 }
    const useful = torque - prevailingTorque
    return {
      preload: useful > 0 ? useful / tighteningTorque.si(atUnitPreload).torque : 0,
      state: useful > 0 ? ('tightened' as const) : ('prevailingTorqueNotOvercome' as const),
    }
  },
})

/** The highest preload at which tension and the twist of tightening together use a stated share of the bolt's yield strength. */
export const preloadAtUtilisation = /* @__PURE__ */ formula('fasteners.preloadAtUtilisation', {
  title: 'preload at a utilisation of the yield strength',
  inputs: {
    /** Sizes of the thread, from `metricThread`. */
    thread: {
      fields: {
        ...PITCH,
        ...PITCH_DIAMETER,
        ...STRESS_AREA,
      },
    },
    /** Yield strength of the bolt. */
    yieldStrength: { kind: 'stress', above: 0 },
    /** Coefficient of friction in the thread while tightening. */
    threadFriction: { kind: 'ratio', min: 0 },
    /** Share of the yield strength that is used. */
    utilisation: { kind: 'ratio', above: 0, max: 1, default: 0.9 },
    /** Whether the twist is fully plastic over the section (bolt practice) or elastic (about 8 % less preload). */
    torsion: { oneOf: ['plastic', 'elastic'], default: 'plastic' },
  },
  /** Preload. */
  output: 'force',
  equation: [
    'stressDiameter = sqrt(4 * thread.stressArea / pi)',
    'twist = (equalText(torsion, "plastic") ? 1.5 : 2) * thread.pitchDiameter * (thread.pitch / (pi * thread.pitchDiameter) + threadFriction / cos(30 deg)) / stressDiameter',
    'result = utilisation * yieldStrength * thread.stressArea / sqrt(1 + 3 * twist^2)',
  ],
  assumes: ['von Mises', 'twist of tightening on the stress diameter'],
  source: [{ level: 'unverified', where: 'VDI 2230-1, section 5.5.2 (table of assembly preloads)' }],
  si: ({ thread, yieldStrength, threadFriction, utilisation, torsion }) => {
    const stressDiameter = Math.sqrt((4 * thread.stressArea) / Math.PI)
    const twist =
      ((torsion === 'plastic' ? 1.5 : 2) *
        thread.pitchDiameter *
        (thread.pitch / (Math.PI * thread.pitchDiameter) + threadFriction / COS_30)) /
      stressDiameter
    return (utilisation * yieldStrength * thread.stressArea) / Math.sqrt(1 + 3 * twist * twist)
  },
})

/** The lowest and highest preload of one wrench setting for a range of friction. */
export const preloadBand = /* @__PURE__ */ formula('fasteners.preloadBand', {
  inputs: {
    /** Torque on the wrench. */
    torque: { kind: 'torque', above: 0 },
    ...THREAD,
    /** Lowest friction, in the thread and under the head alike. */
    lowestFriction: { kind: 'ratio', min: 0 },
    /** Highest friction. */
    highestFriction: { kind: 'ratio', above: 0 },
    /** Error of the wrench and its reading, ± share. */
    wrenchError: { kind: 'ratio', min: 0, below: 1, default: 0.05 },
    ...BEARING_RING,
  },
  output: {
    /** Preload with the highest friction and the wrench low. */
    lowest: 'force',
    /** Preload with the lowest friction and the wrench high. */
    highest: 'force',
    /** Tightening factor: highest over lowest. */
    tighteningFactor: 'ratio',
  },
  assumes: ['friction of thread and head high together or low together'],
  source: [{ level: 'computed', where: 'fasteners.tighteningTorque at the ends of the friction range' }],
  requires: {
    bearingDiameter: WIDER_THAN_HOLE,
    highestFriction: {
      accepts: 'must not be below the lowest, and must let the screw turn: friction × pitch below π × pitch diameter × cos 30°',
      holds: ({ lowestFriction, highestFriction, thread }) =>
        highestFriction >= lowestFriction && turnsAgainst(highestFriction, thread.pitch, thread.pitchDiameter),
    },
  },
  si: ({ torque, thread, lowestFriction, highestFriction, wrenchError, bearingDiameter, holeDiameter }) => {
    const common = { preload: 1, thread, bearingDiameter, holeDiameter, prevailingTorque: 0 }
    const stiff = tighteningTorque.si({ ...common, threadFriction: highestFriction, headFriction: highestFriction }).torque
    const slick = tighteningTorque.si({ ...common, threadFriction: lowestFriction, headFriction: lowestFriction }).torque
    const lowest = (torque * (1 - wrenchError)) / stiff
    const highest = (torque * (1 + wrenchError)) / slick
    return { lowest, highest, tighteningFactor: highest / lowest }
  },
})
