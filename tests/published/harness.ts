import type { Formula, Given, Inputs, Output, Source } from '../../src/formula/index.js'
import { type In, type Kind, Quantity, quantity } from '../../src/units/index.js'

/**
 * One comparison of a result with a value from outside. `within` is as tight as the printed digits allow: `'digits'` (the default)
 * takes half a unit in the last printed digit of the expected text, a percentage is relative, a quantity text or a bare number (in the expected unit) is absolute.
 */
export interface Check {
  /** The formula's id, or `module.name` of a solver. */
  readonly id: string
  /** What is compared, in a few words. */
  readonly what: string
  readonly expected: string
  readonly within: string
  readonly source: Source
  /** The inputs of a formula's case. */
  readonly given?: unknown
  /** Runs it: computed and expected in the expected value's unit (words give NaN and are compared as text). */
  readonly run: () => { computed: number | string; expected: number | string; tolerance: number }
}

type Expected<O> = O extends Kind
  ? In<O>
  : O extends { kind: infer K extends Kind; infinite: true }
    ? In<K>
    : {
        [F in keyof O]?: O[F] extends Kind
          ? In<O[F]>
          : O[F] extends { kind: infer K extends Kind }
            ? In<K>
            : O[F] extends { list: infer K extends Kind }
              ? readonly In<K>[]
              : O[F] extends { oneOf: readonly (infer T)[] }
                ? T
                : never
      }

interface PublishedCase<I extends Inputs, O extends Output> {
  /** Inputs in the units the source prints. */
  readonly given: Given<I>
  /** Expected result(s) as the source prints them. */
  readonly gives: Expected<O>
  /** Tolerance: `'digits'` (default), a percentage such as `'0.01 %'`, or a quantity text. */
  readonly within?: string
  readonly source: Source
  readonly what?: string
}

/** A printed value with its unit, as an oracle's data have it. */
export const printed = <U extends string>(value: string | undefined, unit: U) => `${value} ${unit}` as `${number} ${U}`

/** Published cases of one formula. */
export function published<I extends Inputs, O extends Output>(formula: Formula<I, O>, ...cases: PublishedCase<I, O>[]): Check[] {
  return cases.flatMap((c) => {
    const { output } = formula.def
    const single = typeof output === 'string' || 'infinite' in (output as object)
    const wanted: [string, unknown][] = single
      ? [['', c.gives]]
      : Object.entries(c.gives as object).flatMap(([name, e]): [string, unknown][] =>
          Array.isArray(e) && !isPair(e) ? e.map((item, i): [string, unknown] => [`${name}.${i}`, item]) : [[name, e]],
        )
    return wanted.map(([name, expected]): Check => {
      const value = () => {
        const result = formula(c.given) as unknown
        return name === '' ? result : name.split('.').reduce<unknown>((at, key) => (at as Record<string, unknown>)[key], result)
      }
      return {
        ...comparison(formula.id, [c.what, name].filter(Boolean).join(': '), value, expected, c.within ?? 'digits', c.source),
        given: c.given,
      }
    })
  })
}

/** One published value of a solver that is not a formula. `value` returns a quantity, a number or a word. */
export function publishedValue(
  id: string,
  what: string,
  value: () => Quantity | number | string,
  expected: string | number,
  source: Source,
  within = 'digits',
): Check {
  return comparison(id, what, value, expected, within, source)
}

const isPair = (e: readonly unknown[]) => e.length === 2 && typeof e[0] === 'number' && typeof e[1] === 'string'

function comparison(id: string, what: string, value: () => unknown, expected: unknown, within: string, source: Source): Check {
  const text = Array.isArray(expected) ? expected.join(' ') : String(expected)
  const run = () => {
    const got = value()
    if (typeof expected === 'string' && !/\d/.test(expected)) return { computed: String(got), expected, tolerance: 0 }
    const [printed = '', ...unitWords] = text.split(' ')
    const unit = unitWords.join(' ')
    const computed = got instanceof Quantity ? (unit === '' ? got.si : (got.in as (u: string) => number).call(got, unit)) : Number(got)
    return { computed, expected: Number(printed), tolerance: tolerance(printed, unit, within, got) }
  }
  return { id, what, expected: text, within, source, run }
}

function tolerance(printed: string, unit: string, within: string, got: unknown): number {
  if (within === 'digits') return lastDigit(printed) * 0.5000001
  if (within.endsWith('%')) return (Math.abs(Number(printed)) * Number.parseFloat(within)) / 100
  // A bare number counts in the expected value's own unit.
  if (!within.includes(' ')) return Number(within)
  if (!(got instanceof Quantity) || unit === '') return Number.parseFloat(within)
  const absolute = quantity(got.kind as Kind, within as never)
  const zero = quantity(got.kind as Kind, `0 ${unit}` as never)
  return (absolute.in as (u: string) => number).call(absolute, unit) - (zero.in as (u: string) => number).call(zero, unit)
}

/** The size of one unit in the last digit of a printed number. */
function lastDigit(printed: string): number {
  const [mantissa = '', exponent = '0'] = printed.toLowerCase().split('e')
  const decimals = mantissa.includes('.') ? mantissa.length - mantissa.indexOf('.') - 1 : 0
  return 10 ** (Number(exponent) - decimals)
}
