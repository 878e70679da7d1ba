import { formula } from '../formula/index.js'
import { BOLT_COMPLIANCE, CLAMP_LOAD_LEFT, GRIP } from './bolt-inputs.js'

/**
 * A bolt that is clamped or loaded off the centroid of its face: share of the load, bending of the bolt, and the load at which the face begins to gape.
 *
 * All places lie on one line through the centroid of the face, positive towards the side of the load. The face gapes at the edge nearest to the load, or at
 * the far edge where the bolt is the nearer of the two: beyond the core of the face, a sixth of the depth of a rectangle, the clamp load alone opens it.
 */
export const eccentricJoint = /* @__PURE__ */ formula('fasteners.eccentricJoint', {
  inputs: {
    ...CLAMP_LOAD_LEFT,
    /** Outside tension of this bolt's part of the joint. */
    externalLoad: { kind: 'force', min: 0 },
    /** Place of the external load, from the centroid of the face. */
    loadAt: { kind: 'length', min: 0 },
    /** Place of the bolt, from the centroid of the face; negative on the side away from the load. */
    boltAt: 'length',
    /** Distance from the centroid of the face to its edge on the side of the load. */
    edgeAt: { kind: 'length', above: 0 },
    /** Distance from the centroid of the face to its far edge. Default: as on the side of the load. */
    farEdgeAt: { kind: 'length', above: 0, optional: true },
    /** Area of the face that belongs to this bolt, without the hole. */
    faceArea: { kind: 'area', above: 0 },
    /** Second moment of area of that face about the axis through its centroid, across the line. */
    faceSecondMoment: { kind: 'secondMomentOfArea', above: 0 },
    ...GRIP,
    /** Modulus of the clamped parts. */
    memberModulus: { kind: 'modulus', above: 0 },
    /** Compliance of the clamped parts under a load through their centroid (`memberCompliance`). */
    memberCompliance: { kind: 'linearCompliance', above: 0 },
    ...BOLT_COMPLIANCE,
    /** Diameter of the bolt that bends: of its stress area. */
    boltDiameter: { kind: 'length', above: 0 },
    /** Modulus of the bolt. */
    boltModulus: { kind: 'modulus', above: 0 },
  },
  output: {
    /** Share of the external load that the bolt carries while the face is closed. */
    loadFactor: 'ratio',
    /** Tension of the bolt. */
    boltLoad: 'force',
    /** Angle by which the external load turns the two ends of the grip against each other. */
    endRotation: 'angle',
    /** Bending stress of the bolt by that turn. */
    bendingStress: 'stress',
    /** Bending stress of the bolt by the clamp load itself, where it is not clamped through the centroid. */
    clampBendingStress: 'stress',
    /** External load at which an edge begins to gape: 0 where the clamp load alone opens one, infinite when none ever does. */
    gapLoad: { kind: 'force', infinite: true },
    /** Whether the face is closed to both edges; beyond, all other results hold no longer. */
    state: { oneOf: ['closed', 'gaping'] },
  },
  equation: [
    'turning = grip / (memberModulus * faceSecondMoment)',
    'loadFactor = (memberCompliance + loadAt * boltAt * turning) / (boltCompliance + memberCompliance + boltAt^2 * turning)',
    'boltLoad = clampLoad + loadFactor * externalLoad',
    'endRotation = turning * externalLoad * (loadAt - loadFactor * boltAt)',
    'bendingStress = boltModulus * boltDiameter / (2 * grip) * abs(endRotation)',
    'clampBendingStress = boltModulus * boltDiameter / (2 * grip) * turning * clampLoad * abs(boltAt)',
  ],
  assumes: [
    'face and parts bend as a beam, plane faces stay plane',
    "load acts at the bearing faces of head and nut; the bolt's own bending stiffness is small beside that of the parts",
    'the face gapes at one edge: no moment across the line',
  ],
  source: [
    { level: 'unverified', where: 'VDI 2230-1, sections 5.1.3, 5.3 and 5.5.2 (eccentrically clamped and loaded joints)' },
    { level: 'computed', where: 'beam theory of the clamped parts; agrees with a two-spring frame' },
  ],
  requires: {
    boltAt: {
      accepts: 'must lie within the face: no further from its centroid than the edge',
      holds: ({ boltAt, edgeAt, farEdgeAt = edgeAt }) => boltAt <= edgeAt && -boltAt <= farEdgeAt,
    },
  },
  valid: {
    'the face is closed to its edges': (_, { state }) => state === 'closed',
  },
  si: (x) => {
    const { loadAt: a, boltAt: s, edgeAt, farEdgeAt = edgeAt, faceArea, faceSecondMoment, externalLoad, clampLoad } = x
    const turning = x.grip / (x.memberModulus * faceSecondMoment)
    const loadFactor = (x.memberCompliance + a * s * turning) / (x.boltCompliance + x.memberCompliance + s * s * turning)
    const added = loadFactor * externalLoad
    // Moment that the parts carry: of the external load about the centroid, less that of the added bolt load.
    const endRotation = turning * (externalLoad * a - added * s)
    // Pressure at an edge, per clamp load and per external load: uniform part and bending part.
    const gapAt = (u: number) => {
      const perClamp = 1 / faceArea + (s * u) / faceSecondMoment
      const perLoad = (1 - loadFactor) / faceArea + ((a - loadFactor * s) * u) / faceSecondMoment
      if (perClamp < 0) return -1
      return perLoad <= 0 ? Number.POSITIVE_INFINITY : (clampLoad * perClamp) / perLoad
    }
    const bending = (x.boltModulus * x.boltDiameter) / (2 * x.grip)
    const min = Math.min(gapAt(edgeAt), gapAt(-farEdgeAt))
    return {
      loadFactor,
      boltLoad: clampLoad + added,
      endRotation,
      bendingStress: bending * Math.abs(endRotation),
      clampBendingStress: bending * turning * clampLoad * Math.abs(s),
      gapLoad: Math.max(0, min),
      state: externalLoad <= min ? ('closed' as const) : ('gaping' as const),
    }
  },
})
