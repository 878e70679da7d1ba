import { type Cell, STALE } from './cell.js'

/**
 * Which cells a change reaches. It gives speed and nothing else: without it every calculated cell is stale after a change, and the numbers
 * are the same to the last bit.
 */
export class Staleness {
  #plan = { shape: -1, leaves: [] as readonly Cell[], stale: [] as readonly Cell[] }
  #marks = 0

  /** Makes stale what some changed cells reach. `shape` counts the links between cells: while it stays, so does the list. */
  spread(changed: readonly Cell[], shape: number): void {
    const plan = this.#plan
    if (plan.shape !== shape || changed.length !== plan.leaves.length || changed.some((cell, i) => cell !== plan.leaves[i]))
      this.#plan = { shape, leaves: changed.slice(), stale: this.#reached(changed) }
    for (const cell of this.#plan.stale) cell.state = STALE
  }

  #reached(changed: readonly Cell[]): Cell[] {
    const mark = ++this.#marks
    const stale: Cell[] = []
    const open = changed.slice()
    for (let cell = open.pop(); cell !== undefined; cell = open.pop())
      for (const user of cell.users) {
        if (user.mark === mark || user.pinned) continue
        user.mark = mark
        stale.push(user)
        open.push(user)
      }
    return stale
  }
}
