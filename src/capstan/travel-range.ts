import { formula } from '../formula/index.js'
import { TRAVEL } from './inputs.js'

/** Angle the joint can turn when both anchors sit in one gap of a drum with one groove track. Separate tracks side by side lift this limit. */
export const singleTrackTravel = /* @__PURE__ */ formula('capstan.singleTrackTravel', {
  inputs: {
    /** Angle between the two tangent points on the drum, on the side where the cord lies. */
    drumWrapAngle: { kind: 'angle', above: 0 },
    /** Angle of the drum between the two anchors where no cord lies. */
    anchorGap: { kind: 'angle', min: 0 },
    /** Wrap kept before each anchor at the end of travel. */
    residualWrap: { kind: 'angle', min: 0 },
  },
  requires: {
    anchorGap: {
      accepts: 'with two residual wraps must leave some of the drum arc',
      holds: ({ drumWrapAngle, anchorGap, residualWrap }) => anchorGap + 2 * residualWrap <= drumWrapAngle,
    },
  },
  /** Travel of the joint from end to end. */
  output: 'angle',
  equation: ['result = drumWrapAngle - anchorGap - 2 * residualWrap'],
  assumes: ['both anchors on one track of less than a full turn'],
  source: [{ level: 'computed', where: 'each anchor may come up to its tangent point but for the residual wrap' }],
  si: ({ drumWrapAngle, anchorGap, residualWrap }) => drumWrapAngle - anchorGap - 2 * residualWrap,
})

/** Wrap left on the drum before an anchor at the end of travel, for two tracks side by side. */
export const residualWrap = /* @__PURE__ */ formula('capstan.residualWrap', {
  inputs: {
    /** Wrap from tangent point to anchor on either track at mid travel. */
    drumWrap: { kind: 'angle', min: 0 },
    ...TRAVEL,
  },
  requires: {
    travel: {
      accepts: 'must not exceed twice the drum wrap, or an anchor leaves the drum',
      holds: ({ drumWrap, travel }) => travel <= 2 * drumWrap,
    },
  },
  /** Wrap on the track that is paid out furthest. */
  output: 'angle',
  equation: ['result = drumWrap - travel / 2'],
  valid: { 'at least 10 degrees left before the anchor': (_, left) => left >= 0.1745 },
  source: [{ level: 'commonPractice', where: 'winding drums keep a residual wrap before the anchor' }],
  si: ({ drumWrap, travel }) => drumWrap - travel / 2,
})
