import type { Fields } from '../../../schema/index.js'

/** Bearings of a motor or gearbox whose output turns the joint itself. */
export const outputBearing = {
  /** Largest force across the axis that the bearings of the output carry, from its sheet. Needed where they carry the leg, because the joint has neither pin nor shaft, or the drum on the hip axis of a knee that is driven from there. */
  radialLoad: { kind: 'force', above: 0, optional: true },
  /** Largest tilting moment that they carry. Needed likewise. */
  tiltingMoment: { kind: 'torque', above: 0, optional: true },
  /** Distance of what they carry from their middle: of the plane of the leg, or of the pulley or crank on the hip axis. Default: 20 mm. */
  overhang: { kind: 'length', min: 0, max: '300 mm', default: '20 mm', because: 'a link on the face of a flat motor' },
} as const satisfies Fields
