import { type In, type Issue, issue, type Kind, readAt } from '../units/index.js'
import { lognormalScatter, normalScatter, type Scatter, triangularScatter, truncatedScatter, uniformScatter } from './scatter.js'

/** What a spread of a kind is given in: a temperature spreads by a temperature difference. */
export type SpreadOf<K extends Kind> = K extends 'temperature' ? 'temperatureDifference' : K

/**
 * How an input scatters. Made by `normal`, `lognormal`, `uniform`, `triangular` and `truncated`; given to a study tool in place of the
 * input's value, whose kind it takes.
 */
export interface Distribution<V = unknown, S = unknown> {
  /** Shape of the distribution. */
  readonly distribution: 'normal' | 'lognormal' | 'uniform' | 'triangular' | 'truncated'
  /** Places on the input's own scale, in the order of the helper's arguments. */
  readonly at: readonly V[]
  /** A spread, for a normal distribution. */
  readonly spread?: S
  /** The factor of a lognormal distribution. */
  readonly factor?: number
  /** Limits of a truncated distribution. */
  readonly of?: Distribution<V, S>
}

/** A distribution of an input of a kind. */
export type DistributionOf<K extends Kind> = Distribution<In<K>, In<SpreadOf<K>>>

/** Normal: mean and standard deviation. A temperature's deviation is a difference: `normal('20 degC', '3 K')`. */
export const normal = <const V, const S>(mean: V, standardDeviation: S): Distribution<V, S> => ({
  distribution: 'normal',
  at: [mean],
  spread: standardDeviation,
})

/**
 * Lognormal, by its median and the factor of one standard deviation: about 68 % lie between median/factor and median × factor.
 * For what cannot be negative and is known to within a factor, such as friction or a creep rate.
 */
export const lognormal = <const V>(median: V, factor: number): Distribution<V, never> => ({
  distribution: 'lognormal',
  at: [median],
  factor,
})

/** Uniform: every value between two ends equally likely. */
export const uniform = <const V>(low: V, high: V): Distribution<V, never> => ({ distribution: 'uniform', at: [low, high] })

/** Triangular: rising from the low end to the likeliest value, falling to the high end. A range with a typical value is assumed to scatter like that. */
export const triangular = <const V>(low: V, mode: V, high: V): Distribution<V, never> => ({
  distribution: 'triangular',
  at: [low, mode, high],
})

/** A distribution cut off outside two ends and rescaled. */
export const truncated = <const V, const S>(of: Distribution<V, S>, low: V, high: V): Distribution<V, S> => ({
  distribution: 'truncated',
  at: [low, high],
  of,
})

const NAMES = ['normal', 'lognormal', 'uniform', 'triangular', 'truncated']

/** How many values of the input each distribution holds. */
const POINTS = { normal: 1, lognormal: 1, uniform: 2, triangular: 3, truncated: 2 } as const

/** Whether a value is a distribution. */
export const isDistribution = (given: unknown): given is Distribution =>
  typeof given === 'object' &&
  given !== null &&
  NAMES.includes((given as Distribution).distribution) &&
  Array.isArray((given as Distribution).at)

/** Reads a distribution of a kind; adds issues and returns nothing where it cannot be. */
export function scatterOf(given: Distribution, kind: Kind, path: string, issues: Issue[]): Scatter | undefined {
  const before = issues.length
  const number = (x: unknown, of: Kind, where: string): number => readAt(where, of, x, issues)
  const refuse = (x: unknown, accepts: string) => void issues.push(issue(path, x, accepts))
  // A hole in the list is a missing value, which `map` would skip.
  const at = Array.from(given.at, (x, i) => number(x, kind, `${path}.${given.distribution}[${i}]`))
  if (at.length !== POINTS[given.distribution]) refuse(given.at, `must be made by ${given.distribution}(…), with its values`)
  const spread =
    given.distribution === 'normal' ? number(given.spread, kind === 'temperature' ? 'temperatureDifference' : kind, `${path}.normal[1]`) : 0
  const inner = given.distribution === 'truncated' && given.of !== undefined ? scatterOf(given.of, kind, path, issues) : undefined
  if (issues.length > before) return undefined
  const made = madeOf(given, { at, spread, inner }, kind)
  return 'accepts' in made ? refuse(made.given, made.accepts) : made
}

/** The distribution, or what is wrong with its values. */
function madeOf(
  given: Distribution,
  { at, spread, inner }: { readonly at: readonly number[]; readonly spread: number; readonly inner: Scatter | undefined },
  kind: Kind,
): Scatter | { readonly given: unknown; readonly accepts: string } {
  const [a = Number.NaN, b = Number.NaN, c = Number.NaN] = at
  switch (given.distribution) {
    case 'normal':
      return spread > 0 ? normalScatter(a, spread, kind) : { given: given.spread, accepts: 'must have a standard deviation above zero' }
    case 'lognormal': {
      const { factor } = given
      if (!(a > 0)) return { given: given.at[0], accepts: 'must have a median above zero, as a lognormal distribution' }
      if (!(typeof factor === 'number' && factor > 1 && Number.isFinite(factor)))
        return { given: factor, accepts: 'must have a factor above 1, as a lognormal distribution' }
      return lognormalScatter(a, factor, kind)
    }
    case 'uniform':
      return a < b ? uniformScatter(a, b, kind) : { given: given.at, accepts: 'must be a lower and a higher end' }
    case 'triangular':
      if (a <= b && b <= c && a < c) return triangularScatter(a, b, c, kind)
      return { given: given.at, accepts: 'must be a low end, the likeliest value between, and a high end' }
    default:
      return cutAt(given, inner, a, b, kind)
  }
}

function cutAt(given: Distribution, inner: Scatter | undefined, a: number, b: number, kind: Kind) {
  if (inner === undefined) return { given: given.of, accepts: 'must be a distribution to cut' }
  if (!(a < b)) return { given: given.at, accepts: 'must be a lower and a higher end' }
  if (!(inner.below(b) - inner.below(a) > 1e-9))
    return { given: given.at, accepts: 'must be ends between which the distribution has something left' }
  return truncatedScatter(inner, a, b, kind)
}
