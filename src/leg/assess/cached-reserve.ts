import type { LegCalculation } from '../calculation.js'
import { type Cell, KNOWN } from '../run/index.js'
import { type Comparison, reserveIn } from './compare.js'

/** The reserve that was found last for a comparison, and for which values of its sides. */
export class CachedReserve {
  readonly demand: Cell
  readonly capacity: Cell
  readonly unless: Cell | undefined
  /** Demand and capacity found last, and why the check does not apply. What is not a number is never the same again. */
  required: unknown = Number.NaN
  borne: unknown = Number.NaN
  why: unknown = undefined
  /** Absent where the check does not apply. */
  reserve: number | undefined = undefined
  constructor(readonly comparison: Comparison) {
    ;({ demand: this.demand, capacity: this.capacity, unless: this.unless } = comparison)
  }
}

/** Comparisons without those of the same check that read the same cells in a later load case: they find the same. */
export function differing(comparisons: readonly Comparison[]): Comparison[] {
  const places = new Map<Cell, number>()
  const placeOf = (cell: Cell | undefined): number => {
    if (cell === undefined) return -1
    const place = places.get(cell) ?? places.size
    places.set(cell, place)
    return place
  }
  const seen = new Set<string>()
  return comparisons.filter(({ check, joint, demand, capacity, unless }) => {
    const key = `${check.id} ${joint} ${placeOf(demand)} ${placeOf(capacity)} ${placeOf(unless)}`
    const isNew = !seen.has(key)
    seen.add(key)
    return isNew
  })
}

/** The least reserve of some comparisons; absent where none applies. */
export function leastOf(calculation: LegCalculation, group: readonly CachedReserve[]): number | undefined {
  let min: number | undefined
  for (const cached of group) {
    const found = cachedReserve(calculation, cached)
    if (found !== undefined && (min === undefined || found < min)) min = found
  }
  return min
}

/** The reserve of a comparison, found again only where one of its sides has changed. The calculation holds no change that has not spread. */
export function cachedReserve(calculation: LegCalculation, cached: CachedReserve): number | undefined {
  const { demand, capacity, unless } = cached
  if (
    demand.state === KNOWN &&
    capacity.state === KNOWN &&
    (unless === undefined || unless.state === KNOWN) &&
    demand.value === cached.required &&
    capacity.value === cached.borne &&
    unless?.value === cached.why
  )
    return cached.reserve
  cached.reserve = reserveIn(calculation, cached.comparison)
  cached.required = demand.value
  cached.borne = capacity.value
  cached.why = unless?.value
  return cached.reserve
}
