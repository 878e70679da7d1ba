import { type AnyFormula, type Given, type Inputs, type Output, onlyKeys, reader, type Scalar } from '../formula/index.js'
import { type In, InputError, type Issue, issue, type Kind, show } from '../units/index.js'
import { type Limit, limitsOf, outputNamed, probesFor } from './constraints.js'
import type { SpreadOf } from './distribution.js'
import { checkSeed, checkWhole } from './options.js'
import { type KindAt, planRecord, type ScalarOutput, type ScalarPath, scalarAt } from './path.js'
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

/** Outputs to make small or large; `result` where the formula has one output. */
export type Goal<O> = { readonly minimise: OutputName<O> } | { readonly maximise: OutputName<O> }

/**
 * What an output must keep: limits, or a value that it equals to within a tolerance. Default of the tolerance: a millionth of the value; for a value
 * of zero it must be given.
 */
export type Constraint<K extends Kind> =
  | { readonly min?: In<K>; readonly max?: In<K> }
  | { readonly equals: In<K>; readonly within?: In<SpreadOf<K>> }

/** Constraints by output; `result` where the formula has one output. */
export type Constraints<O> = { readonly [N in OutputName<O>]?: Constraint<KindOf<O, N>> }

/** The optimisation problem. */
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
  /** Runs of the formula: a cap that is never exceeded. Default 20 000; with several goals 25 000. */
  readonly evaluations?: number
  /** Candidates at a time. Default 10 for each thing varied, from 40 to 200; 100 with several goals. */
  readonly population?: number
  /** Default 1. The same seed finds the same optimum to the last bit. */
  readonly seed?: number
  /** Called after every generation. */
  readonly onProgress?: (done: number, of: number) => void
}

/** A continuous variable. */
export interface Axis {
  readonly path: string
  readonly kind: Kind
  readonly low: number
  readonly high: number
}

/** A catalogue. */
export interface Choices {
  readonly name: string
  readonly options: readonly (readonly [string, unknown])[]
}

/** A plan as numbers. */
export interface Plan {
  readonly axes: readonly Axis[]
  readonly choices: readonly Choices[]
  readonly goals: readonly { readonly name: string; readonly sign: 1 | -1 }[]
  readonly limits: readonly Limit[]
  readonly evaluations: number
  readonly population: number
  readonly seed: number
}

const KNOWN = [
  'vary',
  'choices',
  'goals',
  'constraints',
  'fixed',
  'evaluations',
  'population',
  'seed',
  'onProgress',
] as const satisfies readonly (keyof OptimisePlan<Inputs, Output>)[]

/** Reads a plan. Throws one `InputError` that lists every issue. */
export function planOf(formula: AnyFormula, plan: OptimisePlan<never, never>): Plan {
  planRecord(formula.id, plan as OptimisePlan<Inputs, Output>, KNOWN)
  const issues: Issue[] = []
  const axes = Object.entries((plan.vary ?? {}) as Record<string, VaryRange<Kind>>).map(([path, range]) =>
    axisOf(path, scalarAt(formula, path), range, issues),
  )
  const choices = Object.entries(plan.choices ?? {}).map(([name, options]) => ({ name, options: Object.entries(options ?? {}) }))
  for (const { name, options } of choices)
    if (options.length < 1) issues.push(issue(`choices.${name}`, plan.choices?.[name], 'must hold at least one option'))
  if (axes.length + choices.length === 0) issues.push(issue('vary', plan.vary, 'must name at least one input, or `choices` one catalogue'))
  const goals = goalsOf(formula, plan.goals, issues)
  const limits = limitsOf(formula, (plan.constraints ?? {}) as Record<string, unknown>, issues)
  const {
    evaluations = goals.length > 1 ? 25_000 : 20_000,
    seed = 1,
    population = goals.length > 1 ? 100 : Math.min(200, Math.max(40, 10 * (axes.length + choices.length))),
  } = plan
  checkWhole('population', population, 8, MAX_EVALUATIONS, issues)
  checkEvaluations(evaluations, 2 * population, probesFor(limits), issues)
  checkSeed(seed, issues)
  if (issues.length > 0) throw new InputError(formula.id, issues)
  return { axes, choices, goals, limits, evaluations, population, seed }
}

/** A search needs its population twice, and the points that show how large a result is whose limit is zero. */
function checkEvaluations(evaluations: unknown, twice: number, probes: number, issues: Issue[]): void {
  const min = twice + probes
  const also = probes > 0 ? ` and ${probes} points that show how large a result limited by zero is` : ''
  if (!(Number.isInteger(evaluations) && (evaluations as number) >= min))
    issues.push(issue('evaluations', evaluations, `must be a whole number of at least twice the population${also}, ${min}`))
}

/** The largest population. */
const MAX_EVALUATIONS = 1e5

function axisOf(path: string, scalar: Scalar, range: VaryRange<Kind>, issues: Issue[]): Axis {
  const read = reader({ ...scalar, optional: undefined, default: undefined } as unknown as Scalar)
  if (!onlyKeys(`vary.${path}`, range, ['from', 'to'], issues)) return { path, kind: scalar.kind, low: Number.NaN, high: Number.NaN }
  const low = read(range?.from, `vary.${path}.from`, issues) as number
  const high = read(range?.to, `vary.${path}.to`, issues) as number
  if (low >= high)
    issues.push({ path: `vary.${path}`, given: `${show(range.from)} to ${show(range.to)}`, accepts: 'must be a lower and a higher value' })
  return { path, kind: scalar.kind, low, high }
}

function goalsOf(formula: AnyFormula, given: unknown, issues: Issue[]): { name: string; sign: 1 | -1 }[] {
  const list = (Array.isArray(given) ? given : [given]) as ({ minimise?: unknown; maximise?: unknown } | undefined)[]
  if (list.length === 0) issues.push(issue('goals', given, 'must hold at least one goal'))
  return list.flatMap((goal, k) => {
    const path = list.length === 1 ? 'goals' : `goals[${k}]`
    if (typeof goal !== 'object' || goal === null || (goal.minimise === undefined) === (goal.maximise === undefined)) {
      issues.push(issue(path, goal, 'must be { minimise: output } or { maximise: output }'))
      return []
    }
    onlyKeys(path, goal, ['minimise', 'maximise'], issues)
    const found = outputNamed(formula, goal.minimise ?? goal.maximise, path, issues)
    return found === undefined ? [] : [{ name: found.name, sign: goal.minimise === undefined ? (-1 as const) : (1 as const) }]
  })
}
