import { type Given, type Inputs, NoResultError, readInputs, type Si } from '../formula/index.js'
import { InputError, type Kind, Quantity } from '../units/index.js'
import { crankFromRocker, type FourBarSi, rockerFromCrank } from './four-bar.js'
import type { LimitsSi } from './leg-nearest.js'
import { type PerJoint, perJoint, perJointOf } from './vectors.js'

const LENGTHS = {
  ground: { kind: 'length', above: 0 },
  crank: { kind: 'length', above: 0 },
  coupler: { kind: 'length', above: 0 },
  rocker: { kind: 'length', above: 0 },
  rockerAngleAtStraightKnee: 'angle',
  crankAngleAtStraightKnee: 'angle',
} as const satisfies Inputs
const SPECIFICATION = {
  knee: { oneOf: ['motorAtKnee', 'cordFromHip', 'parallelogram', 'fourBar'] },
  ratio: { kind: 'ratio', optional: true },
  motorOn: { oneOf: ['body', 'thigh'], default: 'body' },
  fourBar: { fields: LENGTHS, optional: true },
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
 * `motorOn` says what the knee's motor is bolted to: the body (then the drum's angle adds to the hip's), or the thigh.
 */
export interface CouplingSpecification extends Given<typeof SPECIFICATION> {}

/** What the knee's drum turns by for a knee angle, and its first two derivatives; NaN where a four-bar does not assemble. */
interface KneeLaw {
  readonly travel: (knee: number) => number
  readonly ratio: (knee: number) => number
  readonly ratioRate: (knee: number) => number
  /** The knee angle of a travel. */
  readonly inverse: (travel: number) => number
}

/**
 * The tie between joint space and actuator space: drum angles φ1 = q1, φ2 = q2, φ3 = e q2 + f(q3), with e = 1 for a knee motor on the body.
 * Immutable. Methods ending in `Into` work on plain SI numbers. Where a four-bar does not assemble they throw a `NoResultError`; ask `assemblesAt` first.
 */
export class DriveCoupling {
  private readonly carried: number

  /** @internal Use `driveCoupling`. */
  constructor(
    private readonly law: KneeLaw,
    onBody: boolean,
    /** Whether the ratio of the knee's drive is the same at all angles. */
    readonly constantRatio: boolean,
  ) {
    this.carried = onBody ? 1 : 0
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
    return Number.isFinite(this.law.ratio(knee))
  }

  /** Ratio of the knee's drive at a knee angle: actuator travel over knee travel (SI numbers). */
  kneeRatio(knee: number): number {
    return this.finite(this.law.ratio(knee), knee)
  }

  /** The matrix A of φ̇ = A q̇ at a pose, row-major (9 numbers). */
  matrixInto(out: Float64Array, offset: number, q: ArrayLike<number>): void {
    out.fill(0, offset, offset + 9)
    out[offset] = 1
    out[offset + 4] = 1
    out[offset + 7] = this.carried
    out[offset + 8] = this.kneeRatio(q[2]!)
  }

  /** Actuator angles from joint angles, SI (3 numbers). */
  actuatorAnglesInto(out: Float64Array, offset: number, q: ArrayLike<number>): void {
    const q2 = q[1]!
    out[offset] = q[0]!
    out[offset + 2] = this.carried * q2 + this.finite(this.law.travel(q[2]!), q[2]!)
    out[offset + 1] = q2
  }

  /** Joint angles from actuator angles, SI (3 numbers). */
  jointAnglesInto(out: Float64Array, offset: number, actuators: ArrayLike<number>): void {
    const phi2 = actuators[1]!
    out[offset] = actuators[0]!
    out[offset + 2] = this.finite(this.law.inverse(actuators[2]! - this.carried * phi2), actuators[2]!)
    out[offset + 1] = phi2
  }

  /** Actuator speeds from joint rates, SI (3 numbers): φ̇ = A q̇. */
  actuatorRatesInto(out: Float64Array, offset: number, q: ArrayLike<number>, rates: ArrayLike<number>): void {
    const w2 = rates[1]!
    out[offset] = rates[0]!
    out[offset + 2] = this.carried * w2 + this.kneeRatio(q[2]!) * rates[2]!
    out[offset + 1] = w2
  }

  /** Joint rates from actuator speeds, SI (3 numbers). */
  jointRatesInto(out: Float64Array, offset: number, q: ArrayLike<number>, actuators: ArrayLike<number>): void {
    const w2 = actuators[1]!
    out[offset] = actuators[0]!
    out[offset + 2] = (actuators[2]! - this.carried * w2) / this.kneeRatio(q[2]!)
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
    out[offset + 2] = this.carried * a2 + this.kneeRatio(q[2]!) * accelerations[2]! + this.law.ratioRate(q[2]!) * w3 * w3
    out[offset + 1] = a2
  }

  /** Actuator torques from joint torques, SI (3 numbers): τφ = A⁻ᵀ τq. */
  actuatorTorquesInto(out: Float64Array, offset: number, q: ArrayLike<number>, joints: ArrayLike<number>): void {
    const knee = joints[2]! / this.kneeRatio(q[2]!)
    out[offset] = joints[0]!
    out[offset + 1] = joints[1]! - this.carried * knee
    out[offset + 2] = knee
  }

  /** Joint torques from actuator torques, SI (3 numbers): τq = Aᵀ τφ. */
  jointTorquesInto(out: Float64Array, offset: number, q: ArrayLike<number>, actuators: ArrayLike<number>): void {
    const knee = actuators[2]!
    out[offset] = actuators[0]!
    out[offset + 1] = actuators[1]! + this.carried * knee
    out[offset + 2] = this.kneeRatio(q[2]!) * knee
  }

  /**
   * A diagonal of the actuators (inertia N²J of the rotors, stiffness of the drives) as the joints feel it, a symmetric matrix, row-major (9 numbers):
   * Aᵀ diag A.
   */
  jointMatrixInto(out: Float64Array, offset: number, q: ArrayLike<number>, diagonal: ArrayLike<number>): void {
    const e = this.carried
    const n = this.kneeRatio(q[2]!)
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
   * Throws an `InputError` when hip or knee has no limits.
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

  private finite(x: number, knee: number): number {
    if (Number.isFinite(x)) return x
    throw new NoResultError(
      `kinematics.driveCoupling: the four-bar does not assemble at a knee (or knee drum) angle of ${new Quantity(knee, 'angle')}`,
    )
  }

  private through<K extends Kind>(
    method: string,
    inputs: ReturnType<typeof perJoint<K>>,
    given: Given<ReturnType<typeof perJoint<K>>>,
    kind: K,
    into: (out: Float64Array, offset: number, x: ArrayLike<number>) => void,
  ): PerJoint<Quantity<K>> {
    const x = readInputs(`kinematics.driveCoupling.${method}`, inputs, given) as PerJoint<number>
    const out = new Float64Array(3)
    into.call(this, out, 0, [x.abduction, x.hip, x.knee])
    return perJointOf(kind, out)
  }

  private at<K extends Kind>(
    kind: K,
    q: PerJoint<number>,
    x: PerJoint<number>,
    into: (out: Float64Array, offset: number, q: ArrayLike<number>, x: ArrayLike<number>) => void,
  ): PerJoint<Quantity<K>> {
    const out = new Float64Array(3)
    into.call(this, out, 0, [q.abduction, q.hip, q.knee], [x.abduction, x.hip, x.knee])
    return perJointOf(kind, out)
  }
}

const ANGLES = /* @__PURE__ */ perJoint('angle')
const RATES = /* @__PURE__ */ perJoint('angularVelocity')
const TORQUES = /* @__PURE__ */ perJoint('torque')
const AT_RATES = { angles: { fields: ANGLES }, rates: { fields: RATES } }
const AT_TORQUE = { angles: { fields: ANGLES }, torque: { fields: TORQUES } }

/**
 * Makes the coupling of a leg's drives.
 * Throws an `InputError` for a ratio of zero, a ratio where none belongs, or a four-bar that does not assemble with the knee straight.
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
  if (knee === 'motorAtKnee') return new DriveCoupling(constantLaw(1), false, true)
  if (knee === 'parallelogram') return new DriveCoupling(constantLaw(1), spec.motorOn === 'body', true)
  if (knee === 'cordFromHip') {
    if (ratio === undefined || ratio === 0)
      return refuse(
        'ratio',
        ratio === undefined ? 'missing' : '0',
        'must be knee drum diameter over hip drum diameter, negative for a crossed cord',
      )
    return new DriveCoupling(constantLaw(ratio), spec.motorOn === 'body', true)
  }
  if (fourBar === undefined) return refuse('fourBar', 'missing', 'must be the lengths and angles of the linkage')
  const law = fourBarLaw(fourBar)
  if (law === undefined) return refuse('fourBar', 'lengths that do not close', 'must assemble with the knee straight')
  return new DriveCoupling(law, spec.motorOn === 'body', false)
}

const constantLaw = (ratio: number): KneeLaw => ({
  travel: (knee) => ratio * knee,
  ratio: () => ratio,
  ratioRate: () => 0,
  inverse: (travel) => travel / ratio,
})

const wrapNear = (angle: number, near: number) => angle - 2 * Math.PI * Math.round((angle - near) / (2 * Math.PI))

function fourBarLaw(given: Si<typeof LENGTHS>): KneeLaw | undefined {
  const lengths: FourBarSi = given
  const { crank, coupler, rocker, rockerAngleAtStraightKnee: rockerZero, crankAngleAtStraightKnee: near } = given
  const ways = ([-1, 1] as const).flatMap((side) => {
    const pose = crankFromRocker(lengths, rockerZero, side)
    return pose === undefined ? [] : [{ side, crankAngle: wrapNear(pose.crankAngle, near) }]
  })
  ways.sort((one, two) => Math.abs(one.crankAngle - near) - Math.abs(two.crankAngle - near))
  const chosen = ways[0]
  if (chosen === undefined) return undefined
  const { side, crankAngle: crankZero } = chosen
  const pose = (knee: number) => crankFromRocker(lengths, rockerZero + knee, side)
  const travel = (knee: number) => {
    const found = pose(knee)
    return found === undefined ? Number.NaN : wrapNear(found.crankAngle - crankZero, knee)
  }
  /** Crank speed over rocker speed, and its change with the rocker's angle. */
  const rates = (knee: number): [number, number] => {
    const found = pose(knee)
    if (found === undefined) return [Number.NaN, Number.NaN]
    const t4 = rockerZero + knee
    const { crankAngle: t2, couplerAngle: t3 } = found
    const ratio = (rocker * Math.sin(t4 - t3)) / (crank * Math.sin(t2 - t3))
    // Coupler speed over rocker speed: the closure, projected square to the crank.
    const couplerRatio = (rocker * Math.sin(t4 - t2)) / (coupler * Math.sin(t3 - t2))
    const rate =
      (rocker / crank) *
      ((Math.cos(t4 - t3) * (1 - couplerRatio)) / Math.sin(t2 - t3) -
        (Math.sin(t4 - t3) * Math.cos(t2 - t3) * (ratio - couplerRatio)) / Math.sin(t2 - t3) ** 2)
    return [ratio, rate]
  }
  const home = rockerFromCrank(lengths, crankZero, -1)
  const sides =
    typeof home !== 'string' && Math.abs(wrapNear(home.rockerAngle - rockerZero, 0)) < 1e-9 ? ([-1, 1] as const) : ([1, -1] as const)
  return {
    travel,
    ratio: (knee) => rates(knee)[0],
    ratioRate: (knee) => rates(knee)[1],
    // The same linkage seen from the crank: the rocker's side that leads back to this crank angle, the side it has with the knee straight first.
    inverse: (turned) => {
      for (const rockerSide of sides) {
        const found = rockerFromCrank(lengths, crankZero + turned, rockerSide)
        if (typeof found === 'string') continue
        const knee = wrapNear(found.rockerAngle - rockerZero, turned)
        if (Math.abs(travel(knee) - turned) < 1e-9) return knee
      }
      return Number.NaN
    },
  }
}
