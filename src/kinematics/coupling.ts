import { type Given, type Inputs, readInputs } from '../formula/index.js'
import { InputError, type Kind, Quantity, refuse } from '../units/index.js'
import { CouplingKernel } from './coupling-kernel.js'
import { FOUR_BAR_KNEE, type FourBarKnee, fourBarKnee } from './four-bar-knee.js'
import type { LimitsSi } from './leg-limits.js'
import { type PerJoint, perJoint, perJointOf } from './vectors.js'

const SPECIFICATION = {
  /** How the knee is driven. */
  knee: { oneOf: ['motorAtKnee', 'cordFromHip', 'parallelogram', 'fourBar'] },
  /** Knee drum's diameter over the hip drum's, negative for a crossed cord. Needed with `cordFromHip`. */
  ratio: { kind: 'ratio', optional: true },
  /** Part that the knee's motor is bolted to. Default: the body, except with `motorAtKnee`. */
  motorOn: { oneOf: ['body', 'thigh'], default: 'body' },
  /** Lengths and angles of the four-bar. Needed with `fourBar`. */
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
 * `motorOn` is what the knee's motor is bolted to: the body (then the drum's angle adds to the hip's), or the thigh (as always with `motorAtKnee`).
 */
export interface CouplingSpecification extends Given<typeof SPECIFICATION> {}

/**
 * The tie between joint space and actuator space: drum angles φ1 = q1, φ2 = q2, φ3 = e q2 + f(q3), with e = 1 for a knee motor on the body.
 * Immutable. `si` is its form on plain numbers. Where a four-bar does not assemble, methods throw a `NoResultError`.
 */
export class DriveCoupling {
  /** Whether the ratio of the knee's drive is the same at all angles. */
  readonly constantRatio: boolean
  /** The tie on plain SI numbers: nothing checked, nothing allocated. */
  readonly si: CouplingKernel

  /** @internal Use `driveCoupling`. */
  constructor(
    private readonly drive: number | FourBarKnee,
    onBody: boolean,
  ) {
    this.si = new CouplingKernel(drive, onBody ? 1 : 0)
    this.constantRatio = typeof drive === 'number'
  }

  /** Actuator angles from joint angles. */
  actuatorAngles(joints: Given<typeof ANGLES>): PerJoint<Quantity<'angle'>> {
    return this.through('actuatorAngles', ANGLES, joints, 'angle', this.si.actuatorAnglesInto)
  }

  /** Joint angles from actuator angles. */
  jointAngles(actuators: Given<typeof ANGLES>): PerJoint<Quantity<'angle'>> {
    return this.through('jointAngles', ANGLES, actuators, 'angle', this.si.jointAnglesInto)
  }

  /** Actuator speeds from joint rates at a pose. */
  actuatorRates(given: {
    readonly angles: Given<typeof ANGLES>
    readonly rates: Given<typeof RATES>
  }): PerJoint<Quantity<'angularVelocity'>> {
    const { angles, rates } = readInputs('kinematics.driveCoupling.actuatorRates', AT_RATES, given)
    return this.at('angularVelocity', angles, rates, this.si.actuatorRatesInto)
  }

  /** Actuator torques that make joint torques at a pose. Power is the same in either space. */
  actuatorTorques(given: { readonly angles: Given<typeof ANGLES>; readonly torque: Given<typeof TORQUES> }): PerJoint<Quantity<'torque'>> {
    const { angles, torque } = readInputs('kinematics.driveCoupling.actuatorTorques', AT_TORQUE, given)
    return this.at('torque', angles, torque, this.si.actuatorTorquesInto)
  }

  /** Joint torques that actuator torques make at a pose. */
  jointTorques(given: { readonly angles: Given<typeof ANGLES>; readonly torque: Given<typeof TORQUES> }): PerJoint<Quantity<'torque'>> {
    const { angles, torque } = readInputs('kinematics.driveCoupling.jointTorques', AT_TORQUE, given)
    return this.at('torque', angles, torque, this.si.jointTorquesInto)
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
    if (!ArrayBuffer.isView(limits) && !Array.isArray(limits))
      refuse('kinematics.driveCoupling.actuatorLimits', 'limits', limits, 'must be the limits of a leg, as leg.limitsSi')
    const [, , low2, high2, low3, high3] = limits as unknown as [number, number, number, number, number, number]
    if (![low2, high2, low3, high3].every(Number.isFinite))
      throw new InputError('kinematics.driveCoupling.actuatorLimits', [
        { path: 'limits', given: 'no limits', accepts: 'hip and knee need limits' },
      ])
    const dead = typeof this.drive === 'number' ? undefined : this.drive.deadPoint(low3, high3)
    if (dead !== undefined && dead.state !== 'drivesThroughout') {
      const at = dead.state === 'apart' ? low3 : dead.kneeAngle
      throw new InputError('kinematics.driveCoupling.actuatorLimits', [
        {
          path: 'limits',
          given: `a knee from ${new Quantity(low3, 'angle')} to ${new Quantity(high3, 'angle')}`,
          accepts: `the four-bar does not drive the knee at ${new Quantity(at, 'angle')}: it is past a dead point or apart`,
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
      this.si.actuatorAnglesInto(out, 0, [0, q2!, q3!])
      return { hip: angle(out[1]!), knee: angle(out[2]!) }
    })
    const knees = corners.map(({ knee }) => knee.si)
    return { corners, kneeActuator: { lowest: angle(Math.min(...knees)), highest: angle(Math.max(...knees)) } }
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
    into.call(this.si, out, 0, [x.sidewaysHip, x.hip, x.knee])
    return perJointOf(kind, out)
  }

  private at<K extends Kind>(
    kind: K,
    q: PerJoint<number>,
    x: PerJoint<number>,
    into: (out: Float64Array, offset: number, q: ArrayLike<number>, x: ArrayLike<number>) => void,
  ): PerJoint<Quantity<K>> {
    const out = new Float64Array(3)
    into.call(this.si, out, 0, [q.sidewaysHip, q.hip, q.knee], [x.sidewaysHip, x.hip, x.knee])
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
  if (knee === 'motorAtKnee' && given.motorOn === 'body') refuse('motorOn', "'body'", "must be 'thigh' or absent with knee 'motorAtKnee'")
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
