import { formula } from '../formula/index.js'
import { TAUT_CORD_DIAMETER } from './cord-inputs.js'
import { DRUM_RADIUS, PINION_RADIUS, PULLEYS } from './inputs.js'

/** Radius to the cord's centre line from the groove's bottom diameter. */
export const centreLineRadius = /* @__PURE__ */ formula('capstan.centreLineRadius', {
  inputs: {
    /** Diameter of the pulley at the bottom of its groove. */
    grooveDiameter: { kind: 'length', above: 0 },
    ...TAUT_CORD_DIAMETER,
  },
  output: 'length',
  equation: ['result = (grooveDiameter + cordDiameter) / 2'],
  assumes: ['cord round and seated on the bottom of the groove'],
  source: [{ level: 'commonPractice', where: 'pitch radius of a rope pulley' }],
  si: ({ grooveDiameter, cordDiameter }) => (grooveDiameter + cordDiameter) / 2,
})

/** Reduction of a cord drive: drum over pinion, at the cord's centre line. */
export const reductionRatio = /* @__PURE__ */ formula('capstan.reductionRatio', {
  inputs: {
    ...DRUM_RADIUS,
    ...PINION_RADIUS,
  },
  output: 'ratio',
  equation: ['result = drumRadius / pinionRadius'],
  source: [{ level: 'commonPractice', where: 'equal cord speed on both pulleys' }],
  si: ({ drumRadius, pinionRadius }) => drumRadius / pinionRadius,
})

/** Arc of contact and free span of a drive, crossed or open. */
export const pulleyGeometry = /* @__PURE__ */ formula('capstan.pulleyGeometry', {
  inputs: {
    ...PULLEYS,
    /** Full turns of cord on the pinion besides the part turn between the spans. */
    pinionTurns: { kind: 'count', min: 0, default: 0 },
  },
  output: {
    /** Whole arc of contact on the pinion. */
    pinionWrap: 'angle',
    /** Arc between the spans' tangent points on the drum; the rest of the turn is free for anchors. */
    drumWrapAngle: 'angle',
    /** Free length of each span, tangent point to tangent point. */
    span: 'length',
    /** Change of the length of a closed loop per change of centre distance. */
    loopPerCentreDistance: 'ratio',
  },
  equation: [
    'reach = equalText(arrangement, "crossed") ? drumRadius + pinionRadius : drumRadius - pinionRadius',
    'tilt = asin(reach / centreDistance)',
    'pinionWrap = 2 * pi * pinionTurns + pi + (equalText(arrangement, "crossed") ? 2 : -2) * tilt',
    'drumWrapAngle = pi + 2 * tilt',
    'span = sqrt(centreDistance^2 - reach^2)',
    'loopPerCentreDistance = 2 * span / centreDistance',
  ],
  assumes: ['cord in one plane: no fleet angle'],
  source: [{ level: 'commonPractice', where: 'tangent geometry of crossed and open belts' }],
  requires: {
    centreDistance: {
      accepts: 'must exceed the sum of the centre-line radii, or the pulleys overlap',
      holds: ({ centreDistance, pinionRadius, drumRadius }) => centreDistance > pinionRadius + drumRadius,
    },
  },
  si: ({ arrangement, pinionRadius, drumRadius, centreDistance, pinionTurns }) => {
    const reach = arrangement === 'crossed' ? drumRadius + pinionRadius : drumRadius - pinionRadius
    const tilt = Math.asin(reach / centreDistance)
    const span = Math.sqrt(centreDistance * centreDistance - reach * reach)
    return {
      pinionWrap: 2 * Math.PI * pinionTurns + Math.PI + (arrangement === 'crossed' ? 2 : -2) * tilt,
      drumWrapAngle: Math.PI + 2 * tilt,
      span,
      loopPerCentreDistance: (2 * span) / centreDistance,
    }
  },
})
