import { type Cell, FAILED, KNOWN, type Named, nowhere, STALE, type Unsettled } from './cell.js'
import type { Uncertain } from './ends.js'
import { type Answers, Engine } from './engine.js'
import { FieldIndex } from './field-index.js'
import { type FieldRead, following, readAll, readLeaf } from './field-reads.js'
import { Instances, type Structure } from './instances.js'
import { Scenarios } from './scenarios.js'
import { Staleness } from './staleness.js'
import type { AnyValue, At, Index, Names, Range, Value } from './value.js'

/** How a calculation runs. */
export interface CalculationOptions {
  /** Keep what every value read and ran, for sheets. Default: false. */
  readonly recording?: boolean
  /** Recalculate only what a change reaches. Default: true. */
  readonly selective?: boolean
  /** Answers of the kinds of parts to the questions of their families. Default: none. */
  readonly answers?: Answers
}

/**
 * The values of one structure. Each value for each set of instances is one cell, calculated when first read, and again after what it read has
 * changed. A failure is a value: who reads it fails with the same error, and everything else stands.
 */
export class Calculation<D = unknown> {
  readonly instances: Instances
  readonly recording: boolean
  readonly #selective: boolean
  readonly #staleness = new Staleness()
  readonly #engine: Engine
  #changed: Cell[] = []
  #document: D
  readonly #fields = new FieldIndex<D>()
  /** Leaves of which is not known yet what they are read from; those before `#traced` were met. */
  readonly #untraced = new Set<Cell>()
  #traced = 0
  /** Leaves that hold what was set. */
  readonly #set = new Set<Cell>()

  constructor(structure: Structure, document: D, options: CalculationOptions = {}) {
    this.instances = new Instances(structure)
    this.recording = options.recording ?? false
    this.#selective = options.selective ?? true
    this.#document = document
    this.#engine = new Engine(this.instances, this.recording, options.answers ?? {}, (cell) => this.#read(cell))
  }

  /** The document whose leaves it holds. */
  get document(): D {
    return this.#document
  }

  /** Values calculated so far. */
  get worked(): number {
    return this.#engine.worked
  }

  /** The value for instances by handle. Throws the error of a value that failed. */
  get<T, A extends Index>(of: Value<T, A>, where: At<A> & Named): T {
    return this.read(this.cell(of, where)) as T
  }

  /** The value of a cell. Throws the error of a value that failed. */
  read(cell: Cell): unknown {
    this.refresh()
    return cell.state === KNOWN ? cell.value : this.#engine.work(cell)
  }

  /** Whether a cell is known and nothing that it depends on has changed. */
  stands(cell: Cell): boolean {
    this.refresh()
    return cell.state === KNOWN
  }

  /** The cell of a value for instances by handle. */
  cell<T, A extends Index>(of: Value<T, A>, where: At<A> & Named): Cell {
    return this.instances.find(of as unknown as AnyValue, where, nowhere())
  }

  /** Sets a leaf until the next `load`. */
  set<T, A extends Index>(of: Value<T, A>, where: At<A> & Named, x: T): void {
    if (of.leaf === undefined) throw new Error(`${of.id} is calculated: pin it instead`)
    this.put(this.cell(of, where), x)
  }

  /** Sets the cell of a leaf until the next `load`. */
  put(cell: Cell, x: unknown): void {
    if (cell.state === KNOWN && Object.is(cell.value, x)) return
    this.#set.add(cell)
    this.#put(cell, x)
  }

  #put(cell: Cell, x: unknown): void {
    cell.value = x
    cell.state = KNOWN
    this.#change(cell)
  }

  #change(cell: Cell): void {
    this.#engine.changes++
    this.#changed.push(cell)
  }

  /** Reads the leaves anew from a document of the same structure: those that a difference reaches, and those that were set. */
  load(document: D): void {
    const { leaves } = this.instances
    for (; this.#traced < leaves.length; this.#traced++) this.#untraced.add(leaves[this.#traced] as Cell)
    for (const cell of this.#untraced) if (cell.state !== STALE) this.#trace(cell)
    const changed = this.#fields.changed(this.#document, document)
    this.#document = document
    for (const cell of changed) this.#readAgain(cell)
    for (const cell of this.#set) this.restore(cell)
  }

  #trace(cell: Cell): void {
    this.#untraced.delete(cell)
    this.#fields.trace(cell, this.#document, (document) => readLeaf(cell, document))
  }

  /** Sets a leaf back to what the document says. */
  restore(cell: Cell): void {
    this.#set.delete(cell)
    this.#readAgain(cell)
  }

  #readAgain(cell: Cell): void {
    if (cell.state === STALE) return
    this.#untraced.add(cell)
    let x: unknown
    try {
      x = this.#read(cell)
    } catch (error) {
      cell.value = error
      cell.state = FAILED
      this.#change(cell)
      return
    }
    if (cell.state !== KNOWN || !Object.is(cell.value, x)) this.#put(cell, x)
  }

  /** Replaces a calculated value by a given one until `unpin`: a what-if. */
  pin<T, A extends Index>(of: Value<T, A>, where: At<A> & Named, x: T): void {
    if (of.leaf !== undefined) throw new Error(`${of.id} is a leaf: set it instead`)
    const cell = this.cell(of, where)
    if (!cell.pinned) this.#engine.shape++
    cell.pinned = true
    this.#put(cell, x)
  }

  /** Calculates a pinned value again. */
  unpin<T, A extends Index>(of: Value<T, A>, where: At<A> & Named): void {
    const cell = this.cell(of, where)
    if (!cell.pinned) return
    cell.pinned = false
    cell.state = STALE
    this.#engine.shape++
    this.#change(cell)
  }

  /** What values would be with uncertain leaves at the ends of their ranges. */
  scenarios(leaves: readonly Uncertain[]): Scenarios {
    this.refresh()
    return new Scenarios(this.#engine, this.instances.cells, leaves)
  }

  /** Makes stale what the changes since the last time reach. */
  refresh(): void {
    if (this.#changed.length === 0) return
    const changed = this.#changed
    this.#changed = []
    if (this.#selective) this.#staleness.spread(changed, this.#engine.shape)
    else for (const cell of this.instances.cells) if (cell.of.leaf === undefined && !cell.pinned) cell.state = STALE
  }

  /** Loops that did not converge, among the values that stand. */
  unsettled(): Unsettled[] {
    return this.instances.cells.flatMap(({ unsettled, state }) => (unsettled === undefined || state === STALE ? [] : [unsettled]))
  }

  /** The range of a leaf in the document that is loaded; absent where it is certain. */
  rangeOf({ of, names }: Cell): Range | undefined {
    return (of.leaf?.range as ((document: D, names: Names) => Range | undefined) | undefined)?.(this.#document, names)
  }

  /** Fields of the document that a leaf is read from, each with its value. */
  fieldsOf({ of, names }: Cell): FieldRead[] {
    const fields: FieldRead[] = []
    const read = of.leaf?.read as ((document: D, names: Names) => unknown) | undefined
    readAll(read?.(following(this.#document, '', fields), names))
    return fields
  }

  #read(cell: Cell): unknown {
    const x = readLeaf(cell, this.#document)
    const { refersTo } = cell.of.leaf as NonNullable<AnyValue['leaf']>
    if (refersTo === undefined) return x
    if (Array.isArray(x)) return x.map((name) => this.instances.handle(refersTo, name))
    return typeof x === 'string' ? this.instances.handle(refersTo, x) : x
  }
}
