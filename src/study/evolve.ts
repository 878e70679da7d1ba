import { type RandomStream, randomStream } from '../numeric/index.js'
import { Crossover } from './crossover.js'
import { fronts, movement, truncatedFronts } from './fronts.js'
import { bestOf, type Candidate, dominates, type Problem } from './search-problem.js'

/** How a search is run. */
export interface Evolution {
  readonly population: number
  readonly evaluations: number
  readonly seed: number
  /** Which of several independent searches with this seed. */
  readonly round?: number
  /** The population has converged when it spans less than this part of every range. Default 1e-4: a local descent follows. */
  readonly tolerance?: number
  readonly progress?: ((done: number, of: number, best: Candidate) => void) | undefined
}

/** Result of one search. */
export interface Evolved {
  readonly population: Candidate[]
  /** The random points from which it began. */
  readonly first: readonly Candidate[]
  readonly used: number
  /** One goal: the population has converged. Several: the front hardly moved over the last quarter of the evaluations. */
  readonly settled: boolean
}

/** How often a trial starts from the best candidate. */
const FROM_BEST = 0.3
/** A front that moved by less than this share of its ranges has settled. */
const MOVED = 0.01

/**
 * Differential evolution for continuous variables and choices together, with constraints and any number of goals.
 *
 * A trial that is at least as good replaces its parent. Where neither is better, both stay and the population is truncated by rank and crowding
 * distance; a front is taken from all candidates that were met. Choices are copied whole from one parent or sometimes drawn at random. The search stops when the evaluations are used up or, with one
 * goal, when the population has converged. Repeatable: every draw comes from the seed.
 *
 * Ours: no library that is kept searches continuous variables and unordered choices under constraints with several goals.
 *
 * Sources: R. Storn, K. Price, *J. Global Optim.* 11 (1997) 341; S. Kukkonen, J. Lampinen, *IEEE CEC* 2005, 443 (several goals); K. Deb,
 * *Comput. Methods Appl. Mech. Eng.* 186 (2000) 311 (constraints first); K. Deb et al., *IEEE Trans. Evol. Comput.* 6 (2002) 182 (crowding).
 */
export function evolve(
  problem: Problem,
  { population: size, evaluations, seed, round = 0, tolerance = 1e-4, progress }: Evolution,
): Evolved {
  const random = randomStream(seed, round)
  const first = Array.from({ length: size }, () => problem.run(Float64Array.from(problem.low, (_, i) => anew(problem, i, random))))
  let population = first
  let used = size
  const several = problem.goals > 1
  const crossover = several ? new Crossover() : undefined
  let archive: Candidate[] = []
  const slackAt = problem.equalities ? relaxation(first, evaluations) : () => 0
  let earlier: Candidate[] | undefined
  let settled = false
  while (used + size <= evaluations && !settled) {
    const leader = bestOf(population)
    const children = population.map((_, p) => problem.run(trial(problem, population, p, leader, random, crossover)))
    used += size
    crossover?.learn(children.map((child, p) => dominates(child, population[p] as Candidate)))
    population = survivors(population, children, problem.goals, slackAt(used))
    if (several) archive = kept(merged(archive, children), ARCHIVE * size)
    progress?.(used, evaluations, bestOf(population))
    // While constraints are relaxed, a population that keeps none of them is at no end.
    if (!several) settled = hasConverged(population, problem, tolerance) && (slackAt(used) === 0 || isFeasible(population))
    else if (earlier === undefined && used >= 0.75 * evaluations) earlier = fronts(population)[0]
  }
  if (earlier !== undefined) settled = isFeasible(population) && movement(earlier, fronts(population)[0] as Candidate[]) <= MOVED
  const front = several ? truncatedFronts(merged(archive, population), ARCHIVE * size) : []
  return { population: front.length > 0 ? front : population, first, used, settled }
}

const isFeasible = (population: readonly Candidate[]) => bestOf(population).violation === 0

/** Candidates of a front that are kept, for each one of the population. */
const ARCHIVE = 2

/** The fronts of an archive that has grown to twice its size. Seldom, because it is slow. */
const kept = (archive: Candidate[], size: number) => (archive.length > 2 * size ? truncatedFronts(archive, size) : archive)

/** The candidates that keep all constraints and that none dominates, of an archive of such and new ones. */
function merged(archive: readonly Candidate[], found: readonly Candidate[]): Candidate[] {
  let front = [...archive]
  for (const each of found) {
    if (each.violation > 0 || front.some((other) => other === each || dominates(other, each))) continue
    front = front.filter((other) => !dominates(each, other))
    front.push(each)
  }
  return front
}

/** A random value of a variable. */
const anew = ({ low, high, choice }: Problem, i: number, random: RandomStream): number =>
  choice[i]
    ? (low[i] as number) + random.integer((high[i] as number) - (low[i] as number) + 1)
    : random.uniformBetween(low[i] as number, high[i] as number)

/** The variables of a trial for one parent. */
function trial(
  problem: Problem,
  population: readonly Candidate[],
  p: number,
  leader: Candidate,
  random: RandomStream,
  front: Crossover | undefined,
): Float64Array {
  const { low, high, choice } = problem
  const n = low.length
  const parent = population[p] as Candidate
  const [a, b, c] = threeOthers(population.length, p, random.integer)
  // Steps of a front are shorter: it has to be spread, not only reached.
  const scale = front === undefined ? random.uniformBetween(0.3, 0.9) : random.uniformBetween(0.3, 0.5)
  const crossover = front?.next(random) ?? (random.uniform() < 0.5 ? 0.9 : 0.2)
  const certain = random.integer(n)
  const base = baseOf(population, population[a] as Candidate, leader, random, front !== undefined)
  const x = parent.x.slice()
  for (let i = 0; i < n; i++) {
    if (i !== certain && random.uniform() >= crossover) continue
    const [xa, xb, xc] = [base.x[i] as number, (population[b] as Candidate).x[i] as number, (population[c] as Candidate).x[i] as number]
    if (choice[i]) x[i] = random.uniform() < 0.1 ? anew(problem, i, random) : xa
    else {
      const moved = xa + scale * (xb - xc)
      // Beyond a limit: somewhere between the parent and the limit, so that optima on limits are reached.
      const limit = moved < (low[i] as number) ? (low[i] as number) : moved > (high[i] as number) ? (high[i] as number) : undefined
      x[i] = limit === undefined ? moved : limit + (random.uniform() < 0.5 ? 0 : random.uniform() * ((parent.x[i] as number) - limit))
    }
  }
  return x
}

/** Where a trial starts: with one goal sometimes from the best, so that narrow corners are approached faster; with several from the better of two. */
function baseOf(population: readonly Candidate[], drawn: Candidate, leader: Candidate, random: RandomStream, front: boolean): Candidate {
  if (!front) return random.uniform() < FROM_BEST ? leader : drawn
  const other = population[random.integer(population.length)] as Candidate
  return dominates(other, drawn) ? other : drawn
}

/** Share of the evaluations over which the relaxation ends. */
const RELAXED = 0.3

/**
 * By how much constraints may be broken after some evaluations, where there are equalities: the goal would otherwise count for nothing until
 * the population has shrunk onto the first points that keep them. Source: T. Takahama, S. Sakai, *IEEE CEC* 2006, 1.
 */
export function relaxation(first: readonly Candidate[], evaluations: number): (used: number) => number {
  const violations = first
    .map(({ violation }) => violation)
    .filter(Number.isFinite)
    .sort((a, b) => a - b)
  const start = violations[violations.length >> 1] ?? 0
  return (used) => start * Math.max(0, 1 - used / (RELAXED * evaluations)) ** 5
}

/** The next population: of each parent and child the better, with several goals both where neither is. */
function survivors(population: readonly Candidate[], children: readonly Candidate[], goals: number, slack: number): Candidate[] {
  const next: Candidate[] = []
  const extra: Candidate[] = []
  population.forEach((parent, p) => {
    const child = children[p] as Candidate
    if (dominates(parent, child, slack)) next.push(parent)
    else {
      next.push(child)
      if (goals > 1 && !dominates(child, parent) && child.violation === 0) extra.push(parent)
    }
  })
  return extra.length > 0 ? truncatedFronts([...next, ...extra], population.length) : next
}

function threeOthers(population: number, own: number, integer: (count: number) => number): [number, number, number] {
  const picked: number[] = []
  while (picked.length < 3) {
    const k = integer(population)
    if (k !== own && !picked.includes(k)) picked.push(k)
  }
  return picked as [number, number, number]
}

/** A population that spans less than this part of every range moves no more. */
const STUCK = 1e-10

function hasConverged(population: readonly Candidate[], { low, high, choice }: Problem, part: number): boolean {
  if (population.some(({ violation }) => violation === Number.POSITIVE_INFINITY)) return false
  const first = population[0] as Candidate
  // Nowhere allowed so far: a population that can still move may get there.
  const share = population.some(({ violation }) => violation > 0) ? Math.min(part, STUCK) : part
  for (let i = 0; i < low.length; i++) {
    const tolerance = choice[i] ? 0 : share * ((high[i] as number) - (low[i] as number))
    if (population.some(({ x }) => Math.abs((x[i] as number) - (first.x[i] as number)) > tolerance)) return false
  }
  return true
}
