import { formula } from '../formula/index.js'
import { RISES } from './cooling-laws.js'
import { COOLING_LAWS, HEATED_MOTOR, type HeatedMotor, type MotorState, motorState, motorStateAt } from './motor-heat.js'
import { warm, warmEvenly } from './warming.js'

/** Inputs of what stores heat. */
const BODY = {
  /** Heat capacity of the motor, without its plate. */
  capacity: { kind: 'heatCapacity', above: 0 },
  /** Heat capacity of the store in the plate, of `plateStore`; 0 for none. */
  storeCapacity: { kind: 'heatCapacity', min: 0, default: '0 J/K' },
  /** Conductance between mounting face and store. */
  storeConductance: { kind: 'thermalConductance', min: 0, default: '0 W/K' },
} as const

/**
 * Temperatures of a motor that holds a torque still for a time, from cold or from where a walk has left it: motor and mounting face warm as one body, the plate takes up its part, the winding rides on it.
 *
 * The results are those of its end, or of its start where it bears so little that a warm motor cools. The lag of the winding, some seconds, is left out, so that short stalls read too warm. `runaway` where the winding runs away or the mounting face rises by more than 450 K: then temperatures
 * and loss are infinite.
 */
export const motorStall = /* @__PURE__ */ formula('thermal.motorStall', {
  title: 'temperatures of a stalled motor',
  inputs: {
    ...HEATED_MOTOR,
    ...BODY,
    /** Mounting face and store in the plate at the start. Left out: the temperature of the air. */
    initial: { kind: 'temperature', optional: true },
    /** How long it warms. */
    time: { kind: 'time', above: 0 },
  },
  output: {
    /** Mean of the winding. */
    winding: { kind: 'temperature', infinite: true },
    /** Mounting face. */
    mount: { kind: 'temperature', infinite: true },
    /** Can, and with it the magnets. */
    can: { kind: 'temperature', infinite: true },
    /** Store in the plate. */
    store: { kind: 'temperature', infinite: true },
    /** Copper loss at these temperatures. */
    loss: { kind: 'power', infinite: true },
    /** Copper loss of the same current with the winding at 20 °C. */
    lossAt20: 'power',
    /** Back-EMF constant with the magnets as warm as the can. */
    backEmf: 'backEmfConstant',
    /** Resistance from the winding to the air. */
    resistanceToAir: 'thermalResistance',
    /** States that the transient took. */
    states: 'count',
    /** Whether it ended below the end of the laws. */
    state: { oneOf: ['finished', 'runaway'] },
  },
  assumes: [
    'laws made for this air and these surroundings',
    'mounting face and store are equally warm at the start; magnets as warm as the can',
  ],
  source: [
    {
      level: 'computed',
      where: 'two lumps with copper resistance and magnets that depend on temperature; embedded Rosenbrock steps, 0.02 K each',
    },
  ],
  si: (m) => {
    const state = motorState()
    const start = m.initial ?? m.air
    const end = warm((mount) => motorStateAt(m, mount, state).surplus, m, start, m.time, m.air + RISES.high)
    const hottest = Math.max(start, end.mount)
    motorStateAt(m, hottest, state)
    const finished = end.finished && Number.isFinite(state.loss)
    const or = (x: number) => (finished ? x : Number.POSITIVE_INFINITY)
    return {
      winding: or(state.winding),
      mount: or(hottest),
      can: or(state.can),
      store: or(Math.max(start, end.store)),
      loss: or(state.loss),
      lossAt20: state.lossAt20,
      backEmf: state.backEmf,
      resistanceToAir: m.windingToMount + 1 / state.conductance,
      states: end.states,
      state: finished ? 'finished' : 'runaway',
    }
  },
})

/** A motor without torque: its laws alone. Written out, since a heating run takes thousands and a spread of them is slow. */
const passive = (
  m: Omit<HeatedMotor, 'torque' | 'backEmfConstant' | 'magnetCoefficient' | 'terminalResistance' | 'windingToMount'>,
): HeatedMotor => ({
  otherLoss: m.otherLoss,
  air: m.air,
  radiant: m.radiant,
  mountConductance: m.mountConductance,
  mountRadiantShare: m.mountRadiantShare,
  canConductance: m.canConductance,
  canShare: m.canShare,
  canRadiantShare: m.canRadiantShare,
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
    /** How long the stretch lasts. It is followed in steps of a minute, and a plate has long settled after a month. */
    time: { kind: 'time', above: 0, max: '30 day' },
  },
  output: {
    /** Mounting face. */
    mount: 'temperature',
    /** Store in the plate. */
    store: 'temperature',
  },
  assumes: ['laws made for this air and these surroundings'],
  valid: { 'mounting face at most 450 K above the air, where the laws end': ({ air }, { mount }) => mount <= air + RISES.high },
  source: [{ level: 'computed', where: 'two lumps; L-stable Rosenbrock steps of a minute or less' }],
  si: (run) => {
    const state: MotorState = motorState()
    const m = passive(run)
    return warmEvenly((mount) => motorStateAt(m, mount, state).surplus, run, [run.initial, run.initialStore], run.time)
  },
})
