import { Property } from '../formula/index.js'
import { type In, InputError, type Issue, Quantity } from '../units/index.js'
import { courseNumbers, extremesOf, ledgerOf } from './network-course.js'
import {
  flowOf,
  type Loss,
  type NetworkLink,
  type NetworkNode,
  type NetworkNumbers,
  readLosses,
  readNetwork,
  siOf,
  temperaturesAt,
  unknownNode,
} from './network-numbers.js'
import { bandsAt, type SteadyNumbers, steadyNumbers } from './network-steady.js'

export type { Loss, NetworkLink, NetworkNode } from './network-numbers.js'

/** Temperatures by node name; each carries the 95 % band that the links' and losses' scatter gives it. */
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
}

/** The course of temperature in time. */
export interface Course {
  /** `finished`; or `runaway` where a node passed the ceiling and the course was broken off there. */
  readonly state: 'finished' | 'runaway'
  /** Temperatures at a time. Throws a `NumericError` outside the interval. */
  at(time: In<'time'>): Readonly<Record<string, Quantity<'temperature'>>>
  /** Times the solver stepped on, seconds. */
  readonly times: Float64Array
  /** Temperatures at those times, kelvin, by node. */
  readonly temperatures: Readonly<Record<string, Float64Array>>
  /** Highest temperature of each node and when, between the steps too. */
  readonly peaks: Readonly<Record<string, { readonly temperature: Quantity<'temperature'>; readonly time: Quantity<'time'> }>>
  /** Heat released in the nodes, heat given to fixed nodes and heat stored: released = given + stored to the solver's tolerance. */
  readonly ledger: { readonly released: Quantity<'energy'>; readonly given: Quantity<'energy'>; readonly stored: Quantity<'energy'> }
  /** When each watched limit was first passed; a node that stays below is missing. */
  readonly passed: Readonly<Record<string, Quantity<'time'>>>
}

/** A thermal network: checked once, then solved as often as wanted. Immutable. */
export interface Network {
  /** Names of the nodes whose temperature is unknown, in order. */
  readonly nodes: readonly string[]
  /** Names of the links, in order. */
  readonly links: readonly string[]
  /** The stable steady state, by heat balance in watts; a runaway is an answer. */
  steady(): SteadyTemperatures
  /** The course from given temperatures over a time, with limits to watch. Without `initial` it starts from the warmest fixed temperature. */
  transient(course: {
    readonly duration: In<'time'>
    readonly initial?: Readonly<Record<string, In<'temperature'>>> | In<'temperature'>
    readonly limits?: Readonly<Record<string, In<'temperature'>>>
  }): Course
  /** The same network with other losses: nodes not named keep theirs. */
  withLosses(losses: Readonly<Record<string, Loss>>): Network
  /** The same network with links' conductances and nodes' capacities multiplied, by name. */
  scaled(factors: { readonly links?: Readonly<Record<string, number>>; readonly capacities?: Readonly<Record<string, number>> }): Network
  /** Plain numbers, nothing checked. */
  readonly si: {
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
    /** A balance or course above this counts as a runaway. Default 3000 K: say less where a law of loss ends earlier. */
    readonly ceiling?: In<'temperature'>
  } = {},
): Network {
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
  const issues: Issue[] = []
  const order = [...n.names, ...n.fixedNames]
  const scatterOf = (name: string) => n.losses.find((loss) => n.names[loss.node] === name)?.scatter ?? 0
  const read = Object.fromEntries(Object.entries(given).map(([name, loss]) => [name, { loss, lossScatter: scatterOf(name) }]))
  const losses = readLosses(read, n.names, order, issues)
  if (issues.length > 0) throw new InputError('thermal.network.withLosses', issues)
  const replaced = new Set(losses.map(({ node }) => node))
  return networkOf({ ...n, losses: [...n.losses.filter(({ node }) => !replaced.has(node)), ...losses] })
}

function scaled(n: NetworkNumbers, { links = {}, capacities = {} }: Parameters<Network['scaled']>[0]): Network {
  const issues: Issue[] = []
  const names = n.links.map(({ name }) => name)
  for (const name in links) if (!names.includes(name)) issues.push({ ...unknownNode(`links.${name}`, name, names) })
  for (const name in capacities) if (!n.names.includes(name)) issues.push(unknownNode(`capacities.${name}`, name, n.names))
  for (const [name, factor] of [...Object.entries(links), ...Object.entries(capacities)])
    if (!(factor > 0 && factor < Number.POSITIVE_INFINITY)) issues.push({ path: name, given: String(factor), accepts: 'must be above 0' })
  if (issues.length > 0) throw new InputError('thermal.network.scaled', issues)
  return networkOf({
    ...n,
    links: n.links.map((link) => (links[link.name] === undefined ? link : { ...link, factor: link.factor * links[link.name]! })),
    capacities: n.capacities.map((c, i) => c * (capacities[n.names[i]!] ?? 1)),
  })
}

const SOURCE = { level: 'computed', where: 'heat balance of the network' } as const

function steadyOf(n: NetworkNumbers): SteadyTemperatures {
  const { state, T, residual } = steadyNumbers(n)
  if (state === 'runaway') return { state, temperatures: {}, flows: [], residual: new Quantity(residual, 'power') }
  const bands = bandsAt(n, T)
  const temperatures: Record<string, Property<'temperature'>> = {}
  for (let i = 0; i < n.names.length; i++)
    temperatures[n.names[i]!] = new Property(T[i]!, 'temperature', T[i]! - bands[i]!, T[i]! + bands[i]!, SOURCE, 'steady, 95 % band')
  return {
    state,
    temperatures,
    flows: n.links.map((link) => new Quantity(flowOf(link, T), 'power')),
    residual: new Quantity(residual, 'power'),
  }
}

/** Reads start temperatures, one for all or by node, into the solvers' order. @internal */
export function readInitial(n: NetworkNumbers, start: unknown, issues: Issue[]): Float64Array {
  const T = temperaturesAt(n, Math.max(...n.fixed))
  if (start === undefined) return T
  const each = typeof start === 'object' && start !== null && !('kind' in start) && !Array.isArray(start) && !('toNumber' in start)
  n.names.forEach((name, i) => {
    const given = each ? (start as Record<string, unknown>)[name] : start
    T[i] = siOf(each ? `initial.${name}` : 'initial', 'temperature', given, issues, 0)
  })
  return T
}

/** The issues of nodes without heat capacity. @internal */
export function withoutCapacity(n: NetworkNumbers, issues: Issue[]): void {
  n.names.forEach((name, i) => {
    if (!(n.capacities[i]! > 0))
      issues.push({ path: `nodes.${name}.capacity`, given: 'missing', accepts: 'a course in time needs the heat capacity of every node' })
  })
}

function transientOf(n: NetworkNumbers, course: Parameters<Network['transient']>[0]): Course {
  const issues: Issue[] = []
  withoutCapacity(n, issues)
  const duration = siOf('duration', 'time', course.duration, issues, 0)
  const initial = readInitial(n, course.initial, issues)
  const watch = Object.entries(course.limits ?? {}).map(([name, limit]) => {
    const node = n.names.indexOf(name)
    if (node < 0) issues.push(unknownNode(`limits.${name}`, name, n.names))
    return { name, node, limit: siOf(`limits.${name}`, 'temperature', limit, issues) }
  })
  if (issues.length > 0) throw new InputError('thermal.network', issues)
  const { solution, state } = courseNumbers(n, initial, duration, { watch })
  const passed: Record<string, Quantity<'time'>> = {}
  for (const { name, node, limit } of watch) if (initial[node]! >= limit) passed[name] = new Quantity(0, 'time')
  for (const { event, t } of solution.events) {
    const at = watch[event - 1]
    if (at !== undefined) passed[at.name] ??= new Quantity(t, 'time')
  }
  const size = n.names.length
  const { highest, highestAt } = extremesOf(solution)
  const { released, given, stored } = ledgerOf(n, solution)
  return {
    state: state === 'runaway' ? 'runaway' : 'finished',
    at: (time) => {
      const wrong: Issue[] = []
      const seconds = siOf('time', 'time', time, wrong)
      if (wrong.length > 0) throw new InputError('thermal.network', wrong)
      const y = solution.at(seconds)
      return Object.fromEntries(n.names.map((name, i) => [name, new Quantity(y[i]!, 'temperature')]))
    },
    times: solution.t,
    temperatures: Object.fromEntries(n.names.map((name, i) => [name, Float64Array.from(solution.t, (_, k) => solution.y[k * size + i]!)])),
    peaks: Object.fromEntries(
      n.names.map((name, i) => [
        name,
        { temperature: new Quantity(highest[i]!, 'temperature'), time: new Quantity(highestAt[i]!, 'time') },
      ]),
    ),
    ledger: { released: new Quantity(released, 'energy'), given: new Quantity(given, 'energy'), stored: new Quantity(stored, 'energy') },
    passed,
  }
}
