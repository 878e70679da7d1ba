import { frictionFromTensions } from '../../capstan/index.js'
import { backEmfConstant, torqueConstants } from '../../thermal/index.js'
import type { LegModel } from '../leg-model.js'
import { controllerOf, type DrivenJoint, driveOf, hasCord, type Joint, jointWords, motorOf } from '../numbers.js'
import { drivePath } from '../second-stage.js'
import { frictionOf } from './cord-parameters.js'
import { type Accuracy, errorOf, freeZero } from './instrument-errors.js'
import type { MeasurementId } from './measurements.js'
import type { LogModel, Parameter } from './model.js'
import { pretensionModel, windupModel } from './model-cord.js'
import { beltPitchModel, efficiencyModel, playModel, straightWindupModel } from './model-drive.js'
import { heatingModel } from './model-heating.js'
import { springModel, weightModel } from './model-parallel.js'
import { slipModel } from './model-slip.js'
import { usualScatter } from './planned.js'

type MakeModel = (leg: LegModel, log: string, joint: DrivenJoint, accuracy: Accuracy) => LogModel
const ofJoint =
  (make: (leg: LegModel, log: string, joint: Joint, accuracy: Accuracy) => LogModel): MakeModel =>
  (leg, log, joint, accuracy) =>
    make(leg, log, joint as Joint, accuracy)

/** The model of one log; absent where a log is only compared. @internal */
export function modelOf(leg: LegModel, log: string, id: MeasurementId, joint: DrivenJoint, accuracy: Accuracy): LogModel | undefined {
  const models: { readonly [M in MeasurementId]: MakeModel | undefined } = {
    cordFriction: ofJoint(frictionModel),
    windup: hasCordAt(leg, id, joint) ? ofJoint(windupModel) : straightWindupModel,
    pretension: ofJoint(pretensionModel),
    pullOut: ofJoint(pullOutModel),
    freePlay: playModel,
    efficiency: efficiencyModel,
    beltPitch: beltPitchModel,
    slipTorque: slipModel,
    springTorque: ofJoint(springModel),
    weightTorque: ofJoint(weightModel),
    torqueConstant: torqueModel,
    noLoad: noLoadModel,
    heating: heatingModel,
    footDeflection: undefined,
  }
  const model = models[id]?.(leg, log, joint, accuracy)
  if (model === undefined) return undefined
  const usual = usualScatter(leg, id, joint)
  return { ...model, usual, ...(model.rival !== undefined && { rival: { ...model.rival, usual } }) }
}
const hasCordAt = (leg: LegModel, id: MeasurementId, joint: DrivenJoint) => id === 'windup' && hasCord(leg.x, joint)

/** Two tensions at a wrap. Friction itself scatters from reading to reading, so that the model is fitted in friction, not in tension. */
function frictionModel(leg: LegModel, log: string, joint: Joint, accuracy: Accuracy): LogModel {
  const friction = frictionOf(leg, joint)
  const [gain, zero, drag, wrap] = (['force gain', 'force zero', 'pulley drag', 'wrap zero'] as const).map((name) =>
    errorOf(log, 'cordFriction', name, accuracy),
  ) as [Parameter, Parameter, Parameter, Parameter]
  const value = ([slackTension, tautTension, wrapAngle]: readonly number[]) =>
    frictionFromTensions.si({ slackTension: slackTension!, tautTension: tautTension!, wrapAngle: wrapAngle! })
  return {
    log,
    parameters: [friction, gain, zero, drag, wrap],
    learns: [friction.id],
    channels: 1,
    predict: (at, rows) => {
      const mu = at(friction.id)
      const [share, force, angle] = [at(gain.id) + at(drag.id), at(zero.id), at(wrap.id)]
      return rows.map(([, taut, turned]) => mu * (1 + angle / turned!) + (share + force / taut!) / turned!)
    },
    measured: (row) => [value(row)],
    single: value,
  }
}

/** Ends pulled until they fail, as a share of the strength of the cord. */
function pullOutModel({ x, drives }: LegModel, log: string, joint: Joint, accuracy: Accuracy): LogModel {
  const { breakingStrength } = drives[joint].cord
  const gain = errorOf(log, 'pullOut', 'force gain', accuracy)
  const path = `${drivePath(joint)}.endRetention`
  const retention: Parameter = {
    id: path,
    what: `the strength that the ends of the ${jointWords(joint)} keep`,
    field: true,
    start: driveOf(x, joint, 'cord').endRetention?.typical ?? 0.7,
    low: 1e-3,
    high: 3,
    most: 1,
    scale: 'log',
    deviation: 0.2,
    cure: `log pullOut ${joint}`,
  }
  return {
    log,
    parameters: [retention, gain],
    learns: [path],
    channels: 1,
    predict: (at, rows) => rows.map(() => at(path) * (1 + at(gain.id))),
    measured: ([force]) => [force! / breakingStrength],
    single: ([force]) => force! / breakingStrength,
  }
}

/** Torque of the held motor over its current: a straight line whose zero is the friction of its bearings. */
function torqueModel({ x }: LegModel, log: string, joint: DrivenJoint, accuracy: Accuracy): LogModel {
  const { speedConstant } = motorOf(x, joint)
  const path = `motors.${x.joints[joint]?.motor}.speedConstant`
  const [current, torque] = (['current gain', 'torque gain'] as const).map((name) => errorOf(log, 'torqueConstant', name, accuracy)) as [
    Parameter,
    Parameter,
  ]
  const field: Parameter = {
    id: path,
    what: 'the speed constant of the motor',
    field: true,
    start: speedConstant,
    low: speedConstant / 50,
    high: 50 * speedConstant,
    scale: 'log',
    deviation: 0.05,
    cure: 'log torqueConstant',
  }
  const zero = freeZero(log, 'zero of the torque', 10)
  // The field is put in as a spun one: torque and back-EMF are one constant.
  const perAmpere = (constant: number) =>
    torqueConstants.si({
      backEmfConstant: backEmfConstant.si({ speedConstant: constant, basis: 'spunPeakLineToLine' }).typical,
    }).peakPhase
  return {
    log,
    parameters: [field, current, torque, zero],
    learns: [path],
    channels: 1,
    predict: (at, rows) => {
      const slope = perAmpere(at(path)) * (1 + at(torque.id)) * (1 - at(current.id))
      const offset = at(zero.id)
      return rows.map(([ampere]) => slope * ampere! + offset * Math.sign(ampere!))
    },
    measured: ([, read]) => [read!],
  }
}

/** Where the search for the current of an idle motor starts whose document gives none, as a share of what its controller gives. */
const IDLE_SHARE = 0.01

/** Current of the idle motor over its voltage; the field is its value at the voltage of the specification. */
function noLoadModel({ x }: LegModel, log: string, joint: DrivenJoint, accuracy: Accuracy): LogModel {
  const { noLoadCurrent: given, noLoadVoltage } = motorOf(x, joint)
  // A motor that is given without drag tells nothing of its current: the search starts from a small one, and expects nothing.
  const noLoadCurrent = given > 0 ? given : IDLE_SHARE * controllerOf(x, joint).currentLimit
  const path = `motors.${x.joints[joint]?.motor}.noLoadCurrent`
  const [gain, voltage] = (['current gain', 'voltage gain'] as const).map((name) => errorOf(log, 'noLoad', name, accuracy)) as [
    Parameter,
    Parameter,
  ]
  const field: Parameter = {
    id: path,
    what: 'the no-load current',
    field: true,
    start: noLoadCurrent,
    low: noLoadCurrent / 100,
    high: 100 * noLoadCurrent,
    scale: 'log',
    deviation: given > 0 ? 0.4 : undefined,
    cure: 'log noLoad',
  }
  const slope = freeZero(log, 'rise of the current with voltage', 100)
  return {
    log,
    parameters: [field, gain, voltage, slope],
    learns: [path],
    channels: 1,
    predict: (at, rows) =>
      rows.map(([volt]) => at(path) * (1 + at(gain.id)) * (1 + at(slope.id) * (volt! * (1 - at(voltage.id)) - noLoadVoltage))),
    measured: ([, read]) => [read!],
  }
}
