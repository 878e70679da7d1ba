import { type Grid, gridOf, type PlateNumbers } from './plate-grid.js'
import { rectangleExcess } from './plate-rectangle.js'

/** Temperatures and conductance of a plate at given film coefficients. */
export interface PlateAnswer {
  /** From the ring to the air, W/K. */
  conductance: number
  /** Mean rise of the cooled part of the motor's face over the rise of the ring. */
  motorFace: number
  /** The same of the free face. */
  freeFace: number
}

/** A plate whose conductance at any two film coefficients takes about a microsecond. */
export interface PlateModel {
  /** Film coefficients of the motor's face and of the free face. The answer is written into `out`. */
  at(motorFaceCoefficient: number, freeFaceCoefficient: number, out: PlateAnswer): PlateAnswer
  /** Heat capacity that follows the ring: of the store, J/K. */
  readonly capacity: number
  /** Conductance between ring and store, W/K, so that the plate answers a slow change of the ring as the whole plate does. */
  readonly storeConductance: number
  /** Plate and insert, kg. */
  readonly mass: number
}

/** Film coefficients at which the full plate is solved, motor's face and free face, W/(m² K). */
const SNAPSHOTS = [
  [0.5, 0.5],
  [3, 3],
  [12, 12],
  [40, 40],
  [200, 200],
  [3, 40],
  [40, 3],
] as const
const REFERENCE = 2
/** Highest film coefficient for which these suffice, W/(m² K). */
export const FILM_RANGE = 300

/**
 * Finite volumes of the plate in radius and depth, solved at a few pairs of film coefficients; any other pair is the best combination of those solutions
 * (a reduced basis), which for heat flow is accurate to the square of the basis' own error.
 */
export function plateModel(plate: PlateNumbers): PlateModel {
  const grid = gridOf(plate)
  const { size, base, load, direct, motorFace, freeFace, capacity } = grid
  const basis: Float64Array[] = []
  const solveAt = (motor: number, free: number, right: Float64Array) => {
    const matrix = base.copy()
    for (let i = 0; i < size; i++) matrix.addDiagonal(i, motor * motorFace[i]! + free * freeFace[i]!)
    matrix.factor()
    return matrix.solve(right)
  }
  let reference: Float64Array | undefined
  SNAPSHOTS.forEach(([motor, free], k) => {
    const x = solveAt(motor, free, load)
    if (k === REFERENCE) reference = x
    basis.push(x)
  })
  const [motor, free] = SNAPSHOTS[REFERENCE]
  const delayed = solveAt(
    motor,
    free,
    reference!.map((x, i) => x * capacity[i]!),
  )
  basis.push(delayed)
  const stored = dot(reference!, capacity, reference!)
  const second = dot(reference!, capacity, delayed)
  orthonormalise(basis)
  const reduced = reduce(basis, grid)
  const excess = rectangleExcess(plate)
  return {
    at: (motorFaceCoefficient, freeFaceCoefficient, out) => {
      evaluate(reduced, direct, motorFaceCoefficient, freeFaceCoefficient, out)
      // What leaves is what the films take from the faces: all three fall together.
      const part = 1 / (1 + out.conductance * excess(motorFaceCoefficient, freeFaceCoefficient))
      out.conductance *= part
      out.motorFace *= part
      out.freeFace *= part
      return out
    },
    capacity: stored,
    storeConductance: (stored * stored) / second,
    mass: massOf(plate),
  }
}

/** Mass of plate and insert. */
function massOf({ plateRadius, thickness, density, insert }: PlateNumbers): number {
  const whole = Math.PI * plateRadius * plateRadius * thickness * density
  return insert === undefined ? whole : whole + Math.PI * insert.radius * insert.radius * insert.thickness * (insert.density - density)
}

const dot = (a: Float64Array, weight: Float64Array, b: Float64Array) => {
  let sum = 0
  for (let i = 0; i < a.length; i++) sum += a[i]! * weight[i]! * b[i]!
  return sum
}

/** Modified Gram–Schmidt, twice. */
function orthonormalise(basis: Float64Array[]): void {
  for (let k = 0; k < basis.length; k++) {
    const v = basis[k]!
    for (let pass = 0; pass < 2; pass++) {
      for (let m = 0; m < k; m++) {
        const u = basis[m]!
        let along = 0
        for (let i = 0; i < v.length; i++) along += v[i]! * u[i]!
        for (let i = 0; i < v.length; i++) v[i] = v[i]! - along * u[i]!
      }
      const norm = Math.hypot(...v)
      for (let i = 0; i < v.length; i++) v[i] = v[i]! / norm
    }
  }
}

interface Reduced {
  readonly count: number
  readonly base: Float64Array
  readonly motor: Float64Array
  readonly free: Float64Array
  readonly load: Float64Array
  /** Areas over which the faces are averaged, and the basis' integrals over them. */
  readonly motorArea: number
  readonly freeArea: number
  readonly motorSum: Float64Array
  readonly freeSum: Float64Array
}

function reduce(basis: readonly Float64Array[], { base, load, motorFace, freeFace }: Grid): Reduced {
  const count = basis.length
  const reduced = new Float64Array(count * count)
  const motor = new Float64Array(count * count)
  const free = new Float64Array(count * count)
  const project = (v: Float64Array) => Float64Array.from(basis, (u) => u.reduce((sum, x, i) => sum + x * v[i]!, 0))
  for (let m = 0; m < count; m++) {
    reduced.set(project(base.times(basis[m]!)), m * count)
    for (let k = 0; k < count; k++) {
      motor[m * count + k] = dot(basis[m]!, motorFace, basis[k]!)
      free[m * count + k] = dot(basis[m]!, freeFace, basis[k]!)
    }
  }
  const total = (areas: Float64Array) => areas.reduce((sum, a) => sum + a, 0)
  return {
    count,
    base: reduced,
    motor,
    free,
    load: project(load),
    motorArea: total(motorFace),
    freeArea: total(freeFace),
    motorSum: project(motorFace),
    freeSum: project(freeFace),
  }
}

const WORK = new Float64Array(64)
const RIGHT = new Float64Array(8)

function evaluate(r: Reduced, direct: number, motor: number, free: number, out: PlateAnswer): PlateAnswer {
  const { count } = r
  for (let i = 0; i < count * count; i++) WORK[i] = r.base[i]! + motor * r.motor[i]! + free * r.free[i]!
  RIGHT.set(r.load)
  // Elimination without pivoting: the matrix is symmetric and positive definite.
  for (let k = 0; k < count; k++) {
    const inverse = 1 / WORK[k * count + k]!
    for (let i = k + 1; i < count; i++) {
      const factor = WORK[i * count + k]! * inverse
      for (let j = k; j < count; j++) WORK[i * count + j] = WORK[i * count + j]! - factor * WORK[k * count + j]!
      RIGHT[i] = RIGHT[i]! - factor * RIGHT[k]!
    }
  }
  for (let i = count - 1; i >= 0; i--) {
    let sum = RIGHT[i]!
    for (let j = i + 1; j < count; j++) sum -= WORK[i * count + j]! * RIGHT[j]!
    RIGHT[i] = sum / WORK[i * count + i]!
  }
  let through = 0
  let onMotor = 0
  let onFree = 0
  for (let i = 0; i < count; i++) {
    through += r.load[i]! * RIGHT[i]!
    onMotor += r.motorSum[i]! * RIGHT[i]!
    onFree += r.freeSum[i]! * RIGHT[i]!
  }
  // Even entry: `through` is the mean ring temperature per watt. Isothermal: what leaves is what the films take (the difference direct − through would cancel).
  const even = direct === 0
  out.conductance = even ? 1 / through : motor * onMotor + free * onFree
  const scale = even ? 1 / through : 1
  out.motorFace = r.motorArea > 0 ? (onMotor * scale) / r.motorArea : 0
  out.freeFace = (onFree * scale) / r.freeArea
  return out
}
