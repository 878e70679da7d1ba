import { legDynamics, stanceForce, strideDemand, threeJointLeg } from '../../kinematics/index.js'
import { currentsForTorque, speedAtCurrent } from '../../thermal/index.js'
import { Quantity } from '../../units/index.js'
import { placeOf } from '../calculation.js'
import { controllerOf, driveOf, JOINTS, type Joint, motorOf, type Prepared } from '../numbers.js'
import { stance as stanceOf } from '../parts/load/values.js'
import { footPathOf } from '../parts/motion/stride.js'
import { bodyOf, branchOf } from '../pose.js'
import { calculationFor, caseState } from '../what-if.js'

/** Speed and torque, SI, in size. */
type Point = readonly [speed: number, torque: number]

/** Moments of a gait at one motor. */
interface GaitCloud {
  readonly name: string
  readonly joint: Joint
  readonly points: readonly Point[]
  /** Largest torque over the stride. */
  readonly peakTorque: number
}

const SAMPLES = 48
const LIMIT_POINTS = 24

/** A stride of walk or trot of a leg: links as rods with their mass, rotors included. */
export function strideOf(leg: Prepared, id: 'walk' | 'trot'): ReturnType<typeof strideDemand> {
  const { links } = leg.x
  const length = (x: number) => new Quantity(x, 'length')
  const kinematic = threeJointLeg({
    hipOffset: length(links.hipOffset),
    upperLink: length(links.upper.length),
    lowerLink: length(links.lower.length),
  })
  const slender = (link: 'upper' | 'lower') => {
    const { mass, centre, inertia } = bodyOf(leg, link)
    const across = new Quantity(inertia, 'momentOfInertia')
    return {
      mass: new Quantity(mass, 'mass'),
      centreOfMass: { x: length(0), y: length(0), z: length(-centre) },
      inertia: { xx: across, yy: across },
    }
  }
  const dynamics = legDynamics(kinematic, {
    hipLink: { mass: '0 kg', centreOfMass: { x: '0 m', y: '0 m', z: '0 m' } },
    upperLink: slender('upper'),
    lowerLink: slender('lower'),
  })
  const drive = (joint: Joint) => ({
    ratio: leg.drives[joint].ratio,
    efficiency: driveOf(leg.x, joint, 'cord').efficiency,
    rotorInertia: new Quantity(motorOf(leg.x, joint).rotorInertia, 'momentOfInertia'),
  })
  const calculation = calculationFor(leg)
  const stance = calculation.get(stanceOf, placeOf(calculation, { stance: id }) as never)
  const path = { ...stance, hipOffset: links.hipOffset, height: leg.x.robot.standHeight }
  return strideDemand({
    leg: kinematic,
    path: footPathOf(path, stance.stepLength / stance.speed / stance.dutyFactor),
    dynamics,
    groundReactionSi: (out, stancePhase) => {
      const { legShare, dutyFactor, shape, gravity, tractionHighest: traction } = stance
      const { mass } = leg.x.robot
      const force = stanceForce.si({ mass, legShare, dutyFactor, stancePhase, shape, thirdHarmonic: 0, gravity })
      out[0] = traction * force
      out[1] = 0
      out[2] = force
    },
    drives: { sidewaysHip: { ratio: 1 }, hip: drive('hip'), knee: drive('knee') },
    kneeBend: branchOf(leg) === 0 ? 'forward' : 'backward',
    samples: SAMPLES,
  })
}

/** Speed and torque at each motor's shaft over strides of walk and trot; a gait that the leg cannot follow is left out. */
export function gaitClouds(leg: Prepared): readonly GaitCloud[] {
  // The points of a knee that is driven through the hip are those of drums, which the path of joints does not give.
  if (leg.x.joints.knee.through !== undefined) return []
  return (['walk', 'trot'] as const).flatMap((id) => {
    const stride = strideOf(leg, id)
    if (!stride.walkable) return []
    return JOINTS.map((joint) => {
      const { cloud, peakTorque } = stride.motors[joint]
      return {
        name: `${joint}, ${id}`,
        joint,
        points: Array.from(cloud.speed, (speed, i): Point => [Math.abs(speed), Math.abs(cloud.torque[i]!)]),
        peakTorque: peakTorque.si,
      }
    })
  })
}

/** Motor limit at the open-circuit supply voltage, from the controller's current limit to its highest speed, with magnets and winding as warm as in a state. Default: the knee's after walking. */
export function motorLimit(
  leg: Prepared,
  heat: { readonly backEmfConstant: number; readonly resistance: number } = caseState(leg, 'walk').joints.knee.heat,
  joint: Joint = 'knee',
): readonly Point[] {
  const { supply } = leg.x
  const [motor, controller] = [motorOf(leg.x, joint), controllerOf(leg.x, joint)]
  const perTorque = currentsForTorque.si({ torque: 1, backEmfConstant: heat.backEmfConstant }).peakPhase
  const points: Point[] = [[0, controller.currentLimit / perTorque]]
  for (let i = LIMIT_POINTS; i >= 0; i--) {
    const peakPhaseCurrent = (controller.currentLimit * i) / LIMIT_POINTS
    const { speed } = speedAtCurrent.si({
      voltage: supply.voltage,
      backEmfConstant: heat.backEmfConstant,
      terminalResistance: heat.resistance,
      peakPhaseCurrent,
      phaseInductance: motor.phaseInductance,
      polePairs: motor.polePairs ?? 1,
    })
    points.push([speed, peakPhaseCurrent / perTorque])
  }
  return points
}
