import { type Formula, formula } from '../../formula/index.js'
import type { Kind } from '../../units/index.js'

type Inputs = { readonly [name: string]: Kind | { readonly list: Kind } }

/** A small formula with its printed equation. */
export type Line<I extends Inputs, O extends Kind> = Formula<I, O> & {
  readonly equation: string
}

type Numbers<I> = { readonly [N in keyof I]: I[N] extends Kind ? number : readonly number[] }

/** Makes a line: one step of arithmetic, with the equation that the sheet prints and the second reader evaluates. */
function makeLine<const I extends Inputs, const O extends Kind>(
  title: string,
  inputs: I,
  output: O,
  equation: string,
  si: (x: Numbers<I>) => number,
): Line<I, O> {
  const record = { inputs, output, source: [{ level: 'computed', where: equation }], si }
  return Object.assign(formula(`leg.${title}`, record as never), { equation }) as unknown as Line<I, O>
}

/** Makes a line that joins all inputs by one operation, in their order; the equation follows from their names. */
const joined =
  (equation: (names: readonly string[]) => string, join: (one: number, next: number) => number) =>
  <const I extends { readonly [name: string]: Kind }, const O extends Kind>(title: string, inputs: I, output: O): Line<I, O> => {
    const [first, ...others] = Object.keys(inputs) as [string, ...string[]]
    return makeLine(title, inputs, output, equation([first, ...others]), (of) => {
      const x = of as Readonly<Record<string, number>>
      let result = x[first]!
      for (const name of others) result = join(result, x[name]!)
      return result
    })
  }
const between = (sign: string) => (names: readonly string[]) => names.join(` ${sign} `)

/** One step of arithmetic as a formula of its own. */
export const line = Object.assign(makeLine, {
  product: joined(between('·'), (one, next) => one * next),
  quotient: joined(between('/'), (one, next) => one / next),
  sum: joined(between('+'), (one, next) => one + next),
  difference: joined(between('−'), (one, next) => one - next),
  largest: joined((names) => `max(${names.join(', ')})`, Math.max),
  smallest: joined((names) => `min(${names.join(', ')})`, Math.min),
})
