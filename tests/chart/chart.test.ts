import { expect, test } from 'vitest'
import { barChart, lineChart, PALETTE, pointChart } from '../../src/chart/index.js'

const text = { title: 'Tension', description: 'Tension falls along the wrap.' }
const x = { title: 'angle', unit: 'deg' }
const y = { title: 'tension', unit: 'N' }

test('a chart is plain JSON and notebooks get the same specification', async () => {
  const chart = lineChart({
    ...text,
    x,
    y,
    series: [
      {
        name: 'a',
        points: [
          [0, 1],
          [1, 2],
        ],
      },
    ],
  })
  const display = await (chart as unknown as Record<symbol, () => Promise<Record<string, unknown>>>)[Symbol.for('Jupyter.display')]?.()
  expect(JSON.parse(JSON.stringify(display?.['application/vnd.vegalite.v5+json']))).toEqual(JSON.parse(JSON.stringify(chart)))
  expect(JSON.stringify(chart)).toContain('tension [N]')
  // For viewers that run no scripts, or clean drawings: the same drawing as a picture with its description.
  const [, description, code] = /^!\[(.*)\]\(data:image\/svg\+xml;base64,([^)]*)\)$/.exec(String(display?.['text/markdown'])) ?? []
  expect(description).toBe(text.description)
  expect(Buffer.from(code ?? '', 'base64').toString()).toBe(display?.['image/svg+xml'])
  expect(display?.['image/svg+xml']).toMatch(/^<svg .*tension \[N\]/s)
})

test('what colour says is repeated by dash or shape', () => {
  const series = ['a', 'b', 'c'].map((name) => ({ name, points: [[0, 1]] as [number, number][] }))
  const line = JSON.parse(JSON.stringify(lineChart({ ...text, x, y, series })))
  const dashes = line.layer[0].encoding.strokeDash.scale.range.map(String)
  expect(new Set(dashes).size).toBe(3)
  const point = JSON.parse(JSON.stringify(pointChart({ ...text, x, y, series })))
  expect(new Set(point.layer[0].encoding.shape.scale.range).size).toBe(3)
})

test('points keep the order given, so a hysteresis loop is not sorted into a zigzag', () => {
  const chart = JSON.parse(
    JSON.stringify(
      lineChart({
        ...text,
        x,
        y,
        series: [
          {
            name: 'loop',
            points: [
              [0, 0],
              [2, 1],
              [1, 0.4],
            ],
          },
        ],
      }),
    ),
  )
  expect(chart.layer[0].data.values.map((v: { x: number }) => v.x)).toEqual([0, 2, 1])
  expect(chart.layer[0].encoding.order.field).toBe('i')
})

test('bars carry their value as text', () => {
  const chart = JSON.parse(
    JSON.stringify(barChart({ ...text, value: y, bars: [{ name: 'pin', to: 1.23456 }], rules: [{ name: 'enough', at: 1 }] })),
  )
  expect(chart.layer[1].data.values[0].label).toBe('1.23')
})

test('the palette can be told apart in grey as well', () => {
  const luminance = PALETTE.map((hex) =>
    [1, 3, 5].map((i) => Number.parseInt(hex.slice(i, i + 2), 16)).reduce((sum, c, i) => sum + c * ([0.2126, 0.7152, 0.0722][i] ?? 0), 0),
  )
  expect(new Set(luminance.map(Math.round)).size).toBe(PALETTE.length)
})

const plain = (chart: unknown) => JSON.parse(JSON.stringify(chart))

test('bars of one group share a colour, and those of several have one each', () => {
  const coloursOf = (...groups: string[]) =>
    plain(barChart({ ...text, value: y, bars: groups.map((group, i) => ({ name: `${i}`, to: 1, group })) })).layer[0].encoding.color
  expect(coloursOf('a', 'a')).toEqual({ value: PALETTE[0] })
  expect(coloursOf('a', 'b').scale).toEqual({ domain: ['a', 'b'], range: PALETTE.slice(0, 2) })
})

test('points without guides are one layer; a guide and a labelled limit add theirs, the label clear of its line', () => {
  const series = [{ name: 'a', points: [[0, 1]] as [number, number][] }]
  expect(plain(pointChart({ ...text, x, y, series })).layer).toHaveLength(1)
  const rules = [
    { name: 'enough', at: 1 },
    { name: 'end', at: 2, axis: 'x' as const },
  ]
  const { layer } = plain(pointChart({ ...text, x, y, series, lines: series, rules }))
  expect(layer).toHaveLength(6)
  expect([layer[3].mark, layer[5].mark]).toMatchObject([
    { x: 4, dy: -6 },
    { y: 8, dx: 4 },
  ])
})

test('a band is shaded from its low to its high values in the colour of its series', () => {
  const series = ['a', 'b'].map((name) => ({ name, points: [[0, 1]] as [number, number][] }))
  const [shaded] = plain(lineChart({ ...text, x, y, series, bands: [{ name: 'b', points: [[0, 0.5, 2]] }] })).layer
  expect(shaded.data.values).toEqual([{ x: 0, low: 0.5, high: 2, name: 'b' }])
  expect(shaded.mark.color).toBe(PALETTE[1])
})

test('a drawing prints no more decimals than a screen shows', async () => {
  const points = Array.from({ length: 9 }, (_, i) => [i / 7, Math.sqrt(i)] as [number, number])
  const chart = lineChart({ ...text, x, y, series: [{ name: 'a', points }] })
  const shown = await (chart as unknown as Record<symbol, () => Promise<Record<string, string>>>)[Symbol.for('Jupyter.display')]?.()
  expect(shown?.['image/svg+xml']).toMatch(/\d\.\d/)
  expect(shown?.['image/svg+xml']).not.toMatch(/\d\.\d{3,}/)
})
