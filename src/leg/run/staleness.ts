import { type Cell, newWalk, STALE } from './cell.js'

/**
 * Which cells a change reaches. It gives speed and nothing else: without it every calculated cell is stale after a change, and the numbers
 * are the same to the last bit.
 */
export class Staleness {
  /** What changed last, and all that it reaches: found when the same leaves change a second time, as in a sweep. */
  #plan: { readonly shape: number; readonly leaves: readonly Cell[]; stale?: readonly Cell[] } = { shape: -1, leaves: [] }

  /** Makes stale what some changed cells reach. `shape` counts the links between cells: while it stays, so does the list. */
  spread(changed: readonly Cell[], shape: number): void {
    const plan = this.#plan
    if (plan.shape !== shape || changed.length !== plan.leaves.length || changed.some((cell, i) => cell !== plan.leaves[i])) {
      this.#plan = { shape, leaves: changed.slice() }
      spreadFrom(changed)
      return
    }
    plan.stale ??= reached(changed)
    for (const cell of plan.stale) cell.state = STALE
  }
}

function reached(changed: readonly Cell[]): Cell[] {
  const walk = newWalk()
  const stale: Cell[] = []
  const open = changed.slice()
  for (let cell = open.pop(); cell !== undefined; cell = open.pop())
    for (const user of cell.users) {
      if (user.walk === walk || user.pinned) continue
      user.walk = walk
      stale.push(user)
      open.push(user)
    }
  return stale
}

/** Makes stale what reads some cells. What reads a stale cell is stale, or was last calculated without it. */
function spreadFrom(changed: readonly Cell[]): void {
  const open = changed.slice()
  for (let cell = open.pop(); cell !== undefined; cell = open.pop())
    for (const user of cell.users) {
      if (user.state === STALE || user.pinned) continue
      user.state = STALE
      open.push(user)
    }
}
