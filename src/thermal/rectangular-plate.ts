import { formula } from '../formula/index.js'
import type { PlateDepth } from './plate-depth.js'
import { FREE_FACE, MOTOR_FACE, PLATE_CONDUCTIVITY, PLATE_SIZE, PLATE_THICKNESS, RING, RING_PLACE, UNDER_MOTOR } from './plate-inputs.js'
import { type PlateShape, type PlateSource, plateShape, rectangleResistances } from './plate-sources.js'
import { ringOnPlate } from './ring-plate.js'
import { ringResistance } from './ring-plate-modes.js'

/** A longer plate is a bar: its long side over its short one. */
export const LONGEST_PLATE = 5

/** Whether rings lie on the plate and apart. */
export function ringsFit(width: number, height: number, sources: readonly PlateSource[]): boolean {
  return sources.every(
    ({ x, y, outerRadius }, i) =>
      Math.abs(x) + outerRadius <= width / 2 + 1e-9 &&
      Math.abs(y) + outerRadius <= height / 2 + 1e-9 &&
      sources.every((other, j) => j >= i || Math.hypot(x - other.x, y - other.y) >= outerRadius + other.outerRadius - 1e-9),
  )
}

/** A ring that lies on its plate. */
export const RING_FITS = {
  innerRadius: {
    accepts: 'must be smaller than the outer radius of the ring',
    holds: ({ innerRadius, outerRadius }: PlateSource) => innerRadius < outerRadius,
  },
  outerRadius: {
    accepts: 'must fit on the plate at its place',
    holds: ({ width, height, ...ring }: PlateSource & { readonly width: number; readonly height: number }) =>
      ringsFit(width, height, [ring]),
  },
}

/** A plate that is no bar. */
export const COMPACT_PLATE = {
  accepts: 'must be at most five times the width, and at least a fifth of it',
  holds: ({ width, height }: { readonly width: number; readonly height: number }) =>
    Math.max(width / height, height / width) <= LONGEST_PLATE,
}

/** The last geometry: films and conductivities change more often than sizes. */
let last: { readonly width: number; readonly height: number; readonly shape: PlateShape } | undefined

const sameSource = (a: PlateSource, b: PlateSource) =>
  a.x === b.x && a.y === b.y && a.innerRadius === b.innerRadius && a.outerRadius === b.outerRadius

function shapeOf(width: number, height: number, sources: readonly PlateSource[]): PlateShape {
  const same =
    last !== undefined &&
    last.width === width &&
    last.height === height &&
    last.shape.sources.length === sources.length &&
    last.shape.sources.every((source, i) => sameSource(source, sources[i]!))
  if (!same) last = { width, height, shape: plateShape(width, height, sources) }
  return last!.shape
}

/** A rectangular plate in SI numbers. */
export interface RectangularPlate extends PlateDepth {
  readonly width: number
  readonly height: number
}

/** Ring to ring resistances of sources on a rectangular plate, row by row, K/W. */
export function sourceResistances(plate: RectangularPlate, sources: readonly PlateSource[], underMotor: 'covered' | 'open'): Float64Array {
  const { width, height } = plate
  const matrix = rectangleResistances(shapeOf(width, height, sources), plate, underMotor === 'covered')
  const plateRadius = Math.sqrt((width * height) / Math.PI)
  sources.forEach(({ innerRadius, outerRadius }, i) => {
    const at = i * sources.length + i
    matrix[at] = matrix[at]! + ringResistance({ ...plate, innerRadius, outerRadius, plateRadius, underMotor })
  })
  return matrix
}

/**
 * Thermal resistance of a rectangular plate under a ring-shaped motor, both faces cooled: from the mean of the ring to the air.
 *
 * The ring may sit anywhere on the plate. A long or narrow plate resists more than the round one of equal area, because its ends are far away.
 */
export const ringOnRectangularPlate = /* @__PURE__ */ formula('thermal.ringOnRectangularPlate', {
  inputs: {
    ...RING,
    ...PLATE_SIZE,
    ...RING_PLACE,
    ...PLATE_THICKNESS,
    ...PLATE_CONDUCTIVITY,
    ...MOTOR_FACE,
    ...FREE_FACE,
    ...UNDER_MOTOR,
  },
  output: {
    /** From the mean of the ring to the air. */
    ring: 'thermalResistance',
    /** The part of it that a plate of uniform flux would have. */
    uniform: 'thermalResistance',
    /** The part of it that spreading adds. */
    spreading: 'thermalResistance',
  },
  assumes: [
    'plate with adiabatic edges, one conductivity along its faces and one through it, steady',
    'uniform flux over the ring; one coefficient per face outside what the motor covers',
  ],
  requires: { ...RING_FITS, height: COMPACT_PLATE },
  source: [
    {
      level: 'computed',
      where:
        'the round plate of equal area (thermal.ringOnPlate), and the difference of the cosine series of the rectangle and the Bessel series of the round plate; within 1 % of finite volumes up to a side ratio of 5',
    },
  ],
  si: (x) => {
    const { innerRadius, outerRadius, width, height, underMotor } = x
    const ring = sourceResistances(x, [{ x: x.x, y: x.y, innerRadius, outerRadius }], underMotor)[0]!
    const plateRadius = Math.sqrt((width * height) / Math.PI)
    const { uniform } = ringOnPlate.si({ ...x, plateRadius, underMotor: 'open' })
    return { ring, uniform, spreading: ring - uniform }
  },
})

/**
 * Resistances of several motors (or boards) on one rectangular plate: how far each ring is warmed by a watt in each.
 *
 * One plate carries the heat of all rings. The mean rise of a ring is the sum of its row, each entry times the heat of its column.
 */
export const ringsOnPlate = /* @__PURE__ */ formula('thermal.ringsOnPlate', {
  inputs: {
    /** Place of each ring along the width, from the middle of the plate. */
    x: { list: 'length' },
    /** Place of each ring along the height, from the middle of the plate. */
    y: { list: 'length' },
    /** Inner radius of each ring; 0 for a disc. */
    innerRadius: { list: { kind: 'length', min: 0 } },
    /** Outer radius of each ring. */
    outerRadius: { list: { kind: 'length', above: 0 } },
    ...PLATE_SIZE,
    ...PLATE_THICKNESS,
    ...PLATE_CONDUCTIVITY,
    /** Heat transfer coefficient of the motors' face of the plate, film and radiation together. */
    motorFaceCoefficient: { kind: 'heatTransferCoefficient', min: 0 },
    ...FREE_FACE,
    /** Whether the motors cover their face of the plate inside their rings. */
    underMotor: { oneOf: ['covered', 'open'], default: 'covered' },
  },
  output: {
    /** Row by row: mean of one ring per watt in each. */
    resistances: { list: 'thermalResistance' },
  },
  assumes: [
    'plate with adiabatic edges, one conductivity along its faces and one through it, steady',
    'uniform flux over each ring, all rings on one face; one coefficient per face outside what the motors cover',
  ],
  requires: {
    outerRadius: {
      accepts: 'must be as many as the places and inner radii, above the inner radii, on the plate and apart from each other',
      holds: ({ x, y, innerRadius, outerRadius, width, height }) =>
        outerRadius.length > 0 &&
        [x, y, innerRadius].every((list) => list.length === outerRadius.length) &&
        outerRadius.every((radius, i) => radius > innerRadius[i]!) &&
        ringsFit(width, height, sourcesOf({ x, y, innerRadius, outerRadius })),
    },
    height: COMPACT_PLATE,
  },
  source: [{ level: 'computed', where: 'as thermal.ringOnRectangularPlate, with the cosines of all places' }],
  si: (x) => ({ resistances: Array.from(sourceResistances(x, sourcesOf(x), x.underMotor)) }),
})

/** Sources from lists of their numbers. */
function sourcesOf(lists: { readonly [K in keyof PlateSource]: readonly number[] }): PlateSource[] {
  return lists.outerRadius.map((outerRadius, i) => ({ x: lists.x[i]!, y: lists.y[i]!, innerRadius: lists.innerRadius[i]!, outerRadius }))
}
