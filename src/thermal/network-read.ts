import { isRecord, notesOf, onlyKeys } from '../formula/index.js'
import { didYouMean, type In, InputError, type Issue, issue, type Kind, type Note, readAt, show } from '../units/index.js'
import type { LinkNumbers, LossNumbers, NetworkNumbers, Spread } from './network-numbers.js'

/** Heat released in a node: a power, a law of its own temperature (kelvin to watts), or a law of several nodes' temperatures. */
export type Loss =
  | In<'power'>
  | ((temperature: number) => number)
  | {
      /** Nodes whose temperatures the law takes, in its order. */
      readonly on: readonly string[]
      /** Watts from those temperatures in kelvin. */
      readonly watts: (...temperatures: number[]) => number
      /** Remarks at those temperatures, such as a range that was left: they reach every result. */
      readonly notes?: (...temperatures: number[]) => readonly Note[]
    }

/** Relative half-width of a 95 % band; or one for each cause by name: links that name the same cause lie off together. */
export type Scatter = In<'ratio'> | Readonly<Record<string, In<'ratio'>>>

/** One part of a network that has one temperature. */
export interface NetworkNode {
  /** Heat capacity. In a course in time a node without one follows its neighbours at once, with a note; a duty needs that of every node. */
  readonly capacity?: In<'heatCapacity'> | undefined
  /** Relative half-width of the 95 % band of the heat capacity. Default 0. */
  readonly capacityScatter?: In<'ratio'> | undefined
  /** Heat released in it. */
  readonly loss?: Loss | undefined
  /** Relative half-width of the 95 % band of that heat. Default 0. */
  readonly lossScatter?: In<'ratio'> | undefined
  /** A node held at this temperature, such as the air. It takes any heat and has neither loss nor capacity. */
  readonly fixed?: In<'temperature'> | undefined
}

/** A way for heat between two nodes. Give a conductance or a resistance. */
export interface NetworkLink {
  /** Name of the node at its first end. */
  readonly from: string
  /** Name of the node at its second end. */
  readonly to: string
  /** Conductance, or a function of the two temperatures in kelvin (as named by `from` and `to`) that gives watts per kelvin. */
  readonly conductance?: In<'thermalConductance'> | ((from: number, to: number) => number) | undefined
  /** Resistance. */
  readonly resistance?: In<'thermalResistance'> | undefined
  /** What the conductance may be off: a correlation, a joint. Default 0. */
  readonly scatter?: Scatter | undefined
  /** Remarks at two temperatures, such as a correlation outside its range: they reach every result. */
  readonly notes?: ((from: number, to: number) => readonly Note[]) | undefined
  /** A name to speak of it by, in calibration; default `from-to`. */
  readonly name?: string | undefined
}

const WHERE = 'thermal.network'
const NODE = ['capacity', 'capacityScatter', 'loss', 'lossScatter', 'fixed'] as const satisfies readonly (keyof NetworkNode)[]
const LINK = ['from', 'to', 'conductance', 'resistance', 'scatter', 'notes', 'name'] as const satisfies readonly (keyof NetworkLink)[]

/** Reads one quantity to SI; a bad one is added to the issues. */
export function siOf(path: string, kind: Kind, given: unknown, issues: Issue[], above?: number): number {
  const x = readAt(path, kind, given, issues)
  if (above !== undefined && x <= above) issues.push({ path, given: show(given), accepts: `must be above ${above}` })
  return x
}

/** Reads a ratio that may be zero. */
export function scatterOf(path: string, given: unknown, issues: Issue[]): number {
  const x = siOf(path, 'ratio', given, issues)
  if (x < 0) issues.push({ path, given: show(given), accepts: 'must be at least 0' })
  return x
}

/** Whether something given is a record by name, and not a quantity in any of its forms. */
export const byName = (given: unknown): given is Readonly<Record<string, unknown>> =>
  typeof given === 'object' && given !== null && !Array.isArray(given) && !('kind' in given) && !('toNumber' in given)

/** The issue of a name that no node has. */
export function unknownNode(path: string, name: unknown, names: readonly string[], what = 'node'): Issue {
  const near = typeof name === 'string' ? didYouMean(name, names) : ''
  return { path, given: name === undefined ? 'missing' : show(name), accepts: `must name a ${what}: ${names.join(', ')}${near}` }
}

/** Reads the losses of free nodes; names are looked up among all nodes. A law is tried once at temperature `tried`. */
export function readLosses(
  given: Readonly<Record<string, Loss | undefined>>,
  free: readonly string[],
  all: readonly string[],
  tried: number,
  issues: Issue[],
): LossNumbers[] {
  const losses: LossNumbers[] = []
  for (const [name, loss] of Object.entries(given)) {
    if (loss === undefined) continue
    const node = free.indexOf(name)
    const path = `nodes.${name}.loss`
    if (node < 0) {
      issues.push(unknownNode(path, name, free))
      continue
    }
    if (isRecord(loss) && 'watts' in loss) onlyKeys(path, loss, ['on', 'watts', 'notes'], issues)
    if (typeof loss === 'function') losses.push({ node, on: [node], watts: loss, factor: 1 })
    else if (typeof loss === 'object' && loss !== null && 'watts' in loss) {
      const on = loss.on.map((other, i) => {
        const index = all.indexOf(other)
        if (index < 0) issues.push(unknownNode(`${path}.on[${i}]`, other, all))
        return index
      })
      losses.push({ node, on, watts: loss.watts, factor: 1, notes: loss.notes })
    } else losses.push({ node, on: [], watts: siOf(path, 'power', loss, issues), factor: 1 })
    const { watts, on } = losses.at(-1)!
    if (typeof watts === 'number' || !Number.isFinite(tried)) continue
    const heat = watts(...on.map(() => tried))
    if (!Number.isFinite(heat))
      issues.push({ path, given: `${heat} W at ${tried} K`, accepts: 'must be a finite power at any temperature' })
  }
  return losses
}

/** Where a network's temperatures stop making sense unless said otherwise, kelvin: copper has melted long before. */
const HOTTEST = 3000

/** Checks a network's description and turns it into numbers. Throws one `InputError` with every issue. */
export function readNetwork(
  nodes: Readonly<Record<string, NetworkNode>>,
  links: readonly NetworkLink[],
  ceilingGiven?: In<'temperature'>,
): NetworkNumbers {
  const issues: Issue[] = []
  checkShape(nodes, links, issues)
  const ceiling = ceilingGiven === undefined ? HOTTEST : siOf('ceiling', 'temperature', ceilingGiven, issues, 0)
  const all = Object.keys(nodes)
  const fixedNames = all.filter((name) => nodes[name]?.fixed !== undefined)
  const names = all.filter((name) => nodes[name]?.fixed === undefined)
  const order = [...names, ...fixedNames]
  const fixed = Float64Array.from(fixedNames, (name) => {
    const { fixed: held, loss, capacity } = nodes[name] as NetworkNode
    if (loss !== undefined || capacity !== undefined)
      issues.push({ path: `nodes.${name}`, given: 'fixed with a loss or a capacity', accepts: 'a fixed node has neither' })
    return siOf(`nodes.${name}.fixed`, 'temperature', held, issues, 0)
  })
  if (names.length === 0)
    issues.push({ path: 'nodes', given: show(nodes), accepts: 'needs at least one node whose temperature is unknown' })
  if (fixedNames.length === 0)
    issues.push({ path: 'nodes', given: all.join(', '), accepts: 'needs at least one node of fixed temperature, such as the air' })
  const capacities = Float64Array.from(names, (name) => {
    const { capacity } = nodes[name] as NetworkNode
    return capacity === undefined ? 0 : siOf(`nodes.${name}.capacity`, 'heatCapacity', capacity, issues, 0)
  })
  const tried = Math.max(...fixed)
  const free = Object.fromEntries(names.map((name) => [name, (nodes[name] as NetworkNode).loss]))
  const losses = readLosses(free, names, order, tried, issues)
  const numbered = links.map((link, i) => linkOf(link, `links[${i}]`, order, tried, issues))
  const spreads = spreadsOf(nodes, names, links, issues)
  if (issues.length === 0) isolatedNodes(names, fixedNames, links, issues)
  if (issues.length > 0) throw new InputError(WHERE, issues)
  return { names, fixedNames, fixed, capacities, losses, links: numbered, spreads, notes: notesOf([nodes, links]) ?? [], ceiling }
}

/** Throws where nodes and links cannot be read as such; adds an issue for each field that is none. */
function checkShape(nodes: unknown, links: unknown, issues: Issue[]): void {
  if (!isRecord(nodes)) issues.push(issue('nodes', nodes, 'must be a record of nodes by name'))
  else for (const [name, node] of Object.entries(nodes)) onlyKeys(`nodes.${name}`, node, NODE, issues)
  if (!Array.isArray(links)) issues.push(issue('links', links, 'must be a list of links between nodes'))
  else for (let i = 0; i < links.length; i++) onlyKeys(`links[${i}]`, links[i], LINK, issues)
  if (issues.length > 0) throw new InputError(WHERE, issues)
}

function linkOf(link: NetworkLink, path: string, order: readonly string[], tried: number, issues: Issue[]): LinkNumbers {
  const { from, to, conductance, resistance, name = `${from}-${to}`, notes } = link
  for (const [end, node] of [
    ['from', from],
    ['to', to],
  ] as const)
    if (!order.includes(node)) issues.push(unknownNode(`${path}.${end}`, node, order))
  if (from === to) issues.push({ path, given: `${from} to itself`, accepts: 'must join two nodes' })
  if ((conductance === undefined) === (resistance === undefined))
    issues.push({
      path,
      given: conductance === undefined ? 'neither' : 'both',
      accepts: 'needs a conductance or a resistance, one of them',
    })
  const g =
    typeof conductance === 'function'
      ? conductance
      : conductance !== undefined
        ? siOf(`${path}.conductance`, 'thermalConductance', conductance, issues, 0)
        : resistance !== undefined
          ? 1 / siOf(`${path}.resistance`, 'thermalResistance', resistance, issues, 0)
          : Number.NaN
  if (typeof g === 'function' && Number.isFinite(tried)) {
    const watts = g(tried, tried)
    if (!(watts >= 0 && watts < Number.POSITIVE_INFINITY))
      issues.push({ path: `${path}.conductance`, given: `${watts} W/K at ${tried} K`, accepts: 'must be at least 0 at any temperature' })
  }
  return { name, a: order.indexOf(from), b: order.indexOf(to), g, factor: 1, notes }
}

/** The independent causes of scatter: one for each loss, capacity and link that has its own, and one for each cause that links share. */
function spreadsOf(
  nodes: Readonly<Record<string, NetworkNode>>,
  names: readonly string[],
  links: readonly NetworkLink[],
  issues: Issue[],
): Spread[] {
  const spreads: Spread[] = []
  const none = (cause: string): Spread => ({
    cause,
    links: new Float64Array(links.length),
    losses: new Float64Array(names.length),
    capacities: new Float64Array(names.length),
  })
  const add = (of: 'links' | 'losses' | 'capacities', index: number, band: number, cause: string) => {
    if (!(band > 0)) return
    let spread = spreads.find((each) => each.cause === cause)
    if (spread === undefined) {
      spread = none(cause)
      spreads.push(spread)
    }
    spread[of][index] = band
  }
  links.forEach(({ scatter = 0, from, to, name = `${from}-${to}` }, i) => {
    const path = `links[${i}].scatter`
    if (byName(scatter)) for (const cause in scatter) add('links', i, scatterOf(`${path}.${cause}`, scatter[cause], issues), cause)
    // Two links without a name of their own between the same nodes are still two.
    else add('links', i, scatterOf(path, scatter, issues), `link ${i} ${name}`)
  })
  names.forEach((name, i) => {
    const { lossScatter = 0, capacityScatter = 0 } = nodes[name] as NetworkNode
    add('losses', i, scatterOf(`nodes.${name}.lossScatter`, lossScatter, issues), `loss of ${name}`)
    add('capacities', i, scatterOf(`nodes.${name}.capacityScatter`, capacityScatter, issues), `capacity of ${name}`)
  })
  return spreads
}

function isolatedNodes(names: readonly string[], fixedNames: readonly string[], links: readonly NetworkLink[], issues: Issue[]): void {
  const reached = new Set(fixedNames)
  for (let grown = true; grown; ) {
    grown = false
    for (const { from, to } of links) {
      if (reached.has(from) === reached.has(to)) continue
      reached.add(from).add(to)
      grown = true
    }
  }
  for (const name of names)
    if (!reached.has(name))
      issues.push({
        path: `nodes.${name}`,
        given: 'no path to a fixed temperature',
        accepts: 'needs a chain of links to one, or its heat has nowhere to go',
      })
}
