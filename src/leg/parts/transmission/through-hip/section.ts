import type { Fields } from '../../../schema/index.js'

/** Transmissions from a drum on the hip axis to the knee, for a motor that does not sit on the upper link. */
export const throughHip = {
  rod: {
    /** Length of the crank on the hip axis. */
    crank: { kind: 'length', above: 0, max: '500 mm' },
    /** Length of the rocker on the lower link. */
    rocker: { kind: 'length', above: 0, max: '500 mm' },
    /** Length of the rod between its pins. */
    rod: { kind: 'length', above: 0, max: '2 m' },
    /** Angle of the rocker from the line hip to knee at a straight knee. Default: 90 deg. */
    rockerAngle: { kind: 'angle', min: '-180 deg', max: '180 deg', default: '90 deg', because: 'crank square to the link in mid travel' },
    /** Distance of the plane of the rod from the plane of the links. Default: 0 mm. */
    planeOffset: { kind: 'length', min: '-200 mm', max: '200 mm', default: '0 mm', because: 'rod in the plane of the links' },
    /** Outer diameter of the rod. */
    diameter: { kind: 'length', above: 0, max: '100 mm' },
    /** Material of the rod. */
    material: { refersTo: 'materials' },
    /** Mass of the rod with its ends. Default: 0.02 kg. */
    mass: { kind: 'mass', min: 0, max: '10 kg', default: '0.02 kg', because: 'a thin rod with printed ends' },
    /** Pin at each end, from the section pins. */
    pin: { refersTo: 'pins', optional: true },
    /** Ball bearing in the crank's end, of the table. */
    crankBearing: { designation: 'bearing', optional: true },
    /** How that bearing is held axially. Default: cap. */
    retainedBy: { oneOf: ['cap', 'press', 'bond'], default: 'cap', because: 'shoulder and screwed cap' },
  },
  belt: {
    /** Name of the belt, from the section belts. */
    belt: { refersTo: 'belts' },
    /** Teeth of the pulley on the hip axis. */
    hipTeeth: { integer: true, min: 6, max: 400 },
    /** Teeth of the pulley on the lower link. */
    kneeTeeth: { integer: true, min: 6, max: 400 },
    /** Tension of both spans at rest. */
    pretension: { kind: 'force', above: 0 },
  },
  cord: {
    /** Name of the cord, from the section cords. */
    cord: { refersTo: 'cords' },
    /** Whether the spans cross, which turns the knee against the drum. Default: open. */
    arrangement: { oneOf: ['open', 'crossed'], default: 'open', because: 'the knee turns with its drum' },
    /** Radius of the pulley on the hip axis, to the centre line of the cord. */
    hipRadius: { kind: 'length', above: 0, max: '500 mm' },
    /** Radius of the pulley on the lower link, to the centre line of the cord. */
    kneeRadius: { kind: 'length', above: 0, max: '500 mm' },
    /** Tension of both spans at rest. */
    pretension: { kind: 'force', above: 0 },
  },
} as const satisfies { readonly [kind: string]: Fields }
