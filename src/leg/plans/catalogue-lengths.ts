/** Lengths in which cylindrical pins are sold, m. ISO 8734 and ISO 2338 from memory: not checked. */
const PINS = [6, 8, 10, 12, 14, 16, 18, 20, 22, 24, 26, 28, 30, 32, 35, 40, 45, 50, 55, 60, 65, 70, 75, 80, 85, 90, 95, 100]
/** Lengths in which cap screws are sold, m. ISO 4762 from memory: not checked. */
const SCREWS = [5, 6, 8, 10, 12, 16, 20, 25, 30, 35, 40, 45, 50, 55, 60, 65, 70, 80, 90, 100, 110, 120]

/** A hair of rounding, m. */
const HAIR = 1e-9

/** The shortest screw of the catalogue from `min` to `max`; absent where there is none. @internal */
export const screwBetween = (min: number, max: number): number | undefined =>
  SCREWS.map((millimetres) => millimetres / 1000).find((length) => length >= min - HAIR && length <= max + HAIR)

/** The pins of the catalogue next below and next above a length; absent beyond its ends. @internal */
export function pinsAround(needed: number): { readonly below: number | undefined; readonly above: number | undefined } {
  const lengths = PINS.map((millimetres) => millimetres / 1000)
  return { below: lengths.findLast((length) => length <= needed + HAIR), above: lengths.find((length) => length >= needed - HAIR) }
}
