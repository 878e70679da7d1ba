import { type Note, Quantity } from '../units/index.js'
import type { LegKernel } from './leg-kernel.js'
import type { PerJoint } from './vectors.js'

/** Singular poses: knee straight or folded (no motion along the leg), foot level with the hip axis (no motion sideways). */
export type Singularity = 'none' | 'kneeStraight' | 'kneeFolded' | 'footLevelWithHip'

/** Why a joint force or rate cannot be found: the pose is singular. */
export interface AtSingularity {
  readonly regular: false
  readonly singularity: Exclude<Singularity, 'none'>
}

export const SINGULARITIES: readonly Singularity[] = ['none', 'kneeStraight', 'kneeFolded', 'footLevelWithHip']
export const list = (x: PerJoint<number>): [number, number, number] => [x.sidewaysHip, x.hip, x.knee]

/** Nearer to a singular pose than this, rates and forces are more than fifty times those of a well bent leg and carry a note. */
const NEAR_SINGULAR = 0.02

/** A note on rates or forces near a singular pose. */
export function singularityNotes(method: string, leg: LegKernel, q: PerJoint<number>): readonly Note[] | undefined {
  const nearest = SINGULARITIES[leg.singularityAt(list(q), NEAR_SINGULAR)]!
  if (nearest === 'none') return undefined
  const near = {
    kneeStraight: () => `the knee is ${new Quantity(Math.abs(Math.asin(Math.sin(q.knee))), 'angle')} from straight`,
    kneeFolded: () => `the knee is ${new Quantity(Math.abs(Math.asin(Math.sin(q.knee))), 'angle')} from folded`,
    footLevelWithHip: () =>
      `the foot is ${new Quantity(Math.abs(leg.upperLink * Math.cos(q.hip) + leg.lowerLink * Math.cos(q.hip + q.knee)), 'length')} from the height of the hip axis`,
  }[nearest]()
  return [{ formula: `kinematics.threeJointLeg.${method}`, text: `${near}: rates and forces grow without limit towards that pose` }]
}
