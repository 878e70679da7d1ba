import type { Input, Inputs } from '../formula/index.js'
import { earlierPlaces, type NewPlace } from './document/earlier-paths.js'

type Section = Record<string, unknown>

const isSection = (x: unknown): x is Section => typeof x === 'object' && x !== null && !Array.isArray(x)

/** The input at a path. */
function inputAt(inputs: Inputs, path: string): Input | undefined {
  let at: Input | undefined
  let below: Inputs | undefined = inputs
  for (const step of path.split('.')) {
    at = below?.[step]
    below = typeof at === 'object' && 'fields' in at ? at.fields : undefined
  }
  return at
}

/** The same input without ranges: what has two names scatters under one of them. */
function sure(input: Input): Input {
  if (typeof input === 'string') return input
  if ('fields' in input)
    return {
      ...input,
      fields: Object.fromEntries(Object.entries(input.fields).map(([name, field]) => [name, sure(field)])),
      optional: true,
    } as Input
  const { default: _, ...rest } = input as { default?: unknown }
  return { ...rest, optional: true } as Input
}

/** Puts an input at a path, and keeps what is there. */
function put(inputs: Inputs, [step, ...rest]: readonly string[], input: Input): Inputs {
  const name = step as string
  const at = inputs[name]
  const fields = typeof at === 'object' && 'fields' in at ? at.fields : {}
  if (rest.length === 0) {
    const own = typeof input === 'object' && 'fields' in input ? input.fields : undefined
    return { ...inputs, [name]: own === undefined ? input : ({ fields: { ...fields, ...own }, optional: true } as Input) }
  }
  return { ...inputs, [name]: { fields: put(fields, rest, input), optional: true } as Input }
}

/** Inputs of a leg with those under the paths that they had in version 3. */
export function withEarlierInputs(inputs: Inputs, leg: object): Inputs {
  let all = inputs
  for (const [old, [place]] of earlierPlaces(leg)) {
    const input = place === undefined ? undefined : inputAt(inputs, place.path)
    if (place === undefined || input === undefined) continue
    all = put(all, old.split('.'), place.kind === 'time' ? ({ kind: 'count', optional: true } as Input) : sure(input))
  }
  return all
}

/** Values given under the paths of version 3, moved to where they are now. */
export function movedInputs(leg: object): (given: Section) => Section {
  const earlier: Earlier = { places: new Map(earlierPlaces(leg)), sections: new Set() }
  for (const path of earlier.places.keys())
    for (let end = path.lastIndexOf('.'); end > 0; end = path.lastIndexOf('.', end - 1)) earlier.sections.add(path.slice(0, end))
  return (given) => {
    let moved: Section = given
    for (const name in given)
      if ((earlier.sections.has(name) || earlier.places.has(name)) && given[name] !== undefined)
        moved = moveWithin(moved, given[name], name, earlier)
    return moved
  }
}

/** Paths of version 3 with where they are now, and the sections that hold such paths. */
interface Earlier {
  readonly places: Map<string, readonly NewPlace[]>
  readonly sections: Set<string>
}

function moveWithin(given: Section, value: unknown, path: string, earlier: Earlier): Section {
  if (value === undefined) return given
  const { places, sections } = earlier
  const own = places.get(path)
  if (sections.has(path) && isSection(value)) {
    // What has a place of its own goes there; what is left goes with its section.
    let all = given
    const left: Section = {}
    for (const name in value) {
      const here = `${path}.${name}`
      if (places.has(here) || sections.has(here)) all = moveWithin(all, value[name], here, earlier)
      else left[name] = value[name]
    }
    return own === undefined ? all : moveTo(all, own, left)
  }
  return own === undefined ? given : moveTo(given, own, value)
}

const moveTo = (given: Section, places: readonly NewPlace[], value: unknown): Section =>
  places.reduce((all, { path, factor = 1 }) => merge(all, path.split('.'), typeof value === 'number' ? factor * value : value), given)

function merge(at: Section, [step, ...rest]: readonly string[], value: unknown): Section {
  const name = step as string
  const before = isSection(at[name]) ? (at[name] as Section) : {}
  if (rest.length > 0) return { ...at, [name]: merge(before, rest, value) }
  return { ...at, [name]: isSection(value) ? joined(before, value) : (value ?? at[name]) }
}

function joined(before: Section, after: Section): Section {
  const all = { ...before }
  for (const name in after) {
    const [a, b] = [all[name], after[name]]
    all[name] = isSection(a) && isSection(b) ? joined(a, b) : (b ?? a)
  }
  return all
}
