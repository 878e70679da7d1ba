import { describe, expect, test } from 'vitest'
import { dimensionHead } from '../../src/drawing/arrows.js'
import { bandsOf, type Dimension, dimensionItems } from '../../src/drawing/dimensions.js'
import {
  Figure,
  forceArrow,
  hatchLines,
  type Item,
  motionHead,
  type Point,
  rectangle,
  roundBelow,
  type TextItem,
  textAt,
  textWidth,
  ticksOf,
  View,
} from '../../src/drawing/index.js'
import { type Label, placeLabels } from '../../src/drawing/labels.js'
import { scaleText } from '../../src/drawing/numbers.js'
import { placeView, scaleBar, scaleFor } from '../../src/drawing/view-layout.js'

const near = (points: readonly Point[]) => points.map(([x, y]) => [expect.closeTo(x, 9), expect.closeTo(y, 9)])
const texts = (items: readonly Item[]) => items.filter((item): item is TextItem => item.kind === 'text')
const pieces = (items: readonly Item[]) => items.flatMap((item) => (item.kind === 'lines' ? item.pieces : []))
const paths = (items: readonly Item[]) => items.flatMap((item) => (item.kind === 'path' ? [item.points] : []))
const heads = (items: readonly Item[]) => items.flatMap((item) => (item.kind === 'path' && item.fill === 'solid' ? [item.points[0]] : []))

describe('a dimension', () => {
  const across: Dimension = { from: [100, 50], to: [200, 60], side: 'below', text: '25' }

  test('its line is 17 units beyond the part, with heads on both ends, its number on the middle, and extension lines from the part', () => {
    const items = dimensionItems(across, 0, 70)
    expect(pieces(items)).toEqual([
      near([
        [100, 52],
        [100, 91],
      ]),
      near([
        [200, 62],
        [200, 91],
      ]),
      near([
        [100, 87],
        [200, 87],
      ]),
    ])
    expect(heads(items)).toEqual([
      [100, 87],
      [200, 87],
    ])
    // Both heads are inside.
    expect(paths(items).map((head) => head.slice(1).map(([x]) => x))).toEqual([
      [expect.closeTo(107, 9), expect.closeTo(107, 9)],
      [expect.closeTo(193, 9), expect.closeTo(193, 9)],
    ])
    expect(texts(items)[0]).toMatchObject({ at: [150, 84], anchor: 'middle', turned: false })
  })

  test.each([
    ['below', 0, 87, 1],
    ['below', 2, 121, 1],
    ['above', 0, 13, -1],
    ['above', 1, -4, -1],
  ] as const)('%s, line %i: each next line is 17 farther out', (side, band, at, outward) => {
    const edge = side === 'below' ? 70 : 30
    const items = dimensionItems({ ...across, side }, band, edge)
    expect(pieces(items)[2]).toEqual(
      near([
        [100, at],
        [200, at],
      ]),
    )
    expect(pieces(items)[0]?.[1]).toEqual([100, at + 4 * outward])
    expect(pieces(items)[0]?.[0]).toEqual([100, 50 + 2 * outward])
  })

  test('at the left and right it is upright, its number turned and left of it', () => {
    for (const [side, edge, at] of [
      ['left', 90, 73],
      ['right', 210, 227],
    ] as const) {
      const items = dimensionItems({ from: [100, 150], to: [100, 50], side, text: '25' }, 0, edge)
      expect(pieces(items)[2]).toEqual(
        near([
          [at, 50],
          [at, 150],
        ]),
      )
      expect(texts(items)[0]).toMatchObject({ at: [at - 3, 100], turned: true, anchor: 'middle' })
      expect(heads(items)).toEqual([
        [at, 50],
        [at, 150],
      ])
    }
  })

  test('a narrow one has its heads and its number outside: beyond its far end, or upward', () => {
    const width = textWidth('25', 11)
    const items = dimensionItems({ from: [100, 50], to: [110, 50], side: 'below', text: '25' }, 0, 70)
    expect(pieces(items)[2]).toEqual(
      near([
        [86, 87],
        [110 + 14 + 3 + width, 87],
      ]),
    )
    expect(paths(items).map((head) => head[1]?.[0])).toEqual([expect.closeTo(93, 9), expect.closeTo(117, 9)])
    expect(texts(items)[0]?.at).toEqual([expect.closeTo(110 + 14 + 3 + width / 2, 9), 84])
    const upright = dimensionItems({ from: [100, 50], to: [100, 60], side: 'right', text: '25' }, 0, 100)
    expect(pieces(upright)[2]).toEqual(
      near([
        [117, 50 - 14 - 3 - width],
        [117, 74],
      ]),
    )
    expect(texts(upright)[0]?.at).toEqual([114, expect.closeTo(50 - 14 - 3 - width / 2, 9)])
  })

  test('one whose number is wider than itself keeps its heads inside and has the number outside', () => {
    const items = dimensionItems({ from: [100, 50], to: [130, 50], side: 'above', text: '12345' }, 0, 40)
    expect(heads(items)).toEqual([
      [100, 23],
      [130, 23],
    ])
    expect(paths(items)[0]?.[1]?.[0]).toBeCloseTo(107, 9)
    expect(texts(items)[0]?.at[0]).toBeCloseTo(130 + 3 + textWidth('12345', 11) / 2, 9)
  })

  test('the smallest is nearest the part; one lies farther out only where it would lie on another', () => {
    const from = (low: number, high: number): Dimension => ({ from: [low, 0], to: [high, 0], side: 'below', text: '9' })
    // A chain of two shares a line, and what spans both is outside.
    expect(bandsOf([from(0, 300), from(0, 100), from(100, 300)])).toEqual([1, 0, 0])
    expect(bandsOf([from(0, 100), from(110, 300)])).toEqual([0, 0])
    expect(bandsOf([from(0, 300), from(50, 100)])).toEqual([1, 0])
    // A narrow one has its number at its right, on the way of the next.
    expect(bandsOf([from(0, 10), from(12, 100)])).toEqual([0, 1])
    expect(bandsOf([from(0, 10), from(60, 160)])).toEqual([0, 0])
    // Heads of 14, and a number of 7 with 3 before it and 2 behind it: up to 36.
    expect(bandsOf([from(0, 10), from(35, 160)])).toEqual([0, 1])
    expect(bandsOf([from(0, 10), from(39, 160)])).toEqual([0, 0])
    expect(bandsOf([from(140, 150), from(0, 125)])).toEqual([0, 0])
  })
})

describe('labels of a column', () => {
  const label = (anchor: Point, more: Partial<Label> = {}): Label => ({
    anchor,
    lines: ['pin'],
    ink: 'ink',
    bold: false,
    end: 'dot',
    ...more,
  })
  const place = (labels: readonly Label[], side: 'left' | 'right' = 'right', legend: string[] = []) =>
    placeLabels(labels, side, { x: 200, top: 0, bottom: 300, legend })

  test('a label is level with what it names, its leader from its middle to the anchor', () => {
    const items = place([label([100, 80])])
    expect(texts(items)[0]).toMatchObject({ at: [200, 83.5], anchor: 'start' })
    expect(paths(items)[0]).toEqual([
      [197, 79.5],
      [100, 80],
    ])
    expect(items[1]).toMatchObject({ kind: 'circle', centre: [100, 80], fill: 'solid' })
    const left = place([label([100, 80], { end: 'arrow' })], 'left')
    expect(texts(left)[0]).toMatchObject({ anchor: 'end' })
    expect(paths(left)[0]?.[0]).toEqual([203, 79.5])
    expect(heads(left)).toEqual([[100, 80]])
  })

  test('labels keep 17 from line to line where their anchors are nearer, and stay inside the column', () => {
    const heights = (ys: number[]) => texts(place(ys.map((y) => label([100, y])))).map(({ at: [, y] }) => y)
    expect(heights([80, 82, 84])).toEqual([83.5, 100.5, 117.5])
    expect(heights([84, 80, 82])).toEqual([83.5, 100.5, 117.5])
    expect(heights([-40])).toEqual([10.5])
    expect(heights([299, 298])).toEqual([300 - 34 + 10.5, 300 - 17 + 10.5])
    const two = texts(place([label([100, 80], { lines: ['two', 'lines'] }), label([100, 81])]))
    expect(two.map(({ at: [, y] }) => y)).toEqual([83.5, 97.5, 83.5 + 31])
  })

  test('leaders do not cross: of two anchors on one height the farther one has the outer label', () => {
    const crossing = (labels: readonly Label[]) => {
      const [a, b] = place(labels).flatMap((item) => (item.kind === 'path' && item.line === 'fine' ? [item.points] : [])) as [
        Point[],
        Point[],
      ]
      const side = (p: Point, q: Point, r: Point) => Math.sign((q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0]))
      return side(a[0]!, a[1]!, b[0]!) !== side(a[0]!, a[1]!, b[1]!) && side(b[0]!, b[1]!, a[0]!) !== side(b[0]!, b[1]!, a[1]!)
    }
    for (let x = 0; x < 190; x += 15)
      for (const y of [60, 72, 80, 88, 296, 298, 299])
        expect(crossing([label([100, y > 200 ? 298.5 : 80]), label([x, y])]), `${x}, ${y}`).toBe(false)
  })

  test('a numbered label shows its number and adds what it stands for to the legend, counting down the column', () => {
    const legend = ['1:\u00a0spring']
    const items = place([label([100, 90], { meaning: 'pin' }), label([100, 20], { meaning: 'bore' })], 'right', legend)
    expect(texts(items).map(({ text }) => text)).toEqual(['2', '3'])
    expect(legend).toEqual(['1:\u00a0spring', '2:\u00a0bore', '3:\u00a0pin'])
  })

  test('a label without a leader is its text alone', () => {
    expect(place([label([100, 80], { end: 'none' })])).toHaveLength(1)
  })
})

describe('a view on the page', () => {
  const box = (width: number, height: number) => new View('box').area(rectangle(0, 0, width, height))

  test('the scale is the largest standard one at which width and height fit: 344 units across, 320 high, 4 in a millimetre of paper', () => {
    expect([86, 86.1].map((width) => scaleFor(box(width, 1)))).toEqual([1, 0.5])
    expect([80, 80.1].map((height) => scaleFor(box(1, height)))).toEqual([1, 0.5])
    expect([scaleFor(box(1.5, 1)), scaleFor(box(5000, 1)), scaleFor(box(1e6, 1))]).toEqual([50, 0.01, 0.01])
    expect(scaleFor(new View('low', { height: 100 }).area(rectangle(0, 0, 1, 26)))).toBe(0.5)
    expect(scaleFor(new View('set', { scale: 0.2 }).area(rectangle(0, 0, 1, 1)))).toBe(0.2)
    expect([2, 1, 0.5, 0.02].map(scaleText)).toEqual(['2 : 1', '1 : 1', '1 : 2', '1 : 50'])
  })

  test('labels and dimensions take their room from the width', () => {
    const room = (view: View) => placeView(view, 0, 1).place.to([0, 0])[0]
    // Without anything beside it a view of 80 mm stands in the middle.
    expect(room(box(80, 10))).toBe(20)
    const label = 16 + textWidth('pin', 11)
    expect(room(box(40, 10).label([40, 5], 'pin'))).toBeCloseTo((360 - 160 - label) / 2, 9)
    expect(room(box(40, 10).label([0, 5], 'pin', { side: 'left' }))).toBeCloseTo((360 - 160 + label) / 2, 9)
    // An upright dimension at the left takes its band and its letters.
    expect(room(box(40, 40).dimension([0, 0], [0, 40], 'left'))).toBeCloseTo((360 - 160 + 17 + 13) / 2, 9)
    expect(room(box(40, 40).dimension([40, 0], [40, 40], 'right'))).toBeCloseTo((360 - 160 - 17) / 2, 9)
    expect(scaleFor(box(86, 40).dimension([0, 0], [0, 40], 'left'))).toBe(0.5)
  })

  test('millimetres up are units up, and the height holds the part with what is above and below it', () => {
    const { place, height } = placeView(box(20, 10).dimension([0, 0], [20, 0], 'below').dimension([0, 10], [20, 10], 'above'), 100, 2)
    expect(height).toBe(80 + 17 + 4 + 17 + 5)
    const [x, y] = place.to([0, 10])
    expect(y).toBe(100 + 17 + 4)
    expect(place.to([20, 0])).toEqual([x + 160, y + 80])
    const low = placeView(box(20, 1).label([0, 0], ['one', 'two', 'three', 'four']), 100, 1)
    expect(low.height).toBe(4 * 14 + 3)
    expect(low.place.to([0, 0])[1]).toBeCloseTo(100 + (59 - 4) / 2 + 4, 9)
  })

  test('a dimension prints the distance along its own axis, with what stands before it', () => {
    const view = new View('x')
      .dimension([1, 2], [-3, 12.5], 'below')
      .dimension([1, 2], [-3, 12.5], 'right')
      .dimension([0, 0], [8, 0], 'above', undefined, 'Ø ')
    expect(view.dimension([0, 0], [8, 0], 'above', 'as ordered').dimensions.map(({ text }) => text)).toEqual([
      '4',
      '10.5',
      'Ø 8',
      'as ordered',
    ])
  })

  test('an area is filled as a whole and hatched outside its holes; its holes are drawn on it', () => {
    const place = { scale: 4, to: ([x, y]: Point): Point => [4 * x, 100 - 4 * y] }
    const hole = rectangle(4, 4, 6, 6)
    const drawn = (options: object) => new View('x').area(rectangle(0, 0, 10, 10), options).items(place)
    expect(drawn({})).toEqual([{ kind: 'path', line: 'thick', points: rectangle(0, 100, 40, 60), closed: true }])
    expect(drawn({ fill: 'tone', line: 'thin' })).toEqual([
      { kind: 'path', line: 'thin', points: rectangle(0, 100, 40, 60), closed: true, fill: 'tone' },
    ])
    const [fill, hatch, outer, inner] = drawn({ fill: 'tone', hatch: { angle: 0, spacing: 4 }, holes: [hole] })
    expect(fill).toEqual({ kind: 'path', line: 'none', points: rectangle(0, 100, 40, 60), closed: true, fill: 'tone' })
    // Ten lines of 40 units, one for each 4; the hole takes 8 of two of them.
    const lengths = pieces([hatch as Item]).map(([a, b]) => Math.abs(a[0] - b[0]))
    expect(lengths.reduce((sum, one) => sum + one, 0)).toBeCloseTo(400 - 16, 9)
    expect([outer, inner]).toEqual([
      { kind: 'path', line: 'thick', points: rectangle(0, 100, 40, 60), closed: true },
      { kind: 'path', line: 'thick', points: rectangle(16, 84, 24, 76), closed: true },
    ])
    const turned = new View('x').area(rectangle(0, 0, 10, 10), { hatch: { angle: 90, spacing: 8 } }).items(place)
    expect(pieces(turned).every(([a, b]) => Math.abs(a[0] - b[0]) < 1e-9)).toBe(true)
  })

  test('circles, centre lines, arrows and marks widen the view by what they take', () => {
    const boxAt2 = (view: View) => view.boxAt(2)
    expect(boxAt2(new View('x').circle({ centre: [5, 1], radius: 3 }))).toEqual({ left: 4, right: 16, top: -8, bottom: 4 })
    expect(boxAt2(new View('x').centre({ centre: [0, 0], radius: 10 }))).toEqual({ left: -23, right: 23, top: -23, bottom: 23 })
    expect(boxAt2(new View('x').centre({ centre: [0, 0], radius: 10 }, 2)).right).toBe(40)
    // A force of 60 N downward at 2 N a unit: 30 units above its tip, whatever the scale.
    const pushed = boxAt2(new View('x').arrow([5, 0], -Math.PI / 2, 60, 2))
    expect([pushed.top, pushed.bottom, pushed.left]).toEqual([expect.closeTo(-30, 9), expect.closeTo(0, 9), expect.closeTo(10, 9)])
    expect(boxAt2(new View('x').mark(() => [], [5, 1], 6))).toEqual({ left: 4, right: 16, top: -8, bottom: 4 })
    const arc = boxAt2(new View('x').arc({ centre: [0, 0], radius: 10 }, 0, Math.PI / 2))
    expect([arc.left, arc.right, arc.top, arc.bottom]).toEqual([0, 20, -20, 0].map((x) => expect.closeTo(x, 9)))
  })

  test('labels are broken at their width; a numbered view prints numbers and keeps the words', () => {
    const words = 'a label that is much longer than the column beside the view is wide'
    const view = new View('x').label([0, 0], words).label([0, 0], ['one', 'two'])
    for (const line of view.labels[0]!.lines) expect(textWidth(line, 11)).toBeLessThanOrEqual(118)
    expect(view.labels[0]!.lines.join(' ')).toBe(words)
    expect(view.labels[1]).toMatchObject({ lines: ['one', 'two'], side: 'right', ink: 'ink', end: 'arrow', bold: false })
    const numbered = new View('x', { numbered: true }).label([0, 0], words).label([0, 0], ['one', 'two'], { end: 'dot' })
    expect(numbered.labels).toMatchObject([
      { lines: ['1'], meaning: words, bold: true },
      { lines: ['2'], meaning: 'one, two', end: 'dot' },
    ])
  })

  test('the bar of a scale is a round number of millimetres below 90 units, half of it filled; that of forces below 70', () => {
    const items = scaleBar(50, 8, 3)
    expect(paths(items).slice(0, 2)).toEqual([rectangle(8, 48, 48, 52), rectangle(48, 48, 88, 52)])
    expect(texts(items).map(({ text, at: [x] }) => [text, x])).toEqual([
      ['10 mm', 93],
      ['mm', 352],
      ['200 N', expect.closeTo(93 + textWidth('10 mm', 11) + 14 + 200 / 3 + 5, 9)],
    ])
    const [start, end] = paths(items)[2] as [Point, Point]
    expect(end[0] - start[0]).toBeCloseTo(200 / 3, 9)
    expect(scaleBar(50, 8)).toHaveLength(4)
  })
})

describe('a figure', () => {
  test('its parts stand below each other: answer, views with title and scale, bar of the scale, legend', () => {
    const view = new View('Side', { numbered: true }).area(rectangle(0, 0, 20, 10)).label([20, 5], 'pin')
    const { groups, height, description } = new Figure({ id: 'x', title: 'T', answer: 'It holds' })
      .say('More.')
      .view(view)
      .text('End')
      .done()
    expect(groups.map(({ name }) => name)).toEqual(['answer', 'text', 'Side', 'scale', 'text', 'text'])
    expect(groups.flatMap(({ items }) => texts(items)).map(({ text }) => text)).toEqual(
      expect.arrayContaining(['It holds', 'Side, 2 : 1', '1', '10 mm', '1: pin.', 'End']),
    )
    const heights = groups.filter(({ name }) => name === 'text').flatMap(({ items }) => texts(items).map(({ at: [, y] }) => y))
    expect(heights).toEqual([...heights].sort((a, b) => a - b))
    // Answer 6 + 18, title 18, space 8, view 80, space 24, scale 16, legend and text 18 each, 2.
    expect(height).toBe(24 + 18 + 8 + 80 + 16 + 16 + 18 + 18 + 2)
    expect(description).toBe('It holds. More.')
    expect(new Figure({ id: 'x', title: 'T', answer: 'Does it?' }).done().description).toBe('Does it?')
  })

  test('an answer that something fails has the colour of what fails; a line divides the second view from the first', () => {
    const first = (fails?: boolean) =>
      texts(new Figure({ id: 'x', title: 'T', answer: 'It fails', ...(fails && { fails }) }).done().groups[0]!.items)[0]
    expect([first()?.ink, first(true)?.ink]).toEqual(['ink', 'bad'])
    const view = () => new View('Side').area(rectangle(0, 0, 20, 10))
    const names = new Figure({ id: 'x', title: 'T', answer: 'A' })
      .view(view())
      .view(view())
      .block('Plot', () => ({ items: [], height: 40 }))
      .done()
      .groups.map(({ name }) => name)
    expect(names).toEqual(['answer', 'text', 'Side', 'scale', 'rule', 'text', 'Side', 'scale', 'rule', 'text', 'Plot'])
  })

  test('results are lines below each other; without results there is no part for them', () => {
    const { groups } = new Figure({ id: 'x', title: 'T', answer: 'A' }).results(['one', 'two']).results([]).done()
    expect(groups.map(({ name }) => name)).toEqual(['answer', 'results'])
    expect(texts(groups[1]!.items).map(({ at: [, y] }) => y)).toEqual([24 + 11, 24 + 18 + 11])
  })
})

describe('heads and numbers', () => {
  test('a head points at its tip, as long and as wide as its angle asks', () => {
    const wing = 7 * Math.tan((10 * Math.PI) / 180)
    expect(dimensionHead([10, 0], [0, 0])).toMatchObject({
      points: near([
        [10, 0],
        [3, wing],
        [3, -wing],
      ]),
      closed: true,
      fill: 'solid',
    })
    const open = 9 * Math.tan((17 * Math.PI) / 180)
    expect(motionHead([0, 0], [0, 30])).toMatchObject({
      line: 'move',
      points: near(
        [
          [open, 9],
          [0, 0],
          [-open, 9],
        ].map((p) => p as [number, number]),
      ),
    })
    const [line, head] = forceArrow([30, 0], [0, 0], 'bad')
    // The line ends 6 before the tip, inside its head.
    expect(line).toEqual({
      kind: 'path',
      line: 'bad',
      points: [
        [0, 0],
        [24, 0],
      ],
    })
    expect(head).toMatchObject({
      fill: 'bad',
      points: near([
        [30, 0],
        [21, open],
        [21, -open],
      ]),
    })
    expect(forceArrow([3, 0], [0, 0])[0]).toMatchObject({
      line: 'force',
      points: [
        [0, 0],
        [0, 0],
      ],
    })
    expect(forceArrow([3, 0], [3, 0])[0]).toMatchObject({
      points: [
        [3, 0],
        [3, 0],
      ],
    })
  })

  test('round numbers are 1, 2 or 5 times a power of ten, at or below the size; ticks are their multiples', () => {
    expect([1, 1.99, 2, 4.9, 5, 9.9, 10, 1000, 0.3, 0.05].map(roundBelow)).toEqual([1, 1, 2, 2, 5, 5, 10, 1000, 0.2, 0.05])
    expect(ticksOf(0, 4, 3)).toEqual([0, 2, 4])
    expect(ticksOf(-0.3, 0.3, 4)).toEqual([-0.2, 0, 0.2])
    expect(ticksOf(3, 3, 4)).toEqual([3])
    expect(ticksOf(0, 100, 5)).toEqual([0, 50, 100])
    expect(ticksOf(0, 100, 6)).toEqual([0, 20, 40, 60, 80, 100])
  })

  test('a hatch that meets a corner alone draws nothing there', () => {
    const lines = hatchLines(
      [
        [
          [0, 0.5],
          [4, 2.5],
          [-4, 2.5],
        ],
      ],
      0,
      1,
    )
    expect(lines.map(([a]) => a[1])).toEqual([1.5])
  })

  test('neighbouring lines of a hatch go to and fro', () => {
    const lines = hatchLines([rectangle(0, 0, 10, 3)], 0, 1)
    expect(lines).toEqual([
      near([
        [0, 0.5],
        [10, 0.5],
      ]),
      near([
        [10, 1.5],
        [0, 1.5],
      ]),
      near([
        [0, 2.5],
        [10, 2.5],
      ]),
    ])
    expect(hatchLines([rectangle(0, 0, 10, 6)], 0, 2).map(([[, y]]) => y)).toEqual([1, 3, 5])
    expect(textAt([1, 2], 'x')).toEqual({
      kind: 'text',
      at: [1, 2],
      text: 'x',
      anchor: 'start',
      size: 11,
      bold: false,
      ink: 'ink',
      turned: false,
    })
  })
})
