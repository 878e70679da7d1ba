import { type Kind, Quantity, quantity, significant } from '../../units/index.js'
import { unitSigns } from '../assess/sentence.js'

/** Digits of a value that was given: as many as a drawing or a data sheet has. */
const GIVEN_DIGITS = 9

/** Smaller energies are those of a molecule, J: they are known in electronvolts. */
const OF_MOLECULES = 1e-15

/** A number of a kind with its unit, as results print it. */
export const amount = (kind: Kind, si: number): string =>
  kind === 'time' && si === 0
    ? '0 s'
    : Number.isFinite(si)
      ? unitSigns(String(new Quantity(si, kind)))
      : Number.isNaN(si)
        ? 'not a number'
        : si > 0
          ? 'infinite'
          : 'minus infinity'

/** The same with every digit that was given. */
export const exactAmount = (kind: Kind, si: number): string => (si === 0 ? amount(kind, si) : unitSigns(documentAmount(kind, si)))

/** A number beside one so many times its size is the rounding of what was calculated. */
const ROUNDING = 1e-14

/** Numbers of one kind; the unit stands once where it is the same. */
export function amounts(kind: Kind, items: readonly number[]): string {
  const largest = Math.max(...items.map(Math.abs).filter(Number.isFinite))
  return inOneUnit(items.map((si) => amount(kind, Math.abs(si) < ROUNDING * largest ? 0 : si)))
}

/** The same with every digit that was given. */
export const exactAmounts = (kind: Kind, items: readonly number[]): string => inOneUnit(items.map((si) => exactAmount(kind, si)))

function inOneUnit(texts: readonly string[]): string {
  const units = new Set(texts.map((text) => (text.includes(' ') ? text.slice(text.indexOf(' ')) : '')))
  const [unit = ''] = units
  return units.size === 1 && unit !== '' ? `${texts.map((text) => text.slice(0, -unit.length)).join(', ')}${unit}` : texts.join(', ')
}

/** The same as a document takes it. */
export function documentAmount(kind: Kind, si: number): string {
  if (!Number.isFinite(si)) return amount(kind, si)
  if (kind === 'energy' && Math.abs(si) < OF_MOLECULES) return `${significant(new Quantity(si, kind).in('eV'), GIVEN_DIGITS)} eV`
  const rounded = String(new Quantity(si, kind))
  const unit = rounded.slice(rounded.indexOf(' ') + 1)
  if (!rounded.includes(' ')) return significant(si, GIVEN_DIGITS)
  const number = significant(new Quantity(si, kind).in(unit as never), GIVEN_DIGITS)
  return `${number} ${unit}`
}

/** Words of names that are written with capitals. */
const PROPER: Readonly<Record<string, string>> = {
  poisson: 'Poisson’s',
  iso: 'ISO',
  emf: 'EMF',
  dc: 'DC',
  euler: 'Euler',
  johnson: 'Johnson',
  mises: 'Mises',
  tresca: 'Tresca',
}

const PROPER_WORDS = new RegExp(`\\b(?:${Object.keys(PROPER).join('|')})\\b`, 'g')

/** Words with the capitals that they are written with. */
export const properly = (words: string): string => words.replaceAll(PROPER_WORDS, (word) => PROPER[word] as string)

/** One name as words; abbreviations and designations such as 10x26x8 stay. */
export function one(name: string): string {
  const words = name.replaceAll(/([a-z0-9])([A-Z])/g, (_, a: string, b: string) => `${a} ${b.toLowerCase()}`)
  return properly(/\d/.test(words) ? words.replaceAll(/(?<=[a-z]{2})(\d{2,}|\d(?= ))/g, ' $1') : words)
}

/** First letter large. */
export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)

/** Items as a list in a sentence: `a, b and c`. */
export const listed = (items: readonly string[]): string =>
  items.length < 2 ? items.join('') : `${items.slice(0, -1).join(', ')} and ${items.at(-1)}`

/** A remark of a record: names of the code in it become words, and its units get their signs. Units such as kJ and symbols such as dT stay. */
export const remarkWords = (remark: string): string =>
  unitSigns(
    remark
      .replaceAll(/\b(?:capstan|fasteners|kinematics|materials|structures|thermal)\.([a-z]\w+)/g, '$1')
      .replaceAll(/`([\w.]+)`|\b([a-z]{2,}[A-Z][a-z]\w*)/g, (_, quoted: string | undefined, name: string | undefined) =>
        one(quoted ?? (name as string)),
      ),
  )

/** A number of a kind rounded away from where it came from, to about a tenth of the change, in the unit that it is printed in: an angle in degrees. */
export function roundedIn(kind: Kind, from: number, to: number): number {
  const text = String(new Quantity(to, kind))
  if (!text.includes(' ')) return roundedBeyond(from, to)
  const unit = text.slice(text.indexOf(' ') + 1)
  const inUnit = (si: number) => new Quantity(si, kind).in(unit as never)
  return quantity(kind, [roundedBeyond(inUnit(from), inUnit(to)), unit] as never).si
}

/** A value rounded away from where it came from, to about a tenth of the change: 7.46 from 7 is 7.5. */
export function roundedBeyond(from: number, to: number): number {
  const rough = Math.abs(to - from) / 5
  if (rough === 0) return to
  const power = 10 ** Math.floor(Math.log10(rough))
  const step = [5, 2, 1].map((digit) => digit * power).find((digit) => digit <= rough * (1 + 1e-9)) ?? power
  const steps = to / step
  return Number(significant((to > from ? Math.ceil(steps - 1e-9) : Math.floor(steps + 1e-9)) * step, 12))
}
