import { driveResonance } from '../capstan/index.js'
import { Quantity } from '../units/index.js'
import type { LegModel } from './leg-model.js'
import { JOINTS, type Joint } from './numbers.js'
import { legInertia } from './plans/control-gains.js'
import type { CaseState } from './what-if.js'

/** How fast each joint can be moved before its drive springs back. */
export interface FootResonance {
  /** Resonances of each driven joint with the leg in the air; absent where no elastic part between rotor and joint is calculated. */
  readonly resonance: {
    readonly [J in Joint]:
      | {
          /** Resonance of the joint with its motor held. */
          readonly motorLocked: Quantity<'frequency'>
          /** Resonance of the joint against its free rotor. */
          readonly motorFree: Quantity<'frequency'>
        }
      | undefined
  }
  /** Bandwidth that a controller on the motor side can usually reach: the slower joint's; absent without any resonance. */
  readonly usableBandwidth: Quantity<'frequency'> | undefined
}

/** Resonances with the drives as stiff as in a load case. */
export function footResonance(leg: LegModel, { joints }: Pick<CaseState, 'joints'>): FootResonance {
  const resonanceOf = (joint: Joint) => {
    const { stiffness, rotorAtJoint } = joints[joint].transmission
    if (stiffness === undefined) return undefined
    return driveResonance.si({
      stiffness: Math.max(stiffness, 1e-9),
      loadInertia: legInertia(leg, joint),
      reflectedInertia: rotorAtJoint,
    })
  }
  const resonances = { hip: resonanceOf('hip'), knee: resonanceOf('knee') }
  const frequencies = (joint: Joint) => {
    const found = resonances[joint]
    return found && { motorLocked: new Quantity(found.motorLocked, 'frequency'), motorFree: new Quantity(found.motorFree, 'frequency') }
  }
  const bandwidths = JOINTS.flatMap((joint) => resonances[joint]?.usableBandwidth ?? [])
  return {
    resonance: { hip: frequencies('hip'), knee: frequencies('knee') },
    usableBandwidth: bandwidths.length === 0 ? undefined : new Quantity(Math.min(...bandwidths), 'frequency'),
  }
}
