import { formula } from '../formula/index.js'
import { SLACK_SPAN, TAUT_SPAN } from './cord-inputs.js'
import { RUNNING } from './inputs.js'

/**
 * Energy that a running cord or belt loses over a stroke, term by term, at steady tensions. For a cord anchored on its drum `losses` of a
 * `cordDrive` takes the creep from its travel.
 */
export const strokeLosses = /* @__PURE__ */ formula('capstan.strokeLosses', {
  inputs: {
    ...TAUT_SPAN,
    ...SLACK_SPAN,
    /** Angle the pinion turns during the stroke. */
    pinionTravel: { kind: 'angle', min: 0 },
    ...RUNNING,
  },
  output: {
    /** Elastic creep over both pulleys by the law of an endless belt: about twice as much as a cord anchored on its drum. */
    beltCreep: 'energy',
    /** Bearings of the pinion. */
    bearings: 'energy',
    /** Bending of the cord on two pulleys, both spans. */
    bending: 'energy',
  },
  equation: [
    'beltCreep = (tautTension - slackTension)^2 / axialRigidity * pinionRadius * pinionTravel',
    'bearings = bearingFriction * shaftForce * bearingRadius * pinionTravel',
    'bending = bendingLoss * (tautTension + slackTension) * pinionRadius * pinionTravel',
  ],
  assumes: ['terms are small and add', 'rubbing of fibres grows with the pull in the cord, so that pretension costs too'],
  source: [
    {
      level: 'computed',
      where:
        'creep of an endless belt (Grashof): the difference of tensions squared over EA, per length that passes; bearing friction torque; wire-rope practice of a share of the pull per sheave for bending, 2 % with its bearing',
    },
  ],
  requires: {
    slackTension: { accepts: 'must be at most the taut tension', holds: ({ tautTension, slackTension }) => slackTension <= tautTension },
  },
  si: ({
    tautTension,
    slackTension,
    axialRigidity,
    pinionRadius,
    pinionTravel,
    shaftForce,
    bearingFriction,
    bearingRadius,
    bendingLoss,
  }) => ({
    beltCreep: ((tautTension - slackTension) ** 2 / axialRigidity) * pinionRadius * pinionTravel,
    bearings: bearingFriction * shaftForce * bearingRadius * pinionTravel,
    // Each pulley has cord winding on at one span and off at the other: the mean of both pulls, twice.
    bending: bendingLoss * (tautTension + slackTension) * pinionRadius * pinionTravel,
  }),
})

/** Losses of a running cord or belt, term by term, as shares of the transmitted power. */
export const driveLosses = /* @__PURE__ */ formula('capstan.driveLosses', {
  inputs: {
    /** Tension of the taut span. */
    tautTension: { kind: 'force', above: 0 },
    ...SLACK_SPAN,
    ...RUNNING,
  },
  output: {
    /** Elastic creep over both pulleys by the law of an endless belt: about twice as much as a cord anchored on its drum. */
    beltCreep: 'ratio',
    /** Bearings of the pinion. */
    bearings: 'ratio',
    /** Bending of the cord on two pulleys, both spans. */
    bending: 'ratio',
  },
  equation: [
    'work = (tautTension - slackTension) * pinionRadius',
    'beltCreep = (tautTension - slackTension) / axialRigidity',
    'bearings = bearingFriction * shaftForce * bearingRadius / work',
    'bending = bendingLoss * (tautTension + slackTension) * pinionRadius / work',
  ],
  assumes: [
    'terms are small and add',
    'steady torque: the slip in the arcs as torque rises and falls is lost per load cycle, not per stroke, and comes on top',
  ],
  source: [{ level: 'computed', where: 'energy lost per pinion angle over the energy transmitted' }],
  requires: {
    slackTension: {
      accepts: 'must be less than the taut tension: no power is carried otherwise',
      holds: ({ tautTension, slackTension }) => slackTension < tautTension,
    },
  },
  si: (x) => {
    const { beltCreep, bearings, bending } = strokeLosses.si({ ...x, pinionTravel: 1 })
    const work = (x.tautTension - x.slackTension) * x.pinionRadius
    return { beltCreep: beltCreep / work, bearings: bearings / work, bending: bending / work }
  },
})
