import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { network } from '../../src/thermal/index.js'

const air = { fixed: '25 degC' } as const
const within = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const celsius = (x: { readonly si: number } | undefined) => x!.si - 273.15

describe('a node without heat capacity in a course of time', () => {
  test('follows its neighbours at once: closed form of one store behind a resistance', () => {
    fc.assert(
      fc.property(within(1, 20), within(0.1, 5), within(0.5, 5), within(10, 300), within(1, 900), (power, r1, r2, c, time) => {
        const course = network({ chip: { loss: [power, 'W'] }, body: { capacity: [c, 'J/K'] }, air }, [
          { from: 'chip', to: 'body', resistance: [r1, 'K/W'] },
          { from: 'body', to: 'air', resistance: [r2, 'K/W'] },
        ]).transient({ duration: [time, 's'] })
        const body = 25 + power * r2 * (1 - Math.exp(-time / (r2 * c)))
        const end = course.at([time, 's'])
        expect(Math.abs(celsius(end.body) - body)).toBeLessThan(1e-3)
        expect(Math.abs(celsius(end.chip) - body - power * r1)).toBeLessThan(1e-3)
        const { released, given, stored } = course.ledger
        expect(given.si + stored.si).toBeCloseTo(released.si, 2)
        expect(course.notes.map(({ text }) => text)).toEqual(['chip has no heat capacity: it follows its neighbours at once'])
      }),
      { numRuns: 20 },
    )
  })

  test('is the limit of a small capacity, also with laws that bend, bands and limits', () => {
    const build = (capacity: number | undefined) =>
      network(
        {
          winding: {
            loss: (t) => 5 * (1 + 0.004 * (t - 293.15)),
            lossScatter: 0.05,
            ...(capacity !== undefined && { capacity: [capacity, 'J/K'] }),
          },
          can: { capacity: '60 J/K' },
          board: {},
          air,
        },
        [
          { from: 'winding', to: 'can', conductance: '0.8 W/K', scatter: 0.2 },
          { from: 'can', to: 'air', conductance: (a, b) => 0.1 * Math.max(Math.abs(a - b), 1e-6) ** 0.25, scatter: 0.1 },
          { from: 'can', to: 'board', conductance: '0.1 W/K' },
          { from: 'board', to: 'air', conductance: '0.02 W/K' },
        ],
      ).transient({ duration: '900 s', limits: { winding: '50 degC' } })
    const [none, little] = [build(undefined), build(1e-3)]
    for (const time of ['1 s', '60 s', '900 s'] as const) {
      const [a, b] = [none.at(time), little.at(time)]
      for (const node of ['winding', 'can', 'board']) {
        expect(celsius(a[node])).toBeCloseTo(celsius(b[node]), 1)
        expect(a[node]!.high - a[node]!.si).toBeCloseTo(b[node]!.high - b[node]!.si, 1)
      }
    }
    expect(none.passed.winding!.si / little.passed.winding!.si).toBeCloseTo(1, 2)
    expect(none.peaks.winding!.temperature.si).toBeCloseTo(little.peaks.winding!.temperature.si, 1)
  })

  test('runs away where its own loss does, and its start is its balance', () => {
    const course = network({ winding: { loss: (t) => 40 * (1 + 0.004 * (t - 293.15)) }, can: { capacity: '60 J/K' }, air }, [
      { from: 'winding', to: 'can', conductance: '0.15 W/K' },
      { from: 'can', to: 'air', conductance: '0.5 W/K' },
    ]).transient({ duration: '900 s' })
    expect(course.state).toBe('runaway')
    const quiet = network({ winding: { loss: '5 W' }, can: { capacity: '60 J/K' }, air }, [
      { from: 'winding', to: 'can', conductance: '0.5 W/K' },
      { from: 'can', to: 'air', conductance: '0.5 W/K' },
    ]).transient({ duration: '900 s', initial: { winding: '500 degC', can: '25 degC' } })
    expect(celsius(quiet.at('0 s').winding)).toBeCloseTo(35, 6)
  })
})
