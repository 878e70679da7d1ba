import type { Note } from '../units/index.js'

/** A link as the solvers see it: ends by index (fixed nodes follow the free ones). */
export interface LinkNumbers {
  /** Name of the link, as calibration speaks of it. */
  readonly name: string
  /** Index of its first end. */
  readonly a: number
  /** Index of its second end. */
  readonly b: number
  /** Conductance in W/K, or its law of the two ends' temperatures in kelvin. */
  readonly g: number | ((from: number, to: number) => number)
  /** Factor from calibration. */
  readonly factor: number
  /** Remarks at two temperatures, such as a correlation outside its range. */
  readonly notes?: ((from: number, to: number) => readonly Note[]) | undefined
}

/** A loss as the solvers see it. */
export interface LossNumbers {
  /** Index of the node that the heat is released in. */
  readonly node: number
  /** Indices of the nodes whose temperatures the law takes, in order. */
  readonly on: readonly number[]
  /** Heat in W, or its law of those temperatures in kelvin. */
  readonly watts: number | ((...temperatures: number[]) => number)
  /** Factor by which the heat is multiplied. */
  readonly factor: number
  /** Remarks of the law at those temperatures. */
  readonly notes?: ((...temperatures: number[]) => readonly Note[]) | undefined
}

/**
 * One independent cause of scatter: how far links, losses and capacities lie off, as natural logarithms of their factors, at the end of the cause's 95 % band.
 */
export interface Spread {
  /** Name of the cause: phases of a duty that name the same cause are off together. */
  readonly cause: string
  /** By link. */
  readonly links: Float64Array
  /** By node. */
  readonly losses: Float64Array
  /** By node. */
  readonly capacities: Float64Array
}

/** A checked network in numbers. */
export interface NetworkNumbers {
  /** Names of the free nodes, in the order of every vector of temperatures. */
  readonly names: readonly string[]
  /** Names of the fixed nodes, which follow the free ones. */
  readonly fixedNames: readonly string[]
  /** Temperatures of the fixed nodes, K. */
  readonly fixed: Float64Array
  /** Heat capacities of the free nodes, J/K. */
  readonly capacities: Float64Array
  /** Paths of heat between nodes. */
  readonly links: readonly LinkNumbers[]
  /** Heat released in nodes. */
  readonly losses: readonly LossNumbers[]
  /** Independent causes of scatter. */
  readonly spreads: readonly Spread[]
  /** Notes that what was given already carried. */
  readonly notes: readonly Note[]
  /** A balance above this counts as a runaway, kelvin. */
  readonly ceiling: number
}

/** Watts of one loss at temperatures `T` (free nodes, then fixed ones). */
export function lossAt({ on, watts, factor }: LossNumbers, T: Float64Array): number {
  if (typeof watts === 'number') return factor * watts
  if (on.length === 1) return factor * watts(T[on[0]!]!)
  if (on.length === 2) return factor * watts(T[on[0]!]!, T[on[1]!]!)
  return factor * watts(...on.map((i) => T[i]!))
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
      // A fixed end does not move: its slope is never needed.
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

/** What was remarked on the way to temperatures `T`: notes that were given, and those of links and laws of loss there. */
export function notesAt(n: NetworkNumbers, T: Float64Array): readonly Note[] {
  const found = [...n.notes]
  const add = (notes: readonly Note[], of: string) => {
    for (const { formula, text } of notes) {
      const told = `${of}: ${text}`
      if (!found.some((note) => note.text === told && note.formula === formula)) found.push({ formula, text: told })
    }
  }
  for (const { name, a, b, notes } of n.links) if (notes !== undefined) add(notes(T[a]!, T[b]!), name)
  for (const { node, on, notes } of n.losses) if (notes !== undefined) add(notes(...on.map((i) => T[i]!)), `loss of ${n.names[node]}`)
  return found
}
