import { formula } from '../formula/index.js'
import { AMBIENT } from './motor-inputs.js'

/** Inferred temperature of zero resistance, below 0 °C, kelvin: 234.5 for copper, 225 for aluminium conductor. */
const ZERO_RESISTANCE_OFFSET = { copper: 234.5, aluminium: 225 } as const

const THERMAL_RESISTANCE = {
  /** Thermal resistance, winding to ambient. */
  thermalResistance: { kind: 'thermalResistance', above: 0 },
} as const
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
    /** Temperature of the result. */
    temperature: { kind: 'temperature', min: '-60 degC', max: '400 degC' },
    /** Conductor. */
    conductor: { oneOf: ['copper', 'aluminium'], default: 'copper' },
  },
  /** Resistance there. */
  output: 'electricalResistance',
  equation: [
    'zero = equalText(conductor, "aluminium") ? 48.15 K : 38.65 K',
    'result = resistance * (temperature - zero) / (measuredAt - zero)',
  ],
  assumes: ['resistance linear in temperature, inferred zero at −234.5 °C (copper) or −225 °C (aluminium)'],
  source: [
    { level: 'standard', where: 'change-of-resistance method of the electrical safety standards, K = 234.5 (copper), 225.0 (aluminium)' },
  ],
  si: ({ resistance, measuredAt, temperature, conductor }) => {
    const k = ZERO_RESISTANCE_OFFSET[conductor] - ZERO_CELSIUS
    return (resistance * (k + temperature)) / (k + measuredAt)
  },
})

/**
 * Steady winding temperature with the resistance that grows as it warms, one thermal resistance to ambient.
 *
 * Above a certain loss there is none: every kelvin adds more loss than it sheds. Then the state is `runaway` and temperature and loss are infinite.
 */
export const steadyWindingTemperature = /* @__PURE__ */ formula('thermal.steadyWindingTemperature', {
  inputs: {
    /** Loss that the same current would cause at 20 °C. */
    lossAt20: { kind: 'power', min: 0 },
    ...THERMAL_RESISTANCE,
    ...AMBIENT,
  },
  output: {
    /** Winding temperature. */
    temperature: { kind: 'temperature', infinite: true },
    /** Loss there. */
    loss: { kind: 'power', infinite: true },
    /** Whether a steady state exists. */
    state: { oneOf: ['steady', 'runaway'] },
  },
  equation: ['loss == lossAt20 * (temperature - 293.15 K + 254.5 K) / (254.5 K)', 'temperature == ambient + thermalResistance * loss'],
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

/** The loss, counted at 20 °C, at and above which a winding on one thermal resistance runs away. */
export const runawayLoss = /* @__PURE__ */ formula('thermal.runawayLoss', {
  title: 'copper loss at thermal runaway',
  inputs: {
    ...THERMAL_RESISTANCE,
  },
  /** Loss at 20 °C of the current at which no steady state is left. */
  output: 'power',
  equation: ['result = 254.5 K / thermalResistance'],
  assumes: ['copper', 'one constant thermal resistance', 'current held constant'],
  source: [{ level: 'computed', where: 'pole of the heat balance with resistance linear in temperature' }],
  si: ({ thermalResistance }) => COPPER_SPAN / thermalResistance,
})

/** What a winding may lose when a part at its temperature has a limit: the loss there, and what the same current loses at 20 °C. */
export const continuousLoss = /* @__PURE__ */ formula('thermal.continuousLoss', {
  inputs: {
    /** Highest winding temperature allowed. */
    limit: 'temperature',
    ...AMBIENT,
    ...THERMAL_RESISTANCE,
  },
  output: {
    /** Loss at the limit; negative when ambient is already above it. */
    loss: 'power',
    /** Loss at 20 °C of the same current: compare with cold resistance. */
    lossAt20: 'power',
  },
  equation: ['loss = (limit - ambient) / thermalResistance', 'lossAt20 = loss * 254.5 K / (limit - 293.15 K + 254.5 K)'],
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
  equation: ['result = heatCapacity * 254.5 K / lossAt20 * log((to - 293.15 K + 254.5 K) / (from - 293.15 K + 254.5 K))'],
  assumes: ['no heat leaves the copper', 'current held constant', 'copper'],
  requires: { to: { accepts: 'must be at least the temperature at the start', holds: ({ from, to }) => to >= from } },
  source: [{ level: 'computed', where: 'integral of the heat balance with resistance linear in temperature' }],
  si: ({ heatCapacity, lossAt20, from, to }) =>
    ((heatCapacity * COPPER_SPAN) / lossAt20) * Math.log((to - REFERENCE + COPPER_SPAN) / (from - REFERENCE + COPPER_SPAN)),
})

/** Heat capacity of a winding from its copper and what fills the slot. */
export const windingHeatCapacity = /* @__PURE__ */ formula('thermal.windingHeatCapacity', {
  inputs: {
    /** Mass of conductor. */
    conductorMass: { kind: 'mass', above: 0 },
    /** Specific heat of the conductor. */
    conductorSpecificHeat: { kind: 'specificHeat', above: 0, default: '385 J/(kg K)' },
    /** Mass of enamel, liner and resin. */
    insulationMass: { kind: 'mass', min: 0, default: '0 g' },
    /** Specific heat of the insulation. */
    insulationSpecificHeat: { kind: 'specificHeat', above: 0, default: '1200 J/(kg K)' },
  },
  /** Heat capacity. */
  output: 'heatCapacity',
  equation: ['result = conductorMass * conductorSpecificHeat + insulationMass * insulationSpecificHeat'],
  source: [{ level: 'computed', where: 'mass times specific heat; 385 J/(kg K) for copper, Incropera, table A.1 (unverified)' }],
  si: ({ conductorMass, conductorSpecificHeat, insulationMass, insulationSpecificHeat }) =>
    conductorMass * conductorSpecificHeat + insulationMass * insulationSpecificHeat,
})
