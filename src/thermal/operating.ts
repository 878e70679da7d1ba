import { type Property, requireKeys } from '../formula/index.js'
import { type In, Quantity, quantity } from '../units/index.js'
import { checkLimits, type LimitVerdict, type PartLimit } from './limits.js'
import type { MotorMount } from './mount.js'
import type { MotorLoad } from './mount-loads.js'
import { requireMadeBy } from './must-be-made.js'
import type { SteadyTemperatures } from './network.js'
import { halfWidth, steadyShifts } from './network-spread.js'
import { hottestPhaseOf, largestTorque, readLimits, type TorqueLimit, torqueLimit, worstOf } from './torque-limits.js'
import { uncertainTemperature } from './uncertain.js'

const WHERE = 'thermal.continuousTorque'

/**
 * The torque a motor on its mount can hold continuously (or at a speed) with every part within its limit, by the full network: hot resistance, weak
 * magnets, films that grow. A torque that runs away is beyond.
 */
export function continuousTorque(
  mount: MotorMount,
  limits: readonly PartLimit[],
  options: {
    /** Speed at which the torque is held. Default 0: a hold. */
    readonly speed?: In<'angularVelocity'>
  } = {},
): TorqueLimit {
  requireKeys(WHERE, 'options', options, ['speed'])
  const speed = quantity('angularVelocity', options.speed ?? '0 rad/s').si
  const numbers = readLimits(WHERE, mount, limits, speed)
  let near: Float64Array | undefined
  const at = (torque: number) => {
    const { state, T } = mount.si.network(torque, speed).si.steady(near)
    if (state === 'runaway') return undefined
    near = T
    return T
  }
  const marginAt = (torque: number) => {
    const T = at(torque)
    return T === undefined ? undefined : worstOf(numbers, ({ of }) => of(T)).margin
  }
  if ((marginAt(0) ?? 0) <= 0) return tooHot(mount, numbers, speed)
  const { torque, runaway } = largestTorque(mount, marginAt)
  const network = mount.si.network(torque, speed)
  const settled = at(torque)!
  const { worst } = worstOf(numbers, ({ of }) => of(settled))
  const { temperatures, notes } = network.steady()
  // The part's band carried to torque by its slope; at the edge of a runaway the slope has no end, and the band of the torque none to speak of.
  const step = 1e-3 * torque
  const slope = (worst.of(settled) - worst.of(at(torque - step)!)) / step
  const half = halfWidth(steadyShifts(network.si.numbers, settled), worst.of)
  return torqueLimit(runaway ? 'runaway' : 'found', torque, half, slope, runaway ? 'runaway' : worst.part, temperatures, notes)
}

/** The answer where a part is beyond its limit without any torque. @internal */
export function tooHot(mount: MotorMount, numbers: ReturnType<typeof readLimits>, speed: number): TorqueLimit {
  const network = mount.si.network(0, speed)
  const { T } = network.si.steady()
  const { temperatures, notes } = network.steady()
  return torqueLimit('tooHot', 0, 0, 0, worstOf(numbers, ({ of }) => of(T)).worst.part, temperatures, notes)
}

/** Steady temperatures of a mount at a load with the verdict on every part. */
export interface MountVerdict extends LimitVerdict, Pick<SteadyTemperatures, 'state' | 'temperatures' | 'notes'> {
  /** While holding still one phase heats twice its share: what its copper may reach; equal to the winding when turning. Undefined in a runaway. */
  readonly hottestPhase: Property<'temperature'> | undefined
}

/** Judges a mount at a steady load. In a runaway every part with a limit fails and there are no temperatures. */
export function assessMount(mount: MotorMount, load: MotorLoad, limits: readonly PartLimit[]): MountVerdict {
  requireMadeBy('thermal.assessMount', 'mount', mount, 'motorMount')
  const network = mount.network(load)
  const { state, temperatures, notes } = network.steady()
  const air = new Quantity(mount.si.surroundings.air, 'temperature')
  if (state === 'runaway') return { state, temperatures, notes, hottestPhase: undefined, ...checkLimits(undefined, limits, air) }
  const of = hottestPhaseOf(network.nodes, quantity('angularVelocity', load.speed ?? '0 rad/s').si)
  const T = Float64Array.from([...network.nodes.map((name) => temperatures[name]!.si), ...network.si.numbers.fixed])
  const hottestPhase = uncertainTemperature(of(T), halfWidth(steadyShifts(network.si.numbers, T), of), notes, 'steady')
  return { state, temperatures, notes, hottestPhase, ...checkLimits({ ...temperatures, hottestPhase }, limits, air) }
}
