import type { Fields } from '../../../schema/index.js'
import { beltTension } from '../belt/section.js'
import { cordLoop, cordStageEfficiency, drum, woundPulley } from '../cord/section.js'
import { rodPivots } from '../rod-ends/section.js'

/** Transmissions from a drum on the hip axis to the knee, for a motor that does not sit on the upper link. */
export const throughHip = {
  rod: {
    /** Length of the crank on the hip axis. */
    crank: { kind: 'length', above: 0, max: '500 mm', usual: ['4 mm', '200 mm'] },
    /** Length of the rocker on the lower link. */
    rocker: { kind: 'length', above: 0, max: '500 mm', usual: ['4 mm', '200 mm'] },
    /** Length of the rod between its pins. */
    rod: { kind: 'length', above: 0, max: '2 m', usual: ['20 mm', '600 mm'] },
    /** Angle of the rocker from the line hip to knee at a straight knee. Default: 90 deg. */
    rockerAngle: { kind: 'angle', min: '-180 deg', max: '180 deg', default: '90 deg', because: 'crank square to the link in mid travel' },
    /** Largest error of the distance of two pins on crank, rod, rocker and upper link, of either sign. Default: 0.2 mm. */
    lengthError: {
      kind: 'length',
      min: 0,
      max: '5 mm',
      usual: ['0.01 mm', '1 mm'],
      default: '0.2 mm',
      because:
        'printed or cut parts of 30 mm to 200 mm: 0.1 mm where holes are drilled in one jig, 0.4 mm where a print shrinks, warms or swells',
      level: 'commonPractice',
    },
    /** Distance of the plane of the rod from the plane of the links, positive on the side away from the bearings of the hip. Default: 0 mm. */
    planeOffset: { kind: 'length', min: '-200 mm', max: '200 mm', default: '0 mm', because: 'rod in the plane of the links' },
    /** Outer diameter of the rod. */
    diameter: { kind: 'length', above: 0, max: '100 mm', usual: ['1.5 mm', '40 mm'] },
    /** Material of the rod. */
    material: { refersTo: 'materials' },
    /** Mass of the rod with its ends. Default: 0.02 kg. */
    mass: { kind: 'mass', min: 0, max: '10 kg', usual: ['1 g', '1 kg'], default: '0.02 kg', because: 'a thin rod with printed ends' },
    /** Pin at each end, from the section pins. */
    pin: { refersTo: 'pins', optional: true },
    /** Distance of the planes of its two pins along their axes. Default: 0 mm. */
    pinPlanesApart: { kind: 'length', min: '0 mm', max: '200 mm', default: '0 mm', because: 'crank and rocker in one plane' },
    /** Sideways step of the middle of the rod from the straight line between its pins. Default: 0 mm. */
    step: { kind: 'length', min: '0 mm', max: '200 mm', default: '0 mm', because: 'a straight rod' },
    /** What holds the rod at both ends, and its drum on the hip axis. Left out: none of it is checked. */
    pivots: rodPivots,
  },
  belt: {
    /** Name of the belt, from the section belts. */
    belt: { refersTo: 'belts' },
    /** Teeth of the pulley on the hip axis. */
    hipTeeth: { integer: true, min: 6, max: 400 },
    /** Teeth of the pulley on the lower link. */
    kneeTeeth: { integer: true, min: 6, max: 400 },
    /** How far hip and knee can be set apart or together, to lay the belt on and to tension it. */
    adjustment: { kind: 'length', above: 0, max: '100 mm', usual: ['0.3 mm', '25 mm'] },
    ...beltTension,
    /** Material of both pulleys. */
    material: { refersTo: 'materials' },
    /** Efficiency from the pulley on the hip axis to the knee. Default: 0.96. */
    efficiency: {
      kind: 'ratio',
      above: 0,
      max: 1,
      usual: [0.5, 1],
      default: 0.96,
      because: 'one stage of tooth belt',
      level: 'commonPractice',
    },
  },
  cord: {
    /** Whether the spans cross, which turns the knee against its drum on the hip axis. Default: open. */
    arrangement: { oneOf: ['open', 'crossed'], default: 'open', because: 'the knee turns with its drum' },
    /** The drum on the hip axis, which the cord is wound around. */
    hipDrum: {
      section: {
        ...woundPulley.section,
        /** Material of the drum on the hip axis. Left out, that of the drum on the lower link. */
        material: { refersTo: 'materials', optional: true },
      },
      exactlyOne: woundPulley.exactlyOne,
    },
    /** The drum on the lower link, which holds both ends of the cord. */
    kneeDrum: drum,
    ...cordLoop,
    /** Efficiency from the drum on the hip axis to the knee. Default: 0.95. */
    efficiency: cordStageEfficiency,
  },
} as const satisfies { readonly [kind: string]: Fields }
