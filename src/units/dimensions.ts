/** The base units, in the order in which their exponents are packed. */
const BASE = ['m', 'kg', 's', 'K', 'A', 'mol']

/**
 * The packed exponent of a base unit; 0 for any other name. Exponents are doubled (so that square roots stay exact) and stand base 64 in
 * one number: a product of quantities adds two numbers.
 */
export const dimensionOf = (name: string): number => {
  const place = BASE.indexOf(name)
  return place < 0 ? 0 : 2 * 64 ** place
}

/** Doubled exponents of the base units. */
const exponents = (dim: number): number[] =>
  BASE.map(() => {
    const doubled = ((((dim + 32) % 64) + 64) % 64) - 32 // each stands base 64 with a sign of its own
    dim = (dim - doubled) / 64
    return doubled
  })

/** Writes packed dimensions as a product of SI base units, such as `kg m^2 s^-2`; `1` for a pure number. */
export const dimensionsText = (dim: number): string =>
  exponents(dim)
    .map((doubled, i) => (doubled === 0 ? '' : doubled === 2 ? BASE[i] : `${BASE[i]}^${doubled / 2}`))
    .filter(Boolean)
    .join(' ') || '1'

/** Whether every exponent is even once doubled, so that a square root of the dimensions exists with half exponents. */
export const hasSquareRoot = (dim: number): boolean => exponents(dim).every((doubled) => doubled % 2 === 0)
