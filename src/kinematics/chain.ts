import { type Given, NoResultError, readInputs, requireKeys } from '../formula/index.js'
import { Quantity } from '../units/index.js'
import { type DenavitHartenbergChain, kernelFromScrews, kernelFromTable, rotationSi, type ScrewChain } from './chain-build.js'
import type { ChainKernel } from './chain-kernel.js'
import { mobilityOf, spreadOf } from './chain-mobility.js'
import { effortsOf, readLimits, readNumbers, readPush, readValues, sixRows, valuesOf } from './chain-reading.js'
import { searchInverse } from './chain-search.js'
import {
  type GivenJointValues,
  INVERSE,
  type InverseAnswer,
  type InverseTarget,
  type JointEffort,
  type Pose,
  type ToolPush,
} from './chain-values.js'
import { type EffectiveMass, effectiveMassOf } from './effective-mass.js'
import { unit3 } from './matrix3.js'
import { noDirection, requireRecord, rowsOf, type Vector3, vectorOf, xyz } from './vectors.js'

/** A serial chain of any number of joints. Immutable; `si` is its arithmetic on plain numbers. */
export class SerialChain {
  /** @internal Use `chainFromScrews` or `chainFromDenavitHartenberg`. */
  constructor(
    /** The arithmetic on plain SI numbers: nothing checked, nothing allocated. */
    readonly si: ChainKernel,
  ) {}

  /** Place and rotation of the tool. */
  pose(values: GivenJointValues): Pose {
    const out = new Float64Array(12)
    this.si.poseInto(out, 0, readValues(this.si, 'pose', values))
    return { position: vectorOf('length', out, 9), rotation: rowsOf('ratio', out.subarray(0, 9), 3) }
  }

  /** Space Jacobian on SI numbers, 6 rows of n: angular velocity, then velocity of the point passing the base's origin. */
  spaceJacobian(values: GivenJointValues): number[][] {
    const out = new Float64Array(6 * this.si.joints)
    this.si.spaceJacobianInto(out, 0, readValues(this.si, 'spaceJacobian', values))
    return sixRows(this.si, out)
  }

  /** Body Jacobian on SI numbers, 6 rows of n: the tool's twist in its own axes, angular part first. */
  bodyJacobian(values: GivenJointValues): number[][] {
    const out = new Float64Array(6 * this.si.joints)
    this.si.bodyJacobianInto(out, 0, readValues(this.si, 'bodyJacobian', values))
    return sixRows(this.si, out)
  }

  /** Jacobian of the tool's rotation and origin in base axes on SI numbers, 6 rows of n, angular part first. */
  jacobian(values: GivenJointValues): number[][] {
    const out = new Float64Array(6 * this.si.joints)
    this.si.jacobianInto(out, 0, readValues(this.si, 'jacobian', values))
    return sixRows(this.si, out)
  }

  /** Torques (forces) that hold the chain's weight. */
  gravity(values: GivenJointValues): JointEffort[] {
    const out = new Float64Array(this.si.joints)
    this.si.gravityInto(out, 0, readValues(this.si, 'gravity', values))
    return effortsOf(this.si, out)
  }

  /**
   * Torques (forces) of a motion on SI numbers: rates and accelerations in radians (metres) per second. `toolPush` is moment and force, in the
   * tool's axes, with which the tool **pushes its surroundings**.
   */
  inverseDynamics(given: {
    readonly values: GivenJointValues
    readonly rates: readonly number[]
    readonly accelerations: readonly number[]
    readonly toolPush?: ToolPush
  }): JointEffort[] {
    const where = 'inverseDynamics'
    requireRecord(`kinematics.serialChain.${where}`, given)
    requireKeys(`kinematics.serialChain.${where}`, '', given, ['values', 'rates', 'accelerations', 'toolPush'])
    const q = readValues(this.si, where, given.values)
    const w = readNumbers(this.si, where, 'rates', given.rates)
    const a = readNumbers(this.si, where, 'accelerations', given.accelerations)
    const out = new Float64Array(this.si.joints)
    this.si.torqueInto(out, 0, q, w, a, readPush(where, given.toolPush))
    return effortsOf(this.si, out)
  }

  /** Mass matrix on SI numbers, rotors included. */
  massMatrix(values: GivenJointValues): number[][] {
    const n = this.si.joints
    const out = new Float64Array(n * n)
    this.si.massMatrixInto(out, 0, readValues(this.si, 'massMatrix', values))
    return Array.from({ length: n }, (_, i) => Array.from(out.subarray(i * n, (i + 1) * n)))
  }

  /** Torques (forces) of the rates alone, centrifugal and Coriolis. */
  coriolis(values: GivenJointValues, rates: readonly number[]): JointEffort[] {
    const out = new Float64Array(this.si.joints)
    this.si.coriolisInto(out, 0, readValues(this.si, 'coriolis', values), readNumbers(this.si, 'coriolis', 'rates', rates))
    return effortsOf(this.si, out)
  }

  /** Centre of mass of the whole chain, and its mass. */
  centreOfMass(values: GivenJointValues): { readonly position: Vector3<'length'>; readonly mass: Quantity<'mass'> } {
    const out = new Float64Array(3)
    const mass = this.si.centreOfMassInto(out, 0, readValues(this.si, 'centreOfMass', values))
    return { position: vectorOf('length', out), mass: new Quantity(mass, 'mass') }
  }

  /**
   * What a push on the tool's origin has to accelerate, along a direction: `free` when it may also move across the push, `constrained` when it is
   * guided along the direction. Neither exists (`undefined`) where a joint moves no mass, the guided one where the chain cannot move the tool in three independent directions.
   */
  effectiveMass(values: GivenJointValues, direction: Given<ReturnType<typeof xyz<'ratio'>>>): EffectiveMass {
    const where = 'kinematics.serialChain.effectiveMass'
    const { x, y, z } = readInputs(where, xyz('ratio'), direction)
    const u = unit3([x, y, z])
    if (u === undefined) throw noDirection(where)
    const mobility = mobilityOf(this.si, readValues(this.si, 'effectiveMass', values))
    return mobility === undefined ? { free: undefined, constrained: undefined } : effectiveMassOf(mobility, u)
  }

  /**
   * Joint values that bring the tool to a place (and rotation) by damped least squares, from a seed and from `restarts` drawn ones. The answer has the
   * best values found and the errors that remain. `localStop` means that no small motion comes nearer, which is not the nearest pose for certain;
   * `nearestFound` that eight or more searches agree on it. For the three-joint leg `jointAngles` is exact.
   */
  inverse(target: InverseTarget): InverseAnswer {
    const where = 'kinematics.serialChain.inverse'
    requireRecord(where, target)
    const { seed, preferred, limits, ...rest } = target
    const spec = readInputs(where, INVERSE, rest)
    const { lowest, highest } = readLimits(this.si, where, limits)
    const found = searchInverse(this.si, {
      position: [spec.position.x, spec.position.y, spec.position.z],
      rotation: spec.rotation === undefined ? undefined : rotationSi(where, 'rotation', spec.rotation),
      lengthPerRadian: spec.lengthPerRadian,
      seed: readValues(this.si, 'inverse', seed, 'seed'),
      preferred: preferred === undefined ? undefined : readValues(this.si, 'inverse', preferred, 'preferred'),
      lowest,
      highest,
      tolerance: spec.tolerance,
      maxIterations: spec.maxIterations,
      restarts: spec.restarts,
      randomSeed: spec.randomSeed,
    })
    const { ended, best, searches, agreeing, solutions } = found
    if (ended === 'notANumber') throw new NoResultError(`${where}: the error of the pose is not a finite number`)
    return {
      ended,
      values: valuesOf(this.si, best.values),
      positionError: new Quantity(best.positionError, 'length'),
      rotationError: new Quantity(best.rotationError, 'angle'),
      iterations: best.iterations,
      searches,
      agreeing,
      solutions: solutions.map((values) => valuesOf(this.si, values)),
    }
  }

  /** Joint accelerations under joint torques (forces) on SI numbers: forward dynamics. Throws a `NoResultError` where a joint moves no mass. */
  forwardDynamics(given: {
    readonly values: GivenJointValues
    readonly rates: readonly number[]
    readonly efforts: readonly number[]
    readonly toolPush?: ToolPush
  }): number[] {
    const where = 'forwardDynamics'
    requireRecord(`kinematics.serialChain.${where}`, given)
    requireKeys(`kinematics.serialChain.${where}`, '', given, ['values', 'rates', 'efforts', 'toolPush'])
    const q = readValues(this.si, where, given.values)
    const [w, efforts] = [readNumbers(this.si, where, 'rates', given.rates), readNumbers(this.si, where, 'efforts', given.efforts)]
    const out = new Float64Array(this.si.joints)
    if (!this.si.accelerationsInto(out, 0, q, w, efforts, readPush(where, given.toolPush)))
      throw new NoResultError(`kinematics.serialChain.${where}: a joint moves no mass, so its acceleration has no bound`)
    return Array.from(out)
  }

  /**
   * How well the tool moves at joint values: singular values of its Jacobian, the largest first. `velocity` is of its origin, m/s per unit of joint rates
   * (a radian or a metre per second); `rotation` of its angular rate. A value near zero is a direction that is lost.
   */
  singularValues(values: GivenJointValues): { readonly velocity: number[]; readonly rotation: number[] } {
    const n = this.si.joints
    const J = new Float64Array(6 * n)
    this.si.jacobianInto(J, 0, readValues(this.si, 'singularValues', values))
    return { velocity: spreadOf(J, n, 3), rotation: spreadOf(J, n, 0) }
  }
}

/** A chain from the screws of its joints at zero. Throws an `InputError` for a chain without joints, an axis without direction, or a matrix that is no rotation. */
export const chainFromScrews = (given: ScrewChain): SerialChain => new SerialChain(kernelFromScrews(given))

/** A chain from Denavit–Hartenberg rows in a **named** convention. Throws an `InputError` without a convention or without joints. */
export const chainFromDenavitHartenberg = (given: DenavitHartenbergChain): SerialChain => new SerialChain(kernelFromTable(given))
