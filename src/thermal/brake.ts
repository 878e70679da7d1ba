import { formula } from '../formula/index.js'

const VOLTAGE = {
  /** Voltage before. */
  voltage: { kind: 'voltage', min: 0 },
} as const

const ENERGY = {
  /** Energy fed into it. */
  energy: { kind: 'energy', min: 0 },
} as const

/**
 * Voltage of a bus after motors have fed energy into its capacitors, where nothing else takes it.
 *
 * A bench supply and a full battery take nothing back: the capacitors of the controllers then hold all of it, and a small energy lifts them far.
 */
export const busVoltageRise = /* @__PURE__ */ formula('thermal.busVoltageRise', {
  inputs: {
    ...VOLTAGE,
    /** Capacitance of all controllers on the bus together. */
    capacitance: { kind: 'capacitance', above: 0 },
    ...ENERGY,
  },
  /** Voltage after. */
  output: 'voltage',
  equation: ['result = sqrt(voltage^2 + 2 * energy / capacitance)'],
  assumes: ['no loss in the capacitors and leads', 'capacitance constant: electrolytics lose a fifth over their life'],
  source: [{ level: 'computed', where: 'energy of a charged capacitor, C V²/2; any physics text' }],
  si: ({ voltage, capacitance, energy }) => Math.sqrt(voltage * voltage + (2 * energy) / capacitance),
})

/** Capacitance that takes an energy while the voltage of the bus rises no further than allowed. */
export const busCapacitance = /* @__PURE__ */ formula('thermal.busCapacitance', {
  inputs: {
    ...VOLTAGE,
    /** Highest voltage allowed. */
    highestVoltage: { kind: 'voltage', above: 0 },
    ...ENERGY,
  },
  /** Capacitance needed. */
  output: 'capacitance',
  equation: ['result = 2 * energy / (highestVoltage^2 - voltage^2)'],
  requires: { highestVoltage: { accepts: 'must be above the voltage before', holds: (x) => x.highestVoltage > x.voltage } },
  source: [{ level: 'computed', where: 'energy of a charged capacitor, C V²/2; any physics text' }],
  si: ({ voltage, highestVoltage, energy }) => (2 * energy) / (highestVoltage * highestVoltage - voltage * voltage),
})

/**
 * A brake resistor on the bus: how large its resistance may be to take the power of braking motors, how small for its switch, and its mean power.
 *
 * The switch connects it when the voltage of the bus reaches a threshold. A resistor that is too large does not hold that voltage; one that is too small
 * draws more than the switch bears. The energy of one braking is the pulse that the resistor must bear.
 */
export const brakeResistor = /* @__PURE__ */ formula('thermal.brakeResistor', {
  inputs: {
    /** Voltage of the bus at which its switch connects it. */
    onVoltage: { kind: 'voltage', above: 0 },
    /** Largest power that flows back. */
    peakPower: { kind: 'power', above: 0 },
    /** Energy of one braking. */
    energy: { kind: 'energy', min: 0 },
    /** Time from one braking to the next. */
    interval: { kind: 'time', above: 0 },
    /** Current that its switch bears. */
    switchCurrent: { kind: 'current', above: 0 },
  },
  output: {
    /** Largest resistance that takes the power at that voltage. */
    highest: 'electricalResistance',
    /** Smallest resistance that the switch bears. */
    lowest: 'electricalResistance',
    /** Mean power over many brakings. */
    meanPower: 'power',
    /** Whether a resistance lies between both. */
    state: { oneOf: ['fits', 'switchTooSmall'] },
  },
  equation: ['highest = onVoltage^2 / peakPower', 'lowest = onVoltage / switchCurrent', 'meanPower = energy / interval'],
  assumes: ['all of the power reaches the resistor: copper losses of the motors are on the safe side', 'leads without inductance'],
  source: [{ level: 'computed', where: 'power of a resistor, V²/R, and Ohm’s law' }],
  si: ({ onVoltage, peakPower, energy, interval, switchCurrent }) => {
    const [highest, lowest] = [(onVoltage * onVoltage) / peakPower, onVoltage / switchCurrent]
    return { highest, lowest, meanPower: energy / interval, state: lowest <= highest ? 'fits' : 'switchTooSmall' }
  },
})
