import type { Optimum } from './optimum.js'
import { markdownTable, Printable, percentText } from './show.js'

/** How many draws kept all constraints, and the exact lower bound of the share that does. */
export interface Held {
  /** Draws that kept all constraints. */
  readonly held: number
  /** All draws. */
  readonly draws: number
  /** Lower bound of the share, with the confidence of the plan. */
  readonly least: number
}

/** Everything that a `RobustOptimum` holds. */
interface RobustOptimumData {
  /** Whether the draws show the stated share. */
  readonly state: 'held' | 'notShown' | 'infeasible'
  /** The optimum at typical values. */
  readonly nominal: Optimum
  /** The optimum whose constraints hold in the stated share. */
  readonly robust: Optimum
  /** How often the constraints of the first hold. */
  readonly atNominal: Held
  /** How often the constraints of the second hold, in fresh draws. */
  readonly atRobust: Held
  /** Share of cases in which all constraints must hold. */
  readonly chance: number
  /** Confidence of the bounds. */
  readonly confidence: number
  /** Draws under which the constraints were held at once. */
  readonly scenarios: number
  /** How often the formula ran. */
  readonly evaluations: number
  /** Remarks for the reader, in words. */
  readonly remarks: readonly string[]
}

/** An optimum whose constraints hold in a stated share of all cases, next to the one at typical values. */
export class RobustOptimum extends Printable {
  /** `held`: the draws show the stated share. `notShown`: they do not, for want of draws or rounds. `infeasible`: no point keeps the constraints. */
  readonly state: RobustOptimumData['state']
  /** The optimum at typical values, and how often its constraints hold. */
  readonly nominal: Optimum
  readonly atNominal: Held
  /** The optimum whose constraints hold in the stated share, and how often they do in fresh draws. */
  readonly robust: Optimum
  readonly atRobust: Held
  readonly chance: number
  readonly confidence: number
  /** Draws under which the constraints were held at once. */
  readonly scenarios: number
  readonly evaluations: number
  readonly remarks: readonly string[]

  constructor(found: RobustOptimumData) {
    super()
    this.state = found.state
    this.nominal = found.nominal
    this.atNominal = found.atNominal
    this.robust = found.robust
    this.atRobust = found.atRobust
    this.chance = found.chance
    this.confidence = found.confidence
    this.scenarios = found.scenarios
    this.evaluations = found.evaluations
    this.remarks = found.remarks
  }

  /** The price of robustness: each goal at the robust optimum less that at typical values, as a share of the latter. */
  get price(): Readonly<Record<string, number>> {
    const at = ({ best }: Optimum, output: string) => best.results[output]?.si ?? Number.NaN
    return Object.fromEntries(this.nominal.goals.map(({ output }) => [output, at(this.robust, output) / at(this.nominal, output) - 1]))
  }

  toMarkdown(): string {
    const { nominal, robust, price } = this
    const share = ({ held, draws, least }: Held) => `${percentText(held / draws)} of ${draws} draws, at least ${percentText(least)}`
    const words = {
      held: `All constraints hold in at least ${percentText(this.chance)} of all cases (confidence ${percentText(this.confidence)}).`,
      notShown: `The draws do not show that all constraints hold in ${percentText(this.chance)} of all cases: more draws or rounds may.`,
      infeasible: 'No point was found that keeps the constraints under the draws.',
    }
    const paths = Object.keys(robust.best.inputs)
    const rows = [
      ...paths.map((path) => [path, String(nominal.best.inputs[path]), String(robust.best.inputs[path])]),
      ...Object.keys(robust.best.choices).map((name) => [name, String(nominal.best.choices[name]), String(robust.best.choices[name])]),
      ...nominal.goals.map(({ output }) => [
        output,
        String(nominal.best.results[output]),
        `${robust.best.results[output]} (${(price[output] as number) >= 0 ? '+' : ''}${percentText(price[output] as number)})`,
      ]),
      ['constraints hold', share(this.atNominal), share(this.atRobust)],
    ]
    return [
      words[this.state],
      markdownTable(['', 'at typical values', 'robust'], rows),
      ...this.remarks.map((remark) => `- ${remark}`),
    ].join('\n\n')
  }
}
