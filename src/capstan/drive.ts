import { notesOf, readInputs } from '../formula/index.js'
import { type In, type Note, Quantity, refuse } from '../units/index.js'
import type { CordDriveState } from './branch.js'
import { historyOf, type LoadHistory, type TravelResult, travelOf } from './drive-histories.js'
import { type CycleLosses, LOSS_CYCLE, type LossCycle, lossesOf } from './drive-losses.js'
import { type AtFriction, atAngle, type DriveLimits, limitsOf, travelLimitsOf, type Windup, windupOf } from './drive-results.js'
import { type CordDriveSpecification, complianceOf, readDrive } from './drive-specification.js'
import { fineHistory } from './fine-history.js'
import { pulleyGeometry } from './geometry.js'
import { checkHistory } from './history-limits.js'
import { type Argument, tensionNotes } from './tension-notes.js'
import { travelPath } from './travel-path.js'
import { surveyOf, type TravelSurvey } from './travel-survey.js'

const TORQUE = { torque: 'torque', jointAngle: { kind: 'angle', default: '0 rad' } } as const
const ANGLE = { jointAngle: 'angle' } as const
const OVER_TRAVEL = { torque: 'torque', poses: { kind: 'count', min: 1, max: 10000, whole: true, default: 33 } } as const
const TORQUES = { torques: { list: 'torque' } } as const
const ANGLES = { angles: { list: 'angle' } } as const
const CYCLES = { kind: 'count', min: 1, whole: true } as const
const RESOLUTION = { kind: 'angle', above: 0, default: '0.01 rad' } as const
const BY_JOINT = {
  cycles: CYCLES,
  resolution: RESOLUTION,
  steps: { list: { fields: { jointAngle: 'angle', torque: 'torque' } } },
} as const
const BY_MOTOR = {
  cycles: CYCLES,
  resolution: RESOLUTION,
  steps: { list: { fields: { pinionAngle: 'angle', torque: 'torque' } } },
} as const

/** A cord drive: immutable, made from one specification; every result at both ends of the friction interval. */
export interface CordDrive {
  /** Turns of the pinion for one turn of the drum. */
  readonly ratio: Quantity<'ratio'>
  /** Free length of one span between pinion and drum. */
  readonly span: Quantity<'length'>
  /** Angle of contact on the pinion, all wraps together. */
  readonly pinionWrap: Quantity<'angle'>
  /** The drive at one end of the friction interval on SI numbers, as the kernels take it. */
  readonly si: AtFriction<CordDriveState>
  /** Torques at which it stops holding, in either direction: the least over the travel, or at one angle of the joint from mid travel. */
  limits(jointAngle?: In<'angle'>): AtFriction<DriveLimits>
  /**
   * Limits, windup, stiffness and tensions under a torque of either direction over the whole travel, each with its worst pose; `poses` is the
   * number of poses that are listed. Default: 33.
   */
  overTravel(torque: In<'torque'>, poses?: In<'count'>): AtFriction<TravelSurvey>
  /**
   * Windup at a torque of either sign from rest, at one angle of the joint from mid travel. Default: mid travel. Towards an end of travel one
   * drum arc grows short and gives less length before slip reaches its anchor. A torque above slip gives the state `slips`.
   */
  windup(torque: In<'torque'>, jointAngle?: In<'angle'>): AtFriction<Windup>
  /** Follows torques (or angles) at one pose, motor locked. */
  path(history: { readonly torques: readonly In<'torque'>[] } | { readonly angles: readonly In<'angle'>[] }): AtFriction<LoadHistory>
  /** Losses of a cycle of loaded stroke and return, term by term. */
  losses(cycle: LossCycle): AtFriction<CycleLosses>
  /** Repeats a cycle of torque and of joint angle (or, in every step, pinion angle), from mid travel, and evaluates the last one. */
  travel(cycle: {
    readonly steps:
      | readonly { readonly jointAngle: In<'angle'>; readonly torque: In<'torque'> }[]
      | readonly { readonly pinionAngle: In<'angle'>; readonly torque: In<'torque'> }[]
    /** Times the steps are repeated. */
    readonly cycles: number
    /** Longest step of the joint; default 0.01 rad. */
    readonly resolution?: In<'angle'> | undefined
  }): AtFriction<TravelResult>
}

/**
 * Makes a cord drive from its specification. Throws one `InputError` that lists every issue: overlapping pulleys, a friction interval
 * upside down, wraps that do not fit the grooved lengths.
 */
export function cordDrive(given: CordDriveSpecification): CordDrive {
  const x = readDrive(given)
  const geometry = pulleyGeometry.si(x)
  const span = x.span ?? geometry.span
  const pinionWrap = x.pinionWrap ?? geometry.pinionWrap
  const travel = x.travel ?? 2 * x.drumWrap
  const si = { atLowFriction: stateAt(x, span, pinionWrap, 'low'), atHighFriction: stateAt(x, span, pinionWrap, 'high') }
  const inherited = notesOf(given)
  const both = <T>(f: (d: CordDriveState) => T) => atBoth(si, f)
  // A load that breaks the cord is an error of the argument named; a limit that lies beyond the break is a limit all the same.
  const noting = (passed: unknown, breaks?: Argument) => {
    const inheritedToo = passed === undefined ? inherited : notesOf([given, passed])
    return (peak: number): readonly Note[] | undefined => tensionNotes(x, peak, inheritedToo, breaks)
  }
  return {
    ratio: new Quantity(x.drumRadius / x.pinionRadius, 'ratio', undefined, inherited),
    span: new Quantity(span, 'length', undefined, inherited),
    pinionWrap: new Quantity(pinionWrap, 'angle', undefined, inherited),
    si,
    limits: (jointAngle) => {
      const where = 'capstan.cordDrive.limits'
      if (jointAngle === undefined) return both((d) => travelLimitsOf(d, travel, noting(undefined)))
      const angle = readInputs(where, ANGLE, { jointAngle }).jointAngle
      checkAngle(where, angle, jointAngle, x.drumWrap)
      return both((d) => limitsOf(d, angle, noting(jointAngle)))
    },
    overTravel: (torque, poses) => {
      const read = readInputs('capstan.cordDrive.overTravel', OVER_TRAVEL, { torque, poses })
      return both((d) => surveyOf(d, read.torque, travel, read.poses, noting(torque)))
    },
    windup: (torque, jointAngle) => {
      const where = 'capstan.cordDrive.windup'
      const read = readInputs(where, TORQUE, { torque, jointAngle })
      checkAngle(where, read.jointAngle, jointAngle, x.drumWrap)
      const about = noting([torque, jointAngle], { where, path: 'torque', given: torque })
      return both((d) => windupOf(atAngle(d, read.jointAngle), read.torque, about))
    },
    path: (history) => {
      const where = 'capstan.cordDrive.path'
      const { by, values } = readHistory(where, history, si.atLowFriction)
      const about = noting(history, { where, path: `${by}s`, given: history })
      return both((d) => historyOf(fineHistory(d, by, values), by, about))
    },
    losses: (cycle) => {
      const where = 'capstan.cordDrive.losses'
      checkHistory(where, si.atLowFriction, 'rigidFrame')
      const read = readInputs(where, LOSS_CYCLE, cycle)
      const about = noting(cycle, { where, path: 'torque', given: cycle.torque })
      return both((d) => lossesOf(d, x, read, about))
    },
    travel: (cycle) => {
      const where = 'capstan.cordDrive.travel'
      checkHistory(where, si.atLowFriction, 'rigidFrame')
      const { angles, torques, resolution, drivenBy, stepsOfCycle } = readCycle(where, cycle)
      const about = noting(cycle, { where, path: 'steps', given: cycle.steps })
      return both((d) => travelOf(d, travelPath(d, angles, torques, resolution, drivenBy), stepsOfCycle, x, about))
    },
  }
}

const atBoth = <T>(
  { atLowFriction: low, atHighFriction: high }: AtFriction<CordDriveState>,
  f: (d: CordDriveState) => T,
): AtFriction<T> => ({
  atLowFriction: f(low),
  atHighFriction: f(high),
})

/** The torques or angles of a history. Only a rigid frame can follow angles. */
function readHistory(where: string, history: Parameters<CordDrive['path']>[0], drive: CordDriveState) {
  const by = typeof history === 'object' && history !== null && 'angles' in history ? 'angle' : 'torque'
  checkHistory(where, drive, by === 'angle' ? 'rigidFrame' : 'anyFrame')
  const values = by === 'angle' ? readInputs(where, ANGLES, history as never).angles : readInputs(where, TORQUES, history as never).torques
  return { by, values } as const
}

/** The drive in the middle of its travel, at one end of its friction. */
function stateAt(x: ReturnType<typeof readDrive>, span: number, pinionWrap: number, end: 'low' | 'high'): CordDriveState {
  return {
    axialRigidity: x.axialRigidity,
    pretension: x.pretension,
    pinionRadius: x.pinionRadius,
    drumRadius: x.drumRadius,
    span,
    pinionWrap,
    drumWrapTaut: x.drumWrap,
    drumWrapSlack: x.drumWrap,
    friction: x.friction[end],
    drumFriction: x.drumFriction === undefined && (x.frictionExponent ?? 1) < 1 ? undefined : (x.drumFriction ?? x.friction)[end],
    frictionExponent: x.frictionExponent,
    hold: x.hold,
    contactStiffness: x.contactStiffness,
    compliance: complianceOf(x),
  }
}

/** A cycle of joint angles, or of pinion angles, repeated as often as it says. Throws an `InputError` for one with both. */
function readCycle(where: string, cycle: Parameters<CordDrive['travel']>[0]) {
  const given: readonly object[] = Array.isArray(cycle?.steps) ? cycle.steps : []
  const has = (step: unknown, name: string) => typeof step === 'object' && step !== null && name in step
  const byMotor = given.some((step) => has(step, 'pinionAngle'))
  const mixed = byMotor ? given.findIndex((step) => has(step, 'jointAngle')) : -1
  if (mixed >= 0) refuse(where, `steps[${mixed}].jointAngle`, given[mixed], 'must not be mixed with pinionAngle: one angle drives')
  const { steps, cycles, resolution } = readInputs(where, byMotor ? BY_MOTOR : BY_JOINT, cycle as never) as {
    steps: readonly { jointAngle: number; pinionAngle: number; torque: number }[]
    cycles: number
    resolution: number
  }
  const repeat = (name: 'jointAngle' | 'pinionAngle' | 'torque') =>
    Float64Array.from({ length: cycles * steps.length }, (_, i) => steps[i % steps.length]?.[name] as number)
  return {
    angles: repeat(byMotor ? 'pinionAngle' : 'jointAngle'),
    torques: repeat('torque'),
    resolution,
    drivenBy: byMotor ? ('motor' as const) : ('joint' as const),
    stepsOfCycle: steps.length,
  }
}

function checkAngle(where: string, jointAngle: number, given: unknown, drumWrap: number): void {
  if (Math.abs(jointAngle) < drumWrap) return
  const accepts = `must be less than the drum wrap of ${new Quantity(drumWrap, 'angle')} either way`
  refuse(where, 'jointAngle', given, accepts)
}
