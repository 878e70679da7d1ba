import { Property, type Source } from '../formula/index.js'
import { type KindOf, type Material, PROPERTY_KINDS, type PropertyName } from '../materials/index.js'
import type { Kind } from '../units/index.js'
import type { LegCalculation } from './calculation.js'
import type { LegNumbers } from './leg-numbers.js'
import { propertiesOf } from './parts/materials/fields.js'
import type { Band, OwnMaterial } from './schema/field.js'
import { ownRecordOf } from './schema/own-material.js'
import { materialOf } from './schema/tables.js'

/** Whether a value of a leg is an interval of a plain ratio: a friction, a share that is left. */
export const isBand = (value: unknown): value is Band =>
  typeof value === 'object' && value !== null && 'low' in value && 'typical' in value && 'high' in value

const OF_LEG: Source = { level: 'assumption', where: 'the range that the specification of the leg gives' }

/** An interval as a property with a range. */
export const bandProperty = ({ low, typical, high }: Band, source = OF_LEG): Property<'ratio'> =>
  new Property(typical, 'ratio', low, high, source, '')

/** An interval that has shrunk to one value. */
export const sure = (value: number): Band => ({ low: value, typical: value, high: value })

/** Values of materials by name and property. */
export type MaterialValues = Readonly<Record<string, Readonly<Partial<Record<PropertyName, number | undefined>>> | undefined>>

/**
 * The properties with a range that the checks read, of each material: those that the calculation of the leg met. A name with a dot cannot stand in
 * a path and is left out.
 */
export function materialRanges(x: LegNumbers, calculation: LegCalculation): Map<string, Map<PropertyName, Property>> {
  const own = x.materials as Readonly<Record<string, OwnMaterial>> | undefined
  const all = new Map<string, Map<PropertyName, Property>>()
  for (const { of, names } of calculation.instances.leaves) {
    const { material: name } = names
    if (name === undefined || !of.id.startsWith('material.') || name.includes('.')) continue
    const material = materialOf(name, own)
    for (const property of propertiesOf(of.id)) {
      const value = material[property]
      if (value === undefined || !(value.low < value.high)) continue
      const ranges = all.get(name) ?? new Map<PropertyName, Property>()
      all.set(name, ranges.set(property, value))
    }
  }
  return all
}

/** A leg's own materials with some values put in; materials in which nothing differs from the typical value stay as they are. */
export function withMaterialValues(own: LegNumbers['materials'], values: MaterialValues): LegNumbers['materials'] {
  const result = { ...own } as Record<string, OwnMaterial>
  for (const name in values) {
    const given = values[name]
    if (given === undefined) continue
    const material = materialOf(name, own as Readonly<Record<string, OwnMaterial>> | undefined)
    const changed: Record<string, Property> = {}
    for (const key in given) {
      const property = key as PropertyName
      const value = given[property]
      if (value === undefined || Number.isNaN(value) || value === material[property]?.si) continue
      changed[property] = new Property(value, PROPERTY_KINDS[property] as Kind, value, value, OF_LEG, '')
    }
    if (Object.keys(changed).length > 0) result[name] = ownRecordOf({ ...material, ...changed } as Material)
  }
  return result as LegNumbers['materials']
}

/** Materials of a leg as inputs of its formula. */
export interface MaterialInputs {
  readonly fields: {
    readonly [material: string]: {
      readonly fields: { readonly [P in PropertyName]: { readonly kind: KindOf<P>; readonly optional: true } }
      readonly optional: true
    }
  }
  readonly optional: true
}
