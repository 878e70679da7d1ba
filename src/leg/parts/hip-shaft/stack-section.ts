import type { Field } from '../../schema/index.js'

/** What is clamped together on the shaft: drum, spacer and link, one after the other. Left out: its joints are not checked. */
export const stack = {
  section: {
    /** Outer diameter of the ring in which two of its parts touch: the smallest of them. */
    outerDiameter: { kind: 'length', above: 0, max: '500 mm', usual: ['4 mm', '120 mm'] },
    /** Inner diameter of that ring. */
    innerDiameter: { kind: 'length', above: 0, max: '500 mm', usual: ['2 mm', '100 mm'] },
    /** Material of the softest part. */
    material: { refersTo: 'materials' },
    /** Tightening torque of the nut on the shaft. */
    tighteningTorque: { kind: 'torque', min: '1 mN m', max: '1000 N m', usual: ['0.05 N m', '200 N m'] },
    /** Share of the clamp load that embedding, creep and heat leave by the end of a season, in ordinary air. Default: 0.3, 0.5 and 0.7. */
    clampLeft: {
      band: 'ratio',
      max: 1,
      default: [0.3, 0.5, 0.7],
      because: 'a printed spacer that nobody tightens again',
      measuredBy: 'tighten the nut after a season and note by how much it turns',
    },
    /** A flat on the shaft, which the bores of drum and link fit: a D-shaped shaft. Left out, with the key too: friction alone drives. */
    flat: {
      section: {
        /** Depth of the flat, from the round surface. At most a quarter of the shaft. */
        depth: { kind: 'length', above: 0, max: '50 mm' },
        /** Length of the flat in drum or link: the shorter of both. */
        length: { kind: 'length', above: 0, max: '200 mm' },
        /** Material of the hub round it: the softer of both. */
        hubMaterial: { refersTo: 'materials' },
      },
      optional: true,
    },
    /** A parallel key that drum and link share, or two alike. Left out: friction alone drives. */
    key: {
      section: {
        /** Width and height of the key. */
        size: { oneOf: ['2x2', '3x3', '4x4', '5x5', '6x6', '8x7', '10x8'] },
        /** Straight length of the key in contact with shaft and drum, or with shaft and link: the shorter of both. */
        length: { kind: 'length', above: 0, max: '200 mm' },
        /** Outer diameter of the hub over the keyway. */
        hubDiameter: { kind: 'length', above: 0, max: '500 mm' },
        /** Material of the hub. */
        hubMaterial: { refersTo: 'materials' },
      },
      optional: true,
    },
  },
  optional: true,
} as const satisfies Field
