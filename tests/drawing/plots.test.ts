import { describe, expect, test } from 'vitest'
import { barBlock, type Item, type Plot, type Point, plotBlock, type TextItem, textWidth } from '../../src/drawing/index.js'

// The page is 360 units wide, with borders of 8; letters are 11 high, and a figure of a number takes 7.04 of them across.
const FIGURE = 7.04
const texts = (items: readonly Item[]) => items.filter((item): item is TextItem => item.kind === 'text')
const said = (items: readonly Item[], text: string) => texts(items).find((one) => one.text === text)
const lines = (items: readonly Item[], line: string) =>
  items.flatMap((item) => (item.kind === 'path' && item.line === line && item.closed !== true ? [item.points] : []))
const pieces = (items: readonly Item[], line: string) =>
  items.flatMap((item) => (item.kind === 'lines' && item.line === line ? item.pieces : []))
const near = (points: readonly Point[]) => points.map(([x, y]) => [expect.closeTo(x, 9), expect.closeTo(y, 9)])

describe('a plot', () => {
  const axes: Pick<Plot, 'x' | 'y' | 'height'> = {
    x: { title: 'turns', from: 0, to: 10 },
    y: { title: 'tension [N]', from: 0, to: 4 },
    height: 100,
  }
  const zigzag: Point[] = [
    [0, 0],
    [5, 2],
    [10, 4],
    [2.5, 1],
  ]
  // Left of the axis: the border, 6, and one figure. The plot begins 18 below its top.
  const [left, right, base] = [8 + 6 + FIGURE, 340, 50 + 18 + 100]
  const across = (share: number) => left + share * (right - left)

  test('curves pass through their points in their order, to the scale of both axes', () => {
    const { items, height } = plotBlock({ ...axes, curves: [{ points: zigzag }] }, 50)
    expect(height).toBe(18 + 100 + 34)
    expect(lines(items, 'thick')).toEqual([
      near([
        [left, base],
        [across(0.5), base - 50],
        [right, base - 100],
        [across(0.25), base - 25],
      ]),
    ])
    expect(lines(items, 'thin')).toEqual([
      near([
        [left, base - 100],
        [left, base],
        [right, base],
      ]),
    ])
  })

  test('each number of an axis is beside its tick, and each tick at its number', () => {
    const { items } = plotBlock({ ...axes, curves: [{ points: zigzag }] }, 50)
    const ticks = pieces(items, 'fine')
    expect(ticks.slice(0, 3)).toEqual(
      [0, 50, 100].map((up) =>
        near([
          [left - 4, base - up],
          [left, base - up],
        ]),
      ),
    )
    expect(ticks.slice(3)).toEqual(
      [0, 0.2, 0.4, 0.6, 0.8, 1].map((x) =>
        near([
          [across(x), base],
          [across(x), base + 4],
        ]),
      ),
    )
    const numbers = texts(items).filter(({ text }) => /^\d+$/.test(text))
    expect(numbers.filter(({ anchor }) => anchor === 'end').map(({ text, at }) => [text, ...at])).toEqual([
      ['0', expect.closeTo(left - 6, 9), base + 4],
      ['2', expect.closeTo(left - 6, 9), base - 46],
      ['4', expect.closeTo(left - 6, 9), base - 96],
    ])
    expect(numbers.filter(({ anchor }) => anchor === 'middle').map(({ text, at }) => [text, at[0]])).toEqual(
      [0, 2, 4, 6, 8, 10].map((x) => [String(x), expect.closeTo(across(x / 10), 9)]),
    )
    expect(said(items, 'tension [N]')).toMatchObject({ at: [8, 60], anchor: 'start' })
    expect(said(items, 'turns')).toMatchObject({ at: [340, base + 30], anchor: 'end' })
  })

  test('an axis without ends goes from the least to the greatest value; one value alone is in its middle', () => {
    const { items } = plotBlock(
      {
        x: { title: 'x' },
        y: { title: 'y' },
        curves: [
          {
            points: [
              [3, 7],
              [5, 7],
            ],
          },
        ],
        height: 100,
      },
      0,
    )
    const [[first, last]] = lines(items, 'thick') as unknown as [[Point, Point]]
    expect([first[1], last[1]]).toEqual([18 + 50, 18 + 50])
    expect(last[0]).toBe(340)
    expect(said(items, '7')?.at[1]).toBe(18 + 50 + 4)
  })

  test('a label stands right of the plot, its leader on the place that it names, else on the last point', () => {
    const label = 'set'
    const end = 352 - (textWidth(label, 11) + 14)
    const at = (labelAt?: Point) => {
      const { items } = plotBlock(
        { ...axes, curves: [{ points: zigzag.slice(0, 3), label, ink: 'force', ...(labelAt === undefined ? {} : { labelAt }) }] },
        50,
      )
      expect(said(items, label)).toMatchObject({ anchor: 'start', ink: 'force', at: [expect.closeTo(end + 14, 9), expect.anything()] })
      const [dot] = items.filter((item) => item.kind === 'circle')
      return dot?.centre
    }
    expect(at()).toEqual([expect.closeTo(end, 9), base - 100])
    expect(at([5, 2])).toEqual([expect.closeTo((left + end) / 2, 9), base - 50])
  })

  test('a plot grows with its column of labels, and long labels leave room for fewer numbers', () => {
    const label = Array.from({ length: 10 }, () => 'a label that takes most of the page')
    const { items, height } = plotBlock({ ...axes, curves: [{ points: zigzag, label }] }, 0)
    // Ten lines of 14 and 3 between labels.
    expect(height).toBe(18 + 143 + 34)
    const numbers = texts(items).filter(({ text, anchor }) => /^\d+$/.test(text) && anchor === 'middle')
    expect(numbers.length).toBeGreaterThanOrEqual(2)
    expect(numbers.length).toBeLessThan(6)
  })

  test('marks are dots or crosses on their points; of two that would lie on each other one is drawn', () => {
    const dots = (line?: 'bad') =>
      plotBlock(
        {
          ...axes,
          curves: [
            {
              points: [
                [0, 0],
                [0.05, 0],
                [10, 4],
              ],
              mark: 'dot',
              ...(line && { line }),
            },
          ],
        },
        50,
      ).items.filter((item) => item.kind === 'circle')
    expect(dots().map(({ centre }) => centre)).toEqual([near([[left, base]])[0], near([[right, base - 100]])[0]])
    expect([dots()[0]?.fill, dots('bad')[0]?.fill]).toEqual(['solid', 'bad'])
    const { items } = plotBlock({ ...axes, curves: [{ points: [[10, 4]], mark: 'cross', line: 'move' }] }, 50)
    expect(pieces(items, 'move')).toEqual([
      near([
        [right - 2.5, base - 102.5],
        [right + 2.5, base - 97.5],
      ]),
      near([
        [right - 2.5, base - 97.5],
        [right + 2.5, base - 102.5],
      ]),
    ])
  })
})

describe('bars', () => {
  // The numbers "1.5" stand at the right: two figures and a point, which is 3.74 across.
  const right = 360 - 8 - (2 * FIGURE + 3.74) - 8
  const at = (share: number) => 8 + share * (right - 8)
  const bar = (more: object) => ({ name: 'pin', to: 1, text: '1.5', ...more })
  const boxes = (items: readonly Item[]) =>
    items.flatMap((item) => (item.kind === 'path' && item.closed === true ? [item.points.map(([x]) => x).slice(0, 2)] : []))

  test('each begins and ends at its values on the common axis, 32 below the one before', () => {
    const { items, height } = barBlock(
      { to: 4, bars: [bar({}), bar({ from: 3, to: 2, name: 'bore', line: 'bad', fill: 'paper', ink: 'bad' })] },
      100,
    )
    expect(boxes(items)).toEqual([
      [expect.closeTo(8, 9), expect.closeTo(at(0.25), 9)],
      [expect.closeTo(at(0.5), 9), expect.closeTo(at(0.75), 9)],
    ])
    expect(texts(items).map(({ text, at: place, ink }) => [text, place, ink])).toEqual([
      ['pin', [8, 112], 'ink'],
      ['1.5', [expect.closeTo(right + 8, 9), 125], 'ink'],
      ['bore', [8, 144], 'ink'],
      ['1.5', [expect.closeTo(right + 8, 9), 157], 'bad'],
    ])
    const shapes = items.filter((item) => item.kind === 'path')
    expect(shapes.map(({ line, fill }) => [line, fill])).toEqual([
      ['thin', 'tone'],
      ['bad', 'paper'],
    ])
    expect(shapes[0]?.points.map(([, y]) => y)).toEqual([116, 116, 126, 126])
    expect(height).toBe(2 * 32 + 4)
  })

  test('without a value of its own a bar begins at zero, also on an axis that begins below', () => {
    const { items } = barBlock({ from: -4, to: 4, bars: [bar({ to: 2 }), bar({ to: -2 })] }, 0)
    expect(boxes(items)).toEqual([
      [expect.closeTo(at(0.5), 9), expect.closeTo(at(0.75), 9)],
      [expect.closeTo(at(0.25), 9), expect.closeTo(at(0.5), 9)],
    ])
  })

  test('a bar that is longer than the axis ends at it in an arrow', () => {
    const arrows = (to: number) => lines(barBlock({ to: 4, bars: [bar({ to })] }, 0).items, 'thin')
    expect(arrows(4)).toEqual([])
    expect(arrows(5)).toEqual([
      near([
        [right - 5, 16],
        [right, 21],
        [right - 5, 26],
      ]),
    ])
  })

  test('a range is a line with ends; one that goes on beyond the axis has no end there', () => {
    const drawn = (low: number, high: number) => pieces(barBlock({ to: 4, bars: [bar({ range: [low, high] })] }, 0).items, 'thick')
    expect(drawn(1, 3)).toEqual([
      near([
        [at(0.25), 21],
        [at(0.75), 21],
      ]),
      near([
        [at(0.25), 17],
        [at(0.25), 25],
      ]),
      near([
        [at(0.75), 17],
        [at(0.75), 25],
      ]),
    ])
    expect(drawn(1, 5)).toEqual([
      near([
        [at(0.25), 21],
        [right, 21],
      ]),
      near([
        [at(0.25), 17],
        [at(0.25), 25],
      ]),
    ])
    expect(drawn(1, 4)).toHaveLength(3)
  })

  test('the names of rules stand above the bars, each on a line of its own, left of the rule where the page ends', () => {
    const rules = [
      { at: 1, name: 'enough' },
      { at: 4, name: 'far more than that' },
      { at: 2, name: '', line: 'bad' as const },
    ]
    const { items, height } = barBlock({ to: 4, bars: [bar({})], rules }, 0)
    expect(said(items, 'enough')).toMatchObject({ at: [expect.closeTo(at(0.25) + 3, 9), 11], anchor: 'start' })
    expect(said(items, 'far more than that')).toMatchObject({ at: [expect.closeTo(right - 3, 9), 27], anchor: 'end' })
    // Two lines of names above one bar.
    expect(height).toBe(2 * 16 + 32 + 4)
    expect(pieces(items, 'axis')).toEqual([
      near([
        [at(0.25), 2],
        [at(0.25), 64],
      ]),
      near([
        [right, 18],
        [right, 64],
      ]),
    ])
    expect(pieces(items, 'bad')).toEqual([
      near([
        [at(0.5), 2],
        [at(0.5), 64],
      ]),
    ])
  })

  test('a rule that a name crosses begins below it, with nothing above the first bar', () => {
    const { items } = barBlock({ to: 4, bars: [bar({ name: 'a name that reaches the rule' })], rules: [{ at: 1, name: '' }] }, 0)
    expect(pieces(items, 'axis')).toEqual([
      near([
        [at(0.25), 15],
        [at(0.25), 32],
      ]),
    ])
  })

  test('a rule with a place at each bar steps from one to the next between them', () => {
    const bars = [bar({}), bar({}), bar({})]
    const { items } = barBlock({ to: 4, bars, rules: [{ at: 2, name: '', each: [2, 3, 3] }] }, 0)
    expect(pieces(items, 'axis')).toEqual([
      near([
        [at(0.5), 2],
        [at(0.5), 33],
      ]),
      near([
        [at(0.75), 33],
        [at(0.75), 96],
      ]),
    ])
  })
})
