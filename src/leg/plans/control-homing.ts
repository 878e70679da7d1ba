import { encoderStep } from '../../kinematics/index.js'
import { Quantity } from '../../units/index.js'
import type { LegModel } from '../leg-model.js'
import { airNamed, type DrivenJoint, hasCord, motorOf, rangeOf } from '../numbers.js'
import { driveAt, transmissionUnder } from '../what-if.js'
import { currentForTorque, gentleSpeed, motorAngle, padSpeed } from '../workshop-lines.js'
import { angle, count, torque } from './bench.js'
import { homingSteps } from './control-homing-steps.js'
import { driveFacts } from './drive-facts.js'
import { throughGeometry } from './through-geometry.js'

/** How a drive that has slipped or worn is found: the joint is driven against both its stops with little current, and the counts between are compared. */
export interface HomingCheck {
  /** Current of the run. */
  readonly current: Quantity<'peakPhaseCurrent'>
  /** Torque of the joint that it makes. */
  readonly jointTorque: Quantity<'torque'>
  /** Fastest approach of a stop: the blow of the rotor then stays within the torque of the homing run. Of a drive without calculated stiffness the pads of the stops give, by a degree. */
  readonly speed: Quantity<'angularVelocity'>
  /** Hip angle to hold while the knee is homed; absent where the knee's motor turns with the knee alone. */
  readonly hipHeldAt: Quantity<'angle'> | undefined
  /** Motor angles to write at the lower and at the upper stop, with the homing current on: the drive is wound up by it. */
  readonly writeAtStops: readonly [Quantity<'angle'>, Quantity<'angle'>]
  /** How far inside the stops the software must keep: the windup at the absolute maximum, the play and a degree. */
  readonly inside: Quantity<'angle'>
  /**
   * Joint limits for the software; absent where the drive winds up so far that none are left between the stops. The same at the motor; absent, too, for a
   * knee that a rod drives, where they move with the hip.
   */
  readonly softLimits: readonly [Quantity<'angle'>, Quantity<'angle'>] | undefined
  /** The same at the motor; absent, too, for a knee that a rod drives, where they move with the hip. */
  readonly softMotorLimits: readonly [Quantity<'angle'>, Quantity<'angle'>] | undefined
  /** Counts of the motor's encoder from stop to stop, rigid drive. */
  readonly countsBetweenStops: Quantity<'count'>
  /** Share of windup, play at both stops and rounding in that. */
  readonly tolerance: Quantity<'count'>
  /** The smallest slip that shows, at the joint. */
  readonly smallestSlip: Quantity<'angle'>
  /** The run, step by step. */
  readonly procedure: readonly string[]
}

/** Torque of the homing run as a share of what loosens the slack span, jumps, or breaks. */
const HOMING_SHARE = 0.2
/** More than what lifts the hanging leg by this much: friction of bearings, and a start from rest. */
const LIFTING = 1.5
/** Software limits stay this far inside the stops, besides the windup: backlash of the stops and a late sample. */
const INSIDE = Math.PI / 180

/** Inputs of a homing run besides the leg, SI: torques and inertia at the joint. @internal */
export interface HomingInputs {
  /** Torque for one ampere. */
  readonly torquePerAmpere: number
  /** The absolute maximum at typical values, and with uncertain ones at their unfavourable ends. */
  readonly most: number
  readonly cautious: number
  /** Torque that lifts the hanging leg: gravity and drag. */
  readonly lifting: number
  /** Of the rotor. */
  readonly inertia: number
}

/** Torque at the joint that the drive bears without slack, slip, a jump or damage; absent where none is calculated. */
function bearsAt(leg: LegModel, joint: DrivenJoint, ask: Omit<Parameters<typeof driveAt>[1], 'joint' | 'torque'>): number | undefined {
  const still = { ...ask, joint, torque: 0 }
  if (!hasCord(leg.x, joint)) return transmissionUnder(leg, still).blowTorque
  const { slackTorque, slipTorque } = driveAt(leg, still)
  // Belt or cord from the hip axis to the knee may be the weaker stage.
  return Math.min(slackTorque, slipTorque, transmissionUnder(leg, still).blowTorque ?? slackTorque)
}

/** The homing run of one joint. @internal */
export function homingCheck(
  leg: LegModel,
  joint: DrivenJoint,
  { torquePerAmpere, most, cautious, lifting, inertia }: HomingInputs,
): HomingCheck {
  const { ratio: n, sign, freePlay } = driveFacts(leg, joint)
  const { lowest, highest } = rangeOf(leg.x, joint)
  const ask = { stroke: 0, footForce: 0, air: airNamed(leg.x, 'normal').temperature, age: 'year' } as const
  const at = (load: number) => transmissionUnder(leg, { ...ask, joint, torque: load })
  const bears = bearsAt(leg, joint, ask) ?? cautious
  // Little enough for drive and prints; a run that cannot lift the leg would find its stops nowhere, and the sheet reports what it then passes.
  const push = Math.max(LIFTING * lifting, Math.min(HOMING_SHARE * bears, cautious))
  const { windup, stiffness } = at(push)
  const { step } = encoderStep.si({ countsPerTurn: motorOf(leg.x, joint).encoderCounts, turnsPerJointTurn: n })
  const tolerance = (2 * windup + freePlay) / step + 1
  const through = joint === 'knee' ? throughGeometry(leg.x) : undefined
  // Turns of the drum for one of the joint where they are fewest, and the drum's angle at a joint angle with the hip held in its middle.
  const turns = through === undefined ? 1 : 1 / through.most((knee) => Math.abs(1 / through.ratio(knee)))
  const hip = rangeOf(leg.x, 'hip')
  const hold = (hip.lowest + hip.highest) / 2
  const drum = (x: number) => (through === undefined ? x : through.drum(hold, x))
  const outward = Math.sign(drum(highest) - drum(lowest))
  const inside = (at(most).windup + freePlay) / turns + INSIDE
  const room = highest - lowest > 2 * inside
  const beyond = windup + freePlay / 2
  const [ahead, behind] = outward < 0 ? [beyond, -beyond] : [-beyond, beyond]
  const motor = (x: number) => angle(motorAngle.si({ sign, ratio: n, drum: x }))
  return {
    current: new Quantity(currentForTorque.si({ torque: push, perAmpere: torquePerAmpere }), 'peakPhaseCurrent'),
    jointTorque: torque(push),
    speed: new Quantity(
      stiffness === undefined
        ? padSpeed.si({ torque: push, give: INSIDE, inertia })
        : gentleSpeed.si({ torque: push, stiffness: Math.max(stiffness, 1e-9), inertia }),
      'angularVelocity',
    ),
    hipHeldAt: through === undefined ? undefined : angle(hold),
    writeAtStops: [motor(drum(lowest) + ahead), motor(drum(highest) + behind)],
    inside: angle(inside),
    softLimits: room ? [angle(lowest + inside), angle(highest - inside)] : undefined,
    softMotorLimits: room && through === undefined ? [motor(lowest + inside), motor(highest - inside)] : undefined,
    countsBetweenStops: count(Math.abs(drum(highest) - drum(lowest)) / step),
    tolerance: count(tolerance),
    smallestSlip: angle((tolerance * step) / turns),
    procedure: homingSteps(leg, joint, { hold, stiff: stiffness === undefined }),
  }
}
