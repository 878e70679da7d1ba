import { placeOf } from '../calculation.js'
import type { LegModel } from '../leg-model.js'
import type { LegNumbers } from '../leg-numbers.js'
import { type DriveKind, type DrivenJoint, driveKindOf } from '../numbers.js'
import { rotorAtJoint } from '../parts/motors/rotor.js'
import { efficiency, mass, freePlay as ownFreePlay, signedRatio } from '../parts/transmission/questions.js'
import { freePlay } from '../parts/transmission/through-hip/whole.js'
import { calculationFor } from '../what-if.js'

/** Data of a joint's drive for the plans, the same for every kind, SI. */
export interface DriveFacts {
  readonly kind: DriveKind
  /** Turns of the motor for one of the joint, without sign. */
  readonly ratio: number
  /** −1 where motor and joint turn against each other. */
  readonly sign: 1 | -1
  /** From the motor to its drum. */
  readonly efficiency: number
  /** Inertia of the rotor and of what turns in the drive, at the joint. */
  readonly inertia: number
  /** Angle through which the joint turns freely, motor held. */
  readonly freePlay: number
  /** The same of the drive from the motor to its drum alone: of a knee that belt or cord drives through the hip, what a stand sees with that taken off. */
  readonly ownFreePlay: number
  /** Mass of the drive besides its motor; absent where it is not counted. */
  readonly mass: number | undefined
}

/** Data that every kind of drive gives. */
export function driveFacts(leg: LegModel, joint: DrivenJoint): DriveFacts {
  const calculation = calculationFor(leg)
  const here = calculation.instances.implied(placeOf(calculation, { joint })) as never
  const turns = calculation.get(signedRatio, here)
  return {
    kind: driveKindOf(leg.x, joint),
    ratio: Math.abs(turns),
    sign: turns < 0 ? -1 : 1,
    efficiency: calculation.get(efficiency, here),
    inertia: calculation.get(rotorAtJoint, here),
    freePlay: calculation.get(freePlay, here),
    ownFreePlay: calculation.get(ownFreePlay, here),
    mass: calculation.get(mass, here),
  }
}

/** Angle through which a drive turns freely from its motor to its drum; of a second stage that of belt or cord along the upper link. */
export function ownPlay(leg: LegModel, joint: DrivenJoint): number {
  const calculation = calculationFor(leg)
  return calculation.get(ownFreePlay, calculation.instances.implied(placeOf(calculation, { joint })) as never)
}

/** Words for a kind of drive. */
export interface DriveWords {
  /** The drive. */
  readonly drive: string
  /** Part that turns with the joint. */
  readonly output: string
  /** Part that stretches or twists between motor and joint. */
  readonly elastic: string
  /** Part that ages, with its article; absent where none does. */
  readonly ages?: string
}

const WORDS: { readonly [K in DriveKind]: DriveWords } = {
  cord: { drive: 'cord', output: 'drum', elastic: 'cord', ages: 'cord' },
  belt: { drive: 'tooth belt', output: 'large pulley', elastic: 'belt', ages: 'belt' },
  gear: { drive: 'pair of gears', output: 'wheel', elastic: 'teeth' },
  gearbox: { drive: 'gearbox', output: 'output of the gearbox', elastic: 'gearbox' },
  direct: { drive: 'direct drive', output: 'rotor', elastic: 'rotor' },
  held: { drive: 'holder', output: 'holder', elastic: 'holder' },
}

/** Words for the drive of a joint. */
export const driveWords = (x: LegNumbers, joint: DrivenJoint): DriveWords => WORDS[driveKindOf(x, joint)]
/** Words for a kind of drive. */
export const wordsOfKind = (kind: DriveKind): DriveWords => WORDS[kind]
