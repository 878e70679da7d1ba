import { formula } from '../formula/index.js'
import { RISES } from './cooling-laws.js'
import { HEATED_MOTOR, type HeatedMotor, MIN_RISE, type MotorState, motorState, motorStateAt } from './motor-heat.js'
import { largestBalance } from './runaway-torque.js'

/** A balance that is met to this part of a kelvin has settled. */
const SETTLED = 1e-9
const MAX_ROUNDS = 100
/** The first guess grows or shrinks by this factor until the balance lies between two guesses. */
const REACH = 1.5

/** The lowest rise at which as much heat leaves as enters, K; infinite where there is none below the end of the law. */
function balancedRise(m: HeatedMotor, state: MotorState): { rise: number; rounds: number } {
  let rounds = 0
  const surplus = (rise: number) => {
    rounds++
    return motorStateAt(m, m.air + rise, state).surplus
  }
  // From cold more enters than leaves. A guess too warm is shrunk, one too cool grown, step by step, so that the first balance is the one met.
  const first = motorStateAt(m, m.air + 30, state)
  let high = Math.min(RISES.high, Math.max(MIN_RISE, (first.lossAt20 + m.otherLoss) / first.conductance))
  let atHigh = surplus(high)
  if (!Number.isFinite(atHigh)) {
    high = MIN_RISE
    atHigh = surplus(high)
  }
  let low = high
  let atLow = atHigh
  while (atLow <= 0) {
    // Below a hundredth of a kelvin the law is constant.
    if (low <= MIN_RISE) return { rise: Math.max(0, low + atLow / state.conductance), rounds }
    high = low
    atHigh = atLow
    low = Math.max(MIN_RISE, low / REACH)
    atLow = surplus(low)
  }
  while (atHigh > 0) {
    if (high >= RISES.high || !Number.isFinite(atHigh)) {
      // A balance near the largest torque, which holds over a few kelvin only, lies between two guesses.
      const max = largestBalance(m)
      if (max.square < m.torque ** 2) return { rise: Number.POSITIVE_INFINITY, rounds }
      low = MIN_RISE
      atLow = surplus(low)
      high = max.rise
      atHigh = Math.min(0, surplus(high))
      break
    }
    low = high
    atLow = atHigh
    high = Math.min(RISES.high, high * REACH)
    atHigh = surplus(high)
  }
  return { rise: between(low, atLow, high, atHigh, surplus), rounds }
}

/** A root between two rises of opposite surplus: false position with the Illinois weight. Source: Dahlquist & Björck, "regula falsi". */
function between(low: number, atLow: number, high: number, atHigh: number, surplus: (rise: number) => number): number {
  let [a, fa, b, fb] = [low, atLow, high, atHigh]
  for (let k = 0; k < MAX_ROUNDS; k++) {
    const x = Number.isFinite(fa) ? (a * fb - b * fa) / (fb - fa) : (a + b) / 2
    if (Math.abs(x - b) < SETTLED) return x
    const fx = surplus(x)
    if (fx === 0) return x
    if (fx > 0 !== fb > 0) {
      a = b
      fa = fb
    } else fa *= 0.5
    b = x
    fb = fx
  }
  return b
}

/**
 * Steady temperatures of a motor on its mount: torque to current to loss to heat to resistance and magnets and back, until heat in and heat out agree.
 *
 * The winding with its growing resistance is solved in closed form; one unknown is left, the temperature of the mounting face. Without a balance below a rise of 450 K the
 * state is `runaway`, and temperatures and loss are infinite.
 */
export const motorBalance = /* @__PURE__ */ formula('thermal.motorBalance', {
  title: 'steady temperatures of a motor',
  inputs: HEATED_MOTOR,
  output: {
    /** Mean of the winding. */
    winding: { kind: 'temperature', infinite: true },
    /** Mounting face. */
    mount: { kind: 'temperature', infinite: true },
    /** Can, and with it the magnets. */
    can: { kind: 'temperature', infinite: true },
    /** Copper loss. */
    loss: { kind: 'power', infinite: true },
    /** Copper loss of the same current with the winding at 20 °C. */
    lossAt20: 'power',
    /** Back-EMF constant with the magnets as warm as the can. */
    backEmf: 'backEmfConstant',
    /** Resistance from the winding to the air. */
    resistanceToAir: 'thermalResistance',
    /** Rounds that the balance took. */
    rounds: 'count',
    /** Whether there is a steady state. */
    state: { oneOf: ['steady', 'runaway'] },
  },
  assumes: ['laws made for this air and these surroundings', 'magnets as warm as the can; all phases alike, as while turning'],
  source: [{ level: 'computed', where: 'heat balance of a motor with copper resistance and magnets that depend on temperature' }],
  si: (m) => {
    const state = motorState()
    const { rise, rounds } = balancedRise(m, state)
    const steady = Number.isFinite(rise)
    motorStateAt(m, m.air + (steady ? rise : RISES.high), state)
    return {
      winding: steady ? state.winding : Number.POSITIVE_INFINITY,
      mount: m.air + rise,
      can: steady ? state.can : Number.POSITIVE_INFINITY,
      loss: steady ? state.loss : Number.POSITIVE_INFINITY,
      lossAt20: state.lossAt20,
      backEmf: state.backEmf,
      resistanceToAir: m.windingToMount + 1 / state.conductance,
      rounds,
      state: steady ? 'steady' : 'runaway',
    }
  },
})
