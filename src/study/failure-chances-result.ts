import { markdownTable, Printable, percentText } from './show.js'

/** A chance with its standard error and interval, and how many draws failed. */
export interface Chance {
  /** The chance of failure. */
  readonly probability: number
  /** Standard error of the chance. */
  readonly error: number
  /** Interval of the chance, with the confidence of the plan. Where no draw failed, up to the chance that so many draws would have shown. */
  readonly interval: readonly [number, number]
  /** Draws that failed. */
  readonly failures: number
}

/** Everything that a `FailureChances` holds. */
interface FailureChancesData {
  /** Id of the formula. */
  readonly formula: string
  /** Each failure, the likeliest first. */
  readonly each: readonly (Chance & {
    /** Name of the output. */
    readonly output: string
    /** Criterion of failure, in words. */
    readonly failure: string
    /** Reliability index, where the first-order method found the likeliest point. */
    readonly index: number | undefined
  })[]
  /** The chance that anything fails, and the inputs whose scatter to reduce first. */
  readonly any: Chance & {
    /** Inputs by how much their scatter adds, the largest share first. */
    readonly reduce: readonly {
      /** Path of the input. */
      readonly path: string
      /** Inputs that are the same draw. */
      readonly also: readonly string[]
      /** Its share of what all of them do, 0 to 1; 0 where it is not clearly above the noise of the draws. */
      readonly share: number
      /** By about how many percent the chance falls with each percent less scatter of the input. */
      readonly fall: number
    }[]
  }
  /** How often the formula ran. */
  readonly evaluations: number
  /** Remarks, in words. */
  readonly remarks: readonly string[]
}

const LISTED = 12
/** A failure that fewer draws met is not counted alone: its chance and interval mean nothing. */
export const MIN_FAILURES = 10

/** The chances of several failures, and of any of them. */
export class FailureChances extends Printable {
  readonly formula: string
  /** Each failure, the likeliest first, with its reliability index where the first-order method found its likeliest point. One with few `failures` is not resolved. */
  readonly each: FailureChancesData['each']
  /** The chance that anything fails, and the inputs whose scatter to reduce first. */
  readonly any: FailureChancesData['any']
  readonly evaluations: number
  readonly remarks: readonly string[]

  constructor(found: FailureChancesData) {
    super()
    this.formula = found.formula
    this.each = found.each
    this.any = found.any
    this.evaluations = found.evaluations
    this.remarks = found.remarks
  }

  toMarkdown(): string {
    const chance = ({ probability, interval: [low, high] }: Chance) =>
      `${probability.toPrecision(3)} (${low.toPrecision(2)} to ${high.toPrecision(2)})`
    const likely = this.each.filter(({ failures }) => failures >= MIN_FAILURES).slice(0, LISTED)
    return [
      `**${this.formula}**: chance that anything fails ${chance(this.any)} after ${this.evaluations} runs of the formula`,
      markdownTable(
        ['failure', 'chance', 'reliability index'],
        likely.map((row) => [`${row.output} ${row.failure}`, chance(row), row.index?.toPrecision(3) ?? '–']),
      ),
      `Scatter to reduce first: ${this.any.reduce
        .slice(0, 4)
        .map(({ path, also, share }) => `${[path, ...also].join(' with ')} (${percentText(share)})`)
        .join(', ')}`,
      ...this.remarks.map((remark) => `- ${remark}`),
    ].join('\n\n')
  }
}
