import { type In, InputError, type Issue, type Kind, Quantity, quantity, show } from '../../units/index.js'
import { contradictions, describeLeg, type Leg } from '../document/describe.js'
import { newPlaces, valueAt } from '../document/earlier-paths.js'
import { documentFields } from '../document/fields.js'
import type { LegPath } from '../document/names.js'
import type { PartlyLeg } from '../document/partly.js'
import { placeAt, readable } from '../schema/index.js'

/**
 * Fields to change, by path: `{ 'joints.knee.drive.pretension': '220 N', 'bolts.stack.pattern.distances[0]': '10 mm' }`. Values are
 * what the document takes there; `undefined` takes a field out, so that its default comes back. Paths of version 3
 * (`'drives.knee.pretension'`) are understood for one version.
 */
export type LegChanges = { readonly [P in LegPath]?: unknown } & Readonly<Record<string, unknown>>

/**
 * The same leg with some fields changed, read and checked again as a whole.
 *
 * Throws one `InputError` for paths that lead nowhere, and the reader's own for values that it does not accept.
 */
export function withFields(
  /** The leg, from `describeLeg`. */
  leg: Leg,
  /** New values by path, such as `{ 'joints.knee.drive.pretension': '200 N' }`; `undefined` removes a field. */
  changes: LegChanges,
): Leg {
  const issues: Issue[] = []
  let next = leg as unknown as Record<string, unknown>
  const paths = Object.keys(typeof changes === 'object' && changes !== null ? changes : {})
  if (paths.length === 0)
    issues.push({
      path: 'changes',
      given: show(changes),
      accepts: "must name at least one field, such as { 'joints.knee.drive.pretension': '220 N' }",
    })
  const moved = paths.flatMap((path) => placesOf(leg, path, changes[path]))
  for (const { path, to, value } of moved) {
    const changed = put(next, stepsOf(to), value)
    if (changed === undefined || to === 'defaults' || to.startsWith('defaults.'))
      issues.push({
        path,
        given: show(changes[path]),
        accepts: 'must be the path of a field of the leg, such as joints.knee.drive.pretension',
      })
    else next = changed as Record<string, unknown>
  }
  if (issues.length > 0) throw new InputError('withFields', issues)
  const stillOpen = leg.defaults.filter(({ path }) => !moved.some(({ to: one }) => path === one || under(path, one) || under(one, path)))
  return describeLeg({ ...next, defaults: stillOpen } as unknown as Leg)
}

/**
 * Whether a leg may have another quantity at the path of one: within the limits of the field, and without a contradiction. The answer is that of
 * `withFields`, in a small part of its time. @internal
 */
export function takesQuantity(leg: Leg, path: string, given: unknown): boolean {
  const steps = stepsOf(path)
  const { leaf } = placeAt(documentFields, leg, steps)
  if (!(valueAt(leg, path) instanceof Quantity) || leaf === undefined) return isRead(() => withFields(leg, { [path]: given }))
  const value = readable(leaf, given)
  if (value === undefined) return false
  const changed = put(leg, steps, value) as PartlyLeg
  const open = leg.defaults.filter((entry) => entry.path !== path)
  return contradictions(changed, changed, open).length === 0
}

function isRead(read: () => Leg): boolean {
  try {
    read()
    return true
  } catch (error) {
    if (error instanceof InputError) return false
    throw error
  }
}

/** The value at a path of a leg. A path of version 3 leads to where the field is now. */
export const fieldAt = (leg: Leg, path: string): unknown => valueAt(leg, newPlaces(leg, path)?.[0]?.path ?? path)

/** Where a change goes: at its path, or at the places that a path of version 3 has become. */
function placesOf(leg: Leg, path: string, value: unknown): { path: string; to: string; value: unknown }[] {
  const places = newPlaces(leg, path)
  if (places === undefined || places.length === 0) return [{ path, to: path, value }]
  return places.map(({ path: to, factor, kind }) => ({ path, to, value: scaled(leg, to, value, factor, kind) }))
}

/** A value for a place that holds it with a factor. What cannot be read stays as it is: the reader reports it. */
function scaled(leg: Leg, to: string, value: unknown, factor: number | undefined, kind: Kind | undefined): unknown {
  if (factor === undefined || value === undefined) return value
  const now = valueAt(leg, to)
  const own = kind === undefined ? (now instanceof Quantity ? now.kind : undefined) : 'count'
  if (own === undefined) return value
  try {
    return new Quantity(factor * quantity(own as 'count', value as In<'count'>).si, kind ?? own)
  } catch {
    return value
  }
}

const under = (path: string, section: string) => path.startsWith(`${section}.`) || path.startsWith(`${section}[`)
const stepsOf = (path: string) => path.replaceAll(/\[(\d+)\]/g, '.$1').split('.') as [string, ...string[]]
const isRecord = (at: unknown): at is object => typeof at === 'object' && at !== null && !(at instanceof Quantity)

/** Whether a step leads into something: a field of a record, or an item of a list or the place after its last. */
const leadsInto = (at: unknown, step: string): boolean =>
  step !== '' &&
  step !== '__proto__' &&
  (at === undefined || isRecord(at)) &&
  (!Array.isArray(at) || (/^\d+$/.test(step) && Number(step) <= at.length))

/** A copy with a value put at a place; nothing where the place cannot be reached. */
function put(at: unknown, [step, ...rest]: readonly [string, ...string[]], value: unknown): unknown {
  if (!leadsInto(at, step)) return undefined
  const inner = at === undefined || !Object.hasOwn(at as object, step) ? undefined : (at as Record<string, unknown>)[step]
  const next = rest.length === 0 ? value : put(inner, rest as [string, ...string[]], value)
  if (rest.length > 0 && next === undefined) return undefined
  if (Array.isArray(at)) return at.with(Math.min(Number(step), at.length - 1), next).concat(Number(step) === at.length ? [next] : [])
  const { [step]: _, ...others } = (at ?? {}) as Record<string, unknown>
  return next === undefined ? others : { ...others, [step]: next }
}
