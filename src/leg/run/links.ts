import type { AnyFormula, Input, OutputField } from '../../formula/index.js'

/** A number on a sheet: where it stands, its kind, and the step or leaf it comes from. */
export interface Candidate {
  /** Name of the value or result, and the path in it. */
  readonly name: string
  readonly number: number
  /** Absent where the number stands in a table of several kinds. */
  readonly kind: string | undefined
  readonly from: Origin
}

/** A step or a leaf of a sheet by its number, and the place in its result. */
export interface Origin {
  readonly of: 'step' | 'leaf'
  readonly number: number
  readonly path: string
}

/** Where an input comes from; `negative` where it is the number with the other sign. */
export interface Link extends Origin {
  readonly negative?: true
}

/** A number in a nested record, with its path from the outside. */
export interface Place {
  readonly path: string
  readonly number: number
  readonly kind?: string | undefined
}

/** The numbers of a value, outside in. */
export function numbersIn(value: unknown, path = ''): Place[] {
  if (typeof value === 'number') return [{ path, number: value }]
  if (typeof value !== 'object' || value === null) return []
  return Object.entries(value).flatMap(([name, inner]) => numbersIn(inner, path === '' ? name : `${path}.${name}`))
}

/** The numbers of a formula's inputs with their kinds. */
export const inputPlaces = ({ def }: AnyFormula, x: unknown): Place[] =>
  Object.entries(def.inputs).flatMap(([name, input]) => placesOf(input, (x as Record<string, unknown>)[name], name))

function placesOf(input: Input, given: unknown, path: string): Place[] {
  if (given === undefined) return []
  if (typeof input === 'string') return [{ path, number: given as number, kind: input }]
  if ('kind' in input) return Number.isNaN(given) ? [] : [{ path, number: given as number, kind: input.kind }]
  if ('list' in input) return Array.from(given as ArrayLike<unknown>).flatMap((item, i) => placesOf(input.list, item, `${path}.${i}`))
  if ('fields' in input)
    return Object.entries(input.fields).flatMap(([name, inner]) =>
      placesOf(inner, (given as Record<string, unknown>)[name], `${path}.${name}`),
    )
  return []
}

/** The numbers of a formula's results with their kinds. */
export function outputPlaces({ def: { output } }: AnyFormula, y: unknown): Place[] {
  const field = (kind: OutputField, value: unknown, path: string): Place[] => {
    if (typeof kind === 'string') return [{ path, number: value as number, kind }]
    if ('kind' in kind) return [{ path, number: value as number, kind: kind.kind }]
    if ('list' in kind) return Array.from(value as ArrayLike<number>, (number, i) => ({ path: `${path}.${i}`, number, kind: kind.list }))
    return []
  }
  if (typeof output === 'string' || 'infinite' in output) return field(output as OutputField, y, '')
  return Object.entries(output as Record<string, OutputField>).flatMap(([name, kind]) =>
    field(kind, (y as Record<string, unknown>)[name], name),
  )
}

/** The last word of a path or id. */
export const lastWord = (path: string): string => path.slice(path.lastIndexOf('.') + 1)

/** Finds where a number comes from among what its reader had before: equal, of the same kind; by equal name where several are. */
export function linkOf({ path, number, kind }: Place, candidates: readonly Candidate[]): { link: Link | undefined; doubtful: boolean } {
  const fits = (one: Candidate) => one.kind === undefined || kind === undefined || one.kind === kind
  const equal = candidates.filter((one) => Object.is(one.number, number) && fits(one))
  if (equal.length > 0) return chosen(equal, path, false)
  const opposite = number === 0 ? [] : candidates.filter((one) => one.number === -number && fits(one))
  return opposite.length > 0 ? chosen(opposite, path, true) : { link: undefined, doubtful: false }
}

function chosen(found: readonly Candidate[], path: string, negative: boolean): { link: Link; doubtful: boolean } {
  const last = found.at(-1) as Candidate
  const dress = ({ from }: Candidate): Link => (negative ? { ...from, negative: true } : from)
  if (found.every(({ from }) => same(from, last.from))) return { link: dress(last), doubtful: false }
  const named = found.filter(({ name }) => lastWord(name) === lastWord(path))
  const best = named.at(-1) ?? last
  return { link: dress(best), doubtful: !named.every(({ from }) => same(from, best.from)) || named.length === 0 }
}

const same = (a: Origin, b: Origin): boolean => a.of === b.of && a.number === b.number && a.path === b.path
