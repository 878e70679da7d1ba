import { backEmfConstant, torqueConstants } from '../../thermal/index.js'
import { standingLoad } from '../foot-result.js'
import { STANDARD_GRAVITY } from '../gravity.js'
import type { LegModel } from '../leg-model.js'
import { controllerOf, type DrivenJoint, driveOf, hasCord, type Joint, motorOf, rangeOf } from '../numbers.js'
import { mostSpringTorque } from '../parallel-torque.js'
import { beltSetting } from '../plans/belt-setting.js'
import { windupTorque } from '../plans/drive-torque.js'
import { SECOND_STAGE } from '../second-stage.js'
import { counterweightOf } from './measured-joints.js'
import type { MeasurementId } from './measurements.js'
import { slipTorqueOf } from './model-slip.js'

/** What a column may hold, SI. */
export interface ColumnRange {
  readonly low: number
  readonly high: number
  /** Whether one row outside makes the log as a whole doubtful: a time that goes on too long. */
  readonly whole?: boolean
  /** Whether it counts from the first row. */
  readonly fromFirst?: boolean
  readonly why?: string
}

const CELSIUS = 273.15
const TURN = 2 * Math.PI
/** A joint on the stand may turn this much beyond its limits. */
const BEYOND = Math.PI / 9
const most = (torque: number) => 5 * torque
/** Largest torque of a counterweight. */
const weightTorque = (x: LegModel['x'], joint: Joint) => {
  const { mass, beyond } = counterweightOf(x, joint) ?? { mass: 0, beyond: 0 }
  return mass * STANDARD_GRAVITY * beyond
}
const YEAR = 31_557_600

/** What the columns of a log may hold on this leg: generous, so that only another unit, column or thing lies outside. */
export function rangesOf(leg: LegModel, id: MeasurementId, joint: DrivenJoint): readonly ColumnRange[] {
  const { x, drives } = leg
  const { supply, robot } = x
  const turned = ((joint as string) === SECOND_STAGE ? 'knee' : joint) as DrivenJoint
  const [motor, controller] = [motorOf(x, turned), controllerOf(x, turned)]
  const pretension = hasCord(x, joint) ? driveOf(x, joint, 'cord').pretension : 0
  const temperature = { low: CELSIUS - 40, high: CELSIUS + 250 }
  switch (id) {
    case 'cordFriction':
      return [
        { low: 0.02, high: 500 },
        { low: 0.02, high: 2000 },
        { low: 0.05 * TURN, high: 8 * TURN, why: 'a test lays at most some turns' },
      ]
    case 'windup': {
      const limit = hasCord(x, joint) ? 4 * pretension * drives[joint as Joint].drumRadius : 2 * windupTorque(leg, joint)
      return [
        { low: -limit, high: limit, why: 'twice the torque that loosens the slack span' },
        { low: -0.6, high: 0.6 },
      ]
    }
    case 'pretension':
      return [
        { low: 0, high: 3 * YEAR, whole: true },
        { low: 0.1 * pretension, high: 2.5 * pretension, why: 'a share of the pretension of the specification' },
      ]
    case 'pullOut': {
      const { breakingStrength } = drives[joint as Joint].cord
      return [{ low: 0.05 * breakingStrength, high: 1.3 * breakingStrength, why: 'an end is no stronger than its cord' }]
    }
    case 'freePlay':
      return [{ low: 0, high: 0.35, why: 'a joint that turns freely by more than 20 degrees is not joined' }]
    case 'efficiency': {
      const limit = 2 * windupTorque(leg, joint)
      const ampere = { low: -2 * controller.currentLimit, high: 2 * controller.currentLimit }
      return [{ low: 0, high: limit, why: 'twice what the drive bears' }, ampere, ampere]
    }
    case 'beltPitch': {
      const pitch = beltSetting(leg, joint).pitchAt(driveOf(x, joint, 'belt').pretension)
      return [
        { low: 0, high: 3 * YEAR, whole: true },
        { low: 0.25 * pitch, high: 2 * pitch, why: 'the root of a share of the pretension of the specification' },
      ]
    }
    case 'slipTorque':
      return [
        { low: -most(slipTorqueOf(leg, joint)), high: most(slipTorqueOf(leg, joint)), why: 'several times what makes it slip or jump' },
      ]
    case 'springTorque':
    case 'weightTorque': {
      const own = id === 'springTorque' ? mostSpringTorque(leg, joint as Joint) : weightTorque(x, joint as Joint)
      const { upper, lower } = x.links
      const torque = most(own) + (robot.mass * STANDARD_GRAVITY * (upper.length + lower.length)) / robot.legs
      const { lowest, highest } = rangeOf(x, joint)
      return [
        id === 'springTorque'
          ? { low: lowest - BEYOND, high: highest + BEYOND, why: 'the travel of the joint' }
          : { low: -Math.PI, high: Math.PI },
        { low: -torque, high: torque },
        { low: -torque, high: torque },
      ]
    }
    case 'heating':
      return [
        { low: 0, high: 6 * 3600, whole: true, fromFirst: true, why: 'the run takes an hour or two' },
        { low: 0, high: 2 * controller.currentLimit },
        temperature,
        temperature,
        { low: CELSIUS - 40, high: CELSIUS + 60, why: 'air on earth' },
      ]
    case 'torqueConstant': {
      const emf = backEmfConstant.si({ speedConstant: motor.speedConstant, basis: 'spunPeakLineToLine' }).typical
      const torque = 5 * torqueConstants.si({ backEmfConstant: emf }).peakPhase * controller.currentLimit
      return [
        { low: -2 * controller.currentLimit, high: 2 * controller.currentLimit },
        { low: -torque, high: torque },
      ]
    }
    case 'noLoad':
      return [
        { low: 0, high: 4 * supply.voltage },
        // A current of the idle motor that is given as nothing says nothing: then a fifth of what the controller gives bounds it.
        { low: 0, high: motor.noLoadCurrent > 0 ? 20 * motor.noLoadCurrent : 0.2 * controller.currentLimit },
      ]
    case 'footDeflection': {
      const load = 30 * standingLoad(robot.mass, robot.legs)
      return [
        { low: -load, high: load },
        { low: -0.2, high: 0.2 },
      ]
    }
  }
}
