import { metricThread, parallelPin, type SiThreadSizes, smallBallBearing } from '../../fasteners/index.js'
import { type Material, materialByName } from '../../materials/index.js'
import type { OwnMaterial } from './field.js'
import { materialFrom } from './own-material.js'

/** A material as the document names it. */
type MaterialReference = string

/** The material of a name: one of the document's own, or one of the table. */
export const materialOf = (reference: MaterialReference, own: Readonly<Record<string, OwnMaterial>> = {}): Material => {
  const record = Object.hasOwn(own, reference) ? own[reference] : undefined
  return record === undefined ? ofTable(reference) : materialFrom(record)
}

/** Whether parts of a material are built of layers. */
export const isLayered = ({ process, family }: Material): boolean =>
  process === 'fusedFilament' || (process === 'sintered' && family !== 'magnet')

const byName = new Map<string, Material>()

/** A material of the table; names once found are kept as they were written. */
function ofTable(name: string): Material {
  let found = byName.get(name)
  if (found === undefined) {
    found = materialByName(name)
    byName.set(name, found)
  }
  return found
}

/** Sizes of a thread, SI. */
export const threadOf = (name: string): SiThreadSizes => metricThread.si(name)

/** A parallel pin: its diameter, tolerance zone, and whether it is hardened. */
export interface PinSize {
  readonly diameter: number
  readonly zone: 'm6' | 'h8'
  readonly hardened: boolean
}

const PIN = /^ISO (8734|2338) (\d+(?:\.\d+)?) mm (m6|h8)$/

/** The sizes in a pin's designation. */
export function pinOf(name: string): PinSize {
  const [, standard, diameter, zone] = PIN.exec(name) as unknown as [string, string, string, 'm6' | 'h8']
  return { diameter: parallelPin.si(diameter).diameter, zone, hardened: standard === '8734' }
}

/** A bearing's dimensions and ratings, SI. */
export interface BearingNumbers {
  readonly bore: number
  readonly outerDiameter: number
  readonly width: number
  readonly staticRating: number
  readonly dynamicRating: number
}
/** Dimensions and ratings of a bearing, from the table or from its own record. */
export function bearingOf(size: string | undefined, own: BearingNumbers | undefined): BearingNumbers | undefined {
  if (own !== undefined || size === undefined) return own
  const { bore, outside, width, staticRating, dynamicRating } = smallBallBearing.si(size)
  return { bore, outerDiameter: outside, width, staticRating, dynamicRating }
}
