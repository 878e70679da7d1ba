import { formula } from '../formula/index.js'
import { NumericError, solveInPlace } from '../numeric/index.js'
import { copperLossForTorque, magnetDerating } from './copper.js'
import { MOUNT_AIR } from './film-inputs.js'
import { steadyWindingTemperature } from './hot-winding.js'
import { motorConstant } from './motor-constants.js'
import { BACK_EMF_AT_20, HEATING_TORQUE, MOTOR_LOSSES } from './motor-inputs.js'

/** One of several motors on a plate. */
const MOTOR = {
  ...HEATING_TORQUE,
  ...BACK_EMF_AT_20,
  ...MOTOR_LOSSES,
  /** Conductance from the motor's body straight to the air. */
  canToAir: { kind: 'thermalConductance', min: 0, default: '0 W/K' },
} as const

/** A balance is met to this part of a kelvin. */
const SETTLED = 1e-9
/** Newton's method from below rises without overshoot, but for the error of its slopes, K. */
const COOLED = 1e-3
const ROUNDS = 100
/** Rise of a mounting face above which a balance does not count, K. */
const MAX_RISE = 450

interface Heated {
  readonly torque: number
  readonly backEmfConstant: number
  readonly magnetCoefficient: number
  readonly terminalResistance: number
  readonly otherLoss: number
  readonly windingToMount: number
  readonly canToAir: number
}

/** Winding and heat into the plate of a motor whose mounting face and magnets are at one temperature. */
function heatOf(m: Heated, mount: number, air: number) {
  const { backEmfConstant } = magnetDerating.si({ ...m, magnetTemperature: mount, coefficient: m.magnetCoefficient })
  const constant = motorConstant.si({ backEmfConstant, terminalResistance: m.terminalResistance })
  const lossAt20 = copperLossForTorque.si({ torque: m.torque, motorConstant: constant })
  const { temperature, loss } = steadyWindingTemperature.si({ lossAt20, thermalResistance: m.windingToMount, ambient: mount })
  return { winding: temperature, loss, heat: loss + m.otherLoss - m.canToAir * (mount - air) }
}

/**
 * Steady temperatures of several hot motors on one plate: each warms the others through the plate, and a warmer winding loses more.
 *
 * The state is `runaway` where the motors have no balance together, though each may have one alone; the lists are then empty.
 */
export const motorsOnPlate = /* @__PURE__ */ formula('thermal.motorsOnPlate', {
  inputs: {
    /** The motors. */
    motors: { list: { fields: MOTOR } },
    /** Resistances of the plate, row by row: rise of one ring per watt in each (`ringsOnPlate`). */
    plateResistances: { list: 'thermalResistance' },
    ...MOUNT_AIR,
  },
  output: {
    /** Mounting faces. */
    mounts: { list: 'temperature' },
    /** Means of the windings. */
    windings: { list: 'temperature' },
    /** Copper losses. */
    losses: { list: 'power' },
    /** Whether there is a steady state. */
    state: { oneOf: ['steady', 'runaway'] },
  },
  assumes: [
    'coefficients of the plate as given, at the temperatures they were made for',
    'magnets as warm as the mounting face',
    'all phases alike',
  ],
  requires: {
    plateResistances: {
      accepts: 'must be as many as the square of the number of motors, none negative',
      holds: ({ plateResistances, motors }) => plateResistances.length === motors.length ** 2 && plateResistances.every((r) => r >= 0),
    },
  },
  source: [{ level: 'computed', where: 'heat balance of each motor, with the rise of every ring as a sum over all' }],
  si: ({ motors, plateResistances, air }) => {
    const size = motors.length
    const mounts = new Float64Array(size).fill(air)
    const pivots = new Int32Array(size)
    const none = { mounts: [], windings: [], losses: [], state: 'runaway' as const }
    let settled = false
    for (let round = 0; round < ROUNDS && !settled; round++) {
      const heats = motors.map((m, i) => heatOf(m, mounts[i]!, air).heat)
      const slopes = motors.map((m, i) => (heatOf(m, mounts[i]! + STEP, air).heat - heats[i]!) / STEP)
      const matrix = Float64Array.from(plateResistances, (r, k) => (k % (size + 1) === 0 ? 1 : 0) - r * slopes[k % size]!)
      const change = Float64Array.from(
        mounts,
        (mount, i) => air - mount + heats.reduce((sum, q, j) => sum + plateResistances[i * size + j]! * q, 0),
      )
      if (!change.every(Number.isFinite) || !solveInPlace(matrix, size, pivots, change)) return none
      // From cold every step warms; one that cools has passed the pole of a runaway.
      if (change.some((x) => x < -COOLED) && round > 0) return none
      for (let i = 0; i < size; i++) mounts[i] = mounts[i]! + change[i]!
      if (mounts.some((mount) => !(mount < air + MAX_RISE))) return none
      settled = change.every((x) => Math.abs(x) < SETTLED)
    }
    if (!settled) throw new NumericError('motorsOnPlate', 'noConvergence', `the temperatures did not settle in ${ROUNDS} rounds`)
    const at = motors.map((m, i) => heatOf(m, mounts[i]!, air))
    return {
      mounts: Array.from(mounts),
      windings: at.map(({ winding }) => winding),
      losses: at.map(({ loss }) => loss),
      state: 'steady' as const,
    }
  },
})

/** Step of the difference quotients, K. */
const STEP = 1e-4
