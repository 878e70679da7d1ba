import type { Field } from '../../../schema/index.js'
import { seatedBearing } from '../../ball-bearings/section.js'

const offset = { kind: 'length', min: '0 mm', max: '200 mm' } as const

/** The arm at one end of the rod, crank or rocker, and what holds the rod's pin on it. */
const arm = {
  section: {
    /** Distance of the middle plane of the rod from the middle of what holds its pin: of the bearing, the pair of bearings, or the pin's seat. */
    offset,
    /** Material of the arm. */
    material: { refersTo: 'materials' },
    /** Cheeks of the arm that hold the pin: two, or one that the pin sticks out of. Default: 2. */
    cheeks: { integer: true, min: 1, max: 2, default: 2, because: 'rod between two cheeks' },
    /** What the ball bearing sits in: the arm, whose bearing the rod cocks, or the rod's own eye, in line with the rod. Default: arm. */
    bearingIn: { oneOf: ['arm', 'rod'], default: 'arm', because: 'the harder case' },
    /** The ball bearing at this end. Left out: the eye of the rod turns on a plain pin. */
    bearing: seatedBearing,
  },
  optional: true,
} as const satisfies Field

/** What holds the rod that drives a knee: at the crank, at the rocker, and under the drum that carries the crank. */
export const rodPivots = {
  section: {
    /** The crank's end. */
    crank: arm,
    /** The rocker's end. */
    rocker: arm,
    /** Bearing of the knee's drum with its crank on the hip axis. */
    drum: {
      section: {
        /** Distance of the middle plane of the rod from the middle of the drum's bearing, or pair of bearings. */
        offset,
        /** Material of the drum round its bearing. */
        material: { refersTo: 'materials' },
        /** The ball bearing of the drum. */
        bearing: { section: seatedBearing.section, exactlyOne: seatedBearing.exactlyOne },
      },
      optional: true,
    },
  },
  optional: true,
} as const satisfies Field
