import type { Fields } from '../../schema/index.js'
import { seatedBearing } from '../ball-bearings/section.js'

/** A steel pin with the clevis and lug that bear on it. */
export const pin = {
  /** Pin by standard, diameter and tolerance. */
  size: { designation: 'pin' },
  /** Tensile strength of the pin. Default: 1500 MPa. */
  strength: {
    kind: 'stress',
    min: '50 MPa',
    max: '4 GPa',
    usual: ['300 MPa', '2.5 GPa'],
    default: '1500 MPa',
    because: 'hardened dowel steel, 550 HV or more',
    level: 'unverified',
  },
  /** Thickness of each cheek of the clevis that bears on the pin. */
  cheekThickness: { kind: 'length', above: 0, max: '200 mm', usual: ['1.5 mm', '80 mm'] },
  /** Thickness of the lug in the middle that bears on the pin. */
  lugThickness: { kind: 'length', above: 0, max: '200 mm', usual: ['1.5 mm', '80 mm'] },
  /** Side gap between the lug and each cheek. Default: 0.3 mm. */
  gap: {
    kind: 'length',
    min: 0,
    max: '20 mm',
    usual: ['0.02 mm', '2 mm'],
    default: '0.3 mm',
    because: 'a usual running gap',
    level: 'commonPractice',
  },
  /** Ball bearings in the eye of the link. Left out: the eye turns on the plain pin. */
  bearing: seatedBearing,
} as const satisfies Fields

/** The boss that a pin is pressed into. */
export const boss = {
  /** Material of the boss. */
  material: { refersTo: 'materials' },
  /** Outer diameter of the boss: twice the least distance from the axis to a free surface. */
  outerDiameter: { kind: 'length', above: 0, max: '300 mm', usual: ['3 mm', '80 mm'] },
  /** Mean diameter of the hole as printed or reamed. */
  hole: { kind: 'length', above: 0, max: '100 mm' },
  /** Standard deviation of the hole diameter. Default: 0.02 mm. */
  holeScatter: {
    kind: 'length',
    min: 0,
    max: '0.3 mm',
    usual: ['0.001 mm', '0.08 mm'],
    default: '0.02 mm',
    because: 'reamed printed holes; measure a batch of yours',
  },
  /** Length of pin pressed into one boss. */
  engagement: { kind: 'length', above: 0, max: '200 mm', usual: ['1.5 mm', '80 mm'] },
  /** Distance from the axis of the pin to the free edge in the direction of the load. */
  edgeDistance: { kind: 'length', above: 0, max: '300 mm', usual: ['1.5 mm', '80 mm'] },
  /** Whether the bore axis crosses the layers (printed standing on the bore) or lies in a layer. Default: acrossLayers. */
  axis: {
    oneOf: ['acrossLayers', 'alongLayers'],
    default: 'acrossLayers',
    because: 'hoop stress stays in the layers',
    level: 'commonPractice',
  },
  /** How it is printed: a name of the section prints. Default: default. */
  print: { refersTo: 'prints', default: 'default', because: 'one way of printing for all parts' },
} as const satisfies Fields
