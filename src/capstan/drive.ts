import { notesOf, readInputs } from '../formula/index.js'
import { type In, InputError, type Note, Quantity, show } from '../units/index.js'
import type { CordDriveState } from './branch.js'
import { finely, historyOf, type LoadHistory, type TravelResult, travelOf } from './drive-histories.js'
import { type CycleLosses, LOSS_CYCLE, type LossCycle, lossesOf } from './drive-losses.js'
import { type AtFriction, type DriveLimits, limitsOf, type Windup, windupOf } from './drive-results.js'
import { type CordDriveSpecification, readDrive } from './drive-specification.js'
import { pulleyGeometry } from './geometry.js'
import { checkHistory } from './history-limits.js'
import { loadPath } from './load-path.js'
import { travelPath } from './travel-path.js'

const TORQUE = { torque: 'torque', jointAngle: { kind: 'angle', default: '0 rad' } } as const
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
  readonly ratio: Quantity<'ratio'>
  readonly span: Quantity<'length'>
  readonly pinionWrap: Quantity<'angle'>
  /** The drive at one end of the friction interval on SI numbers, as the kernels take it. */
  readonly si: AtFriction<CordDriveState>
  /** Torques at which it stops holding. */
  limits(): AtFriction<DriveLimits>
  /**
   * Windup at a torque of either sign from rest, at mid travel or at an angle of the joint from there: towards an end of travel one drum
   * arc grows short and gives less before slip reaches its anchor. A torque above slip is answered: slips at so much.
   */
  windup(torque: In<'torque'>, jointAngle?: In<'angle'>): AtFriction<Windup>
  /** Follows torques (or angles) at one pose, motor locked. */
  path(history: { readonly torques: readonly In<'torque'>[] } | { readonly angles: readonly In<'angle'>[] }): AtFriction<LoadHistory>
  /** What a cycle of loaded stroke and return loses, term by term. */
  losses(cycle: LossCycle): AtFriction<CycleLosses>
  /** Repeats a cycle of torque and of joint angle (or, in every step, pinion angle), from mid travel, and looks at the last. */
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
  const state = (end: 'low' | 'high'): CordDriveState => ({
    axialRigidity: x.axialRigidity,
    pretension: x.pretension,
    pinionRadius: x.pinionRadius,
    drumRadius: x.drumRadius,
    span,
    pinionWrap,
    drumWrapTaut: x.drumWrap,
    drumWrapSlack: x.drumWrap,
    friction: x.friction[end],
    drumFriction: (x.drumFriction ?? x.friction)[end],
    hold: x.hold,
    contactStiffness: x.contactStiffness,
  })
  const si = { atLowFriction: state('low'), atHighFriction: state('high') }
  const inherited = notesOf(given)
  const both = <T>(f: (d: CordDriveState) => T): AtFriction<T> => ({
    atLowFriction: f(si.atLowFriction),
    atHighFriction: f(si.atHighFriction),
  })
  const noting = (asked: unknown) => {
    const passed = asked === undefined ? inherited : notesOf([given, asked])
    return (peak: number): readonly Note[] | undefined => {
      if (x.allowableTension === undefined || peak <= x.allowableTension) return passed
      const text = `tension of ${new Quantity(peak, 'force')} is above the allowable ${new Quantity(x.allowableTension, 'force')} of the cord`
      return [...(passed ?? []), { formula: 'capstan.cordDrive', text }]
    }
  }
  return {
    ratio: new Quantity(x.drumRadius / x.pinionRadius, 'ratio', undefined, inherited),
    span: new Quantity(span, 'length', undefined, inherited),
    pinionWrap: new Quantity(pinionWrap, 'angle', undefined, inherited),
    si,
    limits: () => both((d) => limitsOf(d, noting(undefined))),
    windup: (torque, jointAngle) => {
      const where = 'capstan.cordDrive.windup'
      const wanted = readInputs(where, TORQUE, { torque, jointAngle })
      if (Math.abs(wanted.jointAngle) >= x.drumWrap)
        throw new InputError(where, [
          {
            path: 'jointAngle',
            given: show(jointAngle),
            accepts: `must be less than the drum wrap of ${new Quantity(x.drumWrap, 'angle')} either way`,
          },
        ])
      const about = noting([torque, jointAngle])
      const posed = (d: CordDriveState) => ({
        ...d,
        drumWrapTaut: x.drumWrap + wanted.jointAngle,
        drumWrapSlack: x.drumWrap - wanted.jointAngle,
      })
      return both((d) => windupOf(posed(d), wanted.torque, about))
    },
    path: (history) => {
      const where = 'capstan.cordDrive.path'
      checkHistory(where, si.atLowFriction)
      const byAngle = typeof history === 'object' && history !== null && 'angles' in history
      const values = byAngle ? readInputs(where, ANGLES, history).angles : readInputs(where, TORQUES, history as never).torques
      const about = noting(history)
      return both((d) => historyOf(loadPath(d, byAngle ? 'angle' : 'torque', finely(values)), about))
    },
    losses: (cycle) => {
      checkHistory('capstan.cordDrive.losses', si.atLowFriction)
      const read = readInputs('capstan.cordDrive.losses', LOSS_CYCLE, cycle)
      const about = noting(cycle)
      return both((d) => lossesOf(d, x, read, about))
    },
    travel: (cycle) => {
      const where = 'capstan.cordDrive.travel'
      checkHistory(where, si.atLowFriction)
      const given: readonly object[] = Array.isArray(cycle?.steps) ? cycle.steps : []
      const byMotor = given.some((step) => 'pinionAngle' in step)
      const mixed = byMotor ? given.findIndex((step) => 'jointAngle' in step) : -1
      if (mixed >= 0)
        throw new InputError(where, [
          {
            path: `steps[${mixed}].jointAngle`,
            given: show(given[mixed]),
            accepts: 'must not be mixed with pinionAngle: one angle drives',
          },
        ])
      const { steps, cycles, resolution } = readInputs(where, byMotor ? BY_MOTOR : BY_JOINT, cycle as never) as {
        steps: readonly { jointAngle: number; pinionAngle: number; torque: number }[]
        cycles: number
        resolution: number
      }
      const repeat = (name: 'jointAngle' | 'pinionAngle' | 'torque') =>
        Float64Array.from({ length: cycles * steps.length }, (_, i) => steps[i % steps.length]?.[name] as number)
      const angles = repeat(byMotor ? 'pinionAngle' : 'jointAngle')
      const torques = repeat('torque')
      const about = noting(cycle)
      return both((d) => travelOf(d, travelPath(d, angles, torques, resolution, byMotor ? 'motor' : 'joint'), steps.length, x, about))
    },
  }
}
