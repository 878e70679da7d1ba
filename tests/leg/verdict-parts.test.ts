// What a verdict says of uncertain values: their names, what a reserve rests on, which measurement pays, and the search for the worst end.
import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type Comparison, reserveOf } from '../../src/leg/assess/compare.js'
import { Corners, cornerOf, type Effect } from '../../src/leg/assess/corners.js'
import { bestMeasurement, restsOn } from '../../src/leg/assess/evidence.js'
import { leafName } from '../../src/leg/assess/names.js'
import { fieldsRead, fieldsReader, keyOfResult, recordedOf } from '../../src/leg/assess/recorded.js'
import type { Move } from '../../src/leg/assess/survey.js'
import { assess, describeLeg, withFields } from '../../src/leg/index.js'
import { Cell, nowhere } from '../../src/leg/run/cell.js'
import type { Ends } from '../../src/leg/run/index.js'
import { Scenarios } from '../../src/leg/run/scenarios.js'

describe('an uncertain value in words', () => {
  test.each([
    ['friction', { joint: 'knee' }, '', 'friction of the belt on its pulleys', 'friction of the belt on its pulleys (knee)'],
    ['friction', { joint: 'knee', motor: 'right' }, '', 'friction', 'friction (knee, right)'],
    ['torque', { leg: 'leg', motor: 'main' }, '', 'torque of the motor', 'torque of the motor'],
    ['thread', { boltGroup: 'stack' }, '', 'thread of the –', 'thread of the stack bolts'],
    ['thread', { boltGroup: 'motorBolts' }, '', 'thread of the –', 'thread of the motor bolts'],
    ['strength', { material: 'own ASA' }, '', 'strength of – over temperature', 'strength of own ASA over temperature'],
    ['strength', {}, '', 'strength of – over temperature', 'strength of the material over temperature'],
    [
      'bolt',
      { boltGroup: 'stack' },
      'rows.0.rootArea',
      'row of the –',
      'row of the stack bolts: rows no. 1 area at the root of the thread',
    ],
  ])('%s of %j, field "%s" of "%s": %s', (id, names, path, title, words) => expect(leafName(id, names as never, path, title)).toBe(words))

  test('without a title the words of the id stand for it', () => {
    expect(leafName('motor.windingResistance', {})).toBe('motor winding resistance')
    expect(leafName('pin.play', { pivot: 'hip' })).not.toContain('pivot')
  })
})

const cell = (name: string, log: Cell[] = []): Cell =>
  Object.assign(new Cell({ id: name, leaf: { title: name } } as never, nowhere(), nowhere(), {} as never), { log })
const move = (of: Cell, low: number, high: number, level = 'assumption', measuredBy = 'a pull'): Move =>
  ({ cell: of, low, high, range: { low: 0, high: 1, source: { level, where: 'here' }, measuredBy } }) as Move

describe('what a side rests on', () => {
  test('a value that moves the reserve twice as far on a ratio scale counts four times; which end is the lower does not matter', () => {
    const [a, b] = [cell('a'), cell('b')]
    const shares = restsOn(cell('demand', [a, b]), cell('capacity', [b]), [move(a, 1, 2, 'measured'), move(b, 4, 1, 'standard')])
    expect(shares.demand).toEqual({ measured: expect.closeTo(0.2, 12), published: expect.closeTo(0.8, 12), unverified: 0, assumed: 0 })
    expect(shares.capacity).toEqual({ measured: 0, published: 1, unverified: 0, assumed: 0 })
  })

  test('what takes a reserve to nothing counts as a factor of a million, and a side without such values rests on none', () => {
    const [a, b] = [cell('a'), cell('b')]
    const shares = restsOn(cell('demand', [a, b]), cell('capacity'), [move(a, 0, 3, 'unverified'), move(b, 1, 1e6)])
    expect(shares).toEqual({ demand: { measured: 0, published: 0, unverified: expect.closeTo(0.5, 9), assumed: expect.closeTo(0.5, 9) } })
    expect(restsOn(cell('demand', [a]), cell('capacity'), [move(a, 0, 0)])).toEqual({})
  })
})

describe('the measurement that pays', () => {
  const [a, b, c] = [cell('a'), cell('b'), cell('c')]
  const band = (moves: readonly Move[]) => ({ worst: 1, best: 4, monotone: true, moves })
  /** Each value that is left doubles the range. */
  const without = (moves: readonly Move[]) => ({ worst: 1, best: 2 ** moves.length })

  test('is the one that leaves the narrowest range, with every value that it replaces, each named once', () => {
    const moves = [move(a, 1, 2, 'assumption', 'a pull'), move(b, 1, 2, 'assumption', 'a bend'), move(c, 1, 2, 'assumption', 'a bend')]
    const again = [...moves, move(c, 1, 2, 'assumption', 'a bend')]
    expect(bestMeasurement('boss.split', { ...band(again), best: 16 }, without)).toEqual({
      check: 'boss.split',
      test: 'a bend',
      values: ['b', 'c'],
      before: { worst: 1, best: 16 },
      after: { worst: 1, best: 2 },
    })
  })

  test('is none where no test is known, or where no test narrows the range', () => {
    expect(bestMeasurement('x', band([move(a, 1, 2, 'assumption', ''), move(b, 1, 2, 'assumption', '')]), without)).toBeUndefined()
    const moves = [move(a, 1, 2), move(b, 1, 2, 'assumption', 'a bend')]
    expect(bestMeasurement('x', band(moves), () => ({ worst: 1, best: 4 }))).toBeUndefined()
    expect(bestMeasurement('x', band(moves), () => ({ worst: 1, best: 3.9 }))?.after.best).toBe(3.9)
  })
})

describe('the search for the worst end', () => {
  const leaves = ['a', 'b', 'c'].map((name) => ({ cell: cell(name), range: {} as never }))
  const one = { demand: cell('demand'), capacity: cell('capacity') } as Comparison
  /** Scenarios whose reserve is a function of the ends, -1 where low, 1 where high, 0 where typical. */
  const scenariosOf = (reserve: (...ends: number[]) => number) =>
    new (class extends Scenarios {
      override at(ends: Ends) {
        const at = leaves.map(({ cell }) => ({ low: -1, high: 1 })[this.ends.endOf(ends, cell) as 'low'] ?? 0)
        return { read: (asked: Cell) => (asked === one.capacity ? reserve(...at) : 1) }
      }
    })({} as never, [], leaves)
  const worstFrom = (reserve: (...ends: number[]) => number, from: number) => {
    const corners = new Corners(scenariosOf(reserve))
    return corners.walk(one, leaves, corners.ends(leaves.map(({ cell }) => [cell, 'low'])), from)
  }

  test('each value stands at the end that lowers the reserve alone, and one that does not move it stays typical', () => {
    const effect = (i: number, low: number, high: number): Effect => ({
      ...leaves[i]!,
      reserves: Float64Array.of(9, low, 9, high),
      low: 0,
      high: 2,
    })
    const ends = new Map(cornerOf([effect(0, 1, 2), effect(1, 2, 1), effect(2, 3, 3)], 1))
    expect(leaves.map((leaf) => ends.get(leaf.cell))).toEqual(['low', 'high', undefined])
  })

  test('ends no higher than it began, at a reserve that some ends have', () => {
    const numbers = fc.array(fc.double({ min: 0.1, max: 9, noNaN: true }), { minLength: 27, maxLength: 27 })
    fc.assert(
      fc.property(numbers, (table) => {
        const reserve = (...at: number[]) => table[at.reduce((sum, x) => 3 * sum + x + 1, 0)]!
        const found = worstFrom(reserve, reserve(-1, -1, -1))
        expect(found).toBeLessThanOrEqual(reserve(-1, -1, -1))
        // The first value is tried from where all stand.
        expect(found).toBeLessThanOrEqual(reserve(1, -1, -1) + 1e-9)
        expect(table).toContain(found)
      }),
      { numRuns: 50 },
    )
  })

  test('goes through the values again while that lowers the reserve', () => {
    // c frees b, b frees a: each pass over a, b, c gets one further.
    const reserve = (a: number, b: number, c: number) => (c < 1 ? 8 : b < 1 ? 4 : a < 1 ? 2 : 1)
    expect(worstFrom(reserve, 8)).toBe(1)
  })
})

test('capacity over demand: what is not a number has none, and without a demand there is plenty unless the capacity is even less', () => {
  expect([reserveOf(2, 3), reserveOf(0, 3), reserveOf(0, 0), reserveOf(-2, -1), reserveOf(-2, -3), reserveOf(2, -3)]).toEqual([
    1.5, 1000, 1000, 1000, 0, 0,
  ])
  expect([reserveOf(Number.NaN, 1), reserveOf(1, Number.NaN), reserveOf(Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY)]).toEqual([
    0, 0, 0,
  ])
  expect(reserveOf(1e-9, 1)).toBe(1000)
})

describe('a verdict of one load case', () => {
  const text = readFileSync(new URL('../../examples/heath-leg-first.yaml', import.meta.url), 'utf8')
  const verdict = assess(describeLeg(text), { cases: ['stand'] })
  const key = keyOfResult(verdict.governing)

  test('what a check reads is found for a copy of the verdict as well, and no check reads what the leg has not', () => {
    const copy = { ...verdict }
    for (const check of verdict.checks.slice(0, 3)) {
      const fields = fieldsRead(verdict, keyOfResult(check))
      expect(fields.size).toBeGreaterThan(3)
      expect([...fieldsRead(copy, keyOfResult(check))].sort()).toEqual([...fields].sort())
    }
    expect(fieldsReader(verdict)('no.check')).toEqual(new Set())
  })

  test('a field that a check reads moves it, and one that it does not read leaves it as it is', () => {
    const fields = fieldsReader(verdict)
    const heavier = assess(withFields(verdict.leg, { 'robot.mass': `${1.1 * verdict.leg.robot.mass.in('kg')} kg` }), { cases: ['stand'] })
    for (const check of verdict.checks) {
      const other = heavier.checks.find((one) => keyOfResult(one) === keyOfResult(check))
      if (!fields(keyOfResult(check)).has('robot.mass')) expect(other?.reserve, keyOfResult(check)).toBe(check.reserve)
    }
    expect(fields(key).size).toBeGreaterThan(0)
    expect(verdict.checks.some((check) => fields(keyOfResult(check)).has('robot.mass'))).toBe(true)
  })

  test('no load case gives no verdict, which would pass without a check', () =>
    expect(() => assess(verdict.leg, { cases: [] })).toThrow(/cases .*must include a load case that a check applies to/))

  test('keeps its calculation, so that nothing is calculated twice', () => {
    expect(recordedOf(verdict)).toBe(recordedOf(verdict))
    expect(
      recordedOf(verdict)
        .checks.map((one) => one.key)
        .sort(),
    ).toEqual(verdict.checks.map(keyOfResult).sort())
  })

  test('passes with a reserve of exactly 1, and not with less', () => {
    const revised = describeLeg(readFileSync(new URL('../../examples/mudflat-leg-revised.yaml', import.meta.url), 'utf8'))
    const zone = (infill: number) => {
      const { checks, passes } = assess(withFields(revised, { 'prints.default.walls': 2, 'prints.default.infill': infill }), {
        cases: ['stand'],
      })
      return [checks.filter(({ id }) => id === 'boss.zone').map(({ reserve }) => reserve), passes]
    }
    expect(zone(0.8)).toEqual([[1, 1], true])
    expect(zone(0.3)[1]).toBe(false)
  })

  test('a check that was not made says why: the leg has no such part, or no load case asked for it', () => {
    const why = new Map(verdict.notEvaluated.map((one) => [one.id, one.why]))
    expect([...why.keys()].filter((id) => verdict.checks.some((check) => check.id === id))).toEqual([])
    expect(why.get('cord.peak')).toBe('none of its load cases was evaluated')
    expect(why.get('gear.contact')).toBe('no pair of gears drives the joint')
    expect(why.get('stackBolt.nut')).toBe('a spanner holds the nut')
    expect(why.get('pinBearing.life')).toBe('no ball bearing is given at the hip pin and knee pin')
  })
})
