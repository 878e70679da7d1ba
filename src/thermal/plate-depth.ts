import { besselJ1 } from '../numeric/index.js'

/** A plate in its depth, with its films. */
export interface PlateDepth {
  readonly thickness: number
  readonly conductivity: number
  readonly conductivityAcross?: number | undefined
  readonly motorFaceCoefficient: number
  readonly freeFaceCoefficient: number
  /** Heat that the plate itself takes up, for a temperature that grows as exp(s t): s over the diffusivity along the faces, 1/m². Default 0. */
  readonly storage?: number | undefined
}

/** A plate that conducts alike in all directions. */
export interface IsotropicDepth extends PlateDepth {
  readonly conductivityAcross: undefined
}

/** The depth stretched by the root of the conductivities' ratio: the heat equation is then that of a plate of their geometric mean. */
export function isotropicDepth(x: PlateDepth): IsotropicDepth {
  const { conductivity, conductivityAcross = conductivity, motorFaceCoefficient, freeFaceCoefficient } = x
  return {
    thickness: x.thickness * Math.sqrt(conductivity / conductivityAcross),
    conductivity: Math.sqrt(conductivity * conductivityAcross),
    conductivityAcross: undefined,
    motorFaceCoefficient,
    freeFaceCoefficient,
    storage: x.storage,
  }
}

/** At this depth in units of a mode its far face is out of reach: the hyperbolic tangent is one to the last digit. */
const DEEP = 20

/** Flux into the motor's face per surface temperature, for one mode of the plate. */
export function admittanceAt(plate: IsotropicDepth, wave: number): number {
  const { thickness, conductivity, motorFaceCoefficient, freeFaceCoefficient, storage = 0 } = plate
  const mu = storage === 0 ? wave : Math.sqrt(wave * wave + storage)
  if (mu === 0) return motorFaceCoefficient + 1 / (thickness / conductivity + 1 / freeFaceCoefficient)
  const inside = conductivity * mu
  if (mu * thickness > DEEP) return motorFaceCoefficient + inside
  const tanh = Math.tanh(mu * thickness)
  return motorFaceCoefficient + (inside * (inside * tanh + freeFaceCoefficient)) / (inside + freeFaceCoefficient * tanh)
}

/** Integral of r J0(mu r) over a ring. */
export function ringIntegral(innerRadius: number, outerRadius: number, mu: number): number {
  if (mu === 0) return (outerRadius * outerRadius - innerRadius * innerRadius) / 2
  return (outerRadius * besselJ1(mu * outerRadius) - (innerRadius === 0 ? 0 : innerRadius * besselJ1(mu * innerRadius))) / mu
}
