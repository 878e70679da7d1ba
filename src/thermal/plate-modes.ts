import { besselJ0, besselJ1Zero } from '../numeric/index.js'

/** How many modes of a round plate with an adiabatic rim are kept. */
export const PLATE_MODES = 1500

let zeros: Float64Array | undefined
let squares: Float64Array | undefined

/** The first zeros of J1 and the squares of J0 there, calculated at first use. */
export function plateModes(): { readonly zeros: Float64Array; readonly squares: Float64Array } {
  if (zeros === undefined || squares === undefined) {
    zeros = Float64Array.from({ length: PLATE_MODES }, (_, i) => besselJ1Zero(i + 1))
    squares = zeros.map((x) => besselJ0(x) ** 2)
  }
  return { zeros, squares }
}
