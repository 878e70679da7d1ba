import { formula } from '../formula/index.js'
import { RISES } from './cooling-laws.js'
import { COOLING_LAWS, HEATED_MOTOR, type HeatedMotor, type MotorState, motorState, motorStateAt } from './motor-heat.js'

/** What takes up heat: motor, and a store in the plate behind a conductance. */
export interface MotorBody {
  /** Heat capacity of the motor, J/K. */
  readonly capacity: number
  readonly storeCapacity: number
  readonly storeConductance: number
}

/** A step is repeated with half its length while its embedded error is above this, K. */
const STEP_ERROR = 0.02
/** A motor whose steps become this short is running away, s. */
const SHORTEST = 1e-3
const SAFETY = 0.9

/** Where a warming motor got to. */
export interface Warmed {
  readonly mount: number
  readonly store: number
  /** Whether it stayed below the end of the laws and its winding did not run away. */
  readonly finished: boolean
  /** States worked out on the way. */
  readonly states: number
}

/**
 * Follows mounting face and store for a time. Steps of third order with an embedded second-order answer (Bogacki & Shampine 1989): the difference is the error, and sets the
 * next step.
 */
export function warm(
  surplusAt: (mount: number) => number,
  body: MotorBody,
  mount: number,
  store: number,
  time: number,
  highest: number,
): Warmed {
  const { capacity, storeCapacity, storeConductance } = body
  let states = 0
  const rate = (T: number, S: number) => {
    states++
    return (surplusAt(T) - storeConductance * (T - S)) / capacity
  }
  const take = (T: number, S: number) => (storeCapacity > 0 ? (storeConductance * (T - S)) / storeCapacity : 0)
  let T = mount
  let S = store
  let t = 0
  let step = time / 3
  let r1 = rate(T, S)
  let s1 = take(T, S)
  while (t < time) {
    if (!Number.isFinite(r1) || T > highest) return { mount: T, store: S, finished: false, states }
    // The last two steps share what is left, so that none is tiny.
    if (step > 0.999 * (time - t)) step = time - t
    else if (2 * step > time - t) step = (time - t) / 2
    const [T2, S2] = [T + 0.5 * step * r1, S + 0.5 * step * s1]
    const [r2, s2] = [rate(T2, S2), take(T2, S2)]
    const [T3, S3] = [T + 0.75 * step * r2, S + 0.75 * step * s2]
    const [r3, s3] = [rate(T3, S3), take(T3, S3)]
    const nextT = T + (step / 9) * (2 * r1 + 3 * r2 + 4 * r3)
    const nextS = S + (step / 9) * (2 * s1 + 3 * s2 + 4 * s3)
    const [r4, s4] = [rate(nextT, nextS), take(nextT, nextS)]
    const error = (step * Math.max(Math.abs(-5 * r1 + 6 * r2 + 8 * r3 - 9 * r4), Math.abs(-5 * s1 + 6 * s2 + 8 * s3 - 9 * s4))) / 72
    if (error <= STEP_ERROR) {
      t += step
      T = nextT
      S = nextS
      r1 = r4
      s1 = s4
    } else if (step < SHORTEST) return { mount: T, store: S, finished: false, states }
    // Not a number where a trial ran away: then the step is cut to a fifth.
    const factor = SAFETY * Math.cbrt(STEP_ERROR / error)
    step *= factor > 0.2 ? Math.min(5, factor) : 0.2
  }
  return { mount: T, store: S, finished: T <= highest, states }
}

/** Inputs of what stores heat. */
const BODY = {
  /** Heat capacity of the motor, without its plate. */
  capacity: { kind: 'heatCapacity', above: 0 },
  /** Heat capacity of the store in the plate, of `plateStore`; 0 for none. */
  storeCapacity: { kind: 'heatCapacity', min: 0, default: '0 J/K' },
  /** Conductance between mounting face and store. */
  storeConductance: { kind: 'thermalConductance', min: 0, default: '0 W/K' },
  /** How long it warms. */
  time: { kind: 'time', above: 0 },
} as const

/**
 * Temperatures of a motor that holds a torque still from cold for a time: motor and mounting face warm as one body, the plate takes up its part, the winding rides on it.
 *
 * The lag of the winding, some seconds, is left out, so that short stalls read too warm. `runaway` where the winding runs away or the mounting face rises by more than 450 K: then temperatures
 * and loss are infinite.
 */
export const motorStall = /* @__PURE__ */ formula('thermal.motorStall', {
  inputs: { ...HEATED_MOTOR, ...BODY },
  output: {
    /** Mean of the winding. */
    winding: { kind: 'temperature', infinite: true },
    /** Mounting face. */
    mount: { kind: 'temperature', infinite: true },
    /** Can, and with it the magnets. */
    can: { kind: 'temperature', infinite: true },
    /** Store in the plate. */
    store: { kind: 'temperature', infinite: true },
    /** Copper loss at the end. */
    loss: { kind: 'power', infinite: true },
    /** Copper loss of the same current with the winding at 20 °C. */
    lossAt20: 'power',
    /** Back-EMF constant with the magnets as warm as the can. */
    backEmf: 'backEmfConstant',
    /** Resistance from the winding to the air. */
    resistanceToAir: 'thermalResistance',
    /** States that the course took. */
    states: 'count',
    /** Whether it ended below the end of the laws. */
    state: { oneOf: ['finished', 'runaway'] },
  },
  assumes: ['laws made for this air and these surroundings', 'starts at the temperature of the air; magnets as warm as the can'],
  source: [
    {
      level: 'computed',
      where: 'two lumps with copper resistance and magnets that depend on temperature; embedded Runge-Kutta steps, 0.02 K each',
    },
  ],
  si: ({ capacity, storeCapacity, storeConductance, time, ...m }) => {
    const state = motorState()
    const end = warm(
      (mount) => motorStateAt(m, mount, state).surplus,
      { capacity, storeCapacity, storeConductance },
      m.air,
      m.air,
      time,
      m.air + RISES.high,
    )
    motorStateAt(m, end.mount, state)
    const finished = end.finished && Number.isFinite(state.loss)
    const or = (x: number) => (finished ? x : Number.POSITIVE_INFINITY)
    return {
      winding: or(state.winding),
      mount: or(end.mount),
      can: or(state.can),
      store: or(end.store),
      loss: or(state.loss),
      lossAt20: state.lossAt20,
      backEmf: state.backEmf,
      resistanceToAir: m.windingToMount + 1 / state.conductance,
      states: end.states,
      state: finished ? 'finished' : 'runaway',
    }
  },
})

/** A motor without torque: its laws alone. */
const passive = (
  m: Omit<HeatedMotor, 'torque' | 'backEmfConstant' | 'magnetCoefficient' | 'terminalResistance' | 'windingToMount'>,
): HeatedMotor => ({
  ...m,
  torque: 0,
  backEmfConstant: 1,
  magnetCoefficient: 0,
  terminalResistance: 1,
  windingToMount: 1,
})

/** Mounting face and store of a motor after a time of constant loss, from any temperatures: one stretch of a heating run on a test stand. */
export const motorWarmUp = /* @__PURE__ */ formula('thermal.motorWarmUp', {
  inputs: {
    /** Loss, all of it. */
    otherLoss: { kind: 'power', min: 0 },
    /** Mounting face at the start. */
    initial: 'temperature',
    /** Store in the plate at the start. */
    initialStore: 'temperature',
    ...COOLING_LAWS,
    ...BODY,
  },
  output: {
    /** Mounting face. */
    mount: { kind: 'temperature', infinite: true },
    /** Store in the plate. */
    store: { kind: 'temperature', infinite: true },
  },
  assumes: ['laws made for this air and these surroundings'],
  source: [{ level: 'computed', where: 'two lumps; embedded Runge-Kutta steps, 0.02 K each' }],
  si: ({ initial, initialStore, capacity, storeCapacity, storeConductance, time, ...laws }) => {
    const state: MotorState = motorState()
    const m = passive(laws)
    const body = { capacity, storeCapacity, storeConductance }
    const { mount, store, finished } = warm((T) => motorStateAt(m, T, state).surplus, body, initial, initialStore, time, m.air + RISES.high)
    return { mount: finished ? mount : Number.POSITIVE_INFINITY, store: finished ? store : Number.POSITIVE_INFINITY }
  },
})
