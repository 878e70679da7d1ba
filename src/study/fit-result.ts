import { type Chart, pointChart } from '../chart/index.js'
import type { LeastSquaresFit } from '../numeric/index.js'
import { type Kind, Quantity, siUnit } from '../units/index.js'
import type { ResidualCheck } from './residuals.js'
import { markdownTable, Printable, percentText, spreadKind } from './show.js'

/** One input that was found. */
export interface FittedParameter {
  /** Path of the input. */
  readonly path: string
  /** Value that the fit found. */
  readonly value: Quantity<Kind>
  /**
   * `atLimit`: pressed against its limit, where no error can be stated. `undetermined`: the data do not determine it. `unsettled`: the fit has not
   * settled, the value is the best so far.
   */
  readonly state: 'determined' | 'atLimit' | 'undetermined' | 'unsettled'
  /** Standard error, where it is determined. */
  readonly standardError: Quantity<Kind> | undefined
  /** Confidence interval, where it is determined and readings are left over; an end may be infinite in a profile that never ends. */
  readonly interval: readonly [Quantity<Kind>, Quantity<Kind>] | undefined
}

/** Parameters that the data tell apart poorly or not at all. */
export interface Confounded {
  readonly parameters: readonly string[]
  /** One sentence. */
  readonly message: string
}

/** Above this correlation of their errors, two parameters are reported as poorly separated. */
const POORLY_APART = 0.98

const ERROR_WORDS = { determined: '–', atLimit: 'at its limit', undetermined: 'not determined', unsettled: 'not settled' } as const

/** Everything that a `FitResult` holds. */
interface FitResultData {
  /** Id of the formula. */
  readonly formula: string
  /** Inputs that were found. */
  readonly parameters: readonly FittedParameter[]
  /** Kind of the readings. */
  readonly kind: Kind
  /** The fit in SI numbers. */
  readonly numbers: LeastSquaresFit
  /** Whether the search ended at a minimum. */
  readonly converged: boolean
  /** Starts of the search, and how many ended at this fit. */
  readonly starts: {
    /** Starts of the search. */
    readonly tried: number
    /** Starts that ended at this fit. */
    readonly agreeing: number
  }
  /** Confidence of the intervals. */
  readonly confidence: number
  /** Reading less fitted value, SI, reading by reading. */
  readonly residuals: Float64Array
  /** Fitted values, SI, reading by reading. */
  readonly fittedValues: Float64Array
  /** Checks of the residuals. */
  readonly checks: readonly ResidualCheck[]
}

/** Result of a fit. */
export class FitResult extends Printable {
  readonly formula: string
  readonly parameters: readonly FittedParameter[]
  /** False when the search stopped before it settled: the best so far. */
  readonly converged: boolean
  /** How many starts had an answer, and how many of them ended at this fit: few agreeing means that there are several local bests. */
  readonly starts: FitResultData['starts']
  readonly confidence: number
  /** Measured minus fitted, SI, in the order of the readings. */
  readonly residuals: Float64Array
  /** The fitted results, SI. */
  readonly fittedValues: Float64Array
  /** Checks of the residuals, each divided by the deviation of its weight. */
  readonly checks: readonly ResidualCheck[]
  private readonly kind: Kind
  private readonly numbers: LeastSquaresFit

  constructor(found: FitResultData) {
    super()
    this.formula = found.formula
    this.parameters = found.parameters
    this.converged = found.converged
    this.starts = found.starts
    this.confidence = found.confidence
    this.residuals = found.residuals
    this.fittedValues = found.fittedValues
    this.checks = found.checks
    this.kind = found.kind
    this.numbers = found.numbers
  }

  /** Standard deviation of the residuals, or the one that was given. */
  get deviation(): Quantity<Kind> {
    return new Quantity(this.numbers.sigma, spreadKind(this.kind))
  }

  /** Sum of the squared residuals, each times its weight, SI. */
  get sumOfSquares(): number {
    return this.numbers.sumOfSquares
  }

  /** Readings minus parameters determined. */
  get degreesOfFreedom(): number {
    return this.numbers.degreesOfFreedom
  }

  /** A found value by its path. Throws a `RangeError` that lists the paths. */
  value(path: string): Quantity<Kind> {
    const found = this.parameters.find((parameter) => parameter.path === path)
    if (found === undefined) throw new RangeError(`no parameter '${path}'; parameters are ${this.parameters.map((p) => p.path).join(', ')}`)
    return found.value
  }

  /** Correlation of the errors of two parameters, by path; NaN where one has none. */
  correlation(one: string, other: string): number {
    const n = this.parameters.length
    const [i, j] = [one, other].map((path) => this.parameters.findIndex((parameter) => parameter.path === path)) as [number, number]
    const { covariance } = this.numbers
    return (covariance[i * n + j] as number) / Math.sqrt((covariance[i * n + i] as number) * (covariance[j * n + j] as number))
  }

  /** Which parameters the data cannot tell apart; empty when the fit is sound, or has not settled. */
  get confounded(): Confounded[] {
    if (!this.converged) return []
    const names = (indices: readonly number[]) => indices.map((i) => (this.parameters[i] as FittedParameter).path)
    const lost = this.numbers.undetermined.map(({ parameters }) => ({
      parameters: names(parameters),
      message:
        parameters.length === 1
          ? `${names(parameters)[0]} has no effect on these readings: they do not determine it`
          : `${names(parameters).join(' and ')} cannot be separated: these readings determine only a combination of them; fix one, or log readings in which they differ`,
    }))
    const poor: Confounded[] = []
    this.parameters.forEach(({ path: one, state }, i) => {
      for (const { path: other, state: otherState } of this.parameters.slice(i + 1)) {
        const r = state === 'determined' && otherState === 'determined' ? this.correlation(one, other) : 0
        if (Math.abs(r) > POORLY_APART)
          poor.push({
            parameters: [one, other],
            message: `${one} and ${other} are separated poorly: their errors correlate by ${r.toFixed(4)}`,
          })
      }
    })
    return [...lost, ...poor]
  }

  /** Residuals over the fitted results. */
  get chart(): Chart {
    const unit = siUnit(this.kind)
    return pointChart({
      title: `Residuals of ${this.formula}`,
      description: `Measured minus fitted over the fitted result; ${this.checks.map(({ message }) => message).join('; ')}.`,
      x: { title: 'fitted', unit },
      y: { title: 'measured − fitted', unit: siUnit(spreadKind(this.kind)) },
      series: [{ name: 'readings', points: Array.from(this.residuals, (r, i) => [this.fittedValues[i] as number, r] as const) }],
      rules: [{ name: 'zero', at: 0 }],
    })
  }

  toMarkdown(): string {
    return [
      `**${this.formula}** fitted to ${this.residuals.length} readings; ${this.degreesOfFreedom} degrees of freedom, deviation ${this.deviation}${this.converged ? '' : '; NOT settled, best so far'}${this.starts.tried > 1 ? `; ${this.starts.agreeing} of ${this.starts.tried} starts end here` : ''}`,
      markdownTable(
        ['parameter', 'value', 'standard error', `${percentText(this.confidence)} interval`],
        this.parameters.map(({ path, value, state, standardError, interval }) => [
          path,
          String(value),
          standardError === undefined ? ERROR_WORDS[state] : String(standardError),
          interval === undefined ? '–' : `${interval[0]} to ${interval[1]}`,
        ]),
      ),
      ...this.confounded.map(({ message }) => `- ${message}`),
      ...this.checks.map(({ holds, message }) => `- ${holds ? 'passes' : 'LOOK'}: ${message}`),
    ].join('\n\n')
  }
}
