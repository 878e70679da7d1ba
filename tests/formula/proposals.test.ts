// How designs of a search are ranked and how a wish that cannot be met is refused, on designs of one number.
import * as fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { atMost, type KeptLimit, type ProposalCandidate, proposalsOf } from '../../src/formula/index.js'

const limit = (what: string, use: number): KeptLimit => atMost(what, 'ratio', use, 1)
const candidate = (design: string, cost: number, ...uses: readonly number[]): ProposalCandidate<string> => ({
  design,
  cost,
  limits: uses.map((use, i) => limit(`limit ${i + 1}`, use)),
})

describe('a wish that can be met', () => {
  test('lists what keeps all limits, the cheapest first, with the limit that is used most', () => {
    const all = [candidate('dear', 3, 0.1), candidate('broken', 1, 1.1), candidate('cheap', 1, 0.2, 0.9), candidate('middling', 2, 0.5)]
    const { state, proposals, refusal, message } = proposalsOf({}, () => all, [])
    expect(state).toBe('met')
    expect(refusal).toBeUndefined()
    expect(proposals.map(({ design, governing }) => [design, governing.what])).toEqual([
      ['cheap', 'limit 2'],
      ['middling', 'limit 1'],
      ['dear', 'limit 1'],
    ])
    expect(message).toBe('3 of 4 designs keep all limits. limit 2 of 0.9 (at most 1) governs the first one.')
  })

  test('a limit that the design was sized to governs only where nothing else counts or where it is broken', () => {
    const sized = (use: number) => ({ ...limit('sized', use), sizedTo: true })
    const governing = (...limits: KeptLimit[]) => {
      const { proposals, refusal } = proposalsOf({}, () => [{ design: '', cost: 1, limits }], [])
      return (proposals[0] ?? refusal?.closest)?.governing.what
    }
    expect(governing(sized(1), limit('other', 0.3))).toBe('other')
    expect(governing(sized(1))).toBe('sized')
    expect(governing(sized(1.5), limit('other', 1.2))).toBe('sized')
  })
})

describe('a wish that cannot be met', () => {
  test('is told by the design whose worst limit is least broken, and its broken limits, worst first', () => {
    const all = [candidate('far', 1, 5), candidate('near', 9, 1.2, 0.4, 1.5), candidate('between', 2, 3)]
    const { state, refusal, message } = proposalsOf({}, () => all, [])
    expect(state).toBe('refused')
    expect(refusal?.closest.design).toBe('near')
    expect(refusal?.broken.map(({ what, use }) => [what, use])).toEqual([
      ['limit 3', 1.5],
      ['limit 1', 1.2],
    ])
    expect(message).toBe(
      'None of 3 designs keeps all limits. The nearest one breaks: limit 3 of 1.5 (at most 1), 1.50 times the limit; ' +
        'limit 1 of 1.2 (at most 1), 1.20 times the limit. No change of one input alone is enough.',
    )
  })

  // The design is the wish itself: its torque may be 1 at most, its ratio has no part in it.
  const designs = ({ torque }: { torque: number; ratio: number }) => [candidate('as wished', 1, torque)]
  const torque = { input: 'torque', kind: 'torque', easiest: 0.01 } as const

  test('names the one input whose change is enough, and no other', () => {
    const { refusal, message } = proposalsOf({ torque: 4, ratio: 6 }, designs, [torque, { input: 'ratio', kind: 'ratio', easiest: 1 }])
    expect(refusal?.nearest.map(({ input, met }) => [input, met === undefined])).toEqual([
      ['torque', false],
      ['ratio', true],
    ])
    expect(message).toMatch(/One change alone is enough: torque [\d.]+ N mm instead of 4 N m\.$/)
    expect(message).not.toContain('ratio')
  })

  test('the nearest value keeps all limits and lies as near to the edge as was asked, in as many steps as halving needs', () => {
    fc.assert(
      fc.property(fc.double({ min: 1.1, max: 100, noNaN: true }), fc.double({ min: 1e-6, max: 0.1, noNaN: true }), (wished, within) => {
        let tried = 0
        const counted = (wish: { torque: number; ratio: number }) => {
          tried++
          return designs(wish)
        }
        const { refusal } = proposalsOf({ torque: wished, ratio: 1 }, counted, [{ ...torque, within }])
        const met = refusal!.nearest[0]!.met!.si
        expect(met).toBeLessThanOrEqual(1 + 1e-9)
        expect(met).toBeGreaterThanOrEqual(1 - within)
        // One for the wish, one for the easy end.
        expect(tried).toBeLessThanOrEqual(2 + Math.ceil(Math.log2(wished / within)))
      }),
      { numRuns: 50 },
    )
  })

  test('the search ends where no nearness is near enough', () => {
    const { refusal } = proposalsOf({ torque: 3, ratio: 1 }, designs, [{ ...torque, within: 0 }])
    expect(refusal!.nearest[0]!.met!.si).toBeCloseTo(1, 8)
  })
})
