import { NoResultError } from '../formula/index.js'
import { type Kind, Quantity } from '../units/index.js'
import type { SearchRange, Wanted } from './solve-range.js'
import type { ScanResult } from './solve-scan.js'

/** Result of `solveFor`. */
export interface Solution<K extends Kind> {
  /** `solved` by one value, by `several` values, by every value of an `interval`, or by `none` in the range searched. */
  readonly state: 'solved' | 'several' | 'interval' | 'none'
  /** Every single value that gives the result, ascending. */
  readonly roots: readonly Quantity<K>[]
  /** Ranges of which every value gives the result, ascending. Their ends are the ends of the search where they reach there. */
  readonly intervals: readonly (readonly [Quantity<K>, Quantity<K>])[]
  /** The smallest solution. Throws a `NoResultError` that names what was searched where there is none. */
  readonly value: Quantity<K>
  /** One sentence: what was found, or where and how it was searched and which results the range gives. */
  readonly message: string
}

/** Everything that a solution is made from. */
interface Search<K extends Kind> extends ScanResult {
  readonly id: string
  readonly path: string
  readonly kind: K
  readonly target: Wanted
  readonly range: SearchRange
  /** Smallest and largest result met. */
  readonly least: number
  readonly most: number
}

/** The most values that a message lists. */
const MAX_LISTED = 6

/** The answer in quantities and words. */
export function solution<K extends Kind>(search: Search<K>): Solution<K> {
  const { kind } = search
  const roots = search.roots.map((root) => new Quantity(root, kind))
  const intervals = search.intervals.map(([a, b]) => [new Quantity(a, kind), new Quantity(b, kind)] as const)
  const first = [...roots, ...intervals.map(([a]) => a)].reduce<Quantity<K> | undefined>(
    (lowest, each) => (lowest === undefined || each.si < lowest.si ? each : lowest),
    undefined,
  )
  const message = first === undefined ? failure(search) : success(search, roots, intervals)
  return {
    state: first === undefined ? 'none' : intervals.length > 0 ? 'interval' : roots.length === 1 ? 'solved' : 'several',
    roots,
    intervals,
    get value() {
      if (first === undefined) throw new NoResultError(message)
      return first
    },
    message,
  }
}

function success<K extends Kind>(
  { id, path, target }: Search<K>,
  roots: readonly Quantity<K>[],
  intervals: readonly (readonly [Quantity<K>, Quantity<K>])[],
): string {
  const more = roots.length > MAX_LISTED ? ` or ${roots.length - MAX_LISTED} more values` : ''
  const values = roots.length === 0 ? [] : [`${path} = ${roots.slice(0, MAX_LISTED).map(String).join(' or ')}${more}`]
  const ranges = intervals.map(([a, b]) => `every ${path} from ${a} to ${b}`)
  return `${id}: ${[...ranges, ...values].join(', and ')} gives ${text(target.si, target.kind)}`
}

const text = (si: number, kind: Kind) => String(new Quantity(si, kind))

function failure<K extends Kind>({ id, path, kind, target, range, least, most, poles, steps, ratios }: Search<K>): string {
  const what = target.name === '' ? 'the result' : target.name
  const gives =
    least <= most ? `there ${what} runs from ${text(least, target.kind)} to ${text(most, target.kind)}` : `there ${what} is nowhere finite`
  const how = [steps > 0 && `${steps} equal steps`, ratios > 0 && `${ratios} steps of equal ratio`].filter(Boolean).join(' and ')
  const jump = poles[0]
  const doubt =
    !(least <= target.si && target.si <= most) || least === most
      ? ''
      : jump !== undefined
        ? `; it jumps over ${text(target.si, target.kind)} at ${path} = ${text(jump, kind)}`
        : `; two solutions may lie within one step: narrow the range with \`between\`, or raise \`samples\``
  return `${id}: no ${path} between ${text(range.from, kind)} and ${text(range.to, kind)} gives ${text(target.si, target.kind)}; ${gives}${doubt} (searched in ${how})`
}
