import { EigenvalueDecomposition, inverse, Matrix } from 'ml-matrix'
import { type In, InputError, type Issue, Quantity } from '../units/index.js'
import { type Network, networkOf, readInitial, withoutCapacity } from './network.js'
import { lossAt, type NetworkNumbers, slopes, unknownNode } from './network-numbers.js'
import { steadyNumbers } from './network-steady.js'

/** Where a network is linearised: given temperatures, or its steady state. */
type At = Readonly<Record<string, In<'temperature'>>> | In<'temperature'>

function linearAt(n: NetworkNumbers, at: At | undefined, where: string): { T: Float64Array; slope: Float64Array } {
  const issues: Issue[] = []
  const T = at === undefined ? steadyNumbers(n).T : readInitial(n, at, issues)
  if (issues.length > 0) throw new InputError(where, issues)
  const slope = new Float64Array(n.names.length ** 2)
  slopes(n, T, slope)
  return { T, slope }
}

/** Time constants of a network, longest first, linearised at its steady state or at given temperatures. */
export function timeConstants(network: Network, at?: At): Quantity<'time'>[] {
  const n = network.si.numbers
  const issues: Issue[] = []
  withoutCapacity(n, issues)
  if (issues.length > 0) throw new InputError('thermal.timeConstants', issues)
  const { slope } = linearAt(n, at, 'thermal.timeConstants')
  const size = n.names.length
  const rate = new Matrix(size, size)
  for (let i = 0; i < size; i++)
    for (let j = 0; j < size; j++)
      rate.set(
        i,
        j,
        (-slope[i * size + j]! / Math.sqrt(n.capacities[i]! * n.capacities[j]!)) * Math.sqrt(n.capacities[j]! / n.capacities[i]!),
      )
  const { realEigenvalues } = new EigenvalueDecomposition(rate)
  return realEigenvalues.map((rate) => new Quantity(1 / rate, 'time')).sort((a, b) => b.si - a.si)
}

/**
 * A smaller network with only the nodes kept: exact in its steady state near the temperatures at which it is linearised; in time it keeps every node's stored heat but not its delay.
 *
 * Losses of the nodes left out are shared among those kept as their heat would flow. The links of the result are constant.
 */
export function reduceNetwork(network: Network, keep: readonly string[], at?: At): Network {
  const n = network.si.numbers
  const issues: Issue[] = []
  const kept = keep.map((name, i) => {
    const index = n.names.indexOf(name)
    if (index < 0) issues.push(unknownNode(`keep[${i}]`, name, n.names))
    return index
  })
  if (keep.length === 0) issues.push({ path: 'keep', given: 'an empty list', accepts: 'needs at least one node' })
  if (issues.length > 0) throw new InputError('thermal.reduceNetwork', issues)
  const { T } = linearAt(n, at, 'thermal.reduceNetwork')
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
  const watts = new Float64Array(free)
  for (const loss of n.losses) watts[loss.node] = watts[loss.node]! + lossAt(loss, T)
  let reduced = laplacian.selection(stay, stay)
  const power = kept.map((i) => watts[i]!)
  const capacity = kept.map((i) => n.capacities[i]!)
  if (gone.length > 0) {
    const across = laplacian.selection(stay, gone)
    // Shares in which a node left out hangs on those that stay.
    const shares = across.mmul(inverse(laplacian.selection(gone, gone))).mul(-1)
    reduced = Matrix.add(reduced, shares.mmul(laplacian.selection(gone, stay)))
    gone.forEach((i, column) => {
      kept.forEach((_, row) => {
        power[row] = power[row]! + shares.get(row, column) * watts[i]!
        capacity[row] = capacity[row]! + shares.get(row, column) * n.capacities[i]!
      })
    })
  }
  const names = [...keep, ...n.fixedNames]
  const links: { name: string; a: number; b: number; g: number; factor: number; scatter: number }[] = []
  for (let i = 0; i < keep.length; i++)
    for (let j = i + 1; j < names.length; j++) {
      const g = -reduced.get(i, j)
      if (g > 1e-15) links.push({ name: `${names[i]}-${names[j]}`, a: i, b: j, g, factor: 1, scatter: 0 })
    }
  return networkOf({
    names: keep,
    fixedNames: n.fixedNames,
    fixed: n.fixed,
    capacities: Float64Array.from(capacity),
    losses: power.map((w, node) => ({ node, on: [], watts: w, scatter: 0 })),
    links,
    ceiling: n.ceiling,
  })
}
