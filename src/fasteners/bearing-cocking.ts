import { formula } from '../formula/index.js'
import { gamma } from '../numeric/index.js'
import { BALL_CIRCLE, BALLS, COCKING_MOMENT, PAIR_SPACING } from './bearing-inputs.js'

/**
 * Moment by which a rod that pulls beside the plane of its bearing cocks it, and the axial pull of a rod whose pins are not in one plane.
 *
 * A bearing in the rod's own eye, in line with the rod, is not cocked: then the seat of its pin takes the moment. Prefer two bearings, or the rod between
 * two plates.
 */
export const rodCocking = /* @__PURE__ */ formula('fasteners.rodCocking', {
  title: 'moment of a rod beside the plane of its bearing',
  inputs: {
    /** Force of the rod, either sign. */
    rodForce: 'force',
    /** Distance of the rod's plane from the middle of what holds its pin. */
    planeOffset: { kind: 'length', min: 0 },
    /** Distance of the planes of its two pins. */
    pinPlanesApart: { kind: 'length', min: 0, default: '0 mm' },
    /** Distance of its two pins. */
    pinDistance: { kind: 'length', above: 0 },
  },
  output: {
    /** Cocking moment on the bearing, the pair or the seat. */
    moment: 'torque',
    /** Axial pull on the bearings at both ends, all the time. */
    axialPull: 'force',
  },
  equation: ['moment = abs(rodForce) * planeOffset', 'axialPull = abs(rodForce) * pinPlanesApart / pinDistance'],
  assumes: ['rod much longer than the distance of the planes'],
  source: [{ level: 'computed', where: 'moment of the rod’s force; its part along the pins' }],
  si: ({ rodForce, planeOffset, pinPlanesApart, pinDistance }) => ({
    moment: Math.abs(rodForce) * planeOffset,
    axialPull: (Math.abs(rodForce) * pinPlanesApart) / pinDistance,
  }),
})

/** Mean over a turn of a power of the cosine, in size. */
const meanCosine = (power: number) => gamma((power + 1) / 2) / (Math.sqrt(Math.PI) * gamma(power / 2 + 1))

/** Force on the worst ball of a single deep-groove bearing that takes a cocking moment by itself, or on each of two bearings that share it. */
export const bearingCocking = /* @__PURE__ */ formula('fasteners.bearingCocking', {
  title: 'ball load of a bearing under a moment',
  inputs: {
    ...COCKING_MOMENT,
    ...BALLS,
    ...BALL_CIRCLE,
    /** Contact angle that the clearance leaves, some 10 to 15 degrees. */
    contactAngle: { kind: 'angle', above: 0, max: '90 deg' },
    ...PAIR_SPACING,
  },
  output: {
    /** Axial part of the force on the worst ball, with contacts as linear springs. */
    axialLinear: 'force',
    /** Axial part of the force on the worst ball, with point contacts by Hertz. */
    axial: 'force',
    /** Force on the worst ball square to its race. */
    normal: 'force',
    /** Radial force on each bearing of a pair. */
    pairForce: 'force',
  },
  equation: [
    'axialLinear = 4 * moment / (balls * pitchDiameter)',
    'axial = moment / (balls * pitchDiameter) * 2 * sqrt(pi) * gamma(2.25) / gamma(1.75)',
    'normal = axial / sin(contactAngle)',
    'pairForce = moment / pairSpacing',
  ],
  assumes: ['balls spread over all positions', 'rigid rings', 'no radial load beside it', 'contact angle as given at every ball'],
  source: [{ level: 'computed', where: 'balance of the moment by contact forces that grow with the approach to the power 3/2' }],
  si: ({ moment, balls, pitchDiameter, contactAngle, pairSpacing }) => {
    const unit = (2 * moment) / (balls * pitchDiameter)
    const axial = unit / meanCosine(2.5)
    return { axialLinear: unit / meanCosine(2), axial, normal: axial / Math.sin(contactAngle), pairForce: moment / pairSpacing }
  },
})

/** Forces by which a shoulder and a cap take a cocking moment of the bearing between them. */
export const capCocking = /* @__PURE__ */ formula('fasteners.capCocking', {
  title: 'bearing moment on shoulder and cap',
  inputs: {
    ...COCKING_MOMENT,
    /** Radius of the rim of the shoulder. */
    shoulderRadius: { kind: 'length', above: 0 },
    /** Radius of the rim of the cap. */
    capRadius: { kind: 'length', above: 0 },
    /** Radius of the opposite edge on which the cap pivots under its screws. */
    pivotRadius: { kind: 'length', above: 0 },
  },
  output: {
    /** Force on the cap with rigid rims, which touch at one point each. */
    rigidForce: 'force',
    /** Force on the cap with elastic rims, the larger one. */
    elasticForce: 'force',
    /** Force on the screw of the cap under the elastic force, with the cap pivoting on the opposite edge. */
    screwForce: 'force',
  },
  equation: [
    'rigidForce = moment / (shoulderRadius + capRadius)',
    'elasticForce = 4 / pi * rigidForce',
    'screwForce = elasticForce * (capRadius + pivotRadius) / pivotRadius',
  ],
  assumes: ['no clamp load on the ring', 'screw on the axis of the cap'],
  source: [{ level: 'computed', where: 'balance of the moment by two contacts, and by contacts that follow a cosine over half a rim' }],
  si: ({ moment, shoulderRadius, capRadius, pivotRadius }) => {
    const rigidForce = moment / (shoulderRadius + capRadius)
    const elasticForce = (4 / Math.PI) * rigidForce
    return { rigidForce, elasticForce, screwForce: (elasticForce * (capRadius + pivotRadius)) / pivotRadius }
  },
})
