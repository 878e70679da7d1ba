import { formula } from '../formula/index.js'
import { copperLossForTorque } from './copper.js'
import { motorConstant } from './motor-constants.js'
import { BACK_EMF_WARM, TERMINAL_RESISTANCE } from './motor-inputs.js'
import { supplySag } from './supply.js'
import { OPEN_CIRCUIT_VOLTAGE, SUPPLY_RESISTANCE } from './supply-inputs.js'

const SHARE = {
  /** Share of the time. */
  share: { kind: 'ratio', min: 0, max: 1 },
} as const

/** Heat in a battery under a current that changes: its resistance times the mean square, never the square of the mean. */
export const batteryHeat = /* @__PURE__ */ formula('thermal.batteryHeat', {
  inputs: {
    /** Resistance of the cells, their connectors included. */
    resistance: { kind: 'electricalResistance', min: 0 },
    /** Currents over the duty. */
    parts: {
      list: {
        fields: {
          /** Current: constant, or the peak of a half sine. */
          current: 'current',
          ...SHARE,
          /** Course of the current in this part. */
          course: { oneOf: ['constant', 'halfSine'], default: 'constant' },
        },
      },
      least: 1,
    },
  },
  output: {
    /** Heat in the cells. */
    heat: 'power',
    /** Mean current. */
    meanCurrent: 'current',
    /** Root mean square of the current. */
    rmsCurrent: 'current',
    /** Heat over what the mean current alone would make; infinite without a mean current. */
    overMean: { kind: 'ratio', infinite: true },
  },
  assumes: ['constant resistance', 'no current in the rest of the time'],
  requires: {
    parts: {
      accepts: 'must have shares that add up to 1 at most',
      holds: ({ parts }) => parts.reduce((sum, { share }) => sum + share, 0) <= 1 + 1e-9,
    },
  },
  source: [{ level: 'computed', where: 'mean and mean square of a half sine: 2/π and 1/2' }],
  si: ({ resistance, parts }) => {
    let mean = 0
    let square = 0
    for (const { current, share, course } of parts) {
      mean += share * current * (course === 'halfSine' ? 2 / Math.PI : 1)
      square += share * current * current * (course === 'halfSine' ? 0.5 : 1)
    }
    return {
      heat: resistance * square,
      meanCurrent: mean,
      rmsCurrent: Math.sqrt(square),
      overMean: mean * mean === 0 ? Number.POSITIVE_INFINITY : square / (mean * mean),
    }
  },
})

/** Energy per metre and cost of transport of a robot that walks. Standing costs power without a metre: report its power instead. */
export const costOfTransport = /* @__PURE__ */ formula('thermal.costOfTransport', {
  inputs: {
    /** Mean power drawn while walking. */
    power: { kind: 'power', min: 0 },
    /** Mass of the robot. */
    mass: { kind: 'mass', above: 0 },
    /** Walking speed. */
    speed: { kind: 'velocity', above: 0 },
    /** Acceleration of free fall. */
    gravity: { kind: 'acceleration', above: 0, default: '9.80665 m/s^2' },
  },
  output: {
    /** Energy for each metre. */
    energyPerDistance: 'energyPerDistance',
    /** Energy for each metre over the weight. */
    costOfTransport: 'ratio',
  },
  equation: ['energyPerDistance = power / speed', 'costOfTransport = power / (mass * gravity * speed)'],
  source: [{ level: 'unverified', where: 'G. Gabrielli, T. von Kármán, Mech. Eng. 72 (1950) 775: power over weight and speed' }],
  si: ({ power, mass, speed, gravity }) => ({ energyPerDistance: power / speed, costOfTransport: power / (mass * gravity * speed) }),
})

/**
 * Running time and range of a battery over a duty of walking and standing, with the loss in its own cells.
 *
 * Each part counts with the power that leaves the cells, which is more than what the bus draws. In the state `brownOut` a part draws more than the
 * battery can deliver; time and range are then zero.
 */
export const runningTime = /* @__PURE__ */ formula('thermal.runningTime', {
  inputs: {
    /** Energy of the full battery. */
    energy: { kind: 'energy', above: 0 },
    /** Share of it that is used: less in the cold and with age. */
    usable: { kind: 'ratio', above: 0, max: 1 },
    ...OPEN_CIRCUIT_VOLTAGE,
    ...SUPPLY_RESISTANCE,
    /** Activity of the robot, such as walking and standing. */
    parts: {
      list: {
        fields: {
          /** Mean power drawn from the bus. */
          power: { kind: 'power', min: 0 },
          ...SHARE,
          /** Speed over the ground. */
          speed: { kind: 'velocity', min: 0, default: '0 m/s' },
        },
      },
      least: 1,
    },
  },
  output: {
    /** Running time; infinite without power. */
    time: { kind: 'time', infinite: true },
    /** Distance in that time; infinite without power. */
    range: { kind: 'length', infinite: true },
    /** Mean power that leaves the cells. */
    cellPower: 'power',
    /** Whether the battery delivers the power of every part. */
    state: { oneOf: ['holds', 'brownOut'] },
  },
  assumes: ['constant voltage until the energy is used', 'steady power in each part: peaks heat the cells more (`batteryHeat`)'],
  requires: {
    parts: {
      accepts: 'must have shares that add up to 1',
      holds: ({ parts }) => Math.abs(parts.reduce((sum, { share }) => sum + share, 0) - 1) < 1e-9,
    },
  },
  source: [{ level: 'computed', where: 'energy of the cells over open-circuit voltage times current, averaged over the parts' }],
  si: ({ energy, usable, openCircuitVoltage, resistance, parts }) => {
    let cellPower = 0
    let speed = 0
    let holds = true
    for (const { power, share, speed: each } of parts) {
      const { current, state } = supplySag.si({ openCircuitVoltage, resistance, power })
      holds &&= state === 'holds'
      cellPower += share * openCircuitVoltage * current
      speed += share * each
    }
    const time = holds ? (cellPower === 0 ? Number.POSITIVE_INFINITY : (energy * usable) / cellPower) : 0
    return { time, range: speed === 0 ? 0 : speed * time, cellPower, state: holds ? 'holds' : 'brownOut' }
  },
})

/** Copper loss of one motor over a stride with a half-sine stance and a constant torque in swing. */
export const strideCopperLoss = /* @__PURE__ */ formula('thermal.strideCopperLoss', {
  inputs: {
    /** Peak of the drive's torque in stance, after the reduction. */
    stancePeak: 'torque',
    /** Torque in swing, after the reduction. */
    swingTorque: { kind: 'torque', default: '0 N m' },
    /** Share of the stride in stance. */
    dutyFactor: { kind: 'ratio', min: 0, max: 1 },
    /** Reduction, motor turns per turn of the drum. */
    ratio: { kind: 'ratio', above: 0 },
    ...BACK_EMF_WARM,
    ...TERMINAL_RESISTANCE,
  },
  output: {
    /** Mean loss over the stride. */
    loss: 'power',
    /** Root mean square of the motor's torque. */
    rmsTorque: 'torque',
  },
  equation: [
    'rmsTorque = sqrt(dutyFactor * stancePeak^2 / 2 + (1 - dutyFactor) * swingTorque^2) / ratio',
    'loss = terminalResistance * (rmsTorque / backEmfConstant)^2',
  ],
  assumes: ['lossless reduction', 'strides much shorter than the winding’s time constant'],
  source: [{ level: 'computed', where: 'mean square of a half sine, 1/2; copper loss of the mean square torque' }],
  si: ({ stancePeak, swingTorque, dutyFactor, ratio, backEmfConstant, terminalResistance }) => {
    const rmsTorque = Math.sqrt((dutyFactor * stancePeak * stancePeak) / 2 + (1 - dutyFactor) * swingTorque * swingTorque) / ratio
    return {
      loss: copperLossForTorque.si({ torque: rmsTorque, motorConstant: motorConstant.si({ backEmfConstant, terminalResistance }) }),
      rmsTorque,
    }
  },
})
