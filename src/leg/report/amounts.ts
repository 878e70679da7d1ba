import { type Kind, Quantity, significant } from '../../units/index.js'
import { unitSigns } from '../assess/sentence.js'

/** Digits of a value that was given: as many as a drawing or a data sheet has. */
const GIVEN_DIGITS = 9

/** A number of a kind with its unit, as results print it. */
export const amount = (kind: Kind, si: number): string =>
  Number.isFinite(si)
    ? unitSigns(String(new Quantity(si, kind)))
    : Number.isNaN(si)
      ? 'not a number'
      : si > 0
        ? 'infinite'
        : 'minus infinite'

/** The same with every digit that was given. */
export const exactAmount = (kind: Kind, si: number): string => unitSigns(documentAmount(kind, si))

/** The same as a document takes it. */
export function documentAmount(kind: Kind, si: number): string {
  if (!Number.isFinite(si)) return amount(kind, si)
  const rounded = String(new Quantity(si, kind))
  const unit = rounded.slice(rounded.indexOf(' ') + 1)
  if (!rounded.includes(' ')) return significant(si, GIVEN_DIGITS)
  const number = significant(new Quantity(si, kind).in(unit as never), GIVEN_DIGITS)
  return `${number} ${unit}`
}

/** One name as words; abbreviations stay. */
export const one = (name: string): string =>
  name.replaceAll(/([a-z0-9])([A-Z])/g, (_, a: string, b: string) => `${a} ${b.toLowerCase()}`).replaceAll(/([a-z])(\d{2,})/g, '$1 $2')

/** First letter large. */
export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)

/** Items as a list in a sentence: `a, b and c`. */
export const listed = (items: readonly string[]): string =>
  items.length < 2 ? items.join('') : `${items.slice(0, -1).join(', ')} and ${items.at(-1)}`

/** A remark of a record: names of the code in it become words. */
export const remarkWords = (remark: string): string =>
  remark
    .replaceAll(/\b(?:capstan|fasteners|kinematics|materials|structures|thermal)\.([a-z]\w+)/g, '$1')
    .replaceAll(/`([\w.]+)`|\b([a-z]+[A-Z]\w*)/g, (_, quoted: string | undefined, name: string | undefined) =>
      one(quoted ?? (name as string)),
    )

/** A value rounded away from where it came from, to about a tenth of the change: 7.46 from 7 is 7.5. */
export function roundedBeyond(from: number, to: number): number {
  const rough = Math.abs(to - from) / 5
  if (rough === 0) return to
  const power = 10 ** Math.floor(Math.log10(rough))
  const step = [5, 2, 1].map((one) => one * power).find((one) => one <= rough * (1 + 1e-9)) ?? power
  const steps = to / step
  return Number(significant((to > from ? Math.ceil(steps - 1e-9) : Math.floor(steps + 1e-9)) * step, 12))
}
