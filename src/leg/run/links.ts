import type { AnyFormula, Input, OutputField } from '../../formula/index.js'
import { type Kind, kindRow } from '../../units/index.js'

/** A number on a sheet: where it stands, its kind, and the step or leaf it comes from. */
export interface Candidate {
  /** Name of the value or result, and the path in it. */
  readonly name: string
  readonly number: number
  /** Absent where the number stands in a table of several kinds. */
  readonly kind: string | undefined
  /** Absent for a number that was written, such as 0. */
  readonly from: Origin | undefined
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

/** Words of names and paths that were met: the same few hundred come again and again. */
const WORDS = new Map<string, readonly string[]>()

/** Words of a name or path: `air.hotTemperature` is air, hot, temperature. */
function wordsOf(text: string): readonly string[] {
  let words = WORDS.get(text)
  if (words === undefined) {
    words = text
      .replace(/([a-z0-9])([A-Z])/g, '$1 $2')
      .toLowerCase()
      .split(/[^a-z0-9]+/)
    WORDS.set(text, words)
  }
  return words
}

type Known = Candidate & { readonly from: Origin }

/** Words that say nothing where others stand beside them: a safety factor is no fatigue factor. */
const GENERAL: readonly string[] = ['factor']
const isDistinctive = (words: readonly string[]): readonly string[] => {
  const rest = words.filter((word) => !GENERAL.includes(word))
  return rest.length === 0 ? words : rest
}

/** How well the name of a candidate fits that of an input: the words they share, and the same last word. */
function nameSimilarity(name: string, path: string): number {
  const [own, sought] = [wordsOf(name), isDistinctive(wordsOf(path))]
  return 2 * sought.filter((word) => own.includes(word)).length + (own.at(-1) === sought.at(-1) ? 1 : 0)
}

/** What may be the origin of a number: equal or opposite, of the same kind, or at least of the same dimension. */
function originsOf(
  { path, number, kind }: Place,
  known: readonly Known[],
): { readonly found: readonly Known[]; readonly negative: boolean } {
  for (const fits of [sameKind, sameDimension])
    for (const negative of [false, true]) {
      if (negative && number === 0) continue
      // A zero of no kind, such as a table's, says nothing of its origin; nor does a 1 without a name that fits.
      const says = (candidate: Known) =>
        candidate.kind !== undefined || (number !== 0 && (number !== 1 || nameSimilarity(candidate.name, path) > 0))
      const found = known.filter(
        (candidate) => Object.is(candidate.number, negative ? -number : number) && fits(candidate.kind, kind) && says(candidate),
      )
      if (found.length > 0) return { found, negative }
    }
  return { found: [], negative: false }
}

const withOrigin = (candidates: readonly Candidate[]) => candidates.filter((candidate): candidate is Known => candidate.from !== undefined)
const linked = ({ from }: Known, negative: boolean): Link => (negative ? { ...from, negative: true } : from)

/**
 * Where a number that a value hands on comes from: by name where it has one, otherwise what was made last. What is named after another of the value's
 * numbers belongs to that one: a step of 0.15 m is no traction of 0.15.
 */
export function originOf(place: Place, candidates: readonly Candidate[], places: readonly Place[] = [place]): Link | undefined {
  const { found: all, negative } = originsOf(place, withOrigin(candidates))
  const others = places.filter((other) => other.path !== place.path && Object.is(other.number, place.number))
  const own = all.filter(({ name }) => others.every((other) => nameSimilarity(name, other.path) <= nameSimilarity(name, place.path)))
  const found = own.length > 0 ? own : all
  const origin = place.path === '' ? found.at(-1) : bestOf(found, place.path).at(-1)
  if (
    origin !== undefined &&
    place.path !== '' &&
    isUnity({ ...place, kind: origin.kind ?? 'ratio' }) &&
    nameSimilarity(origin.name, place.path) === 0
  )
    return undefined
  return origin === undefined ? undefined : linked(origin, negative)
}

/**
 * Where the inputs of a step come from among what its reader had before. Where several numbers are equal, names decide; where they do not, the
 * order does: what was read last belongs to the last input.
 */
export function linksOf(places: readonly Place[], candidates: readonly Candidate[]): Map<Place, Link> {
  const known = withOrigin(candidates)
  const links = new Map<Place, Link>()
  const taken = new Set<Known>()
  for (const byName of [true, false])
    for (const place of [...places].reverse()) {
      if (links.has(place)) continue
      const { found, negative } = originsOf(place, known)
      const best = bestOf(found, place.path)
      const origin = best.filter((each) => !taken.has(each)).at(-1) ?? best.at(-1)
      // The 1 of no cycles, no shift and no reduction: without a name that fits, a value wrote it itself.
      if (origin === undefined || (nameSimilarity(origin.name, place.path) === 0 && (byName || isUnity(place)))) continue
      taken.add(origin)
      links.set(place, linked(origin, negative))
    }
  return links
}

const sameKind = (a: string | undefined, b: string | undefined) => a === undefined || b === undefined || a === b
const sameDimension = (a: string | undefined, b: string | undefined) =>
  a === undefined || b === undefined || kindRow(a as Kind).dim === kindRow(b as Kind).dim

const isUnity = ({ number, kind }: Place): boolean => number === 1 && (kind === 'ratio' || kind === 'count')

/** The candidates whose names fit best. */
function bestOf(found: readonly Known[], path: string): readonly Known[] {
  const fits = found.map(({ name }) => nameSimilarity(name, path))
  const max = Math.max(...fits)
  return found.filter((_, i) => fits[i] === max)
}
