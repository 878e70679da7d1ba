import { type Kind, type KindRow, kindRow, unitAt } from './kinds.js'

/** A number as results print it: up to `digits` significant digits, no trailing zeros, a power of ten only where it helps. */
export function significant(x: number, digits = 4): string {
  if (!Number.isFinite(x)) return String(x)
  const size = Math.abs(x)
  if (size !== 0 && (size < 1e-4 || size >= 1e7))
    return x
      .toExponential(digits - 1)
      .replace(/\.?0+e/, 'e')
      .replace('e+', 'e')
  return String(Number(x.toPrecision(digits)))
}

/** A value in the unit that results of some size are printed in. */
export function inShown(si: number, ofSize: number, row: KindRow): { readonly number: string; readonly name: string } {
  const { show } = row
  // Zero prints in the middle one.
  let at = ofSize === 0 ? show.length >> 1 : 0
  for (let i = 1; i < show.length; i++) if (Math.abs(ofSize) >= unitAt(row, i).size * 0.9999) at = i
  const { size, zero } = unitAt(row, at)
  return { number: significant((si - zero) / size), name: show[at]! }
}

/** A value and its range in one unit, such as `0.38 (0.25 to 0.55)` and `65 (50 to 80) MPa`. */
export function bandText(kind: Kind, typical: number, low: number, high: number): string {
  const row = kindRow(kind)
  const [middle, bottom, top] = [typical, low, high].map((si) => inShown(si, typical, row))
  const band = `${middle!.number} (${bottom!.number} to ${top!.number})`
  return middle!.name === '1' ? band : `${band} ${middle!.name}`
}
