import type * as z from 'zod'
import { materialNames } from '../../materials/index.js'
import { InputError, type Issue, nearName, Quantity, show } from '../../units/index.js'
import { readDocument } from '../document/read.js'
import { acceptedBy, meant, placeAt, zodOf } from '../schema/index.js'
import { type LegWish, type LegWishData, wishFields } from './wish-fields.js'

const WHERE = 'describeWish'
// Made at the first wish.
let schema: ReturnType<typeof zodOf> | undefined

/**
 * Reads a wish: an object, or JSON or YAML text of about ten lines.
 *
 * Throws one `InputError` that lists every mistake: its line and column, what was given, what is accepted, and the near name of a misspelt one.
 */
export function describeWish(wish: LegWish | LegWishData | string): LegWishData {
  const { data, placeOf } = readDocument(WHERE, wish)
  schema ??= zodOf(wishFields)
  const result = schema.safeParse(data)
  const issues = result.success ? contradictions(result.data as LegWishData) : result.error.issues.flatMap((issue) => issuesOf(issue, data))
  if (issues.length > 0)
    throw new InputError(
      WHERE,
      issues.map((issue) => ({ ...issue, ...placeOf(issue.path) })),
    )
  return result.data as LegWishData
}

/** Names of parts and loads that a leg may have and no proposal has. */
const NOT_PROPOSED =
  /^(joints?|links?|drives?|belts?|gears?|gearbox(es)?|through|rods?|springs?|counterweights?|bearings?|pivots?|pins?|shafts?|plates?|controllers?|sidewaysHip|gaits|lateral|loadCases)$/

const reasonOf = (key: string): string =>
  NOT_PROPOSED.test(key)
    ? 'is not proposed: a proposal has cord drives at hip and knee, the motor of the knee on the upper link, plain pins, and no springs or counterweights; add it to the document of a proposed leg'
    : 'is not a field'

function issuesOf(issue: z.core.$ZodIssue, document: unknown): Issue[] {
  const path = issue.path.map(String).join('.')
  const given = valueAt(document, issue.path)
  const { leaf, names } = placeAt(wishFields, document, issue.path)
  if (issue.code === 'unrecognized_keys')
    return issue.keys.map((key) => {
      const near = nearName(key, names ?? [])
      const hint = near === undefined ? '' : `, did you mean ${near}?`
      return {
        path: path === '' ? key : `${path}.${key}`,
        given: show((given as Record<string, unknown> | undefined)?.[key]),
        accepts: `${reasonOf(key)}${hint}; fields here are ${(names ?? []).join(', ')}`,
      }
    })
  const accepts = given === undefined && leaf !== undefined ? acceptedBy(leaf) : issue.code === 'custom' ? issue.message : undefined
  const section = names === undefined ? 'must be a section with names of your own' : `must be a section or a list of ${names.join(', ')}`
  return [{ path: path === '' ? 'wish' : path, given: show(given), accepts: accepts ?? (leaf === undefined ? section : acceptedBy(leaf)) }]
}

/** The value at a path; the places of a list that stands for named fields have the names' order. */
function valueAt(document: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>((at, step, depth) => {
    if (typeof at !== 'object' || at === null) return undefined
    const names = Array.isArray(at) ? placeAt(wishFields, document, path.slice(0, depth)).names : undefined
    return (at as Record<PropertyKey, unknown>)[names === undefined ? step : names.indexOf(String(step))]
  }, document)
}

/** Contradictions between fields that are each acceptable, found before the search. */
function contradictions(wish: LegWishData): Issue[] {
  const issues: Issue[] = []
  const report = (path: string, given: unknown, accepts: string) => issues.push({ path, given: show(given), accepts })
  for (const list of ['motors', 'cords', 'plastics'] as const)
    if (Object.keys(wish[list]).length === 0) report(list, wish[list], 'must have at least one entry')
  const known = materialNames()
  for (const name of Object.keys(wish.plastics))
    if (!known.includes(name)) report(`plastics.${name}`, name, `must be the name of a material of the table${meant(name, known)}`)
  const { hot, cold } = wish.place
  if (hot.si < cold.si) report('place.hot', hot, `must be above cold (${cold})`)
  const longest = wish.printer.bed.si - BED_MARGIN
  const needed = Math.max(wish.walk.stepLength.si, wish.trot?.stepLength.si ?? 0) / 2
  if (longest < needed)
    report(
      'printer.bed',
      wish.printer.bed,
      `must be at least ${new Quantity(needed + BED_MARGIN, 'length')}, for links of half the step and their eyes`,
    )
  return issues
}

/** Length of a printed link beyond its joint axes: an eye at either end. */
export const BED_MARGIN = 0.04
