import { spanPitch, thermalTension } from '../../capstan/index.js'
import { backEmfConstant, torqueConstants } from '../../thermal/index.js'
import type { LegModel } from '../leg-model.js'
import { type DrivenJoint, driveKindOf, motorOf } from '../numbers.js'
import { beltSetting } from '../plans/belt-setting.js'
import { frameOf } from '../plans/bench.js'
import { driveFacts } from '../plans/drive-facts.js'
import { beltShareLeft } from '../plans/tensioning.js'
import { SECOND_STAGE } from '../second-stage.js'
import { throughRatio } from '../through-ratio.js'
import { beltTensionOf, efficiencyOf, playOf, speedConstantOf, stiffnessOf } from './drive-parameters.js'
import { type Accuracy, errorOf, freeZero } from './instrument-errors.js'
import type { MeasurementId } from './measurements.js'
import type { LogModel, Parameter } from './model.js'
import { decayModel } from './model-cord.js'

const errors = (log: string, id: MeasurementId, names: readonly string[], accuracy: Accuracy): Parameter[] =>
  names.map((name) => errorOf(log, id, name, accuracy))

/** Play of the joint, read as an angle from stop to stop. @internal */
export function playModel(leg: LegModel, log: string, joint: DrivenJoint, accuracy: Accuracy): LogModel {
  const { parameter, anglePer } = playOf(leg, joint)
  const [gain] = errors(log, 'freePlay', ['angle gain'], accuracy) as [Parameter]
  return {
    log,
    parameters: [{ ...parameter, deviation: undefined }, gain],
    learns: [parameter.id],
    channels: 1,
    predict: (at, rows) => rows.map(() => at(parameter.id) * anglePer * (1 + at(gain.id))),
    measured: ([play]) => [play!],
  }
}

/** Windup of a belt or a gearbox, motor held: straight on either side of its play. @internal */
export function straightWindupModel(leg: LegModel, log: string, joint: DrivenJoint, accuracy: Accuracy): LogModel {
  const span = driveKindOf(leg.x, joint) === 'belt' ? beltSetting(leg, joint).span : 0
  const { parameter, per } = stiffnessOf(leg, joint, span)
  const { parameter: play, anglePer } = playOf(leg, joint)
  const [torqueGain, angleGain, frame] = errors(log, 'windup', ['torque gain', 'angle gain', 'frame give'], accuracy) as [
    Parameter,
    Parameter,
    Parameter,
  ]
  const zero = freeZero(log, 'zero of the angle', 2)
  return {
    log,
    parameters: [parameter, play, torqueGain, angleGain, frame, zero],
    learns: [parameter.id],
    channels: 1,
    closest: 0.01,
    predict: (at, rows) => {
      const perTorque = (1 + at(frame.id)) / (at(parameter.id) * per)
      const half = (at(play.id) * anglePer) / 2
      return rows.map(([torque]) => {
        const load = torque! * (1 - at(torqueGain.id))
        return (load * perTorque + half * Math.sign(load)) * (1 + at(angleGain.id)) + at(zero.id)
      })
    },
    measured: ([, angle]) => [angle!],
  }
}

/** What lies between a joint, or the second stage of the knee, and its motor: of that stage the losses of the first one count as well. @internal */
export function upToMotor(leg: LegModel, joint: DrivenJoint) {
  if ((joint as string) !== SECOND_STAGE) return { motor: joint, ratio: driveFacts(leg, joint).ratio, first: undefined }
  const { ratio, kind } = driveFacts(leg, 'knee')
  return {
    motor: 'knee' as const,
    ratio: ratio * Math.abs(throughRatio(leg.x) as number),
    first: kind === 'direct' || kind === 'held' ? undefined : efficiencyOf(leg, 'knee'),
  }
}

/** Currents that lift and lower a weight slowly: losses take more to lift and less to lower, drag the same of either. @internal */
export function efficiencyModel(leg: LegModel, log: string, joint: DrivenJoint, accuracy: Accuracy): LogModel {
  const { motor, ratio, first } = upToMotor(leg, joint)
  const [efficiency, constant] = [efficiencyOf(leg, joint), speedConstantOf(leg, motor)]
  const [torqueGain, currentGain] = errors(log, 'efficiency', ['torque gain', 'current gain'], accuracy) as [Parameter, Parameter]
  const drag = freeZero(log, 'current of the drag', 100)
  const { speedConstantBasis: basis } = motorOf(leg.x, motor)
  const perAmpere = (speedConstant: number) =>
    ratio * torqueConstants.si({ backEmfConstant: backEmfConstant.si({ speedConstant, basis }).typical }).peakPhase
  return {
    log,
    parameters: [efficiency, ...(first === undefined ? [] : [first]), constant, torqueGain, currentGain, drag],
    learns: [efficiency.id],
    channels: 2,
    predict: (at, rows) => {
      const [own, before, gain] = [at(efficiency.id), first === undefined ? 1 : at(first.id), 1 + at(currentGain.id)]
      const eta = own * before
      const per = perAmpere(at(constant.id))
      return rows.flatMap(([torque]) => {
        const ampere = (torque! * (1 - at(torqueGain.id))) / per
        return [(ampere / eta + at(drag.id)) * gain, (ampere * eta - at(drag.id)) * gain]
      })
    },
    measured: ([, lifting, lowering]) => [lifting!, lowering!],
  }
}

/** Pitch of a plucked span over time, as the tension that it stands for. @internal */
export function beltPitchModel(leg: LegModel, log: string, joint: DrivenJoint, accuracy: Accuracy): LogModel {
  const { pretension, share } = beltTensionOf(leg, joint)
  const [span, mass, drift] = errors(log, 'beltPitch', ['span gain', 'mass gain', 'temperature drift'], accuracy) as [
    Parameter,
    Parameter,
    Parameter,
  ]
  const { belt, span: free } = beltSetting(leg, joint)
  const { massPerLength, axialRigidity, thermalExpansion: cordExpansion } = belt
  const frameExpansion = frameOf(leg, joint).thermalExpansion()
  const perKelvin = thermalTension.si({ axialRigidity, temperatureRise: 1, frameExpansion, cordExpansion })
  return decayModel({
    log,
    start: pretension,
    share,
    others: [span, mass, drift],
    left: (time, yearShare) => beltShareLeft(leg, joint, time, yearShare),
    reading: (at, tension, part) => {
      const warm = Math.max(0, tension + at(drift.id) * perKelvin * part)
      const length = free * (1 + at(span.id))
      return spanPitch.si({ span: length, massPerLength: massPerLength * (1 + at(mass.id)), tension: warm })
    },
  })
}
