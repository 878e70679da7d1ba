import type { Fields } from '../../schema/index.js'

const link = {
  /** Length between the joint axes, or to the foot point for the lower link. */
  length: { kind: 'length', min: '10 mm', max: '2 m', usual: ['30 mm', '600 mm'] },
  /** Mass of the bare link, with the drum of a cord drive that turns with it. What is mounted on it is added where it is mounted. Default: 0.1 kg. */
  mass: {
    kind: 'mass',
    above: 0,
    max: '50 kg',
    usual: ['3 g', '5 kg'],
    default: '0.1 kg',
    because: 'a printed link without what it carries',
  },
  /** Distance of its centre of mass from the upper joint axis. Default: the middle. */
  centreOfMass: { kind: 'length', min: '0 mm', max: '2 m', optional: true },
  /** A counterweight: it balances the link about its upper joint. It adds its own mass and inertia, and the joint's pin carries it. */
  counterweight: {
    section: {
      /** Mass of the counterweight with what holds it. The mass of the robot includes it. */
      mass: { kind: 'mass', above: 0, max: '20 kg', usual: ['5 g', '5 kg'] },
      /** Distance of its centre of mass from the upper joint axis, on the side away from the link. */
      beyond: { kind: 'length', above: 0, max: '1 m', usual: ['5 mm', '400 mm'] },
    },
    optional: true,
  },
  /** Material of the link. */
  material: { refersTo: 'materials' },
  /** Cross-section of the link. */
  section: {
    section: {
      /** Outer width across the joint axis direction, and depth in the plane of bending. */
      box: {
        tuple: {
          /** Outer width across the plane of bending, along the joint axis. */
          width: { kind: 'length', min: '1 mm', max: '500 mm', usual: ['4 mm', '150 mm'] },
          /** Outer depth in the plane of bending. */
          depth: { kind: 'length', min: '1 mm', max: '500 mm', usual: ['4 mm', '150 mm'] },
        },
        optional: true,
      },
      /** Outer diameter of a round tube. */
      tube: { kind: 'length', min: '1 mm', max: '500 mm', usual: ['4 mm', '150 mm'], optional: true },
      /** Thickness of the solid wall. */
      wall: { kind: 'length', min: '0.05 mm', max: '100 mm', usual: ['0.6 mm', '15 mm'] },
    },
    exactlyOne: [['box', 'tube']],
  },
  /** Whether its length lies in the layers (printed lying) or crosses them (printed standing). Default: alongLayers. */
  axis: { oneOf: ['alongLayers', 'acrossLayers'], default: 'alongLayers', because: 'links are printed lying', level: 'commonPractice' },
  /** How it is printed: a name of the section prints. Default: default. */
  print: { refersTo: 'prints', default: 'default', because: 'one way of printing for all parts' },
} as const satisfies Fields

/** The two links and the sideways offset. */
export const links = {
  /** Sideways distance from the sideways-hip axis to the plane of the leg. */
  hipOffset: { kind: 'length', min: 0, max: '1 m', usual: ['5 mm', '300 mm'] },
  /** The link from hip to knee. */
  upper: { section: link },
  /** The link from knee to foot. */
  lower: { section: link },
} as const satisfies Fields
