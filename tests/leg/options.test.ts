import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import {
  assemblyPlan,
  assess,
  compareLegs,
  controlSheet,
  describeLeg,
  htmlPlans,
  learn,
  legFigures,
  legFormula,
  standPlan,
} from '../../src/leg/index.js'
import { optimise } from '../../src/study/index.js'

const leg = describeLeg(readFileSync(new URL('./legs/workbench.yaml', import.meta.url), 'utf8'))
const logs = { 'pullOut hip': 'breaking force [N]\n1600\n1650\n1700\n' }

describe('a misspelt option is refused, with the near name', () => {
  test.each<[string, () => unknown, RegExp]>([
    ['assess', () => assess(leg, { case: ['walk'] } as never), /case is .*did you mean cases/],
    ['legFormula', () => legFormula(leg, { chek: 'leg.reach' } as never), /did you mean check/],
    ['legFigures', () => legFigures(leg, { uncertian: [] } as never), /did you mean uncertain/],
    ['compareLegs', () => compareLegs(leg, { 'plate.thickness': '8 mm' }, { casses: [] } as never), /did you mean cases/],
    ['assemblyPlan', () => assemblyPlan(leg, { tails: '1 m' } as never), /did you mean tail/],
    ['controlSheet', () => controlSheet(leg, { looprate: '1 kHz' } as never), /did you mean loopRate/],
    ['htmlPlans', () => htmlPlans(leg, { copermass: '80 g' } as never), /did you mean copperMass/],
    ['learn', () => learn(leg, logs, { spike: 'keep' } as never), /did you mean spikes/],
    ['a list', () => assess(leg, ['walk'] as never), /options is .*must be a record with cases/],
  ])('%s', (_, call, message) => expect(call).toThrow(message))
})

test('the options of both sheets reach the page', () => {
  const page = htmlPlans(leg, { tail: '222 mm', loopRate: '3 kHz' })
  expect(page).toContain('222 mm')
  expect(page).toContain('3 kHz')
})

test('an unknown load case is refused by every tool that takes cases', () => {
  for (const call of [
    () => assess(leg, { cases: ['Walk'] as never }),
    () => legFigures(leg, { cases: ['Walk'] as never }),
    () => legFormula(leg, { cases: ['Walk'] as never }),
    () => learn(leg, logs, { cases: ['Walk'] as never }),
  ])
    expect(call).toThrow(/did you mean walk/)
})

test('what is no leg is told so', () => {
  for (const call of [assess, assemblyPlan, controlSheet, standPlan, legFormula, htmlPlans])
    expect(() => call({ name: 'x' } as never)).toThrow(/must be a leg as describeLeg returns it/)
})

test('a long list of names is cut, the near name still given', () => {
  const search = () =>
    optimise(legFigures(leg), { vary: { 'plate.thicknes': { from: '5 mm', to: '9 mm' } }, goals: { minimise: 'driveMass' } } as never)
  expect(search).toThrow(/… \(\d+ in all\); did you mean plate.thickness\?/)
})
