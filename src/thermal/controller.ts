import { formula } from '../formula/index.js'
import { PEAK_PHASE_CURRENT } from './motor-inputs.js'

/**
 * Conduction loss of a three-phase bridge at the temperature of its switches.
 *
 * A phase current flows through exactly one of the two switches of its leg at all times, so modulation does not enter.
 */
export const bridgeConductionLoss = /* @__PURE__ */ formula('thermal.bridgeConductionLoss', {
  inputs: {
    ...PEAK_PHASE_CURRENT,
    /** On-resistance of one switch at 25 °C. */
    switchResistance: { kind: 'electricalResistance', min: 0 },
    /** Junction temperature. */
    junctionTemperature: { kind: 'temperature', min: '-60 degC', max: '200 degC', default: '25 degC' },
    /** Growth of the on-resistance per kelvin above 25 °C, from the switch's own curve. */
    resistanceCoefficient: { kind: 'temperatureCoefficient', min: 0, default: '0.5 %/K' },
  },
  /** Loss of the whole bridge. */
  output: 'power',
  equation: ['result = 1.5 * peakPhaseCurrent^2 * switchResistance * (1 + resistanceCoefficient * (junctionTemperature - 298.15 K))'],
  assumes: ['sinusoidal phase currents (at standstill the same total)', 'on-resistance linear in temperature', 'synchronous rectification'],
  source: [
    { level: 'computed', where: 'three legs, each rms current squared times one on-resistance' },
    { level: 'commonPractice', where: 'power switches gain 0.4 to 0.6 %/K of on-resistance' },
  ],
  si: ({ peakPhaseCurrent, switchResistance, junctionTemperature, resistanceCoefficient }) =>
    1.5 * peakPhaseCurrent * peakPhaseCurrent * switchResistance * (1 + resistanceCoefficient * (junctionTemperature - 298.15)),
})

/** Switching, dead-time and gate losses of a three-phase bridge, linear-edge model. */
export const bridgeSwitchingLoss = /* @__PURE__ */ formula('thermal.bridgeSwitchingLoss', {
  inputs: {
    /** Peak phase current. */
    peakPhaseCurrent: { kind: 'peakPhaseCurrent', min: 0 },
    /** Supply voltage. */
    voltage: { kind: 'voltage', min: 0 },
    /** Switching frequency. */
    frequency: { kind: 'frequency', min: 0 },
    /** Rise time of a switching edge. */
    riseTime: { kind: 'time', min: 0 },
    /** Fall time of a switching edge. */
    fallTime: { kind: 'time', min: 0 },
    /** Dead time of each transition. */
    deadTime: { kind: 'time', min: 0, default: '0 s' },
    /** Forward voltage of the diode that carries the dead time. */
    diodeVoltage: { kind: 'voltage', min: 0, default: '0.8 V' },
    /** Gate charge of one switch. */
    gateCharge: { kind: 'charge', min: 0, default: '0 C' },
    /** Gate drive voltage. */
    gateVoltage: { kind: 'voltage', min: 0, default: '10 V' },
    /** Whether the rotor turns; at standstill the phase currents stay at their worst: 1, ½ and ½ of the peak. */
    rotor: { oneOf: ['turning', 'still'], default: 'turning' },
  },
  output: {
    /** Loss in the edges. */
    edges: 'power',
    /** Loss in the diodes during dead time. */
    deadTime: 'power',
    /** Gate drive. */
    gates: 'power',
    /** Sum. */
    total: 'power',
  },
  assumes: ['linear edges, no ringing', 'one switching cycle of each leg per period'],
  source: [{ level: 'computed', where: 'linear-edge model of power-switch application notes: half voltage times current times edge time' }],
  si: ({ peakPhaseCurrent, voltage, frequency, riseTime, fallTime, deadTime, diodeVoltage, gateCharge, gateVoltage, rotor }) => {
    // Sum of the three rectified phase currents: 3 · 2/π on average when turning, 2 at the worst standstill angle.
    const currents = peakPhaseCurrent * (rotor === 'turning' ? 6 / Math.PI : 2)
    const edges = 0.5 * voltage * currents * (riseTime + fallTime) * frequency
    const dead = diodeVoltage * currents * 2 * deadTime * frequency
    const gates = 6 * gateCharge * gateVoltage * frequency
    return { edges, deadTime: dead, gates, total: edges + dead + gates }
  },
})
