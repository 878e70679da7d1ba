import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { compare } from '../../src/leg/assess/compare.js'
import { findingsOf } from '../../src/leg/assess/findings.js'
import { survey } from '../../src/leg/assess/survey.js'
import { ALL_CASE_IDS, assess, describeLeg, legNumbers, markdownReport } from '../../src/leg/index.js'
import { randomStream } from '../../src/numeric/index.js'

const read = (name: string) => describeLeg(readFileSync(new URL(`../../examples/mudflat-leg-${name}.yaml`, import.meta.url), 'utf8'))
const DRAWS = 60
/** Heat near its end without return bends a reserve between the ends of a range. */
const WITHIN = 0.01

describe.each(['first', 'revised'])('ranges of the %s leg', (name) => {
  const { calculation, checks } = findingsOf(legNumbers(read(name)), ALL_CASE_IDS, false)
  const bands = survey(calculation, checks)

  test('no random draw within the ranges is below the worst end of its check, or the check is not monotone', () => {
    const leaves = calculation.instances.leaves.flatMap((cell) => {
      const range = calculation.rangeOf(cell)
      return range === undefined || typeof cell.value !== 'number' ? [] : [{ cell, range }]
    })
    expect(leaves.length).toBeGreaterThan(50)
    const random = randomStream(3)
    let compared = 0
    for (let draw = 0; draw < DRAWS; draw++) {
      // Corners find more than values between them: every other draw is one.
      for (const { cell, range } of leaves) {
        const u = random.uniform()
        calculation.put(cell, range.low + (draw % 2 === 0 ? Math.round(u) : u) * (range.high - range.low))
      }
      for (const group of checks) {
        const { worst, monotone } = bands.get(group) as NonNullable<ReturnType<typeof bands.get>>
        for (const one of group.comparisons) {
          const found = compare(calculation, one)
          if (typeof found === 'string' || !monotone) continue
          compared++
          expect(found.reserve, `${group.key} ${one.id}`).toBeGreaterThanOrEqual(worst * (1 - WITHIN))
        }
      }
    }
    for (const { cell } of leaves) calculation.restore(cell)
    expect(compared).toBeGreaterThan(100 * DRAWS)
    // Under a load that stays, rupture governs at one corner of the ranges and the design strain at another: some bosses and pins turn.
    expect([...bands.values()].filter(({ monotone }) => monotone).length).toBeGreaterThan(0.85 * bands.size)
  })
})

test('no random draw is above the best end of its check, and one whose reserve is 0 has a best end too', () => {
  const { calculation, checks } = findingsOf(legNumbers(read('first')), ALL_CASE_IDS, false)
  const bands = survey(calculation, checks)
  const nothing = checks.filter(({ reserve }) => reserve === 0)
  expect(nothing.map(({ key }) => key).sort()).toEqual([
    'motorBolt.slip hip',
    'motorBolt.slip knee',
    'stackBolt.separation',
    'stackBolt.slip',
  ])
  for (const group of nothing) expect(bands.get(group)?.best, group.key).toBeGreaterThan(0.1)
  const leaves = calculation.instances.leaves.flatMap((cell) => {
    const range = calculation.rangeOf(cell)
    return range === undefined || typeof cell.value !== 'number' ? [] : [{ cell, range }]
  })
  const random = randomStream(7)
  for (let draw = 0; draw < DRAWS; draw++) {
    for (const { cell, range } of leaves) calculation.put(cell, random.uniform() < 0.5 ? range.low : range.high)
    for (const group of checks) {
      const reserves = group.comparisons.map((one) => compare(calculation, one))
      const least = Math.min(...reserves.map((found) => (typeof found === 'string' ? Number.POSITIVE_INFINITY : found.reserve)))
      if (Number.isFinite(least)) expect(least, group.key).toBeLessThanOrEqual((bands.get(group)?.best as number) * (1 + WITHIN))
    }
  }
})

test('a check that is not monotone says so in the result, its JSON and the report', () => {
  const verdict = assess(read('first'), { cases: ['trot'] })
  const speed = verdict.checks.find(({ id, joint }) => id === 'motor.speed' && joint === 'hip')
  expect(JSON.parse(JSON.stringify(speed)).range.monotone).toBe(false)
  expect(speed?.notes.join()).toContain('may lower this reserve at either end')
  expect(markdownReport(verdict)).toContain('(least found) to')
  expect(verdict.checks.find(({ id }) => id === 'toe.strain')?.range.monotone).toBe(true)
})
