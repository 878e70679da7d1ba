import { expect, test } from 'vitest'
import { assess, htmlReport, withFields } from '../../src/leg/index.js'
import { besideLinks } from './rod-bearing-legs.js'

test('where a couple prises a pin, the sheet says that the arms of the fork are not calculated', () => {
  const words = /the arms of the fork.* are not calculated/
  const tilted = assess(besideLinks, { cases: ['drop'] })
  expect(tilted.checks.find(({ id, joint }) => id === 'boss.prised' && joint === 'knee')!.notes.join()).toMatch(words)
  expect(htmlReport(tilted)).toMatch(words)
  const straight = assess(
    withFields(besideLinks, { 'joints.knee.through.planeOffset': '0 mm', 'loadCases.events.drop.lateral': 0 } as never),
    {
      cases: ['drop'],
    },
  )
  expect(straight.checks.some(({ notes }) => words.test(notes.join()))).toBe(false)
})
