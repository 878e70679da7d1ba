import { type Property, type PropertyRecord, property, type Source } from '../formula/index.js'
import { InputError, type Issue, type Kind, show, type UnitOf } from '../units/index.js'
import { type KindOf, PROPERTY_KINDS, type PropertyName } from './property-kinds.js'
import { absurdity, checkOrder } from './record-checks.js'
import { checkCurve, type TemperatureCurve } from './temperature-curve.js'

export { type KindOf, PROPERTY_KINDS, type PropertyName } from './property-kinds.js'

/** One value as the tables of this module write it: typical, low, high, unit, source, and what it holds for. */
export type PropertyRow<K extends Kind> = readonly [
  typical: number,
  low: number,
  high: number,
  unit: UnitOf<K>,
  source: Source,
  conditions?: string,
]

/** Values by property. */
export type PropertyRows = { readonly [P in PropertyName]?: PropertyRow<KindOf<P>> }

/**
 * What a material is made of, for the rules that differ: an amorphous polymer softens at its glass transition, a semicrystalline one
 * keeps part of its strength up to melting, an elastomer is used above its glass transition.
 */
export type Family = 'amorphous' | 'semicrystalline' | 'elastomer' | 'metal' | 'magnet' | 'adhesive'

/** How the part is made; directions and priors follow from it. */
export type Process = 'fusedFilament' | 'sintered' | 'moulded' | 'wrought' | 'cured'

/** What a material is called and how it is made. */
export interface MaterialHead {
  /** Name of the material in the library, such as `PLA`. */
  readonly name: string
  /** Grade and process of the values, in a few words. */
  readonly title: string
  /** Other names it is found by. */
  readonly aliases?: readonly string[]
  /** Family of the material. */
  readonly family: Family
  /** How a part of it is made. */
  readonly process: Process
  /** Strength over temperature where it is not the amorphous rule. */
  readonly strengthCurve?: TemperatureCurve
  /** Stiffness over temperature where it is not the amorphous rule; it seldom falls as strength does. */
  readonly modulusCurve?: TemperatureCurve
  /** Longest time under load, in hours, of the creep tests that the creep values rest on; results beyond it carry a note. */
  readonly creepTestedHours?: number
  /** Warnings that apply to every use. */
  readonly remarks?: readonly string[]
  /** Values of one's own that lie far outside the range of the material they replace; every result carries them as notes. */
  readonly doubts?: readonly string[]
}

/** A material: what it is and its properties, each with range, conditions and source. A property that is not known is absent. */
export type Material = MaterialHead & { readonly [P in PropertyName]?: Property<KindOf<P>> }

/** A material some of whose properties are certain to be present. */
export type MaterialWith<P extends PropertyName> = Material & { readonly [Q in P]: Property<KindOf<Q>> }

/**
 * Makes a material from its head and its rows.
 * Throws one `InputError` that lists every row whose typical value lies outside its range, that cannot be read, or that contradicts another.
 */
export function defineMaterial<const R extends PropertyRows>(head: MaterialHead, rows: R): MaterialWith<Extract<keyof R, PropertyName>> {
  const issues: Issue[] = []
  const properties: Record<string, Property> = {}
  for (const name of Object.keys(rows) as PropertyName[]) {
    const [typical, low, high, unit, source, conditions] = rows[name] as PropertyRow<Kind>
    const record = { typical: [typical, unit], low: [low, unit], high: [high, unit], source, conditions: conditions ?? '' }
    const made = readProperty(name, record as unknown as PropertyRecord<Kind>, name, issues)
    if (made !== undefined) properties[name] = made
  }
  checkCurve('strengthCurve', head.strengthCurve, issues)
  checkCurve('modulusCurve', head.modulusCurve, issues)
  checkOrder(properties, issues)
  if (issues.length > 0) throw new InputError(`material ${show(head.name)}`, issues)
  return { ...head, ...properties } as MaterialWith<Extract<keyof R, PropertyName>>
}

/** One property, or its issues under the given path. */
export function readProperty(name: PropertyName, record: PropertyRecord<Kind>, path: string, issues: Issue[]): Property | undefined {
  try {
    const made = property(PROPERTY_KINDS[name] as Kind, record)
    const problem = absurdity(name, made)
    if (problem === undefined) return made
    issues.push({ path, given: `${made} (${made.lowest} to ${made.highest})`, accepts: problem })
  } catch (error) {
    if (!(error instanceof InputError)) throw error
    for (const issue of error.issues) issues.push({ ...issue, path: `${path}.${issue.path}` })
  }
  return undefined
}

/** The properties a material carries, in table order. */
export const propertiesOf = (material: Material): [PropertyName, Property][] =>
  (Object.keys(PROPERTY_KINDS) as PropertyName[]).flatMap((name): [PropertyName, Property][] => {
    const value = material[name]
    return value === undefined ? [] : [[name, value as Property]]
  })

/**
 * A property that the calculation cannot do without.
 * Throws an `InputError` that names the property and the material when it is not known.
 */
export function requireProperty<P extends PropertyName>(where: string, material: Material, name: P): Property<KindOf<P>> {
  const value = material[name]
  if (value !== undefined) return value as Property<KindOf<P>>
  throw new InputError(where, [
    {
      path: `material.${name}`,
      given: 'missing',
      accepts: `${material.name} has no ${name} in the table; measure it and add it (materialFromCoupons, withProperties)`,
    },
  ])
}
