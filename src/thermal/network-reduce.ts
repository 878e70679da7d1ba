import { EigenvalueDecomposition, inverse, Matrix } from 'ml-matrix'
import { InputError, type Issue, Quantity, refuse } from '../units/index.js'
import { requireMadeBy } from './must-be-made.js'
import { type Network, networkOf } from './network.js'
import { unknownNode } from './network-losses.js'
import { lossAt, type NetworkNumbers, type Spread, slopes } from './network-numbers.js'
import { displaced } from './network-spread.js'
import { steadyNumbers } from './network-steady.js'
import { readInitial, type Start, withoutCapacity } from './network-transient.js'

/** Temperatures at which a network is linearised: given, or its steady state. */
function linearAt(n: NetworkNumbers, at: Start | undefined, issues: Issue[]): Float64Array {
  if (at !== undefined) return readInitial(n, at, issues)
  const { state, T } = steadyNumbers(n)
  if (state === 'runaway')
    issues.push({ path: 'at', given: 'missing', accepts: 'is needed for a network that runs away: temperatures at which to linearise it' })
  return T
}

/**
 * Time constants of a network, longest first, linearised at its steady state or at given temperatures. A negative one grows: where losses outgrow the paths.
 */
export function timeConstants(network: Network, at?: Start): Quantity<'time'>[] {
  requireMadeBy('thermal.timeConstants', 'network', network, 'network')
  const n = network.si.numbers
  const issues: Issue[] = []
  withoutCapacity(n, issues)
  const T = linearAt(n, at, issues)
  if (issues.length > 0) throw new InputError('thermal.timeConstants', issues)
  const size = n.names.length
  const slope = new Float64Array(size * size)
  slopes(n, T, slope)
  const rate = new Matrix(size, size)
  for (let i = 0; i < size; i++) for (let j = 0; j < size; j++) rate.set(i, j, -slope[i * size + j]! / n.capacities[i]!)
  const { realEigenvalues } = new EigenvalueDecomposition(rate)
  return realEigenvalues.map((each) => new Quantity(1 / each, 'time')).sort((a, b) => b.si - a.si)
}

/** What the nodes kept see of a network at temperatures `T`: conductances between them and the fixed nodes, losses and capacities. */
interface Condensed {
  readonly laplacian: Matrix
  readonly watts: readonly number[]
  readonly capacities: readonly number[]
}

function condense(n: NetworkNumbers, T: Float64Array, kept: readonly number[]): Condensed {
  const free = n.names.length
  const total = free + n.fixed.length
  // Secant conductances between all nodes, fixed ones included: the balance at T is kept exactly.
  const laplacian = Matrix.zeros(total, total)
  for (const { a, b, g, factor } of n.links) {
    const conductance = factor * (typeof g === 'number' ? g : g(T[a]!, T[b]!))
    laplacian.set(a, a, laplacian.get(a, a) + conductance)
    laplacian.set(b, b, laplacian.get(b, b) + conductance)
    laplacian.set(a, b, laplacian.get(a, b) - conductance)
    laplacian.set(b, a, laplacian.get(b, a) - conductance)
  }
  const stay = [...kept, ...n.fixed.map((_, i) => free + i)]
  const gone = n.names.map((_, i) => i).filter((i) => !kept.includes(i))
  const released = new Float64Array(free)
  for (const loss of n.losses) released[loss.node] = released[loss.node]! + lossAt(loss, T)
  const watts = kept.map((i) => released[i]!)
  const capacities = kept.map((i) => n.capacities[i]!)
  if (gone.length === 0) return { laplacian: laplacian.selection(stay, stay), watts, capacities }
  // Shares in which an eliminated node depends on those that stay.
  const shares = laplacian
    .selection(stay, gone)
    .mmul(inverse(laplacian.selection(gone, gone)))
    .mul(-1)
  gone.forEach((i, column) => {
    kept.forEach((_, row) => {
      watts[row] = watts[row]! + shares.get(row, column) * released[i]!
      capacities[row] = capacities[row]! + shares.get(row, column) * n.capacities[i]!
    })
  })
  return { laplacian: Matrix.add(laplacian.selection(stay, stay), shares.mmul(laplacian.selection(gone, stay))), watts, capacities }
}

/** Part of a cause's band over which its effect on the small network is taken. */
const PART = 1e-3

/**
 * A smaller network with only the nodes kept: exact in its steady state near the temperatures at which it is linearised; in time it keeps every node's stored heat but not its delay.
 *
 * Losses of the nodes left out are shared among those kept as their heat would flow. Links and losses of the result are constant; scatter is carried over, cause by cause.
 */
export function reduceNetwork(network: Network, keep: readonly string[], at?: Start): Network {
  requireMadeBy('thermal.reduceNetwork', 'network', network, 'network')
  if (!Array.isArray(keep)) refuse('thermal.reduceNetwork', 'keep', keep, 'must be a list of names of nodes')
  const n = network.si.numbers
  const issues: Issue[] = []
  const kept = keep.map((name, i) => {
    const index = n.names.indexOf(name)
    if (index < 0) issues.push(unknownNode(`keep[${i}]`, name, n.names))
    return index
  })
  if (keep.length === 0) issues.push({ path: 'keep', given: 'an empty list', accepts: 'needs at least one node' })
  if (new Set(keep).size < keep.length) issues.push({ path: 'keep', given: keep.join(', '), accepts: 'must name each node once' })
  const T = linearAt(n, at, issues)
  if (issues.length > 0) throw new InputError('thermal.reduceNetwork', issues)
  const small = condense(n, T, kept)
  const names = [...keep, ...n.fixedNames]
  const pairs: (readonly [number, number])[] = []
  for (let i = 0; i < keep.length; i++)
    for (let j = i + 1; j < names.length; j++) if (-small.laplacian.get(i, j) > 1e-15) pairs.push([i, j])
  const spreads = n.spreads.map(({ cause }, k): Spread => {
    const moved = condense(
      displaced(
        n,
        n.spreads.map((_, m) => (m === k ? PART : 0)),
      ),
      T,
      kept,
    )
    const change = (after: number, before: number) => (before === 0 ? 0 : Math.log(after / before) / PART)
    return {
      cause,
      links: Float64Array.from(pairs, ([i, j]) => change(moved.laplacian.get(i, j), small.laplacian.get(i, j))),
      losses: Float64Array.from(kept, (_, i) => change(moved.watts[i]!, small.watts[i]!)),
      capacities: Float64Array.from(kept, (_, i) => change(moved.capacities[i]!, small.capacities[i]!)),
    }
  })
  return networkOf({
    names: keep,
    fixedNames: n.fixedNames,
    fixed: n.fixed,
    capacities: Float64Array.from(small.capacities),
    losses: small.watts.map((watts, node) => ({ node, on: [], watts, factor: 1 })),
    links: pairs.map(([a, b]) => ({ name: `${names[a]}-${names[b]}`, a, b, g: -small.laplacian.get(a, b), factor: 1 })),
    spreads,
    notes: n.notes,
    ceiling: n.ceiling,
  })
}
