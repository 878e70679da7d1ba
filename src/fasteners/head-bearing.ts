import { formula } from '../formula/index.js'
import { WIDER_THAN_HOLE } from './screw-limits.js'

/** Pressure under a head, nut or washer, and its reserve against the allowable pressure of the material below. */
export const headBearing = /* @__PURE__ */ formula('fasteners.headBearing', {
  title: 'pressure under a bolt head or nut',
  inputs: {
    /** Largest force of the bolt. */
    force: { kind: 'force', min: 0 },
    /** Outer diameter of the bearing ring. */
    bearingDiameter: { kind: 'length', above: 0 },
    /** Hole diameter, or the washer's if larger. */
    holeDiameter: { kind: 'length', min: 0 },
    /** Allowable pressure: compressive yield strength at temperature times its long-term share. */
    allowablePressure: { kind: 'stress', above: 0 },
  },
  output: {
    /** Area of the ring. */
    area: 'area',
    /** Pressure. */
    pressure: 'stress',
    /** Allowable over actual; infinite without a force. */
    reserve: { kind: 'ratio', infinite: true },
    /** Force at the allowable pressure. */
    allowableForce: 'force',
  },
  equation: [
    'area = pi / 4 * (bearingDiameter^2 - holeDiameter^2)',
    'pressure = force / area',
    'allowableForce = allowablePressure * area',
    'reserve = allowablePressure / pressure',
  ],
  assumes: ['uniform pressure: a thin washer on a soft part bends (`washerSpread`)'],
  source: [{ level: 'published', where: 'any machine-design text: bearing pressure' }],
  requires: {
    bearingDiameter: WIDER_THAN_HOLE,
  },
  si: ({ force, bearingDiameter, holeDiameter, allowablePressure }) => {
    const area = (Math.PI / 4) * (bearingDiameter * bearingDiameter - holeDiameter * holeDiameter)
    const pressure = force / area
    return {
      area,
      pressure,
      reserve: force === 0 ? Number.POSITIVE_INFINITY : allowablePressure / pressure,
      allowableForce: allowablePressure * area,
    }
  },
})

/** Diameter over which a washer spreads a head's force: 45 degrees through its thickness, no further than its edge. */
export const washerSpread = /* @__PURE__ */ formula('fasteners.washerSpread', {
  inputs: {
    /** Bearing diameter of the head on the washer. */
    headBearing: { kind: 'length', above: 0 },
    /** Thickness of the washer, or of washers stacked. */
    thickness: { kind: 'length', above: 0 },
    /** Outer diameter of the washer. */
    outerDiameter: { kind: 'length', above: 0 },
  },
  /** Diameter over which the pressure may be assumed uniform. */
  output: 'length',
  equation: ['result = min(outerDiameter, headBearing + 2 * thickness)'],
  assumes: ['spread at 45 degrees in steel on a soft part'],
  source: [{ level: 'commonPractice', where: 'load spread of 45 degrees through a stiff plate' }],
  si: ({ headBearing: head, thickness, outerDiameter }) => Math.min(outerDiameter, head + 2 * thickness),
})

/** Bearing area of a hexagon nut without washer: the chamfered ring that standards count, and the full hexagon after it has sunk into a soft part. */
export const nutBearingArea = /* @__PURE__ */ formula('fasteners.nutBearingArea', {
  title: 'bearing area of a nut',
  inputs: {
    /** Width across flats. */
    acrossFlats: { kind: 'length', above: 0 },
    /** Least bearing diameter. */
    bearingDiameter: { kind: 'length', above: 0 },
    /** Hole diameter. */
    holeDiameter: { kind: 'length', min: 0 },
  },
  output: {
    /** Ring up to the chamfer. */
    ringArea: 'area',
    /** Full hexagon less the hole. */
    hexagonArea: 'area',
  },
  equation: [
    'ringArea = pi / 4 * (bearingDiameter^2 - holeDiameter^2)',
    'hexagonArea = sqrt(3) / 2 * acrossFlats^2 - pi / 4 * holeDiameter^2',
  ],
  assumes: ['nut flat on its face'],
  source: [{ level: 'computed', where: 'areas of ring and hexagon' }],
  requires: {
    bearingDiameter: {
      accepts: 'must be larger than the hole and no larger than the width across flats',
      holds: ({ acrossFlats, bearingDiameter, holeDiameter }) => bearingDiameter > holeDiameter && bearingDiameter <= acrossFlats,
    },
  },
  si: ({ acrossFlats, bearingDiameter, holeDiameter }) => {
    const hole = (Math.PI / 4) * holeDiameter * holeDiameter
    return {
      ringArea: (Math.PI / 4) * bearingDiameter * bearingDiameter - hole,
      hexagonArea: (Math.sqrt(3) / 2) * acrossFlats * acrossFlats - hole,
    }
  },
})
