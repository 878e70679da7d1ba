import { formula } from '../formula/index.js'
import { COIL, COIL_FITS, USUAL_INDEX } from './helical-springs.js'

const BODY = {
  ...COIL,
  /** Coils of the body, parts of a coil counted. */
  bodyCoils: { kind: 'count', above: 0 },
} as const

/** Rate of a helical torsion spring with two straight legs: how much torque each angle takes. Its wire bends; the legs bend as well. */
export const torsionSpringRate = /* @__PURE__ */ formula('structures.torsionSpringRate', {
  inputs: {
    ...BODY,
    /** Length of both legs together, from the axis to where each presses. */
    legs: { kind: 'length', min: 0, default: '0 mm' },
    /** Modulus of the wire. */
    modulus: { kind: 'modulus', above: 0 },
  },
  output: {
    /** Coils that deflect as much as body and legs together. */
    activeCoils: 'count',
    /** Torque over angle. */
    rate: 'torsionalStiffness',
  },
  equation: [
    'activeCoils = bodyCoils + legs / (3 * pi * coilDiameter)',
    'rate = modulus * wireDiameter^4 / (64 * coilDiameter * activeCoils)',
  ],
  assumes: ['no friction between coils and on what they turn over: it makes a spring stiffer by some six per cent as it winds'],
  source: [
    { level: 'published', where: 'Bhandari, Design of Machine Elements, example 10.21; the equation of EN 13906-3' },
    { level: 'unverified', where: "Shigley's Mechanical Engineering Design, torsion springs (legs as cantilevers)" },
  ],
  requires: { coilDiameter: COIL_FITS },
  valid: USUAL_INDEX,
  si: ({ wireDiameter, coilDiameter, bodyCoils, legs, modulus }) => {
    const activeCoils = bodyCoils + legs / (3 * Math.PI * coilDiameter)
    return { activeCoils, rate: (modulus * wireDiameter ** 4) / (64 * coilDiameter * activeCoils) }
  },
})

/** Bending stress at the inside of the coil of a torsion spring that winds up, with the factor of a curved wire. */
export const torsionSpringStress = /* @__PURE__ */ formula('structures.torsionSpringStress', {
  inputs: {
    /** Torque about the axis of the spring. */
    torque: { kind: 'torque', min: 0 },
    ...COIL,
  },
  output: {
    /** Coil diameter over wire diameter. */
    index: 'ratio',
    /** Factor from the curvature. */
    factor: 'ratio',
    /** Largest bending stress, factor included. */
    stress: 'stress',
  },
  equation: [
    'index = coilDiameter / wireDiameter',
    'factor = (4 * index^2 - index - 1) / (4 * index * (index - 1))',
    'stress = factor * 32 * torque / (pi * wireDiameter^3)',
  ],
  assumes: ['elastic', 'wound in the direction of its coils'],
  source: [
    { level: 'published', where: 'Bhandari, Design of Machine Elements, example 10.21 (Wahl factor of the inner fibre)' },
    { level: 'computed', where: 'curved bar of round section in bending (theory of Winkler and Bach)' },
  ],
  requires: { coilDiameter: COIL_FITS },
  valid: USUAL_INDEX,
  si: ({ torque, wireDiameter, coilDiameter }) => {
    const index = coilDiameter / wireDiameter
    const factor = (4 * index ** 2 - index - 1) / (4 * index * (index - 1))
    return { index, factor, stress: (factor * 32 * torque) / (Math.PI * wireDiameter ** 3) }
  },
})

/** Torque of a torsion spring on the joint it acts on. Its legs press and do not pull: on the far side of its free angle it does nothing. */
export const torsionSpringTorque = /* @__PURE__ */ formula('structures.torsionSpringTorque', {
  inputs: {
    /** Angle of the joint. */
    jointAngle: 'angle',
    /** Angle of the joint at which the legs just touch. */
    freeAngle: 'angle',
    /** Whether a growing or a falling angle of the joint winds the spring. */
    winds: { oneOf: ['growing', 'falling'] },
    /** Torque over angle. */
    rate: { kind: 'torsionalStiffness', above: 0 },
  },
  output: {
    /** Torque on the joint, positive the way its angle grows. */
    torque: 'torque',
    /** Angle that the spring is wound by. */
    windup: 'angle',
    /** Energy that it stores. */
    energy: 'energy',
  },
  equation: ['abs(torque) == rate * windup', 'energy == rate * windup^2 / 2'],
  assumes: ['linear', 'the axis of the spring on that of the joint'],
  source: [{ level: 'computed', where: 'linear spring on one side of its free angle' }],
  si: ({ jointAngle, freeAngle, winds, rate }) => {
    const away = winds === 'growing' ? jointAngle - freeAngle : freeAngle - jointAngle
    const windup = Math.max(0, away)
    const size = rate * windup
    return { torque: windup === 0 ? 0 : winds === 'growing' ? -size : size, windup, energy: (size * windup) / 2 }
  },
})

/** Coil of a torsion spring that is wound up: it gets narrower, and longer by the coils that it gains. */
export const woundTorsionSpring = /* @__PURE__ */ formula('structures.woundTorsionSpring', {
  title: 'sizes of a wound torsion spring',
  inputs: {
    ...BODY,
    /** Angle that it is wound by. */
    windup: { kind: 'angle', min: 0 },
  },
  output: {
    /** Mean diameter of the coil. */
    coilDiameter: 'length',
    /** Inner diameter of the coil: a pin or sleeve in it must be thinner. */
    innerDiameter: 'length',
    /** Length of the body with its coils against each other. */
    bodyLength: 'length',
  },
  equation: [
    'innerDiameter = coilDiameter * bodyCoils / (bodyCoils + windup / (2 * pi)) - wireDiameter',
    'bodyLength = (bodyCoils + windup / (2 * pi) + 1) * wireDiameter',
  ],
  assumes: ['the length of the wire stays'],
  source: [
    { level: 'computed', where: 'a wire of one length on more coils' },
    { level: 'unverified', where: "Shigley's Mechanical Engineering Design, torsion springs, D' = N D / (N + θ)" },
  ],
  requires: { coilDiameter: COIL_FITS },
  si: ({ wireDiameter, coilDiameter, bodyCoils, windup }) => {
    const coils = bodyCoils + windup / (2 * Math.PI)
    const narrowed = (coilDiameter * bodyCoils) / coils
    return { coilDiameter: narrowed, innerDiameter: narrowed - wireDiameter, bodyLength: (coils + 1) * wireDiameter }
  },
})
