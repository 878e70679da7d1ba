import { SPRING_WIRES } from '../../../materials/index.js'
import type { Fields } from '../../schema/index.js'

const wound = {
  /** Kind of wire. */
  wire: { oneOf: SPRING_WIRES, default: 'hardDrawn', because: 'the weakest of the usual spring wires of carbon steel' },
  /** Diameter of the wire. */
  wireDiameter: { kind: 'length', min: '0.05 mm', max: '10 mm', usual: ['0.2 mm', '8 mm'] },
  /** Mean diameter of the coil: between the middles of the wire. */
  coilDiameter: { kind: 'length', above: 0, max: '200 mm', usual: ['1.5 mm', '80 mm'] },
  /** How far the rate of a spring of this sort may be off, as a share. Default: 0.1. */
  rateScatter: {
    kind: 'ratio',
    min: 0,
    below: 1,
    usual: [0.005, 0.4],
    default: 0.1,
    because: 'springs from stock keep their rate within ten per cent',
    level: 'commonPractice',
  },
  /** Coils of the body, parts of a coil counted. */
  coils: { kind: 'count', above: 0, max: 500, usual: [1, 120] },
} as const satisfies Fields

/** A torsion spring about the axis of the joint, its legs against body and links. */
const torsion = {
  ...wound,
  /** Torque over angle, measured or by its sheet. Left out, it follows from the wire. */
  rate: { kind: 'torsionalStiffness', above: 0, optional: true },
  /** Distance from the axis to where the leg presses on what carries the joint. */
  fixedLeg: { kind: 'length', above: 0, max: '500 mm', usual: ['3 mm', '150 mm'] },
  /** Distance from the axis to where the leg presses on the link that turns. */
  movingLeg: { kind: 'length', above: 0, max: '500 mm', usual: ['3 mm', '150 mm'] },
  /** Joint angle at which the legs just touch. It presses on one side of it only. */
  freeAngle: { kind: 'angle', min: '-360 deg', max: '360 deg' },
  /** Whether a growing or a falling joint angle winds it. */
  winds: { oneOf: ['growing', 'falling'] },
  /** Diameter of the pin or sleeve in its coil. Left out, the room in the coil is not checked. */
  mandrel: { kind: 'length', above: 0, max: '200 mm', usual: ['1 mm', '70 mm'], optional: true },
  /** Part that the legs of the spring press on. */
  seat: {
    section: {
      /** Material that the legs press on. */
      material: { refersTo: 'materials' },
      /** Length of each leg that lies against it. */
      length: { kind: 'length', above: 0, max: '200 mm', usual: ['2 mm', '80 mm'] },
    },
  },
} as const satisfies Fields

/** An extension spring between a pin on what carries the joint and a pin on the link that turns. */
const extension = {
  ...wound,
  /** Force over deflection, measured or by its sheet. Left out, it follows from the wire. */
  rate: { kind: 'linearStiffness', above: 0, optional: true },
  /** Length between the insides of its hooks, unloaded. */
  freeLength: { kind: 'length', above: 0, max: '2 m', usual: ['8 mm', '500 mm'] },
  /** Pull that opens its coils. Default: 0 N. */
  initialTension: {
    kind: 'force',
    min: 0,
    max: '5 kN',
    usual: ['0.05 N', '500 N'],
    default: '0 N',
    because: 'coils wound without initial tension',
  },
  /** Mean radius of the hooks. Left out, half the coil diameter: a full loop. */
  hookRadius: { kind: 'length', above: 0, max: '100 mm', usual: ['0.5 mm', '40 mm'], optional: true },
  /** Mean radius with which the wire turns from the body into the hook. Left out, the wire diameter: a sharp bend. */
  bendRadius: { kind: 'length', above: 0, max: '100 mm', usual: ['0.2 mm', '30 mm'], optional: true },
  /** The pin on what carries the joint: the body for the hip, the upper link for the knee. */
  fixedEnd: {
    section: {
      /** Height above the axis, along the upper link (or upright) towards the body. Below it: negative. */
      up: { kind: 'length', min: '-1 m', max: '1 m' },
      /** Distance in front of the axis. Behind it: negative. */
      forward: { kind: 'length', min: '-1 m', max: '1 m' },
    },
  },
  /** The pin on the link that turns, with the joint straight. */
  movingEnd: {
    section: {
      /** Distance below the axis, along the link towards its far end. Above it: negative. */
      down: { kind: 'length', min: '-1 m', max: '1 m' },
      /** Distance in front of the axis. Behind it: negative. */
      forward: { kind: 'length', min: '-1 m', max: '1 m' },
    },
  },
  /** The pins that it is hooked to, steel pins set in print or metal. */
  anchor: {
    section: {
      /** Material that holds the pins. */
      material: { refersTo: 'materials' },
      /** Diameter of the pins. */
      pinDiameter: { kind: 'length', above: 0, max: '50 mm', usual: ['1 mm', '20 mm'] },
      /** Depth of each pin in what holds it. */
      depth: { kind: 'length', above: 0, max: '200 mm', usual: ['2 mm', '80 mm'] },
      /** Distance from there to the middle of the hook. */
      arm: { kind: 'length', above: 0, max: '100 mm', usual: ['1 mm', '60 mm'] },
    },
  },
} as const satisfies Fields

/** Springs in parallel with a drive, by kind. */
export const spring = { torsion, extension } as const
