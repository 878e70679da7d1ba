import { type Cell, FAILED, type Held, KNOWN, type NewLink, STALE } from './cell.js'
import { type Ends, LeafEnds, type Uncertain } from './ends.js'
import type { Engine } from './engine.js'
import { add, leavesIn, mark, noLeaves } from './leaf-set.js'
import { type Reach, Reaches } from './reach.js'

/** Reads cells. */
export interface Reader {
  /** The value of a cell. Throws the error of a value that failed. */
  read(cell: Cell): unknown
}

/** A cell that uncertain leaves reach, and what it holds in the present scenario. */
export class Tried implements Held {
  state = STALE
  value: unknown = undefined
  /** The scenario that it holds this in. */
  scenario = -1
  /** What it held in scenarios, by the number of what these look like to it. */
  kept: Held[] | undefined = undefined
  /** Its number where it is one of the leaves. */
  leaf = -1
  constructor(
    readonly by: Scenarios,
    /** The leaves that reach it. */
    public reach: Reach,
  ) {}
}

/**
 * What values would be with uncertain leaves at the ends of their ranges. Nothing of the calculation changes: a cell that none of these leaves
 * reaches is read as it is, and one that is reached is calculated once for all scenarios that look the same to it. No order of scenarios changes a
 * number.
 */
export class Scenarios {
  /** Makes the ends that a scenario is read at. */
  readonly ends: LeafEnds
  readonly #engine: Engine
  readonly #cells: readonly Cell[]
  readonly #leaves: readonly Uncertain[]
  /** The leaves of the present scenario at their ends. */
  #now: Ends
  #scenario = 0
  /** Changes of the calculation that `reach` and `kept` belong to, and links found since. */
  #changes = -1
  #links: NewLink[] = []
  #reaches = new Reaches()

  constructor(engine: Engine, cells: readonly Cell[], leaves: readonly Uncertain[]) {
    this.#engine = engine
    this.#cells = cells
    this.#leaves = leaves
    this.ends = new LeafEnds(leaves)
    this.#now = this.ends.of([])
  }

  /** Reads cells with some leaves at an end of their ranges; until the next scenario. */
  at(ends: Ends): Reader {
    const engine = this.#engine
    const scenario = ++engine.scenarios
    this.#scenario = scenario
    this.#begin()
    this.#now = ends
    return {
      read: (cell) => {
        if (scenario !== this.#scenario || this.#changes !== engine.changes || engine.links !== this.#links)
          throw new Error('this scenario is over')
        return engine.readIn(this, cell)
      },
    }
  }

  /** Numbers of the leaves that may change one of some cells. */
  reaching(cells: readonly Cell[]): number[] {
    this.#begin()
    const all = noLeaves(this.#leaves.length)
    for (const { tried } of cells) if (tried?.by === this) add(all, tried.reach.leaves)
    return leavesIn(all)
  }

  /** A cell in the present scenario; for the engine. */
  read(cell: Cell): unknown {
    const before = cell.tried
    // No two scenarios of a calculation have the same number.
    if (before?.scenario === this.#scenario) return before.state === KNOWN ? before.value : this.#engine.work(cell, before)
    // What is read for the first time is first calculated as it is, to know what reaches it.
    if (cell.state === STALE) this.#engine.calculate(cell)
    if (this.#links.length > 0) this.#join()
    const { tried } = cell
    if (tried === undefined || tried.by !== this || !tried.reach.meets(this.#scenario, this.#now)) return given(cell)
    tried.scenario = this.#scenario
    if (tried.leaf >= 0) return this.#atEnd(tried)
    tried.state = STALE
    return this.#once(cell, tried)
  }

  /** A leaf of the present scenario. */
  #atEnd(tried: Tried): unknown {
    tried.state = KNOWN
    tried.value = this.ends.valueOf(this.#now, tried.leaf)
    return tried.value
  }

  /** A cell that is calculated only where no scenario before looked the same to it. */
  #once(cell: Cell, tried: Tried): unknown {
    const { reach } = tried
    const look = reach.look(this.#now)
    const kept = tried.kept?.[look]
    if (kept !== undefined) {
      tried.state = kept.state
      tried.value = kept.value
      return given(kept)
    }
    try {
      return this.#engine.work(cell, tried)
    } finally {
      // Where a new link lets more leaves reach it, the look says too little.
      if (tried.reach === reach) keep(tried, look, { state: tried.state, value: tried.value })
    }
  }

  /** Finds which leaves reach each cell, and forgets what cells held, where the calculation has changed or other scenarios were read. */
  #begin(): void {
    const engine = this.#engine
    if (this.#changes === engine.changes && engine.links === this.#links) {
      this.#join()
      return
    }
    this.#changes = engine.changes
    this.#links = []
    engine.links = this.#links
    this.#reaches = new Reaches()
    for (const [i, { cell }] of this.#leaves.entries()) {
      const own = noLeaves(this.#leaves.length)
      mark(own, i, 3)
      this.#reaches.start(cell, own)
    }
    for (const cell of this.#cells) {
      const reach = this.#reaches.ofCell(cell)
      cell.tried = reach === undefined ? undefined : new Tried(this, reach)
    }
    for (const [i, { cell }] of this.#leaves.entries()) (cell.tried as Tried).leaf = i
  }

  /** Takes in new links: what reaches a cell reaches its readers. */
  #join(): void {
    const open: Cell[] = []
    for (let link = this.#links.pop(); link !== undefined; link = this.#links.pop()) {
      const { reach } = link.cell.tried ?? {}
      if (reach === undefined) continue
      open.push(link.reader)
      for (let cell = open.pop(); cell !== undefined; cell = open.pop()) {
        if (cell.pinned) continue
        const grown = this.#reaches.grown(cell.tried?.reach, reach)
        if (grown === cell.tried?.reach) continue
        cell.tried ??= new Tried(this, grown)
        cell.tried.reach = grown
        cell.tried.kept = undefined
        open.push(...cell.users)
      }
    }
  }
}

function keep(tried: Tried, look: number, held: Held): void {
  tried.kept ??= []
  tried.kept[look] = held
}

function given({ state, value }: Held): unknown {
  if (state === FAILED) throw value
  return value
}
