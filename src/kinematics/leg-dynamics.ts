import { type Given, type Inputs, NoResultError, readInputs, requireKeys, type Si } from '../formula/index.js'
import { type Note, Quantity, refuse } from '../units/index.js'
import { DriveCoupling, driveCoupling } from './coupling.js'
import { type EffectiveMass, effectiveMassOf } from './effective-mass.js'
import { ThreeJointLeg } from './leg.js'
import { LegDynamicsKernel } from './leg-dynamics-kernel.js'
import type { GivenAngles } from './leg-inputs.js'
import { type LegMasses, LINKS, rotorsAtJoints, SPECIFICATION } from './leg-masses.js'
import { joinedLinks, type LINK, linkSi } from './link.js'
import { invertPositive3, multiply3, transpose3, unit3 } from './matrix3.js'
import { noDirection, type PerJoint, perJoint, perJointOf, requireInstance, rowsOf, type Vector3, vectorOf, xyz } from './vectors.js'

const STANDARD_GRAVITY = [0, 0, -9.80665] as const

const MOTION = {
  angles: { fields: /* @__PURE__ */ perJoint('angle') },
  rates: { fields: /* @__PURE__ */ perJoint('angularVelocity') },
  accelerations: { fields: /* @__PURE__ */ perJoint('angularAcceleration') },
  groundReaction: { fields: /* @__PURE__ */ xyz('force'), optional: true },
} as const satisfies Inputs
const UNDER_TORQUE = {
  angles: MOTION.angles,
  rates: MOTION.rates,
  torque: { fields: /* @__PURE__ */ perJoint('torque') },
  groundReaction: MOTION.groundReaction,
} as const satisfies Inputs
const ROTOR = { kind: 'momentOfInertia', min: 0 } as const
const ROTORS = { sidewaysHip: ROTOR, hip: ROTOR, knee: ROTOR } as const satisfies Inputs
const EFFECTIVE = {
  angles: { fields: /* @__PURE__ */ perJoint('angle') },
  direction: { fields: /* @__PURE__ */ xyz('ratio') },
} as const satisfies Inputs

/** A leg with masses: torques of a motion, motion under torques, weight, energy. Immutable; `si` is the form on plain numbers. */
export class LegDynamics {
  /** Dynamics on plain SI numbers: nothing checked, nothing allocated. */
  readonly si: LegDynamicsKernel

  /** Whether rotors are in the mass matrix. */
  readonly hasRotors: boolean
  /** The same leg without the rotors: their inertia acts at the motors. @internal */
  readonly withoutRotors: LegDynamicsKernel

  /** Remarks on the masses, such as an inertia that no body has; every result carries them. */
  readonly notes: readonly Note[] | undefined

  /** @internal Use `legDynamics`. */
  constructor(
    /** The leg's geometry. */
    readonly leg: ThreeJointLeg,
    given: Si<typeof SPECIFICATION>,
    rotorInertia: Float64Array,
  ) {
    const { hipOffset, upperLink, lowerLink } = leg.si
    const notes: Note[] = []
    const body = (path: string, link: Si<typeof LINK>) => linkSi('kinematics.legDynamics', path, link, notes)
    const links = LINKS.map((name) =>
      (given.motors ?? []).reduce<readonly number[]>(
        (sum, motor, i) => (motor.on === name ? joinedLinks(sum, body(`motors[${i}]`, motor)) : sum),
        body(name, given[name]),
      ),
    ) as unknown as readonly [number[], number[], number[]]
    const { gravity: g } = given
    const gravity = g === undefined ? STANDARD_GRAVITY : [g.x, g.y, g.z]
    this.withoutRotors = new LegDynamicsKernel(hipOffset, upperLink, lowerLink, links, gravity)
    this.hasRotors = rotorInertia.some((x) => x !== 0)
    this.si = this.hasRotors ? new LegDynamicsKernel(hipOffset, upperLink, lowerLink, links, gravity, rotorInertia) : this.withoutRotors
    this.notes = notes.length === 0 ? undefined : notes
  }

  /** Joint torques of a motion, with a force of the **ground on the foot** where the foot stands. */
  inverseDynamics(given: Given<typeof MOTION>): PerJoint<Quantity<'torque'>> {
    const { angles, rates, accelerations, groundReaction: r } = readInputs('kinematics.legDynamics.inverseDynamics', MOTION, given)
    const out = new Float64Array(3)
    this.si.torqueInto(out, 0, joints(angles), joints(rates), joints(accelerations), r?.x ?? 0, r?.y ?? 0, r?.z ?? 0)
    return perJointOf('torque', out, 0, this.notes)
  }

  /**
   * Joint accelerations under joint torques, with a force of the **ground on the foot** where the foot stands. Throws a `NoResultError` where a joint
   * moves no mass.
   */
  forwardDynamics(given: Given<typeof UNDER_TORQUE>): PerJoint<Quantity<'angularAcceleration'>> {
    const where = 'kinematics.legDynamics.forwardDynamics'
    const { angles, rates, torque, groundReaction: r } = readInputs(where, UNDER_TORQUE, given)
    const out = new Float64Array(3)
    if (!this.si.accelerationsInto(out, 0, joints(angles), joints(rates), joints(torque), r?.x ?? 0, r?.y ?? 0, r?.z ?? 0))
      throw new NoResultError(`${where}: a joint moves no mass in this pose, so its acceleration has no bound`)
    return perJointOf('angularAcceleration', out, 0, this.notes)
  }

  /** Joint torques that hold the leg's own weight. */
  gravityTorque(angles: GivenAngles): PerJoint<Quantity<'torque'>> {
    const q = joints(readInputs('kinematics.legDynamics.gravityTorque', perJoint('angle'), angles))
    const out = new Float64Array(3)
    this.si.gravityInto(out, 0, q)
    return perJointOf('torque', out, 0, this.notes)
  }

  /** Joint torques of the rates alone (centrifugal and Coriolis). */
  coriolisTorque(given: { readonly angles: GivenAngles; readonly rates: Given<typeof MOTION.rates.fields> }): PerJoint<Quantity<'torque'>> {
    const { angles, rates } = readInputs('kinematics.legDynamics.coriolisTorque', { angles: MOTION.angles, rates: MOTION.rates }, given)
    const out = new Float64Array(3)
    this.si.coriolisInto(out, 0, joints(angles), joints(rates))
    return perJointOf('torque', out, 0, this.notes)
  }

  /** Mass matrix in joint space, with the rotors where `rotors` were given. */
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
   * assumed to be fixed. `undefined` is a mass without a bound: at a singular pose the foot cannot be moved along the lost direction, and not be guided at all.
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
      if (this.hasRotors) refuse(where, 'drives', drives, 'must be absent, because the rotors are in legDynamics already')
      requireKeys(where, 'drives', drives, ['coupling', 'rotorInertiaAtOutput'])
      requireInstance(where, 'coupling', drives.coupling, DriveCoupling, 'driveCoupling')
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

const joints = (x: PerJoint<number>) => Float64Array.from([x.sidewaysHip, x.hip, x.knee])

/** Gives a leg masses. Throws an `InputError` for a mass or a principal moment below zero, or a value that cannot be read. */
export function legDynamics(leg: ThreeJointLeg, given: LegMasses): LegDynamics {
  const where = 'kinematics.legDynamics'
  requireInstance(where, 'leg', leg, ThreeJointLeg, 'threeJointLeg')
  const { coupling, ...rest } = given ?? ({} as Partial<LegMasses>)
  if (coupling !== undefined) requireInstance(where, 'coupling', coupling, DriveCoupling, 'driveCoupling')
  const spec = readInputs(where, SPECIFICATION, rest)
  return new LegDynamics(leg, spec, rotorsAtJoints(where, spec.rotors, coupling ?? driveCoupling({ knee: 'motorAtKnee' })))
}
