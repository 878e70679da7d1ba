import { type In, type Kind, quantity, type UnitOf } from '../../units/index.js'

const PLAIN = /^[+-]?\d*[.,]?\d*$/

/** Step of a display by the cells of a column as they were written, SI: the last digit of which all are multiples. 0 where it does not show. */
export function displayStep(cells: readonly string[], kind: Kind, unit: string): number {
  const numbers = cells.map((cell) => cell.trim()).filter((cell) => /[1-9]/.test(cell))
  if (numbers.length === 0 || !numbers.every((cell) => PLAIN.test(cell))) return 0
  const decimals = Math.max(...numbers.map((cell) => cell.split(/[.,]/)[1]?.length ?? 0))
  const zeros = Math.min(...numbers.map((cell) => /0*$/.exec(cell)?.[0].length ?? 0))
  return 10 ** (decimals > 0 ? -decimals : zeros) * (inSi(1, kind, unit) - inSi(0, kind, unit))
}
const inSi = (x: number, kind: Kind, unit: string) => quantity(kind, [x, unit as UnitOf<Kind>] as unknown as In<Kind>).si
