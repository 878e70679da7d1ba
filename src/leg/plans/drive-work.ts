import { type DriveKind, type DrivenJoint, driveKindOf, drivenJoints, JOINTS, type Prepared } from '../numbers.js'
import { beltOrCordOf } from '../second-stage.js'
import type { FollowUp } from './assembly-steps.js'
import { beltWork } from './belt-work.js'
import { directWork, gearboxWork } from './bought-work.js'
import { counterweightWork } from './counterweight-work.js'
import { gearWork } from './gear-work.js'
import type { ShoppingLine } from './shopping.js'
import { springWork } from './spring-work.js'
import { throughBeltWork } from './through-belt-work.js'
import { type CordAsk, throughCordWork } from './through-cord-work.js'
import type { Trouble } from './workshop-checks.js'

/** A size to buy, to cut or to set. */
export interface DriveSize {
  /** What it is. */
  readonly what: string
  /** Its value, with its unit. */
  readonly value: string
}

/** How a drive other than a cord, a spring or a counterweight is bought, made, put together and set. */
export interface DriveWork {
  /** Joint of the drive. */
  readonly joint: DrivenJoint
  /** How it is driven, or what helps its drive. */
  readonly kind: DriveKind | 'counterweight' | 'spring' | 'beltAlongLink' | 'cordAlongLink'
  /** Sizes to buy, to cut and to set. */
  readonly sizes: readonly DriveSize[]
  /** What to buy besides the motor. */
  readonly parts: readonly ShoppingLine[]
  /** What to do before the motor is bolted on. */
  readonly before: readonly string[]
  /** What to do after it. */
  readonly steps: readonly string[]
  /** What to look at again after some time. */
  readonly followUps: readonly FollowUp[]
  /** What to do when a reading is off. */
  readonly troubles: readonly Trouble[]
  /** What does not go together as specified. */
  readonly problems: readonly string[]
}

const MAKERS: { readonly [K in DriveKind]?: (leg: Prepared, joint: DrivenJoint) => DriveWork } = {
  belt: beltWork,
  gear: gearWork,
  gearbox: gearboxWork,
  direct: directWork,
}

/** The work on belt or cord along the upper link. `beddingStrain` and `tail` are SI. */
const throughWork = (leg: Prepared, ask: CordAsk): DriveWork[] => {
  const through = beltOrCordOf(leg.x)
  if (through === undefined) return []
  return [through.kind === 'belt' ? throughBeltWork(leg, through) : throughCordWork(leg, through, ask)]
}

/** The work on every drive of a joint that is no cord, on belt or cord along the upper link, and on springs and counterweights. @internal */
export const driveWork = (leg: Prepared, ask: CordAsk): DriveWork[] => [
  ...drivenJoints(leg.x).flatMap((joint) => MAKERS[driveKindOf(leg.x, joint)]?.(leg, joint) ?? []),
  ...throughWork(leg, ask),
  ...JOINTS.flatMap((joint) => [...springWork(leg, joint), ...counterweightWork(leg, joint)]),
]
