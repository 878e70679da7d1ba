import { type Given, type Inputs, readInputs, type Si } from '../formula/index.js'
import { Quantity } from '../units/index.js'
import type { DriveCoupling } from './coupling.js'
import type { GivenAngles, ThreeJointLeg } from './leg.js'
import { LegDynamicsKernel } from './leg-dynamics-kernel.js'
import { invert3, multiply3, quadratic3, transpose3, unit3 } from './matrix3.js'
import { noDirection, type PerJoint, perJoint, perJointOf, rowsOf, type Vector3, vectorOf, xyz } from './vectors.js'

const INERTIA = { kind: 'momentOfInertia', default: '0 kg m^2' } as const
/** A rigid link as `readInputs` takes it: mass, centre of mass and inertia about the centre of mass (off-diagonal terms −∫ r_i r_j dm). @internal */
export const LINK = {
  mass: { kind: 'mass', min: 0 },
  centreOfMass: { fields: /* @__PURE__ */ xyz('length') },
  inertia: { fields: { xx: INERTIA, yy: INERTIA, zz: INERTIA, xy: INERTIA, xz: INERTIA, yz: INERTIA }, optional: true },
} as const satisfies Inputs
const SPECIFICATION = {
  hipLink: { fields: LINK },
  upperLink: { fields: LINK },
  lowerLink: { fields: LINK },
  gravity: { fields: /* @__PURE__ */ xyz('acceleration'), optional: true },
} as const satisfies Inputs

/**
 * Masses of a leg. Each link's centre of mass is taken from its own joint, in a frame parallel to the leg's frame when the leg hangs straight down:
 * the hip link's from the abduction axis, the upper link's from the hip point, the lower link's from the knee (foot included). Gravity is a vector of
 * the leg's frame, so that a slope or a tilted body can be given; by default 9.80665 m/s² downward.
 */
export interface LegMasses extends Given<typeof SPECIFICATION> {}

const STANDARD_GRAVITY = [0, 0, -9.80665] as const

/** One link's ten numbers in the kernel's order. @internal */
export const linkSi = (link: Si<typeof LINK>): number[] => {
  const { mass, centreOfMass: c, inertia } = link
  return [mass, c.x, c.y, c.z, inertia?.xx ?? 0, inertia?.yy ?? 0, inertia?.zz ?? 0, inertia?.xy ?? 0, inertia?.xz ?? 0, inertia?.yz ?? 0]
}

const MOTION = {
  angles: { fields: /* @__PURE__ */ perJoint('angle') },
  rates: { fields: /* @__PURE__ */ perJoint('angularVelocity') },
  accelerations: { fields: /* @__PURE__ */ perJoint('angularAcceleration') },
  groundReaction: { fields: /* @__PURE__ */ xyz('force'), optional: true },
} as const satisfies Inputs
const EFFECTIVE = {
  angles: { fields: /* @__PURE__ */ perJoint('angle') },
  direction: { fields: /* @__PURE__ */ xyz('ratio') },
} as const satisfies Inputs

/** A leg with masses: what its motion asks of the joints. Immutable; `si` is the form on plain numbers. */
export class LegDynamics {
  /** Inverse dynamics on plain SI numbers: nothing checked, nothing allocated. */
  readonly si: LegDynamicsKernel
  private readonly still: LegDynamicsKernel
  private readonly links: readonly [number[], number[], number[]]
  private readonly gravity: readonly number[]

  /** @internal Use `legDynamics`. */
  constructor(
    /** The leg's geometry. */
    readonly leg: ThreeJointLeg,
    given: Si<typeof SPECIFICATION>,
  ) {
    const { hipOffset, upperLink, lowerLink } = leg.si
    this.links = [linkSi(given.hipLink), linkSi(given.upperLink), linkSi(given.lowerLink)]
    this.gravity = given.gravity === undefined ? STANDARD_GRAVITY : [given.gravity.x, given.gravity.y, given.gravity.z]
    this.si = new LegDynamicsKernel(hipOffset, upperLink, lowerLink, this.links, this.gravity)
    this.still = new LegDynamicsKernel(hipOffset, upperLink, lowerLink, this.links, [0, 0, 0])
  }

  /** Joint torques of a motion, with a force of the **ground on the foot** where the foot stands. */
  inverseDynamics(given: Given<typeof MOTION>): PerJoint<Quantity<'torque'>> {
    const { angles, rates, accelerations, groundReaction: r } = readInputs('kinematics.legDynamics.inverseDynamics', MOTION, given)
    const out = new Float64Array(3)
    this.si.torqueInto(out, 0, joints(angles), joints(rates), joints(accelerations), r?.x ?? 0, r?.y ?? 0, r?.z ?? 0)
    return perJointOf('torque', out)
  }

  /** Joint torques that hold the leg's own weight. */
  gravityTorque(angles: GivenAngles): PerJoint<Quantity<'torque'>> {
    const q = joints(readInputs('kinematics.legDynamics.gravityTorque', perJoint('angle'), angles))
    const out = new Float64Array(3)
    this.si.torqueInto(out, 0, q, ZERO, ZERO, 0, 0, 0)
    return perJointOf('torque', out)
  }

  /** Joint torques of the rates alone (centrifugal and Coriolis). */
  coriolisTorque(given: { readonly angles: GivenAngles; readonly rates: Given<typeof MOTION.rates.fields> }): PerJoint<Quantity<'torque'>> {
    const { angles, rates } = readInputs('kinematics.legDynamics.coriolisTorque', { angles: MOTION.angles, rates: MOTION.rates }, given)
    const out = new Float64Array(3)
    this.still.torqueInto(out, 0, joints(angles), joints(rates), ZERO, 0, 0, 0)
    return perJointOf('torque', out)
  }

  /** Mass matrix in joint space, without the motors' rotors. */
  massMatrix(angles: GivenAngles): Quantity<'momentOfInertia'>[][] {
    const q = joints(readInputs('kinematics.legDynamics.massMatrix', perJoint('angle'), angles))
    const out = new Float64Array(9)
    this.massMatrixInto(out, 0, q)
    return rowsOf('momentOfInertia', out, 3)
  }

  /** Mass matrix on SI numbers, row-major (9 numbers), made exactly symmetric. */
  massMatrixInto(out: Float64Array, offset: number, q: Float64Array): void {
    const unit = new Float64Array(3)
    const column = new Float64Array(3)
    for (let j = 0; j < 3; j++) {
      unit.fill(0)
      unit[j] = 1
      this.still.torqueInto(column, 0, q, ZERO, unit, 0, 0, 0)
      for (let i = j; i < 3; i++) {
        out[offset + 3 * i + j] = column[i]!
        out[offset + 3 * j + i] = column[i]!
      }
    }
  }

  /** Centre of mass of the whole leg, and its mass. */
  centreOfMass(angles: GivenAngles): { readonly position: Vector3<'length'>; readonly mass: Quantity<'mass'> } {
    const q = joints(readInputs('kinematics.legDynamics.centreOfMass', perJoint('angle'), angles))
    const out = new Float64Array(3)
    const mass = this.centreOfMassInto(out, 0, q)
    return { position: vectorOf('length', out), mass: new Quantity(mass, 'mass') }
  }

  /** Centre of mass of the whole leg, SI (3 numbers); returns the mass. A leg without mass has its centre at the abduction axis. */
  centreOfMassInto(out: Float64Array, offset: number, q: ArrayLike<number>): number {
    const points = new Float64Array(9)
    this.leg.si.jointsInto(points, 0, q[0]!, q[1]!, q[2]!)
    const s1 = Math.sin(q[0]!)
    const c1 = Math.cos(q[0]!)
    let total = 0
    const sum = [0, 0, 0]
    this.links.forEach(([m, cx, cy, cz], i) => {
      const pitch = i === 0 ? 0 : i === 1 ? q[1]! : q[1]! + q[2]!
      const inPlaneX = Math.cos(pitch) * cx! + Math.sin(pitch) * cz!
      const inPlaneZ = Math.cos(pitch) * cz! - Math.sin(pitch) * cx!
      const origin = i === 0 ? [0, 0, 0] : [points[3 * (i - 1)]!, points[3 * (i - 1) + 1]!, points[3 * (i - 1) + 2]!]
      total += m!
      sum[0]! += m! * (origin[0]! + inPlaneX)
      sum[1]! += m! * (origin[1]! + c1 * cy! - s1 * inPlaneZ)
      sum[2]! += m! * (origin[2]! + s1 * cy! + c1 * inPlaneZ)
    })
    for (let k = 0; k < 3; k++) out[offset + k] = total === 0 ? 0 : sum[k]! / total
    return total
  }

  /** Potential energy of the leg's own weight, J, with the abduction axis as the zero. */
  potentialEnergySi(q: ArrayLike<number>): number {
    const c = new Float64Array(3)
    const mass = this.centreOfMassInto(c, 0, q)
    return -mass * (this.gravity[0]! * c[0]! + this.gravity[1]! * c[1]! + this.gravity[2]! * c[2]!)
  }

  /**
   * What a push on the foot has to accelerate, along a direction: `free` when the foot may also move sideways to the push, `constrained` when it is
   * guided along the direction (always the larger). Pass the rotors and the coupling, or the answer holds for a leg without motors; the body is
   * taken as fixed. `undefined` at a singular pose, where no finite mass exists for the free foot across the lost direction.
   */
  effectiveMass(
    given: Given<typeof EFFECTIVE>,
    drives?: { readonly coupling: DriveCoupling; readonly rotorInertiaAtOutput: PerJoint<number> },
  ): { readonly free: Quantity<'mass'>; readonly constrained: Quantity<'mass'> } | undefined {
    const { angles, direction: u } = readInputs('kinematics.legDynamics.effectiveMass', EFFECTIVE, given)
    const q = joints(angles)
    const M = new Float64Array(9)
    this.massMatrixInto(M, 0, q)
    if (drives !== undefined) {
      const rotors = new Float64Array(9)
      drives.coupling.jointMatrixInto(rotors, 0, q, joints(drives.rotorInertiaAtOutput))
      for (let i = 0; i < 9; i++) M[i]! += rotors[i]!
    }
    const J = new Float64Array(9)
    this.leg.si.jacobianInto(J, 0, q[0]!, q[1]!, q[2]!)
    const direction = unit3([u.x, u.y, u.z])
    if (direction === undefined) throw noDirection('kinematics.legDynamics.effectiveMass')
    const inverseM = new Float64Array(9)
    const transposed = new Float64Array(9)
    const half = new Float64Array(9)
    const mobility = new Float64Array(9)
    const inertia = new Float64Array(9)
    if (!invert3(inverseM, M)) return undefined
    transpose3(transposed, J)
    multiply3(half, inverseM, transposed)
    multiply3(mobility, J, half)
    if (!invert3(inertia, mobility)) return undefined
    return {
      free: new Quantity(1 / quadratic3(mobility, direction), 'mass'),
      constrained: new Quantity(quadratic3(inertia, direction), 'mass'),
    }
  }
}

const ZERO = /* @__PURE__ */ new Float64Array(3)
const joints = (x: PerJoint<number>) => Float64Array.from([x.abduction, x.hip, x.knee])

/** Gives a leg masses. Throws an `InputError` for a mass below zero or a value that cannot be read. */
export const legDynamics = (leg: ThreeJointLeg, given: LegMasses): LegDynamics =>
  new LegDynamics(leg, readInputs('kinematics.legDynamics', SPECIFICATION, given))
