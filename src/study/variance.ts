import { barChart, type Chart } from '../chart/index.js'
import { type Formula, type Inputs, NoResultError, type Output } from '../formula/index.js'
import { SOBOL_DIMENSIONS, studentTQuantile } from '../numeric/index.js'
import { type Issue, type Kind, Quantity } from '../units/index.js'
import { correlationFactor } from './correlation.js'
import type { Named, OptionsFor } from './model.js'
import { checkSeed, checkShare, checkWhole } from './options.js'
import { planRecord, type ScalarPath, untyped } from './path.js'
import { markdownTable, Printable, percentText, spreadKind } from './show.js'
import { type Uncertain, uncertainModel } from './uncertain-model.js'
import type { Correlation } from './uncertainty.js'
import { correlatedReplicate, type Round, replicate } from './variance-rounds.js'

/** How shares of the variance are estimated. */
export interface VarianceOptions<P extends string = string> {
  /** Inputs that scatter together. Default: none do. */
  readonly correlations?: readonly Correlation<P>[]
  /** Base points of each replicate; a power of two fills the space uniformly. Default 512. */
  readonly samples?: number
  /**
   * Independent repetitions, from whose spread the confidence intervals come. Default 16. The formula runs samples × replicates × (inputs + 2)
   * times, with correlations × (2 inputs + 1) times. */
  readonly replicates?: number
  /** Default 1. */
  readonly seed?: number
  /** Confidence of the intervals. Default 0.95. */
  readonly confidence?: number
}

/** A share with its confidence interval. */
export interface Share {
  /** The share, 0 to 1. */
  readonly value: number
  /** Lower end of its interval. */
  readonly low: number
  /** Upper end of its interval. */
  readonly high: number
}

/** Share of one input in the variance of the result. */
export interface VarianceShare {
  /** Path of the input. */
  readonly path: string
  /** How the input scatters, in words. */
  readonly scatters: string
  /** Share of the variance that would go if this input alone were known exactly; with correlations that includes what it tells of the others. */
  readonly first: Share
  /** Share that would stay if everything else were known exactly: its own and all its interactions; with correlations less what the others tell of it. */
  readonly total: Share
}

/** Shares of the variance by input, largest total first. */
export class VarianceShares extends Printable {
  constructor(
    readonly formula: string,
    readonly mean: Quantity<Kind>,
    readonly deviation: Quantity<Kind>,
    readonly inputs: readonly VarianceShare[],
    /** One minus all first-order shares: what inputs do only together. Undefined with correlations, where shares overlap. */
    readonly interaction: number | undefined,
    readonly confidence: number,
    /** How often the formula ran. */
    readonly evaluations: number,
    /** Base points left out because some run had no finite answer. */
    readonly gaps: number,
  ) {
    super()
  }

  /** Bars of the total and first-order shares. */
  get chart(): Chart {
    return barChart({
      title: `Where the variance of ${this.formula} comes from`,
      description: `First-order and total shares by input: ${this.inputs.map(({ path, first, total }) => `${path} ${percentText(first.value)} and ${percentText(total.value)}`).join(', ')}.`,
      value: { title: 'share of the variance', unit: '%', zero: true },
      bars: this.inputs.flatMap(({ path, first, total }) => [
        { name: `${path}, alone`, to: 100 * first.value, group: 'first order' },
        { name: `${path}, with others`, to: 100 * total.value, group: 'total' },
      ]),
    })
  }

  toMarkdown(): string {
    const share = ({ value, low, high }: Share) => `${percentText(value)} (${percentText(low)} to ${percentText(high)})`
    return [
      `**${this.formula}**: mean ${this.mean}, standard deviation ${this.deviation}; ${this.evaluations} runs, intervals at ${percentText(this.confidence)}`,
      markdownTable(
        ['input', 'scatters', 'share alone', 'share with others'],
        this.inputs.map(({ path, scatters, first, total }) => [path, scatters, share(first), share(total)]),
      ),
      this.interaction === undefined
        ? 'Some inputs scatter together: their shares overlap and need not add up to one.'
        : `Only together: ${percentText(this.interaction)}`,
      ...(this.gaps > 0 ? [`- ${this.gaps} base points had no finite answer somewhere and are left out`] : []),
    ].join('\n\n')
  }
}

const KNOWN = ['correlations', 'samples', 'replicates', 'seed', 'confidence', 'output'] as const

/**
 * Which uncertain inputs the variance of a result comes from: first-order and total shares (Sobol indices) with confidence intervals.
 *
 * Inputs scatter as in `uncertainty`, correlations included. Points
 * come from scrambled Sobol sequences, one scramble for each replicate; intervals from the replicates by Student's t.
 * Throws one `InputError` that lists every bad input, a `NoResultError` where most points have no finite answer.
 *
 * Source: A. Saltelli et al., *Comput. Phys. Commun.* 181 (2010) 259 (first order, eq. b of table 2); M. J. W. Jansen, *Comput. Phys. Commun.* 117 (1999) 35 (total);
 * S. Kucherenko, S. Tarantola, P. Annoni, *Comput. Phys. Commun.* 183 (2012) 937 (correlated inputs).
 */
export function varianceShares<I extends Inputs, O extends Output>(
  formula: Formula<I, O>,
  given: NoInfer<Uncertain<I>>,
  ...[options]: OptionsFor<O, VarianceOptions<ScalarPath<I>>>
): VarianceShares {
  const {
    correlations = [],
    samples = 512,
    replicates = 16,
    seed = 1,
    confidence = 0.95,
    output,
  } = planRecord(untyped(formula).id, (options ?? {}) as Named<VarianceOptions>, KNOWN)
  const issues: Issue[] = []
  checkWhole('samples', samples, 16, 1e6, issues)
  checkWhole('replicates', replicates, 4, 1e4, issues)
  checkSeed(seed, issues)
  checkShare('confidence', confidence, issues)
  const { varied, model } = uncertainModel(untyped(formula), given, output, issues)
  if (2 * varied.length > SOBOL_DIMENSIONS)
    throw new NoResultError(`${formula.id}: at most ${Math.floor(SOBOL_DIMENSIONS / 2)} uncertain inputs can be separated`)
  const { matrix, lower } = correlationFactor(
    varied.map(({ path }) => path),
    correlations,
    formula.id,
  )
  const rounds = Array.from({ length: replicates }, (_, r) =>
    lower === undefined
      ? replicate(varied, model, samples, seed + 7919 * r)
      : correlatedReplicate(varied, model, samples, seed + 7919 * r, matrix, lower),
  )
  const t = studentTQuantile(0.5 + confidence / 2, replicates - 1)
  const share = (pick: (round: Round) => number): Share => {
    const values = rounds.map(pick)
    const value = values.reduce((sum, v) => sum + v, 0) / replicates
    const error = Math.sqrt(values.reduce((sum, v) => sum + (v - value) ** 2, 0) / (replicates - 1) / replicates)
    return { value, low: value - t * error, high: value + t * error }
  }
  const inputs = varied
    .map(({ path, scatter }, i) => ({
      path,
      scatters: scatter.words,
      first: share((round) => round.first[i] as number),
      total: share((round) => round.total[i] as number),
    }))
    .sort((a, b) => b.total.value - a.total.value)
  const { kind } = model.output
  const gaps = rounds.reduce((sum, round) => sum + round.gaps, 0)
  return new VarianceShares(
    formula.id,
    new Quantity(share(({ mean }) => mean).value, kind),
    new Quantity(Math.sqrt(share(({ variance }) => variance).value), spreadKind(kind)),
    inputs,
    lower === undefined ? 1 - inputs.reduce((sum, { first }) => sum + first.value, 0) : undefined,
    confidence,
    samples * replicates * (lower === undefined ? varied.length + 2 : 2 * varied.length + 1),
    gaps,
  )
}
