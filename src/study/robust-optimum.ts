import { type AnyFormula, type Formula, type Inputs, NoResultError, type Output, onlyKeys, recordReader } from '../formula/index.js'
import { InputError, type Issue, issue, Quantity, refuse } from '../units/index.js'
import { type Limit, limitsOf } from './constraints.js'
import { correlationFactor } from './correlation.js'
import { isDistribution, scatterOf } from './distribution.js'
import { optimised } from './optimise.js'
import type { OptimisePlan } from './optimise-plan.js'
import type { Optimum } from './optimum.js'
import { checkShare, checkWhole } from './options.js'
import { untyped, withValueAt } from './path.js'
import { worstOf } from './robust-limits.js'
import { type Held, RobustOptimum } from './robust-result.js'
import { type Scenario, scenarioOf, shortfall, underScenario } from './scenario.js'
import { leastShare, mostFailures } from './share-bound.js'
import { scalarsGiven, type Uncertain, uncertainModel, type Varied } from './uncertain-model.js'
import type { Correlation } from './uncertainty.js'

/** What to optimise, what scatters, and how surely the constraints must hold. */
export interface RobustPlan<I extends Inputs, O> extends OptimisePlan<I, O> {
  /** What scatters: distributions, or properties with a range. Inputs whose default carries a range scatter without being given. */
  readonly scatter?: Partial<Uncertain<I>>
  readonly correlations?: readonly Correlation<string>[]
  /** Share of all cases in which every constraint must hold together. Default 0.95. */
  readonly chance?: number
  /** Confidence with which that share is shown by the draws. Default 0.95. */
  readonly confidence?: number
  /** Draws of each look, and of the last one, which is fresh. Default: 40 failures' worth, at least 300. */
  readonly draws?: number
  /** Rounds of optimising at most. Default 8. */
  readonly rounds?: number
  /** Points that each round of optimising tries: a cap. Each of them runs the formula once more for every draw that must hold; the draws themselves come on top. */
  readonly evaluations?: number
}

/**
 * The best inputs for which the constraints hold in a stated share of all cases, under the ranges of what is uncertain (correlated as they are), and what that
 * costs beside the optimum at typical values.
 *
 * Each round optimises with the constraints at their worst over a few draws, looks at many draws there, and adds the one that must still hold. Goals are those at typical values. The
 * share that is reported comes from fresh draws, with its exact lower bound: `state` is `held` only where that bound reaches the stated share. All constraints count together. A draw without
 * an answer counts as failed. It is as good as the ranges given, and no better.
 *
 * Throws one `InputError` that lists every bad input; a `NoResultError` where no point has a finite answer.
 */
export function robustOptimum<I extends Inputs, O extends Output>(formula: Formula<I, O>, plan: NoInfer<RobustPlan<I, O>>): RobustOptimum {
  const any = untyped(formula)
  const {
    scatter = {},
    correlations = [],
    chance = 0.95,
    confidence = 0.95,
    rounds = 8,
    draws = Math.max(300, Math.ceil(40 / (1 - chance))),
    ...rest
  } = plan
  const issues: Issue[] = []
  checkShare('chance', chance, issues)
  checkShare('confidence', confidence, issues)
  checkWhole('draws', draws, 20, Number.POSITIVE_INFINITY, issues)
  checkWhole('rounds', rounds, 1, Number.POSITIVE_INFINITY, issues)
  const limits = limitsOf(any, (rest.constraints ?? {}) as Record<string, unknown>, issues)
  if (limits.length === 0 || limits.some(({ equality }) => equality))
    issues.push(issue('constraints', rest.constraints, 'must hold at least one { min } or { max }, and no equality: scatter breaks it'))
  for (const { path } of scalarsGiven(any.def.inputs, scatter))
    if (Object.hasOwn(rest.vary ?? {}, path))
      issues.push({
        path: `scatter.${path}`,
        given: 'scatters',
        accepts: 'must not be varied as well: add an error of its own to the formula',
      })
  strayNames(any.def.inputs, scatter, 'scatter', issues)
  const typical = typicalOf(any, rest.fixed, scatter, issues)
  if (issues.length > 0) throw new InputError(any.id, issues)
  const allowed = mostFailures(draws, chance, confidence)
  if (allowed < 0) refuse(any.id, 'draws', draws, `must be enough to show a share of ${chance} with confidence ${confidence}`)
  const all = { ...rest, fixed: typical } as never
  const nominal = optimised(any, all)
  const argument = (nominal.best.argument ?? {}) as Record<string, unknown>
  const { varied, remarks } = uncertainModel(
    any,
    withScatter(any, argument, scatter),
    limits[0]?.name === 'result' ? undefined : limits[0]?.name,
  )
  const { lower } = correlationFactor(
    varied.map(({ path }) => path),
    correlations,
    any.id,
  )
  const search: Search = { formula: any, plan: all, limits, varied, draw: (seed, i) => scenarioOf(varied, lower, seed, i) }
  return searched(search, nominal, { draws, chance, confidence, rounds, allowed, seed: rest.seed ?? 1 }, remarks)
}

interface Search {
  readonly formula: AnyFormula
  readonly plan: OptimisePlan<Inputs, Output>
  readonly limits: readonly Limit[]
  readonly varied: readonly Varied[]
  readonly draw: (seed: number, index: number) => Scenario
}

interface Terms {
  readonly draws: number
  readonly chance: number
  readonly confidence: number
  readonly rounds: number
  readonly allowed: number
  readonly seed: number
}

/** Failures that are aimed at: fewer than are allowed by two deviations of the counts of both sets of draws, so that fresh draws show the share as well. */
const aimedAt = (allowed: number) => Math.max(0, Math.floor(allowed - 2 * Math.sqrt(2 * allowed)))

function searched(search: Search, nominal: Optimum, terms: Terms, remarks: readonly string[]): RobustOptimum {
  const { draws, allowed, rounds, seed } = terms
  const active: Scenario[] = []
  let best = nominal
  let evaluations = nominal.evaluations
  for (let round = 0; round < rounds; round++) {
    const shortfalls = shortfallsAt(search, best, draws, seed)
    evaluations += draws
    const order = shortfalls.map((_, i) => i).sort((a, b) => (shortfalls[b] as number) - (shortfalls[a] as number))
    const pick = order[aimedAt(allowed)] as number
    if ((shortfalls[pick] as number) <= 0) break
    active.push(search.draw(seed, pick))
    best = optimised(search.formula, search.plan, withGuards(search, active))
    evaluations += best.evaluations
  }
  const fresh = (at: Optimum): Held => {
    const held = shortfallsAt(search, at, draws, seed + 1).filter((x) => x <= 0).length
    evaluations += draws
    return { held, draws, least: leastShare(held, draws, terms.confidence) }
  }
  const robust = fresh(best)
  const state = !best.best.feasible ? 'infeasible' : robust.least >= terms.chance ? 'held' : 'notShown'
  return new RobustOptimum({
    state,
    nominal,
    robust: best,
    atNominal: fresh(nominal),
    atRobust: robust,
    ...terms,
    scenarios: active.length,
    evaluations,
    remarks,
  })
}

/** How far the constraints fall short at an optimum in each of many draws. */
function shortfallsAt({ formula, limits, varied, draw }: Search, { best }: Optimum, draws: number, seed: number): number[] {
  const issues: Issue[] = []
  const run = underScenario(formula, varied)
  const x = recordReader(formula.def.inputs, true)(best.argument, '', issues) as Record<string, unknown>
  if (issues.length > 0) throw new NoResultError(`${formula.id}: the optimum cannot be read again`)
  return Array.from({ length: draws }, (_, i) => shortfall(limits, run(x, draw(seed, i))))
}

/** The constrained outputs at their worst over the point itself and some scenarios. */
function withGuards({ formula, limits, varied }: Search, active: readonly Scenario[]) {
  const run = underScenario(formula, varied)
  return (x: Record<string, unknown>, results: unknown) => worstOf(limits, [results, ...active.map((scenario) => run(x, scenario))])
}

/** What stays as it is, with every distribution at its mean. */
function typicalOf(formula: AnyFormula, fixed: unknown, scatter: unknown, issues: Issue[]): Record<string, unknown> {
  return scalarsGiven(formula.def.inputs, scatter).reduce(
    (all, { path, scalar, value }) => {
      const mean = isDistribution(value) ? scatterOf(value, scalar.kind, path, issues)?.mean : undefined
      return withValueAt(all, path, mean === undefined ? value : new Quantity(mean, scalar.kind))
    },
    { ...(fixed as object) } as Record<string, unknown>,
  )
}

/** The argument with every distribution put in its place. */
const withScatter = (formula: AnyFormula, argument: Record<string, unknown>, scatter: unknown): Record<string, unknown> =>
  scalarsGiven(formula.def.inputs, scatter).reduce((all, { path, value }) => withValueAt(all, path, value), argument)

/** Adds an issue for what scatters and is no input. */
function strayNames(inputs: Inputs, given: unknown, path: string, issues: Issue[]): void {
  if (!onlyKeys(path, given, Object.keys(inputs), issues)) return
  for (const [name, input] of Object.entries(inputs))
    if (typeof input === 'object' && 'fields' in input && (given as Record<string, unknown>)[name] !== undefined)
      strayNames(input.fields, (given as Record<string, unknown>)[name], `${path}.${name}`, issues)
}
