import { InputError, type Issue, Quantity, show } from '../../units/index.js'
import { describeLeg, type Leg } from '../specification/describe.js'

/**
 * Fields to change, by path: `{ 'drives.knee.pretension': '220 N', 'bolts.stack.rows[0]': '10 mm', sink: undefined }`. Values are
 * what the specification takes there; `undefined` takes a field out, so that its default comes back.
 */
export type LegChanges = Readonly<Record<string, unknown>>

/**
 * The same leg with some fields changed, read and checked again as a whole.
 *
 * Throws one `InputError` for paths that lead nowhere, and the reader's own for values that it does not accept.
 */
export function withFields(leg: Leg, changes: LegChanges): Leg {
  const issues: Issue[] = []
  let next = leg as unknown as Record<string, unknown>
  const paths = Object.keys(typeof changes === 'object' && changes !== null ? changes : {})
  if (paths.length === 0)
    issues.push({
      path: 'changes',
      given: show(changes),
      accepts: "must name at least one field, such as { 'drives.knee.pretension': '220 N' }",
    })
  for (const path of paths) {
    const changed = put(next, stepsOf(path), (changes as Record<string, unknown>)[path])
    if (changed === undefined || path === 'defaults' || path.startsWith('defaults.'))
      issues.push({ path, given: show(changes[path]), accepts: 'must be the path of a field of the leg, such as drives.knee.pretension' })
    else next = changed as Record<string, unknown>
  }
  if (issues.length > 0) throw new InputError('withFields', issues)
  const stillOpen = leg.defaults.filter(({ path }) => !paths.some((one) => path === one || under(path, one) || under(one, path)))
  return describeLeg({ ...next, defaults: stillOpen } as unknown as Leg)
}

/** The value at a path of a leg. */
export const fieldAt = (leg: Leg, path: string): unknown =>
  stepsOf(path).reduce<unknown>(
    (at, step) => (isRecord(at) && Object.hasOwn(at, step) ? (at as Record<string, unknown>)[step] : undefined),
    leg,
  )

const under = (path: string, section: string) => path.startsWith(`${section}.`) || path.startsWith(`${section}[`)
const stepsOf = (path: string) => path.replaceAll(/\[(\d+)\]/g, '.$1').split('.')
const isRecord = (at: unknown): at is object => typeof at === 'object' && at !== null && !(at instanceof Quantity)

/** A copy with a value put at a place; nothing where the place cannot be reached. */
function put(at: unknown, steps: readonly string[], value: unknown): unknown {
  const [step, ...rest] = steps as [string, ...string[]]
  if (step === '' || step === '__proto__') return undefined
  if (at !== undefined && !isRecord(at)) return undefined
  if (Array.isArray(at) && !(/^\d+$/.test(step) && Number(step) <= at.length)) return undefined
  const inner = at === undefined || !Object.hasOwn(at, step) ? undefined : (at as Record<string, unknown>)[step]
  const next = rest.length === 0 ? value : put(inner, rest, value)
  if (rest.length > 0 && next === undefined) return undefined
  if (Array.isArray(at)) return at.with(Math.min(Number(step), at.length - 1), next).concat(Number(step) === at.length ? [next] : [])
  const { [step]: _, ...others } = (at ?? {}) as Record<string, unknown>
  return next === undefined ? others : { ...others, [step]: next }
}
