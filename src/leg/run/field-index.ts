import type { Cell } from './cell.js'

/** A place in the document, and the leaves that are read from it. */
interface Place {
  readonly inner: Map<string, Place>
  /** Leaves that read the word or number here. */
  readonly at: Cell[]
  /** Leaves that may read anything below. */
  readonly below: Cell[]
}

const place = (): Place => ({ inner: new Map(), at: [], below: [] })
const isObject = (x: unknown): x is object => typeof x === 'object' && x !== null

/**
 * Which leaves a changed field of the document reaches. A leaf that gives a word or a number is traced: it depends on the words and numbers that it
 * reads. One that gives a list or a record depends on the whole sections that it reads.
 */
export class FieldIndex<D> {
  readonly #root = place()

  /** Notes what a leaf is read from. */
  trace(cell: Cell, document: D, read: (document: D) => unknown): void {
    const [found, listed] = [new Set<Place>(), new Set<Place>()]
    const plain = givesPlainValue(read, Watched.of(this.#root, document as object, found, listed) as D)
    if (plain) for (const one of found) note(one.at, cell)
    const whole = plain ? listed : sectionsRead(document, read).map((name) => within(this.#root, name))
    for (const one of whole) note(one.below, cell)
  }

  /** The leaves that the differences between two documents reach. */
  changed(before: D, after: D): Set<Cell> {
    const found = new Set<Cell>()
    compare(this.#root, before, after, found)
    return found
  }
}

/** A record or list of the document as a traced leaf sees it. Once anything lists it, all that is below counts, and is given as it is. */
class Watched implements ProxyHandler<object> {
  constructor(
    readonly at: Place,
    readonly now: object,
    readonly read: Set<Place>,
    readonly listed: Set<Place>,
  ) {}

  static of(at: Place, now: object, read: Set<Place>, listed: Set<Place>): object {
    return new Proxy(Array.isArray(now) ? [] : {}, new Watched(at, now, read, listed))
  }

  get(_: object, name: string | symbol): unknown {
    const value = Reflect.get(this.now, name) as unknown
    if (typeof name !== 'string' || typeof value === 'function' || this.listed.has(this.at)) return value
    const one = within(this.at, name)
    if (isObject(value)) return Watched.of(one, value, this.read, this.listed)
    this.read.add(one)
    return value
  }

  has(_: object, name: string | symbol): boolean {
    this.listed.add(this.at)
    return Reflect.has(this.now, name)
  }

  ownKeys(): (string | symbol)[] {
    this.listed.add(this.at)
    return Reflect.ownKeys(this.now)
  }

  getOwnPropertyDescriptor(_: object, name: string | symbol): PropertyDescriptor | undefined {
    this.listed.add(this.at)
    const found = Reflect.getOwnPropertyDescriptor(this.now, name)
    return found === undefined ? undefined : { ...found, configurable: true }
  }

  getPrototypeOf(): object | null {
    return Reflect.getPrototypeOf(this.now)
  }
}

/** Whether a read gives a word or a number: what it read on the way is then all that it depends on. */
function givesPlainValue<D>(read: (document: D) => unknown, watched: D): boolean {
  try {
    return !isObject(read(watched))
  } catch {
    return false
  }
}

function within(at: Place, name: string): Place {
  let one = at.inner.get(name)
  if (one === undefined) {
    one = place()
    at.inner.set(name, one)
  }
  return one
}

function note(cells: Cell[], cell: Cell): void {
  if (!cells.includes(cell)) cells.push(cell)
}

function compare(at: Place, before: unknown, after: unknown, found: Set<Cell>): void {
  if (Object.is(before, after)) return
  for (const cell of at.at) found.add(cell)
  for (const cell of at.below) found.add(cell)
  for (const [name, one] of at.inner) compare(one, inside(before, name), inside(after, name), found)
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
