import { isRecord, onlyKeys } from '../formula/index.js'
import { type In, type Issue, issue, refuse } from '../units/index.js'
import { siOf, unknownNode } from './network-losses.js'
import type { NetworkNumbers, Spread } from './network-numbers.js'
import { readInitial, type Start, withoutCapacity } from './network-transient.js'

/** A logged curve: times from the start and temperatures of the nodes that carry a sensor. */
export interface TemperatureLog {
  /** Times from the start of the log, rising. */
  readonly times: readonly In<'time'>[]
  /** Measured temperatures by node, one for each time. */
  readonly temperatures: Readonly<Record<string, readonly In<'temperature'>[]>>
  /** Temperatures of all nodes at time zero. Default the warmest fixed temperature. */
  readonly initial?: Start
}

/** A log as numbers. Its type is declared, because compilers older than TypeScript 5.7 know no argument of `Float64Array`. */
interface LogNumbers {
  readonly rows: readonly { readonly time: number; readonly index: number; readonly T: number }[]
  readonly duration: number
  readonly initial: Float64Array
}

/** Reads a log for a network. */
export function readLog(n: NetworkNumbers, log: TemperatureLog, issues: Issue[]): LogNumbers {
  withoutCapacity(n, issues)
  onlyKeys('log', log, ['times', 'temperatures', 'initial'], issues)
  if (!Array.isArray(log?.times) || !isRecord(log.temperatures))
    refuse('thermal.calibrate', 'log', log, 'must have a list of times and temperatures by node')
  const times = log.times.map((t, k) => siOf(`log.times[${k}]`, 'time', t, issues, -Number.MIN_VALUE))
  const rows = Object.entries(log.temperatures).flatMap(([name, values]) => {
    const index = n.names.indexOf(name)
    if (index < 0) issues.push(unknownNode(`log.temperatures.${name}`, name, n.names))
    if (!Array.isArray(values)) {
      issues.push(issue(`log.temperatures.${name}`, values, 'must be a list of temperatures'))
      return []
    }
    if (values.length !== times.length)
      issues.push({
        path: `log.temperatures.${name}`,
        given: `${values.length} values`,
        accepts: `needs one for each of the ${times.length} times`,
      })
    return values.map((T, k) => ({ time: times[k] ?? 0, index, T: siOf(`log.temperatures.${name}[${k}]`, 'temperature', T, issues) }))
  })
  const duration = times.reduce((max, t) => Math.max(max, t), 0)
  if (!(duration > 0)) issues.push({ path: 'log.times', given: String(times.length), accepts: 'must reach beyond time zero' })
  const initial = readInitial(n, log.initial, issues).slice(0, n.names.length)
  return { rows, duration, initial }
}

/** Causes of scatter with one for every heat capacity that has none. */
export function withCapacities(n: NetworkNumbers, scatter: number): Spread[] {
  if (scatter === 0) return [...n.spreads]
  const silent = n.names.flatMap((_, i) => (n.spreads.some(({ capacities }) => capacities[i] !== 0) ? [] : [i]))
  return [
    ...n.spreads,
    ...silent.map((node) => ({
      cause: `capacity of ${n.names[node]}`,
      links: new Float64Array(n.links.length),
      losses: new Float64Array(n.names.length),
      capacities: Float64Array.from(n.names, (_, i) => (i === node ? scatter : 0)),
    })),
  ]
}
