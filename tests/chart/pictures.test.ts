import * as vega from 'vega'
import * as lite from 'vega-lite'
import { afterEach, describe, expect, test, vi } from 'vitest'
import { barChart, type Chart, lineChart, pointChart, type Renderer, svgOf } from '../../src/chart/index.js'

const renderer = { vega, lite } as unknown as Renderer
const text = { title: 'Tension', description: 'Tension falls along the wrap.' }
const x = { title: 'angle', unit: 'deg' }
const y = { title: 'ratio', unit: '1' }
const series = (...points: [number, number][]) => [{ name: 'a', points }]
const svg = (chart: Chart) => svgOf(chart, renderer)

/** Words of the picture that are not a number of an axis. */
const wordsOf = (picture: string) => [...picture.matchAll(/<text[^>]*>([^<]*)</g)].map(([, word]) => word as string)
/** What a layer draws: the attributes of each of its marks. */
const marksOf = (picture: string, layer: number) =>
  [...(new RegExp(`layer_${layer}_marks"[^>]*>(.*?)</g>`).exec(picture)?.[1] ?? '').matchAll(/<\w+ ([^>]*?)\/?>/g)].map(
    ([, attributes]) => attributes as string,
  )
const placeOf = (mark: string | undefined) => (/translate\(([-\d.]+),([-\d.]+)\)/.exec(mark ?? '') ?? []).slice(1).map(Number)
const display = (chart: Chart) =>
  (chart as unknown as Record<symbol, () => Promise<Record<string, string>>>)[Symbol.for('Jupyter.display')]?.()

afterEach(() => {
  vi.doUnmock('vega')
  vi.resetModules()
})

describe('axes', () => {
  test('an axis begins with its least value; one that must show zero begins there', async () => {
    const points = series([1, 100], [2, 102])
    expect(placeOf(marksOf(await svg(pointChart({ ...text, x, y, series: points })), 0)[0])).toEqual([0, 300])
    const whole = await svg(pointChart({ ...text, x, y: { ...y, zero: true }, series: points }))
    // 102 is at the top of 300 pixels, 0 at the bottom.
    expect(placeOf(marksOf(whole, 0)[0])[1]).toBeCloseTo(300 * (1 - 100 / 102), 6)
  })

  test('the steps of a logarithmic axis are equal for equal factors', async () => {
    const picture = await svg(pointChart({ ...text, x, y: { ...y, scale: 'log' }, series: series([0, 1], [1, 10], [2, 1000]) }))
    expect(marksOf(picture, 0).map((mark) => placeOf(mark)[1])).toEqual([300, expect.closeTo(200, 6), 0])
  })

  test('an axis has its title once, with its unit where it has one, also beside limits and guides', async () => {
    const rules = [
      { name: 'enough', at: 1 },
      { name: 'end', at: 0.5, axis: 'x' as const },
    ]
    const points = series([0, 0], [1, 2])
    for (const [chart, titles] of [
      [lineChart({ ...text, x, y, series: points, rules, bands: [{ name: 'a', points: [[0, 0, 1]] }] }), ['angle [deg]', 'ratio']],
      [pointChart({ ...text, x, y, series: points, rules, lines: points }), ['angle [deg]', 'ratio']],
      [barChart({ ...text, value: x, bars: [{ name: 'pin', to: 1 }], rules: [{ name: 'enough', at: 1 }] }), ['angle [deg]']],
    ] as const)
      expect([...(await svg(chart)).matchAll(/font-weight="bold"[^>]*>([^<]*)</g)].map(([, title]) => title)).toEqual(titles)
  })
})

describe('what a chart draws', () => {
  test('a limit is a dashed line at its value, with its name above it or beside it', async () => {
    const rules = [
      { name: 'enough', at: 1 },
      { name: 'end', at: 2.5, axis: 'x' as const },
    ]
    const picture = await svg(pointChart({ ...text, x, y, series: series([0, 0], [10, 4]), rules }))
    const [level, levelName, upright, uprightName] = [1, 2, 3, 4].map((layer) => marksOf(picture, layer)[0])
    // 1 of 4 is a quarter of 300 pixels up; 2.5 of 10 is a quarter of 520 along.
    expect([placeOf(level)[1], placeOf(upright)[0]]).toEqual([225, 130])
    expect([level, upright].map((line) => /stroke-dasharray="([^"]*)"/.exec(line ?? '')?.[1])).toEqual(['4,4', '4,4'])
    expect(placeOf(levelName)[1]).toBeLessThan(225)
    expect(placeOf(uprightName)[0]).toBeGreaterThan(130)
    expect(wordsOf(picture)).toEqual(expect.arrayContaining(['enough', 'end']))
  })

  test('marks are filled with the colour of their series and named in the legend; a guide is dashed', async () => {
    const two = ['leg', 'stand'].map((name, i) => ({ name, points: [[i, i]] as [number, number][] }))
    const picture = await svg(pointChart({ ...text, x, y, series: two, lines: series([0, 0], [1, 1]) }))
    expect(marksOf(picture, 0)[0]).toContain('stroke-dasharray="6,3"')
    expect(marksOf(picture, 1).map((mark) => /fill="([^"]*)"/.exec(mark)?.[1])).toEqual(['#0072B2', '#D55E00'])
    expect(wordsOf(picture).slice(-2)).toEqual(['leg', 'stand'])
  })

  test('a chart without limits, bands and guides draws its data alone', async () => {
    const layers = [
      lineChart({ ...text, x, y, series: series([0, 1]) }),
      barChart({ ...text, value: x, bars: [{ name: 'pin', to: 1 }] }),
    ].map(({ layer }) => (layer as unknown[]).length)
    expect(layers).toEqual([1, 2])
  })

  test('bars begin and end at their values, in the order given, each 20 pixels, with their own label or number', async () => {
    const bars = [
      { name: 'pin', to: 2 },
      { name: 'bore', from: 1, to: 4, label: 'four' },
    ]
    const picture = await svg(barChart({ ...text, value: x, bars }))
    const lengths = marksOf(picture, 0).map((mark) => /d="M([-\d.]+),([-\d.]+)h([-\d.]+)v/.exec(mark)?.slice(1).map(Number))
    expect(lengths).toEqual([
      [0, 1, 260],
      [130, 21, 390],
    ])
    expect(wordsOf(picture).filter((word) => /[a-z]/.test(word))).toEqual(['angle [deg]', 'pin', 'bore', 'four'])
    expect(wordsOf(picture)).toContain('2')
  })

  test('no point is announced by itself: the figure around the picture carries the words', async () => {
    expect(await svg(pointChart({ ...text, x, y, series: series([0, 1]) }))).not.toContain('aria-label=')
  })
})

describe('in a notebook', () => {
  // One point lies 19.999 pixels along: rounded, both figures before its point change.
  const points = [
    ...Array.from({ length: 40 }, (_, i) => [i / 7, 30 * Math.sqrt(i)] as [number, number]),
    [19.999 / 5.2, 0] as const,
    [100, 0] as const,
  ]
  const numbersOf = (picture: string) =>
    [...picture.matchAll(/ (?:d|transform)="([^"]*)"/g)].flatMap(([, d]) => [...(d as string).matchAll(/-?\d+(?:\.\d+)?/g)].map(Number))

  test('the picture shortens its numbers to hundredths and keeps each of them', async () => {
    const chart = lineChart({ ...text, x, y, series: [{ name: 'a', points }] })
    const [short, long] = [(await display(chart))?.['image/svg+xml'] ?? '', await svgOf(chart, renderer, '#1a1a1a', '#ffffff')]
    expect(short.length).toBeLessThan(long.length)
    const [shown, drawn] = [numbersOf(short), numbersOf(long)]
    expect(shown).toHaveLength(drawn.length)
    for (const [i, number] of drawn.entries()) expect(Math.abs((shown[i] as number) - number)).toBeLessThanOrEqual(0.005 + 1e-9)
  })

  test('a changed copy of a chart does not show the picture of the first one', () => {
    const chart = lineChart({ ...text, x, y, series: series([0, 1]) })
    expect(Object.getOwnPropertySymbols(chart)).toHaveLength(1)
    expect(Object.getOwnPropertySymbols({ ...chart, width: 900 })).toEqual([])
  })

  test('without the renderer it gets the specification and the words, and no picture', async () => {
    vi.doMock('vega', () => {
      throw new Error('Cannot find package')
    })
    const shown = await display(lineChart({ ...text, x, y, series: series([0, 1]) }))
    expect(Object.keys(shown ?? {})).toEqual(['application/vnd.vegalite.v5+json', 'text/plain'])
    expect(shown?.['text/plain']).toBe('Tension: Tension falls along the wrap.')
  })
})
