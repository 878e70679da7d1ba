import { besselJ0, besselJ1 } from '../numeric/index.js'
import { admittanceAt, type IsotropicDepth, isotropicDepth, type PlateDepth, ringIntegral } from './plate-depth.js'
import { plateModes } from './plate-modes.js'

/** Terms of the series; the rest falls with the cube of the order and stays below a millionth of the sum. */
export const TERMS = 400

/** Most modes that the missing film under the motor couples. Twice as many change the resistance by 0.2 % at most. */
const MAX_COUPLED = 96

/** A wide ring on a small plate takes fewer: waves this many times shorter than the ring (times π) are the last that count. */
const FINEST = 18

/** Conjugate gradients stop when this part of the energy is left, which is the relative error of the mean over the ring. */
const LEFT_OVER = 1e-10
const MAX_ITERATIONS = 60

/** SI numbers of a plate and its ring. */
export interface RingPlate extends PlateDepth {
  readonly innerRadius: number
  readonly outerRadius: number
  readonly plateRadius: number
  readonly underMotor: 'covered' | 'open'
}

export const uniformResistance = (plateRadius: number, depth: IsotropicDepth) =>
  1 / (Math.PI * plateRadius * plateRadius * admittanceAt(depth, 0))

/** From the mean of the ring to the air; also for a plate that stores heat. */
export function ringResistance(x: RingPlate): number {
  const { innerRadius, outerRadius, plateRadius } = x
  const { zeros: lambda, squares: end } = plateModes()
  const { sources, coupled } = shapeOf(x)
  const depth = isotropicDepth(x)
  const area = outerRadius * outerRadius - innerRadius * innerRadius
  const covered = x.underMotor === 'covered' && x.motorFaceCoefficient > 0
  // Short modes of the ring live under the motor: no film takes heat from them there.
  const short = covered ? { ...depth, motorFaceCoefficient: 0 } : depth
  let sum = 0
  for (let n = covered ? coupled - 1 : 0; n < TERMS; n++) {
    const source = sources[n + 1]!
    sum += (source * source) / (end[n]! * admittanceAt(short, lambda[n]! / plateRadius))
  }
  const higher = (4 * sum) / (Math.PI * plateRadius * plateRadius * area * area)
  return higher + (covered ? coupledMean(x, depth) : uniformResistance(plateRadius, depth))
}

/** Terms that depend on radii alone. */
interface Shape {
  readonly innerRadius: number
  readonly outerRadius: number
  readonly plateRadius: number
  /** Ring integral of the uniform mode and of every other. */
  readonly sources: Float64Array
  /** Modes that are coupled. */
  readonly coupled: number
  /** Lommel's integral of r J0(mu_m r) J0(mu_n r) over the disc inside the ring's outer radius, of the coupled modes. */
  readonly overlap: Float64Array
}

/** The last shape: a curve over films and conductivities uses one again and again, and its Bessel functions are most of the work. */
let lastShape: Shape | undefined
export function shapeOf(x: RingPlate): Shape {
  const { innerRadius, outerRadius: a, plateRadius: b } = x
  if (lastShape?.innerRadius === innerRadius && lastShape.outerRadius === a && lastShape.plateRadius === b) return lastShape
  const { zeros: lambda } = plateModes()
  const mu = Float64Array.from({ length: TERMS + 1 }, (_, m) => (m === 0 ? 0 : lambda[m - 1]! / b))
  const sources = mu.map((value) => ringIntegral(innerRadius, a, value))
  const coupled = Math.min(MAX_COUPLED, Math.ceil((FINEST * b) / a))
  const overlap = new Float64Array(coupled * coupled)
  const j0 = mu.subarray(0, coupled).map((value) => besselJ0(value * a))
  const j1 = mu.subarray(0, coupled).map((value) => besselJ1(value * a))
  for (let m = 0; m < coupled; m++) {
    for (let n = 0; n <= m; n++) {
      const integral =
        m === n
          ? ((a * a) / 2) * (j0[m]! * j0[m]! + j1[m]! * j1[m]!)
          : (a * (mu[m]! * j1[m]! * j0[n]! - mu[n]! * j0[m]! * j1[n]!)) / (mu[m]! * mu[m]! - mu[n]! * mu[n]!)
      overlap[m * coupled + n] = integral
      overlap[n * coupled + m] = integral
    }
  }
  lastShape = { innerRadius, outerRadius: a, plateRadius: b, sources, coupled, overlap }
  return lastShape
}

const diagonal = new Float64Array(MAX_COUPLED)
const amplitudes = new Float64Array(MAX_COUPLED)
const residual = new Float64Array(MAX_COUPLED)
const direction = new Float64Array(MAX_COUPLED)
const image = new Float64Array(MAX_COUPLED)

/** Writes (diagonal − film · overlap) `direction` into `image`. */
function applyCoupling(overlap: Float64Array, coupled: number, film: number): void {
  for (let m = 0; m < coupled; m++) {
    let sum = 0
    const row = m * coupled
    for (let n = 0; n < coupled; n++) sum += overlap[row + n]! * direction[n]!
    image[m] = diagonal[m]! * direction[m]! - film * sum
  }
}

/**
 * Amplitudes of the uniform mode and of the first modes, coupled by the film that is missing where the motor covers its face: what the one
 * coefficient per face would take away there is given back as a source. Conjugate gradients, scaled by the diagonal that dominates the matrix.
 * The next call writes into the same array.
 */
export function coupledAmplitudes(x: RingPlate, depth: IsotropicDepth): Float64Array {
  const { zeros: lambda, squares: end } = plateModes()
  const { plateRadius: b, motorFaceCoefficient: film } = x
  const { sources, coupled, overlap } = shapeOf(x)
  let energy = 0
  for (let m = 0; m < coupled; m++) {
    const source = sources[m]!
    diagonal[m] = admittanceAt(depth, m === 0 ? 0 : lambda[m - 1]! / b) * ((b * b) / 2) * (m === 0 ? 1 : end[m - 1]!)
    amplitudes[m] = 0
    residual[m] = source
    direction[m] = source / diagonal[m]!
    energy += source * direction[m]!
  }
  const enough = LEFT_OVER * energy
  for (let k = 0; k < MAX_ITERATIONS && energy > enough; k++) {
    applyCoupling(overlap, coupled, film)
    let curvature = 0
    for (let m = 0; m < coupled; m++) curvature += direction[m]! * image[m]!
    const step = energy / curvature
    let next = 0
    for (let m = 0; m < coupled; m++) {
      amplitudes[m] = amplitudes[m]! + step * direction[m]!
      const left = residual[m]! - step * image[m]!
      residual[m] = left
      next += (left * left) / diagonal[m]!
    }
    const turn = next / energy
    for (let m = 0; m < coupled; m++) direction[m] = residual[m]! / diagonal[m]! + turn * direction[m]!
    energy = next
  }
  return amplitudes
}

/** Mean ring temperature per watt from the coupled modes. */
function coupledMean(x: RingPlate, depth: IsotropicDepth): number {
  const { sources, coupled } = shapeOf(x)
  const found = coupledAmplitudes(x, depth)
  let mean = 0
  for (let m = 0; m < coupled; m++) mean += found[m]! * sources[m]!
  // A flux of 1/(π (a2² − a1²)) per watt, averaged over the ring.
  return mean / (2 * Math.PI * sources[0]! ** 2)
}
