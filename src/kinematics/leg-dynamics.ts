import { type Given, type Inputs, readInputs, type Si } from '../formula/index.js'
import { InputError, Quantity } from '../units/index.js'
import { DriveCoupling } from './coupling.js'
import { type GivenAngles, ThreeJointLeg } from './leg.js'
import { LegDynamicsKernel } from './leg-dynamics-kernel.js'
import { determinant3, invert3, invertPositive3, multiply3, quadratic3, transpose3, unit3 } from './matrix3.js'
import { mustBeMade, noDirection, type PerJoint, perJoint, perJointOf, rowsOf, type Vector3, vectorOf, xyz } from './vectors.js'

const INERTIA = { kind: 'momentOfInertia', min: 0, default: '0 kg m^2' } as const
const PRODUCT = { kind: 'momentOfInertia', default: '0 kg m^2' } as const
/** A rigid link as `readInputs` takes it: mass, centre of mass and inertia about the centre of mass (off-diagonal terms −∫ r_i r_j dm). @internal */
export const LINK = {
  mass: { kind: 'mass', min: 0 },
  centreOfMass: { fields: /* @__PURE__ */ xyz('length') },
  inertia: { fields: { xx: INERTIA, yy: INERTIA, zz: INERTIA, xy: PRODUCT, xz: PRODUCT, yz: PRODUCT }, optional: true },
} as const satisfies Inputs
const SPECIFICATION = {
  hipLink: { fields: LINK },
  upperLink: { fields: LINK },
  lowerLink: { fields: LINK },
  gravity: { fields: /* @__PURE__ */ xyz('acceleration'), optional: true },
} as const satisfies Inputs

/**
 * Masses of a leg. Each link's centre of mass is taken from its own joint, in a frame parallel to the leg's frame when the leg hangs straight down:
 * the hip link's from the sideways hip's axis, the upper link's from the hip point, the lower link's from the knee (foot included). Gravity is a vector of
 * the leg's frame, so that a slope or a tilted body can be given; by default 9.80665 m/s² downward.
 */
export interface LegMasses extends Given<typeof SPECIFICATION> {}

const STANDARD_GRAVITY = [0, 0, -9.80665] as const

/** One link's ten numbers in the kernel's order. Throws an `InputError` where the inertia is no body's. @internal */
export const linkSi = (where: string, path: string, link: Si<typeof LINK>): number[] => {
  const { mass, centreOfMass: c, inertia } = link
  const { xx, yy, zz, xy, xz, yz } = inertia ?? { xx: 0, yy: 0, zz: 0, xy: 0, xz: 0, yz: 0 }
  const slack = 1e-12 * (xx + yy + zz)
  const minors = [xx * yy - xy * xy, xx * zz - xz * xz, yy * zz - yz * yz]
  const determinant = determinant3([xx, xy, xz, xy, yy, yz, xz, yz, zz])
  if (minors.some((minor) => minor < -slack * slack) || determinant < -(slack ** 3))
    throw new InputError(where, [
      {
        path: `${path}.inertia`,
        given: 'products beyond its moments',
        accepts: 'must be the tensor of a body: no axis with a moment below zero',
      },
    ])
  return [mass, c.x, c.y, c.z, xx, yy, zz, xy, xz, yz]
}

const MOTION = {
  angles: { fields: /* @__PURE__ */ perJoint('angle') },
  rates: { fields: /* @__PURE__ */ perJoint('angularVelocity') },
  accelerations: { fields: /* @__PURE__ */ perJoint('angularAcceleration') },
  groundReaction: { fields: /* @__PURE__ */ xyz('force'), optional: true },
} as const satisfies Inputs
const ROTOR = { kind: 'momentOfInertia', min: 0 } as const
const ROTORS = { sidewaysHip: ROTOR, hip: ROTOR, knee: ROTOR } as const satisfies Inputs
const EFFECTIVE = {
  angles: { fields: /* @__PURE__ */ perJoint('angle') },
  direction: { fields: /* @__PURE__ */ xyz('ratio') },
} as const satisfies Inputs

/** A leg with masses: what its motion asks of the joints. Immutable; `si` is the form on plain numbers. */
export class LegDynamics {
  /** Dynamics on plain SI numbers: nothing checked, nothing allocated. */
  readonly si: LegDynamicsKernel

  /** The same leg without the rotors: their inertia acts at the motors. @internal */
  readonly withoutRotors: LegDynamicsKernel

  /** @internal Use `legDynamics`. */
  constructor(
    /** The leg's geometry. */
    readonly leg: ThreeJointLeg,
    given: Si<typeof SPECIFICATION>,
  ) {
    const { hipOffset, upperLink, lowerLink } = leg.si
    const link = (name: 'hipLink' | 'upperLink' | 'lowerLink') => linkSi('kinematics.legDynamics', name, given[name])
    const { gravity: g } = given
    const gravity = g === undefined ? STANDARD_GRAVITY : [g.x, g.y, g.z]
    this.si = new LegDynamicsKernel(hipOffset, upperLink, lowerLink, [link('hipLink'), link('upperLink'), link('lowerLink')], gravity)
    this.withoutRotors = this.si
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
    this.si.gravityInto(out, 0, q)
    return perJointOf('torque', out)
  }

  /** Joint torques of the rates alone (centrifugal and Coriolis). */
  coriolisTorque(given: { readonly angles: GivenAngles; readonly rates: Given<typeof MOTION.rates.fields> }): PerJoint<Quantity<'torque'>> {
    const { angles, rates } = readInputs('kinematics.legDynamics.coriolisTorque', { angles: MOTION.angles, rates: MOTION.rates }, given)
    const out = new Float64Array(3)
    this.si.coriolisInto(out, 0, joints(angles), joints(rates))
    return perJointOf('torque', out)
  }

  /** Mass matrix in joint space, without the motors' rotors. */
  massMatrix(angles: GivenAngles): Quantity<'momentOfInertia'>[][] {
    const q = joints(readInputs('kinematics.legDynamics.massMatrix', perJoint('angle'), angles))
    const out = new Float64Array(9)
    this.si.massMatrixInto(out, 0, q)
    return rowsOf('momentOfInertia', out, 3)
  }

  /** Centre of mass of the whole leg, and its mass. */
  centreOfMass(angles: GivenAngles): { readonly position: Vector3<'length'>; readonly mass: Quantity<'mass'> } {
    const q = joints(readInputs('kinematics.legDynamics.centreOfMass', perJoint('angle'), angles))
    const out = new Float64Array(3)
    const mass = this.si.centreOfMassInto(out, 0, q)
    return { position: vectorOf('length', out), mass: new Quantity(mass, 'mass') }
  }

  /**
   * What a push on the foot has to accelerate, along a direction: `free` when the foot may also move sideways to the push, `constrained` when it is
   * guided along the direction (always the larger). Pass the rotors and the coupling, or the answer holds for a leg without motors; the body is
   * taken as fixed. `undefined` is a mass without a bound: at a singular pose the foot cannot be moved along the lost direction, and not be guided at all.
   */
  effectiveMass(
    given: Given<typeof EFFECTIVE>,
    drives?: { readonly coupling: DriveCoupling; readonly rotorInertiaAtOutput: Given<typeof ROTORS> },
  ): EffectiveMass {
    const where = 'kinematics.legDynamics.effectiveMass'
    const { angles, direction: u } = readInputs(where, EFFECTIVE, given)
    const q = joints(angles)
    const M = new Float64Array(9)
    this.si.massMatrixInto(M, 0, q)
    if (drives !== undefined) {
      mustBeMade(where, 'coupling', drives.coupling, DriveCoupling, 'driveCoupling')
      const rotors = new Float64Array(9)
      drives.coupling.si.jointMatrixInto(rotors, 0, q, joints(readInputs(where, ROTORS, drives.rotorInertiaAtOutput)))
      for (let i = 0; i < 9; i++) M[i]! += rotors[i]!
    }
    const J = new Float64Array(9)
    this.leg.si.jacobianInto(J, 0, q[0]!, q[1]!, q[2]!)
    const direction = unit3([u.x, u.y, u.z])
    if (direction === undefined) throw noDirection(where)
    const inverseM = new Float64Array(9)
    const transposed = new Float64Array(9)
    const half = new Float64Array(9)
    const mobility = new Float64Array(9)
    if (!invertPositive3(inverseM, M)) return { free: undefined, constrained: undefined }
    transpose3(transposed, J)
    multiply3(half, inverseM, transposed)
    multiply3(mobility, J, half)
    return effectiveMassOf(mobility, direction)
  }
}

/** Effective mass along a direction; `undefined` where there is no bound to it. */
export interface EffectiveMass {
  /** The point may move across the direction too. */
  readonly free: Quantity<'mass'> | undefined
  /** The point is guided along the direction. */
  readonly constrained: Quantity<'mass'> | undefined
}

/** Effective mass from the mobility J M⁻¹ Jᵀ of a point (SI), along a unit vector. @internal */
export function effectiveMassOf(mobility: Float64Array, u: ArrayLike<number>): EffectiveMass {
  const along = quadratic3(mobility, u)
  const inertia = new Float64Array(9)
  return {
    free: along > 1e-14 * Math.max(...mobility.map(Math.abs)) ? new Quantity(1 / along, 'mass') : undefined,
    constrained: invert3(inertia, mobility) ? new Quantity(quadratic3(inertia, u), 'mass') : undefined,
  }
}

const joints = (x: PerJoint<number>) => Float64Array.from([x.sidewaysHip, x.hip, x.knee])

/** Gives a leg masses. Throws an `InputError` for a mass below zero, an inertia that no body has, or a value that cannot be read. */
export function legDynamics(leg: ThreeJointLeg, given: LegMasses): LegDynamics {
  const where = 'kinematics.legDynamics'
  mustBeMade(where, 'leg', leg, ThreeJointLeg, 'threeJointLeg')
  return new LegDynamics(leg, readInputs(where, SPECIFICATION, given))
}
