import { type AnyFormula, type Formula, type Inputs, NoResultError, type Output } from '../formula/index.js'
import { randomStream } from '../numeric/index.js'
import { InputError, type Issue, Quantity } from '../units/index.js'
import { breaks, excessOf, type Limit, namedOutputs, probesFor } from './constraints.js'
import { fronts } from './fronts.js'
import { fullArgument, readings } from './optimise-argument.js'
import { type Axis, type OptimisePlan, type Plan, planOf } from './optimise-plan.js'
import { Optimum, type Point } from './optimum.js'
import { answering, requirementsOf, setAt, untyped } from './path.js'
import { outputValue } from './robust-limits.js'
import { type SearchResult, search } from './search.js'
import { bestOf, type Candidate, type Problem } from './search-problem.js'

/**
 * Finds the inputs that make results small or large within constraints, over continuous ranges and catalogue choices together.
 *
 * With one goal independent searches run until three of them settle on the same point; each ends with a local descent. With several
 * goals the answer is the trade-off front: points none of which is better than another in everything. At the default evaluations the fronts of published test
 * problems with up to 30 variables are within 1 % of their hypervolume. A point where the formula has no
 * finite answer counts as forbidden. The search is global but finite: it finds good points, it does not prove them best. `agreement` and `settled` say how
 * sure the answer is; more `evaluations` or another `seed` make it surer. When no point keeps all constraints, `state` is `infeasible` and the nearest
 * point names those broken.
 *
 * Throws one `InputError` that lists every bad input; a `NoResultError` where no point has a finite answer.
 */
export function optimise<I extends Inputs, O extends Output>(formula: Formula<I, O>, plan: NoInfer<OptimisePlan<I, O>>): Optimum {
  return optimised(untyped(formula), plan as never)
}

/**
 * As `optimise`, with constraints that may be held by other results than those of the point itself, such as the worst of several cases.
 * @internal
 */
export function optimised(
  formula: AnyFormula,
  plan: OptimisePlan<Inputs, Output>,
  constrained: Constrained = (_, results) => results,
): Optimum {
  const read = planOf(formula, plan as never)
  const { axes, evaluations, population, seed, goals } = read
  const resultAt = resultsOf(formula, plan.fixed ?? {}, read, constrained)
  const { limits, runs } = scaled(read.limits, read, resultAt)
  const outputs = namedOutputs(formula)
  const problem = problemOf({ ...read, limits }, resultAt, outputs)
  const found = search(problem, { population, evaluations: evaluations - runs, seed, progress: plan.onProgress })
  const best = bestOf(found.population)
  if (!Number.isFinite(best.violation))
    throw new NoResultError(`${formula.id}: no finite answer exists at any of ${found.used} points of these ranges`)
  const front = best.violation > 0 || goals.length === 1 ? [best] : distinct(fronts(found.population)[0] as Candidate[])
  const pointOf = pointMaker(plan.fixed ?? {}, { ...read, limits }, outputs)
  return new Optimum({
    formula: formula.id,
    goals: goals.map(({ name, sign }) => ({ output: name, goal: sign === 1 ? 'minimise' : 'maximise' })),
    best: pointOf(best),
    front: front.sort((a, b) => (a.goals[0] as number) - (b.goals[0] as number)).map(pointOf),
    evaluations: found.used + runs,
    seed,
    atLimits: atLimits(axes, best.x),
    agreement: { searches: found.searches, agreeing: found.agreeing },
    settled: found.settled,
    remarks: remarksOn(found, limits.length > 0),
  })
}

/** The results by which constraints are held, from the argument of a point and its own results. */
type Constrained = (argument: Record<string, unknown>, results: unknown) => unknown

/** The results at a point by output name, its own and those of constraints; nothing where there is no answer. */
type ResultAt = (x: ArrayLike<number>) => { value(name: string): number; limited(name: string): number } | undefined

function resultsOf(formula: AnyFormula, fixed: unknown, { axes, choices }: Plan, constrained: Constrained): ResultAt {
  const issues: Issue[] = []
  const argumentOf = readings(formula, fixed, axes, choices, issues)
  if (issues.length > 0) throw new InputError(formula.id, issues)
  const kernel = answering(formula.si as (x: unknown) => unknown)
  const requires = requirementsOf(formula)
  return (x) => {
    const argument = argumentOf(Array.from(choices, (_, c) => x[axes.length + c] as number))
    axes.forEach(({ path }, i) => {
      setAt(argument, path, x[i] as number)
    })
    if (requires.some(({ holds }) => !holds(argument))) return undefined
    const y = kernel(argument)
    if (y === undefined) return undefined
    const held = constrained(argument, y)
    const value = (name: string) => outputValue(y, name)
    return { value, limited: held === y ? value : (name) => outputValue(held, name) }
  }
}

function problemOf({ axes, choices, goals, limits }: Plan, resultAt: ResultAt, outputs: Outputs): Problem {
  const sides = limits.flatMap((limit) => excessOf(limit, 0)).length
  return {
    low: Float64Array.from([...axes.map(({ low }) => low), ...choices.map(() => 0)]),
    high: Float64Array.from([...axes.map(({ high }) => high), ...choices.map(({ options }) => options.length - 1)]),
    choice: [...axes.map(() => false), ...choices.map(() => true)],
    goals: goals.length,
    equalities: limits.some(({ equality }) => equality),
    run: (x) => {
      const at = resultAt(x)
      const found = Float64Array.from(goals, ({ name, sign }) => (at === undefined ? Number.NaN : sign * at.value(name)))
      const excess =
        at === undefined
          ? new Float64Array(sides).fill(Number.POSITIVE_INFINITY)
          : Float64Array.from(limits.flatMap((limit) => excessOf(limit, at.limited(limit.name))))
      const noAnswer = found.some((y) => !Number.isFinite(y)) || excess.some(Number.isNaN)
      const violation = noAnswer ? Number.POSITIVE_INFINITY : excess.reduce((sum, each) => sum + Math.max(0, each), 0)
      // Results of a point, then those that its constraints are held by.
      const results = at && Float64Array.from([...outputs.map(({ name }) => at.value(name)), ...limits.map(({ name }) => at.limited(name))])
      return { x, goals: found, violation, excess, ...(results && { results }) }
    },
  }
}

type Outputs = ReturnType<typeof namedOutputs>

/** A stream of its own. */
const PROBE_STREAM = 2 ** 31

/** Limits with the size by which their violation is divided: the limit itself, or for zero the middle size of the output over the ranges; and the runs that it took. */
function scaled(limits: readonly Limit[], { axes, choices, seed }: Plan, resultAt: ResultAt): { limits: Limit[]; runs: number } {
  const runs = probesFor(limits)
  const random = randomStream(seed, PROBE_STREAM)
  const probes = Array.from({ length: runs }, () => {
    const at = resultAt([
      ...axes.map(({ low, high }) => random.uniformBetween(low, high)),
      ...choices.map(({ options }) => random.integer(options.length)),
    ])
    // Read at once: the argument of a point is reused for the next, and a kernel may reuse its results.
    return limits.map(({ name }) => Math.abs(at?.limited(name) ?? 0))
  })
  const sized = limits.map((limit, l) => {
    const sizes = probes.map((each) => each[l] as number).filter((size) => size > 0 && Number.isFinite(size))
    const middle = sizes.sort((a, b) => a - b)[sizes.length >> 1] ?? 1
    const or = (scale: number) => (Number.isNaN(scale) ? middle : scale)
    return { ...limit, scale: { min: or(limit.scale.min), max: or(limit.scale.max) } }
  })
  return { limits: sized, runs }
}

function pointMaker(fixed: unknown, { axes, choices, limits }: Plan, outputs: Outputs): (found: Candidate) => Point {
  return ({ x, violation, results = [] }) => {
    const held = (l: number) => results[outputs.length + l] as number
    return {
      inputs: Object.fromEntries(axes.map(({ path, kind }, i) => [path, new Quantity(x[i] as number, kind)])),
      choices: Object.fromEntries(
        choices.map(({ name, options }, c) => [name, (options[x[axes.length + c] as number] as readonly [string, unknown])[0]]),
      ),
      results: Object.fromEntries(outputs.map(({ name, kind }, o) => [name, new Quantity(results[o] as number, kind)])),
      violated: limits.filter((limit, l) => breaks(limit, held(l))).map(({ words }) => words),
      feasible: violation === 0,
      argument: fullArgument(fixed, axes, choices, x),
    }
  }
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

/** Below this share of random points that keep all constraints, parts of the feasible region may be missed. */
const THIN = 0.01

function remarksOn({ starts, feasibleStarts }: SearchResult, constrained: boolean): string[] {
  if (!constrained || feasibleStarts >= THIN * starts) return []
  return [
    `only ${feasibleStarts} of ${starts} random points keep all constraints: where so little is feasible, a better part of it may have been missed; compare other seeds`,
  ]
}
