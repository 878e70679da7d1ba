import { EVIDENCE_LEVELS, type EvidenceLevel, isPrior, type Property } from '../formula/index.js'
import { InputError, type Issue, issue, type Kind, kindRow, nearName, Quantity, read, refuse, siUnit } from '../units/index.js'
import { doubtsAbout, impossible } from './plausibility.js'
import { type Family, type Material, PROPERTY_KINDS, type PropertyName, propertiesOf, readProperty } from './record.js'
import { checkOrder } from './record-checks.js'
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
  readonly creepTestedHours?: number
  readonly remarks?: readonly string[]
  readonly doubts?: readonly string[]
  readonly properties: { readonly [P in PropertyName]?: PropertyDocument }
}

export const FAMILIES = ['amorphous', 'semicrystalline', 'elastomer', 'metal', 'magnet', 'adhesive'] as const
export const PROCESSES = ['fusedFilament', 'sintered', 'moulded', 'wrought', 'cured'] as const
const NAMES = Object.keys(PROPERTY_KINDS) as PropertyName[]

const isText = (x: unknown): x is string => typeof x === 'string' && x !== ''
const areTexts = (x: unknown) => Array.isArray(x) && x.every((item) => typeof item === 'string')

/** The fields of a document besides its properties: what each must be, and whether it may be absent. */
const HEAD: Readonly<Record<string, { readonly holds: (x: unknown) => boolean; readonly accepts: string; readonly optional?: true }>> = {
  name: { holds: isText, accepts: 'must be text' },
  title: { holds: isText, accepts: 'must be text' },
  aliases: { holds: areTexts, accepts: 'must be a list of texts', optional: true },
  family: { holds: (x) => (FAMILIES as readonly unknown[]).includes(x), accepts: `must be one of ${FAMILIES.join(', ')}` },
  process: { holds: (x) => (PROCESSES as readonly unknown[]).includes(x), accepts: `must be one of ${PROCESSES.join(', ')}` },
  creepTestedHours: {
    holds: (x) => typeof x === 'number' && x > 0 && Number.isFinite(x),
    accepts: 'must be a number of hours above 0',
    optional: true,
  },
  remarks: { holds: areTexts, accepts: 'must be a list of texts', optional: true },
  doubts: { holds: areTexts, accepts: 'must be a list of texts', optional: true },
}
const CURVES = ['strengthCurve', 'modulusCurve'] as const
const FIELDS = [...Object.keys(HEAD), ...CURVES, 'properties', '$schema']

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
  const text = ({ si, low, high, source, conditions, kind }: Property): PropertyDocument => ({
    typical: exactText(kind, si),
    low: exactText(kind, low),
    high: exactText(kind, high),
    source: { level: source.level, where: source.where },
    ...(conditions === '' ? {} : { conditions }),
  })
  const head = [...Object.keys(HEAD), ...CURVES].flatMap((key) => {
    const value = material[key as keyof Material]
    return value === undefined ? [] : [[key, value]]
  })
  return {
    ...Object.fromEntries(head),
    properties: Object.fromEntries(propertiesOf(material).map(([property, value]) => [property, text(value)])),
  } as MaterialDocument
}

const WHERE = 'readMaterial'

const isRecord = (given: unknown): given is Record<string, unknown> => typeof given === 'object' && given !== null && !Array.isArray(given)

/** What else is known of a document's material. */
export interface ReadMaterialOptions {
  /** The material of the table that it is a grade of: values far outside its ranges are listed in `doubts`. Default: none. */
  readonly basedOn?: Material | undefined
}

/**
 * Reads a material from a document (parsed JSON, or its text).
 * Throws one `InputError` that lists every misspelt field, unreadable quantity, typical value outside its range and value that no material of the family has.
 */
export function readMaterial(document: unknown, options: ReadMaterialOptions = {}): Material {
  const given = typeof document === 'string' ? parsed(document) : document
  if (!isRecord(given)) refuse(WHERE, 'document', given, 'must be an object with name, title, family, process, properties')
  const issues: Issue[] = []
  for (const key of Object.keys(given)) if (!FIELDS.includes(key)) issues.push(misspelt(key, FIELDS))
  for (const [key, { holds, accepts, optional }] of Object.entries(HEAD))
    if (!(holds(given[key]) || (optional && given[key] === undefined))) issues.push(issue(key, given[key], accepts))
  const properties = readProperties(given.properties, given.family as Family, issues)
  for (const key of CURVES) if (given[key] !== undefined) checkCurveDocument(key, given[key], issues)
  if (issues.length > 0) throw new InputError(WHERE, issues)
  const { $schema: _, properties: __, ...head } = given
  const doubts = [...((head.doubts ?? []) as string[]), ...(options.basedOn === undefined ? [] : doubtsAbout(options.basedOn, properties))]
  return { ...head, ...properties, ...(doubts.length > 0 ? { doubts } : {}) } as unknown as Material
}

/** The properties of a document, with every issue of theirs. */
function readProperties(given: unknown, family: Family, issues: Issue[]): { readonly [P in PropertyName]?: Property } {
  if (!isRecord(given)) {
    issues.push(issue('properties', given, 'must be an object of properties'))
    return {}
  }
  const properties: Record<string, Property> = {}
  for (const [name, value] of Object.entries(given)) {
    const path = `properties.${name}`
    const made = readPropertyDocument(name, value, path, issues)
    if (made === undefined) continue
    const absurd = impossible(family, name as PropertyName, made, path)
    if (absurd === undefined) properties[name] = made
    else issues.push(absurd)
  }
  checkOrder(properties, issues, 'properties.')
  return properties
}

function readPropertyDocument(name: string, value: unknown, path: string, issues: Issue[]): Property | undefined {
  if (!NAMES.includes(name as PropertyName)) issues.push(misspelt(path, NAMES, name))
  else if (!isRecord(value)) issues.push(issue(path, value, 'must be an object with typical, low, high and source'))
  else {
    const { level, where } = isRecord(value.source) ? value.source : ({} as Record<string, unknown>)
    const { conditions = '' } = value
    if (!isLevel(level)) issues.push(issue(`${path}.source.level`, level, `must be one of ${EVIDENCE_LEVELS.join(', ')}`))
    else if (typeof where !== 'string') issues.push(issue(`${path}.source.where`, where, 'must be text'))
    else if (typeof conditions !== 'string') issues.push(issue(`${path}.conditions`, conditions, 'must be text'))
    else return readProperty(name as PropertyName, value as never, path, issues)
  }
  return undefined
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text) as unknown
  } catch (error) {
    return refuse(WHERE, 'document', text, `must be JSON: ${(error as Error).message}`)
  }
}

const misspelt = (path: string, names: readonly string[], name = path): Issue => {
  const near = nearName(name, names)
  return { path, given: 'unknown', accepts: near === undefined ? `must be one of ${names.join(', ')}` : `did you mean ${near}?` }
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
    issues.push(issue(path, curve, 'must have points [celsius, low, typical, high], a source and conditions'))
    return
  }
  checkCurve(path, curve as unknown as TemperatureCurve, issues)
}

/** How much of a material rests on what nobody measured or read: the share of its values that are priors, and which they are. */
export function priorsOf(material: Material): { readonly share: number; readonly names: readonly PropertyName[] } {
  const all = propertiesOf(material)
  const names = all.filter(([, { source }]) => isPrior(source)).map(([name]) => name)
  return { share: all.length === 0 ? 0 : names.length / all.length, names }
}
