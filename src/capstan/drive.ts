import { notesOf, readInputs } from '../formula/index.js'
import { type In, InputError, type Note, Quantity, quantity, show } from '../units/index.js'
import type { DriveState } from './branch.js'
import { finely, historyOf, type LoadHistory, type TravelResult, travelOf } from './drive-histories.js'
import { type CycleLosses, LOSS_CYCLE, type LossCycle, lossesOf } from './drive-losses.js'
import { type AtFriction, type DriveLimits, limitsOf, type Windup, windupOf } from './drive-results.js'
import { type DriveSpecification, readDrive } from './drive-specification.js'
import { pulleyGeometry } from './geometry.js'
import { checkHistory } from './history-limits.js'
import { loadPath } from './load-path.js'
import { travelPath } from './travel-path.js'

const BY_JOINT = { steps: { list: { fields: { jointAngle: 'angle', torque: 'torque' } } } } as const
const BY_MOTOR = { steps: { list: { fields: { pinionAngle: 'angle', torque: 'torque' } } } } as const

/** A cord drive: immutable, made from one specification; every result at both ends of the friction interval. */
export interface Drive {
  readonly ratio: Quantity<'ratio'>
  readonly span: Quantity<'length'>
  readonly pinionWrap: Quantity<'angle'>
  /** The drive at one end of the friction interval on SI numbers, as the kernels take it. */
  readonly si: AtFriction<DriveState>
  /** Torques at which it stops holding. */
  limits(): AtFriction<DriveLimits>
  /** Windup at a torque of either sign from rest. A torque above slip is answered: slips at so much. */
  windup(torque: In<'torque'>): AtFriction<Windup>
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
export function drive(given: DriveSpecification): Drive {
  const x = readDrive(given)
  const geometry = pulleyGeometry.si({ ...x, extraTurns: x.pinionTurns })
  const span = x.span ?? geometry.span
  const pinionWrap = x.pinionWrap ?? geometry.pinionWrapAngle
  const state = (end: 'low' | 'high'): DriveState => ({
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
  const both = <T>(f: (d: DriveState) => T): AtFriction<T> => ({ atLowFriction: f(si.atLowFriction), atHighFriction: f(si.atHighFriction) })
  const about = (peak: number): readonly Note[] | undefined => {
    if (x.allowableTension === undefined || peak <= x.allowableTension) return inherited
    const text = `tension of ${new Quantity(peak, 'force')} is above the allowable ${new Quantity(x.allowableTension, 'force')} of the cord`
    return [...(inherited ?? []), { formula: 'capstan.drive', text }]
  }
  return {
    ratio: new Quantity(x.drumRadius / x.pinionRadius, 'ratio', undefined, inherited),
    span: new Quantity(span, 'length', undefined, inherited),
    pinionWrap: new Quantity(pinionWrap, 'angle', undefined, inherited),
    si,
    limits: () => both((d) => limitsOf(d, about(d.pretension))),
    windup: (torque) => {
      const wanted = quantity('torque', torque).si
      return both((d) => windupOf(d, wanted, about))
    },
    path: (history) => {
      const byTorque = 'torques' in history
      const values = byTorque ? history.torques.map((t) => quantity('torque', t).si) : history.angles.map((a) => quantity('angle', a).si)
      checkHistory('capstan.drive.path', si.atLowFriction)
      return both((d) => historyOf(loadPath(d, byTorque ? 'torque' : 'angle', finely(values)), about))
    },
    losses: (cycle) => {
      checkHistory('capstan.drive.losses', si.atLowFriction)
      const read = readInputs('capstan.drive.losses', LOSS_CYCLE, cycle)
      return both((d) => lossesOf(d, x, read, about))
    },
    travel: ({ steps, cycles, resolution = '0.01 rad' }) => {
      const where = 'capstan.drive.travel'
      checkHistory(where, si.atLowFriction)
      if (!(Number.isInteger(cycles) && cycles >= 1) || steps.length === 0)
        throw new InputError(where, [
          { path: 'cycles', given: show(cycles), accepts: 'must be a whole number of at least 1, with at least one step' },
        ])
      const byJoint = !steps.some((step) => 'pinionAngle' in step)
      const mixed = byJoint ? -1 : steps.findIndex((step) => 'jointAngle' in step)
      if (mixed >= 0)
        throw new InputError(where, [
          {
            path: `steps[${mixed}].jointAngle`,
            given: show(steps[mixed]),
            accepts: 'must not be mixed with pinionAngle: one angle drives',
          },
        ])
      const read = readInputs(where, byJoint ? BY_JOINT : BY_MOTOR, { steps } as never) as {
        steps: readonly { jointAngle: number; pinionAngle: number; torque: number }[]
      }
      const longest = quantity('angle', resolution).si
      if (!(longest > 0)) throw new InputError(where, [{ path: 'resolution', given: show(resolution), accepts: 'must be above 0' }])
      const repeat = (of: (i: number) => number) => Float64Array.from({ length: cycles * steps.length }, (_, i) => of(i % steps.length))
      const step = (i: number) => read.steps[i] as (typeof read.steps)[number]
      const angles = repeat((i) => (byJoint ? step(i).jointAngle : step(i).pinionAngle))
      const torques = repeat((i) => step(i).torque)
      return both((d) => travelOf(d, travelPath(d, angles, torques, longest, byJoint ? 'joint' : 'motor'), steps.length, x, about))
    },
  }
}
