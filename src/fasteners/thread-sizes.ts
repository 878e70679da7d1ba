import type { Source } from '../formula/index.js'
import { type Kind, Quantity } from '../units/index.js'
import { unknownDesignation } from './size-table.js'
import { threadGeometry } from './thread-geometry.js'

/**
 * Diameter, pitch, then in µm: allowance g, tolerances of grade 6 for the screw's major and pitch diameter and for the nut's pitch and
 * minor diameter.
 */
type Row = readonly [diameter: number, pitch: number, g: number, screwMajor: number, screwPitch: number, nutPitch: number, nutMinor: number]

const COARSE: Readonly<Record<CoarseThread, Row>> = {
  'M1.6': [1.6, 0.35, 19, 85, 63, 85, 100],
  M2: [2, 0.4, 19, 95, 67, 90, 112],
  'M2.5': [2.5, 0.45, 20, 100, 71, 95, 125],
  M3: [3, 0.5, 20, 106, 75, 100, 140],
  M4: [4, 0.7, 22, 140, 90, 118, 180],
  M5: [5, 0.8, 24, 150, 95, 125, 200],
  M6: [6, 1, 26, 180, 112, 150, 236],
  M8: [8, 1.25, 28, 212, 118, 160, 265],
  M10: [10, 1.5, 32, 236, 132, 180, 300],
  M12: [12, 1.75, 34, 265, 150, 200, 335],
}

const FINE: Readonly<Record<FineThread, Row>> = {
  'M6x0.75': [6, 0.75, 22, 140, 100, 132, 190],
  M8x1: [8, 1, 26, 180, 112, 150, 236],
  M10x1: [10, 1, 26, 180, 112, 150, 236],
  'M10x1.25': [10, 1.25, 28, 212, 118, 160, 265],
  'M12x1.25': [12, 1.25, 28, 212, 132, 180, 265],
  'M12x1.5': [12, 1.5, 32, 236, 140, 190, 300],
}

const KINDS_OF_THREAD = {
  diameter: 'length',
  pitch: 'length',
  pitchDiameter: 'length',
  minorDiameter: 'length',
  rootDiameter: 'length',
  stressArea: 'area',
  rootArea: 'area',
  leadAngle: 'angle',
  allowance: 'length',
  screwMajorTolerance: 'length',
  screwPitchTolerance: 'length',
  nutPitchTolerance: 'length',
  nutMinorTolerance: 'length',
} as const satisfies Record<string, Kind>

type ThreadField = keyof typeof KINDS_OF_THREAD

/** Every size of one thread as quantities: basic diameters, areas, lead angle, and the tolerances of 6g and 6H. */
export type ThreadSizes = { readonly [F in ThreadField]: Quantity<(typeof KINDS_OF_THREAD)[F]> }
/** The same as SI numbers. */
export type SiThreadSizes = { readonly [F in ThreadField]: number }

/** Designations of the coarse threads held. */
export type CoarseThread = 'M1.6' | 'M2' | 'M2.5' | 'M3' | 'M4' | 'M5' | 'M6' | 'M8' | 'M10' | 'M12'
/** Designations of the fine threads held. */
export type FineThread = 'M6x0.75' | 'M8x1' | 'M10x1' | 'M10x1.25' | 'M12x1.25' | 'M12x1.5'

/** A table of threads: called with a designation it returns that thread's sizes, made once and kept. */
export interface ThreadTable<D extends string> {
  (designation: D | (string & {})): ThreadSizes
  /** The same sizes as SI numbers. */
  readonly si: (designation: D | (string & {})) => SiThreadSizes
  /** Every designation in the table. */
  readonly designations: readonly D[]
  /** Where the numbers come from. */
  readonly source: readonly Source[]
}

function threadTable<D extends string>(
  id: string,
  what: string,
  rows: Readonly<Record<D, Row>>,
  source: readonly Source[],
): ThreadTable<D> {
  const siSizes = new Map<string, SiThreadSizes>()
  const sizes = new Map<string, ThreadSizes>()
  const si = (designation: string): SiThreadSizes => {
    const known = siSizes.get(designation)
    if (known !== undefined) return known
    if (typeof designation !== 'string' || !Object.hasOwn(rows, designation)) {
      unknownDesignation(id, what, designation, Object.keys(rows))
    }
    const [d, p, allowance, screwMajor, screwPitch, nutPitch, nutMinor] = rows[designation as D]
    const diameter = d / 1000
    const pitch = p / 1000
    const made = {
      diameter,
      pitch,
      ...threadGeometry.si({ diameter, pitch }),
      allowance: allowance / 1e6,
      screwMajorTolerance: screwMajor / 1e6,
      screwPitchTolerance: screwPitch / 1e6,
      nutPitchTolerance: nutPitch / 1e6,
      nutMinorTolerance: nutMinor / 1e6,
    }
    siSizes.set(designation, made)
    return made
  }
  const thread = (designation: string): ThreadSizes => {
    const known = sizes.get(designation)
    if (known !== undefined) return known
    const numbers = si(designation)
    const made: Record<string, Quantity> = {}
    for (const field of Object.keys(KINDS_OF_THREAD) as ThreadField[]) made[field] = new Quantity(numbers[field], KINDS_OF_THREAD[field])
    sizes.set(designation, made as unknown as ThreadSizes)
    return made as unknown as ThreadSizes
  }
  return Object.assign(thread, { si, designations: Object.keys(rows) as D[], source })
}

/**
 * Sizes of a coarse metric thread such as `'M4'`, M1.6 to M12; made once, so that later look-ups allocate nothing.
 *
 * Throws an `InputError` that lists near designations. `metricThread.si` gives SI numbers.
 */
export const metricThread = /* @__PURE__ */ threadTable('fasteners.metricThread', 'a coarse metric thread', COARSE, [
  { level: 'standard', where: 'ISO 261:1998, ISO 724:1993 (coarse pitches); ISO 965-2 limits of M3 to M6 (read in a reproduction)' },
  { level: 'unverified', where: 'ISO 965-1:2013 tables of allowances and tolerances, other sizes' },
])

/**
 * Sizes of a fine metric thread such as `'M8x1'`, M6 to M12, for adjusting screws and thin walls; made once, so that later look-ups allocate nothing.
 *
 * Throws an `InputError` that lists near designations. `metricFineThread.si` gives SI numbers. Nuts and heads are those of the coarse thread.
 */
export const metricFineThread = /* @__PURE__ */ threadTable('fasteners.metricFineThread', 'a fine metric thread', FINE, [
  { level: 'standard', where: 'ISO 261:1998 (preferred fine pitches); diameters by ISO 724:1993 from the pitch' },
  { level: 'unverified', where: 'ISO 965-1:2013 tables of allowances and tolerances' },
])
