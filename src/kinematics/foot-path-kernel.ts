import type { Inputs, Si } from '../formula/index.js'
import { minimiseScalar } from '../numeric/index.js'
import { strideTiming } from './stride-timing.js'
import { bezierInto, LIFT_SHAPES, liftShapeInto, SWING_SHAPES, swingShapeInto } from './swing.js'
import { xyz } from './vectors.js'

/** The inputs of a foot path. */
export const FOOT_PATH = {
  /** Place of the foot in the leg's frame half-way through the stance. */
  midStance: { fields: /* @__PURE__ */ xyz('length') },
  /** Distance that the foot travels backward in the stance, relative to the body. 0 is stepping on the spot. */
  stanceSweep: { kind: 'length', min: 0 },
  /** Time from one touch-down to the next. */
  stridePeriod: { kind: 'time', above: 0 },
  /** Part of the stride that the foot stands, above 0. 1 only without a sweep. */
  dutyFactor: { kind: 'ratio', above: 0, max: 1 },
  /** Direction of travel, from x towards y. Default 0: straight forward. */
  heading: { kind: 'angle', default: '0 deg' },
  /** Highest rise of the swing over the stance line. Default 0. Not used with `swingPoints`. */
  lift: { kind: 'length', min: 0, default: '0 mm' },
  /** Shape of the swing along the stride: `matched` takes over and hands back the speed of the stance. Default matched. */
  swing: { oneOf: SWING_SHAPES, default: 'matched' },
  /** Shape of the lift over the swing. Default smooth. */
  liftShape: { oneOf: LIFT_SHAPES, default: 'smooth' },
  /** Inner control points of a Bézier curve for the swing, in place of `swing` and `liftShape`. Default: none. */
  swingPoints: {
    list: {
      fields: {
        /** Place along the heading, from mid stance. */
        forward: 'length',
        /** Height over the stance line. */
        up: 'length',
      },
    },
    optional: true,
  },
} as const satisfies Inputs

/** The end of a swing, as a part of the stride before it. */
const JUST_BEFORE_END = 2e-12

const NO_WORK = /* @__PURE__ */ new Float64Array(0)

/** A foot path on plain SI numbers. `stateInto` checks nothing and allocates nothing. */
export class FootPathKernel {
  /** Time of one stride, s. */
  readonly period: number
  /** Part of the stride in stance. */
  readonly dutyFactor: number
  /** Time in stance, s. */
  readonly stanceTime: number
  /** Speed at which the stance foot moves backward, m/s. */
  readonly bodySpeed: number
  /** Highest rise of the swing over the stance line, m: the true clearance, which for a Bézier curve is well below its highest control point. */
  readonly clearance: number
  private readonly forward: Float64Array | undefined
  private readonly up: Float64Array | undefined
  private readonly work: Float64Array
  private readonly shape = new Float64Array(3)

  constructor(private readonly given: Si<typeof FOOT_PATH>) {
    this.period = given.stridePeriod
    this.dutyFactor = given.dutyFactor
    const timing = strideTiming.si({ stridePeriod: given.stridePeriod, dutyFactor: given.dutyFactor, bodySpeed: 0 })
    this.stanceTime = timing.stanceTime
    this.bodySpeed = given.stanceSweep / timing.stanceTime
    const points = given.swingPoints
    if (points !== undefined) {
      const half = given.stanceSweep / 2
      this.forward = Float64Array.from([-half, ...points.map((p) => p.forward), half])
      this.up = Float64Array.from([0, ...points.map((p) => p.up), 0])
    }
    this.work = points === undefined ? NO_WORK : new Float64Array(points.length + 2)
    this.clearance = given.dutyFactor === 1 ? 0 : this.highest()
  }

  /** Position, velocity and acceleration of the foot at a time after touch-down, SI (9 numbers). Returns whether the foot stands. */
  stateInto(out: Float64Array, offset: number, time: number): boolean {
    const { midStance, stanceSweep, heading } = this.given
    const period = this.period
    const t = time - period * Math.floor(time / period)
    const stance = t < this.stanceTime
    const v = this.bodySpeed
    let along = 0.5 * stanceSweep - v * t
    let alongRate = -v
    let alongAcceleration = 0
    let up = 0
    let upRate = 0
    let upAcceleration = 0
    if (!stance) {
      const swingTime = period - this.stanceTime
      const u = (t - this.stanceTime) / swingTime
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

  /**
   * How much velocity and acceleration of the foot step at lift-off and at touch-down, as sizes: speed then acceleration at lift-off, then at touch-down.
   */
  steps(): readonly [number, number, number, number] {
    if (this.dutyFactor === 1) return [0, 0, 0, 0]
    const stance = new Float64Array(9)
    const swing = new Float64Array(9)
    this.stateInto(stance, 0, 0.5 * this.stanceTime)
    const sizes = [this.stanceTime, this.period * (1 - JUST_BEFORE_END)].flatMap((time) => {
      this.stateInto(swing, 0, time)
      const step = (k: number) => Math.hypot(swing[k]! - stance[k]!, swing[k + 1]! - stance[k + 1]!, swing[k + 2]! - stance[k + 2]!)
      return [step(3), step(6)]
    })
    return sizes as unknown as readonly [number, number, number, number]
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
