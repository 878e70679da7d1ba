import { barChart, type Chart } from '../chart/index.js'
import { type Formula, type Inputs, NoResultError, type Output } from '../formula/index.js'
import { SOBOL_DIMENSIONS, sobolSequence, studentTQuantile } from '../numeric/index.js'
import { type Issue, type Kind, Quantity, show } from '../units/index.js'
import { type Model, type OptionsFor, type Uncertain, uncertainModel, type Varied } from './model.js'
import { untyped } from './path.js'
import { markdownTable, Printable, percentText, spreadKind } from './show.js'

/** How shares of the variance are estimated. */
export interface VarianceOptions {
  /** Base points of each replicate; a power of two fills the space evenly. Default 512. */
  readonly samples?: number
  /** Independent repetitions, from whose spread the confidence intervals come. Default 16. The formula runs samples × replicates × (inputs + 2) times. */
  readonly replicates?: number
  /** Default 1. */
  readonly seed?: number
  /** Confidence of the intervals. Default 0.95. */
  readonly confidence?: number
}

/** A share with its confidence interval. */
export interface Share {
  readonly value: number
  readonly low: number
  readonly high: number
}

/** What one input has to do with the variance of the result. */
export interface VarianceShare {
  readonly path: string
  readonly scatters: string
  /** Share of the variance that would go if this input alone were known exactly. */
  readonly first: Share
  /** Share that would stay if everything else were known exactly: its own and all it does together with others. */
  readonly total: Share
}

/** Shares of the variance by input, largest total first. */
export class VarianceShares extends Printable {
  constructor(
    readonly formula: string,
    readonly mean: Quantity<Kind>,
    readonly deviation: Quantity<Kind>,
    readonly inputs: readonly VarianceShare[],
    /** One minus all first-order shares: what inputs do only together. */
    readonly interaction: number,
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
      `Only together: ${percentText(this.interaction)}`,
      ...(this.gaps > 0 ? [`- ${this.gaps} base points had no finite answer somewhere and are left out`] : []),
    ].join('\n\n')
  }
}

/**
 * Which uncertain inputs the variance of a result comes from: first-order and total shares (Sobol indices) with confidence intervals.
 *
 * Inputs scatter as in `uncertainty` and independently of each other: with correlated inputs these shares have no such meaning. Points
 * come from scrambled Sobol sequences, one scramble for each replicate; intervals from the replicates by Student's t.
 * Throws one `InputError` that lists every bad input, a `NoResultError` where most points have no finite answer.
 *
 * Source: A. Saltelli et al., *Comput. Phys. Commun.* 181 (2010) 259 (first order, eq. b of table 2); M. J. W. Jansen, *Comput. Phys. Commun.* 117 (1999) 35 (total).
 */
export function varianceShares<I extends Inputs, O extends Output>(
  formula: Formula<I, O>,
  given: NoInfer<Uncertain<I>>,
  ...[options]: OptionsFor<O, VarianceOptions>
): VarianceShares {
  const { samples = 512, replicates = 16, seed = 1, confidence = 0.95, output } = (options ?? {}) as VarianceOptions & { output?: string }
  const issues: Issue[] = []
  if (!(Number.isInteger(samples) && samples >= 16))
    issues.push({ path: 'samples', given: show(samples), accepts: 'must be a whole number of at least 16' })
  if (!(Number.isInteger(replicates) && replicates >= 4))
    issues.push({ path: 'replicates', given: show(replicates), accepts: 'must be a whole number of at least 4' })
  if (!Number.isSafeInteger(seed)) issues.push({ path: 'seed', given: show(seed), accepts: 'must be a whole number' })
  if (!(confidence > 0 && confidence < 1))
    issues.push({ path: 'confidence', given: show(confidence), accepts: 'must be a number between 0 and 1' })
  const { varied, model } = uncertainModel(untyped(formula), given, output, issues)
  if (2 * varied.length > SOBOL_DIMENSIONS)
    throw new NoResultError(`${formula.id}: at most ${Math.floor(SOBOL_DIMENSIONS / 2)} uncertain inputs can be told apart`)
  const rounds = Array.from({ length: replicates }, (_, r) => replicate(varied, model, samples, seed + 7919 * r))
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
    1 - inputs.reduce((sum, { first }) => sum + first.value, 0),
    confidence,
    samples * replicates * (varied.length + 2),
    gaps,
  )
}

interface Round {
  readonly mean: number
  readonly variance: number
  readonly first: Float64Array
  readonly total: Float64Array
  readonly gaps: number
}

/** One replicate: two independent halves A and B of a scrambled sequence, and A with one column of B. */
function replicate(varied: readonly Varied[], model: Model, samples: number, seed: number): Round {
  const d = varied.length
  const points = sobolSequence(2 * d, seed)
  const u = new Float64Array(2 * d)
  const x = new Float64Array(d)
  const value = (i: number, from: number) => (varied[i] as Varied).scatter.quantile(u[from + i] as number)
  const yA: number[] = []
  const yB: number[] = []
  const yMixed: Float64Array[] = []
  for (let s = 0; s < samples; s++) {
    points.point(s, u)
    for (let i = 0; i < d; i++) x[i] = value(i, d)
    const b = model.at(x)
    for (let i = 0; i < d; i++) x[i] = value(i, 0)
    const a = model.at(x)
    const mixed = new Float64Array(d)
    for (let i = 0; i < d; i++) {
      const own = x[i] as number
      x[i] = value(i, d)
      mixed[i] = model.at(x)
      x[i] = own
    }
    if (Number.isNaN(a) || Number.isNaN(b) || mixed.some(Number.isNaN)) continue
    yA.push(a)
    yB.push(b)
    yMixed.push(mixed)
  }
  const n = yA.length
  if (n < samples / 2)
    throw new NoResultError(`${model.id}: no finite answer exists for most points; the distributions reach where the formula does not hold`)
  const mean = (yA.reduce((sum, y) => sum + y, 0) + yB.reduce((sum, y) => sum + y, 0)) / (2 * n)
  let variance = 0
  for (let s = 0; s < n; s++) variance += ((yA[s] as number) - mean) ** 2 + ((yB[s] as number) - mean) ** 2
  variance /= 2 * n
  const first = new Float64Array(d)
  const total = new Float64Array(d)
  if (variance > 0)
    for (let s = 0; s < n; s++)
      for (let i = 0; i < d; i++) {
        const difference = ((yMixed[s] as Float64Array)[i] as number) - (yA[s] as number)
        // Centred on the mean: the same expectation, less noise.
        first[i] = (first[i] as number) + (((yB[s] as number) - mean) * difference) / (n * variance)
        total[i] = (total[i] as number) + difference ** 2 / (2 * n * variance)
      }
  return { mean, variance, first, total, gaps: samples - n }
}
