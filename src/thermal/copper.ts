import { formula } from '../formula/index.js'

/** Inferred temperature of zero resistance, below 0 °C, kelvin: 234.5 for copper, 225 for aluminium conductor. */
export const ZERO_RESISTANCE_OFFSET = { copper: 234.5, aluminium: 225 } as const
const ZERO_CELSIUS = 273.15
const REFERENCE = 293.15
/** Kelvin from 20 °C down to copper's inferred zero. */
const COPPER_SPAN = 254.5

/** Winding resistance at another temperature: cold resistance understates the loss of a hot motor by a quarter to a half. */
export const hotResistance = /* @__PURE__ */ formula('thermal.hotResistance', {
  inputs: {
    /** Resistance as measured. */
    resistance: { kind: 'electricalResistance', above: 0 },
    /** Temperature of the winding when it was measured. */
    measuredAt: { kind: 'temperature', min: '-60 degC', max: '400 degC', default: '20 degC' },
    /** Temperature at which it is wanted. */
    temperature: { kind: 'temperature', min: '-60 degC', max: '400 degC' },
    /** Conductor. */
    conductor: { oneOf: ['copper', 'aluminium'], default: 'copper' },
  },
  /** Resistance there. */
  output: 'electricalResistance',
  assumes: ['resistance linear in temperature, inferred zero at −234.5 °C (copper) or −225 °C (aluminium)'],
  source: [
    { level: 'standard', where: 'change-of-resistance method of the electrical safety standards, K = 234.5 (copper), 225.0 (aluminium)' },
  ],
  si: ({ resistance, measuredAt, temperature, conductor }) => {
    const k = ZERO_RESISTANCE_OFFSET[conductor] - ZERO_CELSIUS
    return (resistance * (k + temperature)) / (k + measuredAt)
  },
})

/** Copper loss of all three phases from the peak phase current. */
export const copperLoss = /* @__PURE__ */ formula('thermal.copperLoss', {
  inputs: {
    /** Peak phase current (amplitude-invariant q current). */
    peakPhaseCurrent: 'peakPhaseCurrent',
    /** Resistance between two terminals, at the winding's temperature. */
    terminalResistance: { kind: 'electricalResistance', min: 0 },
  },
  /** Loss. */
  output: 'power',
  assumes: ['sinusoidal currents', 'no skin or proximity effect'],
  source: [{ level: 'computed', where: 'three phases, each half the squared peak current times half the terminal resistance' }],
  si: ({ peakPhaseCurrent, terminalResistance }) => 0.75 * peakPhaseCurrent * peakPhaseCurrent * terminalResistance,
})

/** Copper loss of all three phases from the rms phase current. */
export const copperLossFromRms = /* @__PURE__ */ formula('thermal.copperLossFromRms', {
  inputs: {
    /** Rms phase current. */
    rmsPhaseCurrent: 'rmsPhaseCurrent',
    /** Resistance between two terminals, at the winding's temperature. */
    terminalResistance: { kind: 'electricalResistance', min: 0 },
  },
  /** Loss. */
  output: 'power',
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
  source: [{ level: 'computed', where: 'definition of the motor constant' }],
  si: ({ torque, motorConstant }) => (torque / motorConstant) ** 2,
})

/**
 * Loss of each phase while the motor holds still: the total is as when turning, but one phase may take two thirds of it, twice its share.
 */
export const phaseLossesAtStall = /* @__PURE__ */ formula('thermal.phaseLossesAtStall', {
  inputs: {
    /** Peak phase current. */
    peakPhaseCurrent: 'peakPhaseCurrent',
    /** Resistance between two terminals, at the winding's temperature. */
    terminalResistance: { kind: 'electricalResistance', min: 0 },
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
 * Steady winding temperature with the resistance that grows as it warms, one thermal resistance to ambient.
 *
 * Above a certain loss there is none: every kelvin adds more loss than it sheds. Then the state is `runaway` and temperature and loss are infinite.
 */
export const hotSteadyState = /* @__PURE__ */ formula('thermal.hotSteadyState', {
  inputs: {
    /** Loss that the same current would cause at 20 °C. */
    lossAt20: { kind: 'power', min: 0 },
    /** Thermal resistance, winding to ambient. */
    thermalResistance: { kind: 'thermalResistance', above: 0 },
    /** Ambient temperature. */
    ambient: 'temperature',
  },
  output: {
    /** Winding temperature. */
    temperature: { kind: 'temperature', infinite: true },
    /** Loss there. */
    loss: { kind: 'power', infinite: true },
    /** Whether a steady state exists. */
    state: { oneOf: ['steady', 'runaway'] },
  },
  assumes: ['copper', 'one constant thermal resistance', 'current held constant'],
  source: [{ level: 'computed', where: 'heat balance with resistance linear in temperature (K = 234.5)' }],
  si: ({ lossAt20, thermalResistance, ambient }) => {
    const gain = (thermalResistance * lossAt20) / COPPER_SPAN
    const steady = gain < 1
    const temperature = steady ? (ambient - REFERENCE + COPPER_SPAN * gain) / (1 - gain) + REFERENCE : Number.POSITIVE_INFINITY
    return {
      temperature,
      loss: steady ? (lossAt20 * (temperature - REFERENCE + COPPER_SPAN)) / COPPER_SPAN : Number.POSITIVE_INFINITY,
      state: steady ? 'steady' : 'runaway',
    }
  },
})

/** The loss, told at 20 °C, at and above which a winding on one thermal resistance runs away. */
export const runawayLoss = /* @__PURE__ */ formula('thermal.runawayLoss', {
  inputs: {
    /** Thermal resistance, winding to ambient. */
    thermalResistance: { kind: 'thermalResistance', above: 0 },
  },
  /** Loss at 20 °C of the current at which no steady state is left. */
  output: 'power',
  assumes: ['copper', 'one constant thermal resistance', 'current held constant'],
  source: [{ level: 'computed', where: 'pole of the heat balance with resistance linear in temperature' }],
  si: ({ thermalResistance }) => COPPER_SPAN / thermalResistance,
})

/** What a winding may lose when a part at its temperature has a limit: the loss there, and what the same current loses at 20 °C. */
export const continuousLoss = /* @__PURE__ */ formula('thermal.continuousLoss', {
  inputs: {
    /** Highest winding temperature allowed. */
    limit: 'temperature',
    /** Ambient temperature. */
    ambient: 'temperature',
    /** Thermal resistance, winding to ambient. */
    thermalResistance: { kind: 'thermalResistance', above: 0 },
  },
  output: {
    /** Loss at the limit; negative when ambient is already above it. */
    loss: 'power',
    /** Loss at 20 °C of the same current: compare with cold resistance. */
    lossAt20: 'power',
  },
  assumes: ['copper', 'one constant thermal resistance'],
  source: [{ level: 'computed', where: 'heat balance with resistance linear in temperature' }],
  si: ({ limit, ambient, thermalResistance }) => {
    const loss = (limit - ambient) / thermalResistance
    return { loss, lossAt20: (loss * COPPER_SPAN) / (limit - REFERENCE + COPPER_SPAN) }
  },
})

/** How long a current may flow before a winding that sheds nothing reaches a temperature. */
export const adiabaticPulse = /* @__PURE__ */ formula('thermal.adiabaticPulse', {
  inputs: {
    /** Heat capacity of the winding. */
    heatCapacity: { kind: 'heatCapacity', above: 0 },
    /** Loss that the same current would cause at 20 °C. */
    lossAt20: { kind: 'power', above: 0 },
    /** Winding temperature at the start. */
    from: { kind: 'temperature', min: '-60 degC' },
    /** Winding temperature at the end. */
    to: { kind: 'temperature', min: '-60 degC' },
  },
  /** Time. */
  output: 'time',
  assumes: ['no heat leaves the copper', 'current held constant', 'copper'],
  valid: { 'the end is hotter than the start': ({ from, to }) => to >= from },
  source: [{ level: 'computed', where: 'integral of the heat balance with resistance linear in temperature' }],
  si: ({ heatCapacity, lossAt20, from, to }) =>
    ((heatCapacity * COPPER_SPAN) / lossAt20) * Math.log((to - REFERENCE + COPPER_SPAN) / (from - REFERENCE + COPPER_SPAN)),
})

/** Heat capacity of a winding from its copper and what fills the slot. */
export const windingHeatCapacity = /* @__PURE__ */ formula('thermal.windingHeatCapacity', {
  inputs: {
    /** Mass of conductor. */
    conductorMass: { kind: 'mass', above: 0 },
    /** Its specific heat. */
    conductorSpecificHeat: { kind: 'specificHeat', above: 0, default: '385 J/(kg K)' },
    /** Mass of enamel, liner and resin. */
    insulationMass: { kind: 'mass', min: 0, default: '0 g' },
    /** Its specific heat. */
    insulationSpecificHeat: { kind: 'specificHeat', above: 0, default: '1200 J/(kg K)' },
  },
  /** Heat capacity. */
  output: 'heatCapacity',
  source: [{ level: 'computed', where: 'mass times specific heat; 385 J/(kg K) for copper, Incropera, table A.1 (from memory)' }],
  si: ({ conductorMass, conductorSpecificHeat, insulationMass, insulationSpecificHeat }) =>
    conductorMass * conductorSpecificHeat + insulationMass * insulationSpecificHeat,
})

/** What warm magnets cost: the back-EMF constant falls, and the loss for one torque grows with its inverse square. */
export const magnetDerating = /* @__PURE__ */ formula('thermal.magnetDerating', {
  inputs: {
    /** Back-EMF constant with the magnets at 20 °C. */
    backEmfConstant: { kind: 'backEmfConstant', above: 0 },
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
  assumes: ['winding temperature constant over the cycle'],
  valid: {
    'as many durations as torques': ({ torques, durations }) => torques.length === durations.length,
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
