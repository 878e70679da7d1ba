import { standingLoad } from '../foot-result.js'
import { STANDARD_GRAVITY } from '../gravity.js'
import type { LegModel } from '../leg-model.js'
import { airNamed, controllerOf, type DrivenJoint, driveOf, type Joint, motorOf, rangeOf } from '../numbers.js'
import { mostSpringTorque } from '../parallel-torque.js'
import { beltSetting } from '../plans/belt-setting.js'
import { ownPlay } from '../plans/drive-facts.js'
import { windupTorque } from '../plans/drive-torque.js'
import { SECOND_STAGE } from '../second-stage.js'
import { counterweightOf } from './measured-joints.js'
import type { MeasurementId } from './measurements.js'
import type { LogModel, Rows } from './model.js'
import { slipTorqueOf } from './model-slip.js'

/** Rows that a log of the plan would have on this leg as specified, and how far its readings would scatter. @internal */
export function plannedRows(
  leg: LegModel,
  id: MeasurementId,
  joint: DrivenJoint,
  model: LogModel,
): { rows: Rows; scatter: readonly number[] } {
  const start = new Map(model.parameters.map((parameter) => [parameter.id, parameter.start]))
  const at = (name: string) => start.get(name) as number
  const rows = asked(leg, id, joint)
  const predicted = model.predict(at, rows)
  return {
    rows: rows.map((row, i) => completed(id, row, predicted[i * model.channels] as number, predicted[i * model.channels + 1])),
    scatter: usualScatter(leg, id, joint),
  }
}

/** Usual scatter of single readings of a log in each channel. @internal */
export const usualScatter = (leg: LegModel, id: MeasurementId, joint: DrivenJoint): readonly number[] => SCATTER[id](leg, joint)

const MINUTE = 60
const DAY = 86_400

/** The columns that are set, those that are read left at something harmless. */
function asked(leg: LegModel, id: MeasurementId, joint: DrivenJoint): Rows {
  const { x } = leg
  const turns = [0.5, 0.5, 0.5, 1, 1, 1, 1.5, 1.5, 1.5]
  switch (id) {
    case 'cordFriction':
      return turns.map((turn) => [5, 5 * Math.exp(leg.drives[joint as Joint].friction * 2 * Math.PI * turn), 2 * Math.PI * turn])
    case 'windup': {
      const max = windupTorque(leg, joint)
      return [0, 1, 2, 3, 4, 5, 6, 7, 8, 7, 6, 5, 4, 3, 2, 1, 0].map((step) => [(max * step) / 8, 0])
    }
    case 'pretension':
      return [0.042, 0.17, 1, 3, 7, 14, 30].map((days) => [days * DAY, driveOf(x, joint, 'cord').pretension])
    case 'pullOut':
      return [1, 2, 3, 4, 5].map(() => [leg.drives[joint as Joint].cord.breakingStrength])
    case 'freePlay':
      return [1, 2, 3, 4, 5].map(() => [ownPlay(leg, joint)])
    case 'efficiency':
      return [0.2, 0.4, 0.6, 0.8, 1].map((share) => [share * windupTorque(leg, joint), 0, 0])
    case 'beltPitch':
      return [0.042, 0.17, 1, 3, 7, 14, 30].map((days) => [days * DAY, 0])
    case 'slipTorque':
      return [1, 2, 3, 4, 5].map(() => [slipTorqueOf(leg, joint)])
    case 'springTorque': {
      const { lowest, highest } = rangeOf(x, joint)
      return [0, 1, 2, 3, 4, 5, 6, 7, 8].map((step) => [lowest + ((highest - lowest) * step) / 8, 0, 0])
    }
    case 'weightTorque':
      return [-80, -60, -40, 40, 60, 80].map((degrees) => [(degrees * Math.PI) / 180, 0, 0])
    case 'torqueConstant':
      return [0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8].map((share) => [share * controllerOf(x, joint).currentLimit, 0])
    case 'noLoad':
      return [0.5, 0.75, 1, 1.25, 1.5].map((share) => [share * motorOf(x, joint).noLoadVoltage, motorOf(x, joint).noLoadCurrent])
    case 'heating': {
      const ampere = 0.25 * controllerOf(x, joint).currentLimit
      const air = airNamed(x, 'normal').temperature
      return Array.from({ length: 31 }, (_, i) => [2 * MINUTE * i, ampere, air + 0.5 * i, air, air])
    }
    case 'footDeflection':
      return [0, 0.25, 0.5, 0.75, 1].map((share) => [share * standingLoad(x.robot.mass, x.robot.legs), 0])
  }
}

/** A planned row with the readings that the model predicts. */
function completed(id: MeasurementId, row: readonly number[], first: number, second: number | undefined): readonly number[] {
  switch (id) {
    case 'windup':
    case 'torqueConstant':
    case 'noLoad':
    case 'pretension':
    case 'beltPitch':
      return [row[0]!, first]
    case 'springTorque':
    case 'weightTorque':
      return [row[0]!, first, 0]
    case 'efficiency':
      return [row[0]!, first, second!]
    case 'heating':
      return [row[0]!, row[1]!, second! + first, second!, row[4]!]
    default:
      return row
  }
}

/** Usual scatter of single readings in each channel. */
const SCATTER: { readonly [M in MeasurementId]: (leg: LegModel, joint: DrivenJoint) => readonly number[] } = {
  cordFriction: () => [0.008],
  windup: () => [0.0003],
  pretension: ({ x }, joint) => [0.01 * driveOf(x, joint, 'cord').pretension],
  pullOut: () => [0.04],
  freePlay: (leg, joint) => [0.05 * ownPlay(leg, joint) + 1e-4],
  efficiency: ({ x }, joint) => {
    const { currentLimit } = controllerOf(x, ((joint as string) === SECOND_STAGE ? 'knee' : joint) as DrivenJoint)
    return [0.005 * currentLimit, 0.005 * currentLimit]
  },
  beltPitch: (leg, joint) => [0.01 * beltSetting(leg, joint).pitchAt(driveOf(leg.x, joint, 'belt').pretension)],
  slipTorque: (leg, joint) => [0.05 * slipTorqueOf(leg, joint)],
  springTorque: (leg, joint) => [0.01 * mostSpringTorque(leg, joint as Joint) + 1e-3],
  weightTorque: ({ x }, joint) => {
    const { mass, beyond } = counterweightOf(x, joint as Joint) ?? { mass: 0, beyond: 0 }
    return [0.02 * mass * STANDARD_GRAVITY * beyond + 1e-3]
  },
  torqueConstant: ({ x }, joint) => [(0.01 * controllerOf(x, joint).currentLimit) / motorOf(x, joint).speedConstant],
  noLoad: ({ x }, joint) => [0.03 * motorOf(x, joint).noLoadCurrent],
  heating: () => [0.3, 0.3],
  footDeflection: () => [1e-5],
}
