import { BandedMatrix } from './banded.js'

/** A round plate (or the round one of equal area) under a ring, SI. The face with the ring is the motor's face, the other the free face. */
export interface PlateNumbers {
  /** Inner radius of the ring; 0 for a disc. */
  readonly innerRadius: number
  readonly outerRadius: number
  readonly plateRadius: number
  readonly thickness: number
  readonly conductivity: number
  /** Through the plate. Default: as along its faces. */
  readonly conductivityAcross?: number | undefined
  readonly density: number
  readonly specificHeat: number
  /** Sides of a rectangular plate of the same area. */
  readonly rectangle?: { readonly width: number; readonly height: number } | undefined
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
  /** Whether heat enters at one temperature (under a metal motor base) or at a uniform flux (the case of the series). */
  readonly entry: 'isothermal' | 'even'
  /** Whether the motor covers its face inside the ring's outer radius, so that no air cools it there. */
  readonly underMotor: 'covered' | 'open'
}

/** Cell edges from `from` to `to`, crowded towards the chosen ends. */
function edges(from: number, to: number, cells: number, crowd: 'start' | 'end' | 'both'): number[] {
  return Array.from({ length: cells + 1 }, (_, i) => {
    const u = i / cells
    const bent = crowd === 'both' ? 0.5 * (1 - Math.cos(Math.PI * u)) : crowd === 'start' ? u ** 2 : 1 - (1 - u) ** 2
    return from + (to - from) * bent
  })
}

/** A plate in finite volumes. */
export interface Grid {
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

/** Edges of the cells along the radius and through the thickness, close together at the ring and at the ends of an insert. */
function cellEdges({ innerRadius: a1, outerRadius: a2, plateRadius: b, thickness, insert }: PlateNumbers) {
  const radii = [...(a1 > 0 ? edges(0, a1, 10, 'end').slice(0, -1) : []), ...edges(a1, a2, 24, 'both').slice(0, -1)]
  if (insert !== undefined && insert.radius > a2 && insert.radius < b) {
    radii.push(...edges(a2, insert.radius, 14, 'both').slice(0, -1), ...edges(insert.radius, b, 30, 'start'))
  } else radii.push(...edges(a2, b, 44, 'start'))
  const depths =
    insert === undefined
      ? edges(0, thickness, 16, 'start')
      : [...edges(0, insert.thickness, 6, 'both').slice(0, -1), ...edges(insert.thickness, thickness, 10, 'start')]
  return { radii, depths }
}

/** A plate's cells: columns from the axis outwards, in each a surface node, cells in depth, and a surface node. */
export function gridOf(plate: PlateNumbers): Grid {
  const { innerRadius: a1, outerRadius: a2, plateRadius: b, insert } = plate
  const { radii, depths } = cellEdges(plate)
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
  const { conductivityAcross = plate.conductivity, rectangle } = plate
  const kOf = (i: number, j: number) => metal(i, j)?.conductivity ?? plate.conductivity
  const acrossOf = (i: number, j: number) => metal(i, j)?.conductivity ?? conductivityAcross
  // Both faces share the rim.
  const halfRim = rectangle === undefined ? Math.PI * b : rectangle.width + rectangle.height
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
        base.join(at(j), at(j + 1), area / (height(j) / 2 / acrossOf(i, j) + joint + height(j + 1) / 2 / acrossOf(i, j + 1)))
      }
      if (i + 1 < columns) {
        const edge = radii[i + 1]!
        const inside = Math.log(edge / middle(i)) / kOf(i, j)
        const outside = Math.log(middle(i + 1) / edge) / kOf(i + 1, j)
        base.join(at(j), at(j) + nodes, (2 * Math.PI * height(j)) / (inside + outside))
      } else {
        // The rim is cooled as the mean of both faces.
        motorFace[at(j)] = motorFace[at(j)]! + halfRim * height(j)
        freeFace[at(j)] = freeFace[at(j)]! + halfRim * height(j)
      }
    }
    const top = i * nodes
    const bottom = top + nodes - 1
    base.join(top, at(0), (area * 2 * acrossOf(i, 0)) / height(0))
    base.join(at(layers - 1), bottom, (area * 2 * acrossOf(i, layers - 1)) / height(layers - 1))
    freeFace[bottom] = area
    if (middle(i) > a1 && middle(i) < a2) {
      const joint = plate.entry === 'isothermal' ? TIGHT * area : 0
      load[top] = joint > 0 ? joint : area / ring
      base.addDiagonal(top, joint)
      direct += joint
    }
    if (middle(i) > a2 || plate.underMotor === 'open') motorFace[top] = area
  }
  return { size, base, load, direct, motorFace, freeFace, capacity }
}

/** Coefficient that ties surface nodes under the ring to its one temperature: large against any plate, small enough for the arithmetic. */
const TIGHT = 1e8
