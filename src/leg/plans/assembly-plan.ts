import type { Leg } from '../document/describe.js'
import type { Assumed } from './bench.js'
import type { CutList } from './cut-list.js'
import type { DriveWork } from './drive-work-plan.js'
import type { BondStep, PressStep, TighteningStep } from './fastening-steps.js'
import type { FollowUp } from './follow-up.js'
import type { RodCut } from './rod-steps.js'
import type { ShoppingLine } from './shopping-line.js'
import type { TensionerSetting, Winding } from './tensioning.js'
import type { CordCheck, Coupon, Trouble } from './workshop-checks.js'

/** How to put a leg together: cut list, windings, settings, torques, order, cautions. Plain data; `assemblyPage` renders it. */
export interface AssemblyPlan {
  /** The leg that the plan is for. */
  readonly leg: Leg
  /** Hazards of the work. */
  readonly cautions: readonly string[]
  /** Values that the plan needs and the document does not hold. */
  readonly assumed: readonly Assumed[]
  /** Cords, pins, shaft and bolts to cut and lay out. */
  readonly cuts: CutList
  /** The rod that drives the knee; absent where the motor of the knee sits on the upper link. */
  readonly rod: RodCut | undefined
  /** How each drive that is no cord is bought, made and set: belts, gears, gearboxes and direct drives. */
  readonly drives: readonly DriveWork[]
  /** How each cord is laid. */
  readonly windings: readonly Winding[]
  /** How each tensioner is set. */
  readonly tensioners: readonly TensionerSetting[]
  /** Groups of screws, in the order of tightening. */
  readonly tightening: readonly TighteningStep[]
  /** Pins that are pressed into their bosses. */
  readonly presses: readonly PressStep[]
  /** Cord ends that are bonded into their ferrules. */
  readonly bonds: readonly BondStep[]
  /** The order of work. */
  readonly steps: readonly string[]
  /** Points to inspect again after some time. */
  readonly followUps: readonly FollowUp[]
  /** Lengths and loads of the finished cords. */
  readonly checks: readonly CordCheck[]
  /** Trials on scrap first. */
  readonly coupons: readonly Coupon[]
  /** Remedies for a reading that is off. */
  readonly troubles: readonly Trouble[]
  /** Parts and materials to buy for one leg. */
  readonly shopping: readonly ShoppingLine[]
  /** Conflicts in the specification. */
  readonly problems: readonly string[]
}
