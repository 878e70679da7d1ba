import type * as z from 'zod'
import { InputError, type Issue, nearName, show } from '../../units/index.js'
import { contradictions, type Partly } from './contradictions.js'
import { migrate } from './migrate.js'
import { readDocument } from './read.js'
import { type LegData, type LegSpecification, legSchema } from './schema.js'
import { materialProblem } from './tables.js'
import { defaultsOf, type LegDefault, placeOf, referencesOf, salvaged } from './walk.js'

/**
 * One leg as it was read: every field of the specification as a quantity, word or number, those that the document left open included.
 * It is plain data: change a field by describing a new leg (`{ ...leg, robot: { ...leg.robot, mass: '12 kg' } }` goes back in as it is).
 */
export type Leg = LegData & {
  /** What the document left open: where, which value was taken, and why. */
  readonly defaults: readonly LegDefault[]
}

/**
 * Reads the specification of a leg: an object, or JSON or YAML text. Quantities are text with a unit (`'165 mm'`), pairs or `Quantity`;
 * materials, threads, bearings and cords are named by their designation.
 *
 * Throws one `InputError` that lists every mistake: where it stands, what was given, what is accepted, and the near name of a misspelt
 * one. Contradictions between sections (pulleys that overlap, a boss smaller than its pin, a foot that cannot reach) are in the same list.
 */
export function describeLeg(specification: LegSpecification | string | Leg): Leg {
  const where = 'describeLeg'
  const { data: read, placeOf: lineOf } = readDocument(where, specification)
  const document = migrate(read)
  const { defaults: earlier, ...given } = document as Record<string, unknown>
  const result = legSchema.safeParse(given)
  const issues = result.success ? [] : withoutEchoes(result.error.issues.flatMap((issue) => issuesOf(issue, given)))
  const data = (result.success ? result.data : salvaged(legSchema, given)) as Partly<LegData>
  // A contradiction that follows from a field that is already in the list would only repeat it.
  const listed = new Set(issues.map(({ path }) => path))
  issues.push(...unknownMaterials(data))
  issues.push(...contradictions(data).filter(({ path }) => !listed.has(path)))
  if (issues.length > 0)
    throw new InputError(
      where,
      issues.map((issue) => ({ ...issue, ...lineOf(issue.path) })),
    )
  return { ...(data as LegData), defaults: [...stillTaken(earlier), ...defaultsOf(legSchema, given)] }
}

function unknownMaterials(data: Partly<LegData>): Issue[] {
  const own = Object.keys(data?.materials ?? {})
  return referencesOf(legSchema, data, 'material').flatMap(({ path, name }) => {
    const problem = materialProblem(name, own)
    return problem === undefined ? [] : [{ path, given: show(name), accepts: problem }]
  })
}

/** The defaults of a leg that was described before and is read again. */
const stillTaken = (earlier: unknown): LegDefault[] =>
  Array.isArray(earlier)
    ? earlier.filter(
        (one): one is LegDefault => typeof one?.path === 'string' && typeof one?.value === 'string' && typeof one?.why?.where === 'string',
      )
    : []

/** Unknown fields of one section that are listed one by one. */
const MOST_UNKNOWN = 19

/** One issue of the document reader as the library's own: path, what was given, what is accepted. */
function issuesOf(issue: z.core.$ZodIssue, document: unknown): (Issue & { means?: string })[] {
  const path = pathText(issue.path)
  const given = issue.path.reduce<unknown>(
    (at, step) => (typeof at === 'object' && at !== null ? (at as Record<PropertyKey, unknown>)[step] : undefined),
    document,
  )
  const { meta, names } = placeOf(legSchema, issue.path)
  if (issue.code === 'unrecognized_keys') {
    const more = issue.keys.length - MOST_UNKNOWN
    return [
      ...issue.keys.slice(0, MOST_UNKNOWN).map((key) => surplus(path, key, given, names ?? [])),
      ...(more > 0
        ? [{ path: path === '' ? 'specification' : path, given: `a section with ${more} more unknown fields`, accepts: 'remove them' }]
        : []),
    ]
  }
  if (issue.code === 'custom')
    return [{ path, given: show(given), accepts: given === undefined ? (meta?.accepts ?? issue.message) : issue.message }]
  if (issue.code === 'invalid_key') return [{ path, given: show(issue.path.at(-1)), accepts: 'must be a name that starts with a letter' }]
  if (issue.code === 'too_small') return [{ path, given: show(given), accepts: 'must have at least one entry' }]
  if (issue.code === 'too_big') return [{ path, given: show(given), accepts: 'has too many entries' }]
  return [
    {
      path,
      given: show(given),
      accepts: meta?.accepts ?? (names === undefined ? 'must be a list or a section' : `must be a section with ${names.join(', ')}`),
    },
  ]
}

/** A misspelt field is also missing under its right name: one slip, one message. */
function withoutEchoes(issues: readonly (Issue & { readonly means?: string })[]): Issue[] {
  const meantPaths = new Set(issues.map(({ means }) => means))
  return issues
    .filter(({ path, given }) => given !== 'missing' || !meantPaths.has(path))
    .map(({ path, given, accepts }) => ({ path, given, accepts }))
}

function surplus(path: string, key: string, section: unknown, names: readonly string[]): Issue & { means?: string } {
  const given = (section as Record<string, unknown>)[key]
  const missing = names.filter((name) => (section as Record<string, unknown>)[name] === undefined)
  const near = nearName(key, missing) ?? nearName(key, names)
  const hint = near === undefined ? '' : `, did you mean ${near}?`
  const prefix = path === '' ? '' : `${path}.`
  const accepts = `is not a field${hint}; fields here are ${names.join(', ')}`
  return { path: prefix + key, given: show(given), accepts, ...(near === undefined ? {} : { means: prefix + near }) }
}

const pathText = (path: readonly PropertyKey[]) =>
  path.reduce<string>(
    (text, step) => (typeof step === 'number' ? `${text}[${step}]` : text === '' ? String(step) : `${text}.${String(step)}`),
    '',
  )
