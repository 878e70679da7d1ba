import type { Drawing } from '../../src/drawing/index.js'

/** What a view draws, in millimetres with y up, to thousandths: `[left, bottom, right, top]` of lines, `[x, y, radius]` of circles. */
export interface Shapes {
  /** Outlines and lines by what they mean, in the order drawn; heads of arrows and leaders are left out. */
  readonly of: (line: string) => readonly (readonly [left: number, bottom: number, right: number, top: number])[]
  readonly circles: (line?: string) => readonly (readonly [x: number, y: number, radius: number])[]
  /** Where labels end in dots: inside what they name, from the top down. */
  readonly dots: readonly (readonly [x: number, y: number])[]
  /** Ends of lines of two points, first to last. */
  readonly ends: (line: string) => readonly (readonly [x0: number, y0: number, x1: number, y1: number])[]
  readonly texts: readonly string[]
}

const round = (x: number) => Math.round(1000 * x) / 1000 + 0

/** The shapes of one view of a drawing. */
export function shapesOf({ groups }: Drawing, title: RegExp): Shapes {
  const group = groups.find(({ name, place }) => title.test(name) && place !== undefined)
  if (group?.place === undefined) throw new Error(`no view ${title}`)
  const { items, place } = group
  const [ox, oy] = place.to([0, 0])
  const mm = ([x, y]: readonly [number, number]) => [(x - ox) / place.scale, (oy - y) / place.scale] as const
  const paths = (line: string) => items.flatMap((item) => (item.kind === 'path' && item.line === line ? [item.points.map(mm)] : []))
  return {
    of: (line) =>
      paths(line).map((points) => {
        const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)]
        return [round(Math.min(...xs)), round(Math.min(...ys)), round(Math.max(...xs)), round(Math.max(...ys))]
      }),
    ends: (line) =>
      paths(line).flatMap((points) =>
        points.length === 2 ? [points.flat().map(round) as unknown as [number, number, number, number]] : [],
      ),
    circles: (line) =>
      items.flatMap((item) => {
        if (item.kind !== 'circle' || item.line === 'none' || (line !== undefined && item.line !== line)) return []
        const [x, y] = mm(item.centre)
        return [[round(x), round(y), round(item.radius / place.scale)] as const]
      }),
    dots: items.flatMap((item) => (item.kind === 'circle' && item.line === 'none' ? [mm(item.centre)] : [])).sort((a, b) => b[1] - a[1]),
    texts: items.flatMap((item) => (item.kind === 'text' ? [item.text] : [])),
  }
}
