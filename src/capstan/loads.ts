import { formula } from '../formula/index.js'
import { CORD_DIAMETER, CORD_TENSION, SLACK_SPAN, TAUT_SPAN } from './cord-inputs.js'
import { PULLEYS } from './inputs.js'

/** Force of the cord on the shafts of pinion and drum. */
export const shaftForce = /* @__PURE__ */ formula('capstan.shaftForce', {
  inputs: {
    ...TAUT_SPAN,
    ...SLACK_SPAN,
    ...PULLEYS,
  },
  output: {
    /** Size of the force on either shaft. */
    force: 'force',
    /** Part along the line of centres, drawing the shafts together. */
    alongCentres: 'force',
    /** Part across it. */
    across: 'force',
  },
  equation: [
    'reach = equalText(arrangement, "crossed") ? drumRadius + pinionRadius : drumRadius - pinionRadius',
    'alongCentres = (tautTension + slackTension) * sqrt(1 - (reach / centreDistance)^2)',
    'across = abs(tautTension - slackTension) * abs(reach) / centreDistance',
    'force = sqrt(alongCentres^2 + across^2)',
  ],
  assumes: ['both spans in one plane'],
  source: [{ level: 'computed', where: 'vector sum of the two span tensions at their tangent directions' }],
  requires: {
    centreDistance: {
      accepts: 'must exceed the sum of the centre-line radii, or the pulleys overlap',
      holds: ({ centreDistance, pinionRadius, drumRadius }) => centreDistance > pinionRadius + drumRadius,
    },
  },
  si: ({ arrangement, tautTension, slackTension, pinionRadius, drumRadius, centreDistance }) => {
    const reach = arrangement === 'crossed' ? drumRadius + pinionRadius : drumRadius - pinionRadius
    const sine = reach / centreDistance
    const alongCentres = (tautTension + slackTension) * Math.sqrt(1 - sine * sine)
    const across = Math.abs(tautTension - slackTension) * Math.abs(sine)
    return { force: Math.hypot(alongCentres, across), alongCentres, across }
  },
})

/** Pressure of wound cord on a drum, as if spread over the pitch, and the hoop stress it makes at the bore. */
export const drumHoop = /* @__PURE__ */ formula('capstan.drumHoop', {
  title: 'hoop stress of a drum under wound cord',
  inputs: {
    /** Cord tension stored on the drum. */
    tension: { kind: 'force', min: 0 },
    /** Centre-line radius of the wound cord. */
    centreLineRadius: { kind: 'length', above: 0 },
    /** Distance between neighbouring wraps. */
    pitch: { kind: 'length', above: 0 },
    /** Outer radius of the drum wall (groove bottom). */
    wallOuterRadius: { kind: 'length', above: 0 },
    /** Radius of the bore. */
    boreRadius: { kind: 'length', min: 0 },
  },
  output: {
    /** Mean pressure on the drum. */
    pressure: 'stress',
    /** Hoop stress at the bore, in the middle of a drum without one; negative is compression. */
    boreHoopStress: 'stress',
  },
  equation: [
    'pressure = tension / (centreLineRadius * pitch)',
    'boreHoopStress = boreRadius > 0 m ? -2 * pressure * wallOuterRadius^2 / (wallOuterRadius^2 - boreRadius^2) : -pressure',
  ],
  assumes: ['wraps lie side by side over a length of at least the wall thickness', 'plane stress, empty bore, elastic'],
  source: [{ level: 'computed', where: "Lamé's thick cylinder under outer pressure, p = T/(R pitch)" }],
  requires: {
    boreRadius: {
      accepts: 'must be smaller than the outer radius of the wall',
      holds: ({ boreRadius, wallOuterRadius }) => boreRadius < wallOuterRadius,
    },
  },
  si: ({ tension, centreLineRadius, pitch, wallOuterRadius, boreRadius }) => {
    const pressure = tension / (centreLineRadius * pitch)
    const outer = wallOuterRadius * wallOuterRadius
    // A bore, however small, doubles the hoop stress of a solid drum.
    return { pressure, boreHoopStress: boreRadius > 0 ? (-2 * pressure * outer) / (outer - boreRadius * boreRadius) : -pressure }
  },
})

/** Pressure of one cord on its groove, over its projected width. */
export const groovePressure = /* @__PURE__ */ formula('capstan.groovePressure', {
  inputs: {
    ...CORD_TENSION,
    /** Centre-line radius. */
    centreLineRadius: { kind: 'length', above: 0 },
    ...CORD_DIAMETER,
  },
  output: 'stress',
  equation: ['result = tension / (centreLineRadius * cordDiameter)'],
  assumes: ['cord supported over its full diameter'],
  source: [{ level: 'commonPractice', where: 'rope pressure 2T/(D d)' }],
  si: ({ tension, centreLineRadius, cordDiameter }) => tension / (centreLineRadius * cordDiameter),
})

/** Force on an idler that turns a cord through an angle. */
export const idlerForce = /* @__PURE__ */ formula('capstan.idlerForce', {
  inputs: {
    ...CORD_TENSION,
    /** Angle through which the cord is turned. */
    turnedAngle: { kind: 'angle', min: 0, max: '360 deg' },
  },
  output: 'force',
  equation: ['result = 2 * tension * sin(turnedAngle / 2)'],
  assumes: ['equal tension on both sides'],
  source: [{ level: 'published', where: 'FAA Order AA-SM-017, control-cable pulley example: 2 T sin(theta/2)' }],
  si: ({ tension, turnedAngle }) => 2 * tension * Math.sin(turnedAngle / 2),
})
