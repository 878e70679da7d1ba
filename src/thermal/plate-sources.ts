import { besselJ0, solveInPlace } from '../numeric/index.js'
import { admittanceAt, isotropicDepth, type PlateDepth, ringIntegral } from './plate-depth.js'
import { plateModes } from './plate-modes.js'

/** A ring (or disc) through which heat enters a plate, at its place from the middle of the plate. */
export interface PlateSource {
  /** Across the plate, along its width. */
  readonly x: number
  /** Along its height. */
  readonly y: number
  readonly innerRadius: number
  readonly outerRadius: number
}

/** Sources are blurred by this part of their radius, and modes are counted up to this number over the smallest radius: what both leave out is local and the same in any plate. */
const BLUR = 0.15
const CUT = 20
/** A mode whose cosines are below this belongs to no source: odd ones of a source in the middle. */
const SILENT = 1e-9

/** Modes of a plate: wave numbers, and for each source the amplitudes of its disc and of its ring. */
interface Modes {
  readonly waves: Float64Array
  /** Disc and ring of the first source, disc and ring of the second, … */
  readonly amplitudes: readonly Float64Array[]
}

/** Mean of a mode over a source, blurred. */
function strength(innerRadius: number, outerRadius: number, wave: number): number {
  const blur = BLUR * outerRadius * wave
  return (2 * ringIntegral(innerRadius, outerRadius, wave) * Math.exp((-blur * blur) / 2)) / (outerRadius ** 2 - innerRadius ** 2)
}

/** Cosine modes of a rectangle, source by source. */
function rectangleModes(width: number, height: number, sources: readonly PlateSource[]): Modes {
  const cut = CUT / Math.min(...sources.map(({ outerRadius }) => outerRadius))
  const waves: number[] = []
  const amplitudes: number[][] = sources.flatMap(() => [[], []])
  for (let m = 0; (m * Math.PI) / width <= cut; m++) {
    const across = (m * Math.PI) / width
    for (let n = 0; across * across + ((n * Math.PI) / height) ** 2 <= cut * cut; n++) {
      const along = (n * Math.PI) / height
      const cosines = sources.map(({ x, y }) => Math.cos(across * (x + width / 2)) * Math.cos(along * (y + height / 2)))
      if (cosines.every((c) => Math.abs(c) < SILENT)) continue
      const wave = Math.hypot(across, along)
      const norm = Math.sqrt(((m === 0 ? 1 : 2) * (n === 0 ? 1 : 2)) / (width * height))
      waves.push(wave)
      sources.forEach(({ innerRadius, outerRadius }, i) => {
        amplitudes[2 * i]!.push(cosines[i]! * norm * strength(0, outerRadius, wave))
        amplitudes[2 * i + 1]!.push(cosines[i]! * norm * strength(innerRadius, outerRadius, wave))
      })
    }
  }
  return { waves: Float64Array.from(waves), amplitudes: amplitudes.map((values) => Float64Array.from(values)) }
}

/** Modes of the round plate of equal area with one source in its middle. */
function roundModes(plateRadius: number, cut: number, { innerRadius, outerRadius }: PlateSource): Modes {
  const { zeros } = plateModes()
  const waves = [0]
  for (let n = 0; n < zeros.length && zeros[n]! / plateRadius <= cut; n++) waves.push(zeros[n]! / plateRadius)
  const norms = waves.map((wave) => 1 / (Math.sqrt(Math.PI) * plateRadius * Math.abs(besselJ0(wave * plateRadius))))
  const of = (inner: number) => Float64Array.from(waves, (wave, n) => norms[n]! * strength(inner, outerRadius, wave))
  return { waves: Float64Array.from(waves), amplitudes: [of(0), of(innerRadius)] }
}

/** Geometry of sources on a rectangular plate, for any films and conductivities. */
export interface PlateShape {
  readonly sources: readonly PlateSource[]
  readonly rectangle: Modes
  /** For each source alone in the middle of the round plate of equal area. */
  readonly rounds: readonly Modes[]
}

/** Works out what depends on geometry alone. */
export function plateShape(width: number, height: number, sources: readonly PlateSource[]): PlateShape {
  const rectangle = rectangleModes(width, height, sources)
  const cut = CUT / Math.min(...sources.map(({ outerRadius }) => outerRadius))
  const plateRadius = Math.sqrt((width * height) / Math.PI)
  return { sources, rectangle, rounds: sources.map((source) => roundModes(plateRadius, cut, source)) }
}

/** Mean temperatures of discs and rings per watt in each, with a film on both faces everywhere. */
function openResistances({ waves, amplitudes }: Modes, depth: PlateDepth): Float64Array {
  const count = amplitudes.length
  const plain = isotropicDepth(depth)
  const matrix = new Float64Array(count * count)
  for (let n = 0; n < waves.length; n++) {
    const inverse = 1 / admittanceAt(plain, waves[n]!)
    for (let i = 0; i < count; i++) {
      const part = amplitudes[i]![n]! * inverse
      for (let j = 0; j <= i; j++) matrix[i * count + j] = matrix[i * count + j]! + part * amplitudes[j]![n]!
    }
  }
  for (let i = 0; i < count; i++) for (let j = 0; j < i; j++) matrix[j * count + i] = matrix[i * count + j]!
  return matrix
}

/**
 * Ring to ring resistances when no air cools the plate under the sources: the heat that the film would take there, at the mean temperature of each disc, is given back
 * through the disc.
 */
function coveredResistances(open: Float64Array, sources: readonly PlateSource[], film: number): Float64Array {
  const count = sources.length
  const size = 2 * count
  const out = new Float64Array(count * count)
  const matrix = new Float64Array(count * count)
  const pivots = new Int32Array(count)
  const given = new Float64Array(count)
  for (let j = 0; j < count; j++) {
    for (let i = 0; i < count; i++) {
      for (let k = 0; k < count; k++) {
        const area = Math.PI * sources[i]!.outerRadius ** 2
        matrix[i * count + k] = (i === k ? 1 : 0) - film * area * open[2 * i * size + 2 * k]!
      }
      given[i] = film * Math.PI * sources[i]!.outerRadius ** 2 * open[2 * i * size + 2 * j + 1]!
    }
    solveInPlace(matrix, count, pivots, given)
    for (let i = 0; i < count; i++) {
      let sum = open[(2 * i + 1) * size + 2 * j + 1]!
      for (let k = 0; k < count; k++) sum += open[(2 * i + 1) * size + 2 * k]! * given[k]!
      out[i * count + j] = sum
    }
  }
  return out
}

/**
 * What the rectangle changes: resistances between sources, row by row; on the diagonal only the difference to the source alone in the middle of the round plate of equal area.
 */
export function rectangleResistances({ sources, rectangle, rounds }: PlateShape, depth: PlateDepth, covered: boolean): Float64Array {
  const film = covered ? depth.motorFaceCoefficient : 0
  const matrix = coveredResistances(openResistances(rectangle, depth), sources, film)
  sources.forEach((source, i) => {
    const at = i * sources.length + i
    matrix[at] = matrix[at]! - coveredResistances(openResistances(rounds[i]!, depth), [source], film)[0]!
  })
  return matrix
}
