/** A round bar or tube. */
export const TUBE = {
  /** Outer diameter. */
  outerDiameter: { kind: 'length', above: 0 },
  /** Inner diameter. */
  innerDiameter: { kind: 'length', min: 0, default: '0 mm' },
} as const
/** Outer sizes and wall of a box. */
export const BOX = {
  /** Outer width, along the bending axis. */
  width: { kind: 'length', above: 0 },
  /** Outer depth, across the bending axis. */
  depth: { kind: 'length', above: 0 },
  /** Wall thickness, the same all round; half of the smaller side makes the box solid. */
  wall: { kind: 'length', above: 0 },
} as const

/** Diameters of a round bar or tube. */
export const ROUND = {
  /** Outer diameter; the root diameter of a thread. */
  diameter: { kind: 'length', above: 0 },
  /** Diameter of a hole along the axis. */
  holeDiameter: { kind: 'length', min: 0, default: '0 mm' },
} as const

/** A box without room for its walls is no box. */
export const WALLS_FIT = {
  accepts: 'must be at most half of the smaller side, which makes the section solid',
  holds: ({ width, depth, wall }: { readonly width: number; readonly depth: number; readonly wall: number }) =>
    wall <= (Math.min(width, depth) / 2) * (1 + 1e-9),
}

/** A tube needs a wall. */
export const HOLE_FITS = {
  accepts: 'must be smaller than the outer diameter',
  holds: ({ diameter, holeDiameter }: { readonly diameter: number; readonly holeDiameter: number }) => holeDiameter < diameter,
}
