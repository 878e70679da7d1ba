import { bracketRoot } from '../numeric/index.js'
import { type In, InputError, Quantity, quantity } from '../units/index.js'
import { type DutyResult, intermittentDuty, type TimeToLimit, timeToLimit } from './duty.js'
import { judge, type PartLimit, type Verdict } from './limits.js'
import type { MotorMount } from './mount.js'
import type { Temperatures } from './network.js'
import { bandsAt } from './network-steady.js'

/** The largest torque that keeps every part within its limit, and the part that says so. */
export interface TorqueLimit {
  /** `found`; or `tooHot` where a part is beyond its limit without any torque. */
  readonly state: 'found' | 'tooHot'
  /** Motor torque; 0 when too hot already. */
  readonly torque: Quantity<'torque'>
  /** Low end of its 95 % band, from the scatter of correlations, joints and motor constant. */
  readonly low: Quantity<'torque'>
  /** High end of its band. */
  readonly high: Quantity<'torque'>
  /** The part that governs. */
  readonly governs: string
  /** Temperatures there; peaks of the settled cycle for a duty. */
  readonly temperatures: Readonly<Record<string, Quantity<'temperature'>>>
}

/** A limit in numbers: temperature of its part from those of all nodes. */
interface LimitNumbers {
  readonly part: string
  readonly of: (T: ArrayLike<number>) => number
  readonly limit: number
}

/** The name under which a limit may ask for the hottest phase of the winding, which at a hold heats twice its share. */
const HOTTEST_PHASE = 'hottestPhase'

function readLimits(where: string, mount: MotorMount, limits: readonly PartLimit[], speed: number): LimitNumbers[] {
  const { nodes } = mount.si.network(0, 0)
  const winding = nodes.indexOf('winding')
  const stator = nodes.indexOf('stator')
  const share = speed === 0 ? 2 : 1
  const known = limits.filter(({ limit }) => limit !== undefined)
  if (known.length === 0)
    throw new InputError(where, [
      { path: 'limits', given: `${limits.length} without a temperature`, accepts: 'needs at least one part with a limit' },
    ])
  return known.map(({ part, node, limit }, i) => {
    const index = nodes.indexOf(node)
    if (index < 0 && node !== HOTTEST_PHASE)
      throw new InputError(where, [
        { path: `limits[${i}].node`, given: `'${node}'`, accepts: `must be one of ${nodes.join(', ')}, ${HOTTEST_PHASE}` },
      ])
    const of = index < 0 ? (T: ArrayLike<number>) => T[stator]! + share * (T[winding]! - T[stator]!) : (T: ArrayLike<number>) => T[index]!
    return { part, of, limit: quantity('temperature', limit as In<'temperature'>).si }
  })
}

const worstOf = (limits: readonly LimitNumbers[], T: ArrayLike<number>) => {
  let worst = limits[0]!
  let margin = Number.POSITIVE_INFINITY
  for (const each of limits) {
    const left = each.limit - each.of(T)
    if (left < margin) {
      margin = left
      worst = each
    }
  }
  return { worst, margin }
}

/**
 * The torque a motor on its mount can hold for ever (or at a speed) with every part within its limit, by the full network: hot resistance, weak
 * magnets, films that grow. A torque that runs away is beyond.
 */
export function continuousTorque(
  mount: MotorMount,
  limits: readonly PartLimit[],
  options: { readonly speed?: In<'angularVelocity'> } = {},
): TorqueLimit {
  const speed = quantity('angularVelocity', options.speed ?? '0 rad/s').si
  const numbers = readLimits('thermal.continuousTorque', mount, limits, speed)
  let start: Float64Array | undefined
  const at = (torque: number) => {
    const { state, T } = mount.si.network(torque, speed).si.steady(start)
    if (state === 'steady') start = T
    return { state, T }
  }
  const marginAt = (torque: number) => {
    const { state, T } = at(torque)
    return state === 'runaway' ? -1000 : worstOf(numbers, T).margin
  }
  const resting = at(0)
  const { worst: first, margin: slack } = worstOf(numbers, resting.T)
  if (slack <= 0)
    return tooHot(first.part, mount.network({ torque: '0 N m', speed: new Quantity(speed, 'angularVelocity') }).steady().temperatures)
  const torque = largestTorque(mount, marginAt)
  const network = mount.si.network(torque, speed)
  const { temperatures } = network.steady()
  const { worst } = worstOf(numbers, at(torque).T)
  const settled = at(torque).T
  const bands = bandsAt(network.si.numbers, settled)
  // The part's band carried to torque: its half-width (of the hottest phase, taken as the winding's) over its slope in torque.
  const wide = settled.map((t, i) => t + (bands[i] ?? 0))
  const step = 1e-3 * torque
  const slope = (worst.of(settled) - worst.of(mount.si.network(torque - step, speed).si.steady(settled).T)) / step
  const half = slope > 0 ? Math.abs(worst.of(wide) - worst.of(settled)) / slope : 0
  return found(torque, half, worst.part, temperatures)
}

const MARGIN_TOLERANCE = 1e-3

/** Torque at which the worst margin is used up. */
function largestTorque(mount: MotorMount, marginAt: (torque: number) => number): number {
  const scale = mount.motor.motorConstant.si
  let low = 0
  let high = scale
  for (let k = 0; k < 60 && marginAt(high) > 0; k++) {
    low = high
    high *= 2
  }
  return bracketRoot(marginAt, low, high, { xTolerance: 1e-6 * scale, fTolerance: MARGIN_TOLERANCE })
}

const found = (torque: number, half: number, governs: string, temperatures: TorqueLimit['temperatures']): TorqueLimit => ({
  state: 'found',
  torque: new Quantity(torque, 'torque'),
  low: new Quantity(Math.max(0, torque - half), 'torque'),
  high: new Quantity(torque + half, 'torque'),
  governs,
  temperatures,
})

const tooHot = (governs: string, temperatures: TorqueLimit['temperatures']): TorqueLimit => ({
  state: 'tooHot',
  torque: new Quantity(0, 'torque'),
  low: new Quantity(0, 'torque'),
  high: new Quantity(0, 'torque'),
  governs,
  temperatures,
})

/** The torque that a mount stands in intermittent duty: peaks of the settled cycle against the limits, so that a long cycle is not flattered by a mean. */
export function intermittentTorque(
  mount: MotorMount,
  limits: readonly PartLimit[],
  duty: { readonly dutyFactor: In<'ratio'>; readonly period?: In<'time'>; readonly speed?: In<'angularVelocity'> },
): TorqueLimit {
  const { dutyFactor, period = '10 min' } = duty
  const speed = quantity('angularVelocity', duty.speed ?? '0 rad/s').si
  const numbers = readLimits('thermal.intermittentTorque', mount, limits, speed)
  const rest = mount.si.network(0, 0)
  const cycleAt = (torque: number): DutyResult => intermittentDuty({ load: mount.si.network(torque, speed), rest, dutyFactor, period })
  const peaksOf = (cycle: DutyResult) => rest.nodes.map((name) => cycle.peaks[name]!.temperature.si)
  const marginAt = (torque: number) => {
    const cycle = cycleAt(torque)
    return cycle.state === 'runaway' ? -1000 : worstOf(numbers, peaksOf(cycle)).margin
  }
  const resting = rest.steady().temperatures
  const { worst: first, margin: slack } = worstOf(
    numbers,
    rest.nodes.map((name) => resting[name]!.si),
  )
  if (slack <= 0) return tooHot(first.part, resting)
  const torque = largestTorque(mount, marginAt)
  const cycle = cycleAt(torque)
  const peaks = Object.fromEntries(rest.nodes.map((name) => [name, cycle.peaks[name]!.temperature]))
  // A duty's band is told as the continuous one's, in proportion: the same paths scatter.
  const continuous = continuousTorque(mount, limits)
  const relative = continuous.torque.si > 0 ? (continuous.high.si - continuous.torque.si) / continuous.torque.si : 0
  return found(torque, relative * torque, worstOf(numbers, peaksOf(cycle)).worst.part, peaks)
}

/** How long a torque may last from a start (the surroundings' temperature unless given) until the first part reaches its limit; infinite when it may last. */
export function timeAtTorque(
  mount: MotorMount,
  load: { readonly torque: In<'torque'>; readonly speed?: In<'angularVelocity'> },
  limits: readonly PartLimit[],
  initial?: Readonly<Record<string, In<'temperature'>>> | In<'temperature'>,
): TimeToLimit & { readonly governs: string | undefined } {
  readLimits('thermal.timeAtTorque', mount, limits, 0)
  const phase = limits.findIndex(({ node, limit }) => node === HOTTEST_PHASE && limit !== undefined)
  if (phase >= 0)
    throw new InputError('thermal.timeAtTorque', [
      { path: `limits[${phase}].node`, given: HOTTEST_PHASE, accepts: 'a course in time knows the winding only as a whole: name winding' },
    ])
  const byNode: Record<string, In<'temperature'>> = {}
  const partOf: Record<string, string> = {}
  for (const { part, node, limit } of limits) {
    if (limit === undefined) continue
    const kelvin = quantity('temperature', limit).si
    if (byNode[node] !== undefined && (byNode[node] as Quantity<'temperature'>).si <= kelvin) continue
    byNode[node] = new Quantity(kelvin, 'temperature')
    partOf[node] = part
  }
  const { time, node } = timeToLimit(mount.network(load), byNode, initial)
  return { time, node, governs: node === undefined ? undefined : partOf[node] }
}

/** Steady temperatures of a mount at a load with the verdict on every part. */
export interface MountVerdict extends Verdict {
  readonly state: 'steady' | 'runaway'
  /** Temperatures with bands; empty in a runaway. */
  readonly temperatures: Temperatures
  /** While holding still one phase heats twice its share: what its copper may reach; equal to the winding when turning. */
  readonly hottestPhase: Quantity<'temperature'> | undefined
}

/** Judges a mount at a steady load. In a runaway every limited part fails and there are no temperatures. */
export function assessMount(
  mount: MotorMount,
  load: { readonly torque: In<'torque'>; readonly speed?: In<'angularVelocity'> },
  limits: readonly PartLimit[],
): MountVerdict {
  const { state, temperatures } = mount.network(load).steady()
  if (state === 'runaway') return { state, temperatures, hottestPhase: undefined, governing: undefined, parts: [] }
  const still = load.speed === undefined || quantity('angularVelocity', load.speed).si === 0
  const { winding, stator } = temperatures
  const hottestPhase = new Quantity(stator!.si + (still ? 2 : 1) * (winding!.si - stator!.si), 'temperature')
  return {
    state,
    temperatures,
    hottestPhase,
    ...judge({ ...temperatures, hottestPhase }, limits, new Quantity(mount.si.surroundings.air, 'temperature')),
  }
}
