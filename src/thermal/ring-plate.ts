import { formula } from '../formula/index.js'
import { isotropicDepth } from './plate-depth.js'
import { FREE_FACE, MOTOR_FACE, PLATE_CONDUCTIVITY, PLATE_RADIUS, PLATE_THICKNESS, RING, UNDER_MOTOR } from './plate-inputs.js'
import { ringResistance, uniformResistance } from './ring-plate-modes.js'

/** A round plate under a ring, as inputs. */
export const ROUND_PLATE = {
  ...RING,
  ...PLATE_RADIUS,
  ...PLATE_THICKNESS,
  ...PLATE_CONDUCTIVITY,
  ...MOTOR_FACE,
  ...FREE_FACE,
  ...UNDER_MOTOR,
} as const

/** What the series of a ring on a round plate needs, and where its terms resolve the ring. */
export const RING_FITS = {
  innerRadius: {
    accepts: 'must be smaller than the outer radius of the ring',
    holds: ({ innerRadius, outerRadius }: Radii) => innerRadius < outerRadius,
  },
  plateRadius: {
    accepts: 'must be at least the outer radius of the ring',
    holds: ({ outerRadius, plateRadius }: Radii) => plateRadius >= outerRadius,
  },
} as const
export const RING_RESOLVED = {
  'ring at least a hundredth of the plate radius wide, which the terms of the series resolve': ({
    innerRadius,
    outerRadius,
    plateRadius,
  }: Radii) => outerRadius - innerRadius >= 0.01 * plateRadius,
} as const
interface Radii {
  readonly innerRadius: number
  readonly outerRadius: number
  readonly plateRadius: number
}

/**
 * Thermal resistance of a plate under a ring-shaped motor, both faces cooled: from the ring where motor and plate touch to the air. The plate is not a lump:
 * in a printed plate most of the drop is along the plate, and the fin outside plus the disc under the motor would be a third too optimistic.
 */
export const ringOnPlate = /* @__PURE__ */ formula('thermal.ringOnPlate', {
  inputs: ROUND_PLATE,
  output: {
    /** From the mean of the ring to the air. */
    ring: 'thermalResistance',
    /** The part of it that a plate of uniform flux would have. */
    uniform: 'thermalResistance',
    /** The part of it that spreading adds. */
    spreading: 'thermalResistance',
  },
  equation: ['spreading == ring - uniform'],
  assumes: [
    'round plate with an adiabatic rim, one conductivity along its faces and one through it, steady',
    'uniform flux over the ring; one coefficient per face outside what the motor covers',
  ],
  requires: RING_FITS,
  valid: RING_RESOLVED,
  source: [
    {
      level: 'computed',
      where:
        'Fourier-Bessel series of the heat equation in a plate with convection on both faces; with one face insulated it is the published disc series',
    },
    { level: 'unverified', where: 'Yovanovich; Lee, Song, Au & Moran 1995 (disc on a plate, one face)' },
  ],
  si: (x) => {
    const ring = ringResistance(x)
    const uniform = uniformResistance(x.plateRadius, isotropicDepth(x))
    return { ring, uniform, spreading: ring - uniform }
  },
})
