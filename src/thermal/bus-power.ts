import { formula } from '../formula/index.js'
import { copperLossForTorque } from './copper.js'
import { currentsForTorque, motorConstant } from './motor-constants.js'
import { BACK_EMF_WARM, DRIVEN_SPEED, TERMINAL_RESISTANCE } from './motor-inputs.js'
import { dragLoss } from './no-load.js'
import { electricalPower, supplySag } from './supply.js'
import { OPEN_CIRCUIT_VOLTAGE } from './supply-inputs.js'

/**
 * Power that all motors of a robot and its electronics draw from one bus at the same instant, and where power that flows back goes.
 *
 * The motors are summed first: one that brakes feeds those that drive. Only what is left over flows back: to the battery as far as it accepts it, then
 * to a brake resistor. What neither takes raises the voltage of the bus. Copper loss is never returned.
 */
export const busPower = /* @__PURE__ */ formula('thermal.busPower', {
  inputs: {
    /** All motors at one instant; alike ones in one row. */
    motors: {
      list: {
        fields: {
          /** Number of motors alike. */
          count: { kind: 'count', min: 0, whole: true, default: 1 },
          /** Torque on the load, at the shaft. */
          torque: 'torque',
          ...DRIVEN_SPEED,
          ...BACK_EMF_WARM,
          ...TERMINAL_RESISTANCE,
          /** Drag torque of iron and bearings. */
          drag: { kind: 'torque', min: 0, default: '0 N m' },
        },
      },
    },
    /** Power of computers, sensors and controllers. */
    electronics: { kind: 'power', min: 0 },
    /** Power that the battery accepts; zero for a supply that takes nothing back. */
    accepted: { kind: 'power', min: 0, default: '0 W' },
    /** Power that the brake resistor takes; zero without one. */
    brakeResistor: { kind: 'power', min: 0, default: '0 W' },
  },
  output: {
    /** Power drawn from the bus; negative where it flows back. */
    power: 'power',
    /** Heat of all motors. */
    motorHeat: 'power',
    /** Part that flows back into the battery. */
    intoBattery: 'power',
    /** Part that the brake resistor takes. */
    intoResistor: 'power',
    /** Whether the bus draws, what flows back is taken, or some of it is not and the voltage rises. */
    state: { oneOf: ['draws', 'taken', 'voltageRises'] },
  },
  assumes: ['each instant steady: inductance of the windings and capacitance of the bus neglected', 'current in phase with the back-EMF'],
  source: [{ level: 'computed', where: 'power balance of the bus: mechanical power, copper loss and drag of each motor' }],
  si: ({ motors, electronics, accepted, brakeResistor }) => {
    let power = electronics
    let motorHeat = 0
    for (const { count, torque, speed, backEmfConstant, terminalResistance, drag } of motors) {
      // The current carries the torque of the drag as well, along the speed.
      const shaft = torque + drag * Math.sign(speed)
      const copperLoss = copperLossForTorque.si({ torque: shaft, motorConstant: motorConstant.si({ backEmfConstant, terminalResistance }) })
      const otherLoss = dragLoss.si({ constantDrag: drag, viscousDrag: 0, speed })
      power += count * electricalPower.si({ torque, speed, copperLoss, otherLoss }).electrical
      motorHeat += count * (copperLoss + otherLoss)
    }
    const back = Math.max(0, -power)
    const intoBattery = Math.min(back, accepted)
    const intoResistor = Math.min(back - intoBattery, brakeResistor)
    const isTaken = intoBattery + intoResistor >= back
    return { power, motorHeat, intoBattery, intoResistor, state: power >= 0 ? 'draws' : isTaken ? 'taken' : 'voltageRises' }
  },
})

/**
 * Speed that motors reach together at one current each, with the sag of the battery that all of them cause.
 *
 * The state is `brownOut` where the battery cannot carry the currents, and `stalled` where the voltage left does not push the current through the
 * winding; the speed is zero in both, and the voltage at brown-out is the lowest at which the battery still holds.
 */
export const speedUnderSag = /* @__PURE__ */ formula('thermal.speedUnderSag', {
  inputs: {
    ...OPEN_CIRCUIT_VOLTAGE,
    /** Resistance of battery, connectors and leads, there and back. */
    batteryResistance: { kind: 'electricalResistance', min: 0 },
    /** Motors that drive at once. */
    motors: { kind: 'count', min: 1, whole: true },
    /** Torque of each motor, drag included. */
    torque: { kind: 'torque', min: 0 },
    ...BACK_EMF_WARM,
    ...TERMINAL_RESISTANCE,
    /** Power of computers, sensors and controllers. */
    electronics: { kind: 'power', min: 0, default: '0 W' },
  },
  output: {
    /** Highest speed of the motors at that torque. */
    speed: 'angularVelocity',
    /** Voltage of the bus. */
    busVoltage: 'voltage',
    /** Whether the motors turn. */
    state: { oneOf: ['turns', 'stalled', 'brownOut'] },
  },
  assumes: [
    'six-step drive at full duty: the bus carries the current of each motor',
    'battery as a constant voltage behind a constant resistance',
  ],
  source: [
    {
      level: 'computed',
      where: 'voltage left by the currents of all motors and the power of the electronics, less that across the winding',
    },
  ],
  si: ({ openCircuitVoltage, batteryResistance, motors, torque, backEmfConstant, terminalResistance, electronics }) => {
    const current = currentsForTorque.si({ torque, backEmfConstant }).dcTrapezoidal
    const left = openCircuitVoltage - batteryResistance * motors * current
    const sag = supplySag.si({ openCircuitVoltage: left, resistance: batteryResistance, power: electronics })
    const isHeld = left > 0 && sag.state === 'holds'
    const spare = sag.voltage - terminalResistance * current
    return {
      speed: isHeld ? Math.max(0, spare) / backEmfConstant : 0,
      busVoltage: Math.max(0, sag.voltage),
      state: isHeld ? (spare > 0 ? 'turns' : 'stalled') : 'brownOut',
    }
  },
})
