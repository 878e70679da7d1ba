import {
  type AnyFormula,
  type Formula,
  type Given,
  type Inputs,
  NoResultError,
  type Output,
  reader,
  recordReader,
  type Scalar,
} from '../formula/index.js'
import { type In, InputError, type Issue, type Kind, oneOfNames, Quantity, show } from '../units/index.js'
import { bestOf, type Candidate, fronts, type Problem, search } from './evolve.js'
import { Optimum, type Point } from './optimum.js'
import {
  answering,
  type KindAt,
  requirementsOf,
  type ScalarOutput,
  type ScalarPath,
  scalarAt,
  scalarOutputs,
  setAt,
  untyped,
  withValueAt,
} from './path.js'
import type { Fixed } from './sweep.js'

/** The range of a continuous input. */
export interface VaryRange<K extends Kind> {
  readonly from: In<K>
  readonly to: In<K>
}

/** Options of a catalogue: each sets one or several inputs together, such as a cord's diameter and rigidity. */
export type Choice<I> = { readonly [option: string]: DeepPartial<Given<I>> }

type DeepPartial<T> = T extends { readonly kind?: unknown } | string | number | boolean | readonly unknown[] | ((...args: never) => unknown)
  ? T
  : { readonly [N in keyof T]?: DeepPartial<T[N]> }

type OutputName<O> = O extends Kind | { kind: Kind; infinite: true } ? 'result' : ScalarOutput<O>
type KindOf<O, N> = O extends Kind
  ? O
  : O extends { kind: infer K extends Kind; infinite: true }
    ? K
    : N extends keyof O
      ? O[N] extends Kind
        ? O[N]
        : O[N] extends { kind: infer K extends Kind }
          ? K
          : never
      : never

/** What is to become small or large; `result` where the formula has one output. */
export type Goal<O> = { readonly minimise: OutputName<O> } | { readonly maximise: OutputName<O> }

/** Limits an output must keep. */
export type Constraints<O> = { readonly [N in OutputName<O>]?: { readonly min?: In<KindOf<O, N>>; readonly max?: In<KindOf<O, N>> } }

/** What to optimise. */
export interface OptimisePlan<I, O> {
  /** Continuous inputs and their ranges. */
  readonly vary?: { readonly [P in ScalarPath<I>]?: VaryRange<KindAt<I, P>> }
  /** Catalogue choices by a name of your own; of each, one option is taken. */
  readonly choices?: { readonly [name: string]: Choice<I> }
  /** One goal, or several for a trade-off front. */
  readonly goals: Goal<O> | readonly Goal<O>[]
  readonly constraints?: Constraints<O>
  /** Inputs that stay as they are. */
  readonly fixed?: Fixed<I>
  /** Most runs of the formula. Default 20 000. */
  readonly evaluations?: number
  /** Candidates at a time. Default 10 for each thing varied, from 40 to 200; 100 with several goals. */
  readonly population?: number
  /** Default 1. The same seed finds the same optimum to the last bit. */
  readonly seed?: number
  /** Called after every generation. */
  readonly onProgress?: (done: number, of: number) => void
}

/**
 * Finds the inputs that make results small or large within constraints, over continuous ranges and catalogue choices together.
 *
 * With several goals it finds the trade-off front: points none of which is better than another in everything. A point where the formula has no
 * finite answer counts as forbidden. The search is global but finite: it finds good points, it does not prove them best; more
 * `evaluations` or another `seed` tell how sure the answer is. When no point keeps all constraints, the answer says so and names those violated.
 *
 * Throws one `InputError` that lists every bad input; a `NoResultError` where no point has a finite answer.
 */
export function optimise<I extends Inputs, O extends Output>(formula: Formula<I, O>, plan: NoInfer<OptimisePlan<I, O>>): Optimum {
  const any = untyped(formula)
  const issues: Issue[] = []
  const axes = Object.entries((plan.vary ?? {}) as Record<string, VaryRange<Kind>>).map(([path, range]) =>
    axisOf(path, scalarAt(any, path), range, issues),
  )
  const choices = Object.entries(plan.choices ?? {}).map(([name, options]) => ({ name, options: Object.entries(options) }))
  for (const { name, options } of choices)
    if (options.length < 1)
      issues.push({ path: `choices.${name}`, given: show(plan.choices?.[name]), accepts: 'must hold at least one option' })
  if (axes.length + choices.length === 0)
    issues.push({ path: 'vary', given: show(plan.vary), accepts: 'must name at least one input, or `choices` one catalogue' })
  const goals = goalsOf(any, plan.goals, issues)
  const limits = limitsOf(any, (plan.constraints ?? {}) as Record<string, unknown>, issues)
  const several = goals.length > 1
  const {
    evaluations = 20_000,
    seed = 1,
    population = several ? 100 : Math.min(200, Math.max(40, 10 * (axes.length + choices.length))),
  } = plan
  if (!(Number.isInteger(population) && population >= 8))
    issues.push({ path: 'population', given: show(population), accepts: 'must be a whole number of at least 8' })
  if (!(Number.isInteger(evaluations) && evaluations >= 2 * population))
    issues.push({
      path: 'evaluations',
      given: show(evaluations),
      accepts: `must be a whole number of at least twice the population, ${2 * population}`,
    })
  if (!Number.isSafeInteger(seed)) issues.push({ path: 'seed', given: show(seed), accepts: 'must be a whole number' })
  if (issues.length > 0) throw new InputError(formula.id, issues)
  const arguments_ = readings(any, plan.fixed ?? {}, axes, choices, issues)
  if (issues.length > 0) throw new InputError(formula.id, issues)

  const kernel = answering(formula.si as (x: unknown) => unknown)
  const requires = requirementsOf(any)
  const argumentAt = (x: ArrayLike<number>) => {
    const argument = arguments_(Array.from(choices, (_, c) => x[axes.length + c] as number))
    axes.forEach(({ path }, i) => {
      setAt(argument, path, x[i] as number)
    })
    return argument
  }
  const resultAt = (x: ArrayLike<number>): ((name: string) => number) | undefined => {
    const argument = argumentAt(x)
    if (requires.some(({ holds }) => !holds(argument))) return undefined
    const y = kernel(argument)
    if (y === undefined) return undefined
    return (name) => (name === 'result' ? (y as number) : ((y as Record<string, number>)[name] as number))
  }
  const problem: Problem = {
    low: Float64Array.from([...axes.map(({ low }) => low), ...choices.map(() => 0)]),
    high: Float64Array.from([...axes.map(({ high }) => high), ...choices.map(({ options }) => options.length - 1)]),
    choice: [...axes.map(() => false), ...choices.map(() => true)],
    goals: goals.length,
    run: (x) => {
      const value = resultAt(x)
      const found = Float64Array.from(goals, ({ name, sign }) => (value === undefined ? Number.NaN : sign * value(name)))
      let violation = value === undefined || found.some((y) => !Number.isFinite(y)) ? Number.POSITIVE_INFINITY : 0
      if (value !== undefined) for (const limit of limits) violation += brokenBy(limit, value(limit.name))
      return { x, goals: found, violation: violation }
    },
  }
  const { crowd, used, searches, agreeing } = search(problem, { population, evaluations, seed, progress: plan.onProgress })
  const best = bestOf(crowd)
  if (!Number.isFinite(best.violation))
    throw new NoResultError(`${formula.id}: no finite answer exists at any of ${used} points of these ranges`)
  const pointOf = ({ x, violation }: Candidate): Point => {
    const value = resultAt(x) as (name: string) => number
    return {
      inputs: Object.fromEntries(axes.map(({ path, kind }, i) => [path, new Quantity(x[i] as number, kind)])),
      choices: Object.fromEntries(
        choices.map(({ name, options }, c) => [name, (options[x[axes.length + c] as number] as [string, unknown])[0]]),
      ),
      results: Object.fromEntries(namedOutputs(any).map(({ name, kind }) => [name, new Quantity(value(name), kind)])),
      violated: limits.filter((limit) => brokenBy(limit, value(limit.name)) > 0).map(({ words }) => words),
      feasible: violation === 0,
      argument: fullArgument(plan.fixed ?? {}, axes, choices, x),
    }
  }
  const front = best.violation > 0 ? [best] : several ? distinct(fronts(crowd)[0] as Candidate[]) : [best]
  return new Optimum(
    formula.id,
    goals.map(({ name, sign }) => ({ output: name, goal: sign === 1 ? 'minimise' : 'maximise' })),
    pointOf(best),
    front.sort((a, b) => (a.goals[0] as number) - (b.goals[0] as number)).map(pointOf),
    used,
    seed,
    atLimits(axes, best.x),
    { searches, agreeing },
  )
}

interface Axis {
  readonly path: string
  readonly kind: Kind
  readonly low: number
  readonly high: number
}
interface Choices {
  readonly name: string
  readonly options: readonly (readonly [string, unknown])[]
}
interface Limit {
  readonly name: string
  readonly min: number
  readonly max: number
  readonly words: string
}

function axisOf(path: string, scalar: Scalar, range: VaryRange<Kind>, issues: Issue[]): Axis {
  const read = reader({ ...scalar, optional: undefined, default: undefined } as unknown as Scalar)
  const low = read(range?.from, `vary.${path}.from`, issues) as number
  const high = read(range?.to, `vary.${path}.to`, issues) as number
  if (low >= high)
    issues.push({ path: `vary.${path}`, given: `${show(range.from)} to ${show(range.to)}`, accepts: 'must be a lower and a higher value' })
  return { path, kind: scalar.kind, low, high }
}

const namedOutputs = (formula: AnyFormula) =>
  scalarOutputs(formula.def.output).map(({ name, kind }) => ({ name: name === '' ? 'result' : name, kind }))

function outputNamed(formula: AnyFormula, name: unknown, path: string, issues: Issue[]): { name: string; kind: Kind } | undefined {
  const outputs = namedOutputs(formula)
  const found = outputs.find((output) => output.name === name)
  if (found !== undefined) return found
  const names = outputs.map((output) => output.name)
  issues.push({
    path,
    given: show(name),
    accepts: oneOfNames(names, name),
  })
  return undefined
}

function goalsOf(formula: AnyFormula, given: unknown, issues: Issue[]): { name: string; sign: 1 | -1 }[] {
  const list = (Array.isArray(given) ? given : [given]) as ({ minimise?: unknown; maximise?: unknown } | undefined)[]
  if (list.length === 0) issues.push({ path: 'goals', given: show(given), accepts: 'must hold at least one goal' })
  return list.flatMap((goal, k) => {
    const path = list.length === 1 ? 'goals' : `goals[${k}]`
    if (typeof goal !== 'object' || goal === null || (goal.minimise === undefined) === (goal.maximise === undefined)) {
      issues.push({ path, given: show(goal), accepts: 'must be { minimise: output } or { maximise: output }' })
      return []
    }
    const found = outputNamed(formula, goal.minimise ?? goal.maximise, path, issues)
    return found === undefined ? [] : [{ name: found.name, sign: goal.minimise === undefined ? (-1 as const) : (1 as const) }]
  })
}

function limitsOf(formula: AnyFormula, constraints: Record<string, unknown>, issues: Issue[]): Limit[] {
  return Object.entries(constraints).flatMap(([name, given]) => {
    const output = outputNamed(formula, name, `constraints.${name}`, issues)
    if (output === undefined) return []
    const limit = given as { min?: unknown; max?: unknown }
    const read = reader({ kind: output.kind } as Scalar)
    const side = (which: 'min' | 'max', otherwise: number) =>
      limit?.[which] === undefined ? otherwise : (read(limit[which], `constraints.${name}.${which}`, issues) as number)
    const [min, max] = [side('min', Number.NEGATIVE_INFINITY), side('max', Number.POSITIVE_INFINITY)]
    if (min === Number.NEGATIVE_INFINITY && max === Number.POSITIVE_INFINITY)
      issues.push({ path: `constraints.${name}`, given: show(given), accepts: 'must be { min }, { max } or both' })
    const words = [
      Number.isFinite(min) && `${name} at least ${new Quantity(min, output.kind)}`,
      Number.isFinite(max) && `${name} at most ${new Quantity(max, output.kind)}`,
    ]
    return [{ name, min, max, words: words.filter(Boolean).join(' and ') }]
  })
}

/** How far a value breaks a limit, relative to the limit so that constraints of all kinds weigh alike; in SI units where the limit is zero. */
function brokenBy({ min, max }: Limit, value: number): number {
  if (value < min) return (min - value) / (Math.abs(min) || 1)
  if (value > max) return (value - max) / (Math.abs(max) || 1)
  return Number.isNaN(value) ? Number.POSITIVE_INFINITY : 0
}

/** Everything but the continuous values, read once for every combination of options that comes up. */
function readings(formula: AnyFormula, fixed: unknown, axes: readonly Axis[], choices: readonly Choices[], issues: Issue[]) {
  const middle = axes.map(({ low, high }) => low + (high - low) / 2)
  const read = recordReader(formula.def.inputs, true)
  const known = new Map<string, Record<string, unknown>>()
  const at = (options: readonly number[], found: Issue[]) =>
    read(fullArgument(fixed, axes, choices, [...middle, ...options]), '', found) as Record<string, unknown>
  // Every option is read once beside the first options of the other choices, so that bad entries are found at the door.
  choices.forEach(({ name, options }, c) => {
    options.forEach(([option], o) => {
      const found: Issue[] = []
      at(
        choices.map((_, k) => (k === c ? o : 0)),
        found,
      )
      for (const issue of found)
        if (!issues.some(({ path, given }) => path === issue.path && given === issue.given))
          issues.push({ ...issue, accepts: `${issue.accepts} (choices.${name}.${option})` })
    })
  })
  if (choices.length === 0) at([], issues)
  return (options: readonly number[]) => {
    const key = options.join(',')
    let found = known.get(key)
    if (found === undefined) {
      found = at(options, [])
      known.set(key, found)
    }
    return found
  }
}

/** The argument of a checked call at a point. */
function fullArgument(fixed: unknown, axes: readonly Axis[], choices: readonly Choices[], x: ArrayLike<number>): Record<string, unknown> {
  let argument = merged({}, fixed)
  choices.forEach(({ options }, c) => {
    argument = merged(argument, (options[x[axes.length + c] as number] as readonly [string, unknown])[1])
  })
  axes.forEach(({ path, kind }, i) => {
    argument = withValueAt(argument, path, new Quantity(x[i] as number, kind))
  })
  return argument
}

const isRecord = (x: unknown): x is Record<string, unknown> =>
  typeof x === 'object' &&
  x !== null &&
  !Array.isArray(x) &&
  (x as { kind?: unknown }).kind === undefined &&
  typeof (x as { toNumber?: unknown }).toNumber !== 'function'

function merged(base: Record<string, unknown>, over: unknown): Record<string, unknown> {
  const result: Record<string, unknown> = { ...base }
  for (const [name, value] of Object.entries((over ?? {}) as object))
    result[name] = isRecord(value) && isRecord(result[name]) ? merged(result[name] as Record<string, unknown>, value) : value
  return result
}

function distinct(front: readonly Candidate[]): Candidate[] {
  const seen = new Set<string>()
  return front.filter(({ goals }) => {
    const key = goals.join()
    return seen.has(key) ? false : seen.add(key)
  })
}

/** Inputs that ended at an end of their range: a wider range may give more. */
const atLimits = (axes: readonly Axis[], x: ArrayLike<number>) =>
  axes.flatMap(({ path, low, high }, i) => {
    const reach = 1e-6 * (high - low)
    return (x[i] as number) - low < reach
      ? [`${path} at its lower end`]
      : high - (x[i] as number) < reach
        ? [`${path} at its upper end`]
        : []
  })
