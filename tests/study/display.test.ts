import { describe, expect, test } from 'vitest'
import { slackTension } from '../../src/capstan/index.js'
import { formula } from '../../src/formula/index.js'
import {
  bounds,
  failureProbability,
  fit as fitted,
  normal,
  optimise,
  sensitivity,
  uncertainty,
  uniform,
  varianceShares,
} from '../../src/study/index.js'
import { Quantity } from '../../src/units/index.js'

const given = { load: '500 N', friction: uniform(0.1, 0.2), wrapAngle: uniform('1 turn', '2 turn') } as const
const results = {
  uncertainty: uncertainty(slackTension, given, { samples: 400 }),
  sensitivity: sensitivity(slackTension, given),
  varianceShares: varianceShares(slackTension, given, { samples: 32, replicates: 4 }),
  bounds: bounds(slackTension, given),
  fit: fitted(slackTension, {
    parameters: { friction: 0.3 },
    data: { wrapAngle: ['1 turn', '2 turn'] },
    measured: ['100 N', '19 N'],
    fixed: { load: '500 N' },
  }),
  optimise: optimise(slackTension, {
    vary: { friction: { from: 0.1, to: 0.2 } },
    fixed: { load: '500 N', wrapAngle: '1 turn' },
    goals: { minimise: 'result' },
  }),
}

describe('every result prints, shows itself in notebooks and draws a chart', () => {
  for (const [name, result] of Object.entries(results))
    test(name, () => {
      const markdown = result.toMarkdown()
      expect(markdown).toContain('capstan.slackTension')
      expect(markdown).not.toMatch(/NaN|undefined|\[object/)
      expect(String(result)).toBe(markdown)
      const display = (result as unknown as Record<symbol, () => Record<string, string>>)[Symbol.for('Jupyter.display')]!()
      expect(display).toEqual({ 'text/markdown': markdown, 'text/plain': markdown })
      const chart = JSON.parse(JSON.stringify(result.chart))
      expect(chart.$schema).toContain('vega-lite')
      expect(chart.description.length).toBeGreaterThan(20)
      // Numbers that are not finite become null in JSON and would draw nothing.
      expect(JSON.stringify(chart.layer.map((layer: { data?: unknown }) => layer.data))).not.toMatch(/null|undefined|NaN/)
      // Every table of the Markdown is rectangular.
      for (const block of markdown.split('\n\n').filter((text) => text.startsWith('|')))
        expect(new Set(block.split('\n').map((line) => line.split('|').length)).size).toBe(1)
    })
})

test('a tornado speaks the unit that the result prints in, for temperatures and torques too', () => {
  const warm = formula('test.warm', {
    inputs: { room: 'temperature', rise: 'temperatureDifference', arm: 'length' },
    output: { temperature: 'temperature', torque: 'torque' },
    source: [{ level: 'unverified', where: 'test' }],
    si: ({ room, rise, arm }) => ({ temperature: room + rise, torque: 10 * arm }),
  })
  const at = { room: '20 degC', rise: uniform('10 K', '30 K'), arm: uniform('0.1 m', '0.3 m') } as const
  const spec = (output: 'temperature' | 'torque') =>
    JSON.parse(JSON.stringify(sensitivity(warm, at, { output, inputs: ['rise', 'arm'] }).chart))
  const temperature = spec('temperature')
  expect(temperature.layer[0].encoding.x.title).toBe('result [degC]')
  expect(temperature.layer[0].data.values[0]).toMatchObject({ name: 'rise', from: expect.closeTo(40, 9), to: expect.closeTo(31, 9) })
  const torque = spec('torque')
  expect(torque.layer[0].encoding.x.title).toMatch(/^result \[.*m\]$/)
  const [bar] = torque.layer[0].data.values as { name: string; from: number; to: number }[]
  expect(bar!.name).toBe('arm')
  expect(bar!.to / bar!.from).toBeCloseTo(0.55, 9)
})

describe('a chart draws the numbers of its result', () => {
  const layer = (chart: unknown) =>
    (JSON.parse(JSON.stringify(chart)) as { layer: { data: { values: Record<string, unknown>[] } }[] }).layer[0]!.data.values

  test('shares of the first-order variance, in percent', () => {
    const { linear, chart } = results.uncertainty
    expect(layer(chart).map(({ name, to, label }) => [name, to, label])).toEqual(
      linear.contributions.map(({ path, share }) => [path, expect.closeTo(100 * share, 12), `${Number((100 * share).toPrecision(3))} %`]),
    )
    expect(linear.contributions.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 12)
  })

  test('shares of the variance alone and with others, in percent', () => {
    const { inputs, chart } = results.varianceShares
    expect(layer(chart).map(({ name, to }) => [name, to])).toEqual(
      inputs.flatMap(({ path, first, total }) => [
        [`${path}, alone`, expect.closeTo(100 * first.value, 12)],
        [`${path}, with others`, expect.closeTo(100 * total.value, 12)],
      ]),
    )
  })

  test('importance of the inputs at the likeliest failure, in percent', () => {
    const found = failureProbability(
      slackTension,
      { load: '500 N', friction: normal(0.2, 0.02), wrapAngle: normal('2 turn', '0.1 turn') },
      { below: '20 N', samples: 200, runs: 3 },
    )
    const { inputs } = found.firstOrder!
    expect(layer(found.chart).map(({ name, to }) => [name, to])).toEqual(
      inputs.map(({ path, importance }) => [path, expect.closeTo(100 * importance!, 12)]),
    )
    expect(inputs.reduce((sum, { importance }) => sum + importance!, 0)).toBeCloseTo(1, 9)
    expect(found.toMarkdown()).toContain(`| friction | ${inputs.find(({ path }) => path === 'friction')!.atFailure} |`)
    // With correlated inputs nothing belongs to one of them alone.
    const correlated = failureProbability(
      slackTension,
      { load: '500 N', friction: normal(0.2, 0.02), wrapAngle: normal('2 turn', '0.1 turn') },
      { below: '20 N', samples: 200, runs: 3, correlations: [{ between: ['friction', 'wrapAngle'], coefficient: 0.5 }] },
    )
    expect(layer(correlated.chart)).toEqual([])
    expect(correlated.toMarkdown()).toMatch(/\| friction \| .* \| – \|/)
  })

  test('both ends of a range, and a result without a unit', () => {
    const { chart, low, high } = results.bounds
    expect(layer(chart)).toEqual([
      expect.objectContaining({ from: low.value.si, to: high.value.si, label: `${low.value} to ${high.value}` }),
    ])
    const plain = formula('test.plain', { inputs: { a: 'ratio' }, output: 'ratio', source: [{ level: 'unverified', where: 'test' }], si: ({ a }) => 2 * a }) // biome-ignore format: one record
    expect(layer(bounds(plain, { a: uniform(1, 2) }).chart)).toEqual([expect.objectContaining({ from: 2, to: 4 })])
    expect(layer(sensitivity(plain, { a: 3 }).chart).map(({ from, to }) => [from, to])).toEqual([[6, expect.closeTo(5.4, 9)], [6, expect.closeTo(6.6, 9)]]) // biome-ignore format: rows
  })

  test('residuals over fitted values, and a line of zero', () => {
    const { chart, fittedValues, residuals } = results.fit
    const points = layer(chart).map(({ x, y }) => [x, y])
    expect(points).toEqual(Array.from(fittedValues, (x, i) => [x, residuals[i]]))
  })
})

describe('what a fit says', () => {
  const line = formula('test.line', { inputs: { a: 'ratio', b: 'ratio', x: 'ratio' }, output: 'ratio', source: [{ level: 'unverified', where: 'test' }], si: ({ a, b, x }) => a + b * x }) // biome-ignore format: one record
  const noise = [0.3, -0.2, 0.1, -0.4, 0.2, 0.1, -0.3, 0.2]
  const plan = (deviation: number) => ({
    parameters: { a: 0, b: 1 },
    data: { x: noise.map((_, i) => i) },
    measured: noise.map((e, i) => 1 + 2 * i + e),
    deviation: new Quantity(deviation, 'ratio') as never,
  })

  test('a deviation that the readings keep is not blamed, one that they exceed is', () => {
    const size = (deviation: number) => fitted(line, plan(deviation)).checks.find(({ check }) => check === 'size')!
    expect(size(0.25)).toMatchObject({ holds: true })
    expect(size(0.25).message).not.toContain('does not describe')
    expect(size(0.02)).toMatchObject({ holds: false })
    expect(size(0.02).message).toContain(': the formula does not describe the readings, or they scatter more than the deviation given')
    expect(fitted(line, plan(0.02)).toMarkdown()).toContain('- LOOK: residuals are')
    expect(fitted(line, plan(0.25)).toMarkdown()).toContain('- passes: residuals are')
    expect(fitted(line, plan(0.25)).deviation.si).toBe(0.25)
  })

  test('a value or a correlation by path, and an error for one that is none', () => {
    const found = fitted(line, plan(0.25))
    expect(found.value('b').si).toBeCloseTo(2, 1)
    expect(() => found.value('c')).toThrow("no parameter 'c'; parameters are a, b")
    // Intercept and slope over x from 0 to 7: −mean x/√(mean x²), in closed form.
    expect(found.correlation('a', 'b')).toBeCloseTo(-3.5 / Math.sqrt(140 / 8), 9)
    expect(found.correlation('a', 'a')).toBeCloseTo(1, 12)
    expect(found.degreesOfFreedom).toBe(6)
    expect(found.starts).toEqual({ tried: 1, agreeing: 1 })
    expect(found.toMarkdown()).not.toContain('starts end here')
    expect(fitted(line, { ...plan(0.25), starts: 3 }).toMarkdown()).toContain('; 3 of 3 starts end here')
    const two = fitted(line, { ...plan(0.25), data: { x: [0, 1] }, measured: [1, 3] })
    expect(two.degreesOfFreedom).toBe(0)
    expect(two.value('a').si).toBeCloseTo(1, 9)
    // Without readings left over, a given deviation still gives an interval, by the normal law.
    expect(two.parameters[0]!.interval![1].si).toBeCloseTo(1 + 1.959963984540054 * 0.25, 9)
    expect(fitted(line, { parameters: { a: 0, b: 1 }, data: { x: [0, 1] }, measured: [1, 3] }).parameters[0]!.interval).toBeUndefined()
  })

  test('logged columns are lists, or numbers with their unit', () => {
    const cord = (wrapAngle: unknown) => () =>
      fitted(slackTension, {
        parameters: { friction: 0.3 },
        data: { wrapAngle } as never,
        measured: ['100 N', '19 N'],
        fixed: { load: '500 N' },
      })
    expect(cord({ unit: 'turn', values: [1, 2] })().value('friction').si).toBeCloseTo(cord(['1 turn', '2 turn'])().value('friction').si, 12)
    for (const bad of [{ values: [1, 2] }, { unit: 'turn' }, { unit: 'turn', values: null }, { unit: 3, values: [1, 2] }, null, 7])
      expect(cord(bad), JSON.stringify(bad)).toThrow("must be a list of values, or { unit: 'N', values: [...] }")
    expect(cord({ unit: 'turn', values: [1] })).toThrow('data.wrapAngle is 1 value; must have one value for each reading, 2 in all')
    expect(cord({ unit: 'turn', values: [1, Number.NaN] })).toThrow('data.wrapAngle')
  })
})
