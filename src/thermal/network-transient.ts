import { type Property, requireKeys } from '../formula/index.js'
import type { OdeSolution } from '../numeric/index.js'
import { type In, InputError, type Issue, type Note, Quantity } from '../units/index.js'
import { extremesOf } from './course-extremes.js'
import { settler, storageOf } from './network-algebraic.js'
import { courseNumbers, ledgerOf } from './network-course.js'
import { siOf, unknownNode } from './network-losses.js'
import { type NetworkNumbers, notesAt, temperaturesAt } from './network-numbers.js'
import { byName } from './network-read.js'
import { courseShifts, halfWidth, shiftsAt, unshifted } from './network-spread.js'
import { bandOf } from './reach.js'
import { uncertain, uncertainTemperature } from './uncertain.js'

/** Start temperatures: one for all nodes, or by node. */
export type Start = Readonly<Record<string, In<'temperature'>>> | In<'temperature'>

/** The transient to follow. */
export interface TransientRequest {
  readonly duration: In<'time'>
  /** Default the warmest fixed temperature. A node without heat capacity starts at its balance with the others, whatever is given. */
  readonly initial?: Start
  /** Limits to watch, by node. */
  readonly limits?: Readonly<Record<string, In<'temperature'>>>
}

/** Temperatures over time. Bands are calculated at first use. */
export interface Transient {
  /** `finished`; or `runaway` where a node passed the ceiling and the transient was stopped there. */
  readonly state: 'finished' | 'runaway'
  /** Temperatures at a time, with their 95 % bands. Throws a `NumericError` outside the interval. */
  at(time: In<'time'>): Readonly<Record<string, Property<'temperature'>>>
  /** Times the solver stepped on, seconds. */
  readonly times: Float64Array
  /** Temperatures at those times, kelvin, by node. */
  readonly temperatures: Readonly<Record<string, Float64Array>>
  /** Highest temperature of each node and when, between the steps too. */
  readonly peaks: Readonly<Record<string, { readonly temperature: Quantity<'temperature'>; readonly time: Quantity<'time'> }>>
  /** Heat released in the nodes, heat given to fixed nodes and heat stored: released = given + stored to the solver's tolerance. */
  readonly ledger: { readonly released: Quantity<'energy'>; readonly given: Quantity<'energy'>; readonly stored: Quantity<'energy'> }
  /** When each watched limit was first passed, with its 95 % band (an infinite end: not passed there); a node that stays below is missing. */
  readonly passed: Readonly<Record<string, Property<'time'>>>
  /** What links and losses remarked at the highest temperatures; temperatures and times carry them too. */
  readonly notes: readonly Note[]
}

/** Reads start temperatures into the solvers' order. @internal */
export function readInitial(n: NetworkNumbers, start: unknown, issues: Issue[]): Float64Array {
  const T = temperaturesAt(n, Math.max(...n.fixed))
  if (start === undefined) return T
  if (byName(start)) {
    for (const name in start) if (!n.names.includes(name)) issues.push(unknownNode(`initial.${name}`, name, n.names))
    n.names.forEach((name, i) => {
      T[i] = siOf(`initial.${name}`, 'temperature', start[name], issues, 0)
    })
  } else T.fill(siOf('initial', 'temperature', start, issues, 0), 0, n.names.length)
  return T
}

/** The issues of nodes without heat capacity. @internal */
export function withoutCapacity(n: NetworkNumbers, issues: Issue[]): void {
  n.names.forEach((name, i) => {
    if (!(n.capacities[i]! > 0))
      issues.push({ path: `nodes.${name}.capacity`, given: 'missing', accepts: 'a course in time needs the heat capacity of every node' })
  })
}

/** Limits by node as the solvers watch them. @internal */
export function readWatch(n: NetworkNumbers, limits: Readonly<Record<string, In<'temperature'>>>, issues: Issue[]) {
  return Object.entries(limits).map(([name, limit]) => {
    const node = n.names.indexOf(name)
    if (node < 0) issues.push(unknownNode(`limits.${name}`, name, n.names))
    return { name, of: (y: ArrayLike<number>) => y[node]!, limit: siOf(`limits.${name}`, 'temperature', limit, issues) }
  })
}

/** Highest temperatures of the nodes, fixed ones behind them. @internal */
export const withFixed = (n: NetworkNumbers, y: Float64Array): Float64Array => Float64Array.from([...y, ...n.fixed])

/** Shifts at a time of a transient; worked out when they are first needed. */
function shiftsOf(n: NetworkNumbers, solution: OdeSolution): (time: number) => Float64Array[] {
  let known: ReturnType<typeof courseShifts> | undefined
  return (time) => {
    known ??= courseShifts(n, solution, unshifted(n))
    return shiftsAt(known, time)
  }
}

/** The transient of a network. @internal */
export function transientOf(n: NetworkNumbers, course: TransientRequest): Transient {
  requireKeys('thermal.network', 'request', course, ['duration', 'initial', 'limits'])
  const issues: Issue[] = []
  const storage = storageOf(n)
  if (storage.storing.length === 0)
    issues.push({ path: 'nodes', given: 'no heat capacity', accepts: 'a course in time needs the heat capacity of at least one node' })
  const duration = siOf('duration', 'time', course.duration, issues, 0)
  const start = readInitial(n, course.initial, issues)
  const watch = readWatch(n, course.limits ?? {}, issues)
  if (issues.length > 0) throw new InputError('thermal.network', issues)
  settler(n, storage)(start)
  const initial = start.slice(0, n.names.length)
  const { solution, state } = courseNumbers(n, initial, duration, { watch })
  const size = n.names.length
  const { highest, highestAt } = extremesOf(solution)
  const atOnce = (i: number) => `${n.names[i]} has no heat capacity: it follows its neighbours at once`
  const notes = [...notesAt(n, withFixed(n, highest)), ...storage.still.map((i) => ({ formula: 'thermal.network', text: atOnce(i) }))]
  const shifts = shiftsOf(n, solution)
  const passedOf = () => {
    const passed: Record<string, Property<'time'>> = {}
    for (const each of watch) {
      const event = solution.events.find(({ event }) => watch[event - 1] === each)
      const time = each.of(initial) >= each.limit ? 0 : event?.t
      if (time === undefined) continue
      const { low, high } = time === 0 ? { low: 0, high: 0 } : bandOf(n, initial, [each], time, shifts(time).map(each.of))
      passed[each.name] = uncertain('time', time, low, high, notes, `time to the limit of ${each.name}`)
    }
    return passed
  }
  let passed: ReturnType<typeof passedOf> | undefined
  const { released, given, stored } = ledgerOf(n, solution)
  const peakAt = (i: number) => ({
    temperature: new Quantity(highest[i]!, 'temperature', undefined, notes.length === 0 ? undefined : notes),
    time: new Quantity(highestAt[i]!, 'time'),
  })
  return {
    state: state === 'runaway' ? 'runaway' : 'finished',
    at: (time) => {
      const wrong: Issue[] = []
      const seconds = siOf('time', 'time', time, wrong)
      if (wrong.length > 0) throw new InputError('thermal.network', wrong)
      const y = solution.at(seconds)
      const moved = shifts(seconds)
      const bandAt = (i: number) => halfWidth(moved, (shift) => shift[i]!)
      return Object.fromEntries(n.names.map((name, i) => [name, uncertainTemperature(y[i]!, bandAt(i), notes, 'course')]))
    },
    times: solution.t,
    temperatures: Object.fromEntries(n.names.map((name, i) => [name, Float64Array.from(solution.t, (_, k) => solution.y[k * size + i]!)])),
    peaks: Object.fromEntries(n.names.map((name, i) => [name, peakAt(i)])),
    ledger: { released: new Quantity(released, 'energy'), given: new Quantity(given, 'energy'), stored: new Quantity(stored, 'energy') },
    get passed() {
      passed ??= passedOf()
      return passed
    },
    notes,
  }
}
