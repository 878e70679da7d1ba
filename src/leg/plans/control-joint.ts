import { encoderStep } from '../../kinematics/index.js'
import { hotResistance, noLoadLoss, torqueConstants } from '../../thermal/index.js'
import { Quantity } from '../../units/index.js'
import { harderWalk } from '../harder-walk.js'
import { type DriveKind, type DrivenJoint, motorOf, rangeOf } from '../numbers.js'
import { jointState } from '../what-if.js'
import { currentForTorque, jointTorqueConstant, motorAngle, torqueAtDrum, torqueOfCurrent } from '../workshop-lines.js'
import { angle, count, drumRange, ratio, torque } from './bench.js'
import { type SignTest, signTest, type TorqueCurrent, torqueTable } from './control-commissioning.js'
import { type CurrentLimitInputs, currentLimitsOf } from './control-currents.js'
import { type Gains, gainsOf, hangingTorque } from './control-gains.js'
import { type HomingCheck, homingCheck } from './control-homing.js'
import type { CurrentLimit } from './control-limits.js'
import { driveFacts } from './drive-facts.js'
import { phrase } from './sheet-units.js'

/** The numbers of one driven joint. */
export interface JointControl {
  /** Joint of the drive. */
  readonly joint: DrivenJoint
  /** How the joint is driven. */
  readonly drive: DriveKind
  /** Motor turns per joint turn, without sign. */
  readonly ratio: Quantity<'ratio'>
  /** +1 where motor and joint turn alike, −1 where they turn against each other, seen from the robot's left; a sideways hip from its front. */
  readonly sign: 1 | -1
  /**
   * Joint limits, and the motor's turns there from the leg straight down, with sign, lower joint angle first. The motor of a knee that a rod drives turns
   * with the hip as well: its limits are those of both joints together (`ControlSheet.throughHip`).
   */
  readonly jointLimits: readonly [Quantity<'angle'>, Quantity<'angle'>]
  /** Turns of the motor at the joint limits, with sign, lower joint angle first. */
  readonly motorLimits: readonly [Quantity<'angle'>, Quantity<'angle'>]
  /** Counts of the encoder for an angle of the joint. */
  readonly countsPerAngle: Quantity<'countsPerAngle'>
  /** Joint torque for one ampere, magnets cold, losses of the drive taken off. */
  readonly jointTorquePerPeakAmpere: Quantity<'torqueConstantPeakPhase'>
  /** The same for one ampere rms. */
  readonly jointTorquePerRmsAmpere: Quantity<'torqueConstantRmsPhase'>
  /** Smallest current first. */
  readonly currentLimits: readonly CurrentLimit[]
  /** Checks that fail without any torque, which no current limit helps; some only with uncertain values at their unfavourable ends, as listed. */
  readonly failsAtAnyCurrent: readonly string[]
  /** Currents that pass the cautious absolute maximum: of the sign test, the homing run, standing. Empty where all stay below it. */
  readonly beyondMaximum: readonly string[]
  /** Torque at the drum of standing still on all feet, as feed-forward while the foot bears load. */
  readonly standTorque: Quantity<'torque'>
  /** Motor torque that its drag takes whichever way it turns, and the share of transmitted torque the drive loses. */
  readonly dragTorque: Quantity<'torque'>
  /** Current that the drag takes. */
  readonly dragCurrent: Quantity<'peakPhaseCurrent'>
  /** Share of the transmitted torque that the drive loses. */
  readonly driveLoss: Quantity<'ratio'>
  /** Stiffness of the drive at the joint at walking torque, motor held; absent where nothing that gives is calculated. */
  readonly driveStiffness: Quantity<'torsionalStiffness'> | undefined
  /** Angle through which the joint turns freely, motor held. */
  readonly freePlay: Quantity<'angle'>
  /** Inertia of the rotor, and of what turns in the drive, at the joint. */
  readonly reflectedInertia: Quantity<'momentOfInertia'>
  /** Highest sensible gains of a position loop. */
  readonly gains: Gains
  /** The homing run. */
  readonly homing: HomingCheck
  /** The test of its sign. */
  readonly signTest: SignTest
  /** Currents for some torques. */
  readonly torqueTable: readonly TorqueCurrent[]
}

/** The numbers of the motor of one joint. */
export interface MotorControl {
  /** Pairs of poles; absent where the document does not give them. */
  readonly polePairs: Quantity<'count'> | undefined
  /** Torque per ampere at the rotor, magnets at 20 °C, and peak phase with the magnets at the hottest walk. */
  readonly torqueConstants: ReturnType<typeof constants>
  /** Torque per peak phase ampere with the magnets at the hottest walk. */
  readonly warmTorqueConstant: Quantity<'torqueConstantPeakPhase'>
  /** Half the terminal resistance, cold and at the winding's class. */
  readonly phaseResistance: Quantity<'electricalResistance'>
  /** The same with the winding as hot as walking makes it. */
  readonly hottestPhaseResistance: Quantity<'electricalResistance'>
}

const constants = (emf: number) => torqueConstants({ backEmfConstant: new Quantity(emf, 'backEmfConstant') })

/** Inputs of the numbers of a joint. @internal */
export interface JointControlInputs extends CurrentLimitInputs {
  /** Winding after a walk in hot air. */
  readonly hottest: number
  readonly loopRate: number
}

/** The motor of a joint in named conventions. @internal */
export function motorControl(joint: DrivenJoint, { leg, emf, warm, hottest: temperature }: JointControlInputs): MotorControl {
  const { polePairs, terminalResistance } = motorOf(leg.x, joint)
  const resistance = terminalResistance / 2
  const hot = hotResistance.si({ resistance, measuredAt: 293.15, temperature, conductor: 'copper' })
  return {
    polePairs: polePairs === undefined ? undefined : count(polePairs),
    torqueConstants: constants(emf),
    warmTorqueConstant: constants(warm).peakPhase,
    phaseResistance: new Quantity(resistance, 'electricalResistance'),
    hottestPhaseResistance: new Quantity(hot, 'electricalResistance'),
  }
}

/** The numbers of a joint. @internal */
export function jointControl(joint: DrivenJoint, ask: JointControlInputs): JointControl {
  const { leg, emf, loopRate } = ask
  const { x } = leg
  const { kind, ratio: n, sign, efficiency, inertia, freePlay } = driveFacts(leg, joint)
  const { lowest: from, highest: to } = rangeOf(x, joint)
  const drum = drumRange(leg, joint)
  const cold = torqueConstants.si({ backEmfConstant: emf })
  const perAmpere = (motor: number) => jointTorqueConstant.si({ motor, ratio: n, efficiency })
  const atMotor = (at: number) => angle(motorAngle.si({ sign, ratio: n, drum: at }))
  const { stiffness } = harderWalk(leg, joint).transmission
  const stand = jointState(leg, 'stand', joint)
  const motor = motorOf(x, joint)
  const currents = currentLimitsOf(joint, ask)
  const never = currents.limits.at(-1) as CurrentLimit
  const max = never.jointTorque.si
  const { dragTorque } = noLoadLoss.si({
    voltage: motor.noLoadVoltage,
    current: motor.noLoadCurrent,
    terminalResistance: motor.terminalResistance,
    speed: motor.noLoadVoltage * motor.speedConstant,
  })
  const hanging = hangingTorque(leg, joint)
  const homing = homingCheck(leg, joint, {
    torquePerAmpere: perAmpere(cold.peakPhase),
    most: max,
    cautious: torqueOfCurrent.si({ current: never.cautious.si, perAmpere: perAmpere(cold.peakPhase) }),
    lifting: hanging + torqueAtDrum.si({ motor: dragTorque, ratio: n }),
    inertia,
  })
  const test = signTest(leg, joint, emf, hanging, dragTorque)
  return {
    joint,
    drive: kind,
    ratio: ratio(n),
    sign,
    jointLimits: [angle(from), angle(to)],
    motorLimits: [atMotor(drum.lowest), atMotor(drum.highest)],
    countsPerAngle: new Quantity(1 / encoderStep.si({ countsPerTurn: motor.encoderCounts, turnsPerJointTurn: n }).step, 'countsPerAngle'),
    jointTorquePerPeakAmpere: new Quantity(perAmpere(cold.peakPhase), 'torqueConstantPeakPhase'),
    jointTorquePerRmsAmpere: new Quantity(perAmpere(cold.rmsPhase), 'torqueConstantRmsPhase'),
    currentLimits: currents.limits,
    failsAtAnyCurrent: currents.regardless,
    beyondMaximum: [
      ...beyond('The sign test', test.current.si, never),
      ...beyond('The homing run', homing.current.si, never),
      ...beyond('Standing', Math.abs(test.standing.si), never),
    ],
    standTorque: torque(stand.drum.torque),
    dragTorque: torque(dragTorque),
    dragCurrent: new Quantity(currentForTorque.si({ torque: dragTorque, perAmpere: cold.peakPhase }), 'peakPhaseCurrent'),
    driveLoss: ratio(1 - efficiency),
    driveStiffness: stiffness === undefined ? undefined : new Quantity(stiffness, 'torsionalStiffness'),
    freePlay: angle(freePlay),
    reflectedInertia: new Quantity(inertia, 'momentOfInertia'),
    gains: gainsOf(leg, joint, stiffness, loopRate),
    homing,
    signTest: test,
    torqueTable: torqueTable(leg, joint, emf, ask.warm, max),
  }
}

/** A current that passes the cautious absolute maximum, as a sentence. */
const beyond = (what: string, peak: number, never: CurrentLimit): string[] =>
  peak <= never.cautious.si * (1 + 1e-9)
    ? []
    : [
        phrase`${what} takes ${new Quantity(peak, 'peakPhaseCurrent')}, but the absolute maximum to set is ${never.cautious} (${never.cautiousBy}). Change the design first, or measure what that check rests on.`,
      ]
