import type { Cell } from './cell.js'

/** A place in the document, and the leaves that are read from it. */
interface Place {
  readonly inner: Map<string, Place>
  /** Names and places of `inner` once more: two documents are compared for every leg of a sweep, and a list is gone through without making anything. */
  readonly names: string[]
  readonly places: Place[]
  /** Leaves that read the word or number here. */
  readonly at: Cell[]
  /** Leaves that may read anything below. */
  readonly below: Cell[]
}

const place = (): Place => ({ inner: new Map(), names: [], places: [], at: [], below: [] })
const isObject = (x: unknown): x is object => typeof x === 'object' && x !== null

/**
 * Which leaves a changed field of the document reaches. A leaf is traced: it depends on the words and numbers that it
 * reads, and on the records and lists that it hands on. Where that is not known, it depends on the whole sections that it reads.
 */
export class FieldIndex<D> {
  readonly #root = place()

  /** Notes what a leaf is read from. */
  trace(cell: Cell, document: D, read: (document: D) => unknown): void {
    const reads = new Reads()
    const escaped = escapes(read, reads.watch(this.#root, document as object) as D, reads)
    if (escaped !== undefined) for (const read of reads.found) note(read.at, cell)
    const whole =
      escaped !== undefined ? [...reads.listed, ...escaped] : sectionsRead(document, read).map((name) => within(this.#root, name))
    for (const read of whole) note(read.below, cell)
  }

  /** The leaves that the differences between two documents reach. */
  changed(before: D, after: D): Set<Cell> {
    const found = new Set<Cell>()
    compare(this.#root, before, after, found)
    return found
  }
}

/** What a leaf read while it was traced. */
class Reads {
  /** Places of words and numbers, and of records or lists that something listed. */
  readonly found = new Set<Place>()
  readonly listed = new Set<Place>()
  readonly #watched = new Map<object, Place>()

  watch(at: Place, now: object): object {
    const watched = new Proxy(Array.isArray(now) ? [] : {}, new Watched(at, now, this))
    this.#watched.set(watched, at)
    return watched
  }

  /** The place of a record or list that is watched. */
  placeOf(watched: object): Place | undefined {
    return this.#watched.get(watched)
  }
}

/** A record or list of the document as a traced leaf sees it. Once anything lists it, all that is below counts, and is given as it is. */
class Watched implements ProxyHandler<object> {
  constructor(
    readonly at: Place,
    readonly now: object,
    readonly reads: Reads,
  ) {}

  get(_: object, name: string | symbol): unknown {
    const value = Reflect.get(this.now, name) as unknown
    if (typeof name !== 'string' || typeof value === 'function' || this.reads.listed.has(this.at)) return value
    const path = within(this.at, name)
    if (isObject(value)) return this.reads.watch(path, value)
    this.reads.found.add(path)
    return value
  }

  has(_: object, name: string | symbol): boolean {
    this.reads.listed.add(this.at)
    return Reflect.has(this.now, name)
  }

  ownKeys(): (string | symbol)[] {
    this.reads.listed.add(this.at)
    return Reflect.ownKeys(this.now)
  }

  getOwnPropertyDescriptor(_: object, name: string | symbol): PropertyDescriptor | undefined {
    this.reads.listed.add(this.at)
    const found = Reflect.getOwnPropertyDescriptor(this.now, name)
    return found === undefined ? undefined : { ...found, configurable: true }
  }

  getPrototypeOf(): object | null {
    return Reflect.getPrototypeOf(this.now)
  }
}

/**
 * Places of the records and lists that a read hands on as they are; undefined where that is not known. A word, a number, or a new record of words and
 * numbers hands on none.
 */
function escapes<D>(read: (document: D) => unknown, watched: D, reads: Reads): readonly Place[] | undefined {
  try {
    const value = read(watched)
    if (!isObject(value)) return []
    const place = reads.placeOf(value)
    if (place !== undefined) return [place]
    return Object.values(value).some(isObject) ? undefined : []
  } catch {
    return undefined
  }
}

function within(at: Place, name: string): Place {
  let node = at.inner.get(name)
  if (node === undefined) {
    node = place()
    at.inner.set(name, node)
    at.names.push(name)
    at.places.push(node)
  }
  return node
}

function note(cells: Cell[], cell: Cell): void {
  if (!cells.includes(cell)) cells.push(cell)
}

function compare(at: Place, before: unknown, after: unknown, found: Set<Cell>): void {
  if (Object.is(before, after)) return
  for (const cell of at.at) found.add(cell)
  for (const cell of at.below) found.add(cell)
  const { names, places } = at
  for (let i = 0; i < names.length; i++) compare(places[i]!, inside(before, names[i]!), inside(after, names[i]!), found)
}

const inside = (x: unknown, name: string): unknown => (isObject(x) ? (x as Readonly<Record<string, unknown>>)[name] : undefined)

/** Sections of a document that a read touches. */
function sectionsRead<D>(document: D, read: (document: D) => unknown): string[] {
  const sections = new Set<string>()
  const watching = new Proxy(document as object, {
    get(target, name) {
      if (typeof name === 'string') sections.add(name)
      return Reflect.get(target, name)
    },
    has(target, name) {
      if (typeof name === 'string') sections.add(name)
      return Reflect.has(target, name)
    },
  })
  try {
    read(watching as D)
  } catch {
    // What it touched before it failed is what may mend it.
  }
  return [...sections]
}
