import { Quantity } from '../../units/index.js'
import type { Leg } from '../document/describe.js'
import { measuredJoints } from '../learning/measured-joints.js'
import { efficiencyModel } from '../learning/model-drive.js'
import { legModel } from '../leg-model.js'
import type { LegNumbers } from '../leg-numbers.js'
import { type DriveKind, type DrivenJoint, driveKindOf, driveOf, jointWords, partOf } from '../numbers.js'
import { drivePath, SECOND_STAGE } from '../second-stage.js'
import { stageUnder } from '../what-if.js'
import { shareOfTension } from '../workshop-lines.js'
import { beltSetting } from './belt-setting.js'
import { angle } from './bench.js'
import { ownPlay } from './drive-facts.js'
import { windupTorque } from './drive-torque.js'
import { withNumber } from './information.js'
import { shown } from './sheet-units.js'
import { measurement, type StandMeasurement, takenOff } from './stand-measurement.js'
import { NOTHING_WRONG, predictedAt, slip } from './stand-parallel.js'
import { beltShareLeft } from './tensioning.js'

/** Ranges of fields that the specification gives as one number. */
const PLAY = [0.5, 2] as const
const RIGIDITY = [0.6, 1.5] as const
const EFFICIENCY = [0.9, 1.04] as const
const WEEK = 604_800
const at = <T>([low, high]: readonly [T, T], which: 'low' | 'high') => (which === 'low' ? low : high)

const torqueText = (x: number) => shown(new Quantity(x, 'torque'))
const beltNameOf = (x: LegNumbers, joint: DrivenJoint) => driveOf(x, joint, 'belt').belt
const playPath = (x: LegNumbers, joint: DrivenJoint) =>
  driveKindOf(x, joint) === 'belt' ? `belts.${beltNameOf(x, joint)}.clearance` : `joints.${joint}.drive.backlash`
const numberAt = (x: LegNumbers, path: string) =>
  path.split('.').reduce<unknown>((section, step) => (section as Record<string, unknown>)[step], x) as number

/** Play of a belt, a pair of gears or a gearbox. */
export function freePlay(leg: Leg, x: LegNumbers, joint: DrivenJoint): StandMeasurement {
  const path = playPath(x, joint)
  const given = numberAt(x, path)
  return measurement(
    leg,
    x,
    {
      id: 'freePlay',
      joint,
      what: `play of the ${jointWords(joint)}, motor held`,
      how: `${takenOff(x, joint)}Lock the motor. Push the joint lightly to one side until it stops, then to the other, and read the angle between both. Five readings at places over the travel, a tooth apart at least; the largest limits what a controller can do.`,
      caution: 'Support the leg: an unlocked joint falls. Fingers out of the drive.',
      predictedIs: 'angle between both stops',
      corrects: path,
    },
    (n, which) => withNumber(n, path, given * at(PLAY, which)),
    (prepared) => angle(ownPlay(prepared, joint)),
  )
}

/** Efficiency of a drive by lifting and lowering weights. */
export function efficiency(leg: Leg, x: LegNumbers, joint: DrivenJoint): StandMeasurement {
  const bench = legModel(x)
  const path = `${drivePath(joint)}.efficiency`
  const given = numberAt(x, path)
  const load = windupTorque(bench, joint)
  return measurement(
    leg,
    x,
    {
      id: 'efficiency',
      joint,
      what: `efficiency of the drive of the ${jointWords(joint)}`,
      how: `${takenOff(x, joint)}Hang a weight on a level arm of the joint. Lift it slowly through some degrees and read the current, then lower it through the same degrees and read again. Five weights up to ${torqueText(load)} at the joint. Lifting takes its torque over the efficiency and the drag, lowering gives the torque times the efficiency less the drag: the ratio of both slopes is the square of the efficiency, whatever the motor constant.`,
      caution: 'The weight falls when the motor lets go: a box below it, feet away, one finger on the switch.',
      predictedIs: `current that lifts ${torqueText(load)}, drag not counted`,
      corrects: path,
    },
    (n, which) => withNumber(n, path, Math.min(1, given * at(EFFICIENCY, which))),
    (prepared) =>
      new Quantity(predictedAt(efficiencyModel(prepared, 'efficiency', joint, NOTHING_WRONG), [load, 0, 0]), 'peakPhaseCurrent'),
  )
}

/** Windup of a belt or a gearbox. */
export function straightWindup(leg: Leg, x: LegNumbers, joint: DrivenJoint): StandMeasurement {
  const path = driveKindOf(x, joint) === 'belt' ? `belts.${beltNameOf(x, joint)}.axialRigidity` : `joints.${joint}.drive.stiffness`
  const given = numberAt(x, path)
  const torque = windupTorque(legModel(x), joint)
  return measurement(
    leg,
    x,
    {
      id: 'windup',
      joint,
      what: `windup of the drive of the ${jointWords(joint)}`,
      how: `${takenOff(x, joint)}Lock the motor. Load the joint from zero up to ${torqueText(torque)} (half of what it bears for a moment) and back in at least eight equal steps, then repeat with the opposite sign. Read angle and torque at each step, in order.`,
      caution: 'The drive is under load: guard it, and stand to its side.',
      predictedIs: 'joint angle at that torque without its play, motor locked',
      corrects: path,
    },
    (n, which) => withNumber(n, path, given * at(RIGIDITY, which)),
    (prepared) => {
      const air = x.environment.assemblyTemperature
      return angle(stageUnder(prepared, { joint, torque, stroke: 0, footForce: 0, air, age: 'new' }).windup)
    },
  )
}

/** Tension of a belt by the pitch of its plucked span, over a month. */
export function beltPitch(leg: Leg, x: LegNumbers, joint: DrivenJoint): StandMeasurement {
  const name = beltNameOf(x, joint)
  const path = `belts.${name}.pretensionLeft`
  const { pretensionLeft } = partOf(x.belts, name, 'belt')
  return measurement(
    leg,
    x,
    {
      id: 'beltPitch',
      joint,
      what: `pitch of the plucked belt of the ${jointWords(joint)}`,
      how: 'Tension the belt and pluck a span at once, after an hour, four hours, a day, three days, a week, two weeks, a month; always at the same temperature and pose, the joint unloaded. Weigh the belt and measure the free span first: the tension is four times its mass over its length times the square of span times pitch.',
      caution: 'Power off: a belt that is plucked under power takes the finger along.',
      predictedIs: 'pitch after a week',
      corrects: path,
    },
    (n, which) => withNumber(n, path, at([pretensionLeft.low, pretensionLeft.high], which)),
    (prepared) => {
      const { pitchAt, pretension } = beltSetting(prepared, joint)
      return new Quantity(pitchAt(shareOfTension.si({ tension: pretension, share: beltShareLeft(prepared, joint, WEEK) })), 'frequency')
    },
  )
}

type MakeMeasurement = (leg: Leg, x: LegNumbers, joint: DrivenJoint) => StandMeasurement

/** Measurements of each kind of drive that is no cord. @internal */
export function driveMeasurements(leg: Leg, x: LegNumbers, joint: DrivenJoint): StandMeasurement[] {
  const stage = (joint as string) === SECOND_STAGE
  const slips = measuredJoints(x, 'slipTorque').includes(joint)
  const makers: { readonly [K in DriveKind]?: readonly MakeMeasurement[] } = {
    belt: [freePlay, efficiency, straightWindup, beltPitch, slip],
    cord: stage ? (slips ? [efficiency, slip] : [efficiency]) : slips ? [slip] : [],
    gear: [freePlay, efficiency],
    gearbox:
      driveKindOf(x, joint) === 'gearbox' && driveOf(x, joint, 'gearbox').stiffness !== undefined
        ? [freePlay, efficiency, straightWindup]
        : [freePlay, efficiency],
  }
  return (makers[driveKindOf(x, joint)] ?? []).map((make) => make(leg, x, joint))
}
