import { backEmfConstant } from '../../thermal/index.js'
import { type In, InputError, Quantity, quantity, show, significant } from '../../units/index.js'
import type { Leg } from '../document/describe.js'
import { JOINTS, type Joint, motorOf } from '../numbers.js'
import { knownOptions } from '../options.js'
import { CAUTIONS } from '../report/content.js'
import { caseState } from '../what-if.js'
import { type Assumed, benchLeg } from './bench.js'
import { commissioning } from './control-commissioning.js'
import { type GravityTerms, gravityTerms } from './control-gains.js'
import { type Ask, type JointControl, jointControl, type MotorControl, motorControl } from './control-joint.js'
import { MAGNET, type MagnetError, magnetErrors } from './control-magnet.js'
import { type SupplyLimits, supplyLimits } from './control-supply.js'
import { controlPage } from './control-text.js'
import { type ThroughHip, throughHip } from './control-through.js'
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

/** Numbers to type into a motor controller, each in a named convention. Plain data; `controlPage` renders it. */
export interface ControlSheet {
  /** The leg that the sheet is for. */
  readonly leg: Leg
  /** Conventions of all numbers on the sheet. */
  readonly conventions: readonly string[]
  /** Constants and limits of each motor's controller. */
  readonly motors: { readonly [J in Joint]: MotorControl }
  /** Torques that hold the leg's weight. */
  readonly gravity: GravityTerms
  /** Limits and gains of each joint. */
  readonly joints: { readonly [J in Joint]: JointControl }
  /** How the motors follow the joints where a rod drives the knee from the hip axis; absent otherwise. */
  readonly throughHip: ThroughHip | undefined
  /** First steps with the controllers, each with the reading to expect. */
  readonly commissioning: readonly string[]
  /** Error of the encoder by gap, offset and tilt of its magnet. */
  readonly encoder: readonly MagnetError[]
  /** Limits of the supply. */
  readonly supply: SupplyLimits
  /** Values that the sheet needs and the document does not hold. */
  readonly assumed: readonly Assumed[]
  /** What can hurt someone when the leg is powered. */
  readonly cautions: readonly string[]
}

const CONVENTIONS = [
  'Joint angles are right-handed about the axis that points to the robot’s left: zero with the leg straight down, a positive hip angle swings the foot backward, a positive knee angle folds the shank backward.',
  'Motor angles are seen from the same side, zero with the leg straight down. A motor that faces the other way, or a controller that counts the other way, turns every sign of that joint over.',
  'Peak phase current is the amplitude of a sinusoidal phase current: the q current of a vector controller that keeps amplitudes. Rms phase current is that over √2; a controller that keeps power shows it times √(3/2).',
  'Limits are for the magnitude of the current, either way.',
]

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
  const joints = { hip: jointControl('hip', askOf('hip')), knee: jointControl('knee', askOf('knee')) }
  const gravity = gravityTerms(bench)
  const sheet: ControlSheet = {
    leg,
    conventions: CONVENTIONS,
    motors: { hip: motorControl('hip', askOf('hip')), knee: motorControl('knee', askOf('knee')) },
    gravity,
    joints,
    throughHip: throughHip(bench, joints.knee, gravity),
    commissioning: commissioning(
      bench,
      JOINTS.map((joint) => joints[joint].signTest),
    ),
    encoder: magnetErrors(bench),
    supply: supplyLimits(bench),
    assumed: [
      { what: 'rate of the position loop', value: String(loopRate), why: options.loopRate === undefined ? 'a usual rate' : 'given' },
      {
        what: 'copper in the winding',
        value: copperText,
        why: options.copperMass === undefined ? 'assumption: a sixth of the motor; limits for seconds depend on it' : 'given',
      },
      {
        what: 'pretension set wrong by up to',
        value: `${significant(100 * setting.si, 3)} %`,
        why:
          options.settingAccuracy === undefined ? 'assumption: a plucked span or a scale; the current limits hold for both ends' : 'given',
      },
      {
        what: 'magnet of the encoder',
        value: `disc of ${new Quantity(2 * MAGNET.radius, 'length')} by ${new Quantity(MAGNET.length, 'length')}, ${MAGNET.remanence} T, no steel behind it`,
        why: 'the usual one; a steel shaft changes the field',
      },
      { what: 'links', value: 'uniform rods', why: 'gravity terms and inertia; weigh and balance yours' },
    ],
    cautions: CAUTIONS,
  }
  return displayed(sheet, controlPage)
}

const hottest = ({ heat }: ReturnType<typeof caseState>['joints'][Joint]) =>
  heat.unsettled === undefined ? Math.max(heat.winding, 293.15) : 293.15
