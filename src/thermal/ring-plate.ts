import { formula } from '../formula/index.js'
import { isotropicDepth } from './plate-depth.js'
import { ringResistance, uniformResistance } from './ring-plate-modes.js'

/** A round plate under a ring, as inputs. */
export const ROUND_PLATE = {
  /** Inner radius of the ring; 0 for a disc. */
  innerRadius: { kind: 'length', min: 0 },
  /** Outer radius of the ring. */
  outerRadius: { kind: 'length', above: 0 },
  /** Radius of the plate; for a square one its side over √π. */
  plateRadius: { kind: 'length', above: 0 },
  /** Thickness of the plate. */
  thickness: { kind: 'length', above: 0 },
  /** Conductivity of the plate along its faces. */
  conductivity: { kind: 'thermalConductivity', above: 0 },
  /** Conductivity through the plate: for a print lying flat, across the layers. Default: the same as along its faces. */
  conductivityAcross: { kind: 'thermalConductivity', above: 0, optional: true },
  /** Heat transfer coefficient of the motor's face of the plate, film and radiation together; 0 for an insulated face. */
  motorFaceCoefficient: { kind: 'heatTransferCoefficient', min: 0 },
  /** The same of the free face. */
  freeFaceCoefficient: { kind: 'heatTransferCoefficient', above: 0 },
  /** Whether the motor covers its face of the plate inside the ring's outer radius, so that no air cools it there, or stands clear of it. */
  underMotor: { oneOf: ['covered', 'open'], default: 'covered' },
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
