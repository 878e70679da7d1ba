import type { Field } from '../../schema/index.js'

const groundFriction = {
  band: 'ratio',
  max: 2,
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
      length: { kind: 'length', above: 0, max: '500 mm' },
      /** Thickness of a toe in the direction it bends. */
      thickness: { kind: 'length', above: 0, max: '100 mm' },
      /** Width of a toe. */
      width: { kind: 'length', above: 0, max: '200 mm' },
      /** Polymer of the toes. */
      material: { refersTo: 'materials' },
      /** Angle between an unloaded toe and the ground. Default: 25 deg. */
      lift: { kind: 'angle', min: '0 deg', below: '80 deg', default: '25 deg', because: 'toes that spread under load' },
      /** Friction coefficient between foot and ground. Default: 0.4 to 0.8. */
      groundFriction,
    },
    pad: {
      /** Thickness of the pad. */
      thickness: { kind: 'length', above: 0, max: '200 mm' },
      /** Area that touches the ground. */
      area: { kind: 'area', above: 0 },
      /** Polymer of the pad. */
      material: { refersTo: 'materials' },
      /** Friction coefficient between foot and ground. Default: 0.4 to 0.8. */
      groundFriction,
    },
  },
} as const satisfies Field
