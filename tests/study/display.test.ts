import { describe, expect, test } from 'vitest'
import { slackTension } from '../../src/capstan/index.js'
import { formula } from '../../src/formula/index.js'
import { bounds, fit as fitted, optimise, sensitivity, uncertainty, uniform, varianceShares } from '../../src/study/index.js'

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
