import type * as z from 'zod'
import { InputError, type Issue, nearName, Quantity, show } from '../../units/index.js'
import { contradictoryRelations } from '../plausibility/index.js'
import { acceptedBy, defaultsOf, exactlyOneIssues, type LegDefault, meant, placeAt, salvaged, zodOf } from '../schema/index.js'
import { displayedLeg } from './display.js'
import { earlierPath } from './earlier-paths.js'
import { DOCUMENT_VERSION, documentFields, type LegData, type LegSpecification } from './fields.js'
import type { Leg } from './leg.js'
import { migrate, versionOf } from './migrate.js'
import type { PartlyLeg } from './partly.js'
import { readDocument } from './read.js'
import { referenceIssues } from './references.js'
import { bearingRules } from './rules-of-bearings.js'
import { driveRules } from './rules-of-drives.js'
import { fitRules } from './rules-of-fits.js'
import { loadRules } from './rules-of-loads.js'
import { materialRules } from './rules-of-materials.js'
import { metalPlateRules } from './rules-of-metal-plates.js'
import { partRules } from './rules-of-parts.js'
import { springRules } from './rules-of-springs.js'

export type { Leg } from './leg.js'

// Made at the first document: it takes half as long as importing the library.
let schema: ReturnType<typeof zodOf> | undefined

/**
 * Reads the document of a leg, of this version or an older one: an object, or JSON or YAML text. A leg that was described before goes back in as it
 * is. Quantities are text with a unit (`'165 mm'`), pairs or `Quantity`; materials, threads, bearings and cords are named by their designation.
 *
 * Throws one `InputError` that lists every mistake: its line, what was given, what is accepted, and the near name of a misspelt one.
 * Contradictions between sections (pulleys that overlap, a boss smaller than its pin, a foot that cannot reach) are in the same list.
 */
export function describeLeg(
  /** The document as an object, or its text in YAML or JSON. */
  specification: LegSpecification | string,
): Leg {
  const where = 'describeLeg'
  const { data: read, placeOf } = readDocument(where, specification)
  const { defaults: earlier, ...given } = migrate(read)
  // Messages name the fields as the builder wrote them.
  const written = versionOf(read) === DOCUMENT_VERSION ? (path: string) => path : earlierPath
  schema ??= zodOf(documentFields)
  const result = schema.safeParse(given)
  const issues = result.success ? [] : withoutDuplicates(result.error.issues.flatMap((issue) => issuesOf(issue, given)))
  const data = (result.success ? result.data : salvaged(documentFields, given)) as PartlyLeg
  // A contradiction that follows from a field that is already in the list would only repeat it.
  const listed = new Set(issues.map(({ path }) => path))
  const rules = [
    ...exactlyOneIssues(documentFields, given),
    ...referenceIssues(data),
    ...contradictions(data, given, keptDefaults(earlier)),
  ]
  issues.push(...rules.filter(({ path }) => !listed.has(path)))
  if (issues.length > 0)
    throw new InputError(
      where,
      eachOnce(issues.map((issue) => ({ ...issue, path: written(issue.path) }))).map((issue) => ({ ...issue, ...placeOf(issue.path) })),
    )
  return displayedLeg({ ...(data as LegData), defaults: [...keptDefaults(earlier), ...defaultsOf(documentFields, given)] })
}

/** Values of a document that contradict each other. `given` is the document as it was written, `earlier` lists what an earlier reading filled in. */
export function contradictions(data: PartlyLeg, given: unknown, earlier: readonly LegDefault[]): Issue[] {
  const found: Issue[] = []
  const report = (path: string, value: unknown, accepts: string) => found.push({ path, given: shown(value), accepts })
  for (const rule of [driveRules, partRules, fitRules, bearingRules, springRules, loadRules]) rule(data, report)
  materialRules(data, report)
  metalPlateRules(data, report, given, new Set(earlier.map(({ path }) => path)))
  const named = new Set(found.map(({ path }) => path))
  contradictoryRelations(data, report, { named, defaults: () => [...earlier, ...defaultsOf(documentFields, given)] })
  return found
}

/** A value that was read, as the document would write it. */
const shown = (value: unknown): string => (value instanceof Quantity ? `${value}` : show(value))

/** What version 3 had once may be in several places now; its slip is one message. */
const eachOnce = (issues: readonly Issue[]): Issue[] => [
  ...new Map(issues.map((issue) => [`${issue.path} ${issue.given} ${issue.accepts}`, issue])).values(),
]

/** The defaults of a leg that was described before and is read again. */
const keptDefaults = (earlier: unknown): LegDefault[] =>
  Array.isArray(earlier)
    ? earlier.filter(
        (entry): entry is LegDefault =>
          typeof entry?.path === 'string' && typeof entry?.value === 'string' && typeof entry?.why?.where === 'string',
      )
    : []

type Found = Issue & { readonly means?: string }

/** Unknown fields of one section that are listed one by one. */
const MAX_UNKNOWN = 19

/** One issue of the schema as the library's own: path, what was given, what is accepted. */
function issuesOf(issue: z.core.$ZodIssue, document: unknown): Found[] {
  const path = pathText(issue.path)
  const given = issue.path.reduce<unknown>(
    (at, step) => (typeof at === 'object' && at !== null ? (at as Record<PropertyKey, unknown>)[step] : undefined),
    document,
  )
  const { leaf, names } = placeAt(documentFields, document, issue.path)
  const issueOf = (accepts: string): Found[] => [{ path: path === '' ? 'specification' : path, given: show(given), accepts }]
  if (issue.code === 'unrecognized_keys') {
    const more = issue.keys.length - MAX_UNKNOWN
    const tail = { path: path === '' ? 'specification' : path, given: `a section with ${more} more unknown fields`, accepts: 'remove them' }
    return [...issue.keys.slice(0, MAX_UNKNOWN).map((key) => surplus(path, key, given, names ?? [])), ...(more > 0 ? [tail] : [])]
  }
  if (issue.code === 'custom') return issueOf(given === undefined && leaf !== undefined ? acceptedBy(leaf) : issue.message)
  if (issue.code === 'invalid_union') return issueOf(variantWords(variantNames(issue), given))
  if (issue.code === 'invalid_key') return [{ path, given: show(issue.path.at(-1)), accepts: 'must be a name that starts with a letter' }]
  if (issue.code === 'too_small') return issueOf('must have at least one entry')
  if (issue.code === 'too_big') return issueOf('has too many entries')
  if (leaf !== undefined) return issueOf(acceptedBy(leaf))
  return issueOf(names === undefined ? 'must be a list or a section' : `must be a section with ${names.join(', ')}`)
}

/** The words that name the variants of a section. */
function variantNames(issue: z.core.$ZodIssueInvalidUnion): string[] {
  const options = (issue as { options?: readonly unknown[] }).options
  return Array.isArray(options) ? options.map(String) : []
}

/** What the trade calls kinds that have another name here. */
const TRADE_KINDS: Readonly<Record<string, string>> = { cable: 'cord', capstan: 'cord', rope: 'cord', spur: 'gear', planetary: 'gearbox' }
const variantWords = (names: readonly string[], given: unknown): string => {
  const kind = typeof given === 'string' ? given : ''
  const known = TRADE_KINDS[kind.toLowerCase()]
  const hint = known !== undefined && names.includes(known) ? `; did you mean ${known}?` : meant(kind, names)
  return `must be one of ${names.join(', ')}${hint}`
}

/** A misspelt field is also missing under its right name; only the first gets a message. */
function withoutDuplicates(issues: readonly Found[]): Issue[] {
  const meantPaths = new Set(issues.map(({ means }) => means))
  return issues
    .filter(({ path, given }) => given !== 'missing' || !meantPaths.has(path))
    .map(({ path, given, accepts }) => ({ path, given, accepts }))
}

/** Common names of fields that have another name here. */
const TRADE_NAMES: Readonly<Record<string, string>> = {
  kv: 'speedConstant',
  weight: 'mass',
  resistance: 'terminalResistance',
  inductance: 'phaseInductance',
  preload: 'pretension',
  tension: 'pretension',
}

function surplus(path: string, key: string, section: unknown, names: readonly string[]): Found {
  const given = (section as Record<string, unknown>)[key]
  const known = TRADE_NAMES[key.toLowerCase()]
  const near = known !== undefined && names.includes(known) ? known : nearName(key, names)
  const hint = near === undefined ? '' : `, did you mean ${near}?`
  const prefix = path === '' ? '' : `${path}.`
  return {
    path: prefix + key,
    given: given === undefined ? 'undefined' : show(given),
    accepts: `is not a field${hint}; fields here are ${names.join(', ')}`,
    ...(near === undefined ? {} : { means: prefix + near }),
  }
}

const pathText = (path: readonly PropertyKey[]) =>
  path.reduce<string>(
    (text, step) => (typeof step === 'number' ? `${text}[${step}]` : text === '' ? String(step) : `${text}.${String(step)}`),
    '',
  )
