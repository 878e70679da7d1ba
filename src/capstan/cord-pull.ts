import { formula } from '../formula/index.js'
import { SLACK_SPAN, TAUT_SPAN } from './cord-inputs.js'
import { PINION_WRAP, PULLEYS } from './inputs.js'
import { shaftForce } from './loads.js'

/**
 * Pull of both branches on the shaft of the drum, each in its own plane, with the couples that planes apart make.
 *
 * The two couples are square to each other, and the bearings take both; the one across the line of centres is often the larger. The side on which the taut
 * branch leaves the drum changes the forces of the bearings.
 */
export const cordPull = /* @__PURE__ */ formula('capstan.cordPull', {
  inputs: {
    ...TAUT_SPAN,
    ...SLACK_SPAN,
    ...PULLEYS,
    /** Side of the line from drum to pinion on which the taut branch leaves the drum. */
    tautSide: { oneOf: ['positive', 'negative'] },
    /** Place of the taut branch along the shaft (`branchPlanes`). */
    tautPlane: 'length',
    /** Place of the slack branch along the shaft. */
    slackPlane: 'length',
  },
  output: {
    /** Pull of the taut branch towards the pinion. */
    tautAlong: 'force',
    /** Pull of the taut branch across the line of centres, towards its positive side. */
    tautAcross: 'force',
    /** Pull of the slack branch towards the pinion. */
    slackAlong: 'force',
    /** Pull of the slack branch across the line of centres. */
    slackAcross: 'force',
    /** Couple of the forces along the line of centres about the plane midway. */
    coupleAlong: 'torque',
    /** Couple of the forces across it. */
    coupleAcross: 'torque',
  },
  assumes: ['branches in planes square to the shaft'],
  source: [{ level: 'computed', where: 'tensions along the tangents of both pulleys' }],
  requires: {
    centreDistance: {
      accepts: 'must exceed the sum of the centre-line radii, or the pulleys overlap',
      holds: ({ centreDistance, pinionRadius, drumRadius }) => centreDistance > pinionRadius + drumRadius,
    },
  },
  si: ({ tautTension, slackTension, arrangement, pinionRadius, drumRadius, centreDistance, tautSide, tautPlane, slackPlane }) => {
    const place = { arrangement, pinionRadius, drumRadius, centreDistance }
    // One branch alone: what it pulls along the line of centres and towards it.
    const pull = (tension: number) => shaftForce.si({ ...place, tautTension: tension, slackTension: 0 })
    const [taut, slack] = [pull(tautTension), pull(slackTension)]
    // An open belt to a larger pulley leaves away from the line; all others leave towards it.
    const towards = (tautSide === 'positive' ? -1 : 1) * (arrangement === 'open' && pinionRadius > drumRadius ? -1 : 1)
    const apart = (tautPlane - slackPlane) / 2
    const [tautAcross, slackAcross] = [towards * taut.across, -towards * slack.across]
    return {
      tautAlong: taut.alongCentres,
      tautAcross,
      slackAlong: slack.alongCentres,
      slackAcross,
      coupleAlong: (taut.alongCentres - slack.alongCentres) * apart,
      coupleAcross: (tautAcross - slackAcross) * apart,
    }
  },
})

/** Places along the shaft at which the two branches leave a grooved pinion; they wander as it turns. */
export const branchPlanes = /* @__PURE__ */ formula('capstan.branchPlanes', {
  title: 'places of the branches along the pinion',
  inputs: {
    /** Distance from groove to groove; negative for a left-hand groove. */
    groovePitch: 'length',
    ...PINION_WRAP,
    /** Angle of the pinion from mid travel. */
    pinionAngle: { kind: 'angle', default: '0 rad' },
    /** Place of the middle of the wraps at mid travel. */
    middle: { kind: 'length', default: '0 mm' },
  },
  output: {
    /** Place of the branch that enters the groove at its near end. */
    near: 'length',
    /** Place of the branch at the far end. */
    far: 'length',
    /** Distance of the two branches, in size. */
    apart: 'length',
  },
  equation: [
    'near = middle + groovePitch / (2 * pi) * (pinionAngle - pinionWrap / 2)',
    'far = middle + groovePitch / (2 * pi) * (pinionAngle + pinionWrap / 2)',
    'apart = abs(far - near)',
  ],
  assumes: ['cord follows the groove'],
  source: [{ level: 'computed', where: 'lead of a helix' }],
  si: ({ groovePitch, pinionWrap, pinionAngle, middle }) => {
    const perAngle = groovePitch / (2 * Math.PI)
    const near = middle + perAngle * (pinionAngle - pinionWrap / 2)
    const far = middle + perAngle * (pinionAngle + pinionWrap / 2)
    return { near, far, apart: Math.abs(far - near) }
  },
})
