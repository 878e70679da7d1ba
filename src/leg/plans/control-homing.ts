import { encoderStep } from '../../kinematics/index.js'
import { Quantity } from '../../units/index.js'
import { airNamed, driveOf, type Joint, motorOf, type Prepared, rangeOf } from '../numbers.js'
import { line } from '../run/index.js'
import { driveAt } from '../what-if.js'
import { angle, count, torque } from './bench.js'
import { rodGeometry } from './rod-geometry.js'

/** How a slipped cord is found: the joint is driven against both its stops with little current, and the counts between are compared. */
export interface HomingCheck {
  readonly current: Quantity<'peakPhaseCurrent'>
  readonly jointTorque: Quantity<'torque'>
  /** Fastest approach of a stop: the blow of the rotor then stays within the torque of the homing run. */
  readonly speed: Quantity<'angularVelocity'>
  /** Hip angle to hold while the knee is homed; absent where the knee's motor turns with the knee alone. */
  readonly hipHeldAt: Quantity<'angle'> | undefined
  /** Motor angles to write at the lower and at the upper stop, with the homing current on: the drive is wound up by it. */
  readonly writeAtStops: readonly [Quantity<'angle'>, Quantity<'angle'>]
  /** How far inside the stops the software must keep: the windup at the absolute maximum and a degree. */
  readonly inside: Quantity<'angle'>
  /**
   * Joint limits for the software; absent where the drive winds up so far that none are left between the stops. The same at the motor; absent, too, for a
   * knee that a rod drives, where they move with the hip.
   */
  readonly softLimits: readonly [Quantity<'angle'>, Quantity<'angle'>] | undefined
  readonly softMotorLimits: readonly [Quantity<'angle'>, Quantity<'angle'>] | undefined
  /** Counts of the motor's encoder from stop to stop, rigid drive. */
  readonly countsBetweenStops: Quantity<'count'>
  /** What windup at both stops and rounding may add to that. */
  readonly tolerance: Quantity<'count'>
  /** The smallest slip that shows, at the joint. */
  readonly smallestSlip: Quantity<'angle'>
  readonly procedure: readonly string[]
}

/** Torque of the homing run as a share of what loosens the slack span. */
const HOMING_SHARE = 0.2
/** More than what lifts the hanging leg by this much: friction of bearings, and a start from rest. */
const LIFTING = 1.5
/** Software limits stay this far inside the stops, besides the windup: backlash of the stops and a late sample. */
const INSIDE = Math.PI / 180

/** Speed at which a rotor that stops on its cord makes a given torque: speed times the root of stiffness and inertia. */
const gentleSpeed = line(
  'speed at which a stopped rotor makes a torque',
  { torque: 'torque', stiffness: 'torsionalStiffness', inertia: 'momentOfInertia' },
  'angularVelocity',
  'torque / sqrt(stiffness · inertia)',
  (x) => x.torque / Math.sqrt(x.stiffness * x.inertia),
)

/** What a homing run depends on besides the leg, SI: torques and inertia at the joint. @internal */
export interface HomingAsk {
  /** Torque for one ampere. */
  readonly torquePerAmpere: number
  /** The absolute maximum at typical values, and with uncertain ones at their unfavourable ends. */
  readonly most: number
  readonly cautious: number
  /** What lifts the hanging leg: gravity and drag. */
  readonly lifting: number
  /** Of the rotor. */
  readonly inertia: number
}

/** The homing run of one joint. @internal */
export function homingCheck(leg: Prepared, joint: Joint, { torquePerAmpere, most, cautious, lifting, inertia }: HomingAsk): HomingCheck {
  const { ratio: n } = leg.drives[joint]
  const drive = driveOf(leg.x, joint, 'cord')
  const sign = drive.arrangement === 'crossed' ? -1 : 1
  const { temperature: air } = airNamed(leg.x, 'normal')
  const { lowest, highest } = rangeOf(leg.x, joint)
  const at = (load: number) => driveAt(leg, { joint, torque: load, stroke: 0, footForce: 0, air, age: 'year' })
  const still = at(0)
  // Little enough for cord and prints; a run that cannot lift the leg would find its stops nowhere, and the sheet reports what it then passes.
  const push = Math.max(LIFTING * lifting, Math.min(HOMING_SHARE * Math.min(still.slackTorque, still.slipTorque), cautious))
  const { windup, stiffness } = at(push)
  const { step } = encoderStep.si({ countsPerTurn: motorOf(leg.x, joint).encoderCounts, turnsPerJointTurn: n })
  const tolerance = (2 * windup) / step + 1
  const rod = joint === 'knee' ? rodGeometry(leg.x) : undefined
  // Turns of the drum for one of the joint where they are fewest, and the drum's angle at a joint angle with the hip held in its middle.
  const turns = rod === undefined ? 1 : 1 / rod.most((knee) => Math.abs(1 / rod.ratio(knee)))
  const hip = rangeOf(leg.x, 'hip')
  const hold = (hip.lowest + hip.highest) / 2
  const drum = (x: number) => (rod === undefined ? x : rod.drum(hold, x))
  const outward = Math.sign(drum(highest) - drum(lowest))
  const inside = at(most).windup / turns + INSIDE
  const room = highest - lowest > 2 * inside
  const where = drive.hold === 'clampedMidPinion' ? 'at its anchors or its clamp' : 'on the pinion or at its anchors'
  const motor = (x: number) => angle(sign * n * x)
  return {
    current: new Quantity(push / torquePerAmpere, 'peakPhaseCurrent'),
    jointTorque: torque(push),
    speed: new Quantity(gentleSpeed.si({ torque: push, stiffness: Math.max(stiffness, 1e-9), inertia }), 'angularVelocity'),
    hipHeldAt: rod === undefined ? undefined : angle(hold),
    writeAtStops: [motor(drum(lowest) - outward * windup), motor(drum(highest) + outward * windup)],
    inside: angle(inside),
    softLimits: room ? [angle(lowest + inside), angle(highest - inside)] : undefined,
    softMotorLimits: room && rod === undefined ? [motor(lowest + inside), motor(highest - inside)] : undefined,
    countsBetweenStops: count(Math.abs(drum(highest) - drum(lowest)) / step),
    tolerance: count(tolerance),
    smallestSlip: angle((tolerance * step) / turns),
    procedure: [
      rodGeometry(leg.x) === undefined
        ? 'Hang the leg up, hands clear. Home the knee first, to its upper stop, so that the folded leg leaves the hip room. Then home the hip.'
        : `Hang the leg up, hands clear. Home the hip first, the motor of the knee without current: its drum sits on the hip axis and is free to follow. Hold the hip at ${angle(hold)}, then home the knee: the angles to write for it hold at that hip angle alone.`,
      'Limit current and speed to those listed. Drive to the lower stop, write its motor angle there with the current still on, and note the counts. Drive to the upper stop: its motor angle must read as listed, within the tolerance.',
      'Write the soft limits after that, and let no command pass them. The hard stops are for accidents.',
      'Do it once when the leg is new and keep the number of counts: it holds the true place of the stops.',
      `At every start the number must come out the same within the tolerance. More counts between the stops: the cord has become soft or loose. The same number, but the stops at other counts than stored (encoder absolute over the turn): the cord has slipped ${where}, by the difference.`,
      'A joint that stops short of its number is blocked: switch off, wait, and look before you reach in.',
    ],
  }
}
