import { formula } from '../formula/index.js'
import { INTERFACE_DIAMETER } from './fit-inputs.js'
import { GRIPPING_FIT } from './pin-inputs.js'

/**
 * The axial force and the torque at which a press fit slips.
 *
 * Take the lowest friction for holding and the highest for the force of pressing in.
 */
export const pressFitGrip = /* @__PURE__ */ formula('fasteners.pressFitGrip', {
  title: 'force and torque at which a press fit slips',
  inputs: {
    ...GRIPPING_FIT,
  },
  output: {
    /** Axial force at slip, also the force at the end of pressing in. */
    axialForce: 'force',
    /** Torque at slip. */
    torque: 'torque',
  },
  equation: ['axialForce = friction * pressure * pi * diameter * length', 'torque = axialForce * diameter / 2'],
  assumes: ['pressure uniform along the length', 'Coulomb friction'],
  source: [{ level: 'published', where: 'Engineering Plastics Handbook, press fits; any machine-design text' }],
  si: ({ pressure, diameter, length, friction }) => {
    const axialForce = friction * pressure * Math.PI * diameter * length
    return { axialForce, torque: (axialForce * diameter) / 2 }
  },
})

/** Whether a press fit holds an axial force and a torque together, and whether something positive must hold it instead. */
export const pressFitHold = /* @__PURE__ */ formula('fasteners.pressFitHold', {
  title: 'force and torque that a press fit holds',
  inputs: {
    ...GRIPPING_FIT,
    /** Axial force to hold. */
    axialForce: { kind: 'force', min: 0 },
    /** Torque to hold. */
    torque: { kind: 'torque', min: 0 },
    /** Required reserve on the force at slip. */
    requiredReserve: { kind: 'ratio', min: 1, default: 2 },
  },
  output: {
    /** Required friction force: axial and tangential together. */
    demand: 'force',
    /** Friction force the fit has. */
    capacity: 'force',
    /** Capacity over demand; infinite without a demand. */
    reserve: { kind: 'ratio', infinite: true },
    /** Whether friction is sufficient, or a shoulder, clip, cap or bond must hold the pin. */
    retention: { oneOf: ['frictionHolds', 'positiveRetentionNeeded'] },
  },
  equation: [
    'demand = sqrt(axialForce^2 + (2 * torque / diameter)^2)',
    'capacity = friction * pressure * pi * diameter * length',
    'reserve = capacity / demand',
  ],
  assumes: ['slip follows the resultant of axial and tangential force'],
  source: [{ level: 'published', where: 'DIN 7190-1 (combined axial force and torque); any machine-design text' }],
  si: ({ pressure, diameter, length, friction, axialForce, torque, requiredReserve }) => {
    const demand = Math.hypot(axialForce, (2 * torque) / diameter)
    const capacity = pressFitGrip.si({ pressure, diameter, length, friction }).axialForce
    return {
      demand,
      capacity,
      reserve: demand === 0 ? Number.POSITIVE_INFINITY : capacity / demand,
      retention: capacity >= requiredReserve * demand && capacity > 0 ? ('frictionHolds' as const) : ('positiveRetentionNeeded' as const),
    }
  },
})

/** The axial force of pressing a pin in while it spins: friction points against the helix of motion, so most of it becomes torque. */
export const spinningInsertion = /* @__PURE__ */ formula('fasteners.spinningInsertion', {
  inputs: {
    /** Axial force of pressing straight in (`pressFitGrip` with the highest friction). */
    straightForce: { kind: 'force', min: 0 },
    ...INTERFACE_DIAMETER,
    /** Speed of going in. */
    feed: { kind: 'velocity', above: 0 },
    /** Speed of rotation. */
    spin: { kind: 'angularVelocity', min: 0 },
  },
  output: {
    /** Axial force while spinning. */
    axialForce: 'force',
    /** Torque of the spindle. */
    torque: 'torque',
  },
  equation: [
    'speed = sqrt(feed^2 + (spin * diameter / 2)^2)',
    'axialForce = straightForce * feed / speed',
    'torque = straightForce * (spin * diameter / 2) * diameter / (2 * speed)',
  ],
  assumes: ['Coulomb friction, the same at every speed', 'no softening by the heat of friction: a polymer bore may smear, so few turns'],
  source: [{ level: 'computed', where: 'friction acts against the resultant sliding velocity (any mechanics text)' }],
  si: ({ straightForce, diameter, feed, spin }) => {
    const around = (spin * diameter) / 2
    const speed = Math.hypot(feed, around)
    return { axialForce: (straightForce * feed) / speed, torque: (straightForce * around * diameter) / (2 * speed) }
  },
})
