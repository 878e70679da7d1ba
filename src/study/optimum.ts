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
  readonly feasible: boolean
  /** The whole argument, ready for a checked call of the formula. */
  readonly argument: Readonly<Record<string, unknown>>
}

/** What a search found. */
export class Optimum extends Printable {
  constructor(
    readonly formula: string,
    readonly goals: readonly { readonly output: string; readonly goal: 'minimise' | 'maximise' }[],
    /** The best point; with several goals, the best in the first. */
    readonly best: Point,
    /** With several goals the trade-off front, ordered by the first goal; otherwise the best point alone. */
    readonly front: readonly Point[],
    /** How often the formula ran. */
    readonly evaluations: number,
    readonly seed: number,
    /** Inputs that ended at an end of their range, in words: a wider range may give more. */
    readonly atLimits: readonly string[],
    /** With one goal: independent searches that settled, and how many of them found this optimum; few agreeing means to search longer. */
    readonly agreement: { readonly searches: number; readonly agreeing: number },
  ) {
    super()
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

  toMarkdown(most = 12): string {
    const goals = this.goals.map(({ output, goal }) => `${goal} ${output}`).join(', ')
    const { best, front } = this
    // Evenly spread over the front, ends included.
    const shown =
      front.length <= most
        ? front
        : Array.from({ length: most }, (_, i) => front[Math.round((i * (front.length - 1)) / (most - 1))] as Point)
    const names = [...Object.keys(best.choices), ...Object.keys(best.inputs), ...Object.keys(best.results)]
    const row = (point: Point) => names.map((name) => point.choices[name] ?? String(point.inputs[name] ?? point.results[name]))
    return [
      this.state === 'found'
        ? `**${this.formula}**: ${goals}; ${front.length === 1 ? 'best point' : `${front.length} points of the trade-off front`} after ${this.evaluations} runs (seed ${this.seed})`
        : `**${this.formula}**: no point of ${this.evaluations} keeps all constraints; the one that breaks them least breaks ${best.violated.join('; ')}`,
      markdownTable(names, shown.map(row)),
      ...(this.goals.length === 1 ? [`- found by ${this.agreement.agreeing} of ${this.agreement.searches} independent searches`] : []),
      ...(this.atLimits.length > 0 ? [`- ${this.atLimits.join(', ')}: a wider range may give more`] : []),
    ].join('\n\n')
  }
}
