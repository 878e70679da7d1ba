// Draws inputs for any formula record: moved published cases, values between and at the limits, extremes, and one wrong value at one place.
import type { AnyFormula, Input, Inputs } from '../../src/formula/index.js'
import { recordReader } from '../../src/formula/index.js'
import type { RandomStream } from '../../src/numeric/index.js'
import { type Issue, type Kind, kindRow, Quantity, readAny } from '../../src/units/index.js'
import { checksById } from '../published/evidence.js'

type Values = Record<string, unknown>
type Scalar = Extract<Input, { kind: Kind }>

const EXTREMES = [0, 5e-324, 1e-300, 1e-30, 1e-12, 1e-6, 1e6, 1e12, 1e30, 1e300, Number.MAX_VALUE]

const pick = <T>(random: RandomStream, list: readonly T[]): T => list[random.integer(list.length)] as T

const siLimit = (kind: Kind, limit: unknown): number | undefined =>
  limit === undefined ? undefined : typeof limit === 'number' ? limit : readAny(kindRow(kind), limit)

/** A number of a kind: near the start where there is one, between the limits, at a limit or next to it, or extreme. */
function someNumber(input: Scalar, start: number | undefined, random: RandomStream, near: boolean): number {
  const { kind, whole } = input
  const lowest = siLimit(kind, input.min) ?? siLimit(kind, input.above) ?? kindRow(kind).lowest
  const highest = siLimit(kind, input.max) ?? siLimit(kind, input.below)
  const draw = near && start !== undefined ? 0 : random.uniform()
  const size = 10 ** random.uniformBetween(-6, 3)
  const x =
    draw < 0.45 && start !== undefined
      ? start * 10 ** random.uniformBetween(-0.5, 0.5)
      : draw < 0.7 && Number.isFinite(lowest) && highest !== undefined
        ? random.uniformBetween(lowest, highest)
        : draw < 0.8
          ? pick(random, [lowest, highest ?? 0].filter(Number.isFinite).concat(0)) * (random.integer(2) === 0 ? 1 : 1 + 1e-12)
          : draw < 0.92
            ? (Number.isFinite(lowest) ? lowest : 0) + size * (Number.isFinite(lowest) || random.integer(2) === 0 ? 1 : -1)
            : pick(random, EXTREMES) * (random.integer(6) === 0 ? -1 : 1)
  if (whole) return Math.round(Math.min(Math.abs(x), 2e4))
  return near && start !== undefined && !(x >= lowest && x <= (highest ?? Number.POSITIVE_INFINITY)) ? start : x
}

/** A value that an input may take, as a caller gives it. */
export function someValue(input: Input, start: unknown, random: RandomStream, near: boolean): unknown {
  if (typeof input === 'string') return someValue({ kind: input } as Input, start, random, near)
  const optional = 'optional' in input || 'default' in input
  if (optional && random.uniform() < (start === undefined ? 0.7 : 0.1)) return undefined
  if ('kind' in input) return new Quantity(someNumber(input, typeof start === 'number' ? start : undefined, random, near), input.kind)
  if ('oneOf' in input) return pick(random, input.oneOf)
  if ('flag' in input) return random.integer(2) === 0
  if ('fields' in input) return someRecord(input.fields, start as Values | undefined, random, near)
  if ('list' in input) {
    const given = Array.isArray(start) ? start : []
    const length = random.uniform() < 0.6 && given.length > 0 ? given.length : Math.max(input.least ?? 1, random.integer(6))
    return Array.from({ length }, (_, i) => someValue(input.list, given[i % Math.max(given.length, 1)], random, near))
  }
  const [, result] = input.curve
  const level = new Quantity(someNumber({ kind: result } as Scalar, 1, random, near), result)
  return () => level
}

/** A record of inputs. `near`: each number within half a decade of the start, within its limits; otherwise anything. */
export const someRecord = (inputs: Inputs, start: Values | undefined, random: RandomStream, near: boolean): Values =>
  Object.fromEntries(
    Object.entries(inputs).flatMap(([name, input]) => {
      const value = someValue(input, start?.[name], random, near)
      return value === undefined ? [] : [[name, value]]
    }),
  )

/** SI inputs of a formula's published cases. */
export function publishedInputs({ id, def }: AnyFormula): Values[] {
  const read = recordReader(def.inputs, true)
  return (checksById.get(id) ?? []).flatMap(({ given }) => {
    const issues: Issue[] = []
    if (given === undefined) return []
    const x = read(given, '', issues) as Values
    return issues.length === 0 ? [x] : []
  })
}

const cyclic: unknown[] = []
cyclic.push(cyclic)

/** What plain JavaScript can pass where a quantity, a word or a record is expected. */
export const WRONG: readonly unknown[] = [
  null,
  undefined,
  Number.NaN,
  Number.POSITIVE_INFINITY,
  -1,
  7,
  '',
  '5',
  '5 furlong',
  '1e400 mm',
  'NaN mm',
  '5,2 mm',
  true,
  {},
  [],
  new Array(3),
  cyclic,
  [5, 'mm', 'mm'],
  ['5 mm'],
  { value: 5 },
  { kind: 'length', value: Number.NaN, unit: 'm' },
  new Date(0),
  new Map(),
  () => Number.NaN,
  Symbol('x'),
  10n,
  Object.create(null),
  new Proxy({}, { get: () => undefined }),
  'x'.repeat(200_000),
]

/** Paths of all values in a record that was drawn. */
function placesIn(value: unknown, path: readonly PropertyKey[] = []): PropertyKey[][] {
  if (value instanceof Quantity || typeof value !== 'object' || value === null) return [[...path]]
  const inner = Object.keys(value).flatMap((key) => placesIn((value as Values)[key], [...path, key]))
  return path.length === 0 ? inner : [[...path], ...inner]
}

/** A copy of a record with one value replaced, or one unknown name added. */
export function spoilt(record: Values, random: RandomStream): { given: Values; place: string } {
  const places = placesIn(record)
  const given = copy(record) as Values
  if (places.length === 0 || random.integer(8) === 0) return { given: { ...given, unknownName: 1 }, place: 'unknownName' }
  const place = pick(random, places)
  let holder: Values = given
  for (const step of place.slice(0, -1)) holder = holder[step as string] as Values
  holder[place.at(-1) as string] = pick(random, WRONG)
  return { given, place: place.map(String).join('.') }
}

function copy(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(copy)
  if (value instanceof Quantity || typeof value !== 'object' || value === null) return value
  return Object.fromEntries(Object.entries(value).map(([key, each]) => [key, copy(each)]))
}
