import { type PropertyRecord, property, type Source } from '../../formula/index.js'
import { doubtsAbout, type Material, materialByName, PROPERTY_KINDS, type PropertyName } from '../../materials/index.js'
import { type In, InputError, type Kind, nearName, show } from '../../units/index.js'
import { field, Refusal } from './fields.js'

/** One value of an own material: a quantity, or a quantity with its range and where it comes from. */
export type OwnValue =
  | string
  | { readonly typical: string; readonly low: string; readonly high: string; readonly source?: string; readonly conditions?: string }

/** A material of your own: one of the table, with the values that you measured put in. */
export interface OwnMaterial {
  /** The material of the table that it is, but for the values given here. */
  readonly basedOn: string
  /** Properties by their names in the table of materials. */
  readonly [property: string]: OwnValue
}

const NAMES = Object.keys(PROPERTY_KINDS)

/** A material of your own in the document; it stays plain data there. */
export const ownMaterial = field<OwnMaterial, OwnMaterial>(
  {
    meaning: 'A material of your own: basedOn names one of the table, the rest are the values you measured.',
    accepts: 'must be a section with basedOn and the properties you measured, such as tensileStrength',
    json: {
      type: 'object',
      properties: {
        basedOn: { type: 'string' },
        ...Object.fromEntries(NAMES.map((name) => [name, { anyOf: [{ type: 'string' }, { type: 'object' }] }])),
      },
      required: ['basedOn'],
      additionalProperties: false,
    },
  },
  (given) => {
    if (typeof given !== 'object' || given === null || Array.isArray(given))
      throw new Refusal('must be a section with basedOn and the properties you measured')
    madeOf(given as OwnMaterial)
    return given as OwnMaterial
  },
)

const made = new WeakMap<object, Material>()

/** The material that an own record stands for; made once for each record. */
export function materialFrom(record: OwnMaterial): Material {
  let known = made.get(record)
  if (known === undefined) {
    known = madeOf(record)
    made.set(record, known)
  }
  return known
}

/** A record that stands for a material that is already made: what a study puts in for a value of the table. */
export function ownRecordOf(material: Material): OwnMaterial {
  const record = { basedOn: material.name } as OwnMaterial
  made.set(record, material)
  return record
}

function madeOf({ basedOn, ...values }: OwnMaterial): Material {
  if (typeof basedOn !== 'string') throw new Refusal('must say which material of the table it is basedOn')
  const base = materialByName(basedOn)
  const problems: string[] = []
  const properties: Record<string, unknown> = {}
  for (const [name, value] of Object.entries(values)) {
    if (!NAMES.includes(name)) {
      const near = nearName(name, NAMES)
      problems.push(`${name} is not a property of a material${near === undefined ? '' : `, did you mean ${near}?`}`)
      continue
    }
    try {
      const made = property(PROPERTY_KINDS[name as PropertyName] as Kind, recordOf(value))
      properties[name] = made
      // A bare value far outside the table is a slip more often than a discovery: it must come with its range and source.
      const doubts = typeof value === 'string' ? doubtsAbout(base, { [name]: made }) : []
      problems.push(...doubts.map((doubt) => `${doubt}; if it is right, give typical, low, high and source`))
    } catch (error) {
      if (!(error instanceof InputError)) throw error
      problems.push(...error.issues.map(({ path, given, accepts }) => `${name}.${path} is ${given}, ${accepts}`))
    }
  }
  if (problems.length > 0) throw new Refusal(problems.join('; '))
  return { ...base, ...properties }
}

function recordOf(value: unknown): PropertyRecord<Kind> {
  const own = (text: unknown): Source => ({ level: 'published', where: `own measurement${typeof text === 'string' ? `: ${text}` : ''}` })
  if (typeof value === 'object' && value !== null && !Array.isArray(value)) {
    const { typical, low, high, source, conditions } = value as Record<string, unknown>
    return { typical, low, high, source: own(source), conditions: typeof conditions === 'string' ? conditions : '' } as PropertyRecord<Kind>
  }
  if (typeof value !== 'string' && typeof value !== 'number')
    throw new Refusal(`must be a quantity or { typical, low, high, source }, not ${show(value)}`)
  return { typical: value as In<Kind>, low: value as In<Kind>, high: value as In<Kind>, source: own(undefined) } as PropertyRecord<Kind>
}
