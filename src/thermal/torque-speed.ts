import { type Given, readInputs } from '../formula/index.js'
import { bracketRoot } from '../numeric/index.js'
import { type Quantity as Q, Quantity } from '../units/index.js'
import { copperLoss } from './copper.js'
import type { Motor } from './motor.js'
import { backEmfAt, dragLossAt, type MotorNumbers, peakCurrentAt, resistanceAt } from './motor-currents.js'
import { speedAtCurrent, supplySag } from './supply.js'

/** One point of a motor's torque-speed limit on a supply. */
export interface TorqueSpeedPoint {
  /** Torque at the rotor. */
  readonly torque: Q<'torque'>
  /** Highest speed at that torque. */
  readonly speed: Q<'angularVelocity'>
  /** Voltage left at the controller. */
  readonly voltage: Q<'voltage'>
  /** Power taken from the supply. */
  readonly power: Q<'power'>
  /** `turns`; `stalled` where the voltage cannot push the current; `brownOut` where the supply cannot deliver the power at any speed. */
  readonly state: 'turns' | 'stalled' | 'brownOut'
}

const SUPPLY = {
  /** Voltage of the supply without load. */
  voltage: { kind: 'voltage', above: 0 },
  /** Resistance of battery, connectors and leads, there and back. */
  resistance: { kind: 'electricalResistance', min: 0, default: '0 ohm' },
  /** Winding temperature. */
  winding: { kind: 'temperature', default: '20 degC' },
  /** Magnet temperature. */
  magnets: { kind: 'temperature', default: '20 degC' },
} as const

/** A supply and the temperatures at which the motor is evaluated. */
export type SupplySpecification = Given<typeof SUPPLY>

/** The speed a motor can still reach at a torque, on a supply that sags under the power drawn: voltage and speed found together. */
export function torqueSpeedLimit(machine: Motor, torques: readonly Q<'torque'>[], supply: SupplySpecification): TorqueSpeedPoint[] {
  const x = readInputs('thermal.torqueSpeedLimit', SUPPLY, supply)
  return torques.map((torque) => {
    const { speed, voltage, power, state } = torqueSpeedAt(machine.si, torque.si, x)
    return {
      torque,
      speed: new Quantity(speed, 'angularVelocity'),
      voltage: new Quantity(voltage, 'voltage'),
      power: new Quantity(power, 'power'),
      state,
    }
  })
}

/** The same in SI numbers. */
export function torqueSpeedAt(
  m: MotorNumbers,
  torque: number,
  supply: { readonly voltage: number; readonly resistance: number; readonly winding: number; readonly magnets: number },
): { speed: number; voltage: number; power: number; state: TorqueSpeedPoint['state'] } {
  const terminalResistance = resistanceAt(m, supply.winding)
  const motor = {
    backEmfConstant: backEmfAt(m, supply.magnets),
    terminalResistance,
    phaseInductance: m.phaseInductance,
    polePairs: m.polePairs,
  }
  const load = Math.abs(torque)
  // The drag of iron and bearings takes current too.
  const currentAt = (speed: number) => peakCurrentAt(m, load + m.constantDrag + m.viscousDrag * speed, supply.magnets)
  const speedAt = (voltage: number) => {
    const first = speedAtCurrent.si({ ...motor, voltage, peakPhaseCurrent: currentAt(0) })
    if (m.viscousDrag === 0 || first.state === 'stalled') return first
    const spare = (speed: number) => speedAtCurrent.si({ ...motor, voltage, peakPhaseCurrent: currentAt(speed) }).speed - speed
    return { speed: bracketRoot(spare, 0, first.speed), state: first.state }
  }
  const copperAt = (speed: number) => copperLoss.si({ peakPhaseCurrent: currentAt(speed), terminalResistance })
  const powerAt = (speed: number) => load * speed + copperAt(speed) + dragLossAt(m, speed)
  const copper = copperAt(0)
  const full = speedAt(supply.voltage)
  if (full.state === 'stalled') return { speed: 0, voltage: supply.voltage, power: copper, state: 'stalled' }
  if (supply.resistance === 0) return { speed: full.speed, voltage: supply.voltage, power: powerAt(full.speed), state: 'turns' }
  // The sag voltage falls and the speed rises with the assumed voltage: one crossing, found by bisection.
  const gap = (voltage: number) => {
    const { voltage: left, state } = supplySag.si({
      openCircuitVoltage: supply.voltage,
      resistance: supply.resistance,
      power: powerAt(speedAt(voltage).speed),
    })
    return state === 'brownOut' ? -1 : left - voltage
  }
  let low = 0.5 * supply.voltage
  let high = supply.voltage
  const standing = supplySag.si({ openCircuitVoltage: supply.voltage, resistance: supply.resistance, power: copper })
  if (standing.state === 'brownOut' || gap(low) < 0) return { speed: 0, voltage: standing.voltage, power: copper, state: 'brownOut' }
  for (let k = 0; k < 60 && high - low > 1e-12 * supply.voltage; k++) {
    const middle = 0.5 * (low + high)
    if (gap(middle) >= 0) low = middle
    else high = middle
  }
  const { speed, state } = speedAt(low)
  return { speed, voltage: low, power: powerAt(speed), state }
}
