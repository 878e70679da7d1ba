import { legDynamics, strideDemand, type ThreeJointLeg, threeJointLeg } from '../kinematics/index.js'
import { Quantity } from '../units/index.js'
import { placeOf } from './calculation.js'
import { couplingOf } from './coupling.js'
import type { LegModel } from './leg-model.js'
import { type DrivenJoint, drivenJoints } from './numbers.js'
import { parallelTorqueOf } from './parallel-torque.js'
import { type Stance, stance as stanceOf } from './parts/load/stance.js'
import { footPathOf, uprightForces } from './parts/motion/stride-moments.js'
import { rotorAtJoint, turningWithRotor } from './parts/motors/rotor.js'
import { ownInertia, ratio, signedRatio } from './parts/transmission/questions.js'
import { efficiency } from './parts/transmission/through-hip/whole.js'
import { bodyOf, branchOf } from './pose.js'
import { calculationFor } from './what-if.js'

const length = (x: number) => new Quantity(x, 'length')
const SAMPLES = 48

/** How a stride differs from that of the load case. */
export interface StrideWay {
  /** Force across the ground on the foot at a phase of its stance. Default: the largest that the load case takes there for a leg of any row. */
  readonly force?: (stancePhase: number) => number
  /** Whether the leg is mounted the other way round, and steps backward while the robot walks forward. Default: no. */
  readonly mirrored?: boolean
  /** Whether a load that drives a reduction back loses the same share of its power as a motor that drives. Default: it loses nothing. */
  readonly lossyBack?: boolean
  /** Direction of the step, from forward to the leg's own outer side, before it is mounted the other way round. Default: forward. */
  readonly heading?: number
  /** Way of the body over the foot while it stands. Default: that of the gait. */
  readonly stepLength?: number
  /** Force along the ground over force across it. Default: the highest of the load case. */
  readonly traction?: number
  /** Force to the leg's own outer side, along the ground, over force across it: on a slope that is walked across. Default: 0. */
  readonly lateral?: number
  /** Samples of the stride. Default: 48. */
  readonly samples?: number
}

/** The leg of `limbwright/kinematics` with the lengths of this one. */
export function kinematicOf({ x: { links } }: LegModel): ThreeJointLeg {
  return threeJointLeg({
    hipOffset: length(links.hipOffset),
    upperLink: length(links.upper.length),
    lowerLink: length(links.lower.length),
  })
}

const largestForce = ({ x }: LegModel, stance: Stance, stancePhase: number): number =>
  Math.max(...uprightForces({ ...stance, mass: x.robot.mass }, stancePhase))

const placeOfDrive = (leg: LegModel, joint: DrivenJoint) => {
  const calculation = calculationFor(leg)
  return calculation.instances.implied(placeOf(calculation, { joint })) as never
}

/** Links with what is mounted on them. A rotor that rides on the upper link turns with it besides its own spin, and the wheel of its drive turns with the lower link. */
function dynamicsOf(leg: LegModel, kinematic: ThreeJointLeg) {
  const rides = couplingOf(leg) === undefined
  const [calculation, knee] = [calculationFor(leg), placeOfDrive(leg, 'knee')]
  const spinning = {
    upper: rides ? calculation.get(turningWithRotor, knee) : 0,
    lower: (rides ? calculation.get(ownInertia, knee)?.atJoint : undefined) ?? 0,
  }
  const slender = (link: 'upper' | 'lower') => {
    const { mass, centre, inertia } = bodyOf(leg, link)
    const across = new Quantity(inertia + spinning[link], 'momentOfInertia')
    return {
      mass: new Quantity(mass, 'mass'),
      centreOfMass: { x: length(0), y: length(0), z: length(-centre) },
      inertia: { xx: across, yy: across },
    }
  }
  return legDynamics(kinematic, {
    hipLink: { mass: '0 kg', centreOfMass: { x: '0 m', y: '0 m', z: '0 m' } },
    upperLink: slender('upper'),
    lowerLink: slender('lower'),
  })
}

/** The drive of a joint as a stride loads it. */
function driveOf(leg: LegModel, joint: DrivenJoint, lossyBack: boolean) {
  const [calculation, where] = [calculationFor(leg), placeOfDrive(leg, joint)]
  const turns = calculation.get(ratio, where)
  const ridesAlong = joint === 'knee' && couplingOf(leg) === undefined
  const inertia = ridesAlong ? calculation.get(turningWithRotor, where) : calculation.get(rotorAtJoint, where) / turns ** 2
  const share = calculation.get(efficiency, where)
  return {
    ratio: turns,
    rotorTurns: calculation.get(signedRatio, where) < 0 ? ('againstDrum' as const) : ('withDrum' as const),
    efficiency: share,
    ...(lossyBack ? { backEfficiency: share } : {}),
    rotorInertia: new Quantity(inertia, 'momentOfInertia'),
  }
}

/** A stride of walk or trot of a leg: links with what is mounted on them, rotors, springs and the coupling of the drives included. */
export function strideOf(leg: LegModel, id: 'walk' | 'trot', way: StrideWay = {}): ReturnType<typeof strideDemand> {
  const { links } = leg.x
  const kinematic = kinematicOf(leg)
  const calculation = calculationFor(leg)
  const coupling = couplingOf(leg)
  const drive = (joint: DrivenJoint) => driveOf(leg, joint, way.lossyBack === true)
  const stance = calculation.get(stanceOf, placeOf(calculation, { stance: id }) as never)
  const { dutyFactor, tractionHighest, stepLength, speed } = stance
  const period = stepLength / speed / dutyFactor
  const path = { ...stance, stepLength: way.stepLength ?? stepLength, hipOffset: links.hipOffset, height: leg.x.robot.standHeight }
  const force = way.force ?? ((stancePhase: number) => largestForce(leg, stance, stancePhase))
  const parallelTorqueSi = parallelTorqueOf(leg)
  // A leg that is mounted the other way round sees the robot walk backward: the foot's path and the traction are mirrored.
  const heading = way.mirrored === true ? Math.PI - (way.heading ?? 0) : (way.heading ?? 0)
  return strideDemand({
    leg: kinematic,
    path: footPathOf(path, period, heading),
    dynamics: dynamicsOf(leg, kinematic),
    ...(coupling === undefined ? {} : { coupling }),
    ...(parallelTorqueSi === undefined ? {} : { parallelTorqueSi }),
    groundReactionSi: (out, stancePhase) => {
      const upright = force(stancePhase)
      const push = (way.traction ?? tractionHighest) * upright
      out[0] = Math.cos(heading) * push
      out[1] = Math.sin(heading) * push + (way.lateral ?? 0) * upright
      out[2] = upright
    },
    drives: {
      sidewaysHip: drivenJoints(leg.x).includes('sidewaysHip') ? drive('sidewaysHip') : { ratio: 1 },
      hip: drive('hip'),
      knee: drive('knee'),
    },
    kneeBend: branchOf(leg) === 0 ? 'forward' : 'backward',
    samples: way.samples ?? SAMPLES,
  })
}
