// The load cases are some of all combinations of an event, an air and an age. Whether they hold the hardest ones is tried here: with every other combination,
// no reserve falls far below the least of the load cases, and none that is near its limit falls below it at all.
import { expect, test } from 'vitest'
import { comparisonAt, comparisonsOf, reserveIn } from '../../src/leg/assess/compare.js'
import { keyOf } from '../../src/leg/assess/findings.js'
import { calculationOf } from '../../src/leg/calculation.js'
import { AGE_IDS, type AirId, ALL_CASE_IDS, EVENTS, type EventId, LOAD_CASES } from '../../src/leg/cases/events.js'
import { legNumbers } from '../../src/leg/numbers.js'
import { CHECKS } from '../../src/leg/parts/index.js'
import { printedLegs } from './printed-legs.js'
import { plain } from './sprung-legs.js'

const AIRS: readonly AirId[] = ['normal', 'normalStill', 'hot', 'cold']
/** Reserves that a builder would not act on. */
const AMPLE = 3
/** Of a reserve that is ample, and of one that is less. */
const LEAST_SHARE = { ample: 0.95, near: 0.995 }

/** First steps are cold by their name; a season and a year on the shelf hold all airs of that time. */
const airsOf = (event: EventId): readonly AirId[] => {
  const tags: readonly string[] = EVENTS[event].tags
  return tags.includes('keepsTension') ? [] : tags.includes('coldFit') ? ['cold'] : AIRS
}

test.each([['cords, revised', () => plain] as const, ...Object.entries(printedLegs)])(
  'no combination that is left out is harder: %s',
  (_, leg) => {
    const calculation = calculationOf(legNumbers(leg()))
    const least = new Map<string, number>()
    for (const one of comparisonsOf(calculation, CHECKS, ALL_CASE_IDS)) {
      const reserve = reserveIn(calculation, one)
      if (reserve !== undefined) least.set(keyOf(one), Math.min(reserve, least.get(keyOf(one)) ?? Number.POSITIVE_INFINITY))
    }
    // A stack that tips bears on its edge alone, where the pressure has no bound; its own check fails then, in a load case.
    const tips = (id: string) =>
      id === 'shaftStack.crush' && [...least].some(([key, reserve]) => key.startsWith('shaftStack.tip') && reserve < 1)
    const listed = new Set(ALL_CASE_IDS.map((id) => `${LOAD_CASES[id].event} ${LOAD_CASES[id].air} ${LOAD_CASES[id].age}`))
    const harder: string[] = []
    let tried = 0
    for (const id of ALL_CASE_IDS.filter(
      (one, i, all) => all.findIndex((other) => LOAD_CASES[other].event === LOAD_CASES[one].event) === i,
    )) {
      const { event } = LOAD_CASES[id]
      const comparisons = comparisonsOf(calculation, CHECKS, [id])
      for (const air of airsOf(event)) {
        for (const age of AGE_IDS) {
          if (listed.has(`${event} ${air} ${age}`)) continue
          for (const { check, joint } of comparisons) {
            const one = comparisonAt(calculation, check, joint, id, { event, air, age })
            const [reserve, of] = [reserveIn(calculation, one), least.get(keyOf(one))]
            if (reserve === undefined || of === undefined || tips(check.id)) continue
            tried++
            if (!(reserve >= of * (of < AMPLE ? LEAST_SHARE.near : LEAST_SHARE.ample)))
              harder.push(`${keyOf(one)} ${event} ${air} ${age}: ${reserve} under ${of}`)
          }
        }
      }
    }
    expect(harder).toEqual([])
    expect(tried).toBeGreaterThan(1000)
  },
)
