import { randomStream } from '../numeric/index.js'
import { refuse } from '../units/index.js'
import { dampedInverse } from './chain-inverse.js'
import type { InverseRequest, InverseResult } from './chain-inverse-request.js'
import type { ChainKernel } from './chain-kernel.js'

/** How often, and towards what, an inverse is searched; SI. */
export interface SearchRequest extends InverseRequest {
  /** Searches from drawn seeds besides the one from `seed`. */
  readonly restarts: number
  /** Seed of the drawing. */
  readonly randomSeed: number
  /** Joint values to come near to where the chain has joints to spare. Default: no preference. */
  readonly preferred?: ArrayLike<number> | undefined
}

/** Result of several searches. */
export interface SearchResult {
  /**
   * `reached`; `nearestFound`: no search reached the target, and of eight or more at least three and a quarter ended at the same least error (no proof:
   * of 600 targets between tight limits it was wrong for 2); `localStop`: no small motion comes nearer, but a search from elsewhere may;
   * `iterationLimit`; `notANumber`.
   */
  readonly ended: 'reached' | 'nearestFound' | 'localStop' | 'iterationLimit' | 'notANumber'
  readonly best: InverseResult
  readonly searches: number
  /** Searches that ended at the error of the best. */
  readonly agreeing: number
  /** Different joint values that reach the target, whole turns apart counted once. */
  readonly solutions: readonly Float64Array[]
}

const ENOUGH_SOLUTIONS = 8
/** Two ends whose errors differ by less than this part are one. */
const SAME_ERROR = 1e-6

/** Searches from the given seed and from drawn ones. */
export function searchInverse(chain: ChainKernel, request: SearchRequest): SearchResult {
  const seeds = [request.seed, ...drawnSeeds(chain, request)]
  const found = seeds.map((seed) => dampedInverse(chain, { ...request, seed }))
  const reached = found.filter(({ ended }) => ended === 'reached')
  const min = Math.min(...found.map(({ error }) => error))
  const first = reached[0] ?? found.find(({ error }) => error === min) ?? found[0]!
  const best = reached.length > 0 && request.preferred !== undefined ? towards(chain, request, reached, request.preferred) : first
  const agreeing =
    reached.length > 0
      ? reached.length
      : found.filter(({ ended, error }) => ended === 'localStop' && error <= min * (1 + SAME_ERROR) + request.tolerance).length
  const nearest = best.ended === 'localStop' && found.length >= ENOUGH_SOLUTIONS && agreeing >= Math.max(3, found.length / 4)
  return { ended: nearest ? 'nearestFound' : best.ended, best, searches: found.length, agreeing, solutions: different(chain, reached) }
}

/** Seeds drawn uniformly between the limits; a turning joint without limits is drawn over one turn. */
function drawnSeeds(chain: ChainKernel, { restarts, randomSeed, lowest, highest }: SearchRequest): Float64Array[] {
  if (restarts === 0) return []
  const open = Array.from({ length: chain.joints }, (_, i) => i).find(
    (i) => chain.sliding[i] === 1 && !Number.isFinite(highest[i]! - lowest[i]!),
  )
  if (open !== undefined)
    refuse(
      'kinematics.serialChain.inverse',
      'restarts',
      restarts,
      `needs limits for the sliding joint ${open}: its seeds are drawn between them`,
    )
  const random = randomStream(randomSeed)
  return Array.from({ length: restarts }, () =>
    Float64Array.from({ length: chain.joints }, (_, i) => {
      const low = Number.isFinite(lowest[i]) ? lowest[i]! : Number.isFinite(highest[i]) ? highest[i]! - 2 * Math.PI : -Math.PI
      return low + random.uniform() * (Math.min(highest[i]!, Math.max(low + 2 * Math.PI, low)) - low)
    }),
  )
}

/** Reached values that differ by more than rounding, turning joints give or take whole turns. */
function different(chain: ChainKernel, reached: readonly InverseResult[]): Float64Array[] {
  const solutions: Float64Array[] = []
  for (const { values } of reached) {
    const known = solutions.some((other) =>
      other.every((x, i) => {
        const apart = values[i]! - x
        return Math.abs(chain.sliding[i] === 1 ? apart : apart - 2 * Math.PI * Math.round(apart / (2 * Math.PI))) < SAME_ERROR
      }),
    )
    if (!known) solutions.push(values)
  }
  return solutions
}

const MAX_STEPS = 200
const SMALLEST_STEP = 1e-9

/**
 * Starts at the reached values nearest to the preferred ones and steps along the null space of the tool's Jacobian, which does not move the tool. A search
 * back onto the target follows each step.
 */
function towards(
  chain: ChainKernel,
  request: SearchRequest,
  reached: readonly InverseResult[],
  preferred: ArrayLike<number>,
): InverseResult {
  const distance = (values: Float64Array) => Math.hypot(...values.map((x, i) => x - preferred[i]!))
  let best = reached.reduce((a, b) => (distance(b.values) < distance(a.values) ? b : a))
  const wish = new Float64Array(chain.joints)
  const step = new Float64Array(chain.joints)
  const still = new Float64Array(request.rotation === undefined ? 3 : 6)
  let share = 1
  for (let k = 0; k < MAX_STEPS && share > SMALLEST_STEP; k++) {
    for (let i = 0; i < wish.length; i++) wish[i] = preferred[i]! - best.values[i]!
    if (!chain.ratesInto(step, 0, best.values, still, SMALLEST_STEP, request.lengthPerRadian, wish)) return best
    const seed = best.values.map((x, i) => x + share * step[i]!)
    const next = dampedInverse(chain, { ...request, seed })
    const gain = distance(best.values) - distance(next.values)
    if (next.ended === 'reached' && gain > 0) {
      best = next
      if (gain < SMALLEST_STEP * share) return best
      share = Math.min(1, 2 * share)
    } else share /= 2
  }
  return best
}
