import { formula } from '../formula/index.js'
import { slipPoint } from './holding.js'
import { CORD_LOOP, DRUM_ARCS, LOOP_COMPLIANCE } from './inputs.js'
import { driveWindup } from './stiffness.js'

/** Share of the sliding torque at which the stiffness before slip is taken: at the torque itself it is that of a sliding pinion, zero. */
const JUST_BEFORE = 1 - 1e-9

/**
 * Slip of a pinion that holds its cord by friction alone, with static and kinetic friction apart. Under a load that rises slowly the slip arcs
 * spread at the kinetic coefficient, so that the sliding torque is the one to design on. A cord that has rested, or that sticks elastically,
 * holds up to the breakaway torque; then the torque drops and the pinion jumps.
 */
export const stickSlip = /* @__PURE__ */ formula('capstan.stickSlip', {
  inputs: {
    ...CORD_LOOP,
    ...DRUM_ARCS,
    /** Static coefficient of friction, cord on pinion. */
    staticFriction: { kind: 'ratio', above: 0 },
    /** Kinetic coefficient of friction, cord on pinion and drum. */
    kineticFriction: { kind: 'ratio', above: 0 },
    ...LOOP_COMPLIANCE,
  },
  requires: {
    kineticFriction: {
      accepts: 'must not exceed the static coefficient',
      holds: ({ staticFriction, kineticFriction }) => kineticFriction <= staticFriction,
    },
  },
  output: {
    /** Torque that the sliding pinion carries. */
    slidingTorque: 'torque',
    /** Torque at which a pinion that sticks breaks away: an upper bound. */
    breakawayTorque: 'torque',
    /** Torque lost at breakaway. */
    torqueDrop: 'torque',
    /** Angle of the joint by which an undamped load jumps on before the pinion sticks again. */
    jump: 'angle',
    /** Lowest torque during that jump. */
    leastTorque: 'torque',
  },
  assumes: [
    'the slip arcs on the drum slide at the kinetic coefficient',
    'jump: a load on the tangent stiffness of the sliding torque, no damping, motor locked',
    'Coulomb friction with one drop, no dependence on speed or time at rest',
    'linear elastic cord',
  ],
  source: [
    { level: 'computed', where: 'slip torque at either coefficient; a slider on a spring overshoots by as much as its force dropped' },
  ],
  si: ({ staticFriction, kineticFriction, ...x }) => {
    const d = { ...x, hold: 'frictionOnly', friction: kineticFriction, drumFriction: kineticFriction } as const
    const sliding = slipPoint(d)
    const sticking = slipPoint({ ...d, friction: staticFriction })
    const slidingTorque = d.drumRadius * (sliding.taut - sliding.slack)
    const breakawayTorque = d.drumRadius * (sticking.taut - sticking.slack)
    const torqueDrop = breakawayTorque - slidingTorque
    const { tangentStiffness } = driveWindup.si({ ...d, torque: JUST_BEFORE * slidingTorque })
    return {
      slidingTorque,
      breakawayTorque,
      torqueDrop,
      jump: (2 * torqueDrop) / tangentStiffness,
      leastTorque: slidingTorque - torqueDrop,
    }
  },
})
