import { formula } from '../formula/index.js'
import { powerScrew } from './power-screw.js'
import { LETS_SCREW_TURN, turnsAgainst, WIDER_THAN_HOLE } from './screw-limits.js'
import {
  BEARING_RING,
  HEAD_FRICTION,
  NOMINAL_DIAMETER,
  PITCH,
  PITCH_DIAMETER,
  PREVAILING_TORQUE,
  SCREW_HELIX,
  THREAD,
  THREAD_FRICTION,
  TURNED_BOLT,
} from './thread-inputs.js'

const PRELOAD = {
  /** Preload of the bolt. */
  preload: { kind: 'force', min: 0 },
} as const

/** A bolt's thread and turned head as a screw with a collar: friction under the head acts at the mean of ring and hole. */
const asScrew = (
  meanDiameter: number,
  lead: number,
  threadFriction: number,
  collarFriction: number,
  bearingDiameter: number,
  holeDiameter: number,
) => ({
  meanDiameter,
  lead,
  halfThreadAngle: Math.PI / 6,
  threadFriction,
  collarFriction,
  collarDiameter: (bearingDiameter + holeDiameter) / 2,
})

/**
 * Tightening torque for a preload: one part lifts along the thread, one part is lost in the thread and one under the turned head.
 *
 * A lock nut's prevailing torque is added and contributes nothing to the preload.
 */
export const tighteningTorque = /* @__PURE__ */ formula('fasteners.tighteningTorque', {
  inputs: {
    ...PRELOAD,
    ...THREAD,
    ...TURNED_BOLT,
    ...PREVAILING_TORQUE,
  },
  output: {
    /** Torque on the wrench. */
    torque: 'torque',
    /** Part in the thread without prevailing torque: it twists the shank. */
    threadTorque: 'torque',
    /** Part under the head. */
    headTorque: 'torque',
    /** Torque on a held nut in its pocket: thread part and prevailing torque. */
    nutTorque: 'torque',
    /** Nut factor: wrench torque without the prevailing torque, over preload and diameter. */
    nutFactor: 'ratio',
  },
  equation: [
    'slope = thread.pitch / (pi * thread.pitchDiameter)',
    'mu = threadFriction / cos(pi / 6)',
    'threadTorque = preload * thread.pitchDiameter / 2 * (slope + mu) / (1 - slope * mu)',
    'headTorque = preload * headFriction * (bearingDiameter + holeDiameter) / 4',
    'nutTorque = threadTorque + prevailingTorque',
    'torque = threadTorque + headTorque + prevailingTorque',
  ],
  assumes: ['friction in the thread acts at the pitch diameter, under the head at the mean of ring and hole', 'friction constant'],
  source: [{ level: 'published', where: 'any machine-design text, "power screws" and "bolt torque", such as Shigley 9th ed., eq. 8-26' }],
  requires: {
    threadFriction: LETS_SCREW_TURN,
    bearingDiameter: WIDER_THAN_HOLE,
  },
  si: ({ preload, thread, threadFriction, headFriction, bearingDiameter, holeDiameter, prevailingTorque }) => {
    const screw = powerScrew.si({
      force: 1,
      ...asScrew(thread.pitchDiameter, thread.pitch, threadFriction, headFriction, bearingDiameter, holeDiameter),
    })
    const threadTorque = preload * screw.threadTorque
    const headTorque = preload * screw.collarTorque
    return {
      torque: threadTorque + headTorque + prevailingTorque,
      threadTorque,
      headTorque,
      nutTorque: threadTorque + prevailingTorque,
      nutFactor: screw.raisingTorque / thread.diameter,
    }
  },
  valid: { 'thread friction below 1': ({ threadFriction }) => threadFriction < 1 },
})

/** The nut factor of a steel bolt from its friction, with a mean bearing diameter under the head of 1.25 diameters. */
export const nutFactor = /* @__PURE__ */ formula('fasteners.nutFactor', {
  inputs: {
    ...NOMINAL_DIAMETER,
    ...SCREW_HELIX,
    ...THREAD_FRICTION,
    ...HEAD_FRICTION,
  },
  /** Nut factor: torque over preload and diameter. */
  output: 'ratio',
  equation: [
    'slope = lead / (pi * meanDiameter)',
    'mu = threadFriction / cos(pi / 6)',
    'result = (meanDiameter / 2 * (slope + mu) / (1 - slope * mu) + headFriction * 1.25 * diameter / 2) / diameter',
  ],
  assumes: ['60 degree thread', 'washer face 1.5 diameters wide, so that its mean diameter is 1.25 diameters'],
  source: [{ level: 'published', where: 'Shigley 9th ed., eq. 8-26' }],
  requires: {
    threadFriction: {
      accepts: 'must let the screw turn: friction × lead must stay below π × mean diameter × cos 30°',
      holds: ({ threadFriction, lead, meanDiameter }) => turnsAgainst(threadFriction, lead, meanDiameter),
    },
  },
  si: ({ diameter, meanDiameter, lead, threadFriction, headFriction }) => {
    const screw = { force: 1, meanDiameter, lead, halfThreadAngle: Math.PI / 6, threadFriction }
    return powerScrew.si({ ...screw, collarFriction: headFriction, collarDiameter: 1.25 * diameter }).raisingTorque / diameter
  },
})

/** The torque for a preload from a nut factor: the rule of thumb where only the surface is known. */
export const torqueFromNutFactor = /* @__PURE__ */ formula('fasteners.torqueFromNutFactor', {
  inputs: {
    /** Nut factor. */
    nutFactor: { kind: 'ratio', above: 0 },
    ...PRELOAD,
    ...NOMINAL_DIAMETER,
  },
  /** Torque on the wrench. */
  output: 'torque',
  equation: ['result = nutFactor * preload * diameter'],
  source: [{ level: 'published', where: 'Shigley 9th ed., eq. 8-27' }],
  si: ({ nutFactor, preload, diameter }) => nutFactor * preload * diameter,
})

/** The torque that turns a tightened bolt back; where it is negative the joint loosens by itself. */
export const looseningTorque = /* @__PURE__ */ formula('fasteners.looseningTorque', {
  inputs: {
    /** Preload of the bolt at that moment. */
    preload: { kind: 'force', min: 0 },
    ...PITCH,
    ...PITCH_DIAMETER,
    /** Coefficient of friction in the thread; near zero while the joint slips sideways under vibration. */
    threadFriction: { kind: 'ratio', min: 0 },
    ...HEAD_FRICTION,
    ...BEARING_RING,
    /** Prevailing torque of a lock nut in the loosening direction. */
    prevailingTorque: { kind: 'torque', min: 0, default: '0 N m' },
  },
  output: {
    /** Torque needed to loosen; negative when it must be held. */
    torque: 'torque',
    /** Whether it stays by itself. */
    state: { oneOf: ['selfHolding', 'selfLoosening'] },
  },
  equation: [
    'slope = pitch / (pi * pitchDiameter)',
    'mu = threadFriction / cos(pi / 6)',
    'torque = preload * (pitchDiameter / 2 * (mu - slope) / (1 + slope * mu) + headFriction * (bearingDiameter + holeDiameter) / 4) + prevailingTorque',
  ],
  assumes: ['60 degree thread', 'friction acts against loosening in thread and under the head'],
  source: [{ level: 'published', where: 'any machine-design text, "lowering torque" of power screws' }],
  requires: {
    bearingDiameter: WIDER_THAN_HOLE,
  },
  si: ({ preload, pitch, pitchDiameter, threadFriction, headFriction, bearingDiameter, holeDiameter, prevailingTorque }) => {
    const screw = asScrew(pitchDiameter, pitch, threadFriction, headFriction, bearingDiameter, holeDiameter)
    const torque = powerScrew.si({ force: preload, ...screw }).loweringTorque + prevailingTorque
    return { torque, state: torque < 0 ? ('selfLoosening' as const) : ('selfHolding' as const) }
  },
})
