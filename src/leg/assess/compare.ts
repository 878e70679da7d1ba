import { type LegCalculation, placeOf } from '../calculation.js'
import { appliesTo, type Check, type Part } from '../cases/check.js'
import { type CaseId, LOAD_CASES, type LoadCase } from '../cases/events.js'
import { drivenJoints, JOINTS, type Joint } from '../numbers.js'
import type { AnyValue, Cell, Reader, Where } from '../run/index.js'

/** One check of one joint (or of the leg) in one load case. */
export interface Comparison {
  readonly check: Check
  readonly joint: Joint
  readonly id: CaseId
  readonly demand: Cell
  readonly capacity: Cell
  readonly unless: Cell | undefined
  readonly remark: Cell | undefined
  /** Why the part is not printed; its value is absent where it is. */
  readonly metal: Cell | undefined
}

/** Demand, capacity and reserve of a comparison. */
export interface DemandCapacity {
  readonly demand: number
  readonly capacity: number
  /** Capacity over demand, from 0 to `LARGEST_RESERVE`; 0 where one of them could not be calculated. */
  readonly reserve: number
  /** Why one of them could not be calculated. */
  readonly failure?: string
}

/** Largest reserve that is reported: beyond it a number says no more. */
export const LARGEST_RESERVE = 1000

/** One check at some instances, given by name. */
export function comparisonAt(
  calculation: LegCalculation,
  check: Check,
  joint: Joint,
  id: CaseId,
  at: Pick<LoadCase, 'event' | 'air' | 'age'> = LOAD_CASES[id],
): Comparison {
  const part = check.of?.(calculation.document, joint) ?? {}
  return comparisonIn(calculation, check, joint, id, whereOf(calculation, check, joint, typeof part === 'string' ? {} : part, at))
}

/** Instances of a check in a load case. */
function whereOf(
  calculation: LegCalculation,
  check: Check,
  joint: Joint,
  part: Exclude<Part, string>,
  { event, air, age }: Pick<LoadCase, 'event' | 'air' | 'age'>,
): Where {
  const names = { leg: 'leg', event, air, age, ...(check.scope === 'joint' ? { joint } : {}), ...part }
  return calculation.instances.implied(placeOf(calculation, names))
}

function comparisonIn(calculation: LegCalculation, check: Check, joint: Joint, id: CaseId, where: Where): Comparison {
  const cellOf = (value: Check['demand'] | Check['unless']) =>
    value === undefined ? undefined : calculation.instances.find(value as unknown as AnyValue, {}, where)
  return {
    check,
    joint,
    id,
    demand: cellOf(check.demand) as Cell,
    capacity: cellOf(check.capacity) as Cell,
    unless: cellOf(check.unless),
    remark: cellOf(check.remark),
    metal: cellOf(check.ofMetal?.reason),
  }
}

/** Joints that a check is made for. That of a sideways hip is one more to the calculation. */
const jointsOf = (calculation: LegCalculation, check: Check): readonly Joint[] =>
  check.scope === 'leg' ? JOINTS.slice(0, 1) : (drivenJoints(calculation.document) as readonly Joint[])

/** Why a leg, or one of its joints, lacks the part of a check; absent where it has the part. */
function missingPart(calculation: LegCalculation, check: Check, joint: Joint): string | undefined {
  const part = check.of?.(calculation.document, joint)
  return typeof part === 'string' ? part : undefined
}
/** Reasons that begin with as many words alike stand as one. */
const COMMON_WORDS = 4

/** Reasons of several joints in one: what they begin with alike stands once. */
function together([first = '', ...others]: readonly string[]): string {
  const words = first.split(' ')
  const differ = words.findIndex((word, i) => others.some((other) => other.split(' ')[i] !== word))
  return [first, ...others.map((other) => (differ < COMMON_WORDS ? other : other.split(' ').slice(differ).join(' ')))].join(' and ')
}

/** Checks of parts that no joint of a leg has, with the reason. */
export const missingParts = (calculation: LegCalculation, checks: readonly Check[]): Map<string, string> =>
  new Map(
    checks.flatMap((check): [string, string][] => {
      const reasons = jointsOf(calculation, check).map((joint) => missingPart(calculation, check, joint))
      return reasons.every((reason) => reason !== undefined) ? [[check.id, together([...new Set(reasons as string[])])]] : []
    }),
  )

/** The comparisons of some checks in some load cases, with the cells of both sides. */
export function comparisonsOf(calculation: LegCalculation, checks: readonly Check[], cases: readonly CaseId[]): Comparison[] {
  const made = checks.flatMap((check) =>
    jointsOf(calculation, check).flatMap((joint) => {
      const part = check.of?.(calculation.document, joint) ?? {}
      return typeof part === 'string' ? [] : [{ check, joint, part, key: `${check.scope} ${joint} ${Object.entries(part).join()}` }]
    }),
  )
  return cases.flatMap((id) => {
    const at = LOAD_CASES[id]
    const places = new Map<string, Where>()
    return made.flatMap(({ check, joint, part, key }) => {
      if (!appliesTo(check, at.event)) return []
      const where = places.get(key) ?? whereOf(calculation, check, joint, part, at)
      places.set(key, where)
      return [comparisonIn(calculation, check, joint, id, where)]
    })
  })
}

/**
 * Capacity over demand. What is not a number has reserve 0, so that it fails. Without a demand there is plenty, unless the capacity is even
 * less: air that is hotter than a limit leaves a negative rise, which a cold motor exceeds.
 */
export function reserveOf(demand: number, capacity: number): number {
  if (Number.isNaN(demand) || Number.isNaN(capacity)) return 0
  if (demand <= 0) return capacity < demand ? 0 : LARGEST_RESERVE
  const reserve = capacity / demand
  return Number.isNaN(reserve) ? 0 : Math.min(LARGEST_RESERVE, Math.max(0, reserve))
}

/** The reserve of a comparison alone; absent where the check does not apply. */
export function reserveIn(reader: Reader, { demand, capacity, unless }: Comparison): number | undefined {
  try {
    if (unless !== undefined && reader.read(unless) !== undefined) return undefined
    return reserveOf(reader.read(demand) as number, reader.read(capacity) as number)
  } catch {
    return 0
  }
}

/** Both sides of a comparison; a reason where the check does not apply. A side that fails has reserve 0 and says why. */
export function compare(reader: Reader, { demand, capacity, unless }: Comparison): DemandCapacity | string {
  try {
    const reason = unless === undefined ? undefined : (reader.read(unless) as string | undefined)
    if (reason !== undefined) return reason
    const [required, borne] = [reader.read(demand) as number, reader.read(capacity) as number]
    const failure = Number.isNaN(required) ? 'the demand is not a number' : Number.isNaN(borne) ? 'the capacity is not a number' : undefined
    const found = { demand: required, capacity: borne, reserve: reserveOf(required, borne) }
    return failure === undefined ? found : { ...found, failure }
  } catch (error) {
    return { demand: Number.NaN, capacity: Number.NaN, reserve: 0, failure: error instanceof Error ? error.message : String(error) }
  }
}
