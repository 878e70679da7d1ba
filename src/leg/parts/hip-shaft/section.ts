import type { Field, Fields } from '../../schema/index.js'
import { stack } from './stack-section.js'

/** A shaft: a bolt drilled and tapped from its end for the screw of an end cap. */
export const shaft = {
  /** Thread of the shaft bolt. */
  thread: { designation: 'thread' },
  /** Property class of the shaft bolt. */
  propertyClass: { designation: 'propertyClass' },
  /** Thread tapped into its end. */
  innerThread: { designation: 'thread' },
  /** Property class of the screw in its end. */
  innerPropertyClass: { designation: 'propertyClass' },
  /** Engaged length of the inner thread. */
  innerEngagement: { kind: 'length', above: 0, max: '100 mm', usual: ['2 mm', '50 mm'] },
  /** Tightening torque of the screw in its end. */
  innerTighteningTorque: { kind: 'torque', min: '1 mN m', max: '1000 N m', usual: ['0.02 N m', '100 N m'] },
  /** Thickness of the end cap. */
  capThickness: { kind: 'length', above: 0, max: '100 mm', usual: ['0.8 mm', '15 mm'] },
  /** Diameter on which the end cap rests. */
  capSpan: { kind: 'length', above: 0, max: '300 mm', usual: ['4 mm', '100 mm'] },
  /** Material of the end cap. */
  capMaterial: { refersTo: 'materials' },
  /** The bearings that it turns in: a name of the section bearings. */
  bearings: { refersTo: 'bearings' },
  /** Parts that are clamped together on the shaft. Left out: their joints are not checked. */
  stack,
} as const satisfies Fields

/** Values of a ball bearing from its own sheet. */
export const ownBearing = {
  section: {
    /** Bore. */
    bore: { kind: 'length', above: 0, max: '300 mm', usual: ['1 mm', '80 mm'] },
    /** Outer diameter. */
    outerDiameter: { kind: 'length', above: 0, max: '500 mm', usual: ['3 mm', '120 mm'] },
    /** Width. */
    width: { kind: 'length', above: 0, max: '200 mm', usual: ['1 mm', '40 mm'] },
    /** Static load rating. */
    staticRating: { kind: 'force', min: '5 N', max: '1 MN', usual: ['50 N', '60 kN'] },
    /** Dynamic load rating. */
    dynamicRating: { kind: 'force', min: '5 N', max: '1 MN', usual: ['100 N', '80 kN'] },
  },
  optional: true,
} as const satisfies Field

/** A pair of equal ball bearings. */
export const bearingPair = {
  section: {
    /** Bearing of the table, by bore, outer diameter and width. Give this or own. */
    size: { designation: 'bearing', optional: true },
    /** Values of the bearing's own sheet. Give this or size. */
    own: ownBearing,
    /** Distance between the two bearings. */
    spacing: { kind: 'length', above: 0, max: '1 m', usual: ['3 mm', '250 mm'] },
    /** Distance from the nearer bearing to the plane of the leg; at the sideways hip to the axis of the hip. */
    overhang: { kind: 'length', min: 0, max: '1 m', usual: ['2 mm', '150 mm'] },
    /** Material of the seat of the outer ring. */
    seatMaterial: { refersTo: 'materials' },
    /** Diametral interference of the outer ring in its seat at assembly, negative for clearance. */
    seatInterference: { kind: 'length', min: '-5 mm', max: '5 mm' },
    /** Whether shoulder and cap hold the outer rings axially. Default: false. */
    retained: { flag: true, default: false, because: 'not promised' },
    /** How the seat is printed: a name of the section prints. Default: default. */
    print: { refersTo: 'prints', default: 'default', because: 'one way of printing for all parts' },
  },
  exactlyOne: [['size', 'own']],
} as const
