import {
  type AngleErrorSource,
  cantileverToe,
  type FootErrorLine,
  footError,
  footStiffness,
  threeJointLeg,
  type Vector3,
} from '../kinematics/index.js'
import { boxSection, boxTorsionalRigidity } from '../structures/index.js'
import { Quantity } from '../units/index.js'
import { placeOf } from './calculation.js'
import { couplingOf } from './coupling.js'
import { drumSources, encoderSources, windupSources } from './drive-errors.js'
import { type FootResonance, footResonance } from './foot-resonance.js'
import { STANDARD_GRAVITY } from './gravity.js'
import { harderWalks } from './harder-walk.js'
import type { LegModel } from './leg-model.js'
import { materialState } from './material-state.js'
import { boxOf, type DrivenJoint, JOINTS, type Joint, toesOf } from './numbers.js'
import { stiffness } from './parts/transmission/questions.js'
import { poseOf } from './pose.js'
import { type SidewaysGive, sidewaysGive } from './sideways-give.js'
import { calculationFor } from './what-if.js'

/** How well the foot of the standing leg keeps its place. */
export interface FootResult extends FootResonance {
  /**
   * Error of the foot, cause by cause and together: windup of the drives at walking torque and the part that friction keeps, free play, rounding and accuracy of
   * the encoder, drums out of true, deflection of links and toes under the standing load.
   */
  readonly error: {
    /** Error of the foot from each cause. */
    readonly lines: readonly FootErrorLine[]
    /** Error of the foot from all causes. */
    readonly together: FootErrorLine
  }
  /** Stiffness with the foot free to move across the push, along x, y, z; absent where the drives slip or are too soft to hold the load. */
  readonly stiffness: Vector3<'linearStiffness'> | undefined
  /** Movement of the foot under the standing load. */
  readonly deflection: Vector3<'length'> | undefined
  /** How far the foot gives to the side. */
  readonly sideways: SidewaysGive
  /** Compliance of drives and of links, along x, y, z. */
  readonly shares:
    | {
        /** Compliance at the foot from the drives. */
        readonly drives: Vector3<'linearCompliance'>
        /** Compliance at the foot from the links. */
        readonly links: Vector3<'linearCompliance'>
      }
    | undefined
}

/** Position error, stiffness and resonance of the foot, leg standing, drives as stiff as they are at the torque of walking forward or backward, whichever is more. */
export function footResult(leg: LegModel): FootResult {
  const { x } = leg
  const angles = poseOf(leg)
  const kinematic = threeJointLeg({
    hipOffset: length(x.links.hipOffset),
    upperLink: length(x.links.upper.length),
    lowerLink: length(x.links.lower.length),
  })
  const walk = harderWalks(leg)
  const beams = { upperLink: beam(leg, 'upper'), lowerLink: beam(leg, 'lower') }
  const weight = standingLoad(x.robot.mass, x.robot.legs)
  const at = { sidewaysHip: angle(angles[0]), hip: angle(angles[1]), knee: angle(angles[2]) }
  const coupling = couplingOf(leg)
  const coupled = coupling === undefined ? {} : { coupling }
  // A drive that slips at walking torque holds nothing in place.
  const stiffnessOf = (joint: Joint) => walk.joints[joint].transmission.stiffness ?? RIGID_STIFFNESS
  const sidewaysHip = sidewaysStiffness(leg)
  const slips = sidewaysHip <= 0 || JOINTS.some((joint) => stiffnessOf(joint) <= 0)
  const stiff: ReturnType<typeof footStiffness> = slips
    ? { stable: false }
    : footStiffness(kinematic, {
        angles: at,
        driveStiffness: {
          sidewaysHip: new Quantity(sidewaysHip, 'torsionalStiffness'),
          hip: new Quantity(stiffnessOf('hip'), 'torsionalStiffness'),
          knee: new Quantity(stiffnessOf('knee'), 'torsionalStiffness'),
        },
        ...coupled,
        groundReaction: { x: force(0), y: force(0), z: force(weight) },
        ...beams,
      })
  const both = (name: string, of: (joint: DrivenJoint) => number): AngleErrorSource => ({
    name,
    at: coupling === undefined ? 'joint' : 'actuator',
    sidewaysHip: angle(walk.joints.sidewaysHip === undefined ? 0 : of('sidewaysHip')),
    hip: angle(of('hip')),
    knee: angle(of('knee')),
  })
  const error = footError(kinematic, {
    angles: at,
    ...coupled,
    sources: [
      ...windupSources(leg, walk, both),
      ...encoderSources(leg, walk, both),
      ...drumSources(leg, both),
      { name: 'links under the standing load', at: 'foot', ...upright(stiff.stable ? weight * stiff.shares.links.z.si : 0) },
      { name: 'toes under the standing load', at: 'foot', ...upright(toeGive(leg, weight)) },
    ],
  })
  return {
    error: { lines: error.lines, together: error.together },
    stiffness: stiff.stable ? stiff.free : undefined,
    deflection: stiff.stable ? stiff.deflection : undefined,
    sideways: sidewaysGive(leg, stiff.stable ? { all: 1 / stiff.free.y.si, links: stiff.shares.links.y.si } : undefined),
    shares: stiff.stable ? { drives: stiff.shares.drives, links: stiff.shares.links } : undefined,
    ...footResonance(leg, walk),
  }
}

/** Stiffness of what holds the sideways hip. A leg without one is fixed to the body there. */
function sidewaysStiffness(leg: LegModel): number {
  const drive = leg.x.joints.sidewaysHip?.drive
  if (drive === undefined || drive.kind === 'held') return drive?.stiffness ?? RIGID_STIFFNESS
  const calculation = calculationFor(leg)
  const where = calculation.instances.implied(placeOf(calculation, { joint: 'sidewaysHip', event: 'walk', air: 'normal', age: 'new' }))
  return calculation.get(stiffness, where as never) ?? RIGID_STIFFNESS
}
/** Stiffer than any drive by far, N m/rad. */
const RIGID_STIFFNESS = 1e9

/** Movement of the foot along z only. */
const upright = (z: number) => ({ x: length(0), y: length(0), z: length(z) })

/** How far the toes bend upright under a foot's load: until they lie flat. */
function toeGive(leg: LegModel, load: number): number {
  const toes = toesOf(leg.x)
  const { modulus } = materialState(leg, toes.material).elastic()
  const { deflection } = cantileverToe.si({
    modulus,
    length: toes.length,
    width: toes.width,
    thickness: toes.thickness,
    allowableStrain: 1,
    tipForce: (load / toes.count) * Math.cos(toes.lift),
  })
  return Math.min(deflection * Math.cos(toes.lift), toes.length * Math.sin(toes.lift))
}

/** Vertical compliance of the foot of the standing leg without its toes [m/N]; infinite where the drives hold no load. */
export function uprightCompliance(leg: LegModel): number {
  const { deflection } = footResult(leg)
  const { mass, legs } = leg.x.robot
  return deflection === undefined ? Number.POSITIVE_INFINITY : Math.abs(deflection.z.si) / standingLoad(mass, legs)
}

/** Load of one foot of the standing robot, N. */
export const standingLoad = (mass: number, legs: number): number => (mass * STANDARD_GRAVITY) / legs

function beam(leg: LegModel, name: 'upper' | 'lower') {
  const { wall, width: across, depth: along } = boxOf(leg.x, name)
  const { modulus, poissonRatio } = materialState(leg, leg.x.links[name].material).elastic()
  const inertia = (width: number, depth: number) => boxSection.si({ width, depth, wall }).secondMoment
  const rigidity = (x: number) => new Quantity(x, 'bendingRigidity')
  return {
    inPlane: rigidity(modulus * inertia(across, along)),
    acrossPlane: rigidity(modulus * inertia(along, across)),
    torsion: rigidity(boxTorsionalRigidity.si({ width: across, depth: along, wall, modulus, poissonRatio })),
  }
}

const length = (x: number) => new Quantity(x, 'length')
const angle = (x: number) => new Quantity(x, 'angle')
const force = (x: number) => new Quantity(x, 'force')
