import { Matrix, solve } from 'ml-matrix'
import { type In, InputError, type Issue, Quantity } from '../units/index.js'
import { type Network, readInitial, withoutCapacity } from './network.js'
import { courseNumbers, extremesOf } from './network-course.js'
import { type NetworkNumbers, siOf, slopes, unknownNode } from './network-numbers.js'
import { steadyNumbers } from './network-steady.js'

/** One part of a duty: the network with the losses of that part, and how long it lasts. */
export interface Phase {
  readonly network: Network
  readonly duration: In<'time'>
}

/** Temperatures over one duty. */
export interface DutyResult {
  /** `settled` (or, for a single pass, `finished`); `runaway` where every cycle ends hotter than it began. */
  readonly state: 'settled' | 'finished' | 'runaway'
  /** True peak of each node, and when counted from the start of the cycle: often after switch-off, when heat still arrives. */
  readonly peaks: Readonly<Record<string, { readonly temperature: Quantity<'temperature'>; readonly time: Quantity<'time'> }>>
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
}

interface PhaseNumbers {
  readonly n: NetworkNumbers
  readonly duration: number
}

const WHERE = 'thermal.duty'
const DENSE = 8

function readPhases(phases: readonly Phase[]): PhaseNumbers[] {
  const issues: Issue[] = []
  if (phases.length === 0) issues.push({ path: 'phases', given: 'an empty list', accepts: 'needs at least one phase' })
  const first = phases[0]?.network.nodes ?? []
  const numbers = phases.map(({ network, duration }, i) => {
    const n = network.si.numbers
    if (n.names.join() !== first.join())
      issues.push({
        path: `phases[${i}].network`,
        given: n.names.join(', '),
        accepts: `must have the nodes of the first phase: ${first.join(', ')}`,
      })
    withoutCapacity(n, issues)
    return { n, duration: siOf(`phases[${i}].duration`, 'time', duration, issues, 0) }
  })
  if (issues.length > 0) throw new InputError(WHERE, issues)
  return numbers
}

interface CycleNumbers {
  readonly end: Float64Array
  readonly runaway: boolean
  readonly highest: Float64Array
  readonly highestAt: Float64Array
  readonly lowest: Float64Array
  readonly integral: Float64Array
  readonly times: number[]
  readonly rows: Float64Array[]
}

function cycle(phases: readonly PhaseNumbers[], start: Float64Array, keep: boolean): CycleNumbers {
  const size = phases[0]!.n.names.length
  let y = start
  let clock = 0
  let all: CycleNumbers | undefined
  const times: number[] = []
  const rows: Float64Array[] = []
  for (const { n, duration } of phases) {
    const { solution, end, state } = courseNumbers(n, y, duration)
    if (keep || state === 'runaway') {
      const part = extremesOf(solution)
      const highest = all?.highest ?? new Float64Array(size).fill(-Infinity)
      const highestAt = all?.highestAt ?? new Float64Array(size)
      const lowest = all?.lowest ?? new Float64Array(size).fill(Infinity)
      const integral = all?.integral ?? new Float64Array(size)
      for (let i = 0; i < size; i++) {
        if (part.highest[i]! > highest[i]!) {
          highest[i] = part.highest[i]!
          highestAt[i] = clock + part.highestAt[i]!
        }
        lowest[i] = Math.min(lowest[i]!, part.lowest[i]!)
        integral[i] = integral[i]! + part.integral[i]!
      }
      for (let k = 0; k <= DENSE * 4; k++) {
        const t = (solution.tEnd * k) / (DENSE * 4)
        times.push(clock + t)
        rows.push(solution.at(t))
      }
      all = { end, runaway: state === 'runaway', highest, highestAt, lowest, integral, times, rows }
    }
    y = end
    clock += solution.tEnd
    if (state === 'runaway') return { ...all!, end: y, runaway: true }
  }
  const none = new Float64Array(0)
  return { ...(all ?? { highest: none, highestAt: none, lowest: none, integral: none, times, rows }), end: y, runaway: false }
}

function dressed(phases: readonly PhaseNumbers[], one: CycleNumbers, state: DutyResult['state']): DutyResult {
  const { names } = phases[0]!.n
  const period = phases.reduce((sum, { duration }) => sum + duration, 0)
  const each = (value: (i: number) => number) => Object.fromEntries(names.map((name, i) => [name, new Quantity(value(i), 'temperature')]))
  return {
    state: one.runaway ? 'runaway' : state,
    peaks: Object.fromEntries(
      names.map((name, i) => [
        name,
        { temperature: new Quantity(one.highest[i]!, 'temperature'), time: new Quantity(one.highestAt[i]!, 'time') },
      ]),
    ),
    means: each((i) => one.integral[i]! / period),
    lows: each((i) => one.lowest[i]!),
    end: each((i) => one.end[i]!),
    times: Float64Array.from(one.times),
    temperatures: Object.fromEntries(names.map((name, i) => [name, Float64Array.from(one.rows, (row) => row[i]!)])),
    period: new Quantity(period, 'time'),
  }
}

/** One pass through phases from given temperatures: a march, then a rest. Without `initial` it starts from the warmest fixed temperature. */
export function onePass(phases: readonly Phase[], initial?: Readonly<Record<string, In<'temperature'>>> | In<'temperature'>): DutyResult {
  const numbers = readPhases(phases)
  const issues: Issue[] = []
  const start = readInitial(numbers[0]!.n, initial, issues)
  if (issues.length > 0) throw new InputError(WHERE, issues)
  return dressed(numbers, cycle(numbers, start.slice(0, numbers[0]!.n.names.length), true), 'finished')
}

/** Matrix exponential of a small matrix: scaled to a norm below a quarter, 12 terms, squared back. */
function exponential(a: Matrix): Matrix {
  const norm = Math.max(...a.to2DArray().map((row) => row.reduce((sum, x) => sum + Math.abs(x), 0)))
  const squarings = Math.max(0, Math.ceil(Math.log2(norm * 4 + 1e-300)))
  const scaled = Matrix.mul(a, 2 ** -squarings)
  let term = Matrix.eye(a.rows)
  let sum = Matrix.eye(a.rows)
  for (let k = 1; k <= 12; k++) {
    term = term.mmul(scaled).mul(1 / k)
    sum = Matrix.add(sum, term)
  }
  for (let k = 0; k < squarings; k++) sum = sum.mmul(sum)
  return sum
}

/** How a disturbance at the start of a cycle arrives at its end, linearised at temperatures `T`. */
function propagator(phases: readonly PhaseNumbers[], T: Float64Array): Matrix {
  const size = phases[0]!.n.names.length
  const slope = new Float64Array(size * size)
  let through = Matrix.eye(size)
  for (const { n, duration } of phases) {
    slopes(n, T, slope)
    const rate = new Matrix(size, size)
    for (let i = 0; i < size; i++) for (let j = 0; j < size; j++) rate.set(i, j, (slope[i * size + j]! / n.capacities[i]!) * duration)
    through = exponential(rate).mmul(through)
  }
  return through
}

/** One network whose losses are the time averages of the phases'. */
function averaged(phases: readonly PhaseNumbers[]): NetworkNumbers {
  const period = phases.reduce((sum, { duration }) => sum + duration, 0)
  const losses = phases.flatMap(({ n, duration }) =>
    n.losses.map((loss) => {
      const share = duration / period
      const { watts } = loss
      return { ...loss, watts: typeof watts === 'number' ? watts * share : (...T: number[]) => share * watts(...T) }
    }),
  )
  return { ...phases[0]!.n, losses }
}

const CYCLES = 40
/** A cycle that comes back within this many kelvin has settled. */
const SETTLED = 1e-4

/**
 * The settled cycle of a periodic duty: temperatures return after each period. Its peaks are what parts must stand; neither the first cycle nor a root-mean-square torque gives them.
 *
 * Starts from the steady state of the mean losses and corrects by the linearised cycle until start and end agree within 0.1 mK. `runaway` where the losses outgrow the paths.
 */
export function settledCycle(phases: readonly Phase[]): DutyResult {
  const numbers = readPhases(phases)
  const n = numbers[0]!.n
  const size = n.names.length
  const middle = steadyNumbers(averaged(numbers))
  const last = () => dressed(numbers, cycle(numbers, y, true), 'settled')
  let y = middle.T.slice(0, size)
  if (middle.state === 'runaway') {
    // The mean has no balance; at least the course of one cycle from cold can be shown.
    const cold = new Float64Array(size).fill(Math.max(...n.fixed))
    return { ...dressed(numbers, cycle(numbers, cold, true), 'runaway'), state: 'runaway' }
  }
  const through = propagator(numbers, middle.T)
  const correction = Matrix.sub(Matrix.eye(size), through)
  for (let k = 0; k < CYCLES; k++) {
    const { end, runaway } = cycle(numbers, y, false)
    if (runaway) return { ...last(), state: 'runaway' }
    const gap = end.map((t, i) => t - y[i]!)
    if (gap.every((g) => Math.abs(g) < SETTLED)) return last()
    const step = solve(correction, Matrix.columnVector(Array.from(gap)))
    y = y.map((t, i) => t + step.get(i, 0))
    if (y.some((t) => !(t < n.ceiling && t > 0))) return { ...dressed(numbers, cycle(numbers, end, true), 'runaway'), state: 'runaway' }
  }
  return { ...last(), state: 'runaway' }
}

/** Short-time duty (S2): a load for a time from a cold start, then rest until the peak has passed through every node. */
export function shortTimeDuty(duty: {
  readonly load: Network
  readonly rest: Network
  /** How long the load lasts: 10, 30, 60 or 90 minutes in the standard's examples. */
  readonly loadTime: In<'time'>
  /** How long the rest is followed. Default as long as the load. */
  readonly restTime?: In<'time'>
  /** Temperatures at the start. Default the warmest fixed temperature. */
  readonly initial?: Readonly<Record<string, In<'temperature'>>> | In<'temperature'>
}): DutyResult {
  const { load, rest, loadTime, restTime = loadTime, initial } = duty
  return onePass(
    [
      { network: load, duration: loadTime },
      { network: rest, duration: restTime },
    ],
    initial,
  )
}

/** Intermittent duty (S3): equal cycles of load and rest, 10 minutes unless said otherwise, to the settled cycle. */
export function intermittentDuty(duty: {
  readonly load: Network
  readonly rest: Network
  /** Part of the cycle under load, above 0 and below 1. */
  readonly dutyFactor: In<'ratio'>
  /** Length of a cycle. Default 10 min. */
  readonly period?: In<'time'>
}): DutyResult {
  const { load, rest, dutyFactor, period = '10 min' } = duty
  const issues: Issue[] = []
  const factor = siOf('dutyFactor', 'ratio', dutyFactor, issues, 0)
  const cycleTime = siOf('period', 'time', period, issues, 0)
  if (factor >= 1)
    issues.push({
      path: 'dutyFactor',
      given: String(factor),
      accepts: 'must be below 1; a duty that never rests is continuous: use steady()',
    })
  if (issues.length > 0) throw new InputError('thermal.intermittentDuty', issues)
  return settledCycle([
    { network: load, duration: [factor * cycleTime, 's'] },
    { network: rest, duration: [(1 - factor) * cycleTime, 's'] },
  ])
}

/** When a network first reaches one of several limits. */
export interface TimeToLimit {
  /** Time until the first limit; infinite when the steady state stays below all. */
  readonly time: Quantity<'time'>
  /** The node that reaches its limit first; undefined when none does. */
  readonly node: string | undefined
}

/** Time from given temperatures until the first of several limits is reached; infinite when none ever is. */
export function timeToLimit(
  network: Network,
  limits: Readonly<Record<string, In<'temperature'>>>,
  initial?: Readonly<Record<string, In<'temperature'>>> | In<'temperature'>,
): TimeToLimit {
  const n = network.si.numbers
  const issues: Issue[] = []
  withoutCapacity(n, issues)
  const start = readInitial(n, initial, issues)
  const watch = Object.entries(limits).map(([name, limit]) => {
    const node = n.names.indexOf(name)
    if (node < 0) issues.push(unknownNode(`limits.${name}`, name, n.names))
    return { node, limit: siOf(`limits.${name}`, 'temperature', limit, issues) }
  })
  if (issues.length > 0) throw new InputError('thermal.timeToLimit', issues)
  const hot = watch.find(({ node, limit }) => start[node]! >= limit)
  if (hot !== undefined) return { time: new Quantity(0, 'time'), node: n.names[hot.node] }
  const steady = steadyNumbers(n)
  // From above the steady state a limit may be passed on the way down only upwards, by heat that arrives from a hotter neighbour: follow at least one course.
  const settles = steady.state === 'steady' && watch.every(({ node, limit }) => steady.T[node]! < limit)
  let y: Float64Array = start.slice(0, n.names.length)
  let clock = 0
  let span = 60
  for (let k = 0; k < 40; k++) {
    const { solution, state, end } = courseNumbers(n, y, span, { watch, stopAtLimit: true })
    if (state !== 'finished') {
      const event = solution.events.at(-1)!
      return {
        time: new Quantity(clock + event.t, 'time'),
        node: event.event === 0 ? hottest(n, end) : n.names[watch[event.event - 1]!.node],
      }
    }
    clock += span
    span *= 2
    y = end
    if (settles && y.every((t, i) => Math.abs(t - steady.T[i]!) < 0.01)) break
    if (settles && clock > 1e7) break
  }
  return { time: new Quantity(Number.POSITIVE_INFINITY, 'time'), node: undefined }
}

const hottest = (n: NetworkNumbers, y: Float64Array) => n.names[y.indexOf(y.reduce((most, t) => Math.max(most, t), -Infinity))]
