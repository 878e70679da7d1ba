import { formula } from '../formula/index.js'
import { CENTRE_LINE_RADIUS } from './inputs.js'

const FLAT_FRICTION = {
  /** Coefficient of friction, cord on flat material. */
  friction: { kind: 'ratio', min: 0 },
} as const

/** Friction that a cord wedged in a V-groove shows along the groove; use it in place of the flat coefficient. */
export const vGrooveFriction = /* @__PURE__ */ formula('capstan.vGrooveFriction', {
  inputs: {
    ...FLAT_FRICTION,
    /** Included angle of the groove, flank to flank. */
    grooveAngle: { kind: 'angle', above: 0, max: '180 deg' },
  },
  output: {
    /** While sliding steadily along the groove: flank friction acts along the cord only. */
    effectiveFriction: 'ratio',
    /** While the cord is still being pulled into the groove: flank friction also resists seating. The lower, safer figure for holding. */
    seatingFriction: 'ratio',
  },
  equation: [
    'effectiveFriction = friction / sin(grooveAngle / 2)',
    'seatingFriction = friction / (sin(grooveAngle / 2) + friction * cos(grooveAngle / 2))',
  ],
  assumes: ['both flanks carry alike', 'cord does not touch the bottom of the groove'],
  valid: { 'groove angle of 20 to 180 degrees (a sharper groove jams)': ({ grooveAngle }) => grooveAngle >= 0.349 },
  source: [
    { level: 'unverified', where: "Shigley's Mechanical Engineering Design, ch. 17 (V belts); belt-drive texts for the seating form" },
  ],
  si: ({ friction, grooveAngle }) => {
    const sin = Math.sin(grooveAngle / 2)
    return { effectiveFriction: friction / sin, seatingFriction: friction / (sin + friction * Math.cos(grooveAngle / 2)) }
  },
})

/** Friction of a cord bedded in a round seat, plain or undercut; use it in place of the flat coefficient. */
export const roundGrooveFriction = /* @__PURE__ */ formula('capstan.roundGrooveFriction', {
  inputs: {
    ...FLAT_FRICTION,
    /** Angle of the undercut below the cord, seen from the middle of the cord; zero for a plain seat. */
    undercutAngle: { kind: 'angle', min: 0, max: '120 deg', default: '0 deg' },
    /** Angle by which the seat's flanks stop short of the cord's sides; zero where the seat clasps half the cord. */
    seatAngle: { kind: 'angle', min: 0, max: '120 deg', default: '0 deg' },
  },
  requires: {
    undercutAngle: {
      accepts: 'must leave a seat: with the seat angle less than 180 deg',
      holds: ({ undercutAngle, seatAngle }) => undercutAngle + seatAngle < 3.1,
    },
  },
  /** Coefficient of friction along the groove. */
  output: 'ratio',
  equation: [
    'result = 4 * friction * (cos(seatAngle / 2) - sin(undercutAngle / 2)) / (pi - undercutAngle - seatAngle - sin(undercutAngle) + sin(seatAngle))',
  ],
  assumes: ['pressure falls as the cosine from the bottom of the seat', 'seat fits the cord: credit above the flat value needs a test'],
  source: [{ level: 'unverified', where: 'EN 81-50, cl. 5.11 (EN 81-1, annex M), semi-circular and undercut grooves' }],
  si: ({ friction, undercutAngle, seatAngle }) =>
    (friction * 4 * (Math.cos(seatAngle / 2) - Math.sin(undercutAngle / 2))) /
    (Math.PI - undercutAngle - seatAngle - Math.sin(undercutAngle) + Math.sin(seatAngle)),
})

/** Effect of the lead of a helical groove on the wrap: length per turn, radius of curvature and the share of friction left. */
export const helixWrap = /* @__PURE__ */ formula('capstan.helixWrap', {
  inputs: {
    ...CENTRE_LINE_RADIUS,
    /** Axial distance from one turn to the next. */
    groovePitch: { kind: 'length', min: 0 },
  },
  output: {
    /** Angle between the cord and the plane of the drum. */
    leadAngle: 'angle',
    /** Factor on the friction exponent: use friction times this with the wrap angle about the axis. */
    frictionFactor: 'ratio',
    /** Radius of curvature of the cord. */
    curvatureRadius: 'length',
    /** Cord length of one turn. */
    lengthPerTurn: 'length',
  },
  equation: [
    'rise = groovePitch / (2 * pi)',
    'leadAngle = atan(rise / centreLineRadius)',
    'lengthPerTurn = 2 * pi * sqrt(centreLineRadius^2 + rise^2)',
    'curvatureRadius = (centreLineRadius^2 + rise^2) / centreLineRadius',
    'frictionFactor = centreLineRadius / sqrt(centreLineRadius^2 + rise^2)',
  ],
  assumes: ['the cord follows a geodesic of a smooth cylinder: no side force'],
  source: [{ level: 'computed', where: 'curvature and arc length of a circular helix (any differential-geometry text)' }],
  si: ({ centreLineRadius: R, groovePitch }) => {
    const c = groovePitch / (2 * Math.PI)
    const slant = Math.sqrt(R * R + c * c)
    return {
      leadAngle: Math.atan2(c, R),
      frictionFactor: R / slant,
      curvatureRadius: (R * R + c * c) / R,
      lengthPerTurn: 2 * Math.PI * slant,
    }
  },
})

/**
 * Friction coefficient to use with centre-line radii for a cord that is not thin: friction acts at the groove, tension at the centre line.
 * A coefficient measured on a drum of the same diameter ratio already contains this.
 */
export const thickCordFriction = /* @__PURE__ */ formula('capstan.thickCordFriction', {
  inputs: {
    /** Coefficient of friction at the groove surface. */
    friction: { kind: 'ratio', min: 0 },
    /** Radius of the bottom of the groove. */
    grooveRadius: { kind: 'length', above: 0 },
    /** Diameter of the cord. */
    cordDiameter: { kind: 'length', min: 0 },
  },
  /** Coefficient to use in the exponent. */
  output: 'ratio',
  equation: ['result = friction / (1 + cordDiameter / (2 * grooveRadius))'],
  assumes: ['moment balance about the axle, first order in cord over drum diameter'],
  valid: { 'drum at least four cord diameters': ({ grooveRadius, cordDiameter }) => 2 * grooveRadius >= 4 * cordDiameter },
  source: [{ level: 'computed', where: 'moment balance of a wrapped element about the axle' }],
  si: ({ friction, grooveRadius, cordDiameter }) => friction / (1 + cordDiameter / (2 * grooveRadius)),
})
