import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { sentenceOf } from '../../src/leg/assess/sentence.js'
import { LOAD_CASES } from '../../src/leg/cases/events.js'
import type { CheckResult } from '../../src/leg/check-result.js'
import { CHECKS } from '../../src/leg/parts/index.js'
import { checkList, reserveText, verdictText } from '../../src/leg/report/content.js'
import { AGE_WORDS, AIR_WORDS, EVENT_WORDS } from '../../src/leg/report/instance-words.js'
import { placesText } from '../../src/leg/report/places.js'
import type { Assessment } from '../../src/leg/result.js'

/** What no sentence has: leftovers of code, and slips of punctuation. */
const SLIPS = /undefined|NaN|\[object|null|Infinity| {2}|\.\.|,,| ,| \.|\( | \)|[a-z][A-Z]{1}[a-z]+[A-Z]/
const titles = Object.values(LOAD_CASES).map(({ title }) => title)
const reserves = fc.oneof(fc.constantFrom(0, 1e-9, 0.0009, 0.999, 1, 999, 1000, 1e4), fc.double({ min: 0, max: 1e4, noNaN: true }))

describe('sentences of checks', () => {
  test('are whole sentences for every check, reserve and load case, failed calculations included', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...CHECKS),
        fc.constantFrom('hip', 'knee'),
        fc.constantFrom(...titles),
        reserves,
        fc.boolean(),
        (check, joint, title, reserve, failed) => {
          const demand = failed ? Number.NaN : 12.3
          const found = {
            demand,
            capacity: reserve * 12.3,
            reserve: failed ? 0 : reserve,
            ...(failed ? { failure: 'the demand is not a number' } : {}),
          }
          const sentence = sentenceOf(check, joint as 'hip', title, found)
          expect(sentence).not.toMatch(SLIPS)
          expect(sentence).toMatch(/^[A-Z].*\.$/)
          expect(sentence).toContain(`the ${check.part}`)
          expect((sentence.match(/\(/g) ?? []).length).toBe((sentence.match(/\)/g) ?? []).length)
        },
      ),
      { numRuns: 500 },
    )
  })

  test('a part is one thing, and its verb agrees', () => {
    for (const { id, part, mode } of CHECKS) {
      const noun = part.split(/ (?:of|in|on|under|round|from|at) /)[0] as string
      expect(noun, id).not.toMatch(/(?<!s)s$/)
      expect(mode.split(' ')[0], id).toMatch(/s$|^cannot$/)
    }
  })

  test('a phrase with a clause behind a comma ends it before its verb', () => {
    const check = CHECKS.find(({ demandIs }) => demandIs.includes(', '))!
    expect(sentenceOf(check, 'knee', 'Walk', { demand: 2, capacity: 3, reserve: 1.5 })).toContain(`${check.demandIs.slice(1)}, is `)
  })
})

describe('the verdict', () => {
  const one = { part: 'boss', mode: 'splits', joint: 'knee', caseTitle: 'Walk', requiredReserve: 1.25 } as CheckResult
  const verdict = (failing: number, short: number, holding: number, coupling: 'settled' | 'unsettled' = 'settled') => {
    const checks = [...Array(failing).fill(0.5), ...Array(short).fill(1.1), ...Array(holding).fill(2)].map((reserve: number) => ({
      ...one,
      reserve,
    }))
    const passes = failing === 0
    return verdictText({
      checks,
      governing: checks[0],
      passes,
      meetsTarget: passes && short === 0,
      requiredReserve: 1.25,
      coupling,
    } as unknown as Assessment)
  }

  test('agrees in number', () => {
    expect(verdict(1, 0, 3)).toContain('1 of 4 checks is below 1')
    expect(verdict(2, 0, 3)).toContain('2 of 5 checks are below 1')
    expect(verdict(0, 1, 3)).toContain('1 of 4 checks is short of its required reserve')
    expect(verdict(0, 2, 3)).toContain('2 of 5 checks are short of their required reserve')
  })

  test('is whole for any counts and unsettled heat', () => {
    fc.assert(
      fc.property(fc.nat(40), fc.nat(40), fc.nat(40), fc.constantFrom('settled', 'unsettled'), (failing, short, holding, coupling) => {
        fc.pre(failing + short + holding > 0)
        const text = verdict(failing, short, holding, coupling as 'settled')
        expect(text).not.toMatch(SLIPS)
        expect(text).toMatch(/^This leg .*\.$/)
      }),
    )
  })
})

test('reserves print short, at any size', () => {
  fc.assert(
    fc.property(reserves, (reserve) => {
      expect(reserveText(reserve)).toMatch(/^(over 100|\d+(\.\d+)?(e-\d+)?)$/)
    }),
  )
})

test('every event, air and age of a load case has its words', () => {
  for (const { event, air, age } of Object.values(LOAD_CASES)) {
    expect(EVENT_WORDS[event], event).toBeDefined()
    expect(AIR_WORDS[air], air).toBeDefined()
    expect(AGE_WORDS[age], age).toBeDefined()
    expect(placesText([{ joint: 'knee', event, air, age }])).toBe(`knee, ${EVENT_WORDS[event]}, ${AIR_WORDS[air]}, ${AGE_WORDS[age]}`)
  }
})

test('checks are listed by their parts and modes, joints together', () => {
  expect(checkList(['boss.split (knee)', 'boss.split (hip)', 'ground.slip'])).toBe(
    'whether the boss splits from the pressed-in pin (knee and hip); whether the foot on the ground slips',
  )
  for (const { id } of CHECKS) expect(checkList([id])).not.toContain(id)
})
