import { formula } from '../formula/index.js'
import { bearingCocking } from './bearing-cocking.js'
import { BALL_CIRCLE, BALLS, COCKING_MOMENT, RADIAL_LOAD } from './bearing-inputs.js'

/** Largest force on a ball over the radial load of each ball's even share: point contacts by Hertz, no clearance. */
const RADIAL = 4.37

/**
 * Force on the worst ball of a single deep-groove bearing under a radial load, an axial load and a cocking moment together, and the radial load alone
 * that would load a ball as much.
 *
 * A single deep-groove bearing takes a moment by a few balls at a flat angle: a rod a few millimetres from its plane loads a ball like several rods
 * in its plane. Compare the equivalent radial load with the static rating, divided by the safety for the duty.
 */
export const worstBallLoad = /* @__PURE__ */ formula('fasteners.worstBallLoad', {
  title: 'load of the most loaded ball',
  inputs: {
    ...RADIAL_LOAD,
    /** Axial load. */
    axialLoad: { kind: 'force', min: 0, default: '0 N' },
    ...COCKING_MOMENT,
    ...BALLS,
    ...BALL_CIRCLE,
    /** Contact angle that the clearance leaves, some 10 to 15 degrees. */
    contactAngle: { kind: 'angle', above: 0, below: '90 deg' },
  },
  output: {
    /** Force on the worst ball of the radial load. */
    radialPart: 'force',
    /** Force on every ball of the axial load. */
    axialPart: 'force',
    /** Force on the worst ball of the moment. */
    momentPart: 'force',
    /** Sum of the three, as if their worst balls were one. */
    ballForce: 'force',
    /** Radial load alone that would load a ball as much. */
    equivalentRadial: 'force',
  },
  equation: [
    'radialPart = 4.37 * radialLoad / (balls * cos(contactAngle))',
    'axialPart = axialLoad / (balls * sin(contactAngle))',
    'momentPart = moment / (balls * pitchDiameter) * 2 * sqrt(pi) * gamma(2.25) / gamma(1.75) / sin(contactAngle)',
    'ballForce = radialPart + axialPart + momentPart',
    'equivalentRadial = ballForce * balls * cos(contactAngle) / 4.37',
  ],
  assumes: ['the worst balls of the three loads are one ball: an upper bound', 'rigid rings', 'contact angle as given at every ball'],
  source: [
    {
      level: 'published',
      where: 'rolling-bearing makers’ technical reports: Qmax = 4.37 F/(Z cos α), point contact, no clearance; Q = F/(Z sin α)',
    },
    { level: 'computed', where: 'the moment as in fasteners.bearingCocking' },
  ],
  si: ({ radialLoad, axialLoad, moment, balls, pitchDiameter, contactAngle }) => {
    const radialPart = (RADIAL * radialLoad) / (balls * Math.cos(contactAngle))
    const axialPart = axialLoad / (balls * Math.sin(contactAngle))
    const momentPart = bearingCocking.si({ moment, balls, pitchDiameter, contactAngle, pairSpacing: pitchDiameter }).normal
    const ballForce = radialPart + axialPart + momentPart
    return { radialPart, axialPart, momentPart, ballForce, equivalentRadial: (ballForce * balls * Math.cos(contactAngle)) / RADIAL }
  },
})
