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

/** Range of a column, SI. */
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
const OVERTRAVEL = Math.PI / 9
const most = (torque: number) => 5 * torque
/** Largest torque of a counterweight. */
const weightTorque = (x: LegModel['x'], joint: Joint) => {
  const { mass, beyond } = counterweightOf(x, joint) ?? { mass: 0, beyond: 0 }
  return mass * STANDARD_GRAVITY * beyond
}
const YEAR = 31_557_600

/** The leg and the joint that a log is of. */
interface OfLog {
  readonly leg: LegModel
  readonly joint: DrivenJoint
  readonly id: MeasurementId
}
type Ranges = (of: OfLog) => readonly ColumnRange[]

const within = (limit: number): ColumnRange => ({ low: -limit, high: limit })
const upTo = (limit: number): ColumnRange => ({ low: 0, high: limit })
/** Times of a decay. */
const DECAY: ColumnRange = { low: 0, high: 3 * YEAR, whole: true }
const TEMPERATURE: ColumnRange = { low: CELSIUS - 40, high: CELSIUS + 250 }
/** The joint whose motor is in a log: of the stage along the upper link that of the knee. */
const turned = (joint: DrivenJoint) => ((joint as string) === SECOND_STAGE ? 'knee' : joint) as DrivenJoint
const mostCurrent = ({ leg, joint }: OfLog) => 2 * controllerOf(leg.x, turned(joint)).currentLimit
const pretensionOf = ({ x }: LegModel, joint: DrivenJoint) => (hasCord(x, joint) ? driveOf(x, joint, 'cord').pretension : 0)

const springOrWeight: Ranges = ({ leg, joint: driven, id }) => {
  const { x } = leg
  const joint = driven as Joint
  const own = id === 'springTorque' ? mostSpringTorque(leg, joint) : weightTorque(x, joint)
  const { upper, lower } = x.links
  const torque = within(most(own) + (x.robot.mass * STANDARD_GRAVITY * (upper.length + lower.length)) / x.robot.legs)
  const { lowest, highest } = rangeOf(x, driven)
  const angle =
    id === 'springTorque' ? { low: lowest - OVERTRAVEL, high: highest + OVERTRAVEL, why: 'the travel of the joint' } : within(Math.PI)
  return [angle, torque, torque]
}

const RANGES: { readonly [K in MeasurementId]: Ranges } = {
  cordFriction: () => [
    { low: 0.02, high: 500 },
    { low: 0.02, high: 2000 },
    { low: 0.05 * TURN, high: 8 * TURN, why: 'a test lays at most some turns' },
  ],
  windup: ({ leg, joint }) => {
    const limit = hasCord(leg.x, joint)
      ? 4 * pretensionOf(leg, joint) * leg.drives[joint as Joint].drumRadius
      : 2 * windupTorque(leg, joint)
    return [{ ...within(limit), why: 'twice the torque that loosens the slack span' }, within(0.6)]
  },
  pretension: ({ leg, joint }) => {
    const pretension = pretensionOf(leg, joint)
    return [DECAY, { low: 0.1 * pretension, high: 2.5 * pretension, why: 'a share of the pretension of the specification' }]
  },
  pullOut: ({ leg, joint }) => {
    const { breakingStrength } = leg.drives[joint as Joint].cord
    return [{ low: 0.05 * breakingStrength, high: 1.3 * breakingStrength, why: 'an end is no stronger than its cord' }]
  },
  freePlay: () => [{ ...upTo(0.35), why: 'a joint that turns freely by more than 20 degrees is not joined' }],
  efficiency: (of) => [
    { ...upTo(2 * windupTorque(of.leg, of.joint)), why: 'twice what the drive bears' },
    within(mostCurrent(of)),
    within(mostCurrent(of)),
  ],
  beltPitch: ({ leg, joint }) => {
    const pitch = beltSetting(leg, joint).pitchAt(driveOf(leg.x, joint, 'belt').pretension)
    return [DECAY, { low: 0.25 * pitch, high: 2 * pitch, why: 'the root of a share of the pretension of the specification' }]
  },
  slipTorque: ({ leg, joint }) => [{ ...within(most(slipTorqueOf(leg, joint))), why: 'several times what makes it slip or jump' }],
  springTorque: springOrWeight,
  weightTorque: springOrWeight,
  heating: (of) => [
    { low: 0, high: 6 * 3600, whole: true, fromFirst: true, why: 'the run takes an hour or two' },
    upTo(mostCurrent(of)),
    TEMPERATURE,
    TEMPERATURE,
    { low: CELSIUS - 40, high: CELSIUS + 60, why: 'air on earth' },
  ],
  torqueConstant: (of) => {
    const { speedConstant } = motorOf(of.leg.x, turned(of.joint))
    const emf = backEmfConstant.si({ speedConstant, basis: 'spunPeakLineToLine' }).typical
    const { peakPhase } = torqueConstants.si({ backEmfConstant: emf })
    return [within(mostCurrent(of)), within((5 / 2) * peakPhase * mostCurrent(of))]
  },
  noLoad: (of) => {
    const { noLoadCurrent } = motorOf(of.leg.x, turned(of.joint))
    // A current of the idle motor that is given as nothing says nothing: then a fifth of what the controller gives bounds it.
    return [upTo(4 * of.leg.x.supply.voltage), upTo(noLoadCurrent > 0 ? 20 * noLoadCurrent : 0.1 * mostCurrent(of))]
  },
  footDeflection: ({ leg }) => [within(30 * standingLoad(leg.x.robot.mass, leg.x.robot.legs)), within(0.2)],
}

/** What the columns of a log may hold on this leg: generous, so that only another unit, column or thing lies outside. */
export const rangesOf = (leg: LegModel, id: MeasurementId, joint: DrivenJoint): readonly ColumnRange[] => RANGES[id]({ leg, joint, id })
