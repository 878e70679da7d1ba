import type { Cell } from './cell.js'
import { add, type LeafSet } from './leaf-set.js'

/**
 * Leaves that reach some cells, and what the present scenario looks like to these cells. Cells that the same leaves reach share one: there are a
 * hundred times fewer of them than cells.
 */
export class Reach {
  #scenario = -1
  #meets = false
  /** Places of the words that hold leaves: most cells are reached by few. */
  readonly #places: readonly number[]
  /** Numbers of the looks of scenarios, by the leaves of these that are in the scenario: word by word. */
  readonly #looks: Looks = new Map()
  #count = 0
  #look = -1

  constructor(readonly leaves: LeafSet) {
    this.#places = [...leaves.keys()].filter((place) => leaves[place] !== 0)
  }

  /** Whether a leaf of a scenario reaches the cells. `now` holds the leaves of the scenario. */
  meets(scenario: number, now: LeafSet): boolean {
    if (scenario !== this.#scenario) {
      this.#scenario = scenario
      this.#look = -1
      this.#meets = this.#meet(now)
    }
    return this.#meets
  }

  /** A number for what a scenario looks like to the cells: the same for scenarios that differ in other leaves alone. Ask `meets` first. */
  look(now: LeafSet): number {
    if (this.#look < 0) {
      let looks = this.#looks
      const last = this.#places.length - 1
      for (let i = 0; i < last; i++) looks = inner(looks, this.#seen(i, now))
      const seen = this.#seen(last, now)
      let look = looks.get(seen) as number | undefined
      if (look === undefined) {
        look = this.#count++
        looks.set(seen, look)
      }
      this.#look = look
    }
    return this.#look
  }

  #seen(i: number, now: LeafSet): number {
    const place = this.#places[i] as number
    return (this.leaves[place] as number) & (now[place] as number)
  }

  #meet(now: LeafSet): boolean {
    for (let i = 0; i < this.#places.length; i++) if (this.#seen(i, now) !== 0) return true
    return false
  }
}

/** Numbers by words, or such maps by the word before. */
type Looks = Map<number, Looks | number>

function inner(looks: Looks, word: number): Looks {
  let found = looks.get(word) as Looks | undefined
  if (found === undefined) {
    found = new Map()
    looks.set(word, found)
  }
  return found
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
