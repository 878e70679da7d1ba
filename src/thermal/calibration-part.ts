import type { NetworkNumbers } from './network-numbers.js'

/** A link or capacity that may be corrected, and how far each free cause moves the logarithm of its factor. */
export interface Part {
  readonly name: string
  readonly shares: readonly number[]
}

export function partsOf(n: NetworkNumbers, free: readonly number[], stored: boolean): { links: Part[]; capacities: Part[] } {
  const of = (names: readonly string[], field: 'links' | 'capacities') =>
    names
      .map((name, i) => ({ name, shares: free.map((k) => n.spreads[k]![field][i]!) }))
      .filter(({ shares }) => shares.some((share) => share !== 0))
  return {
    links: of(
      n.links.map(({ name }) => name),
      'links',
    ),
    capacities: stored ? of(n.names, 'capacities') : [],
  }
}
