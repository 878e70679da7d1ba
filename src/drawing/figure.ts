import type { Drawing, Group } from './drawing.js'
import { wrapped } from './font.js'
import { type Ink, type Item, LARGE, LINE, SMALL, textAt } from './items.js'
import { scaleText } from './numbers.js'
import type { View } from './view.js'
import { MARGIN, PAGE_WIDTH, placeView, scaleBar, scaleFor } from './view-layout.js'

/** Something that is drawn below a height of the page. */
export interface Block {
  readonly items: readonly Item[]
  readonly height: number
}

/** A row of the table of a drawing: name, value, unit, and where the value comes from. */
export type Row = readonly [name: string, value: string, unit: string, source: string]

const INNER = PAGE_WIDTH - 2 * MARGIN
const SPACE = 8

/** The words of a drawing. */
export interface FigureWords {
  readonly id: string
  readonly title: string
  readonly answer: string
  /** Whether the answer is that something fails. */
  readonly fails?: boolean
}

/** A drawing in the making: views, plots and texts below each other, once, at the width of a phone. */
export class Figure {
  readonly #groups: Group[] = []
  readonly #rows: Row[] = []
  readonly #sentences: string[] = []
  #y = 6

  constructor(readonly words: FigureWords) {
    const { answer, fails = false } = words
    const lines = wrapped(answer, INNER, LARGE, true)
    this.#put('answer', {
      items: lines.map((line, i) => textAt([MARGIN, this.#y + 13 + 17 * i], line, { size: LARGE, bold: true, ink: fails ? 'bad' : 'ink' })),
      height: 17 * lines.length + 1,
    })
  }

  /** Sentences of the description. */
  say(...sentences: readonly string[]): this {
    this.#sentences.push(...sentences)
    return this
  }

  /** Rows of the table. */
  rows(...rows: readonly Row[]): this {
    this.#rows.push(...rows)
    return this
  }

  /** A paragraph of small text. */
  text(text: string, ink: Ink = 'ink'): this {
    const lines = wrapped(text, INNER, SMALL)
    return this.#put('text', {
      items: lines.map((line, i) => textAt([MARGIN, this.#y + 11 + LINE * i], line, { ink })),
      height: LINE * lines.length + 4,
    })
  }

  /** Sentences of the description and results as lines of small text, the last words of a drawing: a page that has them beside it leaves them out. */
  results(lines: readonly string[]): this {
    const items: Item[] = []
    let height = 0
    for (const line of lines) {
      for (const text of wrapped(line, INNER, SMALL)) {
        items.push(textAt([MARGIN, this.#y + height + 11], text))
        height += LINE
      }
      height += 4
    }
    return items.length === 0 ? this : this.#put('results', { items, height })
  }

  /** A view with its title and scale. A line divides it from what is above. */
  view(view: View): this {
    this.#rule()
    const scale = scaleFor(view)
    this.text(`${view.title}, ${scaleText(scale)}`)
    const { items, height, place, legend } = placeView(view, this.#y + SPACE, scale)
    this.#groups.push({
      name: view.title,
      items,
      place,
      ...(view.options.template === true ? { template: true } : {}),
    })
    this.#y += height + 2 * SPACE + 8
    this.#put('scale', { items: scaleBar(this.#y, place.scale, view.force?.perUnit), height: 16 })
    return legend.length === 0 ? this : this.text(`${legend.join('; ')}.`)
  }

  /** Something without a scale, such as a plot, with its title. */
  block(title: string, make: (y: number) => Block): this {
    this.#rule()
    this.text(title)
    return this.#put(title, make(this.#y))
  }

  /** The finished drawing. */
  done(): Drawing {
    const { id, title, answer } = this.words
    const end = /[.!?]$/.test(answer) ? '' : '.'
    return {
      id,
      title,
      answer,
      description: [`${answer}${end}`, ...this.#sentences].join(' '),
      groups: this.#groups,
      height: Math.ceil(this.#y + 2),
      table: { head: ['name', 'value', 'unit', 'source'], rows: this.#rows },
    }
  }

  #put(name: string, { items, height }: Block): this {
    this.#groups.push({ name, items })
    this.#y += height
    return this
  }

  #rule(): void {
    if (this.#groups.length < 2) return
    this.#y += 5
    this.#put('rule', {
      items: [
        {
          kind: 'path',
          line: 'fine',
          points: [
            [MARGIN, this.#y],
            [PAGE_WIDTH - MARGIN, this.#y],
          ],
        },
      ],
      height: 5,
    })
  }
}
