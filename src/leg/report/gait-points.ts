import { currentsForTorque, speedAtCurrent } from '../../thermal/index.js'
import type { LegModel } from '../leg-model.js'
import { controllerOf, JOINTS, type Joint, motorOf } from '../numbers.js'
import { strideOf } from '../stride-of.js'
import { caseState } from '../what-if.js'

/** Speed and torque, SI, in size. */
type Point = readonly [speed: number, torque: number]

/** Moments of a gait at one motor. */
interface GaitCloud {
  readonly name: string
  readonly joint: Joint
  readonly points: readonly Point[]
  /** Largest torque over the stride. */
  readonly peakTorque: number
}

const LIMIT_POINTS = 24

/** Speed and torque at each motor's shaft over strides of walk and trot; a gait that the leg cannot follow is left out. */
export function gaitClouds(leg: LegModel): readonly GaitCloud[] {
  return (['walk', 'trot'] as const).flatMap((id) => {
    const stride = strideOf(leg, id)
    if (!stride.walkable) return []
    return JOINTS.map((joint) => {
      const { cloud, peakTorque } = stride.motors[joint]
      return {
        name: `${joint}, ${id}`,
        joint,
        points: Array.from(cloud.speed, (speed, i): Point => [Math.abs(speed), Math.abs(cloud.torque[i]!)]),
        peakTorque: peakTorque.si,
      }
    })
  })
}

/** Motor limit at the open-circuit supply voltage, from the controller's current limit to its highest speed, with magnets and winding as warm as in a state. Default: the knee's after walking. */
export function motorLimit(
  leg: LegModel,
  heat: { readonly backEmfConstant: number; readonly resistance: number } = caseState(leg, 'walk').joints.knee.heat,
  joint: Joint = 'knee',
): readonly Point[] {
  const { supply } = leg.x
  const [motor, controller] = [motorOf(leg.x, joint), controllerOf(leg.x, joint)]
  const perTorque = currentsForTorque.si({ torque: 1, backEmfConstant: heat.backEmfConstant }).peakPhase
  const points: Point[] = [[0, controller.currentLimit / perTorque]]
  for (let i = LIMIT_POINTS; i >= 0; i--) {
    const peakPhaseCurrent = (controller.currentLimit * i) / LIMIT_POINTS
    const { speed } = speedAtCurrent.si({
      voltage: supply.voltage,
      backEmfConstant: heat.backEmfConstant,
      terminalResistance: heat.resistance,
      peakPhaseCurrent,
      phaseInductance: motor.phaseInductance,
      polePairs: motor.polePairs ?? 1,
    })
    points.push([speed, peakPhaseCurrent / perTorque])
  }
  return points
}
