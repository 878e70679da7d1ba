import { fibreNames } from '../../capstan/index.js'
import {
  metricThread,
  parallelPin,
  propertyClass as propertyClassTable,
  type SiThreadSizes,
  smallBallBearing,
} from '../../fasteners/index.js'
import { type Material, materialByName } from '../../materials/index.js'
import { InputError } from '../../units/index.js'
import { designation, field, meant, named, Refusal, text } from './fields.js'
import { materialFrom, type OwnMaterial } from './own-material.js'

/** A material as the document names it. */
export type MaterialReference = string

const MATERIAL = 'must be the name of a material, of the table or of the section materials'

/** The name of a material; whether there is one is looked at when the whole document is read. */
export const material = (meaning: string) =>
  field<MaterialReference, MaterialReference>({ meaning, accepts: MATERIAL, json: { type: 'string' }, refersTo: 'material' }, (given) => {
    if (typeof given === 'string' && given !== '') return given
    throw new Refusal(MATERIAL)
  })

/** The material a name stands for: one of the document's own, or one of the table. */
export const materialOf = (reference: MaterialReference, own: Readonly<Record<string, OwnMaterial>> = {}): Material => {
  const record = Object.hasOwn(own, reference) ? own[reference] : undefined
  return record === undefined ? ofTable(reference) : materialFrom(record)
}

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

/** Whether a name is that of a material, and the message if it is not. */
export function materialProblem(reference: string, own: readonly string[]): string | undefined {
  if (own.includes(reference)) return undefined
  try {
    materialByName(reference)
    return undefined
  } catch (error) {
    if (!(error instanceof InputError)) throw error
    const near = meant(reference, own)
    return `${MATERIAL}${near !== '' ? near : `; ${error.issues[0]?.accepts ?? ''}`}`
  }
}

/** A coarse metric thread such as `M4`. */
export const thread = (meaning: string) => designation('a coarse metric thread', () => metricThread.designations, meaning)
/** Sizes of a thread, SI. */
export const threadOf = (name: string): SiThreadSizes => metricThread.si(name)

/** A property class of bolts such as `8.8`; YAML reads it as a number, which is accepted. */
export const propertyClass = (meaning: string) => {
  const names = () => propertyClassTable.designations
  const inner = designation('a property class', names, meaning)
  return field<string, string | number>(
    { meaning, accepts: 'must be a property class such as 8.8', json: { anyOf: [{ type: 'string' }, { type: 'number' }] }, names },
    (given) => {
      const result = inner.safeParse(typeof given === 'number' ? given.toFixed(1) : given)
      if (result.success) return result.data
      throw new Refusal(result.error.issues[0]?.message ?? 'must be a property class')
    },
  )
}

/** A parallel pin: its diameter, tolerance zone, and whether it is hardened. */
export interface PinSize {
  readonly diameter: number
  readonly zone: 'm6' | 'h8'
  readonly hardened: boolean
}

const PIN = /^ISO (8734|2338) (\d+(?:\.\d+)?) mm (m6|h8)$/

const pinNames = () => parallelPin.designations.flatMap((d) => [`ISO 8734 ${d} mm m6`, `ISO 2338 ${d} mm m6`, `ISO 2338 ${d} mm h8`])

/** A pin by standard, such as `ISO 8734 4 mm m6`. */
export const pinSize = (meaning: string) => designation('a parallel pin', pinNames, meaning)
/** What a pin's designation says. */
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
/** A small ball bearing of the table, such as `10x22x6`. */
export const bearingName = (meaning: string) => designation('a small ball bearing', () => smallBallBearing.designations, meaning)
/** Dimensions and ratings of a bearing, from the table or from its own record. */
export function bearingOf(size: string | undefined, own: BearingNumbers | undefined): BearingNumbers | undefined {
  if (own !== undefined || size === undefined) return own
  const { bore, outside, width, staticRating, dynamicRating } = smallBallBearing.si(size)
  return { bore, outerDiameter: outside, width, staticRating, dynamicRating }
}

/** A cord fibre of the table. */
export const fibre = (meaning: string) => designation('a cord fibre', fibreNames, meaning)
/** The name of a cord; whether it is in the section of cords is looked at when the whole document is read. */
export const cordName = (meaning: string) => named(text(meaning), 'cord')
