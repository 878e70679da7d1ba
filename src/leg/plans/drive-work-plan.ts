import type { DriveKind, DrivenJoint } from '../numbers.js'
import type { FollowUp } from './follow-up.js'
import type { ShoppingLine } from './shopping-line.js'
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
  /** Purchases besides the motor. */
  readonly parts: readonly ShoppingLine[]
  /** Steps before the motor is bolted on. */
  readonly before: readonly string[]
  /** Steps after it. */
  readonly steps: readonly string[]
  /** Points to inspect again after some time. */
  readonly followUps: readonly FollowUp[]
  /** Remedies for a reading that is off. */
  readonly troubles: readonly Trouble[]
  /** Conflicts in the specification. */
  readonly problems: readonly string[]
}
