import { QuickLeg } from '../assess/quick.js'
import type { LegCalculation } from '../calculation.js'
import type { CaseId } from '../cases/events.js'
import type { LegNumbers } from '../leg-numbers.js'
import { sameStructure } from '../parts/structure.js'

/** Calculations that are kept: one for each structure that the search goes back and forth between. */
const KEPT = 10

interface Kept {
  readonly quick: QuickLeg
  x: LegNumbers
}

/** How much a check lacks: 0 where it holds. */
export type Lack = (key: string, reserve: number) => number

/** Evaluates legs of several structures: going back to a structure, such as another size of pin, costs what has changed and no new calculation. */
export class QuickLegs {
  /** The one used last is last. */
  readonly #kept: Kept[] = []
  /** Checks in the order in which they are looked at: what stopped a leg before comes first. */
  #order: string[] = []

  constructor(
    readonly cases: readonly CaseId[],
    readonly max = KEPT,
  ) {}

  /** The least reserve of each check over the load cases, by `id joint`; nothing where more is lacking than `max`, which the first few checks mostly show. */
  reserves(x: LegNumbers, lack: Lack, max = Number.POSITIVE_INFINITY): Map<string, number> | undefined {
    const quick = this.#for(x)
    const keys = quick.keys(x)
    const known = new Set(keys)
    this.#order = [...new Set([...this.#order, ...keys])]
    const found = new Map<string, number>()
    let sum = 0
    for (const [place, key] of this.#order.entries()) {
      if (!known.has(key)) continue
      const reserve = quick.reserveOf(x, key)
      if (reserve === undefined) continue
      found.set(key, reserve)
      sum += lack(key, reserve)
      if (sum <= max) continue
      this.#order.unshift(...this.#order.splice(place, 1))
      return undefined
    }
    // In the order of the checks, so that sums over them do not depend on the legs before.
    return new Map(keys.flatMap((key) => (found.has(key) ? [[key, found.get(key) as number] as const] : [])))
  }

  /** The calculation with a leg's numbers in it. */
  load(x: LegNumbers): LegCalculation {
    return this.#for(x).load(x)
  }

  #for(x: LegNumbers): QuickLeg {
    const place = this.#kept.findLastIndex((entry) => sameStructure(x, entry.x))
    const [found = { quick: new QuickLeg(this.cases), x }] = place < 0 ? [] : this.#kept.splice(place, 1)
    found.x = x
    this.#kept.push(found)
    if (this.#kept.length > this.max) this.#kept.shift()
    return found.quick
  }
}
