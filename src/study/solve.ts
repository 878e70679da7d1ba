import { type AnyFormula, type Formula, type Inputs, NoResultError, type Output, recordReader } from '../formula/index.js'
import { findRoots } from '../numeric/index.js'
import { type In, InputError, type Issue, type Kind, Quantity, read, readAt, show } from '../units/index.js'
import {
  answering,
  type KindAt,
  requirementsOf,
  type ScalarPath,
  scalarAt,
  scalarOutputs,
  setAt,
  type Target,
  untyped,
  type Without,
  withValueAt,
} from './path.js'

/** How `solveFor` searches. */
export interface SolveOptions<K extends Kind> {
  /** Search only between these two values. Default: the input's own limits, or all magnitudes of its SI unit from 1e-30 to 1e15. */
  readonly between?: readonly [In<K>, In<K>]
  /** Parts the range is cut into; two solutions in one part are missed. Default 400. */
  readonly samples?: number
}

/** What `solveFor` found. */
export interface Solution<K extends Kind> {
  /** `solved` by one value, by `several`, or by `none` in the range searched. */
  readonly state: 'solved' | 'several' | 'none'
  /** Every value that gives the result, ascending. */
  readonly roots: readonly Quantity<K>[]
  /** The smallest root. Throws a `NoResultError` that says what was searched where there is none. */
  readonly value: Quantity<K>
  /** One sentence: what was found, where it was searched and, if nothing was found, which results the range does give. */
  readonly message: string
}

/**
 * Finds the input that gives a wanted result, for any formula: `solveFor(slackTension, 'wrapAngle', { load: '500 N', friction: 0.2 }, '2 N')`.
 *
 * The input's range is scanned and every change of sign is narrowed to full precision; poles are told apart from roots. Roots that only touch
 * the wanted value without crossing it are not found. A formula with several outputs takes `{ name: value }` as the result.
 *
 * Throws an `InputError` for bad inputs, an unknown path or an unknown output. No root is an answer (`state: 'none'`), not an error.
 */
export function solveFor<I extends Inputs, O extends Output, const P extends ScalarPath<I>>(
  formula: Formula<I, O>,
  path: P,
  given: NoInfer<Without<I, P>>,
  wanted: NoInfer<Target<O>>,
  options: NoInfer<SolveOptions<KindAt<I, P>>> = {},
): Solution<KindAt<I, P>> {
  const target = targetOf(untyped(formula), wanted)
  const { kind, lowest, highest } = rangeOf(untyped(formula), path, options.between)
  const x = knownInputs(untyped(formula), path, given, kind, lowest, highest)
  const kernel = answering(formula.si as (x: unknown) => unknown)
  const requires = requirementsOf(untyped(formula))
  let least = Number.POSITIVE_INFINITY
  let most = Number.NEGATIVE_INFINITY
  const miss = (value: number) => {
    setAt(x, path, value)
    // A value that the checked call would refuse is no solution, and the kernel's number there means nothing.
    if (requires.some(({ holds }) => !holds(x))) return Number.NaN
    const y = kernel(x)
    const got = target.name === '' ? (y as number | undefined) : (y as Record<string, number> | undefined)?.[target.name]
    if (got === undefined || !Number.isFinite(got)) return Number.NaN
    if (got < least) least = got
    if (got > most) most = got
    return got - target.si
  }
  const roots = scan(miss, lowest, highest, options.samples ?? 400).filter(
    (root) => Math.abs(miss(root)) <= 1e-9 * Math.max(Math.abs(target.si), most - least),
  )
  return solution(untyped(formula).id, path, kind as KindAt<I, P>, roots, { lowest, highest, least, most, target })
}

interface Wanted {
  readonly name: string
  readonly kind: Kind
  readonly si: number
}

function targetOf(formula: AnyFormula, wanted: unknown): Wanted {
  const outputs = scalarOutputs(formula.def.output)
  const single = outputs.length === 1 && outputs[0]?.name === ''
  const names = single ? [''] : typeof wanted === 'object' && wanted !== null ? Object.keys(wanted) : []
  const output = outputs.find(({ name }) => name === names[0])
  if (names.length !== 1 || output === undefined) {
    const accepts = `must name one output: ${outputs.map(({ name, kind }) => `{ ${name}: ${kind} }`).join(' or ')}`
    throw new InputError('solveFor', [{ path: 'wanted', given: show(wanted), accepts }])
  }
  const value = single ? wanted : (wanted as Record<string, unknown>)[output.name]
  return { ...output, si: siAt('wanted', output.kind, value) }
}

function siAt(path: string, kind: Kind, given: unknown): number {
  const issues: Issue[] = []
  const si = readAt(path, kind, given, issues)
  if (issues.length > 0) throw new InputError('solveFor', issues)
  return si
}

/** The magnitudes that are searched where an input has no limit, SI: they hold every unit of every kind, from wear rates to wave numbers. */
const SMALLEST = 1e-30
const LARGEST = 1e15

function rangeOf(formula: AnyFormula, path: string, between: readonly [unknown, unknown] | undefined) {
  const { kind, min, max, above, below } = scalarAt(formula, path)
  const si = (limit: unknown) => (limit === undefined ? undefined : typeof limit === 'number' ? limit : read(kind, limit))
  if (between !== undefined) {
    const [lowest, highest] = [siAt('between[0]', kind, between[0]), siAt('between[1]', kind, between[1])]
    if (!(lowest < highest))
      throw new InputError('solveFor', [{ path: 'between', given: show(between), accepts: 'must be a lower and a higher value' }])
    return { kind, lowest, highest }
  }
  // An open limit is left by a hair, so that the kernel is never run where its record forbids it.
  const lowest = si(min) ?? inside(si(above), 1)
  const highest = si(max) ?? inside(si(below), -1)
  return { kind, lowest: lowest ?? -LARGEST, highest: highest ?? LARGEST }
}

const inside = (limit: number | undefined, direction: 1 | -1) =>
  limit === undefined ? undefined : limit + direction * Math.max(SMALLEST, Math.abs(limit) * 1e-15)

/** The other inputs as SI, checked as a call would check them. */
function knownInputs(
  formula: AnyFormula,
  path: string,
  given: unknown,
  kind: Kind,
  lowest: number,
  highest: number,
): Record<string, unknown> {
  const probe = lowest > 0 ? Math.sqrt(lowest * highest) : highest < 0 ? -Math.sqrt(lowest * highest) : lowest + (highest - lowest) / 2
  const issues: Issue[] = []
  const x = recordReader(formula.def.inputs, true)(withValueAt(given, path, new Quantity(probe, kind)), '', issues)
  const others = issues.filter((issue) => issue.path !== path)
  if (others.length > 0) throw new InputError(formula.id, others)
  return x as Record<string, unknown>
}

/** All sign changes: by equal parts over a narrow range, by equal ratios over magnitudes. */
function scan(miss: (x: number) => number, lowest: number, highest: number, samples: number): number[] {
  const found: number[] = []
  const part = (lo: number, hi: number, spacing: 'linear' | 'log', mirror = 1) => {
    if (lo < hi) found.push(...findRoots((x) => miss(mirror * x), lo, hi, { samples, spacing }).roots.map((root) => mirror * root))
  }
  const wide = (lo: number, hi: number) => hi / lo > 1e3
  if (
    highest - lowest < 1e3 * Math.max(SMALLEST, Math.min(Math.abs(lowest), Math.abs(highest))) ||
    (lowest < 0 && highest > 0 && highest - lowest < 1e3)
  ) {
    part(lowest, highest, 'linear')
  }
  if (highest > 0 && wide(Math.max(lowest, SMALLEST), highest)) part(Math.max(lowest, SMALLEST), highest, 'log')
  if (lowest < 0 && wide(Math.max(-highest, SMALLEST), -lowest)) part(Math.max(-highest, SMALLEST), -lowest, 'log', -1)
  if (lowest <= 0 && highest >= 0 && miss(0) === 0) found.push(0)
  // Two scans may meet the same root; one remains.
  return found
    .sort((a, b) => a - b)
    .filter((root, i, all) => i === 0 || Math.abs(root - (all[i - 1] as number)) > 1e-9 * Math.max(Math.abs(root), SMALLEST))
}

interface Searched {
  readonly lowest: number
  readonly highest: number
  readonly least: number
  readonly most: number
  readonly target: Wanted
}

function solution<K extends Kind>(id: string, path: string, kind: K, found: readonly number[], searched: Searched): Solution<K> {
  const { lowest, highest, least, most, target } = searched
  const roots = found.map((root) => new Quantity(root, kind))
  const text = (si: number, of: Kind) => String(new Quantity(si, of))
  const range = `between ${text(lowest, kind)} and ${text(highest, kind)}`
  const what = target.name === '' ? 'the result' : target.name
  const gives =
    least <= most ? `there ${what} runs from ${text(least, target.kind)} to ${text(most, target.kind)}` : `there ${what} is nowhere finite`
  const message =
    roots.length === 0
      ? `${id}: no ${path} ${range} gives ${text(target.si, target.kind)}; ${gives}`
      : `${id}: ${path} = ${roots.map(String).join(' or ')} gives ${text(target.si, target.kind)}`
  return {
    state: roots.length === 0 ? 'none' : roots.length === 1 ? 'solved' : 'several',
    roots,
    get value() {
      if (roots[0] === undefined) throw new NoResultError(message)
      return roots[0]
    },
    message,
  }
}
