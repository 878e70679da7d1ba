import { formula } from '../formula/index.js'
import { BandedMatrix } from './banded.js'

/** A round plate (or the round one of equal area) under a ring, SI. The face with the ring is the motor's face, the other the free face. */
export interface PlateNumbers {
  /** Inner radius of the ring; 0 for a disc. */
  readonly innerRadius: number
  readonly outerRadius: number
  readonly plateRadius: number
  readonly thickness: number
  readonly conductivity: number
  readonly density: number
  readonly specificHeat: number
  /** A metal disc sunk flush into the motor's face, at least as wide as the ring. */
  readonly insert?:
    | {
        readonly radius: number
        readonly thickness: number
        readonly conductivity: number
        readonly density: number
        readonly specificHeat: number
        /** Contact coefficient between insert and plate. */
        readonly contact: number
      }
    | undefined
  /** Whether heat enters at one temperature (under a metal motor base) or evenly (the case of the series). */
  readonly entry: 'isothermal' | 'even'
  /** Whether the motor covers its face inside the ring's outer radius, so that no air cools it there. */
  readonly underMotor: 'covered' | 'open'
}

/** What a plate does at given film coefficients. */
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

/** Cell edges from `from` to `to`, crowded towards the ends that are asked for. */
function edges(from: number, to: number, cells: number, crowd: 'start' | 'end' | 'both'): number[] {
  return Array.from({ length: cells + 1 }, (_, i) => {
    const u = i / cells
    const bent = crowd === 'both' ? 0.5 * (1 - Math.cos(Math.PI * u)) : crowd === 'start' ? u ** 2 : 1 - (1 - u) ** 2
    return from + (to - from) * bent
  })
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
  return {
    at: (motorFaceCoefficient, freeFaceCoefficient, out) => evaluate(reduced, direct, motorFaceCoefficient, freeFaceCoefficient, out),
    capacity: stored,
    storeConductance: (stored * stored) / second,
    mass: massOf(plate),
  }
}

/** Mass of plate and insert. */
export function massOf({ plateRadius, thickness, density, insert }: PlateNumbers): number {
  const whole = Math.PI * plateRadius * plateRadius * thickness * density
  return insert === undefined ? whole : whole + Math.PI * insert.radius * insert.radius * insert.thickness * (insert.density - density)
}

interface Grid {
  readonly size: number
  /** Conduction and contact, without films. */
  readonly base: BandedMatrix
  /** Heat into each cell per kelvin of the ring (or per watt, for even entry). */
  readonly load: Float64Array
  /** Conductance of the ring itself to the cells below it; 0 for even entry. */
  readonly direct: number
  /** Area of each cell's film on the motor's face and on the free face. */
  readonly motorFace: Float64Array
  readonly freeFace: Float64Array
  readonly capacity: Float64Array
}

/** A plate's cells: columns from the axis outwards, in each a surface node, cells in depth, and a surface node. */
function gridOf(plate: PlateNumbers): Grid {
  const { innerRadius: a1, outerRadius: a2, plateRadius: b, thickness, insert } = plate
  const radii = [...(a1 > 0 ? edges(0, a1, 10, 'end').slice(0, -1) : []), ...edges(a1, a2, 24, 'both').slice(0, -1)]
  if (insert !== undefined && insert.radius > a2 && insert.radius < b) {
    radii.push(...edges(a2, insert.radius, 14, 'both').slice(0, -1), ...edges(insert.radius, b, 30, 'start'))
  } else radii.push(...edges(a2, b, 44, 'start'))
  const depths =
    insert === undefined
      ? edges(0, thickness, 16, 'start')
      : [...edges(0, insert.thickness, 6, 'both').slice(0, -1), ...edges(insert.thickness, thickness, 10, 'start')]
  const columns = radii.length - 1
  const layers = depths.length - 1
  const nodes = layers + 2
  const size = columns * nodes
  const base = new BandedMatrix(size, nodes)
  const load = new Float64Array(size)
  const motorFace = new Float64Array(size)
  const freeFace = new Float64Array(size)
  const capacity = new Float64Array(size)
  const metal = (i: number, j: number) =>
    insert !== undefined && depths[j + 1]! <= insert.thickness * 1.000001 && radii[i + 1]! <= insert.radius * 1.000001 ? insert : undefined
  const kOf = (i: number, j: number) => metal(i, j)?.conductivity ?? plate.conductivity
  const middle = (i: number) => 0.5 * (radii[i]! + radii[i + 1]!)
  const height = (j: number) => depths[j + 1]! - depths[j]!
  const ring = Math.PI * (a2 * a2 - a1 * a1)
  let direct = 0
  for (let i = 0; i < columns; i++) {
    const area = Math.PI * (radii[i + 1]! ** 2 - radii[i]! ** 2)
    const at = (j: number) => i * nodes + 1 + j
    for (let j = 0; j < layers; j++) {
      const body = metal(i, j) ?? plate
      capacity[at(j)] = body.density * body.specificHeat * area * height(j)
      if (j + 1 < layers) {
        const joint = metal(i, j) !== undefined && metal(i, j + 1) === undefined ? 1 / insert!.contact : 0
        base.join(at(j), at(j + 1), area / (height(j) / 2 / kOf(i, j) + joint + height(j + 1) / 2 / kOf(i, j + 1)))
      }
      if (i + 1 < columns) {
        const edge = radii[i + 1]!
        const inside = Math.log(edge / middle(i)) / kOf(i, j)
        const outside = Math.log(middle(i + 1) / edge) / kOf(i + 1, j)
        base.join(at(j), at(j) + nodes, (2 * Math.PI * height(j)) / (inside + outside))
      } else {
        // The rim is cooled as the mean of both faces.
        motorFace[at(j)] = motorFace[at(j)]! + Math.PI * b * height(j)
        freeFace[at(j)] = freeFace[at(j)]! + Math.PI * b * height(j)
      }
    }
    const top = i * nodes
    const bottom = top + nodes - 1
    base.join(top, at(0), (area * 2 * kOf(i, 0)) / height(0))
    base.join(at(layers - 1), bottom, (area * 2 * kOf(i, layers - 1)) / height(layers - 1))
    freeFace[bottom] = area
    const inRing = middle(i) > a1 && middle(i) < a2
    if (inRing && plate.entry === 'even') load[top] = area / ring
    if (inRing && plate.entry === 'isothermal') {
      const joint = TIGHT * area
      load[top] = joint
      base.addDiagonal(top, joint)
      direct += joint
    }
    if (middle(i) > a2 || plate.underMotor === 'open') motorFace[top] = area
  }
  return { size, base, load, direct, motorFace, freeFace, capacity }
}

/** Coefficient that ties surface nodes under the ring to its one temperature: large against any plate, small enough for the arithmetic. */
const TIGHT = 1e8

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

/**
 * Thermal resistance of a plate under a ring-shaped metal motor base, both faces and the rim cooled, with or without a metal insert: from the ring to the air.
 *
 * The base holds the ring at one temperature, and no air cools the face that the motor covers. `ringOnPlate` is the case of even heat entry,
 * some 13 % higher for a printed plate.
 */
export const mountPlate = /* @__PURE__ */ formula('thermal.mountPlate', {
  inputs: {
    /** Inner radius of the ring; 0 for a disc. */
    innerRadius: { kind: 'length', min: 0 },
    /** Outer radius of the ring. */
    outerRadius: { kind: 'length', above: 0 },
    /** Radius of the plate; for a square one its side over √π. */
    plateRadius: { kind: 'length', above: 0 },
    /** Thickness of the plate. */
    thickness: { kind: 'length', above: 0 },
    /** Conductivity of the plate. */
    conductivity: { kind: 'thermalConductivity', above: 0 },
    /** Density of the plate. */
    density: { kind: 'density', above: 0, default: '1070 kg/m^3' },
    /** Specific heat of the plate. */
    specificHeat: { kind: 'specificHeat', above: 0, default: '1300 J/(kg K)' },
    /** Coefficient of the motor's face outside the motor, film and radiation together. */
    motorFaceCoefficient: { kind: 'heatTransferCoefficient', min: 0 },
    /** The same of the free face. */
    freeFaceCoefficient: { kind: 'heatTransferCoefficient', above: 0 },
    /** A metal disc sunk flush into the motor's face, under the motor. */
    insert: {
      fields: {
        /** Radius of the insert. */
        radius: { kind: 'length', above: 0 },
        /** Thickness of the insert. */
        thickness: { kind: 'length', above: 0 },
        /** Conductivity of the insert. */
        conductivity: { kind: 'thermalConductivity', above: 0, default: '167 W/(m K)' },
        /** Density of the insert. */
        density: { kind: 'density', above: 0, default: '2700 kg/m^3' },
        /** Specific heat of the insert. */
        specificHeat: { kind: 'specificHeat', above: 0, default: '896 J/(kg K)' },
        /** Contact coefficient between insert and plate. */
        contact: { kind: 'heatTransferCoefficient', above: 0, default: '1500 W/(m^2 K)' },
      },
      optional: true,
    },
  },
  output: {
    /** From the ring to the air. */
    resistance: 'thermalResistance',
    /** Mean rise of the free face over the rise of the ring: how far the plate is from one temperature. */
    meanOfFreeFace: 'ratio',
    /** Mass of plate and insert. */
    mass: 'mass',
  },
  assumes: [
    'round plate, one conductivity in all directions, steady',
    'the motor base is metal: the ring is at one temperature, and its gap inside the ring carries nothing',
    'one coefficient per face outside what the motor covers',
  ],
  requires: {
    innerRadius: { accepts: 'must be smaller than the outer radius of the ring', holds: (x) => x.innerRadius < x.outerRadius },
    plateRadius: { accepts: 'must be larger than the outer radius of the ring', holds: (x) => x.plateRadius > x.outerRadius },
    'insert.radius': {
      accepts: 'must be at least the outer radius of the ring and at most the radius of the plate',
      holds: ({ insert, outerRadius, plateRadius }) =>
        insert === undefined || (insert.radius >= outerRadius && insert.radius <= plateRadius * 1.000001),
    },
    'insert.thickness': {
      accepts: 'must be below the thickness of the plate',
      holds: ({ insert, thickness }) => insert === undefined || insert.thickness < thickness,
    },
  },
  valid: {
    'film coefficients up to 300 W/(m² K)': (x) => Math.max(x.motorFaceCoefficient, x.freeFaceCoefficient) <= 300,
  },
  source: [{ level: 'computed', where: 'finite volumes of the heat equation; any numerical heat transfer text (Patankar 1980)' }],
  si: (x) => {
    const model = plateModel({ ...x, entry: 'isothermal', underMotor: 'covered' })
    const answer = model.at(x.motorFaceCoefficient, x.freeFaceCoefficient, { conductance: 0, motorFace: 0, freeFace: 0 })
    return { resistance: 1 / answer.conductance, meanOfFreeFace: answer.freeFace, mass: model.mass }
  },
})
