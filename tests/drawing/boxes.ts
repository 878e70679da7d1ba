import { textWidth } from '../../src/drawing/index.js'

/** A text of a picture with the box that it takes in units of the page, in a wide font. */
export interface TextBox {
  readonly text: string
  readonly size: number
  readonly left: number
  readonly right: number
  readonly top: number
  readonly bottom: number
}

const plainText = (xml: string) => xml.replaceAll('&lt;', '<').replaceAll('&gt;', '>').replaceAll('&quot;', '"').replaceAll('&amp;', '&')
const attributesOf = (text: string): Readonly<Record<string, string>> =>
  Object.fromEntries([...text.matchAll(/([\w-]+)="([^"]*)"/g)].map(([, name, value]) => [name, value]))

/** Boxes of all texts of a picture, read from its SVG. */
export function textBoxes(svg: string): readonly TextBox[] {
  return [...svg.matchAll(/<text ([^>]*)>([^<]*)<\/text>/g)].map(([, attributes, inner]) => {
    const { x: left = '0', y: base = '0', transform, class: classes = '', 'font-size': height = '11' } = attributesOf(attributes as string)
    const text = plainText(inner as string)
    const anchor = /\b(?:middle|end)\b/.exec(classes)?.[0] ?? 'start'
    const size = Number(height)
    const width = textWidth(text, size, classes.includes('strong'))
    const moved = transform === undefined ? null : /translate\(([-\d.]+),([-\d.]+)\)/.exec(transform)
    const [x, y] = moved === null ? [Number(left), Number(base)] : [Number(moved[1]), Number(moved[2])]
    const start = { start: 0, middle: -width / 2, end: -width }[anchor] as number
    const [up, down] = [0.8 * size, 0.22 * size]
    return moved === null
      ? { text, size, left: x + start, right: x + start + width, top: y - up, bottom: y + down }
      : { text, size, left: x - up, right: x + down, top: y - start - width, bottom: y - start }
  })
}

/** Pairs of texts that lie on each other. */
export function overlaps(boxes: readonly TextBox[]): readonly string[] {
  return boxes.flatMap((a, i) =>
    boxes
      .slice(i + 1)
      .filter((b) => a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom)
      .map((b) => `"${a.text}" on "${b.text}"`),
  )
}

/** Texts that leave the page. */
export function outside(boxes: readonly TextBox[], width: number, height: number): readonly string[] {
  return boxes
    .filter(({ left, right, top, bottom }) => left < -0.01 || right > width + 0.01 || top < -0.01 || bottom > height + 0.01)
    .map(({ text, left, right }) => `"${text}" from ${left.toFixed(1)} to ${right.toFixed(1)}`)
}
