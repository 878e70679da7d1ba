import { type Kind, Quantity, quantity, show } from '../../units/index.js'
import { documentFields } from '../document/fields.js'
import type { Leg } from '../document/leg.js'
import type { PartlyLeg, Report } from '../document/partly.js'
import { familyOf } from '../document/rules-of-materials.js'
import { eachLeaf, type Leaf, type LegDefault } from '../schema/index.js'
import { relationsAcross } from './across.js'
import { cordAndBeltRelations } from './cords-and-belts.js'
import { driveRelations } from './drives.js'
import { loadRelations } from './loads.js'
import { motorRelations } from './motors.js'
import { fastenerRelations } from './parts.js'
import { isOutside, type Range, type Relation } from './relation.js'
import { robotRelations } from './robot.js'
import { structureRelations } from './structure.js'

/** A value that a document may have and a usual leg has not: a slip of unit or digits, or a leg of its own kind. */
export interface UnusualValue {
  /** Path of the field in the document. */
  readonly path: string
  /** Its value as text. */
  readonly given: string
  /** Other fields that may be the wrong ones instead. */
  readonly others: readonly string[]
  /** What is unusual, in a sentence without its full stop. */
  readonly why: string
}

const SUBJECTS = [
  motorRelations,
  cordAndBeltRelations,
  driveRelations,
  structureRelations,
  fastenerRelations,
  robotRelations,
  loadRelations,
  relationsAcross,
]

function relationsOf(leg: PartlyLeg): Relation[] {
  const found: Relation[] = []
  for (const subject of SUBJECTS) subject(leg, (relation) => found.push(relation))
  return found
}

/**
 * The values of a leg that no usual leg has: outside the usual range of their field, or out of proportion to other fields. They are accepted,
 * since a leg may be unusual; most are slips of a unit or a digit. Values that the document leaves open are not among them.
 */
export function unusualValues(
  /** The leg, from `describeLeg`. */
  leg: Leg,
): UnusualValue[] {
  const { defaults, ...data } = leg
  const isOpen = openIn(defaults)
  const found: UnusualValue[] = []
  eachLeaf(documentFields, data, (path, field, value) => {
    const why = isOpen(path) ? undefined : (outOfUsual(field, value) ?? oddMaterial(path, field, value, data))
    if (why !== undefined) found.push({ path, given: textOf(value), others: [], why })
  })
  const listed = new Set(found.map(({ path }) => path))
  for (const relation of relationsOf(data as PartlyLeg))
    if (isOutside(relation.is, relation.usual) && counts(relation, isOpen) && !listed.has(relation.path))
      found.push({
        path: relation.path,
        given: textOf(relation.value),
        others: relation.others,
        why: `${relation.what} is ${amount(relation.is, relation.kind)}; usual is ${rangeText(relation.usual, relation.kind)}`,
      })
  return found
}

/** What is known of a document before its relations are looked at. */
interface Known {
  /** Fields whose contradiction is listed already. */
  readonly named: ReadonlySet<string>
  /** What the document left open. */
  readonly defaults: () => readonly LegDefault[]
}

/** Relations that no leg can have, as contradictions of the document. */
export function contradictoryRelations(data: PartlyLeg, report: Report, { named, defaults }: Known): void {
  const wrong = relationsOf(data)
    .filter(({ is, possible }) => possible !== undefined && isOutside(is, possible))
    .filter(({ path, others }) => ![path, ...others].some((one) => named.has(one)))
  if (wrong.length === 0) return
  const isOpen = openIn(defaults())
  for (const { path, value, others, what, is, kind, possible } of wrong.filter((one) => counts(one, isOpen)))
    report(
      path,
      value,
      `must fit ${others.join(', ')}: ${what} is ${amount(is, kind)}, and can only be ${rangeText(possible as Range, kind)}`,
    )
}

/** Whether a field was left open, alone or with the section that it is in. */
function openIn(defaults: readonly LegDefault[]): (path: string) => boolean {
  const open = defaults.map(({ path }) => path)
  return (path) => open.some((one) => path === one || path.startsWith(`${one}.`))
}

/** A relation between values of which some were left open has nothing to tell the builder, unless it is made for them. */
const counts = ({ path, others, ofDefaults }: Relation, isOpen: (path: string) => boolean): boolean =>
  !isOpen(path) && (ofDefaults === true || !others.some(isOpen))

function outOfUsual(field: Leaf, value: unknown): string | undefined {
  if ('kind' in field && field.usual !== undefined && value instanceof Quantity) {
    const [low, high] = field.usual.map((end) => quantity(field.kind, end as never).si) as [number, number]
    return value.si !== 0 && isOutside(value.si, [low, high]) ? `usual is ${field.usual[0]} to ${field.usual[1]}` : undefined
  }
  if ('integer' in field && field.usual !== undefined && typeof value === 'number')
    return isOutside(value, field.usual) ? `usual is ${field.usual[0]} to ${field.usual[1]}` : undefined
  if ('band' in field && field.usual !== undefined && typeof value === 'object' && value !== null) {
    const { typical } = value as { readonly typical: number }
    return isOutside(typical, field.usual) ? `usual is ${field.usual[0]} to ${field.usual[1]}` : undefined
  }
  return undefined
}

/** Parts that soft polymer is usual for: the foot, and layers and seats that a bolt or bearing is cushioned by. */
const SOFT = /^foot\.|\.stack\[|\.seat\.|[sS]eatMaterial$/

function oddMaterial(path: string, field: Leaf, value: unknown, { materials }: Pick<Leg, 'materials'>): string | undefined {
  if (!('refersTo' in field) || field.refersTo !== 'materials' || typeof value !== 'string' || SOFT.test(path)) return undefined
  return familyOf(value, materials as PartlyLeg['materials']) === 'elastomer' ? 'a soft polymer is unusual for this part' : undefined
}

const textOf = (value: unknown): string => {
  if (value instanceof Quantity || typeof value === 'string') return `${value}`
  const band = value as { readonly low: number; readonly typical: number; readonly high: number }
  return typeof value === 'object' && value !== null ? `${band.typical} (${band.low} to ${band.high})` : show(value)
}

/** Two digits: what is a factor of ten away needs no third. */
const amount = (x: number, kind: Kind): string => `${new Quantity(Number(x.toPrecision(2)), kind)}`

const rangeText = ([low, high]: Range, kind: Kind): string =>
  low <= 0 ? `at most ${amount(high, kind)}` : `${amount(low, kind)} to ${amount(high, kind)}`
