import { type OdeSolution, solveStiff } from '../numeric/index.js'
import { GAUSS, WEIGHT } from './course-extremes.js'
import { settler, storageOf, storedSlopes, withStill } from './network-algebraic.js'
import { flowOf, imbalance, lossAt, type NetworkNumbers } from './network-numbers.js'

/** A limit watched during a transient, in kelvin: of a node, or of any weighted sum of nodes (weights adding to one). */
export interface Watch {
  readonly of: (y: ArrayLike<number>) => number
  readonly limit: number
}

/** A stretch of time with one set of losses. */
export interface CourseNumbers {
  /** States are the free nodes. */
  readonly solution: OdeSolution
  readonly end: Float64Array
  readonly state: 'finished' | 'runaway' | 'limit'
}

/** Part of the duration that is kept of a transient that cannot begin. */
const AT_ONCE = 1e-9

/** Follows a network from given temperatures. Stops at a runaway, and at the first limit if required. */
export function courseNumbers(
  n: NetworkNumbers,
  initial: Float64Array,
  duration: number,
  options: { watch?: readonly Watch[]; stopAtLimit?: boolean; tolerance?: number } = {},
): CourseNumbers {
  const size = n.names.length
  const { watch = [], stopAtLimit = false, tolerance = 5e-6 } = options
  const storage = storageOf(n)
  const { storing } = storage
  const settle = settler(n, storage)
  const T = new Float64Array(size + n.fixed.length)
  T.set(initial.subarray(0, size))
  T.set(n.fixed, size)
  const net = new Float64Array(size)
  /** All temperatures of those of the storing nodes. */
  const all = (y: Float64Array) => {
    for (let k = 0; k < storing.length; k++) T[storing[k]!] = y[k]!
    settle(T)
    return T
  }
  const initialStored = Float64Array.from(storing, (i) => initial[i]!)
  // A node without capacity may run away at once: then there is nothing to follow.
  const away = hottestOf(all(initialStored), size) > n.ceiling
  const solution = solveStiff({
    derivative: (_t, y, out) => {
      imbalance(n, all(y), net)
      for (let k = 0; k < storing.length; k++) out[k] = net[storing[k]!]! / n.capacities[storing[k]!]!
    },
    jacobian: (_t, y, out) => {
      const rate = storedSlopes(n, storage, all(y))
      for (let k = 0; k < rate.length; k++) out[k] = rate[k]! / n.capacities[storing[Math.floor(k / storing.length)]!]!
    },
    start: 0,
    end: away ? duration * AT_ONCE : duration,
    initial: initialStored,
    // Kelvin of a step, whatever the level.
    relativeTolerance: 0,
    absoluteTolerance: tolerance,
    events: [
      { value: (_t, y) => hottestOf(all(y), size) - n.ceiling, direction: 'rising', terminal: true },
      ...watch.map(({ of, limit }) => ({
        value: (_t: number, y: Float64Array) => of(all(y)) - limit,
        direction: 'rising' as const,
        terminal: stopAtLimit,
      })),
    ],
  })
  const last = solution.events.at(-1)
  const state = away ? 'runaway' : solution.ended === 'end' ? 'finished' : last?.event === 0 ? 'runaway' : 'limit'
  const whole = withStill(n, storage, solution)
  return { solution: whole, end: whole.yEnd, state }
}

const hottestOf = (y: Float64Array, size: number): number => {
  let max = 0
  for (let i = 0; i < size; i++) if (y[i]! > max) max = y[i]!
  return max
}

/** Where the heat of a transient went, joules. Found by Gauss's rule over the transient, so that its closing tests the solver. */
export function ledgerOf(n: NetworkNumbers, solution: OdeSolution): { released: number; given: number; stored: number } {
  const size = n.names.length
  const T = new Float64Array(size + n.fixed.length)
  T.set(n.fixed, size)
  const y = new Float64Array(size)
  let released = 0
  let given = 0
  const { t } = solution
  for (let k = 1; k < t.length; k++) {
    const span = t[k]! - t[k - 1]!
    for (let p = 0; p < 3; p++) {
      T.set(solution.at(t[k - 1]! + span * GAUSS[p]!, y))
      const weight = span * WEIGHT[p]!
      for (const loss of n.losses) released += weight * lossAt(loss, T)
      for (const link of n.links) {
        if (link.a < size === link.b < size) continue
        given += weight * (link.b < size ? -flowOf(link, T) : flowOf(link, T))
      }
    }
  }
  const start = solution.at(t[0]!)
  let stored = 0
  for (let i = 0; i < size; i++) stored += n.capacities[i]! * (solution.yEnd[i]! - start[i]!)
  return { released, given, stored }
}
