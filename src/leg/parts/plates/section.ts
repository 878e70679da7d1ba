import type { Fields } from '../../schema/index.js'

const size = {
  tuple: {
    width: { kind: 'length', min: '5 mm', max: '1 m', usual: ['12 mm', '400 mm'] },
    height: { kind: 'length', min: '5 mm', max: '1 m', usual: ['12 mm', '400 mm'] },
  },
} as const

/** A plate that motors are bolted to. */
export const plate = {
  /** The body, or the link, that the plate is fixed to. Its mass and that of what it carries are added there. */
  mountedOn: { oneOf: ['body', 'upper', 'lower'] },
  /** Distance of its middle from the upper joint axis of that link. Default: 0 mm. */
  distance: { kind: 'length', min: '-1 m', max: '2 m', default: '0 mm', because: 'a motor on the axis of the joint above' },
  /** Material of the plate. */
  material: { refersTo: 'materials' },
  /** Thickness of the plate. */
  thickness: { kind: 'length', min: '0.2 mm', max: '100 mm', usual: ['1 mm', '25 mm'] },
  /** Width and height of the plate. */
  size,
  /** Emissivity of the plate: about 0.09 for bare aluminium sheet, 0.8 anodised. A plate of metal without a sink must give it. Default: 0.9. */
  emissivity: {
    kind: 'ratio',
    above: 0,
    max: 1,
    usual: [0.03, 1],
    default: 0.9,
    because: 'printed plastics generally 0.85 to 0.95',
    level: 'unverified',
  },
  /** Contact conductance between motor and plate. Default: 1500 W/(m^2 K). */
  contactConductance: {
    kind: 'heatTransferCoefficient',
    min: '5 W/(m^2 K)',
    max: '1000000 W/(m^2 K)',
    usual: ['100 W/(m^2 K)', '50000 W/(m^2 K)'],
    default: '1500 W/(m^2 K)',
    because: 'dry bolted faces without paste',
  },
  /** A metal sink between motor and plate. */
  sink: {
    section: {
      /** Metal of the sink. */
      material: { refersTo: 'materials' },
      /** Thickness of the sink. */
      thickness: { kind: 'length', min: '0.2 mm', max: '100 mm', usual: ['0.8 mm', '25 mm'] },
      /** Width and height of the sink. */
      size,
      /** Emissivity of the sink: about 0.09 for bare aluminium sheet, 0.8 anodised. A sink of metal must give it. Default: 0.8. */
      emissivity: { kind: 'ratio', above: 0, max: 1, usual: [0.03, 1], default: 0.8, because: 'anodised aluminium', level: 'unverified' },
    },
    optional: true,
  },
  /** The bolt group that holds the plate. */
  bolts: { refersTo: 'bolts', optional: true },
  /** How it is printed: a name of the section prints. Default: default. */
  print: { refersTo: 'prints', default: 'default', because: 'one way of printing for all parts' },
} as const satisfies Fields
