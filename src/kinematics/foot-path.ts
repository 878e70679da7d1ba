import { formula, type Given, type Inputs, readInputs, type Si } from '../formula/index.js'
import { minimiseScalar } from '../numeric/index.js'
import { type In, InputError, Quantity, quantity, show } from '../units/index.js'
import { bezierInto, LIFT_SHAPES, liftShapeInto, SWING_SHAPES, swingShapeInto } from './swing.js'
import { type Vector3, vectorOf, xyz } from './vectors.js'

/** Timing of a walk or trot: how long each foot stands, how far the body moves meanwhile, from stride period, duty factor and speed. */
export const strideTiming = /* @__PURE__ */ formula('kinematics.strideTiming', {
  inputs: {
    /** Time from one touch-down of a foot to its next. */
    stridePeriod: { kind: 'time', above: 0 },
    /** Part of the stride that a foot stands: stance time over stride period. */
    dutyFactor: { kind: 'ratio', above: 0, max: 1 },
    /** Speed of the body over the ground. */
    bodySpeed: { kind: 'velocity', min: 0 },
  },
  output: {
    /** Time a foot stands. */
    stanceTime: 'time',
    /** Time a foot is in the air. */
    swingTime: 'time',
    /** Distance the foot sweeps backward under the body while it stands. */
    stanceSweep: 'length',
    /** Distance the body travels in a whole stride. */
    strideLength: 'length',
  },
  assumes: ['constant speed over level ground', 'no slip of the foot'],
  source: [
    {
      level: 'unverified',
      where: 'R. McN. Alexander, Principles of Animal Locomotion (2003), ch. 7: duty factor, stride length and step length',
    },
  ],
  si: ({ stridePeriod, dutyFactor, bodySpeed }) => ({
    stanceTime: dutyFactor * stridePeriod,
    swingTime: (1 - dutyFactor) * stridePeriod,
    stanceSweep: bodySpeed * dutyFactor * stridePeriod,
    strideLength: bodySpeed * stridePeriod,
  }),
})

const SPECIFICATION = {
  midStance: { fields: /* @__PURE__ */ xyz('length') },
  stanceSweep: { kind: 'length', min: 0 },
  stridePeriod: { kind: 'time', above: 0 },
  dutyFactor: { kind: 'ratio', above: 0, max: 1 },
  heading: { kind: 'angle', default: '0 deg' },
  lift: { kind: 'length', min: 0, default: '0 mm' },
  swing: { oneOf: SWING_SHAPES, default: 'matched' },
  liftShape: { oneOf: LIFT_SHAPES, default: 'smooth' },
  swingPoints: { list: { fields: { forward: 'length', up: 'length' } }, optional: true },
} as const satisfies Inputs

/**
 * What a foot path is made from: the foot's place at mid stance, the sweep under the body, timing, and how it swings back.
 * `swingPoints` (inner control points of a Bézier curve, relative to mid stance) stand in place of `swing`, `lift` and `liftShape`; the curve's ends are
 * those of the stance. For a touch-down without a scuff put the last point where the stance's own motion would have come from.
 */
export interface FootPathSpecification extends Given<typeof SPECIFICATION> {}

/** The foot at one time, in the leg's frame. */
export interface FootState {
  readonly phase: 'stance' | 'swing'
  readonly position: Vector3<'length'>
  readonly velocity: Vector3<'velocity'>
  readonly acceleration: Vector3<'acceleration'>
}

/**
 * A closed path of the foot relative to the body: stance first (straight backward at constant speed), then swing. Time zero is touch-down.
 * Immutable; `stateInto` is its form on plain numbers.
 */
export class FootPath {
  /** Time of one stride, s. */
  readonly periodSi: number
  /** Part of the stride in stance. */
  readonly dutyFactor: number
  /** Time in stance, s. */
  readonly stanceTimeSi: number
  /** Speed at which the stance foot moves backward, m/s. */
  readonly bodySpeedSi: number
  /** Highest rise of the swing over the stance line, m: the true clearance, which for a Bézier curve is well below its highest control point. */
  readonly clearanceSi: number
  private readonly forward: Float64Array | undefined
  private readonly up: Float64Array | undefined
  private readonly work: Float64Array
  private readonly shape = new Float64Array(3)

  /** @internal Use `footPath`. */
  constructor(private readonly given: Si<typeof SPECIFICATION>) {
    this.periodSi = given.stridePeriod
    this.dutyFactor = given.dutyFactor
    const timing = strideTiming.si({ ...given, bodySpeed: 0 })
    this.stanceTimeSi = timing.stanceTime
    this.bodySpeedSi = given.stanceSweep / timing.stanceTime
    const points = given.swingPoints
    if (points !== undefined) {
      const half = given.stanceSweep / 2
      this.forward = Float64Array.from([-half, ...points.map((p) => p.forward), half])
      this.up = Float64Array.from([0, ...points.map((p) => p.up), 0])
    }
    this.work = new Float64Array(points === undefined ? 0 : points.length + 2)
    this.clearanceSi = given.dutyFactor === 1 ? 0 : this.highest()
  }

  /** Speed of the body over the ground that this path walks at. */
  get bodySpeed(): Quantity<'velocity'> {
    return new Quantity(this.bodySpeedSi, 'velocity')
  }

  /** Highest rise of the swing over the stance line. */
  get clearance(): Quantity<'length'> {
    return new Quantity(this.clearanceSi, 'length')
  }

  /** The foot at a time after touch-down; times beyond one stride repeat it. */
  at(time: In<'time'>): FootState {
    const t = quantity('time', time).si
    const out = new Float64Array(9)
    const stance = this.stateInto(out, 0, t)
    return {
      phase: stance ? 'stance' : 'swing',
      position: vectorOf('length', out),
      velocity: vectorOf('velocity', out, 3),
      acceleration: vectorOf('acceleration', out, 6),
    }
  }

  /** Position, velocity and acceleration of the foot at a time after touch-down, SI (9 numbers). Returns whether the foot stands. */
  stateInto(out: Float64Array, offset: number, time: number): boolean {
    const { midStance, stanceSweep, heading } = this.given
    const period = this.periodSi
    const t = time - period * Math.floor(time / period)
    const stance = t < this.stanceTimeSi
    const v = this.bodySpeedSi
    let along = 0.5 * stanceSweep - v * t
    let alongRate = -v
    let alongAcceleration = 0
    let up = 0
    let upRate = 0
    let upAcceleration = 0
    if (!stance) {
      const swingTime = period - this.stanceTimeSi
      const u = (t - this.stanceTimeSi) / swingTime
      const { shape } = this
      if (this.forward !== undefined && this.up !== undefined) {
        bezierInto(shape, 0, this.forward, u, this.work)
        along = shape[0]!
        alongRate = shape[1]! / swingTime
        alongAcceleration = shape[2]! / (swingTime * swingTime)
        bezierInto(shape, 0, this.up, u, this.work)
        up = shape[0]!
        upRate = shape[1]! / swingTime
        upAcceleration = shape[2]! / (swingTime * swingTime)
      } else {
        const carried = this.given.swing === 'matched' ? v : 0
        const distance = stanceSweep + carried * swingTime
        swingShapeInto(shape, 0, this.given.swing, u)
        along = -0.5 * stanceSweep - carried * u * swingTime + distance * shape[0]!
        alongRate = (distance * shape[1]!) / swingTime - carried
        alongAcceleration = (distance * shape[2]!) / (swingTime * swingTime)
        liftShapeInto(shape, 0, this.given.liftShape, u)
        up = this.given.lift * shape[0]!
        upRate = (this.given.lift * shape[1]!) / swingTime
        upAcceleration = (this.given.lift * shape[2]!) / (swingTime * swingTime)
      }
    }
    const c = Math.cos(heading)
    const s = Math.sin(heading)
    out[offset] = midStance.x + along * c
    out[offset + 1] = midStance.y + along * s
    out[offset + 2] = midStance.z + up
    out[offset + 3] = alongRate * c
    out[offset + 4] = alongRate * s
    out[offset + 5] = upRate
    out[offset + 6] = alongAcceleration * c
    out[offset + 7] = alongAcceleration * s
    out[offset + 8] = upAcceleration
    return stance
  }

  private highest(): number {
    if (this.up === undefined) return this.given.lift
    const { up } = this
    const height = (u: number) => {
      bezierInto(this.shape, 0, up, u, this.work)
      return this.shape[0]!
    }
    // A Bézier curve of n control points has fewer than n turns: search each stretch between coarse samples around the highest.
    const steps = 8 * up.length
    let top = 0
    for (let i = 1; i < steps; i++) if (height(i / steps) > height(top / steps)) top = i
    return -minimiseScalar((u) => -height(u), Math.max(0, top - 1) / steps, Math.min(steps, top + 1) / steps).value
  }
}

/**
 * Makes a foot path.
 * Throws an `InputError` for a duty factor outside (0, 1], a period that is not positive, a duty factor of 1 with a sweep (the foot never returns), or
 * both `swingPoints` and a shape or lift.
 */
export function footPath(given: FootPathSpecification): FootPath {
  const where = 'kinematics.footPath'
  const spec = readInputs(where, SPECIFICATION, given)
  const without = (['lift', 'swing', 'liftShape'] as const).filter((path) => spec.swingPoints !== undefined && given[path] !== undefined)
  if (without.length > 0)
    throw new InputError(
      where,
      without.map((path) => ({ path, given: show(given[path]), accepts: 'is not an input beside swingPoints, which shape the swing' })),
    )
  if (spec.dutyFactor === 1 && spec.stanceSweep > 0) {
    throw new InputError(where, [
      { path: 'dutyFactor', given: '1', accepts: 'must be below 1 where the foot sweeps: it has no time to come back' },
    ])
  }
  return new FootPath(spec)
}
