import { type In, InputError, type Issue, type Kind, nearName, read, show, UnreadableQuantity } from '../units/index.js'

/** Heat released in a node: a power, a law of its own temperature (kelvin to watts), or a law of several nodes' temperatures. */
export type Loss =
  | In<'power'>
  | ((temperature: number) => number)
  | {
      /** Nodes whose temperatures the law takes, in its order. */
      readonly on: readonly string[]
      /** Watts from those temperatures in kelvin. */
      readonly watts: (...temperatures: number[]) => number
    }

/** One part of a network that has one temperature. */
export interface NetworkNode {
  /** Heat capacity; needed for the course of temperature in time. */
  readonly capacity?: In<'heatCapacity'> | undefined
  /** Heat released in it. */
  readonly loss?: Loss | undefined
  /** Relative half-width of the 95 % band of that heat. Default 0. */
  readonly lossScatter?: In<'ratio'> | undefined
  /** A node held at this temperature, such as the air. It takes any heat and has neither loss nor capacity. */
  readonly fixed?: In<'temperature'> | undefined
}

/** A way for heat between two nodes. Give a conductance or a resistance. */
export interface NetworkLink {
  readonly from: string
  readonly to: string
  /** Conductance, or a function of the two temperatures in kelvin (as named by `from` and `to`) that gives watts per kelvin. */
  readonly conductance?: In<'thermalConductance'> | ((from: number, to: number) => number) | undefined
  /** Resistance. */
  readonly resistance?: In<'thermalResistance'> | undefined
  /** Relative half-width of the conductance's 95 % band: what a correlation or a joint may be off. Default 0. */
  readonly scatter?: In<'ratio'> | undefined
  /** A name to speak of it by, in calibration; default `from-to`. */
  readonly name?: string | undefined
}

/** A link as the solvers see it: ends by index (fixed nodes follow the free ones). */
export interface LinkNumbers {
  readonly name: string
  readonly a: number
  readonly b: number
  readonly g: number | ((from: number, to: number) => number)
  /** What calibration multiplies it by. */
  readonly factor: number
  readonly scatter: number
}

/** A loss as the solvers see it. */
export interface LossNumbers {
  readonly node: number
  readonly on: readonly number[]
  readonly watts: number | ((...temperatures: number[]) => number)
  readonly scatter: number
}

/** A checked network in numbers. */
export interface NetworkNumbers {
  readonly names: readonly string[]
  readonly fixedNames: readonly string[]
  readonly fixed: Float64Array
  readonly capacities: Float64Array
  readonly links: readonly LinkNumbers[]
  readonly losses: readonly LossNumbers[]
  /** A balance above this counts as a runaway, kelvin. */
  readonly ceiling: number
}

const WHERE = 'thermal.network'

/** Reads one quantity to SI; a bad one is added to the issues. */
export function siOf(path: string, kind: Kind, given: unknown, issues: Issue[], above?: number): number {
  try {
    const x = read(kind, given)
    if (Number.isFinite(x) && (above === undefined || x > above)) return x
    issues.push({ path, given: show(given), accepts: above === undefined ? 'must be finite' : `must be above ${above}` })
  } catch (error) {
    if (!(error instanceof UnreadableQuantity)) throw error
    issues.push({ path, given: show(given), accepts: error.message })
  }
  return Number.NaN
}

/** The issue of a name that no node has. */
export function unknownNode(path: string, name: string, names: readonly string[]): Issue {
  const near = nearName(name, names)
  return { path, given: show(name), accepts: `must name a node: ${names.join(', ')}${near === undefined ? '' : `; did you mean ${near}?`}` }
}

/** Reads the losses of free nodes; names are looked up among all nodes. */
export function readLosses(
  given: Readonly<Record<string, { readonly loss?: Loss | undefined; readonly lossScatter?: In<'ratio'> | undefined }>>,
  free: readonly string[],
  all: readonly string[],
  issues: Issue[],
): LossNumbers[] {
  const losses: LossNumbers[] = []
  for (const name in given) {
    const { loss, lossScatter = 0 } = given[name] as NetworkNode
    if (loss === undefined) continue
    const node = free.indexOf(name)
    if (node < 0) {
      issues.push(unknownNode(`nodes.${name}.loss`, name, free))
      continue
    }
    const scatter = siOf(`nodes.${name}.lossScatter`, 'ratio', lossScatter, issues, -Number.MIN_VALUE)
    if (typeof loss === 'function') losses.push({ node, on: [node], watts: loss, scatter })
    else if (typeof loss === 'object' && loss !== null && 'watts' in loss) {
      const on = loss.on.map((other, i) => {
        const index = all.indexOf(other)
        if (index < 0) issues.push(unknownNode(`nodes.${name}.loss.on[${i}]`, other, all))
        return index
      })
      losses.push({ node, on, watts: loss.watts, scatter })
    } else losses.push({ node, on: [], watts: siOf(`nodes.${name}.loss`, 'power', loss, issues), scatter })
  }
  return losses
}

/** Where a network's temperatures stop making sense unless said otherwise, kelvin: copper has melted long before. */
export const HOTTEST = 3000

/** Checks a network's description and turns it into numbers. Throws one `InputError` with every issue. */
export function readNetwork(
  nodes: Readonly<Record<string, NetworkNode>>,
  links: readonly NetworkLink[],
  ceilingGiven?: In<'temperature'>,
): NetworkNumbers {
  const issues: Issue[] = []
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
  const free = Object.fromEntries(names.map((name) => [name, nodes[name] as NetworkNode]))
  const losses = readLosses(free, names, order, issues)
  const numbered = links.map((link, i): LinkNumbers => {
    const { from, to, conductance, resistance, scatter = 0, name = `${from}-${to}` } = link
    const path = `links[${i}]`
    for (const [end, node] of [
      ['from', from],
      ['to', to],
    ] as const)
      if (!all.includes(node)) issues.push(unknownNode(`${path}.${end}`, node, all))
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
    const band = siOf(`${path}.scatter`, 'ratio', scatter, issues, -Number.MIN_VALUE)
    return { name, a: order.indexOf(from), b: order.indexOf(to), g, factor: 1, scatter: band }
  })
  if (issues.length === 0) isolatedNodes(names, fixedNames, links, issues)
  if (issues.length > 0) throw new InputError(WHERE, issues)
  return { names, fixedNames, fixed, capacities, losses, links: numbered, ceiling }
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

/** Watts of one loss at temperatures `T` (free nodes, then fixed ones). */
export function lossAt({ on, watts }: LossNumbers, T: Float64Array): number {
  if (typeof watts === 'number') return watts
  if (on.length === 1) return watts(T[on[0]!]!)
  if (on.length === 2) return watts(T[on[0]!]!, T[on[1]!]!)
  return watts(...on.map((i) => T[i]!))
}

/** Heat through one link, from its first end to its second. */
export function flowOf({ a, b, g, factor }: LinkNumbers, T: Float64Array): number {
  const from = T[a]!
  const to = T[b]!
  return factor * (typeof g === 'number' ? g : g(from, to)) * (from - to)
}

/** Writes the net heat into each free node and returns the sum of the losses' sizes. */
export function imbalance(n: NetworkNumbers, T: Float64Array, out: Float64Array): number {
  const size = n.names.length
  out.fill(0, 0, size)
  let released = 0
  for (const loss of n.losses) {
    const watts = lossAt(loss, T)
    out[loss.node] = out[loss.node]! + watts
    released += Math.abs(watts)
  }
  for (const link of n.links) {
    const flow = flowOf(link, T)
    if (link.a < size) out[link.a] = out[link.a]! - flow
    if (link.b < size) out[link.b] = out[link.b]! + flow
  }
  return released
}

/** Step of the difference quotients, kelvin. */
const STEP = 1e-4

/** Writes the derivatives of the imbalance, row by row. `T` is changed and restored. */
export function slopes(n: NetworkNumbers, T: Float64Array, out: Float64Array): void {
  const size = n.names.length
  out.fill(0, 0, size * size)
  for (const loss of n.losses) {
    if (typeof loss.watts === 'number') continue
    const base = lossAt(loss, T)
    for (const j of loss.on) {
      if (j >= size) continue
      const held = T[j]!
      T[j] = held + STEP
      const at = loss.node * size + j
      out[at] = out[at]! + (lossAt(loss, T) - base) / STEP
      T[j] = held
    }
  }
  for (const { a, b, g, factor } of n.links) {
    let byA: number
    let byB: number
    if (typeof g === 'number') {
      byA = factor * g
      byB = -byA
    } else {
      const x = T[a]!
      const y = T[b]!
      const base = g(x, y) * (x - y)
      // A fixed end does not move: its slope is never asked.
      byA = a < size ? (factor * (g(x + STEP, y) * (x + STEP - y) - base)) / STEP : 0
      byB = b < size ? (factor * (g(x, y + STEP) * (x - y - STEP) - base)) / STEP : 0
    }
    if (a < size) {
      out[a * size + a] = out[a * size + a]! - byA
      if (b < size) out[a * size + b] = out[a * size + b]! - byB
    }
    if (b < size) {
      out[b * size + b] = out[b * size + b]! + byB
      if (a < size) out[b * size + a] = out[b * size + a]! + byA
    }
  }
}

/** Temperatures of all nodes in the solvers' order: free nodes at one temperature, then the fixed ones. */
export function temperaturesAt(n: NetworkNumbers, temperature: number): Float64Array {
  const T = new Float64Array(n.names.length + n.fixed.length).fill(temperature)
  T.set(n.fixed, n.names.length)
  return T
}
