import type { Field } from '../../schema/index.js'

const groundFriction = {
  band: 'ratio',
  max: 2,
  usual: [0.12, 1.5],
  default: [0.4, 0.6, 0.8],
  because: 'soft polymer on wet or silted ground; measure on yours',
  measuredBy: 'pull the loaded robot sideways with a luggage scale',
} as const satisfies Field

/** The printed foot. */
export const foot = {
  /** Toes as flexures, or a solid pad. */
  variants: 'kind',
  of: {
    toes: {
      /** Number of toes that share the load. Default: 2. */
      count: { integer: true, min: 1, max: 6, default: 2, because: 'two toes' },
      /** Free length of a toe from its root to the middle of its contact. */
      length: { kind: 'length', min: '1 mm', max: '500 mm', usual: ['4 mm', '150 mm'] },
      /** Thickness of a toe in the direction it bends. */
      thickness: { kind: 'length', min: '0.2 mm', max: '100 mm', usual: ['1.5 mm', '40 mm'] },
      /** Width of a toe. */
      width: { kind: 'length', min: '0.5 mm', max: '200 mm', usual: ['3 mm', '120 mm'] },
      /** Polymer of the toes. */
      material: { refersTo: 'materials' },
      /** Angle between an unloaded toe and the ground. Default: 25 deg. */
      lift: {
        kind: 'angle',
        min: '0 deg',
        below: '80 deg',
        usual: ['3 deg', '60 deg'],
        default: '25 deg',
        because: 'toes that spread under load',
      },
      /** Friction coefficient between foot and ground. Default: 0.4 to 0.8. */
      groundFriction,
    },
    pad: {
      /** Thickness of the pad. */
      thickness: { kind: 'length', min: '0.2 mm', max: '200 mm', usual: ['1 mm', '60 mm'] },
      /** Area that touches the ground. */
      area: { kind: 'area', min: '1 mm^2', max: '0.2 m^2', usual: ['20 mm^2', '0.02 m^2'] },
      /** Polymer of the pad. */
      material: { refersTo: 'materials' },
      /** Friction coefficient between foot and ground. Default: 0.4 to 0.8. */
      groundFriction,
    },
  },
} as const satisfies Field
