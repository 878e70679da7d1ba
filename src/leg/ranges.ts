import { Property, type Source } from '../formula/index.js'
import { type KindOf, type Material, PROPERTY_KINDS, type PropertyName } from '../materials/index.js'
import type { Kind } from '../units/index.js'
import type { MoistureState } from './matter.js'
import type { LegNumbers } from './numbers.js'
import type { Band } from './specification/fields.js'
import { type OwnMaterial, ownRecordOf } from './specification/own-material.js'
import { materialOf } from './specification/tables.js'

/** Whether a value of a leg is an interval of a plain ratio: a friction, a share that is left. */
export const isBand = (value: unknown): value is Band =>
  typeof value === 'object' && value !== null && 'low' in value && 'typical' in value && 'high' in value

const OF_LEG: Source = { level: 'assumption', where: 'the range that the specification of the leg gives' }

/** An interval as a property with a range. */
export const bandProperty = ({ low, typical, high }: Band, source = OF_LEG): Property<'ratio'> =>
  new Property(typical, 'ratio', low, high, source, '')

/** An interval that has shrunk to one value. */
export const sure = (value: number): Band => ({ low: value, typical: value, high: value })

/** Properties that what is asked of a part rests on; `wet` ones count in damp prints only. */
const STRENGTH = [
  'tensileStrength',
  'yieldStrength',
  'acrossLayersRatio',
  'interlayerShearRatio',
  'strengthKept1000Hours',
  'strengthKept1Year',
  'activationEnergy',
  'fatigueRatio',
  'glassTransitionTemperature',
  'serviceTemperature',
  'strengthConditionedRatio',
  'strengthSaturatedRatio',
] as const
const STIFFNESS = ['modulus', 'modulusConditionedRatio', 'modulusSaturatedRatio'] as const
const CREEP = ['creepCoefficient', 'creepExponent', 'activationEnergy'] as const
const GROWTH = ['thermalExpansion', 'moistureConditioned', 'moistureSaturated', 'moistureSwelling'] as const

/** What the checks read of the material of each part, by where it is named. */
const READ: readonly (readonly [where: RegExp, properties: readonly PropertyName[]])[] = [
  [/^foot\./, [...STIFFNESS, 'strainLimit']],
  [/^sink\./, ['thermalConductivity', 'density', 'specificHeat']],
  [
    /^plate\./,
    [
      'thermalConductivity',
      'thermalConductivityAcrossLayers',
      'density',
      'specificHeat',
      'thermalExpansion',
      'glassTransitionTemperature',
      'serviceTemperature',
    ],
  ],
  [/^drives\./, STRENGTH],
  [/^bosses\./, [...STRENGTH, ...STIFFNESS, ...CREEP, ...GROWTH, 'poissonRatio', 'frictionOnSteel']],
  [/^links\./, [...STRENGTH, 'thermalExpansion', 'frictionOnSteel']],
  [/^shaft\./, STRENGTH],
  [/^bearings\./, GROWTH],
  [/^bolts\./, [...STRENGTH, ...STIFFNESS, ...CREEP, 'frictionOnSteel']],
]

/** Whether a property counts for a material of this family in this state of moisture. */
function counts(property: PropertyName, { family, strengthCurve }: Material, moisture: MoistureState): boolean {
  if (property.endsWith('ConditionedRatio') || property === 'moistureConditioned') return moisture === 'conditioned'
  if (property.endsWith('SaturatedRatio') || property === 'moistureSaturated') return moisture === 'saturated'
  if (property === 'moistureSwelling') return moisture !== 'dry'
  const metal = family === 'metal'
  if (property === 'yieldStrength') return metal
  if (property === 'tensileStrength' || (CREEP as readonly string[]).includes(property)) return !metal
  const softens = family === 'amorphous' && strengthCurve === undefined
  if (property === 'glassTransitionTemperature') return softens
  if (property === 'serviceTemperature') return !softens
  return true
}

/** Values of materials by name and property. */
export type MaterialValues = Readonly<Record<string, Readonly<Partial<Record<PropertyName, number | undefined>>> | undefined>>

/** A material that a leg names, and where. */
interface Reference {
  readonly path: string
  readonly name: string
}

/** The properties with a range that the checks read, of each material that a leg names. A name with a dot cannot stand in a path and is left out. */
export function materialRanges(
  x: LegNumbers,
  references: readonly Reference[],
  moisture: MoistureState,
): Map<string, Map<PropertyName, Property>> {
  const own = x.materials as Readonly<Record<string, OwnMaterial>> | undefined
  const all = new Map<string, Map<PropertyName, Property>>()
  for (const { path, name } of references) {
    if (name.includes('.')) continue
    const material = materialOf(name, own)
    const ranges = all.get(name) ?? new Map<PropertyName, Property>()
    for (const [where, properties] of READ) {
      if (!where.test(path)) continue
      for (const property of properties) {
        const value = material[property]
        if (value !== undefined && value.low < value.high && counts(property, material, moisture)) ranges.set(property, value)
      }
    }
    if (ranges.size > 0) all.set(name, ranges)
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
