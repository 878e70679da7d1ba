import { Cell, type Named, nowhere, type Where } from './cell.js'
import { type AnyValue, IMPLIES, INDICES, type Index, type Names, type Of } from './value.js'

/** The instances of a calculation: their names, and which implies which. It never changes under a calculation. */
export interface Structure {
  readonly names: { readonly [X in Index]?: readonly string[] }
  /** For an index, the instances of another that each of its instances implies; -1 for none. */
  readonly implied: { readonly [X in Index]?: { readonly [Y in Index]?: readonly number[] } }
}

const NOWHERE: Named = {}

/** More instances than any index has: keys of cells are numbers in this base. */
const BASE = 256

/** The instances of a cell, with what they imply, and their names. */
interface Place {
  readonly where: Where
  readonly sees: Where
  readonly names: Names
}

/** The cells of one value. */
interface Family {
  readonly cells: Map<number, Cell>
  readonly places: Map<number, Place>
}

/** Finds cells and instances. Cells are made at their first use. */
export class Instances {
  readonly cells: Cell[] = []
  readonly leaves: Cell[] = []
  readonly #families = new Map<AnyValue, Family>()
  /** Places by their indices, and then by their instances. */
  readonly #places = new Map<string, Map<number, Place>>()
  /** Lists of instances by their index, and by one other that is named. */
  readonly #lists = new Map<Index, Map<number, readonly Of<Index>[]>>()
  readonly #names: { [X in Index]?: string[] } = {}

  constructor(readonly structure: Structure) {
    for (const index of INDICES) {
      const names = structure.names[index]
      if (names !== undefined) this.#names[index] = [...names]
    }
  }

  /** The handle of a name. A name first met (a material of a sweep) gets one. */
  handle(index: Index, name: string): number {
    this.#names[index] ??= []
    const names = this.#names[index]
    const found = names.indexOf(name)
    if (found >= 0) return found
    if (names.length >= BASE) throw new Error(`more than ${BASE} instances of ${index}`)
    return names.push(name) - 1
  }

  name(index: Index, of: number): string {
    const name = this.#names[index]?.[of]
    if (name === undefined) throw new Error(`there is no ${index} ${of}`)
    return name
  }

  all(index: Index, where: Named = NOWHERE): readonly Of<Index>[] {
    let other: Index | undefined
    for (const name in where) {
      if (other !== undefined) return this.#fitting(index, where)
      other = name as Index
    }
    return this.#allAt(index, other, where)
  }

  /** The same where at most one other instance is named. */
  #allAt(index: Index, other: Index | undefined, where: Named): readonly Of<Index>[] {
    let lists = this.#lists.get(index)
    if (lists === undefined) {
      lists = new Map()
      this.#lists.set(index, lists)
    }
    const key = other === undefined ? -1 : BASE * INDICES.indexOf(other) + (where[other] as number)
    let list = lists.get(key)
    if (list === undefined) {
      list = this.#fitting(index, where)
      lists.set(key, list)
    }
    return list
  }

  #fitting(index: Index, where: Named): readonly Of<Index>[] {
    const count = this.structure.names[index]?.length ?? 0
    const tables = this.structure.implied[index] ?? {}
    const fits = (i: number) => Object.entries(where).every(([x, of]) => (x === index ? i === of : tables[x as Index]?.[i] === of))
    return Array.from({ length: count }, (_, i) => i).filter(fits) as unknown as Of<Index>[]
  }

  /** The cell of a value for instances that are named, or that a reader has or implies. */
  find(of: AnyValue, named: Named, sees: Where): Cell {
    const family = this.#families.get(of) ?? this.#found(of)
    let key = 0
    for (const index of of.by) key = key * BASE + instance(of, index, named, sees)
    let cell = family.cells.get(key)
    if (cell === undefined) {
      const place = this.#place(of, key, family, named, sees)
      cell = new Cell(of, place.where, place.sees, place.names)
      family.cells.set(key, cell)
      this.cells.push(cell)
      if (of.leaf !== undefined) this.leaves.push(cell)
    }
    return cell
  }

  #found(of: AnyValue): Family {
    const indices = of.by.join()
    const places = this.#places.get(indices) ?? new Map<number, Place>()
    this.#places.set(indices, places)
    const family = { cells: new Map<number, Cell>(), places }
    this.#families.set(of, family)
    return family
  }

  /** The place of a cell; values of the same indices share theirs. */
  #place(of: AnyValue, key: number, { places }: Family, named: Named, sees: Where): Place {
    const known = places.get(key)
    if (known !== undefined) return known
    const where = nowhere()
    const names = {} as { [X in Index]: string }
    for (const index of of.by) {
      where[index] = instance(of, index, named, sees)
      names[index] = this.name(index, where[index])
    }
    const place = { where, sees: this.implied(where), names: names as Names }
    places.set(key, place)
    return place
  }

  /** Some instances with those that they imply. */
  implied(named: Named): Where {
    const all = nowhere()
    for (const index in named) all[index as Index] = named[index as Index] as number
    for (const from of IMPLYING) {
      const at = all[from]
      const tables = this.structure.implied[from]
      if (at < 0 || tables === undefined) continue
      for (const index of IMPLIES[from] as readonly Index[]) if (all[index] < 0) all[index] = tables[index]?.[at] ?? -1
    }
    return all
  }
}

/** Indices that imply others, in their order. */
const IMPLYING = INDICES.filter((index) => IMPLIES[index] !== undefined)

function instance({ id }: AnyValue, index: Index, named: Named, sees: Where): number {
  const of = named[index] ?? sees[index]
  if (of < 0) throw new Error(`${id} needs a ${index}, and nothing here has one`)
  return of
}
