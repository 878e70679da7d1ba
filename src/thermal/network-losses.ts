import { isRecord, onlyKeys } from '../formula/index.js'
import { didYouMean, type Issue, issue, type Kind, readAt, show } from '../units/index.js'
import type { LossNumbers } from './network-numbers.js'
import type { Loss } from './network-parts.js'

/** Reads one quantity to SI; a bad one is added to the issues. */
export function siOf(path: string, kind: Kind, given: unknown, issues: Issue[], above?: number): number {
  const x = readAt(path, kind, given, issues)
  if (above !== undefined && x <= above) issues.push(issue(path, given, `must be above ${above}`))
  return x
}

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
