// Changes documents and specifications as people get them wrong: a field deleted, renamed, doubled, swapped, scaled or replaced.
import type { RandomStream } from '../../src/numeric/index.js'

type Tree = Record<string, unknown>

/** Words and values that turn up in wrong places. */
const POOL: readonly unknown[] = [
  '5 mm',
  '5,2 mm',
  '0 mm',
  '-3 mm',
  '12',
  '7 N m',
  '1e9 N',
  '1e-9 m',
  '300 degC',
  '-300 degC',
  '1e300 mm',
  '110 KV',
  '90°',
  '2 hours',
  '2 kW',
  '100 %',
  'ASA',
  'M4',
  'walk',
  'crossed',
  '',
  ' ',
  'null',
  '<b>x</b>',
  '"><script>alert(1)</script>',
  '=1+1',
  '|x|',
  '`x`',
  '__proto__',
  'constructor',
  0,
  -1,
  1,
  0.5,
  3,
  1e9,
  Number.NaN,
  null,
  true,
  [],
  {},
  [1, 2, 3],
  ['1 mm'],
  { low: '1 mm' },
]

const pick = <T>(random: RandomStream, list: readonly T[]): T => list[random.integer(list.length)] as T

interface Place {
  readonly holder: Tree
  readonly key: string
}

const isTree = (value: unknown): value is Tree =>
  typeof value === 'object' && value !== null && (Array.isArray(value) || Object.getPrototypeOf(value) === Object.prototype)

function placesIn(tree: Tree): Place[] {
  return Object.keys(tree).flatMap((key) => [{ holder: tree, key }, ...(isTree(tree[key]) ? placesIn(tree[key]) : [])])
}

/** A number with its unit, multiplied. */
function scaled(value: unknown, factor: number): unknown {
  if (typeof value === 'number') return value * factor
  return typeof value === 'string'
    ? value.replace(/-?\d+(\.\d+)?(e-?\d+)?/, (number) => String(Number((Number(number) * factor).toPrecision(6))))
    : value
}

function rename(name: string, random: RandomStream): string {
  const at = random.integer(Math.max(name.length, 1))
  return pick(random, [`${name}s`, name.slice(0, at) + name.slice(at + 1), name.toUpperCase(), `${name.slice(0, at)}x${name.slice(at)}`])
}

function change({ holder, key }: Place, all: readonly Place[], random: RandomStream): string {
  const draw = random.integer(12)
  if (draw === 0) {
    delete holder[key]
    return `delete ${key}`
  }
  if (draw === 1) {
    const next = rename(key, random)
    holder[next] = holder[key]
    delete holder[key]
    return `rename ${key} to ${next}`
  }
  if (draw === 2) {
    const other = pick(random, all)
    // Copies: of a section and its own field, one would come to hold itself.
    const [one, next] = [structuredClone(holder[key]), structuredClone(other.holder[other.key])]
    other.holder[other.key] = one
    holder[key] = next
    return `swap ${key} and ${other.key}`
  }
  if (draw === 3) {
    holder[key] = structuredClone(pick(random, POOL))
    return `${key} = ${JSON.stringify(holder[key])}`
  }
  const factor = draw < 9 ? 10 ** random.uniformBetween(-0.4, 0.4) : 10 ** random.uniformBetween(-6, 6)
  holder[key] = scaled(holder[key], factor)
  return `${key} = ${JSON.stringify(holder[key])}`
}

/** A changed copy, and in words what was changed. */
export function mutated<T>(tree: T, random: RandomStream): { readonly value: T; readonly changes: string } {
  const value = structuredClone(tree)
  const changes: string[] = []
  for (let left = 1 + random.integer(4); left > 0; left--) {
    const places = placesIn(value as Tree).filter(({ holder, key }) => key in holder)
    if (places.length > 0) changes.push(change(pick(random, places), places, random))
  }
  return { value, changes: changes.join('; ') }
}

/** The first number in an object's own fields that is not a number; nothing where there is none. In columns it is a declared gap. */
export function notANumber(value: unknown, path = '', depth = 0, seen = new Set<unknown>()): string | undefined {
  if (typeof value === 'number') return Number.isNaN(value) ? `${path || 'the answer'} is NaN` : undefined
  if (typeof value === 'string') return /\b(NaN|undefined)\b/.test(value) ? `${path} reads ${value.slice(0, 80)}` : undefined
  if (typeof value !== 'object' || value === null || depth > 8 || seen.has(value) || ArrayBuffer.isView(value)) return undefined
  seen.add(value)
  const entries =
    value instanceof Map ? [...value] : Object.entries(Object.getOwnPropertyDescriptors(value)).map(([key, each]) => [key, each.value])
  for (const [key, each] of entries) {
    const found = notANumber(each, path === '' ? String(key) : `${path}.${String(key)}`, depth + 1, seen)
    if (found !== undefined) return found
  }
  return undefined
}
