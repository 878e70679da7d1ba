import { type Point, pathData } from '../../drawing/index.js'

/** An element of a picture. */
interface Element {
  readonly name: string
  attributes: Record<string, string>
  children: (Element | string)[]
}

const TAG = /<(\/?)([\w:-]+)((?:\s+[\w:-]+="[^"]*")*)\s*(\/?)>|([^<]+)/g

function read(svg: string): Element {
  const root: Element = { name: '', attributes: {}, children: [] }
  const open = [root]
  for (const [, ends, name, attributes = '', empty, text] of svg.matchAll(TAG)) {
    const at = open.at(-1) as Element
    if (text !== undefined) at.children.push(text)
    else if (ends === '/') open.pop()
    else {
      const own = Object.fromEntries(
        [...attributes.matchAll(/([\w:-]+)="([^"]*)"/g)].map(([, key, value]) => [key as string, value as string]),
      )
      const element: Element = { name: name as string, attributes: own, children: [] }
      at.children.push(element)
      if (empty !== '/') open.push(element)
    }
  }
  return root.children.find((child) => typeof child !== 'string') as Element
}

function write({ name, attributes, children }: Element): string {
  const own = Object.entries(attributes)
    .map(([key, value]) => ` ${key}="${value}"`)
    .join('')
  return children.length === 0
    ? `<${name}${own}/>`
    : `<${name}${own}>${children.map((child) => (typeof child === 'string' ? child : write(child))).join('')}</${name}>`
}

/** Attributes that hold places. */
const COORDINATES = / (?:d|transform|x|y|[xy][12]|c[xy]|r|width|height|viewBox)="[^"]*"/g

/** Attributes that a part inherits or has by default, and roles and names of parts, which no screen reader speaks. */
const DROPPED = /^(class|role|aria-.*|pointer-events|font-family|version|display)$/
const DEFAULTS: Readonly<Record<string, string>> = { opacity: '1', 'stroke-width': '1', 'font-size': '11px', transform: 'translate(0,0)' }
/** Attributes that a group can hold for its parts. */
const SHARED = ['fill', 'stroke', 'stroke-dasharray', 'stroke-width', 'stroke-opacity', 'fill-opacity', 'text-anchor', 'font-weight']

/** A part without what shows nothing; nothing where it shows nothing itself. */
function shown(one: Element): Element | undefined {
  const { name, attributes, children } = one
  const hidden = attributes.opacity === '0' || attributes.display === 'none' || (name === 'text' && children.length === 0)
  const unseen = name === 'path' && (!attributes.d || (attributes.fill === undefined && attributes.stroke === undefined))
  if (hidden || unseen) return undefined
  const own = Object.fromEntries(
    Object.entries(attributes).filter(
      ([key, value]) => !DROPPED.test(key) && DEFAULTS[key] !== value && !(key === 'text-anchor' && value === 'start'),
    ),
  )
  const inner = children.flatMap((child): (Element | string)[] => {
    const part = typeof child === 'string' ? child : shown(child)
    return part === undefined ? [] : [part]
  })
  if (name === 'g' && inner.length === 0) return undefined
  const flat = inner.flatMap((child) =>
    typeof child !== 'string' && child.name === 'g' && Object.keys(child.attributes).length === 0 ? child.children : [child],
  )
  if (name === 'text') return { name, attributes: placed(own, flat), children: flat }
  return { name, attributes: own, children: name === 'g' ? joined(flat) : flat }
}

/** A text of one line at its place, instead of moved there. */
function placed(attributes: Element['attributes'], children: Element['children']): Element['attributes'] {
  const [, x, y] = MOVED.exec(attributes.transform ?? '') ?? []
  if (x === undefined || y === undefined || children.some((child) => typeof child !== 'string')) return attributes
  const { transform: _, ...rest } = attributes
  return { x, y, ...rest }
}

const MOVED = /^translate\(([-\d.]+),([-\d.]+)\)$/
const moved = ({ transform = '' }: Element['attributes']): Point => {
  const [, x = '0', y = '0'] = MOVED.exec(transform) ?? []
  return [Number(x), Number(y)]
}

/** A path of straight lines alone. */
const STRAIGHT = /^M[-\d.,]+(?:L[-\d.,]+)+$/

/** A straight line, or a path of straight lines, as the points of a path. */
function pointsOf({ name, attributes }: Element): readonly Point[] | undefined {
  const [x, y] = moved(attributes)
  const { d = '' } = attributes
  if (name === 'path' && STRAIGHT.test(d))
    return d
      .slice(1)
      .split('L')
      .map((text): Point => {
        const [px, py] = text.split(',').map(Number)
        return [x + (px as number), y + (py as number)]
      })
  if (name !== 'line') return undefined
  const { x1 = '0', y1 = '0', x2 = '0', y2 = '0' } = attributes
  return [
    [x + Number(x1), y + Number(y1)],
    [x + Number(x2), y + Number(y2)],
  ]
}

const PLACES = /^(transform|x1|y1|x2|y2|d)$/
/** Look of a part: everything but its place. */
const lookOf = ({ name, attributes }: Element): string =>
  `${name} ${JSON.stringify(Object.entries(attributes).filter(([key]) => !PLACES.test(key)))} ${name === 'path' ? attributes.d : ''}`

/** Lines of one look as one path, marks of one shape as one path, and what all parts of a group share at the group. */
function joined(children: readonly (Element | string)[]): (Element | string)[] {
  const runs: Element[][] = []
  for (const child of children) {
    if (typeof child === 'string') continue
    const [last] = runs.at(-1) ?? []
    const joins = child.name === 'line' || (child.name === 'path' && child.attributes.transform !== undefined)
    if (last !== undefined && joins && lookOf(last) === lookOf(child)) runs.at(-1)?.push(child)
    else runs.push([child])
  }
  const parts = runs.map((run): Element => {
    const [first] = run as [Element, ...Element[]]
    const own = Object.fromEntries(Object.entries(first.attributes).filter(([key]) => !PLACES.test(key)))
    const lines = run.flatMap((element) => [pointsOf(element) ?? []]).filter((points) => points.length > 0)
    if (lines.length > 0) return { name: 'path', attributes: { ...own, d: pathData(lines.map((points) => ({ points }))) }, children: [] }
    if (run.length === 1) return withShared(first)
    return {
      name: 'path',
      attributes: { ...own, d: run.map(({ attributes }) => shapeAt(moved(attributes), attributes.d as string)).join('') },
      children: [],
    }
  })
  const texts = parts.filter((part) => part.name === 'text')
  if (texts.length < MANY || texts.length === parts.length) return parts
  return [...parts.filter((part) => part.name !== 'text'), withShared({ name: 'g', attributes: {}, children: texts })]
}

/** So many texts stand in a group of their own, which says for all of them what they have in common. */
const MANY = 3

/** A mark at its place: its own path moved there. */
function shapeAt([x, y]: Point, d: string): string {
  let [px, py] = [0, 0]
  return d.replaceAll(/([MLAZhvZ])([^MLAZhvZ]*)/g, (_, name: string, rest: string) => {
    const numbers = rest
      .split(/[ ,]+/)
      .filter((attribute) => attribute !== '')
      .map(Number)
    if (name === 'Z') return 'z'
    if (name === 'h' || name === 'v') {
      if (name === 'h') px += numbers[0]!
      else py += numbers[0]!
      return `${name}${numbers[0]}`
    }
    const [tx, ty] = numbers.slice(-2) as [number, number]
    const out = name === 'M' ? [x + tx, y + ty] : [tx - px, ty - py]
    ;[px, py] = [tx, ty]
    const text = [...numbers.slice(0, -2), ...out].map((x) => Number(x.toFixed(1)))
    return `${name === 'M' ? 'M' : name.toLowerCase()}${text.join(',')}`
  })
}

/** A group that says for its parts what they have in common. */
function withShared(group: Element): Element {
  const parts = group.children
  if (group.name !== 'g' || parts.length < 2 || parts.some((part) => typeof part === 'string')) return group
  const [first, ...rest] = parts as [Element, ...Element[]]
  const common = SHARED.flatMap((key) => {
    const value = first.attributes[key]
    return value !== undefined && rest.every((part) => (part as Element).attributes[key] === value) ? [[key, value] as const] : []
  })
  for (const part of parts as Element[]) for (const [key] of common) delete part.attributes[key]
  return { ...group, attributes: { ...group.attributes, ...Object.fromEntries(common) } }
}

/**
 * A picture of the chart renderer without what nobody sees or hears: hidden labels, empty groups, roles of parts. Lines and marks of one look are one
 * path, coordinates have one decimal.
 */
export function compactSvg(svg: string): string {
  // Coordinates alone: labels and shares of light keep their digits.
  const short = svg.replaceAll(COORDINATES, (attribute) =>
    attribute.replaceAll(/\d+\.\d{2,}/g, (x) => String(Number(Number(x).toFixed(1)))),
  )
  const root = shown(read(short)) as Element
  return write({ ...root, attributes: { ...root.attributes, 'font-family': 'system-ui, sans-serif', 'font-size': '11' } })
}
