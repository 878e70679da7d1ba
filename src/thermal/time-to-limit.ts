import type { Property } from '../formula/index.js'
import type { In } from '../units/index.js'
import { InputError, type Issue } from '../units/index.js'
import { requireMadeBy } from './must-be-made.js'
import type { Network } from './network.js'
import { notesAt } from './network-numbers.js'
import { readInitial, readWatch, type Start, withFixed, withoutCapacity } from './network-transient.js'
import { reachWithBand } from './reach.js'
import { uncertain } from './uncertain.js'

/** When a network first reaches one of several limits. */
export interface TimeToLimit {
  /** Time until the first limit, with its 95 % band; infinite when the steady state stays below all. */
  readonly time: Property<'time'>
  /** The node that reaches its limit first; undefined when none does. */
  readonly node: string | undefined
}

/**
 * Time from given temperatures until the first of several limits is reached; infinite when none ever is.
 *
 * The ends of its band follow the transient with all causes of scatter together at their 95 % end, in the direction that counts: the high end is infinite where the limit may
 * never be reached.
 */
export function timeToLimit(network: Network, limits: Readonly<Record<string, In<'temperature'>>>, initial?: Start): TimeToLimit {
  requireMadeBy('thermal.timeToLimit', 'network', network, 'network')
  const n = network.si.numbers
  const issues: Issue[] = []
  withoutCapacity(n, issues)
  const start = readInitial(n, initial, issues).slice(0, n.names.length)
  const watch = readWatch(n, limits, issues)
  if (issues.length > 0) throw new InputError('thermal.timeToLimit', issues)
  const { time, low, high, which, y } = reachWithBand(n, start, watch)
  const notes = notesAt(n, withFixed(n, y))
  const node = which >= 0 ? watch[which]!.name : time === Number.POSITIVE_INFINITY ? undefined : n.names[y.indexOf(Math.max(...y))]
  return { time: uncertain('time', time, low, high, notes, 'time to a limit'), node }
}
