import { Property, type PropertyRecord } from '../formula/index.js'
import { InputError, type Issue, issue, type Kind, nearName, show } from '../units/index.js'
import { doubtsAbout, impossible } from './plausibility.js'
import { type KindOf, type Material, type MaterialHead, PROPERTY_KINDS, type PropertyName, readProperty } from './record.js'
import { checkOrder } from './record-checks.js'

/** The issue of a name that is no property, with the nearest one that is. */
export const unknownProperty = (path: string, name: string): Issue => {
  const near = nearName(String(name), Object.keys(PROPERTY_KINDS))
  return issue(
    path,
    name,
    near === undefined ? `must be one of ${Object.keys(PROPERTY_KINDS).join(', ')}` : `is no property of a material, did you mean ${near}?`,
  )
}

/** Properties to put into a material: finished ones, or records to be read. */
export type OwnProperties = { readonly [P in PropertyName]?: Property<KindOf<P>> | PropertyRecord<KindOf<P>> }

/**
 * A material with some of its properties replaced, everything else with the source it had.
 * A value far outside the range of the material it replaces is listed in `doubts`, which every result of the material carries as a note. Throws an
 * `InputError` that lists every unknown name, unreadable value, typical value outside its range, value that no material of the family has and value that
 * contradicts another.
 */
export function withProperties(material: Material, properties: OwnProperties, head: Partial<MaterialHead> = {}): Material {
  const issues: Issue[] = []
  const made: Record<string, Property> = {}
  for (const [name, value] of Object.entries(properties) as [PropertyName, Property | PropertyRecord<Kind>][]) {
    if (!Object.hasOwn(PROPERTY_KINDS, name)) {
      issues.push(unknownProperty(name, name))
      continue
    }
    const record =
      value instanceof Property
        ? { typical: value, low: value.lowest, high: value.highest, source: value.source, conditions: value.conditions }
        : value
    const property = readProperty(name, record as PropertyRecord<Kind>, name, issues)
    if (property === undefined) continue
    const issue = impossible(head.family ?? material.family, name, property, name)
    if (issue === undefined) made[name] = property
    else issues.push(issue)
  }
  const doubts = [...(material.doubts ?? []), ...doubtsAbout(material, made)]
  const merged = { ...material, ...head, ...made, ...(doubts.length > 0 ? { doubts } : {}) } as Material
  checkOrder(merged, issues)
  if (issues.length > 0) throw new InputError(`withProperties(${show(material.name)})`, issues)
  return merged
}
