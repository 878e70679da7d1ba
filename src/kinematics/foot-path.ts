import { type Given, readInputs, type Si } from '../formula/index.js'
import { type In, InputError, issue, Quantity, quantity } from '../units/index.js'
import { FOOT_PATH, FootPathKernel } from './foot-path-kernel.js'
import { type Vector3, vectorOf } from './vectors.js'

/**
 * What a foot path is made from: the foot's place at mid stance, the sweep under the body, timing, and how it swings back.
 * `swingPoints` (inner control points of a Bézier curve, relative to mid stance) stand in place of `swing`, `lift` and `liftShape`; the curve's ends are
 * those of the stance. For a touch-down without a scuff put the last point where the stance's own motion would have come from.
 */
export interface FootPathSpecification extends Given<typeof FOOT_PATH> {}

/** The foot at one time, in the leg's frame. */
export interface FootState {
  readonly phase: 'stance' | 'swing'
  readonly position: Vector3<'length'>
  readonly velocity: Vector3<'velocity'>
  readonly acceleration: Vector3<'acceleration'>
}

/** Sizes of a step of the foot's motion. */
export interface MotionStep {
  /** Step of the foot's speed. */
  readonly speed: Quantity<'velocity'>
  /** Step of the foot's acceleration. */
  readonly acceleration: Quantity<'acceleration'>
}

/** Steps of the foot's motion between stance and swing. */
export interface PhaseSteps {
  /** Step from stance to swing. */
  readonly liftOff: MotionStep
  /** Step from swing to stance. */
  readonly touchDown: MotionStep
}

/**
 * A closed path of the foot relative to the body: stance first (straight backward at constant speed), then swing. Time zero is touch-down.
 * Immutable; `si` is its form on plain numbers.
 */
export class FootPath {
  /** The path on plain SI numbers: nothing checked, nothing allocated. */
  readonly si: FootPathKernel

  /** @internal Use `footPath`. */
  constructor(given: Si<typeof FOOT_PATH>) {
    this.si = new FootPathKernel(given)
  }

  /** Speed of the body over the ground that this path walks at. */
  get bodySpeed(): Quantity<'velocity'> {
    return new Quantity(this.si.bodySpeed, 'velocity')
  }

  /** Highest rise of the swing over the stance line. */
  get clearance(): Quantity<'length'> {
    return new Quantity(this.si.clearance, 'length')
  }

  /**
   * Steps of the foot's velocity and acceleration at lift-off and touch-down. A step of velocity is a blow on the drives (an unbounded torque in the
   * model) and a scuff on the ground; a step of acceleration is a step of torque. `matched` with a `smooth` lift has neither.
   */
  get steps(): PhaseSteps {
    const [liftOffSpeed, liftOffAcceleration, touchDownSpeed, touchDownAcceleration] = this.si.steps()
    return {
      liftOff: { speed: new Quantity(liftOffSpeed, 'velocity'), acceleration: new Quantity(liftOffAcceleration, 'acceleration') },
      touchDown: { speed: new Quantity(touchDownSpeed, 'velocity'), acceleration: new Quantity(touchDownAcceleration, 'acceleration') },
    }
  }

  /** The foot at a time after touch-down; times beyond one stride repeat it. */
  at(time: In<'time'>): FootState {
    const t = quantity('time', time).si
    const out = new Float64Array(9)
    const stance = this.si.stateInto(out, 0, t)
    return {
      phase: stance ? 'stance' : 'swing',
      position: vectorOf('length', out),
      velocity: vectorOf('velocity', out, 3),
      acceleration: vectorOf('acceleration', out, 6),
    }
  }
}

/**
 * Makes a foot path.
 * Throws an `InputError` for a duty factor outside (0, 1], a period that is not positive, a duty factor of 1 with a sweep (the foot never returns), or
 * both `swingPoints` and a shape or lift.
 */
export function footPath(given: FootPathSpecification): FootPath {
  const where = 'kinematics.footPath'
  const spec = readInputs(where, FOOT_PATH, given)
  const without = (['lift', 'swing', 'liftShape'] as const).filter((path) => spec.swingPoints !== undefined && given[path] !== undefined)
  if (without.length > 0)
    throw new InputError(
      where,
      without.map((path) => issue(path, given[path], 'is not an input beside swingPoints, which shape the swing')),
    )
  if (spec.dutyFactor === 1 && spec.stanceSweep > 0) {
    throw new InputError(where, [
      { path: 'dutyFactor', given: '1', accepts: 'must be below 1 where the foot sweeps: it has no time to come back' },
    ])
  }
  return new FootPath(spec)
}
