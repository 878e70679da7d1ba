import type { Given } from '../formula/index.js'
import { SINGULAR } from './leg-kernel.js'
import { perJoint, xyz } from './vectors.js'

export const ANGLES = /* @__PURE__ */ perJoint('angle')
export const POINT = /* @__PURE__ */ xyz('length')

/** Joint angles as a caller gives them. */
export interface GivenAngles extends Given<typeof ANGLES> {}

/** A point of the leg's frame as a caller gives it. */
export interface GivenPoint extends Given<typeof POINT> {}
export const FOOT_PUSH = { angles: { fields: ANGLES }, footPush: { fields: /* @__PURE__ */ xyz('force') } }
export const GROUND_REACTION = { angles: { fields: ANGLES }, groundReaction: { fields: /* @__PURE__ */ xyz('force') } }
export const TOLERANCE = { kind: 'ratio', min: SINGULAR, max: 1, default: SINGULAR } as const
export const TORQUE = { angles: { fields: ANGLES }, torque: { fields: /* @__PURE__ */ perJoint('torque') }, tolerance: TOLERANCE }
export const RATES = { angles: { fields: ANGLES }, rates: { fields: /* @__PURE__ */ perJoint('angularVelocity') } }
export const FOOT_VELOCITY = { angles: { fields: ANGLES }, footVelocity: { fields: /* @__PURE__ */ xyz('velocity') }, tolerance: TOLERANCE }
