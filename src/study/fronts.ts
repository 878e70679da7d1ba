import { type Candidate, dominates } from './search-problem.js'

/** Candidates in fronts: none in a front dominates another, each is dominated only by earlier fronts. */
export function fronts(population: readonly Candidate[]): Candidate[][] {
  const n = population.length
  const below: number[][] = Array.from({ length: n }, () => [])
  const above = new Int32Array(n)
  for (let i = 0; i < n; i++)
    for (let j = i + 1; j < n; j++) {
      if (dominates(population[i] as Candidate, population[j] as Candidate)) {
        below[i]?.push(j)
        above[j] = (above[j] as number) + 1
      } else if (dominates(population[j] as Candidate, population[i] as Candidate)) {
        below[j]?.push(i)
        above[i] = (above[i] as number) + 1
      }
    }
  const found: Candidate[][] = []
  let current = Array.from({ length: n }, (_, i) => i).filter((i) => above[i] === 0)
  while (current.length > 0) {
    found.push(current.map((i) => population[i] as Candidate))
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

/** The best by front, and within the last front those with the largest crowding distance. */
export function truncatedFronts(population: readonly Candidate[], size: number): Candidate[] {
  const kept: Candidate[] = []
  for (const front of fronts(population)) {
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
    // Removing a few at a time keeps the spacing uniform at little cost.
    const remove = Math.max(1, Math.min(left.length - size, Math.floor((left.length - size) / 4)))
    const distance = crowdingDistance(left)
    const order = left.map((_, i) => i).sort((a, b) => (distance[a] as number) - (distance[b] as number))
    const gone = new Set(order.slice(0, remove))
    left = left.filter((_, i) => !gone.has(i))
  }
  return left
}

/** Crowding distance of each candidate in its front: distance between its neighbours, summed over the goals; infinite at the ends. */
function crowdingDistance(front: readonly Candidate[]): Float64Array {
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

/**
 * How far one front lies behind another, as a share of the ranges of the goals: the most that some point of the later front is better in every
 * goal than the nearest point of the earlier one. Source: E. Zitzler et al., *IEEE Trans. Evol. Comput.* 7 (2003) 117 (additive epsilon indicator).
 */
export function movement(earlier: readonly Candidate[], later: readonly Candidate[]): number {
  const goals = later[0]?.goals.length ?? 0
  const goal = (each: Candidate, k: number) => each.goals[k] as number
  const ranges = Array.from({ length: goals }, (_, k) => {
    const values = later.map((each) => goal(each, k))
    return Math.max(...values) - Math.min(...values)
  })
  const behind = (a: Candidate, b: Candidate) =>
    ranges.reduce((max, range, k) => (range > 0 ? Math.max(max, (goal(a, k) - goal(b, k)) / range) : max), Number.NEGATIVE_INFINITY)
  return later.reduce(
    (max, b) =>
      Math.max(
        max,
        earlier.reduce((min, a) => Math.min(min, behind(a, b)), Number.POSITIVE_INFINITY),
      ),
    0,
  )
}
