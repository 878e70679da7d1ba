import { formula } from '../formula/index.js'
import { bracketRoot } from '../numeric/index.js'
import { BENT, CLAMP_LOAD_LEFT, FACE_FRICTION, PRESSED, TOUCHING_RING } from './bolt-inputs.js'
import { frictionFaceTorque } from './friction-drive.js'

/**
 * A clamped ring-shaped joint between two parts of a shaft under a bending moment: where it begins to gape, where it tips on its edge, where it slips.
 *
 * Use the clamp load that is left after embedding, creep and heat, not the one on the day of assembly.
 */
export const ringJoint = /* @__PURE__ */ formula('fasteners.ringJoint', {
  title: 'clamped ring joint under a moment',
  inputs: {
    ...CLAMP_LOAD_LEFT,
    ...TOUCHING_RING,
    ...FACE_FRICTION,
    /** Bending moment at the joint. */
    moment: { kind: 'torque', min: 0, default: '0 N m' },
  },
  output: {
    /** Moment at which the joint begins to gape. */
    gapMoment: 'torque',
    /** Moment at which rigid parts tip on the edge. */
    tippingMoment: 'torque',
    /** Torque at which the closed joint slips, whatever the bending moment. */
    slipTorque: 'torque',
    /** Whether the joint is closed at the moment given. */
    state: { oneOf: ['closed', 'gaping', 'tips'] },
  },
  equation: [
    'gapMoment = clampLoad * (outerDiameter^2 + innerDiameter^2) / (8 * outerDiameter)',
    'tippingMoment = clampLoad * outerDiameter / 2',
    'slipTorque = friction * clampLoad * (outerDiameter^3 - innerDiameter^3) / (3 * (outerDiameter^2 - innerDiameter^2))',
  ],
  assumes: [
    'pressure linear over the ring while closed',
    'the shaft centres the joint: one that is free to shift turns about a point beside its axis and slips earlier',
    'no force across the axis, which uses up the same friction',
  ],
  source: [{ level: 'unverified', where: 'any strength-of-materials text: core of a ring section' }],
  requires: {
    outerDiameter: { accepts: 'must be larger than the inner diameter', holds: (x) => x.outerDiameter > x.innerDiameter },
  },
  si: ({ clampLoad, outerDiameter, innerDiameter, friction, moment }) => {
    const gapMoment = (clampLoad * (outerDiameter * outerDiameter + innerDiameter * innerDiameter)) / (8 * outerDiameter)
    const tippingMoment = (clampLoad * outerDiameter) / 2
    return {
      gapMoment,
      tippingMoment,
      slipTorque: frictionFaceTorque.si({ clampLoad, friction, outerDiameter, innerDiameter, pressure: 'uniform' }),
      state: moment < gapMoment ? 'closed' : moment < tippingMoment ? 'gaping' : 'tips',
    }
  },
})

/** Half angle of contact over moment: the moment over clamp load and radius, from 1/2 at a full circle to 1 at none. */
const momentAt = (half: number) => {
  const [sine, cosine] = [Math.sin(half), Math.cos(half)]
  return (half - sine * cosine) / (2 * (sine - half * cosine))
}

/** Below this half angle, rad, the contact counts as lost: the tilt has grown without bound. */
const MIN_CONTACT_ANGLE = 1e-3

/** Tilt and gap of a thin sleeve under a clamp load and a bending moment, closed or gaping. */
export const sleeveJointTilt = /* @__PURE__ */ formula('fasteners.sleeveJointTilt', {
  inputs: {
    ...PRESSED,
    /** Mean radius of the sleeve. */
    radius: { kind: 'length', above: 0 },
    /** Wall thickness. */
    wall: { kind: 'length', above: 0 },
    /** Length along the axis. */
    length: { kind: 'length', above: 0 },
    /** Modulus at its temperature and for the duration of the load. */
    modulus: { kind: 'modulus', above: 0 },
    ...BENT,
  },
  output: {
    /** Moment at which the joint begins to gape. */
    gapMoment: 'torque',
    /** Half angle of the part in contact; half a turn while closed. */
    contactHalfAngle: 'angle',
    /** Tilt of the joint; infinite where it tips. */
    tilt: { kind: 'angle', infinite: true },
    /** Gap at the open edge; infinite where it tips. */
    gap: { kind: 'length', infinite: true },
    /** Whether the joint is closed. */
    state: { oneOf: ['closed', 'gaping', 'tips'] },
  },
  equation: ['gapMoment = clampLoad * radius / 2'],
  assumes: ['wall thin against the radius', 'constant clamp load: a bolt much softer than the sleeve', 'ends of the sleeve stay plane'],
  source: [{ level: 'computed', where: 'ring of springs that only push, in closed form' }],
  valid: { 'wall at most a half of the radius': ({ wall, radius }) => wall <= radius / 2 },
  si: ({ clampLoad, radius, wall, length, modulus, moment }) => {
    const stiffness = (modulus * wall * radius) / length
    const relative = moment / (clampLoad * radius)
    const gapMoment = (clampLoad * radius) / 2
    if (relative <= 0.5) {
      const tilt = moment / (Math.PI * stiffness * radius * radius)
      return { gapMoment, contactHalfAngle: Math.PI, tilt, gap: 0, state: 'closed' as const }
    }
    if (relative >= momentAt(MIN_CONTACT_ANGLE))
      return { gapMoment, contactHalfAngle: 0, tilt: Number.POSITIVE_INFINITY, gap: Number.POSITIVE_INFINITY, state: 'tips' as const }
    const half = bracketRoot((x) => momentAt(x) - relative, MIN_CONTACT_ANGLE, Math.PI)
    const tilt = clampLoad / (2 * stiffness * radius * (Math.sin(half) - half * Math.cos(half)))
    return { gapMoment, contactHalfAngle: half, tilt, gap: tilt * radius * (1 + Math.cos(half)), state: 'gaping' as const }
  },
})
