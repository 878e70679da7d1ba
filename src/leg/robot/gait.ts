import { type Gait, stanceForce } from '../../kinematics/index.js'
import { costOfTransport, runningTime } from '../../thermal/index.js'
import { Quantity } from '../../units/index.js'
import { placeOf } from '../calculation.js'
import { STANDARD_GRAVITY } from '../gravity.js'
import type { LegModel } from '../leg-model.js'
import type { LegNumbers } from '../leg-numbers.js'
import { drivenJoints, gaitNamed } from '../numbers.js'
import { stance as stanceOf } from '../parts/load/stance.js'
import { calculationFor } from '../what-if.js'
import { busMotors } from './bus.js'
import { centreHeightOf, cornersOf, feetOf, type Sway, stanceShares, tippingOf } from './feet.js'
import { courseOf, MOMENTS, table, worstOf } from './gait-bus.js'
import { type GroundWay, groundWays } from './gait-ways.js'
import type { CornerLoad, RobotGait } from './result.js'
import { type CornerStride, cornerStride } from './walk.js'

/** Time and distance on one charge at a power; absent where the document gives no energy. */
export function onOneCharge({ supply }: LegNumbers, drawn: number, speed: number) {
  if (supply.energy === undefined) return undefined
  return runningTime.si({
    energy: supply.energy,
    usable: supply.usableShare,
    openCircuitVoltage: supply.voltage,
    resistance: supply.internalResistance,
    parts: [{ power: drawn, share: 1, speed }],
  })
}

/** How a robot goes in a gait. */
export interface GaitWay extends Sway {
  readonly brakeResistor: number
  readonly traction?: number | undefined
  /** Slope that is walked across, its lower side on the left. Default: level ground. */
  readonly slope?: number
}

/** The robot in a gait: feet, loads, bus, energy. Of the ways in which the ground may hold its feet the worst counts, value by value. */
export function robotGait(leg: LegModel, id: 'walk' | 'trot', { brakeResistor, traction, slope = 0, ...sway }: GaitWay): RobotGait {
  const x = slope === 0 ? leg.x : leaning(leg.x, slope)
  const { speed, stepLength, dutyFactor } = gaitNamed(x, id)
  const feet = feetOf(x, id, sway)
  const forces = footForcesOf(leg, x, { id, feet, weight: x.robot.mass * STANDARD_GRAVITY * Math.cos(slope) })
  const ways = groundWays(x, id, traction, slope).map((way) => stridesOf(leg, x, { id, feet, forces, way }))
  const motors = busMotors(leg, slope === 0 ? id : 'slopeAcross')
  const courses = ways.map((strides) => courseOf(leg, motors, { id, strides, brakeResistor }))
  const { samples, ...bus } = worstOf(courses)
  const meanPower = bus.meanPower.si
  const { energyPerDistance, costOfTransport: cost } = costOfTransport.si({
    power: Math.max(0, meanPower),
    mass: x.robot.mass,
    speed,
    gravity: STANDARD_GRAVITY,
  })
  const charge = onOneCharge(x, Math.max(0, meanPower), speed)
  const tipping = tippingOf(x, feet)
  return {
    feet,
    corners: loads(x, forces, ways),
    unsupported: new Quantity(tipping.share, 'ratio'),
    tips: new Quantity(tipping.angle, 'angle'),
    ...bus,
    energyPerMetre: new Quantity(energyPerDistance, 'energyPerDistance'),
    costOfTransport: new Quantity(cost, 'ratio'),
    runningTime: charge === undefined ? undefined : new Quantity(charge.time, 'time'),
    range: charge === undefined ? undefined : new Quantity(charge.range, 'length'),
    samples: table(samples, stepLength / speed / dutyFactor),
  }
}

type FootForce = (stancePhase: number) => number
interface Stepping {
  readonly id: 'walk' | 'trot'
  readonly feet: Gait
  readonly forces: readonly FootForce[]
  readonly way: GroundWay
}

/** The strides of all legs, the ground holding their feet in one way. */
function stridesOf(leg: LegModel, x: LegNumbers, { id, feet, forces, way }: Stepping): CornerStride[] {
  return cornersOf(x).map(({ mirrored, corner }, k) => {
    const { heading, stanceSweep } = feet.legs[k]!
    // A right leg is the mirror image of a left one: its outer side is the right.
    const outward = corner.startsWith('left') ? 1 : -1
    return cornerStride(leg, id, {
      mirrored,
      heading: outward * heading.si,
      stepLength: stanceSweep.si,
      force: forces[k]!,
      traction: way.traction,
      lateral: outward * way.left,
    })
  })
}

/** A robot across a slope, its lower side on the left: the weight passes through the ground farther left; a centre of mass off the middle counts on that side. */
function leaning(x: LegNumbers, slope: number): LegNumbers {
  const { robot } = x
  return { ...x, robot: { ...robot, centreOfMassLeft: Math.abs(robot.centreOfMassLeft) + centreHeightOf(x) * Math.tan(slope) } }
}

/**
 * Force across the ground on each foot over its stance. A slow walk has that of standing still at each moment. A trot throws the body up: its force follows
 * from the impulse of the stance.
 */
function footForcesOf(
  leg: LegModel,
  x: LegNumbers,
  { id, feet, weight }: { readonly id: 'walk' | 'trot'; readonly feet: Gait; readonly weight: number },
): FootForce[] {
  const calculation = calculationFor(leg)
  const { shape, dutyFactor } = calculation.get(stanceOf, placeOf(calculation, { stance: id }) as never)
  const thrown = (legShare: number) => (stancePhase: number) =>
    stanceForce.si({
      mass: weight / STANDARD_GRAVITY,
      legShare,
      dutyFactor,
      stancePhase,
      shape,
      thirdHarmonic: 0,
      gravity: STANDARD_GRAVITY,
    })
  // Below a duty factor of a half the body flies between steps, however it walks.
  if (id === 'trot' || feet.standing.fewest === 0) return cornersOf(x).map(({ share }) => thrown(share))
  return stanceShares(x, feet).map(
    (shares) => (stancePhase) => weight * shares[Math.min(shares.length - 1, Math.floor(stancePhase * shares.length))]!,
  )
}

/** Loads of the legs: torques of their motors in the worst way. */
function loads(x: LegNumbers, forces: readonly FootForce[], ways: readonly (readonly CornerStride[])[]) {
  const aside = drivenJoints(x).includes('sidewaysHip')
  return cornersOf(x).map(({ corner, mirrored, share }, k): CornerLoad => {
    const torque = (joint: 'hip' | 'knee' | 'sidewaysHip') =>
      ways.map((strides) => strides[k]!.stride.motors[joint].peakTorque).reduce((one, other) => (other.si > one.si ? other : one))
    const peak = Math.max(...Array.from({ length: MOMENTS }, (_, i) => forces[k]!((i + 0.5) / MOMENTS)))
    return {
      corner,
      mirrored,
      meanShare: new Quantity(share, 'ratio'),
      peakForce: new Quantity(peak, 'force'),
      motorTorque: { hip: torque('hip'), knee: torque('knee'), sidewaysHip: aside ? torque('sidewaysHip') : undefined },
    }
  })
}
