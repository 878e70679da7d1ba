import type { Field } from '../../schema/index.js'
import { ownBearing } from '../hip-shaft/section.js'

/** A cap with one screw in the end of what the bearing sits on. */
const cap = {
  section: {
    /** Thread of the cap's screw. */
    thread: { designation: 'thread' },
    /** Property class of that screw. */
    propertyClass: { designation: 'propertyClass' },
    /** Tightening torque of the screw. */
    tighteningTorque: { kind: 'torque', above: 0 },
    /** Diameter of the rim of the shoulder that the ring rests against. */
    shoulderDiameter: { kind: 'length', above: 0, max: '300 mm' },
    /** Diameter of the rim by which the cap holds the ring. */
    rimDiameter: { kind: 'length', above: 0, max: '300 mm' },
    /** Diameter of the edge about which the cap would tip. */
    edgeDiameter: { kind: 'length', above: 0, max: '300 mm' },
  },
  optional: true,
} as const satisfies Field

/** A deep-groove ball bearing, or two of them side by side, in a seat. Left out where a plain pin turns in its eye. */
export const seatedBearing = {
  section: {
    /** Bearing of the table, by bore, outer diameter and width. Give this or own. */
    size: { designation: 'bearing', optional: true },
    /** Values of the bearing's own sheet. Give this or size. */
    own: ownBearing,
    /** Distance between the middles of two such bearings. Left out: one bearing alone, of which only a few balls bear a tilting moment. */
    pairSpacing: { kind: 'length', above: 0, max: '500 mm', optional: true },
    /** Outer diameter of the part round its seat: twice the least distance from the axis to a free surface. */
    housingDiameter: { kind: 'length', above: 0, max: '500 mm' },
    /** Diametral interference of the outer ring in its seat at assembly, negative for clearance. */
    seatInterference: { kind: 'length', min: '-2 mm', max: '2 mm' },
    /** How the rings are held along the axis: by their press fit, by adhesive, or between a shoulder and a cap. Default: press. */
    retainedBy: { oneOf: ['press', 'bond', 'cap'], default: 'press', because: 'nothing else is given' },
    /** The cap. Needed where retainedBy is cap. */
    cap,
  },
  exactlyOne: [['size', 'own']],
  optional: true,
} as const satisfies Field
