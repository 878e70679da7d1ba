import { type Document, isMap, isPair, isScalar, isSeq, type Node, parseDocument, visit } from 'yaml'
import { InputError } from '../../units/index.js'
import { DOCUMENT_VERSION } from '../document/fields.js'
import { migrate, versionOf } from '../document/migrate.js'
import { documentValue } from './document-value.js'

/** Sections this short are written on one line. */
const MAX_LINE_LENGTH = 110

/**
 * The text of a leg's document in the layout of this library. Text that has it already is returned as it is. An older text is rewritten: the comment at its
 * head stays, comments inside are lost.
 *
 * Throws an `InputError` for text that cannot be parsed, and for a version that this library does not know.
 */
export function upgradeLegText(text: string): string {
  const before = parseDocument(text, { logLevel: 'error' })
  const [broken] = before.errors
  if (broken !== undefined)
    throw new InputError('upgradeLegText', [{ path: 'text', given: 'not readable', accepts: broken.message.split('\n')[0] as string }])
  const data = before.toJS() as Record<string, unknown>
  if (versionOf(data) === DOCUMENT_VERSION) return text
  const after = parseDocument('')
  after.contents = after.createNode(documentValue(withoutGaps(migrate(data)))) as never
  after.commentBefore = before.commentBefore ?? headOf(before)
  visit(after, {
    Collection: (_, node) => {
      node.flow = isShort(node)
    },
  })
  return after.toString({ lineWidth: 0 })
}

/** The comment above the first field. */
function headOf({ contents }: Document): string | null {
  const [first] = isMap(contents) ? contents.items : []
  return isPair(first) ? ((first.key as Node).commentBefore ?? (contents as Node).commentBefore ?? null) : null
}

/** Fields that the migration leaves open are not written. */
function withoutGaps(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(withoutGaps)
  if (typeof value !== 'object' || value === null || Object.getPrototypeOf(value) !== Object.prototype) return value
  return Object.fromEntries(Object.entries(value).flatMap(([name, inner]) => (inner === undefined ? [] : [[name, withoutGaps(inner)]])))
}

/** A section or list of plain values that fits on a line. */
const isShort = (node: { readonly items: readonly unknown[] }): boolean =>
  node.items.every((item) => isScalar(isPair(item) ? item.value : item) || (isPair(item) && isSeq(item.value))) &&
  JSON.stringify(node).length <= MAX_LINE_LENGTH
