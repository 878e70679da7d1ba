import {
  type Document,
  isCollection,
  isMap,
  isNode,
  isScalar,
  isSeq,
  type Node,
  type Pair,
  parseDocument,
  Scalar,
  type YAMLMap,
} from 'yaml'
import { InputError, refuse } from '../../units/index.js'
import { earlierPath } from '../document/earlier-paths.js'
import { DOCUMENT_VERSION } from '../document/fields.js'
import { versionOf } from '../document/migrate.js'
import type { LegChanges } from '../plans/with-fields.js'
import { documentValue } from './document-value.js'
import { inlineText, pairText } from './inline-text.js'

const where = 'editLegText'

/**
 * The text of a leg's document, YAML or JSON, with some fields changed: `editLegText(text, { 'joints.knee.drive.pretension': '200 N' })`. Comments, order and
 * every untouched line of YAML stay as they are, and JSON is written with two spaces a level. `undefined` removes a field, and a section that has no other.
 * The values are not checked here: `describeLeg` reads the result.
 *
 * Throws an `InputError` for text that cannot be parsed, for a path that leads through something that is not a section or a list, for an item that a list
 * does not have, and for one that is to be removed from it.
 */
export function editLegText(text: string, changes: LegChanges): string {
  const json = asJson(text)
  // A document of version 3 has its own names for the fields of a leg.
  const nameOf = isEarlier(text) ? earlierPath : (path: string) => path
  return Object.entries(changes).reduce((now, [given, value]) => {
    const path = nameOf(given)
    const steps = path.replaceAll(/\[(\d+)\]/g, '.$1').split('.')
    const written = value === undefined ? undefined : documentValue(value)
    return json ? editedJson(now, path, steps, written) : editedYaml(now, path, steps, written)
  }, text)
}

function isEarlier(text: string): boolean {
  const data: unknown = parseDocument(text, { logLevel: 'error' }).toJS()
  const version = typeof data === 'object' && data !== null ? versionOf(data as Record<string, unknown>) : DOCUMENT_VERSION
  return typeof version === 'number' && version < DOCUMENT_VERSION
}

function asJson(text: string): boolean {
  try {
    return isSection(JSON.parse(text))
  } catch {
    return false
  }
}

const unreachable = (path: string, value: unknown): never => {
  refuse(where, path, value, 'must be the path of a field of the document, such as joints.knee.drive.pretension')
}

function editedJson(text: string, path: string, steps: readonly string[], value: unknown): string {
  const edited = changedSection(JSON.parse(text), steps, value, () => unreachable(path, value))
  return `${JSON.stringify(edited ?? {}, null, 2)}\n`
}

const isSection = (value: unknown): value is Readonly<Record<string, unknown>> => typeof value === 'object' && value !== null

/** A section or list with one field changed; nothing where no field is left. */
function changedSection(at: unknown, steps: readonly string[], value: unknown, fail: () => never): unknown {
  if (at === undefined || at === null) return value === undefined ? at : changedSection({}, steps, value, fail)
  if (!isSection(at)) return fail()
  const [step = '', ...rest] = steps
  const own = Object.hasOwn(at, step) ? at[step] : undefined
  const inner = rest.length === 0 ? value : changedSection(own, rest, value, fail)
  if (Array.isArray(at)) return inner !== undefined && /^\d+$/.test(step) && own !== undefined ? at.with(Number(step), inner) : fail()
  if (inner === own) return at
  const fields = own === undefined ? [...Object.entries(at), [step, inner] as const] : Object.entries(at)
  const left = fields.flatMap(([name, field]) => (name !== step ? [[name, field]] : inner === undefined ? [] : [[name, inner]]))
  return left.length === 0 ? undefined : Object.fromEntries(left)
}

/** A piece of the text and what takes its place. */
interface Edit {
  readonly start: number
  readonly end: number
  readonly text: string
}

function editedYaml(text: string, path: string, steps: readonly string[], value: unknown): string {
  const document = parseDocument(text, { logLevel: 'error', keepSourceTokens: false })
  const [broken] = document.errors
  if (broken !== undefined) throw new InputError(where, [{ path: 'text', given: 'not readable', accepts: firstLine(broken.message) }])
  const { start, end, text: next } = value === undefined ? removal(document, text, path, steps) : change(document, text, path, steps, value)
  return text.slice(0, start) + next + text.slice(end)
}

function change(document: Document, text: string, path: string, steps: readonly string[], value: unknown): Edit {
  const node = nodeAt(document, steps)
  if (isInline(node)) return replaced(text, node, inlineText(value, isScalar(node) && node.type === Scalar.QUOTE_DOUBLE))
  if (node !== undefined) refuse(where, path, value, 'must be changed field by field: in the text it stands on lines of its own')
  const depth = steps.findIndex((_, i) => nodeAt(document, steps.slice(0, i + 1)) === undefined)
  const parent = nodeAt(document, steps.slice(0, depth))
  // What is not there yet below the missing name is written with it.
  const whole = steps.slice(depth + 1).reduceRight<unknown>((inner, step) => ({ [step]: inner }), value)
  const written = pairText(steps[depth] as string, whole)
  if (parent === null) return appended(text, written)
  if (isInline(parent) && isEmpty(parent)) return replaced(text, parent, `{ ${written} }`)
  if (!isMap(parent)) return unreachable(path, value)
  // Before the first name: after the last one there may be comments, which nothing ties to a name.
  const start = startOf(parent.items[0]) as number
  const gap = parent.flow ? ', ' : `\n${' '.repeat(start - (text.lastIndexOf('\n', start - 1) + 1))}`
  return { start, end: start, text: written + gap }
}

/** What stands at a path, the whole document at none. */
const nodeAt = (document: Document, steps: readonly string[]): unknown => steps.reduce<unknown>(inside, document.contents)

function inside(node: unknown, step: string): unknown {
  if (isMap(node)) return node.items.find((pair) => isNamed(pair, step))?.value
  return isSeq(node) && /^\d+$/.test(step) ? node.items[Number(step)] : undefined
}

const isNamed = ({ key }: Pair, name: string | undefined) => isScalar(key) && String(key.value) === name

/** A section without fields, or a name with nothing behind it. */
const isEmpty = (node: unknown) => (isScalar(node) ? node.value === null : isMap(node) && node.items.length === 0)

/** A value in the place of another. A text of several lines ends with a line break, and a name with nothing behind it needs a space. */
function replaced(text: string, { range: [start, end] }: Inline, value: string): Edit {
  const old = text.slice(start, end).trimEnd()
  return { start, end: start + old.length, text: old === '' && text[start - 1] === ':' ? ` ${value}` : value }
}

type Inline = Node & { readonly range: NonNullable<Node['range']> }

/** Whether a node stands within a line, so that its text can be replaced alone. */
const isInline = (node: unknown): node is Inline =>
  isNode(node) && Boolean(node.range) && (isScalar(node) || (isCollection(node) && node.flow === true))

const appended = (text: string, line: string): Edit => ({
  start: text.length,
  end: text.length,
  text: `${text.endsWith('\n') || text === '' ? '' : '\n'}${line}\n`,
})

const NOTHING: Edit = { start: 0, end: 0, text: '' }

function removal(document: Document, text: string, path: string, steps: readonly string[]): Edit {
  const within = steps.slice(0, -1)
  const parent = nodeAt(document, within)
  if (parent === null || isEmpty(parent)) return NOTHING
  if (parent === undefined) return removalOfMissing(document, path, within)
  if (!isMap(parent)) return unreachable(path, undefined)
  const at = parent.items.findIndex((pair) => isNamed(pair, steps.at(-1)))
  if (at < 0) return NOTHING
  if (parent.items.length === 1 && steps.length > 1) return removal(document, text, path, within)
  const start = startOf(parent.items[at]) as number
  const next = startOf(parent.items[at + 1])
  const line = text.lastIndexOf('\n', start - 1) + 1
  // The first field of a section in a list stands behind the dash.
  if (!parent.flow && text.slice(line, start).trim() === '') return { start: line, end: blockEnd(text, parent, at), text: '' }
  if (next !== undefined) return { start, end: next, text: '' }
  return { start: endOf(parent.items[at - 1]) ?? start, end: endOf(parent.items[at]) ?? start, text: '' }
}

/** A field of a section that is not there: nothing to remove, unless the path leads through something else. */
function removalOfMissing(document: Document, path: string, within: readonly string[]): Edit {
  const outer = nodeAt(document, within.slice(0, -1))
  if (outer === undefined) return removalOfMissing(document, path, within.slice(0, -1))
  return outer === null || isMap(outer) || isEmpty(outer) ? NOTHING : unreachable(path, undefined)
}

/** The end of the last line that belongs to a pair of a section with one name a line. */
function blockEnd(text: string, parent: YAMLMap, at: number): number {
  const end = endOf(parent.items[at]) ?? text.length
  const line = text.indexOf('\n', Math.max(0, end - 1))
  return line < 0 ? text.length : line + 1
}

const startOf = (pair: Pair | undefined) => (isScalar(pair?.key) ? pair.key.range?.[0] : undefined)
const endOf = (pair: Pair | undefined) => (isNode(pair?.value) ? (pair.value as Node).range?.[1] : undefined)

const firstLine = (text: string) => text.split('\n')[0] as string
