import { type Given, type Inputs, NoResultError, readInputs } from '../formula/index.js'
import { InputError, type Kind, Quantity } from '../units/index.js'
import { FOUR_BAR_KNEE, type FourBarKnee, fourBarKnee } from './four-bar-knee.js'
import type { LimitsSi } from './leg-nearest.js'
import { type PerJoint, perJoint, perJointOf } from './vectors.js'

const SPECIFICATION = {
  knee: { oneOf: ['motorAtKnee', 'cordFromHip', 'parallelogram', 'fourBar'] },
  ratio: { kind: 'ratio', optional: true },
  motorOn: { oneOf: ['body', 'thigh'], default: 'body' },
  fourBar: { fields: FOUR_BAR_KNEE, optional: true },
} as const satisfies Inputs

/**
 * How the knee is driven.
 *
 * - `motorAtKnee`: the knee's drive turns the shank against the thigh; nothing is coupled.
 * - `cordFromHip`: a drum on the hip axis drives a drum on the knee through a cord along the thigh. `ratio` is knee drum diameter over hip drum diameter,
 *   negative for a crossed cord.
 * - `parallelogram`: equal parallel links from the hip axis; as a cord of ratio 1.
 * - `fourBar`: a crank on the hip axis, a coupler and a rocker on the shank, with its fixed pivots on the thigh. Angles are taken from the direction
 *   hip to knee, right-handed about +y; `crankAngleAtStraightKnee` need only be near enough to choose between the two ways to assemble.
 *
 * `motorOn` says what the knee's motor is bolted to: the body (then the drum's angle adds to the hip's), or the thigh (as always with `motorAtKnee`).
 */
export interface CouplingSpecification extends Given<typeof SPECIFICATION> {}

/**
 * The tie between joint space and actuator space: drum angles φ1 = q1, φ2 = q2, φ3 = e q2 + f(q3), with e = 1 for a knee motor on the body.
 * Immutable. Methods ending in `Into` work on plain SI numbers. Where a four-bar does not assemble they throw a `NoResultError`; ask `assemblesAt` first.
 */
export class DriveCoupling {
  /** Whether the ratio of the knee's drive is the same at all angles. */
  readonly constantRatio: boolean
  private readonly carried: number

  /** @internal Use `driveCoupling`. */
  constructor(
    private readonly drive: number | FourBarKnee,
    onBody: boolean,
  ) {
    this.carried = onBody ? 1 : 0
    this.constantRatio = typeof drive === 'number'
  }

  /** Actuator angles from joint angles. */
  actuatorAngles(joints: Given<typeof ANGLES>): PerJoint<Quantity<'angle'>> {
    return this.through('actuatorAngles', ANGLES, joints, 'angle', this.actuatorAnglesInto)
  }

  /** Joint angles from actuator angles. */
  jointAngles(actuators: Given<typeof ANGLES>): PerJoint<Quantity<'angle'>> {
    return this.through('jointAngles', ANGLES, actuators, 'angle', this.jointAnglesInto)
  }

  /** Actuator speeds from joint rates at a pose. */
  actuatorRates(given: {
    readonly angles: Given<typeof ANGLES>
    readonly rates: Given<typeof RATES>
  }): PerJoint<Quantity<'angularVelocity'>> {
    const { angles, rates } = readInputs('kinematics.driveCoupling.actuatorRates', AT_RATES, given)
    return this.at('angularVelocity', angles, rates, this.actuatorRatesInto)
  }

  /** Actuator torques that make joint torques at a pose. Power is the same in either space. */
  actuatorTorques(given: { readonly angles: Given<typeof ANGLES>; readonly torque: Given<typeof TORQUES> }): PerJoint<Quantity<'torque'>> {
    const { angles, torque } = readInputs('kinematics.driveCoupling.actuatorTorques', AT_TORQUE, given)
    return this.at('torque', angles, torque, this.actuatorTorquesInto)
  }

  /** Joint torques that actuator torques make at a pose. */
  jointTorques(given: { readonly angles: Given<typeof ANGLES>; readonly torque: Given<typeof TORQUES> }): PerJoint<Quantity<'torque'>> {
    const { angles, torque } = readInputs('kinematics.driveCoupling.jointTorques', AT_TORQUE, given)
    return this.at('torque', angles, torque, this.jointTorquesInto)
  }

  /** Whether the knee's drive can stand at a knee angle (SI); only a four-bar may not. */
  assemblesAt(knee: number): boolean {
    return Number.isFinite(typeof this.drive === 'number' ? knee : this.drive.ratio(knee))
  }

  /** Ratio of the knee's drive at a knee angle: actuator travel over knee travel (SI numbers). */
  kneeRatio(knee: number): number {
    return this.ratioAt([0, 0, knee])
  }

  /** The matrix A of φ̇ = A q̇ at a pose, row-major (9 numbers). */
  matrixInto(out: Float64Array, offset: number, q: ArrayLike<number>): void {
    out.fill(0, offset, offset + 9)
    out[offset] = 1
    out[offset + 4] = 1
    out[offset + 7] = this.carried
    out[offset + 8] = this.ratioAt(q)
  }

  /** Actuator angles from joint angles, SI (3 numbers). */
  actuatorAnglesInto(out: Float64Array, offset: number, q: ArrayLike<number>): void {
    const q2 = q[1]!
    out[offset] = q[0]!
    out[offset + 2] = this.carried * q2 + this.travelAt(q)
    out[offset + 1] = q2
  }

  /** Joint angles from actuator angles, SI (3 numbers). Of two knee angles of one crank angle, the one on the straight knee's side of the dead point. */
  jointAnglesInto(out: Float64Array, offset: number, actuators: ArrayLike<number>): void {
    const phi2 = actuators[1]!
    out[offset] = actuators[0]!
    const travel = actuators[2]! - this.carried * phi2
    out[offset + 2] = typeof this.drive === 'number' ? travel / this.drive : this.finite(this.drive.inverse(travel), actuators)
    out[offset + 1] = phi2
  }

  /** Actuator speeds from joint rates, SI (3 numbers): φ̇ = A q̇. */
  actuatorRatesInto(out: Float64Array, offset: number, q: ArrayLike<number>, rates: ArrayLike<number>): void {
    const w2 = rates[1]!
    out[offset] = rates[0]!
    out[offset + 2] = this.carried * w2 + this.ratioAt(q) * rates[2]!
    out[offset + 1] = w2
  }

  /** Joint rates from actuator speeds, SI (3 numbers). */
  jointRatesInto(out: Float64Array, offset: number, q: ArrayLike<number>, actuators: ArrayLike<number>): void {
    const w2 = actuators[1]!
    out[offset] = actuators[0]!
    out[offset + 2] = (actuators[2]! - this.carried * w2) / this.ratioAt(q)
    out[offset + 1] = w2
  }

  /** Actuator accelerations from joint rates and accelerations, SI (3 numbers); a four-bar's ratio changes on the way. */
  actuatorAccelerationsInto(
    out: Float64Array,
    offset: number,
    q: ArrayLike<number>,
    rates: ArrayLike<number>,
    accelerations: ArrayLike<number>,
  ): void {
    const a2 = accelerations[1]!
    const w3 = rates[2]!
    out[offset] = accelerations[0]!
    const ratioRate = typeof this.drive === 'number' ? 0 : this.drive.ratioRate(q[2]!)
    out[offset + 2] = this.carried * a2 + this.ratioAt(q) * accelerations[2]! + ratioRate * w3 * w3
    out[offset + 1] = a2
  }

  /** Actuator torques from joint torques, SI (3 numbers): τφ = A⁻ᵀ τq. */
  actuatorTorquesInto(out: Float64Array, offset: number, q: ArrayLike<number>, joints: ArrayLike<number>): void {
    const knee = joints[2]! / this.ratioAt(q)
    out[offset] = joints[0]!
    out[offset + 1] = joints[1]! - this.carried * knee
    out[offset + 2] = knee
  }

  /** Joint torques from actuator torques, SI (3 numbers): τq = Aᵀ τφ. */
  jointTorquesInto(out: Float64Array, offset: number, q: ArrayLike<number>, actuators: ArrayLike<number>): void {
    const knee = actuators[2]!
    out[offset] = actuators[0]!
    out[offset + 1] = actuators[1]! + this.carried * knee
    out[offset + 2] = this.ratioAt(q) * knee
  }

  /**
   * A diagonal of the actuators (inertia N²J of the rotors, stiffness of the drives) as the joints feel it, a symmetric matrix, row-major (9 numbers):
   * Aᵀ diag A.
   */
  jointMatrixInto(out: Float64Array, offset: number, q: ArrayLike<number>, diagonal: ArrayLike<number>): void {
    const e = this.carried
    const n = this.ratioAt(q)
    const knee = diagonal[2]!
    out.fill(0, offset, offset + 9)
    out[offset] = diagonal[0]!
    out[offset + 4] = diagonal[1]! + e * e * knee
    out[offset + 5] = e * n * knee
    out[offset + 7] = e * n * knee
    out[offset + 8] = n * n * knee
  }

  /**
   * What joint limits become for the actuators: the corners of hip and knee limits in actuator space (a parallelogram for a constant ratio; the knee's
   * edge bends with a four-bar), and the range each actuator must turn over.
   * Throws an `InputError` when hip or knee has no limits, or where a four-bar comes apart or passes a dead point between the knee's: no torque of the
   * crank moves the knee there.
   */
  actuatorLimits(limits: LimitsSi): {
    readonly corners: readonly { readonly hip: Quantity<'angle'>; readonly knee: Quantity<'angle'> }[]
    readonly kneeActuator: { readonly lowest: Quantity<'angle'>; readonly highest: Quantity<'angle'> }
  } {
    const [, , low2, high2, low3, high3] = limits as unknown as [number, number, number, number, number, number]
    if (![low2, high2, low3, high3].every(Number.isFinite))
      throw new InputError('kinematics.driveCoupling.actuatorLimits', [
        { path: 'limits', given: 'no limits', accepts: 'hip and knee need limits' },
      ])
    for (let i = 0; i <= LIMIT_STEPS && typeof this.drive !== 'number'; i++) {
      const knee = low3 + ((high3 - low3) * i) / LIMIT_STEPS
      if (!(this.drive.ratio(knee) * this.drive.ratio(0) > 0))
        throw new InputError('kinematics.driveCoupling.actuatorLimits', [
          {
            path: 'limits',
            given: `a knee from ${new Quantity(low3, 'angle')} to ${new Quantity(high3, 'angle')}`,
            accepts: `the four-bar does not drive the knee at ${new Quantity(knee, 'angle')}: it is past a dead point or apart`,
          },
        ])
    }
    const out = new Float64Array(3)
    const angle = (x: number) => new Quantity(x, 'angle')
    const corners = [
      [low2, low3],
      [high2, low3],
      [high2, high3],
      [low2, high3],
    ].map(([q2, q3]) => {
      this.actuatorAnglesInto(out, 0, [0, q2!, q3!])
      return { hip: angle(out[1]!), knee: angle(out[2]!) }
    })
    const knees = corners.map(({ knee }) => knee.si)
    return { corners, kneeActuator: { lowest: angle(Math.min(...knees)), highest: angle(Math.max(...knees)) } }
  }

  // Poses are passed whole: a number passed by itself may be put on the heap.
  private ratioAt(q: ArrayLike<number>): number {
    return typeof this.drive === 'number' ? this.drive : this.finite(this.drive.ratio(q[2]!), q)
  }

  private travelAt(q: ArrayLike<number>): number {
    return typeof this.drive === 'number' ? this.drive * q[2]! : this.finite(this.drive.travel(q[2]!), q)
  }

  private finite(x: number, at: ArrayLike<number>): number {
    if (Number.isFinite(x)) return x
    throw new NoResultError(
      `kinematics.driveCoupling: the four-bar does not assemble at a knee (or knee drum) angle of ${new Quantity(at[2]!, 'angle')}`,
    )
  }

  private through<K extends Kind>(
    method: string,
    inputs: ReturnType<typeof perJoint<K>>,
    given: Given<ReturnType<typeof perJoint<K>>>,
    kind: K,
    into: (out: Float64Array, offset: number, x: ArrayLike<number>) => void,
  ): PerJoint<Quantity<K>> {
    const x = readInputs(`kinematics.driveCoupling.${method}`, inputs, given) as unknown as PerJoint<number>
    const out = new Float64Array(3)
    into.call(this, out, 0, [x.sidewaysHip, x.hip, x.knee])
    return perJointOf(kind, out)
  }

  private at<K extends Kind>(
    kind: K,
    q: PerJoint<number>,
    x: PerJoint<number>,
    into: (out: Float64Array, offset: number, q: ArrayLike<number>, x: ArrayLike<number>) => void,
  ): PerJoint<Quantity<K>> {
    const out = new Float64Array(3)
    into.call(this, out, 0, [q.sidewaysHip, q.hip, q.knee], [x.sidewaysHip, x.hip, x.knee])
    return perJointOf(kind, out)
  }
}

/** Steps of a four-bar knee's range in the search for a dead point. */
const LIMIT_STEPS = 180

const ANGLES = /* @__PURE__ */ perJoint('angle')
const RATES = /* @__PURE__ */ perJoint('angularVelocity')
const TORQUES = /* @__PURE__ */ perJoint('torque')
const AT_RATES = { angles: { fields: ANGLES }, rates: { fields: RATES } }
const AT_TORQUE = { angles: { fields: ANGLES }, torque: { fields: TORQUES } }

/**
 * Makes the coupling of a leg's drives.
 * Throws an `InputError` for a ratio of zero, an input where none belongs, or a four-bar that does not assemble with the knee straight.
 */
export function driveCoupling(given: CouplingSpecification): DriveCoupling {
  const where = 'kinematics.driveCoupling'
  const spec = readInputs(where, SPECIFICATION, given)
  const refuse = (path: string, shown: string, accepts: string): never => {
    throw new InputError(where, [{ path, given: shown, accepts }])
  }
  const { knee, ratio, fourBar } = spec
  if (knee !== 'cordFromHip' && ratio !== undefined) refuse('ratio', String(ratio), `is not an input of knee '${knee}'`)
  if (knee !== 'fourBar' && fourBar !== undefined) refuse('fourBar', 'given', `is not an input of knee '${knee}'`)
  if (knee === 'motorAtKnee' && given.motorOn === 'body') refuse('motorOn', "'body'", "must be 'thigh' or left out with knee 'motorAtKnee'")
  if (knee === 'motorAtKnee') return new DriveCoupling(1, false)
  if (knee === 'parallelogram') return new DriveCoupling(1, spec.motorOn === 'body')
  if (knee === 'cordFromHip') {
    if (ratio === undefined || ratio === 0)
      return refuse(
        'ratio',
        ratio === undefined ? 'missing' : '0',
        'must be knee drum diameter over hip drum diameter, negative for a crossed cord',
      )
    return new DriveCoupling(ratio, spec.motorOn === 'body')
  }
  if (fourBar === undefined) return refuse('fourBar', 'missing', 'must be the lengths and angles of the linkage')
  const drive = fourBarKnee(fourBar)
  if (drive === undefined) return refuse('fourBar', 'lengths that do not close', 'must assemble with the knee straight')
  return new DriveCoupling(drive, spec.motorOn === 'body')
}
