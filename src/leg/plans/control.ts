import { reflectedInertia } from '../../capstan/index.js'
import { encoderStep } from '../../kinematics/index.js'
import { backEmfConstant, hotResistance, noLoadLoss, torqueConstants } from '../../thermal/index.js'
import { type In, InputError, Quantity, quantity, show } from '../../units/index.js'
import type { Leg } from '../document/describe.js'
import { airNamed, driveOf, JOINTS, type Joint, motorOf, type Prepared, rangeOf } from '../numbers.js'
import { knownOptions } from '../options.js'
import { CAUTIONS } from '../report/content.js'
import { caseState, driveAt } from '../what-if.js'
import { type Assumed, angle, benchLeg, count, ratio, torque } from './bench.js'
import { type CurrentsAsk, currentLimitsOf } from './control-currents.js'
import { type Gains, type GravityTerms, gainsOf, gravityTerms } from './control-gains.js'
import type { CurrentLimit } from './control-limits.js'
import { controlPage } from './control-text.js'
import { displayed } from './show.js'

/** What the sheet needs and the specification does not hold. */
export interface ControlOptions {
  /** Rate of the position loop. Default 1 kHz. */
  readonly loopRate?: In<'frequency'>
  /** Durations of the current limits, at most two minutes: longer ones are no pulses. Default 1, 10 and 60 s. */
  readonly durations?: readonly In<'time'>[]
  /** Mass of copper in the winding. Default a sixth of the motor's mass. */
  readonly copperMass?: In<'mass'>
  /** How far the pretension may be set wrong, either way. Default 5 %: a plucked or scaled setting. */
  readonly settingAccuracy?: In<'ratio'>
}

export const CONTROL_OPTIONS = ['loopRate', 'durations', 'copperMass', 'settingAccuracy'] as const

/** How a slipped cord is found: the joint is driven against both its stops with little current, and the counts between are compared. */
export interface HomingCheck {
  readonly current: Quantity<'peakPhaseCurrent'>
  readonly jointTorque: Quantity<'torque'>
  /** Counts of the motor's encoder from stop to stop, rigid drive. */
  readonly countsBetweenStops: Quantity<'count'>
  /** What windup at both stops and rounding may add to that. */
  readonly tolerance: Quantity<'count'>
  /** The smallest slip that shows, at the joint. */
  readonly smallestSlip: Quantity<'angle'>
  readonly procedure: readonly string[]
}

/** The numbers of one driven joint. */
export interface JointControl {
  readonly joint: Joint
  /** Motor turns per joint turn, without sign. */
  readonly ratio: Quantity<'ratio'>
  /** +1 where motor and joint turn alike, −1 where they turn against each other, both seen from the robot's left. */
  readonly sign: 1 | -1
  /** Joint limits, and the motor's turns there from the leg straight down, with sign, lower joint angle first. */
  readonly jointLimits: readonly [Quantity<'angle'>, Quantity<'angle'>]
  readonly motorLimits: readonly [Quantity<'angle'>, Quantity<'angle'>]
  readonly countsPerAngle: Quantity<'countsPerAngle'>
  /** Joint torque for one ampere, magnets cold, losses of the drive taken off. */
  readonly jointTorquePerPeakAmpere: Quantity<'torqueConstantPeakPhase'>
  readonly jointTorquePerRmsAmpere: Quantity<'torqueConstantRmsPhase'>
  /** Smallest current first. */
  readonly currentLimits: readonly CurrentLimit[]
  /** Checks that fail without any torque, which no current limit helps. */
  readonly failsAtAnyCurrent: readonly string[]
  /** Joint torque of standing still on all feet, as feed-forward while the foot bears load. */
  readonly standTorque: Quantity<'torque'>
  /** Motor torque that its drag takes whichever way it turns, and the share of transmitted torque the drive loses. */
  readonly dragTorque: Quantity<'torque'>
  readonly dragCurrent: Quantity<'peakPhaseCurrent'>
  readonly driveLoss: Quantity<'ratio'>
  /** Stiffness of the drive at the joint at walking torque, motor held. */
  readonly driveStiffness: Quantity<'torsionalStiffness'>
  readonly reflectedInertia: Quantity<'momentOfInertia'>
  readonly gains: Gains
  readonly homing: HomingCheck
}

/** The numbers of the motor of one joint. */
export interface MotorControl {
  readonly polePairs: Quantity<'count'> | undefined
  /** Torque per ampere at the rotor, magnets at 20 °C, and peak phase with the magnets at the hottest walk. */
  readonly torqueConstants: ReturnType<typeof constants>
  readonly warmTorqueConstant: Quantity<'torqueConstantPeakPhase'>
  /** Half the terminal resistance, cold and at the winding's class. */
  readonly phaseResistance: Quantity<'electricalResistance'>
  readonly hottestPhaseResistance: Quantity<'electricalResistance'>
}

/** Numbers to type into a motor controller, each in a named convention. Plain data; `controlPage` renders it. */
export interface ControlSheet {
  readonly leg: Leg
  readonly conventions: readonly string[]
  readonly motors: { readonly [J in Joint]: MotorControl }
  readonly gravity: GravityTerms
  readonly joints: { readonly [J in Joint]: JointControl }
  readonly assumed: readonly Assumed[]
  readonly cautions: readonly string[]
}

const CONVENTIONS = [
  'Joint angles are right-handed about the axis that points to the robot’s left: zero with the leg straight down, a positive hip angle swings the foot backward, a positive knee angle folds the shank backward.',
  'Motor angles are seen from the same side, zero with the leg straight down. A motor that faces the other way, or a controller that counts the other way, turns every sign of that joint over.',
  'Peak phase current is the amplitude of a sinusoidal phase current: the q current of a vector controller that keeps amplitudes. Rms phase current is that over √2; a controller that keeps power shows it times √(3/2).',
  'Limits are for the magnitude of the current, either way.',
]

/** Torque of the homing run as a share of what loosens the slack span. */
const HOMING_SHARE = 0.2
/** Copper over the mass of a motor, where nobody weighed it. */
const COPPER_SHARE = 1 / 6
/** Pulses longer than this heat the mount as well, s. */
const LONGEST_PULSE = 120

/**
 * The control sheet of a leg: ratios and signs, limits in motor turns, counts, torque per ampere, current limits with what each protects,
 * feed-forward terms, stiffness, inertia, gains with their reasoning, and a homing run that finds a slipped cord.
 *
 * Throws an `InputError` for options that cannot be read. Start low: a leg with wrong signs or gains moves hard and pinches.
 */
export function controlSheet(leg: Leg, options: ControlOptions = {}): ControlSheet {
  const bench = benchLeg(leg)
  const lightest = Math.min(...JOINTS.map((joint) => motorOf(bench.x, joint).mass))
  knownOptions('controlSheet', options, CONTROL_OPTIONS)
  const loopRate = quantity('frequency', options.loopRate ?? '1 kHz')
  const given = options.copperMass === undefined ? undefined : quantity('mass', options.copperMass)
  const copper = (joint: Joint) => given ?? new Quantity(motorOf(bench.x, joint).mass * COPPER_SHARE, 'mass')
  const durations = (options.durations ?? ['1 s', '10 s', '60 s']).map((one) => quantity('time', one as In<'time'>))
  const setting = quantity('ratio', options.settingAccuracy ?? '5 %')
  const bad = [
    ...(setting.si >= 0 && setting.si <= 0.5
      ? []
      : [{ path: 'settingAccuracy', given: show(options.settingAccuracy), accepts: 'must be from 0 to 50 %' }]),
    ...(loopRate.si > 0 ? [] : [{ path: 'loopRate', given: show(options.loopRate), accepts: 'must be above zero' }]),
    ...(given === undefined || (given.si > 0 && given.si < lightest)
      ? []
      : [{ path: 'copperMass', given: show(options.copperMass), accepts: 'must be above zero and below the mass of the motor' }]),
    ...durations.flatMap((one, i) =>
      one.si > 0 && one.si <= LONGEST_PULSE
        ? []
        : [{ path: `durations[${i}]`, given: show(options.durations?.[i]), accepts: 'must be above zero and at most 2 min' }],
    ),
  ]
  if (bad.length > 0) throw new InputError('controlSheet', bad)
  const hot = caseState(bench, 'hotAfternoon')
  const askOf = (joint: Joint): Ask => {
    const { speedConstant, speedConstantBasis: basis } = motorOf(bench.x, joint)
    return {
      leg: bench,
      emf: backEmfConstant.si({ speedConstant, basis }).typical,
      warm: hot.joints[joint].heat.backEmfConstant,
      hottest: hottest(hot.joints[joint]),
      loopRate: loopRate.si,
      copper: copper(joint).si,
      setting: setting.si,
      durations: durations.map(({ si }) => si),
    }
  }
  const copperText = [...new Set(JOINTS.map((joint) => String(copper(joint))))].join(' (hip), ')
  const sheet: ControlSheet = {
    leg,
    conventions: CONVENTIONS,
    motors: { hip: motorControl('hip', askOf('hip')), knee: motorControl('knee', askOf('knee')) },
    gravity: gravityTerms(bench),
    joints: { hip: jointControl('hip', askOf('hip')), knee: jointControl('knee', askOf('knee')) },
    assumed: [
      { what: 'rate of the position loop', value: String(loopRate), why: options.loopRate === undefined ? 'a usual rate' : 'given' },
      {
        what: 'copper in the winding',
        value: copperText,
        why: options.copperMass === undefined ? 'assumption: a sixth of the motor; limits for seconds depend on it' : 'given',
      },
      {
        what: 'pretension set wrong by up to',
        value: String(setting),
        why:
          options.settingAccuracy === undefined ? 'assumption: a plucked span or a scale; the current limits hold for both ends' : 'given',
      },
      { what: 'links', value: 'uniform rods', why: 'gravity terms and inertia; weigh and balance yours' },
    ],
    cautions: CAUTIONS,
  }
  return displayed(sheet, controlPage)
}

const hottest = ({ heat }: ReturnType<typeof caseState>['joints'][Joint]) =>
  heat.unsettled === undefined ? Math.max(heat.winding, 293.15) : 293.15

const constants = (emf: number) => torqueConstants({ backEmfConstant: new Quantity(emf, 'backEmfConstant') })

interface Ask extends CurrentsAsk {
  /** Winding after a walk in hot air. */
  readonly hottest: number
  readonly loopRate: number
}

function motorControl(joint: Joint, { leg, emf, warm, hottest: temperature }: Ask): MotorControl {
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

function jointControl(joint: Joint, ask: Ask): JointControl {
  const { leg, emf, loopRate } = ask
  const { x } = leg
  const drive = driveOf(x, joint, 'cord')
  const n = leg.drives[joint].ratio
  const sign = drive.arrangement === 'crossed' ? -1 : 1
  const { lowest: from, highest: to } = rangeOf(x, joint)
  const cold = torqueConstants.si({ backEmfConstant: emf })
  const perAmpere = n * drive.efficiency
  const walk = caseState(leg, 'walk').joints[joint]
  const stand = caseState(leg, 'stand').joints[joint]
  const motor = motorOf(x, joint)
  const currents = currentLimitsOf(joint, ask)
  const { dragTorque } = noLoadLoss.si({
    voltage: motor.noLoadVoltage,
    current: motor.noLoadCurrent,
    terminalResistance: motor.terminalResistance,
    speed: motor.noLoadVoltage * motor.speedConstant,
  })
  return {
    joint,
    ratio: ratio(n),
    sign,
    jointLimits: [angle(from), angle(to)],
    motorLimits: [angle(sign * n * from), angle(sign * n * to)],
    countsPerAngle: new Quantity(1 / encoderStep.si({ countsPerTurn: motor.encoderCounts, turnsPerJointTurn: n }).step, 'countsPerAngle'),
    jointTorquePerPeakAmpere: new Quantity(cold.peakPhase * perAmpere, 'torqueConstantPeakPhase'),
    jointTorquePerRmsAmpere: new Quantity(cold.rmsPhase * perAmpere, 'torqueConstantRmsPhase'),
    currentLimits: currents.limits,
    failsAtAnyCurrent: currents.regardless,
    standTorque: torque(stand.motion.torque),
    dragTorque: torque(dragTorque),
    dragCurrent: new Quantity(dragTorque / cold.peakPhase, 'peakPhaseCurrent'),
    driveLoss: ratio(1 - drive.efficiency),
    driveStiffness: new Quantity(walk.drive.stiffness, 'torsionalStiffness'),
    reflectedInertia: new Quantity(reflectedInertia.si({ rotorInertia: motor.rotorInertia, ratio: n }), 'momentOfInertia'),
    gains: gainsOf(leg, joint, walk.drive.stiffness, loopRate),
    homing: homingCheck(leg, joint, cold.peakPhase * perAmpere),
  }
}

function homingCheck(leg: Prepared, joint: Joint, torquePerAmpere: number): HomingCheck {
  const { ratio: n } = leg.drives[joint]
  const motor = motorOf(leg.x, joint)
  const { temperature: air } = airNamed(leg.x, 'normal')
  const { lowest, highest } = rangeOf(leg.x, joint)
  const still = driveAt(leg, { joint, torque: 0, stroke: 0, footForce: 0, air, age: 'year' })
  const push = HOMING_SHARE * Math.min(still.slackTorque, still.slipTorque)
  const { windup } = driveAt(leg, { joint, torque: push, stroke: 0, footForce: 0, air, age: 'year' })
  const { step } = encoderStep.si({ countsPerTurn: motor.encoderCounts, turnsPerJointTurn: n })
  const between = (highest - lowest) / step
  const tolerance = (2 * windup) / step + 1
  const where =
    driveOf(leg.x, joint, 'cord').hold === 'clampedMidPinion' ? 'at its anchors or its clamp' : 'on the pinion or at its anchors'
  return {
    current: new Quantity(push / torquePerAmpere, 'peakPhaseCurrent'),
    jointTorque: torque(push),
    countsBetweenStops: count(between),
    tolerance: count(tolerance),
    smallestSlip: angle(tolerance * step),
    procedure: [
      'Hang the leg up. Limit the current to the one listed and drive slowly to the lower stop, then to the upper one; note the counts between.',
      'Do it once when the leg is new and keep that number: it holds the true place of the stops.',
      `At every start the number must come out the same within the tolerance. More counts between the stops: the cord has become soft or loose. The same number, but the stops at other counts than stored (encoder absolute over the turn): the cord has slipped ${where}, by the difference.`,
      'A joint that stops short of its number is blocked: switch off, wait, and look before you reach in.',
    ],
  }
}
