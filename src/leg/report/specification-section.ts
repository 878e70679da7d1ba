import type { Source } from '../../formula/index.js'
import { remarkWords } from './amounts.js'
import { type Block, section, table, text, type Words } from './blocks.js'
import { EVIDENCE, UNVERIFIED_MEANS } from './content.js'
import type { FieldRow } from './fields-list.js'

/** The specification as it was given, with what was filled in; fields of one part stand below its name. */
export function specificationSection(fields: readonly FieldRow[]): Block {
  const filled = fields.filter((field) => field.filled !== undefined).length
  const rows: Words[][] = []
  const ids: (string | undefined)[] = []
  const partOf = partsOf(fields.map(({ name }) => placeOf(name)))
  let part = ''
  const first = new Map<string, string>()
  // A reason that several fields have stands with the first of them.
  const reasonAt = (ref: string, why: Source): Words => {
    const words = reason(why)
    const known = first.get(words)
    if (known === undefined) first.set(words, ref)
    return known === undefined ? words : ['as ', { text: known, to: known }]
  }
  for (const { ref, name, value, filled: why } of fields) {
    const own = partOf(placeOf(name))
    if (own !== part) {
      rows.push(['', [{ text: own, strong: true }], '', ''])
      ids.push(undefined)
      part = own
    }
    rows.push([ref, name.slice(own === '' ? 0 : own.length + 2).replace(': ', ', '), value, why === undefined ? '' : reasonAt(ref, why)])
    ids.push(ref)
  }
  return section('specification', 'Specification', [
    text(
      `Fields as they were given, ${fields.length - filled} of ${fields.length}. The others were filled in, each with its reason. ${UNVERIFIED_MEANS}`,
    ),
    table('Every field of the specification with its value', ['no.', 'field', 'value', 'why it was filled in'], rows, ids),
  ])
}

/** Fewer fields than this stand below the part that their own one belongs to. */
const MIN_FIELDS = 5
/** Parts of this depth, such as `joints, hip`, have a name of their own with any number of fields. */
const OWN_DEPTH = 2

/** The part that a field belongs to: `joints, hip, drive` of `joints, hip, drive: cord`. */
const placeOf = (name: string): string => name.slice(0, Math.max(0, name.lastIndexOf(': ')))

/** The name that fields of a part stand below. */
function partsOf(places: readonly string[]): (place: string) => string {
  const within = (part: string) => places.filter((place) => place === part || place.startsWith(`${part}, `)).length
  const found = new Map<string, string>()
  const nameOf = (place: string): string => {
    const parts = place.split(', ')
    return parts.length <= OWN_DEPTH || within(place) >= MIN_FIELDS ? place : nameOf(parts.slice(0, -1).join(', '))
  }
  return (place) => {
    const known = found.get(place) ?? nameOf(place)
    found.set(place, known)
    return known
  }
}

const reason = ({ level, where }: Source): string => `${remarkWords(where)} (${EVIDENCE[level] ?? level})`
