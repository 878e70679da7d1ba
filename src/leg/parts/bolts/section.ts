import type { Fields } from '../../schema/index.js'

/** A group of equal bolts and what they clamp. */
export const boltGroup = {
  /** Thread of the bolts. */
  thread: { designation: 'thread' },
  /** Property class of the bolts. */
  propertyClass: { designation: 'propertyClass' },
  /** Number of bolts in the group. */
  count: { integer: true, min: 1, max: 32 },
  /** Tightening torque. */
  tighteningTorque: { kind: 'torque', min: '1 mN m', max: '1000 N m', usual: ['0.02 N m', '100 N m'] },
  /** Friction coefficient in the thread and under the head. Default: 0.14. */
  friction: {
    kind: 'ratio',
    above: 0,
    max: 1,
    usual: [0.06, 0.4],
    default: 0.14,
    because: 'dry or lightly oiled steel',
    level: 'commonPractice',
  },
  /** Whether washers lie under head and nut. Default: true. */
  washers: { flag: true, default: true, because: 'washers under heads and nuts', level: 'commonPractice' },
  /** Whether metal sleeves carry the clamp load through the printed layers. Default: false. */
  sleeves: { flag: true, default: false, because: 'none given' },
  /** How the nut is held: in a six-sided printed pocket, between two flats, free on a washer, or the bolt is screwed into metal. Default: onWasher. */
  nut: { oneOf: ['pocket', 'openSlot', 'onWasher', 'tappedMetal'], default: 'onWasher', because: 'a nut held by a spanner' },
  /** The clamped layers, from the head on. */
  stack: {
    list: {
      section: {
        /** Material of this layer. */
        material: { refersTo: 'materials' },
        /** Thickness of this layer. */
        thickness: { kind: 'length', min: '0.05 mm', max: '300 mm', usual: ['0.5 mm', '60 mm'] },
      },
    },
    most: 12,
  },
  /** Diameter of the clamped printed boss around each bolt. Default: three head diameters. */
  bossDiameter: { kind: 'length', above: 0, max: '300 mm', usual: ['3 mm', '80 mm'], optional: true },
  /** Whether the bolts are tightened again after a week. Default: false. */
  retightened: { flag: true, default: false, because: 'not promised' },
  /** Where the bolts sit. */
  pattern: {
    variants: 'kind',
    of: {
      rows: {
        /** Distance of each bolt from the edge that the bracket would tip about. */
        distances: { list: { kind: 'length', above: 0, max: '1 m', usual: ['2 mm', '250 mm'] } },
        /** Distance from the clamped face to the plane of the leg. */
        leverArm: { kind: 'length', above: 0, max: '1 m', usual: ['3 mm', '300 mm'] },
      },
      circle: {
        /** Diameter of the bolt circle. */
        diameter: { kind: 'length', above: 0, max: '1 m', usual: ['5 mm', '200 mm'] },
      },
    },
  },
} as const satisfies Fields
