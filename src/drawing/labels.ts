import { dimensionHead } from './arrows.js'
import { textWidth } from './font.js'
import { crosses, type Point } from './geometry.js'
import { DOT, type Ink, type Item, LINE, SMALL, textAt } from './items.js'

/** A label of a view: lines of text in a column beside it, and a leader to what they name. */
export interface Label {
  /** The point that the label names, in units of the page. */
  readonly anchor: Point
  readonly lines: readonly string[]
  readonly ink: Ink
  readonly bold: boolean
  /** End of the leader: a dot inside a surface, an arrow on an edge, or no leader. */
  readonly end: 'dot' | 'arrow' | 'none'
  /** Legend of the number of a numbered label. */
  readonly meaning?: string
}

const GAP = 3
/** Height of the letters above their base line. */
export const ASCENT = 10.5
const CENTRE = 4

/** Width of a column of labels. */
export const columnWidth = (labels: readonly Label[]): number =>
  Math.max(0, ...labels.flatMap(({ lines, bold }) => lines.map((line) => textWidth(line, SMALL, bold))))

const heightOf = ({ lines }: Label) => lines.length * LINE + GAP

/** Height of a column of labels. */
export const columnHeight = (labels: readonly Label[]): number => labels.reduce((sum, label) => sum + heightOf(label), 0)

/**
 * Tops of the labels of one column, in their order: each as near to its anchor as those above and below allow. One pass down, one pass up.
 */
function stacked(labels: readonly Label[], top: number, bottom: number): number[] {
  const tops = labels.map(({ anchor }) => anchor[1] - LINE / 2)
  let min = top
  tops.forEach((y, i) => {
    tops[i] = Math.max(y, min)
    min = tops[i]! + heightOf(labels[i]!)
  })
  let max = bottom
  for (let i = tops.length - 1; i >= 0; i--) {
    tops[i] = Math.min(tops[i]!, max - heightOf(labels[i]!))
    max = tops[i]!
  }
  return tops
}

/** Where a leader leaves its label. */
const leaderOf = ({ anchor }: Label, x: number, top: number): readonly [Point, Point] => [[x, top + ASCENT - CENTRE], anchor]

const MAX_SWAPS = 60

/** Labels in the order in which no two leaders cross, as far as swapping neighbours finds it. */
function ordered(labels: readonly Label[], x: number, top: number, bottom: number): readonly Label[] {
  const order = [...labels].sort((a, b) => a.anchor[1] - b.anchor[1])
  for (let swaps = 0; swaps < MAX_SWAPS; swaps++) {
    const tops = stacked(order, top, bottom)
    const leaders = order.map((label, i) => leaderOf(label, x, tops[i]!))
    let [i, j] = [0, -1]
    for (; i < leaders.length && j < 0; i++) {
      if (order[i]!.end === 'none') continue
      j = leaders.findIndex((other, k) => k > i && order[k]!.end !== 'none' && crosses(leaders[i]!, other))
      if (j >= 0) break
    }
    if (j < 0) return order
    ;[order[i], order[j]] = [order[j]!, order[i]!]
  }
  return order
}

/**
 * The labels of one column with their leaders. `x` is the edge of the column that faces the view. Numbered labels count down the column, on from what the
 * legend has, and add what they stand for to it.
 */
export function placeLabels(
  labels: readonly Label[],
  side: 'left' | 'right',
  { x, top, bottom, legend }: { x: number; top: number; bottom: number; legend: string[] },
): readonly Item[] {
  const edge = side === 'right' ? x - 3 : x + 3
  const order = ordered(labels, edge, top, bottom)
  const tops = stacked(order, top, bottom)
  return order.flatMap((label, i): readonly Item[] => {
    const { ink, bold, end, meaning } = label
    if (meaning !== undefined) legend.push(`${legend.length + 1}:\u00a0${meaning}`)
    const lines = meaning === undefined ? label.lines : [String(legend.length)]
    const texts = lines.map((line, k) =>
      textAt([x, tops[i]! + ASCENT + k * LINE], line, { anchor: side === 'right' ? 'start' : 'end', ink, bold }),
    )
    if (end === 'none') return texts
    const [from, to] = leaderOf(label, edge, tops[i]!)
    const head: Item = end === 'dot' ? { kind: 'circle', line: 'none', centre: to, radius: DOT, fill: 'solid' } : dimensionHead(to, from)
    return [{ kind: 'path', line: 'fine', points: [from, to] }, head, ...texts]
  })
}
