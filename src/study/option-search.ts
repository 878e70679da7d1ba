import { evolve } from './evolve.js'
import { bestOf, type Candidate, type Problem } from './search-problem.js'

/** How closely a population converges before two options are compared. */
const ROUGH = 1e-4
/** How closely around the best one. */
const FINE = 1e-10
/** Catalogues up to this length are tried whole around an optimum; in longer ones the neighbours in their order. */
const TRIED_WHOLE = 6

/** The problem with every choice but none of the continuous variables held. */
function held(problem: Problem, options: (i: number) => number): Problem {
  const hold = (limit: Float64Array) => limit.map((value, i) => (problem.choice[i] ? options(i) : value))
  return { ...problem, low: hold(problem.low), high: hold(problem.high) }
}

/** Result of a search over options. */
interface OptionsFound {
  readonly best: Candidate
  readonly used: number
  /** False where the evaluations did not suffice for every neighbour. */
  readonly complete: boolean
}

/**
 * Local search over the options around a settled optimum: for each neighbour the continuous variables are searched afresh, since another
 * option is often allowed only in a corner that the settled population has left.
 */
export function searchOptions(problem: Problem, from: Candidate, round: number, seed: number, evaluations: number): OptionsFound {
  const { choice } = problem
  const continuous = choice.filter((is) => !is).length
  const population = Math.max(24, 8 * continuous)
  const trials = new Trials(problem, round, seed, evaluations)
  let best = from
  let complete = true
  for (let improved = true; improved; ) {
    improved = false
    trials.isNew(best.x)
    for (let c = 0; c < choice.length; c++)
      for (const option of optionsAround(problem, c, best.x[c] as number)) {
        const x = best.x.slice()
        x[c] = option
        if (trials.used + 2 * population > evaluations) complete = false
        else if (trials.isNew(x)) {
          const found = trials.fresh(x, ROUGH, population, 60)
          if (bestOf([best, found]) === found) {
            best = found
            improved = true
          }
        }
      }
  }
  const closing = 2 * population
  if (best !== from && continuous > 0 && trials.used + 2 * closing <= evaluations)
    best = bestOf([best, trials.fresh(best.x, FINE, closing, 400)])
  return { best, used: trials.used, complete }
}

/** The options of a choice that are tried beside its own. */
function optionsAround({ choice, low, high }: Problem, c: number, own: number): number[] {
  if (!choice[c]) return []
  const [first, last] = [low[c] as number, high[c] as number]
  const whole = last - first < TRIED_WHOLE
  const [from, to] = whole ? [first, last] : [Math.max(first, own - 1), Math.min(last, own + 1)]
  return Array.from({ length: to - from + 1 }, (_, i) => from + i).filter((option) => option !== own)
}

/** Searches with options held, each combination once. */
class Trials {
  used = 0
  private trial = 0
  private readonly tried = new Set<string>()

  constructor(
    private readonly problem: Problem,
    private readonly round: number,
    private readonly seed: number,
    private readonly evaluations: number,
  ) {}

  /** Whether a combination of options was not tried before; it counts as tried from now on. */
  isNew(x: Float64Array): boolean {
    const key = x.filter((_, i) => this.problem.choice[i]).join()
    if (this.tried.has(key)) return false
    this.tried.add(key)
    return true
  }

  /** The best candidate with the options of another one. */
  fresh(x: Float64Array, tolerance: number, population: number, generations: number): Candidate {
    if (this.problem.choice.every(Boolean)) {
      this.used++
      return this.problem.run(x)
    }
    const found = evolve(
      held(this.problem, (i) => x[i] as number),
      {
        population,
        // An option that is allowed nowhere would not converge.
        evaluations: Math.min(this.evaluations - this.used, population * generations),
        seed: this.seed,
        round: 1000 * (this.round + 1) + this.trial++,
        tolerance,
      },
    )
    this.used += found.used
    return bestOf(found.population)
  }
}
