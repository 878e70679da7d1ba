import { type Given, NoResultError, readInputs, requireKeys } from '../formula/index.js'
import { luFactor, luSolve, singularValues } from '../numeric/index.js'
import { InputError, type Issue, Quantity, quantity, show } from '../units/index.js'
import { type DenavitHartenbergChain, kernelFromScrews, kernelFromTable, rotationSi, type ScrewChain } from './chain-build.js'
import type { ChainKernel } from './chain-kernel.js'
import { searchInverse } from './chain-search.js'
import {
  type GivenJointValues,
  INVERSE,
  type InverseAnswer,
  type InverseTarget,
  type JointEffort,
  type JointValue,
  type Pose,
  TOOL_PUSH,
  type ToolPush,
} from './chain-values.js'
import { type EffectiveMass, effectiveMassOf } from './effective-mass.js'
import { unit3 } from './matrix3.js'
import { mustBeRecord, noDirection, rowsOf, type Vector3, vectorOf, xyz } from './vectors.js'

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
    this.si.poseInto(out, 0, this.values('pose', values))
    return { position: vectorOf('length', out, 9), rotation: rowsOf('ratio', out.subarray(0, 9), 3) }
  }

  /** Space Jacobian on SI numbers, 6 rows of n: angular velocity, then velocity of the point passing the base's origin. */
  spaceJacobian(values: GivenJointValues): number[][] {
    const out = new Float64Array(6 * this.si.joints)
    this.si.spaceJacobianInto(out, 0, this.values('spaceJacobian', values))
    return this.rows(out)
  }

  /** Body Jacobian on SI numbers, 6 rows of n: the tool's twist in its own axes, angular part first. */
  bodyJacobian(values: GivenJointValues): number[][] {
    const out = new Float64Array(6 * this.si.joints)
    this.si.bodyJacobianInto(out, 0, this.values('bodyJacobian', values))
    return this.rows(out)
  }

  /** Jacobian of the tool's rotation and origin in base axes on SI numbers, 6 rows of n, angular part first. */
  jacobian(values: GivenJointValues): number[][] {
    const out = new Float64Array(6 * this.si.joints)
    this.si.jacobianInto(out, 0, this.values('jacobian', values))
    return this.rows(out)
  }

  /** Torques (forces) that hold the chain's weight. */
  gravity(values: GivenJointValues): JointEffort[] {
    const out = new Float64Array(this.si.joints)
    this.si.gravityInto(out, 0, this.values('gravity', values))
    return this.efforts(out)
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
    mustBeRecord(`kinematics.serialChain.${where}`, given)
    requireKeys(`kinematics.serialChain.${where}`, '', given, ['values', 'rates', 'accelerations', 'toolPush'])
    const q = this.values(where, given.values)
    const w = this.numbers(where, 'rates', given.rates)
    const a = this.numbers(where, 'accelerations', given.accelerations)
    const out = new Float64Array(this.si.joints)
    this.si.torqueInto(out, 0, q, w, a, this.push(where, given.toolPush))
    return this.efforts(out)
  }

  /** Mass matrix on SI numbers, rotors included. */
  massMatrix(values: GivenJointValues): number[][] {
    const n = this.si.joints
    const out = new Float64Array(n * n)
    this.si.massMatrixInto(out, 0, this.values('massMatrix', values))
    return Array.from({ length: n }, (_, i) => Array.from(out.subarray(i * n, (i + 1) * n)))
  }

  /** Torques (forces) of the rates alone, centrifugal and Coriolis. */
  coriolis(values: GivenJointValues, rates: readonly number[]): JointEffort[] {
    const out = new Float64Array(this.si.joints)
    this.si.coriolisInto(out, 0, this.values('coriolis', values), this.numbers('coriolis', 'rates', rates))
    return this.efforts(out)
  }

  /** Centre of mass of the whole chain, and its mass. */
  centreOfMass(values: GivenJointValues): { readonly position: Vector3<'length'>; readonly mass: Quantity<'mass'> } {
    const out = new Float64Array(3)
    const mass = this.si.centreOfMassInto(out, 0, this.values('centreOfMass', values))
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
    const n = this.si.joints
    const q = this.values('effectiveMass', values)
    const M = new Float64Array(n * n)
    const J = new Float64Array(6 * n)
    const pivots = new Int32Array(n)
    const column = new Float64Array(n)
    const mobility = new Float64Array(9)
    this.si.massMatrixInto(M, 0, q)
    this.si.jacobianInto(J, 0, q)
    if (luFactor(M, n, pivots) === 0) return { free: undefined, constrained: undefined }
    // Mobility of the tool's origin, J M⁻¹ Jᵀ, column by column.
    for (let k = 0; k < 3; k++) {
      for (let i = 0; i < n; i++) column[i] = J[(3 + k) * n + i]!
      luSolve(M, n, pivots, column)
      for (let row = 0; row < 3; row++) {
        let sum = 0
        for (let i = 0; i < n; i++) sum += J[(3 + row) * n + i]! * column[i]!
        mobility[3 * row + k] = sum
      }
    }
    return effectiveMassOf(mobility, u)
  }

  /**
   * Joint values that bring the tool to a place (and rotation) by damped least squares, from a seed and from `restarts` drawn ones. The answer has the
   * best values found and the errors that remain. `localStop` means that no small motion comes nearer, which is not the nearest pose for certain;
   * `nearestFound` that eight or more searches agree on it. For the three-joint leg `jointAngles` is exact.
   */
  inverse(target: InverseTarget): InverseAnswer {
    const where = 'kinematics.serialChain.inverse'
    mustBeRecord(where, target)
    const { seed, preferred, limits, ...rest } = target
    const spec = readInputs(where, INVERSE, rest)
    const n = this.si.joints
    if (limits !== undefined && (!Array.isArray(limits) || limits.length !== n))
      throw new InputError(where, [
        {
          path: 'limits',
          given: Array.isArray(limits) ? `${limits.length} limits` : show(limits),
          accepts: `must be one for each of the ${n} joints`,
        },
      ])
    for (const [i, each] of (limits ?? []).entries()) requireKeys(where, `limits[${i}]`, each, ['lowest', 'highest'])
    const ends = (end: 'lowest' | 'highest', none: number) =>
      limits === undefined
        ? new Float64Array(n).fill(none)
        : this.values('inverse', limits.map((limit) => limit[end]) as GivenJointValues, `limits.${end}`)
    const lowest = ends('lowest', -Infinity)
    const highest = ends('highest', Infinity)
    const crossed = lowest.findIndex((low, i) => !(low < highest[i]!))
    if (crossed >= 0)
      throw new InputError(where, [
        { path: `limits[${crossed}].lowest`, given: String(lowest[crossed]), accepts: 'must be below the highest' },
      ])
    const found = searchInverse(this.si, {
      position: [spec.position.x, spec.position.y, spec.position.z],
      rotation: spec.rotation === undefined ? undefined : rotationSi(where, 'rotation', spec.rotation),
      lengthPerRadian: spec.lengthPerRadian,
      seed: this.values('inverse', seed, 'seed'),
      preferred: preferred === undefined ? undefined : this.values('inverse', preferred, 'preferred'),
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
      values: this.jointValues(best.values),
      positionError: new Quantity(best.positionError, 'length'),
      rotationError: new Quantity(best.rotationError, 'angle'),
      iterations: best.iterations,
      searches,
      agreeing,
      solutions: solutions.map((values) => this.jointValues(values)),
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
    mustBeRecord(`kinematics.serialChain.${where}`, given)
    requireKeys(`kinematics.serialChain.${where}`, '', given, ['values', 'rates', 'efforts', 'toolPush'])
    const q = this.values(where, given.values)
    const [w, efforts] = [this.numbers(where, 'rates', given.rates), this.numbers(where, 'efforts', given.efforts)]
    const out = new Float64Array(this.si.joints)
    if (!this.si.accelerationsInto(out, 0, q, w, efforts, this.push(where, given.toolPush)))
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
    this.si.jacobianInto(J, 0, this.values('singularValues', values))
    const of = (first: number) => {
      // Three rows and n columns, filled up with zeros to a square.
      const size = Math.max(3, n)
      const square = new Float64Array(size * size)
      for (let i = 0; i < 3; i++) for (let j = 0; j < n; j++) square[j * size + i] = J[(first + i) * n + j]!
      return Array.from(singularValues(square, size).values)
        .sort((a, b) => b - a)
        .slice(0, Math.min(3, n))
    }
    return { velocity: of(3), rotation: of(0) }
  }

  private values(method: string, given: GivenJointValues, path = 'values'): Float64Array {
    const n = this.si.joints
    const where = `kinematics.serialChain.${method}`
    if (!Array.isArray(given) || given.length !== n)
      throw new InputError(where, [
        { path, given: Array.isArray(given) ? `${given.length} values` : 'no list', accepts: `must be one for each of the ${n} joints` },
      ])
    const issues: Issue[] = []
    const out = Float64Array.from(given, (value, i) => {
      try {
        return quantity(this.si.sliding[i] === 1 ? 'length' : 'angle', value as never).si
      } catch (error) {
        if (!(error instanceof InputError)) throw error
        issues.push(...error.issues.map((issue) => ({ ...issue, path: `${path}[${i}]` })))
        return 0
      }
    })
    if (issues.length > 0) throw new InputError(where, issues)
    return out
  }

  private numbers(method: string, path: string, given: readonly number[]): Float64Array {
    const n = this.si.joints
    if (!Array.isArray(given) || given.length !== n || !given.every(Number.isFinite))
      throw new InputError(`kinematics.serialChain.${method}`, [
        { path, given: show(given), accepts: `must be ${n} finite numbers, one a joint, in SI units` },
      ])
    return Float64Array.from(given)
  }

  private push(method: string, given: ToolPush | undefined): number[] | undefined {
    if (given === undefined) return undefined
    const { moment: m, force: f } = readInputs(`kinematics.serialChain.${method}`, TOOL_PUSH, given)
    return [m.x, m.y, m.z, f.x, f.y, f.z]
  }

  private jointValues(values: Float64Array): JointValue[] {
    return Array.from(values, (x, i) => (this.si.sliding[i] === 1 ? new Quantity(x, 'length') : new Quantity(x, 'angle')))
  }

  private efforts(out: Float64Array): JointEffort[] {
    return Array.from(out, (x, i) => (this.si.sliding[i] === 1 ? new Quantity(x, 'force') : new Quantity(x, 'torque')))
  }

  private rows(out: Float64Array): number[][] {
    const n = this.si.joints
    return Array.from({ length: 6 }, (_, i) => Array.from(out.subarray(i * n, (i + 1) * n)))
  }
}

/** A chain from the screws of its joints at zero. Throws an `InputError` for a chain without joints, an axis without direction, or a matrix that is no rotation. */
export const chainFromScrews = (given: ScrewChain): SerialChain => new SerialChain(kernelFromScrews(given))

/** A chain from Denavit–Hartenberg rows in a **named** convention. Throws an `InputError` without a convention or without joints. */
export const chainFromDenavitHartenberg = (given: DenavitHartenbergChain): SerialChain => new SerialChain(kernelFromTable(given))
