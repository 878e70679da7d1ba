import { barChart, type Chart } from '../chart/index.js'
import type { Kind, Quantity } from '../units/index.js'
import { markdownTable, Printable, percentText } from './show.js'

/** The first-order picture of failure. */
export interface FirstOrderReliability {
  /** Reliability index of Hasofer and Lind: distance of the limit from the middle of all inputs, in standard deviations. */
  readonly index: number
  /** The chance of failure if the limit were a plane there. */
  readonly probability: number
  /** Inputs at the likeliest point of failure. */
  readonly inputs: readonly {
    /** Path of the input. */
    readonly path: string
    /** The input at the likeliest point of failure. */
    readonly atFailure: Quantity<Kind>
    /** Share of the squared distance that this input makes up; the shares add up to one. Undefined with correlated inputs. */
    readonly importance: number | undefined
  }[]
}

/** Everything that a `Reliability` holds. */
interface ReliabilityData {
  /** Id of the formula. */
  readonly formula: string
  /** Criterion of failure, in words. */
  readonly failure: string
  /** The chance of failure. */
  readonly probability: number
  /** Standard error of the chance. */
  readonly error: number
  /** Interval of the chance, with the stated confidence. */
  readonly interval: readonly [number, number]
  /** Confidence of the interval. */
  readonly confidence: number
  /** The first-order picture; absent where no likeliest point was found. */
  readonly firstOrder: FirstOrderReliability | undefined
  /** How often the formula ran. */
  readonly evaluations: number
  /** Remarks, in words. */
  readonly remarks: readonly string[]
}

/** The chance of a failure. */
export class Reliability extends Printable {
  readonly formula: string
  /** Criterion of failure, in words. */
  readonly failure: string
  /** The chance of failure, by sampling. */
  readonly probability: number
  /** Standard error of that chance, from independent runs. */
  readonly error: number
  /** Confidence interval of that chance. Where runs found nothing that leads to failure, up to the chance that their plain draws would have shown. */
  readonly interval: readonly [number, number]
  readonly confidence: number
  /** Index, design point and importance of the inputs; undefined where the first-order method did not converge. */
  readonly firstOrder: FirstOrderReliability | undefined
  /** How often the formula ran. */
  readonly evaluations: number
  /** Remarks. */
  readonly remarks: readonly string[]

  constructor(found: ReliabilityData) {
    super()
    this.formula = found.formula
    this.failure = found.failure
    this.probability = found.probability
    this.error = found.error
    this.interval = found.interval
    this.confidence = found.confidence
    this.firstOrder = found.firstOrder
    this.evaluations = found.evaluations
    this.remarks = found.remarks
  }

  /** Bars of the importance of each input at the design point. */
  get chart(): Chart {
    const bars = (this.firstOrder?.inputs ?? []).flatMap(({ path, importance }) =>
      importance === undefined ? [] : [{ name: path, to: 100 * importance, label: percentText(importance) }],
    )
    return barChart({
      title: `Failure of ${this.formula}`,
      description: `Importance of the inputs at the likeliest point of failure: ${bars.map(({ name, label }) => `${name} ${label}`).join(', ')}.`,
      value: { title: 'importance', unit: '%', zero: true },
      bars,
    })
  }

  toMarkdown(): string {
    const { firstOrder: first } = this
    const [low, high] = this.interval.map((p) => p.toPrecision(2))
    return [
      `**${this.formula}** ${this.failure}: chance ${this.probability.toPrecision(3)} (${percentText(this.confidence)} interval ${low} to ${high}) after ${this.evaluations} runs of the formula`,
      ...(first === undefined
        ? []
        : [
            `First order: reliability index ${first.index.toPrecision(4)}, chance ${first.probability.toPrecision(3)}`,
            markdownTable(
              ['input', 'at the likeliest failure', 'importance'],
              first.inputs.map(({ path, atFailure, importance }) => [
                path,
                String(atFailure),
                importance === undefined ? '–' : percentText(importance),
              ]),
            ),
          ]),
      ...this.remarks.map((remark) => `- ${remark}`),
    ].join('\n\n')
  }
}
