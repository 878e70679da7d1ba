import type { Inputs, Si } from '../formula/index.js'
import { refuse } from '../units/index.js'
import { DriveCoupling, driveCoupling } from './coupling.js'
import { FootPath } from './foot-path.js'
import { ThreeJointLeg } from './leg.js'
import { LegDynamics } from './leg-dynamics.js'
import { FOOT_ABOVE, KNEE_BACKWARD } from './leg-geometry-kernel.js'
import { stanceForce } from './stance-force.js'
import type { GroundReactionSi, ParallelTorqueSi, StrideInputs } from './stride-follower.js'
import { requireInstance, requireRecord } from './vectors.js'

const LOAD = {
  /** Mass of the whole robot. */
  mass: { kind: 'mass', above: 0 },
  /** Part of the weight that this leg carries on average over the stride. Four equal legs: 0.25. */
  legShare: { kind: 'ratio', min: 0, max: 1 },
  /** Shape of the ground force over the stance. Default halfSine. */
  shape: { oneOf: ['halfSine', 'parabolic', 'rectangular', 'twoPeaked'], default: 'halfSine' },
  /** For `twoPeaked`: weight of the third harmonic, −1/3 to 1. Default 0.4. */
  thirdHarmonic: { kind: 'ratio', min: -0.3333, max: 1, default: 0.4 },
  /** Acceleration of free fall. Default 9.80665 m/s². */
  gravity: { kind: 'acceleration', above: 0, default: '9.80665 m/s^2' },
  /** Force along the direction of travel: none, or so that the whole force passes through the hip. Default none. */
  foreAft: { oneOf: ['none', 'throughHip'], default: 'none' },
} as const satisfies Inputs
/** The inputs for how a leg walks. @internal */
export const STRIDE = {
  /** Force of the ground from the weight that the leg carries. Give this or `groundReactionSi`. */
  load: { fields: LOAD, optional: true },
  /** Way in which the knee bends. Default forward. */
  kneeBend: { oneOf: ['forward', 'backward'], default: 'forward' },
  /** Whether the foot is below the hip axis or above it, with the leg folded over the hip. Default below. */
  foot: { oneOf: ['below', 'above'], default: 'below' },
} as const satisfies Inputs

/** The objects that a stride is made of. */
export interface StrideParts {
  /** Geometry of the leg, as `threeJointLeg` makes it. */
  readonly leg: ThreeJointLeg
  /** Path of the foot, as `footPath` makes it. */
  readonly path: FootPath
  /** Masses of the leg. Default: the leg is weightless and carries the ground's force only. */
  readonly dynamics?: LegDynamics
  /** How the knee is driven. Default: the motor is at the knee. */
  readonly coupling?: DriveCoupling
  /** Force of the ground in place of `load`, on plain SI numbers. */
  readonly groundReactionSi?: GroundReactionSi
  /** Torques of springs in parallel with the drives, on plain SI numbers: drums and motors hold what the springs do not. Default: no springs. */
  readonly parallelTorqueSi?: ParallelTorqueSi
}

/** Takes the objects of a stride from what was given, each checked; the rest is for the reader. @internal */
export function partsOf<T extends StrideParts>(where: string, given: T) {
  requireRecord(where, given)
  const { leg, path, dynamics, coupling = driveCoupling({ knee: 'motorAtKnee' }), groundReactionSi, parallelTorqueSi, ...rest } = given
  requireInstance(where, 'leg', leg, ThreeJointLeg, 'threeJointLeg')
  requireInstance(where, 'path', path, FootPath, 'footPath')
  requireInstance(where, 'coupling', coupling, DriveCoupling, 'driveCoupling')
  if (dynamics !== undefined) requireInstance(where, 'dynamics', dynamics, LegDynamics, 'legDynamics')
  return { parts: { leg, path, dynamics, coupling, groundReactionSi, parallelTorqueSi }, rest }
}

/** What the follower of a stride needs. Throws an `InputError` without `load` or `groundReactionSi`, or with both. @internal */
export function strideInputs(where: string, parts: ReturnType<typeof partsOf>['parts'], spec: Si<typeof STRIDE>): StrideInputs {
  const { leg, path, dynamics, coupling, groundReactionSi, parallelTorqueSi } = parts
  if ((spec.load === undefined) === (groundReactionSi === undefined))
    refuse(where, 'load', spec.load, 'give either load or groundReactionSi')
  return {
    leg,
    path,
    branch: (spec.kneeBend === 'forward' ? 0 : KNEE_BACKWARD) + (spec.foot === 'below' ? 0 : FOOT_ABOVE),
    dynamics: dynamics?.withoutRotors,
    coupling,
    parallelTorque: parallelTorqueSi,
    groundReaction: groundReactionSi ?? reactionOf(spec.load!, path.si.dutyFactor, leg, spec.foot),
  }
}

/** The ground's force from a load: vertical by the stance's shape, and along x so that it passes through the hip axis if that is chosen. */
function reactionOf(load: Si<typeof LOAD>, dutyFactor: number, leg: ThreeJointLeg, side: 'below' | 'above'): GroundReactionSi {
  const { hipOffset: d } = leg.si
  return (out, stancePhase, foot) => {
    const vertical = stanceForce.si({ ...load, dutyFactor, stancePhase })
    const [x, y, z] = foot as unknown as [number, number, number]
    const radius2 = y * y + z * z
    const height = Math.sqrt(Math.max(0, radius2 - d * d))
    const Z = side === 'below' ? -height : height
    // In the leg plane, which leans by the sideways hip, only the cosine of the upright force is upright.
    const cosine = (y * d + z * Z) / radius2
    out[0] = load.foreAft === 'none' || height === 0 ? 0 : (vertical * cosine * x) / Z
    out[1] = 0
    out[2] = vertical
  }
}
