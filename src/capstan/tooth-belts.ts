import { formula } from '../formula/index.js'
import { BELT_FITS, BELT_PULLEYS } from './belt-and-gear-inputs.js'
import { PRETENSION } from './inputs.js'

/** Length of a tooth belt around two pulleys, along its pitch line, with its spans and wraps. */
export const toothBeltLength = /* @__PURE__ */ formula('capstan.toothBeltLength', {
  inputs: BELT_PULLEYS,
  output: {
    /** Length of the belt. */
    length: 'length',
    /** The same in teeth: a closed belt has a whole number of them. */
    teeth: 'ratio',
    /** Free length of each span. */
    span: 'length',
    /** Angle that the belt wraps around the small pulley. */
    smallWrap: 'angle',
    /** Angle that it wraps around the large pulley. */
    largeWrap: 'angle',
  },
  equation: [
    'lean = asin(pitch * (largeTeeth - smallTeeth) / (2 * pi * centreDistance))',
    'span = centreDistance * cos(lean)',
    'smallWrap = pi - 2 * lean',
    'largeWrap = pi + 2 * lean',
    'length = 2 * span + pitch * smallTeeth * smallWrap / (2 * pi) + pitch * largeTeeth * largeWrap / (2 * pi)',
    'teeth = length / pitch',
  ],
  requires: BELT_FITS,
  source: [{ level: 'computed', where: 'tangents and arcs of two pitch circles' }],
  si: ({ smallTeeth, largeTeeth, pitch, centreDistance }) => {
    const lean = Math.asin((pitch * (largeTeeth - smallTeeth)) / (2 * Math.PI * centreDistance))
    const span = centreDistance * Math.cos(lean)
    const [smallWrap, largeWrap] = [Math.PI - 2 * lean, Math.PI + 2 * lean]
    const length = 2 * span + (pitch * (smallTeeth * smallWrap + largeTeeth * largeWrap)) / (2 * Math.PI)
    return { length, teeth: length / pitch, span, smallWrap, largeWrap }
  },
})

/**
 * Torque at which a tooth belt climbs out of the small pulley and jumps, at fixed axes.
 *
 * The flanks push the belt outward, and its tension presses it inward. The slack end of the wrap lifts first.
 */
export const beltJumpTorque = /* @__PURE__ */ formula('capstan.beltJumpTorque', {
  inputs: {
    ...PRETENSION,
    /** Pitch radius of the large pulley, whose torque it is. */
    largeRadius: { kind: 'length', above: 0 },
    /** Angle that the belt wraps around the small pulley. */
    smallWrap: { kind: 'angle', above: 0 },
    /** Angle of the flank of a tooth from the radius: 20° for trapezoidal teeth of 40°. */
    flankAngle: { kind: 'angle', min: 0, below: '90 deg' },
    /** Friction of belt on pulley. */
    friction: { kind: 'ratio', min: 0 },
  },
  /** Torque at the large pulley. */
  output: 'torque',
  equation: ['result = largeRadius * pretension / (1 / 2 + max(0, tan(flankAngle - atan(friction))) / smallWrap)'],
  assumes: [
    'both spans stretch alike: taut and slack differ from the pretension by half of the pull',
    'the teeth in mesh share the pull equally',
    'rigid teeth: soft ones deflect and climb earlier',
  ],
  source: [
    {
      level: 'computed',
      where:
        'radial balance of the last tooth on the slack side: its tension over its pitch angle against the outward part of the flank force',
    },
  ],
  si: ({ pretension, largeRadius, smallWrap, flankAngle, friction }) =>
    (largeRadius * pretension) / (0.5 + Math.max(0, Math.tan(flankAngle - Math.atan(friction))) / smallWrap),
})
