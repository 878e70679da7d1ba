import { barChart, type Chart } from '../chart/index.js'
import { type AnyFormula, type Formula, type Inputs, NoResultError, type Output } from '../formula/index.js'
import { normalCdf, normalQuantile, randomStream } from '../numeric/index.js'
import { InputError, type Issue, type Kind, Quantity, show } from '../units/index.js'
import { correlationFactor } from './correlation.js'
import { limitsAt, modelOf, type OptionsFor, slope, type Uncertain, type UncertainModel, uncertainModel } from './model.js'
import { type ScalarPath, untyped } from './path.js'
import { markdownTable, Printable, percentText, spreadKind } from './show.js'

/** Two inputs that scatter together. */
export interface Correlation<P extends string = string> {
  readonly between: readonly [P, P]
  /** Coefficient from −1 to 1. In Monte Carlo it is that of the normal scores (a Gaussian copula): exact for normal distributions, slightly weaker for others. */
  readonly coefficient: number
}

/** How uncertainty is worked out. */
export interface UncertaintyOptions<P extends string = string> {
  readonly correlations?: readonly Correlation<P>[]
  /** Monte Carlo draws. Default 10 000. */
  readonly samples?: number
  /** Default 1. The same seed gives the same result to the last bit. */
  readonly seed?: number
  /** Part of the results that the interval holds. Default 0.95. */
  readonly coverage?: number
}

/** What one input adds to the spread of the result, to first order. */
export interface Contribution {
  readonly path: string
  /** How the input scatters, in words. */
  readonly scatters: string
  /** Slope of the result over the input at the nominal values, SI. */
  readonly slope: number
  /** Standard deviation of the result if only this input scattered. */
  readonly deviation: Quantity<Kind>
  /** Its share of the first-order variance; with correlations the shares need not add up to one. */
  readonly share: number
}

/** First-order propagation. */
export interface LinearUncertainty {
  /** The result at the nominal values. */
  readonly value: Quantity<Kind>
  readonly deviation: Quantity<Kind>
  /** Largest first. */
  readonly contributions: readonly Contribution[]
}

/** One estimate with its own standard error. */
export interface Estimate {
  readonly value: Quantity<Kind>
  /** Standard error of the estimate, from batches of the draws. */
  readonly error: Quantity<Kind>
}

/** What the draws gave. */
export interface MonteCarloUncertainty {
  readonly samples: number
  readonly seed: number
  readonly mean: Estimate
  readonly deviation: Estimate
  readonly median: Estimate
  /** Ends of the interval that leaves equal parts outside on both sides. */
  readonly low: Estimate
  readonly high: Estimate
  /** Ends of the shortest interval that holds the same part. */
  readonly shortest: readonly [Quantity<Kind>, Quantity<Kind>]
  /** Draws for which the formula had no finite answer; they are left out of all figures. */
  readonly gaps: number
  /** Whether mean, deviation and both ends are sure to two digits of the deviation (twice their error is below half a unit of the second digit). */
  readonly converged: boolean
  /** Draws that would be enough for that, where it is not so. */
  readonly samplesNeeded: number
  /** Every result drawn, ascending, SI. */
  readonly sorted: Float64Array
}

/** Of many inputs, those with a smaller share of the variance are only counted in the printed table. */
const WORTH_A_LINE = 0.001
/** So few are printed whatever their share. */
const FEW = 8

/** The uncertainty of a result. */
export class Uncertainty extends Printable {
  constructor(
    readonly formula: string,
    readonly kind: Kind,
    readonly coverage: number,
    readonly linear: LinearUncertainty,
    readonly monteCarlo: MonteCarloUncertainty,
    /** What a reader should know: distributions cut at limits, first order far from the draws, draws without an answer. */
    readonly remarks: readonly string[],
  ) {
    super()
  }

  /** The part of the draws below a value: the chance of falling short of it. */
  probabilityBelow(value: Quantity<Kind>): number {
    if (value.kind !== this.kind)
      throw new InputError('Uncertainty.probabilityBelow', [{ path: 'value', given: show(value), accepts: `must be a ${this.kind}` }])
    const { sorted } = this.monteCarlo
    let lo = 0
    let hi = sorted.length
    while (lo < hi) {
      const mid = (lo + hi) >> 1
      if ((sorted[mid] as number) < value.si) lo = mid + 1
      else hi = mid
    }
    return lo / sorted.length
  }

  /** Bars of what each input adds to the spread, to first order. */
  get chart(): Chart {
    return barChart({
      title: `Uncertainty of ${this.formula}`,
      description: `Share of the first-order variance by input: ${this.linear.contributions.map(({ path, share }) => `${path} ${percentText(share)}`).join(', ')}.`,
      value: { title: 'share of the variance', unit: '%', zero: true },
      bars: this.linear.contributions.map(({ path, share }) => ({ name: path, to: 100 * share, label: percentText(share) })),
    })
  }

  toMarkdown(): string {
    const { linear, monteCarlo: mc } = this
    const estimate = (name: string, { value, error }: Estimate) => [name, String(value), `± ${error}`]
    const sides = percentText((1 - this.coverage) / 2)
    const shown = linear.contributions.filter(({ share }, i) => share >= WORTH_A_LINE || i < FEW)
    const hidden = linear.contributions.length - shown.length
    return [
      `**${this.formula}**: ${linear.value} ± ${linear.deviation} to first order; ${percentText(this.coverage)} of ${mc.samples} draws from ${mc.low.value} to ${mc.high.value}.`,
      markdownTable(
        ['figure', 'value', 'error of the estimate'],
        [
          estimate('mean', mc.mean),
          estimate('standard deviation', mc.deviation),
          estimate('median', mc.median),
          estimate(`${sides} lie below`, mc.low),
          estimate(`${sides} lie above`, mc.high),
        ],
      ),
      mc.converged
        ? 'Settled to two digits of the deviation.'
        : `Not settled to two digits of the deviation: about ${mc.samplesNeeded} draws would be.`,
      markdownTable(
        ['input', 'scatters', 'deviation it causes', 'share of variance'],
        shown.map(({ path, scatters, deviation, share }) => [path, scatters, String(deviation), percentText(share)]),
      ),
      ...(hidden > 0 ? [`${hidden} more that each add less than ${percentText(WORTH_A_LINE)} to first order.`] : []),
      ...this.remarks.map((remark) => `- ${remark}`),
    ].join('\n\n')
  }
}

/**
 * How far a result may be off: to first order and by seeded Monte Carlo, for any formula.
 *
 * `uncertainty(slackTension, { load: '500 N', friction: normal(0.2, 0.04), wrapAngle: '3 turn' })`. Whatever is a property with a range scatters by
 * default (triangular from its low end over the typical value to its high end), an input left out whose default is one included; anything else
 * scatters where it is given as a distribution.
 * Draw number i depends only on the seed and i. Figures come with the standard error of their estimate.
 *
 * Throws one `InputError` that lists every bad input; a distribution more than 1 % outside its input's limits is one of them.
 *
 * Source: JCGM 100:2008, 5.1 and 5.2 (first order); JCGM 101:2008, 7 (Monte Carlo, shortest interval, numerical tolerance).
 */
export function uncertainty<I extends Inputs, O extends Output>(
  formula: Formula<I, O>,
  given: NoInfer<Uncertain<I>>,
  ...[options]: OptionsFor<O, UncertaintyOptions<ScalarPath<I>>>
): Uncertainty {
  const {
    correlations = [],
    samples = 10_000,
    seed = 1,
    coverage = 0.95,
    output,
  } = (options ?? {}) as UncertaintyOptions & { output?: string }
  const issues: Issue[] = []
  if (!(Number.isInteger(samples) && samples >= 200))
    issues.push({ path: 'samples', given: show(samples), accepts: 'must be a whole number of at least 200' })
  if (!Number.isSafeInteger(seed)) issues.push({ path: 'seed', given: show(seed), accepts: 'must be a whole number' })
  if (!(coverage > 0 && coverage < 1)) issues.push({ path: 'coverage', given: show(coverage), accepts: 'must be a number between 0 and 1' })
  const uncertain = uncertainModel(untyped(formula), given, output, issues)
  const factor = correlationFactor(
    uncertain.varied.map(({ path }) => path),
    correlations,
    formula.id,
  )
  const linear = linearUncertainty(untyped(formula), uncertain, factor.matrix)
  const monteCarlo = draws(uncertain, factor.lower, samples, seed, coverage)
  const { kind } = uncertain.model.output
  return new Uncertainty(formula.id, kind, coverage, linear, monteCarlo, [...uncertain.remarks, ...remarksOn(linear, monteCarlo)])
}

function linearUncertainty(formula: AnyFormula, { varied, nominal, model }: UncertainModel, correlation: Float64Array): LinearUncertainty {
  const n = varied.length
  const { kind, name } = model.output
  const paths = varied.map(({ path }) => path)
  const limits = limitsAt(formula, paths)
  const fresh = modelOf(formula, nominal, paths, { kind, name }, [])
  const at = Float64Array.from(varied, (input) => input.nominal)
  const value = fresh.at(at)
  if (Number.isNaN(value)) throw new NoResultError(`${formula.id}: no finite answer exists at the typical values`)
  const effects = varied.map((input, i) => {
    const f = (x: number) => {
      const moved = at.slice()
      moved[i] = x
      return fresh.at(moved)
    }
    // A thousandth of the deviation: small against the curvature over it, large against rounding.
    return slope(f, input.nominal, 1e-3 * input.scatter.deviation, limits[i] as { low: number; high: number })
  })
  const parts = effects.map((effect, i) => effect * (varied[i] as { scatter: { deviation: number } }).scatter.deviation)
  let variance = 0
  for (let i = 0; i < n; i++)
    for (let j = 0; j < n; j++) variance += (correlation[i * n + j] as number) * (parts[i] as number) * (parts[j] as number)
  const of = spreadKind(kind)
  const contributions = varied
    .map(({ path, scatter }, i) => ({
      path,
      scatters: scatter.words,
      slope: effects[i] as number,
      deviation: new Quantity(Math.abs(parts[i] as number), of),
      share: variance > 0 ? (parts[i] as number) ** 2 / variance : 0,
    }))
    .sort((a, b) => b.share - a.share)
  return { value: new Quantity(value, kind), deviation: new Quantity(Math.sqrt(Math.max(0, variance)), of), contributions }
}

const BATCHES = 20

function draws({ varied, model }: UncertainModel, lower: Float64Array | undefined, samples: number, seed: number, coverage: number) {
  const n = varied.length
  const x = new Float64Array(n)
  const z = new Float64Array(n)
  const drawn = new Float64Array(samples)
  for (let s = 0; s < samples; s++) {
    const random = randomStream(seed, s)
    if (lower === undefined)
      for (let i = 0; i < n; i++) x[i] = (varied[i] as { scatter: { quantile(p: number): number } }).scatter.quantile(random.uniform())
    else {
      for (let i = 0; i < n; i++) z[i] = normalQuantile(random.uniform())
      for (let i = 0; i < n; i++) {
        let score = 0
        for (let j = 0; j <= i; j++) score += (lower[i * n + j] as number) * (z[j] as number)
        const p = Math.min(Math.max(normalCdf(score), Number.MIN_VALUE), 1 - 2 ** -53)
        x[i] = (varied[i] as { scatter: { quantile(p: number): number } }).scatter.quantile(p)
      }
    }
    drawn[s] = model.at(x)
  }
  return summary(drawn, model.output.kind, seed, coverage, model.id)
}

function summary(drawn: Float64Array, kind: Kind, seed: number, coverage: number, id: string): MonteCarloUncertainty {
  const good = drawn.filter((y) => !Number.isNaN(y))
  const gaps = drawn.length - good.length
  if (good.length < drawn.length / 2 || good.length < 100)
    throw new NoResultError(
      `${id}: no finite answer exists for ${gaps} of ${drawn.length} draws; the distributions reach where the formula does not hold`,
    )
  const whole = figures(good, coverage)
  const size = Math.floor(good.length / BATCHES)
  const batches = Array.from({ length: BATCHES }, (_, b) => figures(good.slice(b * size, (b + 1) * size), coverage))
  const of = spreadKind(kind)
  const errorOf = (name: keyof Figures) => {
    const values = batches.map((batch) => batch[name] as number)
    const mean = values.reduce((sum, v) => sum + v, 0) / BATCHES
    return Math.sqrt(values.reduce((sum, v) => sum + (v - mean) ** 2, 0) / (BATCHES - 1) / BATCHES)
  }
  const estimate = (name: 'mean' | 'median' | 'low' | 'high'): Estimate => ({
    value: new Quantity(whole[name], kind),
    error: new Quantity(errorOf(name), of),
  })
  // Half a unit of the second digit of the deviation.
  const tolerance = whole.deviation > 0 ? 0.5 * 10 ** (Math.floor(Math.log10(whole.deviation)) - 1) : 0
  const worst = 2 * Math.max(errorOf('mean'), errorOf('deviation'), errorOf('low'), errorOf('high'))
  const sorted = good.slice().sort()
  return {
    samples: drawn.length,
    seed,
    mean: estimate('mean'),
    deviation: { value: new Quantity(whole.deviation, of), error: new Quantity(errorOf('deviation'), of) },
    median: estimate('median'),
    low: estimate('low'),
    high: estimate('high'),
    shortest: shortest(sorted, coverage).map((y) => new Quantity(y, kind)) as [Quantity<Kind>, Quantity<Kind>],
    gaps,
    converged: worst <= tolerance,
    samplesNeeded: worst <= tolerance ? drawn.length : Math.ceil((drawn.length * (worst / tolerance) ** 2) / 1000) * 1000,
    sorted,
  }
}

interface Figures {
  readonly mean: number
  readonly deviation: number
  readonly median: number
  readonly low: number
  readonly high: number
}

function figures(drawn: Float64Array, coverage: number): Figures {
  let mean = 0
  for (const y of drawn) mean += y / drawn.length
  let square = 0
  for (const y of drawn) square += (y - mean) ** 2
  const sorted = drawn.slice().sort()
  const tail = (1 - coverage) / 2
  return {
    mean,
    deviation: Math.sqrt(square / (drawn.length - 1)),
    median: quantileOf(sorted, 0.5),
    low: quantileOf(sorted, tail),
    high: quantileOf(sorted, 1 - tail),
  }
}

/** The sample quantile, linear between order statistics. */
function quantileOf(sorted: Float64Array, fraction: number): number {
  const place = fraction * (sorted.length - 1)
  const i = Math.floor(place)
  const a = sorted[i] as number
  return a + (place - i) * ((sorted[Math.min(i + 1, sorted.length - 1)] as number) - a)
}

function shortest(sorted: Float64Array, coverage: number): [number, number] {
  const held = Math.min(Math.ceil(coverage * sorted.length), sorted.length - 1)
  let best = 0
  const width = (i: number) => (sorted[i + held] as number) - (sorted[i] as number)
  for (let i = 1; i + held < sorted.length; i++) if (width(i) < width(best)) best = i
  return [sorted[best] as number, sorted[best + held] as number]
}

function remarksOn(linear: LinearUncertainty, mc: MonteCarloUncertainty): string[] {
  const remarks: string[] = []
  const { deviation } = mc
  const off = Math.abs(linear.deviation.si - deviation.value.si)
  if (off > 0.1 * deviation.value.si + 3 * deviation.error.si)
    remarks.push(
      `the first-order deviation is ${linear.deviation}, the draws give ${deviation.value}: the formula bends over these ranges; trust the draws`,
    )
  if (mc.gaps > 0) remarks.push(`${mc.gaps} of ${mc.samples} draws have no finite answer and are left out`)
  return remarks
}
