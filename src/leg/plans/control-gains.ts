import { driveResonance, stiffnessAtMotor } from '../../capstan/index.js'
import { drumTorques, encoderStep } from '../../kinematics/index.js'
import { Quantity } from '../../units/index.js'
import { STANDARD_GRAVITY } from '../gravity.js'
import type { LegModel } from '../leg-model.js'
import { type DrivenJoint, JOINTS, type Joint, motorOf, rangeOf } from '../numbers.js'
import { mostSpringTorque, springLawOf } from '../parallel-torque.js'
import { springTorqueAt } from '../parts/springs/law.js'
import { legInverse, poseOf } from '../pose.js'
import { torque } from './bench.js'
import { driveFacts, driveWords } from './drive-facts.js'
import { phrase } from './sheet-units.js'
import { throughGeometry } from './through-geometry.js'

/** Highest sensible gains of a position loop on the motor's encoder, and why not more. */
export interface Gains {
  /** Bandwidth of the position loop, and what sets it. */
  readonly bandwidth: Quantity<'frequency'>
  /** The limit that sets the bandwidth. */
  readonly limitedBy: string
  /** Natural frequency of the leg on what gives in the drive, motor held, leg in the air; absent where nothing that gives is calculated. */
  readonly motorLocked: Quantity<'frequency'> | undefined
  /** Natural frequency of leg and rotor with the motor free. */
  readonly motorFree: Quantity<'frequency'> | undefined
  /** Inertia that the loop moves, at the joint: leg about the joint and rotor. */
  readonly inertia: Quantity<'momentOfInertia'>
  /** Gains at the joint, and the same at the motor. */
  readonly stiffness: Quantity<'torsionalStiffness'>
  /** Damping gain at the joint. */
  readonly damping: Quantity<'torsionalDamping'>
  /** Stiffness gain at the motor. */
  readonly motorStiffness: Quantity<'torsionalStiffness'>
  /** Damping gain at the motor. */
  readonly motorDamping: Quantity<'torsionalDamping'>
  /** Torque ripple at the motor that one encoder count makes through the damping gain, speed taken over one loop period. */
  readonly ripple: Quantity<'torque'>
  /** Why these gains and not more. */
  readonly reasoning: readonly string[]
}

/**
 * Gravity terms of the joints: holding torque is `thigh` sin(hip) + `shank` sin(hip + knee) at the hip and `shank` sin(hip + knee) at the knee, leg upright.
 * The drums of a knee that is driven through the hip hold others; see `ThroughHip`.
 */
export interface GravityTerms {
  /** Torque of the weight that turns with the hip's angle alone. */
  readonly thigh: Quantity<'torque'>
  /** Torque of the weight that turns with the sum of both angles. */
  readonly shank: Quantity<'torque'>
  /** Torque of the spring of each joint on it, at some angles of its travel: the drive holds what the spring does not. Empty without springs. */
  readonly springs: readonly {
    /** The joint that the spring turns. */
    readonly joint: Joint
    /** Angle of the joint. */
    readonly angle: Quantity<'angle'>
    /** Torque of the spring on the joint there. */
    readonly torque: Quantity<'torque'>
  }[]
  /**
   * Torque of the links about a driven sideways hip, leg straight down: `level` cos(angle) + `hanging` sin(angle). What sits between both hip axes is not in it.
   * Absent where no motor drives it.
   */
  readonly sideways?: {
    /** Factor of the cosine: torque of the leg hanging straight down. */
    readonly level: Quantity<'torque'>
    /** Factor of the sine: torque of the leg held out level. */
    readonly hanging: Quantity<'torque'>
  }
}

/** Angles of the travel at which the control sheet has the torque of a spring. */
const SPRING_ROWS = 5

function springRows(leg: LegModel): GravityTerms['springs'] {
  return JOINTS.flatMap((joint) => {
    const law = springLawOf(leg, joint)
    if (law === undefined) return []
    const { lowest, highest } = rangeOf(leg.x, joint)
    return Array.from({ length: SPRING_ROWS }, (_, i) => {
      const at = lowest + ((highest - lowest) * i) / (SPRING_ROWS - 1)
      return { joint, angle: new Quantity(at, 'angle'), torque: torque(springTorqueAt(law, at)) }
    })
  })
}

/** Gravity terms of the leg hanging from its hip. @internal */
export function gravityTerms(leg: LegModel): GravityTerms {
  const out = new Float64Array(3)
  const still = new Float64Array(3)
  // Thigh and shank both level: the knee carries the shank alone.
  const inverse = legInverse(leg, STANDARD_GRAVITY)
  inverse.torqueInto(out, 0, Float64Array.of(0, Math.PI / 2, 0), still, still, 0, 0, 0)
  const upright = { thigh: torque(out[1]! - out[2]!), shank: torque(out[2]!), springs: springRows(leg) }
  const drive = leg.x.joints.sidewaysHip?.drive
  if (drive === undefined || drive.kind === 'held') return upright
  const leaning = (lean: number) => {
    inverse.torqueInto(out, 0, Float64Array.of(lean, 0, 0), still, still, 0, 0, 0)
    return torque(out[0]!)
  }
  return { ...upright, sideways: { level: leaning(0), hanging: leaning(Math.PI / 2) } }
}

/** Largest torque at the drum of a joint that holds the leg in the air, level, and its springs at their hardest. @internal */
export function hangingTorque(leg: LegModel, joint: DrivenJoint): number {
  const { thigh, shank, sideways } = gravityTerms(leg)
  if (joint === 'sidewaysHip') {
    const { lowest, highest } = rangeOf(leg.x, joint)
    const at = (lean: number) => Math.abs((sideways?.level.si ?? 0) * Math.cos(lean) + (sideways?.hanging.si ?? 0) * Math.sin(lean))
    return Math.max(at(lowest), at(highest), at(0))
  }
  const through = throughGeometry(leg.x)
  const [ofHip, ofKnee] = [mostSpringTorque(leg, 'hip'), shank.si + mostSpringTorque(leg, 'knee')]
  if (through === undefined) return joint === 'hip' ? thigh.si + shank.si + ofHip : ofKnee
  // The drum of the knee holds the shank from the body: the hip's drum is relieved of it by the ratio.
  return joint === 'hip'
    ? thigh.si + ofHip + ofKnee * through.most((knee) => Math.abs(1 - 1 / through.ratio(knee)))
    : ofKnee * through.most((knee) => Math.abs(1 / through.ratio(knee)))
}

/** Inertia of the standing leg at the drum of one joint, the other drum held. @internal */
export function legInertia(leg: LegModel, joint: DrivenJoint): number {
  const out = new Float64Array(3)
  const pose = poseOf(leg)
  if (joint === 'sidewaysHip') {
    legInverse(leg, 0).torqueInto(out, 0, Float64Array.from(pose), new Float64Array(3), Float64Array.of(1, 0, 0), 0, 0, 0)
    return out[0]!
  }
  const ratio = throughGeometry(leg.x)?.ratio(pose[2])
  // A knee whose drum is held from the body turns back as the thigh turns.
  const unit = joint === 'hip' ? Float64Array.of(0, 1, ratio === undefined ? 0 : -1 / ratio) : Float64Array.of(0, 0, 1 / (ratio ?? 1))
  legInverse(leg, 0).torqueInto(out, 0, Float64Array.from(pose), new Float64Array(3), unit, 0, 0, 0)
  const [hipTorque, kneeTorque] = [out[1]!, out[2]!]
  if (ratio === undefined) return joint === 'hip' ? hipTorque : kneeTorque
  return drumTorques.si({ motorOn: 'body', kneeRatio: ratio, hipTorque, kneeTorque })[joint]
}

/** A sampled loop: bandwidth at most this part of its rate; its delay then costs some 30 degrees of phase. */
const LOOP_SHARE = 1 / 20
const DAMPING_RATIO = 0.7

/** Gains of one joint at a stiffness of its drive; absent where nothing that gives is calculated. `loopRate` in Hz. @internal */
export function gainsOf(leg: LegModel, joint: DrivenJoint, driveStiffness: number | undefined, loopRate: number): Gains {
  const { ratio, inertia: rotor } = driveFacts(leg, joint)
  const { elastic } = driveWords(leg.x, joint)
  const load = legInertia(leg, joint)
  const resonance =
    driveStiffness === undefined
      ? undefined
      : driveResonance.si({ stiffness: Math.max(driveStiffness, 1e-9), loadInertia: load, reflectedInertia: rotor })
  const byLoop = loopRate * LOOP_SHARE
  const byResonance = resonance?.usableBandwidth ?? Number.POSITIVE_INFINITY
  const bandwidth = Math.min(byResonance, byLoop)
  const inertia = load + rotor
  const speed = 2 * Math.PI * bandwidth
  const needed = inertia * speed * speed
  const softer = driveStiffness !== undefined && needed > driveStiffness
  const stiffness = softer ? driveStiffness : needed
  const damping = 2 * DAMPING_RATIO * Math.sqrt(stiffness * inertia)
  const toMotor = (k: number) => stiffnessAtMotor.si({ stiffness: k, ratio })
  const count = encoderStep.si({ countsPerTurn: motorOf(leg.x, joint).encoderCounts, turnsPerJointTurn: 1 }).step
  const limitedBy = byResonance <= byLoop ? `the resonance of leg and ${elastic}` : 'the rate of the control loop'
  const hz = (x: number) => new Quantity(x, 'frequency')
  return {
    bandwidth: hz(bandwidth),
    limitedBy,
    motorLocked: resonance && hz(resonance.motorLocked),
    motorFree: resonance && hz(resonance.motorFree),
    inertia: new Quantity(inertia, 'momentOfInertia'),
    stiffness: new Quantity(stiffness, 'torsionalStiffness'),
    damping: new Quantity(damping, 'torsionalDamping'),
    motorStiffness: new Quantity(toMotor(stiffness), 'torsionalStiffness'),
    motorDamping: new Quantity(toMotor(damping), 'torsionalDamping'),
    ripple: torque(toMotor(damping) * count * loopRate),
    reasoning: [
      resonance === undefined
        ? 'No stiffness of this drive is calculated, so that no resonance limits the gains here. Its links, its play and its foot do: raise the gains until the joint hums, then halve them.'
        : phrase`With the motor held the leg swings on its ${elastic} at ${hz(resonance.motorLocked)}; a loop on the motor's encoder cannot damp that and stays at a third of it (rule of thumb): ${hz(resonance.usableBandwidth)}.`,
      phrase`A loop at ${hz(loopRate)} carries a twentieth of its rate (rule of thumb): ${hz(byLoop)}. What governs is ${limitedBy}.`,
      phrase`Below that, leg and rotor move as one (${new Quantity(inertia, 'momentOfInertia')} at the joint): stiffness is inertia times the square of the angular bandwidth, damping for a damping ratio of ${DAMPING_RATIO}.`,
      ...(driveStiffness === undefined
        ? []
        : [
            softer
              ? `The ${elastic} is softer than that, so the gain is held to the stiffness of the drive: more would only shake the motor.`
              : `The ${elastic} is stiffer than this gain, so the gain sets the stiffness at the foot.`,
          ]),
      'With the foot on the ground the inertia is another: start at a quarter of these gains and raise them with the leg hung up.',
    ],
  }
}
