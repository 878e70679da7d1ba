import { tensionRatio } from '../../capstan/index.js'
import { Quantity } from '../../units/index.js'
import type { Leg } from '../document/describe.js'
import { standingLoad, uprightCompliance } from '../foot-result.js'
import { drivesOf, measuredJoints } from '../learning/measured-joints.js'
import { type LegModel, legModel } from '../leg-model.js'
import type { LegNumbers } from '../leg-numbers.js'
import { type DrivenJoint, driveOf, type End, hasCord, type Joint, jointWords, legNumbers } from '../numbers.js'
import { retentionIn } from '../parts/transmission/cord/fields.js'
import { cautionsOf } from '../report/cautions.js'
import { drivePath, SECOND_STAGE } from '../second-stage.js'
import { stageUnder } from '../what-if.js'
import { drumTorque, shareOfTension } from '../workshop-lines.js'
import { angle, benchDrive, force, length, ratio } from './bench.js'
import { couponKit } from './coupon-kit.js'
import { withNumber } from './information.js'
import { phrase } from './sheet-units.js'
import { displayed } from './show.js'
import { driveMeasurements } from './stand-drive.js'
import { csvOf, effortOf, measurement, type StandMeasurement, takenOff } from './stand-measurement.js'
import { heating, noLoad, torqueConstant } from './stand-motor.js'
import { springTorque, weightTorque } from './stand-parallel.js'
import type { StandPlan } from './stand-plan.js'
import { standPage } from './stand-text.js'
import { shareLeft } from './tensioning.js'

/** Ranges of fields that the specification gives as one number. */
const RIGIDITY_RANGE = [0.75, 1.25] as const
const WEEK = 604_800
/** Wrap on the pinion for the friction test, rad: half a turn. */
const TEST_WRAP = Math.PI

/**
 * The plan for the test stand, for every kind of drive: each measurement with what the model predicts and its band over the model's ranges, the header of its log, and
 * the field that `learn` corrects from it. In order of information for an hour of work: how far the reserves near their limit move while the field
 * runs through its range, over the hands-on time.
 */
export function standPlan(leg: Leg): StandPlan {
  const x = legNumbers(leg)
  const at = (end: End) => legModel(x, end)
  const ends = [at('pessimistic'), at('typical'), at('optimistic')] as const
  const measurements = [
    ...drivesOf(x)
      .filter((joint) => hasCord(x, joint))
      .flatMap((joint) => [friction(leg, x, joint), windup(leg, x, joint), pretension(leg, x, joint), pullOut(leg, x, joint)]),
    ...drivesOf(x).flatMap((joint) => driveMeasurements(leg, x, joint)),
    ...measuredJoints(x, 'springTorque').map((joint) => springTorque(leg, x, joint as Joint)),
    ...measuredJoints(x, 'weightTorque').map((joint) => weightTorque(leg, x, joint as Joint)),
    heating(leg, x),
    torqueConstant(leg, x),
    noLoad(leg, x),
    foot(leg, ends),
  ].sort((a, b) => b.informationPerHour - a.informationPerHour || (a.log < b.log ? -1 : 1))
  return displayed({ leg, measurements, coupons: couponKit(leg, ends[1]), cautions: cautionsOf(x) }, standPage)
}

function friction(leg: Leg, x: LegNumbers, joint: DrivenJoint): StandMeasurement {
  const { friction: band } = driveOf(x, joint, 'cord')
  const path = `${drivePath(joint)}.friction`
  return measurement(
    leg,
    x,
    {
      id: 'cordFriction',
      joint,
      what: `friction of the cord on ${(joint as string) === SECOND_STAGE ? 'its drum on the hip axis' : `the pinion of the ${jointWords(joint)}`}`,
      how: 'Lay the cord over the pinion, held still. Hang a known weight on the slack end, pull the other with a scale until the cord creeps at a constant speed, then read both. Take at least three readings each at half a turn, one turn and one and a half turns, once dry and once wet.',
      caution: 'Weights fall: work low over a box, feet away.',
      predictedIs: 'taut over slack tension at half a turn',
      corrects: path,
    },
    (n, which) => withNumber(n, path, band[which]),
    ({ drives }) => ratio(tensionRatio.si({ friction: drives[joint].friction, wrapAngle: TEST_WRAP })),
  )
}

function windup(leg: Leg, x: LegNumbers, joint: DrivenJoint): StandMeasurement {
  const name = driveOf(x, joint, 'cord').cord
  const { axialRigidity } = x.cords[name] as LegNumbers['cords'][string]
  const torque = drumTorque.si({ pull: driveOf(x, joint, 'cord').pretension, radius: benchDrive(legModel(x), joint).drumRadius })
  const turned = joint === 'knee' && x.joints.knee.through !== undefined ? 'drum' : 'joint'
  return measurement(
    leg,
    x,
    {
      id: 'windup',
      joint,
      what: `windup loop of ${(joint as string) === SECOND_STAGE ? 'the cord along the upper link' : `the ${jointWords(joint)} drive`}`,
      how: phrase`${takenOff(x, joint)}Lock the motor. Load the ${turned} from zero up to ${new Quantity(torque, 'torque')} (half of what loosens the slack span) and back in at least eight equal steps, then repeat with the opposite sign. Read angle and torque at each step, in order.`,
      caution: 'The cord is at its highest tension: guard the cord, and stand to its side, never in line with it.',
      predictedIs: `${turned} angle at that torque, motor locked`,
      corrects: `cords.${name}.axialRigidity`,
    },
    (n, which) => withNumber(n, `cords.${name}.axialRigidity`, axialRigidity * RIGIDITY_RANGE[which === 'low' ? 0 : 1]),
    (prepared) =>
      angle(stageUnder(prepared, { joint, torque, stroke: 0, footForce: 0, air: x.environment.assemblyTemperature, age: 'new' }).windup),
  )
}

function pretension(leg: Leg, x: LegNumbers, joint: DrivenJoint): StandMeasurement {
  const name = driveOf(x, joint, 'cord').cord
  const { pretensionLeft } = x.cords[name] as LegNumbers['cords'][string]
  return measurement(
    leg,
    x,
    {
      id: 'pretension',
      joint,
      what: `decay of the pretension of the ${jointWords(joint)}`,
      how: 'Set the pretension, then read it (by a scale at the middle of a span, or by the pitch of the plucked span) after an hour, four hours, a day, three days, a week, two weeks, a month; always at the same temperature and pose. At the end move the loaded joint to and fro fifty times, and note what that changes.',
      caution: 'The cord stays tensioned for weeks: keep the guard on, with a warning label.',
      predictedIs: 'tension left after a week',
      corrects: `cords.${name}.pretensionLeft`,
    },
    (n, which) => withNumber(n, `cords.${name}.pretensionLeft`, pretensionLeft[which]),
    (prepared) => force(shareOfTension.si({ tension: driveOf(x, joint, 'cord').pretension, share: shareLeft(prepared, joint, WEEK) })),
  )
}

function pullOut(leg: Leg, x: LegNumbers, joint: DrivenJoint): StandMeasurement {
  const band = retentionIn(x, joint)
  const path = `${drivePath(joint)}.endRetention`
  const { breakingStrength } = legModel(x).drives[joint].cord
  return measurement(
    leg,
    x,
    {
      id: 'pullOut',
      joint,
      what: `strength of the cord ends of the ${jointWords(joint)} (${driveOf(x, joint, 'cord').ends})`,
      how: 'Make five ends as you will make them for the leg, cured and bedded in, and pull each until it slips out or breaks; log the highest force of each, and keep the pieces.',
      caution: 'A breaking cord whips and throws its fitting: closed guard, eye protection, nobody in line.',
      predictedIs: 'breaking force',
      corrects: path,
    },
    (n, which) => withNumber(n, path, band[which]),
    (prepared) => force(shareOfTension.si({ tension: breakingStrength, share: retentionIn(prepared.x, joint).typical })),
  )
}

function foot(leg: Leg, ends: readonly [LegModel, LegModel, LegModel]): StandMeasurement {
  const { mass, legs } = ends[1].x.robot
  const load = standingLoad(mass, legs)
  const [soft, middle, stiff] = ends.map((prepared) => load * uprightCompliance(prepared)) as [number, number, number]
  return {
    id: 'footDeflection',
    joint: undefined,
    log: 'footDeflection',
    what: 'deflection of the foot under load, drives on, leg standing',
    how: phrase`Hold the standing pose${ends[1].x.joints.knee.through === undefined ? '' : ` with both motors: the knee follows the hip through its ${ends[1].x.joints.knee.through.kind}, and the deflection of one drive moves both joints`}, push the foot up in steps to the load of standing (${force(load)}) and back; read the foot with a dial gauge from the body. The reading includes drives, links and play together.`,
    caution: 'Powered leg: hands off the links, one finger on the switch.',
    predictedIs: 'vertical deflection under the standing load, without the toes',
    predicted: length(middle),
    band: [length(Math.min(soft, middle, stiff)), length(Math.max(soft, middle, stiff))],
    corrects: undefined,
    information: 0,
    moves: undefined,
    ...effortOf('footDeflection', 0),
    csv: csvOf(leg, 'footDeflection', 'footDeflection'),
  }
}
