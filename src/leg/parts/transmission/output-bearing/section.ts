import type { Fields } from '../../../schema/index.js'

/** Bearings of a motor or gearbox whose output turns the joint itself. */
export const outputBearing = {
  /** Largest force across the axis that the bearings of the output carry, from its sheet. Needed where they carry the leg, because the joint has neither pin nor shaft, or the drum on the hip axis of a knee that is driven from there. */
  radialLoad: { kind: 'force', min: '0.1 N', max: '1 MN', usual: ['3 N', '50 kN'], optional: true },
  /** Largest tilting moment that they carry. Needed likewise. */
  tiltingMoment: { kind: 'torque', min: '0.1 mN m', max: '100000 N m', usual: ['0.02 N m', '2000 N m'], optional: true },
  /** Distance of what they carry from their middle: of the plane of the leg, or of the pulley or crank on the hip axis. Default: 20 mm. */
  overhang: {
    kind: 'length',
    min: 0,
    max: '300 mm',
    usual: ['1 mm', '150 mm'],
    default: '20 mm',
    because: 'a link on the face of a flat motor',
  },
} as const satisfies Fields
