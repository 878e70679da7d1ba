import { formula } from '../formula/index.js'
import { BACK_EMF_AT_20, PEAK_PHASE_CURRENT, TERMINAL_RESISTANCE } from './motor-inputs.js'

const REFERENCE = 293.15

/** Copper loss of all three phases from the peak phase current. */
export const copperLoss = /* @__PURE__ */ formula('thermal.copperLoss', {
  inputs: {
    /** Peak phase current (amplitude-invariant q current). */
    peakPhaseCurrent: 'peakPhaseCurrent',
    ...TERMINAL_RESISTANCE,
  },
  /** Loss. */
  output: 'power',
  equation: ['result = 3 / 4 * peakPhaseCurrent^2 * terminalResistance'],
  assumes: ['sinusoidal currents', 'no skin or proximity effect'],
  source: [{ level: 'computed', where: 'three phases, each half the squared peak current times half the terminal resistance' }],
  si: ({ peakPhaseCurrent, terminalResistance }) => 0.75 * peakPhaseCurrent * peakPhaseCurrent * terminalResistance,
})

/** Copper loss of all three phases from the rms phase current. */
export const copperLossFromRms = /* @__PURE__ */ formula('thermal.copperLossFromRms', {
  inputs: {
    /** Rms phase current. */
    rmsPhaseCurrent: 'rmsPhaseCurrent',
    ...TERMINAL_RESISTANCE,
  },
  /** Loss. */
  output: 'power',
  equation: ['result = 3 / 2 * rmsPhaseCurrent^2 * terminalResistance'],
  source: [{ level: 'computed', where: 'three phases, each the squared rms current times half the terminal resistance' }],
  si: ({ rmsPhaseCurrent, terminalResistance }) => 1.5 * rmsPhaseCurrent * rmsPhaseCurrent * terminalResistance,
})

/** Copper loss that a torque costs, from the motor constant alone: no winding detail needed. */
export const copperLossForTorque = /* @__PURE__ */ formula('thermal.copperLossForTorque', {
  inputs: {
    /** Torque at the rotor. */
    torque: 'torque',
    /** Motor constant at the winding's and magnets' temperature. */
    motorConstant: { kind: 'motorConstant', above: 0 },
  },
  /** Loss. */
  output: 'power',
  equation: ['result = (torque / motorConstant)^2'],
  source: [{ level: 'computed', where: 'definition of the motor constant' }],
  si: ({ torque, motorConstant }) => (torque / motorConstant) ** 2,
})

/**
 * Loss of each phase while the motor holds still: the total is as when turning, but one phase may take two thirds of it, twice its share.
 */
export const phaseLossesAtStall = /* @__PURE__ */ formula('thermal.phaseLossesAtStall', {
  inputs: {
    ...PEAK_PHASE_CURRENT,
    ...TERMINAL_RESISTANCE,
    /** Electrical angle of phase A's current from its peak; 0 is the worst case. */
    electricalAngle: { kind: 'angle', default: '0 deg' },
  },
  output: {
    /** Phase A. */
    a: 'power',
    /** Phase B. */
    b: 'power',
    /** Phase C. */
    c: 'power',
    /** The hottest of the three. */
    worst: 'power',
    /** The hottest over its share when turning. */
    timesRotatingShare: 'ratio',
  },
  equation: [
    'a = 1 / 2 * terminalResistance * peakPhaseCurrent^2 * cos(electricalAngle)^2',
    'b = 1 / 2 * terminalResistance * peakPhaseCurrent^2 * cos(electricalAngle - 2 * pi / 3)^2',
    'c = 1 / 2 * terminalResistance * peakPhaseCurrent^2 * cos(electricalAngle + 2 * pi / 3)^2',
    'worst = max(a, b, c)',
  ],
  assumes: ['wye, or the equivalent wye of a delta'],
  source: [{ level: 'computed', where: 'squares of three cosines 120 degrees apart' }],
  si: ({ peakPhaseCurrent, terminalResistance, electricalAngle }) => {
    const peak = 0.5 * terminalResistance * peakPhaseCurrent * peakPhaseCurrent
    const a = Math.cos(electricalAngle) ** 2
    const b = Math.cos(electricalAngle - (2 * Math.PI) / 3) ** 2
    const c = Math.cos(electricalAngle + (2 * Math.PI) / 3) ** 2
    const worst = Math.max(a, b, c)
    return { a: peak * a, b: peak * b, c: peak * c, worst: peak * worst, timesRotatingShare: worst * 2 }
  },
})

/**
 * Rise of the hottest phase of a motor that holds still at its worst electrical angle, with heat that flows from phase to phase: between the mean of the winding and twice
 * its rise, which is the bound without any such flow.
 */
export const hottestPhaseRise = /* @__PURE__ */ formula('thermal.hottestPhaseRise', {
  inputs: {
    /** Copper loss of all phases. */
    loss: { kind: 'power', min: 0 },
    /** Resistance from the mean of the winding to what it sits in, all phases together. */
    windingResistance: { kind: 'thermalResistance', above: 0 },
    /** Conductance between each two phases; 0 for phases that touch nowhere. */
    phaseCoupling: { kind: 'thermalConductance', min: 0, default: '0 W/K' },
  },
  output: {
    /** Rise of the hottest phase over what the winding sits in. */
    hottest: 'temperatureDifference',
    /** Rise of the mean of the winding. */
    mean: 'temperatureDifference',
    /** Rise of the hottest phase without flow between phases: the bound. */
    bound: 'temperatureDifference',
  },
  assumes: [
    'three equal phases; one carries two thirds of the loss, the others a sixth each',
    'steady, the resistance of the phases alike',
  ],
  source: [
    {
      level: 'computed',
      where: 'three equal nodes joined to a base and to each other: the difference of the phases decays by the base and three couplings',
    },
  ],
  si: ({ loss, windingResistance, phaseCoupling }) => {
    const mean = loss * windingResistance
    return { hottest: mean * (1 + 1 / (1 + 9 * phaseCoupling * windingResistance)), mean, bound: 2 * mean }
  },
})

/** What warm magnets cost: the back-EMF constant falls, and the loss for one torque grows with its inverse square. */
export const magnetDerating = /* @__PURE__ */ formula('thermal.magnetDerating', {
  title: 'back-EMF constant and loss with warm magnets',
  inputs: {
    ...BACK_EMF_AT_20,
    /** Temperature of the magnets. */
    magnetTemperature: { kind: 'temperature', below: '400 degC' },
    /** Reversible change of remanence per kelvin (negative): about −0.10 to −0.12 %/K for neodymium magnets. */
    coefficient: { kind: 'temperatureCoefficient', max: 0, above: '-0.2 %/K', default: '-0.11 %/K' },
  },
  output: {
    /** Back-EMF constant at that temperature. */
    backEmfConstant: 'backEmfConstant',
    /** Loss for one torque, against magnets at 20 °C. */
    lossFactor: 'ratio',
  },
  equation: ['lossFactor = 1 / (1 + coefficient * (magnetTemperature - 293.15 K))^2'],
  assumes: ['reversible loss of remanence only', 'linear in temperature'],
  valid: { 'magnets below 200 °C, where no neodymium grade is left': ({ magnetTemperature }) => magnetTemperature <= 473.15 },
  source: [{ level: 'published', where: 'neodymium magnet grade tables: reversible coefficient of remanence −0.10 to −0.12 %/K' }],
  si: ({ backEmfConstant, magnetTemperature, coefficient }) => {
    const part = 1 + coefficient * (magnetTemperature - REFERENCE)
    return { backEmfConstant: backEmfConstant * part, lossFactor: 1 / (part * part) }
  },
})

/** Torque of equal mean copper loss over a cycle; only meaningful when the cycle is much shorter than the winding's time constant. */
export const rmsTorque = /* @__PURE__ */ formula('thermal.rmsTorque', {
  inputs: {
    /** Torque of each part of the cycle. */
    torques: { list: 'torque' },
    /** Duration of each part. */
    durations: { list: { kind: 'time', min: 0 } },
    /** Time constant of the winding against what it is mounted on, to judge whether the rule may be used. */
    windingTimeConstant: { kind: 'time', above: 0, optional: true },
  },
  output: {
    /** Rms torque. */
    torque: 'torque',
    /** Length of the cycle. */
    period: 'time',
  },
  equation: ['period = sum(durations)', 'torque = sqrt(sum(dotMultiply(dotPow(torques, 2), durations)) / period)'],
  assumes: ['winding temperature constant over the cycle'],
  requires: {
    durations: {
      accepts: 'must be one for each torque, and not all zero',
      holds: ({ torques, durations }) => torques.length === durations.length && durations.some((t) => t > 0),
    },
  },
  valid: {
    'cycle at most a tenth of the winding time constant': ({ durations, windingTimeConstant }) =>
      windingTimeConstant === undefined || durations.reduce((sum, t) => sum + t, 0) <= 0.1 * windingTimeConstant,
  },
  source: [{ level: 'computed', where: 'mean of squared torque' }],
  si: ({ torques, durations }) => {
    let sum = 0
    let period = 0
    for (let i = 0; i < durations.length; i++) {
      sum += (torques[i] as number) ** 2 * (durations[i] as number)
      period += durations[i] as number
    }
    return { torque: Math.sqrt(sum / period), period }
  },
})
