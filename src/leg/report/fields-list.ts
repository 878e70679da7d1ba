import { type Kind, Quantity } from '../../units/index.js'
import type { Leg } from '../document/describe.js'
import { isBand } from '../ranges.js'
import type { OwnMaterial } from '../schema/field.js'
import type { LegDefault } from '../schema/index.js'
import { isLayered, materialOf } from '../schema/tables.js'
import { exactAmount, one } from './amounts.js'

/** One field of the specification as it stands on the sheet. */
export interface FieldRow {
  /** Its reference, such as `F12`. */
  readonly ref: string
  readonly path: string
  readonly name: string
  readonly value: string
  /** The reason for a value that was filled in; absent for one that was given. */
  readonly filled?: LegDefault['why']
  /** Its kind where it is a number. */
  readonly kind?: Kind
}

/** Every field of a specification in its order, with what was filled in. */
export function fieldRows(leg: Leg): FieldRow[] {
  const { defaults, ...data } = leg
  const why = new Map(defaults.map((entry) => [entry.path, entry.why]))
  const rows: FieldRow[] = []
  const add = (path: string, value: string, kind?: Kind) => {
    const own = why.get(path)
    const filled = own !== undefined && isPrintOfMetal(leg, path) ? OF_METAL : own
    rows.push({
      ref: `F${rows.length + 1}`,
      path,
      name: fieldName(path),
      value,
      ...(filled === undefined ? {} : { filled }),
      ...(kind === undefined ? {} : { kind }),
    })
  }
  const walk = (value: unknown, path: string): void => {
    if (value instanceof Quantity) add(path, exactAmount(value.kind as Kind, value.si), value.kind as Kind)
    else if (isBand(value)) add(path, `${value.typical} (${value.low} to ${value.high})`, 'ratio')
    else if (typeof value === 'object' && value !== null)
      for (const [name, inner] of Object.entries(value))
        walk(inner, Array.isArray(value) ? `${path}[${name}]` : path === '' ? name : `${path}.${name}`)
    else if (value !== undefined) add(path, typeof value === 'string' ? wordText(path, value) : valueText(value))
  }
  walk(data, '')
  return rows
}

const OF_METAL: LegDefault['why'] = { level: 'assumption', where: 'not used: the part is of metal' }

/** Whether a field was filled in that says how a part is printed, and the part is of metal. */
function isPrintOfMetal(leg: Leg, path: string): boolean {
  const [, part, name = ''] = /^(.+)\.(axis|print)$/.exec(path) ?? []
  if (name === '') return false
  const owner = (part as string).split('.').reduce<unknown>((inner, key) => (inner as Record<string, unknown>)[key], leg) as {
    readonly material?: string
    readonly seatMaterial?: string
  }
  const material = owner.material ?? owner.seatMaterial
  return material !== undefined && !isLayered(materialOf(material, leg.materials as Readonly<Record<string, OwnMaterial>> | undefined))
}

const valueText = (value: unknown): string => (value === true ? 'yes' : value === false ? 'no' : String(value))

/** Names and designations stay as they are; choices are words. */
const wordText = (path: string, value: string): string => (/^(name|remark)$|[mM]aterial|fibre|cord$/.test(path) ? value : one(value))

/** A path in words: `drives.knee.drum.bore` is `drives, knee, drum: bore`. */
export function fieldName(path: string): string {
  const parts = path
    .replaceAll(/\[(\d+)\]/g, (_, i: string) => `.${Number(i) + 1}`)
    .split('.')
    .map(one)
  const last = parts.pop() as string
  return parts.length === 0 ? last : `${parts.join(', ')}: ${last}`
}

/** Sizes and settings that a builder chooses; materials, the weather and catalogue values of motors, cords, belts and bearings, and what the robot must stand are not. */
const KINDS: readonly Kind[] = ['length', 'force', 'torque', 'time', 'mass', 'velocity', 'angle', 'peakPhaseCurrent']
const NOT_CHOSEN =
  /^(schemaVersion|environment|materials|supply|motors|cords|prints|loadCases|robot\.(legs|hip|centre|gravity)|belts\..+\.pitch$)|\.own\.|\.(mass|gap|runout|slackAtAssembly|range)\b/

/** Whether a field is one of these. */
export const isChosen = ({ path, kind }: FieldRow): boolean => kind !== undefined && KINDS.includes(kind) && !NOT_CHOSEN.test(path)
