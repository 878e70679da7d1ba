import { type AnyFormula, type Step, stepOf } from '../../formula/index.js'
import type { Calculation } from './calculation.js'
import { Cell, type Entry, newWalk } from './cell.js'
import type { FieldRead } from './field-reads.js'
import { type Candidate, inputPlaces, type Link, linksOf, numbersIn, type Origin, originOf, outputPlaces } from './links.js'
import type { Sheet, SheetGap, SheetLeaf, SheetLoop, SheetStep } from './sheet-form.js'

/** Numbers that may be written in a formula's call without an origin: none, one, and twice. */
const WRITTEN = [0, 1, 2, -1, Number.POSITIVE_INFINITY]

/** Makes sheets of one recorded calculation. */
export class SheetBuilder {
  readonly #calculation: Calculation<never>
  /** Texts of steps, made at their first use: many checks share them. */
  readonly #texts = new Map<object, Step>()
  readonly #placed = new Map<Cell, readonly Candidate[]>()
  readonly #steps: SheetStep[] = []
  readonly #formulas = new Map<string, AnyFormula>()
  readonly #leaves: SheetLeaf[] = []
  readonly #leafCells: Cell[] = []
  readonly #loops: SheetLoop[] = []
  readonly #gaps: SheetGap[] = []

  constructor(calculation: Calculation<never>) {
    if (!calculation.recording) throw new Error('sheets are made of a calculation that records')
    this.#calculation = calculation
  }

  /** The sheet of some cells and of all that they read. */
  sheet(cells: readonly Cell[]): Sheet {
    const results = cells.flatMap((cell) => {
      const own = this.#place(cell)
      return own.map(({ name, number, from }) => ({ id: cell.of.id, path: name, number, from }))
    })
    return {
      leaves: this.#leaves,
      steps: this.#steps,
      formulas: this.#formulas,
      loops: this.#loops,
      results,
      gaps: this.#gaps,
    }
  }

  /** What a leaf of the sheet was read from in the document, by its number. */
  fieldsOf(leaf: number): readonly FieldRead[] {
    return this.#calculation.fieldsOf(this.#leafCells[leaf] as Cell)
  }

  /** Steps of some cells as text, in their order; the closure of a cell holds each once. */
  steps(cells: readonly Cell[]): Step[] {
    const steps: Step[] = []
    for (const { log } of cells)
      for (const entry of log ?? []) {
        if (!('formula' in entry)) continue
        let step = this.#texts.get(entry)
        if (step === undefined) {
          step = stepOf(entry.formula, entry.x, entry.y)
          this.#texts.set(entry, step)
        }
        steps.push(step)
      }
    return steps
  }

  /** Puts a cell on the sheet after what it read; returns its numbers with their origins. */
  #place(cell: Cell): readonly Candidate[] {
    const known = this.#placed.get(cell)
    if (known !== undefined) return known
    const own = cell.of.leaf === undefined ? this.#placeWorked(cell) : this.#placeLeaf(cell)
    this.#placed.set(cell, own)
    return own
  }

  #placeLeaf(cell: Cell): readonly Candidate[] {
    const { leaf } = cell.of
    const number = this.#leaves.length
    this.#leafCells.push(cell)
    const range = this.#calculation.rangeOf(cell)
    const kind = leaf?.kind ?? 'record'
    this.#leaves.push({
      id: cell.of.id,
      names: cell.names,
      kind,
      value: cell.value,
      ...(range === undefined ? {} : { range }),
      ...(leaf?.source === undefined ? {} : { source: leaf.source }),
      ...(leaf?.title === undefined ? {} : { title: leaf.title }),
      ...(leaf?.table === undefined ? {} : { table: leaf.table }),
    })
    if (kind === 'word') return []
    return numbersIn(cell.value).map((place) => ({
      name: place.path === '' ? cell.of.id : place.path,
      number: place.number,
      kind: kind === 'record' ? undefined : kind,
      from: { of: 'leaf', number, path: place.path },
    }))
  }

  #placeWorked(cell: Cell): readonly Candidate[] {
    const candidates: Candidate[] = []
    for (const entry of cell.log ?? []) this.#take(cell, entry, candidates)
    return numbersIn(cell.value).map((place, _, places): Candidate => {
      const name = place.path === '' ? cell.of.id : place.path
      const link = originOf(place, candidates, places)
      if (link === undefined) this.#gap(`${cell.of.id} hands on ${place.path}`, place.number)
      const origin = candidates.find(({ from }) => link !== undefined && from !== undefined && sameOrigin(from, link))
      return { name, number: place.number, kind: origin?.kind, from: link }
    })
  }

  #take(cell: Cell, entry: Entry, candidates: Candidate[]): void {
    if (entry instanceof Cell) candidates.push(...this.#place(entry))
    else if ('loop' in entry) {
      const { loop: title, x, next, within, settled } = entry
      this.#loops.push({ title, x, next, within, settled })
    } else candidates.push(...this.#step(cell, entry, candidates))
  }

  #step(
    cell: Cell,
    entry: { readonly formula: AnyFormula; readonly x: unknown; readonly y: unknown },
    candidates: readonly Candidate[],
  ): Candidate[] {
    const { formula, x, y } = entry
    const from: Record<string, Link> = {}
    const places = inputPlaces(formula, x)
    const links = linksOf(places, candidates)
    for (const place of places) {
      const link = links.get(place)
      if (link !== undefined) from[place.path] = link
      else this.#gap(`${cell.of.id}: ${formula.id} ${place.path}`, place.number)
    }
    const number = this.#steps.length
    const { equation } = formula as { equation?: string }
    this.#steps.push({ formula: formula.id, ...(equation === undefined ? {} : { equation }), x, y, from, names: cell.names })
    this.#formulas.set(formula.id, formula)
    return outputPlaces(formula, y).map(({ path, number: result, kind }) => ({
      name: path === '' ? formula.id : path,
      number: result,
      kind,
      from: { of: 'step', number, path },
    }))
  }

  #gap(where: string, number: number): void {
    if (!WRITTEN.includes(number) && !Number.isNaN(number)) this.#gaps.push({ where, number })
  }
}

const sameOrigin = (a: Origin, b: Origin): boolean => a.of === b.of && a.number === b.number && a.path === b.path

/** Some cells of a recorded calculation and all that they read, each once and after what it reads. */
export function closure(cells: readonly Cell[]): Cell[] {
  const walk = newWalk()
  const order: Cell[] = []
  const visit = (cell: Cell) => {
    if (cell.walk === walk) return
    cell.walk = walk
    for (const entry of cell.log ?? []) if (entry instanceof Cell) visit(entry)
    order.push(cell)
  }
  for (const cell of cells) visit(cell)
  return order
}
