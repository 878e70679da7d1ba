import { type Document, isCollection, isMap, isNode, isScalar, type Node, type Pair, parseDocument, Scalar, type YAMLMap } from 'yaml'
import { InputError, refuse } from '../../units/index.js'
import { earlierPath } from '../document/earlier-paths.js'
import { DOCUMENT_VERSION } from '../document/fields.js'
import { versionOf } from '../document/migrate.js'
import type { LegChanges } from '../plans/with-fields.js'
import { documentValue } from './document-value.js'

const where = 'editLegText'

/**
 * The text of a leg's document, YAML or JSON, with some fields changed: `editLegText(text, { 'joints.knee.drive.pretension': '200 N' })`. Comments, order and
 * every untouched line stay as they are; `undefined` removes a field. The values are not checked here: `describeLeg` reads the result.
 *
 * Throws an `InputError` for text that cannot be parsed, and for a path that leads through something that is not a section or a list.
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
    return typeof JSON.parse(text) === 'object'
  } catch {
    return false
  }
}

const unreachable = (path: string, value: unknown): never => {
  refuse(where, path, value, 'must be the path of a field of the document, such as joints.knee.drive.pretension')
}

function editedJson(text: string, path: string, steps: readonly string[], value: unknown): string {
  const document = JSON.parse(text) as object
  let at = document as Record<string, unknown>
  for (const step of steps.slice(0, -1)) {
    if (!Object.hasOwn(at, step)) Object.defineProperty(at, step, { value: {}, writable: true, enumerable: true, configurable: true })
    const inner = at[step]
    if (typeof inner !== 'object' || inner === null) return unreachable(path, value)
    at = inner as Record<string, unknown>
  }
  const last = steps.at(-1) as string
  if (last === '__proto__') return unreachable(path, value)
  if (value === undefined) delete at[last]
  else at[last] = value
  return `${JSON.stringify(document, null, 2)}\n`
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
  const { start, end, text: next } = value === undefined ? removal(document, text, steps) : change(document, text, path, steps, value)
  return text.slice(0, start) + next + text.slice(end)
}

function change(document: Document, text: string, path: string, steps: readonly string[], value: unknown): Edit {
  const node = document.getIn(steps, true)
  if (isInline(node)) {
    const quoted = isScalar(node) && node.type === Scalar.QUOTE_DOUBLE
    return { start: node.range[0], end: node.range[1], text: inlineText(value, quoted) }
  }
  if (node !== undefined) return unreachable(path, value)
  const depth = steps.findIndex((_, i) => document.getIn(steps.slice(0, i + 1), true) === undefined)
  const parent = depth === 0 ? document.contents : document.getIn(steps.slice(0, depth), true)
  // What is not there yet below the missing name is written with it.
  const whole = steps.slice(depth + 1).reduceRight<unknown>((inner, step) => ({ [step]: inner }), value)
  const written = `${steps[depth]}: ${inlineText(whole, false)}`
  if (parent === null) return appended(text, written)
  if (!isMap(parent)) return unreachable(path, value)
  // Before the first name: after the last one there may be comments, which nothing ties to a name.
  const start = startOf(parent.items[0])
  if (start === undefined) return { start: parent.range?.[0] ?? 0, end: parent.range?.[1] ?? 0, text: `{ ${written} }` }
  const gap = parent.flow ? ', ' : `\n${' '.repeat(start - (text.lastIndexOf('\n', start - 1) + 1))}`
  return { start, end: start, text: written + gap }
}

/** Whether a node stands within a line, so that its text can be replaced alone. */
const isInline = (node: unknown): node is Node & { readonly range: NonNullable<Node['range']> } =>
  isNode(node) && Boolean(node.range) && (isScalar(node) || (isCollection(node) && node.flow === true))

const appended = (text: string, line: string): Edit => ({
  start: text.length,
  end: text.length,
  text: `${text.endsWith('\n') || text === '' ? '' : '\n'}${line}\n`,
})

function removal(document: Document, text: string, steps: readonly string[]): Edit {
  const parent = steps.length === 1 ? document.contents : document.getIn(steps.slice(0, -1), true)
  if (!isMap(parent)) return { start: 0, end: 0, text: '' }
  const at = parent.items.findIndex(({ key }) => isScalar(key) && String(key.value) === steps.at(-1))
  if (at < 0) return { start: 0, end: 0, text: '' }
  if (parent.items.length === 1 && steps.length > 1) return removal(document, text, steps.slice(0, -1))
  const start = startOf(parent.items[at]) ?? 0
  const next = startOf(parent.items[at + 1])
  if (!parent.flow) return { start: text.lastIndexOf('\n', start - 1) + 1, end: blockEnd(text, parent, at), text: '' }
  if (next !== undefined) return { start, end: next, text: '' }
  return { start: endOf(parent.items[at - 1]) ?? start, end: endOf(parent.items[at]) ?? start, text: '' }
}

/** The end of the last line that belongs to a pair of a section with one name a line. */
function blockEnd(text: string, parent: YAMLMap, at: number): number {
  const end = endOf(parent.items[at]) ?? text.length
  const line = text.indexOf('\n', Math.max(0, end - 1))
  return line < 0 ? text.length : line + 1
}

const startOf = (pair: Pair | undefined) => (isScalar(pair?.key) ? pair.key.range?.[0] : undefined)
const endOf = (pair: Pair | undefined) => (isNode(pair?.value) ? (pair.value as Node).range?.[1] : undefined)

/** Text that a reader would take for something else, or that ends a value inside braces, is put in quotes. */
const PLAIN_SCALAR = /^[A-Za-z0-9+\-.][A-Za-z0-9+\-./^ %°µ²³·*()]*$/
const NON_TEXT_SCALAR = /^([-+]?[\d.]+(e[-+]?\d+)?|true|false|null|~|y|n|yes|no|on|off)$/i

/** A value on one line. */
function inlineText(value: unknown, quoted: boolean): string {
  if (Array.isArray(value)) return `[${value.map((item) => inlineText(item, false)).join(', ')}]`
  if (typeof value === 'object' && value !== null)
    return `{ ${Object.entries(value)
      .map(([name, item]) => `${name}: ${inlineText(item, false)}`)
      .join(', ')} }`
  if (typeof value !== 'string') return String(value)
  return quoted || !PLAIN_SCALAR.test(value) || NON_TEXT_SCALAR.test(value) || value.endsWith(' ') ? JSON.stringify(value) : value
}

const firstLine = (text: string) => text.split('\n')[0] as string
