import { EVIDENCE_LEVELS, type EvidenceLevel, isPrior, type Property } from '../formula/index.js'
import { InputError, type Issue, type Kind, kindRow, nearName, Quantity, read, show, siUnit, unitNames } from '../units/index.js'
import { checkOrder, type Material, PROPERTY_KINDS, type PropertyName, propertiesOf, readProperty } from './record.js'
import { checkCurve, type TemperatureCurve } from './temperature-curve.js'

/** One property as a document holds it: quantities as text. */
export interface PropertyDocument {
  readonly typical: string
  readonly low: string
  readonly high: string
  readonly source: { readonly level: EvidenceLevel; readonly where: string }
  readonly conditions?: string
}

/** A material as plain data, for a JSON file. */
export interface MaterialDocument {
  readonly name: string
  readonly title: string
  readonly aliases?: readonly string[]
  readonly family: string
  readonly process: string
  readonly strengthCurve?: TemperatureCurve
  readonly modulusCurve?: TemperatureCurve
  readonly remarks?: readonly string[]
  readonly properties: { readonly [P in PropertyName]?: PropertyDocument }
}

const FAMILIES = ['amorphous', 'semicrystalline', 'elastomer', 'metal', 'magnet', 'adhesive']
const PROCESSES = ['fusedFilament', 'sintered', 'moulded', 'wrought', 'cured']
const FIELDS = ['name', 'title', 'aliases', 'family', 'process', 'strengthCurve', 'modulusCurve', 'remarks', 'properties', '$schema']
const NAMES = Object.keys(PROPERTY_KINDS) as PropertyName[]

/** A value as text that reads back to exactly the same number, in the unit it is usually printed in where that is possible. */
function exactText(kind: Kind, si: number): string {
  for (const unit of kindRow(kind).show.toReversed()) {
    const value = (new Quantity(si, kind).in as (u: string) => number).call(new Quantity(si, kind), unit)
    const text = `${Number(value.toPrecision(12))} ${unit}`
    if (Math.abs(value) >= 0.1 && Math.abs(value) < 1e5 && read(kind, text) === si) return text
  }
  return `${si} ${siUnit(kind)}`
}

/** A material as plain data; `readMaterial` gives back exactly the same numbers. */
export function writeMaterial(material: Material): MaterialDocument {
  const { name, title, aliases, family, process, strengthCurve, modulusCurve, remarks } = material
  const text = ({ si, low, high, source, conditions, kind }: Property): PropertyDocument => ({
    typical: exactText(kind, si),
    low: exactText(kind, low),
    high: exactText(kind, high),
    source: { level: source.level, where: source.where },
    ...(conditions === '' ? {} : { conditions }),
  })
  return {
    name,
    title,
    ...(aliases === undefined ? {} : { aliases }),
    family,
    process,
    ...(strengthCurve === undefined ? {} : { strengthCurve }),
    ...(modulusCurve === undefined ? {} : { modulusCurve }),
    ...(remarks === undefined ? {} : { remarks }),
    properties: Object.fromEntries(propertiesOf(material).map(([property, value]) => [property, text(value)])),
  }
}

const isRecord = (given: unknown): given is Record<string, unknown> => typeof given === 'object' && given !== null && !Array.isArray(given)

/**
 * Reads a material from a document (parsed JSON, or its text).
 * Throws one `InputError` that lists every misspelt field, unreadable quantity, typical value outside its range and value that cannot be.
 */
export function readMaterial(document: unknown): Material {
  const where = 'readMaterial'
  const given = typeof document === 'string' ? parsed(document) : document
  if (!isRecord(given))
    throw new InputError(where, [
      { path: 'document', given: show(given), accepts: 'must be an object with name, title, family, process, properties' },
    ])
  const issues: Issue[] = []
  for (const key of Object.keys(given)) if (!FIELDS.includes(key)) issues.push(misspelt(key, FIELDS))
  for (const key of ['name', 'title'])
    if (typeof given[key] !== 'string' || given[key] === '') issues.push({ path: key, given: show(given[key]), accepts: 'must be text' })
  oneOf(given, 'family', FAMILIES, issues)
  oneOf(given, 'process', PROCESSES, issues)
  for (const key of ['aliases', 'remarks'])
    if (given[key] !== undefined && !(Array.isArray(given[key]) && (given[key] as unknown[]).every((item) => typeof item === 'string')))
      issues.push({ path: key, given: show(given[key]), accepts: 'must be a list of texts' })
  const properties: Record<string, Property> = {}
  if (!isRecord(given.properties))
    issues.push({ path: 'properties', given: show(given.properties), accepts: 'must be an object of properties' })
  else
    for (const [name, value] of Object.entries(given.properties)) {
      const path = `properties.${name}`
      if (!NAMES.includes(name as PropertyName)) issues.push(misspelt(path, NAMES, name))
      else if (!isRecord(value)) issues.push({ path, given: show(value), accepts: 'must be an object with typical, low, high and source' })
      else {
        const source = isRecord(value.source) ? value.source : {}
        if (!isLevel(source.level))
          issues.push({ path: `${path}.source.level`, given: show(source.level), accepts: `must be one of ${EVIDENCE_LEVELS.join(', ')}` })
        else {
          const made = readProperty(name as PropertyName, value as never, path, issues)
          if (made !== undefined) properties[name] = made
        }
      }
    }
  checkOrder(properties, issues, 'properties.')
  for (const key of ['strengthCurve', 'modulusCurve']) if (given[key] !== undefined) checkCurveDocument(key, given[key], issues)
  if (issues.length > 0) throw new InputError(where, issues)
  const { $schema: _, properties: __, ...head } = given
  return { ...head, ...properties } as unknown as Material
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text) as unknown
  } catch (error) {
    throw new InputError('readMaterial', [{ path: 'document', given: show(text), accepts: `must be JSON: ${(error as Error).message}` }])
  }
}

const misspelt = (path: string, names: readonly string[], name = path): Issue => {
  const near = nearName(name, names)
  return { path, given: 'unknown', accepts: near === undefined ? `must be one of ${names.join(', ')}` : `did you mean ${near}?` }
}

function oneOf(given: Record<string, unknown>, key: string, accepted: readonly string[], issues: Issue[]): void {
  if (!accepted.includes(given[key] as string))
    issues.push({ path: key, given: show(given[key]), accepts: `must be one of ${accepted.join(', ')}` })
}

const isLevel = (level: unknown) => EVIDENCE_LEVELS.includes(level as EvidenceLevel)

function checkCurveDocument(path: string, curve: unknown, issues: Issue[]): void {
  const points = isRecord(curve) ? curve.points : undefined
  const sound =
    Array.isArray(points) &&
    points.length >= 2 &&
    points.every((p) => Array.isArray(p) && p.length === 4 && p.every((x) => typeof x === 'number' && Number.isFinite(x))) &&
    isRecord(curve) &&
    isRecord(curve.source) &&
    isLevel(curve.source.level) &&
    typeof curve.conditions === 'string'
  if (!sound) {
    issues.push({
      path,
      given: show(curve),
      accepts: 'must have points [celsius, low, typical, high], a source and conditions',
    })
    return
  }
  checkCurve(path, curve as unknown as TemperatureCurve, issues)
}

/** The JSON Schema (draft 2020-12) of a material document, for editors that complete and check while it is written. */
export function materialJsonSchema(): Record<string, unknown> {
  const escaped = (text: string) => text.replaceAll(/[.*+?^${}()|[\]\\/]/g, '\\$&')
  const quantityOf = (kind: Kind) => ({
    type: 'string',
    pattern: `^[+-]?(\\d+\\.?\\d*|\\.\\d+)([eE][+-]?\\d+)? (${unitNames(kind).map(escaped).join('|')})$`,
  })
  const text = { type: 'string', minLength: 1 }
  const source = {
    type: 'object',
    properties: { level: { enum: EVIDENCE_LEVELS }, where: text },
    required: ['level', 'where'],
    additionalProperties: false,
  }
  const propertyOf = (kind: Kind) => ({
    type: 'object',
    properties: { typical: quantityOf(kind), low: quantityOf(kind), high: quantityOf(kind), source, conditions: { type: 'string' } },
    required: ['typical', 'low', 'high', 'source'],
    additionalProperties: false,
  })
  const point = { type: 'array', items: { type: 'number' }, minItems: 4, maxItems: 4 }
  const curve = {
    type: 'object',
    properties: { points: { type: 'array', items: point, minItems: 2 }, source, conditions: { type: 'string' } },
    required: ['points', 'source', 'conditions'],
    additionalProperties: false,
  }
  return {
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    title: 'material',
    type: 'object',
    properties: {
      $schema: { type: 'string' },
      name: text,
      title: text,
      aliases: { type: 'array', items: text },
      family: { enum: FAMILIES },
      process: { enum: PROCESSES },
      strengthCurve: curve,
      modulusCurve: curve,
      remarks: { type: 'array', items: text },
      properties: {
        type: 'object',
        properties: Object.fromEntries(NAMES.map((name) => [name, propertyOf(PROPERTY_KINDS[name])])),
        additionalProperties: false,
      },
    },
    required: ['name', 'title', 'family', 'process', 'properties'],
    additionalProperties: false,
  }
}

/** How much of a material rests on what nobody measured or read: the share of its values that are priors, and which they are. */
export function priorsOf(material: Material): { readonly share: number; readonly names: readonly PropertyName[] } {
  const all = propertiesOf(material)
  const names = all.filter(([, { source }]) => isPrior(source)).map(([name]) => name)
  return { share: all.length === 0 ? 0 : names.length / all.length, names }
}
