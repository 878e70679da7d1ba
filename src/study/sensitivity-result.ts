import { barChart, type Chart } from '../chart/index.js'
import { type Kind, Quantity } from '../units/index.js'
import { markdownTable, Printable } from './show.js'

/** Effect of one input on the result. */
export interface Sensitivity {
  /** Path of the input. */
  readonly path: string
  /** Its value. */
  readonly value: Quantity<Kind>
  /** Slope of the result over the input, SI. */
  readonly slope: number
  /**
   * How far the slope may be off, SI: the difference to a rule of lower order, what a kink near the value does, and rounding. Large beside the slope where the result has
   * a kink or is noisy.
   */
  readonly slopeError: number
  /**
   * Percent of change in the result for one percent in the input. Nothing where it says nothing: for a temperature, whose zero
   * is arbitrary to the eye, and where the result is zero.
   */
  readonly elasticity: number | undefined
  /** Where the input is moved to: the ends of its property's range, the 5 % and 95 % points of its distribution, or its value ∓ the swing. */
  readonly from: Quantity<Kind>
  /** Upper end of that move. */
  readonly to: Quantity<Kind>
  /** Where those ends come from. */
  readonly range: 'property' | 'distribution' | 'swing'
  /** The result at `from` and at `to`; undefined where the formula has no finite answer. */
  readonly atFrom: Quantity<Kind> | undefined
  /** The result at `to`; undefined where the formula has no finite answer. */
  readonly atTo: Quantity<Kind> | undefined
}

/** Local sensitivities, those that move the result most first. */
export class Sensitivities extends Printable {
  constructor(
    readonly formula: string,
    /** The result at the values given. */
    readonly value: Quantity<Kind>,
    readonly inputs: readonly Sensitivity[],
  ) {
    super()
  }

  /** A tornado: bars from the result at each input's low end to that at its high end. */
  get chart(): Chart {
    const { kind } = this.value
    const unit = String(new Quantity(0, kind)).split(' ').slice(1).join(' ') || '1'
    const shown = (y: Quantity<Kind>) => (unit === '1' ? y.si : (y.in as (unit: string) => number)(unit))
    const ends = this.inputs.filter(({ atFrom, atTo }) => atFrom !== undefined && atTo !== undefined)
    return barChart({
      title: `What moves ${this.formula}`,
      description: `Bars from the result with each input at its low end to that at its high end, widest first: ${ends
        .slice(0, 4)
        .map(({ path, atFrom, atTo }) => `${path} ${atFrom} to ${atTo}`)
        .join('; ')}.`,
      value: { title: 'result', unit },
      bars: ends.flatMap(({ path, from, to, atFrom, atTo }) => [
        { name: path, from: shown(this.value), to: shown(atFrom as Quantity<Kind>), group: 'low end of the input', label: String(from) },
        { name: path, from: shown(this.value), to: shown(atTo as Quantity<Kind>), group: 'high end of the input', label: String(to) },
      ]),
      rules: [{ name: String(this.value), at: shown(this.value) }],
    })
  }

  toMarkdown(): string {
    const or = (y: unknown) => (y === undefined ? 'no answer' : String(y))
    return [
      `**${this.formula}** = ${this.value}`,
      markdownTable(
        ['input', 'value', 'elasticity', 'moved from … to', 'by', 'result there'],
        this.inputs.map(({ path, value, elasticity, from, to, range, atFrom, atTo }) => [
          path,
          String(value),
          elasticity === undefined ? '–' : String(Number(elasticity.toPrecision(3))),
          `${from} … ${to}`,
          range,
          `${or(atFrom)} … ${or(atTo)}`,
        ]),
      ),
    ].join('\n\n')
  }
}
