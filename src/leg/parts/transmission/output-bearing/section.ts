import type { Fields } from '../../../schema/index.js'

/** Bearings of a motor or gearbox whose output turns the joint itself. */
export const outputBearing = {
  /** Largest force across the axis that the bearings of the output carry, from its sheet. Needed where the joint has neither pin nor shaft, so that they carry the leg. */
  radialLoad: { kind: 'force', above: 0, optional: true },
  /** Largest tilting moment that they carry. Needed likewise. */
  tiltingMoment: { kind: 'torque', above: 0, optional: true },
  /** Distance of the plane of the leg from the middle of those bearings. Default: 20 mm. */
  overhang: { kind: 'length', min: 0, max: '300 mm', default: '20 mm', because: 'a link on the face of a flat motor' },
} as const satisfies Fields
