import { driveResonance, reflectedInertia } from '../capstan/index.js'
import { encoderStep, type FootErrorLine, footError, footStiffness, threeJointLeg, type Vector3 } from '../kinematics/index.js'
import { Quantity } from '../units/index.js'
import { poseOf } from './cases/motion.js'
import { workOut } from './cases/work-out.js'
import { JOINTS, type Joint, type Prepared } from './numbers.js'
import { legInertia } from './plans/control-gains.js'
import { boxBendingStress, boxTorsionRigidity } from './sections.js'
import { bareSheet } from './sheet.js'

/** How well the foot of the standing leg keeps its place. */
export interface FootResult {
  /** Error of the foot from cord windup at walking torque and from encoder rounding, cause by cause and together. */
  readonly error: { readonly lines: readonly FootErrorLine[]; readonly together: FootErrorLine }
  /** Stiffness with the foot free to move across the push, along x, y, z; absent where the drives slip or are too soft to hold the load. */
  readonly stiffness: Vector3<'linearStiffness'> | undefined
  /** Movement of the foot under the standing load. */
  readonly deflection: Vector3<'length'> | undefined
  /** What drives and links each give, along x, y, z. */
  readonly shares: { readonly drives: Vector3<'linearCompliance'>; readonly links: Vector3<'linearCompliance'> } | undefined
  /** Resonances of each driven joint with the leg in the air. */
  readonly resonance: { readonly [J in Joint]: { readonly motorLocked: Quantity<'frequency'>; readonly motorFree: Quantity<'frequency'> } }
  /** Bandwidth that a controller on the motor side can usually reach: the slower joint's. */
  readonly usableBandwidth: Quantity<'frequency'>
}

/** Position error, stiffness and resonance of the foot, leg standing, drives as stiff as they are at walking torque. */
export function footResult(leg: Prepared): FootResult {
  const { x } = leg
  const angles = poseOf(leg)
  const kinematic = threeJointLeg({
    hipOffset: length(x.links.hipOffset),
    upperLink: length(x.links.upper.length),
    lowerLink: length(x.links.lower.length),
  })
  const walk = workOut(leg, bareSheet, 'walk')
  const beams = { upperLink: beam(leg, 'upper'), lowerLink: beam(leg, 'lower') }
  const weight = (x.robot.mass * 9.80665) / x.robot.legs
  const at = { abduction: angle(angles[0]), hip: angle(angles[1]), knee: angle(angles[2]) }
  // A drive that slips at walking torque holds nothing in place.
  const slips = JOINTS.some((joint) => walk.joints[joint].drive.stiffness <= 0)
  const stiff: ReturnType<typeof footStiffness> = slips
    ? { stable: false }
    : footStiffness(kinematic, {
        angles: at,
        driveStiffness: {
          abduction: new Quantity(x.joints.sidewaysHip.stiffness, 'torsionalStiffness'),
          hip: new Quantity(walk.joints.hip.drive.stiffness, 'torsionalStiffness'),
          knee: new Quantity(walk.joints.knee.drive.stiffness, 'torsionalStiffness'),
        },
        groundReaction: { x: force(0), y: force(0), z: force(weight) },
        ...beams,
      })
  const step = (joint: Joint) =>
    encoderStep.si({ countsPerTurn: x.motor.encoderCounts, turnsPerJointTurn: leg.drives[joint].ratio }).worstError
  const error = footError(kinematic, {
    angles: at,
    sources: [
      {
        name: 'cord windup at walking torque',
        at: 'joint',
        abduction: angle(0),
        hip: angle(walk.joints.hip.drive.windup),
        knee: angle(walk.joints.knee.drive.windup),
      },
      { name: 'encoder rounding', at: 'joint', abduction: angle(0), hip: angle(step('hip')), knee: angle(step('knee')) },
    ],
  })
  const resonanceOf = (joint: Joint) =>
    driveResonance.si({
      stiffness: Math.max(walk.joints[joint].drive.stiffness, 1e-9),
      loadInertia: legInertia(leg, joint),
      reflectedInertia: reflectedInertia.si({ rotorInertia: x.motor.rotorInertia, ratio: leg.drives[joint].ratio }),
    })
  const resonances = { hip: resonanceOf('hip'), knee: resonanceOf('knee') }
  const frequencies = (joint: Joint) => ({
    motorLocked: new Quantity(resonances[joint].motorLocked, 'frequency'),
    motorFree: new Quantity(resonances[joint].motorFree, 'frequency'),
  })
  return {
    error: { lines: error.lines, together: error.together },
    stiffness: stiff.stable ? stiff.free : undefined,
    deflection: stiff.stable ? stiff.deflection : undefined,
    shares: stiff.stable ? { drives: stiff.shares.drives, links: stiff.shares.links } : undefined,
    resonance: { hip: frequencies('hip'), knee: frequencies('knee') },
    usableBandwidth: new Quantity(Math.min(...JOINTS.map((joint) => resonances[joint].usableBandwidth)), 'frequency'),
  }
}

function beam(leg: Prepared, name: 'upper' | 'lower') {
  const link = leg.x.links[name]
  const { modulus, poissonRatio } = leg.links[name]
  const inertia = (width: number, depth: number) =>
    boxBendingStress.si({ moment: 0, width, depth, wall: link.wall, axialForce: 0 }).secondMoment
  const rigidity = (x: number) => new Quantity(x, 'bendingRigidity')
  return {
    inPlane: rigidity(modulus * inertia(link.width, link.depth)),
    acrossPlane: rigidity(modulus * inertia(link.depth, link.width)),
    torsion: rigidity(boxTorsionRigidity.si({ width: link.width, depth: link.depth, wall: link.wall, modulus, poissonRatio })),
  }
}

const length = (x: number) => new Quantity(x, 'length')
const angle = (x: number) => new Quantity(x, 'angle')
const force = (x: number) => new Quantity(x, 'force')
