import { formula } from '../formula/index.js'
import { type CordDriveState, RIGID } from './branch.js'
import { FRICTIONS } from './friction-inputs.js'
import { CORD_LOOP, DRUM_ARCS, HOLD, LOOP_COMPLIANCE } from './inputs.js'
import { loadPath } from './load-path.js'
import type { PathPoint } from './path-point.js'

interface Reading extends CordDriveState {
  readonly torques: readonly number[]
}

/** All numbers that a path depends on, in one row. */
function keyOf(x: Reading): Float64Array {
  const { sum, difference, tautSpan, slackSpan } = x.compliance ?? RIGID
  const drive = [x.axialRigidity, x.pretension, x.pinionRadius, x.drumRadius, x.span, x.pinionWrap, x.drumWrapTaut, x.drumWrapSlack]
  const rest = [x.friction, x.drumFriction ?? x.friction, x.hold === 'frictionOnly' ? 0 : 1, sum, difference, tautSpan, slackSpan]
  return Float64Array.from([...drive, ...rest, ...x.torques])
}

let last: { readonly key: Float64Array; readonly path: readonly PathPoint[] } | undefined

/** The whole history, followed once for all its readings: a fit evaluates them one after the other. */
function pathOf(x: Reading): readonly PathPoint[] {
  const key = keyOf(x)
  if (last === undefined || last.key.length !== key.length || key.some((value, i) => value !== last?.key[i]))
    last = { key, path: loadPath(x, 'torque', x.torques) }
  return last.path
}

/**
 * Windup of a cord drive at one reading of a measured load history: loaded, unloaded, reversed, the motor locked. As a formula of its parameters a
 * history can be fitted: rigidity of the cord, friction and pretension from a loop of torque and deflection.
 */
export const historyWindup = /* @__PURE__ */ formula('capstan.historyWindup', {
  inputs: {
    /** Torques at the joint, one after the other, from rest; signed. */
    torques: { list: 'torque' },
    /** Which of them the reading belongs to, counted from 1. */
    reading: { kind: 'count', min: 1, whole: true },
    ...CORD_LOOP,
    ...FRICTIONS,
    ...DRUM_ARCS,
    ...HOLD,
    ...LOOP_COMPLIANCE,
    /** Reading of the angle before the first load. */
    zeroAngle: { kind: 'angle', default: '0 rad' },
  },
  requires: {
    reading: { accepts: 'must not exceed the number of torques', holds: ({ torques, reading }) => reading <= torques.length },
    friction: { accepts: 'must be above 0 in a history', holds: ({ friction }) => friction > 0 },
    drumFriction: { accepts: 'must be above 0 in a history', holds: ({ drumFriction }) => drumFriction === undefined || drumFriction > 0 },
  },
  /** Angle of the joint, motor locked. */
  output: 'angle',
  assumes: [
    'loaded from a uniform pretension, joint at one pose',
    'a torque above slip stays at the slip torque',
    'linear elastic cord without creep',
    'Coulomb friction, static and kinetic alike',
  ],
  source: [{ level: 'computed', where: 'Euler-Eytelwein slip in every arc, with the memory of earlier loads' }],
  si: (x) => {
    const p = pathOf(x)[x.reading - 1] as PathPoint
    return x.zeroAngle + p.windup + p.slipped
  },
})
