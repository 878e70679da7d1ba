import { formula } from '../formula/index.js'
import { PULLEYS } from './inputs.js'

/**
 * Compliance that frame and bearings add to the loop of a cord drive. Along the line of centres they let the pretension sink or rise under load;
 * across it they let the pinion shift sideways, which softens the joint like the cord itself.
 */
export const frameCompliance = /* @__PURE__ */ formula('capstan.frameCompliance', {
  inputs: {
    ...PULLEYS,
    /** Force on the two shafts along the line of centres per approach of the axes: frame, shafts and bearings in series. */
    stiffnessAlong: { kind: 'linearStiffness', above: 0 },
    /** Force across the line of centres per sideways shift of one axis against the other. */
    stiffnessAcross: { kind: 'linearStiffness', above: 0 },
  },
  output: {
    /** Cord that each branch gains per newton by which the sum of the two tensions rises. */
    sum: 'linearCompliance',
    /** Cord that the taut branch gains, and the slack one loses, per newton of the difference of the two tensions. */
    difference: 'linearCompliance',
    /** Torsional stiffness at the joint of the sideways shift alone: in series with that of the cord. */
    shiftStiffness: { kind: 'torsionalStiffness', infinite: true },
  },
  requires: {
    centreDistance: {
      accepts: 'must exceed the sum of the centre-line radii, or the pulleys overlap',
      holds: ({ centreDistance, pinionRadius, drumRadius }) => centreDistance > pinionRadius + drumRadius,
    },
  },
  assumes: ['small shifts', 'linear elastic frame, no play', 'the frame does not turn'],
  source: [{ level: 'computed', where: 'virtual work: each span pulls the axes together along its own direction' }],
  si: ({ arrangement, pinionRadius, drumRadius, centreDistance, stiffnessAlong, stiffnessAcross }) => {
    const sine = (arrangement === 'crossed' ? drumRadius + pinionRadius : drumRadius - pinionRadius) / centreDistance
    const difference = (sine * sine) / stiffnessAcross
    return { sum: (1 - sine * sine) / stiffnessAlong, difference, shiftStiffness: (drumRadius * drumRadius) / difference }
  },
})

/** Compliance that a sprung tensioner adds to its span. */
export const tensionerCompliance = /* @__PURE__ */ formula('capstan.tensionerCompliance', {
  inputs: {
    /** Stiffness of the tensioner along its own travel. */
    stiffness: { kind: 'linearStiffness', above: 0 },
    /** Cord taken up per travel of the tensioner, from `tensionerTakeUp`. */
    gain: { kind: 'ratio', above: 0 },
  },
  /** Cord that the span gains per newton of its tension. */
  output: 'linearCompliance',
  equation: ['result = gain^2 / stiffness'],
  assumes: ['small travel about the position set, at constant gain', 'linear spring, no friction in its guide'],
  source: [{ level: 'computed', where: 'virtual work: the cord presses on the tensioner with its tension times the gain' }],
  si: ({ stiffness, gain }) => (gain * gain) / stiffness,
})
