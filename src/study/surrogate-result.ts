import { InputError, type Issue, issue, type Kind, nearName, oneOfNames, Quantity, readAt } from '../units/index.js'
import type { Kriging } from './kriging.js'
import { markdownTable, Printable, percentText, spreadKind } from './show.js'

/** One side of the box. */
interface Axis {
  /** Path of the input. */
  readonly path: string
  /** Kind of the input. */
  readonly kind: Kind
  /** Lower end, SI. */
  readonly from: number
  /** Upper end, SI. */
  readonly to: number
}

/** Everything that a `Surrogate` holds. */
interface SurrogateData {
  /** Id of the formula. */
  readonly formula: string
  /** Name of the result. */
  readonly output: string
  /** Kind of the result. */
  readonly kind: Kind
  /** The box that it was trained in. */
  readonly box: readonly Axis[]
  /** The function through the training runs, in the unit box. */
  readonly model: Kriging
  /** Stated error over the model's own deviation. */
  readonly ratio: number
  /** Share of the box in which an answer is off by no more than its error. */
  readonly confidence: number
  /** Runs in all. */
  readonly runs: number
  /** Runs that it never saw. */
  readonly heldOut: number
  /** Root mean square error of the runs held out, SI. */
  readonly rootMeanSquare: number
  /** Largest error of the runs held out, SI. */
  readonly largest: number
  /** Largest less smallest result of the runs held out, SI. */
  readonly spread: number
}

/** An answer of a surrogate. */
export interface Approximation {
  /** The approximate result. */
  readonly value: Quantity<Kind>
  /** How far off it may be: exceeded by no more than the stated share of the points of the box. */
  readonly error: Quantity<Kind>
}

/** A fast stand-in for a formula within a box, with an error that was measured on runs it never saw. */
export class Surrogate extends Printable {
  /** Id of the formula. */
  readonly formula: string
  /** Name of the result that it gives. */
  readonly output: string
  /** The box in which it answers. */
  readonly box: readonly { readonly path: string; readonly from: Quantity<Kind>; readonly to: Quantity<Kind> }[]
  /** Share of the box in which an answer is off by no more than its error. */
  readonly confidence: number
  /** Runs of the formula. */
  readonly runs: number
  /** Runs that it never saw. */
  readonly heldOut: number
  /** Root mean square error of the runs held out. */
  readonly rootMeanSquare: Quantity<Kind>
  /** Largest error of the runs held out. */
  readonly largest: Quantity<Kind>
  readonly #found: SurrogateData

  constructor(found: SurrogateData) {
    super()
    const spread = spreadKind(found.kind)
    this.#found = found
    this.formula = found.formula
    this.output = found.output
    this.box = found.box.map(({ path, kind, from, to }) => ({ path, from: new Quantity(from, kind), to: new Quantity(to, kind) }))
    this.confidence = found.confidence
    this.runs = found.runs
    this.heldOut = found.heldOut
    this.rootMeanSquare = new Quantity(found.rootMeanSquare, spread)
    this.largest = new Quantity(found.largest, spread)
  }

  /** The approximate result with its error, for a value of each input of the box by its path. Throws one `InputError` for what is missing, unknown or outside the box. */
  at(values: Readonly<Record<string, unknown>>): Approximation {
    const { box, kind } = this.#found
    const issues: Issue[] = []
    const paths = box.map(({ path }) => path)
    for (const name of Object.keys(values ?? {}))
      if (!paths.includes(name)) issues.push(issue(name, values[name], oneOfNames(paths, nearName(name, paths) ?? name)))
    const x = box.map(({ path, kind, from, to }) => {
      const read = readAt(path, kind, values?.[path] as never, issues)
      if (read < from || read > to)
        issues.push(
          issue(path, values[path], `must be within the box that was learnt, ${new Quantity(from, kind)} to ${new Quantity(to, kind)}`),
        )
      return read
    })
    if (issues.length > 0) throw new InputError(`surrogate of ${this.formula}`, issues)
    const [value, error] = this.si(x)
    return { value: new Quantity(value, kind), error: new Quantity(error, spreadKind(kind)) }
  }

  /** The same in SI numbers, in the order of the box: value and error. NaN outside the box. */
  si(x: ArrayLike<number>): readonly [value: number, error: number] {
    const { box, model, ratio } = this.#found
    const u = Float64Array.from(box, ({ from, to }, i) => ((x[i] as number) - from) / (to - from))
    if (!u.every((share) => share >= 0 && share <= 1)) return [Number.NaN, Number.NaN]
    const [value, deviation] = model.at(u)
    return [value, ratio * deviation]
  }

  toMarkdown(): string {
    const { spread, rootMeanSquare } = this.#found
    const share = spread > 0 ? ` (${percentText(rootMeanSquare / spread)} of the range of results)` : ''
    return [
      `**${this.formula}**, approximated: of ${this.runs} runs ${this.heldOut} were held out; their root mean square error is ${this.rootMeanSquare}${share}, the largest ${this.largest}`,
      markdownTable(
        ['input', 'from', 'to'],
        this.box.map(({ path, from, to }) => [path, String(from), String(to)]),
      ),
      `Each answer states an error that ${percentText(this.confidence)} of the points of a box keep on average over surrogates; of this box it may be some percent more or fewer. Work out with the formula itself what you build from.`,
    ].join('\n\n')
  }
}
