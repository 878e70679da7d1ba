import { solveInPlace, solveStiff } from '../numeric/index.js'
import { type In, InputError, type Issue, type Kind, nearName, Quantity, read, show, UnreadableQuantity } from '../units/index.js'

/** One part of a network that has one temperature. */
export interface NetworkNode {
  /** Heat capacity; needed for the course of temperature in time. */
  readonly capacity?: In<'heatCapacity'>
  /** Heat released in it: a power, or a function of its own temperature in kelvin that gives watts. */
  readonly loss?: In<'power'> | ((temperature: number) => number)
  /** A node held at this temperature, such as the air. It takes any heat and has neither loss nor capacity. */
  readonly fixed?: In<'temperature'>
}

/** A way for heat between two nodes. */
export interface NetworkLink {
  readonly from: string
  readonly to: string
  /** Conductance, or a function of the two temperatures in kelvin (as named by `from` and `to`) that gives watts per kelvin. */
  readonly conductance: In<'thermalConductance'> | ((from: number, to: number) => number)
}

/** Temperatures of every node that is not fixed, and whether they are a steady state. */
export interface SteadyTemperatures {
  /** `steady`; or `runaway` where losses grow faster with temperature than the paths carry away: then no steady state exists. */
  readonly state: 'steady' | 'runaway'
  /** By node; empty in a runaway. */
  readonly temperatures: Readonly<Record<string, Quantity<'temperature'>>>
  /** Heat flowing through each link, positive from `from` to `to`, in the order given; empty in a runaway. */
  readonly flows: readonly Quantity<'power'>[]
  /** Largest imbalance left at any node. */
  readonly residual: Quantity<'power'>
}

/** The course of temperature in time. */
export interface Course {
  /** Temperatures at a time. Throws a `NumericError` outside the interval. */
  at(time: In<'time'>): Readonly<Record<string, Quantity<'temperature'>>>
  /** Times and temperatures the solver stepped on, SI, by node. */
  readonly times: Float64Array
  readonly temperatures: Readonly<Record<string, Float64Array>>
  /** Heat released in the nodes, heat given to fixed nodes and heat stored: released = given + stored to the solver's tolerance. */
  readonly ledger: { readonly released: Quantity<'energy'>; readonly given: Quantity<'energy'>; readonly stored: Quantity<'energy'> }
  /** When each watched limit was first passed; a node that stays below is missing. */
  readonly passed: Readonly<Record<string, Quantity<'time'>>>
}

/** A thermal network: checked once, then solved as often as wanted. */
export interface Network {
  /** Names of the nodes whose temperature is unknown, in order. */
  readonly nodes: readonly string[]
  /** The stable steady state, by heat balance in watts; a runaway is an answer. */
  steady(): SteadyTemperatures
  /** The course from given (or fixed-node) temperatures over a time, with limits to watch. */
  transient(course: {
    readonly duration: In<'time'>
    readonly initial: Readonly<Record<string, In<'temperature'>>> | In<'temperature'>
    readonly limits?: Readonly<Record<string, In<'temperature'>>>
  }): Course
}

/** A number of watts or watts per kelvin that may depend on temperature. */
type OneTemperature = (temperature: number) => number
type TwoTemperatures = (from: number, to: number) => number

interface Numbers {
  readonly names: readonly string[]
  readonly capacities: Float64Array
  readonly losses: readonly (number | OneTemperature)[]
  readonly fixed: ReadonlyMap<string, number>
  readonly links: readonly {
    readonly a: number
    readonly b: number
    readonly fixedA: number
    readonly fixedB: number
    readonly g: number | TwoTemperatures
  }[]
}

/**
 * Makes a thermal network from nodes and links.
 *
 * Throws an `InputError` that lists every issue: unknown or near-miss node names, negative conductances, a node without a path to any fixed temperature, a network
 * with no fixed node.
 */
export function network(nodes: Readonly<Record<string, NetworkNode>>, links: readonly NetworkLink[]): Network {
  const n = readNetwork(nodes, links)
  return {
    nodes: n.names,
    steady: () => steadyOf(n),
    transient: (course) => transientOf(n, course),
  }
}

const linkFlow = (link: Numbers['links'][number], T: Float64Array): number => {
  const from = link.a < 0 ? link.fixedA : T[link.a]!
  const to = link.b < 0 ? link.fixedB : T[link.b]!
  return (typeof link.g === 'number' ? link.g : link.g(from, to)) * (from - to)
}

/** Net heat into each unknown node, watts. */
function imbalance(n: Numbers, T: Float64Array, out: Float64Array): void {
  for (let i = 0; i < n.losses.length; i++) {
    const loss = n.losses[i]!
    out[i] = typeof loss === 'number' ? loss : loss(T[i]!)
  }
  for (const link of n.links) {
    const flow = linkFlow(link, T)
    if (link.a >= 0) out[link.a] = out[link.a]! - flow
    if (link.b >= 0) out[link.b] = out[link.b]! + flow
  }
}

/** Derivatives of the imbalance: the fluxes of each link and the losses, by differences of one node each. */
function slopes(n: Numbers, T: Float64Array, out: Float64Array): void {
  const size = n.names.length
  out.fill(0)
  for (let i = 0; i < size; i++) {
    const loss = n.losses[i]!
    if (typeof loss === 'function') {
      const step = 1e-4
      out[i * size + i] = (loss(T[i]! + step) - loss(T[i]! - step)) / (2 * step)
    }
  }
  for (const link of n.links) {
    const from = link.a < 0 ? link.fixedA : T[link.a]!
    const to = link.b < 0 ? link.fixedB : T[link.b]!
    const step = 1e-4
    const g = link.g
    const flow = typeof g === 'number' ? undefined : (x: number, y: number) => g(x, y) * (x - y)
    const byFrom = flow === undefined ? (g as number) : (flow(from + step, to) - flow(from - step, to)) / (2 * step)
    const byTo = flow === undefined ? -(g as number) : (flow(from, to + step) - flow(from, to - step)) / (2 * step)
    if (link.a >= 0) {
      out[link.a * size + link.a] = out[link.a * size + link.a]! - byFrom
      if (link.b >= 0) out[link.a * size + link.b] = out[link.a * size + link.b]! - byTo
    }
    if (link.b >= 0) {
      out[link.b * size + link.b] = out[link.b * size + link.b]! + byTo
      if (link.a >= 0) out[link.b * size + link.a] = out[link.b * size + link.a]! + byFrom
    }
  }
}

const MOST_STEPS = 200
/** A single Newton step changes no temperature by more than this; a runaway leaves the range below instead. */
const LARGEST_STEP = 60
/** A balance above this many kelvin counts as a runaway. */
const HOTTEST = 3000

function steadyOf(n: Numbers): SteadyTemperatures {
  const size = n.names.length
  const coldest = Math.min(...n.fixed.values())
  const T = new Float64Array(size).fill(Math.max(...n.fixed.values()))
  const residual = new Float64Array(size)
  const matrix = new Float64Array(size * size)
  const step = new Float64Array(size)
  const pivots = new Int32Array(size)
  const largest = () => {
    imbalance(n, T, residual)
    return residual.reduce((most, r) => Math.max(most, Math.abs(r)), 0)
  }
  const released = () => n.losses.reduce<number>((sum, loss, i) => sum + Math.abs(typeof loss === 'number' ? loss : loss(T[i]!)), 0)
  let worst = largest()
  for (let k = 0; k < MOST_STEPS; k++) {
    if (worst <= 1e-9 + 1e-9 * released()) return stable(n, T, matrix, pivots) ? steadyAnswer(n, T, worst) : runaway(worst)
    slopes(n, T, matrix)
    step.set(residual)
    // The steady state sought is reached from the cold side; on it the negative slopes are a positive definite M-matrix, so heating gives positive steps.
    if (!solveInPlace(matrix, size, pivots, step)) return runaway(worst)
    const scale = Math.min(1, LARGEST_STEP / step.reduce((most, s) => Math.max(most, Math.abs(s)), 0))
    for (let i = 0; i < size; i++) T[i] = T[i]! - scale * step[i]!
    if (T.some((t) => !(t < HOTTEST) || t < coldest - 500)) return runaway(worst)
    worst = largest()
  }
  return runaway(worst)
}

/** Whether small disturbances die out: every pivot of the negative slopes is positive. */
function stable(n: Numbers, T: Float64Array, matrix: Float64Array, _pivots: Int32Array): boolean {
  const size = n.names.length
  slopes(n, T, matrix)
  for (let k = 0; k < size; k++) {
    const pivot = -matrix[k * size + k]!
    if (!(pivot > 0)) return false
    for (let i = k + 1; i < size; i++) {
      const factor = matrix[i * size + k]! / matrix[k * size + k]!
      for (let j = k; j < size; j++) matrix[i * size + j] = matrix[i * size + j]! - factor * matrix[k * size + j]!
    }
  }
  return true
}

const runaway = (worst: number): SteadyTemperatures => ({
  state: 'runaway',
  temperatures: {},
  flows: [],
  residual: new Quantity(worst, 'power'),
})

const byName = (n: Numbers, T: Float64Array): Record<string, Quantity<'temperature'>> =>
  Object.fromEntries(n.names.map((name, i) => [name, new Quantity(T[i]!, 'temperature')]))

const steadyAnswer = (n: Numbers, T: Float64Array, worst: number): SteadyTemperatures => ({
  state: 'steady',
  temperatures: byName(n, T),
  flows: n.links.map((link) => new Quantity(linkFlow(link, T), 'power')),
  residual: new Quantity(worst, 'power'),
})

function transientOf(n: Numbers, course: Parameters<Network['transient']>[0]): Course {
  const issues: Issue[] = []
  const size = n.names.length
  n.names.forEach((name, i) => {
    if (!(n.capacities[i]! > 0))
      issues.push({ path: `nodes.${name}.capacity`, given: 'missing', accepts: 'a course in time needs the heat capacity of every node' })
  })
  const duration = siOf('duration', 'time', course.duration, issues, 0)
  const initial = new Float64Array(size)
  const { initial: start } = course
  const each = typeof start === 'object' && start !== null && !('kind' in start) && !Array.isArray(start) && !('toNumber' in start)
  n.names.forEach((name, i) => {
    const given = each ? (start as Record<string, unknown>)[name] : start
    initial[i] = siOf(each ? `initial.${name}` : 'initial', 'temperature', given, issues)
  })
  const limits = Object.entries(course.limits ?? {}).map(([name, limit]) => {
    const index = n.names.indexOf(name)
    if (index < 0) issues.push(unknownNode(`limits.${name}`, name, n.names))
    return { name, index, limit: siOf(`limits.${name}`, 'temperature', limit, issues) }
  })
  if (issues.length > 0) throw new InputError('thermal.network', issues)

  // Two more states keep the ledger: heat released, and heat given to fixed nodes.
  const y0 = new Float64Array(size + 2)
  y0.set(initial)
  const rate = (_t: number, y: Float64Array, out: Float64Array) => {
    imbalance(n, y, out)
    let released = 0
    for (let i = 0; i < size; i++) {
      const loss = n.losses[i]!
      released += typeof loss === 'number' ? loss : loss(y[i]!)
      out[i] = out[i]! / n.capacities[i]!
    }
    let given = 0
    for (const link of n.links) {
      if (link.a < 0 && link.b >= 0) given -= linkFlow(link, y)
      else if (link.b < 0 && link.a >= 0) given += linkFlow(link, y)
    }
    out[size] = released
    out[size + 1] = given
  }
  const solution = solveStiff({
    derivative: rate,
    start: 0,
    end: duration,
    initial: y0,
    relativeTolerance: 1e-7,
    absoluteTolerance: 1e-6,
    events: limits.map(({ index, limit }) => ({ value: (_t: number, y: Float64Array) => y[index]! - limit, direction: 'rising' as const })),
  })
  const passed: Record<string, Quantity<'time'>> = {}
  for (const { name, index, limit } of limits) if (initial[index]! >= limit) passed[name] = new Quantity(0, 'time')
  for (const event of solution.events) {
    const { name } = limits[event.event]!
    passed[name] ??= new Quantity(event.t, 'time')
  }
  const end = solution.yEnd
  let stored = 0
  for (let i = 0; i < size; i++) stored += n.capacities[i]! * (end[i]! - initial[i]!)
  return {
    at: (time) => byName(n, solution.at(siOf('time', 'time', time, [], 0))),
    times: solution.t,
    temperatures: Object.fromEntries(
      n.names.map((name, i) => [name, Float64Array.from(solution.t, (_, k) => solution.y[k * (size + 2) + i]!)]),
    ),
    ledger: {
      released: new Quantity(end[size]!, 'energy'),
      given: new Quantity(end[size + 1]!, 'energy'),
      stored: new Quantity(stored, 'energy'),
    },
    passed,
  }
}

function siOf(path: string, kind: Kind, given: unknown, issues: Issue[], least?: number): number {
  try {
    const x = read(kind, given)
    if (Number.isFinite(x) && (least === undefined || x > least)) return x
    issues.push({ path, given: show(given), accepts: least === undefined ? 'must be finite' : `must be above ${least}` })
  } catch (error) {
    if (!(error instanceof UnreadableQuantity)) throw error
    issues.push({ path, given: show(given), accepts: error.message })
  }
  return Number.NaN
}

function unknownNode(path: string, name: string, names: readonly string[]): Issue {
  const near = nearName(name, names)
  return { path, given: show(name), accepts: `must name a node: ${names.join(', ')}${near === undefined ? '' : `; did you mean ${near}?`}` }
}

function readNetwork(nodes: Readonly<Record<string, NetworkNode>>, links: readonly NetworkLink[]): Numbers {
  const issues: Issue[] = []
  const all = Object.keys(nodes)
  const fixed = new Map<string, number>()
  for (const name of all) {
    const { fixed: held, loss, capacity } = nodes[name] as NetworkNode
    if (held === undefined) continue
    fixed.set(name, siOf(`nodes.${name}.fixed`, 'temperature', held, issues, 0))
    if (loss !== undefined || capacity !== undefined)
      issues.push({ path: `nodes.${name}`, given: 'fixed with a loss or a capacity', accepts: 'a fixed node has neither' })
  }
  const names = all.filter((name) => !fixed.has(name))
  if (names.length === 0)
    issues.push({ path: 'nodes', given: show(nodes), accepts: 'needs at least one node whose temperature is unknown' })
  if (fixed.size === 0)
    issues.push({ path: 'nodes', given: all.join(', '), accepts: 'needs at least one node of fixed temperature, such as the air' })
  const capacities = Float64Array.from(names, (name) => {
    const { capacity } = nodes[name] as NetworkNode
    return capacity === undefined ? 0 : siOf(`nodes.${name}.capacity`, 'heatCapacity', capacity, issues, 0)
  })
  const losses = names.map((name) => {
    const { loss = '0 W' } = nodes[name] as NetworkNode
    return typeof loss === 'function' ? loss : siOf(`nodes.${name}.loss`, 'power', loss, issues)
  })
  const numbered = links.map(({ from, to, conductance }, i) => {
    for (const [end, name] of [
      ['from', from],
      ['to', to],
    ] as const)
      if (!all.includes(name)) issues.push(unknownNode(`links[${i}].${end}`, name, all))
    if (from === to) issues.push({ path: `links[${i}]`, given: `${from} to itself`, accepts: 'must join two nodes' })
    const g =
      typeof conductance === 'function' ? conductance : siOf(`links[${i}].conductance`, 'thermalConductance', conductance, issues, 0)
    return { a: names.indexOf(from), b: names.indexOf(to), fixedA: fixed.get(from) ?? 0, fixedB: fixed.get(to) ?? 0, g }
  })
  if (issues.length === 0) {
    const reached = new Set(fixed.keys())
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
  if (issues.length > 0) throw new InputError('thermal.network', issues)
  return { names, capacities, losses, fixed, links: numbered }
}
