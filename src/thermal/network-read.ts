import { isRecord, notesOf, onlyKeys } from '../formula/index.js'
import { type In, InputError, type Issue, issue } from '../units/index.js'
import { readLosses, siOf, unknownNode } from './network-losses.js'
import type { LinkNumbers, NetworkNumbers, Spread } from './network-numbers.js'
import type { NetworkLink, NetworkNode } from './network-parts.js'

const WHERE = 'thermal.network'
const NODE = ['capacity', 'capacityScatter', 'loss', 'lossScatter', 'fixed'] as const satisfies readonly (keyof NetworkNode)[]
const LINK = ['from', 'to', 'conductance', 'resistance', 'scatter', 'notes', 'name'] as const satisfies readonly (keyof NetworkLink)[]

/** Reads a ratio that may be zero. */
export function scatterOf(path: string, given: unknown, issues: Issue[]): number {
  const x = siOf(path, 'ratio', given, issues)
  if (x < 0) issues.push(issue(path, given, 'must be at least 0'))
  return x
}

/** Whether something given is a record by name, and not a quantity in any of its forms. */
export const byName = (given: unknown): given is Readonly<Record<string, unknown>> =>
  typeof given === 'object' && given !== null && !Array.isArray(given) && !('kind' in given) && !('toNumber' in given)

/** Temperature above which a network has no meaning, unless another is given, kelvin: copper has melted long before. */
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
  if (names.length === 0) issues.push(issue('nodes', nodes, 'needs at least one node whose temperature is unknown'))
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
