import type { Source } from '../../formula/index.js'
import type { Kind } from '../../units/index.js'
import type { LegNumbers } from '../leg-numbers.js'
import type { Joint } from '../numbers.js'
import type { Index, Value } from '../run/index.js'
import { EVENTS, type EventId, type Tag } from './events.js'

/** Consequence when the part fails: it breaks, it does not do its work, or somebody is hurt or annoyed. */
export type Consequence = 'breaks' | 'fails to work' | 'safety'

/** A side of a check, for the instances that a comparison has. */
type Side<T> = Value<T, 'leg' | 'joint' | 'link' | 'boltGroup' | 'pivot' | 'event' | 'air' | 'age'>

/** Instances of a part by name, or why there is none. */
export type Part = { readonly [X in Index]?: string } | string

/** One way a part can fail: a demand and a capacity, each a value of its own indices. */
export interface Check {
  /** Part and mode, such as `pin.bending`. */
  readonly id: string
  /** The part, in words. */
  readonly part: string
  /** How it fails, in words. */
  readonly mode: string
  readonly consequence: Consequence
  /** Kind of both sides. */
  readonly kind: Kind
  /** Whether it applies to each driven joint or to the leg as a whole. */
  readonly scope: 'joint' | 'leg'
  /** Instances that it is for, by name: one link, one group of bolts. A text says why the leg (or the joint) has no such part, and the check is not made. */
  readonly of?: (leg: LegNumbers, joint: Joint) => Part
  /** Events it applies to: those with one of these tags. */
  readonly when: readonly Tag[]
  readonly demand: Side<number>
  readonly capacity: Side<number>
  /** Why it does not apply to this leg; absent where it does. */
  readonly unless?: Side<string | undefined>
  /** A remark on the numbers. */
  readonly remark?: Side<string | undefined>
  /** Demand and capacity in words that complete "the demand is …". */
  readonly demandIs: string
  readonly capacityIs: string
  /** Changes that would help. */
  readonly remedy: string
  /** What would help where the part is of metal: `reason` then says that it is not printed. */
  readonly ofMetal?: { readonly reason: Side<string | undefined>; readonly remedy: string }
  /** Required reserve where the general one is too much: geometry is exact, a rule of thumb has its margin in it. */
  readonly requiredReserve?: number
  /** Set where an uncertain value may lower the reserve at either end, depending on the others: the worst end is then the least that was found. */
  readonly twoWay?: true
  /** Where the rule itself comes from, as well as the sources of its formulas. */
  readonly rule?: Source
}

/** Whether a check applies to an event. */
export const appliesTo = ({ when }: Check, event: EventId): boolean => {
  const tags: readonly Tag[] = EVENTS[event].tags
  return when.some((tag) => tags.includes(tag))
}

/** Some checks of a part that a leg may be without; `lacking` says why it has none. */
export const ofPart = (checks: readonly Check[], lacking: (leg: LegNumbers, joint: Joint) => string | undefined): readonly Check[] =>
  checks.map((check) => ({ ...check, of: (leg, joint) => lacking(leg, joint) ?? check.of?.(leg, joint) ?? {} }))
