import type { MountSpecification } from './mount-specification.js'
import type { Factors } from './network.js'

/** The parts of the specification that a link's conductance or a node's capacity is made of, by name. */
const PARTS: readonly (readonly [RegExp, readonly (keyof MountSpecification)[]])[] = [
  [/^(winding|stator|can|winding-stator|stator-can)$/, ['body']],
  [/^can /, ['body', 'surroundings', 'rotationCools']],
  [/^stator-mount$/, ['body', 'plate']],
  [/^(mount|plate)/, ['body', 'plate', 'insert', 'surroundings']],
  [/^leg link/, ['links', 'surroundings']],
  [/^sink/, ['sink', 'surroundings']],
  [/^board/, ['controller', 'surroundings']],
]

/** What of calibrations still holds when parts of the specification changed. */
export function stillHolds(factors: readonly Factors[], changed: readonly string[]): Factors[] {
  const holds = (name: string) => !PARTS.some(([pattern, parts]) => pattern.test(name) && parts.some((part) => changed.includes(part)))
  const of = (by: Readonly<Record<string, number>> = {}) => Object.fromEntries(Object.entries(by).filter(([name]) => holds(name)))
  return factors.map(({ links, capacities, spreads }) => ({
    links: of(links),
    capacities: of(capacities),
    ...(spreads !== undefined && { spreads: spreads.map((spread) => ({ links: of(spread.links), capacities: of(spread.capacities) })) }),
  }))
}
