import { type PropertyRecord, property, type Source } from '../../formula/index.js'
import { doubtsAbout, type Material, materialByName, PROPERTY_KINDS, type PropertyName } from '../../materials/index.js'
import { type In, InputError, type Kind, nearName, show } from '../../units/index.js'
import type { OwnMaterial } from './field.js'
import { Rejection } from './rejection.js'

const NAMES = Object.keys(PROPERTY_KINDS)

const materials = new WeakMap<object, Material>()

/** The material of an own record; made once for each record. */
export function materialFrom(record: OwnMaterial): Material {
  let known = materials.get(record)
  if (known === undefined) {
    known = madeOf(record)
    materials.set(record, known)
  }
  return known
}

/** A record for a material that is already made: what a study puts in for a value of the table. */
export function ownRecordOf(material: Material): OwnMaterial {
  const record = { basedOn: material.name } as OwnMaterial
  materials.set(record, material)
  return record
}

/** Symbols of the trade for properties. */
const SYMBOLS: Readonly<Record<string, PropertyName>> = { E: 'modulus', nu: 'poissonRatio', rho: 'density', CTE: 'thermalExpansion' }

/** The property that a name means, or those that end with it, such as tensileStrength for strength; otherwise all properties. */
function meantProperty(name: string): string {
  const ending = NAMES.filter((key) => key.endsWith(name.charAt(0).toUpperCase() + name.slice(1)))
  const near = SYMBOLS[name] ?? (ending.length > 0 ? ending.join(' or ') : nearName(name, NAMES))
  return near === undefined ? `; its properties are ${NAMES.join(', ')}` : `, did you mean ${near}?`
}

function madeOf({ basedOn, ...values }: OwnMaterial): Material {
  if (typeof basedOn !== 'string') throw new Rejection('must say which material of the table it is basedOn')
  const base = materialByName(basedOn)
  const problems: string[] = []
  const properties: Record<string, unknown> = {}
  for (const [name, value] of Object.entries(values)) {
    if (!NAMES.includes(name)) {
      problems.push(`${name} is not a property of a material${meantProperty(name)}`)
      continue
    }
    try {
      const made = property(PROPERTY_KINDS[name as PropertyName] as Kind, recordOf(value))
      properties[name] = made
      // A bare value far outside the table is a slip more often than a discovery: it must come with its range and source.
      const doubts = typeof value === 'string' ? doubtsAbout(base, { [name]: made }) : []
      problems.push(...doubts.map((doubt) => `${doubt}; if it is right, give typical, low, high and source`))
    } catch (error) {
      if (!(error instanceof InputError)) throw error
      problems.push(...error.issues.map(({ path, given, accepts }) => `${name}.${path} is ${given}, ${accepts}`))
    }
  }
  if (problems.length > 0) throw new Rejection(problems.join('; '))
  return { ...base, ...properties }
}

function recordOf(value: unknown): PropertyRecord<Kind> {
  const own = (text: unknown): Source => ({ level: 'measured', where: `own measurement${typeof text === 'string' ? `: ${text}` : ''}` })
  if (typeof value === 'object' && value !== null && !Array.isArray(value)) {
    const { typical, low, high, source, conditions } = value as Record<string, unknown>
    return { typical, low, high, source: own(source), conditions: typeof conditions === 'string' ? conditions : '' } as PropertyRecord<Kind>
  }
  if (typeof value !== 'string' && typeof value !== 'number')
    throw new Rejection(`must be a quantity or { typical, low, high, source }, not ${show(value)}`)
  return { typical: value as In<Kind>, low: value as In<Kind>, high: value as In<Kind>, source: own(undefined) } as PropertyRecord<Kind>
}
