import { formula } from '../formula/index.js'
import { BACK_EMF, BACK_EMF_WARM } from './motor-inputs.js'

const SQRT3 = Math.sqrt(3)

/**
 * Peak line-to-line back-EMF per rad/s from a speed constant (Kv), whose meaning depends on how it was measured.
 *
 * `spunPeakLineToLine`: the motor was spun and the peak of the line-to-line voltage read, Ke = 1/Kv exactly. `spunPeakPhase`: the same with the peak of
 * one phase against the star point, as in "peak phase volts per rev/s"; between two lines there are √3 of it. `noLoadSixStep`: free
 * speed over DC volts in six-step drive of a sinusoidal motor, whose mean commutated voltage is 3/π of the peak. `catalogue`: not
 * stated; assumed to be 1/Kv with a band of 5 % either way for modulation and no-load slip.
 */
export const backEmfConstant = /* @__PURE__ */ formula('thermal.backEmfConstant', {
  inputs: {
    /** Speed constant Kv. */
    speedConstant: { kind: 'speedConstant', above: 0 },
    /** How Kv was measured. */
    basis: { oneOf: ['spunPeakLineToLine', 'spunPeakPhase', 'noLoadSixStep', 'catalogue'] },
  },
  output: {
    /** Peak line-to-line back-EMF constant. */
    typical: 'backEmfConstant',
    /** Low end of its band. */
    low: 'backEmfConstant',
    /** High end of its band. */
    high: 'backEmfConstant',
  },
  equation: [
    'typical = (equalText(basis, "noLoadSixStep") ? pi / 3 : equalText(basis, "spunPeakPhase") ? sqrt(3) : 1) / speedConstant',
    'spread = equalText(basis, "catalogue") ? 0.05 : 0',
    'low = typical * (1 - spread)',
    'high = typical * (1 + spread)',
  ],
  assumes: ['sinusoidal back-EMF'],
  source: [
    { level: 'computed', where: 'definition; mean of a 60 degree window at the crest of a sine, 3/π' },
    { level: 'commonPractice', where: 'catalogue speed constants, 5 % either way' },
  ],
  si: ({ speedConstant, basis }) => {
    const ke = (basis === 'noLoadSixStep' ? Math.PI / 3 : basis === 'spunPeakPhase' ? SQRT3 : 1) / speedConstant
    const spread = basis === 'catalogue' ? 0.05 : 0
    return { typical: ke, low: ke * (1 - spread), high: ke * (1 + spread) }
  },
})

/**
 * Every torque constant of one motor, each in the convention its name and kind say.
 *
 * They differ by up to 73 % for the same motor, because each is per another current. The copper loss for one torque is the same in all.
 */
export const torqueConstants = /* @__PURE__ */ formula('thermal.torqueConstants', {
  inputs: {
    ...BACK_EMF,
  },
  output: {
    /** Per ampere of peak phase current: the q current of an amplitude-invariant vector controller. */
    peakPhase: 'torqueConstantPeakPhase',
    /** Per ampere of rms phase current. */
    rmsPhase: 'torqueConstantRmsPhase',
    /** Per ampere of q current of a power-invariant vector controller. */
    powerInvariant: 'torqueConstantPowerInvariant',
    /** Per ampere of DC link current in six-step drive of a motor with flat-topped EMF. */
    dcTrapezoidal: 'torqueConstantDc',
    /** Per ampere of DC link current in six-step drive of a motor with sinusoidal EMF. */
    dcSinusoidal: 'torqueConstantDc',
  },
  equation: [
    'peakPhase = sqrt(3) / 2 * backEmfConstant',
    'rmsPhase = sqrt(3 / 2) * backEmfConstant',
    'powerInvariant = sqrt(1 / 2) * backEmfConstant',
    'dcTrapezoidal = backEmfConstant',
    'dcSinusoidal = 3 / pi * backEmfConstant',
  ],
  assumes: ['sinusoidal back-EMF and current in phase with it (except for DC)', 'no reluctance torque', 'no saturation'],
  source: [{ level: 'computed', where: 'power balance: torque times speed = 3/2 peak phase EMF times peak phase current' }],
  si: ({ backEmfConstant: ke }) => ({
    peakPhase: (SQRT3 / 2) * ke,
    rmsPhase: Math.sqrt(1.5) * ke,
    powerInvariant: Math.SQRT1_2 * ke,
    dcTrapezoidal: ke,
    dcSinusoidal: (3 / Math.PI) * ke,
  }),
})

/** Torque per square root of copper loss: the number by which motors of any winding are compared (Km). */
export const motorConstant = /* @__PURE__ */ formula('thermal.motorConstant', {
  inputs: {
    ...BACK_EMF,
    /** Resistance between two terminals, at the temperature of the motor constant. */
    terminalResistance: { kind: 'electricalResistance', above: 0 },
  },
  /** Motor constant. */
  output: 'motorConstant',
  equation: ['result = backEmfConstant / sqrt(terminalResistance)'],
  assumes: ['sinusoidal back-EMF and current in phase with it'],
  source: [
    { level: 'computed', where: 'definition torque/√(copper loss), with 3/4 of squared peak phase current times terminal resistance' },
  ],
  si: ({ backEmfConstant: ke, terminalResistance }) => ke / Math.sqrt(terminalResistance),
})

/** The currents that a torque takes, each in its convention. */
export const currentsForTorque = /* @__PURE__ */ formula('thermal.currentsForTorque', {
  inputs: {
    /** Torque at the rotor (its sign is kept). */
    torque: 'torque',
    ...BACK_EMF_WARM,
  },
  output: {
    /** Peak phase current (amplitude-invariant q current). */
    peakPhase: 'peakPhaseCurrent',
    /** Rms phase current. */
    rmsPhase: 'rmsPhaseCurrent',
    /** Power-invariant q current. */
    powerInvariant: 'powerInvariantCurrent',
    /** DC link current in six-step drive, flat-topped EMF. */
    dcTrapezoidal: 'current',
  },
  equation: [
    'peakPhase = torque / (sqrt(3) / 2 * backEmfConstant)',
    'rmsPhase = torque / (sqrt(3 / 2) * backEmfConstant)',
    'powerInvariant = torque / (sqrt(1 / 2) * backEmfConstant)',
    'dcTrapezoidal = torque / backEmfConstant',
  ],
  assumes: ['current in phase with the back-EMF', 'no saturation'],
  source: [{ level: 'computed', where: 'torque over the torque constant of each convention' }],
  si: ({ torque, backEmfConstant: ke }) => ({
    peakPhase: torque / ((SQRT3 / 2) * ke),
    rmsPhase: torque / (Math.sqrt(1.5) * ke),
    powerInvariant: torque / (Math.SQRT1_2 * ke),
    dcTrapezoidal: torque / ke,
  }),
})

/** Resistance between two terminals from the resistance of one winding leg, and the phase resistance of the equivalent wye. */
export const terminalResistance = /* @__PURE__ */ formula('thermal.terminalResistance', {
  inputs: {
    /** Resistance of one leg of the winding. */
    legResistance: { kind: 'electricalResistance', above: 0 },
    /** How the legs are joined. */
    connection: { oneOf: ['wye', 'delta'] },
  },
  output: {
    /** Terminal to terminal. */
    terminal: 'electricalResistance',
    /** One phase of the equivalent wye, half of it. */
    phase: 'electricalResistance',
  },
  assumes: ['three equal legs', 'no circulating current in a delta'],
  source: [{ level: 'computed', where: 'two legs in series, or one in parallel with two' }],
  si: ({ legResistance, connection }) => {
    const terminal = legResistance * (connection === 'wye' ? 2 : 2 / 3)
    return { terminal, phase: terminal / 2 }
  },
})

/**
 * Motor torque that a joint torque needs through a reduction with friction: while raising, without friction, and while lowering.
 *
 * A static hold may lie anywhere between the last two bounds, and only a preceding lift locks it at the first: a thermal check of a hold reports more than one.
 */
export const motorTorqueBand = /* @__PURE__ */ formula('thermal.motorTorqueBand', {
  title: 'motor torque for a joint torque, with friction',
  inputs: {
    /** Torque at the joint. */
    jointTorque: { kind: 'torque', min: 0 },
    /** Reduction, motor turns per joint turn. */
    ratio: { kind: 'ratio', above: 0 },
    /** Efficiency when the motor drives. */
    efficiency: { kind: 'ratio', above: 0, max: 1 },
    /** Efficiency when the load drives; assumed to be the driving one if not given. */
    backEfficiency: { kind: 'ratio', above: 0, max: 1, optional: true },
  },
  output: {
    /** Motor torque while raising the load. */
    raising: 'torque',
    /** Motor torque without friction. */
    frictionless: 'torque',
    /** Motor torque while the load overhauls. */
    lowering: 'torque',
  },
  equation: ['raising = jointTorque / (ratio * efficiency)', 'frictionless = jointTorque / ratio'],
  source: [{ level: 'computed', where: 'power balance across the reduction' }],
  si: ({ jointTorque, ratio, efficiency, backEfficiency = efficiency }) => ({
    raising: jointTorque / (ratio * efficiency),
    frictionless: jointTorque / ratio,
    lowering: (jointTorque * backEfficiency) / ratio,
  }),
})
