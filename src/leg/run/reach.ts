import type { Cell } from './cell.js'
import { add, type LeafSet } from './leaf-set.js'

/**
 * Leaves that reach some cells, and what the present scenario looks like to these cells. Cells that the same leaves reach share one: there are a
 * hundred times fewer of them than cells.
 */
export class Reach {
  #scenario = -1
  #meets = false
  /** Numbers of the looks of scenarios, by the leaves of these that are in the scenario. */
  readonly #looks = new Map<string, number>()
  #look = -1

  constructor(readonly leaves: LeafSet) {}

  /** Whether a leaf of a scenario reaches the cells. `now` holds the leaves of the scenario. */
  meets(scenario: number, now: LeafSet): boolean {
    if (scenario !== this.#scenario) {
      this.#scenario = scenario
      this.#look = -1
      this.#meets = meet(this.leaves, now)
    }
    return this.#meets
  }

  /** A number for what a scenario looks like to the cells: the same for scenarios that differ in other leaves alone. Ask `meets` first. */
  look(now: LeafSet): number {
    if (this.#look < 0) {
      let key = ''
      for (let i = 0; i < now.length; i++) key += `${(this.leaves[i] as number) & (now[i] as number)} `
      this.#look = this.#looks.get(key) ?? this.#looks.size
      this.#looks.set(key, this.#look)
    }
    return this.#look
  }
}

function meet(reach: LeafSet, now: LeafSet): boolean {
  for (let i = 0; i < now.length; i++) if (((reach[i] as number) & (now[i] as number)) !== 0) return true
  return false
}

/** The leaves that reach cells: those of what they read. */
export class Reaches {
  readonly #found = new Map<Cell, Reach | undefined>()
  readonly #known = new Map<string, Reach>()

  /** The one for some leaves. */
  of(leaves: LeafSet): Reach {
    const key = leaves.join()
    let reach = this.#known.get(key)
    if (reach === undefined) {
      reach = new Reach(leaves)
      this.#known.set(key, reach)
    }
    return reach
  }

  /** The same with more leaves; itself where these are among its own. */
  grown(reach: Reach | undefined, by: Reach): Reach {
    if (reach === undefined || reach === by) return by
    const leaves = reach.leaves.slice()
    return add(leaves, by.leaves) ? this.of(leaves) : reach
  }

  /** States what reaches a cell that is one of the leaves. */
  start(cell: Cell, leaves: LeafSet): void {
    this.#found.set(cell, this.of(leaves))
  }

  /** Leaves that reach a cell; absent where no leaf does. */
  ofCell(cell: Cell): Reach | undefined {
    if (this.#found.has(cell)) return this.#found.get(cell)
    // A cell that is at work, or reads itself, adds nothing to itself.
    this.#found.set(cell, undefined)
    let reach: Reach | undefined
    if (!cell.pinned)
      for (const read of cell.reads) {
        const inner = this.ofCell(read)
        if (inner !== undefined) reach = this.grown(reach, inner)
      }
    this.#found.set(cell, reach)
    return reach
  }
}
