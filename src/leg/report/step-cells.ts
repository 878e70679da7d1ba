import type { AnyFormula, Input, OutputField } from '../../formula/index.js'
import { type Kind, kindWords } from '../../units/index.js'
import type { Link } from '../run/index.js'
import { amount, amounts, exactAmount, exactAmounts, one } from './amounts.js'
import type { Piece, Words } from './blocks.js'
import { wordsOf } from './equation-words.js'
import type { NumberedStep, Numbering } from './numbering.js'
import type { Origins } from './origins.js'

/** One input or result of a formula: its name in words, and what a step has there. */
export interface Column {
  readonly name: string
  readonly cell: (step: NumberedStep) => Words
}

/** Makes references: to the step that made a number, or to the place where it was given. */
export class References {
  /** Numbers without an origin on the sheet. */
  gaps = 0
  readonly #numbering: Numbering
  readonly #origins: Origins

  constructor(numbering: Numbering, origins: Origins) {
    this.#numbering = numbering
    this.#origins = origins
  }

  /** The reference that stands behind a number; nothing for a written one. */
  of(link: Link | undefined, kind: Kind): Piece[] {
    if (link === undefined) return []
    const number = link.of === 'step' ? this.#numbering.stepOf(link).number : this.#origins.refOf(link, kind)
    return [link.negative ? ' −' : ' ', { text: `[${number}]`, to: link.of === 'step' ? `s${number}` : number }]
  }

  /** Whether numbers of a list stand in one row of the sheet, as those of a table do; fields stand one by one. */
  ofOneRow(links: readonly Link[], kind: Kind): boolean {
    return new Set(links.map((link) => this.#origins.refOf(link, kind))).size === 1
  }

  /** A number with its reference. Given values stand with every digit. */
  number(si: number, kind: Kind, link: Link | undefined): Piece[] {
    return [link?.of === 'leaf' ? exactAmount(kind, si) : amount(kind, si), ...this.of(link, kind)]
  }
}

/** Words that formulas return, as a reader says them. */
const SHOWN_AS: Readonly<Record<string, string>> = { refused: 'not allowed', thigh: 'upper link' }
const wordText = (given: unknown): string =>
  typeof given === 'string' ? (SHOWN_AS[given] ?? one(given)) : given === true ? 'yes' : given === false ? 'no' : String(given)

/** The inputs of a formula, records field by field. */
export const inputColumns = (formula: AnyFormula, references: References): Column[] =>
  Object.entries(formula.def.inputs).flatMap(([name, input]) => columnsOf(name, input, references))

function columnsOf(path: string, input: Input, references: References): Column[] {
  if (typeof input === 'object' && 'fields' in input)
    return Object.entries(input.fields).flatMap(([name, inner]) => columnsOf(`${path}.${name}`, inner, references))
  return [{ name: wordsOf(path), cell: ({ step }) => textOf(at(step.x, path), input, path, step.from, references) }]
}

const at = (x: unknown, path: string): unknown =>
  path.split('.').reduce<unknown>((inner, name) => (inner as Record<string, unknown> | undefined)?.[name], x)

type From = NumberedStep['step']['from']

function textOf(given: unknown, input: Input, path: string, from: From, references: References): Words {
  if (given === undefined || (typeof given === 'number' && Number.isNaN(given))) return ''
  if (typeof input === 'string') return references.number(given as number, input, from[path])
  if ('kind' in input) return references.number(given as number, input.kind, from[path])
  if ('list' in input) return listOf(given as ArrayLike<unknown>, input.list, path, from, references)
  if ('fields' in input)
    return Object.entries(input.fields).flatMap(([name, inner], i): readonly Piece[] => {
      const words = textOf((given as Record<string, unknown>)[name], inner, `${path}.${name}`, from, references)
      return words === '' ? [] : [i === 0 ? `${one(name)} ` : `, ${one(name)} `, ...(typeof words === 'string' ? [words] : words)]
    })
  if ('curve' in input) return `curve of ${kindWords(input.curve[1])} over ${kindWords(input.curve[0])}`
  return wordText(given)
}

/** A list; where all of its numbers come from one place, the reference stands once. */
function listOf(given: ArrayLike<unknown>, item: Input, path: string, from: From, references: References): Words {
  const kind = typeof item === 'string' ? item : 'kind' in item ? item.kind : undefined
  const items = Array.from(given)
  if (kind === undefined)
    return items.flatMap((each, i): readonly Piece[] => {
      const words = textOf(each, item, `${path}.${i}`, from, references)
      return [i === 0 ? '' : '; ', ...(typeof words === 'string' ? [words] : words)]
    })
  const links = items.map((_, i) => from[`${path}.${i}`])
  const [first] = links
  const common =
    first !== undefined && links.every((link) => link?.of === first.of && link.number === first.number && link.negative === first.negative)
  // The numbers of a list that a step made stand there.
  if (common && first.of === 'step' && items.length > 1) return [`${items.length} numbers`, ...references.of(first, kind)]
  if (common && first.of === 'leaf' && references.ofOneRow(links as readonly Link[], kind))
    return [exactAmounts(kind, items as number[]), ...references.of(first, kind)]
  return items.flatMap((each, i): readonly Piece[] => [i === 0 ? '' : ', ', ...references.number(each as number, kind, links[i])])
}

/** The results of a formula that something reads, and the words that it returns. */
export function resultColumns({ def: { output } }: AnyFormula, used: ReadonlySet<string>): Column[] {
  const column = (name: string, field: OutputField, of: (y: unknown) => unknown): Column => ({
    name,
    cell: ({ step }) => resultText(field, of(step.y)),
  })
  if (typeof output === 'string' || 'infinite' in output) return [column('result', output as OutputField, (y) => y)]
  return Object.entries(output as Record<string, OutputField>)
    .filter(([name, field]) => used.has(name) || (typeof field === 'object' && 'oneOf' in field))
    .map(([name, field]) => column(one(name), field, (y) => (y as Record<string, unknown>)[name]))
}

function resultText(field: OutputField, y: unknown): string {
  if (typeof field === 'string') return amount(field, y as number)
  if ('kind' in field) return amount(field.kind, y as number)
  if ('list' in field) return amounts(field.list, Array.from(y as ArrayLike<number>))
  return wordText(y)
}
