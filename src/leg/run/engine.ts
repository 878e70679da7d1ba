import type { AnyFormula } from '../../formula/index.js'
import { AT_WORK, agrees, Cell, type Entry, FAILED, type Held, KNOWN, type Named, type NewLink, nowhere, withItem } from './cell.js'
import { rejectImpossible } from './impossible.js'
import type { Instances } from './instances.js'
import type { Scenarios } from './scenarios.js'
import { settle } from './settle.js'
import { SharedRuns } from './shared-runs.js'
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
  /** Counts the changes of leaves. */
  changes = 0
  /** Counts the scenarios. */
  scenarios = 0
  /** Where scenarios keep what is linked anew. */
  links: NewLink[] | undefined = undefined
  /** Where cells are read in a scenario. */
  private tried: Scenarios | undefined = undefined
  private readonly instances: Instances
  private readonly recording: boolean
  private readonly answers: Answers
  private readonly leaf: (cell: Cell) => unknown
  private readonly shared = new SharedRuns()
  private readonly handed: Work
  private current = new Cell(undefined as never, nowhere(), nowhere(), {} as Names)
  /** What the current cell read last time, and how far it has read now. */
  private own = this.current.own
  private nextOwn = 0
  private named = this.current.named
  private nextNamed = 0
  /** Whether a loop is running: nothing is logged, and nothing may be read. */
  private muted = false

  constructor(instances: Instances, recording: boolean, answers: Answers, leaf: (cell: Cell) => unknown) {
    this.instances = instances
    this.recording = recording
    this.answers = answers
    this.leaf = leaf
    this.handed = this.makeUse()
  }

  /** A cell in a scenario. */
  readIn(scenarios: Scenarios, cell: Cell): unknown {
    const before = this.tried
    this.tried = scenarios
    try {
      return scenarios.read(cell)
    } finally {
      this.tried = before
    }
  }

  /** Calculates a cell as it is without a scenario, or finds that it fails. */
  calculate(cell: Cell): void {
    const before = this.tried
    this.tried = undefined
    try {
      this.work(cell)
    } catch {
      // The cell holds the error.
    }
    this.tried = before
  }

  /** Calculates a cell that is not known; in a scenario into what it holds there. */
  work(cell: Cell, into: Held = cell): unknown {
    if (into.state === FAILED) throw into.value
    if (into.state === AT_WORK) throw new Error(`${cell.of.id} depends on itself: express the loop with use.settle`)
    const { of } = cell
    const current = this.current
    const nextOwn = this.nextOwn
    const nextNamed = this.nextNamed
    into.state = AT_WORK
    if (into === cell) {
      cell.unsettled = undefined
      if (this.recording) cell.log = []
    }
    this.enter(cell, 0, 0)
    try {
      if (of.work === undefined) into.value = this.leaf(cell)
      else {
        this.worked++
        into.value = (of.work as unknown as (use: Work, at: unknown) => unknown)(this.handed, cell.where)
      }
      into.state = KNOWN
      return into.value
    } catch (error) {
      into.value = error
      into.state = FAILED
      this.muted = false
      throw error
    } finally {
      this.enter(current, nextOwn, nextNamed)
    }
  }

  private enter(cell: Cell, nextOwn: number, nextNamed: number): void {
    this.current = cell
    this.own = cell.own
    this.nextOwn = nextOwn
    this.named = cell.named
    this.nextNamed = nextNamed
  }

  /** A value for the instances of its reader. The order of reads is nearly always that of the last time, so one comparison finds the cell. */
  private read(of: AnyValue): unknown {
    if (this.muted) this.refuse(of)
    const place = this.nextOwn++
    let cell = this.own[place]
    if (cell === undefined || cell.of !== of) {
      cell = this.find(of, NOTHING)
      this.own = this.current.own = withItem(this.own, place, cell)
    }
    if (this.tried !== undefined) return this.tried.read(cell)
    if (this.recording) (this.current.log as Entry[]).push(cell)
    return cell.state === KNOWN ? cell.value : this.work(cell)
  }

  /** The same for instances that the reader names. */
  private readAt(of: AnyValue, where: Named): unknown {
    if (this.muted) this.refuse(of)
    const place = this.nextNamed++
    let cell = this.named[place]
    if (cell === undefined || cell.of !== of || !agrees(cell, where, this.current.sees)) {
      cell = this.find(of, where)
      this.named = this.current.named = withItem(this.named, place, cell)
    }
    if (this.tried !== undefined) return this.tried.read(cell)
    if (this.recording) (this.current.log as Entry[]).push(cell)
    return cell.state === KNOWN ? cell.value : this.work(cell)
  }

  private find(of: AnyValue, named: Named): Cell {
    const cell = this.instances.find(of, named, this.current.sees)
    const { reads } = this.current
    if (!reads.includes(cell)) {
      reads.push(cell)
      cell.users.push(this.current)
      this.shape++
      this.links?.push({ reader: this.current, cell })
    }
    return cell
  }

  private refuse({ id }: AnyValue): never {
    throw new Error(`${id} is read inside a loop of ${this.current.of.id}: read it before the loop`)
  }

  /** Takes a run on the log of what is at work, unless its formula has no answer there. */
  private ran(formula: AnyFormula, x: unknown, y: unknown): unknown {
    rejectImpossible(formula, x)
    if (this.recording && !this.muted && this.tried === undefined) (this.current.log as Entry[]).push({ formula, x, y })
    return y
  }

  private settle<R extends Round>(
    title: string,
    loop: Loop,
    round: (x: number) => R,
  ): R & { readonly x: number; readonly settled: boolean } {
    const outer = this.muted
    this.muted = true
    const { x, rounds, settled } = settle(loop, round)
    this.muted = outer
    const { of, names } = this.current
    if (!settled && this.tried === undefined)
      this.current.unsettled = { value: of.id, names, loop: title, why: `does not converge in ${rounds} rounds` }
    // The round that counts runs once more, now logged: no guess can get on the sheet.
    const last = round(x)
    if (this.recording && !outer && this.tried === undefined)
      (this.current.log as Entry[]).push({ loop: title, rounds, x, next: last.next, within: loop.within, settled })
    return { ...last, x, settled }
  }

  private makeUse(): Work {
    const use = (of: AnyValue) => this.read(of)
    return Object.assign(use, {
      at: (of: AnyValue, named: Named) => this.readAt(of, named),
      all: (index: Index, named?: Named) => this.instances.all(index, named),
      nameOf: (index: Index, of: Of<Index>) => this.instances.name(index, of),
      run: (formula: AnyFormula, x: unknown) => this.ran(formula, x, formula.si(x as never)),
      shared: (formula: AnyFormula, x: unknown) => this.ran(formula, x, this.shared.run(formula, x)),
      settle: <R extends Round>(title: string, loop: Loop, round: (x: number) => R) => this.settle(title, loop, round),
      answer: (family: string, kind: string, question: string) => this.answers[family]?.[kind]?.[question],
    }) as unknown as Work
  }
}

const NOTHING: Named = {}
