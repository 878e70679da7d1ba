import type { AnyFormula } from '../../formula/index.js'
import { AT_WORK, Cell, type Entry, FAILED, KNOWN, type Named, nowhere } from './cell.js'
import type { Instances } from './instances.js'
import { settle } from './settle.js'
import type { AnyValue, Index, Loop, Names, Of, Round, Use } from './value.js'

/** Answers of each kind of part to the questions of its family: family, kind, question. */
export type Answers = Readonly<Record<string, Readonly<Record<string, Readonly<Record<string, unknown>>>>>>

type Work = Use<Index>

/** Calculates cells: one stack of what is at work, and the order in which it reads. */
export class Engine {
  /** Values calculated so far. */
  worked = 0
  /** Counts the links between cells. */
  shape = 0
  readonly #instances: Instances
  readonly #recording: boolean
  readonly #answers: Answers
  readonly #leaf: (cell: Cell) => unknown
  readonly #use: Work
  #current = new Cell(undefined as never, nowhere(), nowhere(), {} as Names)
  #reading = this.#current.reads
  #cursor = 0
  /** Whether a loop is running: nothing is logged, and nothing may be read. */
  #muted = false

  constructor(instances: Instances, recording: boolean, answers: Answers, leaf: (cell: Cell) => unknown) {
    this.#instances = instances
    this.#recording = recording
    this.#answers = answers
    this.#leaf = leaf
    this.#use = this.#makeUse()
  }

  /** Calculates a cell that is not known. */
  work(cell: Cell): unknown {
    if (cell.state === FAILED) throw cell.value
    if (cell.state === AT_WORK) throw new Error(`${cell.of.id} depends on itself: express the loop with use.settle`)
    const { of, where } = cell
    const [current, reading, cursor] = [this.#current, this.#reading, this.#cursor]
    cell.state = AT_WORK
    cell.unsettled = undefined
    if (this.#recording) cell.log = []
    this.#current = cell
    this.#reading = cell.reads
    this.#cursor = 0
    try {
      if (of.work === undefined) cell.value = this.#leaf(cell)
      else {
        this.worked++
        cell.value = (of.work as unknown as (use: Work, at: unknown) => unknown)(this.#use, where)
      }
      cell.state = KNOWN
      return cell.value
    } catch (error) {
      cell.value = error
      cell.state = FAILED
      throw error
    } finally {
      this.#muted = false
      this.#current = current
      this.#reading = reading
      this.#cursor = cursor
    }
  }

  /** The order of reads is nearly always that of the last time, so one comparison finds the cell; it is found anew only where it changed. */
  #met(of: AnyValue, named: Named): Cell {
    const cell = this.#reading[this.#cursor]
    if (cell !== undefined && cell.of === of && agrees(cell, named, this.#current)) {
      this.#cursor++
      return cell
    }
    const found = this.#instances.find(of, named, this.#current.sees)
    const place = this.#reading.indexOf(found)
    if (place < 0) {
      this.#reading.splice(this.#cursor++, 0, found)
      found.users.push(this.#current)
      this.shape++
    } else if (place >= this.#cursor) this.#cursor = place + 1
    return found
  }

  #get(of: AnyValue, named: Named): unknown {
    if (this.#muted) throw new Error(`${of.id} is read inside a loop of ${this.#current.of.id}: read it before the loop`)
    const cell = this.#met(of, named)
    if (this.#recording) (this.#current.log as Entry[]).push({ cell })
    return cell.state === KNOWN ? cell.value : this.work(cell)
  }

  #run(formula: AnyFormula, x: unknown): unknown {
    const y = formula.si(x as never)
    if (this.#recording && !this.#muted) (this.#current.log as Entry[]).push({ formula, x, y })
    return y
  }

  #settle<R extends Round>(title: string, loop: Loop, round: (x: number) => R): R & { readonly x: number; readonly settled: boolean } {
    const outer = this.#muted
    this.#muted = true
    const { x, rounds, settled } = settle(loop, round)
    this.#muted = outer
    const { of, names } = this.#current
    if (!settled) this.#current.unsettled = { value: of.id, names, loop: title, why: `does not converge in ${rounds} rounds` }
    // The round that counts runs once more, now logged: no guess can get on the sheet.
    const last = round(x)
    if (this.#recording && !outer)
      (this.#current.log as Entry[]).push({ loop: title, rounds, x, next: last.next, within: loop.within, settled })
    return { ...last, x, settled }
  }

  #makeUse(): Work {
    const use = (of: AnyValue) => this.#get(of, NOTHING)
    return Object.assign(use, {
      at: (of: AnyValue, named: Named) => this.#get(of, named),
      all: (index: Index, named?: Named) => this.#instances.all(index, named),
      nameOf: (index: Index, of: Of<Index>) => this.#instances.name(index, of),
      run: (formula: AnyFormula, x: unknown) => this.#run(formula, x),
      settle: <R extends Round>(title: string, loop: Loop, round: (x: number) => R) => this.#settle(title, loop, round),
      answer: (family: string, kind: string, question: string) => this.#answers[family]?.[kind]?.[question],
    }) as unknown as Work
  }
}

const NOTHING: Named = {}

/** Whether a cell is the one for the instances named; those not named are the reader's. */
function agrees(cell: Cell, named: Named, { sees }: Cell): boolean {
  for (const index of cell.of.by) if (cell.where[index] !== (named[index] ?? sees[index])) return false
  return true
}
