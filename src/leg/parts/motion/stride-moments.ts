import { FootPath, STANCE_PARTS, stanceForce } from '../../../kinematics/index.js'
import type { SpringLaw } from '../springs/law.js'
import type { SlenderLinks } from './link-dynamics.js'
import type { KneePulleys } from './pulley-drive.js'
import type { Linkage } from './rod-drive.js'

/** Enough for the root mean square over a stance: one for each part of it that is loaded for itself. */
const STANCE_SAMPLES = STANCE_PARTS
/** Ends of the parts of the stance, where the force of a walk jumps; among them its middle, where half a sine is highest. The largest values are found there. */
const EXTREMES = Array.from({ length: STANCE_PARTS + 1 }, (_, i) => i / STANCE_PARTS)
/** Enough for the root mean square over a swing, and to find between which of them a torque or a speed has its peak. */
const SWING_SAMPLES = 12

/** Data of a stride, SI. */
export interface StrideInput extends SlenderLinks {
  readonly hipRotorInertia: number
  readonly kneeRotorInertia: number
  /** Inertia that the knee's rotor adds at the hip, and couples hip and knee with, where it rides on the upper link. */
  readonly kneeRotorAtHip: number
  readonly rotorCoupling: number
  readonly knee: 'forward' | 'backward'
  readonly height: number
  readonly mass: number
  readonly gravity: number
  readonly legShare: number
  readonly dutyFactor: number
  readonly shape: 'rectangular' | 'halfSine'
  /** Parts of the weight on the feet in each twelfth of the stance, row by row (`kinematics.walkingShares`); absent where the shape tells. */
  readonly shares?: readonly number[] | undefined
  readonly tractionLowest: number
  readonly tractionHighest: number
  /** Force across the plane of the leg, along the ground, over force upright; of either sign. */
  readonly lateral: number
  readonly speed: number
  readonly stepLength: number
  readonly clearance: number
  readonly blocked: boolean
  /** The rod that drives the knee from a drum on the hip axis; absent where the knee's motor sits on the upper link. */
  readonly linkage?: Omit<Linkage, 'ground'> | undefined
  /** Belt or cord from a pulley on the hip axis to the knee; absent likewise. */
  readonly kneePulleys?: KneePulleys | undefined
  /** Springs in parallel with the drives; absent where there are none. */
  readonly hipSpring?: SpringLaw | undefined
  readonly kneeSpring?: SpringLaw | undefined
}

/** A moment of stance or swing. */
export interface Moment {
  readonly stands: boolean
  /** Phase within the stance or the swing. */
  readonly phase: number
  /** In how many such parts that is divided; infinite for a moment that only the largest values count. */
  readonly parts: number
}

const middles = (stands: boolean, parts: number): Moment[] =>
  Array.from({ length: parts }, (_, i) => ({ stands, phase: (i + 0.5) / parts, parts }))
/** A moment that only the largest values count. */
export const atOnce = (stands: boolean, phase: number): Moment => ({ stands, phase, parts: Number.POSITIVE_INFINITY })
const IN_STANCE = [...middles(true, STANCE_SAMPLES), ...EXTREMES.map((phase) => atOnce(true, phase))]
const IN_STRIDE = [...IN_STANCE, atOnce(false, 0), ...middles(false, SWING_SAMPLES), atOnce(false, 1)]
const HELD = middles(true, 1)

/** Moments of a stride, and whether the joints turn in them. */
export function momentsOf({ stepLength, speed, dutyFactor, blocked }: StrideInput) {
  const moving = stepLength > 0
  const stanceTime = moving ? stepLength / speed : 1
  const period = moving ? stanceTime / dutyFactor : 1
  const turns = moving && !blocked
  return { moving, turns, stanceTime, period, moments: turns ? IN_STRIDE : moving ? IN_STANCE : HELD }
}

/** The path of the foot over a stride; `heading` is the direction in which the foot steps forward in swing. */
export const footPathOf = (
  x: Pick<StrideInput, 'hipOffset' | 'height' | 'stepLength' | 'dutyFactor' | 'clearance'>,
  stridePeriod: number,
  heading = 0,
) =>
  new FootPath({
    midStance: { x: 0, y: x.hipOffset, z: -x.height },
    stanceSweep: x.stepLength,
    stridePeriod,
    dutyFactor: x.dutyFactor,
    heading,
    lift: x.clearance,
    swing: 'matched',
    liftShape: 'smooth',
    swingPoints: undefined,
  })

/** Data from which the force on a foot over its stance follows. */
type FootLoad = Pick<StrideInput, 'mass' | 'gravity' | 'legShare' | 'dutyFactor' | 'shape' | 'shares'>

/** Rows of legs whose feet are loaded each in its own way: one where the shape tells the force. */
export const rowsOf = ({ shares }: FootLoad): number => (shares === undefined ? 1 : shares.length / STANCE_PARTS)

/** Upright force of the ground at a phase of the stance, on a foot of each row. At the end of a part of the stance it is the larger of its neighbours. */
export function uprightForces(x: FootLoad, stancePhase: number): number[] {
  const { shares, mass, gravity } = x
  if (shares === undefined) return [shapedForce(x, stancePhase)]
  const at = stancePhase * STANCE_PARTS
  const before = Math.max(0, Math.ceil(at) - 1)
  const after = Math.min(STANCE_PARTS - 1, Math.floor(at))
  const forces: number[] = []
  for (let from = 0; from < shares.length; from += STANCE_PARTS)
    forces.push(mass * gravity * Math.max(shares[from + before]!, shares[from + after]!))
  return forces
}

const shapedForce = ({ mass, legShare, dutyFactor, shape, gravity }: FootLoad, stancePhase: number) =>
  stanceForce.si({ mass, legShare, dutyFactor, stancePhase, shape, thirdHarmonic: 0, gravity })
