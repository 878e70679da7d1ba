import { formula } from '../formula/index.js'
import { BACK_EMF, DRIVEN_SPEED, TERMINAL_RESISTANCE } from './motor-inputs.js'
import { OPEN_CIRCUIT_VOLTAGE, SUPPLY_RESISTANCE } from './supply-inputs.js'

const SQRT3 = Math.sqrt(3)

/**
 * Voltage of a battery under a power draw; beyond a quarter of open-circuit voltage squared over resistance it cannot deliver.
 *
 * In the state `brownOut` the numbers are those of the most it can deliver (half the open-circuit voltage), not of the required power.
 */
export const supplySag = /* @__PURE__ */ formula('thermal.supplySag', {
  title: 'battery voltage under load',
  inputs: {
    ...OPEN_CIRCUIT_VOLTAGE,
    ...SUPPLY_RESISTANCE,
    /** Power drawn at the far end; negative when the drive gives power back. */
    power: 'power',
  },
  output: {
    /** Voltage at the far end. */
    voltage: 'voltage',
    /** Current drawn. */
    current: 'current',
    /** Most power that the supply can deliver. */
    mostPower: { kind: 'power', infinite: true },
    /** Current that the power needs. Beyond the most power it is what would carry it at half of the voltage: it grows with the power. */
    neededCurrent: 'current',
    /** Current at the most power. */
    mostCurrent: { kind: 'current', infinite: true },
    /** Whether the required power can be delivered. */
    state: { oneOf: ['holds', 'brownOut'] },
  },
  equation: [
    'mostPower = openCircuitVoltage^2 / (4 * resistance)',
    'voltage == openCircuitVoltage - resistance * current',
    'neededCurrent == power / voltage',
    'mostCurrent = openCircuitVoltage / (2 * resistance)',
  ],
  assumes: ['battery as a constant voltage behind a constant resistance'],
  source: [{ level: 'computed', where: 'quadratic of voltage, power and series resistance; maximum power transfer' }],
  si: ({ openCircuitVoltage: open, resistance, power }) => {
    const root = open * open - 4 * resistance * power
    const voltage = 0.5 * (open + Math.sqrt(Math.max(0, root)))
    const mostPower = resistance > 0 ? (open * open) / (4 * resistance) : Number.POSITIVE_INFINITY
    return {
      voltage,
      current: Math.min(power, mostPower) / voltage,
      mostPower,
      neededCurrent: power / voltage,
      mostCurrent: mostPower / (0.5 * open),
      state: root >= 0 ? 'holds' : 'brownOut',
    }
  },
})

/**
 * Highest speed at which a controller can still push a current through the motor, without field weakening.
 *
 * Space-vector modulation reaches a phase amplitude of supply voltage over √3. When the voltage does not even push the current
 * through the resistance, the state is `stalled` and the speed is zero.
 */
export const speedAtCurrent = /* @__PURE__ */ formula('thermal.speedAtCurrent', {
  inputs: {
    /** Supply voltage at the controller, sag taken off. */
    voltage: { kind: 'voltage', above: 0 },
    ...BACK_EMF,
    ...TERMINAL_RESISTANCE,
    /** Peak phase current, all of it torque-producing. */
    peakPhaseCurrent: { kind: 'peakPhaseCurrent', min: 0 },
    /** Inductance of one phase. */
    phaseInductance: { kind: 'inductance', min: 0, default: '0 H' },
    /** Pole pairs, needed with an inductance. */
    polePairs: { kind: 'count', min: 1, whole: true, default: 1 },
  },
  output: {
    /** Speed. */
    speed: 'angularVelocity',
    /** Whether the motor turns at all. */
    state: { oneOf: ['turns', 'stalled'] },
  },
  equation: [
    '(terminalResistance / 2 * peakPhaseCurrent + backEmfConstant / sqrt(3) * speed)^2 + (polePairs * phaseInductance * peakPhaseCurrent * speed)^2 == voltage^2 / 3',
  ],
  assumes: ['space-vector modulation to its linear limit, switches ideal', 'no field weakening', 'motoring'],
  source: [{ level: 'computed', where: 'voltage ellipse of the surface-magnet machine: Park equations in any machines text' }],
  si: ({ voltage, backEmfConstant, terminalResistance, peakPhaseCurrent, phaseInductance, polePairs }) => {
    const available = voltage / SQRT3
    const drop = 0.5 * terminalResistance * peakPhaseCurrent
    const emf = backEmfConstant / SQRT3
    const reactance = polePairs * phaseInductance * peakPhaseCurrent
    const spare = available * available - drop * drop
    const square = emf * emf + reactance * reactance
    // (drop + emf ω)² + (reactance ω)² = available²; the form without cancellation.
    const speed = spare <= 0 ? 0 : spare / (emf * drop + Math.sqrt(emf * emf * drop * drop + square * spare))
    return { speed, state: spare > 0 ? 'turns' : 'stalled' }
  },
})

/**
 * Where the power goes at one working point, with its sign: negative electrical power flows back into the supply.
 *
 * Copper loss is not reduced by regeneration. What comes back must go somewhere: a battery that accepts it, or a brake resistor.
 */
export const electricalPower = /* @__PURE__ */ formula('thermal.electricalPower', {
  inputs: {
    /** Torque of the motor on its load. */
    torque: 'torque',
    ...DRIVEN_SPEED,
    /** Copper loss. */
    copperLoss: { kind: 'power', min: 0 },
    /** Iron, friction and controller loss. */
    otherLoss: { kind: 'power', min: 0, default: '0 W' },
  },
  output: {
    /** Mechanical power given to the load; negative when the load drives. */
    mechanical: 'power',
    /** Power taken from the supply; negative when it flows back. */
    electrical: 'power',
    /** State of the drive. */
    state: { oneOf: ['motoring', 'braking', 'regenerating'] },
  },
  equation: ['mechanical = torque * speed', 'electrical = mechanical + copperLoss + otherLoss'],
  source: [{ level: 'computed', where: 'power balance' }],
  si: ({ torque, speed, copperLoss, otherLoss }) => {
    const mechanical = torque * speed
    const electrical = mechanical + copperLoss + otherLoss
    return { mechanical, electrical, state: mechanical >= 0 ? 'motoring' : electrical >= 0 ? 'braking' : 'regenerating' }
  },
})

/** Diameter, section and resistance per length of a round copper wire by American gauge. */
export const wireGauge = /* @__PURE__ */ formula('thermal.wireGauge', {
  inputs: {
    /** Gauge number; 0, −1, −2, −3 stand for 1/0 to 4/0. */
    gauge: { kind: 'count', min: -3, max: 40, whole: true },
  },
  output: {
    /** Diameter. */
    diameter: 'length',
    /** Section. */
    area: 'area',
    /** Resistance per length at 20 °C. */
    resistancePerLength: 'resistancePerLength',
  },
  equation: ['diameter = 0.127 mm * 92^((36 - gauge) / 39)', 'area = pi / 4 * diameter^2', 'resistancePerLength = 1.7241e-8 ohm m / area'],
  assumes: ['solid round annealed copper, 0.017241 ohm mm²/m at 20 °C'],
  source: [
    { level: 'unverified', where: 'ASTM B258: 39 steps of ratio 92^(1/39) from 0.127 mm' },
    { level: 'standard', where: 'IEC 60028, annealed copper' },
  ],
  si: ({ gauge }) => {
    const diameter = 0.127e-3 * 92 ** ((36 - gauge) / 39)
    const area = (Math.PI / 4) * diameter * diameter
    return { diameter, area, resistancePerLength: 1.7241e-8 / area }
  },
})

/** Resistance, voltage lost and heat of a copper lead pair at its temperature. */
export const leadLoss = /* @__PURE__ */ formula('thermal.leadLoss', {
  inputs: {
    /** Copper section of one conductor. */
    area: { kind: 'area', above: 0 },
    /** Length of the lead, one way. */
    length: { kind: 'length', above: 0 },
    /** DC or rms current. */
    current: { kind: 'current', min: 0 },
    /** Conductors in series: two for a DC lead. */
    conductors: { kind: 'count', min: 1, whole: true, default: 2 },
    /** Copper temperature. */
    temperature: { kind: 'temperature', min: '-60 degC', max: '200 degC', default: '20 degC' },
  },
  output: {
    /** Resistance of all conductors. */
    resistance: 'electricalResistance',
    /** Voltage lost. */
    drop: 'voltage',
    /** Heat. */
    loss: 'power',
  },
  equation: [
    'resistance = 1.7241e-8 ohm m * length * conductors / area * (temperature - 293.15 K + 254.5 K) / (254.5 K)',
    'drop = resistance * current',
    'loss = resistance * current^2',
  ],
  assumes: ['annealed copper; no rating of the bundle is implied'],
  source: [{ level: 'standard', where: 'IEC 60028, 0.017241 ohm mm²/m at 20 °C; inferred zero of resistance at −234.5 °C' }],
  si: ({ area, length, current, conductors, temperature }) => {
    const resistance = ((1.7241e-8 * length * conductors) / area) * ((temperature - 293.15 + 254.5) / 254.5)
    return { resistance, drop: resistance * current, loss: resistance * current * current }
  },
})
