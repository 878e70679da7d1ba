import { randomStream } from '../numeric/index.js'

/** A candidate: its variables (choices as whole numbers), its goals (all to be made small) and how far it breaks its constraints. */
export interface Candidate {
  readonly x: Float64Array
  readonly goals: Float64Array
  /** Sum of the scaled violations; 0 when all constraints hold, infinite where the formula has no answer. */
  readonly violation: number
}

/** A search problem on plain numbers. */
export interface Problem {
  /** Lowest and highest value of each variable; for a choice 0 and the number of options minus one. */
  readonly low: Float64Array
  readonly high: Float64Array
  /** Whether a variable is a choice between options without order. */
  readonly choice: readonly boolean[]
  readonly goals: number
  run(x: Float64Array): Candidate
}

/** How a search is run. */
export interface Evolution {
  readonly population: number
  readonly evaluations: number
  readonly seed: number
  /** Which of several independent searches with this seed. */
  readonly round?: number
  /** The crowd has drawn together when it spans less than this part of every range. Default 1e-10. */
  readonly tolerance?: number
  readonly progress?: ((done: number, of: number, best: Candidate) => void) | undefined
}

/** Whether one candidate is at least as good in everything and better in something; broken constraints count first. */
export function dominates(a: Candidate, b: Candidate): boolean {
  if (a.violation > 0 || b.violation > 0) return a.violation < b.violation
  let better = false
  for (let k = 0; k < a.goals.length; k++) {
    if ((a.goals[k] as number) > (b.goals[k] as number)) return false
    if ((a.goals[k] as number) < (b.goals[k] as number)) better = true
  }
  return better
}

/**
 * Differential evolution for continuous variables and choices together, with constraints and any number of goals.
 *
 * A trial that is at least as good replaces its parent; where neither is better, both stay and the crowd is thinned by rank and crowding.
 * Choices are taken over whole from the parents mixed, or now and then drawn anew. Stops when the evaluations are used up or, with one goal, when the population has drawn
 * together. Repeatable: every draw comes from the seed.
 *
 * Sources: R. Storn, K. Price, *J. Global Optim.* 11 (1997) 341; S. Kukkonen, J. Lampinen, *IEEE CEC* 2005, 443 (several goals); K. Deb,
 * *Comput. Methods Appl. Mech. Eng.* 186 (2000) 311 (constraints first); K. Deb et al., *IEEE Trans. Evol. Comput.* 6 (2002) 182 (crowding).
 */
export function evolve(
  problem: Problem,
  { population, evaluations, seed, round = 0, tolerance = 1e-10, progress }: Evolution,
): { crowd: Candidate[]; used: number } {
  const { low, high, choice } = problem
  const n = low.length
  const random = randomStream(seed, round)
  const anew = (i: number) =>
    choice[i]
      ? (low[i] as number) + random.integer((high[i] as number) - (low[i] as number) + 1)
      : random.uniformBetween(low[i] as number, high[i] as number)
  let crowd: Candidate[] = []
  for (let p = 0; p < population; p++) crowd.push(problem.run(Float64Array.from({ length: n }, (_, i) => anew(i))))
  let used = population
  while (used + population <= evaluations) {
    const children: Candidate[] = []
    const leader = bestOf(crowd)
    for (let p = 0; p < population; p++) {
      const parent = crowd[p] as Candidate
      const [a, b, c] = threeOthers(population, p, random.integer)
      const scale = random.uniformBetween(0.3, 0.9)
      const crossover = random.uniform() < 0.5 ? 0.9 : 0.2
      const certain = random.integer(n)
      // With one goal, now and then from the best: narrow corners between constraints are closed in on faster.
      const base = problem.goals === 1 && random.uniform() < FROM_BEST ? leader : (crowd[a] as Candidate)
      const x = parent.x.slice()
      for (let i = 0; i < n; i++) {
        if (i !== certain && random.uniform() >= crossover) continue
        const [xa, xb, xc] = [base.x[i] as number, (crowd[b] as Candidate).x[i] as number, (crowd[c] as Candidate).x[i] as number]
        if (choice[i]) x[i] = random.uniform() < 0.1 ? anew(i) : xa
        else {
          const moved = xa + scale * (xb - xc)
          // Beyond a limit: somewhere between the parent and the limit, so that optima on limits are reached.
          const limit = moved < (low[i] as number) ? (low[i] as number) : moved > (high[i] as number) ? (high[i] as number) : undefined
          x[i] = limit === undefined ? moved : limit + (random.uniform() < 0.5 ? 0 : random.uniform() * ((parent.x[i] as number) - limit))
        }
      }
      children.push(problem.run(x))
    }
    used += population
    const next: Candidate[] = []
    const extra: Candidate[] = []
    for (let p = 0; p < population; p++) {
      const parent = crowd[p] as Candidate
      const child = children[p] as Candidate
      if (dominates(parent, child)) next.push(parent)
      else {
        next.push(child)
        if (problem.goals > 1 && !dominates(child, parent) && child.violation === 0) extra.push(parent)
      }
    }
    crowd = extra.length > 0 ? thinned([...next, ...extra], population) : next
    progress?.(used, evaluations, bestOf(crowd))
    if (problem.goals === 1 && drawnTogether(crowd, problem, tolerance)) break
  }
  return { crowd, used }
}

/** What one or several searches found. */
export interface Searched {
  readonly crowd: Candidate[]
  readonly used: number
  /** Independent searches that settled, and how many of them settled on the best. */
  readonly searches: number
  readonly agreeing: number
}

const ENOUGH_AGREEING = 3
const FROM_BEST = 0.3
/** How close a crowd draws together before two options are compared. */
const ROUGH = 1e-4
/** Catalogues up to this length are tried whole around an optimum; in longer ones the neighbours in their order. */
const TRIED_WHOLE = 6

/** The problem with every choice but none of the continuous variables held. */
function held(problem: Problem, options: (i: number) => number): Problem {
  const hold = (limit: Float64Array) => limit.map((value, i) => (problem.choice[i] ? options(i) : value))
  return { ...problem, low: hold(problem.low), high: hold(problem.high) }
}

/**
 * Climbs over the options around a settled optimum: for each neighbour the continuous variables are searched afresh, since another option is
 * often allowed only in a corner that the settled crowd has left.
 */
function climbed(problem: Problem, from: Candidate, round: number, seed: number, evaluations: number): { best: Candidate; used: number } {
  const { choice, low, high } = problem
  const continuous = choice.filter((is) => !is).length
  const population = Math.max(24, 8 * continuous)
  const closing = 2 * population
  let best = from
  let used = 0
  let trial = 0
  const tried = new Set<string>()
  const key = (x: Float64Array) => x.filter((_, i) => choice[i]).join()
  const fresh = (x: Float64Array, tolerance: number, size: number) => {
    if (continuous === 0) {
      used++
      return problem.run(x)
    }
    const found = evolve(
      held(problem, (i) => x[i] as number),
      {
        population: size, // An option that is nowhere allowed would never draw together.
        evaluations: Math.min(evaluations - used, size * (tolerance === ROUGH ? 60 : 400)),
        seed,
        round: 1000 * (round + 1) + trial++,
        tolerance,
      },
    )
    used += found.used
    return bestOf(found.crowd)
  }
  for (let improved = true; improved; ) {
    improved = false
    tried.add(key(best.x))
    for (let c = 0; c < choice.length; c++) {
      if (!choice[c]) continue
      const [first, last, own] = [low[c] as number, high[c] as number, best.x[c] as number]
      const whole = last - first < TRIED_WHOLE
      for (let option = whole ? first : Math.max(first, own - 1); option <= (whole ? last : Math.min(last, own + 1)); option++) {
        const x = best.x.slice()
        x[c] = option
        if (tried.has(key(x)) || used + 2 * population > evaluations) continue
        tried.add(key(x))
        const found = fresh(x, ROUGH, population)
        if (bestOf([best, found]) === found) {
          best = found
          improved = true
        }
      }
    }
  }
  if (best === from || continuous === 0) return { best, used }
  const closed = used + 2 * closing > evaluations ? best : fresh(best.x, 1e-10, closing)
  return { best: bestOf([best, closed]), used }
}

/**
 * Independent searches until three settle on the same best or the evaluations are used up: a single crowd may draw together on the wrong
 * option. With several goals one search uses all evaluations.
 */
export function search(problem: Problem, evolution: Evolution): Searched {
  const { evaluations, population, progress } = evolution
  if (problem.goals > 1) return { ...evolve(problem, evolution), searches: 1, agreeing: 1 }
  const bests: Candidate[] = []
  let used = 0
  let best: Candidate | undefined
  const agreeing = () => bests.filter((each) => best !== undefined && same(each, best)).length
  for (let round = 0; used + 2 * population <= evaluations; round++) {
    const before = used
    const found = evolve(problem, {
      ...evolution,
      round,
      evaluations: evaluations - used,
      progress: progress && ((done, _, candidate) => progress(before + done, evaluations, candidate)),
    })
    used += found.used
    const climb = problem.choice.includes(true)
      ? climbed(problem, bestOf(found.crowd), round, evolution.seed, evaluations - used)
      : undefined
    used += climb?.used ?? 0
    const settled = climb?.best ?? bestOf(found.crowd)
    best = best === undefined ? settled : bestOf([best, settled])
    // A search cut short by the evaluations says nothing about agreement.
    if (round === 0 || used + population <= evaluations) bests.push(settled)
    if (agreeing() >= ENOUGH_AGREEING) break
  }
  return { crowd: [best as Candidate], used, searches: bests.length, agreeing: agreeing() }
}

/** The same value of the goal, to what a designer can tell. */
const same = (a: Candidate, b: Candidate): boolean => {
  const [p, q] = [a.goals[0] as number, b.goals[0] as number]
  return a.violation === b.violation && Math.abs(p - q) <= 1e-6 * Math.max(Math.abs(p), Math.abs(q), 1e-300) + 1e-12
}

function threeOthers(population: number, own: number, integer: (count: number) => number): [number, number, number] {
  const picked: number[] = []
  while (picked.length < 3) {
    const k = integer(population)
    if (k !== own && !picked.includes(k)) picked.push(k)
  }
  return picked as [number, number, number]
}

/** The candidate with the least violation, then the least first goal. */
export const bestOf = (crowd: readonly Candidate[]): Candidate =>
  crowd.reduce((best, each) =>
    each.violation < best.violation || (each.violation === best.violation && (each.goals[0] as number) < (best.goals[0] as number))
      ? each
      : best,
  )

function drawnTogether(crowd: readonly Candidate[], { low, high, choice }: Problem, part: number): boolean {
  if (crowd.some(({ violation }) => violation > 0)) return false
  const first = crowd[0] as Candidate
  for (let i = 0; i < low.length; i++) {
    const tolerance = choice[i] ? 0 : part * ((high[i] as number) - (low[i] as number))
    if (crowd.some(({ x }) => Math.abs((x[i] as number) - (first.x[i] as number)) > tolerance)) return false
  }
  return true
}

/** Candidates in fronts: none in a front dominates another, each is dominated only by earlier fronts. */
export function fronts(crowd: readonly Candidate[]): Candidate[][] {
  const n = crowd.length
  const below: number[][] = Array.from({ length: n }, () => [])
  const above = new Int32Array(n)
  for (let i = 0; i < n; i++)
    for (let j = i + 1; j < n; j++) {
      if (dominates(crowd[i] as Candidate, crowd[j] as Candidate)) {
        below[i]?.push(j)
        above[j] = (above[j] as number) + 1
      } else if (dominates(crowd[j] as Candidate, crowd[i] as Candidate)) {
        below[j]?.push(i)
        above[i] = (above[i] as number) + 1
      }
    }
  const found: Candidate[][] = []
  let current = Array.from({ length: n }, (_, i) => i).filter((i) => above[i] === 0)
  while (current.length > 0) {
    found.push(current.map((i) => crowd[i] as Candidate))
    const next: number[] = []
    for (const i of current)
      for (const j of below[i] as number[]) {
        above[j] = (above[j] as number) - 1
        if (above[j] === 0) next.push(j)
      }
    current = next
  }
  return found
}

/** The best by front, and within the last front those that stand most alone, removed one at a time. */
function thinned(crowd: readonly Candidate[], size: number): Candidate[] {
  const kept: Candidate[] = []
  for (const front of fronts(crowd)) {
    if (kept.length + front.length <= size) kept.push(...front)
    else {
      kept.push(...leastCrowded(front, size - kept.length))
      break
    }
  }
  return kept
}

function leastCrowded(front: readonly Candidate[], size: number): Candidate[] {
  let left = [...front]
  while (left.length > size) {
    // Removing a few at a time keeps the spacing even at little cost.
    const remove = Math.max(1, Math.min(left.length - size, Math.floor((left.length - size) / 4)))
    const distance = crowding(left)
    const order = left.map((_, i) => i).sort((a, b) => (distance[a] as number) - (distance[b] as number))
    const gone = new Set(order.slice(0, remove))
    left = left.filter((_, i) => !gone.has(i))
  }
  return left
}

/** How alone each candidate stands in its front: distance between its neighbours, summed over the goals; infinite at the ends. */
function crowding(front: readonly Candidate[]): Float64Array {
  const distance = new Float64Array(front.length)
  const goals = front[0]?.goals.length ?? 0
  for (let k = 0; k < goals; k++) {
    const at = (i: number) => (front[i] as Candidate).goals[k] as number
    const order = front.map((_, i) => i).sort((a, b) => at(a) - at(b))
    const [first, last] = [order[0] as number, order.at(-1) as number]
    const range = at(last) - at(first)
    distance[first] = Number.POSITIVE_INFINITY
    distance[last] = Number.POSITIVE_INFINITY
    if (range > 0)
      for (let i = 1; i < order.length - 1; i++) {
        const own = order[i] as number
        distance[own] = (distance[own] as number) + (at(order[i + 1] as number) - at(order[i - 1] as number)) / range
      }
  }
  return distance
}
