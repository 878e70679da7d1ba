import { type Evolution, evolve } from './evolve.js'
import { descend } from './local-descent.js'
import { searchOptions } from './option-search.js'
import { bestOf, type Candidate, type Problem } from './search-problem.js'

/** Result of one or several searches. */
export interface SearchResult {
  readonly population: Candidate[]
  readonly used: number
  /** Independent searches that settled, and how many of them settled on the best. */
  readonly searches: number
  readonly agreeing: number
  /** One goal: whether a search that settled found the best. Several: whether the front has settled. */
  readonly settled: boolean
  /** Of the random points from which the searches began, how many there were and how many kept all constraints. */
  readonly starts: number
  readonly feasibleStarts: number
}

const ENOUGH_AGREEING = 3
/** Share of the evaluations that is kept for the local descent of a search that does not settle. */
const KEPT_BACK = 0.2

/**
 * Independent searches until three settle on the same best or the evaluations are used up: a single population may converge on the wrong
 * option. Each ends with a local descent. With several goals one search uses all evaluations.
 */
export function search(problem: Problem, evolution: Evolution): SearchResult {
  const { evaluations, population, progress } = evolution
  if (problem.goals > 1) {
    const { first, ...found } = evolve(problem, evolution)
    return { ...found, searches: 1, agreeing: 1, starts: first.length, feasibleStarts: feasibleIn(first) }
  }
  const settled: Candidate[] = []
  const starts: Candidate[] = []
  let used = 0
  let best: Candidate | undefined
  let tolerance = 0
  const agreeing = () => settled.filter((each) => best !== undefined && same(each, best, tolerance)).length
  const reserve = Math.min(Math.floor(KEPT_BACK * evaluations), 300 * problem.low.length)
  for (let round = 0; used + 2 * population + (round === 0 ? 0 : reserve) <= evaluations; round++) {
    const before = used
    const found = evolve(problem, {
      ...evolution,
      round,
      evaluations: Math.max(2 * population, evaluations - used - reserve),
      progress: progress && ((done, _, candidate) => progress(before + done, evaluations, candidate)),
    })
    used += found.used
    starts.push(...found.first)
    tolerance = spreadOf(starts)
    const options = problem.choice.includes(true)
      ? searchOptions(problem, bestOf(found.population), round, evolution.seed, evaluations - used)
      : { best: bestOf(found.population), used: 0, complete: true }
    used += options.used
    const closed = descend(problem, options.best, evaluations - used)
    used += closed.used
    progress?.(used, evaluations, closed.best)
    best = best === undefined ? closed.best : bestOf([best, closed.best])
    // A search that the evaluations cut short says nothing about agreement.
    if (found.settled && options.complete) settled.push(closed.best)
    if (agreeing() >= ENOUGH_AGREEING) break
  }
  return {
    population: [best as Candidate],
    used,
    searches: settled.length,
    agreeing: agreeing(),
    settled: agreeing() > 0,
    starts: starts.length,
    feasibleStarts: feasibleIn(starts),
  }
}

const feasibleIn = (candidates: readonly Candidate[]): number => candidates.filter(({ violation }) => violation === 0).length

/** By how much the goal varies over random points: between their quartiles. */
export function spreadOf(starts: readonly Candidate[]): number {
  const goals = starts
    .map(({ goals: [goal] }) => goal as number)
    .filter(Number.isFinite)
    .sort((a, b) => a - b)
  const quartile = (part: number) => goals[Math.floor(part * (goals.length - 1))] ?? 0
  return quartile(0.75) - quartile(0.25) || quartile(1) - quartile(0)
}

/** The same value of the goal, to what a designer can tell; `spread` is by how much it varies over the ranges, so that no unit and no offset matters. */
const same = (a: Candidate, b: Candidate, spread: number): boolean => {
  const [p, q] = [a.goals[0] as number, b.goals[0] as number]
  const alike = (x: number, y: number, floor: number) =>
    Math.abs(x - y) <= Math.min(1e-6 * Math.max(Math.abs(x), Math.abs(y)), 1e-4 * floor) + 1e-9 * floor
  return (
    alike(p, q, spread) && (a.violation === b.violation || Math.abs(a.violation - b.violation) <= 1e-6 * Math.max(a.violation, b.violation))
  )
}
