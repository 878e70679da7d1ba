import { barChart, type Chart } from '../chart/index.js'
import { type Kind, type Quantity, refuse } from '../units/index.js'
import { markdownTable, Printable, percentText } from './show.js'

/** Contribution of one input to the spread of the result, to first order. */
export interface Contribution {
  /** Path of the input. */
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
  /** Standard deviation of the result. */
  readonly deviation: Quantity<Kind>
  /** Largest first. */
  readonly contributions: readonly Contribution[]
}

/** One estimate with its own standard error. */
export interface Estimate {
  /** The estimate. */
  readonly value: Quantity<Kind>
  /** Standard error of the estimate, from batches of the draws. */
  readonly error: Quantity<Kind>
}

/** Results of the draws. */
export interface MonteCarloUncertainty {
  /** Number of draws. */
  readonly samples: number
  /** Seed of the draws. */
  readonly seed: number
  /** Mean of the result. */
  readonly mean: Estimate
  /** Standard deviation of the result. */
  readonly deviation: Estimate
  /** Median of the result. */
  readonly median: Estimate
  /** Ends of the interval that leaves equal parts outside on both sides. */
  readonly low: Estimate
  /** Upper end of that interval. */
  readonly high: Estimate
  /** Ends of the shortest interval that holds the same part. */
  readonly shortest: readonly [Quantity<Kind>, Quantity<Kind>]
  /** Draws for which the formula had no finite answer; they are left out of all figures. */
  readonly gaps: number
  /** Digits of the deviation to which the figures are judged. */
  readonly digits: number
  /** Whether mean, deviation and both ends are certain to those digits: twice their error is below half a unit of the last one. */
  readonly converged: boolean
  /** Draws that would suffice for that. */
  readonly samplesNeeded: number
  /** Every result drawn, ascending, SI. */
  readonly sorted: Float64Array
}

/** Of many inputs, those with a smaller share of the variance are only counted in the printed table. */
const WORTH_A_LINE = 0.001
/** So few are printed whatever their share. */
const FEW = 8

const digitsText = (digits: number) => (digits === 1 ? 'one digit' : `${digits} digits`)

/** The uncertainty of a result. */
export class Uncertainty extends Printable {
  constructor(
    readonly formula: string,
    readonly kind: Kind,
    readonly coverage: number,
    readonly linear: LinearUncertainty,
    readonly monteCarlo: MonteCarloUncertainty,
    /** Remarks for the reader: distributions cut at limits, first order far from the draws, draws without an answer. */
    readonly remarks: readonly string[],
  ) {
    super()
  }

  /** The part of the draws below a value: the chance of falling short of it. */
  probabilityBelow(value: Quantity<Kind>): number {
    if (value.kind !== this.kind) refuse('Uncertainty.probabilityBelow', 'value', value, `must be a ${this.kind}`)
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
        ? `Settled to ${digitsText(mc.digits)} of the deviation.`
        : `Not settled to ${digitsText(mc.digits)} of the deviation: about ${mc.samplesNeeded} draws would suffice.`,
      markdownTable(
        ['input', 'scatters', 'deviation it causes', 'share of variance'],
        shown.map(({ path, scatters, deviation, share }) => [path, scatters, String(deviation), percentText(share)]),
      ),
      ...(hidden > 0 ? [`${hidden} more that each add less than ${percentText(WORTH_A_LINE)} to first order.`] : []),
      ...this.remarks.map((remark) => `- ${remark}`),
    ].join('\n\n')
  }
}
