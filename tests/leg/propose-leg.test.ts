import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import {
  assess,
  describeLeg,
  describeWish,
  type Kept,
  type LegWish,
  legChances,
  legFormula,
  proposeLeg,
  robustLeg,
} from '../../src/leg/index.js'
import { scenarios } from '../../src/study/index.js'

const wishText = (name: string) => readFileSync(new URL(`../../examples/wishes/${name}.yaml`, import.meta.url), 'utf8')
const cellar = wishText('cellar-inspector')

describe('a wish', () => {
  test('is read with its defaults', () => {
    const wish = describeWish(cellar)
    expect(wish.robot.legs).toBe(4)
    expect(wish.motors['can 54']!.canDiameter.in('mm')).toBeCloseTo(54, 12)
    expect(wish.plastics.PETG!.si).toBe(24)
  })

  test.each([
    ['robot: { mass: 5 kg', 'robot: { mas: 5 kg', /robot\.mas .*line 2, column \d+|line 2.*robot\.mas/, /did you mean mass/],
    ['walk: { speed: 0.2 m/s', 'walk: { speed: 0.2 m', /walk\.speed/, /line 3/],
    ['cords: { thin aramid: [aramid,', 'cords: { thin aramid: [aramide,', /cords\.thin aramid/, /did you mean aramid/],
    ['PETG: 24', 'PETGG: 24', /plastics\.PETGG/, /did you mean PETG/],
    ['31], can 63', '], can 63', /motors\.can 54/, /line 5/],
    ['bed: 200 mm', 'bed: 70 mm', /printer\.bed/, /at least 80 mm/],
    ['hot: 25 degC', 'hot: -25 degC', /place\.hot/, /above cold/],
  ])('with %s written as %s is rejected with its place', (right, wrong, path, hint) => {
    const read = () => describeWish(cellar.replace(right, wrong))
    expect(read).toThrow(path)
    expect(read).toThrow(hint)
  })

  test('without motors is rejected', () => {
    expect(() => describeWish({ ...(describeWish(cellar) as unknown as LegWish), motors: {} })).toThrow(/motors .*at least one/)
  })
})

/** The same with one motor, one cord and one polymer. */
const short = cellar
  .replace(/, can 63: \[[^\]]*\]/, '')
  .replace(/, grey braid: \[[^\]]*\]/, '')
  .replace(', ASA: 32', '')

describe('legs for a wish', () => {
  const kept: Kept[] = []
  const options = { evaluations: 600, seed: 1 }
  const found = proposeLeg(short, { ...options, onKept: (one) => kept.push(one) })

  test('pass all of their checks when they are read and assessed again', () => {
    expect(found.state).toBe('met')
    expect(found.proposals.length).toBeGreaterThanOrEqual(2)
    for (const { document } of found.proposals) {
      const verdict = assess(describeLeg(document))
      expect(verdict.passes).toBe(true)
      expect(verdict.meetsTarget).toBe(true)
    }
  })

  test('are different, and none is better than another in everything', () => {
    const texts = found.proposals.map(({ document }) => JSON.stringify(document))
    expect(new Set(texts).size).toBe(texts.length)
    for (const a of found.front)
      for (const b of found.front)
        if (a !== b) {
          const better = [
            a.mass < b.mass,
            a.energyPerMetre < b.energyPerMetre,
            a.printVolume < b.printVolume,
            a.cost < b.cost,
            a.margin > b.margin,
          ]
          expect(better).toContain(true)
        }
  })

  test('are the same when the search is resumed from the middle', () => {
    const again = proposeLeg(short, { ...options, resume: kept.at(-2)! })
    expect(again.proposals.map(({ document }) => document)).toEqual(found.proposals.map(({ document }) => document))
    expect(again.evaluations).toBe(found.evaluations)
  })

  test('are refused for a robot that its motor cannot carry, with the checks and what would help', () => {
    const { state, refusal, message } = proposeLeg(wishText('crate-hauler'), { evaluations: 150 })
    expect(state).toBe('refused')
    expect(refusal!.broken[0]![1]).toBeLessThan(1)
    expect(refusal!.broken.some(([check]) => check.startsWith('motor.'))).toBe(true)
    expect(message).toContain('falls short')
  })

  test('made robust bear at least as many draws, and show the price', () => {
    const [first] = found.proposals
    const { atTypical, atRobust, price, failures, message } = robustLeg(found.wish, first!, {
      draws: 30,
      chance: 0.7,
      evaluations: 40,
      rounds: 1,
    })
    expect(atRobust.borne).toBeGreaterThanOrEqual(atTypical.borne)
    expect(Number.isFinite(price.mass)).toBe(true)
    for (const [, share] of failures) expect(share).toBeGreaterThan(0)
    expect(message).toContain('It costs: mass')
    expect(() => robustLeg(found.wish, first!, { draws: 20, chance: 0.99 })).toThrow(/draws/)
    expect(() => robustLeg(found.wish, first!, { chance: 2 })).toThrow(/chance/)
    // None of these would stop anything: the search would end at once and report as if it had looked.
    expect(() => robustLeg(found.wish, first!, { rounds: Number.NaN, evaluations: Number.NaN, seed: 0.5 })).toThrow(
      /rounds[\s\S]*evaluations[\s\S]*seed/,
    )
  })

  test('have chances of failure that plain draws confirm', () => {
    const { leg } = found.proposals[0]!
    const cases = ['coldMorning', 'hotAfternoon'] as const
    const { each, any } = legChances(leg, { cases, evaluations: 300 })
    expect(any.probability).toBeGreaterThanOrEqual(each[0]!.probability - 1e-12)
    const [{ output, probability, error }] = each as [(typeof each)[number]]
    const reserve = legFormula(leg, { check: output, cases })
    const { draw } = scenarios(reserve, {}, { seed: 9 })
    const failing = Array.from({ length: 200 }, (_, k) => reserve.si(draw(k) as never) as number).filter((x) => !(x >= 1)).length / 200
    const deviation = Math.hypot(error, Math.sqrt((probability * (1 - probability) + 1e-3) / 200))
    expect(Math.abs(failing - probability)).toBeLessThan(4 * deviation)
  })

  test('a bad option is named', () => {
    expect(() => proposeLeg(cellar, { evaluations: 10 })).toThrow(/evaluations/)
    expect(() => proposeLeg(cellar, { sead: 1 } as never)).toThrow(/sead/)
  })
})
