import { formula } from '../formula/index.js'
import { PAIR_SPACING } from './bearing-inputs.js'

/**
 * Loads of two bearings on one axis by a force that acts beside them, away from their axis: of a hinge that carries a leg, an arm or a wheel.
 *
 * The torque about the axis itself is left out: what drives or brakes the axis holds it.
 */
export const bearingPairLoads = /* @__PURE__ */ formula('fasteners.bearingPairLoads', {
  title: 'loads of a pair of bearings by a force beside them',
  inputs: {
    /** Force across the axis in a first direction, called upright. */
    uprightForce: 'force',
    /** Force across the axis square to it, called sideways. */
    sidewaysForce: { kind: 'force', default: '0 N' },
    /** Force along the axis, positive from the farther to the nearer bearing. */
    axialForce: { kind: 'force', default: '0 N' },
    /** Distance along the axis from the nearer bearing to where the force acts, away from the farther one. Between the bearings it is negative. */
    overhang: 'length',
    /** How far from the axis the force acts in the upright direction; negative against it, as of a foot below its hip that the ground presses upward. */
    uprightArm: { kind: 'length', default: '0 mm' },
    /** How far from the axis the force acts in the sideways direction. */
    sidewaysArm: { kind: 'length', default: '0 mm' },
    ...PAIR_SPACING,
  },
  output: {
    /** Load across the axis of the nearer bearing. */
    nearer: 'force',
    /** Load across the axis of the farther bearing. */
    farther: 'force',
    /** Load along the axis, which one of the two bears. */
    axial: 'force',
  },
  equation: [
    'nearer = sqrt((uprightForce * (1 + overhang / pairSpacing) - axialForce * uprightArm / pairSpacing)^2 + (sidewaysForce * (1 + overhang / pairSpacing) - axialForce * sidewaysArm / pairSpacing)^2)',
    'farther = sqrt(((uprightForce * overhang - axialForce * uprightArm) / pairSpacing)^2 + ((sidewaysForce * overhang - axialForce * sidewaysArm) / pairSpacing)^2)',
    'axial = abs(axialForce)',
  ],
  assumes: ['rigid shaft and housing', 'each bearing free to tilt', 'forces across the axis meet it in the middle of each bearing'],
  source: [{ level: 'computed', where: 'balance of forces and moments on the shaft' }],
  si: ({ uprightForce, sidewaysForce, axialForce, overhang, uprightArm, sidewaysArm, pairSpacing }) => {
    const upright = (uprightForce * overhang - axialForce * uprightArm) / pairSpacing
    const sideways = (sidewaysForce * overhang - axialForce * sidewaysArm) / pairSpacing
    return {
      nearer: Math.hypot(uprightForce + upright, sidewaysForce + sideways),
      farther: Math.hypot(upright, sideways),
      axial: Math.abs(axialForce),
    }
  },
})
