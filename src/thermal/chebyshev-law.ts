/** Points and range of a law: a positive number tabulated over the logarithm of another. */
export interface LawRange {
  readonly low: number
  readonly high: number
  /** Where the law is tabulated: zeros of the Chebyshev polynomial of its order. */
  readonly nodes: readonly number[]
  /** Middle and half width on the logarithmic scale. */
  readonly middle: number
  readonly half: number
  /** Chebyshev polynomials at the nodes, by order. */
  readonly polynomials: readonly (readonly number[])[]
}

/** A range with so many nodes. What depends on it alone is worked out once, since laws are made and read thousands of times. */
export function lawRange(low: number, high: number, terms: number): LawRange {
  const [middle, half] = [Math.log(low * high) / 2, Math.log(high / low) / 2]
  const order = Array.from({ length: terms }, (_, k) => k)
  return {
    low,
    high,
    middle,
    half,
    nodes: order.map((i) => Math.exp(middle + half * Math.cos((Math.PI * (i + 0.5)) / terms))),
    polynomials: order.map((k) => order.map((i) => Math.cos((Math.PI * k * (i + 0.5)) / terms))),
  }
}

/** Chebyshev coefficients of values at the nodes. Source: any numerical analysis text, "Chebyshev interpolation". */
export const lawCoefficients = ({ polynomials }: LawRange, values: readonly number[]): number[] =>
  polynomials.map((polynomial, k) => {
    let sum = 0
    for (let i = 0; i < values.length; i++) sum += values[i]! * polynomial[i]!
    return ((k === 0 ? 1 : 2) / values.length) * sum
  })

/** Place of an argument in a law's range, −1 to 1. */
export const lawPlace = ({ middle, half }: LawRange, x: number): number => (Math.log(x) - middle) / half
