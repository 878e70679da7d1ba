import { onlyKeys, type Property, requireKeys } from '../formula/index.js'
import { type In, InputError, type Issue, type Note, Quantity, refuse } from '../units/index.js'
import { type CycleNumbers, extremesOfPass, type PhaseNumbers, passOnce, settle, shiftsOfPass } from './duty-cycle.js'
import { requireMadeBy } from './must-be-made.js'
import type { Network } from './network.js'
import { siOf } from './network-losses.js'
import { notesAt, type Spread } from './network-numbers.js'
import { halfWidth } from './network-spread.js'
import { readInitial, type Start, withFixed, withoutCapacity } from './network-transient.js'
import { uncertainTemperature } from './uncertain.js'

/** One part of a duty: the network with the losses of that part, and how long it lasts. */
export interface Phase {
  /** The network with the losses of this part of the duty. */
  readonly network: Network
  /** How long this part lasts, above 0. */
  readonly duration: In<'time'>
}

/** Temperatures over one duty. */
export interface DutyResult {
  /** `settled` (or, for a single pass, `finished`); `runaway` where every cycle ends hotter than it began. */
  readonly state: 'settled' | 'finished' | 'runaway'
  /** True peak of each node with its 95 % band, and when counted from the start of the cycle: often after switch-off, when heat still arrives. */
  readonly peaks: Readonly<Record<string, { readonly temperature: Property<'temperature'>; readonly time: Quantity<'time'> }>>
  /** Mean over the cycle. */
  readonly means: Readonly<Record<string, Quantity<'temperature'>>>
  /** Lowest over the cycle. */
  readonly lows: Readonly<Record<string, Quantity<'temperature'>>>
  /** At the end, which is the start of the next cycle. */
  readonly end: Readonly<Record<string, Quantity<'temperature'>>>
  /** Times and temperatures of the cycle for a chart: seconds, and kelvin by node. */
  readonly times: Float64Array
  readonly temperatures: Readonly<Record<string, Float64Array>>
  readonly period: Quantity<'time'>
  /** Remarks of links and losses at the peaks; the peaks carry them too. */
  readonly notes: readonly Note[]
}

const WHERE = 'thermal.duty'
/** Points of a phase in the chart of a cycle. */
const POINTS = 32

/** Reads phases; all must have the nodes of the first. @internal */
export function readPhases(phases: readonly Phase[]): PhaseNumbers[] {
  const issues: Issue[] = []
  if (!Array.isArray(phases)) refuse('thermal.duty', 'phases', phases, 'must be a list of networks with their durations')
  phases.forEach((phase: Phase | null | undefined, i) => {
    requireMadeBy('thermal.duty', `phases[${i}].network`, phase?.network, 'network')
    onlyKeys(`phases[${i}]`, phase, ['network', 'duration'], issues)
  })
  if (phases.length === 0) issues.push({ path: 'phases', given: 'an empty list', accepts: 'needs at least one phase' })
  const first = phases[0]?.network.si.numbers
  const numbers = phases.map(({ network, duration }, i) => {
    const n = network.si.numbers
    if (n.names.join() !== first!.names.join() || n.fixedNames.join() !== first!.fixedNames.join())
      issues.push({
        path: `phases[${i}].network`,
        given: [...n.names, ...n.fixedNames].join(', '),
        accepts: `must have the nodes of the first phase: ${[...first!.names, ...first!.fixedNames].join(', ')}`,
      })
    withoutCapacity(n, issues)
    return { n, duration: siOf(`phases[${i}].duration`, 'time', duration, issues, 0) }
  })
  if (issues.length > 0) throw new InputError(WHERE, issues)
  return sameCauses(numbers)
}

/** Phases in which every cause of scatter has the same place. */
function sameCauses(phases: readonly PhaseNumbers[]): PhaseNumbers[] {
  const causes = [...new Set(phases.flatMap(({ n }) => n.spreads.map(({ cause }) => cause)))]
  return phases.map(({ n, duration }) => {
    const none = () => new Float64Array(n.names.length)
    const absent = (cause: string): Spread => ({ cause, links: new Float64Array(n.links.length), losses: none(), capacities: none() })
    return { duration, n: { ...n, spreads: causes.map((cause) => n.spreads.find((spread) => spread.cause === cause) ?? absent(cause)) } }
  })
}

function withUnits(phases: readonly PhaseNumbers[], pass: CycleNumbers, state: 'settled' | 'finished'): DutyResult {
  const { names } = phases[0]!.n
  const period = phases.reduce((sum, { duration }) => sum + duration, 0)
  const { highest, highestAt, lowest, integral } = extremesOfPass(pass)
  const lasted = pass.solutions.reduce((sum, { tEnd }) => sum + tEnd, 0)
  const notes = [...new Map(phases.flatMap(({ n }) => notesAt(n, withFixed(n, highest))).map((note) => [note.text, note])).values()]
  const shifts = shiftsOfPass(phases, pass, state === 'settled' && !pass.runaway)
  const each = (value: (i: number) => number) =>
    Object.fromEntries(
      names.map((name, i) => [name, new Quantity(value(i), 'temperature', undefined, notes.length === 0 ? undefined : notes)]),
    )
  const times: number[] = []
  const rows: Float64Array[] = []
  let clock = 0
  for (const solution of pass.solutions) {
    for (let k = 0; k <= POINTS; k++) {
      const t = (solution.tEnd * k) / POINTS
      times.push(clock + t)
      rows.push(solution.at(t))
    }
    clock += solution.tEnd
  }
  return {
    state: pass.runaway ? 'runaway' : state,
    peaks: Object.fromEntries(
      names.map((name, i) => {
        const half = halfWidth(shifts(highestAt[i]!), (shift) => shift[i]!)
        return [name, { temperature: uncertainTemperature(highest[i]!, half, notes, 'peak'), time: new Quantity(highestAt[i]!, 'time') }]
      }),
    ),
    means: each((i) => integral[i]! / lasted),
    lows: each((i) => lowest[i]!),
    end: each((i) => pass.end[i]!),
    times: Float64Array.from(times),
    temperatures: Object.fromEntries(names.map((name, i) => [name, Float64Array.from(rows, (row) => row[i]!)])),
    period: new Quantity(period, 'time'),
    notes,
  }
}

function readStart(phases: readonly PhaseNumbers[], initial: Start | undefined): Float64Array {
  const issues: Issue[] = []
  const start = readInitial(phases[0]!.n, initial, issues)
  if (issues.length > 0) throw new InputError(WHERE, issues)
  return start.slice(0, phases[0]!.n.names.length)
}

/** One pass through phases from given temperatures: a march, then a rest. Without `initial` it starts from the warmest fixed temperature. */
export function simulateOnce(phases: readonly Phase[], initial?: Start): DutyResult {
  const numbers = readPhases(phases)
  return withUnits(numbers, passOnce(numbers, readStart(numbers, initial)), 'finished')
}

/**
 * The settled cycle of a periodic duty: temperatures return after each period. Its peaks are what parts must stand; neither the first cycle nor a root-mean-square torque gives them.
 *
 * `runaway` where the losses outgrow the paths; the result is then the pass in which that happened.
 */
export function periodicSteadyState(phases: readonly Phase[]): DutyResult {
  const numbers = readPhases(phases)
  return withUnits(numbers, settle(numbers), 'settled')
}

/** A rest that is followed until the peak has passed is doubled at most this often. */
const DOUBLINGS = 20

/** Short-time duty (S2): a load for a time from a cold start, then rest until the peak has passed through every node. */
export function shortTimeDuty(duty: {
  /** The network with the losses of the load. */
  readonly load: Network
  /** The same network with the losses of the rest. */
  readonly rest: Network
  /** How long the load lasts: 10, 30, 60 or 90 minutes in the standard's examples. */
  readonly loadTime: In<'time'>
  /** How long the rest is followed. Default until every node cools or lies still. */
  readonly restTime?: In<'time'>
  /** Temperatures at the start. Default the warmest fixed temperature. */
  readonly initial?: Start
}): DutyResult {
  requireKeys('thermal.shortTimeDuty', 'duty', duty, ['load', 'rest', 'loadTime', 'restTime', 'initial'])
  const { load, rest, loadTime, restTime, initial } = duty
  const numbers = readPhases([
    { network: load, duration: loadTime },
    { network: rest, duration: restTime ?? loadTime },
  ])
  const start = readStart(numbers, initial)
  let pass = passOnce(numbers, start)
  if (restTime === undefined) {
    for (let k = 0; k < DOUBLINGS && !pass.runaway && !cools(pass); k++) {
      numbers[1] = { ...numbers[1]!, duration: 2 * numbers[1]!.duration }
      pass = passOnce(numbers, start)
    }
  }
  return withUnits(numbers, pass, 'finished')
}

/** Cooling slower than this over the last part of a rest is none, kelvin. */
const STILL = 1e-3

/** Whether every node falls, or no longer changes, at the end of a pass. */
function cools({ solutions }: CycleNumbers): boolean {
  const last = solutions.at(-1)!
  const before = last.at(0.9 * last.tEnd)
  return last.yEnd.every((t, i) => t <= before[i]! + STILL)
}
