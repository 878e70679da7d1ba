import { isRecord, type Property, requireKeys } from '../formula/index.js'
import { type In, InputError, type Issue, type Note, Quantity, refuse } from '../units/index.js'
import { readLosses, unknownNode } from './network-losses.js'
import { flowOf, lossAt, type NetworkNumbers, notesAt, type Spread } from './network-numbers.js'
import type { Loss, NetworkLink, NetworkNode } from './network-parts.js'
import { readNetwork } from './network-read.js'
import { bandsAt } from './network-spread.js'
import { type SteadyNumbers, steadyNumbers } from './network-steady.js'
import { type Transient, type TransientRequest, transientOf } from './network-transient.js'
import { uncertainTemperature } from './uncertain.js'

export type { Loss, NetworkLink, NetworkNode, Scatter } from './network-parts.js'
export type { Transient, TransientRequest } from './network-transient.js'

/** Temperatures by node name; each carries the 95 % band that the links' and losses' scatter gives it, and the notes of the network. */
export type Temperatures = Readonly<Record<string, Property<'temperature'>>>

/** Temperatures of every node that is not fixed, and whether they are a steady state. */
export interface SteadyTemperatures {
  /** `steady`; or `runaway` where losses grow faster with temperature than the paths carry away: then no steady state exists. */
  readonly state: 'steady' | 'runaway'
  /** By node; empty in a runaway. */
  readonly temperatures: Temperatures
  /** Heat flowing through each link, positive from `from` to `to`, in the order given; empty in a runaway. */
  readonly flows: readonly Quantity<'power'>[]
  /** Largest imbalance left at any node. */
  readonly residual: Quantity<'power'>
  /** What links and losses remarked at these temperatures, such as a correlation outside its range; the temperatures carry them too. */
  readonly notes: readonly Note[]
}

/** Result of a measurement of a network: factors, and the scatter that is left of each. */
export interface Factors {
  /** Factors on conductances, by link. */
  readonly links?: Readonly<Record<string, number>>
  /** Factors on heat capacities, by node. */
  readonly capacities?: Readonly<Record<string, number>>
  /**
   * What scatter is left, cause by cause: natural logarithms of factors at the end of its 95 % band. Links and capacities named here lose what
   * scatter they had.
   */
  readonly spreads?: readonly { readonly links: Readonly<Record<string, number>>; readonly capacities: Readonly<Record<string, number>> }[]
}

/** A thermal network: checked once, then solved as often as needed. Immutable. */
export interface Network {
  /** Names of the nodes whose temperature is unknown, in order. */
  readonly nodes: readonly string[]
  /** Names of the links, in order. */
  readonly links: readonly string[]
  /** The stable steady state, by heat balance in watts; a runaway is an answer. */
  steady(): SteadyTemperatures
  /** The transient from given temperatures over a time, with limits to watch. Without `initial` it starts from the warmest fixed temperature. */
  transient(course: TransientRequest): Transient
  /** The same network with other losses: nodes not named keep theirs. */
  withLosses(losses: Readonly<Record<string, Loss>>): Network
  /** The same network with links' conductances and nodes' capacities multiplied, by name, as a calibration tells. */
  scaled(factors: Factors): Network
  /** Plain numbers, nothing checked. */
  readonly si: {
    /** The checked network in SI numbers, as the solvers take it. */
    readonly numbers: NetworkNumbers
    /** Kelvin in the order of `nodes` (fixed nodes follow). A start near the answer saves time. */
    steady(start?: Float64Array): SteadyNumbers
  }
}

/**
 * Makes a thermal network from nodes and links.
 *
 * Throws an `InputError` that lists every issue: unknown or near-miss node names, negative conductances, a node without a path to any fixed temperature, a network
 * with no fixed node.
 */
export function network(
  nodes: Readonly<Record<string, NetworkNode>>,
  links: readonly NetworkLink[],
  options: {
    /** A balance or transient above this counts as a runaway. Default 3000 K: say less where a law of loss ends earlier. */
    readonly ceiling?: In<'temperature'>
  } = {},
): Network {
  requireKeys('thermal.network', 'options', options, ['ceiling'])
  return networkOf(readNetwork(nodes, links, options.ceiling))
}

/** The network of checked numbers. @internal */
export function networkOf(n: NetworkNumbers): Network {
  return {
    nodes: n.names,
    links: n.links.map(({ name }) => name),
    steady: () => steadyOf(n),
    transient: (course) => transientOf(n, course),
    withLosses: (losses) => withLosses(n, losses),
    scaled: (factors) => scaled(n, factors),
    si: { numbers: n, steady: (start) => steadyNumbers(n, start) },
  }
}

function withLosses(n: NetworkNumbers, given: Readonly<Record<string, Loss>>): Network {
  if (!isRecord(given)) refuse('thermal.network.withLosses', 'losses', given, 'must be a record of losses by node')
  const issues: Issue[] = []
  const losses = readLosses(given, n.names, [...n.names, ...n.fixedNames], Math.max(...n.fixed), issues)
  if (issues.length > 0) throw new InputError('thermal.network.withLosses', issues)
  const replaced = new Set(losses.map(({ node }) => node))
  return networkOf({ ...n, losses: [...n.losses.filter(({ node }) => !replaced.has(node)), ...losses] })
}

function scaled(n: NetworkNumbers, factors: Factors): Network {
  requireKeys('thermal.network.scaled', 'factors', factors, ['links', 'capacities', 'spreads'])
  const issues: Issue[] = []
  const { links = {}, capacities = {}, spreads } = factors
  const names = n.links.map(({ name }) => name)
  const known = (path: string, of: Readonly<Record<string, number>>, all: readonly string[], what: string, above: number) => {
    for (const [name, x] of Object.entries(of)) {
      if (!all.includes(name)) issues.push(unknownNode(`${path}.${name}`, name, all, what))
      else if (!(x > above && x < Number.POSITIVE_INFINITY))
        issues.push({ path: `${path}.${name}`, given: String(x), accepts: above === 0 ? 'must be above 0' : 'must be finite' })
    }
  }
  known('links', links, names, 'link', 0)
  known('capacities', capacities, n.names, 'node', 0)
  spreads?.forEach((spread, k) => {
    known(`spreads[${k}].links`, spread.links, names, 'link', Number.NEGATIVE_INFINITY)
    known(`spreads[${k}].capacities`, spread.capacities, n.names, 'node', Number.NEGATIVE_INFINITY)
  })
  if (issues.length > 0) throw new InputError('thermal.network.scaled', issues)
  return networkOf({
    ...n,
    links: n.links.map((link) => (links[link.name] === undefined ? link : { ...link, factor: link.factor * links[link.name]! })),
    capacities: n.capacities.map((c, i) => c * (capacities[n.names[i]!] ?? 1)),
    spreads: spreads === undefined ? n.spreads : respread(n, names, spreads),
  })
}

/** Causes of scatter with those of the named links and capacities replaced. */
function respread(n: NetworkNumbers, links: readonly string[], given: NonNullable<Factors['spreads']>): Spread[] {
  const told = (of: 'links' | 'capacities', name: string) => given.some((spread) => spread[of][name] !== undefined)
  const kept = n.spreads.map((spread) => ({
    ...spread,
    links: spread.links.map((x, i) => (told('links', links[i]!) ? 0 : x)),
    capacities: spread.capacities.map((x, i) => (told('capacities', n.names[i]!) ? 0 : x)),
  }))
  const left = given.map((spread, k) => ({
    cause: `calibration ${k + 1}`,
    links: Float64Array.from(links, (name) => spread.links[name] ?? 0),
    losses: new Float64Array(n.names.length),
    capacities: Float64Array.from(n.names, (name) => spread.capacities[name] ?? 0),
  }))
  const speaks = (values: Float64Array) => values.some((x) => x !== 0)
  return [...kept, ...left].filter((spread) => speaks(spread.links) || speaks(spread.losses) || speaks(spread.capacities))
}

/** The law that gives no number where a balance was sought. */
function brokenLaw(n: NetworkNumbers, T: Float64Array): Issue[] {
  const order = [...n.names, ...n.fixedNames]
  const told = (indices: readonly number[]) => indices.map((i) => `${order[i]} ${T[i]!.toFixed(1)} K`).join(', ')
  return [
    ...n.losses
      .filter((loss) => Number.isNaN(lossAt(loss, T)))
      .map((loss) => ({ path: `nodes.${n.names[loss.node]}.loss`, at: told(loss.on) })),
    ...n.links.filter((link) => Number.isNaN(flowOf(link, T))).map((link) => ({ path: `link ${link.name}`, at: told([link.a, link.b]) })),
  ].map(({ path, at }) => ({ path, given: `NaN at ${at}`, accepts: 'must be a number at any temperature below the ceiling' }))
}

function steadyOf(n: NetworkNumbers): SteadyTemperatures {
  const { state, T, residual } = steadyNumbers(n)
  if (Number.isNaN(residual)) throw new InputError('thermal.network', brokenLaw(n, T))
  if (state === 'runaway') return { state, temperatures: {}, flows: [], residual: new Quantity(residual, 'power'), notes: n.notes }
  const bands = bandsAt(n, T)
  const notes = notesAt(n, T)
  return {
    state,
    temperatures: Object.fromEntries(n.names.map((name, i) => [name, uncertainTemperature(T[i]!, bands[i]!, notes, 'steady')])),
    flows: n.links.map((link) => new Quantity(flowOf(link, T), 'power')),
    residual: new Quantity(residual, 'power'),
    notes,
  }
}
