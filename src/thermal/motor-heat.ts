import { chebyshev } from '../numeric/index.js'
import { lawPlace } from './chebyshev-law.js'
import { RISES } from './cooling-laws.js'
import { copperLossForTorque, magnetDerating } from './copper.js'
import { MOUNT_AIR } from './film-inputs.js'
import { steadyWindingTemperature } from './hot-winding.js'
import { motorConstant } from './motor-constants.js'
import { BACK_EMF_AT_20, HEATING_TORQUE, MOTOR_LOSSES } from './motor-inputs.js'

/** Air and laws by which a motor on its mount is cooled, as inputs. */
export const COOLING_LAWS = {
  ...MOUNT_AIR,
  /** Temperature of what the surfaces see. Default: that of the air. */
  radiant: { kind: 'temperature', min: 0, optional: true },
  /** Law of the mount: conductance of `mountLaw`. */
  mountConductance: { list: 'ratio' },
  /** Law of the mount: radiant share of `mountLaw`. */
  mountRadiantShare: { list: 'ratio' },
  /** Law of the can: conductance of `canLaw`. */
  canConductance: { list: 'ratio' },
  /** Law of the can: its rise over that of the mounting face, of `canLaw`. */
  canShare: { list: 'ratio' },
  /** Law of the can: radiant share of `canLaw`. */
  canRadiantShare: { list: 'ratio' },
} as const

/** A motor on a mount without its torque, as inputs. */
export const MOTOR_ON_MOUNT = {
  ...BACK_EMF_AT_20,
  ...MOTOR_LOSSES,
  ...COOLING_LAWS,
} as const
/** What a motor on a mount loses and how it is cooled, as inputs of its balance and of its stall. */
export const HEATED_MOTOR = {
  ...HEATING_TORQUE,
  ...MOTOR_ON_MOUNT,
} as const

/** A motor on a mount in numbers. */
export interface MotorOnMount {
  readonly backEmfConstant: number
  readonly magnetCoefficient: number
  readonly terminalResistance: number
  readonly otherLoss: number
  readonly windingToMount: number
  readonly air: number
  readonly radiant?: number | undefined
  readonly mountConductance: readonly number[]
  readonly mountRadiantShare: readonly number[]
  readonly canConductance: readonly number[]
  readonly canShare: readonly number[]
  readonly canRadiantShare: readonly number[]
}
/** The same with its torque. */
export interface HeatedMotor extends MotorOnMount {
  readonly torque: number
}

/** A motor on its mount with the mounting face at some temperature, whatever its torque. */
export interface MountState {
  can: number
  backEmf: number
  /** Conductance from the mounting face to the air, all ways. */
  conductance: number
  /** Heat that leaves the mounting face, all ways. */
  leaving: number
}
/** The same with its torque. */
export interface MotorState extends MountState {
  /** Copper loss of the torque with the winding at 20 °C and the magnets as they are. */
  lossAt20: number
  winding: number
  loss: number
  /** Heat that enters the mounting face less what leaves it; infinite where the winding runs away from it. */
  surplus: number
}

/** Below this rise, K, the law counts as at it: the conductance hardly changes. Above its end it counts as at its end, and the formulas that use it report that. */
export const MIN_RISE = RISES.low

/** Writes what belongs to a temperature of the mounting face, whatever the torque, into `out`. */
export function mountStateAt(m: MotorOnMount, mount: number, out: MountState): void {
  const rise = mount - m.air
  const place = lawPlace(RISES, Math.min(RISES.high, Math.max(rise, MIN_RISE)))
  const glow = (m.radiant ?? m.air) - m.air
  const byMount = Math.exp(chebyshev(m.mountConductance, place))
  const byCan = Math.exp(chebyshev(m.canConductance, place))
  // Radiation comes from what the surfaces see: each way starts from air and surroundings by its share of them.
  const mountFar = glow === 0 ? 0 : glow * chebyshev(m.mountRadiantShare, place)
  const canFar = glow === 0 ? 0 : glow * chebyshev(m.canRadiantShare, place)
  const can = m.air + canFar + chebyshev(m.canShare, place) * (rise - canFar)
  out.can = can
  out.backEmf = magnetDerating.si({
    backEmfConstant: m.backEmfConstant,
    magnetTemperature: can,
    coefficient: m.magnetCoefficient,
  }).backEmfConstant
  out.conductance = byMount + byCan
  out.leaving = byMount * (rise - mountFar) + byCan * (rise - canFar)
}

/** Writes the state of a motor whose mounting face is at a temperature into `out`. */
export function motorStateAt(m: HeatedMotor, mount: number, out: MotorState): MotorState {
  mountStateAt(m, mount, out)
  const lossAt20 = copperLossForTorque.si({
    torque: m.torque,
    motorConstant: motorConstant.si({ backEmfConstant: out.backEmf, terminalResistance: m.terminalResistance }),
  })
  const hot = steadyWindingTemperature.si({ lossAt20, thermalResistance: m.windingToMount, ambient: mount })
  out.lossAt20 = lossAt20
  out.winding = hot.temperature
  out.loss = hot.loss
  out.surplus = hot.loss + m.otherLoss - out.leaving
  return out
}

/** An empty state to write into. */
export const motorState = (): MotorState => ({
  can: 0,
  backEmf: 0,
  conductance: 0,
  leaving: 0,
  lossAt20: 0,
  winding: 0,
  loss: 0,
  surplus: 0,
})
