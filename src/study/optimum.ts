import { type Chart, pointChart } from '../chart/index.js'
import { type Kind, type Quantity, siUnit } from '../units/index.js'
import { markdownTable, Printable } from './show.js'

/** One point of a search. */
export interface Point {
  /** Continuous inputs, by path. */
  readonly inputs: Readonly<Record<string, Quantity<Kind>>>
  /** Options taken, by choice. */
  readonly choices: Readonly<Record<string, string>>
  /** Every numeric output of the formula, `result` where it has one. */
  readonly results: Readonly<Record<string, Quantity<Kind>>>
  /** Constraints broken here, in words. */
  readonly violated: readonly string[]
  /** Whether no constraint is broken here. */
  readonly feasible: boolean
  /** The whole argument, ready for a checked call of the formula. */
  readonly argument: Readonly<Record<string, unknown>>
}

/** How sure a search is. */
export interface Agreement {
  /** Independent searches that settled; a search that the evaluations cut short is not among them. */
  readonly searches: number
  /** How many of those found this optimum. */
  readonly agreeing: number
}

/** Everything that an `Optimum` holds. */
interface OptimumData {
  /** Id of the formula. */
  readonly formula: string
  /** Goals of the search. */
  readonly goals: readonly {
    /** Name of the output. */
    readonly output: string
    /** Role in the search. */
    readonly goal: 'minimise' | 'maximise'
  }[]
  /** The best point; with several goals, the best in the first. */
  readonly best: Point
  /** The trade-off front, or the best point alone. */
  readonly front: readonly Point[]
  /** How often the formula ran. */
  readonly evaluations: number
  /** Seed of the search. */
  readonly seed: number
  /** Inputs that ended at an end of their range, in words. */
  readonly atLimits: readonly string[]
  /** How many searches found this optimum. */
  readonly agreement: Agreement
  /** One goal: whether a search that settled found the best. Several: whether the front has settled. */
  readonly settled: boolean
  /** Remarks for the reader, in words. */
  readonly remarks: readonly string[]
}

/** Result of a search. */
export class Optimum extends Printable {
  /** Id of the formula. */
  readonly formula: string
  /** Goals of the search. */
  readonly goals: OptimumData['goals']
  /** The best point; with several goals, the best in the first. */
  readonly best: Point
  /** With several goals the trade-off front, ordered by the first goal, at most twice as many points as the population; otherwise the best point alone. */
  readonly front: readonly Point[]
  /** How often the formula ran. */
  readonly evaluations: number
  /** Seed of the search. */
  readonly seed: number
  /** Inputs that ended at an end of their range, in words: a wider range may give more. */
  readonly atLimits: readonly string[]
  /** With one goal: how many independent searches settled, and how many of them found this optimum. */
  readonly agreement: Agreement
  /**
   * With one goal: whether a search that settled found the best point. With several: whether the front moved by less than 1 % of its ranges over the
   * last quarter of the evaluations. False means that the evaluations ran out.
   */
  readonly settled: boolean
  /** Remarks for the reader, such as a feasible region that random points hardly meet. */
  readonly remarks: readonly string[]

  constructor(found: OptimumData) {
    super()
    this.formula = found.formula
    this.goals = found.goals
    this.best = found.best
    this.front = found.front
    this.evaluations = found.evaluations
    this.seed = found.seed
    this.atLimits = found.atLimits
    this.agreement = found.agreement
    this.settled = found.settled
    this.remarks = found.remarks
  }

  /** `found`, or `infeasible`: no point kept all constraints, `best` breaks them least. */
  get state(): 'found' | 'infeasible' {
    return this.best.feasible ? 'found' : 'infeasible'
  }

  /** The trade-off front over the first two goals. */
  get chart(): Chart {
    const [first, second] = this.goals.map(({ output }) => output) as [string, string | undefined]
    const x = (point: Point) => (point.results[first] as Quantity<Kind>).si
    const y = (point: Point) => (second === undefined ? 0 : (point.results[second] as Quantity<Kind>).si)
    const unit = (output: string | undefined) => (output === undefined ? '1' : siUnit((this.best.results[output] as Quantity<Kind>).kind))
    return pointChart({
      title: `Trade-off of ${this.formula}`,
      description: `${this.front.length} points, none better than another in everything; ${first} from ${this.front[0]?.results[first]} to ${this.front.at(-1)?.results[first]}.`,
      x: { title: first, unit: unit(first) },
      y: { title: second ?? '', unit: unit(second) },
      series: [{ name: 'trade-off', points: this.front.map((point) => [x(point), y(point)] as const) }],
    })
  }

  /** One sentence on how sure the answer is. */
  private get sureness(): string {
    const { searches, agreeing } = this.agreement
    if (this.goals.length > 1)
      return this.settled
        ? 'settled: the front hardly moved over the last quarter of the evaluations'
        : 'not settled: the evaluations ran out while the front still moved; raise `evaluations`'
    const found = `found by ${agreeing} of ${searches} independent searches that settled`
    return this.settled ? found : `${found}; not settled: the evaluations ran out, raise \`evaluations\``
  }

  toMarkdown(max = 12): string {
    const goals = this.goals.map(({ output, goal }) => `${goal} ${output}`).join(', ')
    const { best, front } = this
    // Uniformly spread over the front, ends included.
    const shown =
      front.length <= max ? front : Array.from({ length: max }, (_, i) => front[Math.round((i * (front.length - 1)) / (max - 1))] as Point)
    const names = [...Object.keys(best.choices), ...Object.keys(best.inputs), ...Object.keys(best.results)]
    const row = (point: Point) => names.map((name) => point.choices[name] ?? String(point.inputs[name] ?? point.results[name]))
    return [
      this.state === 'found'
        ? `**${this.formula}**: ${goals}; ${front.length === 1 ? 'best point' : `${front.length} points of the trade-off front`} after ${this.evaluations} runs (seed ${this.seed})`
        : `**${this.formula}**: no point of ${this.evaluations} keeps all constraints; the one that breaks them least breaks ${best.violated.join('; ')}`,
      markdownTable(names, shown.map(row)),
      `- ${this.sureness}`,
      ...this.remarks.map((remark) => `- ${remark}`),
      ...(this.atLimits.length > 0 ? [`- ${this.atLimits.join(', ')}: a wider range may give more`] : []),
    ].join('\n\n')
  }
}
