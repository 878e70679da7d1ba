import { type Property, requireKeys } from '../formula/index.js'
import { type In, InputError, type Issue, quantity } from '../units/index.js'
import { extremesOfPass, settle, shiftsOfPass } from './duty-cycle.js'
import { dutyTimes, intermittentDuty } from './intermittent-duty.js'
import type { PartLimit } from './limits.js'
import type { MotorMount } from './mount.js'
import { LOAD, type MotorLoad } from './mount-loads.js'
import { notesAt } from './network-numbers.js'
import { halfWidth } from './network-spread.js'
import { readInitial, type Start, withFixed } from './network-transient.js'
import { tooHot } from './operating.js'
import { reachWithBand } from './reach.js'
import { largestTorque, readLimits, type TorqueLimit, torqueLimit, worstOf } from './torque-limits.js'
import { uncertain } from './uncertain.js'

/** The torque that a mount stands in intermittent duty: peaks of the settled cycle against the limits, so that a long cycle is not flattered by a mean. */
export function intermittentTorque(
  mount: MotorMount,
  limits: readonly PartLimit[],
  duty: {
    /** Part of the cycle under load, above 0 and below 1. */
    readonly dutyFactor: In<'ratio'>
    /** Length of a cycle. Default 10 min. */
    readonly period?: In<'time'>
    /** Speed of the motor under load. Default 0: a hold. */
    readonly speed?: In<'angularVelocity'>
  },
): TorqueLimit {
  const where = 'thermal.intermittentTorque'
  requireKeys(where, 'duty', duty, ['dutyFactor', 'period', 'speed'])
  const { loadTime, restTime } = dutyTimes(where, duty)
  const speed = quantity('angularVelocity', duty.speed ?? '0 rad/s').si
  const numbers = readLimits(where, mount, limits, speed)
  const probes = numbers.map(({ of }) => of)
  const rest = mount.si.network(0, 0)
  const size = rest.nodes.length
  const phasesAt = (torque: number) => [
    { n: mount.si.network(torque, speed).si.numbers, duration: loadTime },
    { n: rest.si.numbers, duration: restTime },
  ]
  let near: Float64Array | undefined
  /** The settled cycle at a torque; a start from a neighbour is only trusted where it leads to a cycle. */
  const cycleAt = (torque: number) => {
    const phases = phasesAt(torque)
    let cycle = settle(phases, near)
    if (cycle.runaway && near !== undefined) cycle = settle(phases)
    if (!cycle.runaway) near = cycle.start
    return { phases, cycle, peaks: extremesOfPass(cycle, probes) }
  }
  const worstAt = ({ peaks }: ReturnType<typeof cycleAt>) => worstOf(numbers, (_, i) => peaks.highest[size + i]!)
  const marginAt = (torque: number) => {
    const answer = cycleAt(torque)
    return answer.cycle.runaway ? undefined : worstAt(answer).margin
  }
  if ((marginAt(0) ?? 0) <= 0) return tooHot(mount, numbers, speed)
  const { torque, runaway } = largestTorque(mount, marginAt)
  const answer = cycleAt(torque)
  const { worst, index } = worstAt(answer)
  const peak = size + index
  const half = halfWidth(shiftsOfPass(answer.phases, answer.cycle, true)(answer.peaks.highestAt[peak]!), worst.of)
  const step = 1e-2 * torque
  const slope = (answer.peaks.highest[peak]! - cycleAt(torque - step).peaks.highest[peak]!) / step
  const full = intermittentDuty({
    load: mount.si.network(torque, speed),
    rest,
    dutyFactor: duty.dutyFactor,
    period: [loadTime + restTime, 's'],
  })
  const temperatures = Object.fromEntries(rest.nodes.map((name) => [name, full.peaks[name]!.temperature]))
  return torqueLimit(runaway ? 'runaway' : 'found', torque, half, slope, runaway ? 'runaway' : worst.part, temperatures, full.notes)
}

/** How long a torque may last. */
export interface TimeAtTorque {
  /** Time until the first part reaches its limit, with its 95 % band; infinite when it may last. */
  readonly time: Property<'time'>
  /** The node of that part; undefined when none reaches its limit. */
  readonly node: string | undefined
  /** The part that governs; undefined when none does. */
  readonly governs: string | undefined
}

/**
 * How long a torque may last from a start (the surroundings' temperature unless given) until the first part reaches its limit; infinite when it may last.
 *
 * The high end of the band is infinite where the torque may last, for all that is known of films, joints and the motor.
 */
export function timeAtTorque(mount: MotorMount, load: MotorLoad, limits: readonly PartLimit[], initial?: Start): TimeAtTorque {
  const where = 'thermal.timeAtTorque'
  requireKeys(where, 'load', load, LOAD)
  const numbers = readLimits(where, mount, limits, quantity('angularVelocity', load.speed ?? '0 rad/s').si)
  const n = mount.network(load).si.numbers
  const issues: Issue[] = []
  const start = readInitial(n, initial, issues).slice(0, n.names.length)
  if (issues.length > 0) throw new InputError(where, issues)
  const { time, low, high, which, y } = reachWithBand(n, start, numbers)
  const first = numbers[which]
  return {
    time: uncertain('time', time, low, high, notesAt(n, withFixed(n, y)), 'time at a torque'),
    node: first?.node,
    governs: first?.part,
  }
}
