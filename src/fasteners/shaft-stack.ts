import { formula } from '../formula/index.js'
import { CLAMP_LOAD_LEFT, FACE_FRICTION } from './bolt-inputs.js'
import { frictionFaceTorque } from './friction-drive.js'
import { ringJoint } from './ring-joint.js'

/**
 * A coaxial shaft pulled together by a bolt through spacer, drum and link: its stiffness, the moment that opens its joints, and the torque that friction drives.
 *
 * Sections are rings, listed along the axis; each may be of another material. While closed the stack bends and twists as one.
 */
export const clampedShaft = /* @__PURE__ */ formula('fasteners.clampedShaft', {
  inputs: {
    /** Sections along the axis, from either end. */
    sections: {
      list: {
        fields: {
          /** Length along the axis. */
          length: { kind: 'length', above: 0 },
          /** Outer diameter. */
          outerDiameter: { kind: 'length', above: 0 },
          /** Inner diameter. */
          innerDiameter: { kind: 'length', min: 0 },
          /** Modulus. */
          modulus: { kind: 'modulus', above: 0 },
          /** Shear modulus. */
          shearModulus: { kind: 'modulus', above: 0 },
        },
      },
    },
    ...CLAMP_LOAD_LEFT,
    ...FACE_FRICTION,
    /** Bending moment at the worst joint. */
    moment: { kind: 'torque', min: 0 },
    /** Torque through the stack. */
    torque: { kind: 'torque', min: 0 },
  },
  output: {
    /** Twist stiffness of the stack. */
    torsionalStiffness: 'torsionalStiffness',
    /** Angle between the ends per constant bending moment, as stiffness. */
    bendingStiffness: 'torsionalStiffness',
    /** Moment at which the first joint between two sections begins to gape; infinite for a single section, which has no joint. */
    gapMoment: { kind: 'torque', infinite: true },
    /** Torque at which the first joint between two sections slips; infinite for a single section. */
    slipTorque: { kind: 'torque', infinite: true },
    /** Whether the joints stay closed. */
    joints: { oneOf: ['closed', 'gaping'] },
    /** Whether friction drives, or a key, pins or teeth are needed. */
    drive: { oneOf: ['frictionDrives', 'keyNeeded'] },
  },
  assumes: [
    'the clamping bolt adds no stiffness of its own',
    'uniform pressure over the ring in which two sections touch',
    'friction at the mean radius of that ring',
    'neither the moment nor the torque passes through the two end faces, under the head and the nut',
  ],
  source: [{ level: 'published', where: 'any strength-of-materials text: shafts in series, core of a ring section, flat friction face' }],
  requires: {
    sections: {
      accepts: 'each must be wider than its bore',
      holds: ({ sections }) => sections.every(({ outerDiameter, innerDiameter }) => outerDiameter > innerDiameter),
    },
  },
  si: ({ sections, clampLoad, friction, moment, torque }) => {
    let twist = 0
    let bend = 0
    let gapMoment = Number.POSITIVE_INFINITY
    let slipTorque = Number.POSITIVE_INFINITY
    for (let i = 0; i < sections.length; i++) {
      const { length, outerDiameter, innerDiameter, modulus, shearModulus } = sections[i]!
      const inertia = (Math.PI / 64) * (outerDiameter ** 4 - innerDiameter ** 4)
      twist += length / (2 * inertia * shearModulus)
      bend += length / (inertia * modulus)
      const next = sections[i + 1]
      if (next === undefined) break
      const outer = Math.min(outerDiameter, next.outerDiameter)
      const inner = Math.max(innerDiameter, next.innerDiameter)
      // Rings that miss each other touch nowhere: no moment and no torque.
      const touch = outer > inner
      const ring = { clampLoad, friction, outerDiameter: outer, innerDiameter: inner } as const
      gapMoment = Math.min(gapMoment, touch ? ringJoint.si({ ...ring, moment }).gapMoment : 0)
      const face = { ...ring, pressure: 'worn' } as const
      slipTorque = Math.min(slipTorque, touch ? frictionFaceTorque.si(face) : 0)
    }
    return {
      torsionalStiffness: 1 / twist,
      bendingStiffness: 1 / bend,
      gapMoment,
      slipTorque,
      joints: moment < gapMoment ? ('closed' as const) : ('gaping' as const),
      drive: torque <= slipTorque ? ('frictionDrives' as const) : ('keyNeeded' as const),
    }
  },
})
