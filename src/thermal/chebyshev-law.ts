/** Points and range of a law: a positive number tabulated over the logarithm of another. */
export interface LawRange {
  readonly low: number
  readonly high: number
  readonly terms: number
}

const middleOf = ({ low, high }: LawRange) => Math.log(low * high) / 2
const halfOf = ({ low, high }: LawRange) => Math.log(high / low) / 2

/** Where a law is tabulated: zeros of the Chebyshev polynomial of its order. */
export const lawNodes = (range: LawRange): number[] =>
  Array.from({ length: range.terms }, (_, i) => Math.exp(middleOf(range) + halfOf(range) * Math.cos((Math.PI * (i + 0.5)) / range.terms)))

/** Chebyshev coefficients of values at the nodes. Source: any numerical analysis text, "Chebyshev interpolation". */
export const lawCoefficients = (values: readonly number[]): number[] =>
  values.map((_, k) => {
    let sum = 0
    for (let i = 0; i < values.length; i++) sum += values[i]! * Math.cos((Math.PI * k * (i + 0.5)) / values.length)
    return ((k === 0 ? 1 : 2) / values.length) * sum
  })

/** Place of an argument in a law's range, −1 to 1. */
export const lawPlace = (range: LawRange, x: number): number => (Math.log(x) - middleOf(range)) / halfOf(range)
