import { NoResultError, readInputs } from '../formula/index.js'
import { luFactor, luSolve } from '../numeric/index.js'
import { type Note, refuse } from '../units/index.js'
import type { ChainKernel } from './chain-kernel.js'
import { chainOf, type FloatingRobotSpecification, SPECIFICATION } from './floating-robot-masses.js'
import { ThreeJointLeg } from './leg.js'
import { type LinkSi, linkSi } from './link.js'
import { requireInstance, requireRecord } from './vectors.js'

/**
 * Motion of a robot on plain SI numbers. Everything of the body is in its own axes: x forward, y left, z up, at the origin that the legs' places are
 * measured from. Numbers of the legs are three a leg, in turn.
 */
export interface RobotMotion {
  /** Angular rate and velocity of the origin (6 numbers). */
  readonly twist: ArrayLike<number>
  /** Joint angles and rates. */
  readonly angles: ArrayLike<number>
  readonly rates: ArrayLike<number>
  /** Acceleration of free fall in the body's axes; tilt it for a tilted body. Default: (0, 0, −9.80665). */
  readonly gravity?: ArrayLike<number> | undefined
  /** Force of the ground on each foot, in the body's axes. Default: feet in the air. */
  readonly groundReaction?: ArrayLike<number> | undefined
}

/**
 * A robot that is fixed to nothing: body and legs as one system of rigid bodies, without rotors. Plain SI numbers; nothing is checked, and the calls
 * allocate: for simulation and design, not for a control loop.
 *
 * Source: R. Featherstone, *Rigid Body Dynamics Algorithms* (2008), floating bases; not opened. Each leg by Newton–Euler on the moving body.
 */
export class FloatingRobot {
  /** Remarks on the masses, such as an inertia that no body has. */
  readonly notes: readonly Note[] | undefined
  /** Degrees of freedom: six of the body, three a leg. */
  readonly size: number
  private readonly body: LinkSi
  private readonly legs: readonly ChainKernel[]

  /** @internal Use `floatingRobot`. */
  constructor(body: LinkSi, legs: readonly ChainKernel[], notes: readonly Note[]) {
    this.body = body
    this.legs = legs
    this.size = 6 + 3 * legs.length
    this.notes = notes.length === 0 ? undefined : notes
  }

  /**
   * Moment and force that must act on the body at its origin, then the joint torques (6 + 3 a leg), for a motion with given accelerations: angular
   * acceleration and acceleration of the origin (the material one), then those of the joints. The first six are zero for a motion that the ground's forces
   * and gravity alone make.
   */
  inverseDynamics(motion: RobotMotion, accelerations: ArrayLike<number>): Float64Array {
    const { twist: t, angles, rates, gravity: g = STANDARD_GRAVITY, groundReaction: r } = motion
    const base = Float64Array.of(t[0]!, t[1]!, t[2]!, accelerations[0]!, accelerations[1]!, accelerations[2]!, 0, 0, 0)
    for (let k = 0; k < 3; k++) base[6 + k] = accelerations[3 + k]! - g[k]!
    const out = new Float64Array(this.size)
    bodyLoad(out, this.body, base)
    const load = new Float64Array(9)
    const pose = new Float64Array(12)
    const push = new Float64Array(6)
    this.legs.forEach((leg, i) => {
      const of = (x: ArrayLike<number>, first = 0) => [x[first + 3 * i]!, x[first + 3 * i + 1]!, x[first + 3 * i + 2]!]
      const q = of(angles)
      if (r !== undefined) {
        // What the foot pushes with, in the axes of the shank.
        leg.poseInto(pose, 0, q)
        for (let k = 0; k < 3; k++) push[3 + k] = -(pose[k]! * r[3 * i]! + pose[3 + k]! * r[3 * i + 1]! + pose[6 + k]! * r[3 * i + 2]!)
      }
      leg.movingBaseInto(load, 0, q, of(rates), of(accelerations, 6), base, r === undefined ? undefined : push)
      for (let k = 0; k < 3; k++) out[6 + 3 * i + k] = load[k]!
      for (let k = 0; k < 6; k++) out[k] = out[k]! + load[3 + k]!
    })
    return out
  }

  /** Mass matrix of the whole robot, row-major: rotation and velocity of the body in its axes, then the joints. */
  massMatrix(angles: ArrayLike<number>): Float64Array {
    const n = this.size
    const M = new Float64Array(n * n)
    const still = { twist: new Float64Array(6), angles, rates: new Float64Array(n - 6), gravity: new Float64Array(3) }
    const unit = new Float64Array(n)
    for (let j = 0; j < n; j++) {
      unit.fill(0)
      unit[j] = 1
      const column = this.inverseDynamics(still, unit)
      for (let i = j; i < n; i++) {
        M[i * n + j] = column[i]!
        M[j * n + i] = column[i]!
      }
    }
    return M
  }

  /** Angular momentum about the body's origin, and linear momentum, in the body's axes (6 numbers). */
  momentum(motion: RobotMotion): Float64Array {
    const n = this.size
    const still = { twist: new Float64Array(6), angles: motion.angles, rates: new Float64Array(n - 6), gravity: new Float64Array(3) }
    return this.inverseDynamics(still, Float64Array.from([...Array.from(motion.twist), ...Array.from(motion.rates)])).slice(0, 6)
  }

  /** Mass and centre of mass in the body's axes (4 numbers). */
  centreOfMass(angles: ArrayLike<number>): Float64Array {
    const [mass, x, y, z] = this.body
    const out = Float64Array.of(mass, mass * x, mass * y, mass * z)
    const centre = new Float64Array(3)
    this.legs.forEach((leg, i) => {
      const m = leg.centreOfMassInto(centre, 0, [angles[3 * i]!, angles[3 * i + 1]!, angles[3 * i + 2]!])
      out[0] = out[0]! + m
      for (let k = 0; k < 3; k++) out[1 + k] = out[1 + k]! + m * centre[k]!
    })
    for (let k = 1; k < 4; k++) out[k] = out[0] === 0 ? 0 : out[k]! / out[0]!
    return out
  }

  /**
   * Accelerations of body and joints (6 + 3 a leg) under joint torques: forward dynamics of the floating robot. Throws a `NoResultError` where a part
   * moves no mass or a number is not a number.
   */
  forwardDynamics(motion: RobotMotion, torque: ArrayLike<number>): Float64Array {
    const n = this.size
    const bias = this.inverseDynamics(motion, new Float64Array(n))
    const out = Float64Array.from(bias, (x, i) => (i < 6 ? 0 : torque[i - 6]!) - x)
    const M = this.massMatrix(motion.angles)
    const pivots = new Int32Array(n)
    if (luFactor(M, n, pivots) === 0)
      throw new NoResultError('kinematics.floatingRobot.forwardDynamics: a part moves no mass, so its acceleration has no bound')
    luSolve(M, n, pivots, out)
    if (!out.every(Number.isFinite))
      throw new NoResultError('kinematics.floatingRobot.forwardDynamics: an acceleration is not a finite number')
    return out
  }
}

const STANDARD_GRAVITY = [0, 0, -9.80665] as const

/** Moment and force of the body's own motion at its origin (6 numbers); `base` as the chains take it. */
function bodyLoad(out: Float64Array, body: LinkSi, base: Float64Array): void {
  const [m, cx, cy, cz, xx, yy, zz, xy, xz, yz] = body
  const [wx, wy, wz, bx, by, bz, ax, ay, az] = base as unknown as [number, number, number, number, number, number, number, number, number]
  const wc = wx * cx + wy * cy + wz * cz
  const ww = wx * wx + wy * wy + wz * wz
  const fx = m * (ax + by * cz - bz * cy + wx * wc - ww * cx)
  const fy = m * (ay + bz * cx - bx * cz + wy * wc - ww * cy)
  const fz = m * (az + bx * cy - by * cx + wz * wc - ww * cz)
  const [hx, hy, hz] = [xx * wx + xy * wy + xz * wz, xy * wx + yy * wy + yz * wz, xz * wx + yz * wy + zz * wz]
  out[0] = xx * bx + xy * by + xz * bz + wy * hz - wz * hy + cy * fz - cz * fy
  out[1] = xy * bx + yy * by + yz * bz + wz * hx - wx * hz + cz * fx - cx * fz
  out[2] = xz * bx + yz * by + zz * bz + wx * hy - wy * hx + cx * fy - cy * fx
  out[3] = fx
  out[4] = fy
  out[5] = fz
}

/** A robot of a body and three-joint legs, fixed to nothing. Throws an `InputError` for a mass or moment below zero, or a leg that is not made. */
export function floatingRobot(given: FloatingRobotSpecification): FloatingRobot {
  const where = 'kinematics.floatingRobot'
  if (!Array.isArray(given?.legs)) refuse(where, 'legs', given?.legs, 'must be a list of legs')
  const legs = given.legs.map((each, i) => {
    requireRecord(where, each, `legs[${i}]`)
    const { leg } = each
    requireInstance(where, `legs[${i}].leg`, leg, ThreeJointLeg, 'threeJointLeg')
    return leg
  })
  const spec = readInputs(where, SPECIFICATION, { ...given, legs: given.legs.map(({ leg: _, ...rest }) => rest) })
  const notes: Note[] = []
  const body = linkSi(where, 'body', spec.body, notes)
  return new FloatingRobot(
    body,
    spec.legs.map((masses, i) => {
      for (const name of ['hipLink', 'upperLink', 'lowerLink'] as const) linkSi(where, `legs[${i}].${name}`, masses[name], notes)
      return chainOf(legs[i]!, masses)
    }),
    notes,
  )
}
