import { motorTorqueThroughReduction, tipOverSlope } from '../../kinematics/index.js'
import { slopeLoadShare } from '../../structures/index.js'
import { Quantity } from '../../units/index.js'
import { placeOf } from '../calculation.js'
import { couplingOf } from '../coupling.js'
import { uprightCompliance } from '../foot-result.js'
import { STANDARD_GRAVITY } from '../gravity.js'
import type { LegModel } from '../leg-model.js'
import type { LegNumbers } from '../leg-numbers.js'
import { type DrivenJoint, drivenJoints } from '../numbers.js'
import { parallelTorqueOf } from '../parallel-torque.js'
import { ratio } from '../parts/transmission/questions.js'
import { efficiency } from '../parts/transmission/through-hip/whole.js'
import { legInverse, poseOf } from '../pose.js'
import { calculationFor } from '../what-if.js'
import { busAt, busMotors, type ShaftPoint } from './bus.js'
import { centreHeightOf, cornersOf } from './feet.js'
import { type GaitWay, onOneCharge, robotGait } from './gait.js'
import type { Corner, RobotSlope, RobotSlopeAcross, RobotStand } from './result.js'

const still = new Float64Array(3)

/** Torques at the shafts that hold a standing leg against a force across the ground. */
function holding(leg: LegModel, force: number): ShaftPoint[] {
  const q = Float64Array.from(poseOf(leg))
  const torques = new Float64Array(3)
  legInverse(leg, STANDARD_GRAVITY).torqueInto(torques, 0, q, still, still, 0, 0, force)
  const borne = new Float64Array(3)
  parallelTorqueOf(leg)?.(borne, q)
  for (let j = 0; j < 3; j++) torques[j] = torques[j]! - borne[j]!
  couplingOf(leg)?.si.actuatorTorquesInto(torques, 0, q, torques.slice())
  const calculation = calculationFor(leg)
  const torqueOf = { sidewaysHip: torques[0]!, hip: torques[1]!, knee: torques[2]! } satisfies Record<DrivenJoint, number>
  return drivenJoints(leg.x).map((joint) => {
    const where = calculation.instances.implied(placeOf(calculation, { joint })) as never
    const torque = motorTorqueThroughReduction.si({
      outputTorque: torqueOf[joint],
      outputSpeed: 0,
      outputAcceleration: 0,
      ratio: calculation.get(ratio, where),
      efficiency: calculation.get(efficiency, where),
      backEfficiency: 1,
      rotorInertia: 0,
      carrierAcceleration: 0,
    })
    return { joint, speed: 0, torque }
  })
}

/** The robot on its four feet, standing still on the level. */
export function robotStand(leg: LegModel): RobotStand {
  const { x } = leg
  const weight = x.robot.mass * STANDARD_GRAVITY
  const corners = cornersOf(x)
  const bus = busAt(
    leg,
    busMotors(leg, 'stand'),
    corners.flatMap(({ share }) => holding(leg, share * weight)),
    0,
  )
  const compliance = uprightCompliance(leg)
  // A foot that is short by a length hands a quarter of its stiffness times that length to its neighbours, and so does the one across.
  const lightest = Math.min(...corners.map(({ share }) => share)) * weight
  const charge = onOneCharge(x, bus.power, 0)
  return {
    forces: Object.fromEntries(corners.map(({ corner, share }) => [corner, new Quantity(share * weight, 'force')])) as {
      readonly [C in Corner]: Quantity<'force'>
    },
    hollow: Number.isFinite(compliance) ? new Quantity(4 * lightest * compliance, 'length') : undefined,
    power: new Quantity(bus.power, 'power'),
    motorHeat: new Quantity(bus.motorHeat, 'power'),
    runningTime: charge === undefined ? undefined : new Quantity(charge.time, 'time'),
  }
}

/** The robot on the slope of an event, straight up (1) or down (-1). */
export function robotSlope(x: LegNumbers, slope: number, way: 1 | -1): RobotSlope {
  const { hipSpacing, centreOfMassForward: forward, mass } = x.robot
  const across = mass * STANDARD_GRAVITY * Math.cos(slope)
  // Uphill the hind pair is the lower one, downhill the front pair.
  const off = way === 1 ? -forward : forward
  const tipsAt = tipOverSlope.si({ marginToEdge: hipSpacing / 2 - off, height: centreHeightOf(x) })
  const lower = slopeLoadShare.si({ slope, tipOverSlope: tipsAt, levelShare: 0.5 + off / hipSpacing }) * across
  return {
    slope: new Quantity(slope, 'angle'),
    front: new Quantity(way === 1 ? across - lower : lower, 'force'),
    hind: new Quantity(way === 1 ? lower : across - lower, 'force'),
    traction: new Quantity(Math.tan(slope), 'ratio'),
    tipsAt: new Quantity(tipsAt, 'angle'),
  }
}

/** The robot across the slope of an event, and its walk there. */
export function robotAcross(leg: LegModel, slope: number, way: GaitWay): RobotSlopeAcross {
  const { x } = leg
  const { hipTrack, centreOfMassLeft, mass } = x.robot
  const width = hipTrack + 2 * x.links.hipOffset
  const weight = mass * STANDARD_GRAVITY * Math.cos(slope)
  const off = Math.abs(centreOfMassLeft)
  const tipsAt = tipOverSlope.si({ marginToEdge: width / 2 - off, height: centreHeightOf(x) })
  const lower = slopeLoadShare.si({ slope, tipOverSlope: tipsAt, levelShare: 0.5 + off / width }) * weight
  return {
    slope: new Quantity(slope, 'angle'),
    lower: new Quantity(lower, 'force'),
    upper: new Quantity(weight - lower, 'force'),
    traction: new Quantity(Math.tan(slope), 'ratio'),
    tipsAt: new Quantity(tipsAt, 'angle'),
    walk: slope < tipsAt ? robotGait(leg, 'walk', { ...way, slope }) : undefined,
  }
}
