/** A number as drawings print it: four significant digits at most, and a true minus sign. */
export function plain(x: number, digits = 4): string {
  if (x === 0 || Math.abs(x) < 1e-9) return '0'
  const rounded = Number(x.toPrecision(digits))
  const text = Math.abs(rounded) >= 1e6 || Math.abs(rounded) < 1e-4 ? rounded.toExponential() : String(rounded)
  return text.replaceAll('-', '−')
}

/** The round number of 1, 2 or 5 at or below a size. */
export function roundBelow(x: number): number {
  const power = 10 ** Math.floor(Math.log10(x) + 1e-12)
  const lead = x / power
  return (lead >= 5 ? 5 : lead >= 2 ? 2 : 1) * power
}

/** Round numbers across a range, not more than so many. */
export function ticksOf(low: number, high: number, max: number): readonly number[] {
  const span = high - low
  if (!(span > 0)) return [low]
  let step = roundBelow(span / max)
  while (Math.floor(high / step + 1e-9) - Math.ceil(low / step - 1e-9) + 1 > max) step = roundBelow(step * 2.5)
  const first = Math.ceil(low / step - 1e-9)
  const count = Math.floor(high / step + 1e-9) - first + 1
  return Array.from({ length: Math.max(0, count) }, (_, i) => Number(((first + i) * step).toPrecision(12)))
}

/** Scales of drawings (ISO 5455), and those that very small and very large legs need, the largest first: size on paper over size of the part. */
export const SCALES = [50, 20, 10, 5, 2, 1, 0.5, 0.2, 0.1, 0.05, 0.02, 0.01] as const
/** Units of the page in a millimetre of paper. */
export const UNITS = 4

/** A scale as it is written: `1 : 2`. */
export const scaleText = (scale: number): string => (scale >= 1 ? `${scale} : 1` : `1 : ${Math.round(1 / scale)}`)
